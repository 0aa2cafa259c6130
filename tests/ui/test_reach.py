"""Everything in the window is reached by keyboard, seen when it has the focus, and has a name to be read."""

import shutil
import subprocess

import pytest

pytest.importorskip("PySide6")

from PySide6.QtGui import QAccessible, QKeySequence
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSlider,
    QAbstractSpinBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QScrollBar,
    QWidget,
)

from tests.ui.windows import at_work
from ui.app import App, prepare_application

CONTROLS = (
    QAbstractButton, QLineEdit, QAbstractSpinBox, QComboBox, QAbstractSlider, QAbstractItemView,
    QPlainTextEdit,
)  # fmt: skip


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


@pytest.fixture
def app(qapp, qtbot, tmp_path):
    """Return the program at work with its ready plan; no stage is made."""
    with at_work(App(folder=tmp_path), qtbot) as made:
        yield made


def controls(root):
    """Return every control below a widget that is seen, without the inner parts of other controls."""
    return [
        child
        for child in root.findChildren(QWidget)
        if isinstance(child, CONTROLS)
        and not isinstance(child, QScrollBar)
        and not isinstance(child.parent(), (QAbstractSpinBox, QComboBox, QAbstractScrollArea, QLineEdit))
        and not child.objectName().startswith("qt_")
        and child.isVisibleTo(root)
    ]


def reached(root):
    """Return what the focus comes to when it walks once round."""
    seen = []
    root.setFocus()
    for _ in range(400):
        root.focusNextPrevChild(True)
        now = root.focusWidget()
        if now in seen:
            break
        seen.append(now)
    return seen


def pages(app):
    """Show the window's pages one after another, and give each a name."""
    yield "work"
    app.acting.act("form")
    yield "form"
    app.acting.act("form_side")
    yield "form, side"
    app.acting.act("form")
    app.acting.act("lesson_01-first-bite")
    yield "lesson"
    app.acting.lessons.walk.close()
    app.acting.act("branches")
    yield "branches"


def test_the_focus_walks_to_every_control(app, qtbot):
    for page in pages(app):
        app.showing.show_dirty()
        qtbot.wait(10)
        walked = reached(app.window)
        missed = [
            (page, type(c).__name__, c.accessibleName() or getattr(c, "text", str)())
            for c in controls(app.window)
            if c.isEnabled() and c not in walked
        ]
        assert not missed
        assert len(walked) > 10


@pytest.mark.skipif(shutil.which("xdotool") is None, reason="xdotool is not installed")
def test_a_control_with_the_focus_looks_otherwise(app, qtbot):
    """Every control, drawn with and without the focus; no window manager is there to give it."""
    subprocess.run(["xdotool", "windowfocus", str(int(app.window.winId()))], check=True)
    qtbot.waitUntil(app.window.isActiveWindow)
    same = []
    for control in [c for c in controls(app.window) if c.isEnabled()]:
        app.window.setFocus()
        before = control.grab().toImage()
        control.setFocus()
        qtbot.wait(1)
        if not control.isEnabled():
            continue  # the work in hand has shut it meanwhile
        qtbot.waitUntil(control.hasFocus, timeout=5000)
        if control.grab().toImage() == before:
            same.append(control.accessibleName() or getattr(control, "text", str)())
    assert same == []


def nameless(root):
    """Return the controls, and what else takes the focus, that a screen reader would find without a name."""
    found = []
    for child in root.findChildren(QWidget):
        takes = child.focusPolicy().value & 1 and not isinstance(child.parent(), QAbstractSpinBox)
        if isinstance(child, QScrollBar) or child.objectName().startswith("qt_"):
            continue
        if child not in controls(root) and not (takes and child.isVisibleTo(root)):
            continue
        spoken = QAccessible.queryAccessibleInterface(child)
        if spoken is not None and not spoken.text(QAccessible.Text.Name).strip():
            found.append((type(child).__name__, child.objectName(), type(child.parent()).__name__))
    return found


def test_every_control_has_a_name_to_be_read(app, qtbot):
    for page in pages(app):
        app.showing.show_dirty()
        assert nameless(app.window) == [], page
    app.window.show_page("caution")
    assert nameless(app.window) == []


@pytest.mark.parametrize(
    "name",
    [
        "find",
        "keys",
        "picture",
        "describe",
        "here",
        "log",
        "card",
        "questions",
        "sheets",
        "words",
        "rules",
        "drills",
    ],
)
def test_every_small_window_is_named_and_reached(app, qtbot, name):
    app.acting.act("lesson_01-first-bite")
    before = set(app.window.findChildren(QWidget))
    app.acting.act(name)
    qtbot.wait(20)
    opened = [w for w in app.window.findChildren(QWidget) if w.isWindow() and w.isVisible()]
    opened = [w for w in opened if w not in before or name in ("find", "keys")]
    assert opened, "no window came"
    for sheet in opened:
        assert sheet.windowTitle()
        assert nameless(sheet) == []
        walked = reached(sheet)
        held = [c for c in controls(sheet) if c.isEnabled() and not isinstance(c, QAbstractItemView)]
        assert not [(type(c).__name__, c.accessibleName()) for c in held if c not in walked]
        sheet.close()


def test_no_two_actions_of_the_window_share_a_key(app):
    """As Qt reads the keys, on any keyboard: written differently, two keys can still be the same."""
    owners = {}
    for action in app.window.actions():
        for key in action.shortcuts():
            owners.setdefault(key.toString(QKeySequence.SequenceFormat.PortableText), set()).add(
                action.text()
            )
    assert len(owners) > 60
    assert {key: names for key, names in owners.items() if len(names) > 1} == {}
    letters = [title.text().partition("&")[2][:1].lower() for title in app.window.menuBar().actions()]
    assert len(letters) == len(set(letters))


def test_the_finder_does_what_is_found(app, qtbot):
    app.acting.act("find")
    finder = app.acting._finder
    qtbot.keyClicks(finder.field, "pounds")
    assert finder.names()[0] == "imperial"
    qtbot.keyClick(finder.field, "\r")
    assert app.session.view.options.units.value == "imperial"
    assert not finder.isVisible()
