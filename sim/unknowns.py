"""What is not known well about a plan, as a table: each number, how far it may lie off, and who says so."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from scipy import stats

from sim.plan import BaseSpot, Crush, EdgePoint, Plan, Press, Spread
from sim.tip import lip_share

Span = Callable[[float], tuple[float, float]]
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


def _within(low: float, high: float) -> Span:
    """Return the span between two numbers, widened to the plan's own value."""
    return lambda base: (min(low, base), max(high, base))


def _times(low: float, high: float, least: float = 0.0) -> Span:
    """Return the span between two multiples of the plan's own value, never below ``least``."""
    return lambda base: (max(low * base, least), high * base)


def _about(reach: float, least: float = -math.inf, most: float = math.inf) -> Span:
    """Return the span of a reach to both sides of the plan's own value, cut at two bounds."""
    return lambda base: (max(base - reach, least), min(base + reach, most))


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


def _always(_plan: Plan, _move: Spread | None) -> bool:
    return True


def _bonded(plan: Plan, _move: Spread | None) -> bool:
    return plan.car.seam != "welded"


def _welded(plan: Plan, _move: Spread | None) -> bool:
    return plan.car.seam != "bonded"


def _latched(plan: Plan, _move: Spread | None) -> bool:
    return plan.car.latch != "open"


def _at_edge(_plan: Plan, move: Spread | None) -> bool:
    return move is not None and isinstance(move.door, EdgePoint)


def _near_lip(plan: Plan, move: Spread | None) -> bool:
    """Tell whether some of the pad may come to bear on the hem lip."""
    if move is None or not isinstance(move.door, EdgePoint):
        return False
    nearest = max(0.0, move.door.depth_m - SEAT_M)
    return lip_share(nearest, move.tool.tip_depth_m, plan.car.hem_width_m) > 0.0


def _on_base(_plan: Plan, move: Any) -> bool:
    return isinstance(move, Press) and isinstance(move.foot, BaseSpot)


def _on_pillar(_plan: Plan, move: Any) -> bool:
    return isinstance(move, Press) and hasattr(move.head, "off_m")


TABLE = (
    Row(
        "door.lip_share_ratio",
        "the hem lip's share of the load",
        "",
        _about(0.4, 0.0, 1.0),
        even,
        "assumed: how proud of the shut face the hem stands is not known; from taking all to taking 0.6",
        _near_lip,
    ),
    Row(
        "door.depth_m",
        "the depth of the tips",
        "m",
        _about(SEAT_M, 0.0),
        even,
        "assumed: a trained hand puts a tip to within 5 mm",
        _at_edge,
    ),
    Row(
        "door.along_m",
        "the place of the tips along the edge",
        "m",
        _about(SEAT_M),
        even,
        "assumed: a trained hand puts a tip to within 5 mm",
        _always,
    ),
    Row(
        "tool.friction_ratio",
        "the friction of the tips",
        "",
        _within(0.3, 0.6),
        even,
        "serrated tips on painted steel 0.3 to 0.6, from memory",
        _always,
    ),
    Row(
        "travel_m",
        "how far the door is pushed in",
        "m",
        _about(0.01, 0.001),
        even,
        "assumed: a bow is judged by eye to within 10 mm",
        _always,
        Crush,
    ),
    Row(
        "car.seam_energy_j_per_m",
        "the seam's energy",
        "J/m",
        _times(0.4, 2.0),
        peaked_ratio,
        "hem adhesive 2-4 kJ/m2 on 10 mm and unrolling the fold 25-40 J/m, from memory; "
        "gaps, thin beads and age widen it (assumed)",
        _bonded,
    ),
    Row(
        "car.seam_strength_n_per_m",
        "the seam's strength",
        "N/m",
        _times(0.8, 2.4),
        peaked_ratio,
        "peel demands of 4-8 N/mm and measured 12 N/mm (an adhesive maker's public article)",
        _bonded,
    ),
    Row(
        UNEVEN,
        "how uneven the seam is",
        "",
        _within(0.0, 0.4),
        even,
        "assumed: from an even seam to a careless one; each run has a hem of its own (`sim.seam`)",
        _always,
    ),
    Row(
        "car.weld_peel_n",
        "the welds' strength in peel",
        "N",
        _times(0.6, 1.8),
        peaked_ratio,
        "between the minimum and the typical rows of the spot-weld table (AWS D8.1M, from memory)",
        _welded,
    ),
    Row(
        "car.weld_energy_j",
        "the welds' energy",
        "J",
        _times(0.5, 2.0),
        peaked_ratio,
        "assumed: pull-out over one to four millimetres",
        _welded,
    ),
    Row(
        "car.weld_pitch_m",
        "the distance of the welds",
        "m",
        _times(0.8, 1.2),
        peaked,
        "spots 40-60 mm apart: common practice, no source",
        _welded,
    ),
    Row(
        "car.skin_thickness_m",
        "the skin's thickness",
        "m",
        _times(0.88, 1.06),
        peaked,
        "sheet tolerance about 0.05 mm on 0.7 mm (EN 10131, from memory); thinning in the press assumed",
        _always,
    ),
    Row(
        "car.inner_thickness_m",
        "the inner panel's thickness",
        "m",
        _times(0.85, 1.06),
        peaked,
        "as the skin; deeper drawn, so thinner (assumed)",
        _always,
    ),
    Row(
        "car.latch_strength_ratio",
        "the latch's strength",
        "",
        _times(0.8, 1.6, least=1.0),
        peaked,
        "never below UN R11 / GTR 1; how far above is assumed",
        _latched,
    ),
    Row(
        "car.hinge_strength_ratio",
        "the hinges' strength",
        "",
        _times(0.65, 1.6, least=1.0),
        peaked,
        "never below UN R11 / GTR 1; sets often hold 15-40 kN (an estimate of the trade, assumed)",
        _always,
    ),
    Row(
        "grip_ratio",
        "the friction of the ram's head and foot",
        "",
        _within(0.7, 1.4),
        peaked_ratio,
        "friction of heads on dirty painted metal is not known; twice between the extremes, assumed",
        _always,
        Press,
    ),
    Row(
        "head.height_m",
        "how high the ram's head stands",
        "m",
        _about(0.01, 0.0),
        even,
        "assumed: a trained hand sets a head to within 10 mm",
        _always,
        Press,
    ),
    Row(
        "head.off_m",
        "how far off the pillar's middle the ram's head stands",
        "m",
        _about(0.01),
        even,
        "assumed: a trained hand sets a head to within 10 mm",
        _on_pillar,
        Press,
    ),
    Row(
        "foot.wall_m",
        "the wall under the ram's foot",
        "m",
        _within(0.001, 0.002),
        even,
        "rocker walls of 1.0 to 2.0 mm, from memory",
        _on_base,
        Press,
    ),
)
