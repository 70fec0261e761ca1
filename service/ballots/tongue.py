"""Which language a comment is plainly written in, told by its words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from string import digits

from service.ballots.languages import LANGUAGES
from service.ballots.met import Met
from service.ballots.scanning import STRETCHED, WORD, Token
from service.ballots.tellings import (
    BITS,
    COMMON,
    ENDING,
    ENGLISH,
    PLAINLY_WRITTEN,
    SHARED,
    TIED,
    Telling,
    tellings,
)

#: A language that the round has not switched on must be told by more than a shared word.
PLAINLY = SHARED + COMMON
#: Among so few words a number word is one, even if it is an ordinary word elsewhere.
_FEW = 2
#: A number word of more languages that are not switched on is left alone.
_SURELY = 2
#: In so short a comment a number word and the words beside it are looked at together.
_SHORT = 4
#: Kinds of tokens that tell a language.
_TELLING = frozenset({WORD, "ordinal"})
_CODES = {bit: code for code, bit in BITS.items()}
_STRETCHED_WORD = Telling((), (), allows=~PLAINLY_WRITTEN)


@dataclass(frozen=True, slots=True)
class Tongue:
    """The languages to read a comment by, its own first; whether a word's letter is said longer."""

    codes: tuple[str, ...]
    stretched: bool


def tongue_of(tokens: Sequence[Token], switched_on: tuple[str, ...]) -> Tongue:
    """The languages to read by, the comment's own first; English helps to read every other.

    Without a word that tells, all the languages that the round has switched on. Of those, one is
    added where a number word of it stands in a comment of another language.
    """
    met = _MET
    words = mostly = 0
    allowed = -1
    for token in tokens:
        kind = token.kind
        if kind == WORD:
            words += 1
            telling = met[token.text]
        elif kind == "ordinal":
            telling = met[ENDING + token.text.lstrip(digits)]
        else:
            continue
        if telling is not None:
            allowed &= telling.allows
            if not mostly:
                mostly = telling.mostly
    stretched = not allowed & PLAINLY_WRITTEN
    plainly = _CODES.get(mostly & allowed, "")
    # Of so few words of another language one may be a number of a third.
    if plainly == ENGLISH or (plainly in switched_on and words > _SHORT):
        return Tongue((ENGLISH,) if plainly == ENGLISH else (plainly, ENGLISH), stretched)
    return Tongue(_weighed(tokens, words, switched_on), stretched)


def _told_by(word: str) -> Telling | None:
    """What the word tells; None where that is nothing and it is plainly written."""
    telling = tellings().get(word)
    if not STRETCHED.search(word):
        return telling
    return (
        replace(telling, allows=telling.allows & ~PLAINLY_WRITTEN) if telling else _STRETCHED_WORD
    )


#: What the words of comments tell, and the endings of ordinals.
_MET = Met(_told_by)


def _heard(tokens: Sequence[Token]) -> list[Telling]:
    """What each word tells that tells anything."""
    texts = [
        token.text if token.kind == WORD else ENDING + token.text.lstrip(digits)
        for token in tokens
        if token.kind in _TELLING
    ]
    return [telling for telling in map(_MET.__getitem__, texts) if telling is not None]


def _weighed(tokens: Sequence[Token], words: int, switched_on: tuple[str, ...]) -> tuple[str, ...]:
    """The same where the words do not all tell one language."""
    heard = _heard(tokens)
    numerals: list[str] = []
    english = abroad = 0
    for telling in heard:
        english += telling.english
        abroad += telling.abroad
        if telling.numeral_of and (words <= _FEW or not telling.doubtful):
            numerals += telling.numeral_of
    own = _covering(tokens, switched_on) if numerals and 1 < words <= _SHORT else ()
    if words == 1 and not own and not (english or abroad):
        own = _alone(heard, switched_on)
    if not own:
        # Whatever is told of any one other language is no more than what is told of all together.
        own = (ENGLISH,) if english > abroad else _own_languages(heard, switched_on)
    read = own if ENGLISH in own else (*own, ENGLISH)
    if numerals and own[0] not in numerals and not any(code in numerals for code in own):
        read += tuple(code for code in switched_on if code in numerals and code not in read)
    return read


def _covering(tokens: Sequence[Token], switched_on: tuple[str, ...]) -> tuple[str, ...]:
    """The languages that have every word of it, a number word among them, if English has not.

    "Side tres" is Danish: "tres" is a number in Spanish too, but "side" is no Spanish word.
    """
    left: set[str] | None = None
    for token in tokens:
        if token.kind == WORD:
            telling = _MET[token.text]
            if telling is None:
                return ()
            having = {code for code, _ in telling.points}
            having.update(telling.numeral_of)
            left = having if left is None else left & having
            if not left:
                return ()
    if not left or ENGLISH in left:
        return ()
    home = tuple(code for code in switched_on if code in left)
    return (home or tuple(code for code in LANGUAGES if code in left))[:TIED]


def _alone(heard: list[Telling], switched_on: tuple[str, ...]) -> tuple[str, ...]:
    """The languages in which a word that stands alone is one and the same number, as "sju" is."""
    codes = heard[0].numeral_of if heard and not heard[0].doubtful else ()
    if (
        not 0 < len(codes) <= _SURELY
        or any(code in switched_on for code in codes)
        or heard[0].points
    ):
        return ()
    return codes[:TIED]


def _with_english(codes: tuple[str, ...]) -> tuple[str, ...]:
    return codes if ENGLISH in codes else (*codes, ENGLISH)


def _own_languages(heard: list[Telling], switched_on: tuple[str, ...]) -> tuple[str, ...]:
    """The language with most points, or those that cannot be told apart; all without any points.

    On little evidence English is read first of those, otherwise last.
    """
    points: dict[str, int] = {}
    joining: frozenset[str] = frozenset()
    for telling in heard:
        for code, worth in telling.points:
            points[code] = points.get(code, 0) + worth
        if telling.joins:
            joining |= telling.joins
    home = _with_english(switched_on)
    if not points:
        return home
    at_home = abroad = 0
    for code, worth in points.items():
        if code in home:
            at_home = max(at_home, worth)
        else:
            abroad = max(abroad, worth)
    if abroad > at_home and (abroad >= PLAINLY or not at_home):
        return tuple(code for code in LANGUAGES if code not in home and points.get(code) == abroad)[
            :TIED
        ]
    tied = [code for code in home if points.get(code, 0) == at_home]
    others = tuple([code for code in tied if code != ENGLISH][:TIED])
    if not others:
        return (ENGLISH,)
    if ENGLISH in tied and at_home <= SHARED and joining.isdisjoint(others):
        return (ENGLISH, *others)
    return others
