"""Finer triangles for drawing: every node stays where the mechanics put it, the metal between is rounded.

An interpolating scheme: on smooth metal the eight-point butterfly mask, along rims and sharp edges the
four-point curve mask [dyn-levin-gregory-1987, dyn-levin-gregory-1990]. Both are linear, so one sparse
matrix made once maps the nodes to the drawn points of every frame.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import connected_components

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

TENSION = 1.0 / 16.0
"""Weight of the outer points in the masks; 0 would give flat triangles."""

SHARP_ANGLE_RAD = np.radians(35.0)
"""Edges that turn by more than this at rest stay sharp, and curves that turn by more have a corner there."""


@dataclass(frozen=True, eq=False)
class Edges:
    """The edges of a triangle mesh.

    ends : shape (e, 2), each once;  of_triangle : shape (m, 3), the edge facing each corner
    sides : shape (e, 2), the triangles on both sides, -1 where there is none
    """

    ends: Ints
    of_triangle: Ints
    sides: Ints


def find_edges(triangles: Ints) -> Edges:
    """Return the edges of a manifold mesh; raises ValueError where three triangles share an edge."""
    pairs = np.sort(triangles[:, [[1, 2], [2, 0], [0, 1]]].reshape(-1, 2), axis=1)
    ends, index, count = np.unique(pairs, axis=0, return_inverse=True, return_counts=True)
    if len(count) and count.max() > 2:
        raise ValueError("three triangles share an edge")
    index = index.reshape(-1)
    order = np.argsort(index, kind="stable")
    sides = np.full((len(ends), 2), -1, dtype=np.int64)
    first = np.concatenate(([0], np.cumsum(count)[:-1]))
    sides[:, 0] = order[first] // 3
    two = count == 2
    sides[two, 1] = order[first[two] + 1] // 3
    return Edges(ends, index.reshape(-1, 3), sides)


def face_crosses(points: Floats, triangles: Ints) -> Floats:
    """Return the cross products of the triangles' edges (twice area times normal), shape (m, 3)."""
    a, b, c = (points[triangles[:, i]] for i in range(3))
    u, v = b - a, c - a
    out = np.empty_like(u)
    out[:, 0] = u[:, 1] * v[:, 2] - u[:, 2] * v[:, 1]
    out[:, 1] = u[:, 2] * v[:, 0] - u[:, 0] * v[:, 2]
    out[:, 2] = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    return out


def fold_angles(points: Floats, triangles: Ints, edges: Edges) -> Floats:
    """Return how far the metal turns across each edge [rad], 0 at rims, shape (e,)."""
    cross = face_crosses(points, triangles)
    unit = cross / np.maximum(np.linalg.norm(cross, axis=1), 1e-30)[:, None]
    both = edges.sides[:, 1] >= 0
    angle = np.zeros(len(edges.ends))
    cosine = np.einsum("ij,ij->i", unit[edges.sides[both, 0]], unit[edges.sides[both, 1]])
    angle[both] = np.arccos(np.clip(cosine, -1.0, 1.0))
    return angle


@dataclass(frozen=True, eq=False)
class Fine:
    """A mesh made finer.

    to_fine : sparse (n_fine, n), nodes to drawn points;  triangles : (m 4^levels, 3)
    sharp : shape (edges of the fine mesh,), rims and sharp edges;  edges : the fine mesh's edges
    along : shape (e, 2^levels + 1), fine points along each edge of the coarse mesh
    parent : shape (m 4^levels,), coarse triangle of each fine one
    """

    to_fine: sparse.csr_array
    triangles: Ints
    edges: Edges
    sharp: Bools
    along: Ints
    parent: Ints


def refine(points: Floats, triangles: Ints, levels: int) -> Fine:
    """Return the mesh after ``levels`` splits of every triangle into four, sharp where ``points`` are."""
    count = len(points)
    edges = find_edges(triangles)
    sharp = (edges.sides[:, 1] < 0) | (fold_angles(points, triangles, edges) > SHARP_ANGLE_RAD)
    total = sparse.eye_array(count, format="csr")
    along = edges.ends.copy()
    parent = np.arange(len(triangles))
    rest = points
    for _ in range(levels):
        step = _split_matrix(rest, triangles, edges, sharp)
        middle = len(rest) + np.arange(len(edges.ends))
        along = _with_middles(along, edges, middle)
        triangles = _split_triangles(triangles, middle[edges.of_triangle])
        half = np.sort(
            np.concatenate(
                (np.column_stack((edges.ends[:, 0], middle)), np.column_stack((edges.ends[:, 1], middle)))
            ),
            axis=1,
        )
        half_sharp = half[np.tile(sharp, 2)]
        total, rest = step @ total, step @ rest
        parent = np.tile(parent, 4)
        edges = find_edges(triangles)
        sharp = np.isin(_keys(edges.ends, len(rest)), _keys(half_sharp, len(rest)))
    return Fine(sparse.csr_array(total), triangles, edges, sharp, along, parent)


def _keys(pairs: Ints, count: int) -> Ints:
    return pairs[:, 0] * np.int64(count) + pairs[:, 1]


def _split_triangles(triangles: Ints, middles: Ints) -> Ints:
    a, b, c = triangles.T
    ma, mb, mc = middles.T
    return np.concatenate(
        (
            np.column_stack((a, mc, mb)),
            np.column_stack((b, ma, mc)),
            np.column_stack((c, mb, ma)),
            np.column_stack((ma, mb, mc)),
        )
    )


