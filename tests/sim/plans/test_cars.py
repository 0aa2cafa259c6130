"""Cars in plan files: ready builds, what is changed on them, and a sentence for every number that cannot be.

Nothing here rests on an outside source: it compares the program with itself.
"""

import msgspec
import pytest

from sim.builds import BUILDS, ILLUSTRATIVE, build_defaults, car_notes, car_words, labelled
from sim.carcheck import RANGES, check_car, hem_length_m
from sim.door_model import build_model
from sim.plan import BeadGap, Car, Plan, WholeSide
from sim.planfile import dumps_plan, loads_plan
from sim.problems import PlanError

HEAD = "schema_version = 1\n"


def plan_of(car_lines):
    return loads_plan(f"{HEAD}[car]\n{car_lines}\n")


@pytest.mark.parametrize("name", BUILDS)
def test_every_build_is_a_sound_car_that_survives_its_file(name):
    check_car(BUILDS[name])
    assert plan_of(f'build = "{name}"').car == BUILDS[name]
    plan = Plan(car=BUILDS[name])
    text = dumps_plan(plan)
    assert loads_plan(text) == plan
    assert "seam_energy" not in text and "thickness" not in text  # the name says it all


def test_the_first_build_is_the_car_a_plan_has_without_any():
    first = next(iter(BUILDS.values()))
    assert msgspec.structs.replace(first, build="") == Car()


def test_what_the_file_says_goes_over_the_build_and_comments_stay():
    text = f'{HEAD}# two doors\n[car]\nbuild = "welded steel" # spots\nskin_thickness_m = 0.0008 # thicker\n'
    plan = loads_plan(text)
    assert plan.car == msgspec.structs.replace(BUILDS["welded steel"], skin_thickness_m=0.0008)
    head, car = text.split("[car]")
    again = dumps_plan(plan, text)
    assert again.startswith(head) and again.endswith(car)
    half = plan.with_car(msgspec.structs.replace(plan.car, latch="half"))
    saved = dumps_plan(half, text)
    assert loads_plan(saved) == half
    assert "# thicker" in saved and "# spots" in saved and 'latch = "half"' in saved


def test_a_field_set_back_to_what_a_plain_car_has_is_written_over_the_build():
    plan = Plan(car=msgspec.structs.replace(BUILDS["welded steel"], seam="bonded"))
    assert loads_plan(dumps_plan(plan)) == plan
    bare = Plan(car=msgspec.structs.replace(BUILDS["bead gap at the latch"], bead_gaps=()))
    assert loads_plan(dumps_plan(bare)) == bare


def test_gaps_are_tables_whose_comments_stay():
    text = f"{HEAD}[car]\n[[car.bead_gaps]]\nstart_m = 1.0 # here\nlength_m = 0.2\n"
    plan = loads_plan(text)
    assert plan.car.bead_gaps == (BeadGap(1.0, 0.2),)
    more = plan.with_car(msgspec.structs.replace(plan.car, bead_gaps=(BeadGap(1.0, 0.3), BeadGap(2.0, 0.1))))
    saved = dumps_plan(more, text)
    assert loads_plan(saved) == more
    assert "# here" in saved
    none = plan.with_car(msgspec.structs.replace(plan.car, bead_gaps=()))
    assert loads_plan(dumps_plan(none, text)) == none


