"""Side-door crush: the means and the peak of the test, read from a known curve and from the door itself.

References
----------
[fmvss-214-2007] initial resistance is the mean force over the first 152 mm, intermediate over 305 mm, peak
the greatest within 457 mm; floors 10.0, 15.6 and 31.1 kN.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from sim.checks import specimens
from sim.checks.row import TRADE, Row
from sim.door_test import FLOORS_N, Finding, Resistance, find, resistance

STAGES = ("initial", "intermediate", "peak")
# F = min(0.2 x, 25) + 0.1 max(0, x - 305) kN with x in mm: areas by hand
KNOWN_KN = {"initial": 14.720, "intermediate": 19.877, "peak": 40.2}
KNOWN_STAGES_M = (0.152, 0.305, 0.457)
OFF_ITS_FRAME = "past 0.30 m the whole door is drawn off its frame and loses what its bar had held"


@lru_cache
def _known() -> Resistance:
    x = np.arange(0.0, 458.0)  # [mm]
    force = 1.0e3 * (np.minimum(0.2 * x, 25.0) + 0.1 * np.maximum(0.0, x - 305.0))
    return resistance(1.0e-3 * x, force, KNOWN_STAGES_M)


def _of(found: Resistance, stage: str) -> float:
    return {"initial": found.initial_n, "intermediate": found.intermediate_n, "peak": found.peak_n}[stage]


def known_curve(stage: str) -> Row:
    """Return one stage's resistance of a curve whose areas are known by hand."""
    # 0.1 %, the case's figure
    return Row(
        f"crush of a known curve: {stage} resistance",
        "fmvss-214-2007",
        KNOWN_KN[stage],
        _of(_known(), stage) / 1e3,
        "kN",
        1e-3,
        spacing="1 mm steps",
    )


@lru_cache
def _door(build: str = "bar") -> Finding:
    found = find(build)
    if found.failed_count:
        raise specimens.NotSolvedError(f"{found.failed_count} increments of the crush did not settle")
    return found


def door_least(stage: str) -> Row:
    """Return one stage's resistance of the door with its bar: at least half the floor."""
    return Row(
        f"door with its bar crushed by a cylinder: {stage} resistance, at least half the floor",
        "fmvss-214-2007",
        0.5 * FLOORS_N[STAGES.index(stage)] / 1e3,
        _of(_door().resistance, stage) / 1e3,
        "kN",
        relation="at least",
        spacing="60 mm door",
    )


def door_most(stage: str) -> Row:
    """Return one stage's resistance of the door with its bar: at most twice the floor."""
    return Row(
        f"door with its bar crushed by a cylinder: {stage} resistance, at most twice the floor",
        "fmvss-214-2007",
        2.0 * FLOORS_N[STAGES.index(stage)] / 1e3,
        _of(_door().resistance, stage) / 1e3,
        "kN",
        relation="at most",
        spacing="60 mm door",
    )


def without_bar(stage: str) -> Row:
    """Return one stage's resistance of a door with no bar against that of a door with its bar."""
    with_it = _of(_door().resistance, stage)
    return Row(
        f"door with no bar crushed by a cylinder: {stage} resistance, against the door with its bar",
        TRADE,
        0.75,  # "clearly below"
        _of(_door("no bar").resistance, stage) / with_it,
        "of the whole door's",
        relation="less than",
        spacing="60 mm door",
        known=OFF_ITS_FRAME if stage == "peak" else "",
    )
