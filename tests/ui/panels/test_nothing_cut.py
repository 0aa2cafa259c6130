"""Large type in a small window, and other units: no word, button or bar is cut or squeezed to nothing."""

from types import SimpleNamespace

import pytest

pytest.importorskip("PySide6")

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import QComboBox, QLabel, QPushButton, QWidget

from sim.plan import Spread
from sim.units import Units
from ui.app import prepare_application
from ui.beside_side import BesideSide
from ui.colour_scale import scale_of
from ui.main_window import MainWindow
from ui.panels.legend import LEAST_BAR, Legend, Scale
from ui.panels.lesson import LessonPanel, StepWords
from ui.panels.look import GRID, Look
from ui.panels.pair import PairPage
from ui.panels.pieces import Foot, dress, unbroken
from ui.panels.plan import shortened
from ui.panels.reading import ReadingPanel
from ui.panels.room import beside_stage
from ui.panels.stages import VEIL_MS, Stages
from ui.stage_words import hint_words
from ui.state.reading import Reading, Share
from ui.state.view_options import ViewOptions

OUT = Scale(((0.0, "#000000"), (1.0, "#ffffff")), "100 mm into the car", "100 mm out of the car", 0.5)
STEPS = (
    StepWords("On the lip: the first thing that gave", "show", "708 mm of seam parted.", "Spent.", asks=True),
    StepWords("The same tips, deeper: what lets go first?", "show"),
)


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


def box(part, inside):
    return QRect(part.mapTo(inside, QPoint(0, 0)), part.size())


def test_a_lesson_at_double_type_is_not_cut_by_the_stage_in_a_small_window(qtbot):
    window, panel = MainWindow(), LessonPanel()
    qtbot.addWidget(window)
    window.left_pages.addWidget(panel)
    place = "operations, step 5 of 11, show"
    panel.show_lesson("First bite: edge against bend", place, STEPS, 0, notes=True, stale="")
    window.left_pages.setCurrentWidget(panel)
    window.resize(1024, 740)
    window.set_look(Look(scale=2.0))
    window.show()
    window.show_layout(ViewOptions(text_ratio=2.0, drawer="plan"))
    qtbot.wait(50)
    left = box(window.layers, window).left()
    for part in (*panel.findChildren(QLabel), *panel.findChildren(QPushButton)):
        if part.isVisible():
            assert box(part, window).right() <= left, part.text()
    for made in panel.findChildren(QPushButton):
        if made.isVisible():
            assert made.width() >= made.fontMetrics().horizontalAdvance(made.text())


def test_columns_leave_the_stage_its_controls():
    assert beside_stage(600, 300.0, 200.0) == (300, 200)
    assert beside_stage(250, 300.0, 200.0) == (150, 100)
    assert beside_stage(250, 0.0, 400.0) == (0, 250)


@pytest.mark.parametrize("width", [220, 320, 700])
def test_buttons_that_do_not_fit_beside_each_other_stand_below(qtbot, width):
    made = [QPushButton(words) for words in ("Run both", "Put it on this car", "One plan")]
    foot = Foot(made[:2], made[2:])
    holder = QWidget()
    qtbot.addWidget(holder)
    foot.setParent(holder)
    holder.setStyleSheet("* { font-size: 22px; }")
    holder.resize(width, 300)
    holder.show()
    foot.setGeometry(0, 0, width, 200)
    qtbot.wait(30)
    places = [box(part, foot) for part in made]
    assert all(not one.intersects(other) for one in places for other in places if one is not other)
    for part, place in zip(made, places, strict=True):
        assert part.width() >= part.sizeHint().width()
        assert place.right() <= width
    assert (places[0].top() == places[2].top()) is (width == 700)


def test_side_by_side_offers_nothing_before_it_knows_what_can_be_done(qtbot):
    page = PairPage()
    qtbot.addWidget(page)
    page.show()
    assert page.run.isHidden() and page.put_on.isHidden()


