"""The page of the side and the person, and the curves of room: by mouse and keys, in three themes.

Source
------
[wcag-2.2] 1.4.11: a line that says something stands out from its ground by 3 : 1; 1.4.3: a word by 4.5 : 1.
"""

from dataclasses import replace

import msgspec
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication

from sim.plan import Car, Press, Spread
from sim.units import Units
from sim.whole_side import WholeSide
from tests.ui.state.test_room_now import SIDE, timeline
from ui.panels.car_form import SIDE_PAGE, CarForm
from ui.panels.curve_choice import EXIT, FORCE, ROOM
from ui.panels.curve_sheet import CurveSheet
from ui.panels.look import Look
from ui.panels.pieces import dress
from ui.panels.reading import ReadingPanel
from ui.panels.room_plot import INKS, STROKES
from ui.state.locks import veiled
from ui.state.reading import Reading
from ui.state.room_curve import PARTS
from ui.state.room_now import room_now
from ui.state.side_fields import SIDE_FIELDS, applies

LOOKS = {"light": Look(), "dark": Look(dark=True), "projector": Look(projector=True, scale=24.0 / 14.0)}


@pytest.fixture
def form(qtbot):
    made = CarForm()
    qtbot.addWidget(made)
    made.resize(340, 620)
    made.show_form(SIDE, Spread().tool, Units.METRIC)
    made.turn_to(SIDE_PAGE)
    made.show()
    qtbot.waitExposed(made)
    return made


def seen(form):
    return {name for name, row in form.side_fields.rows.items() if not row.isHidden()}


def write(qtbot, box, text):
    box.setFocus()
    box.selectAll()
    qtbot.keyClicks(box, text)
    qtbot.keyClick(box, Qt.Key.Key_Return)


def test_only_what_makes_sense_with_the_extent_is_shown(form):
    assert seen(form) == {field.name for field in SIDE_FIELDS if applies(SIDE, field.name)}
    form.show_form(Car(), Spread().tool, Units.METRIC, (Spread(), Press()))
    assert seen(form) == {field.name for field in SIDE_FIELDS if applies(Car(), field.name)}
    assert not form.side_fields.note.isHidden()
    assert form.side_fields.unfit.text().startswith("Move 2 needs the whole side")
    form.show_form(SIDE, Spread().tool, Units.METRIC, (Spread(), Press()))
    assert form.side_fields.unfit.isHidden()


def test_a_number_written_is_wished_in_si_with_a_label(form, qtbot):
    with qtbot.waitSignal(form.car_wished) as caught:
        write(qtbot, form.side_fields.rows["occupant_gap_m"].box, "85")
    car, words = caught.args
    assert car.whole_side.occupant_gap_m == 0.085
    assert words == "Changed: hip to inner panel"
    form.show_form(SIDE, Spread().tool, Units.IMPERIAL)
    with qtbot.waitSignal(form.car_wished) as caught:
        write(qtbot, form.side_fields.rows["occupant_gap_m"].box, "5")
    assert caught.args[0].whole_side.occupant_gap_m == pytest.approx(0.127, rel=1e-6)


def test_what_cannot_be_used_stays_as_written_with_the_remedy_below_it(form, qtbot):
    row = form.side_fields.rows["occupant_gap_m"]
    with qtbot.assertNotEmitted(form.car_wished):
        write(qtbot, row.box, "900")
    said = "900 mm is too much; use 0 to 500 mm: 80 to 150 beside a sound door."
    assert row.trouble.text() == row.box.accessibleDescription() == said
    assert not row.trouble.isHidden()
    # another field is changed meanwhile: what was written is not lost
    other = msgspec.structs.replace(SIDE, whole_side=WholeSide(occupant="male_p95"))
    form.show_form(other, Spread().tool, Units.METRIC)
    assert row.box.value() == 900.0
    assert not row.trouble.isHidden()
    # and once it is mended nothing is said any more
    with qtbot.waitSignal(form.car_wished):
        write(qtbot, row.box, "100")
    assert row.trouble.isHidden()
    # a step back that changes the field shows what the car has
    write(qtbot, row.box, "900")
    undone = msgspec.structs.replace(SIDE, whole_side=WholeSide(occupant_gap_m=0.2))
    form.show_form(undone, Spread().tool, Units.METRIC)
    assert row.box.value() == 200.0
    assert row.trouble.isHidden()


