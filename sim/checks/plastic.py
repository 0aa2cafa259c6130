"""Yielding in bending: the strip's moment, knee and springback, and the tube that collapses in the door.

References
----------
Bent strip: first yield M_y = s b t^2 / 6, M_p = 1.5 M_y, M / M_y = 1.5 [1 - (k_y / k)^2 / 3] and the
curvature left after unloading, textbook.  Tube: 48 E I / L^3, first yield 4 W s / L, collapse 4 Mp / L on two
supports and 8 Mp / L between clamps, Zp = (D^3 - d^3) / 6, simple plastic theory, textbook.  A real thin tube
dents first, so collapse here is an upper bound.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from sim.checks import specimens
from sim.checks.row import TEXTBOOK, Row
from sim.door_structure import tube
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network
from sim.structure import Beam, Structure

Floats = NDArray[np.float64]

E_PA, NU, YIELD_PA = 210.0e9, 0.3, 200.0e6
WIDTH_M, THICKNESS_M, LENGTH_M = 0.01, 1.0e-3, 0.08
FIRST_MOMENT = YIELD_PA * WIDTH_M * THICKNESS_M**2 / 6.0
FIRST_CURVATURE = 2.0 * YIELD_PA / (E_PA * THICKNESS_M)
# curvature over first yield's: moment over first yield's, curvature left after unloading over the largest
ROWS = {1.5: (1.2778, 0.1481), 2.0: (1.3750, 0.3125), 3.0: (1.4444, 0.5185), 5.0: (1.4800, 0.7040)}


class BentStrip:
    """A strip on two supports, lifted at two lines between them: the middle half bends evenly."""

    def __init__(self, nx: int) -> None:
        lat = lattice.one_diagonal(LENGTH_M, WIDTH_M, nx, nx // 8)
        structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(nu=NU, yield_pa=YIELD_PA))
        self.ends = lat.boundary["left"], lat.boundary["right"]
        x = structure.points[:, 0]
        self.lines = [np.flatnonzero(np.abs(x - share * LENGTH_M) < 1e-9) for share in (0.25, 0.75)]
        self.middle = np.flatnonzero(np.abs(x - LENGTH_M / 2) < LENGTH_M / 8)
        centre = specimens.node_at(structure.points, LENGTH_M / 2, WIDTH_M / 2)
        beside = specimens.node_at(structure.points, LENGTH_M / 2 + LENGTH_M / nx, WIDTH_M / 2)
        structure = specimens.held(
            structure, (np.concatenate(self.ends), "z"), ([centre], "xy"), ([beside], "y")
        )
        share = [specimens.shared(structure.points, line, (0.5, 0.0, 0.0))[:, 0] for line in self.lines]
        drive = Drive(np.concatenate(self.lines), np.concatenate(share), np.array([0.0, 0.0, 1.0]), 0.0)
        network = Network(structure, [drive])
        self.stepper = Stepper(network, specimens.never, viscous_n_per_m=0.0)
        self.point = self.stepper.first_point(network.initial_state(), Ledger())

    def curvature(self, point: Point) -> float:
        """Return the curvature of the middle over that of first yield."""
        x = point.evaluation.points[self.middle]
        return float(abs(specimens.quadratic_fit(x, x[:, 2])[0]) / FIRST_CURVATURE)

    def moment(self, point: Point) -> float:
        """Return the moment of the middle over that of first yield."""
        x = point.evaluation.points[:, 0]
        (left, right), (first, second) = self.ends, self.lines
        arm = 0.5 * (x[first].mean() - x[left].mean() + x[right].mean() - x[second].mean())
        return float(0.5 * point.force_n[0] * arm / FIRST_MOMENT)

    def bend_to(self, target: float) -> Point:
        """Return the point at which the middle's curvature is the target."""
        before = self.point
        while self.curvature(self.point) < target:
            before, self.point = self.point, self.stepper.advance(self.point, self.point.travel_m + 1.0e-4)
        for _ in range(6):
            low, high = self.curvature(before), self.curvature(self.point)
            share = float(np.clip((target - low) / (high - low), 0.05, 0.95))
            middle = self.stepper.advance(
                before, before.travel_m + share * (self.point.travel_m - before.travel_m)
            )
            if self.curvature(middle) < target:
                before = middle
            else:
                self.point = middle
        return self.point

    def let_off(self, point: Point) -> Point:
        """Return the point after the lift has been taken back to no force."""
        while point.force_n[0] > 0.0:
            point = self.stepper.advance(point, point.travel_m - 1.0e-4)
        return point


