"""A ram's law: forces and stiffness are slopes of its energy, it only pushes, its dents cost what they cost.

Central differences in double precision: the step of 1e-7 m leaves 1e-7 of the largest entry for the bare ram
and 1e-6 where the foot's depth is found by iteration.  Numbers are invented; no measured figure is needed
here.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim.base import Wall
from sim.network import Load, Network
from sim.state import Drive
from sim.strut import Strut, pushed
from sim.struts import DENT, SINK, Struts
from tests.sim.properties.test_laws import bent, dense, plates, slope

STIFF = 2.0e7
NORMAL = np.array([0.0, 1.0, 0.0])
SKEW = np.array([0.2, 0.9, 0.4]) / np.linalg.norm([0.2, 0.9, 0.4])
WALLS = {"rigid": None, "thin": Wall(), "ribbed": Wall(rib_m=0.0012), "bridged": Wall(across_m=0.2)}


def answer(wall, between, travel, dent=0.0):
    strut = Strut(np.zeros(3), 1.0, WALLS[wall], None if WALLS[wall] is None else NORMAL)
    return strut.answer(between, travel, dent, STIFF)


@pytest.mark.parametrize("wall", WALLS)
@pytest.mark.parametrize("travel_m", [1e-4, 8e-4, 6e-3, 3e-2])
@pytest.mark.parametrize("dent_m", [0.0, 2e-3])
def test_force_and_stiffness_are_slopes_of_the_energy(wall, travel_m, dent_m):
    between = SKEW * 1.0

    def energy(x):
        ram = answer(wall, x, travel_m, dent_m)
        return ram.stored_j + ram.spent_j

    def force(x):
        ram = answer(wall, x, travel_m, dent_m)
        return -ram.force_n * ram.line

    ram = answer(wall, between, travel_m, dent_m)
    if ram.force_n == 0.0:
        assert dent_m > 0.0 and wall != "rigid"  # within the old dent it hangs loose
        return
    np.testing.assert_allclose(
        force(between), slope(energy, between, 1e-7), rtol=0.0, atol=1e-6 * ram.force_n
    )
    np.testing.assert_allclose(
        ram.tangent, slope(force, between, 1e-7), rtol=0.0, atol=2e-6 * np.abs(ram.tangent).max()
    )
    np.testing.assert_allclose(ram.positive, ram.positive.T, rtol=0.0, atol=1e-9 * STIFF)
    assert np.linalg.eigvalsh(ram.positive)[0] >= -1e-9 * STIFF


@pytest.mark.parametrize("wall", WALLS)
def test_the_force_is_the_slope_of_energy_over_length(wall):
    step = 1e-8

    def energy(travel):
        ram = answer(wall, SKEW, travel)
        return ram.stored_j + ram.spent_j

    for travel in (5e-4, 5e-3):
        ratio = (energy(travel + step) - energy(travel - step)) / (2 * step)
        assert ratio == pytest.approx(answer(wall, SKEW, travel).force_n, rel=1e-5)


@pytest.mark.parametrize("wall", WALLS)
def test_it_pushes_and_never_pulls(wall):
    for travel in (-0.01, -1e-6, -1e-12):
        ram = answer(wall, SKEW, travel)
        assert ram.force_n == ram.stored_j == ram.spent_j == 0.0
        assert not ram.positive.any()
    assert answer(wall, SKEW, 1e-3).force_n > 0.0


@pytest.mark.parametrize("wall", ["thin", "ribbed"])
def test_a_wall_dented_and_let_off_has_cost_its_dent_and_gives_nothing_back(wall):
    """Driven 20 mm in many steps and back: work in less work out is the wall's own work of the dent."""
    dent, spent, work, before = 0.0, 0.0, 0.0, 0.0
    travels = np.concatenate([np.linspace(0.0, 0.02, 801)[1:], np.linspace(0.02, -0.002, 801)[1:]])
    last = 0.0
    for travel in travels:
        ram = answer(wall, NORMAL, float(travel), dent)
        assert ram.dent_m >= dent
        spent, dent = spent + ram.spent_j, ram.dent_m
        work += 0.5 * (before + ram.force_n) * (float(travel) - last)
        before, last = ram.force_n, float(travel)
    assert before == 0.0
    assert dent > 0.005
    assert spent == pytest.approx(WALLS[wall].work_j(dent), rel=1e-9)
    assert work == pytest.approx(spent, rel=2e-3)  # trapezoid over 25 um steps


