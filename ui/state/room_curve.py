"""How the room to the person changes along a plan: curves read from a finished run, comparable by start.

Progress is the way of the tools, all moves one after another, over the plan's whole way. A move done at once
(a cut, letting off) takes no way: what it changes is an upright step of the curve.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
import numpy.typing as npt
from numpy.typing import NDArray

from sim.problems import PlanError
from sim.units import Units, length_text

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

LETTERED = "ABCD"
"""Letters of the plans, in their order."""
PARTS = ("head", "trunk", "hip", "thigh", "lower leg")
FIRST_SHARE = 1.0 / 3.0
LESS_M = 0.002  # common practice, no source: what a tape tells


def mm(value_m: float) -> str:
    """Return a length as it is said on pictures."""
    return length_text(value_m, Units.METRIC)


@dataclass(frozen=True)
class RoomCurve:
    """One plan's curve.

    title : of the plan;  start_sha256 : of the state its first move found;  model_version : that solved it
    move : shape (n,), which move each moment belongs to, from 1;  way_m : shape (n,), tools' way so far
    parts_m : clearance to each body part, shape (n,) each;  exit_m : exit width at the start and at the end
    """

    title: str
    start_sha256: str
    model_version: str
    move: Ints
    way_m: Floats
    parts_m: Mapping[str, Floats]
    exit_m: tuple[float, float]

    @cached_property
    def progress(self) -> Floats:
        """Share of the plan's whole way, shape (n,), 0 .. 1; nothing throughout where no tool took a way."""
        whole = float(self.way_m[-1])
        return self.way_m / whole if whole > 0.0 else np.zeros(len(self.way_m))

    @cached_property
    def least_m(self) -> Floats:
        """Clearance to the nearest body part at each moment, shape (n,) [m]."""
        found: Floats = np.min(np.stack(list(self.parts_m.values())), axis=0)
        return found

    @property
    def least_at(self) -> int:
        """The moment of least room."""
        return int(self.least_m.argmin())

    def nearest(self, moment: int) -> str:
        """Return the body part that metal is nearest to at a moment."""
        return min(self.parts_m, key=lambda part: float(self.parts_m[part][moment]))

    def change_m(self, share: float) -> float:
        """Return the least the room came to until a share of the way, less what it was at the start [m]."""
        until = self.progress <= share + 1.0e-12
        return float(self.least_m[until].min() - self.least_m[0])

    def sentence(self) -> str:
        """Return where room was least and what it came to, in words."""
        at = self.least_at
        start, least, end = (float(self.least_m[k]) for k in (0, at, -1))
        if start - least > LESS_M:
            where = f"{100 * self.progress[at]:.0f} % ({self.nearest(at)})"
            said = f"less room on the way: {mm(least)} at {where}"
        else:
            said = "never less room than at the start"
        widths = " to ".join(mm(width) for width in self.exit_m)
        return f"{said}; {mm(start)} at first, {mm(end)} at the end; exit width {widths}"


def curve_of(result: Mapping[str, Any], series: str) -> RoomCurve:
    """Return the curve of a run from its result.json, as plain values, and its series.csv, as text.

    Raises
    ------
    PlanError
        When the run is of a single door, or its files do not belong together.
    """
    rows = list(csv.DictReader(io.StringIO(series)))
    names = {part: f"clearance_{part.replace(' ', '_')}_m" for part in PARTS}
    moves = result.get("moves") or []
    if not rows or not moves or any(name not in rows[0] for name in names.values()):
        raise PlanError("runs", "holds a run without body parts; run a plan with car.extent = 'side'")
    move = np.array([int(row["move_index"]) + 1 for row in rows])
    opening = np.array([float(row["opening_m"]) for row in rows])
    return RoomCurve(
        str(result.get("title") or "plan"),
        str(moves[0]["start_sha256"]),
        str(result.get("model_version")),
        move,
        way_along(move, opening),
        {part: np.array([float(row[name]) for row in rows]) for part, name in names.items()},
        (float(rows[0]["exit_width_m"]), float(rows[-1]["exit_width_m"])),
    )


def way_along(move: npt.ArrayLike, opening_m: npt.ArrayLike) -> Floats:
    """Return the tools' way so far at each moment [m], shape (n,), from which move it is of and its opening.

    A move begins at no way of its own; letting off begins at the way of the tool that still stands.
    """
    which, opening = np.asarray(move), np.asarray(opening_m, dtype=float)
    same = np.diff(which, prepend=which[0]) == 0
    step = np.where(same, np.diff(opening, prepend=opening[0]), 0.0)
    way: Floats = np.cumsum(np.maximum(step, 0.0))
    return way


def one_start(curves: Sequence[RoomCurve]) -> str:
    """Return the hash of the one start of several curves.

    Raises
    ------
    PlanError
        When they begin with different metal, or were solved by different versions of the model.
    """
    first = curves[0]
    for other in curves[1:]:
        if other.start_sha256 != first.start_sha256:
            raise PlanError(
                "runs",
                f"do not begin with one start ({first.title}: {first.start_sha256[:8]}, {other.title}: "
                f"{other.start_sha256[:8]}); give all plans the same car and the same start",
            )
        if other.model_version != first.model_version:
            raise PlanError("runs", "were solved by different versions of the model; solve them again")
    return first.start_sha256


def table(curves: Sequence[RoomCurve]) -> str:
    """Return the curves as a table: a row per plan and moment, units in the headings."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    parts = [f"clearance_{part.replace(' ', '_')}_m" for part in PARTS]
    writer.writerow(["plan", "move", "way_m", "progress_ratio", "clearance_m", *parts])
    for curve in curves:
        for k in range(len(curve.move)):
            row = [curve.title, curve.move[k], curve.way_m[k], curve.progress[k], curve.least_m[k]]
            writer.writerow([*row, *(curve.parts_m[part][k] for part in PARTS)])
    return out.getvalue()
