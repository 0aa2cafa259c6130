"""Where a sheet may open: every way in which a node on a free edge can split, with what its measures need."""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from sim.network import Network
from sim.sheet import RestSheet

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@dataclass(frozen=True)
class Cuts:
    """Every way in which a node on a free edge may split, k of them.

    node, tip : shape (k,), the cut runs from node to tip;  side : triangles that go with the new node
    group : shape (k,), counts the nodes
    behind : shape (k, 2), neighbours along the free edge on the old and on the new side where they stand on
        one place at rest (the lips of a line that ends here), else -1
    lips : shape (k, 2), those neighbours wherever they stand
    edge_m : shape (k, 3), from node to tip at rest;  ahead_m, back_m : lengths of that edge and of the last
        one of the line that ends here
    gone_m, off_m : shapes (k,) and (k, 3), that last edge's length along the way the line was driven, and how
        far the line lies off that way
    share_m : shape (k,), length of lattice edge whose pull the node takes up
    cost_j_per_m, limit_n_per_m : Gc t and tensile strength times t of the thinner side
    metal : shape (k, 4), Young's modulus, yield, hardening and tensile strength of that side [Pa]
    across : (k, n) weights of the points: middle of the new side's far nodes minus the old side's
    from_edges, from_hinges : (k, 3 m) and (k, 4 hinges) weights of corner and hinge forces: the pull
        that opens the cut
    """

    node: Ints
    tip: Ints
    side: tuple[tuple[int, ...], ...]
    group: Ints
    behind: Ints
    lips: Ints
    edge_m: Floats
    ahead_m: Floats
    back_m: Floats
    gone_m: Floats
    off_m: Floats
    share_m: Floats
    cost_j_per_m: Floats
    limit_n_per_m: Floats
    metal: Floats
    across: sparse.csr_array
    from_edges: sparse.csr_array
    from_hinges: sparse.csr_array


def _fan(triangles: Ints, members: list[int], node: int) -> tuple[list[int], list[int]]:
    """Return the triangles round a node on a free edge, one free edge to the other, and the edges between.

    The k + 1 edges are named by their far nodes, free ones first and last; both lists are empty for a node
    inside a sheet or where sheets meet in a point.
    """
    inside = set(members)
    by_edge: dict[int, list[int]] = {}
    for t in members:
        for other in triangles[t]:
            if other != node:
                by_edge.setdefault(int(other), []).append(t)
    ends = [other for other, owners in by_edge.items() if len(owners) == 1]
    if len(ends) != 2:
        return [], []
    order, edges = [], [min(ends)]
    while inside:
        step = [t for t in by_edge[edges[-1]] if t in inside]
        if not step:
            return [], []
        t = step[0]
        inside.discard(t)
        order.append(t)
        edges.append(next(int(other) for other in triangles[t] if other not in (node, edges[-1])))
    return order, edges


def _free_nodes(network: Network) -> Ints:
    """Return the nodes on a free edge of a sheet that no beam and no tie holds."""
    s, of_triangle = network.structure, network.rest.triangle_hinges
    t, i = np.nonzero(of_triangle < 0)
    rim = np.concatenate([s.triangles[t, (i + 1) % 3], s.triangles[t, (i + 2) % 3]])
    held = [b.nodes for b in s.beams] + [tie.nodes for tie in s.ties] + [one.nodes for one in s.sliders]
    free = np.unique(rim)
    if s.fixed is not None:
        free = free[~s.fixed[free].all(axis=1)]
    out: Ints = np.setdiff1d(free, np.concatenate(held)) if held else free
    return out


class _Rows:
    """Collects sparse weights row by row."""

    def __init__(self) -> None:
        self.row: list[int] = []
        self.column: list[int] = []
        self.value: list[float] = []

    def add(self, row: int, column: int, value: float) -> None:
        self.row.append(row)
        self.column.append(column)
        self.value.append(value)

    def array(self, rows: int, columns: int) -> sparse.csr_array:
        return sparse.csr_array((self.value, (self.row, self.column)), shape=(rows, columns))


