"""Two plans side by side: the same start, one clock, and what exactly differs.

The clock ticks through every moment that either plan has, in the order of moves and openings; a plan
without a moment at a tick shows its last one before it.
"""

from __future__ import annotations

import hashlib
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import msgspec

from sim.move_words import opened, opening_of
from sim.plan import Car, Plan
from sim.twins import felt
from ui.state.reading import at_rest
from ui.state.scrubbing import places
from ui.state.signal import Signal
from ui.state.timeline import Mark
from ui.state.wording import event_words

if TYPE_CHECKING:
    from sim.network import State
    from sim.record import Frame, MoveRecord

SIDES = ("left", "right")

Tick = tuple[int, float]
"""A moment of the clock: index of the move (-1 the start) and opening [m], to a micrometre."""


def start_sha256(car: Car, state: State | None, before: tuple[object, ...] = ()) -> str:
    """Return the hash of a start: the car as its metal feels it, and the state of that metal.

    Where the state is not at hand (moves not worked out yet, or kept without it) the moves before stand for
    it: the same moves on the same car leave the same metal.
    """
    bare = msgspec.structs.replace(car, name="", build="")
    digest = hashlib.sha256(msgspec.json.encode(bare, order="deterministic"))
    digest.update(msgspec.json.encode(before) if state is None else state.sha256().encode())
    return digest.hexdigest()


def shared_moves(first: Plan, second: Plan) -> int:
    """Return how many leading moves two plans have in common."""
    count = 0
    for one, other in zip(first.moves, second.moves, strict=False):
        if one != other:
            break
        count += 1
    return count


def refusal(first: Plan, second: Plan, first_sha256: str, second_sha256: str) -> str:
    """Return why two plans cannot stand side by side, in sentences; empty where they can."""
    if first == second:
        return "Both are the same plan; change one thing in it first, or choose another."
    if first_sha256 == second_sha256:
        return ""
    apart = felt(first.car, second.car)
    told = "; ".join(f"{d.words} {d.text(d.first)} against {d.text(d.second)}" for d in apart[:4])
    more = f", and {len(apart) - 4} more" if len(apart) > 4 else ""
    return (
        f"They do not begin from the same metal ({first_sha256[:8]} against {second_sha256[:8]}): "
        f"{told}{more}. Put the other plan's moves on this car to compare them."
    )


def put_on(second: Plan, first: Plan) -> Plan:
    """Return a plan's moves on another plan's car and seed; a single move goes as far as the other's."""
    plan = msgspec.structs.replace(
        second, car=first.car, seed=first.seed, wreck=first.wreck, start=first.start
    )
    if len(plan.moves) == len(first.moves) == 1:
        plan = plan.with_move(0, opened(plan.moves[0], opening_of(first.moves[0])))
    return plan


@dataclass(frozen=True)
class Row:
    """One plan's moments in a row: the start, then the frames of its moves, each with its tick."""

    frames: tuple[Frame, ...]
    ticks: tuple[Tick, ...]

    def at(self, tick: Tick) -> int:
        """Return the place of the last moment not after a tick."""
        return max(bisect_right(self.ticks, tick) - 1, 0)


def row_of(start: Frame, records: Sequence[MoveRecord]) -> Row:
    """Return the moments of a plan as far as it is worked out.

    Within a move the tips only go on, so ticks rise; a moment at the opening of the one before it (metal that
    gave at a fixed tip) takes the tick of its own.
    """
    frames: list[Frame] = [start]
    ticks: list[Tick] = [(-1, 0.0)]
    for index, record in enumerate(records):
        for frame in record.frames:
            tick = (index, round(frame.opening_m, 6))
            if record.frames[-1].opening_m < record.frames[0].opening_m:  # a tool drawn back: count on
                tick = (index, float(len(frames)))
            frames.append(frame)
            ticks.append(max(tick, ticks[-1]))
    return Row(tuple(frames), tuple(ticks))


