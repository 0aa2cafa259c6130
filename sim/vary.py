"""What is not known well about a push, in one table, and draws from it: many plans out of one.

Each row names a number of the plan, how far it may lie from what the plan says, how it is spread there, and
where the range comes from.  A draw takes every number at once from a Sobol sequence scrambled by the plan's
own seed, so the same plan gives the same draws and the first ones stay when more are asked for.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import msgspec
import numpy as np
from scipy import stats

from sim.carcheck import RANGES, SEED_LIMIT
from sim.plan import Plan
from sim.problems import PlanError
from sim.unknowns import HEM, TABLE, Quantile, Row, even
from sim.unknowns import SEAT_M as SEAT_M
from sim.unknowns import UNEVEN as UNEVEN
from sim.unknowns import peaked as peaked
from sim.unknowns import peaked_ratio as peaked_ratio

PREVIEW_SPACING_M = 0.06
"""Lattice of a preview: several times faster, and its verdicts are no answer."""


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
    out = []
    for row in TABLE:
        if row.path.startswith("car."):
            if row.applies(plan, None):
                out.append(_input(plan, row, row.path, row.words))
            continue
        moves = [(k, move) for k, move in enumerate(plan.moves) if isinstance(move, row.of)]
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
