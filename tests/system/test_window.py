"""The real window on a real screen, driven by a real mouse and real keys.

Nothing here calls a widget: xdotool moves the pointer and presses keys, and the result is read from the
document. There is no window manager, so the window is placed at the corner and given the focus by hand.
"""

import shutil
import time
from importlib import resources

import msgspec
import numpy as np
import pytest

pytest.importorskip("PySide6")
if shutil.which("xdotool") is None:
    pytest.skip("xdotool is not installed", allow_module_level=True)

from PySide6.QtCore import QPoint

from sim.plan import Car, EdgePoint, Plan, Spread
from tests.ui.walking import at_the_window
from ui.app import App, prepare_application
from ui.state.answers import Stopped

pytestmark = [pytest.mark.gl, pytest.mark.timeout(240)]


@pytest.fixture(scope="session")
def qapp():
    """Return the application made as the program makes it: the drawing format must come first."""
    return prepare_application()


@pytest.fixture
def hand(qapp, qtbot, tmp_path):
    """Return a hand at a window that has just been started for the first time, the caution read."""
    app = App(folder=tmp_path / "settings")
    with at_the_window(app, qtbot) as found:
        assert not app.window.at_work
        found.click(app.window.caution.done)
        qtbot.waitUntil(lambda: app.first_frame_s > 0.0, timeout=20_000)
        found.settle()
        yield found
        app.window.close()
        app.worker._thread.join(60.0)  # what is compiled for the first time is not broken off
    assert not app.worker._thread.is_alive()


def hem_point(model, height_m, inward_m):
    """Return a point on the skin, inward of the latch edge's lip [m]."""
    x = model.mesh.section_point(model.mesh.edge_station("latch_edge", height_m), 0.0)[1][0]
    return model.mesh.shape.skin_point(np.array([x - inward_m]), np.array([height_m]))[0]


def test_tips_are_set_by_mouse_steered_by_keys_and_opened_by_holding_space(hand):
    app, session = hand.app, hand.app.session
    view = app.side.view
    model = session.model

    # Tip one: point at the hem, see it named, click.
    place = hand.on_stage(hem_point(model, 0.45, 0.006))
    hand.point(view, place)
    assert app.window.readout.words.text() == "Hem: hem lip"
    hand.do("click", 1)
    move = session.move
    assert isinstance(move, Spread)
    assert isinstance(move.door, EdgePoint)
    assert move.door.edge == "latch_edge"
    # one pixel of the view is 1.5 mm on the door
    assert move.door.along_m == pytest.approx(0.45, abs=0.006)
    assert session.selection.now.tip == 2

    # Tip two: the rocker will not do, and why is said; the pillar's outside will.
    rocker = model.body.seat_point("rocker", 0.5) + np.array([0.0, 0.0, -0.05])
    hand.click(view, hand.on_stage(rocker))
    assert session.move.against is None
    assert "Tip two cannot stand on the rocker" in app.side._said
    pillar = model.body.seat_point("pillar_outside", 0.45) + np.array([0.015, 0.0, 0.0])
    hand.click(view, hand.on_stage(pillar))
    assert session.move.against.seat == "pillar_outside"

    # The switch of the lesson, by keys: 5 mm -> 5 + 3 x 2 + 10 mm, and tilt 45 -> 40 degrees.
    hand.do("key", "bracketright", "bracketright", "bracketright")
    hand.do("key", "shift+bracketright")
    hand.do("key", "comma")
    assert session.move.door.depth_m == pytest.approx(0.021, abs=1e-9)
    assert np.degrees(session.move.tilt_rad) == pytest.approx(40.0, abs=1e-9)
    # The wheel steers while a tip is set: one notch back is 2 mm less.
    hand.do("click", 5)
    assert session.move.door.depth_m == pytest.approx(0.019, abs=1e-9)

    # Hold Space to open, let go to stop: what was reached is in the plan and has its sentence.
    hand.do("keydown", "space")
    hand.qtbot.waitUntil(lambda: len(session.timeline) > 4, timeout=60_000)
    assert session.queue.holding
    hand.do("keyup", "space")
    hand.settle()
    opening = session.plan.moves[0].opening_m
    assert 0.0 < opening < 0.3
    assert opening == pytest.approx(session.timeline.frame.opening_m, abs=1e-12)
    assert session.result_here.sentence
    assert app.window.reading.sentence.text() == session.result_here.sentence

    # Undo takes back the opening; the tips stay where they were set.
    hand.do("key", "ctrl+z")
    assert session.plan.moves[0].opening_m == pytest.approx(0.1, abs=1e-12)
    assert session.plan.moves[0].door.depth_m == pytest.approx(0.019, abs=1e-9)
    hand.do("key", "ctrl+shift+z")
    assert session.result_here.sentence

    # Home shows the untouched door, the right arrow the first moment of the push.
    hand.do("key", "Home")
    assert session.timeline.position == 0
    hand.do("key", "Right")
    assert session.timeline.position == 1


