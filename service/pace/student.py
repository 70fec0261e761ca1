"""Quantiles of Student's t for whole degrees of freedom, to the last digits of a float.

Source: M. Abramowitz and I. A. Stegun (eds.), Handbook of Mathematical Functions, National Bureau
of Standards, 1964, 26.7.3 (odd degrees) and 26.7.4 (even degrees): the distribution as a finite
sum, here turned round by bisection.
"""

from __future__ import annotations

import math
from functools import lru_cache

_STEPS = 200


def within(t: float, degrees: int) -> float:
    """The chance that Student's t with so many degrees of freedom lies between -t and t (t >= 0)."""
    angle = math.atan(t / math.sqrt(degrees))
    sine, cosine = math.sin(angle), math.cos(angle)
    if degrees % 2 == 0:
        term = total = 1.0
        for k in range(1, degrees // 2):
            term *= cosine * cosine * (2 * k - 1) / (2 * k)
            total += term
        return sine * total
    total = term = cosine if degrees > 1 else 0.0
    for k in range(1, (degrees - 1) // 2):
        term *= cosine * cosine * (2 * k) / (2 * k + 1)
        total += term
    return 2 / math.pi * (angle + sine * total)


@lru_cache(maxsize=256)
def t_of(confidence: float, degrees: int) -> float:
    """The t that a share of `confidence` (0 to 1, both without) lies within, on both sides of 0.

    With 0.95 it is the quantile 0.975, as a two-sided interval needs.
    """
    low, high = 0.0, 1.0
    while within(high, degrees) < confidence:
        high *= 2
    for _ in range(_STEPS):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        if within(middle, degrees) < confidence:
            low = middle
        else:
            high = middle
    return high
