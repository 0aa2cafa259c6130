"""How moments are played: how slowly, and whether the whole or one event's surroundings come round again."""

from __future__ import annotations

import enum
from collections.abc import Sequence

from ui.state.signal import Signal

PACES = {1: "full speed", 2: "half speed", 4: "a quarter of the speed", 8: "an eighth of the speed"}
"""How many times as long a moment stays, and what that is called."""
AROUND = 5
"""Moments before and after an event that come round with it."""


class Loop(enum.Enum):
    """What comes round again while it is played."""

    OFF = "played once"
    ALL = "all of it, again and again"
    EVENT = "round the event, again and again"

    @property
    def following(self) -> Loop:
        """The loop that one more press brings."""
        order = list(Loop)
        return order[(order.index(self) + 1) % len(order)]


class Playing:
    """Pace and loop, and which moment comes next.

    Attributes
    ----------
    changed : emitted when pace or loop is another one
    """

    def __init__(self) -> None:
        self.pace, self.loop = 1, Loop.OFF
        self.changed: Signal[[]] = Signal()

    def next_pace(self) -> None:
        """Play slower; after the slowest, at full speed again."""
        order = list(PACES)
        self.pace = order[(order.index(self.pace) + 1) % len(order)]
        self.changed.emit()

    def next_loop(self) -> None:
        """Let something else come round again."""
        self.loop = self.loop.following
        self.changed.emit()

    @property
    def words(self) -> str:
        """Pace and loop in words."""
        return f"{PACES[self.pace]}, {self.loop.value}"

    def span(self, position: int, count: int, marks: Sequence[int]) -> tuple[int, int]:
        """Return the first and last moment of what is played, from where it stands now.

        Parameters
        ----------
        position, count : the moment shown and how many there are
        marks : positions of the events
        """
        last = max(0, count - 1)
        if self.loop is not Loop.EVENT or not marks:
            return 0, last
        nearest = min(marks, key=lambda mark: (abs(mark - position), mark))
        return max(0, nearest - AROUND), min(last, nearest + AROUND)

    def following(self, position: int, count: int, marks: Sequence[int]) -> int | None:
        """Return the moment to be shown after one; None where playing ends."""
        first, last = self.span(position, count, marks)
        if first <= position < last:
            return position + 1
        if self.loop is Loop.OFF:
            return None
        return first

    def beginning(self, position: int, count: int, marks: Sequence[int]) -> int:
        """Return the moment that playing begins at: where it stands, or the first one from the last."""
        first, last = self.span(position, count, marks)
        return position if first <= position < last else first
