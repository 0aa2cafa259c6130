"""The outcome map in the window: opened, shut, walked by keyboard, never seen before the comparison."""

from __future__ import annotations

import pytest

pytest.importorskip("PySide6")

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QLabel

from sim.door_model import build_model
from sim.map_cell import Job
from sim.outcome_map import asked, made
from sim.planfile import load_plan
from tests.sim.many.map_fakes import finer_says_otherwise, quick
from tests.ui.windows import at_work
from ui.app import App, prepare_application
from ui.state.lesson_file import ready_path
from ui.state.locks import MAP
from ui.state.maps import MapReady, MapStep
from ui.state.session import Session

PLAN = ready_path("").parents[1] / "plans" / "first-bite-lip.toml"


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


@pytest.fixture
def app(qapp, qtbot, tmp_path):
    """Return the program at work with a plan whose map nobody has made; no stage and no processes."""
    made_app = App(folder=tmp_path)
    maps = made_app.acting.maps
    maps.maps.asked.disconnect(maps.worker.submit)
    with at_work(made_app, qtbot, plan=PLAN):
        yield made_app


def map_of(ask, job=quick):
    first, second = (
        [job(Job(ask.plan, cell, spacing)) for cell in ask.grid.cells] for spacing in ask.spacings_m
    )
    return made(ask, first, dict(enumerate(second)))


def give(app, job=quick):
    """Have the map of the plan shown made, by a stand-in."""
    side = app.acting.maps
    side.maps.make(side.ask)
    side.maps.take(MapReady(side.maps.current.number, map_of(side.ask, job)))
    return side


def words(root):
    """Return everything that can be read below a widget, by eye or by a screen reader."""
    from PySide6.QtWidgets import QWidget

    found = []
    for child in (root, *root.findChildren(QWidget)):
        if child.isVisibleTo(root) or child is root:
            text = child.text() if isinstance(child, QLabel) else ""
            found.append(f"{text} {child.accessibleName()} {child.accessibleDescription()}")
    return " ".join(found)


def test_it_opens_by_its_action_says_what_it_takes_and_tells_how_far_it_is(app):
    app.acting.act("map")
    side = app.acting.maps
    assert side.on and "110 places" in words(side.card)
    assert side.card.make.isVisibleTo(side.card) and not side.card.canvas.isVisibleTo(side.card)
    side.card.make.click()
    side.maps.take(MapStep(side.maps.current.number, 30, 220, 240.0))
    assert "30 of 220 runs" in words(side.card) and side.card.stop.isVisibleTo(side.card)
    app.session.stop()  # the door that is being set out
    app.acting.act("stop")
    assert not side.maps.busy and side.card.make.isVisibleTo(side.card)


def test_it_shows_chart_legend_and_sentence_and_goes_away(app, qtbot):
    app.acting.act("map")
    side = give(app)
    assert "the latch lets go first at 11" in words(side.card)
    assert side.card.canvas.isVisibleTo(side.card)
    image = QImage(300, 300, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    assert side._paint(painter, 300.0, 300.0, app.window.look, False) is not None
    painter.end()
    app.acting.act("map")
    assert not side.on and app.window.right_pages.currentWidget() is app.window.reading


def test_arrows_walk_the_cells_and_return_sets_the_tips_there(app, qtbot):
    app.acting.act("map")
    side = give(app)
    canvas = side.card.canvas
    canvas.setFocus()
    canvas.grab()  # the first painting lays the cells out
    before = len(app.session.document.steps)
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Down):
        qtbot.keyClick(canvas, key)
    cell = side.outcome.told[canvas.cursor_cell].cell
    assert cell.edge == "latch_edge" and cell.depth_m == side.outcome.ask.grid.depth_m[1]
    assert f"{1e3 * cell.along_m:.0f}\u00a0mm above the sill" in words(side.card)
    qtbot.waitUntil(lambda: not app.session.queue.busy, timeout=60_000)  # the door is being set out
    qtbot.keyClick(canvas, Qt.Key.Key_Return)
    door = app.session.move.door
    assert (door.edge, door.along_m, door.depth_m) == (cell.edge, cell.along_m, cell.depth_m)
    assert app.session.move.against is None and len(app.session.document.steps) == before + 1
    assert side.outcome is not None  # the place of the tips is no part of what is asked
    app.session.document.undo()
    assert app.session.move == load_plan(PLAN).moves[0]


