"""Strips that bend far: the cantilever, the elastica, the end-sheared plate, the strip rolled up.

References
----------
Cantilever P L^3 / 3 E I: textbook.  [mattiasson-1981] elastica under a dead tip load, Table 1.
[sze-2004] cantilever under end shear (problem 1) and under an end moment: u / L = sin t / t - 1,
w / L = (1 - cos t) / t with t = M L / E I.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache, partial

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from meshes.lattice import Lattice
from sim.checks import specimens
from sim.checks.row import TEXTBOOK, Row, settling
from sim.network import Load, Network
from sim.newton import equilibrate
from sim.structure import Structure

Floats = NDArray[np.float64]

LENGTH_M, WIDTH_M, THICKNESS_M = 0.2, 0.02, 1.0e-3
BENDING_N_M2 = specimens.STEEL_PA * WIDTH_M * THICKNESS_M**3 / 12.0
MATTIASSON = {1: (0.30172, 0.05643), 2: (0.49346, 0.16064), 5: (0.71379, 0.38763), 10: (0.81061, 0.55500)}


def _strip(lat: Lattice, nu: float) -> Structure:
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(nu=nu))
    return specimens.clamped(structure, lat.boundary["left"])


def _tip_load(lat: Lattice, force_n: float) -> Floats:
    dead = np.zeros((len(lat.points), 3))
    tip = lat.boundary["right"]
    dead[tip] += specimens.shared(np.array(lat.points), tip, (0.0, 0.0, force_n))
    return dead


# turned lattices are irregular beside their rims: eight triangles across, as for the pulled bar
STRIPS: dict[str, Callable[[], Lattice]] = {
    "rows 10 x 2": partial(specimens.rows, 0.1, WIDTH_M, 10, 2),
    "rows 20 x 4": partial(specimens.rows, 0.1, WIDTH_M, 20, 4),
    **{
        f"8 across at {angle:.0f}\u00b0": partial(lattice.rectangle, 0.1, WIDTH_M, 0.0025, np.radians(angle))
        for angle in specimens.ANGLES_DEG
    },
}


@lru_cache
def sag(name: str, nu: float) -> float:
    """Return the tip's deflection over P L^3 / 3 E I of a strip 0.1 long and 0.02 wide."""
    lat = STRIPS[name]()
    moved = specimens.solve(_strip(lat, nu), _tip_load(lat, 1.0)).moved  # 1 N: a hundredth of the length
    return float(moved[lat.boundary["right"], 2].mean()) / (0.1**3 / (3.0 * BENDING_N_M2))


def cantilever(name: str) -> Row:
    """Return the deflection of a cantilever strip without Poisson effect."""
    # 3 %, the case's allowance
    return Row(
        "cantilever strip, \u03bd 0: tip",
        TEXTBOOK,
        1.0,
        sag(name, 0.0),
        "of P L\u00b3 / 3 E I",
        0.03,
        spacing=name,
    )


def cantilever_plate(name: str) -> Row:
    """Return the deflection of a cantilever strip whose clamp hinders its saddle: between beam and plate."""
    middle = 0.5 * (1.0 + (1.0 - 0.3**2))
    # half the range between E I and E I / (1 - nu^2), and 3 % beyond
    return Row(
        "cantilever strip, \u03bd 0.3: tip between beam and plate",
        TEXTBOOK,
        middle,
        sag(name, 0.3),
        "of P L\u00b3 / 3 E I",
        0.5 * 0.3**2 + 0.03,
        "within",
        name,
    )


@lru_cache
def _elastica(alpha: int, count: int) -> tuple[float, float]:
    """Return w / L and shortening / L of the strip under P L^2 / E I = alpha."""
    lat = specimens.rows(LENGTH_M, WIDTH_M, count, _across(count))
    dead = _tip_load(lat, alpha * BENDING_N_M2 / LENGTH_M**2)
    moved = specimens.solve(_strip(lat, 0.0), dead, steps=5).moved[lat.boundary["right"]].mean(axis=0)
    return float(moved[2]) / LENGTH_M, -float(moved[0]) / LENGTH_M


