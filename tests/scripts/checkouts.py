"""A copy of the scripts with small packages of its own; nothing is fetched from anywhere."""

from __future__ import annotations

import base64
import hashlib
import os
import shutil
import subprocess
import sys
import zipfile
from dataclasses import dataclass
from pathlib import Path

from tests.scripts.running import ROOT, run_python


def write_wheel(folder: Path, version: str, name: str = "pebble") -> str:
    """A package with one module, as pip installs it; answers its SHA-256."""
    files = {
        f"{name}.py": f"SAYS = '{name} {version}'\n",
        f"{name}-{version}.dist-info/METADATA": (
            f"Metadata-Version: 2.1\nName: {name}\nVersion: {version}\n"
        ),
        f"{name}-{version}.dist-info/WHEEL": (
            "Wheel-Version: 1.0\nGenerator: hand\nRoot-Is-Purelib: true\nTag: py3-none-any\n"
        ),
    }
    rows = []
    for place, text in files.items():
        digest = base64.urlsafe_b64encode(hashlib.sha256(text.encode()).digest()).rstrip(b"=")
        rows.append(f"{place},sha256={digest.decode()},{len(text)}")
    record = f"{name}-{version}.dist-info/RECORD"
    files[record] = "\n".join([*rows, f"{record},,"]) + "\n"
    wheel = folder / f"{name}-{version}-py3-none-any.whl"
    with zipfile.ZipFile(wheel, "w") as packed:
        for place, text in files.items():
            packed.writestr(place, text)
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
            f"shell==1.0 --hash=sha256:{write_wheel(self.wheels, '1.0', 'shell')}\n"
        )

    @property
    def offline(self) -> dict[str, str]:
        """What makes pip take the packages from the folder of wheels alone."""
        return {
            "PIP_NO_INDEX": "1",
            "PIP_FIND_LINKS": self.wheels.as_uri(),
            "PIP_CONFIG_FILE": os.devnull,
        }

    def run(
        self, *arguments: str, script: str = "say.py", **environment: str
    ) -> subprocess.CompletedProcess[str]:
        # From another folder: a script must not care where one stands.
        return run_python(
            self.folder / "scripts" / script,
            *arguments,
            cwd=self.wheels,
            environment=self.offline | environment,
        )

    def begin(self, script: str, **environment: str) -> subprocess.Popen[str]:
        """Begins a script in a group of processes of its own, and does not wait for its end."""
        return subprocess.Popen(  # noqa: S603 - the project's own scripts
            [sys.executable, str(self.folder / "scripts" / script)],
            cwd=self.wheels,
            env=os.environ | self.offline | environment,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            start_new_session=True,
        )


def make_checkout(folder: Path) -> Checkout:
    checkout = Checkout(folder / "a check out", folder / "wheels")
    checkout.wheels.mkdir(parents=True)
    scripts = checkout.folder / "scripts"
    scripts.mkdir(parents=True)
    for name in ("environment", "install", "lockfile", "turns"):
        shutil.copy(ROOT / "scripts" / f"{name}.py", scripts)
    (scripts / "say.py").write_text(
        "import environment\nenvironment.enter('run')\n"
        "import sys, pebble\nprint(pebble.SAYS, sys.argv[1:], sys.prefix)\n"
    )
    (scripts / "try.py").write_text(
        "import environment\nenvironment.enter('run', 'test')\n"
        "import pebble, shell\nprint(pebble.SAYS, 'and', shell.SAYS)\n"
    )
    checkout.lock("1.0")
    return checkout
