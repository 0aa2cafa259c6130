"""Matching pictures from the window: a list read, changed and drawn, and a sentence where it cannot be."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QMainWindow

from tests.ui.test_figures import LIST, PLAN
from ui.figures_side import FiguresSide
from ui.panels.look import Look
from ui.state.session import Session

pytestmark = [pytest.mark.gl]


class Window(QMainWindow):
    """A window with what the pictures' one asks of it."""

    from PySide6.QtCore import Signal

    closing = Signal()
    look = Look()


@pytest.fixture
def side(qtbot):
    window = Window()
    qtbot.addWidget(window)
    side = FiguresSide(window, Session())
    side.open()
    yield side
    side.close()
    side.sheet.close()


@pytest.fixture
def listed(tmp_path):
    (tmp_path / "push.toml").write_text(PLAN, encoding="utf-8")
    path = tmp_path / "list.toml"
    path.write_text(LIST, encoding="utf-8")
    return path


def test_a_broken_list_is_told_with_field_and_remedy_and_nothing_is_lost(side, listed):
    side.read(listed)
    before = side.choice
    listed.write_text(LIST.replace('camera = "latch"', 'camera = "moon"'), encoding="utf-8")
    side.read(listed)
    words = side.sheet.told.text()
    assert words.startswith("list.toml was not opened: views[0].camera") and "use one of" in words
    assert side.choice is before


def test_a_folder_that_is_none_is_told_in_a_sentence(side, listed):
    side.read(listed)
    side.make(listed / "under-a-file")
    assert side.sheet.told.text().startswith("under-a-file was not written: it lies under something")
    assert not side.running


def test_nothing_can_be_made_of_nothing(side):
    assert not side.sheet.make.isEnabled()
    side.sheet.moment_wished.emit()
    assert "add a spread" in side.sheet.told.text()


def test_a_list_is_drawn_in_a_process_of_its_own(side, listed, qtbot, tmp_path):
    side.read(listed)
    side.sheet.ticked.emit("styles", ("grey",))
    assert side.sheet.told.text().endswith("= 1 picture")
    side.make(tmp_path / "out")
    assert side.running and side.sheet.stop.isVisibleTo(side.sheet)
    qtbot.waitUntil(lambda: not side.running, timeout=120_000)
    assert side.sheet.told.text().startswith("1 picture with captions"), side.sheet.told.text()
    assert QImage(str(tmp_path / "out" / "end--latch--small--grey.png")).allGray()


def test_a_stop_is_told(side, listed, qtbot, tmp_path):
    side.read(listed)
    side.make(tmp_path / "out")
    side.sheet.stop_wished.emit()
    qtbot.waitUntil(lambda: not side.running, timeout=20_000)
    assert side.sheet.told.text().startswith("Stopped after 0 of 3 pictures")
