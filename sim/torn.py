"""What has torn so far and what is nearest to it: lengths, raw edges, and the rung of the ladder."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.bond import END, LENGTH, RISE
from sim.cuts import cuts_of
from sim.network import Evaluation, Network, State
from sim.split import KIND
from sim.tear import begun_ratios, measure

Ints = NDArray[np.int64]

STILL = 0.99  # share of its worst opening at which a neck counts as opening
PART_WORD = {
    "folding skin": "outer skin",
    "folding inner": "inner panel",
    "folding pillar": "pillar",
    "folding rail": "roof rail",
    "folding rocker": "rocker",
}


def demand(
    network: Network, state: State, ev: Evaluation, barred: Ints | None = None
) -> tuple[str, float] | None:
    """Return part and demand of the line nearest to tearing, 1 when it has torn; None where no sheet can.

    At the end of a line the driving force over Gc, and one while the line's neck opens.  Where there is no
    line yet, the work done so far in a strip as wide as the sheet is thick over Gc; once that necks, its
    opening over the one at which it has torn.
    """
    cuts = cuts_of(network)
    if not len(cuts.node) or not np.isfinite(cuts.cost_j_per_m).any():
        return None
    m = measure(network, cuts, ev, barred)
    begun = begun_ratios(cuts, m.pull_n)
    free = np.where(m.stretch < 0.0, -1.0, begun)
    rows = [
        (float(m.drive.max()), int(cuts.node[m.drive.argmax()])),
        (float(free.max()), int(cuts.node[free.argmax()])),
    ]
    bonds = network.structure.bonds
    necks = np.flatnonzero(bonds.of(KIND) & (state.worst < bonds.law[:, END]))
    if len(necks):
        worst = np.maximum(ev.worst, state.worst)[necks]
        opened = worst / bonds.law[necks, END]
        goes_on = np.isin(bonds.nodes[necks, 0], list(network.structure.lines))
        opens = (network.bond_opening(ev)[necks] >= STILL * worst) & (worst > bonds.law[necks, RISE])
        opened = np.where(goes_on & opens, 1.0, opened)
        rows.append((float(opened.max()), int(bonds.nodes[necks[opened.argmax()], 0])))
    ratio, node = max(rows)
    return part_word(network, node), max(ratio, 0.0)


def _gone(network: Network, state: State) -> Ints:
    """Return the necks that hold no more, as rows of the bonds."""
    bonds = network.structure.bonds
    out: Ints = np.flatnonzero(bonds.of(KIND) & (state.worst >= bonds.law[:, END]))
    return out


def torn_m(network: Network, state: State) -> float:
    """Return the length of line along which nothing holds any more [m]."""
    return float(network.structure.bonds.law[_gone(network, state), LENGTH].sum())


def torn_parts(network: Network, state: State) -> dict[str, float]:
    """Return torn length by part, in the words of events and rungs [m]."""
    out: dict[str, float] = {}
    bonds = network.structure.bonds
    for row in _gone(network, state).tolist():
        part = part_word(network, int(bonds.nodes[row, 1]))
        out[part] = out.get(part, 0.0) + float(bonds.law[row, LENGTH])
    return out


def part_word(network: Network, node: int) -> str:
    """Return which part a node's sheet is, by the line of the books its folding goes to."""
    s = network.structure
    first = int(np.flatnonzero((s.triangles == node).any(axis=1))[0])
    return PART_WORD.get(s.sections[s.triangle_section[first]].group, "inner panel")


def sharp_edge_count(network: Network, state: State) -> int:
    """Return how many raw edges there are: those blades left, and two for every line of torn nodes."""
    gone = _gone(network, state)
    cut = len(network.structure.raw)
    if not len(gone):
        return cut
    bonds, lines = network.structure.bonds, list[set[int]]()
    neighbours = _neighbours(network)
    for row in gone.tolist():
        pair = {int(n) for n in bonds.nodes[row, :2]}
        reach = pair | {n for one in pair for n in neighbours.get(one, ())}
        joined = [line for line in lines if line & reach]
        lines = [line for line in lines if not line & reach]
        lines.append(pair.union(*joined))
    return cut + 2 * len(lines)


def _neighbours(network: Network) -> dict[int, set[int]]:
    s, of_triangle = network.structure, network.rest.triangle_hinges
    out: dict[int, set[int]] = {}
    for t, i in zip(*np.nonzero(of_triangle < 0), strict=True):
        a, b = int(s.triangles[t, (i + 1) % 3]), int(s.triangles[t, (i + 2) % 3])
        out.setdefault(a, set()).add(b)
        out.setdefault(b, set()).add(a)
    return out
