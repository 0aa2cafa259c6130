"""Tears: a law on the tear line, energy per new torn length, not a strain limit on the element.

A line runs from node to node along edges of the lattice.  Where it runs, the node splits in two and the
halves stay tied by what the neck of the sheet still carries: a force that falls with their distance to
nothing, over an area of

    Gc t s,        s: length of line that the node stands for (half of the edges before and behind it),

so the energy per torn metre is the sheet's own on any lattice, whatever the mix of opening, in-plane shear
and out-of-plane shear.  The work is done by the tips as they move on; nothing has to be released at once.

Whether a node splits is the larger of two measures of the *line*, both one when it runs:

* its driving force over Gc, by the closure of the line one edge on [rybicki-kanninen-1977]: nodal force that
  holds the metal ahead together, times the opening one edge behind, over twice the new area;
* the stretch across it over the stretch at which a thin sheet necks.  It starts a line where there is none
  yet (a smooth edge has no driving force; there it is read from the edge's own length), and on a lattice
  finer than the neck's own zone it is the first to be reached, as it is with a cohesive zone that
  the lattice resolves.

Where the first decides, the neck's force starts at the nodal force that makes the driving force Gc and ends
at the opening that stands one edge behind, so the line runs on smoothly and a coarse lattice releases no more
and no less than a fine one.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.bond import bond_law
from sim.cuts import Cuts, cuts_of
from sim.network import Evaluation, Network

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

SHEAR_OVER_TENSILE = 0.8  # ultimate shear over tensile strength of mild sheet, from memory
LEAST_FORCE_RATIO = 1.0e-3  # of the strength, so that no neck is without force
FORWARD = 0.3  # cosine: edges further off the way of a line are not taken
RISE_SHARE = 0.01  # of the opening at which a neck has torn: up to there it takes up the force it is given


@dataclass(frozen=True)
class Candidate:
    """A cut that may open now.

    node, tip, side : as in `Cuts`;  length_m : of line the node stands for;  cost_j : Gc t times that
    demand_ratio : 1 when the line runs;  force_n : pull that opens the cut, shape (3,) [N]
    drive_ratio : driving force over Gc;  stretch_ratio : stretch over the stretch at which the sheet necks
    line_m : shape (4,), what `Structure.lines` will say of the line's new end
    """

    node: int
    tip: int
    side: tuple[int, ...]
    length_m: float
    cost_j: float
    demand_ratio: float = 0.0
    drive_ratio: float = 0.0
    stretch_ratio: float = 0.0
    force_n: float = 0.0
    line_m: tuple[float, float, float, float] = (0.0, 0.0, 0.0, 0.0)


def opening_force(network: Network, cuts: Cuts, ev: Evaluation) -> Floats:
    """Return the pull that opens every cut, shape (k, 3) [N]: what a tie across it would have to carry.

    Half the difference of what the sheet puts on the two halves of the node; where nothing else acts on the
    node that is the force of either.
    """
    points, corners = ev.points, network.structure.triangles
    on_corner = np.zeros((*corners.shape, 3))  # energy gradient of each triangle's edges by its corners
    for i in range(3):
        a, b = (i + 1) % 3, (i + 2) % 3
        pull = (ev.springs[:, i] / network.rest.rest_length2[:, i])[:, None] * (
            points[corners[:, b]] - points[corners[:, a]]
        )
        on_corner[:, b] += pull
        on_corner[:, a] -= pull
    on_hinge = ev.moments[:, None, None] * ev.gradient
    force: Floats = cuts.from_edges @ on_corner.reshape(-1, 3) + cuts.from_hinges @ on_hinge.reshape(-1, 3)
    return force


@dataclass(frozen=True)
class Heading:
    """Where the lines would go: for every cut, k of them.

    along_m : shape (k,), the edge's length along the way its node's line is driven
    off_m : shape (k, 3), how far the line would then lie off that way;  taken : the cut its node would take
    """

    along_m: Floats
    off_m: Floats
    taken: Bools


def headings(cuts: Cuts, tension: Floats) -> Heading:
    """Return where the line at every node would go, by the tension per length across every cut.

    The way is across the largest tension, as for the tip of a crack in a plane [erdogan-sih-1963]: the mean
    of the node's edges at rest, each weighted by the fourth power of the tension across it.  A lattice has
    edges sixty degrees apart, so the line zigzags: each node takes the edge that keeps the line as a whole,
    its earlier strayings included, nearest to the way.
    """
    count = int(cuts.group.max()) + 1
    top = np.full(count, 1.0e-30)
    np.maximum.at(top, cuts.group, tension)
    weight = (tension / top[cuts.group]) ** 4
    way = np.zeros((count, 3))
    np.add.at(way, cuts.group, (weight / cuts.ahead_m)[:, None] * cuts.edge_m)
    way /= np.maximum(np.linalg.norm(way, axis=1), 1.0e-12)[:, None]
    own = way[cuts.group]
    along = np.einsum("ki,ki->k", cuts.edge_m, own)
    off = cuts.off_m + cuts.edge_m
    off = off - np.einsum("ki,ki->k", off, own)[:, None] * own
    cost = np.round(np.linalg.norm(off, axis=1), 9) + np.where(along > FORWARD * cuts.ahead_m, 0.0, 1.0e3)
    order = np.lexsort((np.arange(len(cost)), cost, cuts.group))
    first = order[np.unique(cuts.group[order], return_index=True)[1]]
    taken = np.zeros(len(cost), dtype=bool)
    taken[first] = True
    return Heading(np.maximum(along, FORWARD * cuts.ahead_m), off, taken)


def drive_ratios(cuts: Cuts, points: Floats, force: Floats, along_m: Floats) -> Floats:
    """Return the driving force of every line over Gc, shape (k,); 0 where no line ends.

    G = F . u / (2 t a), u the opening one edge behind, carried to the edge ahead by the square root of the
    two lengths' ratio [krueger-2004]; a is what the line gains on its way, not the length of a zigzag's edge.
    """
    has = cuts.behind[:, 0] >= 0
    u = points[cuts.behind[:, 1]] - points[cuts.behind[:, 0]]
    scale = np.sqrt(cuts.ahead_m / np.where(has, cuts.back_m, 1.0))
    work = 0.5 * np.einsum("ki,ki->k", force, u) * scale
    ratio: Floats = np.where(has, np.maximum(work, 0.0), 0.0) / (cuts.cost_j_per_m * along_m)
    return ratio


def _tension_and_shear(cuts: Cuts, points: Floats, force: Floats) -> tuple[Floats, Floats]:
    """Return the pull's part across every cut (closing counts nothing) and the rest, shape (k,) [N]."""
    across = cuts.across @ points
    size = np.linalg.norm(across, axis=1)
    normal = np.einsum("ki,ki->k", force, across) / np.maximum(size, 1.0e-12)
    shear2 = np.maximum(np.einsum("ki,ki->k", force, force) - normal**2, 0.0)
    return np.maximum(normal, 0.0), np.sqrt(shear2)


