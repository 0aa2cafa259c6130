"""A cut at one moment: what the blades part of the metal as it is, and what that costs them.

The blades' work is an estimate of its own, by the shear work of what they part, and stands on the line
``cut`` and in the work put in, so it cancels in the gap.  Nothing is solved here: the metal comes to rest
afterwards at the same tips, and what it stored less and did not spend is released in a jump.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.blade_work import LINE, beam_work, blade_force, blade_work, edge_length_m, tie_work
from sim.blades import Blades, Line, Section, check_width, line, section
from sim.bond import END, STIFFNESS
from sim.increment import Point, Stepper
from sim.network import Drive, Network, State
from sim.pieces import laid_aside
from sim.problems import PlanError
from sim.raw import hangs_together, keeping_apart, raw_edges
from sim.rubbing import SLIP, WAY
from sim.severed import Severed, carried, severed
from sim.structure import Bonds, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

TAKEN_M = (
    0.015  # how far off the plane a fitting's middle may lie for the blades to take it: half their thickness
)


@dataclass(frozen=True)
class CutDone:
    """What one cut did.

    section : what lay between the blades;  cut_m, left_m : sheet parted, and left standing in the plane
    open : whether no metal of the part crosses the plane any more
    work_j, force_n : the blades' work, and what they need at most
    freed : names of ties taken;  beams : names of beams parted;  taken_kg : mass of a piece that came out
    """

    section: Section
    cut_m: float
    left_m: float
    open: bool
    work_j: float
    force_n: float
    freed: tuple[str, ...] = ()
    beams: tuple[str, ...] = ()
    taken_kg: float = 0.0

    @property
    def word(self) -> str:
        """The kind of event it is."""
        return "cut open" if self.open else "cut short"


@dataclass(frozen=True)
class Parted:
    """A network whose metal has been parted, its state (not at rest), and what the cut did."""

    network: Network
    state: State
    done: CutDone


def part(network: Network, before: State, blades: Blades) -> Parted:
    """Return the metal parted where the blades close.

    Raises
    ------
    PlanError
        When there is no metal between the blades, or it is wider than they open.
    """
    points, s = before.points, network.structure
    found = section(network, points, blades)
    check_width(found, blades.opening_m)
    where = line(network, points, blades, found)
    gaps = beam_gaps(s, points, blades, where, found)
    if not len(where.edges) and not gaps:
        raise PlanError("depth_m", "parts nothing: it is less than half an edge of the lattice; go deeper")
    made = severed(s, where.edges, blades.height(points), gaps)
    taken = ties_taken(s, before, blades, where, found)
    gone = severed_bonds(made, points, before, blades, where, found)
    work = blade_work(network, where, gaps, taken, gone, made, before)
    apart = keeping_apart(s, made, where, points)
    structure = replace(
        made.structure,
        bonds=Bonds.join([made.structure.bonds, apart]),
        raw=(*s.raw, *raw_edges(s, made, where)),
    )
    new = Network(structure, shared_drives(network.drives, made))
    state = without_ties(carried(before, network, new, made), structure, taken)
    worst = state.worst.copy()
    worst[: len(gone)][gone] = structure.bonds.law[: len(gone), END][gone]
    state = replace(state, worst=worst)
    tips = np.concatenate([np.zeros(0, np.int64), *(drive.nodes for drive in new.drives)])
    aside = laid_aside(structure, state, tips)
    if aside is not None:
        new, state = Network(aside.structure, new.drives), aside.state
    done = CutDone(
        found,
        edge_length_m(s, where.edges),
        edge_length_m(s, where.left),
        not hangs_together(s, made, where),
        work,
        blade_force(network, found, where),
        tuple(s.ties[i].name for i in taken),
        tuple(dict.fromkeys(s.beams[b].name for b, _ in gaps)),
        0.0 if aside is None else aside.mass_kg,
    )
    return Parted(new, state, done)


def part_ties(network: Network, before: State, taken: tuple[int, ...]) -> Parted:
    """Return the metal with ties cut: a hinge's leaf, a striker, a bar's foot."""
    s = network.structure
    state = without_ties(before, s, taken)
    work = sum(tie_work(s, i) for i in taken)
    limits = [s.ties[i].limit_n for i in taken]
    force = max((float(np.max(limit[np.isfinite(limit)], initial=0.0)) for limit in limits), default=0.0)
    names = tuple(s.ties[i].name for i in taken)
    return Parted(network, state, CutDone(NOTHING, 0.0, 0.0, True, work, force, names))


def part_beam(network: Network, before: State, beam: int, along_m: float) -> Parted:
    """Return the metal with a bar cut across, at a distance from its front end at rest."""
    s = network.structure
    nodes = s.beams[beam].nodes
    way = np.cumsum(np.linalg.norm(np.diff(s.points[nodes], axis=0), axis=1))
    gap = (beam, int(np.clip(np.searchsorted(way, along_m), 0, len(nodes) - 2)))
    made = severed(s, np.zeros((0, 2), np.int64), np.zeros(len(s.points)), [gap])
    new = Network(made.structure, network.drives)
    state = carried(before, network, new, made)
    work = beam_work(s, beam)
    done = CutDone(NOTHING, 0.0, 0.0, True, work, 0.0, beams=(s.beams[beam].name,))
    return Parted(new, state, done)


NOTHING = Section(0.0, 0.0, 0.0, 0.0, 0.0, 0.0)


def cut(stepper: Stepper, point: Point, blades: Blades) -> tuple[Stepper, Point, CutDone]:
    """Return stepper and point with the metal parted and at rest again at the same tips, and what it was."""
    made = part(stepper.network, point.state, blades)
    work = made.done.work_j
    books = point.ledger.plus(work, point.ledger.stored_j, {LINE: work})
    after = replace(stepper, network=made.network)
    start = replace(point, state=made.state, ledger=books, before=None)
    return after, after.come_to_rest(start), made.done


def beam_gaps(
    structure: Structure, points: Floats, blades: Blades, where: Line, found: Section
) -> list[tuple[int, int]]:
    """Return (beam, link) of every link between the blades that crosses their plane away from the sheets."""
    on = set(where.edges.ravel().tolist())
    out = []
    for index in blades.beams:
        nodes = structure.beams[index].nodes
        height = blades.height(points[nodes])
        for k in np.flatnonzero((height[:-1] < 0.0) != (height[1:] < 0.0)).tolist():
            share = height[k] / (height[k] - height[k + 1])
            at = points[nodes[k]] + share * (points[nodes[k + 1]] - points[nodes[k]])
            if not {int(nodes[k]), int(nodes[k + 1])} & on and between(at[None], blades, where, found)[0]:
                out.append((index, k))
    return out


def between(points: Floats, blades: Blades, where: Line, found: Section) -> Bools:
    """Return which points lie between the closed blades, as far in as they go, however far off the plane."""
    apart = points - blades.place
    along, across = apart @ blades.way, apart @ blades.across
    middle = 0.5 * (found.low_m + found.high_m)
    end = min(where.end_m, found.far_m + TAKEN_M)
    near = (along >= found.near_m - 2.0 * TAKEN_M) & (along <= end)
    out: Bools = near & (np.abs(across - middle) <= 0.5 * blades.opening_m)
    return out


def ties_taken(
    structure: Structure, state: State, blades: Blades, where: Line, found: Section
) -> tuple[int, ...]:
    """Return the ties that hold and whose middle lies between the blades."""
    out = []
    for i in blades.ties:
        tie = structure.ties[i]
        share = np.abs(tie.weights) / np.abs(tie.weights).sum()
        middle = share @ state.points[tie.nodes]
        near = abs(float(blades.height(middle[None])[0])) <= TAKEN_M
        if state.holding[i] and near and between(middle[None], blades, where, found)[0]:
            out.append(i)
    return tuple(out)


def without_ties(state: State, structure: Structure, taken: tuple[int, ...]) -> State:
    """Return the state with ties let go, and the friction of a striker that was cut gone with its latch."""
    holding = state.holding.copy()
    holding[list(taken)] = False
    out = replace(state, holding=holding)
    names = {structure.ties[i].name.replace("latch", "wedged striker") for i in taken}
    slips = [i for i, one in enumerate(structure.sliders) if one.name in names]
    if not slips:
        return out
    rows = state.kept.get(SLIP, np.zeros((len(structure.sliders), 4))).copy()
    for i in slips:
        rows[i, WAY] = structure.sliders[i].travel_m
    return replace(out, kept={**state.kept, SLIP: rows})


def severed_bonds(
    made: Severed, points: Floats, state: State, blades: Blades, where: Line, found: Section
) -> Bools:
    """Return which bonds hold one side of the cut to the other, shape (bonds,): those go with it.

    A point's side is that of the triangles round it; where a bond is one of touch it stays.
    """
    s = made.structure
    side = np.zeros(len(s.points))
    count = np.zeros(len(s.points))
    np.add.at(side, s.triangles.ravel(), np.repeat(where.side, 3))
    np.add.at(count, s.triangles.ravel(), 1.0)
    chain = np.unique(np.concatenate([np.zeros(0, np.int64), *(s.beams[i].nodes for i in _still(s, blades))]))
    bare = chain[count[chain] == 0.0]
    side[bare] = np.sign(blades.height(points[made.origin[bare]]))
    count[bare] = 1.0
    side = np.where(np.abs(side) == count, np.sign(side), 0.0)
    b = s.bonds
    r = b.coefficients[:, 0]
    upper = np.sign(np.einsum("ks,ks->k", np.maximum(r, 0.0), side[b.nodes]))
    lower = np.sign(np.einsum("ks,ks->k", np.maximum(-r, 0.0), side[b.nodes]))
    place = np.einsum("ks,ksi->ki", np.abs(r), points[made.origin[b.nodes]])
    place /= np.maximum(np.abs(r).sum(axis=1), 1.0e-12)[:, None]
    holds = (b.law[:, STIFFNESS] > 0.0) & (state.worst[made.bond_origin] < b.law[:, END])
    out: Bools = holds & (upper * lower < 0.0) & between(place, blades, where, found)
    return out


def _still(structure: Structure, blades: Blades) -> list[int]:
    return list(range(len(structure.beams))) if len(blades.beams) else []


def shared_drives(drives: tuple[Drive, ...], made: Severed) -> list[Drive]:
    """Return the tips with a split node's load in equal parts on its pieces."""
    out = []
    for drive in drives:
        nodes, weights = drive.nodes.tolist(), drive.weights.tolist()
        for at, node in enumerate(drive.nodes.tolist()):
            halves = made.pieces.get(node, ())
            for new in halves[1:]:
                nodes.append(new)
                weights.append(weights[at] / len(halves))
            if halves:
                weights[at] /= len(halves)
        out.append(replace(drive, nodes=np.array(nodes, dtype=np.int64), weights=np.array(weights)))
    return out
