"""Small windows beside the work: the keys, and a picture to save. None of them stops anything."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QFormLayout,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID
from ui.panels.pieces import button, label

KEYS = (
    ("Hold Space", "open the tips, let go to stop"),
    ("[ and ], S and D", "tip less deep, deeper; with Shift 10 mm"),
    (", and .", "push tilted inward, outward"),
    ("Up and Down", "tip along the edge; with Shift 50 mm"),
    ("Wheel", "nearer, further; after a tip is set: its depth, with Shift its tilt"),
    ("Ctrl+Wheel", "depth at any time; with Shift the tilt"),
    ("Left and Right", "one moment back, on"),
    ("Page Up and Page Down", "last event, next event; in a lesson: the step before, the next step"),
    ("K", "lesson or plan beside the stage"),
    ("Q", "questions of the lesson"),
    ("F6", "words of the trade, by any of their names"),
    ("Home", "back to the start"),
    ("P, W, Y", "play the moments; slower; again and again"),
    ("J", "stop at an event"),
    ("Return", "run the plan"),
    ("G", "go on from the moment shown"),
    ("1 to 9", "skin, seam, bar, inner panel, latch and hinges, pillar, trim and glass, body, occupant"),
    ("C", "what the colours show"),
    ("V; Ctrl+1 to Ctrl+5", "next view; a view of its own"),
    ("H, Backspace", "from the patient's seat; back to where you looked from"),
    ("X, E", "section plane; parts drawn apart"),
    ("I, O", "what the pointer is on alone; outline of the start shape"),
    ("M, N", "measure; pen and arrows"),
    ("F", "stage only, and back"),
    ("A, L, R", "ask before the push, lock, compare with what happened"),
    ("B", "two plans side by side, and back"),
    ("F5, F7", "present to a class; notes for the teacher"),
    ("T", "shut answers, ladder, arrow and map, or open them"),
    ("F4", "model card: what this is, and who says so"),
    ("Esc", "stop what is being worked out; give the wheel back"),
    ("Ctrl+Z, Ctrl+Shift+Z", "undo, redo"),
    ("Ctrl+H", "steps and branches: go to any of them"),
)

SIZES = ((1280, 720), (1920, 1080), (3840, 2160), (2480, 1754))


class KeySheet(QDialog):
    """All keys on one page."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle("Keys")
        grid = QGridLayout(self)
        grid.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 2 * GRID)
        grid.setHorizontalSpacing(3 * GRID)
        for row, (key, words) in enumerate(KEYS):
            grid.addWidget(label(key, "heading"), row, 0)
            grid.addWidget(label(words), row, 1)


class PictureSheet(QDialog):
    """Size, caption and place of a picture of the stage.

    Parameters
    ----------
    save : called with width, height, caption and path
    """

    def __init__(self, parent: QWidget, save: Callable[[int, int, str, str], object]) -> None:
        super().__init__(parent)
        self._save = save
        self.setWindowTitle("Save a picture of the stage")
        self.setMinimumWidth(440)
        self.preset = QComboBox()
        for width, height in SIZES:
            self.preset.addItem(f"{width} \u00d7 {height}", (width, height))
        self.width_px, self.height_px = self._pixels(1920), self._pixels(1080)
        self.preset.setCurrentIndex(1)
        self.preset.activated.connect(self._take_preset)
        self.caption = QLineEdit()
        size = QHBoxLayout()
        for part in (self.preset, self.width_px, label("\u00d7"), self.height_px):
            size.addWidget(part)
        form = QFormLayout()
        form.addRow(label("Size", "quiet"), size)
        form.addRow(label("Caption", "quiet"), self.caption)
        self.save = button("Save the picture", "primary")
        self.save.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.save.clicked.connect(self._ask)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 2 * GRID)
        column.setSpacing(2 * GRID)
        column.addLayout(form)
        column.addWidget(
            label("The line on the limits of the model stands on every picture.", "quiet", wrap=True)
        )
        column.addWidget(self.save, 0, Qt.AlignmentFlag.AlignRight)

    def _pixels(self, value: int) -> QSpinBox:
        made = QSpinBox()
        made.setRange(320, 8192)
        made.setSuffix("\u00a0px")
        made.setValue(value)
        return made

    def _take_preset(self, index: int) -> None:
        width, height = self.preset.itemData(index)
        self.width_px.setValue(width)
        self.height_px.setValue(height)

    def _ask(self) -> None:
        name, _ = QFileDialog.getSaveFileName(self, "Save the picture", "door.png", "PNG pictures (*.png)")
        if name:
            path = name if name.lower().endswith(".png") else f"{name}.png"
            self._save(self.width_px.value(), self.height_px.value(), self.caption.text(), path)
            self.hide()
