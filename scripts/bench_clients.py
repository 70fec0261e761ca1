"""Very many clients of one server in one process: what `load` of bench.py has at work.

Each keeps a connection open and asks again as soon as it is answered, or after a pause. A request is
written and an answer read with as little as will do, so that the clients are never what is slow. They
go on until the standard input ends, then write when each request was sent and how long its answer
took, and print what went wrong.
"""

import environment

environment.enter("run")

import asyncio
import http.client
import json
import random
import sys
import time
from array import array
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

#: Of a status, a line of the answer's head, in small letters.
_HEAD_ENDS = b"\r\n\r\n"
_GOOD = {200, 201, 304}
_BOUNDARY = "a-single-comment"
#: Where exports of the round are handed in.
ADDRESS = "/api/games/bench/rounds/1/batches"


@dataclass(frozen=True)
class Answer:
    """What a client needs to know of an answer."""

    status: int
    tag: str
    content: bytes


@dataclass
class Heard:
    """When each request was sent, in seconds since 1970, and the seconds until its answer was read."""

    sent: "array[float]"
    took: "array[float]"
    faults: Counter[str]


class Client:
    """One client with its connection."""

    def __init__(self, where: str) -> None:
        self._host, self._port = urlsplit(where).hostname or "", urlsplit(where).port or 80
        self._streams: tuple[asyncio.StreamReader, asyncio.StreamWriter] | None = None

    async def ask(self, head: str, content: bytes = b"") -> Answer:
        """Sends a request, by a connection made anew where the server has closed it."""
        if self._streams is None:
            self._streams = await asyncio.open_connection(self._host, self._port)
        reader, writer = self._streams
        length = f"Content-Length: {len(content)}\r\n" if content else ""
        lines = f"{head}\r\nHost: {self._host}\r\n{length}\r\n"
        writer.write(lines.encode("latin-1") + content)
        try:
            return await self._read(reader)
        except BaseException:
            writer.close()
            self._streams = None
            raise

    async def _read(self, reader: asyncio.StreamReader) -> Answer:
        head = (await reader.readuntil(_HEAD_ENDS)).decode("latin-1")
        first, *lines = head.rstrip().split("\r\n")
        told = {name.lower(): value.strip() for name, _, value in (x.partition(":") for x in lines)}
        status = int(first.split()[1])
        content = await reader.readexactly(int(told.get("content-length", 0)))
        if told.get("connection") == "close":
            self._streams = None
        return Answer(status, told.get("etag", ""), content)


class Viewer(Client):
    """Looks at a page over and over, as a browser that keeps it does."""

    def __init__(self, told: dict[str, Any], number: int) -> None:
        super().__init__(told["where"])
        del number
        self._address, self._tag = told["address"], ""

    async def go(self) -> Answer:
        """Looks once."""
        known = f"\r\nIf-None-Match: {self._tag}" if self._tag else ""
        answer = await self.ask(f"GET {self._address} HTTP/1.1{known}")
        self._tag = answer.tag or self._tag
        return answer


class Writer(Client):
    """Hands in one comment after the other, each by somebody else, as a collector does."""

    def __init__(self, told: dict[str, Any], number: int) -> None:
        super().__init__(told["where"])
        self._address, self._token, self._number = told["address"], told["token"], number
        self._said = 0

    async def go(self) -> Answer:
        """Hands in a comment."""
        self._said += 1
        comment = json.dumps(one_comment(self._number, self._said))
        head = f"POST {self._address} HTTP/1.1\r\nAuthorization: Bearer {self._token}"
        form = (
            f"--{_BOUNDARY}\r\n"
            'Content-Disposition: form-data; name="file"; filename="one.jsonl"\r\n\r\n'
            f"{comment}\r\n--{_BOUNDARY}--\r\n"
        )
        kind = f"Content-Type: multipart/form-data; boundary={_BOUNDARY}"
        return await self.ask(f"{head}\r\n{kind}", form.encode())


class PlainWriter(Writer):
    """The same as JSON alone, for the bare endpoint."""

    async def go(self) -> Answer:
        """Hands in a comment."""
        self._said += 1
        comment = json.dumps(one_comment(self._number, self._said)).encode()
        head = f"POST {self._address} HTTP/1.1\r\nContent-Type: application/json"
        return await self.ask(head, comment)


