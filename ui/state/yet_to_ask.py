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
    pushed : plans of whose push something has been seen, as the lesson calls them
    """

    def __init__(self, session: Session, walk: LessonWalk) -> None:
        self._session, self._walk = session, walk
        self.pushed: set[str] = set()
        session.arrow_waits, session.map_waits = self.arrow_waits, self.map_waits
        session.asks_now, session.unasked = self.asks_now, self.unasked
        session.before_push = self.push_begins

    @property
    def _to_come(self) -> tuple[Step, ...]:
        """The steps that have yet to ask, the one shown among them."""
        to_come = self._walk.steps[self._walk.position :]
        return tuple(step for step in to_come if step.question and step.plan not in self.pushed)

    def arrow_waits(self) -> bool:
        """Tell whether the class is yet to be asked about the push shown, and has seen nothing of it."""
        step, result = self._walk.step, self._walk.result
        if step is None or result is None or result.plan != self._session.plan or step.plan in self.pushed:
            return False
        return any(later.plan == step.plan for later in self._to_come)

    def map_waits(self) -> bool:
        """Tell the same of the outcome map, which some steps open themselves."""
        step = self._walk.step
        return step is not None and not step.map and self.arrow_waits()

    def asks_now(self) -> bool:
        """Tell whether the step shown is the one that asks, and no card is open yet."""
        off = self._session.asking.standing is Standing.OFF
        return off and self._walk.step in self._to_come and self.arrow_waits()

    def unasked(self, plan: Plan) -> int | None:
        """Return the first move of a plan that is yet to be asked about; None where there is none."""
        asking, here = self._session.asking, self._walk.step
        if here is None or (asking.standing in (Standing.LOCKED, Standing.SHOWN) and asking.about(plan)):
            return None
        shown = here.plan if here.moment != "start" else ""  # what a step shows before it asks it means to
        asked = [step for step in self._to_come if step.plan != shown and self._same_push(step, plan)]
        return min((max(0, step.move - 1) for step in asked), default=None)

    def push_begins(self) -> None:
        """Note that the push shown is run: from then on it may be seen."""
        self.pushed |= {step.plan for step in self._to_come if self._same_push(step, self._session.plan)}

    def _same_push(self, step: Step, plan: Plan) -> bool:
        asked, count = self._walk.results[step.plan].plan, max(1, step.move)
        return (plan.car, plan.past(count)) == (asked.car, asked.past(count))
