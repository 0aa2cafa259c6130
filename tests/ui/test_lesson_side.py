"""A lesson in the window: kept moments are shown at once, what comes is not laid out before it is run."""

from __future__ import annotations

import dataclasses

import msgspec
import pytest
from PySide6.QtCore import Qt

from sim import kept
from sim.plan import EdgePoint
from sim.planfile import load_plan
from sim.run import solve_plan, start_frame
from ui.acting import Acting
from ui.filing import Filing
from ui.main_window import MainWindow
from ui.showing import Showing
from ui.state.answers import DoorReady, Ended, MoveReady
from ui.state.lesson_notes import NOTES_HELD, NOTES_WAIT
from ui.state.lesson_results import NOT_YET
from ui.state.locks import ARROW, LOCK_WORDS, MAP, WAITS
from ui.state.session import Session

PLAN = """schema_version = 1
title = "a short push"
[car]
lattice_spacing_m = 0.09
[[moves]]
move = "spread"
opening_m = 0.015
[moves.door]
at = "edge"
depth_m = 0.005
"""
LESSON = """schema_version = 1
title = "Short"
author = "somebody's post"
licence = "CC0-1.0"
[[plans]]
name = "push"
file = "push"
[[steps]]
phase = "open"
title = "Before"
plan = "push"
question = "first"
notes = "Told: {push.first}."
[[steps]]
phase = "show"
title = "After"
plan = "push"
moment = "end"
colours = "seam"
words = "Largest force {push.peak_force}."
[[questions]]
name = "first"
ask = "What lets go first?"
plan = "push"
"""


@pytest.fixture(scope="module")
def solved(tmp_path_factory):
    folder = tmp_path_factory.mktemp("lesson")
    (folder / "push.toml").write_text(PLAN, encoding="utf-8")
    (folder / "short.toml").write_text(LESSON, encoding="utf-8")
    plan = load_plan(folder / "push.toml")
    answer = solve_plan(plan)
    kept.keep(plan, folder / "solved", "push", solve=lambda _: answer, with_neighbours=False)
    return folder / "short.toml", plan, answer


class Hands:
    """The window's actions with no worker: answers are given by the test."""

    def __init__(self, qtbot, folder):
        from PySide6.QtCore import QTimer

        self.session, self.window = Session(), MainWindow()
        qtbot.addWidget(self.window)
        self.showing = Showing(self.session, self.window, lambda: None)
        self.filing = Filing(self.session, self.window, self.showing, folder)
        self.acting = Acting(self.session, self.window, self.filing, QTimer(self.window))
        self.requests = []
        self.session.asked.connect(self.requests.append)

    def answer_door(self, model):
        number = self.requests[-1].number
        car = self.session.plan.car
        self.session.take([DoorReady(number, car, model, start_frame(model)), Ended(number)])


@pytest.fixture
def hands(qtbot, tmp_path):
    return Hands(qtbot, tmp_path)


def test_a_step_shows_the_kept_moment_without_solving(hands, solved):
    path, plan, (model, records) = solved
    lessons, line = hands.acting.lessons, hands.session.timeline
    assert lessons.open(path)
    hands.answer_door(model)
    assert hands.session.plan == plan
    assert len(line) == 1  # only the start: what comes is not laid out before somebody runs it
    hands.acting.act("event_on")
    assert lessons.walk.step.title == "After"
    assert line.at_end and len(line) == 1 + len(records[0].frames)
    assert hands.session.view.options.colour_mode == "seam"
    assert hands.session.result_here.sentence == records[0].result.sentence
    hands.acting.act("event_back")
    assert len(line) == 1
    assert [request.job.value for request in hands.requests] == ["prepare"]


def test_a_lesson_opened_at_a_later_step_looks_as_that_step_says(hands, solved):
    path, _, (model, _) = solved
    assert hands.acting.lessons.open(path, 1)
    hands.answer_door(model)
    options = hands.session.view.options
    assert (options.colour_mode, options.drawer) == ("seam", "plan")
    assert hands.session.timeline.at_end


def test_the_arrow_waits_until_something_of_the_push_has_been_seen(hands, solved):
    path, plan, (model, _) = solved
    session = hands.session
    hands.acting.lessons.open(path)
    hands.answer_door(model)
    hands.showing.later("plan", "moment")
    hands.showing.show_dirty()
    assert session.hides(ARROW)
    assert hands.window.reading.sentence.text() == WAITS
    deeper = msgspec.structs.replace(plan.moves[0], door=EdgePoint(depth_m=0.03))
    session.change_move(deeper, "Depth 30 mm")
    assert not session.hides(ARROW)  # this push is nobody's question
    hands.acting.lessons.open(path)
    assert session.hides(ARROW)
    hands.acting.act("run")
    session.line.go(len(session.timeline))
    assert not session.hides(ARROW)
    hands.acting.act("start")
    assert not session.hides(ARROW)


