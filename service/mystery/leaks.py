"""Whether a text that is ready to be published would give the answer away."""

from __future__ import annotations

import html
import re

from service.mystery.answer import Answer, GuessRules
from service.mystery.compare import find_mentions
from service.mystery.concepts import is_common, is_made_of_common
from service.mystery.likeness import spelt_alike
from service.mystery.names import forms_of, words_of
from service.mystery.parts import telling_titles
from service.mystery.spellings import designers_of, titles_of
from service.mystery.talk import SMALL_WORDS
from service.mystery.unspaced import is_unspaced

#: Names of fewer letters are looked for as whole words only, not inside longer ones.
SHORTEST_HIDDEN_NAME = 6

#: What may stand before a page's number in a vote.
_PAGE = frozenset(("page", "pages"))
_PERCENT = re.compile(r"(?:%[0-9a-fA-F]{2})+")


def names_answer(text: str, rules: GuessRules) -> bool:
    """Whether `text` holds the answer, a near spelling of it, or a word that gives it away.

    The title, the aliases and the designer are looked for as words, run together, as in a web
    address or a file name, and inside longer words; so are uncommon words of them alone. Rather
    one text too many is stopped than one too few.
    """
    return any(_gives_away(shown, rules.answer) for shown in _as_shown(text))


def is_lost_in_talk(answer: Answer, page_count: int) -> bool:
    """Whether the title or an alias is what nearly every vote or sentence says anyway.

    That is: the number of one of the chart's `page_count` pages, the word page, a small word
    such as "it", a single letter. No text could then be told from one that names the answer.
    """
    return any(_is_said_anyway(name, page_count) for name in (answer.title, *answer.aliases))


def _is_said_anyway(name: str, page_count: int) -> bool:
    forms = forms_of(name)
    left = tuple(form for form in forms if form not in _PAGE)
    if len(left) != 1:
        return not left
    [word] = left
    if word.isdecimal():
        return len(word) <= len(str(page_count)) and 1 <= int(word) <= page_count
    # "page" is dropped before a number only: "Page A" is a name.
    alone = len(forms) == 1
    is_letter = len(word) == 1 and not is_unspaced(word)
    return alone and (is_letter or word in SMALL_WORDS)


def _as_shown(text: str) -> frozenset[str]:
    """The text, and what a browser makes of it."""
    plain = _PERCENT.sub(_percent_decoded, text)
    return frozenset((text, plain, plain.replace("+", " "), html.unescape(text)))


def _percent_decoded(found: re.Match[str]) -> str:
    """Bytes written as in a web address ("%20"), as text."""
    return bytes.fromhex(found[0].replace("%", "")).decode("utf-8", errors="replace")


def _gives_away(text: str, answer: Answer) -> bool:
    words = words_of(text)
    names = (*titles_of(answer), *designers_of(answer))
    if find_mentions(words, names):
        return True
    telling = _words_that_tell(answer)
    run_together = "".join(word.form for word in words)
    hidden = {*telling, *(name.joined for name in names)}
    if any(len(h) >= SHORTEST_HIDDEN_NAME and h in run_together for h in hidden):
        return True
    return any(
        spelt_alike(tell, form)
        for word in words
        for form in (word.form, word.bare)
        for tell in telling
    )


def _words_that_tell(answer: Answer) -> frozenset[str]:
    """Words of the answer that would give it away alone: uncommon ones, parts of the designer."""
    of_titles = {w for title in telling_titles(answer) for w in title.rare | title.made}
    of_designer = {
        form
        for form in forms_of(answer.designer)
        if len(form) > 3 and (not is_common(form) or is_made_of_common(form))
    }
    return frozenset(of_titles | of_designer)
