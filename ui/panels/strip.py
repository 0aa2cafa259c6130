"""The strips on the stage's edge: layers and colours above it, what the pointer is on below it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QSizePolicy, QToolButton, QVBoxLayout, QWidget

from ui.panels.legend import Legend
from ui.panels.look import GRID, Look
from ui.panels.pieces import FittedButton, label
from ui.panels.see_row import ToolButtons
from ui.state.tongue import tr
from ui.state.view_options import COLOUR_WORDS, LAYER_WORDS, SHOWN_WORDS, SIDE_LAYERS, Shown, ViewOptions

NAMES = {layer: layer for layer in LAYER_WORDS} | {"latch_hinges": "latch", "trim_glass": "trim"}
"""Short names beside the keys, where there is room for all of them."""
ICONS = {layer: layer for layer in LAYER_WORDS} | {"latch_hinges": "latch"}

COLOURS_PX = 110
"""The list of colours is not narrower [px at scale 1]."""


class LayerButton(QToolButton):
    """One layer: its drawing, its key, and how it is shown."""

    def __init__(self, layer: str, key: int) -> None:
        super().__init__()
        self._layer, self._key, self._shown = layer, key, Shown.SOLID
        self._look = Look()
        self.setObjectName("bare")
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.setText(str(key))

    def show_name(self, much: str) -> None:
        """Say what the layer is beside its key ("name"), the key ("key"), or leave its drawing alone ("")."""
        style = Qt.ToolButtonStyle
        self.setToolButtonStyle(style.ToolButtonTextBesideIcon if much else style.ToolButtonIconOnly)
        self.setText(f"{self._key} {tr(NAMES[self._layer])}" if much == "name" else str(self._key))

    def set_look(self, look: Look) -> None:
        """Draw the icon in the theme's tones."""
        self._look = look
        side = round(18 * look.scale)
        self.setIconSize(QSize(side, side))
        self.show_mode(self._shown)

    def show_mode(self, mode: Shown) -> None:
        """Show how the layer is drawn: full ink, quiet with a dotted key, or faint."""
        self._shown = mode
        tone = {Shown.SOLID: "ink", Shown.SEE_THROUGH: "quiet", Shown.OFF: "fill"}[mode]
        self.setIcon(self._look.icon(ICONS[self._layer], tone))
        edge = {Shown.SOLID: "solid", Shown.SEE_THROUGH: "dashed", Shown.OFF: "none"}[mode]
        ink, word = self._look.colour("ink").name(), self._look.colour(tone).name()
        self.setStyleSheet(
            "QToolButton { border: none; border-radius: 0; padding: 2px 4px; "
            f"border-bottom: 2px {edge} {ink}; color: {word}; }} "
            f"QToolButton:focus {{ border: 2px solid {ink}; border-radius: 4px; padding: 0 2px 0 2px; }}"
        )
        words = f"{tr(LAYER_WORDS[self._layer])}: {tr(SHOWN_WORDS[mode])} ({tr('key')} {self._key})"
        self.setToolTip(words[0].upper() + words[1:])
        self.setAccessibleName(words)


