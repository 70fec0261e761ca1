"""The servers that `load` of bench.py measures: Loopstart, and the plainest app that keeps a comment.

    python3 scripts/bench_served.py loopstart|bare FOLDER

The database is the one of DATABASE_URL, else a file in the folder. Each prints where it is.
"""

import environment

environment.enter("run")

import os
import subprocess
import sys
from pathlib import Path

from fastapi import FastAPI
from pydantic import BaseModel
from serving import serve, take_port, url_of
from sqlmodel import Field, Session, SQLModel

from service.app import create_app
from service.settings import Settings, read_settings
from service.store.engine import make_engine


class Comment(BaseModel):
    """A comment as it is sent."""

    id: str
    author: str
    posted: str
    text: str


#: Requests at once, more than the bench has clients.
_AT_ONCE = 10_000


class BareComment(SQLModel, table=True):
    """A comment as the bare app keeps it."""

    number: int | None = Field(default=None, primary_key=True)
    id: str
    author: str
    posted: str
    text: str


def bare_app(settings: Settings) -> FastAPI:
    """The plainest app there is: it keeps what is sent with one insert, and answers a small JSON.

    Its database is set up as Loopstart's, so that both write alike.
    """
    app = FastAPI()
    engine = make_engine(settings)
    SQLModel.metadata.create_all(engine)

    @app.get("/")
    def get_it() -> dict[str, str]:
        return {"page": "bare"}

    @app.post("/", status_code=201)
    def post_it(comment: Comment) -> dict[str, str]:
        with Session(engine) as session:
            session.add(BareComment(**comment.model_dump()))
            session.commit()
        return {"kept": comment.id}

    return app


def memory_of(process: int) -> float:
    """The memory that a process holds now, in megabytes; 0 where the system does not tell."""
    statm = Path(f"/proc/{process}/statm")
    if statm.exists():
        return int(statm.read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 1e6
    if sys.platform == "win32":
        return 0.0
    asked = ["ps", "-o", "rss=", "-p", str(process)]
    told = subprocess.run(asked, capture_output=True, text=True, check=False)
    return int(told.stdout or 0) / 1e3


def main() -> int:
    """Serves what the command line names, until it is stopped."""
    what, folder = sys.argv[1:]
    # All of its clients have one address, which is no crowd's.
    settings = read_settings(data_folder=Path(folder), rate_limit=0, at_once=_AT_ONCE)
    app = bare_app(settings) if what == "bare" else create_app(settings)
    with take_port("127.0.0.1", 0) as taken:
        return serve(app, taken, lambda: print(url_of(taken), flush=True), settings)


if __name__ == "__main__":
    sys.exit(main())
