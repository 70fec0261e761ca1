"""Thin routes over the store and the inside; tokens; errors as problem details."""