def _stretch(cuts: Cuts, stress: Floats) -> Floats:
    """Return the stretch of each cut's metal at a tension, by its own curve, shape (k,)."""
    young, flow, hardening, _ = cuts.metal.T
    flows = np.maximum(stress - flow, 0.0) / np.maximum(hardening, 1.0e-3 * young)
    out: Floats = stress / young + flows
    return out


def _tension(cuts: Cuts, pull: Floats) -> tuple[Floats, Floats]:
    """Return tension across every cut and the one at which its sheet necks [Pa]; 0 and 1 if it never does."""
    tensile = cuts.metal[:, 3]
    finite = np.isfinite(tensile)
    top = np.where(finite, tensile, 1.0)
    area = np.where(finite, cuts.limit_n_per_m * cuts.share_m, 1.0) / top
    return np.where(finite, pull / area, 0.0), top


def stretch_ratios(cuts: Cuts, pull: Floats) -> Floats:
    """Return the stretch across every cut over the one at which the sheet necks, shape (k,).

    The metal's own curve turns tension into stretch, so the measure keeps growing once the sheet yields.
    """
    stress, top = _tension(cuts, pull)
    ratio: Floats = _stretch(cuts, stress) / _stretch(cuts, top)
    return ratio


def edge_pulls(network: Network, cuts: Cuts, points: Floats) -> Floats:
    """Return the tension at every node that goes with the stretch of the free edge there, shape (k,) [N].

    A free edge is pulled along itself and in no other way, so its stretch, by the metal's own curve, is all
    there is.  It is the mean of the edge's two pieces, in the Green strain the metal's curve is given in:
    what else pulls on the node does not enter, and how the triangles lie round it does not either.
    """
    rest = network.structure.points
    strain = np.zeros(len(cuts.node))
    for side in (0, 1):
        other = cuts.lips[:, side]
        now = np.linalg.norm(points[other] - points[cuts.node], axis=1)
        was = np.linalg.norm(rest[other] - rest[cuts.node], axis=1)
        strain += 0.25 * ((now / was) ** 2 - 1.0)
    young, flow, hardening, tensile = cuts.metal.T
    past = np.maximum(strain - flow / young, 0.0) / (
        1.0 / young + 1.0 / np.maximum(hardening, 1.0e-3 * young)
    )
    stress = np.minimum(np.maximum(strain, 0.0) * young, flow) + past
    thickness = np.where(
        np.isfinite(tensile), cuts.limit_n_per_m / np.where(np.isfinite(tensile), tensile, 1.0), 0.0
    )
    pull: Floats = stress * thickness * cuts.share_m
    return pull


