"""Every field of every type of move: shown as it stands, changed, and read back."""

import math

import pytest

from sim.move_words import WORDS
from sim.plan import (
    BaseSpot,
    BeltPoint,
    BodyPoint,
    Cut,
    EdgePoint,
    FacePoint,
    Flex,
    FramePoint,
    PillarSpot,
    Plan,
    Press,
    Spread,
    Squeeze,
    Strip,
)
from sim.planfile import dumps_plan, loads_plan
from sim.units import Units
from ui.state.car_fields import Choice
from ui.state.move_fields import NEW_MOVES, changed, fields_of, new_move, value_of

MADE = [(new_move(name, side=side), side) for name in NEW_MOVES for side in (True, False)]


def test_every_type_of_move_can_be_added():
    assert {type(move) for move, _ in MADE} == set(WORDS)


@pytest.mark.parametrize(("move", "side"), MADE, ids=lambda value: type(value).__name__)
def test_each_choice_and_each_number_is_taken_over_and_survives_its_file(move, side):
    for field in fields_of(move, side=side):
        if isinstance(field, Choice):
            wished = [value for value, _ in field.options]
            assert value_of(move, field.name) in wished
        else:
            assert field.low <= value_of(move, field.name) <= field.high
            wished = [field.low, field.high]
        for value in wished:
            other = changed(move, field.name, value)
            assert value_of(other, field.name) == value
            assert type(other) is type(move)
            again = loads_plan(dumps_plan(Plan(moves=(other,)))).moves[0]
            kept = value_of(again, field.name)
            assert kept == pytest.approx(value) if isinstance(value, float) else kept == value
            fields_of(other, side=side)  # whatever it is now, it has a form


def test_another_kind_of_place_begins_where_such_a_place_usually_is():
    move = changed(Spread(door=EdgePoint(panel="rear")), "door", "belt")
    assert move.door == BeltPoint(panel="rear")
    assert changed(move, "door", "hinge_edge").door == EdgePoint(edge="hinge_edge", panel="rear")
    deep = Spread(door=EdgePoint(depth_m=0.11))
    assert changed(deep, "door", "sill_edge").door.depth_m == 0.11
    press = Press()
    assert isinstance(changed(press, "head", "front").head, FacePoint)
    assert changed(press, "foot", "tunnel_edge").foot == BaseSpot(base="tunnel_edge")
    assert changed(press, "foot", "pillar").foot == PillarSpot()
    assert isinstance(changed(Flex(), "on", "latch_edge").on, EdgePoint)
    assert isinstance(changed(changed(Flex(), "on", "latch_edge"), "on", "frame").on, FramePoint)
    squeeze = changed(Squeeze(), "on", "pillar")
    assert squeeze.on == PillarSpot()
    assert changed(squeeze, "on", "").on is None


def test_tip_two_goes_back_across_the_gap_when_its_seat_no_longer_fits():
    move = Spread(against=BodyPoint("pillar_outside", 0.36))
    assert changed(move, "door.depth_m", 0.02).against == move.against
    assert changed(move, "door", "belt").against is None
    assert changed(Spread(), "against", "ground").against == BodyPoint("ground", 0.36)


def test_only_a_cut_of_the_pillar_stops_short():
    move = changed(Cut(), "short_m", 0.02)
    assert changed(move, "place", "door").short_m == 0.0


def test_what_is_stripped_is_ticked_one_by_one_and_named_pieces_stay():
    move = Strip(what=("trim", "front pane"))
    move = changed(move, "what:seals", True)
    assert set(move.what) == {"trim", "front pane", "seals"}
    assert changed(move, "what:trim", False).what == ("front pane", "seals")


def test_angles_are_shown_in_degrees():
    field = next(f for f in fields_of(Spread(), side=False) if f.name == "tilt_rad")
    assert field.shown(math.pi / 4.0, Units.IMPERIAL) == pytest.approx(45.0, abs=1e-12)
    assert field.meant(30.0, Units.METRIC) == pytest.approx(math.radians(30.0), rel=1e-6)
