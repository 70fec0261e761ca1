"""The sealed answer, guesses read against it, and who named the piece first."""
