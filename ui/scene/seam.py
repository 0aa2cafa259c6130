"""The seam as a line of stitches along the hem: closed, stretched, parted into loose ends on either lip."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from meshes.door import DoorMesh
from ui.scene import tubes

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

KINDS = ("seam", "weld")
REACH_M = 0.011
"""How far a stitch runs back from the lip over the skin and over the shut face: the hem and a little more."""
LIFT_M = 0.0018
RADIUS_M = 0.0027
SIDES, RINGS = 4, 6
COARSE_SIDES, COARSE_ROWS = 3, (0, 1, 4, 5)
"""Sides and points of a stitch where two doors are drawn and it is a few pixels wide."""
GONE_DAMAGE = 0.999
END_M, END_RATIO = 0.006, 1.25
"""How far the loose ends of a parted stitch stand off their lips, and how thick they are."""


@dataclass(frozen=True, eq=False)
class Stitches:
    """Where each stitch stands on the two sheets.

    skin, inner : node pairs of the hem edge, shape (k, 2);  share : place between them, shape (k,)
    deeper : node pairs one row down the shut face, (k, 2);  inward : nodes of the skin behind the lip, (k, 2)
    """

    skin: Ints
    inner: Ints
    deeper: Ints
    inward: Ints
    share: Floats

    @property
    def count(self) -> int:
        """Number of stitches."""
        return len(self.share)

    def ends(self, points: Floats) -> tuple[Floats, Floats]:
        """Return where each stitch leaves the skin and the inner flange [m], each (k, 3)."""
        return self.between(points, self.skin), self.between(points, self.inner)

    def between(self, points: Floats, pairs: Ints) -> Floats:
        """Return the places between node pairs, each at its stitch's share, shape (k, 3) [m]."""
        share = self.share[:, None]
        return points[pairs[:, 0]] * (1.0 - share) + points[pairs[:, 1]] * share

    def paths(self, points: Floats, damage: Floats | None = None) -> Floats:
        """Return each stitch as a polyline from skin round the lip to the shut face, (k, RINGS, 3) [m].

        One that has parted ends off either lip; what lies between has no thickness (`radii`).
        """
        skin, inner = self.ends(points)
        back = _unit(self.between(points, self.inward) - skin)
        down = _unit(self.between(points, self.deeper) - inner)
        lift_skin, lift_inner = -down, -back
        gap = inner - skin
        path = np.stack((
            skin + REACH_M * back + LIFT_M * lift_skin,
            skin + LIFT_M * (lift_skin + 0.3 * lift_inner),
            skin + 0.33 * gap + LIFT_M * (0.8 * lift_inner + 0.5 * lift_skin),
            skin + 0.67 * gap + LIFT_M * (lift_inner + 0.2 * lift_skin),
            inner + LIFT_M * lift_inner,
            inner + REACH_M * down + LIFT_M * lift_inner,
        ), axis=1)  # fmt: skip
        if damage is not None:
            gone = damage >= GONE_DAMAGE
            path[gone, 2] = path[gone, 1] + END_M * _unit(lift_inner + lift_skin)[gone]
            path[gone, 3] = path[gone, 4] + END_M * lift_inner[gone]
        return path

    def radii(self, damage: Floats) -> Floats:
        """Return the stitches' radii, thinner as they stretch; parted ones run out, shape (k, RINGS) [m]."""
        size = np.repeat((RADIUS_M * (1.0 - 0.45 * damage))[:, None], RINGS, axis=1)
        size[damage >= GONE_DAMAGE] = END_RATIO * RADIUS_M * np.array([1.0, 1.0, 0.0, 0.0, 1.0, 1.0])
        return size

    def triangles(self) -> Ints:
        """Return the triangles of all stitches."""
        return tubes.tube_triangles(self.count, RINGS, SIDES)


def _unit(vectors: Floats) -> Floats:
    return vectors / np.maximum(np.linalg.norm(vectors, axis=1), 1e-12)[:, None]


def make_stitches(model, mesh: DoorMesh | None = None, first: int = 0) -> Stitches:
    """Return the stitches of one door of a model, one per seam point (or weld) in their order.

    Parameters
    ----------
    mesh, first : the door's mesh and its first node in the model; the model's own door when not given
    """
    mesh = model.mesh if mesh is None else mesh
    bonds = model.structure.bonds
    mask = _seam_points(bonds)
    mask[mask] = own_points(model, mesh, first)
    nodes, weights = bonds.nodes[mask], bonds.coefficients[mask, 0, :]
    skin, inner, deeper = nodes[:, 0:2], nodes[:, 2:4], nodes[:, 4:6]
    return Stitches(skin, inner, deeper, _behind_lip(mesh, model.start.points, first, skin), weights[:, 1])


def own_points(model, mesh: DoorMesh, first: int) -> Bools:
    """Return which of a model's seam points belong to a door, shape (seam points,)."""
    bonds = model.structure.bonds
    node = bonds.nodes[_seam_points(bonds), 0]
    own: Bools = (node >= first) & (node < first + mesh.surface.node_count)
    return own


def _seam_points(bonds) -> Bools:
    mask = np.zeros(len(bonds.kind), dtype=bool)
    for kind in KINDS:
        mask |= bonds.of(kind)
    return mask


def _behind_lip(mesh: DoorMesh, rest: Floats, first: int, pairs: Ints) -> Ints:
    """Return the skin's node that lies most squarely behind each node of the hem, shape like ``pairs``."""
    skin = mesh.surface.triangles_of("outer_skin") + first
    hem = mesh.hem_skin + first
    lip = set(hem.tolist())
    behind = {}
    middle = rest[hem].mean(axis=0)
    for node in np.unique(pairs):
        around = np.unique(skin[(skin == node).any(axis=1)])
        free = [n for n in around if int(n) not in lip]
        candidates = free or [n for n in around if n != node]
        direction = middle - rest[node]
        score = [
            direction @ (rest[n] - rest[node]) / np.linalg.norm(rest[n] - rest[node]) for n in candidates
        ]
        behind[int(node)] = int(candidates[int(np.argmax(score))])
    return np.array([[behind[int(n)] for n in pair] for pair in pairs], dtype=np.int64).reshape(-1, 2)
