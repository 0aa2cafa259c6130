"""Edges of one part on the faces of another: node against triangle, as a law of the network.

A door's edge presses on the pillar beside it, on the rigid members round it and on the other door.  Each
node near a face of another part has one triangle to press on, chosen when an increment has converged: the
nearest, and of two that share their nearest edge the one it lies further outside of.  Its distance d to that
triangle's plane decides,

    energy = k <d - offset>_-^2 / 2,

the pressure of sheet on sheet (`sim.bond`) with the triangle's corners moving along.  The energy hangs on
places alone until the next choice, so it never pulls, comes on again after it has left, and turns with the
metal.  A choice keeps what a node pressed with: the offset of the new triangle is set so; a node found behind
a face it did not press on presses only from there on, and the offset goes back to nothing as it leaves.  No
friction.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import closest_on_pairs
from sim.bond import OFFSET, bond_forces, bond_stiffness, touch_law
from sim.law import Into
from sim.state import Evaluation, Load, State
from sim.structure import Structure
from sim.surround import Edges, Near

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

EDGE_ROWS, EDGE_PUSH = "edge rows", "edge push"
"""Kept: one row (node, corners (3), weights (3), offset [m], whose triangle) per chosen triangle.
Read: pushes (rows,) [N], >= 0."""
BESIDE_M = 0.005  # a node further than this past the end of the nearest face does not press on it
DEEP_M = 0.03  # nor one further behind it than this: it has come in by another way
ORDER = np.array([0, 0, 1, 2, 3, 1])
"""The six places of a bond (node, node, corners, first corner) among a pair's four."""


def planes(points: Floats, node: Ints, corners: Ints, weights: Floats) -> Floats:
    """Return the distance of nodes to their triangles' planes, outside positive, shape (k,) [m]."""
    a, b, c = (points[corners[:, i]] for i in range(3))
    normal = np.cross(b - a, c - a)
    foot = np.einsum("kc,kcx->kx", weights, points[corners])
    out: Floats = np.einsum("kx,kx->k", points[node] - foot, normal) / np.linalg.norm(normal, axis=1)
    return out


def chosen(near: Near, points: Floats, former: Floats | None) -> Floats:
    """Return the rows of `EDGE_ROWS` for where everything stands, (k, 9); ``former``: chosen before."""
    node, corners = near.pairs[:, 0], near.pairs[:, 1:]
    weights, gap2 = closest_on_pairs(points[node], points[corners])
    distance = planes(points, node, corners, weights)
    gap2 = np.maximum(gap2, 0.0)
    order = np.lexsort((-np.round(distance, 12), np.round(gap2, 12), near.pair_body, node))
    first = np.ones(len(order), bool)
    first[1:] = (np.diff(node[order]) != 0) | (np.diff(near.pair_body[order]) != 0)
    best = order[first]
    beside = np.sqrt(np.maximum(gap2[best] - distance[best] ** 2, 0.0))
    fits = (beside < BESIDE_M) & (distance[best] > -DEEP_M) & ((distance[best] >= 0.0) | (beside < 1.0e-6))
    best = best[fits]
    offset = np.minimum(distance[best], 0.0)
    if former is not None and len(former):
        pressed = _pressed(former, points)
        slot = {(int(row[0]), int(row[8])): deep for row, deep in zip(former, pressed, strict=True)}
        deep = np.array(
            [slot.get((int(n), int(b)), 0.0) for n, b in zip(node[best], near.pair_body[best], strict=True)]
        )
        offset = np.minimum(distance[best] + deep.reshape(-1), 0.0)
    return np.column_stack([node[best], corners[best], weights[best], offset, near.pair_body[best]]).astype(
        float
    )


def _pressed(rows: Floats, points: Floats) -> Floats:
    """Return how deep each row presses, shape (k,) [m], >= 0."""
    distance = planes(points, rows[:, 0].astype(np.int64), rows[:, 1:4].astype(np.int64), rows[:, 4:7])
    return np.maximum(rows[:, 7] - distance, 0.0)


