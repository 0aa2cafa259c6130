"""A figure of a list on its page: the still, names of parts, colours' bar, and at its foot what it is not.

The drawing is made of pixels; every word stands on it as type, so that it stays type in a vector file.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QImage, QPainter, QPen
from PySide6.QtSvg import QSvgGenerator

from sim.plan import Spread, Squeeze
from sim.record import Frame
from sim.results import LIMITS_LINE, MODEL_VERSION
from ui.lesson_pictures import tips_of
from ui.printing import family
from ui.scene.colours import THEMES, ColourMode
from ui.scene.legend import draw_bar
from ui.scene.naming import Floats
from ui.scene.still import Look, grey, still
from ui.state.figure_list import Figure
from ui.state.figure_words import TRUE_SCALE
from ui.state.lesson_results import PlanResult

FOOT, LEGEND = 0.05, 0.075
"""Shares of the height: of the line at the foot, and of the colours' bar above it."""
LEAST_PX = 11
LIGHT, DARK = ("#ffffff", "#17191c", "#51575d"), (THEMES["dark"].paper, "#f1f1ef", "#b4b6b8")
"""Ground, ink and quiet ink of a page."""


@dataclass(frozen=True)
class Page:
    """A figure ready to be put on a picture or into a vector file.

    size : of the page [px];  ground : its picture with everything but words
    inks : of what is said, and of what is said quietly
    left, right, foot : the words at the foot and their place;  names : of parts, with places [px]
    is_grey : as a copier prints it
    """

    size: tuple[int, int]
    ground: QImage
    inks: tuple[str, str]
    left: str
    right: str
    foot: QRectF
    names: dict[str, QPointF]
    is_grey: bool = False

    def drawn(self) -> QImage:
        """Return the page as a picture."""
        image = self.ground.copy()
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.write(painter)
        painter.end()
        return grey(image) if self.is_grey else image

    def write(self, painter: QPainter) -> None:
        """Write every word of the page."""
        self._write_names(painter)
        _foot(painter, self.left, self.right, self.foot, self.inks)

    def _write_names(self, painter: QPainter) -> None:
        """Write names of parts beside them, each with a line to its part; none covers another."""
        size = max(LEAST_PX, 0.026 * self.size[1])
        painter.setFont(_font(size))
        metrics, room = painter.fontMetrics(), QRectF(0, 0, self.size[0], self.foot.top())
        dot = QRectF(-0.3 * size, -0.3 * size, 0.6 * size, 0.6 * size)
        taken = [dot.translated(place) for place in self.names.values()]
        boxes: dict[str, QRectF] = {}
        for word, place in sorted(self.names.items(), key=lambda item: item[1].y()):
            wide = metrics.horizontalAdvance(word) + size
            boxes[word] = _free_box(place, wide, 1.5 * size, taken, room)
            taken.append(boxes[word])
        for word, place in self.names.items():
            painter.setPen(QPen(QColor(self.inks[0]), max(1.0, 0.08 * size)))
            painter.drawLine(place, _nearest(boxes[word], place))
            painter.setBrush(QColor(self.inks[0]))
            painter.drawEllipse(place, 0.2 * size, 0.2 * size)
        for word, box in boxes.items():
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(PLATE))
            painter.drawRect(box)
            painter.setPen(QColor(LIGHT[1]))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, word)


PLATE = "#f3f2ee"
"""Ground under a name: its ink is dark on every theme."""


def _free_box(place: QPointF, wide: float, high: float, taken: list[QRectF], page: QRectF) -> QRectF:
    """Return where a name stands: up and out from its part, further off where others stand already."""
    best = QRectF(place.x(), place.y(), wide, high)
    for step in range(1, 9):
        for across, up in ((1.0, -1.0), (-1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)):
            middle = place + QPointF(across * (0.5 * wide + step * high), up * step * high)
            box = QRectF(middle.x() - 0.5 * wide, middle.y() - 0.5 * high, wide, high)
            if page.contains(box) and not any(box.adjusted(-4, -4, 4, 4).intersects(one) for one in taken):
                return box
        best = best.translated(0.0, high)
    return best


