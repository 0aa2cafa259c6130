"""Undo: a list of (label, plan). Plans are small and frozen, so whole plans are kept and no inverses."""

from __future__ import annotations

from dataclasses import dataclass

from sim.plan import Plan

LIMIT = 500
"""Steps kept; the oldest go first. A day's lesson stays far below."""


@dataclass(frozen=True)
class Step:
    """One plan of the past, and what was done to arrive at it."""

    label: str
    plan: Plan


class History:
    """Where the plan has been, and where it is now.

    Parameters
    ----------
    plan : the first plan
    label : what to call it in the list
    """

    def __init__(self, plan: Plan, label: str = "Start") -> None:
        self._steps: list[Step] = [Step(label, plan)]
        self._position = 0

    @property
    def plan(self) -> Plan:
        """The plan as it is now."""
        return self._steps[self._position].plan

    @property
    def steps(self) -> tuple[Step, ...]:
        """Every step kept, the undone ones included."""
        return tuple(self._steps)

    @property
    def position(self) -> int:
        """Index of the present step in `steps`."""
        return self._position

    @property
    def can_undo(self) -> bool:
        """Whether there is an earlier step."""
        return self._position > 0

    @property
    def can_redo(self) -> bool:
        """Whether a step was undone and not yet written over."""
        return self._position + 1 < len(self._steps)

    @property
    def undo_label(self) -> str:
        """What undo would take back; empty when there is nothing."""
        return self._steps[self._position].label if self.can_undo else ""

    @property
    def redo_label(self) -> str:
        """What redo would bring back; empty when there is nothing."""
        return self._steps[self._position + 1].label if self.can_redo else ""

    def commit(self, plan: Plan, label: str) -> bool:
        """Make `plan` the present one; an equal plan is no step. Return whether a step was made."""
        if plan == self.plan:
            return False
        self._steps[self._position + 1 :] = [Step(label, plan)]
        self._position += 1
        if len(self._steps) > LIMIT:
            surplus = len(self._steps) - LIMIT
            del self._steps[:surplus]
            self._position -= surplus
        return True

    def amend(self, plan: Plan, label: str) -> None:
        """Put `plan` in the place of the present step: several turns of one wheel are one step."""
        self._steps[self._position :] = [Step(label, plan)]

    def go(self, position: int) -> Plan:
        """Return the plan at a position, now the present one; IndexError if there is none."""
        if not 0 <= position < len(self._steps):
            raise IndexError(f"there are steps 0 to {len(self._steps) - 1}, not {position}")
        self._position = position
        return self.plan

    def undo(self) -> Plan:
        """Return the plan one step back; the first step stays where it is."""
        return self.go(max(0, self._position - 1))

    def redo(self) -> Plan:
        """Return the plan one step on; the last step stays where it is."""
        return self.go(min(len(self._steps) - 1, self._position + 1))
