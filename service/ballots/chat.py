"""Comments that are only chat, told by their words alone: no number, no place, no word of voting.

Most comments under a video hold no vote. Whatever is told here reads the same on the long way,
where every rule begins with one of the words that are watched for; a comment that holds one of
them is left to it.
"""

from __future__ import annotations

import re
import unicodedata
from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from functools import cache

from service.ballots.language import Language, Phrase
from service.ballots.languages import LANGUAGES
from service.ballots.last_of_else import LastOfElse, last_of_else
from service.ballots.lexicon import heads_of, parted_number
from service.ballots.met import Met
from service.ballots.numerals import LOWER, ROMANS
from service.ballots.scanning import STRETCHED
from service.ballots.tellings import ENGLISH, Telling, tellings

#: The words of Latin scripts, cut as the scanner cuts them. A digit and the marks that blank or
#: quote a line are pieces too, so that one look into a set finds any of them.
_PIECES = re.compile(r"[a-z]+(?:'[a-z]+)*|[\d>~<]")
_OTHER_LETTER = re.compile(r"[^\W\d_\x00-\x7f]")
#: Every rule that reads a comment without a number or a whole place begins with one of these.
_DECIDING = (
    "withdrawn",
    "abstaining",
    "pointing",
    "own_facts",
    "described",
    "kinds",
    "row",
    "column",
    "told_from_last",
)
#: The same of places; left and right are no place without one of these.
_PLACING = ("first", "corner", "middle", "top", "bottom")
#: Words of much chat: a phrase is watched for by another word of it where it has one.
_USUAL = ("everyday", "fillers", "neutral_before", "neutral_after", "own_voice", "saying")
#: All languages at once, for comments with words of a language that is not switched on.
ALL = tuple(LANGUAGES)
#: In so short a comment a number word of any language may be meant.
_SHORT = 4


@dataclass(frozen=True, slots=True)
class Watch:
    """What keeps a comment from being only chat, in a round with these languages."""

    #: Words of which one is enough.
    words: frozenset[str]
    #: Words that tell something only together, by the longest of them that is no everyday word.
    together: dict[str, list[frozenset[str]]]
    #: Number words of any language, and what names stand behind ("comme"), for short comments.
    numerals: frozenset[str]
    #: Beside these a roman numeral names a page, and "last" may.
    pages: frozenset[str]
    #: Words that may be glued to a number word.
    heads: tuple[str, ...]
    #: Tells "last week" from the last page.
    last: LastOfElse
    #: Words of much chat that are looked at more closely: the longest above, roman numerals.
    closely: frozenset[str]
    #: What each part of a comment tells.
    told: Met[int] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "told", Met(lambda part: _told_by(part, self)))


def is_chat(text: str, plain: str, switched_on: tuple[str, ...]) -> bool:
    """Whether nothing in this comment (`plain` is its plain text) could decide anything."""
    watch = watch_of(switched_on)
    parts = plain.split(" ")
    told = sum(map(watch.told.__getitem__, parts))
    if told >= _WATCHED and told < _MAY_BE_ANYTHING:
        watch = watch_of(ALL)
        told = sum(map(watch.told.__getitem__, parts))
    if told >= _WATCHED:
        return False
    if told % _NUMERAL <= _SHORT and told % _CLOSELY >= _NUMERAL:
        return False
    if told < _CLOSELY:
        return True
    pieces = _PIECES.findall(plain)
    names_page = not watch.pages.isdisjoint(pieces)
    if told >= _LAST and (names_page or watch.last.may_be_a_page(parts, pieces)):
        return False
    return not _may_decide(text, pieces, watch)


#: What a part of a comment tells, as counts that are added up: how many words it has, and how many
#: of them are number words, are looked at more closely, say "last", are watched for; what may be
#: anything is letters of other scripts and words with a letter said for longer ("seventeeen").
_NO_NUMBER = ("", "")
_NUMERAL, _CLOSELY, _LAST, _WATCHED, _MAY_BE_ANYTHING = (1 << 20 * place for place in range(1, 6))


