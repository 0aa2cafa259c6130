"""Playing slowly and again and again, and the events a move stops at."""

import pytest

from sim.plan import Ease, Spread
from ui.state.playing import AROUND, PACES, Loop, Playing
from ui.state.stops import can_stop, stop_words, stops, turned

MARKS = (8, 20)


def walk(playing, position, count, marks, steps):
    found = []
    for _ in range(steps):
        position = playing.following(position, count, marks)
        found.append(position)
        if position is None:
            break
    return found


def test_once_it_ends_at_the_last_moment():
    assert walk(Playing(), 27, 30, MARKS, 9) == [28, 29, None]


def test_all_comes_round_again():
    playing = Playing()
    playing.next_loop()
    assert playing.loop is Loop.ALL
    assert walk(playing, 28, 30, MARKS, 3) == [29, 0, 1]


def test_the_nearest_event_comes_round_with_its_surroundings():
    playing = Playing()
    playing.next_loop()
    playing.next_loop()
    assert playing.loop is Loop.EVENT
    assert playing.span(10, 30, MARKS) == (8 - AROUND, 8 + AROUND)
    assert playing.beginning(16, 30, MARKS) == 16
    seen = walk(playing, 16, 30, MARKS, 40)
    assert set(seen) == set(range(20 - AROUND, 20 + AROUND + 1))
    assert playing.span(3, 30, ()) == (0, 29)
    playing.next_loop()
    assert playing.loop is Loop.OFF


def test_pace_goes_round_and_is_told():
    playing = Playing()
    seen = [playing.pace]
    for _ in PACES:
        playing.next_pace()
        seen.append(playing.pace)
    assert seen == [*PACES, 1]
    assert playing.words == "full speed, played once"


@pytest.mark.parametrize("count", [0, 1])
def test_nothing_to_play_ends_at_once(count):
    assert Playing().following(0, count, ()) is None


def test_stops_are_what_can_happen_and_one_press_turns_each(frame):
    ladder = frame(ladder=(("latch", "latch free", 0.1), ("seam", "seam parting", 0.1))).ladder
    move = Spread()
    kinds = [stop.kind for stop in stops(move, ladder, wedged=False)]
    assert kinds[:2] == ["seam parting", "latch free"]
    assert "hinge free" not in kinds
    assert "nothing gave" not in kinds
    once = turned(move, "latch free")
    assert once.stop_at == ("latch free",)
    assert [stop.kind for stop in stops(once, ladder, wedged=False) if stop.on] == ["latch free"]
    assert stop_words(once) == "; stops at latch free"
    assert turned(once, "latch free") == move
    assert stop_words(move) == ""
    assert not can_stop(Ease())
    # what a plan's file names stays in the list although this metal cannot do it
    assert "hinge free" in [stop.kind for stop in stops(turned(move, "hinge free"), ladder, wedged=False)]
