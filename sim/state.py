"""What the metal remembers, what acts on it, and what came out of one look at the forces."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from sim.grip import Grip
from sim.strut import Strut

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True)
class State:
    """Everything the metal remembers between increments.

    points : shape (n, 3) [m];  plastic : (m, 7, 3);  hardening : (m, 7)
    turn : (bends, 2) [rad];  worst : (bonds,) [m];  touching : (bonds,)
    holding : (ties,);  on_rim : (rim nodes,)
    angle : (hinges,) [rad], counted on past half a turn
    kept : what further laws remember, each under a key that begins with its own name
    """

    points: Floats
    plastic: Floats
    hardening: Floats
    turn: Floats
    worst: Floats
    touching: Bools
    holding: Bools
    on_rim: Bools
    angle: Floats
    kept: Mapping[str, Floats] = field(default_factory=dict)

    def sha256(self) -> str:
        """Return the hash of the whole state, as hexadecimal digits."""
        digest = hashlib.sha256()
        for part in (self.points, self.plastic, self.hardening, self.turn, self.worst):
            digest.update(np.ascontiguousarray(part + 0.0).tobytes())
        for flag in (self.touching, self.holding, self.on_rim):
            digest.update(np.ascontiguousarray(flag).tobytes())
        for key in sorted(self.kept):
            digest.update(np.ascontiguousarray(self.kept[key] + 0.0).tobytes())
        return digest.hexdigest()


@dataclass(frozen=True)
class Drive:
    """A tool contact: weighted means of nodes pushed along one line to a given travel.

    The force is stiffness * (travel - n.(sum(weights * x) - start)), never a pull when ``pushes_only``.

    nodes : shape (k,);  weights : shape (k,);  direction : unit vector (3,)
    start : n.sum(weights * x) at the beginning of the move [m]
    grip : how the tip holds the metal across its line as well, in place of the above; None goes free across
    strut : a ram in place of the above: its head on the positive weights, its foot on the body or on the
        negative ones; its travel is how much longer it has grown
    """

    nodes: Ints
    weights: Floats
    direction: Floats
    start: float
    stiffness_n_per_m: float = 2.0e7
    pushes_only: bool = True
    grip: Grip | None = None
    strut: Strut | None = None

    def travel(self, points: Floats) -> float:
        """Return how far the contact has moved along the line [m]."""
        return float(self.direction @ (self.weights @ points[self.nodes])) - self.start


@dataclass(frozen=True)
class Load:
    """What acts during one increment.

    travel_m : one prescribed travel per drive;  dead_n : shape (n, 3) fixed forces [N]
    viscous_n_per_m : force per node and metre moved in the increment;  origin : (n, 3) points it starts from
    drag_n_per_m : shape (n,), further drag of each node on its own
    places : where props stand in this increment, (3,) [m] by their place in the list; None: where they stand
    """

    travel_m: tuple[float, ...] = ()
    dead_n: Floats | None = None
    viscous_n_per_m: float = 0.0
    origin: Floats | None = None
    drag_n_per_m: Floats | None = None
    places: Mapping[int, Floats] | None = None


@dataclass(frozen=True)
class Sizes:
    """How many of each element an evaluation holds."""

    points: int
    triangles: int
    hinges: int
    bonds: int
    links: int
    bends: int
    ties: int
    rim: int
    drives: int
    layers: int


class Evaluation:
    """Energies and forces at one set of points (filled by `Network.evaluate`).

    element_stored_j, element_spent_j : sums over triangles, bonds, links and bends [J]
    stored, spent : energy by the name of each law of `sim.law` [J]: elastic, and newly dissipated
    read : what such a law wants to be read afterwards, each under a key that begins with its own name
    """

    def __init__(self, sizes: Sizes) -> None:
        z = sizes
        self.points = np.zeros((z.points, 3))
        self.forces = np.zeros((z.points, 3))
        self.angle, self.gradient = np.zeros(z.hinges), np.zeros((z.hinges, 4, 3))
        self.moments = np.zeros(z.hinges)
        self.springs, self.flowing = np.zeros((z.triangles, 6)), np.zeros(z.triangles, bool)
        self.plastic = np.zeros((z.triangles, z.layers, 3))
        self.hardening = np.zeros((z.triangles, z.layers))
        self.filled = np.zeros(z.triangles, bool)
        self.triangle_stored, self.triangle_folding = np.zeros(z.triangles), np.zeros(z.triangles)
        self.worst, self.opening, self.normal_force = np.zeros(z.bonds), np.zeros(z.bonds), np.zeros(z.bonds)
        self.active = np.zeros(z.bonds, bool)
        self.bond_stored, self.bond_parted = np.zeros(z.bonds), np.zeros(z.bonds)
        self.link_stored, self.tension = np.zeros(z.links), np.zeros(z.links)
        self.turn, self.moment = np.zeros((z.bends, 2)), np.zeros((z.bends, 2))
        self.bend_stored, self.bend_folding = np.zeros(z.bends), np.zeros(z.bends)
        self.tie_force, self.tie_stored = np.zeros((z.ties, 3)), np.zeros(z.ties)
        self.rim_push = np.zeros(z.rim)
        self.drive_force = np.zeros(z.drives)
        self.element_stored_j, self.element_spent_j = 0.0, 0.0
        self.stored: dict[str, float] = {}
        self.spent: dict[str, float] = {}
        self.read: dict[str, Floats] = {}
        self.viscous_energy = 0.0
        self.dead_energy = 0.0

    @property
    def stored_j(self) -> float:
        """Elastic energy of everything, tool arms included [J]."""
        return sum(self.stored.values(), self.element_stored_j)

    @property
    def newly_dissipated_j(self) -> float:
        """Folding and other loss since the last commit plus all energy spent on bonds so far [J]."""
        return sum(self.spent.values(), self.element_spent_j)

    @property
    def potential_j(self) -> float:
        """What equilibrium makes least [J]."""
        return self.stored_j + self.newly_dissipated_j + self.viscous_energy + self.dead_energy
