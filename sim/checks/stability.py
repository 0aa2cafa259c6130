"""Buckling: the load at which the flat state loses stability, and how far a column bends beyond it.

References
----------
[timoshenko-gere-1961] Euler P = pi^2 E I / (K L)^2; supported square plate pressed on two edges,
sigma = 4 pi^2 E / (12 (1 - nu^2)) (t / b)^2; a bow w0 pressed along grows to w0 / (1 - P / Pcr), a load off
the middle by e bends by e (sec(pi / 2 sqrt(P / Pcr)) - 1); cantilever column beyond its load, Table 2-5,
whose rows are computed by elliptic integrals.
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from sim.checks import specimens
from sim.checks.row import Row, settling
from sim.factor import NotPositiveError
from sim.network import Load, Network
from sim.newton import equilibrate
from sim.structure import Structure

Floats = NDArray[np.float64]

LENGTH_M, WIDTH_M, THICKNESS_M = 0.2, 0.02, 1.0e-3
FACTOR = {"pinned": 1.0, "cantilever": 2.0, "clamped": 0.5}
EULER_N = np.pi**2 * specimens.STEEL_PA * WIDTH_M * THICKNESS_M**3 / 12.0 / LENGTH_M**2
PLATE_SIDE_M, PLATE_THICKNESS_M, PLATE_NU = 0.2, 0.8e-3, 0.3


def critical(structure: Structure, dead_n: Floats, high: float) -> float:
    """Return the factor on the dead loads at which the flat equilibrium loses stability, by halving."""
    network = Network(structure)
    state, points = network.initial_state(), structure.points
    low = 0.0
    while high - low > 2.0e-5 * high:  # finer than the errors of two lattices, which are compared
        middle = 0.5 * (low + high)
        load = Load((), dead_n * middle)
        ev = equilibrate(network, state, load, points).evaluation
        stable = float(np.abs(ev.points[:, 2]).max()) < 1.0e-9
        if stable:
            try:
                network.factor.refactor(network.stiffness_values(ev, state, load, ev.springs))
            except NotPositiveError:
                stable = False
        low, high = (middle, high) if stable else (low, middle)
    return 0.5 * (low + high)


def _lattice(count: int) -> lattice.Lattice:
    """Return the strip with ``count`` segments along it and rows that keep the triangles near-equilateral."""
    return specimens.rows(LENGTH_M, WIDTH_M, count, count // 8)


@lru_cache
def _strip_load(ends: str, count: int) -> float:
    lat = _lattice(count)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(nu=0.0))
    left, right = lat.boundary["left"], lat.boundary["right"]
    if ends == "pinned":
        structure = specimens.held(structure, (slice(None), "y"), (left, "xz"), (right, "z"))
    else:
        structure = specimens.clamped(specimens.held(structure, (slice(None), "y")), left)
    if ends == "clamped":
        structure = specimens.clamped(structure, right)
        assert structure.fixed is not None
        fixed = structure.fixed.copy()
        fixed[right, 0] = False
        structure = structure.with_fixed(fixed)
    dead = np.zeros_like(structure.points)
    dead[right] += specimens.shared(structure.points, right, (-1.0, 0.0, 0.0))
    return critical(structure, dead, 2.0 * EULER_N / FACTOR[ends] ** 2)


def euler(ends: str, count: int) -> Row:
    """Return the buckling load of a strip."""
    # 3 %, the case's allowance for sixteen segments
    return Row(
        f"strip pressed along, {ends}: buckling load",
        "timoshenko-gere-1961",
        float(EULER_N) / FACTOR[ends] ** 2,
        _strip_load(ends, count),
        "N",
        0.03,
        spacing=f"{count} x {count // 8}",
    )


BOW_M = LENGTH_M / 1000.0  # small against the length, or the arc's own stretch would count


def _pressed_middle_m(bow_m: float, off_m: float, share: float, count: int) -> float:
    """Return how far the middle of a pinned strip stands off its chord, pressed along [m].

    Parameters
    ----------
    bow_m : of half a sine wave it was made with;  off_m : how far the load stands off its middle surface
    share : of its buckling load;  count : segments along it
    """
    lat = _lattice(count)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(nu=0.0))
    points = structure.points.copy()
    points[:, 2] = bow_m * np.sin(np.pi * points[:, 0] / LENGTH_M)
    structure = replace(structure, points=points)
    left, right = lat.boundary["left"], lat.boundary["right"]
    structure = specimens.held(structure, (slice(None), "y"), (left, "xz"), (right, "z"))
    load_n = share * float(EULER_N)
    dead = np.zeros_like(points)
    dead[right] += specimens.shared(points, right, (-load_n, 0.0, 0.0))
    for chain in (left, right):
        # a load off by +z bends the strip away from it, towards -z
        dead += specimens.edge_couples(structure, chain, -load_n * off_m / WIDTH_M)
    network = Network(structure)
    end = specimens.settled(network, network.initial_state(), Load((), dead), points).points
    middle = np.abs(lat.points[:, 0] - 0.5 * LENGTH_M) < 0.6 * LENGTH_M / count
    return float(end[middle, 2].mean())


def bowed(sign: int, share: float, count: int = 16) -> Row:
    """Return how far a bowed strip stands out under a share of its buckling load: it grows with its sign."""
    # 1 %: series of the bow beyond its first half wave, and the strip's own spacing
    way = "out" if sign > 0 else "in"
    return Row(
        f"strip bowed {way}, pressed with {share:g} of its buckling load: its bow",
        "timoshenko-gere-1961",
        sign * BOW_M / (1.0 - share) * 1e3,
        _pressed_middle_m(sign * BOW_M, 0.0, share, count) * 1e3,
        "mm",
        0.01,
        spacing=f"{count} x {count // 8}",
    )


def off_the_middle(sign: int, share: float, count: int = 16) -> Row:
    """Return how far a flat strip bends away from a load off its middle surface: e (sec(...) - 1)."""
    # 1 %: as for a bowed strip
    side = "out" if sign > 0 else "in"
    secant = 1.0 / np.cos(0.5 * np.pi * np.sqrt(share))
    return Row(
        f"flat strip, {share:g} of its buckling load 0.2 mm {side} of its middle: away from the load",
        "timoshenko-gere-1961",
        -sign * BOW_M * float(secant - 1.0) * 1e3,
        _pressed_middle_m(0.0, sign * BOW_M, share, count) * 1e3,
        "mm",
        0.01,
        spacing=f"{count} x {count // 8}",
    )


def euler_settles(ends: str) -> Row:
    """Return whether the buckling load's error shrinks with the spacing."""
    return settling(f"buckling strip, {ends}", euler(ends, 16), euler(ends, 32))


