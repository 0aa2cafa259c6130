"""Where moments stand along the bar that is scrubbed: by how far the tips have gone, not by how often looked.

A push is told in fine steps while its tips take hold; by number its first millimetres would take a third of
the bar, and an event half-way through the opening would stand at two thirds.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

LEAST_SHARE = 0.15
"""Of the longest move's room: what a short move, or one done at once, has on the bar."""
GAP_SHARE = 0.04
"""Of the longest move's room: between the end of a move and the first moment of the next."""
LONGEST_M = 2.0
"""A way longer than any tool goes is no way: such moments are set out by their number."""


def places(moves: Sequence[int], openings: Sequence[float]) -> tuple[float, ...]:
    """Return the place of every moment on the bar, 0 .. 1, never falling.

    Parameters
    ----------
    moves : of which move each moment is
    openings : how far its tips stand open [m]; a tool that is drawn back goes on along the bar
    """
    groups = [list(group) for _, group in groupby(range(len(moves)), key=lambda k: moves[k])]
    ways = [_way([openings[k] for k in group]) for group in groups]
    travels = [float(way[-1]) if 1e-6 < way[-1] <= LONGEST_M else 0.0 for way in ways]
    longest = max(travels, default=0.0) or 1.0
    out: list[float] = []
    at = 0.0
    for way, travel in zip(ways, travels, strict=True):
        count = len(way)
        room = max(LEAST_SHARE, travel / longest) if count > 1 else 0.0
        share = way / travel if travel else np.linspace(0.0, 1.0, count)
        out.extend((at + room * share).tolist())
        at += room + GAP_SHARE
    whole = out[-1] if out and out[-1] > 0.0 else 1.0
    return tuple(place / whole for place in out)


def _way(openings: Sequence[float]) -> Floats:
    """Return how far the tips have gone at each moment of a move, there and back, shape (k,) [m]."""
    return np.concatenate([[0.0], np.cumsum(np.abs(np.diff(openings)))])


def nearest(at: float, where: Sequence[float]) -> int:
    """Return the moment nearest to a place on the bar; the latest of those that stand at one place."""
    found = np.abs(np.asarray(where) - at)
    return int(len(found) - 1 - np.argmin(found[::-1])) if len(found) else 0
