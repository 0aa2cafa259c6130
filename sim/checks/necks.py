"""Where a tear starts on an edge without one: how near to necking it is told to be.

A strip stretched evenly necks nowhere sooner than elsewhere: at every node of its edges the nearness is the
strain it has over the strain at which its metal reaches its tensile strength.  Read by the nodes' forces it
would hang on how the triangles lie round the node and on what else pulls there; and since the metal hardens
little, 1 % of force is 3 % of strain.  So it is read from the edge's own length.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from sim.checks import specimens
from sim.checks.row import TEXTBOOK, Row
from sim.cuts import cuts_of
from sim.materials import SKIN_STEEL
from sim.tear import measure

Floats = NDArray[np.float64]

LENGTH_M, WIDTH_M, THICKNESS_M, SPACING_M = 0.36, 0.15, 0.7e-3, 0.03
STRAIN = 0.03
CLEAR_M = 0.06  # nodes nearer to a gripped end are not read


@dataclass(frozen=True)
class Told:
    """Nearness to necking that a strip's edge nodes tell, over what its metal has: least and most."""

    least: float
    most: float


@cache
def evenly_stretched(turned_deg: float) -> Told:
    """Return what the edges of a strip tell that is stretched evenly, on a lattice turned by an angle."""
    lat = lattice.rectangle(LENGTH_M, WIDTH_M, SPACING_M, math.radians(turned_deg))
    structure = specimens.sheet(lat, THICKNESS_M, SKIN_STEEL)
    x, y, _ = structure.points.T
    left, right = np.flatnonzero(x < 1e-9), np.flatnonzero(x > LENGTH_M - 1e-9)
    structure = specimens.held(structure, (slice(None), "z"), (left, "x"), (right, "x"), (left[:1], "y"))
    start = structure.points * np.array([1.0 + STRAIN, 1.0 - 0.5 * STRAIN, 1.0])
    nudge = np.full_like(start, 1.0e-6)
    answer = specimens.solve(structure, nudge, start=start)
    cuts = cuts_of(answer.network)
    told = measure(answer.network, cuts, answer.evaluation).stretch
    edge = (y[cuts.node] < 1e-9) | (y[cuts.node] > WIDTH_M - 1e-9)
    inside = (x[cuts.node] > CLEAR_M) & (x[cuts.node] < LENGTH_M - CLEAR_M)
    share = told[edge & inside & (told >= 0.0)] / (green(STRAIN) / necks_at())
    return Told(float(share.min()), float(share.max()))


def necks_at() -> float:
    """Return the Green strain at which the skin's metal reaches its tensile strength, by its own curve."""
    of = SKIN_STEEL
    return of.tensile_pa / of.young_pa + (of.tensile_pa - of.yield_pa) / of.hardening_pa


def green(stretch: float) -> float:
    """Return the Green strain of a stretch: what the metal's curve is given in."""
    return stretch + 0.5 * stretch**2


def told_most(turned_deg: float) -> Row:
    """Return how much nearer to necking than it is the nearest node of an evenly stretched edge is told."""
    return _told(turned_deg, "nearest", evenly_stretched(turned_deg).most)


def told_least(turned_deg: float) -> Row:
    """Return the same of the node that is told to be the furthest from it."""
    return _told(turned_deg, "furthest", evenly_stretched(turned_deg).least)


def _told(turned_deg: float, which: str, got: float) -> Row:
    return Row(
        f"strip stretched evenly, lattice turned by {turned_deg:g} degrees: edge told {which} to necking",
        TEXTBOOK,
        1.0,
        got,
        "of the metal's own",
        tolerance=0.01,
        spacing=f"{1e3 * SPACING_M:g} mm",
    )
