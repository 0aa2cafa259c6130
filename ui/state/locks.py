"""What the teacher keeps shut until the class has thought: answers, ladder, arrow and outcome map."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from ui.state.reading import Reading
from ui.state.signal import Signal

ANSWERS, LADDER, ARROW, MAP = "answers", "ladder", "arrow", "map"
LOCK_WORDS = {
    ANSWERS: "Answers: what happened, in words",
    LADDER: "Ladder, work and force",
    ARROW: "Arrow before the push",
    MAP: "Outcome map and likelihoods",
}
"""What can be shut, in the order of the menu."""
SHUT = "Kept shut by the teacher: key T, or the menu Teach."
ASK_FIRST = "Ask the class first (A), or run the push (Return): this would tell what it does."
WAITS = "What will this push do? Ask the class (A), or run it (Return)."
"""Stands in the arrow's place while a lesson has yet to ask."""


class Locks:
    """Which of the four are shut.

    Attributes
    ----------
    changed : emitted when another one is
    """

    def __init__(self) -> None:
        self._shut: frozenset[str] = frozenset()
        self._veil = False
        self.changed: Signal[[]] = Signal()

    @property
    def shut(self) -> frozenset[str]:
        """What is shut now: by the teacher, or all of it while a test runs."""
        return frozenset(LOCK_WORDS) if self._veil else self._shut

    @property
    def own(self) -> frozenset[str]:
        """What the teacher has shut, which holds until it is opened."""
        return self._shut

    def veil(self, *, on: bool) -> None:
        """Shut all while a test runs, and leave what the teacher has shut as it is."""
        if on != self._veil:
            self._veil = on
            self.changed.emit()

    def turn(self, name: str) -> None:
        """Shut one, or open it; KeyError for one that is not there."""
        if name not in LOCK_WORDS:
            raise KeyError(name)
        self._set(self._shut ^ {name})

    def turn_all(self) -> None:
        """Open all if any is shut, else shut all."""
        self._set(frozenset() if self._shut else frozenset(LOCK_WORDS))

    def restore(self, shut: Iterable[str]) -> None:
        """Shut what was shut then."""
        self._set(frozenset(shut) & frozenset(LOCK_WORDS))

    def _set(self, shut: frozenset[str]) -> None:
        if shut != self._shut:
            self._shut = shut
            self.changed.emit()


def veiled(
    reading: Reading, *, answers: bool, ladder: bool, arrow: bool, aiming: bool, waits: bool = False
) -> Reading:
    """Return a reading without what is shut.

    Parameters
    ----------
    answers, ladder, arrow : whether each is shut
    aiming : whether the sentence is about a push that has yet to begin: then it is the arrow in words
    waits : whether a lesson has yet to ask about that push
    """
    if aiming and waits:
        reading = replace(reading, sentence=WAITS)
    elif (arrow if aiming else answers) and reading.sentence:
        reading = replace(reading, sentence=SHUT)
    if answers:
        reading = replace(reading, sharp_edges=0, cautions=(), clearance=None)
    if answers or ladder:
        reading = replace(reading, room=None)
    if ladder:
        reading = replace(reading, rungs=(), shares=(), work_j=0.0, sprung_j=0.0)
        reading = replace(reading, curve=(), marks=(), cursor=0, shut=True)
    return reading
