"""Feeds of comments: Atom (RFC 4287, December 2005) with threading (RFC 4685, September 2006), RSS.

XML is read through defusedxml, entry by entry: a feed that defines entities is refused.
"""

from __future__ import annotations

import codecs
import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from xml.etree.ElementTree import Element, ParseError

from defusedxml.common import DefusedXmlException
from defusedxml.ElementTree import iterparse

from service.comments.comment import Comment
from service.comments.entries import Times, comment_of
from service.comments.feed_entries import ATOM, Author, atom_fields, author_in, rss_fields
from service.comments.formats import Export, Source, Unreadable
from service.errors import BadExport

_ROOT = re.compile(
    r"(?:\s+|<\?[^>]*>|<!--.*?-->|<!doctype[^\[>]*(?:\[.*?\]\s*)?>)*<(?:\w+:)?(?:feed|entry|rss|rdf)\b",
    re.DOTALL | re.IGNORECASE,
)
_ROOT_WITHIN = 20_000
_DECLARED = re.compile(rb"\s*<\?xml[^>]*?encoding\s*=\s*[\"']([\w.:-]{1,40})[\"']")
_ENTRY = f"{ATOM}entry"
_ITEMS = frozenset({"item", "{http://purl.org/rss/1.0/}item"})
#: RFC 6721 (September 2012): what was taken out of a feed.
_DELETED = "{http://purl.org/atompub/tombstones/1.0}deleted-entry"
_ROOTS = frozenset(
    {f"{ATOM}feed", _ENTRY, "rss", "{http://www.w3.org/1999/02/22-rdf-syntax-ns#}RDF"}
)
_ATOM_MAPPING = (
    ("text", "content or summary"),
    ("author", "author"),
    ("author_id", "author's uri"),
    ("id", "id"),
    ("posted", "published or updated"),
    ("edited", "updated"),
    ("reply_to", "in-reply-to"),
)
_RSS_MAPPING = (
    ("text", "content or description"),
    ("author", "creator or author"),
    ("id", "guid or link"),
    ("posted", "pubDate or date"),
    ("reply_to", "in-reply-to"),
)


def is_feed(text: str) -> bool:
    """Whether a text's first element is a feed's."""
    return bool(_ROOT.match(text[:_ROOT_WITHIN]))


def declares_encoding(beginning: bytes) -> bool:
    """Whether bytes begin as XML that says it is in another encoding than UTF-8 or UTF-16."""
    return _codec_declared(beginning) is not None


def in_utf8(content: bytes) -> bytes:
    """XML that declares another encoding than UTF-8 or UTF-16, in UTF-8; else the bytes as they are."""
    codec = _codec_declared(content)
    try:
        return codec.decode(content)[0].encode("utf-8") if codec else content
    except (UnicodeError, TypeError, AttributeError):
        return content


def _codec_declared(content: bytes) -> codecs.CodecInfo | None:
    found = _DECLARED.match(content[:200])
    try:
        codec = codecs.lookup(found[1].decode("ascii")) if found else None
    except (LookupError, UnicodeError):
        return None
    return None if codec is None or codec.name.startswith(("utf", "ascii")) else codec


@dataclass(slots=True)
class _Feed:
    """What is known while a feed is read."""

    times: Times
    author: Author = field(default_factory=Author)
    is_atom: bool = True
    told: Counter[str] = field(default_factory=Counter)
    deleted: set[str] = field(default_factory=set)
    found: list[Comment | Unreadable] = field(default_factory=list)


