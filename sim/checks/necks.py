"""Where a tear starts on an edge without one: how near to necking it is told to be.

A strip stretched evenly necks nowhere sooner than elsewhere: at every node of its edges the nearness is the
strain it has over the strain at which its metal reaches its tensile strength.  Read by the nodes' forces it
hangs on how the triangles lie round the node and on what else pulls there; and since the metal hardens
little, 1 % of force is 3 % of strain.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import msgspec
import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from sim.checks import specimens
from sim.checks.facts import through
from sim.checks.row import TEXTBOOK, Row
from sim.cuts import cuts_of
from sim.door_model import build_model
from sim.ledger import Ledger
from sim.materials import SKIN_STEEL
from sim.plan import Car
from sim.run import Begin, MoveRun
from sim.tear import measure

Floats = NDArray[np.float64]

LENGTH_M, WIDTH_M, THICKNESS_M, SPACING_M = 0.36, 0.15, 0.7e-3, 0.03
STRAIN = 0.03
CLEAR_M = 0.06  # nodes nearer to a gripped end are not read
LATTICES_M, ALONG_M, SETTLED_M = (0.045, 0.036), 0.36, 0.04

FAN = "nearness is read by the nodes' forces, which hang on how the triangles lie round a node of the edge"
ONSET = f"{FAN}: which node of the lip necks first, and when, is the lattice's and not the metal's"


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
    share = told[edge & inside & (told >= 0.0)] / (STRAIN / necks_at())
    return Told(float(share.min()), float(share.max()))


def necks_at() -> float:
    """Return the strain at which the skin's metal reaches its tensile strength, by its own curve."""
    of = SKIN_STEEL
    return of.tensile_pa / of.young_pa + (of.tensile_pa - of.yield_pa) / of.hardening_pa


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
        tolerance=0.10,
        spacing=f"{1e3 * SPACING_M:g} mm",
        known=FAN,
    )


# ---- the hem lip at the latch on two lattices --------------------------------------------------------------


@dataclass(frozen=True)
class Lip:
    """A push on the hem lip.

    parted_m : seam parted when it ends;  necked_m : opening at which a first node of the skin has necked
    stretch_ratio : greatest stretch of the lip one increment before, over the one at which its metal necks
    """

    parted_m: float
    necked_m: float
    stretch_ratio: float


@cache
def lip(spacing_m: float) -> Lip:
    """Return a push on the hem lip at the latch on a lattice, to the opening up to which it is settled."""
    model = build_model(Car(lattice_spacing_m=spacing_m))
    move = msgspec.structs.replace(through(ALONG_M), opening_m=SETTLED_M)
    run = MoveRun(model, move, Begin(model.start, Ledger()))
    hem, rest = model.mesh.hem_skin, model.start.points
    necked = stretch = math.nan
    for frame in run:
        if len(frame.points) == model.whole_count:
            stretch = float((_steps(frame.points[hem]) / _steps(rest[hem])).max()) - 1.0
        elif math.isnan(necked):
            necked = frame.opening_m
    return Lip(run.frames[-1].parted_length_m, necked, stretch / necks_at())


def _steps(chain: Floats) -> Floats:
    length: Floats = np.linalg.norm(np.diff(chain, axis=0), axis=1)
    return length


def _between(usual: float, fine: float) -> float:
    return max(usual, fine) / min(usual, fine)


def lip_stretched() -> Row:
    """Return how far the lip is stretched anywhere, just before the skin is told to neck on it."""
    spacing_m = LATTICES_M[0]
    return Row(
        "on the hem lip at the latch, before the skin necks: greatest stretch of the lip",
        TEXTBOOK,
        1.0,
        lip(spacing_m).stretch_ratio,
        "of where it necks",
        tolerance=0.20,
        relation="at least",
        spacing=f"{1e3 * spacing_m:g} mm door",
        known=ONSET,
    )


def parted_settles() -> Row:
    """Return how far two lattices are apart in the seam that has parted."""
    return _two(
        f"on the hem lip at the latch, {1e3 * SETTLED_M:g} mm: seam parted, more over less of two lattices",
        _between(*(lip(spacing).parted_m for spacing in LATTICES_M)),
    )


def necking_settles() -> Row:
    """Return how far two lattices are apart in the opening at which the skin begins to neck."""
    return _two(
        "on the hem lip at the latch: where the skin begins to neck, later over sooner of two lattices",
        _between(*(lip(spacing).necked_m for spacing in LATTICES_M)),
        ONSET,
    )


def _two(claim: str, got: float, known: str = "") -> Row:
    """Return the row: an energy kept per length [turon-2007] asks that the lattice does not matter."""
    words = " and ".join(f"{1e3 * spacing:g}" for spacing in LATTICES_M)
    return Row(claim, "turon-2007", 1.2, got, relation="at most", spacing=f"{words} mm door", known=known)
