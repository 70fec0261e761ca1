"""Words with a letter said for longer: "seventeeen", "pleaaase"."""

from __future__ import annotations

import re

from service.ballots.lexicon import Lexicon
from service.ballots.scanning import WORD, Token

STRETCHED = re.compile(r"([a-z])\1{2,}")


def unstretched(tokens: list[Token], lexicon: Lexicon) -> list[Token]:
    """The tokens with stretched words as they are usually written; offsets stay."""
    return [
        token._replace(text=_unstretched(token.text, lexicon))
        if token.kind == WORD and STRETCHED.search(token.text)
        else token
        for token in tokens
    ]


def _unstretched(word: str, lexicon: Lexicon) -> str:
    known = (lexicon.numbers, lexicon.ordinals, lexicon.signs)
    for written in (word, STRETCHED.sub(r"\1\1", word), STRETCHED.sub(r"\1", word)):
        if any(written in words for words in known):
            return written
    return word
