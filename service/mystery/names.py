"""Names as they are compared: a text's words without case, accents and punctuation.

Case folding and decomposition follow Unicode (UAX 15, NFKD; the Standard, section 3.13). Accents
are dropped only where they are accents: the voicing marks of kana and the vowel signs of Indic
scripts make other letters and stay.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass

#: Articles that may stand before a name or be left out, without making it another name.
ARTICLES = frozenset(("the", "a", "an"))

#: Letters that Unicode does not take apart although readers see a plain letter and an accent.
_PLAIN = str.maketrans({"ø": "o", "ł": "l", "đ": "d", "ħ": "h", "ı": "i", "æ": "ae", "œ": "oe", "þ": "th", "ð": "d"})  # fmt: skip
_APOSTROPHES = "'’‘ʼ`´＇"
_HANDLE = re.compile(r"[^\W_][\w.\-]*")
_THRICE = re.compile(r"([^\W\d_])\1{2,}")


@dataclass(frozen=True, slots=True)
class Word:
    """A word of a comment, at text[start:end].

    `form` is the word as it is compared; `bare` the same without a closing apostrophe-s,
    `spelt` the same with every letter that was written.
    `handle` says that it is a name given with @, for addressing somebody.
    """

    start: int
    end: int
    form: str
    bare: str
    spelt: str
    capital: bool
    shout: bool
    handle: bool = False


def _is_accent(char: str) -> bool:
    """Whether a combining mark may be dropped without making another letter."""
    code = ord(char)
    if not unicodedata.category(char).startswith("M"):
        return False
    latin_greek_cyrillic = 0x300 <= code <= 0x36F or 0x1AB0 <= code <= 0x1AFF
    hebrew_arabic = 0x591 <= code <= 0x5C7 or 0x64B <= code <= 0x65F or code == 0x670
    for_symbols = 0x20D0 <= code <= 0x20FF or 0xFE00 <= code <= 0xFE0F
    return latin_greek_cyrillic or hebrew_arabic or for_symbols


def fold(text: str) -> str:
    """The letters and digits of `text`, as names are compared: no case, accents, punctuation.

    A letter written three times or more is taken as written once ("ferryyy"); digits of every
    script become 0 to 9.
    """
    return _THRICE.sub(r"\1", _letters(text))


def _letters(text: str) -> str:
    """As fold, with every letter that was written."""
    folded = unicodedata.normalize("NFKD", text).casefold().translate(_PLAIN)
    kept: list[str] = []
    for char in unicodedata.normalize("NFKD", folded):
        if char.isdecimal():
            kept.append(str(unicodedata.digit(char)))
        elif char.isalnum() or (unicodedata.category(char)[0] == "M" and not _is_accent(char)):
            kept.append(char)
    return unicodedata.normalize("NFC", "".join(kept))


def _stands_alone(char: str) -> bool:
    """Whether a letter is of a script that puts no spaces between words (Han, kana)."""
    code = ord(char)
    return 0x3041 <= code <= 0x30FF or 0x3400 <= code <= 0x9FFF or 0xFF66 <= code <= 0xFF9F or 0x20000 <= code <= 0x3FFFF  # fmt: skip


def _belongs(text: str, at: int) -> bool:
    """Whether the character at `at` continues the word before it."""
    char = text[at]
    if char.isalnum():
        return not _stands_alone(char)
    category = unicodedata.category(char)
    if category[0] == "M":
        return True
    joins = char in _APOSTROPHES or category == "Cf"
    return joins and at + 1 < len(text) and text[at + 1].isalnum() and text[at - 1].isalnum()


def _word(text: str, start: int, end: int) -> Word | None:
    """The word at text[start:end], None where nothing is left of it."""
    raw = text[start:end]
    form = fold(raw)
    if not form:
        return None
    owned = len(raw) > 2 and raw[-2] in _APOSTROPHES and raw[-1] in "sS"
    cased = [char for char in raw if char.isupper() or char.islower()]
    shout = len(cased) > 1 and all(char.isupper() for char in cased)
    bare = fold(raw[:-2]) if owned else form
    return Word(start, end, form, bare, _letters(raw), raw[0].isupper() or raw[0].istitle(), shout)


def _is_plus(text: str, at: int) -> bool:
    """Whether a plus sign is read aloud: between spaces, or before a figure ("+1")."""
    alone = text[max(0, at - 1) : at].isspace() and text[at + 1 : at + 2].isspace()
    return alone or text[at + 1 : at + 2].isdecimal()


def _handle(text: str, start: int, end: int) -> Word:
    form = fold(text[start:end])
    return Word(start, end, form, form, form, capital=False, shout=False, handle=True)


def words_of(text: str) -> tuple[Word, ...]:
    """The words of `text` in order; `&` is the word "and", a lone `+` the word "plus"."""
    words: list[Word] = []
    at = 0
    while at < len(text):
        char = text[at]
        end = at + 1
        if char in "&＆":
            words.append(Word(at, end, "and", "and", "and", capital=False, shout=False))
        elif char == "+" and _is_plus(text, at):
            words.append(Word(at, end, "plus", "plus", "plus", capital=False, shout=False))
        elif char == "@":
            handle = _HANDLE.match(text, end)
            if handle:
                end = handle.end()
                words.append(_handle(text, at, end))
        elif char.isalnum():
            while end < len(text) and _belongs(text, end):
                if _stands_alone(char) and text[end].isalnum():
                    break
                end += 1
            word = _word(text, at, end)
            if word is not None:
                words.append(word)
        at = end
    return tuple(words)


def forms_of(name: str) -> tuple[str, ...]:
    """The words of a name as they are compared, without a leading English article."""
    forms = tuple(word.form for word in words_of(name))
    return forms[1:] if len(forms) > 1 and forms[0] in ARTICLES else forms