def test_a_choice_that_cannot_be_made_goes_back_to_what_the_car_has(form, qtbot):
    fine = msgspec.structs.replace(SIDE, extent="door", lattice_spacing_m=0.045, rail_wall_m=0.0015)
    fine = msgspec.structs.replace(fine, whole_side=WholeSide(rocker_wall_m=0.0015))
    form.show_form(fine, Spread().tool, Units.METRIC)
    row = form.side_fields.rows["extent"]
    row.box.setFocus()
    with qtbot.assertNotEmitted(form.car_wished):
        qtbot.keyClick(row.box, Qt.Key.Key_Space)
        view = row.box.view()
        qtbot.keyClick(view, Qt.Key.Key_Down)
        qtbot.keyClick(view, Qt.Key.Key_Return)
    assert row.box.currentData() == "door"
    assert "first make them 60 mm or larger" in row.trouble.text()


def test_steps_stay_within_the_range_and_a_wheel_over_the_form_changes_nothing(form, qtbot):
    box = form.side_fields.rows["occupant_lean_rad"].box
    box.setFocus()
    for _ in range(12):
        qtbot.keyClick(box, Qt.Key.Key_Up)
    assert box.value() == pytest.approx(60.0, abs=1e-3)
    other = form.side_fields.rows["car_kg"].box
    before = other.value()
    for turned in (other, form.side_fields.rows["occupant"].box):
        place = QPointF(turned.rect().center())
        event = QWheelEvent(
            place, QPointF(turned.mapToGlobal(place.toPoint())), QPoint(), QPoint(0, -120),
            Qt.MouseButton.NoButton, Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(turned, event)
    assert other.value() == before


def test_every_field_has_a_name_for_a_screen_reader_and_is_reached_by_tab(form):
    reached, widget = [], form
    for _ in range(400):
        widget = widget.nextInFocusChain()
        reached.append(widget)
        if widget is form:
            break
    for name, row in form.side_fields.rows.items():
        assert row.box.accessibleName() == row.field.words, name
        assert row.box in reached
        assert row.box.focusPolicy() & Qt.FocusPolicy.TabFocus
    places = [reached.index(form.side_fields.rows[field.name].box) for field in SIDE_FIELDS]
    assert places == sorted(places)


@pytest.mark.parametrize("look", LOOKS.values(), ids=list(LOOKS))
@pytest.mark.parametrize(("width", "height"), [(340, 620), (600, 430)])
def test_no_word_of_the_page_is_cut(form, qtbot, look, width, height):
    form.resize(width if look.scale == 1.0 else max(width, 440), height)
    form.setStyleSheet(look.sheet())
    dress(form, look)
    shown = [row.words for row in form.side_fields.rows.values() if not row.isHidden()]

    def cut():
        low = [w.text() for w in shown if w.height() < w.heightForWidth(w.width()) - 1]
        long = [w.text() for w in shown if longest(w) > w.width() + 1]
        pages = form.page_buttons.buttons()
        return low + long + [b.text() for b in pages if advance(b, b.text()) > b.width()]

    def nothing_is_cut():
        assert cut() == []

    qtbot.waitUntil(nothing_is_cut, timeout=3000)  # laid out again after the look, in its own time


def advance(widget, text):
    return widget.fontMetrics().horizontalAdvance(text)


def longest(widget):
    return max(advance(widget, word) for word in widget.text().split())


# ---- the curves ------------------------------------------------------------------------------------------


CURVED = Reading(
    sentence="The metal bent.", opening_m=0.03, force_n=8.0e3, curve=((0.0, 0.0), (0.03, 8e3)), cursor=1
)


@pytest.fixture
def panel(qtbot):
    made = ReadingPanel()
    qtbot.addWidget(made)
    made.resize(320, 900)
    made.show_reading(
        replace(CURVED, room=room()),
        Units.METRIC,
    )
    made.show()
    qtbot.waitExposed(made)
    return made


def room():
    return room_now(timeline(), SIDE)


def test_the_curve_is_chosen_by_mouse_by_key_and_in_turn(panel, qtbot):
    assert panel._plots.currentIndex() == FORCE
    qtbot.mouseClick(panel.curves.buttons.button(ROOM), Qt.MouseButton.LeftButton)
    assert panel._plots.currentIndex() == ROOM
    assert (panel._force.text(), panel._now.text()) == ("Room to the person, mm", "lower\u00a0leg 40\u00a0mm")
    panel.curves.buttons.button(EXIT).setFocus()
    qtbot.keyClick(panel.curves.buttons.button(EXIT), Qt.Key.Key_Space)
    assert panel._plots.currentIndex() == EXIT
    assert (panel._force.text(), panel._now.text()) == ("Exit width, mm", "none yet")
    panel.next_curve()
    assert panel._plots.currentIndex() == FORCE
    panel.next_curve()
    panel.show_reading(panel._reading, Units.IMPERIAL)
    assert (panel._force.text(), panel._now.text()) == (
        "Room to the person, in",
        "lower\u00a0leg 1.6\u00a0in",
    )


def test_a_click_on_a_curve_of_room_asks_for_the_moment_there(panel, qtbot):
    panel.next_curve()
    qtbot.wait(30)
    plot = panel._room_plot
    for way_m, place in ((0.0, 1), (0.09, 6), (0.1, 7)):
        spot = QPoint(round(plot._x(way_m)), plot.height() // 2)
        with qtbot.waitSignal(panel.place_wished) as caught:
            qtbot.mouseClick(plot, Qt.MouseButton.LeftButton, pos=spot)
        assert caught.args == [place]


def test_nothing_of_room_is_on_the_window_while_it_is_shut(panel):
    panel.next_curve()
    for lock in ("answers", "ladder"):
        locks = {"answers": False, "ladder": False, "arrow": False, "aiming": False} | {lock: True}
        panel.show_reading(veiled(panel._reading, **locks), Units.METRIC)
        assert panel._plots.currentIndex() == FORCE or panel._pushed.isHidden()
        assert panel.curves.isHidden()
        assert "leg" not in panel._now.text()
        panel.show_reading(
            Reading(sentence="x", curve=CURVED.curve, room=room()), Units.METRIC
        )  # and what was chosen is shown again once it may be seen
        assert panel._plots.currentIndex() == ROOM


def test_a_screen_reader_is_told_every_number_of_the_moment(panel):
    panel.next_curve()
    said = panel._room_plot.accessibleDescription()
    assert said.startswith("Room: head")
    assert all(part in said for part in PARTS)


def test_lines_are_told_apart_without_colour():
    assert len(set(STROKES.values())) == len(PARTS)
    assert set(STROKES) == set(PARTS)
    assert set(INKS) == set(PARTS) - {"head"}


def luminance(colour):
    parts = [v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in colour.getRgbF()[:3]]
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]


@pytest.mark.parametrize("look", LOOKS.values(), ids=list(LOOKS))
def test_words_and_lines_stand_out_from_their_ground(panel, look):
    dress(panel, look)
    ground = luminance(look.colour("paper"))
    for part in PARTS:
        ink = luminance(panel._room_plot._ink(part))
        light, dark = max(ink, ground), min(ink, ground)
        assert (light + 0.05) / (dark + 0.05) >= 4.5, part


def test_the_large_window_shows_all_three_and_asks_for_the_moment_clicked(qtbot):
    sheet = CurveSheet(None)
    qtbot.addWidget(sheet)
    sheet.take_look(LOOKS["projector"])
    sheet.show_reading(replace(CURVED, room=room()), Units.METRIC)
    sheet.show()
    qtbot.waitExposed(sheet)
    qtbot.wait(60)
    assert [part.isHidden() for part, _, _ in sheet._parts] == [False, False, False]
    with qtbot.waitSignal(sheet.place_wished) as caught:
        spot = QPoint(round(sheet.exit._x(0.1)), sheet.exit.height() // 2)
        qtbot.mouseClick(sheet.exit, Qt.MouseButton.LeftButton, pos=spot)
    assert caught.args == [7]
    locks = {"answers": True, "ladder": True, "arrow": False, "aiming": False}
    sheet.show_reading(veiled(replace(CURVED, room=room()), **locks), Units.METRIC)
    assert [part.isHidden() for part, _, _ in sheet._parts] == [True, True, True]
    assert not sheet._none.isHidden()