def _told_by(part: str, watch: Watch) -> int:
    """What the text between two spaces tells, as such counts."""
    if STRETCHED.search(part) or (not part.isascii() and _OTHER_LETTER.search(part)):
        return _MAY_BE_ANYTHING
    pieces = [part] if part.isascii() and part.isalpha() else _PIECES.findall(part)
    told = len(pieces)
    for piece in pieces:
        told += _NUMERAL * (piece in watch.numerals) + _CLOSELY * (piece in watch.closely)
        told += _LAST * (piece in watch.last.last)
        told += _WATCHED * (parted_number(piece, watch.words, watch.heads) != _NO_NUMBER)
    return told


def _may_decide(text: str, pieces: list[str], watch: Watch) -> bool:
    """Whether words of much chat tell something here."""
    said = frozenset(pieces)
    if any(words <= said for piece in said for words in watch.together.get(piece, ())):
        return True
    return not ROMANS.isdisjoint(said) and _may_count_in_roman(text, pieces, watch)


def _may_count_in_roman(text: str, pieces: list[str], watch: Watch) -> bool:
    """As in "page xii", "XII"; "xx" at the end of a comment is two kisses."""
    if not watch.pages.isdisjoint(pieces):
        return True
    written = unicodedata.normalize("NFKC", text)  # "Ⅻ" is one character
    if len(pieces) == 1 and len(pieces[0]) >= LOWER:
        return pieces[0] in ROMANS  # "xxix"
    return any(len(piece) > 1 and piece in ROMANS and piece.upper() in written for piece in pieces)


@cache
def watch_of(switched_on: tuple[str, ...]) -> Watch:
    """The words to watch for, gathered once for each choice of languages.

    A comment that is plainly in another language is read by that one's words: where only some
    are switched on, its words are watched for, and where all are, its number words and phrases.
    """
    codes = [code for code in LANGUAGES if code in switched_on or code == ENGLISH]
    home = [LANGUAGES[code] for code in codes]
    words = set("0123456789>~<")
    if len(home) < len(LANGUAGES):
        words.update(word for word, told in tellings().items() if _is_foreign(told))
    for language in home:
        words |= language.numbers.keys() | language.ordinals.keys()
        words.update("".join(phrase) for phrase in language.parted)
    usual = {phrase[0] for phrase in _phrases(home, _USUAL) if len(phrase) == 1}
    together: dict[str, list[frozenset[str]]] = defaultdict(list)
    several_last = (phrase for phrase in _phrases(home, ("last",)) if len(phrase) > 1)
    for phrase in (*_phrases(home, _DECIDING + _PLACING), *several_last):
        if any(map(str.isdecimal, "".join(phrase))):
            continue  # "3rd to last": a digit is watched for by itself
        said = frozenset(filter(_PIECES.fullmatch, phrase))
        rare = [word for word in said if word not in usual and len(word) > 1]
        if len(said) == 1:
            words |= said
        elif said:
            together[max(rare or said, key=_by_length)].append(said)
    return Watch(
        frozenset(words),
        dict(together),
        frozenset(word for word, told in tellings().items() if told.numeral_of)
        | {phrase[0] for phrase in _phrases(home, ("as_named",))},
        frozenset(word for phrase in _phrases(home, ("page",)) for word in phrase),
        heads_of(home),
        last_of_else(home, frozenset(words)),
        ROMANS | together.keys(),
    )


def _by_length(word: str) -> tuple[int, str]:
    return len(word), word


def _phrases(languages: Iterable[Language], groups: Iterable[str]) -> Iterator[Phrase]:
    for language in languages:
        for group in groups:
            yield from getattr(language, group)


def _is_foreign(told: Telling) -> bool:
    """Whether the word tells another language more than English, which is always read."""
    points = dict(told.points)
    return max(points.values(), default=0) > points.get(ENGLISH, 0)