KINDS: dict[str, Callable[[dict[str, Any], int], Viewer | Writer]] = {
    "viewers": Viewer,
    "writers": Writer,
    "plain writers": PlainWriter,
}


def one_comment(client: int, number: int) -> dict[str, str]:
    """A comment that no other client hands in, and this one only once."""
    chance = random.Random(client * 1_000_003 + number)  # noqa: S311 - nothing secret
    return {
        "id": f"single-{client}-{number}",
        "author": f"Single {client} {number % 1000}",
        "posted": datetime.now(UTC).strftime("%Y-%m-%dT%H:%M:%SZ"),
        "text": f"page {chance.randint(1, 63)} please, I love the {chance.randint(1, 9999)} boats",
    }


async def _at_work(client: Viewer | Writer, told: dict[str, Any], heard: Heard) -> None:
    pause = told["pause"]
    await asyncio.sleep(random.random() * pause)  # noqa: S311 - not all at the same moment
    while True:
        sent = time.time()
        try:
            answer = await client.go()
            if answer.status not in _GOOD:
                heard.faults[f"{answer.status} {answer.content[:300]!r}"] += 1
        except (OSError, EOFError, ValueError) as fault:
            heard.faults[f"{type(fault).__name__}: {fault}"] += 1
            await asyncio.sleep(0.1)
            continue
        took = time.time() - sent
        heard.sent.append(sent)
        heard.took.append(took)
        if took < pause:
            await asyncio.sleep(pause - took)


async def _work(told: dict[str, Any]) -> Heard:
    heard = Heard(array("d"), array("d"), Counter())
    make = KINDS[told["kind"]]
    clients = [make(told, told["first"] + number) for number in range(told["clients"])]
    at_work = [asyncio.create_task(_at_work(one, told, heard)) for one in clients]
    await asyncio.to_thread(sys.stdin.read)
    for one in at_work:
        one.cancel()
    await asyncio.gather(*at_work, return_exceptions=True)
    return heard


def hand_in_again(where: str, token: str, body: bytes, number: int) -> list[str]:
    """Hands the export in, each time with one comment more; what went wrong."""
    more = "".join(f"more{one},Late {one},2026-03-02T12:00:00Z,page 9\r\n" for one in range(number))
    return _hand_in(where, token, body + more.encode())


def warm(where: str, token: str) -> list[str]:
    """Has done once what only takes long the first time, as loading the languages does."""
    row = b"id,author,posted,text\r\nwarm,Early,2026-03-01T18:00:00Z,page 9 please\r\n"
    faults = _hand_in(where, token, row)
    url = urlsplit(where)
    connection = http.client.HTTPConnection(url.hostname or "", url.port, timeout=600)
    connection.request("GET", "/games/bench")
    status = connection.getresponse().status
    connection.close()
    return faults if status == 200 else [*faults, f"the first view: {status}"]


def _hand_in(where: str, token: str, export: bytes) -> list[str]:
    lines = (
        b'--cut\r\nContent-Disposition: form-data; name="file"; filename="c.csv"\r\n\r\n',
        export,
        b"\r\n--cut--\r\n",
    )
    url = urlsplit(where)
    connection = http.client.HTTPConnection(url.hostname or "", url.port, timeout=600)
    headers = {
        "Authorization": f"Bearer {token}",
        "Content-Type": "multipart/form-data; boundary=cut",
    }
    connection.request("POST", ADDRESS, b"".join(lines), headers)
    answer = connection.getresponse()
    content = answer.read()
    connection.close()
    return [] if answer.status == 201 else [f"import: {answer.status} {content[:300]!r}"]


def read_times(file: Path) -> tuple["array[float]", "array[float]"]:
    """When requests were sent, and how long each took, as a process of clients wrote it."""
    both = array("d")
    both.frombytes(file.read_bytes())
    half = len(both) // 2
    return both[:half], both[half:]


def main() -> int:
    """Has the clients at work that the command line tells of, as JSON."""
    told = json.loads(sys.argv[1])
    heard = asyncio.run(_work(told))
    with Path(told["file"]).open("wb") as file:
        heard.sent.tofile(file)
        heard.took.tofile(file)
    for fault, times in heard.faults.most_common(5):
        print(f"{times} x {fault}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
