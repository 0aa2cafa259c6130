"""Undo as a tree of plans. Plans are small and frozen, so whole plans are kept and no inverses.

Going back and changing something begins a branch; the steps that were undone stay where they are. A step's
number is its place in the order of making, and never changes while the history lives.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from sim.plan import Plan

LIMIT = 5000
"""Steps kept; a day's lesson stays far below. Past it, an old step that nothing hangs on goes first."""


@dataclass(frozen=True)
class Step:
    """One plan of the past, and what was done to arrive at it.

    parent : number of the step it was made from; -1 of the first one
    """

    label: str
    plan: Plan
    parent: int = -1


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
        self._towards: dict[int, int] = {}  # the child that redo goes to: the one seen last
        self._moments: dict[int, int] = {}  # the moment of its metal that each step was left at

    @property
    def plan(self) -> Plan:
        """The plan as it is now."""
        return self._steps[self._position].plan

    @property
    def steps(self) -> tuple[Step, ...]:
        """Every step kept, those of other branches included, in the order they were made."""
        return tuple(self._steps)

    @property
    def position(self) -> int:
        """Number of the present step in `steps`."""
        return self._position

    @property
    def path(self) -> tuple[int, ...]:
        """Numbers of the steps from the first one to the present one."""
        found = [self._position]
        while self._steps[found[-1]].parent >= 0:
            found.append(self._steps[found[-1]].parent)
        return tuple(reversed(found))

    @property
    def moment(self) -> int | None:
        """The moment at which the present step was left, None where none was noted."""
        return self._moments.get(self._position)

    def note_moment(self, moment: int) -> None:
        """Note which moment of the present step's metal is shown."""
        self._moments[self._position] = moment

    @property
    def can_undo(self) -> bool:
        """Whether there is an earlier step."""
        return self._steps[self._position].parent >= 0

    @property
    def can_redo(self) -> bool:
        """Whether something was made from the present step."""
        return self._position in self._towards

    @property
    def undo_label(self) -> str:
        """What undo would take back; empty when there is nothing."""
        return self._steps[self._position].label if self.can_undo else ""

    @property
    def redo_label(self) -> str:
        """What redo would bring back; empty when there is nothing."""
        return self._steps[self._towards[self._position]].label if self.can_redo else ""

    @classmethod
    def rebuilt(
        cls, steps: Sequence[Step], position: int, towards: Mapping[int, int], moments: Mapping[int, int]
    ) -> History:
        """Return a history as it was; ValueError where its parts do not fit each other."""
        count = len(steps)
        numbers = (position, *towards, *towards.values(), *moments)
        if not all(0 <= n < count for n in numbers) or any(s.parent >= k for k, s in enumerate(steps)):
            raise ValueError("the steps of the history do not hang together")
        made = cls(steps[0].plan)
        made._steps, made._position = list(steps), position
        made._towards, made._moments = dict(towards), dict(moments)
        return made

    @property
    def towards(self) -> Mapping[int, int]:
        """To which step redo goes from each step."""
        return dict(self._towards)

    @property
    def moments(self) -> Mapping[int, int]:
        """The moment at which each step was left."""
        return dict(self._moments)

    def commit(self, plan: Plan, label: str) -> bool:
        """Make `plan` the present one; an equal plan is no step. Return whether a step was made."""
        if plan == self.plan:
            return False
        if len(self._steps) >= LIMIT:
            self._forget_one()
        self._steps.append(Step(label, plan, self._position))
        self._towards[self._position] = self._position = len(self._steps) - 1
        return True

    def amend(self, plan: Plan, label: str) -> None:
        """Put `plan` in the place of the present step: several turns of one wheel are one step.

        Something that was made from the present step keeps it: then this is a step like any other.
        """
        if self.can_redo:
            self.commit(plan, label)
        else:
            self._steps[self._position] = Step(label, plan, self._steps[self._position].parent)

    def go(self, position: int) -> Plan:
        """Return the plan of a step, now the present one; IndexError if there is none."""
        if not 0 <= position < len(self._steps):
            raise IndexError(f"there are steps 0 to {len(self._steps) - 1}, not {position}")
        self._position = position
        for before, after in zip(self.path, self.path[1:], strict=False):
            self._towards[before] = after
        return self.plan

    def undo(self) -> Plan:
        """Return the plan one step back; the first step stays where it is."""
        return self.go(max(0, self._steps[self._position].parent))

    def redo(self) -> Plan:
        """Return the plan one step on, along the branch seen last; its last step stays where it is."""
        return self.go(self._towards.get(self._position, self._position))

    def _forget_one(self) -> None:
        """Take out the oldest step that nothing hangs on; the first step where all hang in one row."""
        children: dict[int, int] = {}
        for step in self._steps:
            children[step.parent] = children.get(step.parent, 0) + 1
        path = set(self.path)
        loose = (i for i in range(len(self._steps)) if i not in children and i not in path)
        gone = 0 if children.get(0, 0) == 1 and self._position != 0 else next(loose, None)
        if gone is None:
            return

        def moved(number: int) -> int:
            return -1 if number == gone else number - (number > gone)

        kept = [step for i, step in enumerate(self._steps) if i != gone]
        self._steps = [Step(step.label, step.plan, moved(step.parent)) for step in kept]
        self._position = moved(self._position)
        self._towards = {moved(a): moved(b) for a, b in self._towards.items() if gone not in (a, b)}
        self._moments = {moved(a): moment for a, moment in self._moments.items() if a != gone}
