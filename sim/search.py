"""Looking round: which nodes are near the ground, which edges near which triangles of other parts.

What is near is only a list of candidates; whether anything presses is decided by the laws from where the
metal is.  One looks again once something has moved so far that the list may lack a pair, and the network is
put together anew only when it does lack one.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from meshes.nearest import closest_on_pairs
from sim.structure import Structure
from sim.surround import Edges, Near
from sim.weight import standing_still

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

REACH_M = 0.035  # what is nearer than this is on the list
NEED_M = 0.018  # what is nearer than this must be
STALE_M = 0.008  # two parts that have each moved this far since may be nearer by twice as much


HAND_M = 0.1  # edge nodes this near one that presses are put into the pattern with it


def _used(structure: Structure) -> Ints:
    """Return the nodes of sheets and beams that can move, without the body's."""
    s = structure
    held = standing_still(s)
    nodes = np.unique(np.concatenate([s.triangles.ravel(), *[b.nodes for b in s.beams]]))
    if s.surround is not None and s.surround.body is not None:
        nodes = np.setdiff1d(nodes, s.surround.body.nodes)
    out: Ints = nodes[~held[nodes]]
    return out


def near_ground(structure: Structure, points: Floats, reach_m: float) -> Ints:
    """Return the nodes lower over the ground than a reach, sorted, shape (k,)."""
    surround = structure.surround
    if surround is None or surround.ground is None:
        return np.zeros(0, np.int64)
    nodes = _used(structure)
    places = points[nodes]
    if surround.body is not None:
        places = places + surround.body.moved(points, structure.points, places)
    ground = surround.ground
    out: Ints = nodes[places @ ground.normal - ground.level_m < reach_m]
    return out


def near_pairs(structure: Structure, points: Floats, reach_m: float) -> tuple[Ints, Ints]:
    """Return node and triangle of other parts nearer than a reach, (m, 4), and whose that is, (m,)."""
    edges = None if structure.surround is None else structure.surround.edges
    if edges is None:
        return np.zeros((0, 4), np.int64), np.zeros(0, np.int64)
    triangles, bodies = edges.triangles(structure.triangles)
    which, row = _rough(edges, triangles, bodies, points, reach_m)
    query, corner = points[edges.nodes[which]], points[triangles[row]]
    _, gap2 = closest_on_pairs(query, corner)
    kept = gap2 < reach_m**2
    which, row = which[kept], row[kept]
    order = np.lexsort((row, bodies[row], edges.nodes[which]))
    which, row = which[order], row[order]
    return np.column_stack([edges.nodes[which], triangles[row]]), bodies[row]


def _rough(edges: Edges, triangles: Ints, bodies: Ints, points: Floats, reach_m: float) -> tuple[Ints, Ints]:
    """Return pairs of contact node (its place in the list) and triangle row whose balls meet."""
    corner = points[triangles]
    centre = corner.mean(axis=1)
    ball = np.sqrt(((corner - centre[:, None]) ** 2).sum(axis=2).max(axis=1))
    tree = cKDTree(points[edges.nodes])
    found = tree.query_ball_point(centre, ball + reach_m, return_sorted=True)
    row = np.repeat(np.arange(len(triangles)), [len(one) for one in found])
    which = np.fromiter((i for one in found for i in one), dtype=np.int64, count=len(row))
    other = edges.node_body[which] != bodies[row]
    return which[other], row[other]


def look(structure: Structure, points: Floats, reach_m: float = REACH_M) -> Near:
    """Return what is near what when everything stands at points, shape (n, 3)."""
    pairs, body = near_pairs(structure, points, reach_m)
    return Near(points, near_ground(structure, points, reach_m), pairs, body)


def stale(near: Near, points: Floats) -> bool:
    """Return whether something has moved so far that one must look again."""
    count = min(len(near.points), len(points))
    away = points[:count] - near.points[:count]
    return len(points) != len(near.points) or bool(np.einsum("ki,ki->k", away, away).max() > STALE_M**2)


def lacks(near: Near, structure: Structure, points: Floats) -> bool:
    """Return whether the lists lack something that must be on them."""
    if len(near.points) != len(points) or len(
        np.setdiff1d(near_ground(structure, points, NEED_M), near.ground)
    ):
        return True
    wanted, _ = near_pairs(structure, points, NEED_M)
    here = {tuple(row) for row in near.pairs.tolist()}
    return any(tuple(row) not in here for row in wanted.tolist())


def beside(structure: Structure, points: Floats, nodes: Ints) -> Ints:
    """Return the edge nodes within a hand of some nodes, sorted: they will press soon where these do."""
    edges = None if structure.surround is None else structure.surround.edges
    assert edges is not None
    tree = cKDTree(points[edges.nodes])
    found = tree.query_ball_point(points[nodes], HAND_M, return_sorted=True)
    out: Ints = np.unique(edges.nodes[np.unique(np.concatenate([np.array(one, int) for one in found]))])
    return out


def with_near(structure: Structure, near: Near) -> Structure:
    """Return the structure that knows what is near."""
    assert structure.surround is not None
    return replace(structure, surround=replace(structure.surround, near=near))
