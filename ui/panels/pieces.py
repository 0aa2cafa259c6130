"""Small parts the panels share: labels of a size, hairlines, buttons that say what happens."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QLabel,
    QMenu,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QToolButton,
    QWidget,
)

from ui.panels.look import Look
from ui.state.tongue import tr

PADDING_PX = 12
"""What a button's frame and padding take at either side."""
GROUNDS = ("page", "column", "strip", "footer", "scrub", "notice", "prompt")


_UNIT = re.compile(r"(?<=\d) (?=(?:mm|cm|m|in|inches|kN|N|lbf|ft|J|kJ|kg|MPa|s)\b|%)")


def unbroken(words: str) -> str:
    """Return words in which a number keeps its unit where a line is broken."""
    return _UNIT.sub("\u00a0", words)


class Spoken:
    """Words of a control pass through the one hook for languages."""

    def setText(self, text: str) -> None:
        """Show a text in the language spoken."""
        super().setText(tr(text))  # type: ignore[misc]

    def setToolTip(self, text: str) -> None:
        """Tell more in the language spoken."""
        super().setToolTip(tr(text))  # type: ignore[misc]

    def setAccessibleName(self, text: str) -> None:
        """Be read in the language spoken."""
        super().setAccessibleName(tr(text))  # type: ignore[misc]


class Label(Spoken, QLabel):
    """A label."""


class Fitted:
    """Says the longest of several wordings there is room for, or the last whatever the room."""

    _wordings: tuple[str, ...] = ("",)

    def _room(self) -> int:
        raise NotImplementedError

    def _fit(self) -> None:
        room, width = self._room(), self.fontMetrics().horizontalAdvance  # type: ignore[attr-defined]
        found = next((words for words in self._wordings if width(words) <= room), self._wordings[-1])
        if found != self.text():  # type: ignore[attr-defined]
            self.setText(found)  # type: ignore[attr-defined]

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Look again what there is room for."""
        super().resizeEvent(event)  # type: ignore[misc]
        self._fit()


class FittedLabel(Fitted, Label):
    """A label that says as much as it has room for: the longest of several wordings that is not cut."""

    def __init__(self) -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        # its words ask for no room: it takes what others leave
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def say(self, *wordings: str) -> None:
        """Say one of several wordings, the longest first; the last is said whatever the room."""
        self._wordings = wordings or ("",)
        self.setToolTip(self._wordings[0])
        self._fit()

    def _room(self) -> int:
        return self.contentsRect().width()


class Button(Spoken, QPushButton):
    """A push button."""


class FittedButton(Fitted, Button):
    """A button that says as much as it has room for: the longest of several wordings that is not cut.

    Parameters
    ----------
    tip : what happens, in words; the longest wording stands above it
    """

    def __init__(self, tip: str) -> None:
        super().__init__()
        self._tip = tr(tip)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def say(self, *wordings: str) -> None:
        """Say one of several wordings, the longest first; the last is said whatever the room."""
        self._wordings = tuple(tr(words) for words in wordings)
        super().setToolTip(f"{self._wordings[0]}\n{self._tip}")
        self.setAccessibleName(self._wordings[0])
        self._fit()

    def _room(self) -> int:
        return self.width() - 2 * PADDING_PX


def label(text: str = "", name: str = "", *, wrap: bool = False) -> QLabel:
    """Return a label; `name` picks its size from the style sheet."""
    made = Label()
    made.setText(text)
    made.setObjectName(name)
    made.setWordWrap(wrap)
    made.setTextFormat(Qt.TextFormat.PlainText)
    if wrap:
        made.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
    return made


class Hairline(QFrame):
    """A line between two parts, thicker for a projector."""

    def __init__(self, *, upright: bool) -> None:
        super().__init__()
        self.setObjectName("line")
        self._upright = upright
        self.set_look(Look())

    def set_look(self, look: Look) -> None:
        """Take the theme's thickness."""
        size = 2 if look.projector else 1
        if self._upright:
            self.setFixedWidth(size)
        else:
            self.setFixedHeight(size)


