"""The plan as a list, by mouse and keys: cards drawn to another place, moves added, changed and taken out."""

from types import SimpleNamespace

import pytest

pytest.importorskip("PySide6")

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QComboBox
from shiboken6 import isValid

from sim.plan import Car, Crush, Cut, Ease, Hold, Plan, Spread, Squeeze
from ui.main_window import MainWindow
from ui.panels.look import Look
from ui.plan_side import WRECK_M, PlanSide
from ui.state.answers import DoorReady, Ended
from ui.state.cards import cards
from ui.state.move_fields import NEW_MOVES
from ui.state.session import Session
from ui.state.solve_queue import Job

PLAN = Plan(car=Car(extent="side"), moves=(Spread(), Ease(), Squeeze()))


@pytest.fixture
def hands(qtbot):
    """Return a session of three moves in a window, with no worker and no stage."""
    session, window = Session(PLAN), MainWindow()
    qtbot.addWidget(window)
    side = PlanSide(session, window)
    window.resize(1280, 900)
    window.set_look(Look())
    asked = []
    session.asked.connect(asked.append)

    def show():
        window.plan.show_plan("Three", cards(session), "")
        side.show_wreck()
        side.show()

    session.document.changed.connect(show)
    session.selection.changed.connect(show)
    show()
    window.show()
    qtbot.waitExposed(window)
    qtbot.wait(20)
    return SimpleNamespace(session=session, window=window, side=side, asked=asked, show=show, qtbot=qtbot)


def kinds(session):
    return [type(move) for move in session.plan.moves]


def draw(hands, index, height):
    """Draw a card by its title to a height of the list of cards."""
    card = hands.window.plan._cards[index]
    start = QPoint(40, 12)
    hands.qtbot.mousePress(card, Qt.MouseButton.LeftButton, pos=start)
    for part in (0.3, 0.7, 1.0):
        hands.qtbot.mouseMove(card, QPoint(40, round(12 + part * (height - card.y() - 12))))
    hands.qtbot.mouseRelease(card, Qt.MouseButton.LeftButton, pos=QPoint(40, height - card.y()))


def test_a_card_is_drawn_to_another_place(hands):
    plan = hands.window.plan
    last = plan._cards[2]
    draw(hands, 0, last.y() + last.height() + 10)
    assert kinds(hands.session) == [Ease, Squeeze, Spread]
    assert hands.session.selection.now.move == 2
    assert hands.session.document.history.undo_label == "Put move 1 at place 3"
    draw(hands, 2, plan._cards[0].y() + 2)
    assert kinds(hands.session) == [Spread, Ease, Squeeze]
    assert plan._gap.isHidden()


def test_a_trembling_click_picks_and_moves_nothing(hands):
    card = hands.window.plan._cards[1]
    with hands.qtbot.waitSignal(hands.window.plan.picked):
        hands.qtbot.mousePress(card, Qt.MouseButton.LeftButton, pos=QPoint(40, 12))
    hands.qtbot.mouseMove(card, QPoint(41, 14))
    hands.qtbot.mouseRelease(card, Qt.MouseButton.LeftButton, pos=QPoint(41, 14))
    assert kinds(hands.session) == [Spread, Ease, Squeeze]


def test_keys_put_a_move_earlier_and_later_and_stop_at_the_ends(hands):
    do = hands.side.actions()
    do["move_later"]()
    assert kinds(hands.session) == [Ease, Spread, Squeeze]
    do["move_earlier"]()
    do["move_earlier"]()
    assert kinds(hands.session) == [Spread, Ease, Squeeze]


def test_another_order_is_worked_out_again_if_the_first_was(hands, monkeypatch):
    session = hands.session
    model = SimpleNamespace(structure=SimpleNamespace(sliders=(), points=()))
    session.take([DoorReady(0, PLAN.car, model, SimpleNamespace(opening_m=0.0, events=()))])
    session.stop()
    hands.side.put(0, 1)
    assert all(request.job is Job.PREPARE for request in hands.asked)  # nothing was worked out
    monkeypatch.setattr(Session, "solved_count", property(lambda _: 1))
    monkeypatch.setattr(Session, "can_run", property(lambda _: True))
    hands.side.put(0, 1)
    assert hands.asked[-1].job is Job.SOLVE


