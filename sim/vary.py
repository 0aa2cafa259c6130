"""What is not known well about a push, in one table, and draws from it: many plans out of one.

Each row names a number of the plan, how far it may lie from what the plan says, how it is spread there, and
where the range comes from.  A draw takes every number at once from a Sobol sequence scrambled by the plan's
own seed, so the same plan gives the same draws and the first ones stay when more are asked for.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

import msgspec
import numpy as np
from scipy import stats

from sim.carcheck import RANGES, SEED_LIMIT
from sim.plan import Crush, EdgePoint, Plan, Spread
from sim.problems import PlanError
from sim.tip import lip_share

Span = Callable[[float], tuple[float, float]]
Quantile = Callable[[float, float, float, float], float]

SEAT_M = 0.005
"""How far from where it was meant to a tip may come to stand: a trained hand by eye (assumed)."""
UNEVEN, HEM = "car.seam_variation_ratio", "seam_seed"
"""How uneven the seam is, and the number of the hem that is uneven in just this way."""
PREVIEW_SPACING_M = 0.06
"""Lattice of a preview: several times faster, and its verdicts are no answer."""


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

    path : "car.name", or what every spread ("door.name", "tool.name") or every crush ("travel_m") has
    words : for sentences;  unit : SI, "" for a pure ratio
    span : lowest and highest value from the plan's own;  quantile : how it is spread between them
    source : where the range comes from, or "assumed" and why
    applies : whether the number plays a part; asked of the plan and, for a tip, its move
    """

    path: str
    words: str
    unit: str
    span: Span
    quantile: Quantile
    source: str
    applies: Callable[[Plan, Spread | None], bool]


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
)


@dataclass(frozen=True)
class Input:
    """A row of the table on one plan: what the plan says and the bounds round it.

    path : where it stands in the plan, as "moves[0].door.depth_m"
    """

    path: str
    words: str
    unit: str
    base: float
    low: float
    high: float
    source: str
    quantile: Quantile = even

    def at(self, share: float) -> float:
        """Return the value below which a share of all draws lies."""
        return min(max(self.quantile(share, self.low, self.base, self.high), self.low), self.high)


@dataclass(frozen=True)
class Draw:
    """One plan out of many; ``values`` holds what was drawn, by path."""

    index: int
    values: Mapping[str, float]
    plan: Plan


def read(plan: Plan, path: str) -> float:
    """Return the number at a path such as "moves[0].door.depth_m"."""
    value: Any = plan
    for name, index in _steps(path):
        value = getattr(value, name)
        value = value if index is None else value[index]
    return float(value)


def written(plan: Plan, path: str, value: float) -> Plan:
    """Return the plan with another number at a path."""
    changed: Plan = _put(plan, _steps(path), value)
    return changed


def _steps(path: str) -> list[tuple[str, int | None]]:
    found = re.findall(r"(\w+)(?:\[(\d+)\])?\.?", path)
    return [(name, int(index) if index else None) for name, index in found]


def _put(at: Any, steps: list[tuple[str, int | None]], value: float) -> Any:
    if not steps:
        return value
    (name, index), rest = steps[0], steps[1:]
    inside = getattr(at, name)
    if index is None:
        new = _put(inside, rest, value)
    else:
        new = (*inside[:index], _put(inside[index], rest, value), *inside[index + 1 :])
    return msgspec.structs.replace(at, **{name: new})


def inputs(plan: Plan) -> tuple[Input, ...]:
    """Return what is varied on a plan: the rows that play a part, once for the car and once a push."""
    pushes = [(k, move) for k, move in enumerate(plan.moves) if isinstance(move, Spread)]
    crushes = [(k, None) for k, move in enumerate(plan.moves) if isinstance(move, Crush)]
    out = []
    for row in TABLE:
        if row.path.startswith("car."):
            if row.applies(plan, None):
                out.append(_input(plan, row, row.path, row.words))
            continue
        moves = crushes if row.path == "travel_m" else pushes
        for index, move in moves:
            if row.applies(plan, move):
                words = row.words if len(moves) == 1 else f"{row.words} in move {index + 1}"
                out.append(_input(plan, row, f"moves[{index}].{row.path}", words))
    return tuple(item for item in out if item.high > item.low)


def _input(plan: Plan, row: Row, path: str, words: str) -> Input:
    base = read(plan, path)
    low, high = row.span(base)
    legal = RANGES.get(path.removeprefix("car."))
    if path.startswith("car.") and legal is not None:
        low, high = max(low, legal[0]), min(high, legal[1])
    return Input(path, words, row.unit, base, low, high, row.source, row.quantile)


def draws(plan: Plan, count: int) -> tuple[Draw, ...]:
    """Return many plans out of one, drawn by the plan's own seed.

    Raises
    ------
    ValueError
        When ``count`` is below 1.
    PlanError
        When the plan's seed is below 0.
    """
    if plan.seed < 0:
        raise PlanError("seed", f"is {plan.seed}; use a whole number from 0 on")
    if count < 1:
        raise ValueError(f"count is {count}; ask for one run or more")
    varied = inputs(plan)
    sequence = stats.qmc.Sobol(max(1, len(varied)), scramble=True, rng=plan.seed)
    shares = sequence.random_base2(max(1, math.ceil(math.log2(count))))[:count]
    out = []
    for index, row in enumerate(shares):
        values = {item.path: item.at(float(share)) for item, share in zip(varied, row, strict=False)}
        changed = plan
        for path, value in values.items():
            changed = written(changed, path, value)
        out.append(Draw(index, values, _own_hem(changed, plan.seed, index)))
    return tuple(out)


def _own_hem(plan: Plan, seed: int, index: int) -> Plan:
    """Return a drawn plan with a hem of its own, told from every other by the draw's number."""
    number = int(np.random.SeedSequence([seed, index]).generate_state(1)[0]) % SEED_LIMIT
    return plan.with_car(msgspec.structs.replace(plan.car, **{HEM: number}))


def preview(plan: Plan) -> Plan:
    """Return the plan on the coarse lattice of a preview."""
    spacing = max(PREVIEW_SPACING_M, plan.car.lattice_spacing_m)
    return plan.with_car(msgspec.structs.replace(plan.car, lattice_spacing_m=spacing))
