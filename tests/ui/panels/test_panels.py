"""Each panel shows values and asks for changes; showing is never taken for a wish."""

import dataclasses

import msgspec
import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QFocusEvent, QImage, QKeyEvent
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton, QScrollArea, QVBoxLayout, QWidget

from sim.builds import BUILDS
from sim.outcome import rung_words
from sim.plan import Car, Tool
from sim.record import Clearance, Rung
from sim.units import Units, length
from ui.panels.bars import Ladder
from ui.panels.car_form import CarForm
from ui.panels.caution import CautionPage
from ui.panels.hold import SETTLE_MS, HoldKey
from ui.panels.legend import Legend, Scale
from ui.panels.lesson_sheets import DrillSheet
from ui.panels.look import Look
from ui.panels.notice import NoticeBar
from ui.panels.pieces import dress
from ui.panels.plan import PlanPanel
from ui.panels.reading import ReadingPanel
from ui.panels.scrub import Moments, ScrubBar
from ui.panels.strip import LayerStrip
from ui.state import tongue
from ui.state.cards import Card
from ui.state.drill_log import Drill
from ui.state.locks import veiled
from ui.state.reading import Reading, Share
from ui.state.tongue import caution as text
from ui.state.view_options import LAYER_WORDS, Shown, ViewOptions


def tones(widget):
    """Return the grey values of a widget's picture, shape (height, width)."""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    flat = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return flat[:, : image.width()].copy()


READING = Reading(
    sentence="The metal bent.",
    rungs=(Rung("seam", "seam parting", 1.0), Rung("latch", "latch free", 0.25)),
    shares=(Share("folding the outer skin", 30.0), Share("peeling the seam", 10.0)),
    work_j=40.0,
    opening_m=0.05,
    force_n=8.1e3,
    curve=((0.0, 0.0), (0.025, 9e3), (0.05, 8.1e3)),
    marks=((0.025, 9e3, "seam parting"),),
    cursor=2,
    clearance=Clearance(0.062, (0, 0, 0), (0, 0, 0), "chest"),
    clearance_change_m=-0.012,
)


LONG = (
    "The outer skin came away over 464 mm and tore over 64 mm; the latch carried little of what it can hold "
    "at most; clearance unchanged. The tips were on the hem lip, so the push went into the outer skin and "
    "its seam."
)


def test_the_reading_is_written_in_the_units_chosen(qtbot):
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    panel.show_reading(READING, Units.METRIC)
    assert panel.sentence.text() == "The metal bent."
    assert panel._now.text() == "8.1\u00a0kN at 50\u00a0mm"
    assert panel._clearance.text() == "Metal to occupant: 62\u00a0mm, 12\u00a0mm\u00a0less than at the start"
    panel.show_reading(READING, Units.IMPERIAL)
    assert panel._now.text() == "1820\u00a0lbf at 2.0\u00a0in"
    assert panel.plot.getAxis("bottom").labelText.endswith(", in")


def test_sharp_edges_are_counted_in_the_reading_and_shut_with_the_answers(qtbot):
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    panel.show_reading(READING, Units.METRIC)
    assert panel._edges.isHidden()
    torn = dataclasses.replace(READING, sharp_edges=4, cautions=("belt anchor behind trim",))
    panel.show_reading(torn, Units.METRIC)
    assert panel._edges.text() == "Sharp edges: 4\nCautions so far: belt anchor behind trim"
    assert not panel._edges.isHidden()
    panel.show_reading(veiled(torn, answers=True, ladder=False, arrow=False, aiming=False), Units.METRIC)
    assert panel._edges.isHidden()


def test_a_body_pressed_in_has_a_travel_and_no_tips(qtbot):
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    for pressed, head, axis in (
        (True, "Force of the body", "travel"),
        (False, "Force of the tips", "opening"),
        ("ram", "Force of the ram", "travel"),
    ):
        shown = dataclasses.replace(READING, pressed=pressed is True, ram=pressed == "ram")
        panel.show_reading(shown, Units.METRIC)
        assert panel._force.text() == head
        assert panel.plot.getAxis("bottom").labelText.startswith(axis)


