"""A prediction with real keys: ask, answer, lock, run, compare; nothing is seen before the lock."""

import shutil
import subprocess
import tomllib

import pytest

pytest.importorskip("PySide6")
if shutil.which("xdotool") is None:
    pytest.skip("xdotool is not installed", allow_module_level=True)

from PySide6.QtWidgets import QLabel, QWidget

from tests.ui.windows import closing, staged, started
from ui.app import App, prepare_application
from ui.state.asking import Standing
from ui.state.questions import FIRST, WAY, WHY

pytestmark = [pytest.mark.gl, pytest.mark.timeout(240)]

PLAN = """schema_version = 1
title = "A short push"
[car]
lattice_spacing_m = 0.06
[[moves]]
move = "spread"
tilt_deg = 45.0
opening_m = 0.015
[moves.door]
at = "edge"
edge = "latch_edge"
along_m = 0.36
depth_m = 0.005
"""


@pytest.fixture(scope="session")
def qapp():
    """Return the application made as the program makes it."""
    return prepare_application()


@pytest.fixture
def app(qapp, qtbot, tmp_path):
    """Return the program with a short push open, the caution read, the stage drawn."""
    path = tmp_path / "short.toml"
    path.write_text(PLAN)
    app = App(path, folder=tmp_path / "settings")
    with closing(app, qtbot):
        started(app)
        staged(app, qtbot)
        app.filing.caution_read()
        qtbot.waitUntil(lambda: app.first_frame_s > 0.0 and not app.session.queue.busy, timeout=60_000)
        yield app


@pytest.fixture
def keys(app, qtbot):
    """Return a function that presses real keys."""

    def press(*names):
        for words in (["xdotool", "windowfocus", str(int(app.window.winId()))], ["xdotool", "key", *names]):
            process = subprocess.Popen(words)
            qtbot.waitUntil(lambda process=process: process.poll() is not None, timeout=20_000)
            assert process.returncode == 0
        qtbot.wait(60)

    return press


def go_to(app, qtbot, keys, question):
    """Press Tab until the first choice of a question has the focus."""
    rows = app.acting.teaching.card._rows
    for _ in range(30):
        if any(row.hasFocus() and place[0] == question for place, row in rows.items()):
            return
        keys("Tab")
    raise AssertionError(f"no Tab leads to {question}")


def everything_said(window):
    """Return every text, tool tip and description of the window, hidden ones too."""
    for widget in window.findChildren(QWidget):
        for name in ("text", "toolTip", "accessibleName", "accessibleDescription", "title", "whatsThis"):
            said = getattr(widget, name, None)
            try:
                words = said() if callable(said) else ""
            except TypeError:
                continue
            if isinstance(words, str) and words:
                yield words


def assert_nothing_is_told(app, happened):
    """Check every word of the window, and the stage, for what a known run came to."""
    window = app.window
    told = " ".join(everything_said(window))
    assert "What gives first?" in told
    assert happened.sentence[:20] not in told
    for event in happened.events:  # no mark, tip or description tells where anything happened
        assert event.kind not in told
        assert f"{event.opening_m * 1e3:.1f}" not in told
    assert "steps" not in window.solver.text()
    assert app.side._stage.notes.path_frame is None
    assert app.side._stage.notes.share is False