def test_the_car_of_a_step_to_come_is_set_out_meanwhile(hands, solved, tmp_path):
    model = solved[2][0]
    other = PLAN.replace("lattice_spacing_m = 0.09", "lattice_spacing_m = 0.08")
    (tmp_path / "push.toml").write_text(PLAN, encoding="utf-8")
    (tmp_path / "other.toml").write_text(other, encoding="utf-8")
    text = LESSON.replace(
        '[[steps]]\nphase = "show"', '[[plans]]\nname = "other"\nfile = "other"\n[[steps]]\nphase = "show"'
    )
    text = text.replace('title = "After"\nplan = "push"', 'title = "After"\nplan = "other"')
    (tmp_path / "two.toml").write_text(text, encoding="utf-8")
    lessons, ahead = hands.acting.lessons, []
    lessons.look_ahead = ahead.append
    lessons.open(tmp_path / "two.toml")
    assert ahead == []  # first things first
    hands.answer_door(model)
    assert [one.car.lattice_spacing_m for one in ahead] == [0.08]
    hands.acting.act("event_on")
    hands.answer_door(model)
    assert len(ahead) == 1  # nothing comes after it


def test_run_plays_what_is_known(hands, solved):
    path, _, (model, records) = solved
    hands.acting.lessons.open(path)
    hands.answer_door(model)
    hands.acting.act("run")
    assert len(hands.session.timeline) == 1 + len(records[0].frames)
    assert hands.session.timeline.position == 0
    assert [request.job.value for request in hands.requests] == ["prepare"]


def test_a_stale_result_is_told_and_not_shown(hands, solved, tmp_path):
    path, plan, (model, records) = solved
    (tmp_path / "solved").mkdir()
    for file in (path, path.parent / "push.toml", *(path.parent / "solved").iterdir()):
        target = tmp_path / file.relative_to(path.parent)
        target.write_bytes(file.read_bytes())
    told = (tmp_path / "solved" / "push.json").read_text(encoding="utf-8")
    version = f'"model_version": "{kept.MODEL_VERSION}"'
    assert version in told
    (tmp_path / "solved" / "push.json").write_text(
        told.replace(version, '"model_version": "0"'), encoding="utf-8"
    )
    lessons = hands.acting.lessons
    lessons.open(tmp_path / "short.toml")
    hands.answer_door(model)
    hands.acting.act("event_on")
    assert "model version 0" in lessons.walk.stale_words
    assert len(hands.session.timeline) == 1
    hands.acting.act("run")
    request = hands.requests[-1]
    assert request.job.value == "solve"
    assert NOT_YET not in lessons.walk.words  # the old figure stands there, and is told to be old
    hands.session.take([MoveReady(request.number, 0, plan, records[0]), Ended(request.number)])
    assert lessons.walk.stale_words == ""
    assert "Largest force" in lessons.walk.words and lessons.walk.result.fresh


def test_the_lesson_keeps_its_place_beside_the_plan(hands, solved):
    path, _, _ = solved
    lessons, pages = hands.acting.lessons, hands.window.left_pages
    lessons.open(path)
    assert pages.currentWidget() is lessons.panel
    hands.acting.act("lesson")
    assert pages.currentIndex() == 0
    hands.acting.act("lesson")
    assert pages.currentWidget() is lessons.panel
    lessons.walk.close()
    assert pages.currentIndex() == 0


def test_a_plan_without_a_lesson_has_its_bridge_sheet(hands, solved, tmp_path):
    _, plan, (model, records) = solved
    windows = hands.acting.lessons.windows
    hands.session.document.open(plan, None)
    hands.answer_door(model)
    windows.open_sheets()
    assert not windows._paper.sheet.isVisible()  # nothing was run yet: said, and no window
    hands.session.know(plan, records)
    windows.open_sheets()
    assert windows._paper.sheet.kind.count() == 1
    made = windows._paper._made("bridge", "")
    assert made.title == plan.title and records[0].result.sentence in made.plain
    windows._paper.save(made, tmp_path / "sheet.pdf", "a4", colour=False)
    assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF-")
    windows._paper.sheet.close()
    hands.window.closing.emit()


def notes_shown(lessons):
    card = lessons.panel._cards[lessons.walk.position]
    return card._notes.text() if card._notes.isVisibleTo(lessons.panel) else ""


def test_notes_that_tell_the_outcome_wait_for_the_comparison(hands, solved):
    path, _, (model, _) = solved
    lessons, asking = hands.acting.lessons, hands.session.asking
    lessons.open(path)
    hands.answer_door(model)
    told = lessons.walk.notes
    hands.acting.act("ask")
    assert asking.open
    assert notes_shown(lessons) == NOTES_WAIT
    asking.end()
    assert notes_shown(lessons) == NOTES_HELD
    hands.acting.act("run")
    assert notes_shown(lessons) == told and "Told: " in told


