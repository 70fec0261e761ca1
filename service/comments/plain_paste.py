"""A plain list of comments without times: one a line, or "name: words"."""

from __future__ import annotations

import re
from collections.abc import Sequence

from service.comments.comment import Comment
from service.comments.entries import LONGEST_TEXT, TOO_LONG, Times, shortened
from service.comments.formats import Export, Source, Unreadable
from service.comments.page_lines import Line

_NAMED = re.compile(r"([^\s:：][^:：]{0,39}?)\s?[:：]\s+(\S.*)")
#: The share of lines that must be "name: words" for the list to be of that kind.
_MOST = 0.6
#: What stands before a colon and is nobody's name.
_NO_NAMES = re.compile(
    r"(?:my |final |new )?(?:vote|votes|page|pages|guess|answer|choice|pick|number|edit|update|ps|p\.s\.|"
    r"note|re|https?|seite|stimme|meine stimme|mon vote|vote pour|mi voto|il mio voto|meu voto|"
    r"mijn stem|pagina|página|first|second|third)(?: \w+)?|.*\d:?\d\d$",
    re.IGNORECASE,
)


def read_plain(lines: Sequence[Line], source: Source) -> Export:
    """The comments of a list without times: written at any time up to the copying."""
    filled = [line for line in lines if line.kind not in {"blank", "reply", "below", "button"}]
    times = Times(source)
    named = [found for line in filled if (found := _named(line.text))]
    mapping: tuple[tuple[str, str], ...]
    if len(named) >= _MOST * len(filled) and named:
        comments = _with_names(filled, times)
        how = 'each line as "name: words", other lines with the comment above them'
        mapping = (("author", "before the colon"), ("text", "after it"))
    else:
        comments = [
            Comment("", line.text, times.unknown, place=f"line {line.number}") for line in filled
        ]
        how = "each line as one comment by a writer of its own"
        mapping = (("text", "the line"),)
    notes = [f"The paste tells no times: it was read as a list, {how}."]
    buttons = [line for line in lines if line.kind in {"reply", "below", "button"}]
    if buttons:
        listed = ", ".join(f"{line.number} ({line.text})" for line in buttons[:40])
        notes.append(f"Left out as buttons of a page: line {listed}.")
    return Export(
        "pasted",
        tuple(one for one in comments if len(one.text) <= LONGEST_TEXT),
        tuple(
            Unreadable(one.place, shortened(one.text), TOO_LONG)
            for one in comments
            if len(one.text) > LONGEST_TEXT
        ),
        mapping,
        tuple(notes),
    )


def _named(text: str) -> tuple[str, str] | None:
    found = _NAMED.fullmatch(text)
    if not found or _NO_NAMES.fullmatch(found[1]) or len(found[1].split()) > 6:
        return None
    return found[1], found[2]


def _with_names(lines: Sequence[Line], times: Times) -> list[Comment]:
    comments: list[Comment] = []
    for line in lines:
        found = _named(line.text)
        place = f"line {line.number}"
        if found:
            comments.append(Comment(found[0], found[1], times.unknown, place=place))
        elif comments:
            last = comments.pop()
            words = f"{last.text}\n{line.text}"
            comments.append(Comment(last.author, words, times.unknown, place=last.place))
        else:
            comments.append(Comment("", line.text, times.unknown, place=place))
    return comments
