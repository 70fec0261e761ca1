"""Style, scripts and pictures of the pages: each at an address that changes with its content.

So browsers may keep them for a year, and never show a page with the style of another version.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from hashlib import sha256
from pathlib import Path

from fastapi import APIRouter, Response

from service.announce.palette import stylesheet
from service.errors import NotFound

_FOLDER = Path(__file__).with_name("static")
_TYPES = {".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml; charset=utf-8"}
_FOR_A_YEAR = "public, max-age=31536000, immutable"

router = APIRouter(include_in_schema=False)


@dataclass(frozen=True, slots=True)
class Static:
    """One file, as it is served."""

    content: bytes
    media_type: str
    digest: str


@cache
def statics() -> dict[str, Static]:
    """Every file by its name; read once."""
    contents = {path.name: path.read_bytes() for path in sorted(_FOLDER.iterdir())}
    contents["pictures.css"] = _pictures_in_the_dark().encode()
    return {
        name: Static(content, _TYPES[Path(name).suffix], sha256(content).hexdigest()[:16])
        for name, content in contents.items()
    }


def _pictures_in_the_dark() -> str:
    """Inline pictures bring the light colours; where a page is dark these go before them."""
    rules = stylesheet("dark", "body:not(.plain) .picture")
    return f"@media (prefers-color-scheme: dark) {{\n{rules}\n}}\n"


def static_address(name: str) -> str:
    """Where a page finds the file of that name."""
    return f"/static/{statics()[name].digest}/{name}"


@router.api_route("/static/{digest}/{name}", methods=["GET", "HEAD"])
def get_static(digest: str, name: str) -> Response:
    """The file, where the address is that of its content."""
    found = statics().get(name)
    if found is None or found.digest != digest:
        raise NotFound("file", name, "load the page anew")
    return Response(
        found.content, media_type=found.media_type, headers={"Cache-Control": _FOR_A_YEAR}
    )
