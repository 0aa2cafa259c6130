"""Two plans side by side: what differs, row by row, in the reader's units."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from sim.builds import car_words
from sim.plan import BodyPoint, Plan
from sim.twins import Difference, differences
from sim.units import Units, force_text, length_text

FEW = 4
"""A list of more numbers than this (a tool's curve) is told by its least and its largest."""


@dataclass(frozen=True)
class ContrastRow:
    """One thing that differs.

    words : what it is, in plain words;  first, second : both values with their units
    felt : whether the metal feels it, or it only stands in words
    """

    words: str
    first: str
    second: str
    felt: bool


@dataclass(frozen=True)
class Contrast:
    """Two plans and what differs.

    first, second : what each is called;  rows : felt ones before those in words, else in the plan's order
    """

    first: str
    second: str
    rows: tuple[ContrastRow, ...]

    @property
    def one_thing(self) -> bool:
        """Tell whether the metal feels exactly one difference."""
        return sum(row.felt for row in self.rows) == 1


def contrast(first: Plan, second: Plan, units: Units) -> Contrast:
    """Return two plans' differences, ready to be shown."""
    rows = [
        ContrastRow(d.words, _text(d, d.first, units), _text(d, d.second, units), d.felt)
        for d in differences(first, second)
    ]
    return Contrast(_called(first), _called(second), tuple(sorted(rows, key=lambda row: not row.felt)))


def _called(plan: Plan) -> str:
    return f"{plan.title or 'a plan without a title'}: {car_words(plan.car)}"


def _numbers(value: Any) -> bool:
    return isinstance(value, tuple | list) and all(isinstance(item, float) for item in value)


def _stands(value: BodyPoint | None, units: Units) -> str:
    """Return where tip two stands, in words."""
    if value is None:
        return "straight across the gap"
    painted = "" if value.surface == BodyPoint().surface else f", {value.surface}"
    seat, along = value.seat.replace("_", " "), length_text(value.along_m, units)
    return f"on the {seat}, {along}{' up' if 'pillar' in seat else ' along it'}{painted}"


def _text(difference: Difference, value: Any, units: Units) -> str:
    if difference.path.endswith(".against") and isinstance(value, BodyPoint | None):
        return _stands(value, units)
    if _numbers(value) and len(value) > FEW:
        ends = [_text(difference, float(end), units) for end in (min(value), max(value))]
        return f"from {ends[0]} to {ends[1]}"
    if units is Units.METRIC or isinstance(value, bool) or not isinstance(value, float):
        return difference.text(value)
    name = difference.path.rpartition(".")[2]
    if name.endswith("_n"):
        return force_text(value, units)
    if name.endswith("_m") and not name.endswith("_per_m"):
        return length_text(value, units)
    return difference.text(value)
