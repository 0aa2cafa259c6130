"""Words that once were cut, covered or turned round: the lower third, the section's row, a count of hands."""

import itertools

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QPushButton

from ui.main_window import MainWindow
from ui.panels.choice import ChoiceRow
from ui.panels.finder import Finder
from ui.panels.look import Look
from ui.panels.see_row import SeeRow
from ui.state.finder import entries
from ui.state.view_options import ViewOptions

SENTENCE = "The latch let go at 7 mm with the skin still on its seam; 88 mm more clearance."
QUESTIONS = (
    "What did you say would happen, and what happened?\n\n"
    "What was different between the two bites, and what followed from that one thing?\n\n"
    "What would tell you on a real door, in the first seconds, that you are on the wrong side of the bend?"
)


@pytest.mark.parametrize(("width", "height"), [(1024, 768), (1280, 720), (1920, 1080)])
@pytest.mark.parametrize("scale", [1.0, 24.0 / 14.0, 2.0])
@pytest.mark.parametrize("hint", ["", "One display: the notes lie behind key F7; F5 ends."])
def test_the_words_under_the_stage_are_whole_and_leave_the_metal_half_the_window(
    qtbot, width, height, scale, hint
):
    window = MainWindow()
    qtbot.addWidget(window)
    window.resize(width, height)
    window.set_look(Look(scale=scale, projector=True))
    window.show()
    window.show_layout(ViewOptions(projector=True, stage_only=True))
    for words in (SENTENCE, QUESTIONS):
        window.show_lower_third(words)
        window.notice.say(hint)
        qtbot.wait(30)
        lower = window._lower.words
        sides = lower.contentsMargins()
        need = lower.height_of(lower.fontInfo().pixelSize(), lower.width() - sides.left() - sides.right())
        assert need + sides.top() + sides.bottom() <= lower.height()
        assert lower.mapTo(window, QPoint(0, lower.height())).y() <= window.height()
        assert lower.height() <= 0.5 * height
    assert lower.fontInfo().pixelSize() >= Look(scale=scale).px("small")


@pytest.mark.parametrize("width", [560, 700, 805, 1400])
def test_no_word_of_the_sections_row_lies_over_another(qtbot, width):
    row = SeeRow()
    qtbot.addWidget(row)
    look = Look(scale=24.0 / 14.0, projector=True)
    row.setStyleSheet(look.sheet())
    row.set_look(look)
    row.resize(width, 60)
    row.show_tool("section")
    row.show_plane("level", 0.5, "360 mm above the sill")
    qtbot.wait(20)
    buttons = [b for b in row.pages.currentWidget().findChildren(QPushButton) if b.isVisible()]
    assert [b.accessibleName() for b in buttons] == ["Level", "Across the car", "Along the car"]
    assert [b.text().split()[0] for b in buttons] == ["Level", "Across", "Along"]
    if width >= 805:
        places = [(b.mapTo(row, QPoint(0, 0)).x(), b) for b in buttons]
        for (x, one), (after, _) in itertools.pairwise(places):
            assert x + one.width() <= after
            assert one.fontMetrics().horizontalAdvance(one.text()) <= one.width()
    assert (buttons[1].text() == "Across the car") is (width == 1400)


def test_hands_are_counted_in_the_order_in_which_they_are_typed(qtbot):
    row = ChoiceRow("The seam parts", counted=True)
    qtbot.addWidget(row)
    row.counted.connect(lambda hands: row.show_state(on=False, hands=hands, share=1.0, fixed=False))
    row.show()
    row.activateWindow()
    row.hands.setFocus()
    qtbot.wait(20)
    qtbot.keyClicks(row.hands.lineEdit(), "14")
    assert row.hands.value() == 14
    row.hands.clearFocus()
    qtbot.mouseClick(row.hands.lineEdit(), Qt.MouseButton.LeftButton)
    row.hands.setFocus()
    row.hands.selectAll()
    qtbot.keyClicks(row.hands.lineEdit(), "209")
    assert row.hands.value() == 209


@pytest.mark.parametrize("scale", [1.0, 24.0 / 14.0])
def test_rows_of_the_finder_are_as_high_as_their_type_and_stand_in_columns(qtbot, scale):
    window = MainWindow()
    qtbot.addWidget(window)
    window.resize(1920, 1080)
    window.set_look(Look(scale=scale))
    window.show()
    finder = Finder(window, entries([]), lambda _: True)
    finder.ask()
    qtbot.wait(30)
    rows = [finder.list.itemWidget(finder.list.item(k)) for k in range(12)]
    for row in rows:
        label = row.layout().itemAt(0).widget()
        assert row.height() >= label.fontMetrics().height()
    places = {row.layout().itemAt(1).widget().x() for row in rows}
    assert len(places) == 1
    finder.close()
