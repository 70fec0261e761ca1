"""The environment that the scripts make for themselves, tried with a small package of its own.

Each test works on a copy of the scripts in a folder with a space in its name; nothing is fetched.
"""

from __future__ import annotations

import ast
import json
import sys
import zipfile
from pathlib import Path

import pytest

from tests.scripts.checkouts import Checkout, make_checkout
from tests.scripts.running import ROOT, run_python, sentences

ENTRY_SCRIPTS = ("environment", "start", "test", "tally", "score", "tokens", "ask", "lock", "desk")
NOT_FOUND_IN = "import importlib.util as u\nr = u.find_spec\nu.find_spec = lambda n, *a: None if n == 'ensurepip' else r(n, *a)\n"


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Checkout:
    """A checkout whose environment stands after its first start."""
    checkout = make_checkout(tmp_path_factory.mktemp("made"))
    told = checkout.run("a b", "--c")
    assert told.stdout == f"pebble 1.0 ['a b', '--c'] {checkout.venv}\n"
    assert "Making the environment" in told.stderr
    return checkout


def test_a_second_start_installs_nothing_and_says_nothing(made: Checkout) -> None:
    before = (made.venv / "install.log").stat().st_mtime_ns
    told = made.run(PIP_FIND_LINKS="")
    assert (told.returncode, told.stderr) == (0, "")
    assert (made.venv / "install.log").stat().st_mtime_ns == before


def test_a_changed_lock_file_is_installed(made: Checkout) -> None:
    made.lock("1.1")
    assert made.run().stdout.startswith("pebble 1.1 ")


def test_an_environment_left_half_made_is_made_again(made: Checkout) -> None:
    note = made.venv / "loopstart.json"
    note.write_text(json.dumps(json.loads(note.read_text()) | {"making": "yes"}))
    stray = made.venv / "stray.txt"
    stray.write_text("left behind")
    told = made.run()
    assert told.returncode == 0
    assert "Making the environment" in told.stderr
    assert not stray.exists()


def test_an_environment_whose_python_is_gone_is_made_again(made: Checkout) -> None:
    config = made.venv / "pyvenv.cfg"
    config.write_text(config.read_text().replace("home = ", "home = /gone"))
    told = made.run()
    assert told.returncode == 0, told.stderr
    assert "Making the environment" in told.stderr


def test_a_python_that_has_everything_is_used_as_it_is(tmp_path: Path) -> None:
    checkout = make_checkout(tmp_path)
    target = tmp_path / "installed"
    with zipfile.ZipFile(checkout.wheels / "pebble-1.0-py3-none-any.whl") as packed:
        packed.extractall(target)
    told = checkout.run(PYTHONPATH=str(target))
    assert told.stdout == f"pebble 1.0 [] {sys.prefix}\n"
    assert not checkout.venv.exists()


@pytest.mark.parametrize(
    ("environment", "words"),
    [
        pytest.param(
            {"PIP_NO_INDEX": "0", "PIP_FIND_LINKS": "", "PIP_INDEX_URL": "http://127.0.0.1:9/"},
            "there is no connection to the package index: connect to the internet",
            id="no network",
        ),
        pytest.param({"PIP_FIND_LINKS": ""}, "no ready-made form", id="no wheel"),
    ],
)
def test_a_package_that_cannot_be_had_is_one_sentence_with_where_to_look(
    made: Checkout, environment: dict[str, str], words: str
) -> None:
    made.lock("1.2")
    told = made.run(**environment)
    assert told.returncode == 1
    last = sentences(told.stderr)[-1]
    assert words in last
    assert str(made.venv / "install.log") in last
    assert "Traceback" not in told.stderr


def test_what_could_not_be_had_is_installed_at_the_next_start(made: Checkout) -> None:
    made.lock("1.3")
    assert made.run(PIP_FIND_LINKS="").returncode == 1
    told = made.run()
    assert told.stdout.startswith("pebble 1.3 ")
    assert "Making the environment" not in told.stderr


def test_a_package_with_other_bytes_than_the_lock_names_is_not_installed(made: Checkout) -> None:
    made.lock("1.4")
    made.lock("1.4", digest="0" * 64)
    told = made.run()
    assert told.returncode == 1
    assert "not the one that the lock file names" in sentences(told.stderr)[-1]


def test_a_python_without_ensurepip_gets_one_sentence(tmp_path: Path) -> None:
    checkout = make_checkout(tmp_path)
    (tmp_path / "sitecustomize.py").write_text(NOT_FOUND_IN)
    told = checkout.run(PYTHONPATH=str(tmp_path))
    assert told.returncode == 1
    [sentence] = sentences(told.stderr)
    assert "ensurepip is missing" in sentence
    assert not checkout.venv.exists()


@pytest.mark.parametrize("name", ENTRY_SCRIPTS)
def test_an_old_python_gets_one_sentence(name: str) -> None:
    script = ROOT / "scripts" / f"{name}.py"
    pretend = (
        "import sys, runpy; sys.version_info = (3, 8, 0, 'final', 0); "
        f"sys.path.insert(0, {str(script.parent)!r}); "
        f"runpy.run_path({str(script)!r}, run_name='__main__')"
    )
    told = run_python("-c", pretend)
    assert told.returncode == 1
    [sentence] = sentences(told.stderr)
    assert "needs Python 3.11 or newer and this is Python 3.8" in sentence


@pytest.mark.parametrize("name", ENTRY_SCRIPTS)
def test_an_old_python_can_read_what_it_must(name: str) -> None:
    source = (ROOT / "scripts" / f"{name}.py").read_text(encoding="utf-8")
    assert ast.parse(source, feature_version=(3, 7)).body, "an empty script"
