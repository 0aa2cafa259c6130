"""What a lesson has yet to ask: before that, or before somebody runs the push, nothing tells it."""

from __future__ import annotations

from sim.plan import Plan
from ui.state.asking import Standing
from ui.state.lesson import Step
from ui.state.lesson_walk import LessonWalk
from ui.state.session import Session


class YetToAsk:
    """Tells the session what may not be seen of a lesson's plans.

    Parameters
    ----------
    session, walk : whose plans are shown, and the lesson in hand

    Attributes
    ----------
    seen : how many leading moves of a plan, as the lesson calls it, something has been seen of
    """

    def __init__(self, session: Session, walk: LessonWalk) -> None:
        self._session, self._walk = session, walk
        self.seen: dict[str, int] = {}
        session.arrow_waits, session.map_waits = self.arrow_waits, self.map_waits
        session.asks_now, session.unasked = self.asks_now, self.unasked
        session.before_push = self.push_begins

    @property
    def _to_come(self) -> tuple[Step, ...]:
        """The steps that have yet to ask, the one shown among them."""
        to_come = self._walk.steps[self._walk.position :]
        return tuple(step for step in to_come if step.question and self._waits(step))

    def _waits(self, step: Step) -> bool:
        return _number(step) > self.seen.get(step.plan, 0)

    def arrow_waits(self) -> bool:
        """Tell whether the class is yet to be asked about the push shown, and has seen nothing of it."""
        step, result = self._walk.step, self._walk.result
        if step is None or result is None or result.plan != self._session.plan:
            return False
        shown = self._session.selection.now.move if step.plan in self.seen else len(result.plan.moves)
        return any(later.plan == step.plan and _number(later) <= shown + 1 for later in self._to_come)

    def map_waits(self) -> bool:
        """Tell the same of the outcome map, which some steps open themselves."""
        step = self._walk.step
        return step is not None and not step.map and self.arrow_waits()

    def asks_now(self) -> bool:
        """Tell whether the step shown is the one that asks, and no card is open yet."""
        off, result = self._session.asking.standing is Standing.OFF, self._walk.result
        here = result is not None and result.plan == self._session.plan
        return off and here and self._walk.step in self._to_come

    def unasked(self, plan: Plan) -> int | None:
        """Return the first move of a plan that is yet to be asked about; None where there is none."""
        asking, here = self._session.asking, self._walk.step
        if here is None:
            return None
        locked = asking.standing in (Standing.LOCKED, Standing.SHOWN) and asking.about(plan)
        shown = here.plan if here.moment != "start" else ""  # what a step shows before it asks it means to
        means = _number(here) if shown else 0
        asked = [
            _number(step) - 1
            for step in self._to_come
            if not (step.plan == shown and _number(step) <= means) and self._same_push(step, plan)
        ]
        return min((move for move in asked if not (locked and move <= asking.now.move)), default=None)

    def push_begins(self, last: int) -> int:
        """Note that the push shown is run up to a move: from then on that may be seen.

        Returns
        -------
        Index of the move up to which it may be run: what a later question asks about still waits.
        """
        waiting = [step for step in self._to_come if self._same_push(step, self._session.plan)]
        numbers = sorted({_number(step) for step in waiting})
        if len(numbers) > 1:
            last = min(last, numbers[1] - 2)
        for step in waiting:
            self.saw(step.plan, last + 1)
        return last

    def saw(self, called: str, count: int) -> None:
        """Note that something has been seen of a plan's leading moves, that many."""
        self.seen[called] = max(count, self.seen.get(called, 0))

    def _same_push(self, step: Step, plan: Plan) -> bool:
        asked, count = self._walk.results[step.plan].plan, _number(step)
        return (plan.car, plan.past(count)) == (asked.car, asked.past(count))


def _number(step: Step) -> int:
    """Return the number of the move a step is about, from 1."""
    return max(1, step.move)
