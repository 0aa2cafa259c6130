"""What stands on the ground, with what force, and how the car's body has moved on its stands."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from numpy.typing import NDArray

from sim.grounds import GROUND_ROWS
from sim.increment import Point
from sim.model import DoorModel
from sim.record import Event
from sim.state import State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

GROUNDED_N = 20.0  # a part carries load on the ground from here on: a tenth of a door's weight, assumed
PART_WORDS = {"front": "front door", "rear": "rear door", "pillar": "pillar"}


def part_of(model: DoorModel, nodes: Ints) -> list[str]:
    """Return which part each node belongs to, in words."""
    first: Mapping[str, int] = getattr(model, "first", {"front": 0})
    starts = sorted((start, word) for word, start in first.items())
    slot = np.searchsorted([start for start, _ in starts], nodes, side="right") - 1
    return [PART_WORDS.get(starts[k][1], starts[k][1]) for k in slot.tolist()]


def grounded_n(model: DoorModel, state: State) -> dict[str, float]:
    """Return what the ground carries of each part that stands on it [N]."""
    rows = state.kept.get(GROUND_ROWS)
    out: dict[str, float] = {}
    if rows is None:
        return out
    for part, push in zip(part_of(model, rows[:, 0].astype(np.int64)), rows[:, 4].tolist(), strict=True):
        out[part] = out.get(part, 0.0) + push
    return {part: push for part, push in out.items() if push >= GROUNDED_N}


def ground_events(model: DoorModel, before: State, point: Point) -> list[Event]:
    """Return the parts that have come to stand on the ground between a state and a point."""
    already = grounded_n(model, before)
    now = grounded_n(model, point.state)
    return [
        Event("grounded", part, point.travel_m, force) for part, force in now.items() if part not in already
    ]


def body_rise_m(structure: Structure, points: Floats) -> float:
    """Return how far the car's body has risen on its stands on the near side [m]; 0 where it stands still."""
    body = None if structure.surround is None else structure.surround.body
    if body is None or structure.surround is None:
        return 0.0
    down = structure.surround.gravity_m_s2
    up = -down / float(np.linalg.norm(down))
    near = [stand.place for stand in body.stands if "near" in stand.name]
    moved = body.moved(points, structure.points, np.mean(near, axis=0)[None])[0]
    return float(moved @ up)
