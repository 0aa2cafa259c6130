"""Tears: a law on the tear line, energy per new torn length, not a strain limit on the element.

A tear runs along an edge of the lattice, from a free edge of a sheet or from the tip of an older tear.  It is
tried, not assumed: the sheet is opened along the edge at a fixed tip position, the network comes to rest, and
the tear stands only when the energy that set free is at least what the new length costs,

    released >= Gc t L,

so a coarse lattice asks the same energy per metre as a fine one.  Opening and in-plane shear are both in the
released energy.

Gc: essential work of fracture of thin mild sheet, 100-400 kJ/m^2, from memory, low confidence.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.network import Evaluation, Network, State
from sim.sheet import find_hinges
from sim.structure import Bonds, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

TEAR_ENERGY_J_PER_M2 = 2.0e5
TRY_STRESS_RATIO = 0.7  # nodal force over yield force of the edge from which a tear is tried at all
CANDIDATES = 2  # tried per increment, hardest pulled first


@dataclass(frozen=True)
class Candidate:
    """An edge that may tear: from ``node`` (on a free edge) to ``tip``.

    side : triangles that go with the new node;  length_m : of the edge;  cost_j : Gc t L
    pull_ratio : nodal force across the edge over its yield force
    """

    node: int
    tip: int
    side: tuple[int, ...]
    length_m: float
    cost_j: float
    pull_ratio: float


def _fan(triangles: Ints, members: Ints, node: int) -> list[int]:
    """Return the triangles round a node on a free edge in order, one free edge to the other; else []."""
    inside = set(members.tolist())
    by_edge: dict[int, list[int]] = {}
    for t in members:
        for other in triangles[t]:
            if other != node:
                by_edge.setdefault(int(other), []).append(int(t))
    ends = [other for other, owners in by_edge.items() if len(owners) == 1]
    if len(ends) != 2:
        return []
    order, edge = [], min(ends)
    while inside:
        step = [t for t in by_edge[edge] if t in inside]
        if not step:
            return []
        t = step[0]
        inside.discard(t)
        order.append(t)
        edge = next(int(other) for other in triangles[t] if other not in (node, edge))
    return order


def _node_forces(network: Network, ev: Evaluation, node: int, fan: list[int]) -> Floats:
    """Return the membrane force each triangle of a fan puts on the node, shape (len(fan), 3) [N]."""
    triangles = network.structure.triangles
    out = np.zeros((len(fan), 3))
    for row, t in enumerate(fan):
        corners = triangles[t]
        for i in range(3):
            a, b = corners[(i + 1) % 3], corners[(i + 2) % 3]
            if node in (a, b):
                pull = ev.springs[t, i] / network.rest.rest_length2[t, i] * (ev.points[b] - ev.points[a])
                out[row] += pull if node == b else -pull
    return out


def candidates(network: Network, ev: Evaluation, zone: Ints) -> list[Candidate]:
    """Return the edges hardest pulled apart, hardest first.

    Parameters
    ----------
    zone : nodes to look at; those on a free edge of a sheet and on no beam are tried
    """
    s = network.structure
    beams = {int(n) for beam in s.beams for n in beam.nodes}
    ties = {int(n) for tie in s.ties for n in tie.nodes}
    found = []
    for node in zone.tolist():
        if node in beams or node in ties:
            continue
        members = np.flatnonzero((s.triangles == node).any(axis=1))
        fan = _fan(s.triangles, members, node)
        if len(fan) < 2:
            continue
        forces = _node_forces(network, ev, node, fan)
        best = _best_cut(network, node, fan, forces, beams)
        if best is not None and best.pull_ratio >= TRY_STRESS_RATIO:
            found.append(best)
    return sorted(found, key=lambda c: -c.pull_ratio)[:CANDIDATES]


def _best_cut(
    network: Network, node: int, fan: list[int], forces: Floats, beams: set[int]
) -> Candidate | None:
    s = network.structure
    best = None
    for cut in range(1, len(fan)):
        shared = set(s.triangles[fan[cut - 1]].tolist()) & set(s.triangles[fan[cut]].tolist()) - {node}
        tip = int(next(iter(shared)))
        if tip in beams:
            continue
        length = float(np.linalg.norm(s.points[tip] - s.points[node]))
        thickness = float(network.thickness[fan[cut]])
        limit = float(network.metal[fan[cut], 2]) * thickness * 0.5 * length
        left, right = forces[:cut].sum(axis=0), forces[cut:].sum(axis=0)
        # both sides pull the node apart: the smaller of the two is what the edge carries across
        apart = -float(left @ right) / max(float(np.linalg.norm(left)), float(np.linalg.norm(right)), 1.0e-9)
        ratio = apart / limit
        if best is None or ratio > best.pull_ratio:
            cost = TEAR_ENERGY_J_PER_M2 * thickness * length
            best = Candidate(node, tip, tuple(fan[cut:]), length, cost, ratio)
    return best


def split(structure: Structure, tear: Candidate) -> Structure:
    """Return the structure with the sheet opened along one edge: a new node takes one side of the fan."""
    new = len(structure.points)
    points = np.concatenate([structure.points, structure.points[tear.node][None]])
    triangles = structure.triangles.copy()
    side = np.array(tear.side)
    triangles[side] = np.where(triangles[side] == tear.node, new, triangles[side])
    find_hinges(triangles)  # still a manifold
    moved = {int(n) for t in tear.side for n in structure.triangles[t]} - {tear.node, tear.tip}
    return replace(
        structure,
        points=points,
        triangles=triangles,
        bonds=_follow(structure.bonds, tear.node, new, moved),
        fixed=None
        if structure.fixed is None
        else np.concatenate([structure.fixed, structure.fixed[tear.node][None]]),
    )


def _follow(bonds: Bonds, node: int, new: int, moved: set[int]) -> Bonds:
    """Return the bonds with those that reach over to the new node's side hung on it.

    A seam point lies between two nodes of the lip; when the other one went with the new side, so does it.
    """
    nodes = bonds.nodes.copy()
    for row in np.flatnonzero((nodes == node).any(axis=1)):
        others = {int(n) for n in nodes[row]} - {node}
        if others & moved:
            nodes[row] = np.where(nodes[row] == node, new, nodes[row])
    return replace(bonds, nodes=nodes)


def extended(state: State, node: int) -> State:
    """Return the state with one more node, standing where ``node`` stands."""
    return replace(state, points=np.concatenate([state.points, state.points[node][None]]))


def shared_load(nodes: Ints, weights: Floats, node: int, new: int) -> tuple[Ints, Floats]:
    """Return tip weights with a split node's load on both its halves."""
    at = np.flatnonzero(nodes == node)
    if not len(at):
        return nodes, weights
    half = 0.5 * weights[at[0]]
    kept = weights.copy()
    kept[at[0]] = half
    return np.concatenate([nodes, [new]]).astype(np.int64), np.concatenate([kept, [half]])
