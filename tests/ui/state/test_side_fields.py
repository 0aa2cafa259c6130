"""The side and the person as a form: what applies, ranges in the reader's units, what a change brings.

Sources
-------
[ansur-2012]: the sizes offered are those of the survey, each a size a plan may name.
NIST Special Publication 811 (2008), B.8: 25.4 mm to the inch, exact, for what is shown in inches.
"""

import math

import msgspec
import pytest

from meshes.occupant import BODY_SIZES
from sim.carcheck import RANGES, check_car
from sim.cut_plan import DoorCut
from sim.plan import (
    BaseSpot,
    BodyPoint,
    Car,
    Cut,
    Ease,
    EdgePoint,
    FacePoint,
    Hold,
    Latch,
    PillarSpot,
    Plan,
    Press,
    Spread,
    Squeeze,
    Strip,
)
from sim.planhash import plan_sha256
from sim.problems import PlanError
from sim.units import Units
from sim.whole_side import SIDE_RANGES, WholeSide
from ui.state.car_fields import BUILDS_LEAVE, FIELDS, Choice
from ui.state.car_fields import changed as car_changed
from ui.state.side_fields import (
    BY_NAME,
    GROUPS,
    HANGS_ON,
    OF_ONE_DOOR,
    SIDE_FIELDS,
    SIZES,
    SideNumber,
    applies,
    change_words,
    changed,
    hint,
    left_out,
    needs_side,
    trouble_words,
    value_of,
    with_value,
)

SIDE = Car(extent="side", lattice_spacing_m=0.08)
NUMBERS = [field for field in SIDE_FIELDS if isinstance(field, SideNumber)]
CHOICES = [field for field in SIDE_FIELDS if isinstance(field, Choice)]
FULL = msgspec.structs.replace(
    SIDE,
    rail_wall_m=0.0015,
    whole_side=WholeSide(rocker_wall_m=0.0015, foot_flare_m=0.2, foot_stiffener_m=0.0015, soft_foot_m=0.3),
)


def test_every_number_of_a_side_stands_on_the_form():
    asked = {field.name for field in SIDE_FIELDS} | {field.name for field in FIELDS}
    assert set(WholeSide.__struct_fields__) <= asked
    assert len(asked) == len(SIDE_FIELDS) + len(FIELDS)
    assert set(Car.__struct_fields__) - asked == {"name", "build", "whole_side", "bead_gaps"}


@pytest.mark.parametrize("field", NUMBERS, ids=lambda field: field.name)
@pytest.mark.parametrize("units", list(Units))
def test_a_number_read_and_written_stays_what_it_was_and_its_range_is_the_plan_file_s(field, units):
    low, high = (RANGES if field.name in RANGES else SIDE_RANGES)[field.name][:2]
    assert field.span == (low, high)
    value = float(value_of(FULL, field.name))
    assert field.meant(field.shown(value, units), units) == pytest.approx(value, rel=1e-6)
    decimals, step = field.look(units)
    assert step >= 10.0**-decimals * 0.99
    assert all(low <= at <= high for at in field.at)
    assert "{" not in hint(field, units)
    # the least and the greatest value are taken, what is a step beyond is not
    for end, beyond in ((low, low - 0.01 * (high - low)), (high, high + 0.01 * (high - low))):
        assert low <= end <= high
        with pytest.raises(PlanError) as caught:
            changed(FULL, field.name, beyond, units)
        assert caught.value.field == field.name
        said = trouble_words(caught.value, units)
        assert f"use {hint(field, units)}" in said
        assert field.unit(units) in said


@pytest.mark.parametrize("field", CHOICES, ids=lambda field: field.name)
def test_every_choice_makes_a_sound_car_and_a_step_with_a_label(field):
    for value, words in field.options:
        car = changed(FULL, field.name, value, Units.METRIC)
        assert words
        assert value_of(car, field.name) == value
        check_car(car)
    assert field.words.lower() in change_words(field.name)


def test_the_sizes_are_the_survey_s():
    assert {name for name, _ in SIZES} == set(BODY_SIZES)


def test_inches_and_degrees_are_shown_as_such():
    gap, lean, wall = (
        BY_NAME["occupant_gap_m"],
        BY_NAME["occupant_lean_rad"],
        BY_NAME["pillar_pressed_yield_pa"],
    )
    assert gap.shown(0.127, Units.IMPERIAL) == pytest.approx(5.0, rel=1e-12)
    assert lean.meant(30.0, Units.METRIC) == pytest.approx(math.radians(30.0), rel=1e-6)
    assert wall.shown(1.0e9, Units.METRIC) == pytest.approx(1000.0)
    assert hint(gap, Units.METRIC) == "0 to 500 mm: 80 to 150 beside a sound door"


