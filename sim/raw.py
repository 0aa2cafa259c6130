"""Raw edges: which a cut leaves, whether its two sides still hang together, and what keeps them apart.

Raw edges keep the kerf's gap between them and press on each other once it has closed; they never pull.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import connected_components

from sim.blades import Line
from sim.bond import OFFSET, touch_law
from sim.severed import Severed
from sim.structure import Bonds, RawEdge, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

KIND = "cut edges"  # of the bonds that keep raw edges out of each other
KERF_M = 2.0e-3  # gap the blades leave between raw edges, about a sheet's thickness, assumed
PRESS_N_PER_M = 1.0e7  # penalty of a raw edge on the other, per node
PRESS_REACH_M = 6.0e-3  # raw edges that have slid further off each other no longer press, assumed


def _sides(structure: Structure, where: Line) -> dict[tuple[int, int], list[int]]:
    """Return the two triangles of every opened edge."""
    out: dict[tuple[int, int], list[int]] = {(int(min(e)), int(max(e))): [] for e in where.edges.tolist()}
    for t, corners in enumerate(structure.triangles.tolist()):
        for a, b in ((corners[0], corners[1]), (corners[1], corners[2]), (corners[2], corners[0])):
            key = (min(a, b), max(a, b))
            if key in out:
                out[key].append(t)
    return out


def raw_edges(structure: Structure, made: Severed, where: Line) -> tuple[RawEdge, ...]:
    """Return the raw edges of a cut: both sides of every line of opened edges that hangs together."""
    s, new = structure, made.structure
    found: list[tuple[set[tuple[int, int]], float]] = []
    for key, pair in _sides(s, where).items():
        size = float(np.linalg.norm(s.points[key[0]] - s.points[key[1]]))
        for t in pair:
            own = {(int(where.side[t]), int(n)) for n in new.triangles[t] if int(made.origin[n]) in key}
            joined = [item for item in found if item[0] & own]
            found = [item for item in found if not item[0] & own]
            found.append((own.union(*(item[0] for item in joined)), size + sum(item[1] for item in joined)))
    return tuple(
        RawEdge(np.array(sorted(node for _, node in nodes), dtype=np.int64), length)
        for nodes, length in found
    )


def hangs_together(structure: Structure, made: Severed, where: Line) -> bool:
    """Return whether the two sides of a cut still hang together somewhere, by triangles and beams."""
    s = made.structure
    links = [s.triangles[:, [0, 1]], s.triangles[:, [1, 2]], *(_links(b.nodes) for b in s.beams)]
    pairs = np.concatenate(links)
    graph = sparse.coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(len(s.points),) * 2)
    piece = connected_components(graph, directed=False)[1]
    sides = _sides(structure, where).values()
    return any(piece[s.triangles[a, 0]] == piece[s.triangles[b, 0]] for a, b in sides)


def _links(nodes: Ints) -> Ints:
    out: Ints = np.stack([nodes[:-1], nodes[1:]], axis=1)
    return out


def keeping_apart(structure: Structure, made: Severed, where: Line, points: Floats) -> Bonds:
    """Return what keeps the halves of a node out of each other once the kerf has closed."""
    rows, new = [], made.structure.triangles
    owner: dict[tuple[int, int], list[int]] = {}
    for t in np.flatnonzero(where.side).tolist():
        for n in new[t].tolist():
            owner.setdefault((int(where.side[t]), n), []).append(t)
    for node, halves in made.pieces.items():
        low = [h for h in halves if (-1, h) in owner and (1, h) not in owner]
        high = [h for h in halves if (1, h) in owner and (-1, h) not in owner]
        for a in low[:1]:
            for b in high[:1]:
                rows.append(
                    (
                        a,
                        b,
                        _far(structure, owner[(-1, a)], node, points, where),
                        _far(structure, owner[(1, b)], node, points, where),
                    )
                )
    if not rows:
        return Bonds.empty()
    nodes = np.array([(a, b, c, d, a, b) for a, b, c, d in rows], dtype=np.int64)
    count = len(nodes)
    coefficients = np.zeros((count, 3, 6))
    coefficients[:, 0, :2] = -1.0, 1.0
    coefficients[:, 1, 2:4] = -1.0, 1.0
    law = touch_law(pressure=PRESS_N_PER_M, offset_m=0.0)
    laws = np.tile(law, (count, 1))
    laws[:, OFFSET] = -KERF_M
    return Bonds(
        nodes,
        coefficients,
        np.zeros(count, bool),
        laws,
        np.zeros(count, np.int64),
        (KIND,),
        np.full(count, np.nan),
        np.full(count, PRESS_REACH_M),
    )


def _far(structure: Structure, mine: list[int], node: int, points: Floats, where: Line) -> int:
    """Return the node round one half that lies furthest off the opened edges: it tells which way is apart."""
    on = set(where.edges.ravel().tolist())
    others = sorted({n for t in mine for n in structure.triangles[t].tolist()} - on - {node})
    if not others:
        others = sorted({n for t in mine for n in structure.triangles[t].tolist()} - {node})
    return int(others[int(np.argmax(np.linalg.norm(points[others] - points[node], axis=1)))])
