"""Sheets with a cut in them, pulled until it runs: a clamped strip in its plane and a pair of trousers.

References
----------
[rivlin-thomas-1953] strip clamped along its edges: G = w h, w the energy per volume far ahead of the cut, h
its height; trousers with stiff legs: G = 2 F / t, so F = Gc t / 2.  That these two belong to that work was
found in a later paper's text [trousers-2025]; the equations are from memory.  Linear strain energy of the
clamped strip, computed: w = E e^2 / 2 (1 - nu^2).

Trousers are the fold-free tear: of the two estimates of a running tear (the neck alone, 0.07 to 0.14 kN for a
skin, or with a strip that folds in front of the tip, kilonewtons) this is the first, with the legs' bending
beside it.  The second needs folds of a few thicknesses' radius, which no lattice of a door resolves.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from sim import tearing
from sim.checks import specimens
from sim.checks.row import Row, spacing_word
from sim.cuts import find_cuts
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.materials import Metal
from sim.network import Drive, Network
from sim.split import split
from sim.structure import Structure
from sim.tear import Candidate, worst_cut
from sim.torn import torn_m

Ints = NDArray[np.int64]

THICKNESS_M, GC_J_PER_M2 = 0.7e-3, 2.0e5
HEIGHT_M, STRIP_M = 0.16, 0.48
LEG_M, CUT_M, TROUSERS_M = 0.06, 0.2, 0.6
YOUNG_PA, POISSON = 210.0e9, 0.3
STIFF_N_PER_M = 1.0e11  # of a clamp: a thousand times the sheet's own between two nodes


def metal(
    yield_pa: float = specimens.NO_YIELD_PA,
    hardening_pa: float = 0.0,
    tensile_pa: float = math.inf,
    tear_energy: float = GC_J_PER_M2,
) -> Metal:
    """Return a metal that tears; without a tensile strength only an existing cut can run."""
    return Metal(
        "test metal", YOUNG_PA, POISSON, yield_pa, hardening_pa,
        tensile_pa=tensile_pa, tear_energy_j_per_m2=tear_energy,
    )  # fmt: skip


def cut_along(structure: Structure, path: Sequence[int]) -> Structure:
    """Return the structure cut from node to node, beginning at a free edge."""
    for node, tip in pairwise(path):
        cuts = find_cuts(Network(structure))
        (row,) = np.flatnonzero((cuts.node == node) & (cuts.tip == tip))
        along = (float(cuts.ahead_m[row]), 0.0, 0.0, 0.0)
        structure = split(structure, Candidate(node, tip, cuts.side[row], 0.0, 0.0, line_m=along))
    return structure


def way_inward(structure: Structure, y_m: float, to_x_m: float, spacing_m: float) -> list[int]:
    """Return the nodes from the left edge inward that keep nearest to a height."""
    p, t = structure.points, structure.triangles
    left = np.flatnonzero(p[:, 0] < 1e-9)
    path = [int(left[np.argmin(abs(p[left, 1] - y_m))])]
    while p[path[-1], 0] < to_x_m - 1e-9:
        near = np.unique(t[(t == path[-1]).any(axis=1)])
        ahead = [int(n) for n in near if p[n, 0] > p[path[-1], 0] + 0.2 * spacing_m and p[n, 0] > 1e-9]
        path.append(min(ahead, key=lambda n: abs(p[n, 1] - y_m)))
    return path


@dataclass(frozen=True)
class Specimen:
    """A sheet ready to be torn: its network, nodes that are gripped, and the end of its cut."""

    network: Network
    gripped: Ints
    tip: int


def clamped_strip(
    spacing_m: float, of: Metal, *, cut_m: float = 0.2, turned_rad: float | None = None
) -> Specimen:
    """Return a flat strip, cut along its middle, whose clamped long edges are pulled apart in its plane."""
    if turned_rad is None:
        rows = 2 * round(HEIGHT_M / (spacing_m * 0.866) / 2)
        lat = specimens.rows(STRIP_M, HEIGHT_M, round(STRIP_M / spacing_m), rows)
    else:
        lat = lattice.rectangle(STRIP_M, HEIGHT_M, spacing_m, turned_rad)
    structure = specimens.sheet(lat, THICKNESS_M, of)
    path = way_inward(structure, 0.5 * HEIGHT_M, cut_m, spacing_m)
    structure = cut_along(structure, path)
    y = structure.points[:, 1]
    bottom, top = np.flatnonzero(y < 1e-9), np.flatnonzero(y > HEIGHT_M - 1e-9)
    structure = specimens.held(structure, (slice(None), "z"), (bottom, "xy"), (top, "x"))
    up = np.array([0.0, 1.0, 0.0])
    drives = [Drive(np.array([n]), np.ones(1), up, HEIGHT_M, STIFF_N_PER_M, False) for n in top]
    return Specimen(Network(structure, drives), top, path[-1])


def trousers(spacing_m: float, of: Metal) -> Specimen:
    """Return a strip cut along its middle into two legs whose ends are pulled apart out of its plane."""
    rows = 2 * round(2.0 * LEG_M / (spacing_m * 0.866) / 2)
    lat = specimens.rows(TROUSERS_M, 2.0 * LEG_M, round(TROUSERS_M / spacing_m), rows)
    structure = specimens.sheet(lat, THICKNESS_M, of)
    path = way_inward(structure, LEG_M, CUT_M, spacing_m)
    structure = cut_along(structure, path)
    p, t = structure.points, structure.triangles
    left, right = np.flatnonzero(p[:, 0] < 1e-9), np.flatnonzero(p[:, 0] > TROUSERS_M - 1e-9)
    middle = p[t].mean(axis=1)[:, 1]
    upper = np.array([n for n in left if middle[(t == n).any(axis=1)].mean() > LEG_M])
    lower = np.setdiff1d(left, upper)
    structure = specimens.held(structure, (right, "xyz"), (left, "y"))
    ends = np.concatenate([upper, lower])
    weights = np.concatenate([np.full(len(upper), 1 / len(upper)), np.full(len(lower), -1 / len(lower))])
    drive = Drive(ends, weights, np.array([0.0, 0.0, 1.0]), 0.0)
    return Specimen(Network(structure, [drive]), ends, path[-1])


@dataclass(frozen=True)
class Step:
    """One increment of a test.

    force_n : summed over the grips;  torn_m : so far;  books : the ledger as a dict
    drive_ratio : of the line nearest to running;  nodes : how many there are
    """

    travel_m: float
    force_n: float
    torn_m: float
    books: dict[str, float]
    drive_ratio: float
    nodes: int


def pull(
    specimen: Specimen, step_m: float, end_m: float, stop_torn_m: float = math.inf
) -> tuple[Stepper, Point, tuple[Step, ...]]:
    """Return stepper, last point and the steps of a test, driven by what a door's run calls."""
    stepper = Stepper(specimen.network, specimens.never, viscous_n_per_m=0.0)
    point = stepper.first_point(specimen.network.initial_state(), Ledger())
    steps = []
    while point.travel_m < end_m - 1e-12:
        reached = tearing.advance(stepper, point, point.travel_m + step_m, specimen.gripped)
        stepper, point = reached.stepper, reached.point
        found = worst_cut(stepper.network, point.evaluation, specimen.gripped)
        torn = torn_m(stepper.network, point.state)
        steps.append(
            Step(
                point.travel_m,
                float(point.force_n.sum()),
                torn,
                point.ledger.as_dict(),
                0.0 if found is None else found.drive_ratio,
                len(stepper.network.structure.points),
            )
        )
        if torn > stop_torn_m:
            break
    return stepper, point, tuple(steps)


