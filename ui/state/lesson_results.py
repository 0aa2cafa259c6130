"""A lesson's plans with their kept results: what is fresh, what is stale, and the figures for its texts.

The results stand in a folder `solved` beside the lesson, one pair of files a plan (`sim.kept`).
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from importlib import resources
from pathlib import Path

import msgspec

from sim.kept import Kept, Told, read, stale
from sim.many import GIVE_WORDS, NOTHING_GAVE
from sim.plan import Plan
from sim.planfile import load_plan
from sim.problems import PlanError
from sim.record import Frame
from sim.units import Units, force_text, length_text
from ui.state.lesson import FIGURE, Lesson
from ui.state.tongue import is_told, tr
from ui.state.wording import in_units, told

FOLDER = "solved"
NOT_YET = "(not solved yet)"


@dataclass(frozen=True)
class PlanResult:
    """One plan of a lesson and what was kept of it.

    called : by what name in the lesson;  file : name of its file without the ending
    kept : None when there is none;  why_stale : a sentence, "" when the result is fresh
    """

    called: str
    file: str
    plan: Plan
    kept: Kept | None
    why_stale: str
    folder: Path

    @property
    def fresh(self) -> bool:
        """Whether the kept result speaks for the plan."""
        return not self.why_stale

    def move(self, number: int = 0) -> Told | None:
        """Return what a move came to, by its number from 1; 0 is the last that pushed. None when unknown."""
        moves = () if self.kept is None else self.kept.moves
        if number:
            return moves[number - 1] if number <= len(moves) else None
        pushed = [move for move in moves if move.seats]
        return pushed[-1] if pushed else (moves[-1] if moves else None)


def plan_path(lesson_path: Path, file: str) -> Path:
    """Return where a lesson's plan lies: beside the lesson, else among the ready plans.

    Raises
    ------
    PlanError
        When it is in neither place.
    """
    ready = Path(str(resources.files("assets").joinpath("plans", f"{file}.toml")))
    for path in (lesson_path.parent / f"{file}.toml", ready):
        if path.is_file():
            return path
    raise PlanError("plans", f"name the file {file!r}, which is neither beside the lesson nor a ready plan")


def starts_of(lesson: Lesson, path: Path) -> dict[str, Path]:
    """Return for each saved start that a lesson's plans name the plan beside which it lies.

    Raises
    ------
    PlanError
        When one of its plans is missing or cannot be read.
    """
    found = {}
    for entry in lesson.plans:
        place = plan_path(path, entry.file)
        start = load_plan(place).start
        if start:
            found[start] = place
    return found


def results_of(lesson: Lesson, path: Path) -> dict[str, PlanResult]:
    """Return every plan of a lesson with what was kept of it, by the name the lesson calls it.

    Raises
    ------
    PlanError
        When a plan is missing or cannot be read.
    """
    folder = path.parent / FOLDER
    found = {}
    for k, entry in enumerate(lesson.plans):
        try:
            plan = load_plan(plan_path(path, entry.file))
        except PlanError as error:
            raise error.inside(f"plans[{k}]") from error
        kept = read(folder, entry.file)
        called = plan.title or entry.name
        found[entry.name] = PlanResult(entry.name, entry.file, plan, kept, stale(kept, plan, called), folder)
    return found


def moment_at(frames: Sequence[Frame], moment: str) -> int:
    """Return the index of a lesson's moment among the frames of a move: start, end, or the first such event.

    An event that did not come leads to the end: what happened instead is seen there.
    """
    if moment == "start" or not frames:
        return 0
    found = (k for k, frame in enumerate(frames) if any(event.kind == moment for event in frame.events))
    return next(found, len(frames) - 1)


def stale_words(results: Iterable[PlanResult]) -> str:
    """Return in one sentence which results are not fresh; empty when all are."""
    bad = [result for result in results if not result.fresh]
    if not bad:
        return ""
    if len(bad) == 1:
        return bad[0].why_stale
    names = ", ".join(result.plan.title or result.called for result in bad)
    return f"{names}: the kept results are missing or of another plan or model version; run them again."


def _first_words(move: Told) -> str:
    return "nothing" if move.first == NOTHING_GAVE else GIVE_WORDS[move.first].strip(",")


def _share(ratio: float) -> str:
    return f"{100.0 * ratio:.0f}\u00a0%"


def _length(read_from: Callable[[Told], float | None]) -> Callable[[Told, Units], str]:
    def text(move: Told, units: Units) -> str:
        value = read_from(move)
        return "none" if value is None else length_text(value, units)

    return text


def _force(read_from: Callable[[Told], float | None]) -> Callable[[Told, Units], str]:
    def text(move: Told, units: Units) -> str:
        value = read_from(move)
        return "none" if value is None else force_text(value, units)

    return text


def _off_square(which: int) -> Callable[[Told, Units], str]:
    def text(move: Told, _: Units) -> str:
        angles = move.off_square_rad
        return f"{math.degrees(angles[which]):.0f}\u00a0degrees" if angles else "none"

    return text


def _width(move: Told, units: Units) -> str:
    """Return the width in words; where there is none, why."""
    if move.exit_width_m is not None and move.exit_width_m <= 0.0:
        return "none yet (metal stands all along the way out)"
    return _length(lambda told: told.exit_width_m)(move, units)


FIGURES: dict[str, tuple[str, Callable[[Told, Units], str]]] = {
    "first": ("what gave first", lambda move, _: _first_words(move)),
    "first_opening": ("how far the tips were open then", _length(lambda move: move.first_opening_m)),
    "first_force": ("their force then", _force(lambda move: move.first_force_n)),
    "peak_force": ("largest force of the tips", _force(lambda move: move.peak_force_n)),
    "opening": ("how far the tips opened", _length(lambda move: move.opening_m)),
    "latch": ("most the latch carried, of what it can hold", lambda move, _: _share(move.latch_demand_ratio)),
    "margin": ("how far the next thing was from giving", lambda move, _: _share(move.margin_ratio)),
    "parted": ("seam parted", _length(lambda move: move.parted_length_m)),
    "torn": ("sheet torn", _length(lambda move: move.torn_length_m)),
    "skin": ("how far the skin's middle went", _length(lambda move: abs(move.skin_m))),
    "inner": ("how far the inner panel's middle went", _length(lambda move: abs(move.inner_m))),
    "upper_skin": ("how far the upper panel's skin went", _length(lambda move: abs(move.upper_skin_m))),
    "upper_inner": ("how far the upper inner panel went", _length(lambda move: abs(move.upper_inner_m))),
    "room": ("least room to the occupant", _length(lambda move: move.least_clearance_m)),
    "room_after": ("room to the occupant at the end", _length(lambda move: move.clearance_m)),
    "width": ("width to bring the occupant out by at the end", _width),
    "off_square": ("how far off square a ram's line stood at first", _off_square(0)),
    "off_square_end": ("the same at the end", _off_square(-1)),
    "effect": ("what it meant for the plan", lambda move, _: move.effect),
    "sentence": (
        "the sentence of the run",
        lambda move, units: in_units(told(move.sentence, move.effect), units),
    ),
}
"""What a text may name as `{plan.figure}` or `{plan.figure_of_move_2}`: its meaning, and how it is told."""


def filled(text: str, results: dict[str, PlanResult], units: Units = Units.METRIC) -> str:
    """Return a text with every figure it names put in; one that is not known says so."""

    def put(found: re.Match[str]) -> str:
        name, figure, number = found[1], found[2], found[3]
        if figure not in FIGURES or name not in results:
            return found[0]
        move = results[name].move(int(number) if number else 0)
        value = NOT_YET if move is None else FIGURES[figure][1](move, units)
        return tr(value) if is_told(text) else value

    return FIGURE.sub(put, text)


def unknown_figures(text: str) -> tuple[str, ...]:
    """Return the figures a text names that there are not."""
    return tuple(found[0] for found in FIGURE.finditer(text) if found[2] not in FIGURES)


def lesson_filled(lesson: Lesson, results: dict[str, PlanResult], units: Units = Units.METRIC) -> Lesson:
    """Return the lesson with the figures put into all its texts."""

    def walk(value: object) -> object:
        if isinstance(value, str):
            return filled(value, results, units)
        if isinstance(value, dict):
            return {key: walk(item) for key, item in value.items()}
        return [walk(item) for item in value] if isinstance(value, list | tuple) else value

    return msgspec.convert(walk(msgspec.to_builtins(lesson)), Lesson)
