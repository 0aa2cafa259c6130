"""Closest points on triangles, in plain vectorised numpy: only those a tree of centres leaves possible."""

from __future__ import annotations

import itertools

import numpy as np

from meshes.part import FloatArray, IntArray, MeshError

PAIRS_AT_ONCE = 100_000
"""Point-triangle pairs worked on together: bounds the memory to some 30 MB."""


def nearest_on_triangles(
    queries: FloatArray, points: FloatArray, triangles: IntArray
) -> tuple[IntArray, FloatArray, FloatArray]:
    """Return row in `triangles` (k,), barycentric weights (k, 3) and distance [m] (k,) of the closest points.

    Ties go to the lower row. Triangles must have area.

    Parameters
    ----------
    queries
        Positions [m], shape (k, 3).
    points, triangles
        Node positions [m] (n, 3) and node ids (m, 3) with m >= 1.
    """
    if queries.ndim != 2 or queries.shape[1] != 3:
        raise MeshError("points", f"has shape {queries.shape}, expected (k, 3)")
    if len(triangles) == 0:
        raise MeshError("parts", "hold no triangle; name at least one part that has some")
    corner = points[triangles]
    found = np.empty(len(queries), dtype=np.int64)
    weights, distance = np.empty((len(queries), 3)), np.empty(len(queries))
    query, row = _candidates(queries, corner)
    first = np.searchsorted(query, np.arange(len(queries) + 1))
    start = 0
    while start < len(queries):
        end = max(start + 1, int(np.searchsorted(first, first[start] + PAIRS_AT_ONCE, side="right")) - 1)
        pairs = slice(first[start], first[end])
        best = _best(query[pairs], *closest_on_pairs(queries[query[pairs]], corner[row[pairs]]))
        found[start:end], weights[start:end], distance[start:end] = row[pairs][best[0]], best[1], best[2]
        start = end
    return found, weights, distance


def _candidates(queries: FloatArray, corner: FloatArray) -> tuple[IntArray, IntArray]:
    """Return pairs of query and row, sorted, among which the closest triangle of each query is.

    The triangle of the nearest centre is no further than that centre; one whose ball round its centre lies
    further off than this cannot be closer.
    """
    centre = corner.mean(axis=1)
    reach = np.sqrt(((corner - centre[:, None]) ** 2).sum(axis=2).max(axis=1))
    from scipy.spatial import cKDTree  # half a second: a window stands before anything is sought

    tree = cKDTree(centre)
    bound = np.atleast_1d(tree.query(queries)[0]) * (1.0 + 1.0e-9) + 1.0e-12
    near = tree.query_ball_point(queries, bound + reach.max(), return_sorted=True)
    query = np.repeat(np.arange(len(queries)), [len(rows) for rows in near])
    row = np.fromiter(itertools.chain.from_iterable(near), dtype=np.int64, count=len(query))
    off = np.sqrt(((queries[query] - centre[row]) ** 2).sum(axis=1))
    keep = off - reach[row] <= bound[query]
    return query[keep], row[keep]


def _best(query: IntArray, weights: FloatArray, gap2: FloatArray) -> tuple[IntArray, FloatArray, FloatArray]:
    """Return the place of each query's closest pair (the first of equals), its weights and distance [m]."""
    order = np.lexsort((np.arange(len(query)), gap2, query))
    place = order[np.unique(query[order], return_index=True)[1]]
    return place, weights[place], np.sqrt(gap2[place])


def closest_on_pairs(queries: FloatArray, corner: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return weights and squared distance of each query to its own triangle, corner shape (k, 3, 3)."""
    weights = _plane_weights(queries, corner)
    inside = (weights >= 0).all(axis=1)
    best = np.where(inside, _gap_squared(queries, corner, weights), np.inf)
    for first in range(3):
        on_edge = _edge_weights(queries, corner, first)
        gap = _gap_squared(queries, corner, on_edge)
        better = gap < best
        best = np.where(better, gap, best)
        weights = np.where(better[:, None], on_edge, weights)
    return weights, best


def _plane_weights(queries: FloatArray, corner: FloatArray) -> FloatArray:
    """Return the weights of the feet of the perpendiculars on each pair's plane, shape (k, 3)."""
    ab, ac = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    aa, bb, ab_ac = (ab * ab).sum(1), (ac * ac).sum(1), (ab * ac).sum(1)
    offset = queries - corner[:, 0]
    p, q = (offset * ab).sum(1), (offset * ac).sum(1)
    scale = 1.0 / (aa * bb - ab_ac**2)
    second, third = (bb * p - ab_ac * q) * scale, (aa * q - ab_ac * p) * scale
    return np.stack((1.0 - second - third, second, third), axis=1)


def _edge_weights(queries: FloatArray, corner: FloatArray, first: int) -> FloatArray:
    """Return the weights of the closest points on the edge that starts at corner `first`, shape (k, 3)."""
    last = (first + 1) % 3
    along = corner[:, last] - corner[:, first]
    share = ((queries - corner[:, first]) * along).sum(1) / (along * along).sum(1)
    share = np.clip(share, 0.0, 1.0)
    weights = np.zeros((len(share), 3))
    weights[:, first], weights[:, last] = 1.0 - share, share
    return weights


def _gap_squared(queries: FloatArray, corner: FloatArray, weights: FloatArray) -> FloatArray:
    """Return the squared distances [m^2] from the queries to the weighted points, shape (k,)."""
    foot = np.einsum("kc,kcx->kx", weights, corner)
    result: FloatArray = ((queries - foot) ** 2).sum(1)
    return result
