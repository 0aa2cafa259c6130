"""The strip of a plan: which moments it shows, and the line over each."""

import pytest

from tests.ui.state.conftest import make_frame
from ui.filming import head_of, moments
from ui.scene.film import MOST, chosen


class Record:
    """A solved move as a strip reads it."""

    def __init__(self, *frames):
        self.frames = frames


@pytest.mark.parametrize(
    ("count", "places"), [(1, [0]), (3, [0, 1, 2]), (6, [0, 1, 2, 3, 4, 5]), (11, [0, 2, 4, 6, 8, 10])]
)
def test_a_strip_shows_the_first_the_last_and_evenly_between(count, places):
    assert chosen(count) == places
    assert len(chosen(1000)) == MOST and chosen(1000)[-1] == 999


def test_moments_done_at_once_are_left_out_where_something_moved():
    still, pushed = (
        Record(make_frame(0.0), make_frame(0.0)),
        Record(make_frame(0.0), make_frame(0.01), make_frame(0.02)),
    )
    assert [one.opening_m for one in moments([still, pushed])] == [0.0, 0.01, 0.02]
    assert len(moments([still])) == 2
    swung = Record(make_frame(0.0, move=2))
    shown = moments([still, pushed, swung])
    assert shown[-1] is swung.frames[-1]  # how the plan ends
    assert len(shown) == 4


def test_the_line_over_a_picture_says_how_far_with_what_force_and_what_gave():
    start, pushed = make_frame(0.0), make_frame(0.03, force_n=2400.0)
    assert head_of(start, []) == "Start"
    plain = head_of(pushed, [pushed])
    assert plain.startswith("30") and "2.4" in plain and ":" not in plain
    parted = make_frame(0.03, force_n=2400.0, events=("seam parting", "skin tearing", "seam parting"))
    assert head_of(parted, [parted]).endswith(": seam parting, sheet tearing")  # of which sheet is not told
    assert head_of(make_frame(0.0, move=2), []) == "Move 3"
    assert head_of(make_frame(0.03, move=2, force_n=2400.0), []).startswith("Move 3, 30")
