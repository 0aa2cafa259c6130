"""The ten points of a tool's curve as a person types them."""

from __future__ import annotations

import itertools
from collections.abc import Sequence

import msgspec

from sim.plan import Tool
from sim.units import Units, force, force_si, length, length_si, plain
from ui.state.tongue import decimals as marked

POINT_COUNT = 10


class CurveError(ValueError):
    """A curve that cannot be used; the text is a sentence for the reader."""


def as_text(tool: Tool, units: Units) -> tuple[tuple[str, str], ...]:
    """Return the points as (opening, force) in the chosen units."""
    decimals = 0 if units is Units.METRIC else 2
    force_decimals = 1 if units is Units.METRIC else 0
    return tuple(
        (
            marked(plain(length(opening, units)[0], decimals)),
            marked(plain(force(push, units)[0], force_decimals)),
        )
        for opening, push in zip(tool.opening_m, tool.force_n, strict=True)
    )


def from_text(tool: Tool, rows: Sequence[tuple[str, str]], units: Units) -> Tool:
    """Return the tool with the curve as typed; CurveError, a sentence, where it cannot be used.

    A number left as it was shown keeps its exact value: rounding for the eye does not change the tool.
    """
    shown = as_text(tool, units)
    openings, forces = [], []
    for row, (texts, before) in enumerate(zip(rows, shown, strict=True), 1):
        typed = length_si(_number(texts[0], row, "opening"), units)
        openings.append(tool.opening_m[row - 1] if texts[0] == before[0] else typed)
        typed = force_si(_number(texts[1], row, "force"), units)
        forces.append(tool.force_n[row - 1] if texts[1] == before[1] else typed)
    check_curve(openings, forces)
    return msgspec.structs.replace(tool, opening_m=tuple(openings), force_n=tuple(forces))


def check_curve(openings: list[float], forces: list[float]) -> None:
    """Raise CurveError, a sentence, where a curve's openings do not rise or a force is none."""
    for row, (before, after) in enumerate(itertools.pairwise(openings), 2):
        if after <= before:
            raise CurveError(f"Point {row} of the curve opens no wider than the point before it.")
    if openings and openings[0] < 0.0:
        raise CurveError("The first point of the curve opens less than nothing.")
    for row, push in enumerate(forces, 1):
        if push <= 0.0:
            raise CurveError(f"Point {row} of the curve has no force; give one above zero.")


def _number(text: str, row: int, what: str) -> float:
    try:
        value = float(text.strip().replace(",", ".").replace("\u2212", "-"))
    except ValueError:
        raise CurveError(f"The {what} of point {row} is not a number: \u201c{text.strip()}\u201d.") from None
    if not abs(value) < 1e7:
        raise CurveError(f"The {what} of point {row} is out of any range.")
    return value
