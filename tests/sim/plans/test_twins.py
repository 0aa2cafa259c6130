"""Twins differ in one thing, and the list of differences names exactly what differs.

Nothing here rests on an outside source: it compares the program with itself.
"""

from pathlib import Path

import msgspec
import pytest

import assets
from sim.builds import BUILDS
from sim.plan import BeadGap, BeltPoint, Car, EdgePoint, Plan, Spread, Squeeze, Tool
from sim.planfile import dumps_plan, load_plan, loads_plan
from sim.problems import PlanError
from sim.twins import WORDS, Difference, _spoken, builds_told, differences, felt, told, twin, value_text

PLAN = Plan(title="one", car=BUILDS["bonded steel"], moves=(Spread(), Squeeze()))
CHANGES = {
    "car.seam": "welded",
    "car.skin_thickness_m": 0.0009,
    "car.bar": False,
    "car.seam_seed": 4,
    "moves[0].door.depth_m": 0.12,
    "moves[0].tool.tip_width_m": 0.02,
    "moves[0].stop_at": ["latch free"],
    "moves[1].closing_m": 0.03,
}


def fields_of(struct, path=""):
    """Return the path of every plain field below a struct, typed again here."""
    out = []
    for name in struct.__struct_fields__:
        value, below = getattr(struct, name), f"{path}.{name}" if path else name
        if isinstance(value, msgspec.Struct):
            out += fields_of(value, below)
        elif isinstance(value, tuple) and value and isinstance(value[0], msgspec.Struct):
            for index, item in enumerate(value):
                out += fields_of(item, f"{below}[{index}]")
        else:
            out.append(below)
    return out


@pytest.mark.parametrize("path", CHANGES)
def test_a_twin_differs_in_the_one_thing_that_was_changed(path):
    other = twin(PLAN, path, CHANGES[path])
    (found,) = differences(PLAN, other)
    assert found.path == path
    assert found.felt
    assert found.second == (tuple(CHANGES[path]) if isinstance(CHANGES[path], list) else CHANGES[path])
    (back,) = differences(other, PLAN)
    assert (back.first, back.second) == (found.second, found.first)
    assert differences(other, twin(PLAN, path, CHANGES[path])) == ()


@pytest.mark.parametrize(
    ("path", "value"),
    [("car.seem", "welded"), ("car.seam", "glued"), ("car.skin_thickness_m", 1.0), ("moves[7].tilt_rad", 0.1),
     ("car.seam", "bonded"), ("moves[0].closing_m", 0.1), ("car.seam.x", 1)],
)  # fmt: skip
def test_what_cannot_be_changed_is_refused_by_name(path, value):
    with pytest.raises(PlanError) as refused:
        twin(PLAN, path, value)
    assert refused.value.field == path


def test_every_field_of_a_plan_has_a_plain_word():
    plan = Plan(car=Car(bead_gaps=(BeadGap(),)), moves=(Spread(), Squeeze(), Spread(door=BeltPoint())))
    other = Plan(schema_version=0, title="x", words="x", author="x", licence="x", seed=9)
    for path in fields_of(plan):
        word = Difference(path, _spoken(path), 1, 2).words
        assert word
        assert "_" not in word and not word.endswith((" m", " n", " rad"))
    assert set(WORDS) >= {d.path for d in differences(Plan(), other)}


def test_values_are_told_with_their_units():
    texts = {(d.path): (d.text(d.first), d.text(d.second)) for d in differences(
        PLAN, msgspec.structs.replace(PLAN, car=msgspec.structs.replace(
            BUILDS["bonded alloy"], latch_wedge_n=6e3, seam_energy_j_per_m=45.0, bar=False)))}  # fmt: skip
    assert texts["car.metal"] == ("steel", "alloy")
    assert texts["car.skin_thickness_m"] == ("0.7 mm", "1 mm")
    assert texts["car.inner_thickness_m"] == ("0.8 mm", "1.15 mm")
    assert texts["car.latch_wedge_n"] == ("0 kN", "6 kN")
    assert texts["car.seam_energy_j_per_m"] == ("60 J/m", "45 J/m")
    assert texts["car.bar"] == ("yes", "no")
    assert value_text("moves[0].tilt_rad", 0.5235987755982988) == "30\u00b0"
    assert value_text("car.latch_strength_ratio", 1.25) == "1.25"


def test_names_and_titles_are_words_and_not_felt():
    other = msgspec.structs.replace(PLAN, title="two", car=msgspec.structs.replace(PLAN.car, name="x"))
    assert {d.path for d in differences(PLAN, other)} == {"title", "car.name"}
    assert felt(PLAN, other) == ()
    assert "feels no difference" in told(PLAN, other)


