"""Readings settled into ballots, the tally, tie-breaks and the result with every step."""
