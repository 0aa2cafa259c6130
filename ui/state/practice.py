"""Practice with a lesson's questions: to look on, to be coached, to go alone, or to be tested.

free : no questions, the plans to try;  guided : each question with its answer and why, as a worked example
coached : a hint on request, and what came out after each answer;  test : no hint, nothing until the end

Only settled keys are graded, in every mode; the others are answered, shown, and talked about.
"""

from __future__ import annotations

import enum
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from ui.state.bank import Key, choices_of, key_of
from ui.state.lesson import Choice, Lesson, Question
from ui.state.lesson_results import PlanResult, filled
from ui.state.signal import Signal
from ui.state.tongue import own, tr

SCORED_LINE = "Scored on the model. Practical assessment is separate."


class Mode(enum.Enum):
    """How the questions are worked through."""

    FREE = "free"
    GUIDED = "guided"
    COACHED = "coached"
    TEST = "test"


MODE_WORDS: Mapping[Mode, str] = {
    Mode.FREE: "Free: try the plans, no questions",
    Mode.GUIDED: "Guided: each question with its answer",
    Mode.COACHED: "Coached: a hint when you want one",
    Mode.TEST: "Test: no hints, the answers at the end",
}


@dataclass(frozen=True)
class Item:
    """One question ready to be asked, with the key of the runs."""

    question: Question
    ask: str
    choices: tuple[Choice, ...]
    key: Key
    hint: str
    why: str

    def words_of(self, outcome: str) -> str:
        """Return the words of an outcome; the outcome itself where no choice stands for it."""
        return next((choice.words for choice in self.choices if choice.outcome == outcome), outcome)


@dataclass(frozen=True)
class Score:
    """What a test came to: of the questions that can be graded, and how many could not."""

    right: int
    graded: int
    not_graded: int

    @property
    def words(self) -> str:
        """The score in a sentence, with the line that belongs to it."""
        left = ""
        if self.not_graded:
            few = "one question was" if self.not_graded == 1 else f"{self.not_graded} questions were"
            left = f" {few[0].upper()}{few[1:]} not graded: the model is not settled there."
        return f"{self.right} of {self.graded} as the model has it.{left} {SCORED_LINE}"


def items_of(lesson: Lesson, results: Mapping[str, PlanResult]) -> tuple[Item, ...]:
    """Return a lesson's questions with their keys, the plain ones first."""
    found = dict(results)
    items = [
        Item(
            question,
            filled(question.ask, found),
            choices_of(question, found),
            key_of(question, found),
            filled(question.hint, found),
            filled(question.why, found),
        )
        for question in lesson.questions
    ]
    order = ("plain", "close", "not settled")
    return tuple(sorted(items, key=lambda item: order.index(item.key.difficulty)))


class Practice:
    """One pass through some questions.

    Attributes
    ----------
    changed : emitted after an answer, a hint or another question
    """

    def __init__(self, items: Sequence[Item], mode: Mode) -> None:
        self.changed: Signal[[]] = Signal()
        self.items = tuple(items) if mode is not Mode.FREE else ()
        self.mode = mode
        self.position = 0
        self.hinted: set[int] = set()
        self._answers: dict[int, str] = {}

    @property
    def item(self) -> Item | None:
        """The question in hand; None in free practice and after the last one."""
        return self.items[self.position] if self.position < len(self.items) else None

    @property
    def done(self) -> bool:
        """Whether every question has been answered, or looked at where none is asked for."""
        return self.position >= len(self.items)

    def answer(self, outcome: str) -> None:
        """Answer the question in hand; in a test the next one comes at once."""
        if self.item is None or self.mode is Mode.GUIDED:
            return
        if outcome not in [choice.outcome for choice in self.item.choices]:
            raise KeyError(outcome)
        self._answers[self.position] = outcome
        if self.mode is Mode.TEST:
            self.position += 1
        self.changed.emit()

    def on(self) -> None:
        """Go to the next question; a test waits for the answer."""
        if self.item is not None and (self.mode is not Mode.TEST or self.position in self._answers):
            self.position += 1
            self.changed.emit()

    def answered(self, position: int | None = None) -> str:
        """Return the outcome answered to a question, "" for none."""
        return self._answers.get(self.position if position is None else position, "")

    @property
    def hint(self) -> str:
        """The hint of the question in hand, once asked for; never in a test."""
        item = self.item
        if item is None or self.mode is Mode.TEST or self.position not in self.hinted:
            return ""
        return item.hint

    def ask_hint(self) -> bool:
        """Ask for the hint; return whether there is one to be had."""
        if self.item is None or not self.item.hint or self.mode in (Mode.TEST, Mode.FREE):
            return False
        self.hinted.add(self.position)
        self.changed.emit()
        return True

    @property
    def told(self) -> str:
        """What came out, for the question in hand; empty before it may be said."""
        item = self.item
        if item is None or self.mode is Mode.TEST:
            return ""
        if self.mode is Mode.COACHED and self.position not in self._answers:
            return ""
        return reveal(item)

    @property
    def score(self) -> Score:
        """The score so far."""
        graded = [k for k, item in enumerate(self.items) if item.key.settled and k in self._answers]
        right = sum(self._answers[k] == self.items[k].key.outcome for k in graded)
        unsettled = sum(not self.items[k].key.settled for k in self._answers)
        return Score(right, len(graded), unsettled)


def reveal(item: Item) -> str:
    """Return what the runs say to a question, and why; never that somebody is wrong."""
    if not item.key.outcome:
        return item.key.why_not
    said = f"In the model: {item.words_of(item.key.outcome)}."
    if not item.key.settled:
        said = f"Not settled, and not graded. {item.key.why_not} This run: {item.words_of(item.key.outcome)}."
    return own(f"{tr(said)} {item.why}".strip())
