"""The model card in the window: two steps from any screen, within the window, and its checks put into it."""

import pytest

from sim.checks.row import Row
from ui.acting import WHILE_READING
from ui.card_side import CardSide
from ui.main_window import MainWindow
from ui.panels.look import Look
from ui.state.actions import HELP
from ui.state.model_card import CHECKS

GOOD = Row("peel load", "kendall-1975", 2.0, 2.05, "N/mm", 0.05, spacing="45 mm")


@pytest.fixture
def side(qtbot, monkeypatch):
    window = MainWindow()
    qtbot.addWidget(window)
    made = CardSide(window)
    monkeypatch.setattr(made.job, "start", lambda: None)  # no process: rows are handed over here
    yield made
    assert made.job.close()


def test_the_card_stands_in_the_help_menu_and_has_a_key_also_while_a_text_is_read(side):
    entries = {name: key for name, _, key in HELP}
    assert entries["card"] == "F4"
    assert "card" in WHILE_READING
    menus = [menu for menu in side.window.menuBar().actions() if menu.text() == "&Help"]
    assert side.window.actions_by_name["card"] in menus[0].menu().actions()


@pytest.mark.parametrize(("size", "scale"), [((1024, 768), 1.0), ((1024, 768), 1.25), ((1920, 1080), 1.714)])
def test_the_sheet_stays_within_the_window(side, size, scale):
    side.window.resize(*size)
    side.window.set_look(Look(scale=scale))
    side.open()
    assert side.sheet.isVisible()
    assert side.sheet.width() <= size[0]
    assert side.sheet.height() <= size[1]


def test_rows_come_in_until_the_end_and_none_after_a_stop(side, qtbot):
    side.open()
    side.sheet.check.click()
    assert side.state.running
    assert side.state.chapter == CHECKS
    side.job.row.emit(("f", GOOD))
    qtbot.waitUntil(lambda: side.sheet.table.rowCount() == 1, timeout=2000)
    side.job.ended.emit("")
    qtbot.waitUntil(lambda: not side.state.running, timeout=2000)
    assert side.state.said.startswith("Stopped: 1 of 1 rows")
    side.job.row.emit(("f", GOOD))  # one that was on its way
    qtbot.wait(50)
    assert len(side.state.rows) == 1
