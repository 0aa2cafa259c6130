"""The descent of one increment: it ends in balance, lower than it began, and the same way every time."""

from dataclasses import replace
from functools import partial

import numpy as np
import pytest

from sim import factor as factors
from sim import increment
from sim.factor import CholmodFactor, NotPositiveError, SuperluFactor
from sim.materials import SKIN_STEEL
from sim.network import Drive, Load, Network
from sim.newton import CancelledError, Options, descend, equilibrate
from sim.recall import Recall
from sim.structure import Section, Structure


def strip(columns=12, rows=3, pitch=0.03):
    """Return a strip of sheet clamped along one end and pushed aside at the other."""
    i, j = np.meshgrid(np.arange(columns), np.arange(rows), indexing="ij")
    points = np.stack([pitch * (i + 0.5 * j), 0.0 * i, 0.87 * pitch * j], axis=-1).reshape(-1, 3)
    cells = [(a * rows + b, (a + 1) * rows + b) for a in range(columns - 1) for b in range(rows - 1)]
    triangles = np.array([t for a, b in cells for t in ((a, b, a + 1), (b, b + 1, a + 1))])
    fixed = np.zeros(points.shape, bool)
    fixed[: 2 * rows] = True
    s = Structure(
        points, triangles, np.zeros(len(triangles), np.int64), (Section("a", 0.001, SKIN_STEEL),), fixed=fixed
    )
    end = np.arange(len(points) - rows, len(points))
    d = Drive(end, np.full(rows, 1.0 / rows), np.array([0.0, 1.0, 0.0]), 0.0)
    return Network(s, [replace(d, start=d.travel(points))])


def pushed(net, travel, state=None):
    state = net.initial_state() if state is None else state
    load = Load((travel,), None, 5.0, state.points)
    return state, load, equilibrate(net, state, load, state.points)


@pytest.mark.parametrize("travel", [1e-4, 5e-3, 3e-2, 0.15])
def test_an_increment_ends_in_balance_and_lower_than_it_began(travel):
    """Bent a little or far past yield in one go; the balance is a millionth of the force."""
    net = strip()
    state, load, answer = pushed(net, travel)
    assert answer.converged
    begun, ended = net.evaluate(state.points, state, load), answer.evaluation
    assert ended.potential_j < begun.potential_j
    assert np.abs(net.residual(ended)).max() <= max(1e-3, 1e-6 * abs(float(ended.drive_force[0])))
    fresh = net.evaluate(ended.points, state, load)
    assert np.array_equal(fresh.forces, ended.forces)


def test_the_answer_is_a_low_point():
    net = strip()
    state, load, answer = pushed(net, 0.03)
    ev, rng = answer.evaluation, np.random.default_rng(0)
    for _ in range(20):
        way = np.where(net.free, rng.standard_normal(ev.points.shape), 0.0)
        assert net.evaluate(ev.points + 1e-5 * way, state, load).potential_j > ev.potential_j


def test_the_same_push_gives_the_same_bits():
    one, two = strip(), strip()
    a, b = pushed(one, 0.02)[2], pushed(two, 0.02)[2]
    pushed(two, 0.15)  # a descent leaves nothing behind that the next one could feel
    c = pushed(two, 0.02)[2]
    for other in (b, c):
        assert np.array_equal(a.evaluation.points, other.evaluation.points)
        assert a.iteration_count == other.iteration_count


def test_both_factors_come_to_the_same_answer(monkeypatch):
    a = pushed(strip(), 0.02)[2].evaluation
    monkeypatch.setattr(factors, "cholmod", None)
    net = strip()
    assert net.factor.name == "SuperLU"
    b = pushed(net, 0.02)[2].evaluation
    np.testing.assert_allclose(b.points, a.points, rtol=0.0, atol=1e-8)
    assert b.drive_force[0] == pytest.approx(a.drive_force[0], rel=1e-5)


def test_a_stopped_descent_says_so_and_one_cut_short_is_not_called_converged():
    net = strip()
    state = net.initial_state()
    load = Load((0.05,), None, 5.0, state.points)
    with pytest.raises(CancelledError):
        equilibrate(net, state, load, state.points, cancelled=lambda: True)
    short = descend(net, state, load, state.points, Options(factor_limit=1, step_limit=1), lambda: False)
    assert not short.converged
    assert short.iteration_count == short.step_count == 1


