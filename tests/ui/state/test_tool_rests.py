"""A move that no tool opens or pushes in, such as a cut, is told without the opening tips were left at."""

from types import SimpleNamespace

import pytest

from sim.plan import Car, Cut, Ease, Plan, Spread
from sim.record import MoveRecord
from sim.units import Units
from ui.state.answers import DoorReady, Ended
from ui.state.beside import Beside, row_of
from ui.state.describing import described
from ui.state.pair_words import caption
from ui.state.reading import read
from ui.state.session import Session

PLAN = Plan(title="opened and cut", moves=(Spread(opening_m=0.01), Cut(), Ease()))
LEFT_AT_M = -0.0048
"""Where metal that springs back past its start leaves the tips: 4.8 mm less far open than at their start."""


@pytest.fixture
def session(frame):
    session, asked = Session(PLAN), []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, Car(), SimpleNamespace(side=None), frame())])
    session.take([Ended(asked[0].number)])
    result = SimpleNamespace(sentence="The metal bent.", plan_effect="spent", seats=())
    pushed = (frame(0.0, force_n=0.0), frame(0.01, force_n=900.0))
    cut = tuple(frame(LEFT_AT_M, move=1) for _ in range(3))
    eased = (frame(0.01, move=2), frame(0.0, move=2))
    session.know(PLAN, [MoveRecord(frames, result) for frames in (pushed, cut, eased)])
    return session


def test_only_the_cut_is_a_move_in_which_the_tool_rests(session):
    told = []
    for place in range(len(session.timeline)):
        session.timeline.go(place)
        told.append(session.timeline.move if session.tool_rests else None)
    assert told == [None, None, None, 1, 1, 1, None, None]


def test_neither_curve_nor_number_of_the_tips_stands_at_a_cut(session):
    session.timeline.go(5)
    assert read(session.timeline, None, "", None).curve == ()
    assert described(session).partition("Moment 6 of 8: ")[2].startswith("Cut.")
    session.timeline.go(2)
    assert len(read(session.timeline, None, "", None).curve) == 2
    session.timeline.go(7)
    assert len(read(session.timeline, None, "", None).curve) == 2


def test_beside_another_plan_neither(session, frame):
    beside = Beside()
    beside.show(PLAN, "a")
    row = row_of(frame(), session.worked_out())
    beside.lay_out(row, row)
    rests = []
    for place in range(len(beside)):
        beside.go(place)
        rests.append(beside.tool_rests(0))
    assert True in rests
    assert rests == [beside.move(0) == 1 for place in range(len(beside)) if beside.go(place) is None]
    words = {
        rests: caption("left", frame(LEFT_AT_M), Units.METRIC, held=False, shut=False, rests=rests)
        for rests in (True, False)
    }
    assert words[True] == "left"
    assert "mm" in words[False]
