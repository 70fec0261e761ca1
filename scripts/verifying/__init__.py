"""Recounts a record, with Python's standard library alone.

Nothing of the service is imported: this is a second way to the same result, written apart, so that
nobody needs to trust the first.
"""
