"""Which pieces of a structure hang together, which of them nothing holds, and what is taken out by hand."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import connected_components

from sim.bond import END, STIFFNESS
from sim.sheet import find_hinges, hinge_angle
from sim.state import State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

TAKEN = "taken out"
"""Name of the set of nodes that have been taken out of the car and laid aside."""
HAND_KG = 5.0  # the heaviest piece that is taken out by hand, assumed
ASIDE_M = 2.5  # how far outboard it is laid, assumed


@dataclass(frozen=True)
class Aside:
    """A structure whose loose pieces have been laid aside, and its state; ``mass_kg`` of those pieces."""

    structure: Structure
    state: State
    mass_kg: float


def piece_of(structure: Structure, state: State) -> tuple[Ints, Bools]:
    """Return the piece of every node, shape (n,), and which pieces are held by what stands still.

    Sheets, beams, bonds that still hold and ties hang pieces together; held nodes, and ties and sliders to a
    fixed place, hold them.
    """
    s = structure
    pairs = [s.triangles[:, [0, 1]], s.triangles[:, [1, 2]]]
    pairs += [np.stack([b.nodes[:-1], b.nodes[1:]], axis=1) for b in s.beams]
    holds = (s.bonds.law[:, STIFFNESS] > 0.0) & (state.worst < s.bonds.law[:, END])
    for row in np.flatnonzero(holds).tolist():
        own = s.bonds.nodes[row][s.bonds.coefficients[row, 0] != 0.0]
        pairs.append(np.stack([own[:-1], own[1:]], axis=1))
    ground: Bools = np.zeros(len(s.points), bool)
    if s.fixed is not None:
        ground |= s.fixed.any(axis=1)
    held = [tie for tie, on in zip(s.ties, state.holding, strict=True) if on]
    means = [(tie.nodes, tie.weights) for tie in held] + [(one.nodes, one.weights) for one in s.sliders]
    for nodes, weights in means:
        pairs.append(np.stack([nodes[:-1], nodes[1:]], axis=1))
        if abs(float(weights.sum())) > 1.0e-6:
            ground[nodes[0]] = True
    for prop in () if s.surround is None else s.surround.props:
        ground[prop.nodes] = True
    both = np.concatenate(pairs)
    graph = sparse.coo_array((np.ones(len(both)), (both[:, 0], both[:, 1])), shape=(len(s.points),) * 2)
    count, piece = connected_components(graph, directed=False)
    fast = np.zeros(count, bool)
    fast[piece[ground]] = True
    return piece.astype(np.int64), fast


def mass_kg(structure: Structure, rows: Ints) -> float:
    """Return the mass of some triangles [kg]."""
    a, b, c = (structure.points[structure.triangles[rows, i]] for i in range(3))
    area = 0.5 * np.linalg.norm(np.cross(b - a, c - a), axis=1)
    per_area = np.array([one.thickness_m * one.metal.density_kg_per_m3 for one in structure.sections])
    return float(area @ per_area[structure.triangle_section[rows]])


def laid_aside(structure: Structure, state: State, held: Ints) -> Aside | None:
    """Return the structure with its loose light pieces laid aside; None when there are none.

    ``held`` are nodes that a tool has hold of: their pieces stay.

    A piece taken out keeps its triangles: it lies outboard of the car at rest, held, so that every other
    number and picture keeps its place.
    """
    piece, fast = piece_of(structure, state)
    fast[piece[held]] = True
    of_triangle = piece[structure.triangles[:, 0]]
    loose = [p for p in np.unique(of_triangle).tolist() if not fast[p]]
    rows = [np.flatnonzero(of_triangle == p) for p in loose]
    light = [
        (p, mine, mass)
        for p, mine in zip(loose, rows, strict=True)
        if (mass := mass_kg(structure, mine)) <= HAND_KG
    ]
    if not light:
        return None
    nodes = np.flatnonzero(np.isin(piece, [p for p, _, _ in light]))
    gone = np.concatenate([mine for _, mine, _ in light])
    before = structure.names.get(TAKEN, np.zeros(0, np.int64))
    rest, now = structure.points.copy(), state.points.copy()
    rest[nodes, 1] += structure.outboard_sign * ASIDE_M
    now[nodes] = rest[nodes]
    fixed = np.zeros(rest.shape, bool) if structure.fixed is None else structure.fixed.copy()
    fixed[nodes] = True
    lost = np.isin(structure.bonds.nodes, nodes).any(axis=1)
    made = replace(
        structure,
        points=rest,
        fixed=fixed,
        names={**structure.names, TAKEN: np.concatenate([before, nodes])},
        raw=tuple(edge for edge in structure.raw if not np.isin(edge.nodes, nodes).any()),
    )
    plastic, hardening = state.plastic.copy(), state.hardening.copy()
    plastic[gone], hardening[gone] = 0.0, 0.0
    hinges = find_hinges(structure.triangles)[0]
    angle = np.where(np.isin(hinges[:, 0], nodes), hinge_angle(now, hinges), state.angle)
    after = replace(
        state,
        points=now,
        plastic=plastic,
        hardening=hardening,
        angle=angle,
        touching=state.touching & ~lost,
        on_rim=state.on_rim & ~np.isin(structure.rim, nodes),
    )
    return Aside(made, after, sum(mass for _, _, mass in light))