# P / Pcr by tip angle [deg], tip x / L and y / L: elliptic integrals, computed
COLUMN = {20: (1.0154, 0.9697, 0.2194), 40: (1.0637, 0.8812, 0.4222), 80: (1.2939, 0.5594, 0.7195),
          120: (1.8848, 0.1232, 0.8032)}  # fmt: skip


@lru_cache
def _column(count: int) -> dict[int, tuple[float, float]]:
    """Return tip x / L and y / L of the bent cantilever by tip angle."""
    lat = _lattice(count)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(nu=0.0))
    structure = specimens.clamped(specimens.held(structure, (slice(None), "y")), lat.boundary["left"])
    right = lat.boundary["right"]
    unit = np.zeros_like(structure.points)
    unit[right] += specimens.shared(structure.points, right, (-float(EULER_N) / 4.0, 0.0, 0.0))
    network = Network(structure)
    state, got = network.initial_state(), {}
    # begun from the largest load with a bow, so that the straight column is left; then the load is let down
    x = structure.points.copy()
    x[:, 2] = 0.3 * LENGTH_M * (x[:, 0] / LENGTH_M) ** 2
    for angle in sorted(COLUMN, reverse=True):
        x = specimens.settled(network, state, Load((), unit * COLUMN[angle][0]), x).points.copy()
        tip = x[right].mean(axis=0) / LENGTH_M
        got[angle] = float(tip[0]), abs(float(tip[2]))
    return got


def column(angle_deg: int, way: str, count: int = 16) -> Row:
    """Return where the tip of a cantilever column stands ("along", "across") beyond its buckling load."""
    index = ("along", "across").index(way)
    # 4 % of the length, the case's allowance
    return Row(
        f"column at {COLUMN[angle_deg][0]} of its buckling load: tip {way}",
        "timoshenko-gere-1961",
        COLUMN[angle_deg][1 + index],
        _column(count)[angle_deg][index],
        "of the length",
        0.04,
        "within",
        f"{count} x {count // 8}",
    )


@lru_cache
def _plate_load(count: int) -> float:
    side = PLATE_SIDE_M
    lat = lattice.rectangle(side, side, side / count)
    structure = specimens.sheet(lat, PLATE_THICKNESS_M, specimens.metal(nu=PLATE_NU))
    points = structure.points
    rim = np.unique(np.concatenate(list(lat.boundary.values())))
    bottom = specimens.node_at(points, side / 2, 0.0)
    top = specimens.node_at(points, side / 2, side)
    structure = specimens.held(structure, (rim, "z"), ([bottom], "xy"), ([top], "x"))
    dead = np.zeros_like(points)
    for name, sign in (("left", 1.0), ("right", -1.0)):
        chain = lat.boundary[name]
        dead[chain] += specimens.shared(points, chain, (sign * side * PLATE_THICKNESS_M, 0.0, 0.0))  # 1 Pa
    return critical(structure, dead, 2.0 * plate_expected_pa())


def plate_expected_pa() -> float:
    """Return the critical stress of the supported square plate, k = 4 [Pa]."""
    slender = PLATE_THICKNESS_M / PLATE_SIDE_M
    return float(4.0 * np.pi**2 * specimens.STEEL_PA / (12.0 * (1.0 - PLATE_NU**2)) * slender**2)


def plate(count: int) -> Row:
    """Return the buckling stress of a supported square plate pressed on two edges."""
    # 8 %, the case's allowance on 16 x 16
    return Row(
        "supported square plate pressed on two edges: buckling stress",
        "timoshenko-gere-1961",
        plate_expected_pa() / 1e6,
        _plate_load(count) / 1e6,
        "MPa",
        0.08,
        spacing=f"{count} x {count}",
    )


def plate_settles() -> Row:
    """Return whether the buckling stress's error shrinks with the spacing."""
    return settling("buckling plate", plate(8), plate(16))
