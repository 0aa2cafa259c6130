"""Weight: gravity on the mass of sheets, beams and what they carry, as a law of the network.

    energy = - sum m (x - x_rest) . g

Where the car stands on its wheels the body's tilt turns gravity in the car's axes: with dB what the body
nodes have moved and S = sum m (x - x_rest) the moved masses,

    energy = - g . S - sum_k S_k g . (dB_k - dB_0) / arm,

which also is what moved masses do to the car.  That second part is of the size of a door's weight per metre
and is left out of the stiffness.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from sim.law import Into
from sim.materials import BAR_STEEL
from sim.state import Evaluation, Load, State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

NAME = "weight"


def node_mass_kg(structure: Structure) -> Floats:
    """Return the mass of every node [kg], shape (n,): thirds of triangles, halves of links, what is carried.

    Beams are steel: their section is their E A over steel's modulus.  A chain that stands on a sheet with one
    node at an end is a hinge there, as a window frame on a coarse lattice: its mass is on its feet.
    """
    s = structure
    out = np.zeros(len(s.points))
    a, b, c = (s.points[s.triangles[:, i]] for i in range(3))
    area = 0.5 * np.linalg.norm(np.cross(b - a, c - a), axis=1)
    per_area = np.array([one.thickness_m * one.metal.density_kg_per_m3 for one in s.sections])
    sheet = area * per_area[s.triangle_section] / 3.0
    for i in range(3):
        np.add.at(out, s.triangles[:, i], sheet)
    frame = set() if s.surround is None or s.surround.body is None else set(s.surround.body.nodes.tolist())
    for beam in s.beams:
        if frame & set(beam.nodes.tolist()):
            continue
        per_m = beam.axial_n / BAR_STEEL.young_pa * BAR_STEEL.density_kg_per_m3
        half = 0.5 * per_m * np.linalg.norm(np.diff(s.points[beam.nodes], axis=0), axis=1)
        feet = np.isin(beam.nodes, s.triangles)
        if feet[[0, -1]].all() and not (feet[1] and feet[-2]):
            out[beam.nodes[[0, -1]]] += half.sum()
            continue
        np.add.at(out, beam.nodes[:-1], half)
        np.add.at(out, beam.nodes[1:], half)
    if s.surround is not None:
        for one in s.surround.carried:
            np.add.at(out, one.nodes, one.kg * one.weights)
    return out


def standing_still(structure: Structure) -> Bools:
    """Return which nodes are held in all directions, shape (n,)."""
    if structure.fixed is None:
        return np.zeros(len(structure.points), dtype=np.bool_)
    out: Bools = np.all(structure.fixed, axis=1)
    return out


class Gravity:
    """Gravity on everything that has mass; a `sim.law.Law` that stores and spends nothing."""

    name, line = NAME, ""
    means: Sequence[Ints] = ()

    def __init__(self, structure: Structure) -> None:
        assert structure.surround is not None
        self._rest = structure.points
        self.mass = np.where(standing_still(structure), 0.0, node_mass_kg(structure))
        self._g = structure.surround.gravity_m_s2
        self._body = structure.surround.body

    def forces(self, points: Floats, _: State, __: Load, ev: Evaluation) -> None:
        """Add the weight; set its energy, nothing where everything is at rest."""
        moved = self.mass @ (points - self._rest)
        g = self._g
        energy = -float(moved @ g)
        if self._body is not None:
            nodes = self._body.nodes
            tilt = (points[nodes] - self._rest[nodes])[1:] - (points[nodes] - self._rest[nodes])[0]
            turned = tilt @ g / self._body.arm_m
            energy -= float(moved @ turned)
            share = moved / self._body.arm_m
            ev.forces[nodes[1:]] -= share[:, None] * g
            ev.forces[nodes[0]] += share.sum() * g
            g = g + turned
        ev.forces -= self.mass[:, None] * g
        ev.stored[self.name] = energy

    def stiffness(self, _: Evaluation, __: State, ___: Load, ____: Into) -> None:
        """Add nothing: a weight is the same everywhere."""

    def commit(self, state: State, _: Evaluation) -> State:
        """Return the state as it is."""
        return state
