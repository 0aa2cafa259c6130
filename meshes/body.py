"""The body round the door: rigid prisms, the gap to them, the rim the closed door rests on."""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from meshes.door_shape import FRAME_TOP_SHARE, DoorShape
from meshes.part import FloatArray, Frozen, MeshError, Surface, frozen_floats

FACES = ("outer", "inner", "front", "rear", "lower", "upper")
"""Faces of every prism: towards +y, -y, -x, +x, -z, +z."""

SEATS = {
    "pillar_outside": 2,
    "pillar_edge": 2,
    "pillar_side": 2,
    "hinge_pillar": 2,
    "rocker": 0,
    "roof_rail": 0,
}
"""Seats for the tip that does not touch the door, and the axis (0: x, 2: z) they are placed along."""

OPPOSITE = {"latch_edge": "pillar_edge", "hinge_edge": "hinge_pillar", "sill_edge": "rocker"}
"""The seat across the gap from each edge of the door."""

_BOX_TRIANGLES = np.array(
    [
        [2, 7, 3],
        [2, 6, 7],
        [0, 1, 5],
        [0, 5, 4],
        [0, 6, 2],
        [0, 4, 6],
        [1, 3, 7],
        [1, 7, 5],
        [0, 3, 1],
        [0, 2, 3],
        [4, 5, 7],
        [4, 7, 6],
    ]
)
"""Two triangles a face of FACES; corner number = (1 if rear) + (2 if outer) + (4 if upper)."""


@dataclass(frozen=True)
class BodyShape:
    """Dimensions of the rigid body round the door [m]; invented, inside remembered ranges of small saloons.

    Parameters
    ----------
    gap_m
        Width of the shut line between the door's lip and the body.
    pillar_width_m, pillar_depth_m
        Section of the pillars below the belt, fore and aft and inboard.
    upper_width_m, upper_depth_m
        Section of the pillars above the belt.
    rocker_height_m, rocker_depth_m, rail_height_m
        Sections of rocker and roof rail.
    seal_m
        Height of the pressed seal between the body's flange and the inner face of the closed door.
    flange_m
        How far the flange reaches in under the inner face, measured from the inner bend.
    """

    gap_m: float = 0.006
    pillar_width_m: float = 0.115
    pillar_depth_m: float = 0.110
    upper_width_m: float = 0.075
    upper_depth_m: float = 0.055
    rocker_height_m: float = 0.130
    rocker_depth_m: float = 0.150
    rail_height_m: float = 0.060
    seal_m: float = 0.004
    flange_m: float = 0.020

    def check(self) -> None:
        """Raise MeshError, naming the parameter and the allowed range, for a dimension out of range."""
        ranges = {"gap_m": (0.002, 0.02), "seal_m": (0.0, 0.03), "flange_m": (0.005, 0.06)}
        for item in dataclasses.fields(self):
            value = float(getattr(self, item.name))
            low, high = ranges.get(item.name, (0.02, 0.4))
            if not low <= value <= high:
                raise MeshError(item.name, f"is {value} m, allowed are {low} to {high} m; stay in that range")


