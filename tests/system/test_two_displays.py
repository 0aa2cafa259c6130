"""Presenting on two displays: the class's picture on one, notes and the next page on the teacher's.

Two screens are set up for Qt's own platform without a display; the window runs in a process of its own, for
a platform is chosen once. There is no OpenGL on it, so the stage shows still pictures: the same windows.
"""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

pytest.importorskip("PySide6")

ROOT = Path(__file__).resolve().parents[2]
TEACHER, CLASS = (0, 0, 1024, 768), (1024, 0, 1920, 1080)
CHILD = """
import json, sys, time
from pathlib import Path
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from ui.app import App, prepare_application

folder = Path(sys.argv[1])
(folder / "settings.json").write_text(json.dumps({"caution_read": True, "projector": True}))
application = prepare_application()
app = App(folder=folder)
app.window.setGeometry(60, 40, 900, 640)
app.start()


def live(until, seconds=120.0):
    end = time.monotonic() + seconds
    while not until() and time.monotonic() < end:
        application.processEvents()
        time.sleep(0.005)
    for _ in range(40):
        application.processEvents()
        time.sleep(0.005)
    assert until()


def press(key, modifier=Qt.KeyboardModifier.NoModifier):
    QTest.keyClick(app.window, key, modifier)
    live(lambda: not app.session.queue.busy)


def told(window):
    return list(window.geometry().getRect()), window.isVisible(), window.isFullScreen(), window.isMaximized()


live(lambda: app.session.model is not None and not app.session.queue.busy)
app.acting.act("lesson_01-first-bite")
live(lambda: not app.session.queue.busy)
before = told(app.window)
press(Qt.Key.Key_F5)
notes = app.acting.presenter.notes
out = {"primary": list(QGuiApplication.primaryScreen().geometry().getRect()), "before": before}
out |= {"class": told(app.window), "notes": told(notes), "hint": app.window.notice.words.text()}
press(Qt.Key.Key_PageDown)
out |= {"step": app.acting.lessons.walk.position, "lower": app.window._lower.text()}
out |= {"page": notes._title.text(), "next": notes._next.text(), "said": notes._notes.text()}
if len(sys.argv) > 2:
    app.window.grab().save(sys.argv[2] + "-class.png")
    notes.grab().save(sys.argv[2] + "-notes.png")
press(Qt.Key.Key_F5)
out |= {"after": told(app.window), "notes_after": notes.isVisible()}
print(json.dumps(out), flush=True)
app.window.close()
"""


def two_displays(folder, *more):
    """Return what the window told in a process that has two screens."""
    screens = [
        dict(zip(("name", "x", "y", "width", "height"), (name, *rect), strict=True))
        | {"logicalDpi": 96, "logicalBaseDpi": 96, "dpr": 1}
        for name, rect in (("1", TEACHER), ("2", CLASS))  # the first name is the primary
    ]
    (folder / "screens.json").write_text(json.dumps({"screens": screens}))
    (folder / "child.py").write_text(CHILD)
    (folder / "kept").mkdir()
    variables = os.environ | {
        "PYTHONPATH": str(ROOT),
        "QT_QPA_PLATFORM": f"offscreen:configfile={folder / 'screens.json'}",
    }
    done = subprocess.run(
        [sys.executable, str(folder / "child.py"), str(folder / "kept"), *more],
        capture_output=True, text=True, env=variables, timeout=170, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr[-2000:]
    return json.loads(done.stdout.splitlines()[-1])


def test_the_class_sees_the_stage_and_the_teacher_the_notes(tmp_path):
    told = two_displays(tmp_path)
    assert told["primary"] == list(TEACHER)
    assert told["class"] == [list(CLASS), True, True, False]
    rect, seen, _, largest = told["notes"]
    assert seen and largest
    assert rect[0] < CLASS[0] and rect[0] + rect[2] <= TEACHER[2]
    assert told["hint"] == ""  # the hint is for rooms with one display
    assert (told["step"], told["page"]) == (1, "What a door edge is made of")
    assert told["lower"].startswith("Skin, hem, shut face")
    assert told["next"] == "Tips on the lip: what lets go first?"
    assert "key 1" in told["said"] and "key 1" not in told["lower"]
    assert told["after"] == told["before"] and not told["notes_after"]