class Beside:
    """The second plan and the clock of both.

    It has a timeline's manners (`position`, `go`, `go_to_mark`, `at_end`, `marks`), so that whatever plays
    or scrubs a timeline plays or scrubs both plans at once.

    Attributes
    ----------
    changed : emitted when the pair is another one, or more of it is worked out
    moved : emitted when the clock stands elsewhere
    """

    def __init__(self) -> None:
        self.plan: Plan | None = None
        self.rows: tuple[Row, Row] | None = None
        self.sha256, self.other_sha256 = "", ""
        self._ticks: tuple[Tick, ...] = ()
        self._marks: tuple[Mark, ...] = ()
        self._position = 0
        self.changed: Signal[[]] = Signal()
        self.moved: Signal[[]] = Signal()

    @property
    def on(self) -> bool:
        """Whether two plans stand side by side."""
        return self.plan is not None

    @property
    def is_twin(self) -> bool:
        """Whether each of the two begins from a start of its own."""
        return self.plan is not None and self.other_sha256 not in ("", self.sha256)

    def show(self, plan: Plan | None, sha256: str = "", other_sha256: str = "") -> None:
        """Put a plan beside the one shown, from its own start where that is named; None takes it away."""
        self.plan, self.sha256, self.other_sha256, self.rows = plan, sha256, other_sha256, None
        self._ticks, self._marks, self._position = (), (), 0
        self.changed.emit()

    def lay_out(self, first: Row, second: Row) -> None:
        """Take the moments of both as far as they are known; the clock keeps its time."""
        tick = self._ticks[self._position] if self._ticks else (-1, 0.0)
        was_at_end = self.at_end
        self.rows = first, second
        self._ticks = tuple(sorted({*first.ticks, *second.ticks}))
        self._position = len(self._ticks) - 1 if was_at_end else max(bisect_right(self._ticks, tick) - 1, 0)
        marks = []
        for row, side in zip(self.rows, SIDES, strict=True):
            for frame, at in zip(row.frames, row.ticks, strict=True):
                place = bisect_right(self._ticks, at) - 1
                for event in frame.events:
                    marks.append(Mark(place, at[0], replace(event, kind=f"{side}: {event_words(event)}")))
        self._marks = tuple(sorted(marks, key=lambda mark: mark.position))
        self.changed.emit()

    def frame(self, side: int) -> Frame | None:
        """Return what one side (0 or 1) shows now."""
        return None if self.rows is None else self.rows[side].frames[self.place(side)]

    def place(self, side: int) -> int:
        """Return the position of one side's moment in its own row."""
        return 0 if self.rows is None else self.rows[side].at(self._ticks[self._position])

    def move(self, side: int) -> int:
        """Return the index of the move one side shows; -1 at the start."""
        return -1 if self.rows is None else self.rows[side].ticks[self.place(side)][0]

    def tool_rests(self, side: int) -> bool:
        """Tell whether one side shows a move that no tool is opened or pushes in."""
        if self.rows is None or self.move(side) < 0:
            return False
        row, move = self.rows[side], self.move(side)
        frames = [frame for frame, (of, _) in zip(row.frames, row.ticks, strict=True) if of == move]
        return len(frames) > 1 and at_rest(frames)

    def ended(self, side: int) -> bool:
        """Tell whether one side has no later moment: it holds its last one."""
        return self.rows is not None and self.place(side) == len(self.rows[side].frames) - 1

    # --- a timeline's manners ----------------------------------------------------------------------------

    def __len__(self) -> int:
        """Return the number of ticks."""
        return len(self._ticks)

    @property
    def position(self) -> int:
        """Index of the tick shown."""
        return self._position

    @property
    def marks(self) -> tuple[Mark, ...]:
        """The events of both, in order."""
        return self._marks

    @property
    def at_end(self) -> bool:
        """Whether the last tick is shown."""
        return self._position >= len(self._ticks) - 1

    def places(self) -> tuple[float, ...]:
        """Return where each tick stands along the bar, 0 .. 1."""
        return places([move for move, _ in self._ticks], [opening for _, opening in self._ticks])

    def starts(self) -> tuple[int, ...]:
        """Return the position of each move's first tick."""
        ticks = self._ticks
        return tuple(i for i in range(1, len(ticks)) if ticks[i][0] != ticks[i - 1][0])

    def go(self, position: int) -> None:
        """Show another tick; beyond the ends, the end."""
        wanted = min(max(position, 0), max(0, len(self._ticks) - 1))
        if wanted != self._position:
            self._position = wanted
            self.moved.emit()

    def go_to_tick(self, tick: Tick) -> None:
        """Show the moment of the clock at a tick."""
        self.go(max(bisect_right(self._ticks, tick) - 1, 0))

    def go_to_mark(self, direction: int) -> None:
        """Show the next event of either plan in a direction, or the end of the row."""
        places = sorted({mark.position for mark in self._marks} | {0, len(self._ticks) - 1})
        later = [p for p in places if (p - self._position) * direction > 0]
        if later:
            self.go(min(later) if direction > 0 else max(later))