def test_a_ladder_bar_is_as_long_as_its_share(qtbot):
    ladder = Ladder()
    qtbot.addWidget(ladder)
    ladder.resize(200, ladder.sizeHint().height())
    ladder.show_reading(READING)
    row = ladder._row()
    image = tones(ladder)
    dark = [int((image[index * row + row - 4] < 140).sum()) for index in range(2)]
    # one pixel at either end is shared with the ground
    assert dark == pytest.approx([200, 50], abs=2)


def test_the_plot_asks_for_the_moment_clicked(qtbot):
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    panel.resize(320, 700)
    panel.show()
    panel.show_reading(READING, Units.METRIC)
    qtbot.wait(20)
    plot = panel.plot
    spot = plot.mapFromScene(plot.plotItem.vb.mapViewToScene(QPointF(24.0, 4.0)))
    with qtbot.waitSignal(panel.moment_wished) as caught:
        qtbot.mouseClick(plot.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert caught.args == [1]


def test_cards_come_go_and_are_picked(qtbot):
    panel = PlanPanel()
    qtbot.addWidget(panel)
    panel.set_look(Look())
    cards = tuple(Card(f"Spread {i}", "5 mm deep", "", "", i == 0) for i in range(3))
    panel.show_plan("Title", cards, "edge")
    assert panel.edge.isChecked()
    assert not panel.contrast.isChecked()
    assert len(panel._cards) == 3
    with qtbot.waitSignal(panel.picked) as caught:
        qtbot.mouseClick(panel._cards[1], Qt.MouseButton.LeftButton)
    assert caught.args == [1]
    with qtbot.waitSignal(panel.unwanted) as caught:
        qtbot.mouseClick(panel._cards[2]._cross, Qt.MouseButton.LeftButton)
    assert caught.args == [2]
    panel.show_plan("Title", cards[:1], "")
    assert len(panel._cards) == 1


def test_the_line_goes_to_the_place_pressed_and_snaps_to_events(qtbot):
    bar = ScrubBar()
    qtbot.addWidget(bar)
    bar.resize(1000, 60)
    bar.show()
    bar.show_moments(Moments(101, 0, (1,), ((50, "latch free"),)), "")
    line, asked = bar.line, []
    bar.position_wished.connect(asked.append)
    for x in (line._x(20), line._x(50) + 7, line.width() + 40):
        qtbot.mousePress(line, Qt.MouseButton.LeftButton, pos=QPoint(round(min(x, line.width() - 1)), 12))
    assert asked == [20, 50, 100]


def test_the_number_to_run_to_keeps_its_length_when_units_change(qtbot):
    bar = ScrubBar()
    qtbot.addWidget(bar)
    bar.show_opening(0.0508)
    bar.set_units(Units.IMPERIAL)
    assert bar.opening.text() == "2.0\u00a0in"
    with qtbot.waitSignal(bar.run_wished) as caught:
        bar.show_able(can_open=True, can_run=True, can_stop=False, can_go_on=False, verb="Open the tips")
        qtbot.mouseClick(bar.go, Qt.MouseButton.LeftButton)
    assert caught.args[0] == pytest.approx(0.0508, rel=1e-12)


def test_where_nothing_is_opened_no_opening_is_asked_for(qtbot):
    bar = ScrubBar()
    qtbot.addWidget(bar)
    bar.show_opening(0.05)
    assert not bar.opening.isHidden() and bar.go.text() == "Run to"
    bar.show_opening(None)
    assert bar.opening.isHidden() and bar.go.text() == "Run"
    bar.show_opening(0.05)
    assert not bar.opening.isHidden() and bar.opening.value() == 50


def test_the_ready_plans_buttons_say_where_they_lead(qtbot):
    panel = PlanPanel()
    qtbot.addWidget(panel)
    names = []
    for ready in ("edge", "contrast", ""):
        panel.show_plan("Title", (), ready)
        names.append((panel.edge.text(), panel.contrast.text()))
    assert names[0] == ("Edge attack", "Try the contrast")
    assert names[1] == ("Edge attack", "The contrast")
    assert names[2] == ("To the edge attack", "To the contrast")


def test_a_rung_says_nothing_twice():
    assert rung_words("seam", "seam parting") == "seam: parting"
    assert rung_words("upper hinge", "hinge free") == "upper hinge: free"
    assert rung_words("bar foot rear", "bar foot free") == "bar foot rear: free"
    assert rung_words("outer skin", "tip shearing through") == "outer skin: tip shearing through"
    assert rung_words("crease", "crease") == "crease"


@pytest.mark.parametrize(("scale", "width", "height"), [(1.0, 320, 618), (1.25, 516, 597)])
def test_the_whole_reading_fits_beside_the_smallest_stage(qtbot, scale, width, height):
    """What 1280 x 720 leaves less menu, scrub bar and footer: the force is seen with no scrolling."""
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    look = Look(False, scale)
    panel.setStyleSheet(look.sheet())
    dress(panel, look)
    panel.set_room(720 / scale)
    panel.resize(width, height)
    panel.show()
    panel.show_reading(dataclasses.replace(READING, sentence=LONG), Units.METRIC)
    qtbot.wait(20)
    area = panel.findChild(QScrollArea)
    assert area.verticalScrollBar().maximum() == 0


def test_showing_the_form_is_no_wish_and_a_change_is_one(qtbot):
    form = CarForm()
    qtbot.addWidget(form)
    wishes = []
    form.car_wished.connect(lambda car, label: wishes.append((car, label)))
    form.tool_wished.connect(lambda tool, label: wishes.append((tool, label)))
    form.show_form(Car(seam="welded", skin_thickness_m=0.0009), Tool(tip_width_m=0.03), Units.METRIC)
    assert wishes == []
    form.skin.setValue(0.8)
    assert wishes[0][0] == Car(seam="welded", skin_thickness_m=0.0008)
    form.tip_width.setValue(60)
    assert wishes[1][0] == Tool(tip_width_m=0.06)
    form.metal.setCurrentIndex(1)
    form.metal.activated.emit(1)
    assert wishes[2][0] == Car(seam="welded", skin_thickness_m=0.0009, metal="alloy")


def test_the_form_refuses_in_a_sentence_and_shows_the_car_as_it_is(qtbot):
    form = CarForm()
    qtbot.addWidget(form)
    wishes, troubles = [], []
    form.car_wished.connect(lambda car, label: wishes.append((car, label)))
    form.trouble.connect(troubles.append)
    form.show_form(BUILDS["composite skin (illustrative, assumed)"], Tool(), Units.METRIC)
    boxes = form.fields.boxes
    assert "assumed" in form.fields.note.text()
    assert boxes["metal"].currentText().endswith("(illustrative, assumed)")
    boxes["build"].setCurrentIndex(0)
    boxes["build"].activated.emit(0)
    assert wishes == []
    assert "illustrative" in troubles[-1]
    assert boxes["build"].currentData() == "composite skin (illustrative, assumed)"
    welded = boxes["build"].findData("welded steel")
    boxes["build"].activated.emit(welded)
    assert wishes == [(BUILDS["welded steel"], "Took a ready build")]
    form.show_form(BUILDS["welded steel"], Tool(), Units.METRIC)
    assert boxes["metal"].findData("composite") == -1
    assert form.fields.numbers["seam_energy_j_per_m"].isHidden()
    assert not form.fields.numbers["weld_peel_n"].isHidden()
    assert form.fields.numbers["weld_peel_n"].suffix() == "\u00a0kN"
    form.fields.numbers["weld_peel_n"].setValue(2.0)
    assert wishes[-1][0].weld_peel_n == 2000.0


def test_a_bad_curve_is_a_sentence_and_a_good_one_a_tool(qtbot):
    form = CarForm()
    qtbot.addWidget(form)
    form.show_form(Car(), Tool(), Units.METRIC)
    troubles, tools = [], []
    form.trouble.connect(troubles.append)
    form.tool_wished.connect(lambda tool, _: tools.append(tool))
    form.rows[3][1].setText("much")
    qtbot.mouseClick(form.use, Qt.MouseButton.LeftButton)
    assert "force of point 4 is not a number" in troubles[0]
    assert tools == []
    form.rows[3][1].setText("30")
    qtbot.mouseClick(form.use, Qt.MouseButton.LeftButton)
    assert troubles[1] == ""
    assert tools[0] == msgspec.structs.replace(
        Tool(), force_n=(*Tool().force_n[:3], 30e3, *Tool().force_n[4:])
    )


def test_layers_show_their_mode_in_words_too(qtbot):
    strip = LayerStrip()
    qtbot.addWidget(strip)
    strip.show_options(ViewOptions().with_layer("bar", Shown.SEE_THROUGH))
    assert strip._buttons["bar"].toolTip() == "Bar: see-through (key 3)"
    with qtbot.waitSignal(strip.layer_wished) as caught:
        qtbot.mouseClick(strip._buttons["seam"], Qt.MouseButton.LeftButton)
    assert caught.args == ["seam"]
    assert list(strip._buttons) == list(LAYER_WORDS)


def test_the_legend_draws_its_ends_and_hides_without_colours(qtbot):
    legend = Legend()
    qtbot.addWidget(legend)
    legend.resize(400, 24)
    legend.show_scale(Scale(((0.0, "#000000"), (1.0, "#ffffff")), "in", "out", 0.5))
    row = tones(legend)[12]
    assert int(row.min()) < 20
    legend.show_scale(Scale())
    assert legend.isHidden()


def test_the_notice_says_a_sentence_and_offers_a_report_only_for_a_fault(qtbot):
    bar = NoticeBar()
    qtbot.addWidget(bar)
    bar.say("The tip is in the air.")
    assert not bar.isHidden()
    assert bar._copy.isHidden()
    bar.say("Something went wrong.", "Traceback")
    assert not bar._copy.isHidden()
    bar.say("")
    assert bar.isHidden()


def test_the_caution_says_what_must_be_said(qtbot):
    """The points every training aid of the trade states: common practice, no source."""
    page = CautionPage()
    qtbot.addWidget(page)
    page.show_text("caution", "I have read this")
    words = (page._title.text() + " " + page._body.text()).lower()
    points = (
        "teaching model, does not exist, instructor, never instead, never use it at an incident, procedures, "
        "rescue sheet, restraint, high voltage, glass, sharp edges, oil under pressure, not a promise"
    )
    for point in (*points.split(", "), "geometry, not injury"):
        assert point in words, point
    assert text("line") == "Teaching model - not a real car - local procedure first"
    with qtbot.waitSignal(page.read):
        qtbot.mouseClick(page.done, Qt.MouseButton.LeftButton)


@pytest.fixture
def held(qtbot):
    """Return a window with a button and a field, its hold key, and what that has said."""
    window = QWidget()
    window.field, window.button = QLineEdit(), QPushButton("x")
    column = QVBoxLayout(window)
    column.addWidget(window.button)
    column.addWidget(window.field)
    qtbot.addWidget(window)
    window.show()
    qtbot.waitExposed(window)
    window.activateWindow()
    window.setFocus()
    key = HoldKey(window)
    said = []
    key.pressed.connect(lambda: said.append("pressed"))
    key.released.connect(lambda: said.append("released"))
    yield window, said
    QApplication.instance().removeEventFilter(key)


def send(window, kind, *, repeat=False):
    event = QKeyEvent(kind, Qt.Key.Key_Space, Qt.KeyboardModifier.NoModifier, " ", repeat)
    QApplication.sendEvent(window, event)


def test_a_key_that_repeats_is_pressed_once_and_let_go_once(held, qtbot):
    window, said = held
    send(window, QEvent.Type.KeyPress)
    for marked in (True, False, True, False):
        send(window, QEvent.Type.KeyRelease, repeat=marked)
        send(window, QEvent.Type.KeyPress, repeat=marked)
    qtbot.wait(2 * SETTLE_MS)
    assert said == ["pressed"]
    send(window, QEvent.Type.KeyRelease)
    qtbot.waitUntil(lambda: said == ["pressed", "released"], timeout=2000)


def test_losing_the_window_lets_go_at_once(held):
    window, said = held
    send(window, QEvent.Type.KeyPress)
    QApplication.sendEvent(window.button, QEvent(QEvent.Type.WindowDeactivate))  # as a plot put away is told
    assert said == ["pressed"]
    QApplication.sendEvent(window, QEvent(QEvent.Type.WindowDeactivate))
    assert said == ["pressed", "released"]


def test_a_focus_lost_to_another_window_lets_go_and_a_disabled_button_does_not(held):
    window, said = held
    send(window, QEvent.Type.KeyPress)
    out = QEvent.Type.FocusOut
    QApplication.sendEvent(window.button, QFocusEvent(out, Qt.FocusReason.OtherFocusReason))
    assert said == ["pressed"]
    QApplication.sendEvent(window.button, QFocusEvent(out, Qt.FocusReason.ActiveWindowFocusReason))
    assert said == ["pressed", "released"]


def test_a_space_typed_into_a_field_opens_nothing(held, qtbot):
    window, said = held
    window.field.setFocus()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is window.field, timeout=3000)
    qtbot.keyClicks(window.field, "a b")
    assert said == []
    assert window.field.text() == "a b"


