"""The door's two sheets as they are drawn: rounded metal with folds as dark lines, nodes where they are."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import connected_components

from ui.scene.smooth import Edges, Fine, face_crosses, find_edges, fold_angles, refine, split_corners

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

TRIANGLE_BUDGET = 10_000
"""Most drawn triangles of both sheets together, on a machine that draws without a graphics card."""

FOLD_SEEN_RAD, FOLD_FULL_RAD = np.radians(22.0), np.radians(60.0)
"""A fold begins to show as a line at the first angle beyond rest and is full at the second."""
FOLD_LENGTH = 4
"""Edges a fold must run over to show: one alone is a dent, told by the light on it."""

KEY_LIGHT = np.array([-0.42, 0.62, 0.66]) / np.linalg.norm([-0.42, 0.62, 0.66])
"""Where the baked light stands: over the viewer's left shoulder, outside the car."""

HORIZON, HORIZON_SOFT, HORIZON_SHARE = 0.03, 0.06, 0.07
"""Minus the normal's upward part where the mirrored horizon lies, how soft and how bright it is."""
STRIP_AT, STRIP_SOFT, STRIP_SHARE, STRIP_LEAN = 0.03, 0.035, 0.10, -0.35
"""The same of the mirrored strip of light, by the normal's part along the car, and how it leans."""
GLOSS_LESS = 0.07
"""What the sheet gives of its own tone for what it mirrors: bright spots stay below the paper."""


def choose_levels(skin_count: int, inner_count: int, budget: int = TRIANGLE_BUDGET) -> tuple[int, int]:
    """Return how often to split skin and inner triangles within the budget; the skin goes first."""
    for levels in ((2, 2), (2, 1), (1, 1), (1, 0)):
        if skin_count * 4 ** levels[0] + inner_count * 4 ** levels[1] <= budget:
            return levels
    return 0, 0


@dataclass(frozen=True, eq=False)
class Sheet:
    """One sheet made fine.

    nodes : ids in the model of its coarse points, shape (n,)
    triangle_ids : coarse triangles in the model, shape (m,)
    to_drawn : sparse (d, n), its nodes to drawn points (doubled along sharp edges)
    triangles : over drawn points;  source : fine point of each drawn point;  parent : coarse triangle of each
    coarse : its coarse triangles over 0 .. n;  lines : drawn points along each coarse edge, (e, k)
    """

    nodes: Ints
    triangle_ids: Ints
    coarse: Ints
    fine: Fine
    to_drawn: sparse.csr_array
    triangles: Ints
    source: Ints
    gather: sparse.csr_array
    from_faces: sparse.csr_array
    lines: Ints
    edges: Edges
    rest_fold: Floats
    always: Bools

    def drawn_points(self, points: Floats) -> Floats:
        """Return the drawn points [m] for the model's points, shape (d, 3)."""
        return self.to_drawn @ points[self.nodes]

    def drawn_normals(self, drawn: Floats) -> Floats:
        """Return unit normals of the drawn points, smooth up to sharp edges, shape (d, 3)."""
        normals = self.gather @ face_crosses(drawn, self.triangles)
        return normals / np.maximum(np.linalg.norm(normals, axis=1), 1e-30)[:, None]

    def fold_strength(self, points: Floats) -> Floats:
        """Return how plainly each coarse edge shows as a line, 0 .. 1, shape (e,)."""
        angle = fold_angles(points[self.nodes], self.coarse, self.edges)
        turned = np.abs(angle - self.rest_fold)
        strength = np.clip((turned - FOLD_SEEN_RAD) / (FOLD_FULL_RAD - FOLD_SEEN_RAD), 0.0, 1.0)
        strength = np.where(self._long_enough((strength > 0.0) & ~self.always), strength, 0.0)
        return np.where(self.always, 1.0, strength)

    def _long_enough(self, folded: Bools) -> Bools:
        """Return which folded edges belong to a run of `FOLD_LENGTH` or more, shape (e,)."""
        ends = self.edges.ends[folded]
        if not len(ends):
            return folded
        size = len(self.nodes)
        graph = sparse.coo_array((np.ones(len(ends)), (ends[:, 0], ends[:, 1])), shape=(size, size))
        _, run = connected_components(graph, directed=False)
        of_edge = run[ends[:, 0]]
        out = folded.copy()
        out[folded] = np.bincount(of_edge)[of_edge] >= FOLD_LENGTH
        return out

    def values_at_points(self, per_triangle: Floats) -> Floats:
        """Return values of the model's triangles (m_model,) spread smoothly over the drawn points, (d,)."""
        return self.from_faces @ per_triangle[self.triangle_ids]


