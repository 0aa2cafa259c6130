"""What lies under the pointer on a whole side: doors by their own places, the pillar as each sees it."""

import msgspec
import numpy as np
import pytest

from sim.door_model import build_model
from sim.plan import BeltPoint, Car, EdgePoint, FacePoint, PillarSpot, Spread, Squeeze
from ui.state.pointing import panel_of, under
from ui.state.steering import placed, second_placed


@pytest.fixture(scope="module")
def side():
    return build_model(Car(extent="side", lattice_spacing_m=0.06))


@pytest.fixture(scope="module")
def door():
    return build_model(Car(lattice_spacing_m=0.06))


def hem(model, panel, edge, along_m, depth_m=0.005):
    """Return a place on a door's hem as it stands on the car [m]."""
    found = model.panels()[panel]
    station = found.mesh.edge_station(edge, along_m)
    return found.mesh.section_point(station, depth_m)[1] + found.shift_m


@pytest.mark.parametrize(
    ("panel", "edge", "along"),
    [("front", "latch_edge", 0.36), ("rear", "hinge_edge", 0.30), ("rear", "latch_edge", 0.4)],
)
def test_a_tip_is_set_on_the_door_that_is_pointed_at(side, panel, edge, along):
    found = under(side, f"{panel}_shut_face", hem(side, panel, edge, along), side.start.points, "front")
    assert isinstance(found.place, EdgePoint)
    assert (found.place.panel, found.place.edge) == (panel, edge)
    assert found.place.along_m == pytest.approx(along, abs=2e-3)
    assert found.word.startswith(f"{panel} door") and not found.on_body


def test_one_door_and_the_front_of_a_side_are_pointed_at_alike(door, side):
    for part, place in (
        ("shut_face", hem(door, "front", "latch_edge", 0.36)),
        ("outer_skin", np.array([0.5, 0.05, 0.3])),
    ):
        alone = under(door, part, place, door.start.points, "front")
        among = under(side, f"front_{part}", place, side.start.points, "front")
        assert alone.place == among.place and alone.seat == among.seat
        assert among.word == f"front door, {alone.word}"


def test_the_pillar_is_the_latch_pillar_of_one_door_and_the_hinge_pillar_of_the_other(side):
    place = side.start.points[side.pillar_triangles].mean(axis=(0, 1)) * [1.0, 0.0, 0.0] + [0.0, 0.0, 0.36]
    seen = {
        panel: under(side, "middle_pillar_front", place, side.start.points, panel)
        for panel in ("front", "rear")
    }
    assert seen["front"].body.seat == "pillar_outside" and seen["rear"].body.seat == "hinge_pillar"
    assert all(one.on_body and one.word == "pillar between the doors" for one in seen.values())
    move, words = second_placed(Spread(), "pillar", seen["front"].body)
    assert move.against.seat == "pillar_outside" and "pillar's outside" in words


def test_what_is_no_part_of_a_door_has_a_name_and_no_seat(side):
    for part, word in (("rear_pane", "rear pane"), ("lower_pillar_trim", "lower pillar trim")):
        found = under(side, part, np.zeros(3), side.start.points, "front")
        assert (found.word, found.seat, found.place, found.on_body) == (word, "", None, False)
    head = next(one for one in side.occupant if one.name == "head")
    assert under(side, "head", head.start, side.start.points, "front").word == "occupant: head"


def test_moved_metal_is_pointed_at_where_it_is_now(side):
    points = side.start.points + np.array([0.0, 0.2, 0.0])
    place = hem(side, "rear", "hinge_edge", 0.30) + np.array([0.0, 0.2, 0.0])
    found = under(side, "rear_shut_face", place, points, "front")
    assert found.place.along_m == pytest.approx(0.30, abs=2e-3)


def test_a_squeeze_is_set_on_either_door_by_a_click_on_its_skin(side):
    door = side.panels()["rear"]
    shape = door.mesh.shape
    x_m, z_m = 0.5 * shape.length_m, 0.4
    at = door.mesh.shape.skin_point(np.array([x_m]), np.array([z_m]))[0] + door.shift_m
    found = under(side, "rear_outer_skin", at, side.start.points, "front")
    assert isinstance(found.place, FacePoint)
    move = placed(Spread(), found.place)
    assert isinstance(move, Squeeze)
    assert move.panel == panel_of(move) == "rear"
    assert move.height_m == pytest.approx(z_m, abs=0.02)
    # on to the front door, or off the pillar
    again = placed(msgspec.structs.replace(move, on=PillarSpot()), FacePoint(along_m=0.4, height_m=0.3))
    assert (again.panel, again.on, again.along_m) == ("front", None, 0.4)


def test_the_door_that_tip_one_stands_on():
    assert panel_of(None) == "front"
    assert panel_of(Spread(door=EdgePoint(panel="rear"))) == "rear"
    assert panel_of(Spread(door=BeltPoint(panel="rear"))) == "rear"
