"""What they meant: one comment's text and the round's question give a Reading."""
