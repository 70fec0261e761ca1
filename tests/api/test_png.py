"""Pictures as PNG: letters are drawn with the service's own fonts, whatever the computer has."""

from __future__ import annotations

import struct
import zlib

import pytest

from service.api.png import MOST_WIDE, png_of

#: A code point that Unicode gives to nobody: no font has a letter for it.
NO_LETTER = "\ue123"


def picture(words: str, wide: int = 60) -> str:
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide} 40" width="{wide}" height="40" '
        f'font-family="Noto Sans, system-ui, sans-serif"><text x="10" y="30" font-size="24">{words}'
        "</text></svg>"
    )


def pixels(words: str) -> bytes:
    """The packed pixels of a picture of these words."""
    content, at, found = png_of(picture(words)), 8, b""
    while at < len(content):
        length, kind = struct.unpack(">I4s", content[at : at + 8])
        found += content[at + 8 : at + 8 + length] if kind == b"IDAT" else b""
        at += 12 + length
    return zlib.decompress(found)


@pytest.mark.parametrize(
    "letter", ["A", "é", "ż", "ø", "ß", "Ω", "Ж", "ї", "ह", "ع", "–", "…", "’"]
)
def test_a_letter_is_drawn(letter: str) -> None:
    drawn = pixels(letter)
    assert drawn not in (pixels(""), pixels(NO_LETTER))


def test_letters_differ_and_bold_ones_too() -> None:
    assert pixels("A") != pixels("B")
    bold = png_of(picture("A").replace("<text ", '<text font-weight="bold" '))
    assert bold != png_of(picture("A"))


def test_a_picture_is_never_wider_than_can_be_drawn_quickly() -> None:
    wide, _ = struct.unpack(">II", png_of(picture("A", 5000))[16:24])
    assert wide == MOST_WIDE
    narrow, high = struct.unpack(">II", png_of(picture("A", 60))[16:24])
    assert (narrow, high) == (60, 40)


def test_the_same_picture_is_the_same_file() -> None:
    first = png_of(picture("A"))
    png_of.cache_clear()
    assert png_of(picture("A")) == first
