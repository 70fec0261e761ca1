"""The environment that the scripts make for themselves, tried with a small package of its own.

Each test works on a copy of the scripts in a folder with a space in its name; nothing is fetched.
"""

from __future__ import annotations

import ast
import base64
import hashlib
import json
import os
import shutil
import subprocess
import sys
import zipfile
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.scripts.running import ROOT, run_python, sentences

ENTRY_SCRIPTS = ("environment", "start", "test", "tally", "score", "tokens", "ask", "lock")
NOT_FOUND_IN = "import importlib.util as u\nr = u.find_spec\nu.find_spec = lambda n, *a: None if n == 'ensurepip' else r(n, *a)\n"


def write_wheel(folder: Path, version: str) -> str:
    """A package "pebble" with one module, as pip installs it; answers its SHA-256."""
    files = {
        "pebble.py": f"SAYS = 'pebble {version}'\n",
        f"pebble-{version}.dist-info/METADATA": (
            f"Metadata-Version: 2.1\nName: pebble\nVersion: {version}\n"
        ),
        f"pebble-{version}.dist-info/WHEEL": (
            "Wheel-Version: 1.0\nGenerator: hand\nRoot-Is-Purelib: true\nTag: py3-none-any\n"
        ),
    }
    rows = []
    for name, text in files.items():
        digest = base64.urlsafe_b64encode(hashlib.sha256(text.encode()).digest()).rstrip(b"=")
        rows.append(f"{name},sha256={digest.decode()},{len(text)}")
    record = f"pebble-{version}.dist-info/RECORD"
    files[record] = "\n".join([*rows, f"{record},,"]) + "\n"
    wheel = folder / f"pebble-{version}-py3-none-any.whl"
    with zipfile.ZipFile(wheel, "w") as packed:
        for name, text in files.items():
            packed.writestr(name, text)
    return hashlib.sha256(wheel.read_bytes()).hexdigest()


@dataclass(frozen=True)
class Checkout:
    """A copy of the scripts with a lock file and a script of its own."""

    folder: Path
    wheels: Path

    @property
    def venv(self) -> Path:
        return self.folder / ".venv"

    def lock(self, version: str, digest: str | None = None) -> None:
        known = digest or write_wheel(self.wheels, version)
        (self.folder / "requirements.lock").write_text(
            "# what is needed\n\n# section run: what running needs\n"
            f"pebble=={version} \\\n    --hash=sha256:{known}\n\n"
            "# section test: what only the tests need\n"
        )

    def run(self, *arguments: str, **environment: str) -> subprocess.CompletedProcess[str]:
        offline = {"PIP_NO_INDEX": "1", "PIP_FIND_LINKS": self.wheels.as_uri()}
        offline |= {"PIP_CONFIG_FILE": os.devnull} | environment
        # From another folder: a script must not care where one stands.
        script = self.folder / "scripts" / "say.py"
        return run_python(script, *arguments, cwd=self.wheels, environment=offline)


def make_checkout(folder: Path) -> Checkout:
    checkout = Checkout(folder / "a check out", folder / "wheels")
    checkout.wheels.mkdir(parents=True)
    scripts = checkout.folder / "scripts"
    scripts.mkdir(parents=True)
    for name in ("environment", "install", "lockfile"):
        shutil.copy(ROOT / "scripts" / f"{name}.py", scripts)
    (scripts / "say.py").write_text(
        "import environment\nenvironment.enter('run')\n"
        "import sys, pebble\nprint(pebble.SAYS, sys.argv[1:], sys.prefix)\n"
    )
    checkout.lock("1.0")
    return checkout


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
