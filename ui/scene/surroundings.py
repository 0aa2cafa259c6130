"""What stands round the door and never moves: body stub, ground with its grid, occupant."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from meshes.body import BodyStub
from meshes.box import BoxMesh
from meshes.fittings import build_fittings
from meshes.occupant import Capsule
from meshes.part import Surface
from meshes.side import SideMesh
from ui.scene import tubes

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Solid = tuple[Floats, Ints, Floats]

GRID_M = 0.10
GROUND_BELOW_SILL_M = 0.27
"""Assumed height of the sill edge over the ground; for the eye alone."""
FADE_M = 1.55
EDGE_PIECES = 12


@dataclass(frozen=True)
class Lot:
    """Where the ground lies and how far the car drawn on it reaches.

    Parameters
    ----------
    ground_m : height of the ground in the door's axes
    middle_m : place along the car that the grid and the shadow lie about
    longer_m : by how much the car is longer behind the front door than the one with a single door
    taller : factor on heights of the outline above the sill
    """

    ground_m: float = -GROUND_BELOW_SILL_M
    middle_m: float = 0.5
    longer_m: float = 0.0
    taller: float = 1.0


def lot_of(side: SideMesh) -> Lot:
    """Return the ground of a side, the outline of its car behind both doors and over its rail."""
    points = side.members["rear_pillar"].surface.points
    top = float(side.members["roof_rail"].surface.points[:, 2].max())
    longer = float(points[:, 0].max()) - _REAR_DOOR_END_M
    low = float(points[:, 0].max()) + float(side.members["front_pillar"].surface.points[:, 0].min())
    return Lot(side.shape.ground_z_m, 0.5 * low, longer, (top + 0.015) / _PROFILE[:, 1].max())


def member_solid(members: Sequence[BoxMesh]) -> Solid:
    """Return a side's members, ends and all, as one flat-shaded solid: as few triangles as they have."""
    return tubes.joined([tubes.flat_shaded(*_hull(item)) for item in members])


def member_edges(members: Sequence[BoxMesh]) -> Floats:
    """Return the long edges and the ends of members as segments, shape (k, 2, 3) [m]."""
    out = []
    for item in members:
        rings = _rings(item)
        out.append(np.stack((rings[:-1], rings[1:]), axis=2).reshape(-1, 2, 3))
        for ring in rings[[0, -1]]:
            out.append(np.stack((ring, np.roll(ring, -1, axis=0)), axis=1))
    return np.concatenate(out)


def _rings(item: BoxMesh) -> Floats:
    """Return the corners of a member at each of its sections, shape (cuts, 4, 3) [m]."""
    rings = np.stack([item.corners_at(float(row[0])) for row in item.cuts])
    outer = item.surface.points[:, 1]
    if abs(rings[..., 1].max() - outer.max()) > 1e-6:  # the cuts stay those of the right-hand member
        rings = rings * np.array([1.0, -1.0, 1.0])
    return np.asarray(rings)


def _hull(item: BoxMesh) -> tuple[Floats, Ints]:
    """Return a member's corners and the triangles of its walls and ends, normals outward."""
    rings = _rings(item)
    count, here = len(rings), np.arange(4)
    after = (here + 1) % 4
    faces = []
    for k in range(count - 1):
        low, high = 4 * k, 4 * k + 4
        faces += [np.column_stack((low + here, low + after, high + after))]
        faces += [np.column_stack((low + here, high + after, high + here))]
    last = 4 * (count - 1)
    faces += [np.array([[0, 2, 1], [0, 3, 2], [last, last + 1, last + 2], [last, last + 2, last + 3]])]
    triangles = np.concatenate(faces)
    points = rings.reshape(-1, 3)
    corner = points[triangles] - points.mean(axis=0)
    if np.einsum("ij,ij->", np.cross(corner[:, 0], corner[:, 1]), corner[:, 2]) < 0.0:
        triangles = triangles[:, ::-1]
    return points, triangles


