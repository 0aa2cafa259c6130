"""A window for many pictures that belong together: moments, views, sizes, styles. It stops nothing."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QLayout,
    QListWidget,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID
from ui.panels.pieces import button, label, line
from ui.state.figure_choice import CAMERA_NAMES, SIZE_CHOICES, Choice, view_words
from ui.state.figure_list import STYLE_WORDS
from ui.state.tongue import tr
from ui.state.view_options import COLOUR_WORDS

FORMAT_WORDS = {"png": "PNG", "svg": "SVG: words as type"}
LIST_ROWS = 4


class FiguresSheet(QDialog):
    """Shows a list of figures as it is put together, and how far its making is.

    Attributes
    ----------
    moment_wished : emitted when the moment shown is to be taken
    view_wished : emitted with camera, colours, whether dark, whether parts are named
    moment_unwanted, view_unwanted : emitted with an index
    ticked : emitted with "sizes", "styles" or "formats" and the names that are ticked
    open_wished, make_wished, stop_wished : the buttons
    """

    moment_wished = Signal()
    view_wished = Signal(str, str, bool, bool)
    moment_unwanted = Signal(int)
    view_unwanted = Signal(int)
    ticked = Signal(str, object)
    open_wished = Signal()
    make_wished = Signal()
    stop_wished = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Matching pictures"))
        self._running = False
        self.moments, self.views = self._list("Moments taken"), self._list("Views added")
        self.camera, self.colours = QComboBox(), QComboBox()
        for box, words, name in (
            (self.camera, CAMERA_NAMES, "Camera of the view"),
            (self.colours, COLOUR_WORDS, "Colours of the view"),
        ):
            box.setAccessibleName(tr(name))
            for key, text in words.items():
                box.addItem(tr(text), key)
        self.dark, self.names = self._tick("Dark ground"), self._tick("Names of parts")
        self._boxes: dict[str, dict[str, QCheckBox]] = {}
        self.told = label("", "", wrap=True)
        self.make = button("Make the pictures\u2026", "primary")
        self.stop = button("Stop")
        self.open = button("Open a list\u2026")
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        column.setSpacing(GRID)
        column.addLayout(self._halves())
        column.addWidget(line())
        column.addLayout(self._ticks())
        column.addWidget(line())
        column.addWidget(self.told)
        column.addLayout(self._foot())

    # --- building ----------------------------------------------------------------------------------------

    def _list(self, name: str) -> QListWidget:
        made = QListWidget()
        made.setObjectName("reading")
        made.setAccessibleName(tr(name))
        made.setTextElideMode(Qt.TextElideMode.ElideMiddle)
        made.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        return made

    def _tick(self, words: str) -> QCheckBox:
        made = QCheckBox(tr(words))
        made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        return made

    def _halves(self) -> QGridLayout:
        take = self._push("Take the moment shown", self.moment_wished.emit)
        add = self._push(
            "Add this view",
            lambda: self.view_wished.emit(
                self.camera.currentData(),
                self.colours.currentData(),
                self.dark.isChecked(),
                self.names.isChecked(),
            ),
        )
        drop_moment = self._push("Take out", lambda: self._unwanted(self.moments, self.moment_unwanted))
        drop_view = self._push("Take out", lambda: self._unwanted(self.views, self.view_unwanted))
        grid = QGridLayout()
        grid.setSpacing(GRID)
        grid.addWidget(label("Moments", "heading"), 0, 0)
        grid.addWidget(label("Views, with the layers as they are shown now", "heading"), 0, 1)
        grid.addWidget(label("Go to a moment on the stage, then take it.", "quiet", wrap=True), 1, 0)
        grid.addLayout(self._row(self.camera, self.colours), 1, 1)
        grid.addLayout(self._row(self.dark, self.names), 2, 1)
        grid.addWidget(self.moments, 2, 0, 2, 1)
        grid.addWidget(self.views, 3, 1)
        grid.addLayout(self._row(take, drop_moment), 4, 0)
        grid.addLayout(self._row(add, drop_view), 4, 1)
        for place in (0, 1):
            grid.setColumnStretch(place, 1)
        grid.setRowStretch(3, 1)
        return grid

    def _row(self, *parts: QWidget) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(GRID)
        for part in parts:
            row.addWidget(part)
        row.addStretch(1)
        return row

    def _push(self, words: str, wish: Callable[[], object]) -> QWidget:
        made = button(words)
        made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        made.setAutoDefault(False)
        made.clicked.connect(lambda _=False: wish())
        return made

    def _unwanted(self, shown: QListWidget, wish: object) -> None:
        if shown.currentRow() >= 0:
            wish.emit(shown.currentRow())  # type: ignore[attr-defined]

    def _ticks(self) -> QLayout:
        sizes = {size.name: f"{size.width_px} \u00d7 {size.height_px}" for size in SIZE_CHOICES}
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * GRID)
        for row, (group, heading, words) in enumerate((
            ("sizes", "Sizes", sizes),
            ("styles", "Styles", STYLE_WORDS),
            ("formats", "Files", FORMAT_WORDS),
        )):  # fmt: skip
            grid.addWidget(label(heading, "quiet"), row, 0)
            boxes = self._boxes[group] = {}
            for place, (name, text) in enumerate(words.items(), 1):
                box = boxes[name] = self._tick(text[:1].upper() + text[1:])
                box.clicked.connect(lambda _=False, group=group: self._turned(group))
                grid.addWidget(box, row, place)
        grid.setColumnStretch(5, 1)
        return grid

    def _turned(self, group: str) -> None:
        self.ticked.emit(group, tuple(n for n, box in self._boxes[group].items() if box.isChecked()))

    def _foot(self) -> QHBoxLayout:
        foot = QHBoxLayout()
        foot.setSpacing(GRID)
        foot.addWidget(self.open)
        foot.addStretch(1)
        foot.addWidget(self.stop)
        foot.addWidget(self.make)
        for made, wish in (
            (self.open, self.open_wished),
            (self.stop, self.stop_wished),
            (self.make, self.make_wished),
        ):
            made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            made.setAutoDefault(False)
            made.clicked.connect(wish)
        return foot

    # --- showing -----------------------------------------------------------------------------------------

    def show_choice(self, choice: Choice, said: str, *, running: bool) -> None:
        """Show what is chosen, and what is said of it: a count, how far the making is, or what came."""
        for shown, words in (
            (self.moments, [taken.told for taken in choice.taken]),
            (self.views, [view_words(view) for view in choice.views]),
        ):
            _fill(shown, words)
        ticked: Mapping[str, tuple[str, ...]] = {
            "sizes": tuple(size.name for size in choice.sizes),
            "styles": choice.styles,
            "formats": choice.formats,
        }
        for group, boxes in self._boxes.items():
            for name, box in boxes.items():
                box.setChecked(name in ticked[group])
                box.setEnabled(not running)
        self.told.setText(said or choice.missing or choice.told)
        self.make.setEnabled(not running and not choice.missing)
        self.stop.setVisible(running)
        self._running = running

    def closeEvent(self, event: QCloseEvent) -> None:
        """Give up pictures under way: nobody is looking."""
        if self._running:
            self.stop_wished.emit()
        super().closeEvent(event)


def _fill(shown: QListWidget, words: list[str]) -> None:
    if [shown.item(k).text() for k in range(shown.count())] == words:
        return
    here = shown.currentRow()
    shown.clear()
    shown.addItems([tr(word) for word in words])
    for k, text in enumerate(words):
        shown.item(k).setToolTip(tr(text))
    shown.setCurrentRow(min(max(here, 0), len(words) - 1))