def _with_middles(along: Ints, edges: Edges, middle: Ints) -> Ints:
    """Return the polylines with the middle of each of their segments put in."""
    count = int(edges.ends.max()) + 1
    keys = _keys(edges.ends, count)
    pairs = np.sort(np.stack((along[:, :-1], along[:, 1:]), axis=-1).reshape(-1, 2), axis=1)
    found = middle[np.searchsorted(keys, _keys(pairs, count))].reshape(len(along), -1)
    out = np.empty((len(along), 2 * along.shape[1] - 1), dtype=np.int64)
    out[:, ::2], out[:, 1::2] = along, found
    return out


def _split_matrix(rest: Floats, triangles: Ints, edges: Edges, sharp: Bools) -> sparse.csr_array:
    """Return the matrix (n + e, n) that keeps the points and adds one on every edge."""
    count, rows, columns, values = len(rest), [], [], []

    def add(edge: Ints, node: Ints, weight: float) -> None:
        rows.append(edge)
        columns.append(node)
        values.append(np.full(len(edge), weight))

    smooth = np.flatnonzero(~sharp)
    a, b = edges.ends[smooth].T
    add(smooth, a, 0.5)
    add(smooth, b, 0.5)
    for side in (0, 1):
        triangle = edges.sides[smooth, side]
        tip_slot = np.argmax(edges.of_triangle[triangle] == smooth[:, None], axis=1)
        tip = triangles[triangle, tip_slot]
        add(smooth, tip, 2.0 * TENSION)
        for turn in (1, 2):
            slot = (tip_slot + turn) % 3
            _add_wing(add, smooth, triangles, edges, sharp, triangle, slot)
    _add_curves(add, rest, edges, sharp)
    row, column, value = np.concatenate(rows), np.concatenate(columns), np.concatenate(values)
    new = sparse.csr_array((value, (row, column)), shape=(len(edges.ends), count))
    return sparse.csr_array(sparse.vstack((sparse.eye_array(count), new)))


def _add_wing(
    add, smooth: Ints, triangles: Ints, edges: Edges, sharp: Bools, triangle: Ints, slot: Ints
) -> None:
    """Add the far corner across one edge of the triangle; across rims and sharp edges its mirror point."""
    across = edges.of_triangle[triangle, slot]
    corner = triangles[triangle, slot]
    ends = edges.ends[across]
    other = np.where(edges.sides[across, 0] == triangle, edges.sides[across, 1], edges.sides[across, 0])
    there = ~sharp[across]
    far_slot = np.argmax(edges.of_triangle[other[there]] == across[there, None], axis=1)
    add(smooth[there], triangles[other[there], far_slot], -TENSION)
    gone = ~there  # the mirror point of a parallelogram: end + end - corner
    for node, weight in ((ends[gone, 0], -TENSION), (ends[gone, 1], -TENSION), (corner[gone], TENSION)):
        add(smooth[gone], node, weight)


def _add_curves(add, rest: Floats, edges: Edges, sharp: Bools) -> None:
    """Add the four-point mask along rims and sharp edges; at corners the curve goes on straight."""
    ids = np.flatnonzero(sharp)
    a, b = edges.ends[ids].T
    neighbours: dict[int, list[int]] = {}
    for first, second in edges.ends[ids]:
        neighbours.setdefault(int(first), []).append(int(second))
        neighbours.setdefault(int(second), []).append(int(first))
    add(ids, a, 0.5 + TENSION)
    add(ids, b, 0.5 + TENSION)
    for near, far in ((a, b), (b, a)):
        beyond = np.array(
            [_beyond(rest, neighbours, int(n), int(f)) for n, f in zip(near, far, strict=True)],
            dtype=np.int64,
        )
        there = beyond >= 0
        add(ids[there], beyond[there], -TENSION)
        add(ids[~there], near[~there], -2.0 * TENSION)
        add(ids[~there], far[~there], TENSION)


def _beyond(rest: Floats, neighbours: dict[int, list[int]], near: int, far: int) -> int:
    """Return the next point of the curve behind ``near``, or -1 at an end, a junction or a corner."""
    others = [n for n in neighbours[near] if n != far]
    if len(others) != 1:
        return -1
    u, v = rest[near] - rest[far], rest[others[0]] - rest[near]
    cosine = float(u @ v / (np.linalg.norm(u) * np.linalg.norm(v)))
    return others[0] if cosine > np.cos(SHARP_ANGLE_RAD) else -1


def split_corners(triangles: Ints, edges: Edges, sharp: Bools) -> tuple[Ints, Ints]:
    """Return triangles over points that are doubled along sharp edges, and the old point of each new one.

    Smooth shading may then run over smooth metal and stop at a sharp edge.
    """
    inner = np.flatnonzero(~sharp & (edges.sides[:, 1] >= 0))
    left, right = edges.sides[inner].T
    links = []
    for end in (0, 1):
        node = edges.ends[inner, end]
        first = 3 * left + np.argmax(triangles[left] == node[:, None], axis=1)
        second = 3 * right + np.argmax(triangles[right] == node[:, None], axis=1)
        links.append(np.column_stack((first, second)))
    pairs = np.concatenate(links)
    size = 3 * len(triangles)
    graph = sparse.coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(size, size))
    count, label = connected_components(graph, directed=False)
    source = np.empty(count, dtype=np.int64)
    source[label] = triangles.reshape(-1)
    return label.reshape(-1, 3).astype(np.int64), source
