"""The model card's sheet: shows chapters and checks, asks for both, fits small and projected screens."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtWidgets import QWidget

from sim.checks.row import Row
from ui.panels.card import CardSheet
from ui.panels.look import Look
from ui.panels.pieces import dress
from ui.state.model_card import CHAPTERS, CHECKS, NUMBERS, ModelCard

GOOD = Row("peel load", "kendall-1975", 2.0, 2.05, "N/mm", 0.05, spacing="45 mm")
POOR = replace(GOOD, claim="latch", got=3.0)


@pytest.fixture
def shown(qtbot):
    """Give sheet and state, connected as the program connects them."""
    parent = QWidget()
    qtbot.addWidget(parent)
    state, sheet = ModelCard(), CardSheet(parent)
    sheet.chapter_wished.connect(state.show)
    sheet.words_wished.connect(state.search)
    state.changed.connect(lambda: sheet.show_card(state))
    sheet.show_card(state)
    yield sheet, state
    assert parent.isHidden()  # kept alive until here


def words(sheet, column=0):
    return [sheet.table.item(row, column).text() for row in range(sheet.table.rowCount())]


def test_a_click_turns_to_a_chapter(shown):
    sheet, state = shown
    for number in range(len(CHAPTERS)):
        sheet._chapters.button(number).click()
        assert state.chapter == number
        assert sheet.table.rowCount() == len(state.page().lines)
        assert sheet._chapters.checkedId() == number


def test_words_in_the_field_narrow_the_table(shown):
    sheet, state = shown
    state.show(NUMBERS)
    everything = sheet.table.rowCount()
    sheet.search.setText("latch floor")
    assert 0 < sheet.table.rowCount() < everything
    assert all("latch" in name for name in words(sheet))
    sheet.search.clear()
    assert sheet.table.rowCount() == everything


def test_checks_are_asked_for_and_shown_as_they_come(shown, qtbot):
    sheet, state = shown
    with qtbot.waitSignal(sheet.check_wished, timeout=1000):
        sheet.check.click()
    state.begin(2)
    assert not sheet.check.isEnabled()
    assert not sheet.stop.isHidden()
    state.take("f", GOOD)
    state.take("f", POOR)
    assert words(sheet) == ["peel load", "latch"]
    assert sheet.said.text() == "2 of 2 checks"
    with qtbot.waitSignal(sheet.stop_wished, timeout=1000):
        sheet.stop.click()
    state.end()
    assert words(sheet) == ["latch", "peel load"]
    assert words(sheet, 6) == ["FAIL", "pass"]
    assert sheet.table.item(0, 6).font().bold()
    assert not sheet.table.item(1, 6).font().bold()
    assert sheet.check.isEnabled()
    assert sheet.stop.isHidden()


def test_closing_gives_up_the_checks(shown, qtbot):
    sheet, _ = shown
    with qtbot.waitSignal(sheet.stop_wished, timeout=1000):
        sheet.close()


@pytest.mark.parametrize(
    ("width", "height", "scale"), [(963, 722, 1.0), (963, 722, 1.25), (1805, 1015, 1.714)]
)
@pytest.mark.parametrize("chapter", [NUMBERS, CHECKS])
def test_every_word_can_be_read_whole(shown, width, height, scale, chapter):
    sheet, state = shown
    look = Look(scale=scale)
    sheet.setStyleSheet(look.sheet())
    dress(sheet, look)
    sheet.resize(width, height)
    state.begin(2)
    state.take("f", GOOD)
    state.end()
    state.show(chapter)
    sheet.show()
    sheet.refit()
    assert sheet.width() <= width  # nothing asks for more room than the window has
    table = sheet.table
    assert table.columnCount() == len(state.page().heads)
    assert sum(table.columnWidth(k) for k in range(table.columnCount())) <= table.viewport().width() + 1
    assert table.fontMetrics().height() >= 17 * scale
    # wrapped words need no more height than their line has; 3 px either side is the style's own margin
    metrics = table.fontMetrics()
    for row in range(table.rowCount()):
        for column in range(table.columnCount()):
            room = QRect(0, 0, table.columnWidth(column) - 6, 10_000)
            needed = metrics.boundingRect(room, Qt.TextFlag.TextWordWrap, table.item(row, column).text())
            assert table.rowHeight(row) >= needed.height(), table.item(row, column).text()
