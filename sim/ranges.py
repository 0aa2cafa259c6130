"""Ranges of a plan's numbers: the least and the most each may be, and a word on what is usual."""

from __future__ import annotations

import math
from collections.abc import Mapping

from sim.problems import PlanError

Range = tuple[float, float, str]

TILT_LIMIT_RAD = 1.6
"""Ninety degrees, and what rounding them may add."""


def check_ranges(ranges: Mapping[str, Range], holder: object, path: str = "") -> None:
    """Say which number is out of its range, if any; angles are told in degrees, as they stand in files.

    Parameters
    ----------
    ranges : least, most and what is usual, by the name of the field
    holder : what has these fields
    path : of the holder in the plan, as "car"; empty for a move

    Raises
    ------
    PlanError
        Naming the first field that is not finite or out of range, its value and the remedy.
    """
    for name, (low, high, usual) in ranges.items():
        value = float(getattr(holder, name))
        if math.isfinite(value) and low <= value <= high:
            continue
        if name.endswith("_rad"):
            name = f"{name.removesuffix('_rad')}_deg"
            value = math.degrees(value)
            low, high = (round(math.degrees(limit), 1) for limit in (low, high))
        field = f"{path}.{name}" if path else name
        raise PlanError(field, f"is {value:.6g}; use {low:g} to {high:g} ({usual})")


def check_tilt(tilt_rad: float) -> None:
    """Raise PlanError where a push is turned out of the door's plane by more than 90 degrees."""
    if not abs(tilt_rad) <= TILT_LIMIT_RAD:
        degrees = math.degrees(tilt_rad)
        raise PlanError("tilt_deg", f"is {degrees:.6g}; use -90 (inboard) to 90 (outboard)")
