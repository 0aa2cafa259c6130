"""A hand at the real window: a real mouse and real keys, and what a reader would find on it.

Nothing here calls a widget: xdotool moves the pointer, presses buttons and keys. There is no window manager,
so each window is placed and given the keys by hand. With HEMLINE_WALK_PICTURES set to a folder, every `look`
leaves a picture of the whole screen there.
"""

from __future__ import annotations

import os
import shlex
import subprocess
from contextlib import contextmanager
from pathlib import Path

from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractButton, QApplication, QCheckBox, QLabel, QMenu, QScrollArea, QWidget

from tests.ui.windows import closing, staged, started

PICTURES = "HEMLINE_WALK_PICTURES"
PATH_WAIT_S = 1.0
"""How long a dialog for a file may take to come up."""
UNTIL_SHOWN = (
    "xdotool search --sync --onlyvisible --name {name} windowfocus "
    "&& xdotool key ctrl+a type --delay 15 {path} && xdotool sleep 0.6 key Return sleep 0.8 "
    "&& {{ xdotool search --onlyvisible --name {name} key Return || true; }}"
)


class Hand:
    """A hand at mouse and keyboard; the window's events go on while it moves."""

    def __init__(self, app, qtbot):
        self.app, self.qtbot = app, qtbot
        self._pictures = 0

    # ---- mouse and keys -------------------------------------------------------------------------------

    def run(self, *command):
        """Run a command while the window lives on."""
        process = subprocess.Popen([str(word) for word in command], stdout=subprocess.DEVNULL)
        self.qtbot.waitUntil(lambda: process.poll() is not None, timeout=60_000)
        assert process.returncode == 0
        self.qtbot.wait(60)

    def do(self, *words):
        """Have xdotool do something."""
        self.run("xdotool", *words)

    def to(self, window):
        """Give the keys to a window, as a window manager does when it comes up."""
        self.do("windowfocus", int(window.winId()))
        self.qtbot.waitUntil(window.isActiveWindow, timeout=10_000)

    def type(self, words):
        """Type into whatever has the keys."""
        self.do("type", "--delay", 15, words)

    def press(self, *names):
        """Press keys one after another and wait until nothing is worked out any more."""
        for name in names:
            self.do("key", "--clearmodifiers", name)
        self.settle()

    def point(self, widget, place=None):
        """Bring the pointer over a widget, or over a place in it."""
        where = widget.mapToGlobal(place if place is not None else widget.rect().center())
        self.do("mousemove", where.x() - 2, where.y())
        self.do("mousemove", where.x(), where.y())

    def click(self, widget, place=None, button=1):
        """Click a widget, or a place in it."""
        self.point(widget, place)
        self.do("click", button)

    def push(self, widget):
        """Click what a reader can see and press: it is on the screen, in front, and not greyed out."""
        self.sees(widget)
        assert widget.isEnabled(), f"{name_of(widget)} cannot be pressed"
        # the words of a tick stand at its left, however wide its place is
        self.click(widget, QPoint(24, widget.height() // 2) if isinstance(widget, QCheckBox) else None)
        self.settle()

    def hold_until(self, widget, true, timeout=60_000):
        """Hold the mouse down on a widget until something is true; then let go and wait for the metal."""
        self.sees(widget)
        self.point(widget)
        self.do("mousedown", 1)
        self.qtbot.waitUntil(true, timeout=timeout)
        self.do("mouseup", 1)
        self.settle()

    def scroll_to(self, widget):
        """Turn the wheel over the column a widget stands in until all of it is in sight."""
        area = widget.parentWidget()
        while not isinstance(area, QScrollArea):
            area = area.parentWidget()
        pane = area.viewport()
        self.point(pane)
        for _ in range(40):
            top = widget.mapTo(pane, QPoint(0, 0)).y()
            if top >= 0 and top + widget.height() <= pane.height():
                return
            self.do("click", 4 if top < 0 else 5)
        raise AssertionError(f"no turn of the wheel brings {name_of(widget)} into sight")

    def menu(self, *titles):
        """Choose from the menus of the window by the words that stand there."""
        bar = self.app.window.menuBar()
        action = _entry(bar, titles[0])
        self.click(bar, bar.actionGeometry(action).center())
        for k, title in enumerate(titles[1:], 2):
            shown = self._popup()
            entry = _entry(shown, title)
            assert entry.isEnabled(), f"{title} cannot be chosen"
            self.click(shown, shown.actionGeometry(entry).center())
            if k < len(titles):
                self.qtbot.waitUntil(lambda shown=shown: self._popup() is not shown, timeout=5_000)
        self.settle()

    def pick_from(self, menu, title):
        """Choose from a menu that is up by the words that stand there."""
        entry = _entry(menu, title)
        assert menu.isVisible() and entry.isEnabled(), f"{title} cannot be chosen"
        self.click(menu, menu.actionGeometry(entry).center())
        self.settle()

    def _popup(self):
        self.qtbot.waitUntil(lambda: isinstance(QApplication.activePopupWidget(), QMenu), timeout=5_000)
        return QApplication.activePopupWidget()

    def pick(self, box, words):
        """Choose from a box that drops down, by the words that stand there."""
        self.sees(box)
        self.click(box)
        self.qtbot.waitUntil(box.view().isVisible, timeout=5_000)
        row = box.findText(words)
        assert row >= 0, f"{words} is not on offer"
        view = box.view()
        self.click(view.viewport(), view.visualRect(box.model().index(row, 0)).center())
        self.qtbot.waitUntil(lambda: box.currentText() == words, timeout=5_000)
        self.settle()

    def answer(self, begin, name, path):
        """Do something after which a dialog asks for a path; type it there.

        All by one process: the dialog keeps the test waiting until it is done. The first Return may only
        close the list of files that begin so; there is a second one if the dialog is still up.

        Parameters
        ----------
        begin : xdotool's words, such as "key space";  name : title of the dialog
        """
        asked = UNTIL_SHOWN.format(name=shlex.quote(name), path=shlex.quote(str(path)))
        self.run("sh", "-c", f"xdotool {begin} sleep {PATH_WAIT_S} && {asked}")
        self.settle()

    def push_and_answer(self, widget, name, path):
        """Click a button after which a dialog asks for a path; type it there."""
        self.sees(widget)
        assert widget.isEnabled(), f"{name_of(widget)} cannot be pressed"
        self.point(widget)
        self.answer("click 1", name, path)

    def on_stage(self, world):
        """Return the place of a point [m] in the 3D view."""
        view = self.app.side.view
        renderer = view.renderer
        renderer.SetWorldPoint(*world, 1.0)
        renderer.WorldToDisplay()
        x, y, _ = renderer.GetDisplayPoint()
        ratio = view.devicePixelRatioF()
        return QPoint(round(x / ratio), round(view.height() - 1 - y / ratio))

    def settle(self, timeout=120_000):
        """Wait until nothing is being worked out, and what came is shown."""
        self.qtbot.waitUntil(lambda: not self.app.session.queue.busy, timeout=timeout)
        self.qtbot.wait(60)
        self.app.showing.show_dirty()

    # ---- what a reader finds --------------------------------------------------------------------------

    def sees(self, widget):
        """Hold that a widget's middle is on the screen, inside its window and covered by nothing."""
        name = name_of(widget)
        assert widget.isVisible(), f"{name} is not shown"
        window, middle = widget.window(), widget.rect().center()
        at = widget.mapTo(window, middle)
        assert window.rect().contains(at), f"{name} lies outside its window"
        found = window.childAt(at)
        assert found is widget or (found is not None and widget.isAncestorOf(found)), f"{name} is covered"
        assert window.screen().geometry().contains(widget.mapToGlobal(middle)), f"{name} is off the screen"

    def button(self, words, within=None):
        """Return the one button with these words that a reader sees; it is scrolled to where it has to be."""
        root = within or self.app.window
        found = [
            made
            for made in root.findChildren(QAbstractButton)
            if made.isVisible() and made.text().replace("&", "") == words
        ]
        assert len(found) == 1, f"{len(found)} buttons say {words!r}"
        return found[0]

    def read(self, within=None):
        """Return every word that stands on a widget and is seen, in no order."""
        root = within or self.app.window
        return "\n".join(
            made.text() for made in root.findChildren(QLabel) if made.isVisible() and in_sight(made)
        )

    def look(self, name):
        """Leave a picture of the screen, where a folder for pictures is named."""
        folder = os.environ.get(PICTURES)
        if folder:
            self.qtbot.wait(300)
            self._pictures += 1
            Path(folder).mkdir(parents=True, exist_ok=True)
            screen = QGuiApplication.primaryScreen()
            screen.grabWindow(0).save(str(Path(folder) / f"{self._pictures:02}-{name}.png"))


@contextmanager
def at_the_window(app, qtbot, hand=Hand, meanwhile=None):
    """Start the program and give a hand the keys of its window; the window is closed afterwards.

    Parameters
    ----------
    meanwhile : done by the hand before there is a stage
    """
    with closing(app, qtbot):
        started(app)
        found = hand(app, qtbot)
        if meanwhile is not None:
            meanwhile(found)
        staged(app, qtbot)
        found.to(app.window)
        yield found


def name_of(widget):
    """Return what a widget is called in a message."""
    words = widget.text() if hasattr(widget, "text") else ""
    return words or widget.accessibleName() or type(widget).__name__


def in_sight(widget):
    """Tell whether any of a widget is inside all that it scrolls in."""
    area = QRect(widget.mapToGlobal(QPoint(0, 0)), widget.size())
    parent = widget.parentWidget()
    while parent is not None and not area.isEmpty():
        area = area.intersected(QRect(parent.mapToGlobal(QPoint(0, 0)), parent.size()))
        if parent.isWindow():
            break
        parent = parent.parentWidget()
    return not area.isEmpty()


def _entry(holder: QWidget, title: str):
    """Return the one entry of a menu that says these words, or begins with them and a colon."""
    said = {action.text().replace("&", ""): action for action in holder.actions()}
    found = [action for words, action in said.items() if words == title or words.startswith(f"{title}: ")]
    assert len(found) == 1, f"{title!r} is not among {sorted(said)}"
    return found[0]
