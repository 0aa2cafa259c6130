"""Box members held at their ends, loaded across: what the rows of rail and rocker have in common."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from meshes.box import BoxMesh
from meshes.rail import FRONT_END, REAR_END
from sim.checks import specimens
from sim.checks.row import TEXTBOOK, Row, spacing_word
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

POISSON = 0.3
SHEAR_PA = specimens.STEEL_PA / (2.0 * (1.0 + POISSON))
SHARES = np.array([0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 4.0])
"""Travels over about the elastic travel at collapse."""


def of_one_metal(structure: Structure, yield_pa: float) -> Structure:
    """Return a member of one section as one whose metal does not harden."""
    steel = specimens.metal(nu=POISSON, yield_pa=yield_pa)
    return replace(structure, sections=(replace(structure.sections[0], metal=steel),))


def span_m(mesh: BoxMesh) -> tuple[float, float]:
    """Return where a member's free length begins and ends along the car [m]."""
    x = mesh.surface.points[:, 0]
    return float(x[mesh.surface.nodes[FRONT_END]].max()), float(x[mesh.surface.nodes[REAR_END]].min())


def lengths_m(mesh: BoxMesh, place_m: float) -> tuple[float, float]:
    """Return how far a place on it is from where it is held at its front and at its rear [m]."""
    start, end = span_m(mesh)
    return place_m - start, end - place_m


def across(mesh: BoxMesh, at_m: float) -> tuple[float, Ints, Floats]:
    """Return the ring nearest to a place: where it is, its side walls' nodes and their shares of a load."""
    surface = mesh.surface
    x = surface.points[:, 0]
    place = float(x[np.abs(x - at_m).argmin()])
    nodes, shares = [], []
    for wall in ("outer", "inner"):
        own = np.intersect1d(np.flatnonzero(np.abs(x - place) < 1e-9), surface.nodes_of((wall,)))
        own = own[np.argsort(surface.points[own, 2])]
        nodes.append(own)
        shares.append(0.5 * specimens.shared(surface.points, own, [1.0, 0.0, 0.0])[:, 0])
    return place, np.concatenate(nodes), np.concatenate(shares)


def deflection_m_per_n(mesh: BoxMesh, structure: Structure, at_m: float) -> tuple[float, float]:
    """Return the ring nearest to a place [m], and how far it goes up for each newton that pulls it up."""
    place, nodes, shares = across(mesh, at_m)
    force = np.zeros_like(structure.points)
    force[nodes, 2] = 100.0 * shares
    moved = specimens.solve(structure, force).moved
    return place, float(shares @ moved[nodes, 2]) / 100.0


def held_deflection_m_per_n(lengths: tuple[float, float], bending_n_m2: float, shear_n: float) -> float:
    """Return the same of a beam held at both ends: a^3 b^3 / (3 L^3 E I) + a b / (L G A)."""
    a, b = lengths
    return (a * b / (a + b)) ** 3 / (3.0 * bending_n_m2) + a * b / (a + b) / shear_n


def drive_on(structure: Structure, nodes: Ints, shares: Floats, way: Sequence[float]) -> Drive:
    """Return what moves the mean of some nodes along a way (3,), stiffly."""
    along = np.array(way)
    return Drive(nodes, shares, along, float(along @ (shares @ structure.points[nodes])), 1.0e9)


def pushed(structure: Structure, drives: Sequence[Drive], travel_m: float) -> tuple[Floats, float]:
    """Return each drive's force [N] over SHARES of a travel, shape (8, drives), and the gap of the books.

    Raises
    ------
    NotSolvedError
        When an increment has not converged.
    """
    stepper = Stepper(Network(structure, drives), specimens.never, viscous_n_per_m=0.0)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    forces = []
    for share in SHARES:
        point = stepper.advance(point, float(share * travel_m))
        forces.append(np.array(point.force_n))
    if stepper.tally.failed:
        raise specimens.NotSolvedError("an increment of the member did not converge")
    return np.array(forces), point.ledger.closure_ratio()


def free_to_slide(mesh: BoxMesh, structure: Structure) -> None:
    """Let the front end slide along: a member held there too would carry as a rope."""
    assert structure.fixed is not None
    structure.fixed[mesh.surface.nodes[FRONT_END], 0] = False


@dataclass(frozen=True)
class Bent:
    """A member pressed across at one place.

    forces : the press's [N] over SHARES of its travel, shape (8,);  gap : of the books, over the work
    ahead_m, behind_m : from that place to where the member is held at its front and at its rear
    """

    forces: Floats
    ahead_m: float
    behind_m: float
    gap: float

    @property
    def three_hinges_per_m(self) -> float:
        """Load at which a member held at both ends folds at three places, over its plastic moment [1/m]."""
        return 2.0 * (self.ahead_m + self.behind_m) / (self.ahead_m * self.behind_m)


def pressed_across(mesh: BoxMesh, structure: Structure, at_m: float, up: float, travel_m: float) -> Bent:
    """Return a member pressed up (1) or down (-1) at the ring nearest to a place, over SHARES of a travel."""
    place, nodes, shares = across(mesh, at_m)
    forces, gap = pushed(structure, [drive_on(structure, nodes, shares, (0.0, 0.0, up))], travel_m)
    return Bent(forces[:, 0], *lengths_m(mesh, place), gap)


def deflection_row(
    claim: str, expected_m_per_n: float, got_m_per_n: float, allowed: float, spacing_m: float, known: str = ""
) -> Row:
    """Return the row of a member's deflection for each kilonewton."""
    expected, got = 1e6 * expected_m_per_n, 1e6 * got_m_per_n
    where = spacing_word(spacing_m)
    return Row(claim, TEXTBOOK, expected, got, "mm/kN", allowed, spacing=where, known=known)


def load_row(
    claim: str, expected_n: float, forces: Floats, allowed: float, spacing_m: float, known: str = ""
) -> Row:
    """Return the row of the greatest force [N] a press comes to against the load of a formula."""
    expected, got = expected_n / 1e3, float(forces.max()) / 1e3
    where = spacing_word(spacing_m)
    return Row(claim, TEXTBOOK, expected, got, "kN", allowed, spacing=where, known=known)
