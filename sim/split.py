"""Splitting a node: what becomes of the structure, the tips' load and the state when a sheet opens."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.network import Network, State
from sim.sheet import find_hinges
from sim.structure import Bonds, Structure
from sim.tear import Candidate

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

KIND = "tear"  # of the bonds that stand for a necking line
REACH_M = 2.0e-3  # raw edges that have slid further off each other no longer press


def split(structure: Structure, tear: Candidate, law: Floats | None = None) -> Structure:
    """Return the structure with the sheet opened along one edge: a new node takes one side of the fan.

    ``law`` ties the halves by a neck; None leaves them free.
    """
    new = len(structure.points)
    points = np.concatenate([structure.points, structure.points[tear.node][None]])
    triangles = structure.triangles.copy()
    side = np.array(tear.side)
    old = np.flatnonzero((triangles == tear.node).any(axis=1))
    kept = {int(n) for t in np.setdiff1d(old, side) for n in triangles[t]} - {tear.node, tear.tip}
    triangles[side] = np.where(triangles[side] == tear.node, new, triangles[side])
    find_hinges(triangles)  # still a manifold
    moved = {int(n) for t in tear.side for n in structure.triangles[t]} - {tear.node, tear.tip}
    bonds = _follow(structure.bonds, tear.node, new, moved)
    if law is not None:
        bonds = Bonds.join([bonds, _neck(tear.node, new, min(kept), min(moved), law)])
    return replace(
        structure,
        points=points,
        triangles=triangles,
        bonds=bonds,
        lines={**structure.lines, tear.tip: np.array(tear.line_m)},
        fixed=None
        if structure.fixed is None
        else np.concatenate([structure.fixed, structure.fixed[tear.node][None]]),
    )


def _neck(node: int, new: int, old_side: int, new_side: int, law: Floats) -> Bonds:
    """Return the bond between the halves; ``old_side`` and ``new_side`` tell which way is apart."""
    r = [-1.0, 1.0, 0.0, 0.0, 0.0, 0.0]
    p = [0.0, 0.0, -1.0, 1.0, 0.0, 0.0]
    return Bonds(
        np.array([[node, new, old_side, new_side, node, new]], dtype=np.int64),
        np.array([[r, p, [0.0] * 6]]),
        np.zeros(1, bool),
        law[None],
        np.zeros(1, np.int64),
        (KIND,),
        np.full(1, np.nan),
        np.full(1, REACH_M),
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


def carried_over(state: State, former: Network, network: Network, node: int) -> State:
    """Return the state of a network whose last node split off ``node``: same places, same stress."""
    s = network.structure
    origin = np.append(np.arange(len(state.points)), node)
    angle, plastic = carried_stress(state, former, network, origin)
    extra = len(s.bonds.law) - len(state.worst)
    return replace(
        state,
        points=state.points[origin],
        plastic=plastic,
        angle=angle,
        worst=np.concatenate([state.worst, np.zeros(extra)]),
        touching=np.concatenate([state.touching, np.ones(extra, bool)]),
    )


def carried_stress(state: State, former: Network, network: Network, origin: Ints) -> tuple[Floats, Floats]:
    """Return hinge angles and plastic strains of a network whose sheets came apart at some nodes.

    Hinge angles are found again by edge.  A triangle that lost a hinge reads its curvature from the other
    two; where it has flowed, its plastic curvature is set so that its stress is what it was.

    Parameters
    ----------
    origin : shape (n,), the node of ``former`` that each node was
    """

    def edge(hinge: list[int]) -> tuple[int, int]:
        a, b = hinge[:2]
        return min(a, b), max(a, b)

    before = {edge(h): k for k, h in enumerate(former.rest.hinges.tolist())}
    angle = state.angle[[before[edge(h)] for h in origin[network.rest.hinges[:, :2]].tolist()]]
    plastic = state.plastic.copy()
    lost = np.flatnonzero((network.rest.to_curvature != former.rest.to_curvature).any(axis=(1, 2)))
    for t in lost.tolist():
        if not state.hardening[t].any():
            continue
        change = _curvature(network, t, angle) - _curvature(former, t, state.angle)
        z = network.heights * network.thickness[t] * network.form_ratio[t]
        plastic[t] += z[:, None] * change
    return angle, plastic


def _curvature(network: Network, t: int, angle: Floats) -> Floats:
    r = network.rest
    own = r.triangle_hinges[t]
    turn = np.where(own >= 0, angle[own] - r.rest_angle[own], 0.0)
    out: Floats = r.to_curvature[t] @ turn
    return out


def shared_load(nodes: Ints, weights: Floats, node: int, new: int) -> tuple[Ints, Floats]:
    """Return tip weights with a split node's load on both its halves."""
    at = np.flatnonzero(nodes == node)
    if not len(at):
        return nodes, weights
    half = 0.5 * weights[at[0]]
    kept = weights.copy()
    kept[at[0]] = half
    return np.concatenate([nodes, [new]]).astype(np.int64), np.concatenate([kept, [half]])
