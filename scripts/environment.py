"""Makes the environment that the scripts run in, and runs them in it."""

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent


def enter(*sections: str) -> None:
    """Lets the calling script import the project."""
    del sections
    if str(ROOT) not in sys.path:
        sys.path.insert(0, str(ROOT))