class Foot(QWidget):
    """The buttons under a column: beside each other, or one below the other where they would be cut.

    Parameters
    ----------
    left, right : what stands at either side
    """

    def __init__(self, left: Sequence[QWidget], right: Sequence[QWidget]) -> None:
        super().__init__()
        self._parts = (*left, *right)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        for part in left:
            self._row.addWidget(part)
        self._row.addStretch(1)
        for part in right:
            self._row.addWidget(part)

    def _wide(self) -> list[int]:
        shown = [part for part in self._parts if not part.isHidden()]
        return [max(part.sizeHint().width(), part.minimumWidth()) for part in shown]

    def _sides(self) -> int:
        sides = self._row.contentsMargins()
        return sides.left() + sides.right()

    def minimumSizeHint(self) -> QSize:
        """Return room for the widest button alone."""
        return QSize(max(self._wide(), default=0) + self._sides(), super().minimumSizeHint().height())

    def event(self, event: QEvent) -> bool:
        """Look again whether the row holds them, at another width or with other words."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.LayoutRequest, QEvent.Type.Show):
            wide = self._wide()
            need = sum(wide) + self._row.spacing() * len(wide) + self._sides()
            ways = QBoxLayout.Direction
            way = ways.LeftToRight if need <= self.width() else ways.TopToBottom
            if way is not self._row.direction():
                self._row.setDirection(way)
                self.updateGeometry()
        return super().event(event)


def line(*, upright: bool = False) -> QFrame:
    """Return a hairline."""
    return Hairline(upright=upright)


def column_area(name: str, inside: QWidget) -> QScrollArea:
    """Return a frameless area in which a column scrolls up and down; ``name`` is read for it, translated."""
    area = QScrollArea()
    area.setAccessibleName(tr(name))
    area.setWidgetResizable(True)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setWidget(inside)
    return area


def button(text: str, name: str = "", tip: str = "") -> QPushButton:
    """Return a push button that takes the focus by Tab only, so that keys stay with the stage."""
    made = Button()
    made.setText(text)
    made.setObjectName(name)
    made.setToolTip(tip)
    made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    return made


class IconButton(Spoken, QToolButton):
    """A button with one of the program's drawings.

    Parameters
    ----------
    icon : name of the drawing
    tip : what happens, in words (also for screen readers)
    """

    def __init__(self, icon: str, tip: str, *, size: int = 18) -> None:
        super().__init__()
        self._icon, self._size = icon, size
        self.setObjectName("bare")
        self.setToolTip(tip)
        self.setAccessibleName(tip)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    def set_look(self, look: Look) -> None:
        """Draw the icon in the ink of the theme, as large as the type asks for."""
        self.setIcon(look.icon(self._icon))
        side = round(self._size * look.scale)
        self.setIconSize(QSize(side, side))

    def set_icon(self, icon: str, look: Look) -> None:
        """Show another drawing."""
        self._icon = icon
        self.set_look(look)


def dress(widget: QWidget, look: Look) -> None:
    """Give every part below a widget the look."""
    for child in widget.findChildren(QWidget):
        if child.objectName() in GROUNDS:
            # A plain widget paints its sheet's ground only when told to.
            child.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        setter = getattr(child, "set_look", None)
        if callable(setter):
            setter(look)


def set_flag(widget: QWidget, name: str, value: bool) -> None:
    """Set a property that the style sheet looks at, and apply the sheet again if it changed."""
    if widget.property(name) != value:
        widget.setProperty(name, value)
        widget.style().unpolish(widget)
        widget.style().polish(widget)


def fill(menu: QMenu, words: tuple[str, ...], wish: Callable[[int], object]) -> list[QAction]:
    """Put words into a menu, each of which wishes its own number; return their actions."""
    for old in menu.actions():  # one of them may be what asked for this: it goes once its own event is over
        menu.removeAction(old)
        old.deleteLater()
    actions = []
    for index, word in enumerate(words):
        # made here: an action that Qt makes can come back as the wrapper of something else that died
        action = QAction(tr(word), menu)
        menu.addAction(action)
        action.triggered.connect(lambda _=False, index=index: wish(index))
        actions.append(action)
    menu.setEnabled(bool(words))
    return actions
