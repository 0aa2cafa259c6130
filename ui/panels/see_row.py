"""The row under the layers: the plane, parts drawn apart, measuring, pen and arrows; one at a time."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QHBoxLayout,
    QSizePolicy,
    QSlider,
    QStackedWidget,
    QWidget,
)

from ui.panels.look import GRID, Look
from ui.panels.pieces import IconButton, button, label
from ui.state.measuring import KIND_WORDS
from ui.state.seeing import PEN_WORDS, TOOL_WORDS, TOOLS, WAY_WORDS, WAYS
from ui.state.tongue import tr

SLIDER_PX = 120
STEPS = 1000
"""Steps of a slider from end to end."""


class SeeRow(QWidget):
    """The controls of the tool that is out; hidden while none is.

    Attributes
    ----------
    way_wished : emitted with the way the plane is to lie
    place_wished : emitted with the plane's place as a share of the way from end to end
    asunder_wished : emitted with how far apart the parts are to be drawn, 0 .. 1
    kind_wished : emitted with a kind of measurement, or of stroke
    back_wished, clear_wished, done : take back the last, take away all, put the controls away
    """

    way_wished = Signal(str)
    place_wished = Signal(float)
    asunder_wished = Signal(float)
    kind_wished = Signal(str)
    stroke_wished = Signal(str)
    back_wished = Signal()
    clear_wished = Signal()
    done = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("strip")
        self._look = Look()
        self.pages = QStackedWidget()
        self.pages.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        makers = {
            "section": self._section,
            "asunder": self._asunder,
            "measure": self._measure,
            "pen": self._pen,
        }
        self._page = {tool: self.pages.addWidget(makers[tool]()) for tool in TOOLS}
        away = IconButton("close", "Put these controls away (Esc)")
        away.clicked.connect(self.done)
        row = QHBoxLayout(self)
        row.setContentsMargins(GRID, 0, GRID, 2)
        row.addWidget(self.pages, 1)
        row.addWidget(away)
        self.hide()

    def _row(self, *parts: QWidget) -> QWidget:
        page = QWidget()
        row = QHBoxLayout(page)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GRID)
        for part in parts:
            row.addWidget(part, 1 if isinstance(part, QSlider) else 0)
        return page

    def _slider(self, name: str) -> QSlider:
        made = QSlider(Qt.Orientation.Horizontal)
        made.setRange(0, STEPS)
        made.setPageStep(STEPS // 20)
        made.setSingleStep(STEPS // 200)
        made.setAccessibleName(tr(name))
        made.setMinimumWidth(SLIDER_PX)
        made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        return made

    def _choices(self, words: dict[str, str], wish) -> tuple[QWidget, dict]:
        box, group, made = QWidget(), QButtonGroup(self), {}
        row = QHBoxLayout(box)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GRID)
        for name, word in words.items():
            made[name] = button(word, "choice")
            made[name].setCheckable(True)
            made[name].setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
            made[name].clicked.connect(lambda _=False, name=name: wish(name))
            group.addButton(made[name])
            row.addWidget(made[name])
        return box, made

    def _section(self) -> QWidget:
        words = {way: WAY_WORDS[way] for way in WAYS}
        box, self._ways = self._choices(words, lambda way: self.way_wished.emit(way))
        for way, made in self._ways.items():
            made.setAccessibleName(tr(WAY_WORDS[way]))
            made.setToolTip(tr(WAY_WORDS[way]))
        self.place = self._slider("Where the section plane stands")
        self.place.valueChanged.connect(lambda value: self.place_wished.emit(value / STEPS))
        self._place_words = label("", "quiet")
        return self._row(box, self.place, self._place_words)

    def _asunder(self) -> QWidget:
        self.apart = self._slider("How far the parts are drawn apart")
        self.apart.valueChanged.connect(lambda value: self.asunder_wished.emit(value / STEPS))
        return self._row(label("Together", "quiet"), self.apart, label("Apart: not where they are", "quiet"))

    def _measure(self) -> QWidget:
        self.kinds = QComboBox()
        self.kinds.setAccessibleName(tr("What to measure"))
        self.kinds.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        for kind, words in KIND_WORDS.items():
            self.kinds.addItem(tr(words), kind)
        self.kinds.activated.connect(lambda index: self.kind_wished.emit(self.kinds.itemData(index)))
        self._measured = label("")
        self._measured.setAccessibleName(tr("Measured"))
        self._measured.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        page = self._row(self.kinds, self._measured, *self._tidy())
        page.layout().setStretch(1, 1)
        return page

    def _pen(self) -> QWidget:
        box, self._strokes = self._choices(PEN_WORDS, lambda kind: self.stroke_wished.emit(kind))
        words = label("Drag on the picture; saved beside the plan", "quiet")
        words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        page = self._row(box, words, *self._tidy())
        page.layout().setStretch(1, 1)
        return page

    def _tidy(self) -> tuple[QWidget, QWidget]:
        back, clear = IconButton("undo", "Take the last one back"), button("Clear")
        back.clicked.connect(self.back_wished)
        clear.clicked.connect(self.clear_wished)
        return back, clear

    def sizeHint(self) -> QSize:
        """Return room for one line of controls."""
        return QSize(240, super().sizeHint().height())

    def set_look(self, look: Look) -> None:
        """Leave room for the chosen word, which stands bold."""
        self._look = look
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Look again which words there is room for."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Name the ways in full where there is room, else by their first word; never one over the other."""
        bold = QFontMetrics(self._look.font("small", strong=True))
        room = (
            self.width()
            - SLIDER_PX
            - self._place_words.sizeHint().width()
            - round(9 * GRID * self._look.scale)
        )
        full = [tr(WAY_WORDS[way]) for way in self._ways]
        need = sum(bold.horizontalAdvance(words) + 3 * GRID for words in full)
        for made, words in zip(self._ways.values(), full, strict=True):
            made.setText(words if need <= room else words.split(" ")[0])
        for made in (*self._ways.values(), *self._strokes.values()):
            made.setMinimumWidth(bold.horizontalAdvance(made.text()) + GRID)

    # showing ----------------------------------------------------------------------------------------------

    def show_tool(self, tool: str | None) -> None:
        """Bring the controls of a tool out, or put them away."""
        self.setVisible(tool is not None)
        if tool is not None:
            self.pages.setCurrentIndex(self._page[tool])

    def show_plane(self, way: str, share: float, words: str) -> None:
        """Show how the plane lies and where."""
        self._ways[way].setChecked(True)
        _put(self.place, share)
        self._place_words.setText(words)
        self._fit()

    def show_asunder(self, ratio: float) -> None:
        """Show how far apart the parts are drawn."""
        _put(self.apart, ratio)

    def show_measure(self, kind: str, words: str) -> None:
        """Show what is measured, and the result or what to click next."""
        self.kinds.setCurrentIndex(self.kinds.findData(kind))
        self._measured.setText(words)
        self._measured.setToolTip(tr(words))

    def show_stroke(self, kind: str) -> None:
        """Show what a drag draws."""
        self._strokes[kind].setChecked(True)