def test_a_note_that_tells_a_figure_waits_for_the_push(hands, solved):
    path, _, (model, _) = solved
    lessons = hands.acting.lessons
    lessons.open(path)
    hands.answer_door(model)
    assert notes_shown(lessons) == NOTES_HELD
    hands.acting.act("run")
    assert "Told: " in notes_shown(lessons)
    hands.acting.act("event_on")
    hands.acting.act("event_back")
    assert notes_shown(lessons) == NOTES_HELD


def test_on_a_wall_notes_are_shown_when_the_teacher_asks_for_them(hands, solved):
    path, _, (model, _) = solved
    lessons, view = hands.acting.lessons, hands.session.view
    lessons.open(path)
    hands.answer_door(model)
    assert notes_shown(lessons)
    view.set(dataclasses.replace(view.options, projector=True))
    assert notes_shown(lessons) == ""
    lessons.panel.notes_wished.emit()
    assert notes_shown(lessons)
    view.set(dataclasses.replace(view.options, projector=False))
    assert notes_shown(lessons)


def test_a_step_gone_back_to_looks_as_when_the_class_first_came_to_it(hands, solved):
    path, _, (model, _) = solved
    lessons, view = hands.acting.lessons, hands.session.view
    lessons.open(path)
    hands.answer_door(model)
    hands.acting.act("event_on")
    assert view.options.colour_mode == "seam"
    hands.acting.act("event_back")
    assert view.options.colour_mode == "material"


def test_keys_that_need_something_first_say_so(hands, solved):
    said = hands.window.notice.words
    for name, words in (("lock", "no prediction"), ("compare", "no prediction"), ("lesson_on", "No lesson")):
        hands.window.notice.say("")
        hands.acting.act(name)
        assert words in said.text()


def test_the_form_gives_its_place_back_to_the_lesson_and_a_hint_goes_with_its_page(hands, solved):
    path, _, (model, _) = solved
    lessons, pages = hands.acting.lessons, hands.window.left_pages
    lessons.open(path)
    hands.answer_door(model)
    hands.acting.act("form")
    assert pages.currentWidget() is hands.window.form
    hands.acting.act("form")
    assert pages.currentWidget() is lessons.panel
    hands.acting.act("compare")
    assert hands.window.notice.words.text()
    hands.acting.act("event_on")
    assert hands.window.notice.words.text() == ""


class TestPracticeInTheWindow:
    @pytest.fixture
    def sheet(self, hands, solved):
        hands.acting.lessons.open(solved[0])
        windows = hands.acting.lessons.windows
        windows.open_practice()
        yield windows._asked
        windows._asked.close()

    @staticmethod
    def rows(sheet):
        return [sheet._choices.itemAt(k).widget() for k in range(sheet._choices.count())]

    def test_an_answer_counts_once_it_is_locked(self, hands, sheet):
        practice = hands.acting.lessons.windows.practice
        assert not sheet._lock.isEnabled()
        self.rows(sheet)[1].click()
        self.rows(sheet)[0].click()  # changing one's mind is allowed until then
        assert practice.answered() == ""
        sheet._lock.click()
        assert practice.answered() == practice.item.choices[0].outcome
        assert not sheet._lock.isVisibleTo(sheet)

    def test_keys_alone_answer(self, hands, sheet, qtbot):
        sheet.activateWindow()
        practice = hands.acting.lessons.windows.practice
        qtbot.keyClick(sheet, Qt.Key.Key_Return)  # nothing is chosen: nothing happens
        assert practice.mode.value == "coached" and practice.answered() == ""
        qtbot.keyClick(self.rows(sheet)[0], Qt.Key.Key_Down)
        qtbot.keyClick(self.rows(sheet)[1], Qt.Key.Key_Space)
        assert practice.answered() == ""
        qtbot.keyClick(sheet, Qt.Key.Key_Return)
        assert practice.answered() == practice.item.choices[1].outcome

    def test_how_far_the_model_is_settled_is_said_with_the_answer(self, hands, sheet):
        assert sheet._about.text() == "Question 1 of 1"
        self.rows(sheet)[0].click()
        sheet._lock.click()
        assert sheet._about.text() == "Question 1 of 1, not settled"

    def test_a_test_shuts_what_tells_the_outcome_until_its_end(self, hands, sheet):
        locks = hands.session.locks
        locks.restore({MAP})
        sheet.mode_wished.emit("test")
        assert locks.shut == set(LOCK_WORDS)
        assert locks.own == {MAP}  # only this is remembered
        assert sheet.windowModality() is Qt.WindowModality.WindowModal
        self.rows(sheet)[0].click()
        sheet._lock.click()
        assert locks.shut == {MAP}
        assert sheet.windowModality() is Qt.WindowModality.NonModal

    def test_a_test_put_away_opens_what_was_open(self, hands, sheet):
        sheet.mode_wished.emit("test")
        sheet.reject()
        assert hands.session.locks.shut == set()
