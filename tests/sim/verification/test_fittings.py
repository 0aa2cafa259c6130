"""Latch and hinges hold what the regulation asks, on the door itself.

Source
------
[un-regulation-2010] and the global technical regulation of the same text, found as quoted clauses. Fully
latched 11 000 N across the latch face and 9 000 N along the fork's opening, 4 500 N in either direction when
half latched; hinge system 11 000 N along the car and 9 000 N across.  A single hinge carries its share.
The force is read from the reaction of the fitting, pulled along the regulation's direction until it lets go.
"""

from functools import lru_cache

import numpy as np
import pytest

from sim.door_model import build_model
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive
from sim.plan import Car
from tests.sim import support

# along the car is across the latch face; across the car is along the fork's opening
ALONG, ACROSS = (1.0, 0.0, 0.0), (0.0, 1.0, 0.0)
FLOOR_N = {
    ("full", "latch", ALONG): 11.0e3,
    ("full", "latch", ACROSS): 9.0e3,
    ("half", "latch", ALONG): 4.5e3,
    ("half", "latch", ACROSS): 4.5e3,
    ("full", "upper hinge", ALONG): 5.5e3,
    ("full", "upper hinge", ACROSS): 4.5e3,
    ("full", "lower hinge", ALONG): 5.5e3,
    ("full", "lower hinge", ACROSS): 4.5e3,
}


@lru_cache
def car_model(latch, ratio):
    return build_model(
        Car(latch=latch, latch_strength_ratio=ratio, hinge_strength_ratio=ratio, lattice_spacing_m=0.06)
    )


@lru_cache
def held_n(latch, name, way, ratio):
    """Return the fitting's reaction against the pull at the moment it lets go [N]."""
    model = car_model(latch, ratio)
    index = [tie.name for tie in model.structure.ties].index(name)
    tie = model.structure.ties[index]
    direction = np.array(way)
    # the pull takes hold of the fitting itself
    start = float(direction @ (tie.weights @ model.start.points[tie.nodes]))
    drive = Drive(tie.nodes, tie.weights, direction, start, stiffness_n_per_m=1.0e9)
    stepper = Stepper(model.network.with_drives([drive]), support.never)
    point = stepper.first_point(model.start, Ledger())
    limit_m = float(np.abs(direction) @ tie.limit_n) / tie.stiffness_n_per_m
    # in one go to just below, then in steps of half a per cent
    for share in (0.5, 0.95, *np.arange(0.96, 1.2, 0.005)):
        point = stepper.advance(point, float(share) * limit_m)
        if point.freed:
            break
    assert stepper.tally.failed == 0
    (freed,) = point.freed
    assert freed.name == name
    return float(-direction @ freed.reaction_n)


@pytest.mark.parametrize("case", list(FLOOR_N), ids=str)
@pytest.mark.parametrize("sign", [1.0, -1.0])
def test_fitting_at_the_floor_holds_the_regulations_force_and_then_lets_go(case, sign):
    latch, name, way = case
    reaction = held_n(latch, name, tuple(sign * np.array(way)), 1.0)
    # 1 %, the case's figure: it must still hold at 0.99 of the floor, and it lets go at the value set
    np.testing.assert_allclose(reaction, FLOOR_N[case], rtol=0.01)


@pytest.mark.parametrize("case", [("full", "latch", ALONG), ("full", "latch", ACROSS)], ids=str)
def test_an_untouched_car_is_above_the_floor(case):
    assert held_n(*case, Car().latch_strength_ratio) >= FLOOR_N[case]


@pytest.mark.parametrize("way", [ALONG, ACROSS])
def test_half_latched_is_about_half(way):
    full, half = (held_n(latch, "latch", way, 1.0) for latch in ("full", "half"))
    # 4.5 over 11 and over 9: between four and five and a half tenths
    np.testing.assert_allclose(half / full, 0.5, rtol=0.0, atol=0.1)
