"""Predict, lock, reveal: one prediction from the question to the comparison, with its times.

Before the lock nothing of the outcome may be seen; `Asking.hides` is what every view asks.
"""

from __future__ import annotations

import enum
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from sim.move_words import opened
from sim.plan import Plan
from ui.state.questions import OWN, WHY, Question
from ui.state.signal import Signal
from ui.state.verdict import Verdict

MOST_HANDS = 999


class Standing(enum.Enum):
    """How far a prediction is."""

    OFF = "off"
    OPEN = "open"
    """The card is open: choices can be changed, and nothing of the outcome is shown."""
    LOCKED = "locked"
    """No choice can be changed; the push can be run and watched, and is not yet put into words."""
    SHOWN = "shown"
    """Prediction and outcome stand side by side."""


@dataclass(frozen=True)
class Prediction:
    """What was foretold, and when.

    plan, move : the plan and the index of its move it is about
    chosen : the key of the choice taken, by question;  own_words : the reason as it was written
    hands : hands counted, by question and choice;  no names anywhere
    locked_at, ran_at, shown_at : when it was locked, when the push was run after that, when it was compared
    verdict : what the run said, once shown
    """

    plan: Plan
    move: int
    chosen: Mapping[str, str] = field(default_factory=dict)
    own_words: str = ""
    hands: Mapping[tuple[str, str], int] = field(default_factory=dict)
    locked_at: datetime | None = None
    ran_at: datetime | None = None
    shown_at: datetime | None = None
    verdict: Verdict | None = None


class Asking:
    """The prediction in hand.

    Attributes
    ----------
    changed : emitted after anything of it has changed
    kept : emitted with each prediction that is to be written down: at its lock, its run and its comparison
    """

    def __init__(self) -> None:
        self.standing = Standing.OFF
        self.questions: tuple[Question, ...] = ()
        self.now = Prediction(Plan(), 0)
        self._counted: set[str] = set()
        """Questions whose choice follows the hands."""
        self.changed: Signal[[]] = Signal()
        self.kept: Signal[[Prediction]] = Signal()

    @property
    def open(self) -> bool:
        """Whether choices can be changed, and nothing may be run or shown."""
        return self.standing is Standing.OPEN

    @property
    def unspoken(self) -> bool:
        """Whether the outcome must not be put into words, marks or figures: before the comparison."""
        return self.standing in (Standing.OPEN, Standing.LOCKED)

    def hides(self, move: int) -> bool:
        """Tell whether nothing may be seen of a move: it is foretold, or comes after the one that is."""
        return self.open and move >= self.now.move

    def about(self, plan: Plan) -> bool:
        """Tell whether a plan is the one foretold: the same but for how far the foretold move goes."""
        return _bare(plan, self.now.move) == _bare(self.now.plan, self.now.move)

    @property
    def missing(self) -> str:
        """What has yet to be chosen before it can be locked, in a sentence; empty when nothing is."""
        for question in self.questions:
            if not self.now.chosen.get(question.key):
                return f"Still open: {question.words}"
        if self.now.chosen.get(WHY) == OWN and not self.now.own_words.strip():
            return "Write the reason down in a few words."
        return ""

    # --- from question to comparison ---------------------------------------------------------------------

    def ask(self, plan: Plan, move: int, questions: Sequence[Question]) -> None:
        """Open the card on a move of a plan; what was chosen before stays where it is still offered."""
        offered = {(q.key, c.key) for q in questions for c in q.choices}
        old = self.now if self.open else Prediction(plan, move)
        chosen = {q: key for q, key in old.chosen.items() if (q, key) in offered}
        hands = {place: n for place, n in old.hands.items() if place in offered}
        self.questions = tuple(questions)
        self._counted &= {question for question, _ in hands}
        self.now = Prediction(plan, move, chosen, old.own_words, hands)
        self._move_to(Standing.OPEN)

    def choose(self, question: str, choice: str) -> None:
        """Take a choice; once locked nothing can be changed."""
        if self.open:
            self._counted.discard(question)
            self.now = replace(self.now, chosen={**self.now.chosen, question: choice})
            self.changed.emit()

    def count(self, question: str, choice: str, hands: int) -> None:
        """Write down how many hands a choice had; the most hands choose, unless somebody chose otherwise."""
        if self.open:
            counted = {**self.now.hands, (question, choice): min(max(hands, 0), MOST_HANDS)}
            kept = {place: n for place, n in counted.items() if n}
            chosen = dict(self.now.chosen)
            if question in self._counted or question not in chosen:
                self._counted.add(question)
                chosen.pop(question, None)
                chosen |= _most_hands(kept, question)
            self.now = replace(self.now, hands=kept, chosen=chosen)
            self.changed.emit()

    def write(self, words: str) -> None:
        """Write the reason down in one's own words."""
        if self.open and words != self.now.own_words:
            self.now = replace(self.now, own_words=words)
            self.changed.emit()

    def lock(self, at: datetime) -> bool:
        """Lock the prediction; return whether it could be: a choice to each question is asked for."""
        if not self.open or self.missing:
            return False
        self.now = replace(self.now, locked_at=at)
        self._move_to(Standing.LOCKED)
        self.kept.emit(self.now)
        return True

    def run(self, at: datetime) -> None:
        """Note when the push was run, the first time after the lock."""
        if self.standing is Standing.LOCKED and self.now.ran_at is None:
            self.now = replace(self.now, ran_at=_not_before(at, self.now.locked_at))
            self.kept.emit(self.now)
            self.changed.emit()

    def show(self, verdict: Verdict, at: datetime) -> bool:
        """Put prediction and outcome side by side; return whether it could be: locked and run before."""
        if self.standing is not Standing.LOCKED or self.now.ran_at is None:
            return False
        self.now = replace(self.now, verdict=verdict, shown_at=_not_before(at, self.now.ran_at))
        self._move_to(Standing.SHOWN)
        self.kept.emit(self.now)
        return True

    def restore(self, standing: Standing, questions: Sequence[Question], now: Prediction) -> None:
        """Put a prediction back where it was, with its times; it has been written down before."""
        self.questions, self.now = tuple(questions), now
        self._move_to(standing)

    def end(self) -> None:
        """Put the card away; what was locked has been written down."""
        if self.standing is not Standing.OFF:
            self._move_to(Standing.OFF)

    def _move_to(self, standing: Standing) -> None:
        self.standing = standing
        self.changed.emit()


def _most_hands(hands: Mapping[tuple[str, str], int], question: str) -> dict[str, str]:
    """Return the choice of a question with the most hands; nothing where none has more than the others."""
    counted = {choice: n for (asked, choice), n in hands.items() if asked == question}
    leading = [choice for choice, n in counted.items() if n == max(counted.values())]
    return {question: leading[0]} if len(leading) == 1 else {}


def _bare(plan: Plan, move: int) -> tuple[object, ...]:
    """Return what a prediction is about: the car and the moves to the foretold one, however far it goes."""
    moves = plan.moves[: move + 1]
    return plan.car, plan.past(max(0, len(moves) - 1)), opened(moves[-1], 0.0) if len(moves) > move else None


def _not_before(at: datetime, earlier: datetime | None) -> datetime:
    """Return a time, or the earlier one where a clock was set back between the two."""
    return at if earlier is None or at >= earlier else earlier