def begun_ratios(cuts: Cuts, pull: Floats) -> Floats:
    """Return the work of stretching a strip as wide as the sheet is thick, over Gc, shape (k,).

    At the onset of the neck that is a few percent: nearly all the work of a tear is done in its neck.
    """
    stress, top = _tension(cuts, pull)
    stress = np.minimum(stress, top)
    thickness = np.where(np.isfinite(cuts.limit_n_per_m), cuts.limit_n_per_m, 0.0) / top
    work = 0.5 * (stress + np.minimum(stress, cuts.metal[:, 1])) * _stretch(cuts, stress)
    # Gc t per length over t is Gc; the strip's width is t
    ratio: Floats = work * thickness**2 / cuts.cost_j_per_m
    return ratio


@dataclass(frozen=True)
class Measures:
    """How near every cut is to opening, k of them.

    force_n : pull that opens it, shape (k, 3);  pull_n : its tension and shear as one tension; on a smooth
        edge the tension that goes with the edge's stretch
    drive, stretch : the two ratios, shape (k,);  -1 for cuts that are not taken
    """

    force_n: Floats
    pull_n: Floats
    drive: Floats
    stretch: Floats
    heading: Heading


def measure(network: Network, cuts: Cuts, ev: Evaluation, barred: Ints | None = None) -> Measures:
    """Return how near every cut is to opening.

    Parameters
    ----------
    barred : nodes that do not split: those under a pad, which moves all the metal it bears on alike
    """
    force = opening_force(network, cuts, ev)
    tension, shear = _tension_and_shear(cuts, ev.points, force)
    pull = np.hypot(tension, shear / SHEAR_OVER_TENSILE)
    # where nothing pulls a node apart, the shear alone tells where it would go
    pulled = np.zeros(int(cuts.group.max()) + 1, dtype=bool)
    np.logical_or.at(pulled, cuts.group, tension > 0.0)
    heading = headings(cuts, np.where(pulled[cuts.group], tension, pull) / cuts.share_m)
    drive = drive_ratios(cuts, ev.points, force, heading.along_m)
    off = ~heading.taken if barred is None else ~heading.taken | np.isin(cuts.node, barred)
    pull = np.where(cuts.behind[:, 0] < 0, edge_pulls(network, cuts, ev.points), pull)
    stretch = np.where(off, -1.0, stretch_ratios(cuts, pull))
    return Measures(force, pull, np.where(off, -1.0, drive), stretch, heading)


def worst_cut(network: Network, ev: Evaluation, barred: Ints | None = None) -> Candidate | None:
    """Return the cut nearest to opening, or None where there is no sheet that can tear."""
    cuts = cuts_of(network)
    if not len(cuts.node) or not np.isfinite(cuts.cost_j_per_m).any():
        return None
    m = measure(network, cuts, ev, barred)
    demand = np.maximum(m.drive, m.stretch)
    k = int(np.argmax(demand))
    if demand[k] < 0.0:
        return None
    held = float(np.linalg.norm(m.force_n[k]))
    if m.drive[k] >= m.stretch[k]:  # what the neck takes up is the part along the opening it will have
        u = ev.points[cuts.behind[k, 1]] - ev.points[cuts.behind[k, 0]]
        held = float(m.force_n[k] @ u) / max(float(np.linalg.norm(u)), 1.0e-12)
    length = 0.5 * float(cuts.gone_m[k] + m.heading.along_m[k])
    x, y, z = m.heading.off_m[k].tolist()
    return Candidate(
        int(cuts.node[k]), int(cuts.tip[k]), cuts.side[k], length, float(cuts.cost_j_per_m[k]) * length,
        float(demand[k]), float(m.drive[k]), float(m.stretch[k]), max(held, 0.0),
        (float(m.heading.along_m[k]), x, y, z),
    )  # fmt: skip


def neck_law(tear: Candidate, limit_n_per_m: float) -> Floats:
    """Return the law of the neck between the halves of a split node.

    It begins at the nodal force, brought back to the moment at which the driving force was Gc (force goes as
    its root), and its area is Gc t times the length: see the head of this module.
    """
    force = tear.force_n / max(tear.drive_ratio, 1.0) ** 0.5
    force = max(force, LEAST_FORCE_RATIO * limit_n_per_m * tear.length_m)
    strength = (1.0 - RISE_SHARE) * force / tear.length_m
    energy = tear.cost_j / tear.length_m
    rise = RISE_SHARE * 2.0 * energy / strength
    return bond_law(
        strength=strength,
        energy=energy,
        shear_ratio=1.0,
        rise_m=rise,
        plateau_share=0.0,
        pressure=strength / rise,
        length_m=tear.length_m,
    )
