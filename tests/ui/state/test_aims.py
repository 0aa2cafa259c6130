"""What is known of a push before it is made: asked for once, kept, told in words."""

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from sim.move_words import opened
from sim.plan import Car, Plan, Spread, Squeeze
from sim.record import Aim, Touch
from sim.units import Units
from ui.state.aims import Aims, aim_words, arrow_words, pointed_words
from ui.state.answers import DoorReady, ElasticReady, Ended, Touched, Untouched
from ui.state.session import Session

BEFORE = (Car(), ())
MOVE = Spread(opening_m=0.1)
TOUCH = Touch(0.0025, 3.1e3, np.array([0.0, 2.0e-3, 0.0]))


@pytest.fixture
def asked():
    """Return aims, the wishes they emit and the times they changed."""
    aims, wishes, changes = Aims(), [], []
    aims.wished.connect(wishes.append)
    aims.changed.connect(lambda: changes.append(1))
    return SimpleNamespace(aims=aims, wishes=wishes, changes=changes)


def test_a_touch_is_asked_for_once_and_known_for_every_opening(asked):
    asked.aims.wish(BEFORE, MOVE)
    asked.aims.wish(BEFORE, MOVE)
    assert len(asked.wishes) == 1
    asked.aims.take(ElasticReady(asked.wishes[0].number, BEFORE, "stiff"))
    asked.aims.take(Touched(asked.wishes[0].number, BEFORE, MOVE, TOUCH))
    assert len(asked.changes) == 2
    assert asked.aims.answer(BEFORE) == "stiff"
    assert asked.aims.touch(BEFORE, opened(MOVE, 0.02)) is TOUCH
    assert asked.aims.touch((Car(), (MOVE,)), MOVE) is None
    asked.aims.wish(BEFORE, opened(MOVE, 0.02))
    assert len(asked.wishes) == 1


def test_a_touch_given_up_can_be_asked_for_again_and_a_fault_is_told(asked):
    told = []
    asked.aims.failed.connect(lambda *words: told.append(words))
    asked.aims.wish(BEFORE, MOVE)
    asked.aims.take(Untouched(asked.wishes[0].number))
    asked.aims.wish(BEFORE, MOVE)
    assert [wish.number for wish in asked.wishes] == [1, 2]
    assert told == []
    asked.aims.take(Untouched(2, "Traceback"))
    assert told[0][1] == "Traceback"


def test_the_session_asks_only_when_the_worker_is_free_and_the_metal_known(frame):
    session, requests, wishes = Session(Plan(moves=(MOVE, MOVE))), [], []
    session.asked.connect(requests.append)
    session.aims.wished.connect(wishes.append)
    session.prepare()
    session.wish_touch(0, MOVE)
    assert wishes == []  # the door is being set out
    number = requests[0].number
    session.take([DoorReady(number, Car(), SimpleNamespace(), frame()), Ended(number)])
    session.wish_touch(1, MOVE)
    assert wishes == []  # the first move has not been made
    session.wish_touch(0, MOVE)
    assert wishes[0].before == (Car(), ())
    session.take([Touched(wishes[0].number, wishes[0].before, MOVE, TOUCH)])
    assert session.aims.touch(session.before(0), MOVE) is TOUCH


def aim(ratio, basis="guess", touch=None):
    """Return an aim of which only the arrow matters."""
    none = np.zeros(3)
    return Aim(np.zeros((2, 3)), none, ratio, 1.0, ("", ""), np.zeros((0, 3)), None, (), basis, touch)


@pytest.mark.parametrize(
    ("ratio", "word"),
    [(0.4, "outward"), (-0.4, "inward"), (0.04, "along the flange"), (-0.04, "along the flange")],
)
def test_words_say_the_way_and_whether_it_is_a_guess(ratio, word):
    assert arrow_words(aim(ratio)) == f"{word} (first guess)"
    assert arrow_words(aim(ratio, "touch", TOUCH)) == word
    assert f"goes {word}" in aim_words(aim(ratio), Units.METRIC)
    assert "first guess" in aim_words(aim(ratio), Units.METRIC)
    felt = aim_words(aim(ratio, "touch", TOUCH), Units.METRIC)
    assert f"goes {word}" in felt and "guess" not in felt
    assert "3.1" in felt
    assert aim_words(aim(ratio, "nothing"), Units.METRIC) == ""
    pointed = aim_words(aim(ratio, "touch", TOUCH), Units.METRIC, pointed_words(Squeeze()))
    assert pointed.startswith("A squeeze under the pointer, tried over ")
    assert pointed_words(Spread()) == "With tip one under the pointer"


def test_a_panel_that_comes_in_behind_the_lip_is_said_with_the_room_it_takes():
    inward = replace(TOUCH, inner_m=-4.4e-3, room_m=-1.7e-3)
    words = aim_words(aim(1.0, "touch", inward), Units.METRIC).replace("\u00a0", " ")
    assert "the lip goes outward, the panel behind it comes in. Room to the occupant: 1.7 mm less." in words
    assert arrow_words(aim(1.0, "touch", inward)) == "lip outward, panel in"
    flexed = replace(TOUCH, inner_m=-0.4e-3, room_m=-1.7e-3)
    assert "panel" not in aim_words(aim(1.0, "touch", flexed), Units.METRIC)
    assert "panel" not in arrow_words(aim(-1.0, "touch", inward))  # the metal itself goes in
