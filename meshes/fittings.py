"""What else stands on and in the side: seats, trim, seals, panes and restraint parts, as simple named solids.

Places and sizes are invented and only roughly those of a saloon. Restraint parts stand behind trim and come
to light when it is stripped; where they really are in a car its maker's rescue sheet says, never this model.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

import numpy as np

from meshes.body import frame_top, outline, prism
from meshes.door_shape import DoorShape
from meshes.occupant import Posture
from meshes.part import FloatArray, Frozen, MeshError, Surface
from meshes.side import SideMesh
from meshes.side_shape import SideShape

Kind = Literal["seat", "trim", "seal", "glass", "restraint"]

TRIM_GAP_M, TRIM_THICKNESS_M = 0.012, 0.015
"""Assumed: gap between metal and trim, thickness of a trim panel."""
SEAL_M = 0.016
"""Assumed: side of a rubber seal's section."""
PANE_THICKNESS_M = 0.004
"""Side panes are about 3-5 mm thick, from memory."""
SEAT_HALF_M, CUSHION_M, BACK_M, BACK_HEIGHT_M = 0.24, 0.12, 0.11, 0.62
"""Assumed: half a seat's breadth, height of its cushion, thickness and height of its back."""


@dataclass(frozen=True, eq=False)
class Fitting(Frozen):
    """One solid.

    Parameters
    ----------
    name, kind
        What it is called; what it is.
    surface
        Closed, normals outward.
    behind
        Name of the trim that hides it; empty for what can be seen from the start.
    """

    name: str
    kind: Kind
    surface: Surface
    behind: str = ""

    def mirrored(self) -> Fitting:
        """Return the mirror image in y = 0."""
        return dataclasses.replace(self, surface=self.surface.mirrored())


@dataclass(frozen=True)
class Fittings:
    """All solids of a side, and which of them are gone: panes broken out, trim and seals stripped."""

    items: tuple[Fitting, ...]
    gone: frozenset[str] = frozenset()

    def __post_init__(self) -> None:
        """Check the names."""
        unknown = self.gone - {item.name for item in self.items}
        if unknown:
            raise MeshError(
                "gone", f"names {sorted(unknown)}; there are {[item.name for item in self.items]}"
            )
        fixed = {item.name for item in self.items if item.kind in ("seat", "restraint")} & self.gone
        if fixed:
            raise MeshError(
                "gone", f"names {sorted(fixed)}, which cannot be stripped; name trim, seal or glass"
            )

    def without(self, *names: str) -> Fittings:
        """Return the fittings after some panes, trim or seals have been taken away."""
        return Fittings(self.items, self.gone | frozenset(names))

    def of(self, kind: Kind) -> tuple[Fitting, ...]:
        """Return what is still there of one kind, hidden or not."""
        return tuple(item for item in self.items if item.kind == kind and item.name not in self.gone)

    def seen(self) -> tuple[Fitting, ...]:
        """Return what is there and not hidden behind trim."""
        return tuple(
            item
            for item in self.items
            if item.name not in self.gone and (not item.behind or item.behind in self.gone)
        )

    def hidden(self) -> tuple[Fitting, ...]:
        """Return what still hides behind trim."""
        return tuple(item for item in self.items if item.behind and item.behind not in self.gone)


def build_fittings(side: SideMesh) -> Fittings:
    """Return seats, trim, seals, panes and restraint parts of a side, on the side it is built for."""
    shape = side.shape
    items = [*_seats(shape), *_trim(shape), *_seals(shape), *_panes(shape), *_restraints(shape)]
    if side.pillar.outboard_sign < 0.0:
        items = [item.mirrored() for item in items]
    return Fittings(tuple(items))


