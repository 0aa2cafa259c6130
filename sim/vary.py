"""What is not known well about a push, in one table, and draws from it: many plans out of one.

Each row names a number of the plan, how far it may lie from what the plan says, how it is spread there, and
where the range comes from.  A draw takes every number at once from a Sobol sequence scrambled by the plan's
own seed, so the same plan gives the same draws and the first ones stay when more are asked for.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import msgspec
import numpy as np
from scipy import stats

from sim import door_unknowns, side_unknowns
from sim.carcheck import RANGES, SEED_LIMIT
from sim.plan import Plan
from sim.problems import PlanError
from sim.unknowns import HEM, Quantile, Row, even
from sim.unknowns import SEAT_M as SEAT_M
from sim.unknowns import UNEVEN as UNEVEN
from sim.unknowns import peaked as peaked
from sim.unknowns import peaked_ratio as peaked_ratio
from sim.whole_side import SIDE_RANGES

TABLE = (*door_unknowns.ROWS, *side_unknowns.ROWS)
"""Every number that is not known well."""

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
    """Return what is varied on a plan: the rows that play a part, once for the car and once a move.

    On a saved start the car's numbers stay: the start was solved with them, and is true for them alone.
    """
    out = []
    for row in TABLE:
        if row.path.startswith("car."):
            if not plan.start and row.applies(plan, None):
                out.append(_input(plan, row, row.path, row.words))
            continue
        for name, word in (("wreck", "wreck's move"), ("moves", "move")):
            moves = [(k, move) for k, move in enumerate(getattr(plan, name)) if isinstance(move, row.of)]
            for index, move in moves:
                if row.applies(plan, move) and _has(move, row.path):
                    alone = len(moves) == 1
                    words = row.words if alone else f"{row.words} in {word} {index + 1}"
                    out.append(_input(plan, row, f"{name}[{index}].{row.path}", words))
    return tuple(item for item in out if item.high > item.low)


def _has(move: Any, path: str) -> bool:
    """Tell whether a move has a number at a path: places of one type of move differ in theirs."""
    for name, _ in _steps(path):
        if not hasattr(move, name):
            return False
        move = getattr(move, name)
    return True


def _input(plan: Plan, row: Row, path: str, words: str) -> Input:
    base = read(plan, path)
    low, high = row.span.bounds(base)
    name = path.removeprefix("car.")
    legal = RANGES.get(name) or SIDE_RANGES.get(name.removeprefix("whole_side."))
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
    return draws_together({"": plan}, count, plan.seed)[""]


def draws_together(plans: Mapping[str, Plan], count: int, seed: int) -> dict[str, tuple[Draw, ...]]:
    """Return many plans out of each of several, by name: what two have in common is drawn alike.

    The sequence has a dimension for every path that any of the plans varies, so the draws of one number
    stand at the same share of its range in all of them, and so do the hems: run k of one plan may be held
    against run k of another.

    Raises
    ------
    ValueError
        When ``count`` is below 1.
    PlanError
        When the seed is below 0.
    """
    if seed < 0:
        raise PlanError("seed", f"is {seed}; use a whole number from 0 on")
    if count < 1:
        raise ValueError(f"count is {count}; ask for one run or more")
    varied = {name: inputs(plan) for name, plan in plans.items()}
    paths = list(dict.fromkeys(item.path for items in varied.values() for item in items))
    sequence = stats.qmc.Sobol(max(1, len(paths)), scramble=True, rng=seed)
    shares = sequence.random_base2(max(1, math.ceil(math.log2(count))))[:count]
    place = {path: column for column, path in enumerate(paths)}
    return {
        name: tuple(
            _drawn(plan, varied[name], [float(row[place[item.path]]) for item in varied[name]], index, seed)
            for index, row in enumerate(shares)
        )
        for name, plan in plans.items()
    }


def _drawn(plan: Plan, varied: Sequence[Input], shares: Sequence[float], index: int, seed: int) -> Draw:
    values = {item.path: item.at(share) for item, share in zip(varied, shares, strict=True)}
    changed = plan
    for path, value in values.items():
        changed = written(changed, path, value)
    return Draw(index, values, changed if plan.start else _own_hem(changed, seed, index))


def _own_hem(plan: Plan, seed: int, index: int) -> Plan:
    """Return a drawn plan with a hem of its own, told from every other by the draw's number."""
    number = int(np.random.SeedSequence([seed, index]).generate_state(1)[0]) % SEED_LIMIT
    return plan.with_car(msgspec.structs.replace(plan.car, **{HEM: number}))


def preview(plan: Plan) -> Plan:
    """Return the plan on the coarse lattice of a preview."""
    spacing = max(PREVIEW_SPACING_M, plan.car.lattice_spacing_m)
    return plan.with_car(msgspec.structs.replace(plan.car, lattice_spacing_m=spacing))
