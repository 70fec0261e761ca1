"""Entries of Atom and items of RSS as the fields of a comment."""

from __future__ import annotations

import html
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from xml.etree.ElementTree import Element

from service.comments.markup import text_of

ATOM = "{http://www.w3.org/2005/Atom}"
_THREAD = "{http://purl.org/syndication/thread/1.0}"
_XHTML = "{http://www.w3.org/1999/xhtml}"
_RSS = ("", "{http://purl.org/rss/1.0/}")
_CREATOR = "{http://purl.org/dc/elements/1.1/}creator"
_DATE = "{http://purl.org/dc/elements/1.1/}date"
_ENCODED = "{http://purl.org/rss/1.0/modules/content/}encoded"
#: RSS 2.0 writes an author as "address (name)".
_ADDRESS = re.compile(r"\S+@\S+\s*\((.+)\)|\S+@\S+")


@dataclass(frozen=True, slots=True)
class Author:
    """Who wrote an entry: the names, and the first one's address on the web."""

    name: str = ""
    uri: str = ""


def author_in(people: Iterable[Element]) -> Author:
    """The authors (section 3.2). Their addresses for mail are nobody's business here."""
    found = list(people)
    names = [name for one in found if (name := _plain(one.find(f"{ATOM}name")))]
    uris = [uri for one in found if (uri := _plain(one.find(f"{ATOM}uri")))]
    return Author(" & ".join(names), uris[0] if uris else "")


def atom_fields(entry: Element, of_feed: Author) -> tuple[dict[str, str], list[str]]:
    """An entry's fields by their meanings, and what the host should be told of it.

    RFC 4287, section 4.1.2: an entry without an author is by its source's or the feed's. RFC 4685,
    section 3: `ref` is the id of the entry that this one answers.
    """
    told: list[str] = []
    author = author_in(entry.findall(f"{ATOM}author"))
    if not author.name:
        author = author_in(entry.findall(f"{ATOM}source/{ATOM}author"))
    if not author.name and of_feed.name:
        author = of_feed
        told.append("feed's author")
    published, updated = (_plain(entry.find(f"{ATOM}{name}")) for name in ("published", "updated"))
    if updated and not published:
        told.append("only updated")
    content = entry.find(f"{ATOM}content")
    if content is not None and content.get("src"):
        told.append("elsewhere")
        content = None
    texts = (content, entry.find(f"{ATOM}summary"), entry.find(f"{ATOM}title"))
    fields = {
        "text": next((words for one in texts if (words := words_of(one)).strip()), ""),
        "author": author.name,
        "author_id": author.uri,
        "id": _plain(entry.find(f"{ATOM}id")),
        "posted": published or updated,
        "edited": updated if published else "",
        "reply_to": _answered(entry),
    }
    return fields, told


def rss_fields(item: Element) -> dict[str, str]:
    """An item's fields by their meanings."""
    inside = {part.tag: part for part in reversed(item)}

    def words(*names: str) -> str:
        found = (_plain(inside.get(prefix + name)) for name in names for prefix in _RSS)
        return next(filter(None, found), "")

    author = _plain(inside.get(_CREATOR)) or _named(words("author"))
    markup = _plain(inside.get(_ENCODED)) or words("description") or html.escape(words("title"))
    return {
        "text": text_of(markup),
        "author": author,
        "id": words("guid", "link"),
        "posted": words("pubDate") or _plain(inside.get(_DATE)),
        "reply_to": _answered(item),
    }


def _named(author: str) -> str:
    found = _ADDRESS.fullmatch(author)
    return (found[1] or "") if found else author


def _answered(entry: Element) -> str:
    refs = (one.get("ref", "") for one in entry.findall(f"{_THREAD}in-reply-to"))
    return next(filter(None, refs), "")


def words_of(construct: Element | None) -> str:
    """The words of a text construct or content (RFC 4287, sections 3.1 and 4.1.3)."""
    if construct is None:
        return ""
    kind = construct.get("type", "text").casefold()
    if kind == "xhtml":
        return text_of("".join(_markup(construct)))
    plain = "".join(construct.itertext())
    if kind in {"html", "text/html"}:
        return text_of(plain)
    return plain if kind == "text" or kind.startswith("text/") else ""


def _markup(element: Element) -> Iterator[str]:
    """The elements inside as HTML, without attributes but those that hold words."""
    yield html.escape(element.text or "", quote=False)
    for part in element:
        tag = part.tag.removeprefix(_XHTML)
        if re.fullmatch(r"[a-zA-Z][a-zA-Z0-9]*", tag):
            alt = f' alt="{html.escape(part.get("alt", ""))}"' if tag == "img" else ""
            yield f"<{tag}{alt}>"
            yield from _markup(part)
            if tag not in {"br", "img", "hr"}:
                yield f"</{tag}>"
        else:
            yield from _markup(part)
        yield html.escape(part.tail or "", quote=False)


def _plain(element: Element | None) -> str:
    return "" if element is None else "".join(element.itertext()).strip()
