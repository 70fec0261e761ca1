"""HTML of a comment as the text a reader sees, keeping what changes its meaning.

Line breaks and list items stay lines, struck-out words stand between ~~ and ~~, quoted lines
begin with "> ". Numbers of a list are left out: nobody wrote them.
"""

from __future__ import annotations

import html
import re
from html.parser import HTMLParser

_PARAGRAPHS = frozenset(
    {"p", "blockquote", "h1", "h2", "h3", "h4", "h5", "h6", "pre", "table", "hr", "figure"}
)
_LINES = frozenset({"div", "li", "ul", "ol", "tr", "dt", "dd", "section", "article", "header"})
_STRUCK = frozenset({"del", "s", "strike"})
_HIDDEN = frozenset({"script", "style", "template", "head", "title"})
_SPACES = re.compile(r"[ \t\n\r\f\v\xa0]+")
_TAGS = re.compile(r"<[^<>]*>")
_SIGNS = re.compile(
    r"</?(?:p|br|a|b|i|u|s|em|strong|del|strike|span|div|ul|ol|li|blockquote|code|pre|img)\b[^<>]*>"
    r"|&(?:#\d{1,7}|#[xX][\da-fA-F]{1,6}|amp|lt|gt|quot|apos|nbsp);",
    re.IGNORECASE,
)
_ITEM = "- "
#: Deeper quotes are shown as this deep.
_DEEPEST_QUOTE = 20


def looks_like_markup(text: str) -> bool:
    """Whether a text holds tags or entities as only HTML has them."""
    return bool(_SIGNS.search(text))


def text_of(markup: str) -> str:
    """The text of a piece of HTML, however broken; it never fails."""
    reader = _Reader()
    try:
        reader.feed(markup)
        reader.close()
    except AssertionError:  # the library gives up on some malformed declarations
        return html.unescape(_TAGS.sub(" ", markup)).strip()
    return reader.text()


class _Reader(HTMLParser):
    """Collects lines, each with the depth of quoting that it stands in."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self._lines: list[tuple[int, str]] = []
        self._line = ""
        self._quotes = 0
        self._struck = 0
        self._hidden = 0
        self._verbatim = 0

    def text(self) -> str:
        """What was collected: at most one empty line between two lines, none at the ends."""
        self._break()
        kept: list[tuple[int, str]] = []
        for depth, line in self._lines:
            if line and kept and not kept[-1][1]:
                # An empty line is part of a quote only between two lines of it.
                kept[-1] = (min(kept[-1][0], depth), "")
            if line or (kept and kept[-1][1]):
                kept.append((min(depth, _DEEPEST_QUOTE), line))
        while kept and not kept[-1][1]:
            kept.pop()
        return "\n".join(("> " * depth + line).rstrip() for depth, line in kept)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in _HIDDEN:
            self._hidden += 1
        elif tag == "br":
            self._break(keep_empty=True)
        elif tag == "img":
            self._write(dict(attrs).get("alt") or "")
        elif tag in _PARAGRAPHS:
            self._paragraph()
        elif tag in _LINES:
            self._break()
        self._open(tag)

    def _open(self, tag: str) -> None:
        if tag == "li":
            self._line = _ITEM
        elif tag == "blockquote":
            self._quotes += 1
        elif tag == "pre":
            self._verbatim += 1
        elif tag == "q":
            self._write("“")
        elif tag in {"td", "th"} and self._line:
            self._write(" ")
        elif tag in _STRUCK:
            self._strike(+1)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        if tag not in {"br", "img", "hr"}:
            self.handle_endtag(tag)

    def handle_endtag(self, tag: str) -> None:
        if tag in _HIDDEN:
            self._hidden = max(0, self._hidden - 1)
        elif tag in _STRUCK and self._struck:
            self._strike(-1)
        elif tag == "q":
            self._write("”")
        elif tag in _PARAGRAPHS:
            self._break()
            if tag == "blockquote":
                self._quotes = max(0, self._quotes - 1)
            self._paragraph()
        elif tag in _LINES:
            if self._line == _ITEM:
                self._line = ""  # an empty item
            self._break()
        if tag == "pre":
            self._verbatim = max(0, self._verbatim - 1)

    def handle_data(self, data: str) -> None:
        if self._verbatim:
            first, *others = data.splitlines() or [""]
            self._write(first)
            for line in others:
                self._break(keep_empty=True)
                self._write(line)
            return
        words = _SPACES.sub(" ", data)
        if not self._line.strip("- ~") or self._line.endswith(" "):
            words = words.lstrip(" ")
        self._write(words)

    def _write(self, words: str) -> None:
        if not self._hidden:
            self._line += words

    def _strike(self, step: int) -> None:
        before = self._struck
        self._struck += step
        if not before or not self._struck:
            self._write("~~")

    def _break(self, *, keep_empty: bool = False) -> None:
        line = self._line
        if line == _ITEM:  # the item's words are still to come, in a paragraph of their own
            return
        if self._struck:  # strikes are marked line by line
            line = line.removesuffix("~~") if line.endswith("~~") else line + "~~"
        line = line.rstrip() if self._verbatim else line.strip()
        if line or keep_empty:
            self._lines.append((self._quotes, line))
        self._line = "~~" if self._struck else ""

    def _paragraph(self) -> None:
        self._break()
        if self._line == _ITEM:
            return
        if self._lines and self._lines[-1][1]:
            self._lines.append((self._quotes, ""))