def test_escape_stops_within_three_tenths_of_a_second(hand):
    session = hand.app.session
    hand.click(hand.app.window.plan.contrast)
    hand.click(hand.app.window.scrub.go)
    hand.qtbot.waitUntil(lambda: len(session.timeline) > 2, timeout=60_000)
    moments = len(session.timeline)
    worker = hand.app.worker
    # In the worker's own CPU time, from the word to stop to its answer: a busy machine changes nothing.
    told, stopped = [], []
    clock, put = time.pthread_getcpuclockid(worker._thread.ident), worker.answers.put

    def note(answer):
        if isinstance(answer, Stopped):
            stopped.append(time.thread_time())
        return put(answer)

    worker.answers.put = note
    session.dropped.connect(lambda: told.append(time.clock_gettime(clock)))
    hand.do("key", "Escape")
    assert not session.queue.busy
    assert len(session.timeline) >= moments
    hand.qtbot.waitUntil(lambda: bool(stopped), timeout=20_000)
    assert stopped[0] - told[0] < 0.3
    # And the next wish is taken up.
    session.hold()
    hand.qtbot.waitUntil(lambda: session.queue.standing.value == "running", timeout=20_000)
    session.stop()


def test_the_caution_is_read_once_per_folder(hand, qapp, qtbot, tmp_path):
    again = App(folder=tmp_path / "settings")
    assert again.window.at_work
    other = App(folder=tmp_path / "other")
    assert not other.window.at_work
    for app in (again, other):
        app.window.close()
        app.window.deleteLater()


def test_a_file_that_is_no_plan_is_said_in_the_bar_and_nothing_is_lost(hand, tmp_path):
    app = hand.app
    plan = app.session.plan
    bad = tmp_path / "bad.toml"
    bad.write_text('schema_version = 1\n[car]\nseam = "glued"\n')
    app.window.dropped.emit(str(bad))
    assert not app.window.notice.isHidden()
    assert "seam" in app.window.notice.words.text()
    assert app.session.plan == plan
    app.window.dropped.emit(str(tmp_path / "missing.toml"))
    assert app.window.notice.words.text() == "missing.toml was not opened: it does not exist; check the path."


def test_a_plan_is_saved_opened_again_and_listed(hand, tmp_path):
    app = hand.app
    hand.do("key", "bracketright")
    saved = tmp_path / "mine.toml"
    app.filing._write(saved)
    assert not app.session.document.dirty
    plan = app.session.plan
    hand.click(app.window.plan.contrast)
    assert app.session.plan != plan
    assert app.filing.open(saved)
    assert app.session.plan == plan
    assert app.filing.settings.recent == (str(saved),)


def test_the_window_is_idle_when_nothing_happens(hand):
    """No timer runs and nothing is drawn while nobody does anything: at most 2 % of one core."""

    def share_of(span_ms):
        began, used = time.perf_counter(), time.process_time()
        hand.qtbot.wait(span_ms)
        return (time.process_time() - used) / (time.perf_counter() - began)

    for _ in range(200):  # the push that is aimed at is still being tried, on a busy machine for a minute
        if share_of(500) < 0.02:
            break
    share = share_of(1500)
    assert share < 0.02, share


def test_one_key_shows_the_stage_alone_and_brings_all_back(hand):
    window = hand.app.window
    hand.do("key", "f")
    assert not window.scrub.isVisible()
    assert not window.reading.isVisible()
    hand.do("key", "f")
    assert window.scrub.isVisible()
    assert window.reading.isVisible()
    assert window.plan.isVisible()


def test_layers_cycle_by_one_key(hand):
    session = hand.app.session
    for wanted in ("see_through", "off", "solid"):
        hand.do("key", "1")
        assert session.view.options.layers["skin"].value == wanted


def test_a_picture_has_the_size_asked_for(hand, tmp_path):
    from PIL import Image

    hand.app.filing.save_picture(960, 540, "Tips on the hem lip", str(tmp_path / "door.png"))
    with Image.open(tmp_path / "door.png") as image:
        assert image.size == (960, 540)
        assert len(image.convert("L").getcolors()) > 50


def test_a_list_that_was_clicked_gives_the_keys_back_to_the_stage(hand):
    """After colours are chosen from their list, Space opens the tips and Return runs the plan."""
    app = hand.app
    hand.click(app.window.layers.colours)
    hand.do("key", "Down", "Return")
    assert app.session.view.options.colour_mode == "outboard"
    hand.do("keydown", "space")
    assert app.session.queue.holding
    hand.do("keyup", "space")
    hand.settle()