def seat_solid(side: SideMesh) -> Solid:
    """Return the seats as one flat-shaded solid."""
    seats = [item.surface for item in build_fittings(side).items if item.kind == "seat"]
    return tubes.joined([tubes.flat_shaded(one.points, one.triangles) for one in seats])


def standing(body: BodyStub, still: Iterable[str]) -> BodyStub:
    """Return the body round a door without what does not stand still; its flange is always there."""
    kept = {"flange", *still}
    return replace(body, surfaces={name: one for name, one in body.surfaces.items() if name in kept})


def body_solid(body: BodyStub) -> Solid:
    """Return the body's prisms as one flat-shaded solid."""
    solids = [tubes.flat_shaded(surface.points, surface.triangles) for surface in body.surfaces.values()]
    return tubes.joined(solids)


def prisms(body: BodyStub) -> dict[str, Surface]:
    """Return the closed prisms among the body's surfaces by name."""
    return {name: s for name, s in body.surfaces.items() if len(s.points) == 8 and len(s.triangles) == 12}


def body_edges(body: BodyStub) -> Floats:
    """Return the prisms' edges as segments, (k, 2, 3) [m]: no diagonals, nothing inside another prism."""
    boxes = prisms(body)
    segments = []
    for name, surface in body.surfaces.items():
        if name in boxes:
            others = [other for key, other in boxes.items() if key != name]
            pieces = _pieces(surface.points[tubes.BOX_EDGES])
            segments.append(pieces[~_inside(pieces.mean(axis=1), others)])
            continue
        pairs = np.sort(surface.triangles[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2), axis=1)
        ends, count = np.unique(pairs, axis=0, return_counts=True)
        segments.append(surface.points[ends[count == 1]])
    return np.concatenate(segments)


def _pieces(segments: Floats) -> Floats:
    """Return segments cut into equal pieces, so that what is hidden inside a neighbour can be left out."""
    share = np.linspace(0.0, 1.0, EDGE_PIECES + 1)[:, None]
    points = segments[:, None, 0] * (1.0 - share) + segments[:, None, 1] * share
    return np.stack((points[:, :-1], points[:, 1:]), axis=2).reshape(-1, 2, 3)


def _inside(points: Floats, prisms: list[Surface]) -> NDArray[np.bool_]:
    """Return which points lie inside or on one of the convex prisms, shape (k,)."""
    found = np.zeros(len(points), dtype=bool)
    for prism in prisms:
        corner = prism.points[prism.triangles]
        normal = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0])
        normal /= np.linalg.norm(normal, axis=1)[:, None]
        height = points @ normal.T - (corner[:, 0] * normal).sum(axis=1)
        found |= (height < 1e-4).all(axis=1)
    return found


PLAIN_LOT = Lot()
DOOR_MIDDLE_M = 0.4
"""Height over the sill that the ground of a car on its side is drawn about; for the eye alone."""
DOWN_ARROW_M, DOWN_ARROW_UP_M = 0.5, -0.3
"""Length of the arrow that says where down is, and its height over the sill; for the eye alone."""


def grid_lines(sign: float, lot: Lot = PLAIN_LOT) -> Floats:
    """Return the ground's grid as segments of some steps each, shape (k, 2, 3) [m]; ``sign`` is outboard."""
    z = lot.ground_m
    xs = np.arange(-0.9, 2.0 + lot.longer_m + 1e-9, GRID_M)
    ys = np.arange(-1.1, 1.5 + 1e-9, GRID_M)
    step = 5
    runs = []
    for x in xs:
        for first in range(0, len(ys) - 1, step):
            last = min(first + step, len(ys) - 1)
            runs.append([[x, sign * ys[first], z], [x, sign * ys[last], z]])
    for y in ys:
        for first in range(0, len(xs) - 1, step):
            last = min(first + step, len(xs) - 1)
            runs.append([[xs[first], sign * y, z], [xs[last], sign * y, z]])
    return np.array(runs)


