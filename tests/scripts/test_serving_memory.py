"""A process that serves has few pools of memory, so that one large export after another fits in one."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

SCRIPTS = Path(__file__).resolve().parents[2] / "scripts"


#: Threads take and give back 40 MB each, one after the other, all alive; then what the process holds.
_TAKING = """
import os, sys, threading
sys.path[:0] = [sys.argv[1], os.path.dirname(sys.argv[1])]
from serving import keep_memory_together
if sys.argv[2] == "together":
    keep_memory_together()
ends = threading.Event()
def take(done):
    kept = [bytes(10_000) for _ in range(4_000)]
    last = bytes(10_000)  # what is given back below it cannot be given to the system
    del kept
    done.set()
    ends.wait()
    del last
for _ in range(8):
    done = threading.Event()
    threading.Thread(target=take, args=(done,), daemon=True).start()
    done.wait()
print(int(open("/proc/self/statm").read().split()[1]) * os.sysconf("SC_PAGE_SIZE") // 1_000_000)
"""


@pytest.mark.skipif(sys.platform != "linux", reason="only on Linux are there such pools")
def test_what_one_thread_took_the_next_one_has() -> None:
    def held(how: str) -> int:
        told = subprocess.run(  # noqa: S603 - this very Python
            [sys.executable, "-c", _TAKING, str(SCRIPTS), how],
            capture_output=True,
            text=True,
            check=True,
        )
        return int(told.stdout)

    assert held("together") * 2 < held("apart")
