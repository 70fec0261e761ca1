"""pace.py as a host meets it: a log is written, corrected and asked, and every slip is a sentence."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any

import pace
import pace_options
import pytest
from client import Client, in_process
from terminal import CANNOT_BE_USED

from service.errors import BadInput, LoopstartError, ProblemAnswered
from service.settings import Settings
from service.store.pace_plans import SHOWN
from service.store.upgrade import upgrade
from tests.scripts.running import run_script, sentences

Json = Any
FIRST = date(2026, 3, 2)
GAME: Json = {
    "slug": "harbour",
    "name": "The harbour mystery",
    "zone": "Atlantic/Faroe",
    "chart": {"columns": 4, "rows": 3},
    "answer": {"title": "The Lamp Room", "designer": "Ines Orlay"},
}


def on(number: int) -> str:
    return (FIRST + timedelta(days=number - 1)).isoformat()


@pytest.fixture
def host(tmp_path: Path) -> Iterator[Client]:
    """A host on the 28th day, with page 7 in hand and 4,900 stitches on a page."""
    settings = Settings(data_folder=tmp_path / "data")
    upgrade(settings)
    with in_process(settings, lambda: datetime(2026, 3, 29, 18, tzinfo=UTC)) as client:
        client.post("/games", GAME)
        client.put("/games/harbour/pages/7", {"state": "in hand"})
        client.put("/games/harbour/pace/plan", {"every": 4900})
        yield client


class Asked:
    """Runs a command within this process and reads what it printed."""

    def __init__(self, host: Client, capsys: pytest.CaptureFixture[str]) -> None:
        self._host = host
        self._capsys = capsys

    def __call__(self, *words: str) -> str:
        given = pace_options.make_options().parse_args([*words, "--game", "harbour"])
        self._capsys.readouterr()
        pace.RUN[given.command](self._host, "/games/harbour/pace", given)
        return " ".join(self._capsys.readouterr().out.split())


@pytest.fixture
def ask(host: Client, capsys: pytest.CaptureFixture[str]) -> Asked:
    return Asked(host, capsys)


@pytest.fixture
def logged(host: Client, ask: Asked) -> Asked:
    """The same with 100 stitches on each of the days."""
    entries = [{"day": on(n), "page": 7, "stitches": 100} for n in range(1, 29)]
    host.post("/games/harbour/pace/log", {"entries": entries})
    return ask


def test_stitches_are_logged_of_the_page_in_hand_and_of_today(ask: Asked) -> None:
    told = ask("log", "412", "--backstitch", "9")
    assert "Entry 1: Sunday 29 March 2026, page 7: 412 stitches, 9 backstitch." in told
    assert "Page 7: 412 of 4,900 stitches, 8.4 %." in told
    assert "There is not enough log to say" in told


def test_each_way_of_telling_is_understood(ask: Asked) -> None:
    ask("log", "100", "--day", on(1))
    assert "page 7: 50 stitches since last time" in ask("log", "50", "--since-last", "--day", on(3))
    assert "page 7: 400 stitches so far" in ask("log", "400", "--so-far", "--day", on(4))
    assert "page 7: 20.5 % done" in ask("log", "--percent", "20.5", "--day", on(5))
    assert "“A runner”: 90 stitches" in ask("log", "90", "--piece", "A runner", "--day", on(1))
    assert "rest from Thursday 2 April 2026" in ask("rest", "2026-04-02", "2026-04-09")
    told = ask("progress", "--first", on(1))
    assert "the mystery 1,005 0 0 0" in told
    assert "A runner 90 0 0 0" in told


def test_an_entry_is_corrected_and_taken_back_and_both_stay_in_the_log(ask: Asked) -> None:
    ask("log", "100", "--day", on(1))
    told = ask("correct", "1", "110")
    assert "Entry 2: Monday 2 March 2026, page 7: 110 stitches, in place of entry 1." in told
    assert "Page 7: 110 of 4,900" in told
    assert "Page 7: 0 of 4,900" in ask("correct", "2", "--take-back", "--note", "it was a blanket")
    told = ask("show")
    assert "1 Monday 2 March 2026 page 7: 100 stitches no" in told
    assert "entry 2 taken back (for entry 2) taken back it was a blanket" in told


def test_the_forecast_tells_when_to_open_the_next_round(logged: Asked) -> None:
    told = logged("forecast")
    assert "Page 7: 2,800 of 4,900 stitches, 57.1 %." in told
    assert "The log goes until Sunday 29 March 2026." in told
    assert "100 stitches a day" in told
    assert (
        "Page 7 should be finished on Sunday 19 April 2026. Open the next round on Sunday 29"
        in told
    )
    assert "or at the latest on Thursday 16 April 2026" in told
    assert "28 of the" not in logged("forecast", "--today", on(9))


def test_rounds_and_what_it_takes(logged: Asked) -> None:
    told = logged("rounds", "--most", "2")
    assert "1 29 Mar 2026 16 Apr 2026 31 Mar 2026 7 Jun 2026 7 Jun 2026 to 7 Jun 2026" in told
    assert "2 of the 11 rounds that the chart still needs" in told
    assert "takes 210 stitches a day (2,100 in 10 days), 2.1 times the pace" in logged(
        "needed", on(38)
    )
    assert "To finish the chart by" in logged("needed", on(128), "--chart")


def test_the_paragraph_and_the_picture(logged: Asked, tmp_path: Path) -> None:
    assert "The harbour mystery: page 7 has 2,800 of 4,900 stitches, 57.1 %." in logged("update")
    file = tmp_path / "pace.svg"
    assert logged("picture", "--out", str(file)) == f"Written to {file}."
    assert file.read_text("utf-8").startswith("<svg")
    logged("log", "5", "--piece", "The Lamp Room", "--day", on(28))
    with pytest.raises(BadInput, match="the name of another piece gives the sealed answer"):
        logged("update")


def test_the_log_is_exported_and_imported(logged: Asked, tmp_path: Path) -> None:
    file = tmp_path / "log.csv"
    logged("export", "--out", str(file))
    assert len(file.read_text("utf-8-sig").splitlines()) == 29
    assert "0 new entries, 28 were in the log already." in logged("import", str(file))
    assert "1,2026-03-02,on the day,7,,100" in logged("export")


def test_the_plan_changes_only_what_is_said(ask: Asked) -> None:
    assert "Everybody sees: nothing of the pace." in ask("plan")
    told = ask("plan", "--round-days", "5", "--show", "page", "--show", "next round")
    assert "A vote is open for 5 days and closes 1 day before the page is finished." in told
    assert "nothing else tells them: 4,900. Everybody sees: page, next round." in told
    assert "Everybody sees: nothing" in ask("plan", "--show-nothing")
    assert "Page 7: 4,000 crosses, 60 beads." in ask(
        "page", "7", "--crosses", "4000", "--beads", "60"
    )


WRONG: list[Any] = [
    pytest.param(("log", "-5"), "says -5 stitches", id="below 0"),
    pytest.param(("log", "9999"), "stitches of the 4,900", id="more than the page has"),
    pytest.param(("log", "5", "--page", "3"), "not in hand", id="not in hand"),
    pytest.param(("log", "5", "--day", on(30)), "still to come", id="to come"),
    pytest.param(("log", "5", "--day", "soon"), "day", id="no day"),
    pytest.param(("log", "--percent", "many"), "percent", id="no percent"),
    pytest.param(("log",), "tells no stitches", id="nothing"),
    pytest.param(("correct", "9", "5"), "no entry of the log '9'", id="no entry"),
    pytest.param(("needed", on(1)), "give a later day", id="a day gone by"),
    pytest.param(("forecast", "--confidence", "2"), "ask for 0.5 to 0.99", id="confidence"),
    pytest.param(("picture",), "log it first", id="nothing to draw"),
    pytest.param(("import", "no-such.csv"), "cannot be read", id="no file"),
]


@pytest.mark.parametrize(("words", "says"), WRONG)
def test_what_cannot_be_is_one_sentence(ask: Asked, words: tuple[str, ...], says: str) -> None:
    with pytest.raises(LoopstartError, match=says) as told:
        ask(*words)
    assert "\n" not in str(told.value)
    assert isinstance(told.value, ProblemAnswered | BadInput)


def test_without_a_clear_page_in_hand_it_must_be_named(host: Client, ask: Asked) -> None:
    host.put("/games/harbour/pages/8", {"state": "in hand"})
    with pytest.raises(BadInput, match=r"in hand: 7, 8.*name it with --page"):
        ask("log", "5")
    assert "page 8: 5 stitches" in ask("log", "5", "--page", "8")


def test_the_parts_to_show_are_those_of_the_api() -> None:
    assert pace_options.PARTS == SHOWN
    assert list(pace.RUN) == list(pace_options.COMMANDS)


def test_as_a_process_it_ends_with_a_sentence_and_a_status(tmp_path: Path) -> None:
    settings = Settings(data_folder=tmp_path)
    upgrade(settings)
    folder = {"LOOPSTART_DATA_FOLDER": str(tmp_path)}
    told = run_script("pace.py", "forecast", "--game", "harbour", environment=folder)
    assert (told.returncode, told.stdout) == (CANNOT_BE_USED, "")
    assert sentences(told.stderr) == [
        "there is no game 'harbour' here: check its short name, or make the game first."
    ]
    told = run_script("pace.py", "knit", environment=folder)
    assert (told.returncode, told.stdout) == (CANNOT_BE_USED, "")
    assert "'knit'" in told.stderr
