"""Depth, tilt and place: steps add up, limits hold, and a refusal says why."""

import math

import numpy as np
import pytest

from meshes.body import build_body
from meshes.door import build_door
from meshes.door_shape import DoorShape
from sim.plan import BeltPoint, BodyPoint, Crush, Ease, EdgePoint, FacePoint, Spread, Squeeze
from ui.state import steering
from ui.state.steering import CannotSteer, Reach

MESH = build_door(DoorShape())
BODY = build_body(DoorShape())
LATCH = steering.reach(MESH, EdgePoint())


def test_steps_of_depth_add_up_and_stop_at_the_ends():
    move = Spread(door=EdgePoint(depth_m=0.005))
    for _ in range(6):
        move = steering.deepen(move, steering.DEPTH_STEP_M, LATCH)
    assert move.door.depth_m == pytest.approx(0.017, abs=1e-9)
    for _ in range(40):
        move = steering.deepen(move, steering.DEPTH_LEAP_M, LATCH)
    assert move.door.depth_m == pytest.approx(0.160, abs=1e-9)
    for _ in range(40):
        move = steering.deepen(move, -steering.DEPTH_LEAP_M, LATCH)
    assert move.door.depth_m == 0.0


def test_every_depth_within_reach_lies_on_the_door():
    for edge in ("latch_edge", "hinge_edge", "sill_edge"):
        limit = steering.reach(MESH, EdgePoint(edge=edge))
        for along in (limit.along_low_m, limit.along_high_m):
            station = MESH.edge_station(edge, along)
            ends = [MESH.section_point(station, depth) for depth in (0.0, limit.depth_high_m)]
            assert [word for word, _ in ends] == ["hem_lip", "inner_face"]
            off_m = MESH.locate([place for _, place in ends])[2]
            assert off_m.max() < 1e-3  # a millimetre: the lattice's chord against the curved section


def test_depth_at_the_belt_goes_from_lip_to_lip():
    move, lips = Spread(door=BeltPoint(lip="outer")), []
    for _ in range(3):
        move = steering.deepen(move, 0.002, Reach(0.1, 0.9, 0.1))
        lips.append(move.door.lip)
    assert lips == ["both", "inner", "inner"]


def test_tilt_keeps_to_steps_of_five_degrees_and_to_its_range():
    move = Spread(tilt_rad=math.radians(45))
    assert math.degrees(steering.tilted(move, steering.TILT_STEP_RAD).tilt_rad) == pytest.approx(50, abs=1e-9)
    for _ in range(30):
        move = steering.tilted(move, steering.TILT_STEP_RAD)
    assert math.degrees(move.tilt_rad) == pytest.approx(90, abs=1e-9)


@pytest.mark.parametrize("move", [Squeeze(), Ease()])
def test_depth_and_tilt_are_refused_with_a_reason_where_there_are_none(move):
    with pytest.raises(CannotSteer, match="Depth belongs"):
        steering.deepen(move, 0.002, LATCH)
    with pytest.raises(CannotSteer, match="Tilt belongs"):
        steering.tilted(move, 0.1)


def test_a_click_on_an_edge_keeps_tool_tilt_and_opening():
    move = Spread(tilt_rad=0.3, opening_m=0.07)
    changed = steering.placed(move, EdgePoint(edge="sill_edge", along_m=0.4))
    assert (changed.tilt_rad, changed.opening_m, changed.door.edge) == (0.3, 0.07, "sill_edge")


def test_a_click_on_a_face_makes_a_squeeze_and_one_on_an_edge_a_spread_again():
    squeeze = steering.placed(Spread(), FacePoint(along_m=0.4, height_m=0.3))
    assert isinstance(squeeze, Squeeze)
    assert (squeeze.along_m, squeeze.height_m) == (0.4, 0.3)
    assert isinstance(steering.placed(squeeze, EdgePoint()), Spread)