@dataclass(frozen=True, eq=False)
class BodyStub(Frozen):
    """The rigid body round the door, in the door's axes; arrays are read-only.

    Parameters
    ----------
    door, shape
        Dimensions of the door and of the body.
    surfaces
        One closed prism per name: "latch_pillar", "latch_pillar_upper", "hinge_pillar",
        "hinge_pillar_upper", "rocker", "roof_rail"; and "flange", the open strip that carries the seal.
        Normals point outward.
    rim
        The line on which the closed door's inner face rests [m], belt at the hinge edge -> sill -> belt at
        the latch edge, shape (k, 3): the middle of the seal's top.
    outboard_sign
        +1 beside a right-hand door, -1 for its mirror image.
    """

    door: DoorShape
    shape: BodyShape
    surfaces: Mapping[str, Surface]
    rim: FloatArray
    outboard_sign: float = 1.0

    def __post_init__(self) -> None:
        """Freeze the arrays."""
        object.__setattr__(self, "rim", frozen_floats(self.rim, (None, 3), "rim"))
        object.__setattr__(self, "surfaces", dict(self.surfaces))

    def mirrored(self) -> BodyStub:
        """Return the mirror image in y = 0, for a left-hand door."""
        surfaces = {name: surface.mirrored() for name, surface in self.surfaces.items()}
        return dataclasses.replace(
            self,
            surfaces=surfaces,
            rim=self.rim * np.array([1.0, -1.0, 1.0]),
            outboard_sign=-self.outboard_sign,
        )

    def opposite_seat(self, edge: str, along_m: float, depth_m: float = 0.0) -> FloatArray:
        """Return the point [m], shape (3,), on the body across the gap from the door's edge.

        Parameters
        ----------
        edge
            "latch_edge", "hinge_edge" or "sill_edge".
        along_m
            Height z on an upright edge, x on the sill edge.
        depth_m
            How far inboard of the lip, 0 to the depth of the body's section.
        """
        if edge not in OPPOSITE:
            raise MeshError("edge", f"no edge named {edge!r}; there are {tuple(OPPOSITE)}")
        return self._placed(OPPOSITE[edge], along_m, depth_m)

    def seat_point(self, seat: str, along_m: float) -> FloatArray:
        """Return the point [m], shape (3,), of a seat named in `SEATS` at a height z or a distance x."""
        if seat not in SEATS:
            raise MeshError("seat", f"no seat named {seat!r}; there are {tuple(SEATS)}")
        depth = 0.5 * self.door.shut_face_depth_m if seat == "pillar_side" else 0.0
        return self._placed(seat, along_m, depth)

    def _placed(self, seat: str, along_m: float, depth_m: float) -> FloatArray:
        line = _seat_line(self.door, self.shape, seat)
        axis = SEATS[seat]
        if not line[0, axis] - 1e-9 <= along_m <= line[-1, axis] + 1e-9:
            raise MeshError(
                "along_m",
                f"is {along_m} m, the seat {seat} runs from {line[0, axis]:.4g} to "
                f"{line[-1, axis]:.4g} m; stay within it",
            )
        limit = self.shape.rocker_depth_m if seat == "rocker" else self.shape.pillar_depth_m
        if not 0.0 <= depth_m <= limit:
            raise MeshError("depth_m", f"is {depth_m} m, allowed are 0 to {limit} m (depth of the section)")
        point = np.array([np.interp(along_m, line[:, axis], line[:, other]) for other in range(3)])
        point[1] = self.outboard_sign * (point[1] - depth_m)
        return point


def build_body(door: DoorShape, shape: BodyShape | None = None) -> BodyStub:
    """Return the rigid body round a right-hand door; raises MeshError for bad dimensions of either."""
    body = BodyShape() if shape is None else shape
    door.check()
    body.check()
    surfaces = {name: prism(corners) for name, corners in _prisms(door, body).items()}
    surfaces["flange"] = _flange(door, body)
    rim = outline(door, -0.5 * body.flange_m, door.shut_face_depth_m)
    return BodyStub(door, body, surfaces, rim)


def prism(corners: FloatArray) -> Surface:
    """Return the closed hexahedron over eight corners [m], shape (8, 3), with its six faces as parts.

    Corner number = (1 if rear) + (2 if outer) + (4 if upper).
    """
    return Surface(corners, _BOX_TRIANGLES, np.repeat(np.arange(6), 2), FACES)


def outline(door: DoorShape, outward_m: float, depth_m: float) -> FloatArray:
    """Return the corners [m] belt hinge, sill hinge, sill latch, belt latch of the outline, shape (4, 3).

    It is the door's outline at a depth, each of the three edges moved outwards, parallel to itself.
    """
    corner = door.corners_at_depth(depth_m)
    hinge, latch = corner[3] - corner[0], corner[2] - corner[1]
    lean_hinge, lean_latch = hinge[0] / hinge[2], latch[0] / latch[2]
    low = corner[0, 2] - outward_m
    front = corner[0, 0] - outward_m * np.hypot(1.0, lean_hinge)
    rear = corner[1, 0] + outward_m * np.hypot(1.0, lean_latch)
    drop, rise = low - corner[0, 2], door.height_m - corner[0, 2]
    return np.array(
        [
            [front + lean_hinge * rise, -depth_m, door.height_m],
            [front + lean_hinge * drop, -depth_m, low],
            [rear + lean_latch * drop, -depth_m, low],
            [rear + lean_latch * rise, -depth_m, door.height_m],
        ]
    )