class ToolButtons(QWidget):
    """The drawings that bring a tool's controls out.

    Attributes
    ----------
    wished : emitted with the tool;  beside_wished : emitted when two plans are to stand side by side
    """

    wished = Signal(str)
    beside_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        self.beside = IconButton("beside", "Two plans side by side, or one again (B)")
        self.beside.clicked.connect(self.beside_wished)
        row.addWidget(self.beside)
        self._buttons = {tool: IconButton(tool, TOOL_WORDS[tool]) for tool in TOOLS}
        for tool, made in self._buttons.items():
            made.setCheckable(True)
            made.clicked.connect(lambda _=False, tool=tool: self.wished.emit(tool))
            row.addWidget(made)
        self._look, self._tool = Look(), None

    def set_look(self, look: Look) -> None:
        """Mark the tool that is out in the theme's ink."""
        self._look = look
        self.show_tool(self._tool)

    def show_tool(self, tool: str | None) -> None:
        """Mark the tool whose controls are out."""
        self._tool = tool
        ink = self._look.colour("ink").name()
        for name, made in (("beside", self.beside), *self._buttons.items()):
            made.setChecked(name == tool)
            edge = f"2px solid {ink}" if name == tool else "2px solid transparent"
            made.setStyleSheet(
                f"QToolButton {{ border: none; border-radius: 0; padding: 2px 4px; border-bottom: {edge}; }} "
                f"QToolButton:focus {{ border: 2px solid {ink}; border-radius: 4px; padding: 0 2px; }}"
            )


def _put(slider: QSlider, share: float) -> None:
    slider.blockSignals(True)
    slider.setValue(round(share * STEPS))
    slider.blockSignals(False)
