"""How likely an outcome is, and what flips it: what was asked, how far it is, and what came out.

Plain values between the window and whoever runs the plan many times; answers to an older wish are dropped by
their number, and an answer is shown only beside the plan it was asked for.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from sim.move_words import is_driven
from sim.plan import Plan
from ui.state.signal import Signal

if TYPE_CHECKING:
    from sim.stop_and_cut import StopAndCut

RUNS, SIDE_RUNS = 64, 16
"""Runs of a door, and of a whole side, whose plans take several times as long."""


class Wish(enum.Enum):
    """What is asked of many runs."""

    LIKELY = "likely"
    """How likely is the outcome?"""
    FLIP = "flip"
    """Which single unknown flips it?"""
    CUT = "cut"
    """What does going on with a spread cost, against stopping at the mark to cut?"""


@dataclass(frozen=True)
class ChanceRequest:
    """One frozen wish.

    number : rises with every request;  coarse : a preview on a coarse lattice;  count : runs of LIKELY
    move : the spread that CUT is about;  folder : where a saved start is looked for
    """

    number: int
    wish: Wish
    plan: Plan
    coarse: bool = False
    count: int = RUNS
    move: int = 0
    folder: Path | None = None


@dataclass(frozen=True)
class ChanceProgress:
    """How far the runs are; ``seconds_left`` is None while that cannot be told."""

    number: int
    done: int
    total: int
    seconds_left: float | None = None


@dataclass(frozen=True)
class ChanceAnswer:
    """What came out: one sentence, and the counts or further flips for whoever asks, a line each.

    ways : what CUT came to, in figures
    """

    number: int
    sentence: str
    lines: tuple[str, ...] = ()
    ways: StopAndCut | None = None


@dataclass(frozen=True)
class ChanceTrouble:
    """The runs could not be made or were lost: why, in a sentence, and details for a fault report."""

    number: int
    sentence: str
    report: str = ""


Said = ChanceProgress | ChanceAnswer | ChanceTrouble
Key = tuple[Wish, Plan, bool, int]


class Chances:
    """Wishes and answers of many runs, with no Qt and no process.

    Attributes
    ----------
    asked : emitted with each request to hand over
    dropped : emitted when the runs under way are to end
    changed : emitted when progress or an answer has come, or a wish was made or dropped
    """

    def __init__(self) -> None:
        self._number = 0
        self._current: ChanceRequest | None = None
        self._progress: ChanceProgress | None = None
        self._trouble: ChanceTrouble | None = None
        self._answers: dict[Key, ChanceAnswer] = {}
        self.asked: Signal[[ChanceRequest]] = Signal()
        self.dropped: Signal[[]] = Signal()
        self.changed: Signal[[]] = Signal()

    @property
    def current(self) -> ChanceRequest | None:
        """The request under way; None when there is none."""
        return self._current

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._current is not None

    @property
    def progress(self) -> ChanceProgress | None:
        """How far the request under way is; None before its first word."""
        return self._progress

    @property
    def trouble(self) -> ChanceTrouble | None:
        """Why the last request has no answer; None when nothing went wrong."""
        return self._trouble

    def answer(self, wish: Wish, plan: Plan, *, coarse: bool = False, move: int = 0) -> ChanceAnswer | None:
        """Return what came out for a plan, None if nothing yet; a whole answer stands before a preview."""
        whole = self._answers.get((wish, plan, False, move))
        return self._answers.get((wish, plan, True, move)) if whole is None and coarse else whole

    def can_ask(self, plan: Plan) -> bool:
        """Tell whether there is a push to run and nothing under way."""
        return not self.busy and any(is_driven(move) for move in plan.moves)

    def ask(
        self,
        wish: Wish,
        plan: Plan,
        *,
        coarse: bool = False,
        count: int | None = None,
        move: int = 0,
        folder: Path | None = None,
    ) -> None:
        """Ask for many runs of a plan; one that is under way is dropped."""
        if count is None:
            count = SIDE_RUNS if plan.car.extent == "side" else RUNS
        self.stop()
        self._number += 1
        self._trouble = None
        self._current = ChanceRequest(self._number, wish, plan, coarse, count, move, folder)
        self.asked.emit(self._current)
        self.changed.emit()

    def stop(self) -> None:
        """End the runs under way; what they found so far is no answer."""
        if self._current is None:
            return
        self._current = self._progress = None
        self.dropped.emit()
        self.changed.emit()

    def take(self, said: Said) -> bool:
        """Take in what was said; return whether it still counts."""
        request = self._current
        if request is None or said.number != request.number:
            return False
        if isinstance(said, ChanceProgress):
            self._progress = said
        else:
            self._current = self._progress = None
            if isinstance(said, ChanceAnswer):
                self._answers[request.wish, request.plan, request.coarse, request.move] = said
            else:
                self._trouble = said
        self.changed.emit()
        return True


def progress_words(progress: ChanceProgress) -> str:
    """Return how far the runs are, in a few words."""
    words = f"{progress.done} of {progress.total} runs"
    left = progress.seconds_left
    if left is None or progress.done >= progress.total:
        return words
    return (
        f"{words}, about {max(1, round(left))} s left"
        if left < 90.0
        else (f"{words}, about {round(left / 60.0)} min left")
    )