REFUSED = {
    'build = "gold"': ("car.build", "bonded steel"),
    'metal = "composite"': ("car.metal", f"composite skin ({ILLUSTRATIVE})"),
    'metal = "tin"': ("car.metal", "'steel'"),
    'seam = "glued"': ("car.seam", "'bonded', 'mixed', 'welded'"),
    'latch = "shut"': ("car.latch", "'jammed'"),
    'latch = "jammed"': ("car.latch_wedge_n", "12000"),
    "latch_wedge_n = 1e9": ("car.latch_wedge_n", "50000"),
    "handle_n = -1.0": ("car.handle_n", "100 to 400 N"),
    "seam_variation_ratio = 0.9": ("car.seam_variation_ratio", "0 to 0.8"),
    "seam_correlation_m = 0.0": ("car.seam_correlation_m", "0.01"),
    "seam_seed = -1": ("car.seam_seed", "whole number"),
    "weld_peel_n = 1.0": ("car.weld_peel_n", "200"),
    "weld_shear_n = 1.0": ("car.weld_shear_n", "200"),
    "weld_energy_j = 0.4\nweld_peel_n = 9000.0": ("car.weld_energy_j", "more than"),
    'weld_energy_j = "3"': ("car.weld_energy_j", "without quotes"),
    "weld_peel_kn = 1.0": ("car.weld_peel_kn", "weld_peel_n"),
    "bead_gaps = [{start_m = 2.5}]": ("car.bead_gaps[0].start_m", "2.302"),
    "bead_gaps = [{start_m = 1.0}, {start_m = 2.0, length_m = 0.5}]": ("car.bead_gaps[1].length_m", "0.302"),
    "bead_gaps = [{start_m = 1.0, length_m = 0.0}]": ("car.bead_gaps[0].length_m", "0.005"),
    "bead_gaps = [{start_mm = 1.0}]": ("car.bead_gaps[0].start_mm", "start_m"),
    'seam = "welded"\nbead_gaps = [{start_m = 1.0}]': ("car.bead_gaps", "'bonded' or 'mixed'"),
}


@pytest.mark.parametrize("lines", REFUSED)
def test_a_number_that_cannot_be_is_named_with_its_remedy(lines):
    field, remedy = REFUSED[lines]
    with pytest.raises(PlanError) as refused:
        plan_of(lines)
    assert refused.value.field == field
    assert remedy in str(refused.value)


@pytest.mark.parametrize("name", RANGES)
def test_every_number_of_a_car_is_held_to_its_range(name):
    low, high, _ = RANGES[name]
    for wrong in (high * 1.01 + 1e-9, low - 0.01 * abs(high)):
        with pytest.raises(PlanError, match=f"car.{name}"):
            check_car(msgspec.structs.replace(Car(), **{name: wrong}))


def test_the_hem_s_length_is_the_mesh_s():
    assert hem_length_m() == pytest.approx(build_model(Car(lattice_spacing_m=0.06)).mesh.hem_station_m[-1])


def test_an_illustrative_build_says_so_whatever_it_is_renamed_to():
    names = [name for name in BUILDS if ILLUSTRATIVE in name]
    assert len(names) == 2
    for name in names:
        plain = msgspec.structs.replace(BUILDS[name], name="my door")
        assert ILLUSTRATIVE in BUILDS[name].name
        assert ILLUSTRATIVE in car_words(plain)
        assert "assumed" in car_notes(plain)[0]
        assert labelled(plain, "It bent.") == "Illustrative, assumed: It bent."
        assert ILLUSTRATIVE in labelled(plain, "")
    assert labelled(Car(), "It bent.") == "It bent."
    assert car_notes(Car()) == ()
    assert car_words(Car()) == Car().name


@pytest.mark.parametrize(
    ("shape", "said"),
    [("low car", "low saloon"), ("tall car", "tall car"), ("long door", "car with a long front door")],
)
def test_a_whole_side_is_called_what_it_is_and_a_name_of_ones_own_stays(shape, said):
    """Every picture has this in its caption: a tall car stood there as a low saloon."""
    side = WholeSide(shape=shape)
    assert car_words(Car(extent="side", whole_side=side)) == f"{said}, bonded steel door"
    assert car_words(Car(extent="side", whole_side=side, name="The drill ground's")) == "The drill ground's"
    assert car_words(Car(whole_side=side)) == "low saloon, bonded steel door"  # one door alone
    lying = Car(extent="side", whole_side=WholeSide(shape=shape, lies="this side up"))
    assert car_words(lying) == f"{said}, bonded steel door, on its side, this side up"


def test_only_illustrative_builds_have_a_composite_skin():
    assert [n for n, c in BUILDS.items() if c.metal == "composite"] == [f"composite skin ({ILLUSTRATIVE})"]
    assert build_defaults("bonded alloy")["skin_thickness_m"] == pytest.approx(
        0.0007 * (210.0 / 70.0) ** (1.0 / 3.0), rel=0.02
    )  # as stiff in bending as 0.7 mm of steel
