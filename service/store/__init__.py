"""Tables, rows to values and back, transactions and migrations."""
