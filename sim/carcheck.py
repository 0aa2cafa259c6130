"""Whether a car's numbers make sense: field, value and remedy where they do not."""

from __future__ import annotations

import numpy as np

from meshes.door_shape import DoorShape
from sim.builds import ILLUSTRATIVE, builds_named
from sim.plan import Car
from sim.problems import PlanError
from sim.ranges import Range, check_ranges
from sim.whole_side import check_side

RANGES: dict[str, Range] = {
    "skin_thickness_m": (0.0003, 0.003, "door skins are about 0.0006 to 0.0012 m"),
    "inner_thickness_m": (0.0003, 0.003, "inner panels are about 0.0006 to 0.0015 m"),
    # the latch's foot, 70 mm of shut face round its middle, must find room between lip and bend
    "hem_width_m": (0.004, 0.03, "hems are about 0.008 to 0.012 m wide"),
    "shut_face_depth_m": (0.065, 0.25, "0.08 to 0.11 m is usual from lip to inner bend"),
    "seam_energy_j_per_m": (5.0, 500.0, "12 to 250 J/m covers weak to very tough beads"),
    "seam_strength_n_per_m": (500.0, 50.0e3, "4000 to 12000 N/m is usual"),
    "seam_variation_ratio": (0.0, 0.8, "0 is an even seam, 0.2 to 0.4 a careless one"),
    "seam_correlation_m": (0.01, 2.0, "the length over which the bead's quality changes, about 0.1 m"),
    "weld_pitch_m": (0.01, 0.3, "spots sit 0.04 to 0.06 m apart"),
    "weld_peel_n": (200.0, 20.0e3, "a spot in thin steel holds 1000 to 2500 N in peel"),
    "weld_shear_n": (200.0, 40.0e3, "a spot in thin steel holds 1600 to 4700 N in shear"),
    "weld_energy_j": (0.3, 50.0, "2 to 6 J pull a spot out of thin steel"),
    "latch_strength_ratio": (1.0, 4.0, "below 1 the latch would not meet UN R11 / GTR 1"),
    "hinge_strength_ratio": (1.0, 4.0, "below 1 the hinges would not meet UN R11 / GTR 1"),
    "hinge_depth_m": (0.0, 0.09, "0 is half-way down the shut face, 0.02 to 0.04 m a knuckle's axis"),
    "fitting_give_m": (0.0, 0.05, "0 is brittle, 0.01 to 0.02 m a leaf that unfolds"),
    "bar_foot_strength_n": (1.0e3, 100.0e3, "three spot welds and a bracket hold about 25000 N"),
    "latch_wedge_n": (0.0, 50.0e3, "0 is a free striker, 5000 to 15000 N a wedged one"),
    "rail_wall_m": (0.0, 0.006, "0 is a rail that stands still, 0.001 to 0.002 m a usual one"),
    "rail_yield_pa": (150.0e6, 1.6e9, "350e6 is usual, 180e6 mild, 1.0e9 press-hardened"),
    "handle_n": (0.0, 1000.0, "a hand pulls 100 to 400 N"),
    "lattice_spacing_m": (
        0.02,
        0.09,
        "0.045 m is the default, 0.06 m for a quick look, 0.03 m for reference",
    ),
}
"""Lowest and highest value of each number of a car, and a word on what is usual."""

THINNEST_RAIL_M = 0.0005
SEED_LIMIT = 2**31
LEAST_GAP_M = 0.005
# opening at which a bead is at its strength: assumed, only its energy matters [turon-2007]
SEAM_RISE_M = 3.0e-4
WELD_RISE_M = 2.0e-4  # the same of a spot: assumed


def hem_length_m() -> float:
    """Return the length of the door's hem, three straight edges [m]."""
    corners = np.asarray(DoorShape().corners_at_depth(0.0))
    sides = np.linalg.norm(np.roll(corners, -1, axis=0) - corners, axis=1)
    return float(sides[0] + sides[1] + sides[3])


