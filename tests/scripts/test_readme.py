"""README.md says what is so: its commands run, its options and settings are those there are."""

from __future__ import annotations

import argparse
import re
import shlex
from collections.abc import Callable

import announce
import ask
import backup
import desk
import export
import forget
import move
import pace_options
import pytest
import read
import receipt
import start
import tally_options
import tokens
import verify

from service.app import create_app
from service.settings import read_settings, setting_names
from tests.scripts.running import ROOT, run_script

README = (ROOT / "README.md").read_text(encoding="utf-8")
#: Lines of the system's own programs, with options of theirs.
OTHER_PROGRAMS = ("useradd ", "systemctl ", "docker ")
OPTION = re.compile(r"(?<![\w-])--[a-z][a-z-]+")
MAKERS: dict[str, Callable[[], argparse.ArgumentParser]] = {
    "tally.py": tally_options.make_options,
    "start.py": start.make_options,
    "tokens.py": tokens.make_options,
    "desk.py": desk.make_options,
    "ask.py": ask.make_options,
    "announce.py": announce.make_options,
    "read.py": read.make_options,
    "receipt.py": receipt.make_options,
    "export.py": export.make_options,
    "move.py": move.make_options,
    "backup.py": backup.make_options,
    "forget.py": forget.make_options,
    "verify.py": verify.make_options,
    "pace.py": pace_options.make_options,
}


def options_of(name: str) -> set[str]:
    """Every option of a script, with those of its commands."""
    parser = MAKERS[name]()
    told = OPTION.findall(parser.format_help())
    for action in parser._actions:
        if isinstance(action, argparse._SubParsersAction):
            told += [
                each
                for one in action.choices.values()
                for each in OPTION.findall(one.format_help())
            ]
    return set(told) - {"--help"}


def commands() -> list[list[str]]:
    """Every command line in README.md's code blocks."""
    blocks = re.findall(r"^```\n(.*?)^```$", README, re.MULTILINE | re.DOTALL)
    lines = [line for block in blocks for line in block.splitlines()]
    return [shlex.split(line[line.index("python3 ") :]) for line in lines if "python3 " in line]


def table(heading: str) -> str:
    """The rows of the table that begins with this heading."""
    begins = README.index(f"| {heading} |")
    return README[begins : README.index("\n\n", begins)]


def test_readme_opens_with_one_paragraph_that_says_what_it_is_for() -> None:
    title, paragraph, after, *_ = README.split("\n\n")
    assert title == "# Loopstart"
    assert "vote" in paragraph
    assert after.startswith("## Two commands")


def test_every_script_in_a_command_is_there() -> None:
    scripts = {command[1] for command in commands()}
    assert {"scripts/start.py", "scripts/test.py", "scripts/tally.py"} <= scripts
    assert all((ROOT / script).is_file() for script in scripts)


@pytest.mark.parametrize("command", commands(), ids=" ".join)
def test_every_option_in_a_command_exists(command: list[str]) -> None:
    name = command[1].removeprefix("scripts/")
    used = {word for word in command if OPTION.fullmatch(word)}
    assert used <= (options_of(name) if name in MAKERS else set())


def test_the_table_of_tally_names_every_option_and_no_other() -> None:
    first_cells = [row.split("|")[1] for row in table("option").splitlines()[2:]]
    assert set(OPTION.findall(" ".join(first_cells))) == options_of("tally.py")


def test_every_option_named_anywhere_exists() -> None:
    known = set().union(*(options_of(name) for name in MAKERS))
    ours = [line for line in README.splitlines() if not line.startswith(OTHER_PROGRAMS)]
    assert set(OPTION.findall("\n".join(ours))) <= known | {"--help"}


def test_every_setting_is_described_and_no_other() -> None:
    described = re.findall(r"^\| `(\w+)`", table("setting"), re.MULTILINE)
    assert sorted(described) == sorted(setting_names())
    assert set(re.findall(r"LOOPSTART_\w+", README)) <= set(setting_names())


def test_every_address_of_the_api_exists() -> None:
    known = set(create_app(read_settings()).openapi()["paths"])
    named = set(re.findall(r"/api/[\w{}/]+", README))
    assert named
    assert named <= known


def test_the_statuses_are_those_that_the_scripts_document() -> None:
    source = (ROOT / "scripts" / "terminal.py").read_text(encoding="utf-8")
    documented = re.findall(r"^\| (\d) \|", source, re.MULTILINE)
    assert re.findall(r"^\| (\d) \|", table("status"), re.MULTILINE) == documented


@pytest.mark.parametrize(
    "command", [c for c in commands() if "demo/invented" in " ".join(c)], ids=lambda c: c[2]
)
def test_a_count_of_the_demo_runs_as_it_is_written(command: list[str]) -> None:
    told = run_script(command[1].removeprefix("scripts/"), *command[2:], cwd=ROOT)
    assert (told.returncode, told.stderr) == (0, "")
    assert "winner" in told.stdout or "wins" in told.stdout
