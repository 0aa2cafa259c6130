"""Dimensions of the whole side: two doors, the pillars, rocker and roof rail round them, and the ground.

Everything is invented and belongs to no vehicle; ranges are remembered ones of saloons and tall cars. The
side stands in the front door's axes: x rearward, y outboard, z up, sill lip at z = 0. The pillar between the
doors shows its outer face: the doors meet its edges across the shut lines. Most real doors cover it; what a
tip finds in the gap, latch and hinges are the same. The rear door's rear lower corner, which a wheel arch
cuts out, is approximated by a latch edge that leans rearward.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from meshes.body import BodyShape, frame_top, outline
from meshes.door_shape import DoorShape
from meshes.part import FloatArray, MeshError
from meshes.pillar import PillarShape

FIT_M = 0.012
"""How far a door's edge may stand off the line of the pillar it closes against, beyond the gap."""
HEAD_FIT_M = 0.03
"""The same at the head, where the frame's seal bridges more."""

FINE_RATIO, GROWTH_RATIO = 0.6, 0.5
"""Spacing along the edges of a side's doors over the rest, and how soon that is reached: coarser than a door
alone has it, for its cost."""

FRONT_DOOR = DoorShape(fine_ratio=FINE_RATIO, growth_ratio=GROWTH_RATIO)
MIDDLE_PILLAR, BODY = PillarShape(), BodyShape()
"""The low car's front door, pillar and body."""

REAR_DOOR = replace(
    FRONT_DOOR,
    length_m=0.97,
    sill_length_m=0.75,
    latch_lean_m=0.20,
    frame_rake_m=-0.073,
    latch_height_m=0.36,
)
"""Rear door of the low car: 900-1050 mm long, from memory."""