@lru_cache
def bent_rows(nx: int = 32) -> dict[float, tuple[float, float]]:
    """Return moment ratio and share of curvature left, by curvature ratio."""
    strip, rows = BentStrip(nx), {}
    for target in ROWS:
        loaded = strip.bend_to(target)
        rows[target] = strip.moment(loaded), strip.curvature(strip.let_off(loaded)) / strip.curvature(loaded)
    if strip.stepper.tally.failed:
        raise specimens.NotSolvedError("an increment of the bent strip did not converge")
    return rows


def bent_moment(ratio: float, nx: int = 32) -> Row:
    """Return the moment of a strip bent to a multiple of its first-yield curvature."""
    # a point of springback is k / k_y points of moment: the allowance of 5 points on the moment, held to 6 %
    return Row(
        f"strip bent to {ratio:g} times first yield: moment",
        TEXTBOOK,
        ROWS[ratio][0],
        bent_rows(nx)[ratio][0],
        "of first yield",
        0.06,
        spacing=f"{nx} x {nx // 8}",
    )


def plastic_moment(nx: int = 32) -> Row:
    """Return the moment a strip carries with all its layers yielding, over that of first yield."""
    # 3 %, the case's allowance
    return Row(
        "strip bent far: plastic moment",
        TEXTBOOK,
        1.5,
        bent_rows(nx)[5.0][0],
        "of first yield",
        0.03,
        spacing=f"{nx} x {nx // 8}",
    )


def springback(ratio: float, nx: int = 32) -> Row:
    """Return the share of curvature that stays after unloading."""
    # 5 points of curvature ratio, the case's allowance
    return Row(
        f"strip bent to {ratio:g} times first yield: curvature that stays",
        TEXTBOOK,
        ROWS[ratio][1],
        bent_rows(nx)[ratio][1],
        "of the largest",
        0.05,
        "within",
        f"{nx} x {nx // 8}",
    )


Tube = tuple[float, float, float, float]
# diameter, wall [m], yield [Pa], span [m]
TUBES: tuple[Tube, ...] = (
    (0.032, 0.002, 1000.0e6, 0.8),
    (0.032, 0.002, 1000.0e6, 1.0),
    (0.050, 0.002, 355.0e6, 1.0),
    (0.0254, 0.0016, 450.0e6, 0.6),
)
SEGMENTS = 16


def _tube_word(case: Tube) -> str:
    diameter, wall, yield_pa, span = case
    return f"tube {1e3 * diameter:g} x {1e3 * wall:g}, {yield_pa / 1e6:g} MPa, span {span:g} m"


