"""The car's form: words, units, ranges, and what a change brings with it."""

import msgspec
import pytest

from sim.builds import BUILDS, ILLUSTRATIVE
from sim.carcheck import RANGES, check_car
from sim.door_model import build_model
from sim.plan import BeadGap, Car
from sim.problems import PlanError
from sim.units import Units
from ui.state.car_fields import (
    FIELDS,
    GAP_LENGTH,
    GAP_START,
    Choice,
    Number,
    applies,
    changed,
    hint,
    note_on,
    span,
    value_of,
)
from ui.state.side_fields import trouble_words

NUMBERS = [field for field in FIELDS if isinstance(field, Number)]
CHOICES = [field for field in FIELDS if isinstance(field, Choice)]


@pytest.mark.parametrize("field", NUMBERS, ids=lambda field: field.name)
@pytest.mark.parametrize("units", list(Units))
def test_a_number_read_and_written_in_the_reader_s_units_stays_what_it_was(field, units):
    value = float(value_of(msgspec.structs.replace(Car(), bead_gaps=(BeadGap(1.2, 0.3),)), field.name))
    low, high = span(field.name)
    assert low <= value <= high
    assert field.meant(field.shown(value, units), units) == pytest.approx(value, rel=1e-6)
    decimals, step = field.look(units)
    assert step > 0.0
    # one step shows: it is no finer than the decimals
    assert step >= 10.0**-decimals * 0.99
    assert field.words in hint(field, units)


@pytest.mark.parametrize("field", CHOICES, ids=lambda field: field.name)
def test_every_choice_makes_a_sound_car(field):
    for value, words in field.options:
        car = changed(Car(), field.name, value)
        assert words
        assert value_of(car, field.name) == value
        check_car(car)


def test_a_number_s_range_is_the_plan_file_s():
    for field in NUMBERS:
        if field.name in RANGES:
            assert span(field.name) == RANGES[field.name][:2]
            with pytest.raises(PlanError):
                changed(Car(), field.name, RANGES[field.name][1] * 1.01)


def test_hem_and_shut_face_are_asked_for_and_triangles_larger_than_the_face_are_refused():
    car = changed(Car(), "hem_width_m", 0.014)
    car = changed(car, "shut_face_depth_m", 0.08)
    shape = build_model(car).mesh.shape
    assert (shape.hem_width_m, shape.shut_face_depth_m) == (0.014, 0.08)
    coarse = msgspec.structs.replace(Car(), lattice_spacing_m=0.09)
    with pytest.raises(PlanError) as caught:
        changed(coarse, "shut_face_depth_m", 0.08)
    said = trouble_words(caught.value, Units.METRIC)
    words = "Triangles of the metal is 90 mm, more than the shut face is deep (80 mm); use 80 mm or less"
    assert said.replace("\u00a0", " ").startswith(words)


@pytest.mark.parametrize("spacing_m", [0.045, 0.065])
def test_a_door_with_the_narrowest_shut_face_and_the_widest_hem_is_set_out(spacing_m):
    (least, _), (_, most) = span("shut_face_depth_m"), span("hem_width_m")
    car = Car(hem_width_m=most, shut_face_depth_m=least, lattice_spacing_m=spacing_m)
    check_car(car)
    mesh = build_model(car).mesh
    assert mesh.surface.points[mesh.wall[-1], 1] == pytest.approx(-least, abs=1e-9)


def test_a_build_keeps_the_lattice_and_the_side():
    car = changed(Car(lattice_spacing_m=0.06, side="left"), "build", "bonded alloy")
    assert car == msgspec.structs.replace(BUILDS["bonded alloy"], lattice_spacing_m=0.06, side="left")


def test_a_jammed_latch_brings_its_wedge_and_a_welded_seam_closes_the_gaps():
    assert changed(Car(), "latch", "jammed").latch_wedge_n > 0.0
    assert changed(Car(latch_wedge_n=6e3), "latch", "jammed").latch_wedge_n == 6e3
    gap = msgspec.structs.replace(Car(), bead_gaps=(BeadGap(),))
    assert changed(gap, "seam", "welded").bead_gaps == ()


def test_the_first_gap_is_opened_moved_and_closed():
    car = changed(Car(), GAP_LENGTH, 0.1)
    assert [gap.length_m for gap in car.bead_gaps] == [0.1]
    car = changed(car, GAP_START, 0.5)
    assert car.bead_gaps == (BeadGap(0.5, 0.1),)
    two = msgspec.structs.replace(car, bead_gaps=(*car.bead_gaps, BeadGap(2.0, 0.1)))
    assert changed(two, GAP_LENGTH, 0.0).bead_gaps == (BeadGap(2.0, 0.1),)
    assert "2 gaps" in note_on(two)
    late = changed(car, GAP_START, 2.29)
    assert late.bead_gaps[0].start_m + late.bead_gaps[0].length_m == pytest.approx(2.302, abs=1e-3)


def test_what_does_not_matter_is_left_out():
    assert not applies(Car(), "weld_pitch_m")
    assert applies(Car(seam="mixed"), "weld_pitch_m")
    assert not applies(Car(seam="welded"), "seam_energy_j_per_m")
    assert not applies(Car(), "handle_n")
    assert applies(Car(latch="jammed"), "handle_n")
    assert not applies(Car(), "seam_seed")
    assert applies(Car(seam_variation_ratio=0.2), "seam_seed")


def test_an_illustrative_build_says_so_below_its_name():
    name = next(n for n in BUILDS if ILLUSTRATIVE in n)
    assert "assumed" in note_on(BUILDS[name])
    assert note_on(BUILDS["welded steel"]) == ""
    assert "skin's thickness" in note_on(
        msgspec.structs.replace(BUILDS["welded steel"], skin_thickness_m=0.0009)
    )


def test_a_composite_skin_without_its_build_is_refused_in_a_sentence():
    car = next(c for n, c in BUILDS.items() if "composite" in n)
    with pytest.raises(PlanError, match=ILLUSTRATIVE):
        changed(car, "build", "")
