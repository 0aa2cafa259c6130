"""Moments stand along the bar by how far the tips have gone; each can still be reached."""

import pytest

from ui.state.scrubbing import GAP_SHARE, LEAST_SHARE, nearest, places

FINE = [0.00025 * k for k in range(21)]  # a push as the mechanics tell it: 5 mm in twenty steps
PUSH = FINE + [0.005 + 0.0025 * k for k in range(1, 39)]


def test_an_event_half_way_through_the_opening_stands_half_way_along_its_move():
    where = places([-1, *[0] * len(PUSH)], [0.0, *PUSH])
    first, last = where[1], where[-1]
    half = next(k for k, opening in enumerate(PUSH) if abs(opening - 0.05) < 1e-9)
    assert (where[1 + half] - first) / (last - first) == pytest.approx(0.5, abs=1e-9)
    fine = where[len(FINE)] - first
    assert fine / (last - first) == pytest.approx(0.05, abs=1e-9)  # 5 of 100 mm, and not 20 of 58 moments


def test_places_go_from_nothing_to_one_and_never_fall_back():
    moves = [-1, 0, 0, 0, 1, 1, 2, 2, 2]
    where = places(moves, [0.0, 0.0, 0.05, 0.1, 0.1, 0.0, 0.0, 0.0, 0.0])
    assert where[0] == 0.0
    assert where[-1] == 1.0
    assert list(where) == sorted(where)
    # what is done at once has its least room, evenly: its moments have no way
    whole = 1.0 + 1.0 + LEAST_SHARE + 3 * GAP_SHARE
    assert where[8] - where[6] == pytest.approx(LEAST_SHARE / whole, abs=1e-9)
    assert where[7] - where[6] == pytest.approx(0.5 * LEAST_SHARE / whole, abs=1e-9)


def test_no_way_at_all_is_set_out_by_number():
    assert places([], []) == ()
    assert places([-1], [0.0]) == (0.0,)
    one, two, three = places([0, 0, 0], [0.0, 0.0, 0.0])
    assert (one, two, three) == (0.0, 0.5, 1.0)
    assert places([0, 0, 0], [5.0, 6.0, 9.0]) == (0.0, 0.5, 1.0)  # numbers of a clock and no way


def test_a_press_finds_the_nearest_moment_and_the_latest_at_one_opening():
    where = (0.0, 0.2, 0.6, 0.6, 1.0)
    assert nearest(0.05, where) == 0
    assert nearest(0.35, where) == 1
    assert nearest(0.59, where) == 3
    assert nearest(2.0, where) == 4