@pytest.mark.parametrize("name", list(NEW_MOVES))
def test_every_type_is_added_changed_by_keys_and_taken_out(hands, name):
    session, form = hands.session, hands.side.form
    count = len(session.plan.moves)
    hands.side.actions()[name]()
    assert len(session.plan.moves) == count + 1
    hands.side.change(count)
    hands.qtbot.waitUntil(lambda: form.isVisible())
    assert len(form.widgets) == len(form.fields)
    changed = 0
    for field in form.fields[:3]:
        before, widget = session.plan, form.widgets.get(field.name)
        if widget is None:  # another kind of place has other fields
            continue
        widget.setFocus()
        if isinstance(widget, QComboBox):
            if widget.count() < 2:
                continue
            key = Qt.Key.Key_Down if widget.currentIndex() == 0 else Qt.Key.Key_Up
            hands.qtbot.keyClick(widget, key)
        else:
            hands.qtbot.keyClick(widget, Qt.Key.Key_Up)
            hands.qtbot.keyClick(widget, Qt.Key.Key_Return)
        changed += session.plan != before
        assert type(session.plan.moves[count]) is type(before.moves[count])
    assert changed or not form.fields
    hands.qtbot.mouseClick(form.out, Qt.MouseButton.LeftButton)
    assert session.plan.moves == PLAN.moves


def test_the_row_that_asked_for_other_fields_outlives_its_own_key(hands):
    session, form = hands.session, hands.side.form
    hands.side.actions()["add_cut"]()
    hands.side.change(len(session.plan.moves) - 1)
    for field in form.fields:
        box, fields = form.widgets[field.name], form.fields
        if isinstance(box, QComboBox):
            hands.qtbot.keyClick(box, Qt.Key.Key_Down)
        if form.fields != fields:
            break
    else:
        pytest.fail("No choice of a cut brings other fields.")
    assert isValid(box)
    assert box.isHidden()
    hands.qtbot.waitUntil(lambda: not isValid(box))


def test_the_form_says_in_a_sentence_what_cannot_be_done(hands):
    from sim.door_model import build_model
    from sim.run import start_frame

    car = Car(lattice_spacing_m=0.09)
    session = hands.session
    session.document.commit(Plan(car=car, moves=(Hold(),)), "One door")
    model = build_model(car)
    session.take([DoorReady(0, car, model, start_frame(model)), Ended(0)])
    hands.side.change(0)
    assert "so there is nothing to hold; use extent = 'side'" in hands.side.form.trouble.text()


def test_a_wreck_is_put_before_the_plan_changed_and_taken_out(hands):
    session, side = hands.session, hands.side
    side.actions()["add_wreck"]()
    assert session.plan.wreck == (Crush(travel_m=WRECK_M),)
    card = hands.window.plan.wreck
    assert not card.isHidden()
    assert "Not worked out yet" in card.accessibleName()
    box = side.form.widgets["travel_m"]
    box.setFocus()
    box.selectAll()
    hands.qtbot.keyClicks(box, "200")
    hands.qtbot.keyClick(box, Qt.Key.Key_Return)
    assert session.plan.wreck[0].travel_m == pytest.approx(0.2, rel=1e-6)
    assert kinds(session) == [Spread, Ease, Squeeze]  # the plan itself is as it was
    hands.qtbot.mouseClick(card.cross, Qt.MouseButton.LeftButton)
    assert session.plan == PLAN
    assert card.isHidden()


def test_a_jammed_latch_by_number_and_a_wreck_do_not_go_together(hands):
    said = []
    hands.session.said.connect(lambda words, _: said.append(words))
    car = Car(extent="side", latch="jammed", latch_wedge_n=6e3)
    hands.session.document.commit(Plan(car=car, moves=(Cut(),)), "Jammed")
    hands.side.actions()["add_wreck"]()
    assert hands.session.plan.wreck == ()
    assert "wedged by a number" in said[-1]