def grid_colours(points: Floats, sign: float, ground: Floats, line: Floats, lot: Lot = PLAIN_LOT) -> Floats:
    """Return the colours of grid points (n, 3), which fade into the ground away from the door, (n, 3)."""
    centre = np.array([lot.middle_m, sign * 0.15])
    away = np.linalg.norm(points[:, :2] - centre, axis=1)
    share = np.clip(1.15 - away / (FADE_M + 0.5 * lot.longer_m), 0.0, 1.0)[:, None]
    return share * line + (1.0 - share) * ground


def laid_on_side(lines: Floats, level_y_m: float) -> Floats:
    """Return lines of the flat ground, shape (k, 2, 3) [m], on the upright plane a car on its side lies on.

    What was across the car goes up it there, the sill's height where the door's middle was.
    """
    out: Floats = np.array(lines, dtype=float)
    out[..., 1], out[..., 2] = level_y_m, DOOR_MIDDLE_M + lines[..., 1]
    return out


def down_arrow(down: Floats, lot: Lot = PLAIN_LOT) -> Floats:
    """Return an arrow under the sill that points where things fall, as segments, shape (3, 2, 3) [m]."""
    foot = np.array([lot.middle_m, 0.0, DOWN_ARROW_UP_M]) - 0.5 * DOWN_ARROW_M * down
    head = foot + DOWN_ARROW_M * down
    back = 0.25 * DOWN_ARROW_M
    barbs = [head - back * down + side * 0.6 * back * np.array([1.0, 0.0, 0.0]) for side in (-1.0, 1.0)]
    return np.array([[foot, head], [head, barbs[0]], [head, barbs[1]]])


def shadow_patch(sign: float, lot: Lot = PLAIN_LOT) -> tuple[Floats, Ints, Floats]:
    """Return a soft shadow under the sill: points, triangles and darkness 0 .. 1 of each point."""
    z, half = lot.ground_m + 0.001, 0.95 + 0.5 * lot.longer_m
    xs = np.linspace(lot.middle_m - half, lot.middle_m + half, 20)
    ys = np.linspace(-0.75, 0.45, 16)
    grid = np.array([[x, sign * y, z] for y in ys for x in xs])
    quad = np.array(
        [[r * 20 + c, r * 20 + c + 1, r * 20 + c + 21, r * 20 + c + 20] for r in range(15) for c in range(19)]
    )
    triangles = np.concatenate((quad[:, [0, 1, 2]], quad[:, [0, 2, 3]]))
    u = np.clip(1 - np.abs(grid[:, 0] - lot.middle_m) / half, 0, 1)
    v = np.clip(1 - np.abs(sign * grid[:, 1] + 0.15) / 0.6, 0, 1)
    dark = (u * (2 - u)) * v * v * (3 - 2 * v)
    return grid, triangles, dark


def occupant_solid(capsules: tuple[Capsule, ...]) -> Solid:
    """Return the occupant's capsules as one smooth solid."""
    return tubes.joined([tubes.capsule(c.start, c.end, c.radius_m, 6, 16) for c in capsules])


# The car round the door, as lines: an invented low saloon, for the eye alone. Side view (x, z) [m].
_PROFILE = np.array([
    [-1.52, -0.02], [-1.56, 0.16], [-1.50, 0.36], [-1.20, 0.47], [-0.62, 0.56], [-0.22, 0.655], [0.05, 0.84],
    [0.36, 1.06], [0.62, 1.135], [1.00, 1.155], [1.42, 1.10], [1.86, 0.93], [2.22, 0.745], [2.62, 0.70],
    [2.78, 0.62], [2.81, 0.36], [2.80, 0.06], [2.70, -0.05],
])  # fmt: skip
_WHEELS = ((-0.86, 0.05), (1.92, 0.05))
_REAR_DOOR_END_M = 1.52
"""Where the rear pillar of the outline with a single door worked in metal would end, before its wheel."""
_WHEEL_RADIUS_M = 0.32
_ARCH_RADIUS_M = 0.37
_INBOARD_M = 0.02
_HALF_WIDTH_M = 0.86
_CURVE_PIECES = 6


