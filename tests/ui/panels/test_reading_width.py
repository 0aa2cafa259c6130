"""The reading's headings beside their numbers: the column is never wider than its room, in any language."""

import pytest

pytest.importorskip("PySide6")

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QScrollArea

from sim.units import Units
from ui.app import prepare_application
from ui.panels.force_plot import NumberedAxis
from ui.panels.look import Look
from ui.panels.number_box import NumberBox
from ui.panels.pieces import dress
from ui.panels.reading import ReadingPanel
from ui.state import tongue
from ui.state.reading import Reading, Share

ROOM_PX = 320
"""Width of the reading in a window of 1280 pixels."""


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


@pytest.mark.parametrize("language", list(tongue.TONGUES))
def test_a_long_heading_gives_way_to_its_number(qapp, qtbot, language):
    tongue.speak(language)
    try:
        panel = ReadingPanel()
        qtbot.addWidget(panel)
        panel.resize(ROOM_PX, 600)
        dress(panel, Look())
        panel.show()
        shares = (Share("folding the outer skin", 1138.0),)
        shown = Reading(shares=shares, work_j=1070.0, sprung_j=68.0, opening_m=0.1, force_n=700.0)
        panel.show_reading(shown, Units.METRIC)
        qtbot.wait(20)
        inside = panel.findChild(QScrollArea).widget()
        assert "1070" in " ".join(part.text() for part in panel.findChildren(QLabel))
        assert inside.minimumSizeHint().width() <= ROOM_PX
    finally:
        tongue.speak(tongue.ENGLISH)


def test_axes_and_boxes_have_the_decimal_mark_of_the_language(qapp, qtbot):
    tongue.speak("de")
    try:
        axis, box = NumberedAxis("left"), NumberBox()
        qtbot.addWidget(box)
        assert axis.tickStrings([0.0, 0.5], 1.0, 0.5)[1] == "0,5"
        box.setDecimals(2)
        box.setRange(-5.0, 50.0)
        box.setSuffix("\N{NO-BREAK SPACE}mm")
        for typed in ("1,25", "1.25"):
            box.setValue(0.0)
            box.lineEdit().selectAll()
            QTest.keyClicks(box.lineEdit(), typed)
            QTest.keyClick(box, Qt.Key.Key_Return)
            assert box.value() == 1.25
            assert box.text() == "1,25\N{NO-BREAK SPACE}mm"
    finally:
        tongue.speak(tongue.ENGLISH)
