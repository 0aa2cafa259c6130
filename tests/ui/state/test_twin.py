"""A twin of the open plan: one thing changed on a duplicate of its car, each from its own start.

Sources
-------
None: it compares the program with itself.
"""

import msgspec
import pytest

from sim.plan import Car, Crush, EdgePoint, Plan, Spread
from sim.problems import PlanError
from sim.twins import differences
from sim.units import Units
from ui.state.answers import DoorReady
from ui.state.beside import Beside, row_of
from ui.state.pair_words import pair_words
from ui.state.session import Session
from ui.state.twin import apart, twin_of

PLAN = Plan(title="lip", moves=(Spread(door=EdgePoint(), opening_m=0.01),))


@pytest.mark.parametrize(
    ("name", "value", "paths"),
    [
        ("seam", "welded", ["car.seam"]),
        ("skin_thickness_m", 0.0009, ["car.skin_thickness_m"]),
        ("hem_width_m", 0.014, ["car.hem_width_m"]),
        ("shut_face_depth_m", 0.08, ["car.shut_face_depth_m"]),
        ("bar", False, ["car.bar"]),
        ("latch", "open", ["car.latch"]),
        ("latch", "jammed", ["car.latch", "car.latch_wedge_n"]),  # a jam needs what jams it
        ("gap_length_m", 0.1, ["car.bead_gaps[0]"]),
    ],
    ids=lambda value: str(value)[:20],
)
def test_it_differs_in_what_was_asked_for_and_in_what_has_to_go_with_it(name, value, paths):
    twin = twin_of(PLAN, name, value)
    assert [difference.path for difference in differences(PLAN, twin)] == paths
    assert (twin.moves, twin.wreck, twin.title) == (PLAN.moves, PLAN.wreck, PLAN.title)
    assert apart(PLAN, twin) == tuple(path.removeprefix("car.").partition("[")[0] for path in paths)


def test_side_and_person_make_twins_too_and_a_saved_start_serves_any_person():
    side = msgspec.structs.replace(PLAN, car=Car(extent="side", lattice_spacing_m=0.08))
    for name, value in (("occupant", "female_p5"), ("pillar_pressed_m", 0.002), ("rear_latch", "half")):
        twin = twin_of(side, name, value)
        assert [one.path for one in differences(side, twin)] == [f"car.whole_side.{name}"]
        begun = msgspec.structs.replace(side, start="a.npz")
        if name == "occupant":
            assert twin_of(begun, name, value).start == "a.npz"
        else:
            with pytest.raises(PlanError, match="cannot be another on a saved start"):
                twin_of(begun, name, value)
    with pytest.raises(PlanError) as caught:
        twin_of(side, "occupant_gap_m", 0.9, Units.IMPERIAL)
    assert "35.43 in is too much" in str(caught.value)


@pytest.mark.parametrize(
    ("plan", "name", "value", "said"),
    [
        (PLAN, "seam", "bonded", "Seam is the same on this car; a twin differs in one thing"),
        (PLAN, "skin_thickness_m", 0.1, "skin_thickness_m is 0.1; use"),
        (
            msgspec.structs.replace(PLAN, start="a.npz"),
            "skin_thickness_m",
            0.0009,
            "Skin cannot be another on a saved start",
        ),
        (
            msgspec.structs.replace(PLAN, wreck=(Crush(),)),
            "latch_wedge_n",
            5e3,
            "car.latch is wedged by a number, but a wreck wedges it",
        ),
    ],
    ids=["the same", "too thick", "a saved start", "a wedge of its own"],
)
def test_what_cannot_be_a_twin_is_refused_in_a_sentence(plan, name, value, said):
    with pytest.raises(PlanError, match=said):
        twin_of(plan, name, value)


def test_a_handle_may_be_pulled_on_a_saved_start():
    started = msgspec.structs.replace(PLAN, start="a.npz")
    assert twin_of(started, "latch", "open").car.latch == "open"


def test_each_begins_from_a_start_of_its_own_and_the_words_name_what_was_changed(frame):
    twin = twin_of(PLAN, "seam", "welded")
    beside = Beside()
    beside.show(twin, "aaaaaaaaaa", "bbbbbbbbbb")
    assert beside.is_twin
    beside.lay_out(row_of(frame(), []), row_of(frame(), []))
    words = pair_words(PLAN, beside, ((), ()), 0, Units.METRIC, False)
    assert words.start == "Each begins from its own metal: aaaaaaaa left, bbbbbbbb right."
    assert words.heading == "One thing differs"
    assert [(row.words, row.first, row.second) for row in words.rows] == [("seam", "bonded", "welded")]
    assert words.names == ("lip", "Twin: seam welded")
    shut = pair_words(PLAN, beside, ((), ()), 0, Units.METRIC, True)
    assert set(shut.sentences) == {"Not run yet."}
    beside.show(twin, "aaaaaaaaaa")
    assert not beside.is_twin


def test_a_sitting_knows_start_and_door_of_both_cars(frame):
    session, twin = Session(PLAN), twin_of(PLAN, "seam", "welded")
    assert session.model_of(twin) is None
    assert session.start_of(twin) is None
    starts = {car: frame() for car in (PLAN.car, twin.car)}
    doors = {car: object() for car in starts}
    for number, car in enumerate(starts):
        session.take([DoorReady(number, car, doors[car], starts[car])])
    for plan in (PLAN, twin):
        assert session.model_of(plan) is doors[plan.car]
        assert session.start_of(plan) is starts[plan.car]
        assert session.found_of(plan) is None
    assert session.start is starts[PLAN.car]
    assert session.model is doors[PLAN.car]
    assert Car() == PLAN.car
