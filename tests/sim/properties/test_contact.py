"""A tip driven along a line: a spring to its travel that presses and never pulls; props hold both ways.

Sources
-------
Hooke's law, and that a contact cannot pull: statics, no source.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim.checks.specimens import metal, rows, sheet
from sim.network import Drive, Load, Network
from sim.surround import Prop, Surround

STIFF = 2.0e7
LINE = np.array([0.6, 0.0, 0.8])
PLATE = sheet(rows(0.1, 0.1, 3, 3), 2.0e-3, metal())
NODES, WEIGHTS = np.array([2, 5, 7]), np.array([0.5, 0.3, 0.2])


@pytest.mark.parametrize("travel_m", [-1.0e-4, 0.0, 1.0e-4])
def test_a_tip_pushes_by_its_travel_and_never_pulls(travel_m):
    start = float(LINE @ (WEIGHTS @ PLATE.points[NODES]))
    network = Network(PLATE, [Drive(NODES, WEIGHTS, LINE, start, STIFF)])
    ev = network.evaluate(PLATE.points, network.initial_state(), Load((travel_m,)))
    force = STIFF * max(travel_m, 0.0)
    assert ev.drive_force[0] == pytest.approx(force)
    # what acts on the metal is the energy's gradient turned round: along the line, shared as the pad is
    np.testing.assert_allclose(-ev.forces[NODES], WEIGHTS[:, None] * force * LINE, rtol=0, atol=1e-9 * STIFF)
    assert ev.stored["tool"] == pytest.approx(0.5 * STIFF * max(travel_m, 0.0) ** 2)


@pytest.mark.parametrize("way", [None, LINE], ids=["strap", "from below"])
def test_a_prop_holds_against_the_way_it_is_left(way):
    """A strap holds in every direction, a support from below only: neither pushes the metal further off."""
    place = WEIGHTS @ PLATE.points[NODES]
    around = Surround(np.zeros(3), props=(Prop("a prop", NODES, WEIGHTS, place, STIFF, way),))
    network = Network(replace(PLATE, surround=around))
    for off in (1.0e-4, -1.0e-4):
        ev = network.evaluate(PLATE.points + off * LINE, network.initial_state(), Load())
        held = -STIFF * off if way is None or off < 0.0 else 0.0
        # the sheet carried as a whole has no force of its own
        np.testing.assert_allclose(-ev.forces.sum(axis=0), held * LINE, rtol=0, atol=1e-6 * STIFF * 1.0e-4)
        assert ev.stored["props"] == pytest.approx(0.5 * held**2 / STIFF)
