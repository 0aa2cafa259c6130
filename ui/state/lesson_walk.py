"""Walking through a lesson: which one is open, which step is shown, and what is said there.

Knows no window.  Whoever shows a lesson listens to `changed` and reads `step`, `words`, `notes`, `following`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from sim.kept import Kept, told
from sim.planfile import plan_sha256
from sim.record import MoveRecord
from sim.results import LIMITS_LINE, MODEL_VERSION
from sim.units import Units
from ui.state.lesson import PHASES, Lesson, Question, Step
from ui.state.lesson_file import load_lesson, unknown_fields
from ui.state.lesson_results import PlanResult, filled, results_of, stale_words
from ui.state.lesson_tongue import in_tongue
from ui.state.signal import Signal


class LessonWalk:
    """The lesson in hand.

    Attributes
    ----------
    changed : emitted when another lesson or another step is shown
    lesson : None when no lesson is open;  path : where it lies
    results : its plans with what was kept of them, by the name the lesson calls them
    unknown : fields of the file that this program does not know, by their paths
    """

    def __init__(self) -> None:
        self.changed: Signal[[]] = Signal()
        self.lesson: Lesson | None = None
        self.path: Path | None = None
        self.results: dict[str, PlanResult] = {}
        self.unknown: tuple[str, ...] = ()
        self.units = Units.METRIC
        self._position = 0

    # --- opening -----------------------------------------------------------------------------------------

    def open(self, path: Path, position: int = 0) -> None:
        """Open a lesson at a step (to come back to where it was left).

        Raises
        ------
        PlanError
            When the lesson or one of its plans cannot be read; what was open stays open.
        """
        lesson = in_tongue(load_lesson(path))
        results = results_of(lesson, path)
        self.unknown = unknown_fields(path.read_text(encoding="utf-8"))
        self.lesson, self.path, self.results = lesson, path, results
        self._position = min(max(position, 0), len(lesson.walked) - 1)
        self.changed.emit()

    def close(self) -> None:
        """Put the lesson away."""
        if self.lesson is not None:
            self.lesson, self.path, self.results, self._position = None, None, {}, 0
            self.changed.emit()

    @property
    def is_open(self) -> bool:
        """Whether a lesson is open."""
        return self.lesson is not None

    # --- the step ----------------------------------------------------------------------------------------

    @property
    def steps(self) -> tuple[Step, ...]:
        """All steps, in order; the debrief is the last."""
        return () if self.lesson is None else self.lesson.walked

    @property
    def position(self) -> int:
        """Index of the step shown."""
        return self._position

    @property
    def step(self) -> Step | None:
        """The step shown; None when no lesson is open."""
        return self.steps[self._position] if self.steps else None

    @property
    def following(self) -> Step | None:
        """The step to come; None at the last one."""
        return self.steps[self._position + 1] if self._position + 1 < len(self.steps) else None

    @property
    def words(self) -> str:
        """What the class reads, with the figures of the results."""
        return "" if self.step is None else self.fill(self.step.words)

    @property
    def notes(self) -> str:
        """What the teacher reads, with the figures of the results."""
        return "" if self.step is None else self.fill(self.step.notes)

    @property
    def question(self) -> Question | None:
        """The question asked at this step, if there is one."""
        if self.lesson is None or self.step is None or not self.step.question:
            return None
        return self.lesson.question_of(self.step.question)

    @property
    def result(self) -> PlanResult | None:
        """The plan of this step with what was kept of it."""
        return None if self.step is None else self.results.get(self.step.plan)

    @property
    def place_words(self) -> str:
        """Where in the lesson this is: "step 2 of 6, show"."""
        if self.step is None:
            return ""
        return f"step {self._position + 1} of {len(self.steps)}, {self.step.phase}"

    @property
    def stale_words(self) -> str:
        """Which kept results are not fresh, in one sentence; empty when all are."""
        return stale_words(self.results.values())

    def renew(self, name: str, records: Sequence[MoveRecord]) -> bool:
        """Take what has just been solved of a plan in place of a stale result; return whether it was one.

        It holds for this sitting and has no runs beside it, so no question on it is graded.
        """
        old = self.results.get(name)
        if old is None or old.fresh or len(records) < len(old.plan.moves):
            return False
        fresh = Kept(MODEL_VERSION, plan_sha256(old.plan), old.plan.title, LIMITS_LINE, told(records))
        self.results[name] = replace(old, kept=fresh, why_stale="")
        return True

    def fill(self, text: str) -> str:
        """Return a text of the lesson with its figures put in."""
        return filled(text, self.results, self.units)

    # --- going -------------------------------------------------------------------------------------------

    def on(self) -> bool:
        """Go to the next step; return whether there was one."""
        return self.go(self._position + 1)

    def back(self) -> bool:
        """Go to the step before; return whether there was one."""
        return self.go(self._position - 1)

    def go(self, position: int) -> bool:
        """Go to a step; return whether it is another one that is there."""
        if not 0 <= position < len(self.steps) or position == self._position:
            return False
        self._position = position
        self.changed.emit()
        return True

    def go_to_phase(self, phase: str) -> bool:
        """Go to the first step of one of the four phases."""
        if phase not in PHASES:
            return False
        places = [k for k, step in enumerate(self.steps) if step.phase == phase]
        return bool(places) and self.go(places[0])
