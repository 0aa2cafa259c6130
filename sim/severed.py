"""A structure with some of its lattice edges opened, and the state taken over: same places, same stress.

Every node on an opened edge becomes as many nodes as there are pieces of sheet round it.  What holds on to
the node goes with the piece it stood on: a bond whose points lie in a triangle with that triangle, a bond of
a single node in equal shares to all pieces, a tie or a beam with the side it lies on.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.bond import LENGTH
from sim.network import Network, State
from sim.split import carried_stress
from sim.structure import Beam, Bonds, Structure
from sim.surround import Surround

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@dataclass(frozen=True)
class Severed:
    """What became of a structure.

    origin : shape (n,), the old node each node was;  pieces : the halves of each old node that came apart
    bond_origin : shape (bonds,), the old bond each bond was;  rim_origin : the same for the rim
    """

    structure: Structure
    origin: Ints
    pieces: Mapping[int, tuple[int, ...]]
    bond_origin: Ints
    rim_origin: Ints


def _groups(triangles: Ints, mine: Sequence[int], node: int, opened: set[tuple[int, int]]) -> list[list[int]]:
    """Return the triangles round a node in pieces that hang together by edges that are not opened."""
    by_edge: dict[int, list[int]] = {}
    for t in mine:
        for other in triangles[t].tolist():
            if other != node:
                by_edge.setdefault(other, []).append(t)
    parent = {t: t for t in mine}

    def root(t: int) -> int:
        while parent[t] != t:
            t = parent[t]
        return t

    for other, pair in by_edge.items():
        if len(pair) == 2 and (min(node, other), max(node, other)) not in opened:
            a, b = root(pair[0]), root(pair[1])
            parent[max(a, b)] = min(a, b)
    out: dict[int, list[int]] = {}
    for t in mine:
        out.setdefault(root(t), []).append(t)
    return [out[key] for key in sorted(out)]


def severed(
    structure: Structure, edges: Ints, height_m: Floats, beam_gaps: Sequence[tuple[int, int]] = ()
) -> Severed:
    """Return the structure with edges opened.

    Parameters
    ----------
    edges : shape (k, 2), node pairs;  height_m : shape (n,), how far each node lies off the plane of the cut
    beam_gaps : (beam, link) that are parted, the link between a beam's nodes ``link`` and ``link + 1``
    """
    opened = {(int(min(e)), int(max(e))) for e in edges}
    triangles = structure.triangles.copy()
    owners: dict[int, list[int]] = {int(n): [] for n in np.unique(edges)}
    for t, corners in enumerate(structure.triangles.tolist()):
        for n in corners:
            if n in owners:
                owners[n].append(t)
    origin = list(range(len(structure.points)))
    pieces: dict[int, tuple[int, ...]] = {}
    groups: dict[int, list[list[int]]] = {}
    for node, mine in owners.items():
        found = []
        for before in _groups(structure.triangles, mine, node, set()):
            inside = set(before)
            after = [g for g in _groups(structure.triangles, mine, node, opened) if inside & set(g)]
            found.append(after[0])
            for part in after[1:]:
                new = len(origin)
                origin.append(node)
                triangles[part] = np.where(triangles[part] == node, new, triangles[part])
                pieces[node] = (*pieces.get(node, (node,)), new)
                groups.setdefault(node, [after[0]]).append(part)
    source = np.array(origin, dtype=np.int64)
    split = _Split(structure, pieces, groups, height_m)
    bonds, bond_origin = split.bonds()
    rim, rim_origin = split.rim()
    made = replace(
        structure,
        points=structure.points[source],
        triangles=triangles,
        beams=split.beams(beam_gaps),
        bonds=bonds,
        ties=tuple(replace(t, nodes=split.seat(t.nodes, t.weights)) for t in structure.ties),
        sliders=tuple(replace(s, nodes=split.seat(s.nodes, s.weights)) for s in structure.sliders),
        rim=rim,
        rim_y_m=structure.rim_y_m[rim_origin],
        fixed=None if structure.fixed is None else structure.fixed[source],
        surround=split.surround(),
    )
    return Severed(made, source, pieces, bond_origin, rim_origin)


@dataclass(frozen=True)
class _Split:
    """The pieces of every split node, with the triangles of each, and what follows them."""

    structure: Structure
    pieces: Mapping[int, tuple[int, ...]]
    groups: Mapping[int, list[list[int]]]
    height_m: Floats

    def _on_side(self, node: int, height_m: float) -> int:
        """Return the piece of a node that lies on the side of a height off the plane."""
        triangles = self.structure.triangles
        heights = [float(self.height_m[triangles[g]].mean()) for g in self.groups[node]]
        pick = int(np.argmax(heights)) if height_m > self.height_m[node] else int(np.argmin(heights))
        return self.pieces[node][pick]

    def _beside(self, node: int, others: set[int]) -> list[int]:
        """Return the piece of a node with most of some other nodes in one triangle; all when none has any."""
        triangles = self.structure.triangles
        most = [max(len(others & set(triangles[t].tolist())) for t in g) for g in self.groups[node]]
        if max(most) == 0:
            return list(self.pieces[node])
        return [self.pieces[node][int(np.argmax(most))]]

    def bonds(self) -> tuple[Bonds, Ints]:
        """Return the bonds on the pieces, and the old row of each; a bond of a single node is shared out."""
        b = self.structure.bonds
        nodes, law, source = b.nodes.copy(), b.law.copy(), list(range(len(b.law)))
        extra_nodes, extra_law = [], []
        for row in np.flatnonzero(np.isin(nodes, list(self.pieces)).any(axis=1)).tolist():
            used = set(b.nodes[row].tolist())
            choice = {n: self._beside(n, used - {n}) for n in used if n in self.pieces}
            count = max(len(found) for found in choice.values())
            law[row, LENGTH] /= count
            for k in range(count):
                own = np.array(
                    [choice[n][min(k, len(choice[n]) - 1)] if n in choice else n for n in b.nodes[row]]
                )
                if k == 0:
                    nodes[row] = own
                else:
                    extra_nodes.append(own)
                    extra_law.append(law[row].copy())
                    source.append(row)
        origin = np.array(source, dtype=np.int64)
        if extra_nodes:
            nodes = np.concatenate([nodes, np.array(extra_nodes, dtype=np.int64)])
            law = np.concatenate([law, np.array(extra_law)])
        made = replace(
            b,
            nodes=nodes,
            law=law,
            coefficients=b.coefficients[origin],
            plane=b.plane[origin],
            kind=b.kind[origin],
            station=b.station[origin],
            reach=b.reach[origin],
        )
        return made, origin

    def seat(self, nodes: Ints, weights: Floats) -> Ints:
        """Return the nodes of a tie, those that split on the side its own foot lies on."""
        out = nodes.copy()
        for at in np.flatnonzero(np.isin(nodes, list(self.pieces))).tolist():
            foot = weights * weights[at] > 0.0
            middle = float(np.abs(weights[foot]) @ self.height_m[nodes[foot]] / np.abs(weights[foot]).sum())
            out[at] = self._on_side(int(nodes[at]), middle)
        return out

    def surround(self) -> Surround | None:
        """Return what the structure stands among: loads and props on their side, every piece an edge."""
        around = self.structure.surround
        if around is None:
            return None
        edges = around.edges
        if edges is not None:
            more = [(n, k) for k, old in enumerate(edges.nodes.tolist()) for n in self.extra(old)]
            nodes, source = np.array(more, dtype=np.int64).reshape(-1, 2).T
            edges = replace(
                edges,
                nodes=np.concatenate([edges.nodes, nodes]),
                node_body=np.concatenate([edges.node_body, edges.node_body[source]]),
            )
        return replace(
            around,
            carried=tuple(replace(c, nodes=self.seat(c.nodes, c.weights)) for c in around.carried),
            props=tuple(replace(p, nodes=self.seat(p.nodes, p.weights)) for p in around.props),
            edges=edges,
            near=None,
        )

    def extra(self, node: int) -> tuple[int, ...]:
        """Return the new pieces of a node."""
        return self.pieces.get(int(node), ())[1:]

    def rim(self) -> tuple[Ints, Ints]:
        """Return the nodes of the rim, every piece of a split one, and the old row of each."""
        rim, source = self.structure.rim.tolist(), list(range(len(self.structure.rim)))
        for row, node in enumerate(self.structure.rim.tolist()):
            for new in self.extra(node):
                rim.append(new)
                source.append(row)
        return np.array(rim, dtype=np.int64), np.array(source, dtype=np.int64)

    def beams(self, gaps: Sequence[tuple[int, int]]) -> tuple[Beam, ...]:
        """Return the beams: parted links left out, and parted too where a node of theirs came apart."""
        out: list[Beam] = []
        for index, beam in enumerate(self.structure.beams):
            chains: list[list[int]] = [[]]
            count = len(beam.nodes)
            for k, node in enumerate(beam.nodes.tolist()):
                back = self._link(beam.nodes, k, -1) if k else node
                on = self._link(beam.nodes, k, 1) if k < count - 1 else node
                back = on if k == 0 else back
                on = back if k == count - 1 else on
                chains[-1].append(back)
                if on != back:
                    chains.append([on])
                if (index, k) in gaps:
                    chains.append([])
            left = [c for c in chains if len(c) > 1]
            out += [replace(beam, nodes=np.array(c, dtype=np.int64)) for c in left]
        return tuple(out)

    def _link(self, nodes: Ints, k: int, step: int) -> int:
        """Return the piece of a beam's node that the link to its neighbour hangs on."""
        node, other = int(nodes[k]), int(nodes[k + step])
        if node not in self.pieces:
            return node
        found = self._beside(node, {other})
        return found[0] if len(found) == 1 else self._on_side(node, float(self.height_m[other]))


def carried(state: State, former: Network, network: Network, made: Severed) -> State:
    """Return the state of the severed structure's network: same places, same stress, bonds as worn as before.

    A bend that lost a neighbour is gone with its plastic turn.
    """
    bends = {tuple(b): k for k, b in enumerate(former.beams.bends[:, :3].tolist())}
    turn = np.zeros((len(network.beams.bends), 2))
    for k, bend in enumerate(made.origin[network.beams.bends[:, :3]].tolist()):
        if tuple(bend) in bends:
            turn[k] = state.turn[bends[tuple(bend)]]
    extra = len(network.structure.bonds.law) - len(made.bond_origin)
    points = state.points[made.origin]
    angle, plastic = carried_stress(state, former, network, made.origin)
    return replace(
        state,
        points=points,
        plastic=plastic,
        turn=turn,
        worst=np.concatenate([state.worst[made.bond_origin], np.zeros(extra)]),
        touching=np.concatenate([state.touching[made.bond_origin], np.ones(extra, bool)]),
        on_rim=state.on_rim[made.rim_origin],
        angle=angle,
    )
