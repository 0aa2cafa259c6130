"""A number that is not known well: how far it may lie off, how it is spread there, and who says so.

The rows themselves stand in `sim.door_unknowns` (doors and tips) and `sim.side_unknowns` (pillars, rams,
cuts, bars).
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from scipy import stats

from sim.plan import Plan, Spread

Quantile = Callable[[float, float, float, float], float]

SEAT_M = 0.005
"""How far from where it was meant to a tip may come to stand: a trained hand by eye (assumed)."""
UNEVEN, HEM = "car.seam_variation_ratio", "seam_seed"
"""How uneven the seam is, and the number of the hem that is uneven in just this way."""


# how a number is spread between its bounds: the value below which a share of all draws lies --------------


def even(share: float, low: float, base: float, high: float) -> float:
    """Return the quantile of the even spread; the plan's own value plays no part."""
    del base
    return low + share * (high - low)


def peaked(share: float, low: float, base: float, high: float) -> float:
    """Return the quantile of the triangle that peaks at the plan's own value."""
    return float(stats.triang.ppf(share, (base - low) / (high - low), low, high - low))


def peaked_ratio(share: float, low: float, base: float, high: float) -> float:
    """Return the quantile of the triangle in the logarithm; half and double are equally far."""
    return math.exp(peaked(share, math.log(low), math.log(base), math.log(high)))


@dataclass(frozen=True)
class Span:
    """How far a number may lie off.

    bounds : lowest and highest value from the plan's own;  words : the same for a reader, given the unit
    """

    bounds: Callable[[float], tuple[float, float]]
    words: Callable[[str], str]


_READ = {"m": (1e3, "mm"), "N/m": (1e-3, "N/mm"), "Pa": (1e-6, "MPa")}


def _told(unit: str, *values: float) -> str:
    factor, name = _READ.get(unit, (1.0, unit))
    return f"{' to '.join(f'{factor * value:g}' for value in values)} {name}".strip()


def within(low: float, high: float) -> Span:
    """Return the span between two numbers, widened to the plan's own value."""
    return Span(lambda base: (min(low, base), max(high, base)), lambda unit: _told(unit, low, high))


def times(low: float, high: float, least: float = 0.0) -> Span:
    """Return the span between two multiples of the plan's own value, never below ``least``."""
    floor = f", never below {least:g}" if least else ""
    return Span(
        lambda base: (max(low * base, least), high * base),
        lambda _unit: f"{low:g} to {high:g} times the plan's{floor}",
    )


def about(reach: float, least: float = -math.inf, most: float = math.inf) -> Span:
    """Return the span of a reach to both sides of the plan's own value, cut at two bounds."""
    return Span(
        lambda base: (min(max(base - reach, least), base), max(min(base + reach, most), base)),
        lambda unit: f"the plan's, {_told(unit, reach)} to either side",
    )


@dataclass(frozen=True)
class Row:
    """One number that is not known well.

    path : "car.name", or what every move of one type has ("door.name", "tool.name", "travel_m")
    words : for sentences;  unit : SI, "" for a pure ratio
    span : lowest and highest value from the plan's own;  quantile : how it is spread between them
    source : where the range comes from, or "assumed" and why
    applies : whether the number plays a part; asked of the plan and, for a tip or a ram, its move
    of : the type of move it belongs to
    """

    path: str
    words: str
    unit: str
    span: Span
    quantile: Quantile
    source: str
    applies: Callable[[Plan, Any], bool]
    of: type = Spread


def always(_plan: Plan, _move: Any) -> bool:
    """Tell that a number plays a part in every plan."""
    return True
