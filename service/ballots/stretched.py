"""Words with a letter said for longer: "seventeeen", "pleaaase"."""

from __future__ import annotations

from dataclasses import replace

from service.ballots.lexicon import Lexicon
from service.ballots.scanning import STRETCHED, WORD, Token


def unstretched(tokens: list[Token], lexicon: Lexicon) -> list[Token]:
    """The tokens with stretched words as they are usually written; offsets stay."""
    return [
        replace(token, text=_unstretched(token.text, lexicon))
        if token.kind == WORD and STRETCHED.search(token.text)
        else token
        for token in tokens
    ]


def _unstretched(word: str, lexicon: Lexicon) -> str:
    for written in (word, STRETCHED.sub(r"\1\1", word), STRETCHED.sub(r"\1", word)):
        if lexicon.signs[written] is not None:
            return written
    return word