def between(steps: Sequence[Step], first_torn_m: float) -> tuple[Step, Step]:
    """Return the first step past a torn length at which a node had just let go, and the last such step."""
    jumps = [k for k in range(1, len(steps)) if steps[k].torn_m > steps[k - 1].torn_m]
    kept = [k for k in jumps if steps[k].torn_m >= first_torn_m]
    return steps[kept[0]], steps[kept[-1]]


# ---- rows --------------------------------------------------------------------------------------------------

RUNS_AT_M = math.sqrt(2.0 * GC_J_PER_M2 * HEIGHT_M * (1.0 - POISSON**2) / YOUNG_PA)
PER_METRE = GC_J_PER_M2 * THICKNESS_M
AUTHORITY = "rivlin-thomas-1953"


@lru_cache
def torn_strip(spacing_m: float, turned_deg: float | None = None) -> tuple[Stepper, Point, tuple[Step, ...]]:
    """Return a clamped strip of metal that does not yield, pulled until a tenth of a metre has torn."""
    turned = None if turned_deg is None else math.radians(turned_deg)
    return pull(clamped_strip(spacing_m, metal(), turned_rad=turned), RUNS_AT_M / 40, 1.4 * RUNS_AT_M, 0.1)


def strip_runs(spacing_m: float) -> Row:
    """Return at which pull the cut of a clamped strip runs; the load is in proportion to the pull."""
    _, _, steps = torn_strip(spacing_m)
    first = next((s.travel_m for s in steps if s.nodes > steps[0].nodes), math.nan)
    return Row(
        claim="cut strip clamped along its edges: pull at which it tears",
        authority=AUTHORITY,
        expected=1e3 * RUNS_AT_M,
        got=1e3 * first,
        unit="mm",
        tolerance=0.05,
        spacing=spacing_word(spacing_m),
    )


