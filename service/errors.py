"""Every error a caller can meet, in one tree.

A comment that cannot be read as a vote is an outcome with a reason, never one of these.
Each error holds its data and says in one sentence what is wrong, where, and what to do.

    LoopstartError
    ├── BadInput                 what was handed in cannot be used
    │   ├── BadChart             a chart that cannot be
    │   ├── PageNotOnChart
    │   ├── BadTime              a zone, an instant or a local time that cannot be
    │   ├── ClosesBeforeOpening
    │   ├── BadRules             rules of a round or a game that cannot be
    │   ├── BadRuling
    │   ├── BadDraw              sources or numbers that no draw can be held by
    │   ├── BadPassword          a password for the desk that is easily guessed
    │   ├── BadTemplate          a template of words that cannot be filled in
    │   ├── BadLog               a stitch log, or a question about it, that cannot be
    │   └── BadExport            an export that cannot be read
    │       ├── EmptyExport
    │       ├── BinaryExport
    │       ├── ExportTooLarge   more bytes than the service takes
    │       └── NoTextColumn
    ├── SealBroken               the kept answer is not the one that was sealed
    ├── WrongState               right request, wrong moment (a round opened twice)
    ├── NotFound                 no game, round, comment of that name
    ├── AlreadyThere             a game of that name exists
    ├── AccessRefused
    │   ├── TokenMissing
    │   ├── TokenWrong
    │   ├── TokenTooWeak         a collector's token where a host's is needed
    │   ├── NotSignedIn          a page of the desk, asked for without a session
    │   ├── SignInRefused        a used link, a wrong password
    │   ├── TooManyTries         the password was tried too often
    │   └── FormRefused          a form that is not this desk's own
    ├── BadSetting
    ├── CopyDiffers              a copy of a database is not what was copied
    ├── ServerUnreachable
    └── ProblemAnswered          the API refused what a client asked
"""

from __future__ import annotations


class LoopstartError(Exception):
    """The parent of all; never raised itself."""


class BadInput(LoopstartError):
    """What was handed in cannot be used: `what` is wrong, `todo` says what to do."""

    def __init__(self, what: str, todo: str) -> None:
        self.what = what
        self.todo = todo
        super().__init__(f"{what}: {todo}.")


class BadChart(BadInput):
    """A chart that cannot be: no columns, a cell outside, no page left."""


class PageNotOnChart(BadInput):
    """The chart has no page `page`; its pages are numbered 1 to `page_count`."""

    def __init__(self, page: int, page_count: int) -> None:
        self.page = page
        self.page_count = page_count
        super().__init__(f"page {page} is not on the chart", f"name a page from 1 to {page_count}")


class BadTime(BadInput):
    """A zone, an instant or a local time that cannot be: `text` as it was given."""

    def __init__(self, text: str, what: str, todo: str) -> None:
        self.text = text
        super().__init__(f"{what} (it says {text!r})", todo)


class ClosesBeforeOpening(BadInput):
    """A round's closing is not after its opening; both as RFC 3339 text."""

    def __init__(self, opens: str, closes: str) -> None:
        self.opens = opens
        self.closes = closes
        what = f"the closing {closes} is not after the opening {opens}"
        super().__init__(what, "give a closing later than the opening")


class BadRules(BadInput):
    """Rules of a round or a game that cannot be, such as an unknown tie-break."""


class BadRuling(BadInput):
    """A ruling that cannot be: a page off the chart, no reason given."""


class BadDraw(BadInput):
    """Sources or numbers that no draw can be held by."""


class BadPassword(BadInput):
    """A password for the desk that is too short, too long or easily guessed."""


class BadTemplate(BadInput):
    """A template of words that cannot be filled in: a blank that is not known, a lone "$"."""


class BadLog(BadInput):
    """A stitch log that cannot be, or a question that it cannot answer."""


class BadExport(BadInput):
    """The export `name` cannot be read; `where` names the line or record if there is one."""

    def __init__(self, name: str, what: str, todo: str, where: str = "") -> None:
        self.name = name
        self.where = where
        place = f"{name}, {where}" if where else name
        super().__init__(f"{place}: {what}", todo)


class EmptyExport(BadExport):
    """The export holds nothing."""

    def __init__(self, name: str) -> None:
        super().__init__(name, "the file is empty", "hand in an export that holds comments")


class BinaryExport(BadExport):
    """The export is no text: a picture, an archive, a program; `kind` says which if known."""

    def __init__(self, name: str, kind: str = "not text") -> None:
        self.kind = kind
        what = f"this is {kind}, not a table, a spreadsheet, JSON, a feed or pasted text"
        super().__init__(name, what, "export the comments as CSV or JSON, or paste them as text")


class ExportTooLarge(BadExport):
    """The export is larger than the service takes: `limit` is in megabytes."""

    def __init__(self, limit: int, name: str = "what was handed in") -> None:
        self.limit = limit
        todo = "hand it in in parts, or raise the setting LOOPSTART_UPLOAD_LIMIT"
        super().__init__(name, f"it is larger than {limit} MB", todo)