def test_predict_lock_run_and_compare_by_keys_alone(app, qtbot, keys, tmp_path):
    session, asking, window = app.session, app.session.asking, app.window
    # The push has been worked out before: what is known must stay out of sight until the lock.
    keys("Return")
    qtbot.waitUntil(lambda: session.solved_count == 1 and not session.queue.busy, timeout=120_000)
    happened = session.record(0).result
    assert window.reading.sentence.text() == happened.sentence

    keys("a")
    assert asking.standing is Standing.OPEN
    assert window.right_pages.currentWidget() is app.acting.teaching.card
    assert (len(session.timeline), session.timeline.marks) == (1, ())
    keys("End")
    keys("Right")
    assert session.timeline.position == 0
    assert not window.reading.isVisible()
    assert_nothing_is_told(app, happened)
    app.acting.act("sheets")
    assert "Lock the prediction first" in window.notice.words.text()
    keys("ctrl+l")
    assert "kept shut" in window.notice.words.text()

    # The third choice, nine hands for it; the way; a reason. Until then there is no lock.
    keys("Down", "Down", "Return", "9")
    keys("l")
    assert asking.standing is Standing.OPEN
    assert "Still open" in window.notice.words.text()
    go_to(app, qtbot, keys, WAY)
    keys("Return")
    go_to(app, qtbot, keys, WHY)
    keys("Down", "Return")
    assert list(asking.now.chosen) == [FIRST, WAY, WHY]
    assert sum(asking.now.hands.values()) == 9
    keys("l")
    assert asking.standing is Standing.LOCKED
    assert session.timeline.position == 0
    assert asking.now.ran_at is None

    # The run is played from its start; words come with the comparison.
    keys("Return")
    qtbot.waitUntil(lambda: session.timeline.at_end, timeout=30_000)
    assert window.scrub.line._moments.marks == ()
    assert not window.reading.isVisible()
    keys("r")
    assert asking.standing is Standing.SHOWN
    said = [widget.text() for widget in app.acting.teaching.card.findChildren(QLabel)]
    first_clause = happened.sentence.partition(". ")[0]
    assert any(text.startswith(first_clause) for text in said)

    (row,) = tomllib.loads((tmp_path / "short.predictions.toml").read_text())["prediction"]
    assert row["locked_at"] < row["ran_at"] <= row["shown_at"]
    assert sum(row["first_hands"].values()) == 9
    assert row["run"] in ("settled", "not settled: nothing is compared")

    # Going on puts the comparison away and leaves the moment where it was.
    session.timeline.go(3)
    app.acting.teaching.page_turned()
    assert asking.standing is Standing.OFF
    assert window.right_pages.currentWidget() is window.reading
    assert session.timeline.position == 3


BY_HAND = {"run", "quit", "lock", "compare"}
"""Runs the push on purpose, ends the program, or belongs to the card."""
ASKS_THE_SYSTEM = {
    "open", "save", "save_as", "picture", "mesh", "lesson_open", "bring_back", "language", "full",
}  # fmt: skip
"""Opens a dialog of the system, or changes what the next tests find."""
LEAVES = {
    "edge", "contrast", "first_look", "undo", "redo", "lesson_on", "lesson_back", "event_on", "event_back",
    "ask", "take_out", "form",
}  # fmt: skip
"""Leaves the step, on purpose, or changes what is asked about."""


def told_anywhere(qapp):
    """Return every word of every window there is."""
    return " ".join(said for window in qapp.topLevelWidgets() for said in everything_said(window))


LESSON = """schema_version = 1
title = "A short lesson"
author = "nobody"
licence = "CC0-1.0"
level = "awareness"
[[plans]]
name = "short"
file = "short"
[[steps]]
phase = "open"
title = "Begin"
plan = "short"
[[steps]]
phase = "show"
title = "What lets go first?"
plan = "short"
question = "first"
[[steps]]
phase = "show"
title = "The end"
words = "First to give: {short.first}."
plan = "short"
moment = "end"
[[questions]]
name = "first"
ask = "What lets go first?"
plan = "short"
why = "Because."
"""


def test_before_the_lock_no_action_tells_what_a_lesson_asks(app, qapp, qtbot, keys, tmp_path):
    """A lesson knows what its plan came to; on the step that asks no key, menu or window tells it."""
    session, lessons = app.session, app.acting.lessons
    keys("Return")
    qtbot.waitUntil(lambda: session.solved_count == 1 and not session.queue.busy, timeout=120_000)
    happened = session.record(0).result
    assert happened.events
    (tmp_path / "lesson.toml").write_text(LESSON)
    assert lessons.open(tmp_path / "lesson.toml", 1)
    qtbot.wait(50)
    assert len(session.worked_out()) == 1
    asked, step = session.plan, session.document.history.position
    names = set(app.window.actions_by_name) - BY_HAND - ASKS_THE_SYSTEM - LEAVES
    names = sorted(name for name in names if not name.startswith(("lesson_0", "add_", "plan_")))
    assert len(names) > 60
    for opened in (False, True):
        if opened:
            keys("a")
            assert session.asking.standing is Standing.OPEN
        for name in (*names, "lesson_on") if opened else names:
            app.acting.act(name)
            qapp.processEvents()
            app.showing.show_dirty()
            assert (len(session.timeline), session.timeline.marks) == (1, ()), name
            assert session.beside.plan is None, name
            assert not app.acting.maps.on, name
            assert not app.acting.chances.busy, name
            told = told_anywhere(qapp)
            assert happened.sentence[:20] not in told, name
            for event in happened.events:
                assert f"{event.opening_m * 1e3:.1f}" not in told, name
            for window in qapp.topLevelWidgets():
                if window is not app.window and window.isWindow():
                    window.hide()
            app.window.show_page("work")
            session.stop()
            session.document.go(step)  # a tip moved makes it another push, which nobody asks about
        assert lessons.walk.position == 1
        assert session.plan == asked
    # the next step tells, and is only gone to once the card is away
    assert "Lock the prediction first" in app.window.notice.words.text()
    app.acting.teaching.put_away()
    app.acting.act("lesson_on")
    assert lessons.walk.position == 2