def rod(line: FloatArray, radius_m: float, sides: int = 8) -> Surface:
    """Return closed prisms of ``sides`` faces along the pieces of a polyline [m] of shape (k, 3)."""
    points, triangles, first = [], [], 0
    for start, end in pairwise(np.asarray(line, dtype=np.float64)):
        along = (end - start) / np.linalg.norm(end - start)
        across = np.cross(along, [0.0, 0.0, 1.0] if abs(along[2]) < 0.9 else [1.0, 0.0, 0.0])
        across /= np.linalg.norm(across)
        turn = 2.0 * np.pi * (np.arange(sides) + 0.5) / sides
        ring = radius_m * (np.cos(turn)[:, None] * across + np.sin(turn)[:, None] * np.cross(along, across))
        points += [start + ring, end + ring, [start], [end]]
        i, j = np.arange(sides), (np.arange(sides) + 1) % sides
        low, high = np.full(sides, 2 * sides), np.full(sides, 2 * sides + 1)
        faces = [(i, j, sides + j), (i, sides + j, sides + i), (j, i, low), (sides + i, sides + j, high)]
        triangles += [first + np.column_stack(face) for face in faces]
        first += 2 * sides + 2
    made = np.concatenate(triangles)
    return Surface(np.concatenate(points), made, np.zeros(len(made), dtype=np.int64), ("body",))


def block(low: Iterable[float], high: Iterable[float]) -> Surface:
    """Return the closed box between two corners [m], each of shape (3,)."""
    ends = np.array([list(low), list(high)], dtype=np.float64)
    corners = [[ends[n & 1, 0], ends[n >> 1 & 1, 1], ends[n >> 2, 2]] for n in range(8)]
    return prism(np.array(corners))


def slab(quad: FloatArray, inboard_m: float) -> Surface:
    """Return the closed slab behind a quadrilateral [m], shape (4, 3).

    Its corners: low front, low rear, high rear, high front.
    """
    back = quad - [0.0, inboard_m, 0.0]
    return prism(np.array([back[0], back[1], quad[0], quad[1], back[3], back[2], quad[3], quad[2]]))


def _doors(shape: SideShape) -> tuple[tuple[str, DoorShape, FloatArray], ...]:
    return ("front", shape.front, np.zeros(3)), ("rear", shape.rear, shape.rear_shift)


def _seats(shape: SideShape) -> list[Fitting]:
    """Return cushion and back of both seats, under and behind where an occupant's hips are."""
    items = []
    hip_z = shape.hip_height_m - shape.sill_height_m
    outer = -shape.front.shut_face_depth_m - 0.10
    for name, hip_x in (("front", Posture.hip_x_m), ("rear", Posture.hip_x_m + shape.rear_hip_x_m)):
        under = hip_z - 0.09
        low, high = (hip_x - 0.38, outer - 2 * SEAT_HALF_M, under - CUSHION_M), (hip_x + 0.12, outer, under)
        items.append(Fitting(f"{name} cushion", "seat", block(low, high)))
        foot, lean = hip_x + 0.13, 0.47 * BACK_HEIGHT_M  # the tangent of 25 degrees
        corners = [
            [
                foot + lean * up + BACK_M * rear,
                outer - 2 * SEAT_HALF_M * (1 - out),
                under + BACK_HEIGHT_M * up,
            ]
            for up in (0, 1)
            for out in (0, 1)
            for rear in (0, 1)
        ]
        items.append(Fitting(f"{name} back", "seat", prism(np.array(corners))))
    return items


def _trim(shape: SideShape) -> list[Fitting]:
    """Return door trims, pillar trim below and above the belt, and the trim of the roof's edge."""
    items = []
    for name, door, shift in _doors(shape):
        quad = door.corners_at_depth(door.shut_face_depth_m) + shift - [0.0, TRIM_GAP_M, 0.0]
        items.append(Fitting(f"{name} door trim", "trim", slab(quad, TRIM_THICKNESS_M)))
    foot, belt, head = shape.placed_pillar.cuts()
    for name, low, high in (("lower pillar trim", foot, belt), ("upper pillar trim", belt, head)):
        corner = [[end.low[0], end.low[1] - TRIM_GAP_M, end.along_m] for end in (low, high)]
        rear = [[end.high[0], end.low[1] - TRIM_GAP_M, end.along_m] for end in (low, high)]
        quad = np.array([corner[0], rear[0], rear[1], corner[1]]) + shape.pillar_shift
        items.append(Fitting(name, "trim", slab(quad, TRIM_THICKNESS_M)))
    start, end, z = _rail_ends(shape)
    inner = -shape.front.frame_lean_m - shape.pillar.head_depth_m - TRIM_GAP_M
    items.append(
        Fitting(
            "roof edge trim",
            "trim",
            block((start, inner - 0.10, z - 0.01), (end, inner - 0.06, z + shape.body.rail_height_m)),
        )
    )
    return items


