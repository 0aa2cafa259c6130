"""The tree of steps laid out to be drawn: one row a step, in the order they were made, each in its lane."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ui.state.history import Step


@dataclass(frozen=True)
class Branch:
    """One step as a row.

    lane : its column, the first one 0;  parent : row of the step it was made from, -1 of the first
    now : whether it is the present one;  on_path : whether undo leads over it
    """

    label: str
    lane: int
    parent: int
    now: bool
    on_path: bool


def branches(steps: Sequence[Step], path: Sequence[int]) -> tuple[Branch, ...]:
    """Return the steps as rows; what was made first from a step stays in its lane, others get one."""
    lanes: list[int] = []
    continued: set[int] = set()
    free = 0
    ways = set(path)
    rows = []
    for number, step in enumerate(steps):
        if step.parent >= 0 and step.parent not in continued:
            continued.add(step.parent)
            lane = lanes[step.parent]
        else:
            lane, free = free, free + 1
        lanes.append(lane)
        rows.append(Branch(step.label, lane, step.parent, number == path[-1], number in ways))
    return tuple(rows)
