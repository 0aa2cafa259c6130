"""Which single unknown flips the outcome, and at what value.

On the plan as it stands, one number at a time is moved within its range: first to half-way and to the end of
either side, then by bisection between a place where the verdict is the plan's own and one where it is not.
What is reported is a rounded value at which the verdict was seen, in a run of its own, to be another.
"The verdict" is what gives first, or what the metal did when nothing gives.
"""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

from sim import warm
from sim.many import GIVE_WORDS, NOTHING_GAVE, SETTLED, Tried, shortened, tried_or_failed, try_draw
from sim.newton import CancelledError
from sim.plan import Plan
from sim.vary import Draw, Input, inputs, preview, written
from sim.workers import Workers

SHARES = (0.5, 1.0)
"""How far to either side of the plan's value is looked first, as shares of the way to the end."""
BISECTIONS = 5
"""Halvings of the way between same and other: to a thirty-second of half a side."""
DIGITS = 3
"""Digits of a reported value; it is this rounded one that is run again."""


Found = TypeVar("Found")
Place = tuple[Input, float]


@dataclass(frozen=True)
class Flip:
    """One number that flips the verdict by itself.

    value : rounded, seen to flip it in a run of its own
    change_ratio : how far from the plan's value, over the width of the whole range
    verdict : what comes out there
    """

    input: Input
    value: float
    change_ratio: float
    verdict: str


@dataclass(frozen=True)
class FlipAnswer:
    """What flips the outcome of a plan.

    verdict : of the plan as it stands, None when that run failed or did not settle
    flips : smallest change first
    steady : numbers within whose whole range the verdict stays
    untold : numbers for which runs failed or did not settle on the way and no flip was seen
    """

    plan: Plan
    preview: bool
    verdict: str | None
    flips: tuple[Flip, ...]
    steady: tuple[Input, ...]
    untold: tuple[Input, ...]
    runs: tuple[Tried, ...]


@dataclass(frozen=True)
class FlipProgress:
    """How far the search is: the round of runs, and runs done in it."""

    round_words: str
    done: int
    total: int


Steps = Generator[FlipProgress, None, Found]


@dataclass(frozen=True)
class _Side:
    """The search on one side of a number: the last value with the same verdict, the first with another.

    unsure : whether a run on the way did not settle;  stuck : whether one did not between same and other
    """

    input: Input
    same: float
    other: float | None = None
    unsure: bool = False
    stuck: bool = False

    @property
    def middle(self) -> float:
        """Half-way between same and other."""
        assert self.other is not None
        return 0.5 * (self.same + self.other)

    def looked_at(self, value: float, found: str | None, verdict: str) -> _Side:
        """Return the side after a run at a value."""
        if found is None:
            return replace(self, unsure=True, stuck=self.other is not None)
        return replace(self, same=value) if found == verdict else replace(self, other=value)


def verdict_of(run: Tried) -> str | None:
    """Return what gives first, what the metal did when nothing gives, None for an uncertain run."""
    if run.standing != SETTLED:
        return None
    if run.first != NOTHING_GAVE:
        return run.first
    return run.metal[0]


