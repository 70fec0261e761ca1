"""What stands around every page: its title, and on the desk who is signed in."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Frame:
    """The frame of a page of the desk or the board.

    `title` names the page in the browser's tab and history. `form_token` goes into every form of
    the page; it is empty where nobody is signed in. `signed_in` says whether the bar of the desk
    is shown. `here` is the page's own address, to mark it in a menu.
    """

    title: str
    here: str = ""
    signed_in: bool = False
    form_token: str = ""
