"""Desk and board: pages of HTML that work without scripts and load nothing from elsewhere."""
