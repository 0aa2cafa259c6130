"""A small window beside the work: a picture to save. It stops nothing."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID
from ui.panels.pieces import button, label
from ui.state.tongue import tr

SIZES = ((1280, 720), (1920, 1080), (3840, 2160), (2480, 1754))


class PictureSheet(QDialog):
    """Size, caption and place of a picture of the stage.

    Parameters
    ----------
    save : called with width, height, caption and path
    """

    def __init__(self, parent: QWidget, save: Callable[[int, int, str, str], object]) -> None:
        super().__init__(parent)
        self._save = save
        self.setWindowTitle(tr("Save a picture of the stage"))
        self.setMinimumWidth(440)
        self.preset = QComboBox()
        for width, height in SIZES:
            self.preset.addItem(f"{width} \u00d7 {height}", (width, height))
        self.width_px, self.height_px = self._pixels(1920), self._pixels(1080)
        self.preset.setCurrentIndex(1)
        self.caption = QLineEdit()
        for part, name in (
            (self.preset, "Size of the picture"),
            (self.width_px, "Width of the picture"),
            (self.height_px, "Height of the picture"),
            (self.caption, "Caption of the picture"),
        ):
            part.setAccessibleName(tr(name))
        self.preset.activated.connect(self._take_preset)
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
            label(
                "The line on the limits of the model stands on every picture, "
                "and the moment in words lies in the file as its description (alt text).",
                "quiet",
                wrap=True,
            )
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
        name, _ = QFileDialog.getSaveFileName(
            self, tr("Save the picture"), "door.png", tr("PNG pictures (*.png)")
        )
        if name:
            path = name if name.lower().endswith(".png") else f"{name}.png"
            self.hide()  # first: another Return while the picture is drawn would ask a second time
            self._save(self.width_px.value(), self.height_px.value(), self.caption.text(), path)