@pytest.mark.parametrize(("width", "below"), [(700, False), (330, True), (200, True)])
def test_the_words_of_a_colour_bar_leave_it_its_room(qtbot, width, below):
    legend = Legend()
    qtbot.addWidget(legend)
    legend.show_scale(OUT)
    legend.resize(width, legend.sizeHint().height())
    legend.show()
    qtbot.wait(20)
    legend.resize(width, legend.sizeHint().height())
    image = legend.grab().toImage()
    rows = range(image.height() // 2 if below else image.height())
    dark = [x for x in range(image.width()) if any(image.pixelColor(x, y).lightness() < 60 for y in rows)]
    wide = image.width() / image.devicePixelRatio()
    assert legend.height() >= (2.5 if below else 1.5) * Look().px("small")
    if below:  # the dark end begins at the very left: no word stands before it
        assert min(dark) <= 1
        assert wide >= width
    else:
        words = legend.fontMetrics().horizontalAdvance(OUT.low + OUT.high)
        assert wide - words >= LEAST_BAR * wide


def test_a_class_sees_what_the_colours_mean_and_only_then(qtbot):
    window = MainWindow()
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.set_look(Look())
    window.show()
    window.show_scale(OUT)
    window.show_layout(ViewOptions(stage_only=True))
    qtbot.wait(20)
    key = window._lower.key
    assert key.isVisible()
    assert key.sizeHint().height() >= Look().px("head")
    assert box(key, window).bottom() <= window.height()
    window.show_scale(Scale(words="Kept shut"))
    assert not key.isVisible()
    window.show_scale(OUT)
    window.show_layout(ViewOptions())
    assert not key.isVisible()
    assert window.layers.legend.isVisible()


@pytest.mark.parametrize("scale", [1.0, 1.5, 2.0])
def test_a_heading_over_a_long_number_is_not_cut(qtbot, scale):
    panel = ReadingPanel()
    qtbot.addWidget(panel)
    look = Look(scale=scale)
    panel.setStyleSheet(look.sheet())
    dress(panel, look)
    panel.set_look(look)
    panel.resize(round(320 * (1 + 0.45 * (scale - 1))), 700)
    panel.show()
    shown = Reading(shares=(Share("cutting", 132.0),), work_j=132.0, sprung_j=9.0, opening_m=0.1)
    panel.show_reading(shown, Units.IMPERIAL)
    qtbot.wait(30)
    heads = [part for part in panel.findChildren(QLabel) if part.text().startswith("Where this move")]
    (head,) = heads
    wrapped = QRect(0, 0, head.width(), 1000)
    need = head.fontMetrics().boundingRect(wrapped, Qt.TextFlag.TextWordWrap, head.text())
    assert head.height() >= need.height() - 2
    assert head.width() >= need.width()
    number = next(part for part in panel.findChildren(QLabel) if "sprung" in part.text())
    assert number.width() >= number.fontMetrics().horizontalAdvance(number.text())


@pytest.mark.parametrize("look", [Look(), Look(dark=True), Look(projector=True)])
def test_the_chosen_row_of_a_list_can_be_read(qapp, qtbot, look):
    """4.5:1, the least contrast of text in WCAG 2.1 (1.4.3)."""

    def luminance(colour):
        parts = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in colour.getRgbF()[:3])
        return sum(k * part for k, part in zip((0.2126, 0.7152, 0.0722), parts, strict=True))

    window, choice = QWidget(), QComboBox()
    qtbot.addWidget(window)
    choice.setParent(window)
    choice.addItems(["First", "Second"])
    window.setStyleSheet(look.sheet())
    window.show()
    choice.showPopup()
    qtbot.wait(30)
    view = choice.view()
    row = view.visualRect(view.currentIndex())
    image = view.window().grab(row.translated(view.mapTo(view.window(), QPoint(0, 0)))).toImage()
    choice.hidePopup()
    high, word = image.height(), choice.fontMetrics().horizontalAdvance("First")
    tones = [
        luminance(image.pixelColor(x, y)) for x in range(8, word) for y in range(high // 3, 2 * high // 3)
    ]
    ground = max(set(tones), key=tones.count)
    assert max((max(t, ground) + 0.05) / (min(t, ground) + 0.05) for t in tones) >= 4.5


def test_the_colour_bar_speaks_in_the_units_of_the_reader():
    options = SimpleNamespace(colour_mode="outboard", units=Units.IMPERIAL)
    locks = SimpleNamespace(hides=lambda _what: False)
    session = SimpleNamespace(view=SimpleNamespace(options=options), hides=locks.hides)
    assert scale_of(session).low.replace("\N{NO-BREAK SPACE}", " ") == "3.9 in into the car"


def test_a_number_keeps_its_unit_at_the_end_of_a_line():
    assert unbroken("over 737 mm; 12 % of 3.4 kN in 2 moves") == (
        "over 737\N{NO-BREAK SPACE}mm; 12\N{NO-BREAK SPACE}% of 3.4\N{NO-BREAK SPACE}kN in 2 moves"
    )


def test_other_metal_is_veiled_while_the_metal_asked_for_is_set_out(qtbot):
    view = QWidget()
    stages = Stages(view)
    qtbot.addWidget(stages)
    stages.resize(400, 300)
    stages.show()
    stages.show_veil("Setting out the door \u2026")
    assert not stages._veil.isVisible()  # metal that comes soon is not veiled first
    qtbot.waitUntil(stages._veil.isVisible, timeout=20 * VEIL_MS)
    assert stages._veil.geometry() == stages.rect()
    stages.resize(500, 300)
    assert stages._veil.width() == 500
    stages.show_veil("")
    assert not stages._veil.isVisible()
    qtbot.wait(VEIL_MS + 4 * GRID)
    assert not stages._veil.isVisible()


def test_a_card_that_is_cut_short_ends_with_a_whole_clause():
    told = (
        "The outer skin came away over 737 mm; the latch carried a third of it at most; clearance unchanged."
    )
    assert shortened(told, 200) == told
    assert shortened(told, 90) == told.split("; clearance")[0] + "."
    assert shortened(told, 60) == "The outer skin came away over 737 mm."
    assert shortened("The metal 1.5 m long was bent without an end", 20) == "The metal 1.5 m \u2026"


def test_while_a_run_goes_on_the_hint_says_how_to_stop_it_and_not_what_a_click_would_not_do():
    assert hint_words(Spread(), 1, steering=False, runs=True).startswith("Esc stops")
    assert hint_words(Spread(), 1, steering=False).startswith("Click the door's edge")


@pytest.mark.parametrize("aside", [True, False])
def test_one_plan_again_gives_up_the_plan_beside_and_no_run_of_its_own(aside):
    done = []
    note = SimpleNamespace
    session = note(beside=note(show=done.append), works_aside=aside, stop=lambda: done.append("stop"))
    pages = note(setCurrentWidget=lambda _page: None)
    window = note(right_pages=pages, reading=None, focus_stage=lambda: None)
    side = note(page_on=True, session=session, window=window, gone=lambda: None)
    side._pair, side._draw_later = (lambda _on: None), (lambda: None)
    BesideSide.away(side)
    assert done == ([None, "stop"] if aside else [None])
