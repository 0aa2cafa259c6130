"""Numbered requests to the worker. Only the newest one counts; answers to older ones are dropped."""

from __future__ import annotations

import enum
from dataclasses import dataclass
from pathlib import Path

from sim.move_words import opened
from sim.plan import Plan
from ui.state.signal import Signal


class Job(enum.Enum):
    """What the worker is asked for."""

    PREPARE = "prepare"
    """Set out the door of a car, and its untouched start."""
    SOLVE = "solve"
    """Run moves to the openings the plan says."""
    FIND = "find"
    """Work out how the plan's car was wrecked, and no more."""
    PUSH = "push"
    """Open the tips for as long as they are held, or to the tool's end."""


@dataclass(frozen=True)
class Request:
    """One frozen wish.

    Parameters
    ----------
    number : rises with every request
    job, plan : what to do with which plan
    first : index of the first move to run
    last : index of the last move to run; of a push, the move that is held
    shown_from_m : frames of the held move up to this opening were seen before, and are not drawn again
    aside : the plan is not the one shown: its records are kept and its moments not laid out
    file : where the plan is filed: saved starts are looked for beside it
    keeps : whether the start that its wreck leaves is kept there
    """

    number: int
    job: Job
    plan: Plan
    first: int = 0
    last: int = -1
    shown_from_m: float = 0.0
    aside: bool = False
    file: Path | None = None
    keeps: bool = False


class Standing(enum.Enum):
    """How the newest request stands."""

    IDLE = "idle"
    WAITING = "waiting"
    RUNNING = "running"
    STOPPING = "stopping"


class SolveQueue:
    """Gives out the numbers, remembers which one counts, and how it stands.

    Attributes
    ----------
    changed : emitted after the standing has changed
    """

    def __init__(self) -> None:
        self._last_number = 0
        self._current: Request | None = None
        self._standing = Standing.IDLE
        self.changed: Signal[[]] = Signal()

    @property
    def current(self) -> Request | None:
        """The request that counts; None when nothing is asked."""
        return self._current

    @property
    def standing(self) -> Standing:
        """How the current request stands."""
        return self._standing

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._current is not None

    @property
    def holding(self) -> bool:
        """Whether the tips are held open right now and not yet let go."""
        return (
            self._current is not None
            and self._current.job is Job.PUSH
            and self._standing is not Standing.STOPPING
        )

    def issue(
        self,
        job: Job,
        plan: Plan,
        *,
        first: int = 0,
        last: int = -1,
        shown_from_m: float = 0.0,
        aside: bool = False,
        file: Path | None = None,
        keeps: bool = False,
    ) -> Request:
        """Return a new request; any older one no longer counts."""
        self._last_number += 1
        request = Request(self._last_number, job, plan, first, last, shown_from_m, aside, file, keeps)
        self._current = request
        self._move_to(Standing.WAITING)
        return request

    def accept(self, number: int) -> bool:
        """Tell whether an answer with this number still counts; the first one shows that work has begun."""
        if self._current is None or number != self._current.number:
            return False
        if self._standing is Standing.WAITING:
            self._move_to(Standing.RUNNING)
        return True

    def let_go(self) -> bool:
        """Mark the held push as let go; return whether there was one. Its last answers still count."""
        if not self.holding:
            return False
        self._move_to(Standing.STOPPING)
        return True

    def finish(self, number: int) -> bool:
        """Close the request if the number still counts; return whether it did."""
        if self._current is None or number != self._current.number:
            return False
        self._current = None
        self._move_to(Standing.IDLE)
        return True

    def cancel(self) -> bool:
        """Drop the current request, whatever may still come from it; return whether there was one."""
        if self._current is None:
            return False
        self._current = None
        self._move_to(Standing.IDLE)
        return True

    def _move_to(self, standing: Standing) -> None:
        self._standing = standing
        self.changed.emit()


def still_wanted(request: Request, plan: Plan, beside: Plan | None) -> bool:
    """Tell whether a request's answer fits the plan shown, or the one beside it.

    A push commits its own plan, so how far its move goes does not matter.
    """
    if request.aside:
        return request.plan == beside
    if request.job in (Job.PREPARE, Job.FIND):
        return (request.plan.car, request.plan.past(0)) == (plan.car, plan.past(0))
    last = request.last
    same_before = request.plan.past(last) == plan.past(last)
    held = request.job is Job.PUSH and last < len(plan.moves)
    at_last = held and opened(request.plan.moves[last], 0.0) == opened(plan.moves[last], 0.0)
    whole = request.plan.past(last + 1) == plan.past(last + 1)
    return request.plan.car == plan.car and same_before and (at_last or whole)
