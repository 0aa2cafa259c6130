"""Which side of a spread gave, and whether a pillar that is pressed takes its base along.

How far what each tip stands on has moved is read along the line of action. The side that is meant to stand is
the one under the other tip. It is *giving* when it has moved more than the door under the tip that is meant
to move it, and so far that it can be seen; what a pillar stands on, when more of the head's way comes from
the foot's moving and turning than from the pillar above. No law and no seat's name comes into it: all are
read from the metal.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from sim import outcome
from sim.model import DoorModel
from sim.push import Push
from sim.record import BASE_GIVING, Event

Floats = NDArray[np.float64]

FOOT_RING = "pillar start_ring"
ROCKER = "rocker"
"""The part of an event that tells of the base under a pillar."""


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


def foot_way_m(feet: tuple[Floats, Floats], head: Floats, line: Floats) -> float:
    """Return how far a ram's head has gone because what the pillar stands on has moved and turned [m].

    Parameters
    ----------
    feet : the ring of nodes at the pillar's foot before and now, each (k, 3) [m]
    head : where the ram's head was set, shape (3,) [m];  line : unit vector of the ram
    """
    before, now = (ring - ring.mean(axis=0) for ring in feet)
    u, _, v = np.linalg.svd(before.T @ now)
    turn = (u @ np.diag([1.0, 1.0, np.sign(np.linalg.det(u @ v))]) @ v).T
    middle, after = (ring.mean(axis=0) for ring in feet)
    return float(line @ (turn @ (head - middle) + after - head))


def foot_gives(
    model: DoorModel, states: tuple[Floats, Floats], head: Floats, line: Floats, moved_m: float
) -> bool:
    """Tell whether more of a head's way on the pillar comes from the rocker under it than from the pillar.

    Parameters
    ----------
    states : nodes when the head was set and now, each (n, 3) [m];  moved_m : the head's whole way
    """
    ring = model.structure.names.get(FOOT_RING)
    if model.rocker is None or ring is None:
        return False
    way = foot_way_m((states[0][ring], states[1][ring]), head, line)
    return way > max(0.5 * moved_m, outcome.limit("moved_m"))


def base_words(events: Sequence[Event], sink_m: float) -> str:
    """Return what a press says of a base that gave: under the ram's foot, or under the pillar."""
    parts = [event.part for event in events if event.kind == BASE_GIVING]
    if parts and parts[0] == ROCKER:
        return (
            "The rocker under the pillar gave before the pillar folded: "
            "cut the foot for relief, or go elsewhere."
        )
    return (
        f"The base gave before the part did and stands {sink_m * 1e3:.0f} mm deep: "
        "spread the foot or find a stiffer base."
    )