def read_feed(text: str, source: Source) -> Export:
    """The comments of a feed, in its order.

    Raises BadExport, with the line where the XML breaks, for what defines entities, and for XML
    that is no feed.
    """
    feed = _Feed(Times(source))
    try:
        _read(text, feed, source.name)
    except DefusedXmlException:
        what = "the feed defines entities, which no feed of comments needs"
        raise BadExport(source.name, what, "export the feed again, or as CSV or JSON") from None
    except ParseError as error:
        raise BadExport(
            source.name,
            f"the XML is broken or cut off here ({str(error).partition(':')[0]})",
            "export the feed again, whole",
            f"line {error.position[0]}",
        ) from None
    except (RecursionError, ValueError):  # an encoding that it cannot be in, elements too deep
        what = "the feed's XML cannot be read"
        raise BadExport(source.name, what, "export it as CSV or JSON") from None
    comments = [one for one in feed.found if isinstance(one, Comment)]
    kept = [one for one in comments if one.id not in feed.deleted]
    feed.told["deleted"] = len(feed.deleted)
    feed.told["none"] = not feed.found
    return Export(
        "feed",
        tuple(kept),
        tuple(one for one in feed.found if isinstance(one, Unreadable)),
        _ATOM_MAPPING if feed.is_atom else _RSS_MAPPING,
        (*_notes(feed.told), *feed.times.notes()),
    )


class _Pieces:
    """A text as the parser reads a file, without another copy of it."""

    def __init__(self, text: str) -> None:
        self._text = text
        self._place = len(text) - len(text.lstrip())

    def read(self, size: int = -1, /) -> str:
        start, self._place = self._place, self._place + size
        return self._text[start : self._place]


def _read(text: str, feed: _Feed, name: str) -> None:
    depth = 0
    parts: list[Element] = []
    for event, element in iterparse(_Pieces(text), events=("start", "end")):
        if event == "start":
            if not depth:
                _check_root(element, feed, name)
            depth += 1
            parts.append(element)
            continue
        depth -= 1
        parts.pop()
        if element.tag == _ENTRY and depth < 2:
            feed.found.append(_entry(element, feed))
        elif element.tag in _ITEMS:
            feed.found.append(_item(element, feed))
        elif depth == 1 and parts[0].tag != _ENTRY:
            _of_feed(element, feed)
        else:
            continue
        if parts:
            parts[-1].remove(element)  # a feed of any length takes no more memory than an entry


def _check_root(root: Element, feed: _Feed, name: str) -> None:
    feed.is_atom = root.tag.startswith(ATOM)
    if root.tag not in _ROOTS:
        namespace, _, tag = root.tag.rpartition("}")
        of = f"{tag[:40]!r} in {namespace[1:81] or 'no namespace'}"
        raise BadExport(
            name,
            f"the XML is no feed: its first element is {of}",
            "hand in an Atom or RSS feed of the comments, or export them as CSV or JSON",
        )


def _of_feed(element: Element, feed: _Feed) -> None:
    """What a feed tells beside its entries."""
    if element.tag == f"{ATOM}author":
        feed.author = author_in([element])
    elif element.tag == f"{ATOM}link" and element.get("rel") == "next":
        feed.told["pages elsewhere"] += 1
    elif element.tag == _DELETED and element.get("ref"):
        feed.deleted.add(element.get("ref", ""))


def _entry(entry: Element, feed: _Feed) -> Comment | Unreadable:
    place = f"entry {len(feed.found) + 1}"
    fields, told = atom_fields(entry, feed.author)
    feed.told.update(told)
    return comment_of(fields, place, feed.times)


def _item(item: Element, feed: _Feed) -> Comment | Unreadable:
    place = f"item {len(feed.found) + 1}"
    return comment_of(rss_fields(item), place, feed.times)


def _notes(told: Counter[str]) -> Iterator[str]:
    sentences = {
        "none": "The feed holds no comments.",
        "only updated": (
            "Entries that tell only when they were last updated: {}, taken as posted then."
        ),
        "feed's author": "Entries that name no author: {}, taken as by the feed's.",
        "elsewhere": "Entries whose words stand elsewhere, behind a link: {}.",
        "pages elsewhere": "Links to further pages of comments that are not in this file: {}.",
        "deleted": "Comments deleted at their source, left out: {}.",
    }
    for what, sentence in sentences.items():
        if told[what]:
            yield sentence.format(told[what])