def make_sheet(points: Floats, triangles: Ints, triangle_ids: Ints, levels: int) -> Sheet:
    """Return a sheet from the model's rest points and its own triangles (ids in the model)."""
    nodes, local = np.unique(triangles, return_inverse=True)
    coarse = local.reshape(-1, 3).astype(np.int64)
    rest = points[nodes]
    fine = refine(rest, coarse, levels)
    drawn, source = split_corners(fine.triangles, fine.edges, fine.sharp)
    gather = _incidence(drawn, len(source))
    edges = find_edges(coarse)
    rest_fold = fold_angles(rest, coarse, edges)
    first_drawn = np.zeros(int(source.max()) + 1, dtype=np.int64)
    first_drawn[source[::-1]] = np.arange(len(source))[::-1]
    always = (edges.sides[:, 1] < 0) | (rest_fold > np.radians(35.0))
    from_faces = _mean_of_corners(coarse, fine, source, len(nodes))
    return Sheet(
        nodes,
        triangle_ids,
        coarse,
        fine,
        sparse.csr_array(fine.to_fine[source]),
        drawn,
        source,
        gather,
        from_faces,
        first_drawn[fine.along],
        edges,
        rest_fold,
        always,
    )


def _incidence(triangles: Ints, count: int) -> sparse.csr_array:
    """Return the matrix that sums over the triangles round each point, shape (count, m)."""
    faces = np.repeat(np.arange(len(triangles)), 3)
    ones = np.ones(triangles.size)
    return sparse.csr_array((ones, (triangles.reshape(-1), faces)), shape=(count, len(triangles)))


def _mean_of_corners(coarse: Ints, fine: Fine, source: Ints, count: int) -> sparse.csr_array:
    """Return the matrix from coarse triangle values to drawn points: mean at nodes, then straight between."""
    around = _incidence(coarse, count)
    degree = np.asarray(around.sum(axis=1)).reshape(-1)
    to_nodes = sparse.diags_array(1.0 / np.maximum(degree, 1.0)) @ around
    weights = abs(fine.to_fine[source])  # the butterfly's negative weights would make spots; use sizes only
    weights = sparse.diags_array(1.0 / np.asarray(weights.sum(axis=1)).reshape(-1)) @ weights
    return sparse.csr_array(weights @ to_nodes)


def shade(normals: Floats, tone: Floats, sign: float, *, contrast: float = 1.0) -> Floats:
    """Return tones (3,) or (n, 3) with a soft fixed light baked in, shape (n, 3).

    Half-space light from outside and above, so that a fold turns from light to dark whatever the camera does.
    ``sign`` is the outboard direction: +1 on a right-hand door.
    """
    lit = 0.5 + 0.5 * (normals @ (KEY_LIGHT * [1.0, sign, 1.0]))
    factor = 1.0 + contrast * (0.42 * (lit - 0.78))
    return np.clip(tone * factor[:, None], 0.0, 1.0)


def polished(normals: Floats, tone: Floats, sign: float) -> Floats:
    """Return the tones of painted sheet: `shade`, a horizon and a soft strip of light mirrored in it, (n, 3).

    A mirrored edge moves twice as far as the metal turns, so a dent too shallow to throw a shadow bends it.
    ``sign`` is the outboard direction: +1 on a right-hand door.
    """
    up = np.tanh((normals[:, 2] + HORIZON) / HORIZON_SOFT)
    across = normals[:, 0] + STRIP_LEAN * normals[:, 2]
    strip = np.exp(-0.5 * ((across - STRIP_AT) / STRIP_SOFT) ** 2)
    facing = np.clip(sign * normals[:, 1], 0.0, 1.0)
    gloss = facing * (HORIZON_SHARE * up + STRIP_SHARE * strip - GLOSS_LESS)
    return np.clip(shade(normals, tone, sign) * (1.0 + gloss)[:, None], 0.0, 1.0)