def check_car(car: Car) -> None:
    """Say the first thing that is wrong with a car, if any.

    Raises
    ------
    PlanError
        Naming the field below ``car``, its value and the remedy.
    """
    check_ranges(RANGES, car, "car")
    if not 0 <= car.seam_seed < SEED_LIMIT:
        raise PlanError("car.seam_seed", f"is {car.seam_seed}; use a whole number from 0 to {SEED_LIMIT - 1}")
    _check_rows(car)
    _check_energies(car)
    _check_gaps(car)
    _check_words(car)
    _check_rail(car)
    check_side(car.whole_side)


def _check_rail(car: Car) -> None:
    if 0.0 < car.rail_wall_m < THINNEST_RAIL_M:
        raise PlanError(
            "car.rail_wall_m",
            f"is {car.rail_wall_m}; use 0, a rail that stands still, or {THINNEST_RAIL_M} m and more",
        )
    if car.rail_held != "both" and car.rail_wall_m == 0.0:
        raise PlanError(
            "car.rail_held",
            f"is {car.rail_held!r}, but a rail that stands still has no joint to lose; "
            "give car.rail_wall_m a wall, or use 'both'",
        )


def _check_rows(car: Car) -> None:
    """Refuse triangles so large that the shut face cannot hold two rows of them."""
    if car.lattice_spacing_m > car.shut_face_depth_m:
        raise PlanError(
            "car.lattice_spacing_m",
            f"is {car.lattice_spacing_m:.6g} m, more than the shut face is deep "
            f"({car.shut_face_depth_m:.6g} m); use {car.shut_face_depth_m:.6g} m or less, "
            "or a deeper shut face",
        )


def _check_energies(car: Car) -> None:
    least = 1.05 * 0.5 * car.seam_strength_n_per_m * SEAM_RISE_M
    if car.seam_energy_j_per_m <= least:
        raise PlanError(
            "car.seam_energy_j_per_m",
            f"is {car.seam_energy_j_per_m} J/m, too little for the strength; use more than {least:.3g} J/m",
        )
    least = 1.05 * 0.5 * car.weld_peel_n * WELD_RISE_M
    if car.weld_energy_j <= least:
        raise PlanError(
            "car.weld_energy_j",
            f"is {car.weld_energy_j} J, too little for weld_peel_n; use more than {least:.3g} J",
        )


def _check_gaps(car: Car) -> None:
    whole = hem_length_m()
    if car.bead_gaps and car.seam == "welded":
        raise PlanError(
            "car.bead_gaps", "stand on a welded seam, which has no bead; use seam = 'bonded' or 'mixed'"
        )
    for index, gap in enumerate(car.bead_gaps):
        path = f"car.bead_gaps[{index}]"
        if not 0.0 <= gap.start_m < whole:
            raise PlanError(f"{path}.start_m", f"is {gap.start_m}; the hem runs from 0 to {whole:.3f} m")
        if not LEAST_GAP_M <= gap.length_m <= whole - gap.start_m + 1.0e-9:
            raise PlanError(
                f"{path}.length_m",
                f"is {gap.length_m}; use {LEAST_GAP_M} to {whole - gap.start_m:.3f}, where the hem ends",
            )


def _check_words(car: Car) -> None:
    if car.build:
        builds_named(car.build)
    if car.metal == "composite" and ILLUSTRATIVE not in car.build:
        raise PlanError(
            "car.metal",
            "is 'composite', which is illustrative and assumed: "
            f"name its build, car.build = 'composite skin ({ILLUSTRATIVE})', or use 'steel' or 'alloy'",
        )
    if car.latch == "jammed" and car.latch_wedge_n <= 0.0:
        raise PlanError(
            "car.latch_wedge_n",
            "is 0, so nothing wedges the striker of a jammed latch; use about 12000, or latch = 'open'",
        )