def strip_energy(spacing_m: float, turned_deg: float) -> Row:
    """Return what a metre of straight tear costs where the lattice lies across its way."""
    stepper, point, _ = torn_strip(spacing_m, turned_deg)
    structure = stepper.network.structure
    first = np.flatnonzero(structure.bonds.of("tear"))[0]
    ends = max(float(structure.points[node, 0]) for node in structure.lines)
    length = ends - float(structure.points[structure.bonds.nodes[first, 0], 0])
    return Row(
        claim=f"tear across a lattice turned by {turned_deg:g} degrees: energy of a straight metre",
        authority=AUTHORITY,
        expected=PER_METRE,
        got=point.ledger.lines["tear"] / length,
        unit="J/m",
        tolerance=0.10,
        spacing=spacing_word(spacing_m),
    )


@dataclass(frozen=True)
class Torn:
    """A pair of trousers torn for a while: mean force [N], and the books per torn metre [J/m]."""

    force_n: float
    work: float
    tear: float
    folding: float
    stored: float
    jump: float
    failed: int


@lru_cache
def torn_trousers(spacing_m: float, yield_pa: float = specimens.NO_YIELD_PA, step_m: float = 0.01) -> Torn:
    """Return trousers torn from 40 to 140 mm, read from one letting-go of a node to another."""
    of = metal(yield_pa, 1.0e9 if yield_pa < specimens.NO_YIELD_PA else 0.0)
    stepper, _, steps = pull(trousers(spacing_m, of), step_m, 0.75, 0.14)
    first, last = between(steps, 0.04)
    length = last.torn_m - first.torn_m
    grown = {name: (last.books[name] - first.books[name]) / length for name in last.books}
    work = grown["work of the tips"]
    force_n = work * length / (last.travel_m - first.travel_m)
    jump = grown["released in a jump"]
    return Torn(
        force_n, work, grown["tear"], grown["folding skin"], grown["stored"], jump, stepper.tally.failed
    )


def trouser_load(spacing_m: float) -> Row:
    """Return the mean force at which trousers tear."""
    return Row(
        claim="trousers that do not yield: mean force of the tear",
        authority=AUTHORITY,
        expected=0.5 * PER_METRE,
        got=torn_trousers(spacing_m).force_n,
        unit="N",
        tolerance=0.15,
        spacing=spacing_word(spacing_m),
    )


def trouser_energy(spacing_m: float) -> Row:
    """Return what a torn metre of trousers costs."""
    return Row(
        claim="trousers that do not yield: energy per torn length",
        authority=AUTHORITY,
        expected=PER_METRE,
        got=torn_trousers(spacing_m).tear,
        unit="J/m",
        tolerance=0.10,
        spacing=spacing_word(spacing_m),
    )
