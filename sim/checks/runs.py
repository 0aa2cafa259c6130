"""What every run must keep: balance of forces and moments, the books, rigid motion, the mirror image.

References
----------
Conservation laws; nothing here needs a published number.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

import msgspec
import numpy as np
from numpy.typing import NDArray
from scipy.spatial.transform import Rotation

from sim.checks.row import CONSERVATION, Row
from sim.door_model import build_model
from sim.ledger import Ledger
from sim.network import Load, Network
from sim.plan import Car, EdgePoint, Spread
from sim.push import Push
from sim.record import Frame
from sim.run import Begin, MoveRun

Floats = NDArray[np.float64]
Side = Literal["right", "left"]

DEPTH_M = {"on the lip": 0.005, "behind the bend": 0.120}
OPENING_M = {"on the lip": 0.02, "behind the bend": 0.01}
FEW_J = 10.0
"""A step may gape by a tenth of a joule before it is halved: two steps of that are 2 % of this work."""


@dataclass(frozen=True)
class Kept:
    """One push and what all that acts on the door from outside adds up to, at its worst.

    force_ratio : sum of tips, latch, hinges, feet, rim and damping over the largest tip force
    moment_ratio_m : their moments about the pad over the largest tip force [m]
    books_ratio : largest gap of the books over the work put in
    """

    frames: tuple[Frame, ...]
    force_ratio: float
    moment_ratio_m: float
    books_ratio: float


def _outside(run: MoveRun) -> tuple[float, float, float]:
    """Return how large the sums of outside forces [N] and moments [N m] are, and the tip force [N].

    Added up here from places and pulls, and not by the solver.
    """
    point, push, structure = run._point, run.push, run._network.structure
    assert point is not None
    assert isinstance(push, Push)
    x, ev = point.state.points, point.evaluation
    forces = np.zeros_like(x)
    for tie, pull in zip(structure.ties, ev.tie_force, strict=True):
        np.add.at(forces, tie.nodes, -tie.weights[:, None] * pull)
    forces[structure.rim, 1] += structure.outboard_sign * ev.rim_push
    # the tip's push and what its friction holds, as told in the frame
    np.add.at(forces, push.nodes, push.weights[:, None] * run.frames[-1].drive_forces[0])
    if point.before is not None:
        known = len(point.before)
        forces[:known] -= run.stepper.viscous_n_per_m * (x[:known] - point.before)
    pad = push.weights @ x[push.nodes]
    moment = np.cross(x - pad, forces).sum(axis=0)
    total = float(np.linalg.norm(forces.sum(axis=0)))
    return total, float(np.linalg.norm(moment)), float(np.max(point.force_n, initial=0.0))


@lru_cache
def pushed(seat: str, spacing_m: float, side: Side = "right") -> Kept:
    """Return a short push solved and added up."""
    model = build_model(Car(lattice_spacing_m=spacing_m, side=side))
    move = Spread(door=EdgePoint(depth_m=DEPTH_M[seat]), opening_m=OPENING_M[seat])
    run = MoveRun(model, msgspec.structs.replace(move, stop_at=()), Begin(model.start, Ledger()))
    sums = np.array([_outside(run) for frame in run if frame.increment])
    books = [frame.ledger_j for frame in run.frames]
    work = max(FEW_J, *(line["work of the tips"] for line in books))
    gap = max(abs(line["gap"]) for line in books)
    tip = float(sums[:, 2].max())
    return Kept(run.frames, float(sums[:, 0].max()) / tip, float(sums[:, 1].max()) / tip, gap / work)


def _spacing_word(spacing_m: float) -> str:
    return f"{1e3 * spacing_m:.0f} mm door"


def forces(seat: str, spacing_m: float) -> Row:
    """Return the unbalanced force of a push over its tip force."""
    return Row(
        f"push {seat}: reactions equal loads",
        CONSERVATION,
        0.0,
        pushed(seat, spacing_m).force_ratio,
        "of the tip force",
        1e-6,  # what the metal passes on sums to nothing by itself: this is the solver's own residual
        "within",
        _spacing_word(spacing_m),
    )


def moments(seat: str, spacing_m: float) -> Row:
    """Return the unbalanced moment of a push over its tip force."""
    return Row(
        f"push {seat}: moments balance",
        CONSERVATION,
        0.0,
        pushed(seat, spacing_m).moment_ratio_m,
        "m times the tip force",
        1e-6,
        "within",
        _spacing_word(spacing_m),
    )


def books(seat: str, spacing_m: float) -> Row:
    """Return the largest gap in the books of a push."""
    return Row(
        f"push {seat}: work is stored or spent",
        CONSERVATION,
        0.0,
        pushed(seat, spacing_m).books_ratio,
        "of the work",
        0.02,
        "within",
        _spacing_word(spacing_m),
    )


def rigid(angle_rad: float, spacing_m: float) -> Row:
    """Return the energy of a whole door turned and moved as one, with nothing outside to hold it."""
    structure = build_model(Car(lattice_spacing_m=spacing_m)).structure
    none = np.zeros(0)
    network = Network(replace(structure, ties=(), rim=none.astype(np.int64), rim_y_m=none))
    axis = np.array([0.3, 0.5, 0.8])
    turn = Rotation.from_rotvec(angle_rad * axis / np.linalg.norm(axis)).as_matrix()
    state = network.initial_state()
    ev = network.evaluate(state.points @ turn.T + [0.1, 0.2, 0.3], state, Load())
    return Row(
        f"door turned by {angle_rad:g} rad as one: energy",
        CONSERVATION,
        0.0,
        ev.potential_j,
        "J",
        1e-9,
        "within",
        _spacing_word(spacing_m),
    )


def mirror(seat: str, spacing_m: float) -> Row:
    """Return how far the mirrored car's answer is from the answer's mirror image."""
    right, left = pushed(seat, spacing_m, "right").frames, pushed(seat, spacing_m, "left").frames
    off = max(
        float(np.abs(other.points * [1.0, -1.0, 1.0] - one.points).max())
        for one, other in zip(right, left, strict=True)
    )
    # a mirrored lattice sums the same numbers in another order, and snaps magnify that: a micrometre
    return Row(
        f"push {seat}: the mirrored car mirrors the answer",
        CONSERVATION,
        0.0,
        1e3 * off,
        "mm",
        1e-3,
        "within",
        _spacing_word(spacing_m),
    )
