"""How far long requests are, for callers who want to know while they wait.

A caller names a request with `watch` and asks for that name meanwhile. It is kept in this
process: where several serve, only the one that works on the request knows.
"""

from __future__ import annotations

import threading
from collections import OrderedDict

from service.store.staging import Tell

#: How many requests are remembered.
_MOST = 100
#: What is being done, how many comments are done, and of how many (0: not known).
Far = tuple[str, int, int]


class Progress:
    """How far the requests of this process are, by the names that their callers gave them."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._told: OrderedDict[str, Far] = OrderedDict()

    def teller(self, watch: str | None) -> Tell:
        """What a request tells its progress to."""

        def tell(step: str, done: int, total: int) -> None:
            if watch is not None:
                with self._lock:
                    self._told[watch] = (step, done, total)
                    self._told.move_to_end(watch)
                    while len(self._told) > _MOST:
                        self._told.popitem(last=False)

        return tell

    def of(self, watch: str) -> Far:
        """How far the request of that name is; one that is not known waits."""
        with self._lock:
            return self._told.get(watch, ("waiting", 0, 0))
