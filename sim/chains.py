"""A structure's beams compiled: every link and bend in one list each, evaluated by `sim.beam`."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.beam import bend_curvature, bend_forces, bend_stiffness, bend_vectors, link_forces, link_stiffness
from sim.small import scatter_dense
from sim.state import Evaluation, State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

REFERENCE_M = 0.2  # a bend's reference node lies about this far beside its chain


def _reference(points: Floats, used: Ints, bend: Ints) -> int:
    """Return the node a bend's directions are read against: beside the chain, about 0.2 m off; -1 if none."""
    a, b, _ = points[bend]
    along = (b - a) / np.linalg.norm(b - a)
    away = points[used] - b
    length = away @ along
    reach = np.linalg.norm(away - length[:, None] * along, axis=1)
    cost = np.abs(reach - REFERENCE_M) + np.abs(length)
    cost[(reach < 0.02) | (reach < 0.5 * np.abs(length)) | np.isin(used, bend)] = np.inf
    best = int(np.argmin(np.round(cost, 9))) if len(cost) else 0
    return int(used[best]) if len(cost) and np.isfinite(cost[best]) else -1


class Chains:
    """Links and bends of all beams.

    links : shape (k, 2), with ``link_length`` [m] and ``link_axial`` E A [N]
    bends : shape (k, 4), with ``bend_stiffness`` [N m], ``bend_limit`` [N m] and ``bend_rest`` (k, 2) [rad]
    link_beam, bend_beam : which beam each belongs to
    """

    def __init__(self, structure: Structure) -> None:
        links, length, axial, bends, bending, limit, rest = [], [], [], [], [], [], []
        self.link_beam: list[int] = []
        self.bend_beam: list[int] = []
        s = structure
        x = s.points
        used = np.unique(np.concatenate([s.triangles.ravel(), *[b.nodes for b in s.beams]]))
        v, kappa = np.zeros(9), np.zeros(2)
        for index, beam in enumerate(s.beams):
            n = beam.nodes
            own = used if beam.beside is None else np.intersect1d(used, beam.beside)
            sizes = np.linalg.norm(np.diff(x[n], axis=0), axis=1)
            for i in range(len(n) - 1):
                links.append((n[i], n[i + 1]))
                length.append(sizes[i])
                axial.append(beam.axial_n)
                self.link_beam.append(index)
            for i in range(1, len(n) - 1):
                bends.append((n[i - 1], n[i], n[i + 1], _reference(x, own, n[i - 1 : i + 2])))
                bending.append(beam.bending_n_m2 / (0.5 * (sizes[i - 1] + sizes[i])))
                limit.append(beam.plastic_moment_n_m)
                bend_vectors(x, np.array(bends[-1], dtype=np.int64), v)
                bend_curvature(v, kappa)
                rest.append(kappa.copy())
                self.bend_beam.append(index)
        self.links = np.array(links, dtype=np.int64).reshape(-1, 2)
        self.link_length, self.link_axial = np.array(length, float), np.array(axial, float)
        self.bends = np.array(bends, dtype=np.int64).reshape(-1, 4)
        self.bend_stiffness, self.bend_limit = np.array(bending, float), np.array(limit, float)
        self.bend_rest = np.array(rest, float).reshape(-1, 2)
        self._link_room, self._every_link = np.zeros((len(self.links), 6, 6)), np.ones(len(self.links), bool)
        self._bend_room, self._every_bend = (
            np.zeros((len(self.bends), 12, 12)),
            np.ones(len(self.bends), bool),
        )

    def forces(self, state: State, ev: Evaluation) -> None:
        """Add the forces of all links and bends; fill their energies, tensions, moments and turns."""
        link_forces(
            ev.points, self.links, self.link_length, self.link_axial, ev.link_stored, ev.tension, ev.forces
        )
        bend_forces(
            ev.points,
            self.bends,
            self.bend_rest,
            self.bend_stiffness,
            self.bend_limit,
            state.turn,
            ev.turn,
            ev.moment,
            ev.bend_stored,
            ev.bend_folding,
            ev.forces,
        )

    def stiffness(
        self, ev: Evaluation, state: State, blocks: tuple[Ints, Ints], values: Floats, *, positive: bool
    ) -> None:
        """Add the stiffness of all links and bends; ``positive`` leaves out what compression takes away."""
        link_stiffness(
            ev.points, self.links, self.link_length, self.link_axial, ev.tension, positive, self._link_room
        )
        scatter_dense(self.links, blocks[0], self._every_link, self._link_room, values)
        bend_stiffness(
            ev.points,
            self.bends,
            self.bend_rest,
            self.bend_stiffness,
            self.bend_limit,
            state.turn,
            self._bend_room,
        )
        scatter_dense(self.bends, blocks[1], self._every_bend, self._bend_room, values)
