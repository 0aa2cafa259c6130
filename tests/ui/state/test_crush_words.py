"""A crush on its card and under the pointer: its numbers in words, its travel, and what it refuses."""

import math

import pytest

from sim.move_words import opened, opening_of, title_of
from sim.plan import Crush, EdgePoint, FacePoint, Spread
from sim.units import Units
from ui.state import steering
from ui.state.cards import place_of

PUSH = Crush(travel_m=0.12)
NOWHERE = steering.Reach(0.0, 1.0, 0.1)


@pytest.mark.parametrize(
    ("shape", "word"), [("cylinder", "cylinder"), ("face", "flat face"), ("pole", "pole")]
)
def test_its_card_says_what_presses_where_and_how_far(shape, word):
    assert title_of(Crush(shape=shape)) == f"Crush by a {word}"
    place = place_of(PUSH, Units.METRIC).replace("\u00a0", " ")
    assert place == "305 mm wide, 500 mm from the hinge edge, lower end 127 mm up; goes in 120 mm"
    assert "12.0 in wide" in place_of(PUSH, Units.IMPERIAL).replace("\u00a0", " ")


def test_its_travel_stands_for_the_opening():
    assert opening_of(PUSH) == 0.12
    assert opened(PUSH, 0.05) == Crush(travel_m=0.05)


def test_a_click_on_the_skin_sets_where_along_and_nothing_else():
    assert steering.placed(PUSH, FacePoint("outer", 0.7, 0.2)) == Crush(along_m=0.7, travel_m=0.12)
    assert steering.slid(PUSH, 0.01, NOWHERE).height_m == pytest.approx(0.137)


@pytest.mark.parametrize(
    "wish",
    [
        lambda: steering.placed(PUSH, EdgePoint()),
        lambda: steering.second_seats(PUSH),
        lambda: steering.deepen(PUSH, 0.002, NOWHERE),
        lambda: steering.tilted(PUSH, math.radians(5.0)),
    ],
    ids=["edge", "second tip", "depth", "tilt"],
)
def test_what_belongs_to_tips_is_refused_in_a_sentence(wish):
    with pytest.raises(steering.CannotSteer) as problem:
        wish()
    assert str(problem.value).endswith(".")


def test_a_spread_is_still_turned_as_before():
    assert steering.tilted(Spread(tilt_rad=0.0), math.radians(5.0)).tilt_rad == pytest.approx(
        math.radians(5.0)
    )
