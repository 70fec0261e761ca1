"""Plain text cut into tokens: words, numbers of every shape, and the marks between them.

A number's shape already tells much: a time code, a size, an amount of money is no page.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass

from service.ballots.met import Met

#: What a token is. `digits` is a plain whole number; the shapes after it are read by their shape.
WORD, DIGITS, END, SOFT, QUOTE, OTHER = "word", "digits", "end", "soft", "quote", "other"

#: A letter said for longer: "seventeeen".
STRETCHED = re.compile(r"([a-z])\1{2,}")

#: Marks that belong to the letter before them, as the vowel signs of Hindi. (Accents are gone.)
_MARKS = "".join(
    chr(code) for code in range(0x0483, 0xFFFF) if unicodedata.category(chr(code)) in {"Mn", "Mc"}
)

#: Most tokens are words before a space and marks at a sentence's end: they are tried first.

_TOKEN = re.compile(
    r"""
      (?P<plain>[a-z]+(?:'[a-z]+)*(?=[\ ,!?\n]|\.[\ \n.]|\.?$))
    | (?P<whole>(?<![\w.,:/+\-$£€₽#~'])\d+(?=[\s!?.,]|$)(?![.,]\d)
        (?!\s?[-x*~+%$£€¥₹₽=〜])(?!\s\d)(?!\.\w))
    | (?P<comma>,(?=\s))
    | (?P<stop>[.!?]+(?=[\ \n]|$)|\n+)
    | (?P<link>https?://\S+|www\.\S+|[\w.+-]+@[\w-]+\.[\w.]+)
    | (?P<handle>(?<!\w)@[\w.\-]+)
    | (?P<tag>\#(?=\w*[^\W\d_])\w+)
    | (?P<emoticon></?3+(?!\d)|(?<![\w)])[:;=x][-'^o]?3+(?![\w%])|(?<![\w.])8-[)(dp](?!\w)
        |(?<!\w)[;:=]-?[)(dpo0](?!\w)|(?<!\w)[0o][_.]+[0o](?!\w))
    | (?P<strike>~~.+?~~)
    | (?P<money>[$£€¥₹₽]\s?\d[\d.,]*(?:[km]\b)?|\d[\d.,]*\s?[$£€¥₹₽])
    | (?P<percent>\d[\d.,]*\s?%)
    | (?P<clock>\d{1,2}[:]\d{2}(?::\d{2})?(?!\d)(?:\s?[ap]\.?m\b\.?)?|\d{1,2}h\d{2}(?!\w))
    | (?P<score>(?<![\d:.,])\d{1,2}:\d(?![\d:]))
    | (?P<date>\d{1,4}(?P<sep>[./-])\d{1,2}(?P=sep)\d{1,4}(?![\d]))
    | (?P<broken>(?<![\w.,])\d(?:\s\d)+(?![\w%]|[.,:/]\d|-[)(dp]))
    | (?P<size>\d+(?:[.,]\d+)?[^\S\n]?[x*][^\S\n]?\d+(?:[.,]\d+)?(?:[^\S\n]?[x*][^\S\n]?\d+)*(?![\d]))
    | (?P<fraction>\d+/\d+(?:/\d+)*)
    | (?P<sum>\d+(?:[^\S\n]?\+[^\S\n]?\d+)+|\d+\s-\s\d+\s?=)
    | (?P<grouped>\d{1,3}(?:[,.']\d{3})+(?![\d]))
    | (?P<decimal>\d+[.,]\d+(?:[.,]\d+)*)
    | (?P<range>\d+(?:st|nd|rd|th)?\s?(?:-|~)\s?\d+(?:st|nd|rd|th)?(?![\w%])|\d+\.\.\d+)
    | (?P<ordinal>(?<![a-z\d])\d+(?:st|nd|rd|th|eme|ieme|er|re|ste|de|e|º|ª|°|o|a)(?![a-z\d']))
    | (?P<digits>(?<![a-z\d])\d+(?![a-z\d]))
    | (?P<mixed>[a-z]*\d[a-z\d]*)
    | (?P<word>[a-z]+(?:'[a-z]+)*
        |[^\W\d_a-z]+(?:['][\u0400-\u04ff]+|["""
    + _MARKS
    + r"""]+[^\W\d_a-z]*)*)
    | (?P<end>[.!?;\n]+)
    | (?P<quote>"|(?<!\w)'(?=\w)|(?<=\w)'(?!\w))
    | (?P<soft>[,:()/&\-+=|\[\]{}*•>\#~^])
    | (?P<other>\S)
    """,
    re.VERBOSE | re.DOTALL,
)


#: Each group of the pattern is a kind of token.
_KINDS = {kind: kind for kind in _TOKEN.groupindex} | {
    "plain": WORD,
    "stop": END,
    "whole": DIGITS,
    "comma": SOFT,
}


#: In a piece without any of these, what stands beyond the spaces around it changes no token; nor
#: does it where a mark ends a number.
_REACHES_ON = re.compile("[\\d~$£€¥₹₽]")
_ENDED_NUMBER = re.compile("[0-9]+[,.!?]")
#: A number before a space is one of its own unless it goes on behind that with one of these.
_CHANGING = frozenset("-x*~+%$£€¥₹₽=〜0123456789")


@dataclass(slots=True)
class Token:
    """A piece of plain text; `glued`: no space stands before it. It is never changed.

    It knows its size, not its place, so that a word of many comments is one token: where tokens
    stand is told by `places_of`, which only evidence asks for.
    """

    kind: str
    text: str
    size: int
    glued: bool


def scan(plain: str) -> list[Token]:
    """The plain text's tokens, in order; spaces fall away.

    What stands between two spaces and holds no number makes the same tokens wherever it stands.
    """
    tokens: list[Token] = []
    pieces = _PIECES
    at = reached = 0
    for piece in plain.split(" "):
        end = at + len(piece)
        known = pieces[piece] if at >= reached else None
        if known is not None:
            tokens += known
        elif at >= reached and piece.isdecimal() and plain[end + 1 : end + 2] not in _CHANGING:
            tokens.append(Token(DIGITS, piece, end - at, glued=False))
        elif reached < end:
            last = reached if at < reached else -1
            reached = _scan_piece(plain, max(at, reached), end, last, tokens)
        at = end + 1
    return tokens


def _scan_piece(plain: str, at: int, end: int, last: int, tokens: list[Token]) -> int:
    """Add the tokens that begin in [at:end]; where the last of them ends.

    `last` is where the token before them ends, -1 if a space follows it.
    """
    while at < end:
        found = _TOKEN.match(plain, at)
        if found is None:  # a space of another kind
            at += 1
            continue
        start, at = found.span()
        kind = _KINDS[found.lastgroup or OTHER]
        tokens.append(Token(kind, plain[start:at], at - start, start == last))
        last = at
    return at


def _tokens_of(piece: str) -> list[Token] | None:
    """The tokens of what stands between two spaces; None where its surroundings decide."""
    if piece.isascii() and piece.isalpha() and piece.islower():
        return [Token(WORD, piece, len(piece), glued=False)]
    if _REACHES_ON.search(piece) and not _ENDED_NUMBER.fullmatch(piece):
        return None
    tokens: list[Token] = []
    _scan_piece(piece, 0, len(piece), -1, tokens)
    return tokens


_PIECES = Met(_tokens_of)


#: All spaces but the line end, which is a token.
_SPACES = frozenset(filter(str.isspace, map(chr, range(0x3001)))) - {"\n"}


def places_of(tokens: Sequence[Token], plain: str) -> list[int]:
    """Where each of the tokens begins in the text that it was scanned from."""
    places: list[int] = []
    at = 0
    for token in tokens:
        if not token.glued:
            while plain[at] in _SPACES:
                at += 1
        places.append(at)
        at += token.size
    return places
