"""Pages and numbers of things in English words, for the sentences that counting gives."""

from __future__ import annotations

from collections.abc import Iterable


def listed(things: Iterable[str]) -> str:
    """Things as a list in a sentence: "a", "a and b", "a, b and c"."""
    named = list(things)
    if len(named) < 2:
        return "".join(named)
    return f"{', '.join(named[:-1])} and {named[-1]}"


def pages_in_words(pages: Iterable[int]) -> str:
    """Pages by number, in the order given: "page 3", "pages 3, 7 and 12"."""
    named = [str(page) for page in pages]
    return f"{'page' if len(named) == 1 else 'pages'} {listed(named)}"


def how_many(number: int, one: str, more: str = "") -> str:
    """A number of things: "1 vote", "3 votes"; `more` where the plural is not `one` with an s."""
    return f"{number:,} {one if number == 1 else more or one + 's'}"


def sentence(words: str) -> str:
    """The words with a capital at the start."""
    return words[:1].upper() + words[1:]
