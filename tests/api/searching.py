"""Searches whatever somebody can get for a secret and its near spellings, packed or plain.

Written apart from the service's own check of announcements, so that it can find what that misses.
"""

from __future__ import annotations

import gzip
import html
import io
import re
import unicodedata
import warnings
import zipfile
import zlib
from collections.abc import Iterable, Iterator
from urllib.parse import unquote_plus

from rapidfuzz.distance import OSA

#: Letters that a rare word may differ in and still be told.
NEAR = 2
_WORD = re.compile(r"[^\W_]+")


class Secret:
    """Rare words, none of which anything public may hold, and exact texts such as a salt."""

    def __init__(self, words: Iterable[str], exact: Iterable[str] = ()) -> None:
        self.words = frozenset(_levelled(word) for word in words)
        self.exact = frozenset(text.lower() for text in exact)

    def found_in(self, content: bytes | str) -> set[str]:
        """What of the secret is in the content, however it is written or packed."""
        raw = content.encode("utf-8", "surrogatepass") if isinstance(content, str) else content
        found: set[str] = set()
        for text in set(_texts_in(_without_pixels(raw))):
            lowered = text.lower()
            found |= {exact for exact in self.exact if exact in lowered}
            levelled = _levelled(text)
            run_together = "".join(_WORD.findall(levelled))
            found |= {word for word in self.words if word in run_together}
            for seen in set(_WORD.findall(levelled)):
                found |= {word for word in self.words if _is_near(word, seen)}
        return found


def _is_near(word: str, seen: str) -> bool:
    return OSA.distance(word, seen, score_cutoff=NEAR) <= NEAR


def _levelled(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text).casefold()
    return "".join(letter for letter in plain if not unicodedata.combining(letter))


def _texts_in(raw: bytes, depth: int = 3) -> Iterator[str]:
    """The bytes as text, in every way they could be read; what is packed in them too."""
    for text in (raw.decode("utf-8", "replace"), raw.decode("utf-16-le", "replace")):
        yield text
        yield unquote_plus(text)
        yield html.unescape(text)
    with warnings.catch_warnings():
        # Bytes that are no text hold backslashes that begin no escape.
        warnings.simplefilter("ignore", DeprecationWarning)
        yield raw.decode("latin-1").encode("latin-1").decode("unicode_escape", "replace")
    if depth:
        for inner in _unpacked(raw):
            yield from _texts_in(inner, depth - 1)


_PNG = b"\x89PNG\r\n\x1a\n"


def _without_pixels(raw: bytes) -> bytes:
    """A picture without its pixels, wherever it begins: packed, they look like any letters.

    What is drawn in words is in the same picture as SVG, which is searched too.
    """
    begins = raw.find(_PNG)
    if begins < 0:
        return raw
    kept, at = [raw[: begins + len(_PNG)]], begins + len(_PNG)
    while at + 8 <= len(raw):
        ends = at + 12 + int.from_bytes(raw[at : at + 4], "big")
        if raw[at + 4 : at + 8] != b"IDAT":
            kept.append(raw[at:ends])
        at = ends
    return b"".join(kept)


def _unpacked(raw: bytes) -> Iterator[bytes]:
    """What is in an archive or a picture: members and their names, metadata."""
    if _PNG in raw:
        yield from _png_chunks(raw[raw.find(_PNG) :])
    if raw.startswith(b"\x1f\x8b"):
        yield gzip.decompress(raw)
    if raw.startswith(b"PK"):
        with zipfile.ZipFile(io.BytesIO(raw)) as archive:
            for name in archive.namelist():
                yield name.encode()
                yield archive.read(name)


def _png_chunks(raw: bytes) -> Iterator[bytes]:
    """Each chunk of a PNG (W3C PNG, third edition, section 5.3), inflated where it is deflated."""
    at = 8
    while at + 8 <= len(raw):
        length = int.from_bytes(raw[at : at + 4], "big")
        data = raw[at + 8 : at + 8 + length]
        yield data
        for start in range(min(len(data), 120)):
            if data[start] == 0x78:
                try:
                    yield zlib.decompressobj().decompress(data[start:])
                except zlib.error:
                    continue
        at += 12 + length