def test_tip_two_goes_where_the_tips_can_open_and_nowhere_else():
    outside = BodyPoint("pillar_outside", 0.36)
    changed, words = steering.second_placed(Spread(), "latch_pillar", outside)
    assert changed.against == outside
    assert "outside" in words
    across, _ = steering.second_placed(changed, "latch_pillar", BodyPoint("pillar_edge", 0.37))
    assert across.against is None
    with pytest.raises(CannotSteer, match="Tip two cannot stand on the rocker"):
        steering.second_placed(Spread(), "rocker", BodyPoint("rocker", 0.5))
    with pytest.raises(CannotSteer, match="squeeze sets tip two by itself"):
        steering.second_placed(Squeeze(), "latch_pillar", outside)


def test_a_seat_on_the_body_that_no_longer_fits_is_given_up():
    move = Spread(against=BodyPoint("pillar_outside", 0.36))
    assert steering.placed(move, EdgePoint(edge="hinge_edge")).against is None
    assert steering.placed(move, EdgePoint(along_m=0.5)).against is not None


def test_the_pillar_has_an_edge_and_an_outside():
    edge = BODY.seat_point("pillar_edge", 0.36)
    assert steering.seat_under(BODY, "latch_pillar", edge).seat == "pillar_edge"
    further = edge + np.array([0.05, 0.0, 0.0])
    assert steering.seat_under(BODY, "latch_pillar", further).seat == "pillar_outside"
    assert steering.seat_under(BODY, "flange", edge) is None


def test_tip_one_goes_round_all_edges_and_comes_back_with_height_and_depth():
    begun = Spread(door=EdgePoint(along_m=0.31, depth_m=0.05), against=BodyPoint("pillar_outside", 0.4))
    places, move = [], begun
    for _ in range(4):
        move = steering.on_next_edge(move)
        places.append(steering.edge_of(move.door))
        assert move.against is None
    assert places == ["sill_edge", "hinge_edge", "belt", "latch_edge"]
    assert isinstance(move.door, EdgePoint)
    upright = steering.on_next_edge(steering.on_next_edge(begun))
    assert upright.door.depth_m == begun.door.depth_m
    squeeze = Squeeze(0.5, 0.5)
    assert isinstance(steering.on_next_edge(squeeze), Spread)
    with pytest.raises(CannotSteer, match="crush has no tips"):
        steering.on_next_edge(Crush())


def test_tip_two_goes_to_its_other_seat_and_along_it():
    begun = Spread(door=EdgePoint(along_m=0.31))
    limit = steering.Reach(0.02, 0.6, 0.1)
    out, words = steering.on_next_seat(begun)
    assert out.against == BodyPoint("pillar_outside", 0.31)
    assert words == "Tip two stands on the pillar's outside."
    assert steering.on_next_seat(out)[0].against is None
    assert steering.second_slid(out, 2, limit).against.along_m == pytest.approx(0.43)
    assert steering.second_slid(out, 9, limit).against.along_m == pytest.approx(0.6)
    up = steering.second_slid(begun, 1, limit)
    assert up.against == BodyPoint("pillar_edge", 0.37)
    assert steering.second_slid(up, -1, limit).against is None
    with pytest.raises(CannotSteer, match="one place here: the rocker"):
        steering.on_next_seat(Spread(door=EdgePoint(edge="sill_edge", along_m=0.5)))


def test_tip_two_goes_along_where_it_stood_beside_tip_one_and_stays_where_it_was_set_apart():
    beside = Spread(door=EdgePoint(along_m=0.40), against=BodyPoint("pillar_outside", 0.41))
    assert steering.placed(beside, EdgePoint(along_m=0.60)).against == BodyPoint("pillar_outside", 0.61)
    assert steering.slid(beside, -0.05, LATCH).against == BodyPoint("pillar_outside", 0.36)
    apart = Spread(door=EdgePoint(along_m=0.40), against=BodyPoint("pillar_outside", 0.55))
    assert steering.placed(apart, EdgePoint(along_m=0.60)).against == apart.against
    assert steering.slid(apart, 0.05, LATCH).against == apart.against