class Edging:
    """All edges near faces of other parts."""

    name, line = "edges", ""
    means: Sequence[Ints] = ()

    def __init__(self, structure: Structure) -> None:
        surround = structure.surround
        assert surround is not None and surround.edges is not None
        self._edges: Edges = surround.edges
        self._near = surround.near
        self.elements: Ints = np.zeros((0, 4), np.int64)
        if self._near is not None:
            # what presses on a rigid face adds to its own node alone
            pairs = self._near.pairs
            soft = ~np.isin(pairs[:, 1], self._edges.rigid.ravel())
            self.elements = pairs[soft & np.isin(pairs[:, 0], self._near.coupled)]
        self._place = {tuple(row): i for i, row in enumerate(self.elements.tolist())}
        self._law = touch_law(pressure=self._edges.stiffness_n_per_m, offset_m=0.0)
        self._for: State | None = None
        self._read(np.zeros((0, 9)))

    def _from(self, state: State) -> bool:
        """Read the rows of an increment that begins in a state; return whether there are any."""
        if self._for is not state:
            self._for = state
            self._read(state.kept.get(EDGE_ROWS, np.zeros((0, 9))))
        return len(self._nodes) > 0

    def _read(self, rows: Floats) -> None:
        ids = rows[:, :4].astype(np.int64)
        count = len(rows)
        self._nodes = np.ascontiguousarray(ids[:, ORDER])
        self._rigid = np.isin(ids[:, 1], self._edges.rigid.ravel())
        self._rows = np.array([self._place.get(tuple(row), -1) for row in ids.tolist()], dtype=np.int64)
        coefficients = np.zeros((count, 3, 6))
        coefficients[:, 0, 0], coefficients[:, 0, 2:5] = 1.0, -rows[:, 4:7]
        coefficients[:, 1, 3], coefficients[:, 1, 2] = 1.0, -1.0
        coefficients[:, 2, 4], coefficients[:, 2, 2] = 1.0, -1.0
        self._coefficients = coefficients
        self._laws = np.tile(self._law, (count, 1))
        self._laws[:, OFFSET] = rows[:, 7]
        self._room = [np.zeros(count) for _ in range(5)]
        self._active, self._plane = np.zeros(count, bool), np.ones(count, bool)
        self._stiff = np.zeros((count, 18, 18))

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add what edges press with; fill ``ev.read`` with the pushes (rows,) [N], >= 0."""
        if not self._from(state):
            ev.stored[self.name], ev.read[EDGE_PUSH] = 0.0, np.zeros(0)
            return
        worst, opening, force, stored, spent = self._room
        bond_forces(
            points,
            self._nodes,
            self._coefficients,
            self._plane,
            self._laws,
            worst,
            self._plane,
            self._active,
            np.empty_like(worst),
            opening,
            force,
            stored,
            spent,
            ev.forces,
        )
        ev.stored[self.name] = float(stored.sum())
        ev.read[EDGE_PUSH] = np.maximum(-force, 0.0)

    def stiffness(self, ev: Evaluation, state: State, _: Load, into: Into) -> None:
        """Add the edges that press."""
        if not self._from(state):
            return
        active = ev.read[EDGE_PUSH] > 0.0
        if not active.any():
            return
        bond_stiffness(
            ev.points,
            self._nodes,
            self._coefficients,
            self._plane,
            self._laws,
            self._room[0],
            self._plane,
            False,
            active,
            self._stiff,
        )
        alone = active & self._rigid
        for node, k in zip(self._nodes[alone, 0].tolist(), self._stiff[alone], strict=True):
            own = k[:3, :3] + k[:3, 3:6] + k[3:6, :3] + k[3:6, 3:6]
            into.nodes(np.array([node]), own)
        both = active & (self._rows >= 0)
        into.group(0, self._rows[both], self._nodes[both], self._stiff[both], ORDER)
        self._add_uncoupled(np.flatnonzero(active & ~self._rigid & (self._rows < 0)), ev.points, into)

    def _add_uncoupled(self, rows: Ints, points: Floats, into: Into) -> None:
        """Add pairs not in the pattern, node by node: (a - sum w b)^2 <= 2 a^2 + 2 sum w b^2."""
        for row in rows.tolist():
            node, corners = int(self._nodes[row, 0]), self._nodes[row, 2:5]
            a, b, c = points[corners]
            normal = np.cross(b - a, c - a)
            k = 2.0 * self._edges.stiffness_n_per_m * np.outer(normal, normal) / float(normal @ normal)
            into.nodes(np.array([node]), k)
            for corner, weight in zip(corners, -self._coefficients[row, 0, 2:5], strict=True):
                into.nodes(np.array([corner]), max(float(weight), 0.0) * k)

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with the triangles chosen anew."""
        if self._near is None:
            return state
        rows = chosen(self._near, ev.points, state.kept.get(EDGE_ROWS))
        return replace(state, kept={**state.kept, EDGE_ROWS: rows})


def pressing(structure: Structure, state: State) -> Ints:
    """Return the nodes that press on metal that gives, where everything stands in a state, sorted."""
    rows = state.kept.get(EDGE_ROWS)
    edges = None if structure.surround is None else structure.surround.edges
    if rows is None or edges is None or not len(rows):
        return np.zeros(0, np.int64)
    soft = ~np.isin(rows[:, 1].astype(np.int64), edges.rigid.ravel())
    return np.unique(rows[soft & (_pressed(rows, state.points) > 0.0), 0].astype(np.int64))


def pushes(state: State, ev: Evaluation) -> tuple[Ints, Ints, Floats]:
    """Return node, whose face and push [N] of every row of an evaluation of a state, each shape (k,)."""
    rows = state.kept.get(EDGE_ROWS, np.zeros((0, 9)))
    return rows[:, 0].astype(np.int64), rows[:, 8].astype(np.int64), ev.read.get(EDGE_PUSH, np.zeros(0))
