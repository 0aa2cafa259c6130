"""The load path: how much of the push passes from node to node, balanced at every node.

Every spring of the network (edge, hinge, bond, link, bend) puts forces on its own few nodes that sum to
nothing.  Their components along the push are a flow: what one node of the spring receives, another gives.
Summed over all springs, the flow out of a node equals what acts on it from outside (tip, latch, hinge, rim,
viscous term), to the balance of the equilibrium itself.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.beam import bend_forces, link_forces
from sim.bond import bond_forces
from sim.network import Evaluation, Network

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

DRAWN_COUNT = 2000  # strongest flows kept for pictures: about half, with all but a twentieth of the force


@dataclass(frozen=True)
class LoadPath:
    """A flow of force along the push.

    pairs : shape (k, 2), from node to node;  flow_n : shape (k,), passed on along the direction, >= 0 [N]
    """

    pairs: Ints
    flow_n: Floats

    def out_of(self, count: int) -> Floats:
        """Return the net flow out of each node, shape (count,) [N]."""
        net = np.zeros(count)
        np.add.at(net, self.pairs[:, 0], self.flow_n)
        np.add.at(net, self.pairs[:, 1], -self.flow_n)
        return net

    def strongest(self, count: int = DRAWN_COUNT) -> LoadPath:
        """Return the strongest flows only, for drawing."""
        keep = np.argsort(-self.flow_n, kind="stable")[:count]
        return LoadPath(self.pairs[keep], self.flow_n[keep])


NO_PATH = LoadPath(np.zeros((0, 2), np.int64), np.zeros(0))


def _groups(network: Network, ev: Evaluation) -> list[tuple[Ints, Floats]]:
    """Return (nodes (k, m), forces on them (k, m, 3)) of every kind of spring."""
    s, rest, x = network.structure, network.rest, ev.points
    out = []
    for i in range(3):
        a, b = s.triangles[:, (i + 1) % 3], s.triangles[:, (i + 2) % 3]
        pull = (ev.springs[:, i] / rest.rest_length2[:, i])[:, None] * (x[b] - x[a])
        out.append((np.stack([a, b], axis=1), np.stack([-pull, pull], axis=1)))
    out.append((rest.hinges, ev.moments[:, None, None] * ev.gradient))
    out += [_bonds(network, ev), _links(network, ev), _bends(network, ev)]
    return out


def _apart(points: Floats, nodes: Ints) -> tuple[Floats, Ints]:
    """Return points and node ids with every spring on nodes of its own, so its forces can be told apart."""
    own = np.where(nodes < 0, -1, np.arange(nodes.size).reshape(nodes.shape))
    return np.ascontiguousarray(points[nodes].reshape(-1, 3)), own


def _bonds(network: Network, ev: Evaluation) -> tuple[Ints, Floats]:
    b = network.structure.bonds
    points, nodes = _apart(ev.points, b.nodes)
    forces = np.zeros_like(points)
    active = np.zeros(len(nodes), dtype=bool)
    one, two, three, four, five = np.zeros((5, len(nodes)))
    pressed = ev.normal_force < 0.0
    # with what has been reached as the worst so far every law answers with the same force
    bond_forces(
        points, nodes, b.coefficients, b.plane, b.law, ev.worst, pressed, active, one, two, three, four, five,
        forces,
    )  # fmt: skip
    return b.nodes, forces.reshape(len(nodes), -1, 3)


def _links(network: Network, ev: Evaluation) -> tuple[Ints, Floats]:
    points, nodes = _apart(ev.points, network.beams.links)
    forces = np.zeros_like(points)
    one, two = np.zeros((2, len(nodes)))
    link_forces(points, nodes, network.beams.link_length, network.beams.link_axial, one, two, forces)
    return network.beams.links, forces.reshape(len(nodes), -1, 3)


def _bends(network: Network, ev: Evaluation) -> tuple[Ints, Floats]:
    points, nodes = _apart(ev.points, network.beams.bends)
    forces = np.zeros_like(points)
    turn, moment = np.zeros((2, len(nodes), 2))
    one, two = np.zeros((2, len(nodes)))
    no_limit = np.full(len(nodes), np.inf)
    bend_forces(
        points,
        nodes,
        network.beams.bend_rest,
        network.beams.bend_stiffness,
        no_limit,
        ev.turn,
        turn,
        moment,
        one,
        two,
        forces,
    )
    return network.beams.bends, forces.reshape(len(nodes), -1, 3)


def load_path(network: Network, ev: Evaluation, direction: Floats) -> LoadPath:
    """Return the flow of the push's component along ``direction`` at an equilibrium.

    Within a spring of more than two nodes what flows is shared in proportion.

    Parameters
    ----------
    direction : unit vector of the push, shape (3,)
    """
    count = len(network.structure.points)
    keys, flows = [], []
    for nodes, forces in _groups(network, ev):
        along = -(forces @ direction)  # what the spring pushes its nodes with
        give, take = np.maximum(-along, 0.0), np.maximum(along, 0.0)
        total = np.maximum(give.sum(axis=1), 1.0e-300)
        passed = give[:, :, None] * take[:, None, :] / total[:, None, None]
        start = np.broadcast_to(nodes[:, :, None], passed.shape)
        end = np.broadcast_to(nodes[:, None, :], passed.shape)
        real = passed > 0.0
        keys.append(start[real] * count + end[real])
        flows.append(passed[real])
    unique, place = np.unique(np.concatenate(keys), return_inverse=True)
    flow = np.bincount(place, np.concatenate(flows), minlength=len(unique))
    start, end = unique // count, unique % count
    # what goes both ways between two nodes cancels
    back = np.searchsorted(unique, end * count + start)
    back = np.where(back < len(unique), back, 0)
    opposite = np.where(unique[back] == end * count + start, flow[back], 0.0)
    net: Floats = np.asarray(flow - opposite, dtype=float)
    keep = net > 0.0
    pairs = np.stack([start, end], axis=1)[keep].astype(np.int64)
    return LoadPath(pairs, net[keep])
