"""Which of very many links occur more than once, in two bit maps."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TypeVar

T = TypeVar("T")


class Shared:
    """Which links occur more than once. It may say so of a few that do not."""

    def __init__(self, size: int) -> None:
        """For about `size` comments."""
        self.size = size
        bits = min(max(64 * size, 1 << 16), 1 << 26)
        self.mask = (1 << (bits - 1).bit_length()) - 1
        self._once = bytearray((self.mask + 1) >> 3)
        self._more = bytearray((self.mask + 1) >> 3)

    def add(self, links: Iterable[int]) -> None:
        """Count each of the links once more."""
        self.add_of_all([(links, None)])

    def add_of_all(self, linked: Iterable[tuple[Iterable[int], object]]) -> None:
        """Count the links of each of these once more."""
        # Written out: a million times over, calls would take as long as what they do.
        once, more, mask = self._once, self._more, self.mask
        for links, _ in linked:
            for each in links:
                link = each & mask
                place, bit = link >> 3, 1 << (link & 7)
                if once[place] & bit:
                    more[place] |= bit
                else:
                    once[place] |= bit

    def has(self, link: int) -> bool:
        """Whether the link occurred."""
        link &= self.mask
        return bool(self._once[link >> 3] & 1 << (link & 7))

    def copy_of_more(self) -> Shared:
        """Which links occurred more than once until now, whatever is added later."""
        copy = Shared(0)
        copy.size, copy.mask = self.size, self.mask
        copy._once, copy._more = bytearray(), bytearray(self._more)
        return copy

    def forget_once(self) -> None:
        """Keep only which links occurred more than once, which is half of the memory."""
        self._once = bytearray()

    def parted(
        self, linked: Iterable[tuple[tuple[int, ...], T]]
    ) -> tuple[list[T], list[tuple[tuple[int, ...], T]]]:
        """What shares nothing with any other, and the rest with its links."""
        alone, rest = [], []
        more, mask = self._more, self.mask
        for one in linked:
            for each in one[0]:
                link = each & mask
                if more[link >> 3] >> (link & 7) & 1:
                    rest.append(one)
                    break
            else:
                alone.append(one[1])
        return alone, rest

    def is_shared(self, link: int) -> bool:
        """Whether the link occurred more than once."""
        link &= self.mask
        return bool(self._more[link >> 3] >> (link & 7) & 1)
