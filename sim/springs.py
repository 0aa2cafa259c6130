"""Springs on nodes and on weighted means: ties, the rim, the tool, fixed loads and viscosity.

Each class is a `sim.law.Law`; they are evaluated in the order of `sim.network.LAWS`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel
from sim.law import Into
from sim.state import Drive, Evaluation, Load, State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@kernel
def tie_forces(
    points: Floats,
    start: Ints,
    nodes: Ints,
    weights: Floats,
    stiffness: Floats,
    rest: Floats,
    holding: Bools,
    force: Floats,
    stored: Floats,
    forces: Floats,
) -> None:
    """Evaluate all ties: nodes and weights of tie i are ``start[i]`` to ``start[i + 1]``.

    ``force`` (k, 3) [N] and ``stored`` (k,) [J] are filled, ``forces`` (n, 3) is added to.
    """
    for i in range(stiffness.shape[0]):
        stored[i] = 0.0
        for k in range(3):
            force[i, k] = 0.0
        if not holding[i]:
            continue
        for k in range(3):
            pull = -rest[i, k]
            for j in range(start[i], start[i + 1]):
                pull += weights[j] * points[nodes[j], k]
            force[i, k] = stiffness[i] * pull
            stored[i] += 0.5 * stiffness[i] * pull * pull
            for j in range(start[i], start[i + 1]):
                forces[nodes[j], k] += weights[j] * force[i, k]


class Ties:
    """Stiff springs from weighted means to their rest: latch, hinges, feet."""

    name, line = "ties", ""

    def __init__(self, structure: Structure, _: tuple[Drive, ...]) -> None:
        self._ties = structure.ties
        self._start = np.cumsum([0, *(len(t.nodes) for t in self._ties)]).astype(np.int64)
        self._nodes = np.concatenate([np.zeros(0, np.int64), *(t.nodes for t in self._ties)])
        self._weights = np.concatenate([np.zeros(0), *(t.weights for t in self._ties)])
        # what bends before it lets go is a law of its own: `sim.giving`
        self._stiffness = np.array(
            [0.0 if t.give_m > 0.0 else t.stiffness_n_per_m for t in self._ties], dtype=float
        )
        self._rest = np.array([t.weights @ structure.points[t.nodes] for t in self._ties]).reshape(-1, 3)

    @property
    def means(self) -> Sequence[Ints]:
        """Return the nodes of each tie."""
        return [tie.nodes for tie in self._ties]

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add what the ties that hold pull with; fill ``ev.tie_force`` (ties, 3) [N] and their energy."""
        tie_forces(
            points,
            self._start,
            self._nodes,
            self._weights,
            self._stiffness,
            self._rest,
            state.holding,
            ev.tie_force,
            ev.tie_stored,
            ev.forces,
        )
        ev.stored[self.name] = float(ev.tie_stored.sum())

    def stiffness(self, _: Evaluation, state: State, __: Load, into: Into) -> None:
        """Add the ties that hold."""
        for i, tie in enumerate(self._ties):
            if state.holding[i]:
                into.mean(i, tie.weights, self._stiffness[i] * np.eye(3))

    def commit(self, state: State, _: Evaluation) -> State:
        """Return the state as it is: ties let go one at a time, by `Network.release_tie`."""
        return state


