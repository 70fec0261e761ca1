"""A comment's tokens as its language writes words: ordinals with a full stop, words in one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cache

from service.ballots.language import Phrase
from service.ballots.languages import LANGUAGES
from service.ballots.lexicon import Lexicon
from service.ballots.scanning import DIGITS, END, WORD, Token


def worded(tokens: list[Token], lexicon: Lexicon) -> list[Token]:
    """The tokens with "12. Seite" read as an ordinal, and "linksboven" as two words.

    Offsets stay those of the text; where the language does neither, the tokens are unchanged.
    """
    parted = _parted(lexicon.codes)
    dotted, counted = lexicon.group("dotted"), lexicon.group("other_after")
    if not parted and not dotted.firsts:
        return tokens
    texts = {token.text for token in tokens}
    if parted.keys().isdisjoint(texts) and (not dotted.firsts or "." not in texts):
        return tokens
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        if (
            token.kind == DIGITS
            and _has_ordinal_stop(tokens, at)
            and (dotted.after(tokens, at + 2) or (dotted.firsts and counted.after(tokens, at + 2)))
        ):
            size = token.size + tokens[at + 1].size
            found.append(replace(token, kind="ordinal", size=size))
            at += 2
            continue
        if token.kind == WORD and token.text in parted:
            found.extend(_parts(token, parted[token.text]))
        else:
            found.append(token)
        at += 1
    return found


def _has_ordinal_stop(tokens: Sequence[Token], at: int) -> bool:
    stop = at + 1
    return (
        stop + 1 < len(tokens)
        and tokens[stop].kind == END
        and tokens[stop].text == "."
        and tokens[stop].glued
    )


def _parts(token: Token, phrase: Phrase) -> list[Token]:
    """The word cut into the words that it is read as; the last takes what is left of it."""
    parts: list[Token] = []
    left = token.size
    for place, word in enumerate(phrase):
        size = left if place == len(phrase) - 1 else len(word)
        parts.append(Token(WORD, word, size, token.glued if not place else True))
        left -= size
    return parts


@cache
def _parted(codes: tuple[str, ...]) -> dict[str, Phrase]:
    """Every word of these languages that is read apart, with the words that it is read as."""
    return {
        "".join(phrase): phrase
        for code in codes
        if code in LANGUAGES
        for phrase in LANGUAGES[code].parted
    }