def test_points_that_are_no_numbers_are_never_called_an_answer():
    net = strip()
    state = net.initial_state()
    load = Load((0.05,), None, 5.0, state.points)
    assert not descend(net, state, load, state.points * np.nan, Options(), lambda: False).converged


def test_a_tangent_that_nothing_makes_definite_ends_unsettled_and_not_in_a_crash(monkeypatch):
    """A chain folded flat on itself has stiffness beyond any shift: that increment failed, and is said so."""
    net = strip()

    def refuse(_):
        raise NotPositiveError("not positive")

    monkeypatch.setattr(net.factor, "refactor", refuse)
    _, _, answer = pushed(net, 5e-3)
    assert not answer.converged
    assert np.isfinite(answer.evaluation.points).all()


def test_what_is_left_of_the_start_is_not_overwritten():
    """The evaluation handed back stays as it is while the next increment is solved."""
    net = strip()
    state, _, first = pushed(net, 0.01)
    kept = first.evaluation.points.copy(), first.evaluation.forces.copy()
    pushed(net, 0.02, net.commit(state, first.evaluation))
    assert np.array_equal(kept[0], first.evaluation.points)
    assert np.array_equal(kept[1], first.evaluation.forces)


def test_remembered_steps_are_the_dense_formula():
    """H <- (I - s y^T / s.y) H (I - y s^T / s.y) + s s^T / s.y, kept whole [nocedal-1980] (from memory)."""
    rng = np.random.default_rng(1)
    n, room = 7, 4
    root = rng.standard_normal((n, n))
    stiff = root @ root.T + np.eye(n)
    start = np.diag(1.0 / np.diag(stiff))
    recall = Recall(room, n)
    pairs = []
    for _ in range(6):  # more than it has room for
        s = rng.standard_normal(n)
        recall.add(s, stiff @ s)
        pairs.append((s, stiff @ s))
    recall.add(pairs[0][0], -pairs[0][1])  # falling curvature is passed over
    inverse = start.copy()
    for s, y in pairs[-room:]:
        left = np.eye(n) - np.outer(s, y) / (s @ y)
        inverse = left @ inverse @ left.T + np.outer(s, s) / (s @ y)
    vector = rng.standard_normal(n)
    got = vector.copy()
    recall.before(got)
    got = start @ got
    recall.after(got)
    np.testing.assert_allclose(got, inverse @ vector, rtol=1e-12, atol=1e-12)
    recall.clear()
    got = vector.copy()
    recall.before(got)
    assert np.array_equal(got, vector)


@pytest.mark.parametrize("kind", [CholmodFactor, SuperluFactor])
def test_factors_solve_what_numpy_solves_and_refuse_what_is_not_stable(kind):
    if kind is CholmodFactor and factors.cholmod is None:
        pytest.skip("CHOLMOD is not installed here")
    rng = np.random.default_rng(2)
    n = 12
    root = rng.standard_normal((n, n))
    matrix = root @ root.T + np.eye(n)
    columns, rows = np.triu_indices(n)
    made = kind(rows, columns, n)
    made.refactor(matrix[rows, columns])
    right = rng.standard_normal(n)
    np.testing.assert_allclose(made.solve(right), np.linalg.solve(matrix, right), rtol=1e-10)
    with pytest.raises(NotPositiveError):
        made.refactor((matrix - 2.0 * np.eye(n) * np.linalg.eigvalsh(matrix)[0])[rows, columns])
    with pytest.raises(NotPositiveError):
        made.refactor(np.full(len(rows), np.nan))
    made.refactor(matrix[rows, columns])
    np.testing.assert_allclose(made.solve(right), np.linalg.solve(matrix, right), rtol=1e-10)


def test_metal_that_comes_to_rest_goes_on_from_where_it_got(monkeypatch):
    """A rest begins where the metal is: to begin there a second time would fail the same way."""
    net = strip()
    state, load, whole = pushed(net, 0.15)
    short = Options(factor_limit=round(0.75 * whole.iteration_count))
    assert not equilibrate(net, state, load, state.points, options=short).converged
    monkeypatch.setattr(increment, "equilibrate", partial(equilibrate, options=short))
    stepper = increment.Stepper(net, lambda: False)
    answer, _ = stepper.rested(state, load)
    assert answer.converged
    assert not stepper.tally.failed
    np.testing.assert_allclose(answer.evaluation.points, whole.evaluation.points, rtol=0.0, atol=1e-6)
