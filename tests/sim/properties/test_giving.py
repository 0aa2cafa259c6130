"""Fittings that bend before they let go: never past what they hold, spending force times way, then off.

Sources
-------
An elastic, perfectly plastic spring pulled by u: force min(k u, L), work L (u - L / 2 k), of which
L (u - L / k) is spent; any textbook of plasticity. That the answer is the nearest point of a convex set:
[simo-hughes-1998], from memory. That a hinge's leaf bends before it comes apart is common practice, no
source.
"""

from dataclasses import replace

import numpy as np
import pytest
from scipy.optimize import minimize

from sim.checks.specimens import metal, rows, sheet
from sim.giving import BENT, WAY, bend, bend_stiffness, nearest_force, used_ratio
from sim.network import Load, Network
from sim.newton import equilibrate
from sim.plan import Car, Plan
from sim.planfile import plan_sha256
from sim.structure import Tie
from tests.sim.runs.solved import car, edge, solve

LIMIT_N, STIFF, GIVE_M = np.array([13.0e3, 9.0e3, 11.0e3]), 1.0e7, 0.02
ONE = np.array([0], dtype=np.int64)
LEAF = Tie("leaf", ONE, np.ones(1), STIFF, LIMIT_N, give_m=GIVE_M)
PULLS = {
    "elastic": np.array([3.0e-4, -2.0e-4, 1.0e-4]),
    "bending": np.array([4.0e-3, -1.0e-3, 2.0e-3]),
    "bent on": np.array([9.0e-3, 3.0e-3, -1.0e-3]),
}


def row_of(name):
    return np.array([5.0e-3, 2.0e-3, 0.0, 6.0e-3]) if name == "bent on" else np.zeros(4)


def energy(pull, row):
    _, stored, spent, _ = bend(LEAF, pull, row)
    return stored + spent


@pytest.mark.parametrize("name", PULLS)
def test_force_is_the_slope_of_the_energy_and_tangent_that_of_the_force(name):
    pull, row, step = PULLS[name], row_of(name), 1.0e-8
    force, _, _, _ = bend(LEAF, pull, row)
    tangent = bend_stiffness(LEAF, pull, row)
    for i in range(3):
        e = step * np.eye(3)[i]
        slope = (energy(pull + e, row) - energy(pull - e, row)) / (2.0 * step)
        assert force[i] == pytest.approx(slope, rel=1e-5, abs=1e-2)  # ~10 J over 1e-8 m in doubles
        column = (bend(LEAF, pull + e, row)[0] - bend(LEAF, pull - e, row)[0]) / (2.0 * step)
        np.testing.assert_allclose(tangent[:, i], column, rtol=1e-5, atol=20.0)  # of 1e6 .. 1e7 N/m
    np.testing.assert_allclose(tangent, tangent.T, rtol=1e-12, atol=1e-6)
    assert np.linalg.eigvalsh(tangent).min() > -1.0e-6 * STIFF


@pytest.mark.parametrize("seed", range(4))
def test_the_force_is_the_nearest_within_what_the_fitting_holds(seed):
    trial = 4.0e4 * np.random.default_rng(seed).standard_normal(3)
    force, _ = nearest_force(trial, LIMIT_N)
    # the same by a general minimiser, in units of the half axes
    within = {"type": "ineq", "fun": lambda x: 1.0 - float(x @ x)}
    sought = minimize(
        lambda x: float(np.sum((LIMIT_N * x - trial) ** 2)) / 1.0e8,
        0.5 * trial / np.linalg.norm(trial),
        constraints=[within],
        options={"ftol": 1e-14, "maxiter": 400},
    )
    np.testing.assert_allclose(force, LIMIT_N * sought.x, atol=2.0)  # newtons of tens of thousands
    assert float(np.sum((force / LIMIT_N) ** 2)) == pytest.approx(1.0, rel=1e-9)


def test_pulled_straight_it_is_the_textbooks_spring_in_few_steps_as_in_many():
    along, way = LIMIT_N[0], 0.012
    for count in (1, 7, 300):
        row, heat = np.zeros(4), 0.0
        for k in range(1, count + 1):
            force, stored, spent, row = bend(LEAF, np.array([way * k / count, 0.0, 0.0]), row)
            heat += spent
        assert force[0] == pytest.approx(along, rel=1e-12)
        assert heat == pytest.approx(along * (way - along / STIFF), rel=1e-9)
        assert stored == pytest.approx(0.5 * along**2 / STIFF, rel=1e-9)
        assert row[WAY] == pytest.approx(way - along / STIFF, rel=1e-9)