class Rim:
    """The rigid face under the inner bend: pushes outboard, never pulls."""

    name, line = "rim", ""
    means: Sequence[Ints] = ()

    def __init__(self, structure: Structure, _: tuple[Drive, ...]) -> None:
        self._s = structure

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add the rim's push; fill ``ev.rim_push`` (rim nodes,) [N], >= 0."""
        s = self._s
        ev.stored[self.name] = 0.0
        if not len(s.rim):
            return
        depth = np.where(state.on_rim, np.minimum(s.outboard_sign * (points[s.rim, 1] - s.rim_y_m), 0.0), 0.0)
        ev.rim_push = -s.rim_stiffness_n_per_m * depth
        ev.stored[self.name] = 0.5 * s.rim_stiffness_n_per_m * float(depth @ depth)
        np.add.at(ev.forces[:, 1], s.rim, -s.outboard_sign * ev.rim_push)

    def stiffness(self, ev: Evaluation, _: State, __: Load, into: Into) -> None:
        """Add the nodes that press."""
        s = self._s
        into.nodes(s.rim[ev.rim_push > 0.0], np.diag([0.0, s.rim_stiffness_n_per_m, 0.0]))

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with the rim left where a node slid off, met again only from zero gap."""
        s = self._s
        y = ev.points[s.rim, 1]
        slid = np.hypot(ev.points[s.rim, 0] - s.points[s.rim, 0], ev.points[s.rim, 2] - s.points[s.rim, 2])
        on_rim = np.where(
            state.on_rim,
            slid < s.rim_width_m,
            (slid < 0.8 * s.rim_width_m) & (s.outboard_sign * (y - s.rim_y_m) >= 0.0),
        )
        return replace(state, on_rim=on_rim)


class Tool:
    """The tool's contacts: weighted means pushed along a line to a given travel."""

    name, line = "tool", ""

    def __init__(self, _: Structure, drives: tuple[Drive, ...]) -> None:
        self._drives = drives

    @property
    def means(self) -> Sequence[Ints]:
        """Return the nodes of each contact."""
        return [drive.nodes for drive in self._drives]

    def forces(self, points: Floats, _: State, load: Load, ev: Evaluation) -> None:
        """Add what the tips push with; fill ``ev.drive_force`` (drives,) [N]."""
        stored = 0.0
        for i, drive in enumerate(self._drives):
            if drive.grip is not None or drive.strut is not None:
                continue
            gap = load.travel_m[i] - drive.travel(points)
            if drive.pushes_only and gap < 0.0:
                gap = 0.0
            ev.drive_force[i] = drive.stiffness_n_per_m * gap
            stored += 0.5 * drive.stiffness_n_per_m * gap * gap
            ev.forces[drive.nodes] -= drive.weights[:, None] * ev.drive_force[i] * drive.direction
        ev.stored[self.name] = stored

    def stiffness(self, ev: Evaluation, _: State, __: Load, into: Into) -> None:
        """Add the contacts that push."""
        for i, drive in enumerate(self._drives):
            plain = drive.grip is None and drive.strut is None
            if plain and (ev.drive_force[i] > 0.0 or not drive.pushes_only):
                k = drive.stiffness_n_per_m * np.outer(drive.direction, drive.direction)
                into.mean(i, drive.weights, k)

    def commit(self, state: State, _: Evaluation) -> State:
        """Return the state as it is: a contact remembers nothing."""
        return state


class Loads:
    """Fixed forces, and the drag that holds every node to where the increment began."""

    name, line = "loads", ""
    means: Sequence[Ints] = ()

    def __init__(self, structure: Structure, _: tuple[Drive, ...]) -> None:
        self._rest = structure.points

    def forces(self, points: Floats, _: State, load: Load, ev: Evaluation) -> None:
        """Add both; fill ``ev.dead_energy`` and ``ev.viscous_energy`` [J]."""
        ev.dead_energy = 0.0
        if load.dead_n is not None:
            ev.forces -= load.dead_n
            ev.dead_energy = -float(np.sum(load.dead_n * (points - self._rest)))
        ev.viscous_energy = 0.0
        if load.viscous_n_per_m > 0.0 and load.origin is not None:
            moved = points - load.origin
            ev.forces += load.viscous_n_per_m * moved
            ev.viscous_energy = 0.5 * load.viscous_n_per_m * float(np.sum(moved * moved))
        if load.drag_n_per_m is not None and load.origin is not None:
            moved = points - load.origin
            drag = load.drag_n_per_m[:, None] * moved
            ev.forces += drag
            ev.viscous_energy += 0.5 * float(np.sum(drag * moved))

    def stiffness(self, ev: Evaluation, _: State, load: Load, into: Into) -> None:
        """Add the drag of every node."""
        if load.viscous_n_per_m > 0.0 and load.origin is not None:
            into.nodes(np.arange(len(ev.points)), load.viscous_n_per_m * np.eye(3))
        if load.drag_n_per_m is not None and load.origin is not None:
            into.nodes(np.arange(len(ev.points)), load.drag_n_per_m[:, None, None] * np.eye(3))

    def commit(self, state: State, _: Evaluation) -> State:
        """Return the state as it is."""
        return state
