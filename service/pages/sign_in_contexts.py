"""What the pages of signing in show."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar

from service.pages.frame import Frame
from service.pages.rendering import Context


@dataclass(frozen=True, slots=True)
class SignInPage(Context):
    """The door of the desk: the password, where one is set, and how to get a link.

    `then` is where the host goes afterwards. `refused` says why the last try was not let in.
    """

    template: ClassVar[str] = "sign_in.html"

    frame: Frame
    has_password: bool
    then: str
    refused: str


@dataclass(frozen=True, slots=True)
class LinkPage(Context):
    """What a one-time link opens: one button, so that no program that looks at links uses it up."""

    template: ClassVar[str] = "sign_in_link.html"

    frame: Frame
    key: str
    refused: str


@dataclass(frozen=True, slots=True)
class SessionShown:
    """A browser that is signed in; `is_this` is the one that asks."""

    number: int
    way: str
    began: datetime
    ends: datetime
    is_this: bool


@dataclass(frozen=True, slots=True)
class WaysInPage(Context):
    """Password and sessions, to set the one and end the others."""

    template: ClassVar[str] = "ways_in.html"

    frame: Frame
    sessions: tuple[SessionShown, ...]
    has_password: bool
    shortest: int
    refused: str
    done: str


@dataclass(frozen=True, slots=True)
class RefusalPage(Context):
    """Why something could not be: one sentence, and where to go on."""

    template: ClassVar[str] = "refusal.html"

    frame: Frame
    status: int
    sentence: str
    to: str
    to_words: str
