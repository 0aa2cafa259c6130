"""Room by body part and exit width along all moments: the same way as the picture's, in step with the moment.

Sources
-------
[ansur-2012]: the breadth of shoulders beside the exit width is the survey's of the size chosen (bideltoid
breadth, men's median 0.509 m).
"""

from dataclasses import dataclass, field, replace

import pytest

from sim.plan import Car
from sim.record import Clearance
from sim.room import InTheWay
from sim.units import Units
from sim.whole_side import WholeSide
from ui.state.locks import veiled
from ui.state.phrases import Phrases
from ui.state.plotting import ticks
from ui.state.reading import Reading, read
from ui.state.room_curve import PARTS
from ui.state.room_now import FAR_M, NEAREST, NONE_YET, room_now
from ui.state.timeline import Timeline
from ui.state.tongue import ENGLISH, catalogue, speak

SIDE = Car(extent="side")


@dataclass(frozen=True)
class Moment:
    """What of a frame the curves are read from."""

    opening_m: float
    clearance: Clearance
    part_clearance_m: dict = field(default_factory=dict)
    exit_width_m: float | None = None
    events: tuple = ()


def moment(opening_m, room_m, *, width_m=0.0, events=(), side=True):
    parts = {part: room_m + 0.1 * k for k, part in enumerate(reversed(PARTS))} if side else {}
    near = Clearance(room_m, (0, 0, 0), (0, 0, 0), "thigh")
    return Moment(opening_m, near, parts, width_m if side else None, events)


def timeline(*, side=True):
    """Return two spreads with letting off between them, the second moment of the last one shown."""
    made = Timeline()
    rooms = [
        [(0.0, 0.05), (0.06, 0.02)],
        [(0.06, 0.02), (0.0, 0.03)],
        [(0.0, 0.03), (0.03, 0.04), (0.04, 0.09)],
    ]
    moves = [[moment(a, b, side=side) for a, b in rows] for rows in rooms]
    moves[2][2] = replace(moves[2][2], exit_width_m=0.3 if side else None)
    made.show(moment(0.0, 0.05, side=side), moves, 6)
    return made


def test_the_way_is_that_of_all_tools_and_letting_off_takes_none():
    room = room_now(timeline(), SIDE)
    assert room.way_m == pytest.approx((0.0, 0.0, 0.06, 0.06, 0.06, 0.06, 0.09, 0.10))
    assert room.begun_m == pytest.approx((0.06, 0.06))
    assert room.cursor == 6
    assert list(room.lines_m) == list(PARTS)
    assert all(len(values) == len(room.way_m) for values in (*room.lines_m.values(), room.exit_m))


def test_the_nearest_part_is_named_with_its_room_in_either_unit():
    room = room_now(timeline(), SIDE)
    assert room.nearest == "lower leg"
    assert room.room_words(Units.METRIC) == "lower\u00a0leg 40\u00a0mm"
    assert room.room_words(Units.IMPERIAL) == "lower\u00a0leg 1.6\u00a0in"
    assert room.at_first_m == pytest.approx(0.05)
    assert room.exit_words(Units.METRIC) == NONE_YET
    end = replace(room, cursor=7)
    assert end.exit_words(Units.METRIC) == "300\u00a0mm"
    assert end.told(Units.METRIC).endswith("; exit width: 300\u00a0mm")
    assert all(part in end.told(Units.METRIC) for part in PARTS)


SHUT = InTheWay(("front door", "pillar"), (0.53, 0.07), (0.25, 0.35, 0.45), (0.02, 0.06, 0.03))


@pytest.mark.parametrize(
    ("free_m", "said"),
    [
        ((0.02, 0.06, 0.03), "Shut at every height from hip to shoulder."),
        ((0.02, 0.06, 0.7), "Shut from 250 mm to 350 mm above the sill."),
        ((0.42, 0.3, 0.7), "Narrowest 350 mm above the sill, 300 mm free."),
    ],
)
def test_without_a_width_what_stands_in_the_way_is_told_and_how_wide_the_narrowest_height_is(free_m, said):
    room = replace(room_now(timeline(), SIDE), in_the_way=replace(SHUT, free_m=free_m))
    words = room.told(Units.METRIC).replace("\u00a0", " ")
    assert words.endswith(f"by share of the opening: front door 53 %, pillar 7 %. {said}")
    assert room.way_words(Units.METRIC).replace("\u00a0", " ") in words
    assert room_now(timeline(), SIDE).way_words(Units.METRIC) == ""
    speak("de")
    assert Phrases(catalogue("de")).tell(room.way_words(Units.METRIC)).whole
    speak(ENGLISH)


def test_a_part_that_metal_never_comes_near_to_is_told_apart_from_the_others():
    room = room_now(timeline(), SIDE)
    assert room.far == {"head", "trunk"} & {p for p in PARTS if min(room.lines_m[p]) > FAR_M}
    assert room.nearest not in room.far
    all_far = replace(room, lines_m={"head": (0.5,) * 8, "trunk": (0.4,) * 8})
    assert all_far.far == frozenset()


def test_a_door_alone_has_one_line_and_no_exit_width():
    room = room_now(timeline(side=False), Car())
    assert list(room.lines_m) == [NEAREST]
    assert room.exit_m == ()
    assert room.shoulders_m is None
    assert room.room_words(Units.METRIC) == "40\u00a0mm"


def test_the_shoulders_are_those_of_the_person_chosen():
    assert room_now(timeline(), SIDE).shoulders_m == 0.509
    small = Car(extent="side", whole_side=WholeSide(occupant="female_p5"))
    assert room_now(timeline(), small).shoulders_m == 0.406


def test_nobody_in_reach_has_no_curve():
    made = Timeline()
    assert room_now(made, SIDE) is None
    made.show(moment(0.0, float("inf")), ())
    assert room_now(made, SIDE) is None


@pytest.mark.parametrize("what", ["answers", "ladder"])
def test_nothing_of_room_is_told_while_answers_or_figures_are_shut(what):
    room = room_now(timeline(), SIDE)
    shown = Reading(sentence="It moved.", room=room, clearance=Clearance(0.04, (0, 0, 0), (0, 0, 0), "hip"))
    locks = {"answers": False, "ladder": False, "arrow": False, "aiming": False}
    assert veiled(shown, **locks).room is room
    shut = veiled(shown, **(locks | {what: True}))
    assert shut.room is None
    assert (shut.clearance is None) is (what == "answers")


def test_the_reading_has_the_room_of_the_car_it_is_told_for():
    made = Timeline()
    assert read(made, None, "", None, car=SIDE).room is None


def test_marks_are_round_numbers_and_no_more_than_asked_for():
    assert ticks(0.0, 265.0, 7) == pytest.approx((0, 50, 100, 150, 200, 250))
    assert ticks(-12.0, 90.0, 3) == pytest.approx((0, 50))
    assert ticks(0.0, 0.79, 4) == pytest.approx((0.0, 0.2, 0.4, 0.6))
    for most in range(2, 9):
        assert len(ticks(0.0, 337.0, most)) <= most + 1
