"""Gravity, ground, stands, props and edges: slopes of their energies, balance, and that none ever pulls.

Sources
-------
None: finite differences and laws of statics.  Numbers are invented.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim.edging import EDGE_PUSH, EDGE_ROWS, chosen, planes
from sim.grounds import GROUND_PUSH, GROUND_ROWS, STAND_PUSH, STAND_ROWS
from sim.network import Load, Network
from sim.search import look
from sim.standing import _with_body
from sim.structure import Section, Structure
from sim.surround import Carried, Edges, Ground, Prop, Stand, Surround
from sim.surrounding import looked
from tests.sim.properties.test_laws import STEEL, assert_near, dense, plates, slope

G = np.array([0.3, -0.8, -9.7])


def everything():
    """Return two small plates among all there is: weight, ground, a body on stands, props and edges."""
    s = plates()
    n = len(s.points) // 2
    stands = tuple(
        Stand(f"stand {k}", np.array([x, y, -0.3]), 2.0e4, 3.0e4, 900.0, 0.1)
        for k, (x, y) in enumerate(((-0.5, -0.5), (1.5, -0.5), (-0.5, 1.0), (1.5, 1.0)))
    )
    s, body = _with_body(s, 400.0, stands, np.array([0.5, 0.2, -0.3]))
    ground = Ground(np.array([0.0, 0.0, 1.0]), 0.001, 0.4)
    prop = Prop("strut", np.array([3, 4, *body.nodes]), np.array([0.4, 0.6, 1.0, 0.0, 0.0, 0.0]),
                0.4 * s.points[3] + 0.6 * s.points[4] + [0.0, 0.0, 2e-3], 3.0e4,
                np.array([0.0, 0.6, 0.8]))  # fmt: skip
    hold = Prop("hands", np.array([9]), np.ones(1), s.points[9] + [1e-3, 0.0, 0.0], 2.0e4)
    low = s.triangles[: len(s.triangles) // 2]
    up = np.cross(*(s.points[low[0, i]] - s.points[low[0, 0]] for i in (1, 2)))[1] > 0.0
    edges = Edges(np.arange(n, 2 * n), np.ones(n, int), np.arange(len(low)), np.zeros(len(low), int),
                  np.zeros((0, 3), int), np.zeros(0, int), 3.0e5)  # fmt: skip
    if not up:
        s = replace(s, triangles=s.triangles[:, ::-1])
    load = Carried("glass", 2.0, np.array([1, 20]), np.array([0.25, 0.75]))
    return replace(s, surround=Surround(G, (load,), ground, body, (prop, hold), edges=edges))


@pytest.fixture(scope="module")
def pressed():
    """Return the network some tenths of a millimetre deep in all it touches, held across, and its state."""
    net = Network(everything())
    state = net.initial_state()
    rng = np.random.default_rng(4)
    x = state.points + 2.0e-4 * rng.standard_normal(state.points.shape)
    n = 16
    x[n : 2 * n, 1] -= 0.0042  # the upper plate into the lower
    x[-4:] += np.array(
        [[1e-3, -2e-3, -3e-3], [1.4e-3, -2e-3, -3e-3], [1e-3, -1.8e-3, -2.6e-3], [1e-3, -2e-3, -3e-3]]
    )
    net, state = looked(net, replace(state, points=x))
    # edges press only from where they are when one first looks: begin outside
    around = net.structure.surround
    rows = chosen(around.near, net.structure.points, None)
    state = replace(state, kept={**state.kept, EDGE_ROWS: rows})
    net, state = looked(net, state)  # now what presses is in the pattern
    ev = net.evaluate(x, state, Load())
    state = net.commit(state, ev)
    y = x + 1.5e-4 * rng.standard_normal(x.shape)
    y[-4:] = x[-4:] + 0.004
    return net, state, y


def test_the_fixture_presses_everywhere_and_slides_somewhere(pressed):
    net, state, y = pressed
    ev = net.evaluate(y, state, Load())
    assert (ev.read[EDGE_PUSH] > 0.0).sum() >= 4 and (ev.read[GROUND_PUSH] > 0.0).sum() >= 2
    assert ev.spent["ground"] > 0.0 and ev.spent["stands"] > 0.0
    assert len(state.kept[GROUND_ROWS]) and len(state.kept[STAND_ROWS]) == 4


def test_forces_are_the_slope_of_the_energy(pressed):
    net, state, y = pressed
    rough = slope(lambda p: net.evaluate(p, state, Load()).potential_j, y, 1e-8).reshape(-1, 3)
    assert_near(net.evaluate(y, state, Load()).forces, rough, 2e-6)


def test_stiffness_is_the_slope_of_the_forces_where_it_is_whole(pressed):
    """All but gravity's turn with the body, which is left out, and the edges' slip, of first order in it."""
    net, state, y = pressed
    ev = net.evaluate(y, state, Load())
    got = dense(net, net.stiffness_values(ev, state, Load(), ev.springs))
    rough = slope(lambda p: net.evaluate(p, state, Load()).forces.ravel(), y, 1e-8)
    assert_near(got, got.T, 1e-12)
    body = net.structure.surround.body.nodes
    free = np.ones(len(y), bool)
    free[body] = False
    keep = np.repeat(free, 3)
    assert_near(got[np.ix_(keep, keep)], rough[np.ix_(keep, keep)], 1e-5)
    scale = 2.0e4 * 4.0
    np.testing.assert_allclose(
        got[~keep], rough[~keep], rtol=0.0, atol=1e-3 * scale + 1e-6 * np.abs(rough).max()
    )


def test_ground_and_stands_push_and_never_pull(pressed):
    net, state, _ = pressed
    for lift in (-0.01, 0.0, 0.02, 0.3):
        ev = net.evaluate(state.points + np.array([0.0, 0.0, lift]), state, Load())
        assert (ev.read[GROUND_PUSH] >= 0.0).all() and (ev.read[STAND_PUSH] >= 0.0).all()
        assert (ev.read[EDGE_PUSH] >= 0.0).all()
    up = state.points + np.array([0.0, 0.0, 0.3])
    up[net.structure.surround.body.nodes] = state.points[net.structure.surround.body.nodes]
    assert not net.evaluate(up, state, Load()).read[GROUND_PUSH].any()
    lifted = state.points.copy()
    lifted[net.structure.surround.body.nodes] += [0.0, 0.0, 0.2]
    assert not net.evaluate(lifted, state, Load()).read[STAND_PUSH].any()


def test_edges_press_equally_on_both_and_turn_with_the_metal(pressed):
    """Forces and moments of an edge on its triangle sum to nothing; a rigid turn changes no push."""
    net, state, y = pressed
    law = next(one for one in net.laws if one.name == "edges")
    ev = net.blank()
    law.forces(y, state, Load(), ev)
    scale = np.abs(ev.forces).max()
    np.testing.assert_allclose(ev.forces.sum(axis=0), 0.0, atol=1e-9 * scale)
    np.testing.assert_allclose(np.cross(y, ev.forces).sum(axis=0), 0.0, atol=1e-9 * scale)
    c, s = np.cos(0.7), np.sin(0.7)
    turn = np.array([[c, s, 0.0], [-s, c, 0.0], [0.0, 0.0, 1.0]])
    other = net.blank()
    law.forces(np.ascontiguousarray(y @ turn.T), state, Load(), other)
    np.testing.assert_allclose(other.read[EDGE_PUSH], ev.read[EDGE_PUSH], atol=1e-6 * scale)


class TestChoice:
    """Which triangle a node presses on: a closed block with sharp corners, nodes round it."""

    def near(self, points):
        box = np.array([[x, y, z] for z in (0.0, 0.1) for y in (0.0, 0.1) for x in (0.0, 0.1)])
        faces = np.array([[0, 2, 3], [0, 3, 1], [4, 5, 7], [4, 7, 6], [0, 1, 5], [0, 5, 4], [2, 6, 7],
                          [2, 7, 3], [0, 4, 6], [0, 6, 2], [1, 3, 7], [1, 7, 5]])  # fmt: skip
        everywhere = np.concatenate([box, points])
        count = len(points)
        none = np.zeros(0, int)
        edges = Edges(8 + np.arange(count), np.zeros(count, int), none, none, faces, np.ones(12, int))
        plate = Structure(everywhere, np.zeros((0, 3), int), none, (Section("none", 1e-3, STEEL),),
                          surround=Surround(np.zeros(3), edges=edges))  # fmt: skip
        return everywhere, look(plate, everywhere)

    @pytest.mark.parametrize(("place", "distance"), [
        ((0.05, 0.05, 0.104), 0.004), ((-0.003, 0.05, 0.05), 0.003), ((0.05, 0.098, 0.05), -0.002),
    ])  # fmt: skip
    def test_the_nearest_face_counts_and_outside_is_positive(self, place, distance):
        points, near = self.near(np.array([place]))
        (row,) = chosen(near, points, None)
        ids = row.astype(int)
        assert planes(points, ids[:1], ids[1:4][None], row[None, 4:7])[0] == pytest.approx(distance)
        assert row[7] == pytest.approx(min(distance, 0.0))

    def test_a_node_past_a_corner_presses_on_neither_face(self):
        points, near = self.near(np.array([[0.05, 0.11, 0.11], [0.05, 0.2, 0.05]]))
        assert len(chosen(near, points, None)) == 0

    def test_what_presses_goes_on_pressing_as_much_when_chosen_anew(self):
        points, near = self.near(np.array([[0.05, 0.05, 0.101]]))
        before = chosen(near, points, None)
        points[8, 2] = 0.0997
        after = chosen(near, points, before)
        assert after[0, 7] == pytest.approx(0.0, abs=1e-12)  # it presses by 0.3 mm, from the face on
        points[8, 2] = 0.098
        late = chosen(near, points, None)  # found behind the face: presses only from there on
        assert late[0, 7] == pytest.approx(-0.002)
        points[8, 2] = 0.0995
        assert chosen(near, points, late)[0, 7] == pytest.approx(-0.0005)  # and the offset goes as it leaves


def test_what_presses_before_it_is_in_the_pattern_is_followed_by_a_stiffness_that_is_never_too_small(pressed):
    """(a - sum w b)^2 <= 2 a^2 + 2 sum w b^2: the stand-in less the whole has no negative direction."""
    net, state, y = pressed
    near = replace(net.structure.surround.near, coupled=np.zeros(0, int))
    bare = net.among(replace(net.structure, surround=replace(net.structure.surround, near=near)))
    ev = net.evaluate(y, state, Load())
    other = bare.evaluate(y, state, Load())
    np.testing.assert_allclose(other.forces, ev.forces, rtol=0.0, atol=1e-12 * np.abs(ev.forces).max())
    whole = dense(net, net.stiffness_values(ev, state, Load(), ev.springs))
    loose = dense(bare, bare.stiffness_values(other, state, Load(), ev.springs))
    least = np.linalg.eigvalsh(loose - whole).min()
    assert least > -0.02 * np.abs(whole).max()  # but for what the whole knows of a contact's turn
    assert np.abs(loose - whole).max() > 1e4