def with_ram(foot, wall=None):
    """Return the two plates of the law tests with a ram on them, its load and state."""
    s = plates()
    head, share = np.array([9, 13, 14]), np.array([0.2, 0.5, 0.3])
    if foot == "body":
        place = share @ s.points[head] - SKEW
        strut, nodes, weights = Strut(place, 1.0, wall, NORMAL if wall else None), head, share
    else:
        nodes, weights = np.array([9, 13, 14, 16, 18]), np.array([0.2, 0.5, 0.3, -0.6, -0.4])
        strut = Strut(np.zeros(3), float(np.linalg.norm(weights @ s.points[nodes])))
    net = Network(s, [Drive(nodes, weights, np.zeros(3), 0.0, STIFF, strut=strut)])
    return net, net.initial_state(), Load((0.004,))


@pytest.mark.parametrize(("foot", "wall"), [("body", None), ("body", Wall()), ("metal", None)])
def test_in_the_network_force_and_stiffness_hang_together(foot, wall):
    """What the tangent gains is the positive part of the law's own second derivative, and nothing else."""
    net, state, load = with_ram(foot, wall)
    law = next(law for law in net.laws if isinstance(law, Struts))
    x = bent(net, 1e-3)

    def of(y):
        ev = net.blank()
        ev.points[:] = y
        law.forces(y, state, load, ev)
        return ev

    ev = of(x)
    assert ev.drive_force[0] > 0.0
    energy = slope(lambda y: of(y).stored["struts"] + of(y).spent["struts"], x, 1e-7)
    np.testing.assert_allclose(ev.forces.ravel(), energy, rtol=0.0, atol=2e-6 * np.abs(ev.forces).max())
    bare = Network(net.structure)
    mine, none = net.evaluate(x, state, load), bare.evaluate(x, state, Load())
    gain = dense(net, net.stiffness_values(mine, state, load, mine.springs)) - dense(
        bare, bare.stiffness_values(none, state, Load(), none.springs)
    )
    drive = net.drives[0]
    between = drive.weights @ x[drive.nodes] - drive.strut.foot_m
    ram = drive.strut.answer(between, load.travel_m[0], 0.0, STIFF)
    whole = np.zeros((x.shape[0], 3, x.shape[0], 3))
    for a, wa in zip(drive.nodes, drive.weights, strict=True):
        for b, wb in zip(drive.nodes, drive.weights, strict=True):
            whole[a, :, b, :] += wa * wb * ram.positive
    np.testing.assert_allclose(gain, whole.reshape(gain.shape), rtol=0.0, atol=1e-9 * STIFF)


def test_between_two_places_of_the_metal_it_adds_no_force_and_no_moment_and_rigid_motion_moves_nothing():
    net, state, load = with_ram("metal")
    law = next(law for law in net.laws if isinstance(law, Struts))
    x = bent(net, 1e-3)
    ev = net.blank()
    law.forces(x, state, load, ev)
    size = np.abs(ev.forces).max()
    np.testing.assert_allclose(ev.forces.sum(axis=0), 0.0, atol=1e-9 * size)
    np.testing.assert_allclose(np.cross(x, ev.forces).sum(axis=0), 0.0, atol=1e-9 * size)
    turn = np.linalg.qr(np.random.default_rng(3).standard_normal((3, 3)))[0]
    there = net.blank()
    law.forces(x @ turn.T + [0.3, -0.2, 0.1], state, load, there)
    assert there.stored["struts"] == pytest.approx(ev.stored["struts"], rel=1e-9)
    np.testing.assert_allclose(there.forces, ev.forces @ turn.T, rtol=0.0, atol=1e-7 * size)


def test_the_dent_is_kept_spent_on_its_own_line_and_hashed():
    net, state, load = with_ram("body", Wall())
    ev = net.evaluate(net.structure.points, state, load)
    assert ev.spent["struts"] > 0.0 and ev.read[SINK][0] > ev.read[DENT][0] > 0.0
    after = net.commit(state, ev)
    assert after.kept[DENT][0] == ev.read[DENT][0]
    assert replace(after, kept={}).sha256() != after.sha256()
    assert net.evaluate(ev.points, after, load).spent["struts"] == pytest.approx(0.0, abs=1e-9)


def test_a_bare_ram_gives_way_across_by_its_force_over_its_length():
    """The one negative part: pushed aside by a, the line turns by a / l and so does the force."""
    ram = pushed(NORMAL * 0.8, 0.801, STIFF)
    across = np.array([1.0, 0.0, 0.0])
    assert across @ ram.tangent @ across == pytest.approx(-ram.force_n / 0.8, rel=1e-12)