def test_let_back_it_stays_bent_and_gives_only_its_spring_back():
    _, _, _, row = bend(LEAF, np.array([8.0e-3, 0.0, 0.0]), np.zeros(4))
    force, stored, spent, again = bend(LEAF, np.array([row[0], 0.0, 0.0]), row)
    assert spent == stored == 0.0
    np.testing.assert_array_equal(again, row)
    np.testing.assert_array_equal(force, 0.0)


def hung(give_m):
    """Return a strip held by one tie along x, its network and its nodes."""
    base = sheet(rows(0.2, 0.1, 4, 3), 0.001, metal())
    nodes = np.arange(len(base.points), dtype=np.int64)
    weights = np.full(len(nodes), 1.0 / len(nodes))
    guide = Tie("guide", nodes, weights, 1.0e5, np.full(3, np.inf))
    leaf = replace(LEAF, nodes=nodes, weights=weights, give_m=give_m)
    return Network(replace(base, ties=(guide, leaf)))


def test_in_the_network_a_guide_carries_what_the_fitting_does_not():
    network = hung(GIVE_M)
    state, count = network.initial_state(), len(network.structure.points)
    dead = np.zeros_like(network.structure.points)
    dead[:, 0] = 1.1 * LIMIT_N[0] / count
    answer = equilibrate(network, state, Load((), dead, 1.0, state.points), state.points)
    assert answer.converged
    moved = float(np.mean(answer.evaluation.points[:, 0] - network.structure.points[:, 0]))
    assert moved == pytest.approx(0.1 * LIMIT_N[0] / 1.0e5, rel=1e-3)
    after = network.commit(state, answer.evaluation)
    assert after.kept[BENT][0, WAY] == pytest.approx(moved - LIMIT_N[0] / STIFF, rel=1e-3)
    ratio = used_ratio(network.structure, after, np.array([0.0, 1.0]))
    assert ratio[1] == pytest.approx(0.5 + 0.5 * after.kept[BENT][0, WAY] / GIVE_M)


def test_one_without_give_is_the_stiff_tie_it_was():
    network = hung(0.0)
    state = network.initial_state()
    points = state.points + np.array([1.0e-3, 0.0, 0.0])
    ev = network.evaluate(points, state, Load((), None, 0.0, points))
    np.testing.assert_allclose(ev.tie_force[1], [STIFF * 1.0e-3, 0.0, 0.0], rtol=1e-9, atol=1e-6)
    assert BENT not in network.commit(state, ev).kept
    assert plan_sha256(Plan(car=Car())) == plan_sha256(Plan(car=Car(fitting_give_m=0.0)))
    assert plan_sha256(Plan(car=Car())) != plan_sha256(Plan(car=Car(fitting_give_m=0.01)))


def test_on_a_door_the_latch_bends_first_and_then_lets_go_at_what_it_holds():
    brittle, giving = (
        solve(
            car(lattice_spacing_m=0.09, fitting_give_m=give),
            edge(depth_m=0.12, stop_at=("latch free",), opening_m=0.04),
        )
        for give in (0.0, 0.005)
    )
    last = [one.result.events[-1] for one in (brittle, giving)]
    assert [event.kind for event in last] == ["latch free", "latch free"]
    # the latch end of the door moves no less than the latch has bent
    assert last[1].opening_m > last[0].opening_m + 0.004
    assert giving.result.ledger_j["latch and hinges"] > brittle.result.ledger_j["latch and hinges"] + 20.0
    assert giving.result.ledger_closure_ratio < 0.02 and giving.result.solver.failed_count == 0
    # on the way it never pulls with more than the ellipsoid holds
    limit = next(t.limit_n for t in giving.model.structure.ties if t.name == "latch")
    for frame in giving.frames:
        force = np.array(frame.reactions.get("latch", (0.0, 0.0, 0.0)))
        assert float(np.sum((force / limit) ** 2)) <= 1.0 + 1.0e-6