def test_moves_of_another_kind_or_too_many_are_named_whole():
    other = msgspec.structs.replace(PLAN, moves=(Spread(door=BeltPoint()),))
    found = {d.path: d for d in differences(PLAN, other)}
    assert set(found) == {"moves[0].door", "moves[1]"}
    assert isinstance(found["moves[0].door"].first, EdgePoint)
    assert found["moves[1]"].second is None
    assert "squeeze" in str(found["moves[1]"])


def test_gaps_are_told_one_by_one():
    one = msgspec.structs.replace(Car(), bead_gaps=(BeadGap(1.0, 0.1),))
    two = msgspec.structs.replace(Car(), bead_gaps=(BeadGap(1.0, 0.2), BeadGap(2.0, 0.1)))
    assert [d.path for d in differences(one, two)] == ["car.bead_gaps[0].length_m", "car.bead_gaps[1]"]


def test_tools_are_told_number_by_number():
    narrow = msgspec.structs.replace(PLAN, moves=(Spread(tool=Tool(tip_width_m=0.02)), Squeeze()))
    assert [str(d) for d in felt(PLAN, narrow)] == [
        "move 1, tool: width of the tips: 50 mm against 20 mm (moves[0].tool.tip_width_m)"
    ]


@pytest.mark.parametrize("name", [n for n in BUILDS if n != "bonded steel"])
def test_every_build_says_what_sets_it_apart(name):
    line = next(row for row in builds_told().splitlines() if row.strip().startswith(f"{name}:"))
    for difference in felt(BUILDS["bonded steel"], BUILDS[name]):
        assert difference.words in line


def test_the_twins_differ_in_what_they_declare_and_in_nothing_else():
    base = BUILDS["bonded steel"]
    declared = {
        "welded steel": {"car.seam"},
        "mixed steel": {"car.seam", "car.weld_pitch_m"},
        "bonded alloy": {"car.metal", "car.skin_thickness_m", "car.inner_thickness_m"},
        "half latched": {"car.latch"},
        "latch held open": {"car.latch"},
        "no bar": {"car.bar"},
    }
    for name, paths in declared.items():
        assert {d.path for d in felt(base, BUILDS[name])} == paths


READY = Path(assets.__file__).parent / "plans"
PAIRS = {
    ("first-bite-lip", "first-bite-bend"): {"moves[0].door.depth_m"},
    ("first-bite-lip", "first-bite-strong"): {"moves[0].tool.force_n"},
    ("first-bite-bend", "first-bite-wide"): {
        "moves[0].tool.tip_width_m", "moves[0].tool.opening_m", "moves[0].tool.force_n",
        "moves[0].tool.arm_m",
    },
    ("three-doors-bonded", "three-doors-welded"): {"car.seam"},
    ("three-doors-bonded", "three-doors-alloy"): {
        "car.metal", "car.skin_thickness_m", "car.inner_thickness_m",
    },
}  # fmt: skip


@pytest.mark.parametrize("pair", PAIRS, ids="-".join)
def test_ready_plans_differ_in_what_they_contrast_and_in_nothing_else(pair):
    one, other = (load_plan(READY / f"{name}.toml") for name in pair)
    assert {d.path for d in felt(one, other)} == PAIRS[pair]
    if pair[1] == "first-bite-strong":
        assert other.moves[0].tool.force_n == tuple(2.0 * f for f in one.moves[0].tool.force_n)


@pytest.mark.parametrize(
    ("pair", "paths"),
    [
        (("ram-walks-in", "ram-walks-out"), {"moves[0].foot.base", "moves[0].foot.raised_m"}),
        (("hinge-when-seen", "hinge-gone-on"), {"moves[0].stop_at", "moves[1]"}),
        (("pocket", "pocket-wide-tips"), {"moves[3].tool.tip_width_m"}),
    ],
)
def test_plans_of_a_lesson_that_are_put_beside_each_other_differ_in_one_thing(pair, paths):
    one, other = (load_plan(READY / f"{name}.toml") for name in pair)
    assert {d.path for d in felt(one, other)} == paths


@pytest.mark.parametrize("name", sorted({name for pair in PAIRS for name in pair}))
def test_ready_plans_come_back_from_their_file_as_they_are(name):
    text = (READY / f"{name}.toml").read_text(encoding="utf-8")
    assert dumps_plan(loads_plan(text), text) == text