def car_lines(sign: float, lot: Lot = PLAIN_LOT) -> Floats:
    """Return the side of the car as segments, shape (k, 2, 3) [m]: roof, bonnet, sill, arches and wheels."""
    profile = np.column_stack((_behind(_PROFILE[:, 0], lot), _PROFILE[:, 1]))
    profile[:, 1] *= np.where(profile[:, 1] > 0.0, lot.taller, 1.0)
    curves = [_curve(profile)]
    wheels = [(float(_behind(np.array([x]), lot)[0]), _WHEEL_RADIUS_M + lot.ground_m) for x, _ in _WHEELS]
    for x, z in wheels:
        turn = np.linspace(0.0, 2.0 * np.pi, 37)
        for radius in (_WHEEL_RADIUS_M, 0.62 * _WHEEL_RADIUS_M):
            curves.append(np.column_stack((x + radius * np.cos(turn), z + radius * np.sin(turn))))
        arch = np.linspace(np.pi + 0.28, -0.28, 22)
        curves.append(np.column_stack((x + _ARCH_RADIUS_M * np.cos(arch), z + _ARCH_RADIUS_M * np.sin(arch))))
    low = -0.10
    reach = np.sqrt(_ARCH_RADIUS_M**2 - (low - wheels[0][1]) ** 2)
    curves.append(np.array([[wheels[0][0] + reach, low], [-0.125, low]]))
    curves.append(np.array([[1.105 + lot.longer_m, low], [wheels[1][0] - reach, low]]))
    if not lot.longer_m:  # the shut lines of the rear door, where none is drawn in metal
        curves.append(np.array([[1.13, 0.66], [2.22, 0.70]]))
        curves.append(np.array([[1.86, 0.66], [1.80, 0.42], [1.66, 0.30]]))
    flat = np.concatenate([np.stack((c[:-1], c[1:]), axis=1) for c in curves])
    y = np.full(flat.shape[:2], -sign * _INBOARD_M)
    return np.stack((flat[..., 0], y, flat[..., 1]), axis=-1)


def _behind(x: Floats, lot: Lot) -> Floats:
    """Return places along the outline [m] with a longer car's further back from the front door on."""
    return np.asarray(x + lot.longer_m * np.clip((x - 0.4) / 0.7, 0.0, 1.0))


def floor_marks(sign: float, lot: Lot = PLAIN_LOT) -> Floats:
    """Return the car's outline seen from above, chalked on the ground, as segments, shape (k, 2, 3) [m]."""
    turn = np.linspace(0.0, 2.0 * np.pi, 73)
    ends = _behind(_PROFILE[[0, -1], 0], lot)
    middle, half_length = float(ends.mean()), 0.5 * float(ends[1] - ends[0])
    power = 0.34  # a rounded box
    x = middle + half_length * np.sign(np.cos(turn)) * np.abs(np.cos(turn)) ** power
    y = sign * (-_HALF_WIDTH_M + _HALF_WIDTH_M * np.sign(np.sin(turn)) * np.abs(np.sin(turn)) ** power)
    line = np.column_stack((x, y, np.full_like(x, 0.002 + lot.ground_m)))
    return np.stack((line[:-1], line[1:]), axis=1)


def _curve(points: Floats) -> Floats:
    """Return a smooth curve through points (n, 2): Catmull and Rom's spline [catmull-rom-1974]."""
    before = np.vstack((2 * points[0] - points[1], points[:-2]))
    after = np.vstack((points[2:], 2 * points[-1] - points[-2]))
    a, b = points[:-1], points[1:]
    t = np.linspace(0.0, 1.0, _CURVE_PIECES, endpoint=False)[:, None]
    pieces = 0.5 * (
        2 * a[:, None]
        + (b - before)[:, None] * t
        + (2 * before - 5 * a + 4 * b - after)[:, None] * t**2
        + (3 * a - before - 3 * b + after)[:, None] * t**3
    )
    return np.vstack((pieces.reshape(-1, 2), points[-1:]))
