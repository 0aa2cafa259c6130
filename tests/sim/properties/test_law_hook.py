"""A law joins the network by its class alone: its pattern, energies, memory and ledger line follow."""

from dataclasses import replace

import numpy as np
import pytest

from sim import network as networks
from sim.ledger import spent
from tests.sim.properties.test_laws import bent, dense, load_at, network, slope


class Drag:
    """A spring on a mean of two nodes along y, half of whose energy is spent; remembers its extension."""

    name, line = "drag", "friction"
    nodes, weights, stiffness_n_per_m = np.array([2, 21]), np.array([0.3, 0.7]), 4.0e5

    def __init__(self, structure, drives):
        self.rest = self._mean(structure.points)

    @property
    def means(self):
        return [self.nodes]

    def _mean(self, points):
        return float(self.weights @ points[self.nodes, 1])

    def forces(self, points, state, load, ev):
        u = self._mean(points) - self.rest - float(state.kept.get("drag extension", np.zeros(1))[0])
        ev.forces[self.nodes, 1] += self.weights * self.stiffness_n_per_m * u
        ev.stored["drag"] = ev.spent["drag"] = 0.25 * self.stiffness_n_per_m * u * u

    def stiffness(self, ev, state, load, into):
        into.mean(0, self.weights, np.diag([0.0, self.stiffness_n_per_m, 0.0]))

    def commit(self, state, ev):
        u = self._mean(ev.points) - self.rest
        return replace(state, kept={**state.kept, "drag extension": np.array([u])})


@pytest.fixture
def pair(monkeypatch):
    """Return the same network without and with the new law."""
    plain = network()
    monkeypatch.setattr(networks, "LAWS", (*networks.LAWS, Drag))
    return plain, network()


def test_its_forces_and_stiffness_are_slopes_of_its_energy(pair):
    plain, more = pair
    state = more.initial_state()
    load, x = load_at(more, state), bent(more, 3e-3)
    a, b = plain.evaluate(x, state, load), more.evaluate(x, state, load)
    extra = dense(more, more.stiffness_values(b, state, load, b.springs)) - dense(
        plain, plain.stiffness_values(a, state, load, a.springs)
    )

    def energy(y):
        return more.evaluate(y, state, load).potential_j - plain.evaluate(y, state, load).potential_j

    def force(y):
        return (more.evaluate(y, state, load).forces - plain.evaluate(y, state, load).forces).ravel()

    np.testing.assert_allclose(force(x), slope(energy, x, 1e-7), rtol=0.0, atol=1e-5 * np.abs(force(x)).max())
    np.testing.assert_allclose(extra, slope(force, x, 1e-7), rtol=0.0, atol=1e-6 * Drag.stiffness_n_per_m)
    assert np.abs(extra).max() > 0.1 * Drag.stiffness_n_per_m


def test_what_it_spends_has_its_line_and_what_it_remembers_is_kept_and_hashed(pair):
    _, more = pair
    state = more.initial_state()
    load = load_at(more, state)
    ev = more.evaluate(bent(more, 3e-3), state, load)
    assert spent(more, state, ev, load)["friction"] == ev.spent["drag"] > 0.0
    after = more.commit(state, ev)
    assert more.evaluate(ev.points, after, load).spent["drag"] == pytest.approx(0.0, abs=1e-20)
    assert replace(after, kept={}).sha256() != after.sha256()
