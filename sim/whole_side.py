"""The numbers of a whole side beside those of its doors: pillar, rear latch, occupant, what is left on.

A plan says ``extent = "side"`` for the car and gives these under ``car.whole_side``.
"""

from __future__ import annotations

from typing import Literal

import msgspec

from sim.problems import PlanError
from sim.ranges import Range, check_ranges
from sim.surround import Lying, Support

Shape = Literal["low car", "tall car", "long door"]
Size = Literal["female_p5", "female_p50", "female_p95", "male_p5", "male_p50", "male_p95"]


class WholeSide(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """What a car's side is made of besides its doors.

    shape : the side's dimensions, by name
    pillar_pressed_m, pillar_closing_m : thickness of the pillar's pressed part and of its inner wall [m]
    pillar_pressed_yield_pa, pillar_closing_yield_pa : their yield stress [Pa]
    soft_foot_m : how high a softer foot reaches [m], 0 is a pillar of one grade;  soft_foot_yield_pa : of it
    foot_flare_m : length of rocker the pillar's foot flares over [m], 0 is a foot with no flare
    foot_lap_m, foot_rows : how far a flared foot laps down over the rocker [m], rows of spots on its flanges
    foot_stiffener_m, foot_stiffener_reach_m : thickness of a stiffener in the foot [m], 0 is none; its height
    rocker_wall_m : wall of the rocker, which then gives [m]; 0 is a rocker that stands still
    rocker_yield_pa : its yield stress [Pa];  rocker_bulkheads : whether it has them under the pillar
    spot_pitch_m : distance between the spots at foot and head [m]
    spot_sheet_m : thinnest sheet under a spot, which sets its strength [m]
    pillar_bow_m : how far the middle of the pillar's inner wall stands inboard of its edges [m]
    head_held : whether the pillar's head is still welded to the roof rail
    rear_latch : as the car's latch, of the rear door
    occupant : size by name (ANSUR II percentiles);  occupant_seat : where it sits
    occupant_lean_rad : the trunk's backward lean from the vertical
    occupant_gap_m : from the near hip to where the inner panel stood before any wreck [m]
    occupant_inboard_rad : the trunk's lean away from the door, as of one pressed by it
    trim, seals, glass : whether they are still in place
    lies : "on its wheels", or on a side, with this one up or down
    stands_on : "wheels", or "blocks" under the rockers as well;  car_kg : mass of the car [kg]
    """

    shape: Shape = "low car"
    pillar_pressed_m: float = 0.0015
    pillar_closing_m: float = 0.0012
    pillar_pressed_yield_pa: float = 1.0e9
    pillar_closing_yield_pa: float = 350.0e6
    soft_foot_m: float = 0.0
    soft_foot_yield_pa: float = 350.0e6
    spot_pitch_m: float = 0.035
    spot_sheet_m: float = 0.0012
    head_held: bool = True
    pillar_bow_m: float = 0.0
    rear_latch: Literal["full", "half", "open"] = "full"
    occupant: Size = "male_p50"
    occupant_seat: Literal["front", "rear"] = "front"
    occupant_lean_rad: float = 0.4363323129985824
    occupant_gap_m: float = 0.12
    occupant_inboard_rad: float = 0.0
    trim: bool = True
    seals: bool = True
    glass: bool = True
    lies: Lying = "on its wheels"
    stands_on: Support = "wheels"
    car_kg: float = 1400.0  # 1200-1800 kg, from memory
    foot_flare_m: float = 0.0
    foot_lap_m: float = 0.08  # assumed
    foot_rows: int = 2  # from memory
    foot_stiffener_m: float = 0.0
    foot_stiffener_reach_m: float = 0.1  # assumed
    rocker_wall_m: float = 0.0
    rocker_bulkheads: bool = True
    rocker_yield_pa: float = 350.0e6  # as the rail's, assumed: press-hardened rockers are 1.0e9


SIDE_RANGES: dict[str, Range] = {
    "pillar_pressed_m": (0.0006, 0.006, "1.35 to 2.7 mm have been published"),
    "pillar_closing_m": (0.0006, 0.006, "1.0 to 1.5 mm is usual"),
    "pillar_pressed_yield_pa": (150.0e6, 1.6e9, "350e6 is mild, 1.0e9 press-hardened"),
    "pillar_closing_yield_pa": (150.0e6, 1.6e9, "350e6 is usual"),
    "soft_foot_m": (0.0, 1.0, "0 is a pillar of one grade, 0.2 to 0.4 m a softer foot"),
    "soft_foot_yield_pa": (150.0e6, 1.6e9, "350e6 is usual"),
    "spot_pitch_m": (0.02, 0.12, "spots sit 0.03 to 0.06 m apart"),
    "spot_sheet_m": (0.0006, 0.004, "1.0 to 1.5 mm is usual"),
    "pillar_bow_m": (0.0, 0.04, "0 is flat, 0.01 to 0.02 m a pressed wall"),
    "foot_flare_m": (0.0, 0.45, "0 is a foot with no flare, 0.2 to 0.3 m is usual"),
    "foot_lap_m": (0.03, 0.12, "0.06 to 0.1 m, assumed"),
    "foot_rows": (1, 3, "two rows of spots are usual"),
    "foot_stiffener_m": (0.0, 0.004, "0 is none, 0.001 to 0.002 m a usual one"),
    "foot_stiffener_reach_m": (0.0, 0.4, "0.05 to 0.15 m, assumed"),
    "rocker_wall_m": (0.0, 0.006, "0 is a rocker that stands still, 0.001 to 0.002 m a usual one"),
    "rocker_yield_pa": (150.0e6, 1.6e9, "350e6 is usual, 1.0e9 press-hardened"),
    "car_kg": (800.0, 3000.0, "1200 to 1800 kg is usual"),
    "occupant_gap_m": (
        0.0,
        0.5,
        "0.08 to 0.15 m beside a sound door, more where pushed inboard",
    ),
    "occupant_inboard_rad": (0.0, 0.7854, "0 is upright, 45 degrees far away from the door"),
    "occupant_lean_rad": (0.0, 1.0472, "0 is upright, 25 degrees usual, 60 degrees far back"),
}
"""Lowest and highest value of each number of a side, and a word on what is usual."""

THINNEST_ROCKER_M = 0.0005


def check_side(side: WholeSide) -> None:
    """Say the first thing that is wrong with a side, if any.

    Raises
    ------
    PlanError
        Naming the field below ``car.whole_side``, its value and the remedy.
    """
    if 0.0 < side.rocker_wall_m < THINNEST_ROCKER_M:
        raise PlanError(
            "car.whole_side.rocker_wall_m",
            f"is {side.rocker_wall_m}; use 0, a rocker that stands still, or {THINNEST_ROCKER_M} m and more",
        )
    check_ranges(SIDE_RANGES, side, "car.whole_side")
