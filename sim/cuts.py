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


class _Gathered:
    """The cuts of a network as they are found, a row each, in the order of their nodes and round each."""

    def __init__(self, network: Network) -> None:
        self.network = network
        self.owners: dict[int, list[int]] = {}
        for t, corners in enumerate(network.structure.triangles.tolist()):
            for n in corners:
                self.owners.setdefault(n, []).append(t)
        self.hinges_of: dict[int, list[tuple[int, int]]] = {}
        for h, four in enumerate(network.rest.hinges.tolist()):
            for slot, n in enumerate(four):
                self.hinges_of.setdefault(n, []).append((h, slot))
        self.sides_of_hinge = _triangles_of_hinges(network)
        self.across, self.edges, self.hinges = _Rows(), _Rows(), _Rows()
        self.node: list[int] = []
        self.tip: list[int] = []
        self.side: list[tuple[int, ...]] = []
        self.behind: list[tuple[int, int]] = []
        self.lips: list[tuple[int, int]] = []
        self.line: list[Floats] = []
        self.pick: list[int] = []

    def split_node(self, n: int, beams: set[int]) -> None:
        """Add every cut from a node along an edge inside its sheet that leads to no beam."""
        s = self.network.structure
        points = s.points
        fan, rim = _fan(s.triangles, self.owners[n], n)
        ends = len(fan) > 0 and bool(np.allclose(points[rim[0]], points[rim[-1]], rtol=0.0, atol=1.0e-9))
        back = float(np.linalg.norm(points[rim[0]] - points[n])) if ends else 0.0
        past = s.lines.get(n, np.array([back, 0.0, 0.0, 0.0])) if ends else np.zeros(4)
        for cut in range(1, len(fan)):
            if rim[cut] in beams:
                continue
            self._weigh(n, cut, fan, rim)
            self.node.append(n)
            self.tip.append(rim[cut])
            self.side.append(tuple(fan[cut:]))
            self.behind.append((rim[0], rim[-1]) if ends else (-1, -1))
            self.lips.append((rim[0], rim[-1]))
            self.line.append(np.concatenate([[back], past]))
            thickness = self.network.thickness
            self.pick.append(min(fan[cut - 1], fan[cut], key=lambda t: float(thickness[t])))

    def _weigh(self, n: int, cut: int, fan: list[int], rim: list[int]) -> None:
        """Add the next row's weights: of corner and hinge forces, and of the far nodes of both sides."""
        row, new = len(self.node), set(fan[cut:])
        triangles = self.network.structure.triangles
        for t in fan:
            self.edges.add(row, 3 * t + triangles[t].tolist().index(n), -0.5 if t in new else 0.5)
        for h, slot in self.hinges_of.get(n, []):
            pair = {t in new for t in self.sides_of_hinge[h] if t in fan}
            if len(pair) == 1:  # the hinge along the cut itself goes
                self.hinges.add(row, 4 * h + slot, -0.5 if pair.pop() else 0.5)
        for far_nodes, sign in ((rim[:cut], -1.0), (rim[cut + 1 :], 1.0)):
            for other in far_nodes:
                self.across.add(row, other, sign / len(far_nodes))

    def cuts(self) -> Cuts:
        """Return them, with lengths and metals."""
        s = self.network.structure
        count = len(self.node)
        nodes, lines = np.array(self.node, np.int64), np.array(self.line, float).reshape(-1, 5)
        _, group = np.unique(nodes, return_inverse=True)
        edge = s.points[np.array(self.tip, np.int64)] - s.points[nodes]
        ahead = np.linalg.norm(edge, axis=1)
        metals = [s.sections[k].metal for k in s.triangle_section[self.pick]]
        thickness = self.network.thickness[np.array(self.pick, dtype=np.int64)]
        tensile = np.array([m.tensile_pa for m in metals])
        return Cuts(
            nodes, np.array(self.tip, np.int64), tuple(self.side), group.astype(np.int64),
            np.array(self.behind, np.int64).reshape(-1, 2), np.array(self.lips, np.int64).reshape(-1, 2),
            edge, ahead, lines[:, 0], lines[:, 1], lines[:, 2:],
            0.5 * (ahead + lines[:, 0]), np.array([m.tear_energy_j_per_m2 for m in metals]) * thickness,
            tensile * thickness,
            np.array([[m.young_pa, m.yield_pa, m.hardening_pa, m.tensile_pa] for m in metals]).reshape(-1, 4),
            self.across.array(count, len(s.points)), self.edges.array(count, 3 * len(s.triangles)),
            self.hinges.array(count, 4 * len(self.network.rest.hinges)),
        )  # fmt: skip


def find_cuts(network: Network) -> Cuts:
    """Return every way in which a node on a free edge may split."""
    beams = {int(n) for beam in network.structure.beams for n in beam.nodes}
    found = _Gathered(network)
    for n in _free_nodes(network).tolist():
        found.split_node(n, beams)
    return found.cuts()


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
