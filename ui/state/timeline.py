"""Every moment of a plan in one row, to scrub through: the start, then the frames of each move."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import msgspec

from sim.move_words import opened
from sim.plan import Plan
from ui.state.scrubbing import places
from ui.state.signal import Signal

if TYPE_CHECKING:
    from sim.record import Event, Frame
    from ui.state.known import FoundCar


@dataclass(frozen=True)
class Mark:
    """An event's place in the row."""

    position: int
    move: int
    event: Event


class Timeline:
    """The moments and which one is shown.

    Attributes
    ----------
    changed : emitted when moments came or went
    moved : emitted when another moment is shown
    """

    def __init__(self) -> None:
        self._frames: list[Frame] = []
        self._moves: list[int] = []
        self._marks: list[Mark] = []
        self._position = 0
        self.changed: Signal[[]] = Signal()
        self.moved: Signal[[]] = Signal()

    def __len__(self) -> int:
        """Return the number of moments."""
        return len(self._frames)

    @property
    def position(self) -> int:
        """Index of the moment shown."""
        return self._position

    @property
    def frame(self) -> Frame | None:
        """The moment shown; None before the door has been set out."""
        return self._frames[self._position] if self._frames else None

    @property
    def move(self) -> int:
        """Index of the move the moment shown belongs to; -1 at the start, below it in a wreck."""
        return self._moves[self._position] if self._frames else -1

    @property
    def shows_wreck(self) -> bool:
        """Whether the moments are those of how the car was wrecked, and not the plan's."""
        return bool(self._moves) and self._moves[0] < -1

    @property
    def last_move(self) -> int:
        """Index of the last move that has a moment; -1 when none has."""
        return self._moves[-1] if self._moves else -1

    @property
    def marks(self) -> tuple[Mark, ...]:
        """All events, in order."""
        return tuple(self._marks)

    @property
    def at_end(self) -> bool:
        """Whether the last moment is shown."""
        return self._position >= len(self._frames) - 1

    @property
    def frames(self) -> tuple[Frame, ...]:
        """All moments, in order."""
        return tuple(self._frames)

    @property
    def moves(self) -> tuple[int, ...]:
        """Index of the move each moment belongs to."""
        return tuple(self._moves)

    def frames_of(self, move: int) -> tuple[Frame, ...]:
        """Return the frames of one move."""
        return tuple(f for f, m in zip(self._frames, self._moves, strict=True) if m == move)

    def way(self) -> tuple[Frame, ...]:
        """Return the moments of the move shown, up to the one shown."""
        shown = self._position + 1
        pairs = zip(self._frames[:shown], self._moves[:shown], strict=True)
        return tuple(frame for frame, move in pairs if move == self.move)

    def places(self) -> tuple[float, ...]:
        """Return where each moment stands along the bar, 0 .. 1."""
        return places(self._moves, [frame.opening_m for frame in self._frames])

    def starts(self) -> tuple[int, ...]:
        """Return the position of each move's first frame."""
        return tuple(i for i in range(1, len(self._moves)) if self._moves[i] != self._moves[i - 1])

    def last_of(self, move: int) -> int | None:
        """Return the position of a move's last frame, None if it has none."""
        found = [i for i, m in enumerate(self._moves) if m == move]
        return found[-1] if found else None

    def show(
        self,
        start: Frame | None,
        moves: Sequence[Sequence[Frame]],
        position: int | None = None,
        *,
        before: int = -1,
    ) -> None:
        """Lay out other moments; the last one is shown unless a position is given.

        ``before`` is the number of what stands before the moves, below -1 for those of a wreck.
        """
        self._frames, self._moves, self._marks = [], [], []
        if start is not None:
            self._add(before, start)
        for index, frames in enumerate(moves, start=before + 1):
            for frame in frames:
                self._add(index, frame)
        last = max(0, len(self._frames) - 1)
        self._position = last if position is None else min(max(position, 0), last)
        self.changed.emit()
        self.moved.emit()

    def append(self, move: int, frames: Sequence[Frame], *, follow: bool = True) -> None:
        """Add frames at the end, and show the last of them if wished."""
        if not frames:
            return
        for frame in frames:
            self._add(move, frame)
        if follow:
            self._position = len(self._frames) - 1
        self.changed.emit()
        if follow:
            self.moved.emit()

    def go(self, position: int) -> None:
        """Show another moment; beyond the ends, the end."""
        wanted = min(max(position, 0), max(0, len(self._frames) - 1))
        if wanted != self._position:
            self._position = wanted
            self.moved.emit()

    def go_to_mark(self, direction: int) -> None:
        """Show the next event in a direction (+1 or -1), or the end of the row."""
        places = sorted({mark.position for mark in self._marks} | {0, len(self._frames) - 1})
        later = [p for p in places if (p - self._position) * direction > 0]
        if later:
            self.go(min(later) if direction > 0 else max(later))

    def _add(self, move: int, frame: Frame) -> None:
        position = len(self._frames)
        self._frames.append(frame)
        self._moves.append(move)
        self._marks.extend(Mark(position, move, event) for event in frame.events)


def show_wreck(timeline: Timeline, found: FoundCar) -> None:
    """Lay out how a car was wrecked: untouched, the moves of the wreck, and at -1 the car as it was found."""
    moves = (*found.moves, (found.start,))
    timeline.show(found.untouched, moves, before=-1 - len(moves))


def cut_here(plan: Plan, timeline: Timeline) -> Plan:
    """Return the plan up to the moment shown: its move stops there, and later moves are gone."""
    index, frame = timeline.move, timeline.frame
    if index < 0 or frame is None or index >= len(plan.moves):
        return plan
    moves = [*plan.moves[:index], opened(plan.moves[index], frame.opening_m)]
    if timeline.position == timeline.last_of(index):
        moves[index] = plan.moves[index]
    return msgspec.structs.replace(plan, moves=tuple(moves))
