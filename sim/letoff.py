"""Letting the tool off: the tips are drawn back the way they push until they no longer do."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.crush import drawn_back
from sim.engaged import Engaged, Start
from sim.grips import just_set
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.model import DoorModel
from sim.network import Drive, Network, State
from sim.push import Push

Floats = NDArray[np.float64]


def let_off(
    model: DoorModel, push: Push | Engaged | None, begin: Start, make: Callable[[Network], Stepper]
) -> Point:
    """Return the metal at rest after the tips have been drawn back until they no longer push."""
    if push is None:
        return make(model.network).first_point(begin.state, begin.ledger)
    if not isinstance(push, Push):
        return push.let_off(model, begin, make)
    if push.place is None:
        drive, state = push.drive(begin.state.points), begin.state
    else:
        drive, state = _pulling(model, push, begin.state, make), just_set(begin.state)
    stepper = make(model.network.with_drives([drive]))
    # the held tips stand where they push with the force they had: find that travel first
    probe = stepper.first_point(state, begin.ledger)
    forces = -probe.evaluation.forces
    squeeze = float(
        np.sum(forces[drive.nodes] @ drive.direction * drive.weights) / float(drive.weights @ drive.weights)
    )
    travel = max(-squeeze, 0.0) / drive.stiffness_n_per_m
    held = stepper.network.evaluate(state.points, state, stepper.load(travel, state))
    point = Point(state, held, travel, held.drive_force.copy(), begin.ledger)
    return drawn_back(stepper, point)


def _pulling(model: DoorModel, push: Push, state: State, make: Callable[[Network], Stepper]) -> Drive:
    """Return a contact along the force a tip that grips has at the moment: what the metal pushes back with.

    Drawn back along that line the tip holds nothing across it.
    """
    plain = push.drive(state.points)
    probe = make(model.network.with_drives([plain])).first_point(just_set(state), Ledger())
    nodes, weights = push.both()
    pull = weights @ probe.evaluation.forces[nodes] / float(weights @ weights)
    size = float(np.linalg.norm(pull))
    line = pull / size if size > 0.0 else push.direction
    return replace(plain, direction=line, start=float(line @ (weights @ state.points[nodes])))
