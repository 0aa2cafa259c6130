"""Tips drawn where they have slid to, and not where they were set."""

from dataclasses import replace

import numpy as np
import pytest

from sim.aim import line as aim
from sim.door_model import build_model
from sim.plan import Car, Ease, EdgePoint, Spread
from sim.record import SeatNow
from ui.state.section_view import section_view
from ui.state.slid import aim_now, as_now, slid_words


@pytest.fixture(scope="module")
def model():
    return build_model(Car(lattice_spacing_m=0.06))


def slid(made, depth_m, slid_m, line=(-0.8, 0.6, 0.0)):
    tips = np.array([[0.9, -0.01, 0.36], [1.0, -0.02, 0.36]])
    seat = SeatNow(EdgePoint(depth_m=depth_m), "shut-face edge", 0.3, slid_m, 0.0, np.array(line), tips)
    return replace(made, seat=seat)


def test_the_section_shows_the_pad_where_it_has_slid_to(model, frame):
    move, moved = Spread(door=EdgePoint(depth_m=0.005)), slid(frame(), 0.017, 0.012)
    set_, now = section_view(model, move), section_view(model, as_now(model, move, moved))
    # inboard is down in the section; the shut face is nearly upright
    assert set_.pad.mean(axis=0)[1] - now.pad.mean(axis=0)[1] > 0.005
    assert now.push == pytest.approx([0.8, 0.6], abs=1e-12)


def test_the_aim_follows_pad_and_line(model, frame):
    move, moved = Spread(door=EdgePoint(depth_m=0.005)), slid(frame(), 0.017, 0.012)
    there = aim_now(aim(model, as_now(model, move, moved)), moved, 1.0)
    assert there.tips[0][1] < aim(model, move).tips[0][1]
    np.testing.assert_array_equal(there.tips[1], moved.seat.tips[1])
    np.testing.assert_array_equal(there.direction, moved.seat.line)
    assert there.outward_ratio == pytest.approx(0.6)


def test_a_tip_outside_the_lip_is_still_drawn_and_other_moves_stay(model, frame):
    moved = slid(frame(), -0.004, 0.009)
    assert as_now(model, Spread(), moved).door.depth_m == 0.0
    assert as_now(model, Ease(), moved) == Ease()
    assert as_now(model, Spread(), frame()) == Spread()


def test_words_say_how_far_it_slipped_and_nothing_while_it_holds(frame):
    assert slid_words(slid(frame(), 0.01, 0.012), "12 mm") == ", slipped 12 mm"
    assert slid_words(slid(frame(), 0.01, 0.001), "1 mm") == ""
    assert slid_words(None, "") == ""
