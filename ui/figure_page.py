"""A figure of a list on its page: the still, and at its foot what it is not."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QImage, QPainter

from sim.plan import Spread, Squeeze
from sim.record import Frame
from sim.results import LIMITS_LINE, MODEL_VERSION
from ui.lesson_pictures import tips_of
from ui.printing import family
from ui.scene.colours import ColourMode
from ui.scene.legend import draw_bar
from ui.scene.still import Look, grey, still
from ui.state.figure_list import Figure
from ui.state.figure_words import TRUE_SCALE
from ui.state.lesson_results import PlanResult

FOOT, LEGEND = 0.05, 0.075
"""Shares of the height: of the line at the foot, and of the colours' bar above it."""
LEAST_PX = 11


def page(room: Any, figure: Figure, result: PlanResult, frame: Frame, *, licence: str = "") -> QImage:
    """Return a figure as a picture of its size.

    Parameters
    ----------
    room : gives doors;  figure, result, frame : what is drawn;  licence : stands at the foot
    """
    view, before = figure.view, figure.style == "before"
    wide, high = figure.size.width_px, figure.size.height_px
    mode = ColourMode(view.colours)
    foot = round(FOOT * high) + LEAST_PX
    bar = 0 if mode is ColourMode.MATERIAL or before else round(LEGEND * high)
    door, move = room.door(result.plan.car), result.plan.moves[figure.state.move - 1]
    look = Look(
        view.camera,
        "material" if before else view.colours,
        view.layers,
        ghost=view.ghost and frame.opening_m > 0.0,
        path=view.path and not before,
        room=view.room,
    )
    tool = move.tool if isinstance(move, Spread | Squeeze) else None
    aim = tips_of(door, move, frame)
    picture = still(door, frame, look, (wide, high - foot - bar), aim=aim, tool=tool, share=False)
    image = QImage(wide, high, QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.drawImage(0, 0, picture)
    if bar:
        box = QRectF(0.2 * wide, high - foot - 0.8 * bar, 0.6 * wide, 0.22 * bar)
        draw_bar(painter, box, mode, _font(0.28 * bar), QColor("#17191c"))
    _foot(painter, result, QRectF(0.02 * wide, high - foot, 0.96 * wide, foot), licence)
    painter.end()
    return grey(image) if figure.style == "grey" else image


def _foot(painter: QPainter, result: PlanResult, box: QRectF, licence: str) -> None:
    """Write the limits and what the picture is of, at one size, on one line or two."""
    size = max(LEAST_PX, 0.36 * box.height())
    assert result.kept is not None
    left = LIMITS_LINE
    right = f"{TRUE_SCALE}, plan {result.kept.plan_sha256[:8]}, model {MODEL_VERSION}"
    right = f"{right}, {licence}" if licence else right
    while size > LEAST_PX:
        painter.setFont(_font(size))
        if painter.fontMetrics().horizontalAdvance(left + right) + 3 * size < box.width():
            break
        size -= 1.0
    painter.setFont(_font(size))
    middle = Qt.AlignmentFlag.AlignVCenter
    painter.setPen(QColor("#17191c"))
    painter.drawText(box, Qt.AlignmentFlag.AlignLeft | middle, left)
    painter.setPen(QColor("#51575d"))
    painter.drawText(box, Qt.AlignmentFlag.AlignRight | middle, right)


def _font(size: float) -> QFont:
    font = QFont(family())
    font.setPixelSize(max(LEAST_PX, round(size)))
    return font


def png(image: QImage, description: str) -> bytes:
    """Return a picture as PNG with its description inside."""
    image.setText("Description", description)
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG", 80)
    buffer.close()
    return bytes(data.data())