def test_a_door_alone_shows_what_matters_to_it_and_nothing_else():
    shown = {field.name for field in SIDE_FIELDS if applies(Car(), field.name)}
    assert shown == OF_ONE_DOOR - {"rail_yield_pa", "rail_held"}
    assert {"occupant", "rear_latch", "rocker_wall_m", "lies"} <= {
        field.name for field in SIDE_FIELDS if applies(SIDE, field.name)
    }


def test_what_is_nothing_at_zero_hides_what_hangs_on_it():
    for above, below in HANGS_ON.items():
        assert not any(applies(SIDE, name) for name in below), above
        assert all(applies(FULL, name) for name in below), above


def test_a_rail_taken_away_has_no_joint_to_lose():
    torn = msgspec.structs.replace(FULL, rail_held="front")
    assert changed(torn, "rail_wall_m", 0.0, Units.METRIC).rail_held == "both"


@pytest.mark.parametrize("name", ["rocker_wall_m", "rail_wall_m"])
def test_a_wall_too_thin_to_be_worked_out_is_refused_with_both_ways_out(name):
    with pytest.raises(PlanError) as caught:
        changed(SIDE, name, 0.0003, Units.METRIC)
    assert trouble_words(caught.value, Units.METRIC) == (
        "0.3 mm is too thin to be worked out; use 0, where it stands still, or 0.5 mm and more."
    )


def test_more_metal_than_can_be_worked_out_is_refused_before_the_car_is_taken():
    fine = msgspec.structs.replace(SIDE, lattice_spacing_m=0.045, rail_wall_m=0.0015)
    with pytest.raises(PlanError) as caught:
        changed(fine, "rocker_wall_m", 0.0015, Units.METRIC)
    assert "first make them 60 mm or larger" in trouble_words(caught.value, Units.METRIC)
    roomy = msgspec.structs.replace(fine, lattice_spacing_m=0.06)
    assert changed(roomy, "rocker_wall_m", 0.0015, Units.METRIC).whole_side.rocker_wall_m == 0.0015


def test_a_dimension_that_does_not_fit_says_so_in_the_field_s_words_and_the_reader_s_units():
    with pytest.raises(PlanError) as caught:
        changed(SIDE, "spot_pitch_m", 0.12, Units.IMPERIAL)
    said = trouble_words(caught.value, Units.IMPERIAL)
    assert said.startswith("Spots apart, foot and head does not fit this side")
    assert "4.7\u00a0in" in said
    assert said.endswith("use a smaller pitch.")


def test_every_change_is_another_plan():
    plan = Plan(car=SIDE, moves=(Spread(),))
    seen = {plan_sha256(plan)}
    for field in SIDE_FIELDS:
        if isinstance(field, Choice):
            value = next(value for value, _ in field.options if value != value_of(SIDE, field.name))
        else:
            value = field.span[1] if value_of(SIDE, field.name) != field.span[1] else field.span[0]
        other = with_value(SIDE, field.name, value)
        seen.add(plan_sha256(plan.with_car(other)))
    assert len(seen) == 1 + len(SIDE_FIELDS)


def test_moves_that_need_the_whole_side_are_told_on_a_door():
    alone = [
        Spread(),
        Ease(),
        Squeeze(),
        Cut(place=DoorCut()),
        Press(head=FacePoint(side="inner"), foot=BaseSpot()),
    ]
    assert not any(needs_side(move) for move in alone)
    side = [
        Squeeze(on=PillarSpot()),
        Press(),
        Strip(),
        Hold(),
        Cut(),
        Latch(door="rear"),
        Spread(door=EdgePoint(panel="rear")),
        Spread(against=BodyPoint(seat="ground")),
    ]
    assert all(needs_side(move) for move in side)
    assert left_out(SIDE, side) == ""
    assert left_out(Car(), alone) == ""
    assert left_out(Car(), [Spread(), Press()]).startswith("Move 2 needs the whole side")
    assert left_out(Car(), [Strip(), Spread(), Press()]).startswith("Moves 1, 3 need the whole side")


def test_a_ready_build_of_the_door_leaves_side_and_person_as_they_were():
    mine = msgspec.structs.replace(FULL, whole_side=WholeSide(occupant="female_p5", rocker_wall_m=0.001))
    taken = car_changed(mine, "build", "bonded alloy")
    assert taken.metal == "alloy"
    for name in BUILDS_LEAVE:
        assert getattr(taken, name) == getattr(mine, name)


def test_groups_have_headings_and_hold_every_field_once():
    names = [field.name for _, fields in GROUPS for field in fields]
    assert len(names) == len(set(names)) == len(SIDE_FIELDS)
    assert all(heading for heading, _ in GROUPS)
