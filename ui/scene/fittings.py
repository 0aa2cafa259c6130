"""What is fixed to the sheets: bar, window frame, belt strips, latch, striker and hinges, as drawn solids.

Sizes are for the eye alone; where the parts stand, and how they turn, comes from the model's nodes.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from meshes.door import DoorMesh
from ui.scene import tubes

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Solid = tuple[Floats, Ints, Floats]

BAR_RADIUS_M = 0.016
FRAME_RADIUS_M = 0.013
STRIP_RADIUS_M = 0.005
SIDES = 9


@dataclass(frozen=True, eq=False)
class Rods:
    """The parts drawn as round rods along chains of nodes.

    chains : ids;  radii : [m], one each;  triangles : over the ring points of all
    """

    chains: tuple[Ints, ...]
    radii: tuple[float, ...]
    triangles: Ints

    def points(self, points: Floats) -> tuple[Floats, Floats]:
        """Return ring points and normals for the model's points."""
        made = [
            tubes.tube_points(points[ids][None], radius, SIDES)
            for ids, radius in zip(self.chains, self.radii, strict=True)
        ]
        return np.concatenate([m[0] for m in made]), np.concatenate([m[1] for m in made])


def make_rods(chains: list[tuple[Ints, float]]) -> Rods:
    """Return rods along chains of nodes with their radii [m]."""
    triangles, shift = [], 0
    for ids, _ in chains:
        length = len(ids)
        triangles.append(tubes.tube_triangles(1, length, SIDES) + shift)
        shift += length * SIDES
    return Rods(tuple(c[0] for c in chains), tuple(c[1] for c in chains), np.concatenate(triangles))


def striped_tones(length: int, plain: Floats, stripe: Floats) -> Floats:
    """Return tones of one rod's ring points with fine stripes along it, shape (length SIDES, 3)."""
    around = np.arange(SIDES) % 3 == 0
    return np.tile(np.where(around[:, None], stripe, plain), (length, 1))


@dataclass(frozen=True, eq=False)
class Rigid:
    """A solid carried along by a set of nodes without changing its own shape.

    solid : where it stands at rest;  nodes : ids it follows, empty for what stands still
    """

    solid: Solid
    nodes: Ints
    rest: Floats

    def points(self, points: Floats) -> tuple[Floats, Floats]:
        """Return its points and normals for the model's points."""
        if not len(self.nodes):
            return self.solid[0], self.solid[2]
        turn, centre, start = best_turn(self.rest, points[self.nodes])
        return (self.solid[0] - start) @ turn.T + centre, self.solid[2] @ turn.T


def best_turn(rest: Floats, now: Floats) -> tuple[Floats, Floats, Floats]:
    """Return the rotation that best carries points (k, 3) to their new places, and both centres.

    The orthogonal Procrustes solution [kabsch-1976].
    """
    start, centre = rest.mean(axis=0), now.mean(axis=0)
    u, _, vt = np.linalg.svd((rest - start).T @ (now - centre))
    flip = np.diag([1.0, 1.0, np.sign(np.linalg.det(vt.T @ u.T)) or 1.0])
    return vt.T @ flip @ u.T, centre, start


def _block(centre: Floats, half: tuple[float, float, float], axes: Floats) -> Solid:
    return tubes.flat_shaded(tubes.box_corners(centre, axes, half), tubes.box_triangles())


def _rod(start: Floats, end: Floats, radius: float) -> Solid:
    line = np.linspace(start, end, 2)[None]
    points, normals = tubes.tube_points(line, radius, SIDES, up=(0.31, 0.83, 0.46))
    return points, tubes.tube_triangles(1, 2, SIDES), normals


def latch_and_hinges(
    mesh: DoorMesh, points: Floats, first: int = 0, carried: Mapping[str, Ints] | None = None
) -> list[Rigid]:
    """Return latch, striker and both hinges, each half with the side that carries it.

    Parameters
    ----------
    points : of the whole model at rest [m], shape (n, 3);  first : the door's first node among them
    carried : nodes that carry the other half of "latch" (the striker), "lower_hinge", "upper_hinge"; what
        is not named stands still
    """
    none = np.zeros(0, dtype=np.int64)
    sets, sign = {name: ids + first for name, ids in mesh.surface.nodes.items()}, mesh.outboard_sign
    other = {"latch": none, "lower_hinge": none, "upper_hinge": none, **(carried or {})}
    out = np.array([0.0, sign, 0.0])
    parts = []
    latch = sets["latch_plate"]
    centre = points[latch].mean(axis=0)
    rear = np.array([1.0, 0.0, 0.0])
    axes = np.array([rear, out, [0.0, 0.0, 1.0]])
    box = _block(centre - 0.026 * rear, (0.022, 0.034, 0.042), axes)
    parts.append(Rigid(box, latch, points[latch]))
    gap = 0.006 + mesh.shape.shut_face_inset_m
    parts.append(Rigid(_striker(centre, rear, out, gap + 0.006), other["latch"], points[other["latch"]]))
    for name in ("lower_hinge", "upper_hinge"):
        ids = sets[name]
        at = points[ids].mean(axis=0)
        door_half, body_half = _hinge(at, axes, gap)
        parts.append(Rigid(door_half, ids, points[ids]))
        parts.append(Rigid(body_half, other[name], points[other[name]]))
    return parts


def _striker(centre: Floats, rear: Floats, out: Floats, gap: float) -> Solid:
    """Return the loop that stands out of the pillar into the latch."""
    root, tip = centre + (gap + 0.004) * rear, centre - 0.004 * rear
    legs = [_rod(root + s * 0.016 * out, tip + s * 0.016 * out, 0.0055) for s in (-1, 1)]
    plate = _block(root, (0.003, 0.030, 0.024), np.array([rear, out, [0, 0, 1.0]]))
    return tubes.joined([*legs, _rod(tip - 0.0215 * out, tip + 0.0215 * out, 0.0055), plate])


def _hinge(at: Floats, axes: Floats, gap: float) -> tuple[Solid, Solid]:
    """Return the door's and the body's half of a hinge: a leaf each and their share of the knuckle."""
    rear, out, up = axes
    pin = at - 0.5 * gap * rear + 0.012 * out
    door = [
        _block(at + 0.004 * rear, (0.004, 0.034, 0.030), axes),
        _rod(pin - 0.012 * up, pin + 0.012 * up, 0.010),
    ]
    front = at - gap * rear
    body = [
        _block(front, (0.004, 0.034, 0.030), axes),
        _rod(pin - 0.032 * up, pin - 0.013 * up, 0.010),
        _rod(pin + 0.013 * up, pin + 0.032 * up, 0.010),
    ]
    return tubes.joined(door), tubes.joined(body)