@dataclass(frozen=True)
class SideShape:
    """Dimensions of the side [m].

    Parameters
    ----------
    front, rear
        The two doors, each in its own axes; heights and window frames must agree.
    pillar
        Sections, flanges and lattice of the pillar between them; its heights and leans are taken from the
        doors.
    body
        Gap, front pillar, rocker and rail.
    rear_pillar_width_m, rear_upper_width_m
        Section of the rear pillar fore and aft, below and above the belt.
    sill_height_m
        The doors' sill lip above the ground. Belt 900-980 mm above it in low cars, 1050-1150 in tall ones,
        from memory.
    hip_height_m
        Hip of a seated occupant above the ground: 480-560 mm in low cars, 650-750 in tall ones, from memory.
    heel_drop_m
        Hip to heel, vertically: 250-300 mm in low cars, 300-350 in tall ones, from memory.
    rear_hip_x_m
        Hip of a rear occupant behind that of a front one, assumed.
    """

    front: DoorShape = FRONT_DOOR
    rear: DoorShape = REAR_DOOR
    pillar: PillarShape = MIDDLE_PILLAR
    body: BodyShape = BODY
    rear_pillar_width_m: float = 0.14
    rear_upper_width_m: float = 0.11
    sill_height_m: float = 0.30
    hip_height_m: float = 0.54
    heel_drop_m: float = 0.27
    rear_hip_x_m: float = 0.84

    def check(self) -> None:
        """Raise MeshError naming the part, its parameter and the remedy if the side does not fit together."""
        for name, part in (("front", self.front), ("rear", self.rear), ("body", self.body)):
            _named(name, part.check)
        ranges = {
            "rear_pillar_width_m": (0.08, 0.4),
            "rear_upper_width_m": (0.06, 0.4),
            "sill_height_m": (0.15, 0.7),
            "hip_height_m": (0.3, 1.0),
            "heel_drop_m": (0.05, 0.5),
            "rear_hip_x_m": (0.5, 1.2),
        }
        for name, (low, high) in ranges.items():
            value = float(getattr(self, name))
            if not (math.isfinite(value) and low <= value <= high):
                raise MeshError(
                    name, f"is {value} m, allowed are {low} to {high} m; choose one in that range"
                )
        if self.sill_height_m <= self.body.rocker_height_m + self.body.gap_m:
            raise MeshError(
                "sill_height_m",
                f"is {self.sill_height_m} m, the rocker reaches {self.body.rocker_height_m} m below the sill "
                "and would stand in the ground; raise the sill or lower body.rocker_height_m",
            )
        for item in ("height_m", "frame_height_m", "frame_lean_m"):
            mine, other = getattr(self.rear, item), getattr(self.front, item)
            if abs(mine - other) > 1e-9:
                raise MeshError(
                    f"rear.{item}", f"is {mine} m, the front door's is {other} m; make them equal"
                )
        if self.pillar.foot_depth_m > self.body.rocker_depth_m:
            raise MeshError(
                "pillar.foot_depth_m",
                f"is {self.pillar.foot_depth_m} m, the rocker is {self.body.rocker_depth_m} m deep; make the "
                "foot shallower or raise body.rocker_depth_m",
            )
        _named("pillar", self.placed_pillar.check)
        self._check_fit()

    def _check_fit(self) -> None:
        """Check that the rear door's hinge edge and front upright follow the pillar's rear edge."""
        pillar, x = self.placed_pillar, self.pillar_shift[0]
        belt = x + pillar.front_lean_m + pillar.belt_width_m
        head = x + pillar.front_lean_m - pillar.upper_fore_m + pillar.head_width_m
        edge = outline(self.rear, self.body.gap_m, 0.0)[0, 0] + self.rear_shift[0]
        top = frame_top(self.rear, self.body)[0][0] + self.rear_shift[0]
        if abs(edge - belt) > FIT_M:
            fit = self.rear.length_m + edge - belt
            raise MeshError(
                "rear.length_m",
                f"puts the rear door's hinge edge {edge - belt:+.3f} m off the pillar at the belt; use "
                f"{fit:.3f} m, or change pillar.belt_width_m",
            )
        if abs(top - head) > HEAD_FIT_M:
            fit = self.rear.frame_rake_m + head - top
            raise MeshError(
                "rear.frame_rake_m",
                f"puts the rear window's front upright {top - head:+.3f} m off the pillar's head; "
                f"use {fit:.3f} m",
            )

    @cached_property
    def pillar_shift(self) -> FloatArray:
        """Where the pillar's origin stands in the front door's axes [m], shape (3,)."""
        shift: FloatArray = outline(self.front, self.body.gap_m, 0.0)[2]
        return shift

    @cached_property
    def rear_shift(self) -> FloatArray:
        """Where the rear door's origin stands in the front door's axes [m], shape (3,)."""
        hinge = outline(self.rear, self.body.gap_m, 0.0)[1]
        return np.array([self.pillar_shift[0] + self.pillar.foot_width_m - hinge[0], 0.0, 0.0])

    @cached_property
    def placed_pillar(self) -> PillarShape:
        """The pillar with heights, leans and fittings that belong to these doors."""
        gap = self.body.gap_m
        _, _, foot, belt = outline(self.front, gap, 0.0)
        head = frame_top(self.front, self.body)[1]
        return replace(
            self.pillar,
            belt_height_m=float(belt[2] - foot[2]),
            upper_height_m=float(head[2] - belt[2]),
            front_lean_m=float(belt[0] - foot[0]),
            upper_fore_m=float(belt[0] - head[0]),
            upper_inboard_m=float(belt[1] - head[1]),
            striker_height_m=self.front.latch_height_m + gap,
            lower_hinge_height_m=self.rear.lower_hinge_height_m + gap,
            upper_hinge_height_m=self.rear.upper_hinge_height_m + gap,
        )

    @property
    def ground_z_m(self) -> float:
        """Height of the ground in the front door's axes [m]."""
        return -self.sill_height_m

    @property
    def ground_clearance_m(self) -> float:
        """From the ground to the rocker's underside [m]."""
        return self.sill_height_m - self.body.gap_m - self.body.rocker_height_m


_TALL_FRONT = replace(
    FRONT_DOOR,
    height_m=0.72,
    frame_height_m=0.44,
    latch_height_m=0.40,
    upper_hinge_height_m=0.55,
    bar_height_m=0.33,
)

SIDES: dict[str, SideShape] = {
    "low car": SideShape(),
    "tall car": SideShape(
        front=_TALL_FRONT,
        rear=replace(
            REAR_DOOR,
            height_m=0.72,
            frame_height_m=0.44,
            latch_height_m=0.40,
            upper_hinge_height_m=0.55,
            bar_height_m=0.33,
        ),
        sill_height_m=0.38,
        hip_height_m=0.68,
        heel_drop_m=0.32,
    ),
    "long door": SideShape(
        front=replace(FRONT_DOOR, length_m=1.20, sill_length_m=1.13),
        rear=replace(REAR_DOOR, length_m=0.90, sill_length_m=0.70, latch_lean_m=0.18, frame_rake_m=-0.082),
    ),
}
"""Ready sides by name. Front doors 1050-1200 mm long, from memory."""


def _named(name: str, check: Callable[[], None]) -> None:
    """Run a part's check; an error names the part as well."""
    try:
        check()
    except MeshError as error:
        raise MeshError(f"{name}.{error.parameter}", error.message) from error
