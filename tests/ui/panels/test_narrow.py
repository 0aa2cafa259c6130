"""Large type in a small window: nothing is cut or covered, the line of moments can be hit."""

import pytest

pytest.importorskip("PySide6")

from PySide6.QtWidgets import QVBoxLayout, QWidget

from ui.panels.look import Look
from ui.panels.pieces import dress
from ui.panels.scrub import LINE_LEAST_PX, Moments, ScrubBar
from ui.panels.section import SectionPanel


def shown(qtbot, panel, width, height, scale):
    """Show a panel in a window of a size [px] with type of a scale."""
    window = QWidget()
    qtbot.addWidget(window)
    column = QVBoxLayout(window)
    column.setContentsMargins(0, 0, 0, 0)
    column.addWidget(panel)
    column.addStretch(1)
    look = Look(scale=scale)
    window.setStyleSheet(look.sheet())
    dress(window, look)
    window.setFixedSize(width, height)
    window.show()
    qtbot.waitExposed(window)
    return window


@pytest.mark.parametrize(("width", "scale"), [(1276, 1.0), (1276, 1.5), (1020, 1.0), (1020, 2.0), (800, 1.5)])
def test_no_button_of_the_bar_is_cut_and_the_line_keeps_its_room(qapp, qtbot, width, scale):
    bar = ScrubBar()
    window = shown(qtbot, bar, width, 300, scale)
    bar.show_opening(0.1)
    for can_stop, can_go_on in ((False, False), (True, False), (False, True)):
        bar.show_able(
            can_open=True, can_run=True, can_stop=can_stop, can_go_on=can_go_on, verb="Open the tips"
        )
        bar.show_moments(Moments(3, 1, (), ((2, "seam parting"),), (0.0, 0.5, 1.0)), "50 mm  2.4 kN")
        qtbot.wait(20)
        assert bar.line.width() >= LINE_LEAST_PX - 8
        for part in (bar.open, bar.go, bar.stop, bar.go_on, bar.play, bar.now, bar.pace):
            if part.isVisible():
                assert part.width() >= part.sizeHint().width(), (part, width, scale)
        assert window.isVisible() and bar.open.isVisible()
        assert bar.stop.isVisible() == can_stop
    if (width, scale) == (1276, 1.0):
        assert not bar._line_above
        assert bar.pace.isVisible()
    if (width, scale) == (1020, 2.0):
        assert bar._line_above


def test_the_bar_is_one_row_again_where_there_is_room(qapp, qtbot):
    bar = ScrubBar()
    window = shown(qtbot, bar, 1020, 300, 2.0)
    assert bar._line_above
    window.setFixedSize(1900, 300)
    qtbot.wait(20)
    assert not bar._line_above
    assert bar.line.y() < bar.open.y() + bar.open.height()
    assert bar.halt.isVisible()


@pytest.mark.parametrize(("room", "drawn"), [(520, True), (330, False)])
def test_the_drawing_goes_before_it_lies_over_words(qapp, qtbot, room, drawn):
    panel = SectionPanel()
    window = shown(qtbot, panel, 480, 900, 2.0)
    words = "All of the push goes into the outer skin's lip."
    panel.show_words(
        seat="Tip one: hem lip. Tip two: pillar edge.", split=words, share=1.0, depth="5 mm", tilt="45"
    )
    panel.set_room(room)
    panel.setMaximumHeight(room)
    qtbot.wait(20)
    assert panel.drawing.isVisible() == drawn
    assert window.isVisible()
    parts = [part for part in panel.children() if isinstance(part, QWidget) and part.isVisible()]
    boxes = [part.geometry() for part in parts]
    for k, box in enumerate(boxes):
        assert panel.rect().contains(box)
        assert not any(box.intersects(other) for other in boxes[k + 1 :]), parts[k]
