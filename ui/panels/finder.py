"""Two windows about the actions: type words and do what is found; every key on one sheet."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QHideEvent, QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID
from ui.panels.pieces import label
from ui.state.finder import Entry, find, sheet
from ui.state.tongue import tr

WIDTH_PX, HEIGHT_PX = 700, 480
LIST_KEYS = (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown)
PLACE_ROOM, KEYS_ROOM = "Tip and moments", "Ctrl+Shift+M"
"""What the columns of menus and keys have room for."""
NOT_NOW = "not now"


class Finder(QDialog):
    """A field for words, and the actions they lead to.

    Parameters
    ----------
    entries : every action there is
    able : tells by name whether an action can be done now

    Attributes
    ----------
    chosen : emitted with the name of the action to do
    """

    chosen = Signal(str)

    def __init__(self, parent: QWidget, entries: Sequence[Entry], able: Callable[[str], bool]) -> None:
        super().__init__(parent)
        self._entries, self._able = tuple(entries), able
        self._awaits_keys = False
        self.setWindowTitle(tr("Find an action"))
        self.field, self.list = QLineEdit(), QListWidget()
        self.field.setPlaceholderText(tr("Type words: cut, print, larger, answers \u2026"))
        self.field.setAccessibleName(tr("Words of the action"))
        self.field.setClearButtonEnabled(True)
        self.list.setAccessibleName(tr("Actions found"))
        self.list.setObjectName("found")
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.none = label("", "quiet", wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        column.setSpacing(GRID)
        for part in (self.field, self.list, self.none):
            column.addWidget(part)
        self.field.installEventFilter(self)
        self.field.textChanged.connect(self._show)
        self.field.returnPressed.connect(self._take)
        self.list.itemClicked.connect(lambda _: self._take())

    def ask(self) -> None:
        """Open with an empty field, over the middle of the window."""
        scale = getattr(getattr(self.parent(), "look", None), "scale", 1.0)
        room = self.parentWidget().size()
        self.resize(
            min(round(WIDTH_PX * scale), room.width() - 4 * GRID),
            min(round(HEIGHT_PX * scale), room.height() - 8 * GRID),
        )
        self.field.clear()
        self._show()
        self.show()
        self.raise_()
        self.activateWindow()
        self.field.setFocus()

    def names(self) -> list[str]:
        """Return the names of the actions listed now."""
        return [self.list.item(row).data(Qt.ItemDataRole.UserRole) for row in range(self.list.count())]

    def _show(self) -> None:
        found = find(self.field.text(), self._entries)
        self.list.clear()
        for entry in found:
            able = self._able(entry.name)
            right = next(iter(entry.keys), "") if able else NOT_NOW  # the sheet of keys has all of them
            item = QListWidgetItem()
            words = entry.words.rstrip("\u2026")
            item.setData(Qt.ItemDataRole.UserRole, entry.name)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{words}, {right}" if right else words)
            self.list.addItem(item)
            row = _row(words, f"{entry.menu}", right, able=able)
            self.list.setItemWidget(item, row)
            _line_up(row)
            item.setSizeHint(row.sizeHint())
        self.list.setCurrentRow(0 if found else -1)
        self.none.setVisible(not found)
        self.none.setText("No action has these words. Try fewer, or one of the menus.")
        self._tell()

    def _tell(self) -> None:
        item = self.list.currentItem()
        words = "" if item is None else str(item.data(Qt.ItemDataRole.AccessibleTextRole))
        told = f"{self.list.count()} found; first: {words}" if words else "none"
        self.field.setAccessibleDescription(tr(told))

    def _take(self) -> None:
        item = self.list.currentItem()
        if item is None:
            return
        name = item.data(Qt.ItemDataRole.UserRole)
        if self._able(name):
            self.hide()
            self.chosen.emit(name)

    def showEvent(self, event: QShowEvent) -> None:
        """Look out for words that are typed before the screen has given the keys to this window."""
        super().showEvent(event)
        self._awaits_keys = True
        QApplication.instance().installEventFilter(self)

    def hideEvent(self, event: QHideEvent) -> None:
        """Leave the window's keys to the window again."""
        QApplication.instance().removeEventFilter(self)
        super().hideEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let the arrows walk the list while words are typed; take words typed too early for the field."""
        if watched is self.parentWidget().window().windowHandle():
            return self._seen_in_the_window(event)
        if watched is self.windowHandle() and isinstance(event, QKeyEvent):
            self._awaits_keys = False
        if watched is not self.field:
            return False
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress and event.key() in LIST_KEYS:
            step = {LIST_KEYS[0]: -1, LIST_KEYS[1]: 1, LIST_KEYS[2]: -8, LIST_KEYS[3]: 8}[event.key()]
            row = self.list.currentRow() + step
            self.list.setCurrentRow(max(0, min(row, self.list.count() - 1)))
            self._tell()
            return True
        return super().eventFilter(watched, event)

    def _seen_in_the_window(self, event: QEvent) -> bool:
        """Take a key that still comes to the window below; whoever clicks there means that window."""
        kind = event.type()
        if kind is QEvent.Type.MouseButtonPress:
            self._awaits_keys = False
        if not self._awaits_keys or not isinstance(event, QKeyEvent):
            return False
        if kind is QEvent.Type.KeyPress:
            words = event.text(), event.isAutoRepeat(), event.count()
            QApplication.sendEvent(self.field, QKeyEvent(kind, event.key(), event.modifiers(), *words))
        event.accept()
        return kind in (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride)


def _row(words: str, menu: str, right: str, *, able: bool) -> QWidget:
    row = QWidget()
    across = QHBoxLayout(row)
    across.setContentsMargins(GRID, GRID // 2, GRID, GRID // 2)
    across.setSpacing(2 * GRID)
    across.addWidget(label(words, "" if able else "quiet"), 1)
    place = label(menu, "quiet")
    across.addWidget(place)
    keys = label(right, "heading" if able else "quiet")
    keys.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
    across.addWidget(keys)
    return row


def _line_up(row: QWidget) -> None:
    """Let the columns of all rows stand under each other, once the type is known that they are set in."""
    parts = row.findChildren(QLabel)
    for part in parts:
        part.ensurePolished()
    for part, room in zip(parts[1:], (PLACE_ROOM, KEYS_ROOM), strict=True):
        part.setMinimumWidth(part.fontMetrics().horizontalAdvance(room) + GRID)


class KeySheet(QDialog):
    """All keys on one page, made from the actions themselves."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Keys"))
        area, page = QScrollArea(), QWidget()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        area.setAccessibleName(tr("All keys"))
        page.setObjectName("column")
        self._grid = QGridLayout(page)
        self._grid.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 2 * GRID)
        self._grid.setHorizontalSpacing(3 * GRID)
        self._grid.setVerticalSpacing(GRID // 2)
        self._fill()
        area.setWidget(page)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(area)

    def _fill(self) -> None:
        at = 0
        for group, rows in sheet():
            if at:
                self._grid.setRowMinimumHeight(at, GRID)
                at += 1
            self._grid.addWidget(label(group, "heading"), at, 0, 1, 2)
            at += 1
            for keys, words in rows:
                self._grid.addWidget(_top(label(keys)), at, 0)
                self._grid.addWidget(_top(label(words, wrap=True)), at, 1)
                at += 1
        self._grid.setColumnStretch(1, 1)

    def showEvent(self, event: QEvent) -> None:
        """Open as large as the window lets it."""
        scale = getattr(getattr(self.parent(), "look", None), "scale", 1.0)
        room = self.parentWidget().size()
        self.resize(min(round(WIDTH_PX * scale), room.width()), round(0.9 * room.height()))
        super().showEvent(event)


def _top(made: QLabel) -> QLabel:
    made.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
    return made
