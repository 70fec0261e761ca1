"""The app: made from settings alone, its documentation without internet, its zones its own."""

from __future__ import annotations

import re
import subprocess
import sys
import tomllib
import zoneinfo
from datetime import UTC, datetime
from pathlib import Path

import pytest

from service.app import create_app, now, use_own_zones
from service.settings import Settings
from tests.api.asking import done
from tests.api.conftest import Service

PROJECT = Path(__file__).parents[2]


@pytest.mark.parametrize("page", ["/docs", "/redoc", "/docs/oauth2-redirect"])
def test_the_documentation_refers_to_no_other_host(service: Service, page: str) -> None:
    answer = service.viewer.ask("GET", page)
    assert answer.status_code == 200
    assert answer.headers["content-type"].startswith("text/html")
    assert re.findall(r"(?:https?:)?//[\w.-]+", answer.text) == []
    for source in re.findall(r'(?:src|href)="([^"]+)"', answer.text):
        assert service.viewer.ask("GET", source).status_code == 200, source


@pytest.mark.parametrize("address", ["/docs", "/redoc", "/api/health", "/api/nowhere"])
def test_browsers_are_told_to_ask_no_other_host(service: Service, address: str) -> None:
    """Scripts of the documentation's pages name other hosts, for a picture or a check."""
    policy = service.viewer.ask("GET", address).headers["content-security-policy"]
    default = "'none'" if address.startswith("/api") else "'self'"
    assert f"default-src {default};" in policy
    sources = {word for part in policy.split(";") for word in part.split()[1:]}
    assert sources <= {"'self'", "'unsafe-inline'", "'none'", "data:", "blob:"}
    assert address.startswith("/api") != ("'unsafe-inline'" in sources)


def test_the_health_is_public(service: Service) -> None:
    written = tomllib.loads((PROJECT / "pyproject.toml").read_text("utf-8"))
    assert done(service.viewer.get("/health")) == {
        "status": "ready",
        "version": written["project"]["version"],
    }


def test_making_an_app_opens_nothing(empty_sqlite: Settings) -> None:
    app = create_app(empty_sqlite)
    assert list(empty_sqlite.data_folder.iterdir()) == []
    assert not hasattr(app.state, "wiring")


def test_two_apps_have_nothing_in_common(sqlite: Settings, tmp_path: Path) -> None:
    one = create_app(sqlite)
    other = create_app(Settings(data_folder=tmp_path / "another"))
    assert one.state is not other.state
    assert one.routes is not other.routes


def test_importing_the_app_makes_nothing() -> None:
    """Neither an engine nor a file nor a setting is made before create_app is called."""
    code = "import service.app as a, sys; print([n for n in vars(a) if n in ('app', 'settings')])"
    told = subprocess.run(  # noqa: S603 - this very Python
        [sys.executable, "-c", code],
        cwd=PROJECT,
        env={"LOOPSTART_NO_SUCH_SETTING": "1", "PATH": ""},
        capture_output=True,
        text=True,
        check=False,
    )
    assert (told.returncode, told.stdout.strip()) == (0, "[]"), told.stderr


def test_the_clock_is_aware() -> None:
    assert now().tzinfo is UTC
    assert abs((datetime.now(UTC) - now()).total_seconds()) < 10


def test_zones_come_from_the_package() -> None:
    """An operating system's zones may be years old; tzdata 2026b (22 April 2026) keeps
    British Columbia at seven hours behind UTC all year."""
    use_own_zones()
    assert zoneinfo.TZPATH == ()
    winter = datetime(2026, 12, 1, 12, tzinfo=zoneinfo.ZoneInfo("America/Vancouver"))
    offset = winter.utcoffset()
    assert offset is not None
    assert offset.total_seconds() == -7 * 3600
