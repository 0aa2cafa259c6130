"""Going on against stopping to cut, asked by key and told beside each other; shut while answers are."""

import pytest

pytest.importorskip("PySide6")

from types import SimpleNamespace

from sim.cut_plan import Cut
from sim.plan import Car, Ease, Plan, Spread
from sim.stop_and_cut import Cost, StopAndCut
from sim.units import Units
from ui.acting import Acting
from ui.panels.two_ways import TwoWays
from ui.state import two_ways
from ui.state.chances import ChanceAnswer, Chances, Wish

PLAN = Plan(car=Car(lattice_spacing_m=0.09), moves=(Ease(), Spread()))
WAYS = StopAndCut(
    0.04, "tearing", Cost(0.09, 4, 0.1, 0.2, ("latch",), 0.03), Cost(0.02, 6, 0.04, 0.1, (), 0.03), (Cut(),)
)
NO_MOMENT = StopAndCut(None, "", WAYS.going_on, None)


class Hand:
    """The part of the actions that asks for many runs, with no window of its own and no worker."""

    def __init__(self, window):
        self.hidden, self.said = set(), []
        self.session = SimpleNamespace(
            plan=PLAN,
            timeline=SimpleNamespace(move=-1),
            selection=SimpleNamespace(now=SimpleNamespace(move=1)),
            document=SimpleNamespace(path=None),
            hides=lambda what: what in self.hidden,
            view=SimpleNamespace(options=SimpleNamespace(units=Units.METRIC)),
        )
        window.notice = SimpleNamespace(say=lambda words, report="": self.said.append((words, report)))
        self.window, self.chances, self._two_ways = window, Chances(), None
        self._asked_many, self._asked_move = Wish.LIKELY, 0
        self.wishes = []
        self.chances.asked.connect(self.wishes.append)
        self.chances.changed.connect(self.tell_many)

    _do_weigh, _ask_many, _tell_answer = Acting._do_weigh, Acting._ask_many, Acting._tell_answer
    tell_many = Acting.tell_many

    def _why_shut(self):
        return "shut"


def sitting(*, position, shut=(), beside=False, aiming=False, move=1):
    """Return what the offer looks at: a spread, the plan's second move, with its mark at the fifth moment."""
    mark = SimpleNamespace(position=5, move=1, event=SimpleNamespace(kind="stop here", opening_m=0.04))
    return SimpleNamespace(
        plan=PLAN,
        timeline=SimpleNamespace(move=move, position=position, marks=(mark,)),
        hides=lambda what: what in shut,
        beside=SimpleNamespace(on=beside),
        aiming=aiming,
        view=SimpleNamespace(options=SimpleNamespace(units=Units.METRIC)),
    )


def test_both_ways_are_offered_from_the_mark_on():
    assert two_ways.offered(sitting(position=4)) == ()
    for position in (5, 9):
        words = two_ways.offered(sitting(position=position))[0]
        assert "40\u00a0mm" in words and "stop and cut" in words and "Ctrl+K" in words


@pytest.mark.parametrize(
    "other",
    [{"shut": ("answers",)}, {"shut": ("map",)}, {"beside": True}, {"aiming": True}, {"move": 0}],
)
def test_nothing_is_offered_while_shut_beside_aiming_or_in_another_move(other):
    assert two_ways.offered(sitting(position=6, **other)) == ()


def test_the_offer_stands_in_the_hints_place_and_asks(qtbot):
    from ui.panels.strip import Readout

    readout = Readout()
    qtbot.addWidget(readout)
    readout.resize(700, 30)
    readout.show()
    words = two_ways.offered(sitting(position=6))
    readout.show_hint("Click the edge", words)
    assert readout.offer.isVisible() and readout.offer.text() == words[0]
    with qtbot.waitSignal(readout.offer_wished, timeout=1000):
        readout.offer.click()
    readout.show_hint("Click the edge")
    assert not readout.offer.isVisible()
    readout.resize(300, 30)
    readout.show_hint("Click the edge", words)
    assert readout.offer.text() in words[1:]


@pytest.fixture
def hand(qtbot):
    from PySide6.QtWidgets import QMainWindow

    window = QMainWindow()
    window.resize(900, 600)
    qtbot.addWidget(window)
    window.show()
    return Hand(window)


def test_both_ways_stand_beside_each_other(hand):
    hand._do_weigh()
    assert (hand.wishes[0].wish, hand.wishes[0].move) == (Wish.CUT, 1)
    assert hand.said[-1][0] == two_ways.WORKING
    hand.chances.take(ChanceAnswer(hand.wishes[0].number, WAYS.sentence(), ways=WAYS))
    sheet = hand._two_ways
    assert isinstance(sheet, TwoWays) and sheet.isVisible()
    cells = {row[0]: row[1:] for row in sheet.cells() if len(row) == 3}
    assert cells["Sharp edges"] == ["4", "6"]
    assert cells["Sheet torn"] == ["90\u00a0mm", "20\u00a0mm"]
    assert "6" in sheet.sentence.text() and sheet.sentence.text() == hand.said[-1][0]
    hand._do_weigh()  # known: told again, not run again
    assert len(hand.wishes) == 1 and hand.said[-1][1].count("\n") == len(two_ways.ROW_WORDS) - 1


def test_what_no_spread_or_shut_answers_forbid_is_said_and_not_run(hand):
    hand.session.timeline.move = 0
    hand._do_weigh()
    assert hand.said[-1][0] == two_ways.NO_SPREAD
    hand.session.timeline.move = 1
    hand.hidden = {"answers"}
    hand._do_weigh()
    assert hand.said[-1][0] == "shut" and hand.wishes == []


def test_where_nothing_is_in_sight_to_cut_no_cut_is_counted():
    assert "and 1 cut tear 20 mm and leave 6." in WAYS.sentence()
    none = StopAndCut(0.04, "tearing", WAYS.going_on, WAYS.stopped)
    assert "nothing in sight to cut tears 20 mm and leaves 6." in none.sentence()


def test_a_push_with_no_moment_has_its_sentence_alone(hand):
    hand._do_weigh()
    hand.chances.take(ChanceAnswer(hand.wishes[0].number, NO_MOMENT.sentence(), ways=NO_MOMENT))
    assert "no moment to stop and cut" in hand.said[-1][0]
    assert hand._two_ways is None
