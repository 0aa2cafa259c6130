"""What plots share: marks of an axis, and words beside lines that do not stand into each other."""

from __future__ import annotations

import math
from collections.abc import Sequence

STEPS = (1.0, 2.0, 5.0)
"""Marks of an axis stand one of these apart, times a power of ten."""


def tick(low: float, high: float, most: int) -> float:
    """Return how far apart the marks of an axis stand, so that there are at most so many, in its own unit."""
    least = max(high - low, 1.0e-9) / max(most, 1)
    power = 10.0 ** math.floor(math.log10(least))
    return next((step * power for step in STEPS if step * power >= least * (1.0 - 1e-9)), 10.0 * power)


def ticks(low: float, high: float, most: int) -> tuple[float, ...]:
    """Return the marks of an axis in its own unit, the lowest first."""
    step = tick(low, high, most)
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    return tuple(step * k for k in range(first, last + 1))


def spread_out(places: Sequence[float], apart: float, top: float, low: float) -> list[float]:
    """Return places moved apart, in their order, until none is nearer to the next than ``apart``."""
    order = sorted(range(len(places)), key=lambda k: places[k])
    out = [float(places[k]) for k in order]
    for k in range(1, len(out)):
        out[k] = max(out[k], out[k - 1] + apart)
    limit = low
    for k in range(len(out) - 1, -1, -1):  # what would lie too low moves up, and no more than it must
        out[k] = max(min(out[k], limit), top)
        limit = out[k] - apart
    found = [0.0] * len(out)
    for place, k in zip(out, order, strict=True):
        found[k] = place
    return found
