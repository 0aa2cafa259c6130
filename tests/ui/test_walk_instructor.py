"""An instructor's ten minutes in front of a class, by mouse and keys alone, from the file to the paper.

A lesson of our own lies in a folder with what its two plans came to, as it would on a stick. Each step is
looked at as the class would see it: what may be read, what may not, what cannot be changed any more.

Sources
-------
Predict, lock, then look: common practice, no source.
"""

from __future__ import annotations

import shutil
import tomllib
from importlib import resources

import pytest

pytest.importorskip("PySide6")
if shutil.which("xdotool") is None:
    pytest.skip("xdotool is not installed", allow_module_level=True)

from PySide6.QtWidgets import QPushButton

from tests.ui.walking import at_the_window
from ui.app import App, prepare_application
from ui.state.asking import Standing
from ui.state.questions import FIRST, WAY, WHY

pytestmark = [pytest.mark.gl, pytest.mark.slow, pytest.mark.timeout(300)]

LESSON = """schema_version = 1
title = "Monday: one door, two bites"
words = "Ten minutes before the drill ground."
author = "the watch"
licence = "CC0-1.0"
level = "operations"
duration_min = 10
hazards = ["sharp edges", "stored energy"]
[[plans]]
name = "lip"
file = "first-bite-lip"
[[plans]]
name = "bend"
file = "first-bite-bend"
[[steps]]
phase = "open"
title = "Somebody waits behind this door"
plan = "lip"
camera = "three_quarter"
words = "The first place you push decides whether it opens or only loses its skin."
notes = "Try the handle first. Your own procedure comes before this."
[[steps]]
phase = "show"
title = "Tips on the lip: what lets go first?"
plan = "lip"
camera = "latch"
question = "lip-first"
words = "Narrow tips at the height of the latch, on the hem lip."
notes = "Count the hands before anybody says why."
[[steps]]
phase = "show"
title = "Behind the bend: the end"
plan = "bend"
moment = "end"
beside = "lip"
camera = "three_quarter"
words = "First to give: {bend.first}. Seam parted: {bend.parted}."
notes = "Ask for one sentence that says what differs."
[[questions]]
name = "lip-first"
ask = "What lets go first?"
plan = "lip"
asks = "gives first"
why = "The tips bear on the edge of the skin."
[debrief]
questions = ["What did you say would happen, and what happened?"]
points = ["The weakest part on the line of the push gives."]
[[evaluation]]
does = "Names the seat of both tips"
looked_for = "says what each tip bears on"
"""


@pytest.fixture(scope="session")
def qapp():
    return prepare_application()


@pytest.fixture
def lesson(tmp_path):
    """Return a lesson's file, with what its plans came to beside it."""
    folder = tmp_path / "stick"
    solved = folder / "solved"
    solved.mkdir(parents=True)
    ready = resources.files("assets").joinpath("lessons", "solved")
    for plan in ("first-bite-lip", "first-bite-bend"):
        for ending in ("json", "npz"):
            (solved / f"{plan}.{ending}").write_bytes(ready.joinpath(f"{plan}.{ending}").read_bytes())
    path = folder / "monday.toml"
    path.write_text(LESSON, encoding="utf-8")
    return path


@pytest.fixture
def hand(qapp, qtbot, tmp_path, lesson):
    """Return a hand at a window that was opened by the lesson's file, for the first time on this machine."""
    with at_the_window(App(lesson, folder=tmp_path / "settings"), qtbot) as found:
        yield found


def reads_the_caution(hand):
    window = hand.app.window
    hand.look("caution")
    words = hand.read()
    assert "not a real car" in words
    assert "procedure" in words
    hand.push(window.caution.done)
    assert window.at_work


def finds_the_lesson_open(hand):
    """What a double click on the file brings: the lesson, at its first step, its car on the stage."""
    hand.settle()
    hand.look("opened")
    words = hand.read(hand.app.acting.lessons.panel)
    assert "Monday: one door, two bites" in words
    assert "Somebody waits behind this door" in words
    assert "The first place you push decides" in words
    assert "Sharp edges" in words