def frame_top(door: DoorShape, body: BodyShape) -> tuple[FloatArray, FloatArray]:
    """Return the body's corners [m] over the window frame's front and rear top, each (3,)."""
    belt_front, _, _, belt_rear = outline(door, body.gap_m, 0.0)
    up = np.array([0.0, -door.frame_lean_m, door.frame_height_m + body.gap_m])
    return (
        belt_front + up + [door.frame_rake_m, 0.0, 0.0],
        belt_rear + up - [FRAME_TOP_SHARE * door.length_m, 0.0, 0.0],
    )


def _swept(low: FloatArray, high: FloatArray, width_m: float, depth_m: float) -> FloatArray:
    """Return the corners of an upright prism from its two outer edge points; width < 0 goes forward."""
    across, inboard = np.array([width_m, 0.0, 0.0]), np.array([0.0, -depth_m, 0.0])
    corners = np.empty((8, 3))
    for level, base in ((0, low), (4, high)):
        front, rear = (base, base + across) if width_m > 0 else (base + across, base)
        corners[level + 2], corners[level + 3] = front, rear
        corners[level], corners[level + 1] = front + inboard, rear + inboard
    return corners


def _beam(front: FloatArray, rear: FloatArray, height_m: float, depth_m: float) -> FloatArray:
    """Return the corners of a lengthwise prism from its two outer edge points; height < 0 goes down."""
    up, inboard = np.array([0.0, 0.0, height_m]), np.array([0.0, -depth_m, 0.0])
    corners = np.empty((8, 3))
    for end, base in ((0, front), (1, rear)):
        low, high = (base, base + up) if height_m > 0 else (base + up, base)
        corners[end + 2], corners[end + 6] = low, high
        corners[end], corners[end + 4] = low + inboard, high + inboard
    return corners


def _prisms(door: DoorShape, body: BodyShape) -> dict[str, FloatArray]:
    belt_front, sill_front, sill_rear, belt_rear = outline(door, body.gap_m, 0.0)
    top_front, top_rear = frame_top(door, body)
    width, depth, upper = body.pillar_width_m, body.pillar_depth_m, body.upper_width_m
    past, beside = np.array([width, 0.0, 0.0]), np.array([upper, 0.0, 0.0])
    return {
        "latch_pillar": _swept(sill_rear, belt_rear, width, depth),
        "latch_pillar_upper": _swept(belt_rear, top_rear, upper, body.upper_depth_m),
        "hinge_pillar": _swept(sill_front, belt_front, -width, depth),
        "hinge_pillar_upper": _swept(belt_front, top_front, -upper, body.upper_depth_m),
        "rocker": _beam(sill_front - past, sill_rear + past, -body.rocker_height_m, body.rocker_depth_m),
        "roof_rail": _beam(top_front - beside, top_rear + beside, body.rail_height_m, body.upper_depth_m),
    }


def _flange(door: DoorShape, body: BodyShape) -> Surface:
    """Return the strip inboard of the closed door that carries the seal, facing outboard."""
    depth = door.shut_face_depth_m
    outer = outline(door, body.gap_m + door.shut_face_inset_m, depth)
    inner = outline(door, -body.flange_m, depth)
    points = np.concatenate((outer, inner)) - [0.0, body.seal_m, 0.0]
    quads = np.array([[i, i + 1, i + 5, i + 4] for i in range(3)])
    triangles = np.concatenate((quads[:, [0, 2, 1]], quads[:, [0, 3, 2]]))
    return Surface(points, triangles, np.zeros(6, dtype=np.int64), ("flange",))


def _seat_line(door: DoorShape, body: BodyShape, seat: str) -> FloatArray:
    """Return the two ends [m] of the line along which a seat of a right-hand door can be placed, (2, 3)."""
    belt_front, sill_front, sill_rear, belt_rear = outline(door, body.gap_m, 0.0)
    top_front, top_rear = frame_top(door, body)
    aside = np.array([0.25 * body.pillar_width_m, 0.0, 0.0])
    lines = {
        "pillar_edge": (sill_rear, belt_rear),
        "pillar_side": (sill_rear, belt_rear),
        "pillar_outside": (sill_rear + aside, belt_rear + aside),
        "hinge_pillar": (sill_front, belt_front),
        "rocker": (sill_front, sill_rear),
        "roof_rail": (top_front, top_rear),
    }
    return np.array(lines[seat])