def tube_network(case: Tube, *, clamps: bool) -> Network:
    """Return the network of one tube, pushed in the middle by a stiff contact."""
    diameter, wall, yield_pa, span = case
    area, second, plastic = tube(diameter, wall)
    x = np.linspace(0.0, span, SEGMENTS + 1)
    if clamps:
        # a short held segment beyond either support: the bend at the support then belongs to the span alone
        x = np.concatenate([[-1.0e-3], x, [span + 1.0e-3]])
    points = np.column_stack([x, np.zeros((len(x), 2))])
    nodes = np.arange(len(x))
    beam = Beam("tube", nodes, E_PA * area, E_PA * second, plastic * yield_pa, "folding bar")
    none = np.zeros((0, 3), np.int64)
    structure = Structure(points, none, np.zeros(0, np.int64), (), beams=(beam,))
    ends = nodes[[0, 1, -2, -1]] if clamps else nodes[[0, -1]]
    first = ends[:2] if clamps else ends[:1]
    structure = specimens.held(structure, (nodes, "y"), (ends, "z"), (first, "x"))
    middle = np.array([len(x) // 2])
    # far stiffer than the tube, so that travel is deflection
    drive = Drive(middle, np.ones(1), np.array([0.0, 0.0, 1.0]), 0.0, stiffness_n_per_m=1.0e11)
    return Network(structure, [drive])


def force_at(network: Network, travels_m: Iterable[float]) -> Floats:
    """Return the contact's force at each travel, shape (travels,) [N]."""
    stepper = Stepper(network, specimens.never, viscous_n_per_m=0.0)
    point = stepper.first_point(network.initial_state(), Ledger())
    forces = []
    for travel in travels_m:
        point = stepper.advance(point, float(travel))
        forces.append(float(point.force_n[0]))
    if stepper.tally.failed:
        raise specimens.NotSolvedError("an increment of the tube did not converge")
    return np.array(forces)


def tube_moduli(case: Tube) -> tuple[float, float, float]:
    """Return second moment [m^4], elastic and plastic modulus [m^3], from the round tube's own formulas."""
    diameter, wall, _, _ = case
    inner = diameter - 2.0 * wall
    second = np.pi / 64.0 * (diameter**4 - inner**4)
    return float(second), float(second / (diameter / 2.0)), (diameter**3 - inner**3) / 6.0


@lru_cache
def _elastic(case: Tube) -> tuple[float, float, float, float]:
    """Return stiffness and first-yield force, expected and got."""
    second, elastic, _ = tube_moduli(case)
    stiffness = 48.0 * E_PA * second / case[3] ** 3
    first_yield = 4.0 * elastic * case[2] / case[3]
    travel = first_yield / stiffness
    small, at_yield = force_at(tube_network(case, clamps=False), [0.01 * travel, travel])
    return stiffness, float(small) / (0.01 * travel), first_yield, float(at_yield)


def tube_stiffness(case: Tube) -> Row:
    """Return a tube's bending stiffness on two supports."""
    expected, got, _, _ = _elastic(case)
    # 1 %: sixteen lumped bends are 1 / (2 n^2) = 0.2 % soft
    return Row(
        f"{_tube_word(case)}: stiffness",
        TEXTBOOK,
        expected / 1e3,
        got / 1e3,
        "N/mm",
        0.01,
        spacing="16 segments",
    )


def tube_first_yield(case: Tube) -> Row:
    """Return a tube's force at the deflection of first yield."""
    _, _, expected, got = _elastic(case)
    # 2 %: deflections are no longer small against the span
    return Row(
        f"{_tube_word(case)}: first yield",
        TEXTBOOK,
        expected / 1e3,
        got / 1e3,
        "kN",
        0.02,
        spacing="16 segments",
    )


@lru_cache
def collapse_curve(case: Tube, *, clamps: bool) -> tuple[float, Floats]:
    """Return the collapse force of plastic theory and the forces up to well beyond it [N]."""
    second, _, plastic = tube_moduli(case)
    factor, share = (8.0, 3.0) if clamps else (4.0, 2.2)
    limit = factor * plastic * case[2] / case[3]
    elastic_travel = limit * case[3] ** 3 / ((192.0 if clamps else 48.0) * E_PA * second)
    return limit, force_at(tube_network(case, clamps=clamps), np.linspace(0.1, share, 25) * elastic_travel)


def tube_collapse(case: Tube, *, clamps: bool) -> Row:
    """Return a tube's collapse force on supports or between clamps."""
    limit, forces = collapse_curve(case, clamps=clamps)
    # 5 %, the case's allowance: slight hardening of the hinge, and the span shortens as it folds
    return Row(
        f"{_tube_word(case)}: collapse {'between clamps' if clamps else 'on two supports'}",
        TEXTBOOK,
        limit / 1e3,
        float(forces[-1]) / 1e3,
        "kN",
        0.05,
        spacing="16 segments",
    )


def clamped_tube_stiffness(case: Tube) -> Row:
    """Return a tube's bending stiffness between clamps."""
    second, _, _ = tube_moduli(case)
    travel = 1.0e-4
    force = float(force_at(tube_network(case, clamps=True), [travel])[0])
    # trapezoid rule on the bends of n segments: 1 / 192 becomes 1 / 192 (1 + 8 / n^2); half a per cent for
    # the short held segments at the clamps
    expected = 192.0 * E_PA * second / case[3] ** 3 / (1.0 + 8.0 / SEGMENTS**2)
    return Row(
        f"{_tube_word(case)}: stiffness between clamps",
        TEXTBOOK,
        float(expected) / 1e3,
        force / travel / 1e3,
        "N/mm",
        0.005,
        spacing="16 segments",
    )
