"""The files for running as a service: what they call is there and does what they say."""

from __future__ import annotations

import configparser
import json
import re
import shlex
import shutil
import signal
import subprocess
import sys
from pathlib import Path

import ask
import httpx
import pytest
import start
from ask import make_options

from service.app import create_app
from service.settings import Settings, read_settings, setting_names
from tests.scripts.running import ROOT
from tests.scripts.test_start import start as start_server

UNIT = ROOT / "scripts" / "service" / "loopstart.service"
CONTAINER = ROOT / "scripts" / "service" / "Containerfile"
OPTIONS = {"start.py": start.make_options, "ask.py": make_options}


def unit() -> dict[str, list[str]]:
    """The unit's service section: each name with all its values."""
    found: dict[str, list[str]] = {}
    section = ""
    for line in UNIT.read_text("utf-8").splitlines():
        if line.startswith("["):
            section = line.strip("[]")
        elif section == "Service" and "=" in line and not line.startswith("#"):
            name, _, value = line.partition("=")
            found.setdefault(name, []).append(value)
    return found


def steps() -> list[tuple[str, str]]:
    """The container file's steps: each keyword with the rest of its line, joined."""
    joined = CONTAINER.read_text("utf-8").replace("\\\n", " ")
    lines = [line for line in joined.splitlines() if line and not line.startswith("#")]
    return [(line.split(maxsplit=1)[0], line.split(maxsplit=1)[1]) for line in lines]


def commands() -> list[list[str]]:
    """Every command that the two files run with this project's scripts."""
    found = [shlex.split(one) for one in unit()["ExecStart"]]
    for keyword, rest in steps():
        if keyword in ("RUN", "CMD", "HEALTHCHECK") and "[" in rest:
            found.append(json.loads(rest[rest.index("[") :]))
    return found


@pytest.mark.parametrize("command", commands(), ids=" ".join)
def test_every_command_calls_a_script_that_is_there_with_options_it_has(command: list[str]) -> None:
    script = command[1].removeprefix("/opt/loopstart/")
    assert (ROOT / script).is_file()
    options = OPTIONS[script.removeprefix("scripts/")]().format_help()
    for word in command[2:]:
        assert not word.startswith("--") or re.search(rf"{word}\b", options), word


def test_every_command_that_is_expected_is_found() -> None:
    assert [Path(command[1]).name for command in commands()] == [
        "start.py",
        "start.py",
        "ask.py",
        "start.py",
    ]


def test_every_setting_they_set_exists() -> None:
    told = [one.partition("=")[0] for one in unit()["Environment"]]
    told += re.findall(r"(\w+)=\S", dict(steps())["ENV"])
    ours = {name for name in told if name.startswith("LOOPSTART")}
    assert {"LOOPSTART_DATA_FOLDER", "LOOPSTART_LOG", "LOOPSTART_ADDRESS"} <= ours
    assert ours <= set(setting_names())


def test_everything_that_is_copied_into_the_container_is_there() -> None:
    copied = [word for keyword, rest in steps() if keyword == "COPY" for word in rest.split()[:-1]]
    assert {"service", "scripts", "requirements.lock"} <= set(copied)
    assert all((ROOT / name).exists() for name in copied)
    assert (dict(steps())["EXPOSE"]) == str(Settings.model_fields["port"].default)
    asked = next(command for command in commands() if "ask.py" in command[1])
    assert f"/api{asked[3]}" in create_app(read_settings()).openapi()["paths"]
    assert ask.make_options().prog == "ask.py"


def test_readme_tells_of_the_places_that_the_files_use() -> None:
    readme = (ROOT / "README.md").read_text("utf-8")
    unit_file, container = UNIT.read_text("utf-8"), CONTAINER.read_text("utf-8")
    for place in ("/opt/loopstart", "/var/lib/loopstart"):
        assert all(place in words for words in (readme, unit_file, container))
    assert unit()["EnvironmentFile"] == ["-/etc/loopstart.env"]
    assert "`/etc/loopstart.env`" in readme
    for file in (UNIT, CONTAINER):
        assert str(file.relative_to(ROOT)) in readme


def test_the_unit_waits_longer_than_the_service_takes_to_stop() -> None:
    assert int(unit()["TimeoutStopSec"][0]) > Settings.model_fields["stop_wait"].default


def test_the_unit_is_one_that_systemd_takes(tmp_path: Path) -> None:
    program = shutil.which("systemd-analyze")
    if program is None:
        parser = configparser.ConfigParser(strict=False, interpolation=None)
        parser.read(UNIT)
        assert {"Unit", "Service", "Install"} == set(parser.sections())
        return
    # Where this runs there is no /opt/loopstart: the program that it calls is this Python.
    # It may lie in a folder whose name holds a space, so that it is quoted (systemd.service(5)).
    words = UNIT.read_text("utf-8").replace("/usr/bin/python3", f'"{sys.executable}"')
    file = tmp_path / UNIT.name
    file.write_text(words.replace("file:///opt/loopstart/README.md", "man:python(1)"), "utf-8")
    told = subprocess.run(  # noqa: S603 - systemd's own check of a file
        [program, "verify", "--man=no", str(file)], capture_output=True, text=True, check=False
    )
    about_it = [line for line in told.stderr.splitlines() if UNIT.name in line]
    assert about_it == []


def test_what_the_unit_starts_serves_logs_and_stops(sqlite: Settings) -> None:
    """The unit's own command and environment, on a data folder of this test."""
    given = dict(one.split("=", 1) for one in unit()["Environment"])
    options = shlex.split(unit()["ExecStart"][0])[2:]
    environment = given | {"LOOPSTART_DATA_FOLDER": str(sqlite.data_folder)}
    server = start_server(*options, **environment)
    assert "token" not in server.printed
    ready = httpx.get(f"{server.url}/api/ready", headers={"X-Request-ID": "from-the-proxy"})
    assert (ready.status_code, ready.json()) == (200, {"ready": True})
    assert ready.headers["X-Request-ID"] == "from-the-proxy"
    asked = httpx.get(f"{server.url}/api/games/nobody-s?voter=Wilhelmina")
    server.process.send_signal(signal.SIGTERM)
    printed, _ = server.process.communicate(timeout=60)
    assert server.process.returncode == 0
    lines = [json.loads(line) for line in printed.splitlines() if line.startswith("{")]
    shown = {line["request_id"]: line for line in lines if "route" in line}
    assert shown["from-the-proxy"]["route"] == "/api/ready"
    line = shown[asked.headers["X-Request-ID"]]
    assert (line["route"], line["status"], line["level"]) == ("/api/games/{game}", 404, "info")
    assert "Wilhelmina" not in printed