def find_cuts(network: Network) -> Cuts:
    """Return every way in which a node on a free edge may split."""
    s = network.structure
    triangles, points = s.triangles, s.points
    owners: dict[int, list[int]] = {}
    for t, corners in enumerate(triangles.tolist()):
        for n in corners:
            owners.setdefault(n, []).append(t)
    hinges_of: dict[int, list[tuple[int, int]]] = {}
    for h, four in enumerate(network.rest.hinges.tolist()):
        for slot, n in enumerate(four):
            hinges_of.setdefault(n, []).append((h, slot))
    sides_of_hinge = _triangles_of_hinges(network)
    beams = {int(n) for beam in s.beams for n in beam.nodes}
    across, edges, hinges = _Rows(), _Rows(), _Rows()
    node: list[int] = []
    tip: list[int] = []
    side: list[tuple[int, ...]] = []
    behind: list[tuple[int, int]] = []
    lips: list[tuple[int, int]] = []
    line: list[Floats] = []
    pick: list[int] = []
    for n in _free_nodes(network).tolist():
        fan, rim = _fan(triangles, owners[n], n)
        ends = len(fan) > 0 and bool(np.allclose(points[rim[0]], points[rim[-1]], rtol=0.0, atol=1.0e-9))
        back = float(np.linalg.norm(points[rim[0]] - points[n])) if ends else 0.0
        past = s.lines.get(n, np.array([back, 0.0, 0.0, 0.0])) if ends else np.zeros(4)
        for cut in range(1, len(fan)):
            far = rim[cut]
            if far in beams:
                continue
            row = len(node)
            node.append(n)
            tip.append(far)
            side.append(tuple(fan[cut:]))
            behind.append((rim[0], rim[-1]) if ends else (-1, -1))
            lips.append((rim[0], rim[-1]))
            line.append(np.concatenate([[back], past]))
            pick.append(min(fan[cut - 1], fan[cut], key=lambda t: float(network.thickness[t])))
            new = set(fan[cut:])
            for t in fan:
                edges.add(row, 3 * t + triangles[t].tolist().index(n), -0.5 if t in new else 0.5)
            for h, slot in hinges_of.get(n, []):
                pair = {t in new for t in sides_of_hinge[h] if t in fan}
                if len(pair) == 1:  # the hinge along the cut itself goes
                    hinges.add(row, 4 * h + slot, -0.5 if pair.pop() else 0.5)
            for far_nodes, sign in ((rim[:cut], -1.0), (rim[cut + 1 :], 1.0)):
                for other in far_nodes:
                    across.add(row, other, sign / len(far_nodes))
    count = len(node)
    nodes, lines = np.array(node, np.int64), np.array(line, float).reshape(-1, 5)
    _, group = np.unique(nodes, return_inverse=True)
    edge = points[np.array(tip, np.int64)] - points[nodes]
    ahead = np.linalg.norm(edge, axis=1)
    metals = [s.sections[k].metal for k in s.triangle_section[pick]]
    thickness = network.thickness[np.array(pick, dtype=np.int64)]
    tensile = np.array([m.tensile_pa for m in metals])
    return Cuts(
        nodes, np.array(tip, np.int64), tuple(side), group.astype(np.int64),
        np.array(behind, np.int64).reshape(-1, 2), np.array(lips, np.int64).reshape(-1, 2), edge,
        ahead, lines[:, 0], lines[:, 1], lines[:, 2:],
        0.5 * (ahead + lines[:, 0]), np.array([m.tear_energy_j_per_m2 for m in metals]) * thickness,
        tensile * thickness,
        np.array([[m.young_pa, m.yield_pa, m.hardening_pa, m.tensile_pa] for m in metals]).reshape(-1, 4),
        across.array(count, len(points)), edges.array(count, 3 * len(triangles)),
        hinges.array(count, 4 * len(network.rest.hinges)),
    )  # fmt: skip


_kept: deque[tuple[RestSheet, Cuts]] = deque(maxlen=4)


def cuts_of(network: Network) -> Cuts:
    """Return the cuts of a network, found once per connectivity."""
    for rest, cuts in tuple(_kept):
        if rest is network.rest:
            return cuts
    cuts = find_cuts(network)
    _kept.append((network.rest, cuts))
    return cuts


def _triangles_of_hinges(network: Network) -> list[list[int]]:
    out: list[list[int]] = [[] for _ in network.rest.hinges]
    for t, three in enumerate(network.rest.triangle_hinges.tolist()):
        for h in three:
            if h >= 0:
                out[h].append(t)
    return out
