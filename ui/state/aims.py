"""What is known of pushes not yet made: the metal's elastic answer, and the touches tried on it."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeVar

from sim.move_words import opened
from sim.plan import Car, Move, Squeeze
from sim.units import Units, force_text, length_text
from ui.state.answers import ElasticReady, Touched, Untouched
from ui.state.signal import Signal

if TYPE_CHECKING:
    from sim.elastic import Elastic
    from sim.record import Aim, Touch

ANSWERS_KEPT, TOUCHES_KEPT = 12, 400

Key = TypeVar("Key")
Value = TypeVar("Value")

Before = tuple[Car, tuple[object, ...]]
"""The metal as a car's earlier moves left it."""


@dataclass(frozen=True)
class TouchWish:
    """A push to be tried, on the metal as earlier moves left it; numbers rise, and only the newest counts."""

    number: int
    before: Before
    move: Move


class Aims:
    """Elastic answers and touches, as far as they are known, and the one touch asked for.

    Attributes
    ----------
    wished : emitted with each touch to hand to the worker
    changed : emitted when something more is known
    failed : emitted with a sentence and the details of a fault
    """

    def __init__(self) -> None:
        self._answers: OrderedDict[Before, Elastic] = OrderedDict()
        self._touches: OrderedDict[tuple[Before, Move], Touch] = OrderedDict()
        self._wish: TouchWish | None = None
        self._last_number = 0
        self.wished: Signal[[TouchWish]] = Signal()
        self.changed: Signal[[]] = Signal()
        self.failed: Signal[[str, str]] = Signal()

    def answer(self, before: Before) -> Elastic | None:
        """Return the elastic answer of the metal, None while it is not known."""
        return self._answers.get(before)

    def touch(self, before: Before, move: Move) -> Touch | None:
        """Return what a push did when it was tried, None while it has not been."""
        return self._touches.get((before, opened(move, 0.0)))

    def wish(self, before: Before, move: Move) -> None:
        """Ask for a touch, unless it is known or asked for already; an older wish no longer counts."""
        waiting = self._wish is not None and (self._wish.before, self._wish.move) == (before, move)
        if waiting or self.touch(before, move) is not None:
            return
        self._last_number += 1
        self._wish = TouchWish(self._last_number, before, move)
        self.wished.emit(self._wish)

    def take(self, answer: ElasticReady | Touched | Untouched) -> None:
        """Take in what the worker says."""
        if isinstance(answer, ElasticReady):
            _keep(self._answers, answer.before, answer.elastic, ANSWERS_KEPT)
            self.changed.emit()
            return
        if self._wish is not None and self._wish.number == answer.number:
            self._wish = None
        if isinstance(answer, Touched):
            _keep(self._touches, (answer.before, opened(answer.move, 0.0)), answer.touch, TOUCHES_KEPT)
            self.changed.emit()
        elif answer.report:
            self.failed.emit("The push could not be tried beforehand; your plan is untouched.", answer.report)


def _keep(kept: OrderedDict[Key, Value], key: Key, value: Value, most: int) -> None:
    kept[key] = value
    kept.move_to_end(key)
    while len(kept) > most:
        kept.popitem(last=False)


WAY_WORDS = {"out": "outward", "in": "inward", "along": "along the flange"}
GUESS_WORD = "first guess"
BOTH_WAYS = "lip outward, panel in"
"""What stands beside the arrows where the inner panel goes the other way than the lip in front of it."""


def arrow_words(aim: Aim) -> str:
    """Return the word beside the arrow: which way, and that it is a guess while it is one."""
    words = BOTH_WAYS if aim.turns_in else WAY_WORDS[aim.way]
    return f"{words} ({GUESS_WORD})" if aim.basis == "guess" else words


TOLD_M = 0.0005
"""Less room than this is not told as lost."""
AIMED = "Before the push"


def pointed_words(move: Move | None) -> str:
    """Return what a push is called that is not the plan's: the one a click under the pointer would set."""
    return "A squeeze under the pointer" if isinstance(move, Squeeze) else "With tip one under the pointer"


def aim_words(aim: Aim, units: Units, lead: str = AIMED) -> str:
    """Return the sentence about a push before it is made; empty where nothing can be said yet.

    lead : which push it is: the plan's own, or the one under the pointer
    """
    if aim.problems or aim.basis == "nothing":
        return ""
    way = f"{WAY_WORDS[aim.way]}, neither out nor in" if aim.way == "along" else WAY_WORDS[aim.way]
    if aim.touch is None:
        return f"{lead}, {GUESS_WORD}: the metal under tip one goes {way}. It is being tried."
    far, push = length_text(aim.touch.opening_m, units), force_text(aim.touch.force_n, units)
    if aim.turns_in:
        said = f"{lead}, tried over {far} at {push}: the lip goes outward, the panel behind it comes in."
        less = -aim.touch.room_m
        room = f"Room to the occupant: {length_text(less, units)} less." if less >= TOLD_M else ""
        return " ".join(part for part in (said, room) if part)
    return f"{lead}, tried over {far} at {push}: the metal under tip one goes {way}."
