"""The list of differences as a window shows it."""

import msgspec

from sim.builds import BUILDS, ILLUSTRATIVE
from sim.plan import BodyPoint, EdgePoint, Plan, Spread
from sim.units import Units
from ui.state.contrast import contrast
from ui.state.pair_words import names_of

LIP = Plan(title="lip", car=BUILDS["bonded steel"], moves=(Spread(),))
DEEP = msgspec.structs.replace(LIP, title="deep", moves=(Spread(door=EdgePoint(depth_m=0.12)),))


def test_what_the_metal_feels_comes_first_and_in_the_reader_s_units():
    found = contrast(LIP, DEEP, Units.METRIC)
    assert [(row.first, row.second, row.felt) for row in found.rows] == [
        ("5 mm", "120 mm", True),
        ("lip", "deep", False),
    ]
    assert found.one_thing
    inches = contrast(LIP, DEEP, Units.IMPERIAL)
    assert (inches.rows[0].first, inches.rows[0].second) == ("0.20\u00a0in", "4.7\u00a0in")


def test_where_tip_two_stands_is_said_in_words():
    move = Spread(against=BodyPoint(seat="pillar_outside", along_m=0.45))
    (row,) = contrast(LIP, msgspec.structs.replace(LIP, moves=(move,)), Units.METRIC).rows
    assert (row.first, row.second) == ("straight across the gap", "on the pillar outside, 450\u00a0mm up")


def test_a_changed_plan_of_the_same_title_is_called_so():
    deep = msgspec.structs.replace(DEEP, title="lip")
    assert names_of(deep, LIP) == ("Changed from: lip", "lip")
    assert names_of(DEEP, LIP) == ("deep", "lip")


def test_two_things_are_not_one():
    other = msgspec.structs.replace(DEEP, car=BUILDS["welded steel"])
    assert not contrast(LIP, other, Units.METRIC).one_thing
    assert not contrast(LIP, LIP, Units.METRIC).one_thing


def test_an_illustrative_car_is_called_so():
    name = next(n for n in BUILDS if ILLUSTRATIVE in n)
    other = LIP.with_car(msgspec.structs.replace(BUILDS[name], name="x"))
    assert ILLUSTRATIVE in contrast(LIP, other, Units.METRIC).second
