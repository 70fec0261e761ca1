"""A comment's words in languages that write them together, so that phrases can be matched.

The scanner gives one token for a run of letters. Runs of Han characters, kana and Hangul are cut
here by the words that the data of Japanese, Chinese and Korean knows. Text in other letters passes
through untouched.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cache

from service.ballots.cutting import (
    HAN_NUMERALS,
    HANGUL,
    KANA,
    RUNS,
    UNSPACED,
    cut_korean,
    cut_unspaced,
    words_of,
)
from service.ballots.languages import LANGUAGES
from service.ballots.scanning import END, WORD, Token

#: Words that begin before this letter are Latin ones, which spaces part.
_FIRST_OTHER = "\u0370"
_FIRST_GREEK, _LAST_GREEK = "\u0370", "\u03ff"


def segment(tokens: list[Token]) -> list[Token]:
    """The same text in tokens that are words.

    Letters that belong to no known word stay together. Greek asks with ";", so that between Greek
    words becomes "?".
    """
    foreign = [
        token.text for token in tokens if token.kind == WORD and token.text[0] >= _FIRST_OTHER
    ]
    if not foreign:
        return tokens
    text = "".join(foreign)
    if any(_FIRST_GREEK <= letter <= _LAST_GREEK for letter in text):
        tokens = [_asking(token) for token in tokens]
    if not (UNSPACED.search(text) or HANGUL.search(text)):
        return tokens
    # Kana are Japanese; Han characters alone may be either language's.
    words = _words("ja") if KANA.search(text) else _words("ja", "zh")
    cut: list[Token] = []
    for token in tokens:
        if token.kind == WORD and token.text[0] >= _FIRST_OTHER:
            cut.extend(_cut(token, words, behind_digits=_is_behind_digits(token, cut)))
        else:
            cut.append(token)
    return cut


def _asking(token: Token) -> Token:
    if token.kind != END or ";" not in token.text:
        return token
    return replace(token, text=token.text.replace(";", "?"))


def _is_behind_digits(token: Token, before: Sequence[Token]) -> bool:
    return bool(before) and token.glued and before[-1].text[-1:].isdigit()


@cache
def _words(*codes: str) -> frozenset[str]:
    return frozenset[str]().union(*(words_of(LANGUAGES[code]) for code in codes))


def _cut(token: Token, words: frozenset[str], *, behind_digits: bool) -> list[Token]:
    """One token cut into its words."""
    pieces: list[str] = []
    for run in RUNS.findall(token.text):
        if HANGUL.match(run):
            numbers = LANGUAGES["ko"].numbers
            pieces += cut_korean(run, _words("ko"), numbers, behind_digits=behind_digits)
        elif UNSPACED.match(run):
            pieces += cut_unspaced(run, words)
        else:
            pieces.append(run)
        behind_digits = False
    cut: list[Token] = []
    for piece in pieces:
        cut.append(Token(WORD, _shortened(piece), len(piece), token.glued or bool(cut)))
    return cut


def _shortened(piece: str) -> str:
    """A laugh or a sob of one letter said often is one word, however long ("ㅋㅋㅋㅋ")."""
    repeated = len(set(piece)) == 1 and piece[0] not in HAN_NUMERALS
    return piece[:2] if repeated else piece
