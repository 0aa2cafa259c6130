"""A door that turns about its knuckles: what is seen of them as it opens.

Sources
-------
A hinge's knuckle stands in the recess behind the shut line, 20 to 40 mm in, and the door turns about it:
from memory.  The hinges of a door swung wide open are in plain sight from its doorway, those of a shut one
are not: common practice, no source.
"""

import numpy as np
import pytest

from sim.door_model import build_model
from sim.handling import leaf, turned
from sim.lookout import OPENING_M, lookout_of
from sim.plan import Car

DEPTH_M = 0.03
HINGES = {"upper hinge", "lower hinge"}


def car(depth_m, spacing_m=0.09):
    return Car(lattice_spacing_m=spacing_m, latch="open", hinge_depth_m=depth_m)


def opened(structure, points, degrees):
    """Return the points of a door turned about its hinges as a rigid body."""
    ties = {tie.name: tie for tie in structure.ties}
    axis = np.stack([leaf(ties[name], points) for name in ("lower hinge", "upper hinge")])
    return np.stack([turned(place, axis, np.radians(degrees)) for place in points])


def in_sight(depth_m, degrees):
    model = build_model(car(depth_m))
    points = opened(model.structure, model.start.points, degrees)
    return lookout_of(model).views(model.structure, points, OPENING_M).keys() & HINGES


def test_the_door_turns_about_a_line_as_deep_as_the_knuckle():
    for depth in (DEPTH_M, 0.0):
        structure = build_model(car(depth)).structure
        seats = [leaf(tie, structure.points) for tie in structure.ties if tie.name in HINGES]
        wanted = depth or 0.05  # half of the shut face, 0.1 m deep
        assert [-seat[1] for seat in seats] == pytest.approx([wanted, wanted], abs=0.001)


@pytest.mark.parametrize("degrees", [0.0, 2.0, 5.0, 10.0])
def test_no_hinge_of_a_shut_door_or_one_ajar_is_seen(degrees):
    assert not in_sight(DEPTH_M, degrees)


@pytest.mark.parametrize("degrees", [50.0, 60.0, 63.0])
def test_the_hinges_of_a_door_swung_wide_open_are_reached_from_its_doorway(degrees):
    assert in_sight(DEPTH_M, degrees) == HINGES


def test_a_door_that_turns_about_the_middle_of_its_shut_face_sweeps_over_its_knuckles():
    assert not in_sight(0.0, 63.0)
