"""What watches over the tests sees each kind of thing that could be left, and nothing once it is gone."""

import threading

import pytest

pytest.importorskip("PySide6")

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget
from vtkmodules.vtkCommonDataModel import vtkPlane

from tests import leftovers
from tests.leftovers import AfterEach, AfterModule


class Window(QWidget):
    """A window of ours."""


def test_a_thread_that_goes_on_is_seen(monkeypatch):
    monkeypatch.setattr(leftovers, "PATIENCE_S", 0.05)
    before, wake = AfterEach(), threading.Event()
    thread = threading.Thread(target=wake.wait, name="left running", daemon=True)
    thread.start()
    assert before.left() == ["thread 'left running'"]
    wake.set()
    thread.join()
    assert before.left() == []


def test_a_window_that_stays_is_seen(qtbot):
    before = AfterEach()
    window = Window()
    window.setWindowTitle("left open")
    window.show()
    assert before.left() == ["window Window 'left open'"]
    window.close()
    window.deleteLater()
    leftovers.delete_later()
    assert before.left() == []


def test_a_running_timer_and_a_drawn_thing_are_seen(qtbot):
    before = AfterModule()
    timer, drawn = QTimer(), vtkPlane()
    timer.start(60_000)
    assert before.left() == ["1 running timer(s) of NoneType", "1 vtkPlane"]
    timer.stop()
    del drawn
    assert before.left() == []
