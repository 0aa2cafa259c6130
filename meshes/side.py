"""The whole side, meshed: two doors on three pillars, rocker, roof rail and ground, each by its own name."""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from meshes.body import frame_top, outline
from meshes.box import BoxMesh, Cut, build_box
from meshes.door import DoorMesh, build_door
from meshes.part import FloatArray, Frozen, MeshError, Surface, frozen_floats
from meshes.pillar import PillarMesh, build_pillar
from meshes.side_shape import SideShape

MAX_SHEET_NODES = 4000
"""Most nodes of doors and middle pillar together, what a solver carries at the default spacing."""
MEMBER_SPACING_M = 0.04
"""Spacing on the members that stay rigid: fine enough to draw and to find an edge on."""
GROUND_REACH_M = 0.8
"""How far the ground is drawn beyond the side."""


@dataclass(frozen=True, eq=False)
class SideMesh(Frozen):
    """The meshed side; doors and middle pillar in their own axes, all else in the front door's.

    Parameters
    ----------
    shape
        The dimensions it was built from.
    front, rear, pillar
        The parts that move; `placed` puts each where it belongs.
    members
        "front_pillar", "rear_pillar", "rocker", "roof_rail": rigid, but of real section.
    shifts
        Where the origins of "front", "rear" and "pillar" stand [m], each of shape (3,).
    ground
        A level square under the car.
    """

    shape: SideShape
    front: DoorMesh
    rear: DoorMesh
    pillar: PillarMesh
    members: Mapping[str, BoxMesh]
    shifts: Mapping[str, FloatArray]
    ground: Surface

    def __post_init__(self) -> None:
        """Freeze the mappings."""
        object.__setattr__(self, "members", dict(self.members))
        shifts = {name: frozen_floats(shift, (3,), name) for name, shift in self.shifts.items()}
        object.__setattr__(self, "shifts", shifts)

    def placed(self, name: str) -> Surface:
        """Return the surface of "front", "rear" or "pillar" where it stands on the car."""
        if name not in self.shifts:
            raise MeshError("name", f"no part named {name!r}; there are {tuple(self.shifts)}")
        part: DoorMesh | PillarMesh = getattr(self, name)
        return part.surface.with_points(part.surface.points + self.shifts[name])

    def surfaces(self) -> dict[str, Surface]:
        """Return every surface where it stands, by name."""
        moving = {name: self.placed(name) for name in self.shifts}
        return {
            **moving,
            **{name: item.surface for name, item in self.members.items()},
            "ground": self.ground,
        }

    @property
    def sheet_node_count(self) -> int:
        """Nodes of the sheets, bars, strips and frames that move."""
        return sum(self.placed(name).node_count for name in self.shifts)

    def ground_gap_m(self, points: FloatArray) -> float:
        """Return how far the lowest of some points [m], shape (k, 3), stands above the ground."""
        return float(points[:, 2].min()) - self.shape.ground_z_m

    def mirrored(self) -> SideMesh:
        """Return the left-hand side: the mirror image in y = 0, every name and order kept."""
        flip = np.array([1.0, -1.0, 1.0])
        return dataclasses.replace(
            self,
            front=self.front.mirrored(),
            rear=self.rear.mirrored(),
            pillar=self.pillar.mirrored(),
            members={name: item.mirrored() for name, item in self.members.items()},
            shifts={name: shift * flip for name, shift in self.shifts.items()},
            ground=self.ground.mirrored(),
        )


def build_side(shape: SideShape | None = None) -> SideMesh:
    """Return the mesh of a right-hand side; raises MeshError as `SideShape.check` does."""
    shape = SideShape() if shape is None else shape
    shape.check()
    front, rear = build_door(shape.front), build_door(shape.rear)
    pillar = build_pillar(shape.placed_pillar)
    count = sum(part.surface.node_count for part in (front, rear, pillar))
    if count > MAX_SHEET_NODES:
        raise MeshError(
            "front.spacing_m",
            f"and its like give {count} nodes of sheet, {MAX_SHEET_NODES} are allowed; use a larger "
            "front.spacing_m, rear.spacing_m or pillar.spacing_m",
        )
    members = {
        name: build_box(cuts, axis, MEMBER_SPACING_M) for name, (axis, cuts) in member_cuts(shape).items()
    }
    shifts = {"front": np.zeros(3), "rear": shape.rear_shift, "pillar": shape.pillar_shift}
    return SideMesh(shape, front, rear, pillar, members, shifts, _ground(shape, members["rocker"]))


def member_cuts(shape: SideShape) -> dict[str, tuple[int, list[Cut]]]:
    """Return axis and sections of the members that stay rigid, by name."""
    front_points = (
        *outline(shape.front, shape.body.gap_m, 0.0)[[1, 0]],
        frame_top(shape.front, shape.body)[0],
    )
    rear_points = (*outline(shape.rear, shape.body.gap_m, 0.0)[[2, 3]], frame_top(shape.rear, shape.body)[1])
    rear_points = tuple(point + shape.rear_shift for point in rear_points)
    body, wide, slim = shape.body, shape.rear_pillar_width_m, shape.rear_upper_width_m
    lower, upper = body.pillar_depth_m, body.upper_depth_m
    sides = ((-body.pillar_width_m, lower), (-body.pillar_width_m, lower), (-body.upper_width_m, upper))
    front = [_upright(point, *side) for point, side in zip(front_points, sides, strict=True)]
    sides = ((wide, lower), (wide, lower), (slim, upper))
    rear = [_upright(point, *side) for point, side in zip(rear_points, sides, strict=True)]
    return {
        "front_pillar": (2, front),
        "rear_pillar": (2, rear),
        "rocker": (0, _rocker(shape, front[0].low[0], rear[0].high[0])),
        "roof_rail": (0, _rail(shape, front[-1].low[0], rear[-1].high[0])),
    }


def _upright(edge: FloatArray, width_m: float, depth_m: float) -> Cut:
    """Return an upright member's section from the point of its outer edge at the door; < 0 goes forward."""
    x, y, z = (float(value) for value in edge)
    return Cut(z, (min(x, x + width_m), y - depth_m), (max(x, x + width_m), y))


def _rocker(shape: SideShape, start_m: float, end_m: float) -> list[Cut]:
    body = shape.body
    low, high = (-body.rocker_depth_m, -body.gap_m - body.rocker_height_m), (0.0, -body.gap_m)
    return [Cut(start_m, low, high), Cut(end_m, low, high)]


def _rail(shape: SideShape, start_m: float, end_m: float) -> list[Cut]:
    """Return the rail over the window frames: as deep as the pillar's head, whose walls lap it."""
    under = float(frame_top(shape.front, shape.body)[0][2])
    outer = -shape.front.frame_lean_m
    low, high = (outer - shape.pillar.head_depth_m, under), (outer, under + shape.body.rail_height_m)
    return [Cut(start_m, low, high), Cut(end_m, low, high)]


def _ground(shape: SideShape, rocker: BoxMesh) -> Surface:
    points = rocker.surface.points
    x0, x1 = points[:, 0].min() - GROUND_REACH_M, points[:, 0].max() + GROUND_REACH_M
    y0, y1, z = points[:, 1].min() - GROUND_REACH_M, points[:, 1].max() + GROUND_REACH_M, shape.ground_z_m
    corners = np.array([[x0, y0, z], [x1, y0, z], [x1, y1, z], [x0, y1, z]])
    return Surface(corners, np.array([[0, 1, 2], [0, 2, 3]]), np.zeros(2, dtype=np.int64), ("ground",))