def _across(count: int) -> int:
    """Return how many rows keep the triangles of so many segments as the strip of twenty has them."""
    return max(2, count // 10)


ELASTICA_TOLERANCE = {10: 0.04, 20: 0.02, 40: 0.02, 80: 0.02}
"""The case's own allowances by number of segments; finer strips are held to that of twenty."""
WAYS = ("w", "shortening")


def elastica(alpha: int, way: str, count: int) -> Row:
    """Return the tip's rise ("w") or its shortening under a dead load."""
    index = WAYS.index(way)
    return Row(
        f"elastica, P L\u00b2 / E I = {alpha}: {way} of the tip",
        "mattiasson-1981",
        MATTIASSON[alpha][index],
        _elastica(alpha, count)[index],
        "of the length",
        ELASTICA_TOLERANCE[count],
        spacing=f"{count} x {_across(count)}",
    )


def elastica_settles(alpha: int, way: str) -> Row:
    """Return whether the elastica's error shrinks with the spacing, on triangles of one shape.

    Ten segments in two rows are left out: their long triangles are stiff by as much as the clamp is soft.
    """
    return settling(f"elastica {alpha}, {way}", elastica(alpha, way, 40), elastica(alpha, way, 80))


# -U, W of problem 1 by share of the full load; L 10, b 1, h 0.1, E 1.2e6, nu 0, full load 4
END_SHEAR = {
    0.1: (0.103, 1.309), 0.2: (0.381, 2.493), 0.3: (0.763, 3.488), 0.4: (1.184, 4.292), 0.5: (1.604, 4.933),
    0.6: (2.002, 5.444), 0.7: (2.370, 5.855), 0.8: (2.705, 6.190), 0.9: (3.010, 6.467), 1.0: (3.286, 6.698),
}  # fmt: skip


@lru_cache
def _end_sheared(count: int) -> dict[float, tuple[float, float]]:
    """Return -U and W of the sheared end by share of the full load."""
    # E and loads a thousandfold, so that the solver's force limit is nothing beside the loads
    lat = specimens.rows(10.0, 1.0, count, 2)
    structure = specimens.sheet(lat, 0.1, specimens.metal(young_pa=1.2e9, nu=0.0))
    structure = specimens.clamped(structure, lat.boundary["left"])
    tip = lat.boundary["right"]
    full = np.zeros_like(structure.points)
    full[tip] += specimens.shared(structure.points, tip, (0.0, 0.0, 4.0e3))
    network = Network(structure)
    state, x, got = network.initial_state(), structure.points.copy(), {}
    for share in END_SHEAR:
        x = specimens.settled(network, state, Load((), full * share), x).points.copy()
        end = (x - structure.points)[tip].mean(axis=0)
        got[share] = -float(end[0]), float(end[2])
    return got


def end_shear(share: float, way: str, count: int) -> Row:
    """Return how far the end of the sheared cantilever has come along ("shortening") or up ("w")."""
    index = ("shortening", "w").index(way)
    # 3 %, the case's allowance on 16 x 2
    return Row(
        f"cantilever under end shear, {share:.1f} of the load: {way}",
        "sze-2004",
        END_SHEAR[share][index],
        _end_sheared(count)[share][index],
        "(length 10)",
        0.03,
        spacing=f"{count} x 2",
    )


def end_shear_settles(way: str) -> Row:
    """Return whether the sheared cantilever's error shrinks with the spacing, at full load."""
    return settling(f"end shear, {way}", end_shear(1.0, way, 8), end_shear(1.0, way, 16))


TURNS = {0.25: 0.02, 0.5: 0.02, 0.75: 0.05, 1.0: 0.05}
"""Shares of a full circle and the case's allowance in lengths: 2 % to a half circle, 5 % at a full one."""


@lru_cache
def rolled_up(count: int) -> dict[float, tuple[float, float]]:
    """Return x and z of the end over the length by share of a full circle; the couple turns with the end."""
    lat = lattice.one_diagonal(LENGTH_M, WIDTH_M, count, 2)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(nu=0.0))
    # kept in its plane: under a couple a free strip buckles sideways beyond two thirds of a circle
    structure = specimens.held(structure, (slice(None), "y"))
    structure = specimens.clamped(structure, lat.boundary["left"])
    network = Network(structure)
    x, got = structure.points.copy(), {}
    for step in range(1, 17):
        moment = 2.0 * np.pi * BENDING_N_M2 / LENGTH_M * step / 16
        x = _follow_couple(network, lat, x, moment, LENGTH_M / count)
        if step / 16 in TURNS:
            end = x[lat.boundary["right"]].mean(axis=0) / LENGTH_M
            got[step / 16] = float(end[0]), float(end[2])
    return got


def _follow_couple(network: Network, lat: Lattice, x: Floats, moment: float, h: float) -> Floats:
    """Return the equilibrium under an end couple that stands square to the last cell of the strip."""
    last, previous = lat.boundary["right"], lat.boundary["right"] - 1
    share = np.array([0.25, 0.5, 0.25])
    state = network.initial_state()
    for _ in range(60):
        tangent = x[last[1]] - x[previous[1]]
        tangent /= np.linalg.norm(tangent)
        dead = np.zeros_like(x)
        pull = moment / h * share[:, None] * np.array([-tangent[2], 0.0, tangent[0]])
        dead[last] += pull
        dead[previous] -= pull
        answer = equilibrate(network, replace(state, points=x), Load((), dead), x)
        if not answer.converged:
            raise specimens.NotSolvedError(f"residual {answer.residual_n} N under an end couple")
        change = float(np.abs(answer.evaluation.points - x).max())
        x = answer.evaluation.points.copy()
        if change < 1e-6:
            return x
    raise specimens.NotSolvedError("the couple did not settle on the strip's end")


def roll_up(turn: float, way: str, count: int = 20) -> Row:
    """Return how far the end of a strip rolled up stands along ("x") or above ("z") its clamp."""
    angle = 2.0 * np.pi * turn
    expected = {"x": np.sin(angle) / angle, "z": (1.0 - np.cos(angle)) / angle}[way]
    return Row(
        f"strip rolled up, {turn:.2f} of a circle: {way} of the end",
        "sze-2004",
        float(expected),
        rolled_up(count)[turn]["xz".index(way)],
        "of the length",
        TURNS[turn],
        "within",
        f"{count} x 2",
    )