def _nearest(box: QRectF, place: QPointF) -> QPointF:
    """Return the point of a box nearest to a place."""
    return QPointF(min(max(place.x(), box.left()), box.right()), min(max(place.y(), box.top()), box.bottom()))


def page(room: Any, figure: Figure, result: PlanResult, frame: Frame, *, licence: str = "") -> Page:
    """Return a figure as a page of its size.

    Parameters
    ----------
    room : gives doors;  figure, result, frame : what is drawn;  licence : stands at the foot
    """
    view, before = figure.view, figure.style == "before"
    wide, high = figure.size.width_px, figure.size.height_px
    paper, *inks = LIGHT if view.theme == "light" else DARK
    mode = ColourMode(view.colours)
    foot = round(FOOT * high) + LEAST_PX
    bar = 0 if mode is ColourMode.MATERIAL or before else round(LEGEND * high)
    named: dict[str, Floats] = {}
    picture = _still(room, figure, result, frame, (wide, high - foot - bar), named)
    ground = QImage(wide, high, QImage.Format.Format_RGB32)
    ground.fill(QColor(paper))
    painter = QPainter(ground)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.drawImage(0, 0, picture)
    if bar:
        box = QRectF(0.2 * wide, high - foot - 0.8 * bar, 0.6 * wide, 0.22 * bar)
        draw_bar(painter, box, mode, _font(0.28 * bar), QColor(inks[0]))
    painter.end()
    assert result.kept is not None
    right = f"{TRUE_SCALE}, plan {result.kept.plan_sha256[:8]}, model {MODEL_VERSION}"
    return Page(
        (wide, high),
        grey(ground) if figure.style == "grey" else ground,
        (inks[0], inks[1]),
        LIMITS_LINE,
        f"{right}, {licence}" if licence else right,
        QRectF(0.02 * wide, high - foot, 0.96 * wide, foot),
        {
            word: QPointF(at[0] * picture.width(), at[1] * picture.height())
            for word, at in (named.items() if view.labels else ())
        },
        figure.style == "grey",
    )


def _still(
    room: Any,
    figure: Figure,
    result: PlanResult,
    frame: Frame,
    size: tuple[int, int],
    named: dict[str, Floats],
) -> QImage:
    view, before = figure.view, figure.style == "before"
    door, move = room.door(result.plan.car), result.plan.moves[figure.state.move - 1]
    look = Look(
        view.camera,
        "material" if before else view.colours,
        view.layers,
        ghost=view.ghost and frame.opening_m > 0.0,
        path=view.path and not before,
        room=view.room,
        theme=view.theme,
    )
    tool = move.tool if isinstance(move, Spread | Squeeze) else None
    aim = tips_of(door, move, frame)
    return still(door, frame, look, size, aim=aim, tool=tool, share=False, names=named)


def _foot(painter: QPainter, left: str, right: str, box: QRectF, inks: tuple[str, str]) -> None:
    """Write the limits and what the picture is of, at one size, on one line."""
    size = max(LEAST_PX, 0.36 * box.height())
    while size > LEAST_PX:
        painter.setFont(_font(size))
        if painter.fontMetrics().horizontalAdvance(left + right) + 3 * size < box.width():
            break
        size -= 1.0
    painter.setFont(_font(size))
    middle = Qt.AlignmentFlag.AlignVCenter
    painter.setPen(QColor(inks[0]))
    painter.drawText(box, Qt.AlignmentFlag.AlignLeft | middle, left)
    painter.setPen(QColor(inks[1]))
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


def svg(made: Page, title: str, description: str) -> bytes:
    """Return a page as SVG: the drawing as a picture in it, words as type, title and description."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    made_by = QSvgGenerator(QSvgGenerator.SvgVersion.Svg11)
    made_by.setOutputDevice(buffer)
    made_by.setResolution(96)
    made_by.setSize(QSize(*made.size))
    made_by.setViewBox(QRectF(0, 0, *made.size))
    made_by.setTitle(title)
    made_by.setDescription(description)
    painter = QPainter(made_by)
    painter.drawImage(0, 0, made.ground)
    made.write(painter)
    painter.end()
    buffer.close()
    return bytes(data.data())