class FlipSearch:
    """The search under way: iterate for the progress, then read `answer`.

    Parameters are those of `sim.many.Many`; the search needs no seed.  ``only`` keeps the search to some
    paths of the plan, none means all.

    Raises
    ------
    PlanError
        When no move of the plan pushes.
    """

    def __init__(
        self,
        plan: Plan,
        *,
        only: Sequence[str] = (),
        worker_count: int = 1,
        coarse: bool = False,
        cancelled: Callable[[], bool] = bool,
        job: Callable[[Draw], Tried] = try_draw,
        prepare: Callable[[], None] = warm.main,
    ) -> None:
        self.plan, self.coarse = plan, coarse
        self._short = shortened(preview(plan) if coarse else plan)
        self._inputs = tuple(item for item in inputs(plan) if not only or item.path in only)
        self.workers: Workers[Draw, Tried] = Workers(job, worker_count, prepare)
        self._cancelled = cancelled
        self._runs: list[Tried] = []
        self._verdict: str | None = None
        self._answer: FlipAnswer | None = None

    @property
    def whole(self) -> bool:
        """Whether the search has come to its end."""
        return self._answer is not None

    @property
    def answer(self) -> FlipAnswer:
        """What was found.

        Raises
        ------
        ValueError
            When the search has not come to its end.
        """
        if self._answer is None:
            raise ValueError("the search has not come to its end")
        return self._answer

    def __iter__(self) -> Iterator[FlipProgress]:
        """Yield the progress at least every tick; ends early, with no process left, when cancelled."""
        with self.workers:
            try:
                yield from self._search()
            except CancelledError:
                return

    def _search(self) -> Iterator[FlipProgress]:
        places = [
            (item, item.base + share * (end - item.base))
            for item in self._inputs
            for end in (item.low, item.high)
            for share in SHARES
            if end != item.base
        ]
        verdicts = yield from self._round("the plan, and the ends of every range", [None, *places])
        verdict = verdicts[0]
        sides = [] if verdict is None else self._sides(verdict, dict(zip(places, verdicts[1:], strict=True)))
        if verdict is not None:
            for turn in range(BISECTIONS):
                words = f"halving the way, {turn + 1} of {BISECTIONS}"
                sides = yield from self._halved(verdict, sides, words)
        flips = yield from self._confirmed(verdict, sides)
        flipping = {flip.input.path for flip in flips}
        unsure = {side.input.path for side in sides if side.unsure or side.other is not None} - flipping
        rest = [item for item in self._inputs if item.path not in flipping]
        self._answer = FlipAnswer(
            self.plan,
            self.coarse,
            verdict,
            tuple(sorted(flips, key=lambda flip: (flip.change_ratio, flip.input.path))),
            tuple(item for item in rest if item.path not in unsure) if verdict is not None else (),
            tuple(item for item in rest if item.path in unsure) if verdict is not None else self._inputs,
            tuple(self._runs),
        )

    def _round(self, words: str, places: Sequence[Place | None]) -> Steps[list[str | None]]:
        """Run the plan with one number changed each (None: unchanged); return the verdicts in order."""
        draws: list[Draw] = []
        for place in places:
            values = {} if place is None else {place[0].path: place[1]}
            plan = self._short
            for path, value in values.items():
                plan = written(plan, path, value)
            draws.append(Draw(len(self._runs) + len(draws), values, plan))
        found: dict[int, Tried] = {}
        for said in self.workers.answer(draws, self._cancelled):
            if said is not None:
                found[said[0]] = tried_or_failed(draws[said[0]], said[1])
            yield FlipProgress(words, len(found), len(draws))
        if len(found) < len(draws):
            raise CancelledError
        runs = [found[k] for k in range(len(draws))]
        self._runs += runs
        return [verdict_of(run) for run in runs]

    def _sides(self, verdict: str, verdicts: Mapping[Place, str | None]) -> list[_Side]:
        """Return both sides of every number after the first look, walked from the plan's value outward."""
        sides = []
        for item in self._inputs:
            for end in (item.low, item.high):
                side = _Side(item, item.base)
                for share in SHARES:
                    value = item.base + share * (end - item.base)
                    if end != item.base and side.other is None:
                        side = side.looked_at(value, verdicts[item, value], verdict)
                sides.append(side)
        return sides

    def _halved(self, verdict: str, sides: list[_Side], words: str) -> Steps[list[_Side]]:
        """Return the sides with every way between same and other half as long."""
        open_sides = [side for side in sides if side.other is not None and not side.stuck]
        places = [(side.input, side.middle) for side in open_sides]
        if not places:
            return sides
        verdicts = yield from self._round(words, places)
        new = {
            id(side): side.looked_at(side.middle, found, verdict)
            for side, found in zip(open_sides, verdicts, strict=True)
        }
        return [new.get(id(side), side) for side in sides]

    def _confirmed(self, verdict: str | None, sides: list[_Side]) -> Steps[list[Flip]]:
        """Return the flips that a run of their own has shown: at the rounded value, else at the exact one."""
        found = [(side.input, side.other) for side in sides if side.other is not None]
        places = [(item, value) for item, exact in found for value in (rounded(exact), exact)]
        if not places:
            return []
        verdicts = yield from self._round("running what flips it again", places)
        flips: dict[tuple[str, bool], Flip] = {}
        for (item, value), seen in zip(places, verdicts, strict=True):
            key = item.path, value > item.base
            inside = item.low <= value <= item.high
            if seen is not None and seen != verdict and inside and key not in flips:
                width = item.high - item.low
                flips[key] = Flip(item, value, abs(value - item.base) / width, seen)
        return list(flips.values())


def rounded(value: float) -> float:
    """Return a value rounded to the digits that are told."""
    return float(f"{value:.{DIGITS}g}")


# words ----------------------------------------------------------------------------------------------------


def value_words(item: Input, value: float) -> str:
    """Return a value with its unit; lengths in millimetres."""
    if item.unit == "m":
        return f"{1e3 * value:.{DIGITS}g} mm"
    if item.unit == "N/m":
        return f"{value / 1e3:.{DIGITS}g} N/mm"
    return f"{value:.{DIGITS}g} {item.unit}".strip()


def flip_words(flip: Flip) -> str:
    """Return one flip in a clause."""
    to, base = value_words(flip.input, flip.value), value_words(flip.input, flip.input.base)
    share = f"{100 * flip.change_ratio:.0f} % of its range"
    gives = GIVE_WORDS.get(flip.verdict)
    outcome = f"{gives} gives first" if gives else f"the outcome is {flip.verdict}"
    return f"{flip.input.words} at {to} instead of {base} ({share}): then {outcome}"


def sentence(answer: FlipAnswer) -> str:
    """Return what flips the outcome, in words."""
    begin = "On a coarse lattice, as a preview only: " if answer.preview else ""
    if answer.verdict is None:
        return f"{begin}The plan itself does not settle, so nothing can be said of what flips it."
    now = GIVE_WORDS.get(answer.verdict)
    now = f"{now} gives first" if now else f"the outcome is {answer.verdict}"
    untold = ""
    if answer.untold:
        names = ", ".join(item.words for item in answer.untold)
        untold = f" Not told for {names}: runs on the way did not settle."
    if not answer.flips:
        return f"{begin}As planned {now}; nothing within its range flips it by itself.{untold}"
    return f"{begin}As planned {now}; the nearest flip: {flip_words(answer.flips[0])}.{untold}"