def test_a_number_typed_is_run_to_and_its_digits_change_no_layer(hand):
    app = hand.app
    hand.click(app.window.scrub.opening)
    hand.do("key", "ctrl+a")
    hand.do("type", "12")
    hand.do("key", "Return")
    hand.settle()
    assert app.session.plan.moves[0].opening_m == pytest.approx(0.012, abs=1e-12)
    assert app.session.result_here.sentence
    assert app.session.view.options.layers["skin"].value == "solid"


def test_a_plan_that_was_not_saved_is_kept_at_the_end(hand, tmp_path):
    hand.do("key", "bracketright")
    plan = hand.app.session.plan
    hand.app.window.close()
    again = App(folder=tmp_path / "settings")
    assert again.filing.settings.recent == (str(tmp_path / "settings" / "last-unsaved.toml"),)
    assert again.filing.open(tmp_path / "settings" / "last-unsaved.toml")
    assert again.session.plan == plan
    again.window.close()
    again.window.deleteLater()


def test_the_picture_is_taken_apart_and_put_together_by_keys_and_mouse(hand, tmp_path):
    app = hand.app
    view, see = app.side.view, app.see
    home = view.stage.shot
    centre = hand.on_stage((0.5, 0.05, 0.35))
    hand.point(view, centre)

    hand.do("key", "x")  # the plane, and its one slider
    assert see.seeing.now.cut.place_m == pytest.approx(0.36)
    hand.click(app.window.see.place, QPoint(app.window.see.place.width() // 3, 8))
    assert see.seeing.now.cut.place_m != pytest.approx(0.36)
    hand.do("key", "e")  # drawn apart; the plane has gone
    assert see.seeing.now.cut is None and view.stage.asunder.ratio == 1.0
    hand.do("key", "Escape")
    assert view.stage.asunder.ratio == 0.0 and not app.window.see.isVisible()

    hand.point(view, centre)
    hand.do("key", "i")  # what is pointed at, alone
    assert view.stage.alone == "skin"
    hand.do("key", "i")
    assert view.stage.alone is None

    hand.do("key", "h")  # out of the patient's seat, and back
    assert view.stage.shot.position != pytest.approx(home.position)
    hand.do("key", "BackSpace")
    assert view.stage.shot.position == pytest.approx(home.position, abs=1e-6)

    hand.do("key", "m")  # a width between two points
    for away in (-40, 40):
        hand.click(view, centre + QPoint(away, 0))
    (width,) = see.measured()
    ends = width.line_m
    assert width.value == pytest.approx(float(np.linalg.norm(ends[0] - ends[1])), rel=1e-9)
    assert 0.02 < width.value < 0.8

    hand.do("key", "n")  # a stroke, kept beside the plan when the plan is saved
    hand.point(view, centre)
    hand.do("mousedown", 1)
    for step in range(1, 6):
        where = view.mapToGlobal(centre + QPoint(8 * step, -4 * step))
        hand.do("mousemove", where.x(), where.y())
    hand.do("mouseup", 1)
    assert view.stage.shot.position == pytest.approx(home.position, abs=1e-6)  # the view did not turn
    (stroke,) = see.marks.now.strokes
    assert stroke.kind == "pen" and len(stroke.points_m) >= 5
    path = tmp_path / "drill.toml"
    app.filing._write(path)
    drawn = see.marks.now
    app.filing.show_ready("edge")
    assert app.filing.open(path)
    assert see.marks.now == drawn


def test_a_whole_side_is_shown_named_and_pointed_at_door_by_door(hand, tmp_path):
    app = hand.app
    ready = resources.files("assets").joinpath("plans", "edge-at-latch.toml").read_text(encoding="utf-8")
    path = tmp_path / "side.toml"
    path.write_text(ready.replace("[car]\n", '[car]\nextent = "side"\nlattice_spacing_m = 0.06\n', 1))
    assert app.filing.open(path)
    hand.qtbot.waitUntil(lambda: hasattr(app.session.model, "side"), timeout=60_000)
    hand.settle()
    model = app.session.model
    hand.do("key", "ctrl+5")  # square to the side
    spots = {
        "Front door, outer skin": (0.45, 0.05, 0.30),
        "Rear door, outer skin": (1.60, 0.05, 0.30),
        "Pillar between the doors: the pillar's outside": tuple(_middle(model)),
        "Rocker": (0.5, 0.0, -0.08),
    }
    for words, place in spots.items():
        hand.point(app.side.view, hand.on_stage(place))
        assert app.window.readout.words.text().startswith(words)
    layers = app.window.layers
    assert all(layers._buttons[name].isVisible() for name in ("pillar", "trim_glass"))
    hand.do("key", "6")  # the pillar see-through, then off
    hand.do("key", "6")
    assert not app.side.view.stage.door.pillar.metal.shown


def _middle(model):
    """Return a place on the outside of the pillar between the doors [m]."""
    points = model.start.points[model.pillar_triangles].reshape(-1, 3)
    low = points[(points[:, 2] > 0.2) & (points[:, 2] < 0.4)]
    return low[:, 0].mean(), low[:, 1].max(), 0.3


def test_a_ready_plan_is_found_in_the_menu_by_mouse_and_by_its_words_with_keys(hand):
    window = hand.app.window
    hand.do("key", "ctrl+f")
    hand.do("type", "--delay", 25, "grooved head")
    hand.do("key", "Return")
    hand.qtbot.waitUntil(lambda: hand.app.session.plan.title == "A grooved head", timeout=5_000)
    plan_menu = window.actions_by_name["undo"].associatedObjects()
    bar = window.menuBar()
    entry = next(action for action in bar.actions() if action.menu() in plan_menu)
    hand.click(bar, bar.actionGeometry(entry).center())
    menu = entry.menu()
    for title in ("Ready plans", "The pinch that came back", "Squeezed, then spread"):
        action = next(one for one in menu.actions() if one.text() == title)
        hand.click(menu, menu.actionGeometry(action).center())
        menu = action.menu() or menu
    hand.qtbot.waitUntil(lambda: hand.app.session.plan.title == "Squeezed, then spread", timeout=5_000)
    assert "The pinch that came back" in window.notice.words.text()
    hand.do("key", "ctrl+z")
    hand.qtbot.waitUntil(lambda: hand.app.session.plan.title == "A grooved head", timeout=5_000)
    # and what going on would cost against a cut is asked by a key
    short = Plan(car=Car(lattice_spacing_m=0.09), moves=(Spread(door=EdgePoint(), opening_m=0.005),))
    hand.app.session.document.commit(short, "A short push")
    hand.settle()
    hand.do("key", "ctrl+k")
    hand.qtbot.waitUntil(lambda: "no moment to stop and cut" in window.notice.words.text(), timeout=60_000)


def test_a_twin_is_made_by_key_and_mouse_and_both_are_worked_out_and_told_apart(hand):
    app, session = hand.app, hand.app.session
    plan = Plan(title="lip", car=Car(lattice_spacing_m=0.09), moves=(Spread(opening_m=0.01),))
    session.document.open(plan, None)
    hand.qtbot.waitUntil(lambda: session.model is not None, timeout=60_000)
    hand.settle()

    form, page = app.twins.form, app.acting.beside.page
    hand.do("key", "a")  # nothing is put beside a push that is yet to be foretold
    assert session.asking.unspoken
    hand.do("key", "ctrl+d")
    assert app.window.left_pages.currentWidget() is not form
    session.asking.end()

    hand.do("key", "ctrl+d")
    assert app.window.left_pages.currentWidget() is form
    assert not app.acting.beside.page_on  # nothing is put beside before one thing is changed
    seam = form.fields.boxes["seam"]
    assert seam.hasFocus()
    hand.click(seam)  # opens its list
    hand.do("key", "Down")
    hand.do("key", "Return")
    hand.qtbot.waitUntil(lambda: app.acting.beside.page_on, timeout=5_000)
    twin = session.beside.plan
    assert twin == plan.with_car(msgspec.structs.replace(plan.car, seam="welded"))
    assert session.plan == plan  # the plan itself is as it was
    hand.qtbot.waitUntil(lambda: len(session.records(twin)) == 1, timeout=120_000)
    hand.settle()
    left, right = session.records()[0], session.records(twin)[0]
    assert "weld broken" not in {event.kind for event in left.result.events}
    hand.do("key", "End")
    assert session.beside.frame(0) is left.frames[-1]
    assert session.beside.frame(1) is right.frames[-1]
    shown = page._shown
    assert [(row.words, row.first, row.second) for row in shown.rows] == [("seam", "bonded", "welded")]
    assert shown.heading == "One thing differs"
    assert shown.start.startswith("Each begins from its own metal")
    assert app.window.stages.paired
    assert app.acting.beside._view.stage is not app.side.view.stage

    # another change is made from the same plan: still one thing differs
    hand.do("key", "ctrl+d")
    assert not app.acting.beside.page_on
    hand.qtbot.wait(200)
    latch = form.fields.boxes["latch"]
    hand.click(latch)
    hand.do("key", "Down")
    hand.do("key", "Return")
    hand.qtbot.waitUntil(lambda: session.beside.plan is not None, timeout=5_000)
    assert session.beside.plan == plan.with_car(msgspec.structs.replace(plan.car, latch="half"))
    hand.do("key", "Escape")
    hand.settle()

    hand.do("key", "b")
    assert not app.acting.beside.page_on
    assert app.window.left_pages.currentWidget() is not form