def asks_the_class(hand, happened):
    """The step's own button opens the card; hands are counted by mouse and digits."""
    app, asking = hand.app, hand.app.session.asking
    hand.push(hand.button("Next step"))
    hand.look("asks")
    assert happened[:20] not in hand.read()
    hand.push(hand.button("Ask before the push"))
    assert asking.standing is Standing.OPEN
    hand.look("card")
    card = app.acting.teaching.card
    assert "What gives first?" in hand.read(card)
    assert not card.lock.isEnabled()
    rows = card._rows
    for k, hands in enumerate((3, 9)):
        row = rows[list(rows)[k]]
        hand.click(row.hands)
        hand.type(str(hands))
    assert [n for _, n in sorted(asking.now.hands.items(), key=lambda item: item[1])] == [3, 9]
    assert asking.now.chosen[FIRST] == list(rows)[1][1]
    hand.look("hands")
    for question in (WAY, WHY):
        row = next(row for place, row in rows.items() if place[0] == question)
        hand.scroll_to(row)
        hand.push(row)
    assert asking.missing == ""


def locks_and_nothing_can_be_changed(hand):
    app, asking = hand.app, hand.app.session.asking
    hand.push(hand.button("Next step"))  # the next step would tell
    assert app.acting.lessons.walk.position == 1
    assert "Lock the prediction first" in hand.read(app.window.notice)
    hand.push(hand.button("Lock"))
    assert asking.standing is Standing.LOCKED
    said = dict(asking.now.chosen), dict(asking.now.hands)
    hand.look("locked")
    rows = app.acting.teaching.card._rows
    for row in rows.values():
        assert not row.isEnabled()
        if row.isVisible():
            hand.click(row)
    assert (dict(asking.now.chosen), dict(asking.now.hands)) == said


def reveals(hand, happened):
    """The push is watched to its end, and only then put into words beside what was said."""
    app, session = hand.app, hand.app.session
    assert happened[:20] not in hand.read()
    hand.push(hand.button("Run the push"))
    hand.qtbot.waitUntil(lambda: session.timeline.at_end, timeout=60_000)
    hand.look("ran")
    assert happened[:20] not in hand.read()
    hand.push(hand.button("Compare"))
    hand.look("compared")
    words = hand.read(app.acting.teaching.card)
    for told in ("Foretold", "Happened", "The seam parts", "3 of 12 hands were for what happened"):
        assert told in words, told


def stands_them_side_by_side(hand):
    app, beside = hand.app, hand.app.session.beside
    hand.push(hand.button("Next step"))
    hand.look("bend")
    assert "latch" in hand.read(app.acting.lessons.panel)
    look = next(
        b
        for b in app.acting.lessons.panel.findChildren(QPushButton)
        if b.isVisible() and b.text().startswith(("Look at", "Other plan"))
    )
    hand.push(look)
    hand.qtbot.wait(200)
    hand.look("beside")
    words = hand.read(app.acting.beside.page)
    assert "One thing differs" in words
    assert "Left" in words and "Right" in words
    assert all(view.isVisible() for view in app.window.stages.views)
    assert all(len(row.frames) > 5 for row in beside.rows)
    hand.push(hand.button("One plan"))
    assert beside.plan is None


def debriefs(hand):
    hand.push(hand.button("Next step"))
    hand.look("debrief")
    words = hand.read(hand.app.acting.lessons.panel)
    assert "What did you say would happen, and what happened?" in words
    assert not hand.button("Next step").isEnabled()


def prints_the_bridge_sheet(hand, path):
    hand.menu("Teach", "Sheets of lesson or plan: print, PDF\u2026")
    paper = hand.app.acting.lessons.windows._paper.sheet
    hand.to(paper)
    hand.look("sheets")
    assert paper.kind.currentData() == "bridge"
    hand.push_and_answer(hand.button("Save as PDF\u2026", paper), "Save the sheet", path)
    hand.qtbot.waitUntil(path.exists, timeout=60_000)
    assert path.read_bytes().startswith(b"%PDF")
    hand.qtbot.waitUntil(lambda: path.name in hand.read(hand.app.window.notice), timeout=20_000)
    hand.look("sheet-saved")


def test_ten_minutes_from_the_lesson_s_file_to_the_bridge_sheet(hand, lesson, tmp_path):
    reads_the_caution(hand)
    finds_the_lesson_open(hand)
    happened = hand.app.acting.lessons.walk.results["lip"].kept.moves[-1].sentence
    asks_the_class(hand, happened)
    locks_and_nothing_can_be_changed(hand)
    reveals(hand, happened)
    stands_them_side_by_side(hand)
    debriefs(hand)
    prints_the_bridge_sheet(hand, tmp_path / "bridge.pdf")
    (row,) = tomllib.loads((lesson.parent / "monday.predictions.toml").read_text())["prediction"]
    assert row["locked_at"] < row["ran_at"] <= row["shown_at"]
    assert sum(row["first_hands"].values()) == 12
