"""Dry friction: sticks, slides, heats, and lets go at the end of its way.

Sources
-------
Friction of a wedge: two faces pressed with N are drawn apart sideways by 2 mu N, statics of dry friction,
any textbook of mechanics (Coulomb).  The rest compares derivative with difference and book with book.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim.checks.specimens import metal, rows, sheet
from sim.latch import FLANKS, FRICTION_RATIO, friction_n
from sim.network import Load, Network
from sim.newton import equilibrate
from sim.rubbing import SLIP, WAY, slide, slide_stiffness
from sim.structure import Slider, Tie

FORCE_N, WAY_M, STIFF = 2.0e3, 0.015, 1.0e7
ONE = np.array([0], dtype=np.int64)
RUB = Slider("rub", ONE, np.ones(1), STIFF, FORCE_N, WAY_M)
PULLS = {
    "sticking": np.array([1.0e-4, -0.5e-4, 0.2e-4]),
    "sliding": np.array([2.0e-3, -1.0e-3, 0.5e-3]),
    "after some way": np.array([5.0e-3, 1.0e-3, 0.0]),
}


def slip_of(name):
    return np.array([3.0e-3, 1.0e-3, 0.0, 3.2e-3]) if name == "after some way" else np.zeros(4)


def energy(pull, slip):
    _, stored, spent, _ = slide(RUB, pull, slip)
    return stored + spent


@pytest.mark.parametrize("name", PULLS)
def test_force_is_the_slope_of_the_energy_and_tangent_that_of_the_force(name):
    pull, slip, step = PULLS[name], slip_of(name), 1.0e-8
    force, _, _, _ = slide(RUB, pull, slip)
    tangent = slide_stiffness(RUB, pull, slip)
    fall = FORCE_N / WAY_M
    if name != "sticking":  # the tangent leaves out the fall of the friction along the slide
        unit = (pull - slip[:WAY]) / np.linalg.norm(pull - slip[:WAY])
        tangent = tangent - fall * STIFF / (STIFF - fall) * np.outer(unit, unit)
    for i in range(3):
        e = step * np.eye(3)[i]
        difference = (energy(pull + e, slip) - energy(pull - e, slip)) / (2.0 * step)
        assert force[i] == pytest.approx(
            difference, rel=1e-5, abs=1e-3
        )  # central difference of ~1 J over 1e-8 m
        column = (slide(RUB, pull + e, slip)[0] - slide(RUB, pull - e, slip)[0]) / (2.0 * step)
        np.testing.assert_allclose(tangent[:, i], column, rtol=1e-5, atol=10.0)  # of 1e5 .. 1e7 N/m


def test_the_force_never_passes_the_friction_left_and_that_falls_to_nothing():
    slip, forces = np.zeros(4), []
    for k in range(1, 41):
        force, _, _, slip = slide(RUB, np.array([0.0, 5.0e-4 * k, 0.0]), slip)
        forces.append(float(np.linalg.norm(force)))
    assert max(forces) <= FORCE_N * (1.0 + 1e-12)
    assert forces[0] > 0.9 * FORCE_N
    assert forces[-1] == 0.0
    assert slip[WAY] > WAY_M
    assert not slide_stiffness(RUB, np.array([0.0, 0.03, 0.0]), slip).any()


def test_heat_over_the_whole_way_is_the_triangle_of_force_over_way():
    # F falls in a straight line over the way: F L / 2, in few steps as in many
    for count in (1, 8, 400):
        slip, heat = np.zeros(4), 0.0
        for k in range(1, count + 1):
            _, _, spent, slip = slide(RUB, np.array([0.0, 0.02 * k / count, 0.0]), slip)
            heat += spent
        assert heat == pytest.approx(0.5 * FORCE_N * WAY_M, rel=1e-9)


def test_drawn_back_it_holds_the_other_way_and_gives_nothing_back():
    _, _, _, slip = slide(RUB, np.array([0.0, 4.0e-3, 0.0]), np.zeros(4))
    force, stored, spent, _ = slide(RUB, np.zeros(3), slip)
    assert force[1] < 0.0  # pulls outboard: holds where it was left
    assert spent > 0.0
    assert stored >= 0.0


def test_two_flanks_give_twice_the_friction_of_one():
    assert friction_n(1.0e4) == pytest.approx(FLANKS * FRICTION_RATIO * 1.0e4)
    assert FLANKS == 2


def test_a_block_pulled_through_the_network_moves_when_friction_is_overcome():
    lattice = rows(0.2, 0.1, 4, 3)
    base = sheet(lattice, 0.001, metal())
    nodes = np.arange(len(base.points), dtype=np.int64)
    weights = np.full(len(nodes), 1.0 / len(nodes))
    rub = replace(RUB, nodes=nodes, weights=weights, travel_m=1.0e9)  # does not wear off
    guide = Tie("guide", nodes, weights, 1.0e5, np.full(3, np.inf))
    network = Network(replace(base, ties=(guide,), sliders=(rub,)))
    state = network.initial_state()
    for force in (0.9 * FORCE_N, 1.5 * FORCE_N):
        dead = np.zeros_like(base.points)
        dead[:, 0] = force / len(nodes)
        answer = equilibrate(network, state, Load((), dead, 1.0, state.points), state.points)
        assert answer.converged
        moved = float(np.mean(answer.evaluation.points[:, 0] - base.points[:, 0]))
        # below the friction both springs carry; above it the guide carries what friction does not
        expected = force / (STIFF + 1.0e5) if force < FORCE_N else (force - FORCE_N) / 1.0e5
        assert moved == pytest.approx(expected, rel=1e-3)
        kept = network.commit(state, answer.evaluation)
        assert (kept.kept[SLIP][0, WAY] > 0.0) == (force > FORCE_N)
