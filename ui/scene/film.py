"""A move or a plan as a strip of pictures from one place: the way the metal went, to be read like a film."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QImage, QPainter

from sim.record import Frame
from ui.scene.colours import THEMES, ColourMode, Theme
from ui.scene.picture import PictureWords, Sheet, factor_of, grab, plotter_for, shrunk, stage_on
from ui.scene.stage import Stage

COLUMNS, MOST = 3, 6
GAP, HEAD = 16.0, 30.0
"""Between pictures, and for the line over each [logical pixels at 1600 x 900]."""


def chosen(count: int, most: int = MOST) -> list[int]:
    """Return which of a number of moments are shown: the first, the last and evenly between."""
    return sorted({round(place) for place in np.linspace(0, count - 1, min(most, count)).tolist()})


def film(
    model,
    frames: Sequence[Frame],
    heads: Sequence[str],
    words: PictureWords,
    size: tuple[int, int] = (1600, 900),
    *,
    scale: float = 1.0,
    theme: Theme | str = "light",
    mode: ColourMode | str = "material",
    view: str = "three_quarter",
    prepare: Callable[[Stage, Frame], None] | None = None,
) -> QImage:
    """Return the strip: one picture a frame from the same place, each under its line.

    Parameters
    ----------
    frames, heads : the moments in order, `MOST` at most read well, and the line over each
    prepare : called with the stage before each picture, to put tools on it
    """
    theme = THEMES[theme] if isinstance(theme, str) else theme
    sheet = Sheet(size, scale, theme)
    panels = _panels(sheet, words, len(frames))
    plotter = plotter_for(panels[0], scale)
    images = []
    try:
        stage = stage_on(plotter, model, theme, mode, factor_of(panels[0], scale) * sheet.line_unit * 0.8)
        stage.view_preset(view)
        for index, frame in enumerate(frames):
            stage.show_points(frame.points, frame)
            stage.show_start_ghost(index > 0)
            if prepare is not None:
                prepare(stage, frame)
            images.append(np.array(grab(plotter)))
        stage.close()
    finally:
        plotter.close()
    painted = sheet.compose((), (), words, ColourMode(mode))
    painter = QPainter(painted)
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.SmoothPixmapTransform)
    try:
        for panel, image, head in zip(panels, images, heads, strict=True):
            painter.drawImage(panel, shrunk(image, panel, scale))
            _head(painter, sheet, panel, head)
    finally:
        painter.end()
    return painted


def _panels(sheet: Sheet, words: PictureWords, count: int) -> list[QRectF]:
    """Return the places of the pictures in rows of `COLUMNS`."""
    top, low = sheet.rows(words)
    columns = min(COLUMNS, count)
    rows = -(-count // columns)
    gap, head = GAP * sheet.unit, HEAD * sheet.unit
    wide = (sheet.width - 2 * sheet.margin - (columns - 1) * gap) / columns
    high = (low - top) / rows - head
    lefts = [sheet.margin + (k % columns) * (wide + gap) for k in range(count)]
    tops = [top + (k // columns) * (high + head) + head for k in range(count)]
    return [QRectF(x, y, wide, high) for x, y in zip(lefts, tops, strict=True)]


def _head(painter: QPainter, sheet: Sheet, panel: QRectF, words: str) -> None:
    font = sheet.font(17, bold=True)
    painter.setFont(font)
    painter.setPen(QColor(sheet.theme.text))
    short = QFontMetricsF(font).elidedText(words, Qt.TextElideMode.ElideRight, panel.width())
    place = QRectF(panel.left(), panel.top() - HEAD * sheet.unit, panel.width(), HEAD * sheet.unit)
    painter.drawText(place, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, short)
