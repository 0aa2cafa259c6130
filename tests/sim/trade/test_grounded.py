"""A freed door under its own weight: which hinge goes first decides whether it stands on the ground.

Sources
-------
After the latch is free, take the lower hinge first, else the door drops on the ground and can push the car:
common practice, no source.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim.door_model import build_model
from sim.edging import EDGE_ROWS, pushes
from sim.fall import settle
from sim.grounding import grounded_n
from sim.handling import grasp, swung
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Network
from sim.plan import Car
from sim.standing import door_among

SILL_M = 0.3


@pytest.fixture(scope="module")
def opened():
    """Return a model whose door has been swung to 63 degrees, and its stepper and point."""
    plain = build_model(Car(lattice_spacing_m=0.06, latch="open"))
    structure = door_among(plain.structure, plain.mesh, plain.body, ground_z_m=-SILL_M)
    stepper = Stepper(Network(structure), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    grip = grasp(structure, point.state.points, plain.mesh.surface.nodes["latch_plate"])
    for now in swung(stepper, point, "hands", grip, 1.1, 400.0, 1.0):
        point = now
    return replace(plain, structure=structure), stepper, point


def freed(opened, *names):
    """Return where the door comes to rest once hinges are gone and nobody holds it."""
    model, held, point = opened
    around = replace(held.network.structure.surround, props=())
    stepper = Stepper(held.network.among(replace(held.network.structure, surround=around)), lambda: False)
    state = point.state
    for name in names:
        index = [tie.name for tie in model.structure.ties].index(name)
        state = stepper.network.release_tie(state, index)
    steps = list(settle(stepper, stepper.first_point(state, Ledger())))
    assert steps[-1].at_rest and stepper.tally.failed == 0
    return model, steps[-1].point


@pytest.fixture(scope="module")
def upper(opened):
    return freed(opened, "upper hinge")


@pytest.fixture(scope="module")
def lower(opened):
    return freed(opened, "lower hinge")


def lowest(model, point):
    return float(point.state.points[model.mesh.hem_inner, 2].min())


def test_upper_hinge_first_puts_the_door_on_the_ground_lower_first_does_not(upper, lower):
    assert sum(grounded_n(upper[0], upper[1].state).values()) > 20.0
    assert not grounded_n(lower[0], lower[1].state)
    assert lowest(*upper) < lowest(*lower) - 0.05


def test_what_holds_it_up_is_its_hinge_edge_against_the_pillar(lower):
    """Without its edges a door on its upper hinge drops as one on its lower hinge does."""
    _, point = lower
    assert EDGE_ROWS in point.state.kept
    _, _, push = pushes(point.state, point.evaluation)
    assert float(push.sum()) > 100.0


def test_a_door_freed_of_both_hinges_lies_on_the_ground_with_all_its_weight_carried(opened):
    model, point = freed(opened, "upper hinge", "lower hinge")
    ground = point.evaluation.read["ground push"].sum()
    assert ground > 100.0
    assert lowest(model, point) < -0.15
    assert np.isfinite(point.state.points).all()
