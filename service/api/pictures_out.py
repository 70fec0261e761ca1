"""Pictures and files as they are sent: how they may look, and when a copy is still good."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from time import thread_time
from typing import Annotated, Any, Literal

from fastapi import Depends, Path, Query, Request, Response

from service.announce.map_picture import Look, Shape
from service.announce.palette import Theme
from service.api.gate import drawn_for
from service.api.png import png_of
from service.api.problem_models import problems
from service.api.wiring import AnyCaller, Caller

Ending = Literal["svg", "png"]
#: What a picture is asked for as, the end of its address.
InEnding = Annotated[Ending, Path(description="As SVG, or as PNG drawn from it.")]

_MEDIA: dict[Ending, str] = {"svg": "image/svg+xml", "png": "image/png"}
_SVG_EXAMPLE = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 806 788" role="img"></svg>'


def picture_files(*statuses: int) -> dict[int | str, dict[str, Any]]:
    """The declaration of a route that answers with a picture."""
    drawn = {"type": "string", "examples": [_SVG_EXAMPLE]}
    pixels = {"type": "string", "format": "binary", "examples": ["the bytes of a PNG"]}
    content = {_MEDIA["svg"]: {"schema": drawn}, _MEDIA["png"]: {"schema": pixels}}
    return {200: {"content": content, "description": "The picture."}} | problems(*statuses)


def calendar_files(*statuses: int) -> dict[int | str, dict[str, Any]]:
    """The declaration of a route that answers with a calendar file."""
    example = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n"
    content = {"text/calendar": {"schema": {"type": "string", "examples": [example]}}}
    return {200: {"content": content, "description": "The file."}} | problems(*statuses)


def _look(
    theme: Annotated[Theme, Query(description="Light or dark.")] = "light",
    *,
    plain: Annotated[
        bool, Query(description="Transparent ground, to be laid over a video.")
    ] = False,
) -> Look:
    return Look(theme=theme, plain=plain)


def _map_look(
    look: Annotated[Look, Depends(_look)],
    shape: Annotated[
        Shape,
        Query(description="The map alone, or set into a square or wide post or a video frame."),
    ] = "map",
    *,
    heading: Annotated[bool, Query(description="Game and round above the map.")] = True,
    legend: Annotated[bool, Query(description="What the signs mean.")] = True,
) -> Look:
    return Look(theme=look.theme, shape=shape, plain=look.plain, heading=heading, legend=legend)


#: How a chart, and how a map is to look, as the query says.
ChartLook = Annotated[Look, Depends(_look)]
MapLook = Annotated[Look, Depends(_map_look)]


@dataclass(frozen=True, slots=True)
class Sending:
    """What an answer with a file depends on: the request, and who sent it."""

    request: Request
    caller: Caller | None

    def picture(self, drawn: str, name: str, ending: Ending) -> Response:
        """The picture as it was asked for."""
        began = thread_time()
        content = drawn.encode() if ending == "svg" else png_of(drawn)
        drawn_for(self.request, thread_time() - began)
        return self.file(content, _MEDIA[ending], f"{name}.{ending}")

    def file(self, content: bytes, media: str, name: str) -> Response:
        """The file, or only that the caller's copy is still good (RFC 9110, section 13.1.2).

        A copy is never used unasked, since a page may be stitched at any time. One that a host was
        sent is kept by nobody else: a draft is hers alone.
        """
        tag = f'"{hashlib.sha256(content).hexdigest()[:32]}"'
        headers = {
            "ETag": tag,
            "Cache-Control": f"{'public' if self.caller is None else 'private'}, no-cache",
            "Vary": "Authorization",
        }
        if tags_of(self.request) & {tag, "*"}:
            return Response(status_code=304, headers=headers)
        headers["Content-Disposition"] = f'inline; filename="{name}"'
        # XML tells its encoding in the header too: not every reader looks inside.
        told = f"{media}; charset=utf-8" if media.endswith("+xml") else media
        return Response(content, media_type=told, headers=headers)


def _sending(request: Request, caller: AnyCaller) -> Sending:
    return Sending(request, caller)


def _sending_to_all(request: Request) -> Sending:
    return Sending(request, None)


def tags_of(request: Request) -> frozenset[str]:
    """The tags of the copies that the caller has (RFC 9110, section 13.1.2)."""
    named = request.headers.get("If-None-Match", "").split(",")
    return frozenset(each.strip().removeprefix("W/") for each in named if each.strip())


#: How a file of a round is sent, which may be a draft's; how one that is for everybody.
RoundFile = Annotated[Sending, Depends(_sending)]
PublicFile = Annotated[Sending, Depends(_sending_to_all)]
