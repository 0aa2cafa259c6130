"""The elastic answer of the whole door: against the solver, and contacts that press and never pull.

Sources
-------
Contact forces as non-negative least squares, by scipy: a general-purpose reference library.  The rest
compares the elastic answer with the program's own solver, which shares no line with the contacts' pivoting.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.optimize import nnls

from sim.aim import answer_of, at_rest, untouched
from sim.elastic import TRAVEL_M, elastic, pressing
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.push import make_push
from sim.run import Begin, MoveRun
from tests.sim.runs.solved import DEEP_M, build_model, car, edge

SMALL_M = 1.0e-6
CAR = car(lattice_spacing_m=0.06)


def by_least_squares(matrix, gap):
    """Return the p >= 0 that makes |L^T p + L^-1 gap| least, matrix = L L^T, by scipy."""
    lower = np.linalg.cholesky(matrix)
    return nnls(lower.T, np.linalg.solve(lower, -gap))[0]


@pytest.mark.parametrize("count", [1, 6, 60])
def test_contact_forces_are_those_of_an_independent_library(count):
    rng = np.random.default_rng(count)
    seen = set()
    for _ in range(40):
        half = rng.normal(size=(count, count))
        matrix, gap = half @ half.T + 0.1 * np.eye(count), rng.normal(size=count)
        expected = by_least_squares(matrix, gap)
        np.testing.assert_allclose(
            pressing(matrix, gap), expected, rtol=0, atol=1e-9 * max(1.0, expected.max())
        )
        seen.add(int((expected > 0.0).sum()))
    assert len(seen) > 1  # few and many contacts pressed
    assert len(pressing(np.zeros((0, 0)), np.zeros(0))) == 0


@pytest.mark.parametrize("tilt_rad", [-1.2, -0.3, 0.0, 0.8])
@pytest.mark.parametrize("depth_m", [0.005, 0.05, DEEP_M])
def test_a_tiny_push_of_the_solver_goes_the_same_way(depth_m, tilt_rad):
    model = build_model(CAR)
    push = make_push(model, edge(depth_m=depth_m, tilt_rad=tilt_rad))
    network = model.network.with_drives([push.drive(model.start.points)])
    stepper = Stepper(network, lambda: False)
    point = stepper.advance(stepper.first_point(model.start, Ledger()), SMALL_M)
    pad = push.pads[0]
    way = pad.point(point.state.points) - pad.point(model.start.points)
    expected = untouched(model).way(push, float(push.direction @ way))
    np.testing.assert_allclose(expected, way, rtol=0, atol=1e-3 * np.linalg.norm(way))  # found: 5e-5


def test_the_tips_travel_what_they_are_told():
    model = build_model(CAR)
    push = make_push(model, edge(tilt_rad=-0.7))
    assert push.direction @ untouched(model).way(push) == pytest.approx(TRAVEL_M, rel=1e-9)


def test_the_rim_presses_outboard_only_and_stiffens_every_push():
    """A support taken away never stiffens (Rayleigh); the same travel then takes less force."""
    model = build_model(CAR)
    bare = replace(model.start, on_rim=np.zeros_like(model.start.on_rim))
    free, held = elastic(model.network, bare), untouched(model)
    rim, gained = len(model.structure.rim), []
    for tilt in (-1.2, -0.6, 0.6, 1.2):
        push = make_push(model, edge(depth_m=0.1, tilt_rad=tilt))
        gap_m, force_n = held.contact(push)
        assert (force_n >= 0.0).all()
        assert (gap_m[force_n == 0.0] > -1e-12).all()
        np.testing.assert_allclose(
            force_n[:rim], model.structure.rim_stiffness_n_per_m * np.maximum(-gap_m[:rim], 0.0), atol=1e-6
        )
        assert 0 < (force_n[:rim] > 0.0).sum() < rim
        (_, without_n, _), (_, with_n, _) = free._solve(push, TRAVEL_M), held._solve(push, TRAVEL_M)
        gained.append(with_n / without_n)
    assert min(gained) >= 1.0
    assert max(gained[:2]) > 1.1  # pushes inboard are those it meets


def test_after_an_earlier_move_the_answer_is_that_of_the_bent_door():
    model = build_model(CAR)
    run = MoveRun(model, edge(opening_m=0.04, stop_at=()), Begin(model.start, Ledger()))
    for _ in run:
        pass
    begin = at_rest(model, run.end)
    assert begin.engaged is None
    push = make_push(run.model, edge(0.6))
    answer = answer_of(model, begin)
    network = run.model.network.with_drives([push.drive(begin.state.points)])
    stepper = Stepper(network, lambda: False)
    point = stepper.advance(stepper.first_point(begin.state, begin.ledger), 10 * SMALL_M)
    way = push.pads[0].point(point.state.points) - push.pads[0].point(begin.state.points)
    expected = answer.way(push, float(push.direction @ way))
    # five per cent: metal that has flowed may flow again at once, and the let-off leaves it where it stopped
    np.testing.assert_allclose(expected, way, rtol=0, atol=0.05 * np.linalg.norm(way))
    fresh = untouched(model).way(make_push(model, edge(0.6)), float(push.direction @ way))
    assert np.linalg.norm(fresh - way) > 2.0 * np.linalg.norm(expected - way)