class LayerStrip(QWidget):
    """Above the stage: the layers, the colours and their bar.

    Attributes
    ----------
    layer_wished : emitted with the layer whose following mode is asked for
    colour_wished : emitted with a colour mode
    """

    layer_wished = Signal(str)
    colour_wished = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("strip")
        self._buttons = {layer: LayerButton(layer, key) for key, layer in enumerate(LAYER_WORDS, 1)}
        self.colours = QComboBox()
        self.colours.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.colours.setAccessibleName(tr("What the colours show"))
        for mode, words in COLOUR_WORDS.items():
            self.colours.addItem(tr(words), mode)
        self.legend = Legend()
        row, self._second = QHBoxLayout(), QHBoxLayout()
        self._first = row
        row.setSpacing(2)
        for layer, made in self._buttons.items():
            row.addWidget(made)
            made.clicked.connect(lambda _=False, layer=layer: self.layer_wished.emit(layer))
        self.tools = ToolButtons()
        row.addStretch(1)
        self._second.addStretch(1)
        for part in (self.tools, self.colours):
            row.addWidget(part)
        row.setContentsMargins(0, 0, 0, 0)
        self._in_two = False
        column = QVBoxLayout(self)
        column.setContentsMargins(GRID, 2, GRID, 2)
        column.setSpacing(2)
        column.addLayout(row)
        column.addLayout(self._second)
        column.addWidget(self.legend)
        self.colours.activated.connect(lambda index: self.colour_wished.emit(self.colours.itemData(index)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put tools and colours into a row of their own where one row is too narrow."""
        super().resizeEvent(event)
        self.fit()

    def fit(self) -> None:
        """Use one row where it holds everything, with the layers' names where it holds them, else two."""
        parts = (self.tools, self.colours)
        layers = [made for made in self._buttons.values() if not made.isHidden()]
        for much in ("name", "key"):
            for made in layers:
                made.show_name(much)
            needed = _row_px((*layers, *parts))
            if needed <= self.width():
                break
        in_two = needed > self.width()
        if _row_px(layers) > self.width():
            for made in layers:
                made.show_name("")
        if in_two != self._in_two:
            self._in_two = in_two
            for part in parts:
                (self._first if in_two else self._second).removeWidget(part)
                (self._second if in_two else self._first).addWidget(part)

    def least_px(self) -> int:
        """Return how narrow it may be: two rows, of each layer its drawing alone."""
        icons = sum(
            made.iconSize().width() + 2 * GRID for made in self._buttons.values() if not made.isHidden()
        )
        return max(icons + 2 * GRID, _row_px((self.tools,)) + self.colours.minimumWidth())

    def minimumSizeHint(self) -> QSize:
        """Ask for no more room than the narrowest wording needs."""
        return QSize(self.least_px(), super().minimumSizeHint().height())

    def set_look(self, look: Look) -> None:
        """Let the list of colours be as narrow as a word of it."""
        self.colours.setMinimumWidth(round(COLOURS_PX * look.scale))

    def show_side(self, on: bool) -> None:
        """Show the layers that only the whole side has, or not."""
        for layer in SIDE_LAYERS:
            self._buttons[layer].setVisible(on)
        self.fit()

    def show_options(self, options: ViewOptions) -> None:
        """Show the layers' modes and the colour mode."""
        for layer, made in self._buttons.items():
            made.show_mode(options.layers[layer])
        self.colours.setCurrentIndex(self.colours.findData(options.colour_mode))
        self.fit()


def _row_px(parts: Sequence[QWidget]) -> int:
    """Return how wide parts are in one row."""
    return sum(part.sizeHint().width() + 2 for part in parts) + 2 * GRID


class Readout(QWidget):
    """Below the stage: what the pointer is on, and what a click would do; at a mark an offer.

    Attributes
    ----------
    offer_wished : emitted when what is offered is asked for
    """

    offer_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("strip")
        self._offered = False
        self.offer = FittedButton("What going on costs against stopping to cut: both worked out")
        self.offer.setObjectName("bare")
        self.offer.clicked.connect(self.offer_wished)
        self.offer.hide()
        self.words = label("", "")
        self.words.setAccessibleName(tr("Under the pointer"))
        self._hint = label("", "quiet")
        self.words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * GRID, 2, 2 * GRID, 2)
        row.addWidget(self.words, 1)
        row.addWidget(self._hint)
        row.addWidget(self.offer, 3)
        self._hint.setAlignment(Qt.AlignmentFlag.AlignRight)

    def show_words(self, words: str) -> None:
        """Show what the pointer is on."""
        self.words.setText(words)
        self._fit()

    def show_hint(self, words: str, offer: Sequence[str] = ()) -> None:
        """Show what the next click or key does, or offer something, the longest wording first."""
        self._hint.setText(words)
        self._offered = bool(offer)
        self.offer.setVisible(self._offered)
        self._fit()
        if offer:
            self.layout().activate()  # what it says hangs on the room it has
            self.offer.say(*offer)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the words to another width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Leave the hint out where the two would run into each other."""
        needed = self.words.sizeHint().width() + self._hint.sizeHint().width() + 6 * GRID
        self._hint.setVisible(not self._offered and needed <= self.width())
