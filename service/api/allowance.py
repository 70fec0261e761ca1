"""How many requests each network address may send: an allowance that is used up and comes back.

Only in memory, only as long as it matters, and never logged: whoever asks no more is forgotten
after two minutes. Each process counts by itself, so that several together allow as many times as
much: the limit is there to keep one sender from taking everything, not to bill anybody.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass
from ipaddress import IPv6Address, ip_address, ip_network
from math import ceil
from time import monotonic

#: So many addresses are kept; beyond, the one that has asked nothing for longest is forgotten.
MOST_KEPT = 50_000
_MINUTE = 60.0
#: Nobody owes more than one minute's worth, so after two everybody has all again.
_FORGOTTEN_AFTER = 2 * _MINUTE
#: What a provider gives one customer: all its addresses are one sender (RFC 6177, section 2).
_ONE_CUSTOMER = 64


def network_of(address: str) -> str:
    """The sender that an address belongs to: an IPv4 address itself, of IPv6 its network of 64 bits.

    What is no address (a server in front told something else) is a sender of its own.
    """
    try:
        ip = ip_address(address.partition("%")[0])
    except ValueError:
        return address[:100]
    if not isinstance(ip, IPv6Address):
        return str(ip)
    if ip.ipv4_mapped is not None:
        return str(ip.ipv4_mapped)
    return str(ip_network((ip, _ONE_CUSTOMER), strict=False))


@dataclass(slots=True)
class _Left:
    """How many requests are left, and when that was reckoned."""

    requests: float
    at: float


class Allowance:
    """What each sender has left of `per_minute`. For one thread alone: the event loop's."""

    def __init__(
        self, per_minute: int, clock: Callable[[], float] = monotonic, most_kept: int = MOST_KEPT
    ) -> None:
        self._per_minute = per_minute
        self._clock = clock
        self._most_kept = most_kept
        self._left: OrderedDict[str, _Left] = OrderedDict()

    def __len__(self) -> int:
        """How many senders are kept."""
        return len(self._left)

    def take(self, sender: str) -> int:
        """Use one request up: 0, or, where none is left, the seconds until there is one."""
        left = self._reckoned(sender)
        if left.requests < 1:
            return max(1, ceil((1 - left.requests) * _MINUTE / self._per_minute))
        left.requests -= 1
        return 0

    def charge(self, sender: str, requests: int) -> None:
        """Use more up for what one request cost, or give back (below 0) what it did not cost."""
        left = self._reckoned(sender)
        bounded = max(left.requests - requests, float(-self._per_minute))
        left.requests = min(bounded, float(self._per_minute))

    def _reckoned(self, sender: str) -> _Left:
        now = self._clock()
        self._forget(now)
        left = self._left.setdefault(sender, _Left(float(self._per_minute), now))
        come = (now - left.at) * self._per_minute / _MINUTE
        left.requests = min(left.requests + come, float(self._per_minute))
        left.at = now
        self._left.move_to_end(sender)
        return left

    def _forget(self, now: float) -> None:
        while self._left:
            sender, left = next(iter(self._left.items()))
            if len(self._left) < self._most_kept and now - left.at < _FORGOTTEN_AFTER:
                return
            del self._left[sender]