def test_another_car_has_another_map(app):
    import msgspec

    app.acting.act("map")
    side = give(app)
    app.session.change_car(msgspec.structs.replace(app.session.plan.car, seam="welded"), "welded")
    assert side.outcome is None and "Not made yet" in words(side.card)


def test_what_changes_on_another_map_is_chosen_from_the_list(app):
    import msgspec

    app.acting.act("map")
    side = give(app)
    app.session.change_car(msgspec.structs.replace(app.session.plan.car, name="a twin", seam="welded"), "w")
    give(app, finer_says_otherwise)
    names = [side.card.choice.itemText(k) for k in range(side.card.choice.count())]
    side.card.chosen.emit(next(k for k, name in enumerate(names) if name.startswith("low saloon")))
    assert side.apart is not None and len(side.apart.changes) == 1
    assert "1 of 110 places come out otherwise" in words(side.card)
    side.card.chosen.emit(0)
    assert side.apart is None


class TestShut:
    def test_the_teacher_keeps_it_shut(self, app):
        side = app.acting.maps
        app.session.locks.turn(MAP)
        app.acting.act("map")
        assert not side.on and "kept shut" in words(app.window.notice)

    def test_what_is_shown_goes_when_it_is_shut_and_comes_back(self, app):
        app.acting.act("map")
        side = give(app)
        assert "lets go" in words(side.card)
        app.session.locks.turn(MAP)
        assert not side.card.canvas.isVisibleTo(side.card)
        for word in ("seam parting", "latch free", "lets go", "parts first"):
            assert word not in words(side.card)
        assert side._paint(QPainter(), 10.0, 10.0, app.window.look, False) is None
        app.acting.act("map_large")
        assert side._sheet is None or not side._sheet.isVisible()
        app.session.locks.turn(MAP)
        assert "lets go" in words(side.card)

    def test_nothing_of_it_is_seen_between_question_and_comparison(self, app, monkeypatch):
        from ui.state.asking import Asking

        app.acting.act("map")
        side = give(app)
        monkeypatch.setattr(Asking, "unspoken", property(lambda _: True))
        app.session.asking.changed.emit()
        assert side.outcome is None and "lets go" not in words(side.card)
        app.acting.maps.away()
        app.acting.act("map")
        assert not side.on and "compared" in words(app.window.notice)
        assert side.class_words == "" and side._text() == side.shut

    def test_a_map_made_while_it_was_shut_is_told_when_it_is_open_again(self, app):
        app.acting.act("map")
        side = app.acting.maps
        side.maps.make(side.ask)
        app.session.locks.turn(MAP)
        side.maps.take(MapReady(side.maps.current.number, map_of(side.ask)))
        assert "lets go" not in words(side.card)
        app.session.locks.turn(MAP)
        assert "lets go" in words(side.card)


def test_a_lesson_s_step_opens_what_it_asks_for_and_the_next_puts_it_away(app):
    side, lessons = app.acting.maps, app.acting.lessons
    assert lessons.open(ready_path("08-three-doors"))
    steps = [step.map for step in lessons.walk.steps]
    lessons.walk.go(steps.index("one"))
    assert side.on and side.outcome is not None and side.apart is None
    lessons.walk.go(steps.index("both"))
    assert side.apart is not None and side.apart.after.ask.plan.car.seam == "welded"
    lessons.walk.on()
    assert not side.on


class Late:
    """A stage that takes a car later than the window knows of it."""

    def __init__(self):
        self.ready, self.given, self.drawn = False, [], False

    def show_map(self, _panel, _grid, drawn):
        self.given.append(drawn)
        self.drawn = self.ready
        return self.ready

    def hide_map(self):
        self.drawn = False


def test_the_band_is_drawn_once_the_stage_has_taken_the_car(app, monkeypatch):
    monkeypatch.setattr(Session, "model", build_model(app.session.plan.car))
    side, late = give(app), Late()
    side.open()
    side._side = late
    side.show_band()
    assert not late.drawn
    late.ready = True
    side.show_band()
    assert late.drawn and late.given[-1] is not None  # with its pictures, which nobody has drawn before
    side.show_band()
    assert late.given[-1] is None  # they stay
    side._side = None


def test_ready_maps_answer_at_once():
    for name in ("three-doors-bonded", "three-doors-welded"):
        from ui.state.maps import ready_map

        assert ready_map(asked(load_plan(PLAN.with_name(f"{name}.toml")))) is not None