@pytest.mark.parametrize("units", list(Units))
def test_the_plot_writes_its_numbers_in_the_unit_it_names(qtbot, units):
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    panel.show_reading(READING, units)
    axis = panel.plot.getAxis("bottom")
    assert axis.autoSIPrefixScale == 1.0
    assert panel.plot.plotItem.vb.viewRange()[0][1] == pytest.approx(length(0.05, units)[0], rel=0.05)


def test_a_tool_is_chosen_from_the_crews_list_and_kept_under_a_name_typed(qtbot):
    form = CarForm()
    qtbot.addWidget(form)
    taken, kept = [], []
    form.tool_wished.connect(lambda tool, label: taken.append((tool, label)))
    form.tool_fields.keep_wished.connect(kept.append)
    narrow = Tool(name="narrow tips", tip_width_m=0.02)
    form.tool_fields.show_kept((narrow,))
    form.show_form(Car(), Tool(), Units.METRIC)
    box = form.tool_fields.box
    assert [box.itemText(i) for i in range(box.count())] == [Tool().name, "narrow tips"]
    box.setCurrentIndex(1)
    box.activated.emit(1)
    assert taken == [(narrow, "Took the narrow tips")]
    form.show_form(Car(), narrow, Units.METRIC)
    assert form.tool_fields.drop.isEnabled()
    form.tool_fields.numbers["friction_ratio"].setValue(0.55)
    rough = Tool(name="narrow tips", tip_width_m=0.02, friction_ratio=0.55)
    assert taken[-1] == (rough, "Changed the tool's friction")
    form.show_form(Car(), taken[-1][0], Units.METRIC)
    assert box.currentText().endswith("(this plan's own)")
    form.tool_fields.name.setText("grip tips")
    form.tool_fields.keep.click()
    assert kept == [Tool(name="grip tips", tip_width_m=0.02, friction_ratio=0.55)]


def test_numbers_beside_a_low_plot_stand_clear_of_each_other(qtbot):
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    panel.show_reading(dataclasses.replace(READING, curve=((0.0, 0.0), (0.08, 5600.0))), Units.METRIC)
    panel.plot.resize(240, 80)
    panel.plot.plotItem.layout.activate()
    axis = panel.plot.getAxis("left")
    low, high = axis.range
    apart = axis.tickSpacing(low, high, axis.height())[0][0] / (high - low) * axis.height()
    assert apart > panel._look.px("small")


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_drill_log_goes_at_the_second_press_alone(qapp, language):
    written = Drill("2026-11-26", "First bite", "lip", "0" * 64, "4", "seam parting", "latch free")
    tongue.speak(language)
    try:
        parent = QWidget()
        sheet, wished = DrillSheet(parent), []
        sheet.delete_wished.connect(lambda: wished.append(True))
        for _ in range(2):
            sheet.show_drills("", "", [written], can_write=True)
            sheet._delete.click()
            assert wished == []  # shown anew, it asks anew
        sheet._delete.click()
        assert wished == [True]
        parent.deleteLater()
    finally:
        tongue.speak(tongue.ENGLISH)
