"""Scripts that need the environment at the same time: none takes it away from another."""

from __future__ import annotations

import json
import os
import signal
import socket
import subprocess
import sys
from pathlib import Path

import pytest

from tests.scripts.checkouts import Checkout, make_checkout
from tests.scripts.running import sentences

HOLDING = (
    "import sys, pathlib; sys.path.insert(0, sys.argv[1]); import turns\n"
    "with turns.turn(pathlib.Path(sys.argv[2])): print('held', flush=True); sys.stdin.read()\n"
)
WAITING = "Another script is setting up the environment: waiting until it is done."


@pytest.fixture
def checkout(tmp_path: Path) -> Checkout:
    return make_checkout(tmp_path)


def half_added(checkout: Checkout) -> None:
    """Adds what the tests need until pip waits for an index that never answers; then kills it."""
    with socket.create_server(("127.0.0.1", 0)) as index:
        url = f"http://127.0.0.1:{index.getsockname()[1]}/"
        asked = {"PIP_NO_INDEX": "0", "PIP_FIND_LINKS": "", "PIP_INDEX_URL": url}
        with checkout.begin("try.py", **asked) as adding:
            index.settimeout(60)
            index.accept()[0].close()
            meanwhile = checkout.run()
            os.killpg(adding.pid, signal.SIGKILL)
            adding.communicate()
    assert (meanwhile.stdout[:10], meanwhile.stderr) == ("pebble 1.0", "")


def test_of_two_first_starts_at_once_one_waits_for_the_other(checkout: Checkout) -> None:
    both = [checkout.begin(name) for name in ("say.py", "try.py")]
    told = [one.communicate(timeout=120) for one in both]
    assert [(one.returncode, out[:10]) for one, (out, _) in zip(both, told, strict=True)] == [
        (0, "pebble 1.0"),
        (0, "pebble 1.0"),
    ], told
    whole = "".join(err for _, err in told)
    assert (whole.count("Making the environment"), whole.count(WAITING)) == (1, 1)


def test_who_has_to_wait_is_told_so_in_one_line_and_goes_on_afterwards(checkout: Checkout) -> None:
    lock = checkout.folder / ".venv.lock"
    command = [sys.executable, "-c", HOLDING, str(checkout.folder / "scripts"), str(lock)]
    with subprocess.Popen(  # noqa: S603 - this very Python
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as holder:
        assert holder.stdout
        assert holder.stdout.readline() == "held\n"
        with checkout.begin("say.py") as waiting:
            assert waiting.stderr
            assert waiting.stderr.readline() == WAITING + "\n"
            assert not checkout.venv.exists()
            holder.kill()  # whoever holds it may end in any way
            out, err = waiting.communicate(timeout=120)
    assert out.startswith("pebble 1.0")
    assert WAITING not in err


def test_adding_what_the_tests_need_leaves_the_environment_to_who_uses_it(
    checkout: Checkout,
) -> None:
    checkout.run()
    used = checkout.venv / "used.txt"
    used.write_text("by a server that stands")
    half_added(checkout)
    told = checkout.run(script="try.py")
    assert told.stdout == "pebble 1.0 and shell 1.0\n"
    assert "Making the environment" not in told.stderr
    assert used.exists()


def test_what_was_half_added_is_put_in_place_whole(checkout: Checkout) -> None:
    """A package that pip was stopped in counts as installed for pip: its metadata stands."""
    checkout.run(script="try.py")
    note = checkout.venv / "loopstart.json"
    told = json.loads(note.read_text())
    del told["test"]
    note.write_text(json.dumps(told | {"adding": "test"}))
    [module] = checkout.venv.rglob("shell.py")
    module.unlink()
    assert checkout.run(script="try.py").stdout == "pebble 1.0 and shell 1.0\n"
    assert json.loads(note.read_text()).keys() == {"python", "run", "test"}


def test_a_folder_that_takes_no_lock_is_one_sentence(checkout: Checkout) -> None:
    (checkout.folder / ".venv.lock").mkdir()
    told = checkout.run()
    [sentence] = sentences(told.stderr)
    assert told.returncode == 1
    assert ".venv.lock cannot be written" in sentence