def _rail_ends(shape: SideShape) -> tuple[float, float, float]:
    front = frame_top(shape.front, shape.body)[0]
    rear = frame_top(shape.rear, shape.body)[1] + shape.rear_shift
    return float(front[0]), float(rear[0]), float(front[2])


def _seals(shape: SideShape) -> list[Fitting]:
    """Return the rubber round each opening below the belt, on the body's flange."""
    items = []
    for name, door, shift in _doors(shape):
        line = outline(door, -0.5 * shape.body.flange_m, door.shut_face_depth_m) + shift
        items.append(Fitting(f"{name} door seal", "seal", rod(line, SEAL_M / np.sqrt(2.0), 4)))
    return items


def _panes(shape: SideShape) -> list[Fitting]:
    """Return the side panes between belt and window frame, half-way into the door's depth."""
    items = []
    for name, door, shift in _doors(shape):
        belt = outline(door, 0.0, 0.0)[[0, 3]] + shift - [0.0, 0.5 * door.shut_face_depth_m, 0.0]
        top_front, top_rear = frame_top(door, shape.body)
        inward = np.array([0.0, 0.5 * door.shut_face_depth_m, shape.body.gap_m])
        quad = np.array([belt[0], belt[1], top_rear + shift - inward, top_front + shift - inward])
        items.append(Fitting(f"{name} pane", "glass", slab(quad, PANE_THICKNESS_M)))
    return items


def _restraints(shape: SideShape) -> list[Fitting]:
    """Return inflators, belt tensioner and belt anchor, each behind the trim that hides it."""
    start, end, z = _rail_ends(shape)
    inner = -shape.front.frame_lean_m - shape.pillar.head_depth_m - 0.035
    rail = z + 0.5 * shape.body.rail_height_m
    pillar = np.array(shape.pillar_shift)
    foot, belt, head = shape.placed_pillar.cuts()
    middle = 0.5 * (foot.low[0] + foot.high[0])
    reel = np.array([middle, 0.5 * (foot.low[1] + foot.high[1]), 0.0]) + pillar
    share = 0.75
    anchor = np.array(
        [
            0.5 * ((1 - share) * (belt.low[0] + belt.high[0]) + share * (head.low[0] + head.high[0])),
            (1 - share) * belt.low[1] + share * head.low[1],
            (1 - share) * belt.along_m + share * head.along_m,
        ]
    )
    anchor = anchor + pillar
    lower, upper, roof = "lower pillar trim", "upper pillar trim", "roof edge trim"
    half = 0.5 * 0.6 * foot.high[0]
    depth = 0.3 * (foot.high[1] - foot.low[1])
    box = np.array([[-half, -depth, 0.03], [half, depth, 0.17]]) + reel
    tensioner = block(box[0], box[1])
    length = end - start
    return [
        Fitting(
            "roof inflator",
            "restraint",
            rod(np.array([[end - 0.40 * length, inner, rail], [end - 0.22 * length, inner, rail]]), 0.018),
            roof,
        ),
        Fitting(
            "roof bag",
            "restraint",
            rod(np.array([[start + 0.05, inner, rail - 0.03], [end - 0.05, inner, rail - 0.03]]), 0.012, 6),
            roof,
        ),
        Fitting("belt tensioner", "restraint", tensioner, lower),
        Fitting(
            "belt anchor", "restraint", rod(np.array([anchor, anchor - [0.0, 0.012, 0.0]]), 0.022), upper
        ),
    ]
