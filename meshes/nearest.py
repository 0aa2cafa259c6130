"""Closest points on triangles, in plain vectorised numpy."""

from __future__ import annotations

import numpy as np

from meshes.part import FloatArray, IntArray, MeshError

PAIRS_AT_ONCE = 400_000
"""Point-triangle pairs worked on together: bounds the memory to some 100 MB."""


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
    step = max(1, PAIRS_AT_ONCE // len(triangles))
    corner = points[triangles]
    found = np.empty(len(queries), dtype=np.int64)
    weights, distance = np.empty((len(queries), 3)), np.empty(len(queries))
    for start in range(0, len(queries), step):
        some = slice(start, start + step)
        found[some], weights[some], distance[some] = _nearest_block(queries[some], corner)
    return found, weights, distance


def _nearest_block(queries: FloatArray, corner: FloatArray) -> tuple[IntArray, FloatArray, FloatArray]:
    """Return row, weights and distance for all pairs of k queries and m triangles, corner shape (m, 3, 3)."""
    weights = _plane_weights(queries, corner)
    inside = (weights >= 0).all(axis=2)
    best = np.where(inside, _gap_squared(queries, corner, weights), np.inf)
    for first in range(3):
        on_edge = _edge_weights(queries, corner, first)
        gap = _gap_squared(queries, corner, on_edge)
        better = gap < best
        best = np.where(better, gap, best)
        weights = np.where(better[..., None], on_edge, weights)
    row = np.argmin(best, axis=1)
    pick = np.arange(len(queries)), row
    return row, weights[pick], np.sqrt(best[pick])


def _plane_weights(queries: FloatArray, corner: FloatArray) -> FloatArray:
    """Return the weights of the feet of the perpendiculars on each triangle's plane, shape (k, m, 3)."""
    ab, ac = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    aa, bb, ab_ac = (ab * ab).sum(1), (ac * ac).sum(1), (ab * ac).sum(1)
    offset = queries[:, None] - corner[None, :, 0]
    p, q = (offset * ab).sum(2), (offset * ac).sum(2)
    scale = 1.0 / (aa * bb - ab_ac**2)
    second, third = (bb * p - ab_ac * q) * scale, (aa * q - ab_ac * p) * scale
    return np.stack((1.0 - second - third, second, third), axis=2)


def _edge_weights(queries: FloatArray, corner: FloatArray, first: int) -> FloatArray:
    """Return the weights of the closest points on the edge that starts at corner `first`, shape (k, m, 3)."""
    last = (first + 1) % 3
    along = corner[:, last] - corner[:, first]
    share = ((queries[:, None] - corner[None, :, first]) * along).sum(2) / (along * along).sum(1)
    share = np.clip(share, 0.0, 1.0)
    weights = np.zeros((*share.shape, 3))
    weights[..., first], weights[..., last] = 1.0 - share, share
    return weights


def _gap_squared(queries: FloatArray, corner: FloatArray, weights: FloatArray) -> FloatArray:
    """Return the squared distances [m^2] from the queries to the weighted points, shape (k, m)."""
    foot = np.einsum("kmc,mcx->kmx", weights, corner)
    result: FloatArray = ((queries[:, None] - foot) ** 2).sum(2)
    return result
