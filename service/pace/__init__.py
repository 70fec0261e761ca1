"""Pace: the stitch log, how fast the game's piece grows, and when the next round must open."""