class NoTextColumn(BadExport):
    """No column of a table, or no field of JSON, holds the comments' text."""

    def __init__(
        self,
        name: str,
        columns: tuple[str, ...],
        todo: str = "name it, as in --columns text=HEADER",
    ) -> None:
        self.columns = columns
        seen = ", ".join(columns) if columns else "none"
        super().__init__(name, f"no column holds the comments' text (columns seen: {seen})", todo)


class SealBroken(LoopstartError):
    """What is kept as the answer of the game `game` no longer makes the seal that was published."""

    def __init__(self, game: str) -> None:
        self.game = game
        super().__init__(
            f"the answer kept for game {game} no longer makes its published seal, so it was "
            "changed after the sealing: go back to a copy of the database from before."
        )


class WrongState(LoopstartError):
    """`thing` is `state`, so `wish` cannot be; `todo` says what can."""

    def __init__(self, thing: str, state: str, wish: str, todo: str) -> None:
        self.thing = thing
        self.state = state
        self.wish = wish
        self.todo = todo
        super().__init__(f"{thing} is {state} and cannot be {wish}: {todo}.")


class NotFound(LoopstartError):
    """There is no `kind` called `name`."""

    def __init__(self, kind: str, name: str, todo: str = "check the name") -> None:
        self.kind = kind
        self.name = name
        self.todo = todo
        super().__init__(f"there is no {kind} {name!r} here: {todo}.")


class AlreadyThere(LoopstartError):
    """A `kind` called `name` exists and is another one."""

    def __init__(self, kind: str, name: str, todo: str = "choose another name") -> None:
        self.kind = kind
        self.name = name
        self.todo = todo
        super().__init__(f"there is a {kind} {name!r} already: {todo}.")


class AccessRefused(LoopstartError):
    """The caller may not do this."""


class TokenMissing(AccessRefused):
    """No token was sent where one is needed."""

    def __init__(self) -> None:
        todo = "send the header 'Authorization: Bearer TOKEN' with a token of the host"
        super().__init__(f"this request carries no token: {todo}.")


class TokenWrong(AccessRefused):
    """The token sent is not one of this service's."""

    def __init__(self) -> None:
        todo = "check that it was copied whole, or let the host make a new one"
        super().__init__(f"the token in the Authorization header is not known here: {todo}.")


class TokenTooWeak(AccessRefused):
    """A collector's token was sent where a host's is needed."""

    def __init__(self, role: str, needed: str) -> None:
        self.role = role
        self.needed = needed
        what = f"this token is a {role}'s and the request needs a {needed}'s"
        super().__init__(f"{what}: send a token of the {needed}.")


class NotSignedIn(AccessRefused):
    """A page of the desk was asked for without a session, or the session has ended."""

    def __init__(self) -> None:
        super().__init__("you are not signed in to the desk, or no longer: sign in again.")


class SignInRefused(AccessRefused):
    """A link or a password does not open the desk: `what` is wrong, `todo` says what to do."""

    def __init__(self, what: str, todo: str) -> None:
        self.what = what
        self.todo = todo
        super().__init__(f"{what}: {todo}.")


class TooManyTries(AccessRefused):
    """The password was tried too often; it is taken again in `minutes`."""

    def __init__(self, minutes: int) -> None:
        self.minutes = minutes
        few = "a minute" if minutes == 1 else f"{minutes} minutes"
        super().__init__(f"this was tried too often: wait {few}, or use a link to sign in.")


class FormRefused(AccessRefused):
    """A form was sent that is not one of this desk's own pages', or is of an earlier session."""

    def __init__(self) -> None:
        what = "this form is not of a page that you were given since you signed in"
        super().__init__(f"{what}: open the page anew and send it from there.")


class BadSetting(LoopstartError):
    """The setting `name` cannot be used."""

    def __init__(self, name: str, what: str, todo: str) -> None:
        self.name = name
        self.what = what
        self.todo = todo
        super().__init__(f"setting {name}: {what}: {todo}.")


class CopyDiffers(LoopstartError):
    """The table `table` of a copy is not what it is in the database that was copied."""

    def __init__(self, table: str) -> None:
        self.table = table
        what = f"the copy differs in the table {table}, so nothing was kept of it"
        super().__init__(f"{what}: check the disk and copy again.")


class ServerUnreachable(LoopstartError):
    """The server at `url` did not answer."""

    def __init__(self, url: str, why: str) -> None:
        self.url = url
        todo = "check that it is running and the address is right"
        super().__init__(f"the server {url} does not answer ({why}): {todo}.")


class ProblemAnswered(LoopstartError):
    """The API refused a client's request: its HTTP `status`, and its own sentence as message."""

    def __init__(self, status: int, detail: str) -> None:
        self.status = status
        super().__init__(detail)
