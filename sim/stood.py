"""Which side of a spread gave: how far what each tip stands on has moved along the line of action.

The side that is meant to stand is the one under the other tip.  It is *giving* when it has moved more than
the door under the tip that is meant to move it, and so far that it can be seen.  No law and no seat's name
comes into it: both ways are read from the metal.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim import outcome
from sim.push import Push
from sim.record import BASE_GIVING, Event

Floats = NDArray[np.float64]


def ways_m(push: Push, before: Floats, points: Floats) -> tuple[float, float]:
    """Return how far the metal under the tip on the door, and that under the other, has given [m].

    Each along the push as it was set, away from the other; nothing for what stands still.
    """
    door = float(push.direction @ (push.weights @ (points[push.nodes] - before[push.nodes])))
    if push.on is None or float(push.on[1].sum()) < 0.0:  # on what stands still, or on the ground
        return door, 0.0
    nodes, weights = push.on
    return door, -float(push.direction @ (weights @ (points[nodes] - before[nodes])))


def base_gives(push: Push, before: Floats, points: Floats) -> bool:
    """Tell whether the side that is meant to stand has moved more than the side that is meant to move."""
    door, base = ways_m(push, before, points)
    return base > max(door, outcome.limit("moved_m"))


def base_events(
    push: Push, before: Floats, points: Floats, opening_m: float, force_n: float
) -> tuple[Event, ...]:
    """Return the event of a base that gives, at most one."""
    if not base_gives(push, before, points):
        return ()
    return (Event(BASE_GIVING, push.seats[1], opening_m, force_n),)