def test_what_the_teacher_shuts_stays_out_of_sight(app, qtbot, keys):
    session, window = app.session, app.window
    keys("Return")
    qtbot.waitUntil(lambda: session.solved_count == 1 and not session.queue.busy, timeout=120_000)
    sentence = session.record(0).result.sentence
    keys("t")
    qtbot.wait(50)
    assert sentence not in window.reading.sentence.text()
    assert "kept shut" in window.reading.sentence.text().lower()
    assert window.reading.ladder._reading.rungs == ()
    assert app.side._stage.notes.path_frame is None
    keys("f")
    assert not window._lower.isVisible()
    keys("f", "t")
    qtbot.wait(50)
    assert window.reading.sentence.text() == sentence
    assert window.reading.ladder._reading.rungs


def test_two_plans_stand_side_by_side_by_one_clock_and_one_camera(app, qtbot, keys):
    session, beside = app.session, app.session.beside
    keys("b")
    assert beside.on
    assert "One thing differs" in [w.text() for w in app.acting.beside.page.findChildren(QLabel)]
    keys("Return")
    qtbot.waitUntil(
        lambda: (
            beside.rows is not None
            and all(len(row.frames) > 5 for row in beside.rows)
            and not session.queue.busy
        ),
        timeout=180_000,
    )
    views = app.window.stages.views
    assert len({id(view.renderer.GetActiveCamera()) for view in views}) == 1
    keys("Home")
    assert (beside.position, session.timeline.position) == (0, 0)
    keys("End")
    assert beside.at_end
    renders = [0, 0]

    def note(index, view):
        renders[index] += not view._smooth  # the smoothed frame at rest comes on top

    watches = [
        view.ren_win.AddObserver("EndEvent", lambda *_, index=index, view=view: note(index, view))
        for index, view in enumerate(views)
    ]
    still = None
    while still != renders:  # what the end asked for has been drawn
        still = list(renders)
        qtbot.wait(800)
    renders[:] = [0, 0]
    keys("Left")
    assert renders == [1, 1]
    for view, watch in zip(views, watches, strict=True):
        view.ren_win.RemoveObserver(watch)  # it would keep the view it looks at
    assert session.timeline.position == beside.place(0)
    keys("b")
    assert not beside.on
    assert not views[1].isVisible()
    # A card takes the second plan away: its moments would tell.
    keys("b")
    assert beside.on
    keys("a")
    assert session.asking.open
    assert not beside.on
    assert not views[1].isVisible()
    assert len(session.line) == 1


def test_a_class_is_led_through_by_page_keys_and_the_window_is_as_before_afterwards(app, qtbot, keys):
    session, window, presenter = app.session, app.window, app.acting.presenter
    keys("F5")
    assert presenter.on
    assert session.view.options.stage_only
    assert not window.scrub.isVisible()
    assert window.isFullScreen()
    qtbot.waitUntil(lambda: window._lower.text() == presenter.class_words != "", timeout=5_000)
    keys("Next")
    assert presenter.number == 1
    qtbot.waitUntil(lambda: window._lower.text().startswith("What will happen?"), timeout=5_000)
    keys("F7")
    assert presenter.notes.isVisible()
    keys("F7")
    assert not presenter.notes.isVisible()
    keys("F5")
    assert not presenter.on
    qtbot.waitUntil(window.scrub.isVisible, timeout=5_000)
    assert not window.isFullScreen()
    assert (window.width(), window.height()) == (1280, 720)
