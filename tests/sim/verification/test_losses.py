"""What drag and friction take over steps that vary: closed forms, and books that close to rounding.

Sources
-------
Work is the integral of force over the way: textbook mechanics.  A force that grows evenly from nothing with
the way takes half its last value times the way; one that stays takes all of it.  Friction is mu times the
force pressed with [coulomb-1785].
"""

from dataclasses import replace

import numpy as np
import pytest

from sim.checks.specimens import held, metal, never, rows, sheet
from sim.grip import Grip
from sim.grips import FORCE, PRESSED, SLID
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.losses import friction_terms_j
from sim.network import Drive, Network
from sim.newton import TOLERANCE_N

STIFF = 2.0e7
UP, ACROSS = np.array([0.0, 0.0, 1.0]), np.array([1.0, 0.0, 0.0])
DRAG_N_PER_M = 500.0


def plate():
    return sheet(rows(0.1, 0.1, 3, 3), 2.0e-3, metal())


def driven(structure, grip=None):
    """Return a stepper on a plate pushed evenly at all its nodes, and its first point."""
    count = len(structure.points)
    drive = Drive(np.arange(count), np.full(count, 1.0 / count), UP, 0.0, STIFF, grip=grip)
    stepper = Stepper(Network(structure, [drive]), never, viscous_n_per_m=DRAG_N_PER_M)
    return stepper, stepper.first_point(stepper.network.initial_state(), Ledger())


@pytest.mark.parametrize("ends_mm", [(1, 2, 3, 4), (1, 3, 4, 6), (2, 3, 3.5, 7)])
def test_a_plate_that_swings_free_spends_all_work_on_drag_from_its_first_step_on(ends_mm):
    stepper, point = driven(plate())
    count = len(point.state.points)
    way_m = 1e-3 * np.diff([0.0, *ends_mm])
    for end in ends_mm:
        point = stepper.advance(point, 1e-3 * end)
    force = count * DRAG_N_PER_M * way_m  # grows in a straight line to this within each step
    expected = float(np.sum(0.5 * (force + np.r_[0.0, force[:-1]]) * way_m))
    # the tip's spring gives by force over STIFF, a part in a thousand here
    assert point.ledger.lines["viscous"] == pytest.approx(expected, rel=2e-3)
    # each node is in balance to TOLERANCE_N
    assert abs(point.ledger.gap_j) < count * TOLERANCE_N * 1e-3 * ends_mm[-1]


def pressed_at(angle_rad, friction, steps, travel_m=1.0e-4):
    """Return the end of a push at an angle on a plate that cannot move, set down by the first part of it."""
    structure = plate()
    structure = held(structure, (np.arange(len(structure.points)), "xyz"))
    way = np.cos(angle_rad) * UP + np.sin(angle_rad) * ACROSS
    stepper, point = driven(structure, Grip(structure.points.mean(axis=0), way, UP, friction))
    for k in range(steps):
        point = stepper.advance(point, travel_m * (k + 1) / steps)
    return point


@pytest.mark.parametrize("steps", [16, 64])
def test_friction_under_a_growing_force_takes_half_its_last_value_times_the_way(steps):
    friction, angle = 0.4, 1.0
    point = pressed_at(angle, friction, steps)
    slid, force = float(point.state.kept[SLID][0] @ ACROSS), point.evaluation.read[FORCE][0]
    assert slid > 0.0
    # the limit lags by one step of n, and so does what friction takes
    assert point.ledger.lines["friction"] == pytest.approx(0.5 * friction * force[2] * slid, rel=2.5 / steps)
    assert abs(point.ledger.gap_j) < 1e-9 * point.ledger.work_j


def test_books_close_while_the_force_pressed_with_falls_and_the_pad_slides():
    # drawn off and across at once: limit and force fall from step to step
    friction, dent = 0.4, 1.0e-4
    structure = plate()
    structure = held(structure, (np.arange(len(structure.points)), "xyz"))
    stepper, point = driven(structure, Grip(structure.points.mean(axis=0), UP, UP, friction))
    point = stepper.advance(point, dent)
    way = ACROSS - 0.5 * UP
    grip = Grip(structure.points.mean(axis=0) + dent * (UP - way), way, UP, friction)
    stepper = replace(
        stepper, network=stepper.network.with_grips([replace(stepper.network.drives[0], grip=grip)])
    )
    began = point.ledger
    for k in range(8):
        point = stepper.advance(point, dent * (1.0 + (k + 1) / 8))
    took = point.ledger.lines["friction"] - began.lines["friction"]
    slid = float(np.linalg.norm(point.state.kept[SLID][0]))
    first, last = friction * STIFF * dent, friction * float(point.state.kept[PRESSED][0])
    assert 0.0 < last < first
    assert min(last, first) * slid < took < first * slid
    assert abs(point.ledger.gap_j) < 1e-9 * point.ledger.work_j


def test_a_pad_that_does_not_slide_takes_nothing():
    point = pressed_at(0.1, 0.4, 8)  # even with a limit that lags by half of it, in the second step
    assert point.ledger.lines["friction"] == pytest.approx(0.0, abs=1e-12)
    assert friction_terms_j((), point.evaluation, point.state, point.evaluation) == (0.0, 0.0)
