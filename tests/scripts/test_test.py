"""test.py passes arguments on to pytest; where every test must run, a skip is a failure."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest

from tests.scripts.running import ROOT, run_python, run_script

SKIPPED = "import pytest\ndef test_it():\n    pytest.skip('no server')\n"
SKIPPED_FILE = "import pytest\npytest.skip('no server', allow_module_level=True)\n"
EXPECTED = "import pytest\n@pytest.mark.xfail(reason='known')\ndef test_it():\n    assert False\n"


def run_pytest(path: Path, require_all: str) -> subprocess.CompletedProcess[str]:
    return run_python(
        "-m", "pytest", "-q", "-p", "tests.conftest", "-c", ROOT / "pyproject.toml", path,
        cwd=ROOT,
        environment={"LOOPSTART_TEST_REQUIRE_ALL": require_all},
    )  # fmt: skip


@pytest.mark.parametrize("source", [SKIPPED, SKIPPED_FILE], ids=["a test", "a file"])
def test_a_skip_is_a_failure_where_every_test_must_run(tmp_path: Path, source: str) -> None:
    path = tmp_path / "test_something.py"
    path.write_text(source)
    told = run_pytest(path, "1")
    assert told.returncode != 0
    assert "skipped, where every test must run" in told.stdout


@pytest.mark.parametrize(
    ("source", "require_all"), [(SKIPPED, "0"), (EXPECTED, "1")], ids=["a skip", "a known failure"]
)
def test_elsewhere_nothing_changes(tmp_path: Path, source: str, require_all: str) -> None:
    path = tmp_path / "test_something.py"
    path.write_text(source)
    told = run_pytest(path, require_all)
    assert told.returncode in {0, 5}, told.stdout


@pytest.mark.parametrize(
    ("outcome", "status"), [("True", 0), ("False", 1)], ids=["passing", "failing"]
)
def test_arguments_run_only_pytest_and_its_status_is_kept(
    tmp_path: Path, outcome: str, status: int
) -> None:
    path = tmp_path / "test_something.py"
    path.write_text(f"def test_it():\n    assert {outcome}\n")
    told = run_script("test.py", path, "-q", "-p", "no:cacheprovider")
    assert told.returncode == status
    assert "mypy" not in told.stdout
