"""How surely a mention of a number is a choice; higher is surer.

Plain numbers, since every rule asks for them: an enumeration's member takes ten times as long.
"""

from __future__ import annotations

Standing = int

STRUCK: Standing = -3  # ruled out, taken back, somebody else's words
OTHER: Standing = -2  # something else than a page
PLACED: Standing = -1  # tells a page by another one, a range, a sum: never counted
ASKED: Standing = 0  # asked about, foretold, reported: the host looks if nothing better stands
UNSURE: Standing = 1  # words beside it that the reader does not know
BARE: Standing = 2  # in the open, nothing says that it is something else
ALONE: Standing = 3  # a clause of its own
CUED: Standing = 4  # said to be the page or the choice
