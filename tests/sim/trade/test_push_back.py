"""An intruded door against the person: a push back from inside first, or a spread at its edge.

Sources
-------
Spread first and the room falls before it grows; pushed back first it grows at once: common practice, no
source.
"""

import pytest

from sim.checks import side_facts


@pytest.mark.slow
@pytest.mark.timeout(900)
@pytest.mark.parametrize(("first", "wanted"), [("spread", "more than"), ("pushed back", "at most")])
def test_spread_first_takes_room_before_it_gives_any_and_pushed_back_first_none(first, wanted):
    row = side_facts.intruded_room_lost(first, wanted)
    assert row.passed, row
    room = side_facts._room_m(first)
    assert room[0] < 0.05  # 55 mm before the wreck
    assert (room.index(min(room)) > 0) == (first == "spread")


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_pushed_back_first_it_gives_room():
    row = side_facts.intruded_room_gained()
    assert row.passed, row
