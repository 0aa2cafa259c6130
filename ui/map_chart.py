"""The flat chart of an outcome map: hue, pattern and word of every region, the door seen from outside.

Used by the window, by pictures on disk and, cell by cell, by the band on the door; patterns are drawn by
hand, as wide as the type asks for, so that they are seen on a wall and in grey.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from sim.map_words import EDGE_WORDS
from sim.plan import Edge
from ui.scene.colours import MAP_MARKS, OKABE_ITO, Mark, Pattern
from ui.state.map_layout import Box, Layout, label_spot, regions
from ui.state.tongue import tr

STRIPE_INK = "#1B1C1E"
"""Ink of the patterns, on every ground: hues are light enough for it."""
LEAST_LINES = 5
"""A chart lower than so many lines of type bears no words beside its edges."""
LEAST_REGION = 2
"""A region of fewer cells has its word in the legend alone."""


@dataclass(frozen=True)
class Tones:
    """What a chart is painted with: paper, ink and lines as "#rrggbb"; the pattern's step [px]."""

    paper: str
    ink: str
    quiet: str
    line: str
    step: float = 9.0
    thick: float = 1.0


@dataclass(frozen=True)
class Chart:
    """What is painted.

    words : of every cell;  other : of a second map, or empty: then only cells that differ are painted
    differ : which cells differ;  cursor : a cell to be ringed
    marks : what stands at a height of an edge, (edge, height [m], words)
    """

    words: Sequence[str]
    other: Sequence[str] = ()
    differ: frozenset[int] = frozenset()
    cursor: int | None = None
    marks: Sequence[tuple[Edge, float, str]] = ()


def mark_of(word: str) -> Mark:
    """Return hue and pattern of a word."""
    return MAP_MARKS.get(word, Mark(OKABE_ITO["black"], Pattern.EMPTY))


def gap_for(chart: Chart, font: QFont) -> float:
    """Return how wide the gap between two edges has to be for what is written in it [px]."""
    metrics = QFontMetricsF(font)
    longest = max((metrics.horizontalAdvance(tr(words)) for _, _, words in chart.marks), default=0.0)
    return longest + 3.0 * metrics.averageCharWidth()


def rect(box: Box) -> QRectF:
    """Return a box as Qt takes it."""
    return QRectF(box.x, box.y, box.wide, box.tall)


def fill(painter: QPainter, area: QRectF, mark: Mark, tones: Tones, origin: QPointF | None = None) -> None:
    """Fill an area in hue and pattern; patterns of neighbours run on where they share an origin."""
    black = mark.colour == OKABE_ITO["black"]
    painter.save()
    painter.setClipRect(area)
    painter.fillRect(area, QColor(tones.paper if black else mark.colour))
    pen = QPen(QColor(tones.ink if black else STRIPE_INK), max(1.0, 0.2 * tones.step))
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    for line in _lines(area, mark.pattern, tones.step, origin or QPointF(0.0, 0.0)):
        painter.drawLine(line)
    if mark.pattern is Pattern.DOTS:
        _dots(painter, area, tones.step, origin or QPointF(0.0, 0.0), pen.color())
    painter.restore()


def _lines(area: QRectF, pattern: Pattern, step: float, origin: QPointF) -> list[QLineF]:
    """Return the strokes of a pattern over an area."""
    out = []
    if pattern in (Pattern.LEVEL,):
        out += [
            QLineF(area.left(), y, area.right(), y)
            for y in _places(area.top(), area.bottom(), step, origin.y())
        ]
    if pattern in (Pattern.UPRIGHT,):
        out += [
            QLineF(x, area.top(), x, area.bottom())
            for x in _places(area.left(), area.right(), step, origin.x())
        ]
    slant = 1.4142 * step
    for wanted, way in ((Pattern.RISING, 1.0), (Pattern.FALLING, -1.0)):
        if pattern not in (wanted, Pattern.CROSSED):
            continue
        base = origin.x() + way * origin.y()
        low = min(area.left() + way * area.top(), area.left() + way * area.bottom())
        high = max(area.right() + way * area.top(), area.right() + way * area.bottom())
        for c in _places(low, high, slant, base):
            out.append(QLineF(c - way * area.top(), area.top(), c - way * area.bottom(), area.bottom()))
    return out


def _places(low: float, high: float, step: float, origin: float) -> list[float]:
    first = int((low - origin) // step)
    return [origin + (k + 0.5) * step for k in range(first, int((high - origin) // step) + 1)]


def _dots(painter: QPainter, area: QRectF, step: float, origin: QPointF, ink: QColor) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ink)
    size = 0.24 * step
    for row, y in enumerate(_places(area.top() - step, area.bottom() + step, step, origin.y())):
        odd = round((y - origin.y()) / step - 0.5) % 2
        del row
        for x in _places(area.left() - step, area.right() + step, step, origin.x() + 0.5 * step * odd):
            painter.drawEllipse(QPointF(x, y), size, size)


def paint(painter: QPainter, chart: Chart, layout: Layout, tones: Tones, font: QFont) -> None:
    """Paint a chart; the painter's origin is the layout's."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(font)
    if chart.other:
        paint_changes(painter, chart, layout, tones, range(len(chart.words)))
    else:
        for index, word in enumerate(chart.words):
            fill(painter, rect(layout.cell(index)), mark_of(word), tones)
        borders(painter, chart.words, layout, tones)
        name_regions(painter, chart.words, layout, tones, font)
    for edge, block in layout.blocks.items():
        painter.setPen(QPen(QColor(tones.ink), 1.5 * tones.thick))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect(block))
        _frame_words(painter, edge, block, layout, tones, font)
    _name_marks(painter, chart, layout, tones, font)
    if chart.cursor is not None:
        ring(painter, rect(layout.cell(chart.cursor)), tones)


def ring(painter: QPainter, area: QRectF, tones: Tones) -> None:
    """Ring the cell under the cursor."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(tones.paper), 6.0 * tones.thick))
    painter.drawRect(area)
    painter.setPen(QPen(QColor(tones.ink), 3.0 * tones.thick))
    painter.drawRect(area)


def paint_changes(
    painter: QPainter, chart: Chart, layout: Layout, tones: Tones, cells: Sequence[int]
) -> None:
    """Paint the cells that change, the first word in the left half and the second in the right."""
    for index in cells:
        area = rect(layout.cell(index))
        painter.fillRect(area, QColor(tones.paper))
        painter.setPen(QPen(QColor(tones.line), tones.thick))
        painter.drawRect(area)
    for index in sorted(chart.differ.intersection(cells)):
        area = rect(layout.cell(index))
        half = 0.5 * area.width()
        fill(
            painter, QRectF(area.left(), area.top(), half, area.height()), mark_of(chart.words[index]), tones
        )
        fill(
            painter,
            QRectF(area.left() + half, area.top(), half, area.height()),
            mark_of(chart.other[index]),
            tones,
        )
        painter.setPen(QPen(QColor(tones.ink), tones.thick))
        painter.drawLine(QLineF(area.center().x(), area.top(), area.center().x(), area.bottom()))
        painter.setPen(QPen(QColor(tones.ink), 1.5 * tones.thick))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(area)


def borders(painter: QPainter, words: Sequence[str], layout: Layout, tones: Tones) -> None:
    """Draw a strong line, with a light rim, where the word changes."""
    lines = _changes(words, layout)
    for tone, wide in ((tones.paper, 4.0), (tones.ink, 2.0)):
        painter.setPen(QPen(QColor(tone), wide * tones.thick))
        painter.drawLines(lines)


def _changes(words: Sequence[str], layout: Layout) -> list[QLineF]:
    grid, out = layout.grid, []
    for index in range(len(words)):
        edge, row, column = grid.place(index)
        if edge not in layout.blocks:
            continue
        area = rect(layout.cell(index))
        deeper = area.right() if layout.rightward[edge] else area.left()
        for near, line in (
            ((row, column + 1), QLineF(deeper, area.top(), deeper, area.bottom())),
            ((row + 1, column), QLineF(area.left(), area.top(), area.right(), area.top())),
        ):
            there = near[0] < len(grid.along_m) and near[1] < len(grid.depth_m)
            if there and words[grid.index(edge, *near)] != words[index]:
                out.append(line)
    return out


def name_regions(painter: QPainter, words: Sequence[str], layout: Layout, tones: Tones, font: QFont) -> None:
    """Write each region's word on a plate, where it fits."""
    metrics = QFontMetricsF(font)
    for region in regions(layout.grid, words):
        if len(region) < LEAST_REGION or layout.grid.place(region[0])[0] not in layout.blocks:
            continue
        text = tr(words[region[0]])
        wide = plate_wide(text, metrics)
        spot = label_spot(layout, region, wide)
        if spot is None or metrics.height() > layout.cell(region[0]).tall:
            continue
        area = QRectF(spot[0] - 0.5 * wide, spot[1] - 0.5 * metrics.height(), wide, metrics.height())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tones.paper))
        painter.drawRoundedRect(area, 3.0, 3.0)
        painter.setPen(QColor(tones.ink))
        painter.drawText(area, Qt.AlignmentFlag.AlignCenter, text)


def plate_wide(text: str, metrics: QFontMetricsF) -> float:
    """Return how wide the plate of a word is [px]."""
    return metrics.horizontalAdvance(text) + 1.5 * metrics.averageCharWidth()


def _frame_words(
    painter: QPainter, edge: Edge, block: Box, layout: Layout, tones: Tones, font: QFont
) -> None:
    metrics = QFontMetricsF(font)
    strong = QFont(font)
    strong.setBold(True)
    painter.setFont(strong)
    painter.setPen(QColor(tones.ink))
    tall = metrics.height()
    head = QRectF(block.x, block.y - 1.25 * tall, block.wide, tall)
    lead = Qt.AlignmentFlag.AlignLeft if layout.rightward[edge] else Qt.AlignmentFlag.AlignRight
    painter.drawText(head, lead, tr(EDGE_WORDS[edge].capitalize()))
    painter.setFont(font)
    painter.setPen(QColor(tones.quiet))
    foot = QRectF(block.x, block.y + block.tall + 0.2 * tall, block.wide, tall)
    far = Qt.AlignmentFlag.AlignRight if layout.rightward[edge] else Qt.AlignmentFlag.AlignLeft
    lip = tr("lip")
    painter.drawText(foot, lead, lip)
    for behind in (tr("behind the bend"), tr("bend")):
        if metrics.horizontalAdvance(f"{lip}  {behind}") < block.wide:
            painter.drawText(foot, far, behind)
            break


def _name_marks(painter: QPainter, chart: Chart, layout: Layout, tones: Tones, font: QFont) -> None:
    """Write what stands at a height beside its edge, in the gap, with a tick; and sill and belt."""
    metrics = QFontMetricsF(font)
    tall, gap = metrics.height(), 0.5 * metrics.averageCharWidth()
    if any(block.tall < LEAST_LINES * tall for block in layout.blocks.values()):
        return  # no room for words one above the other
    for edge, along, words in chart.marks:
        block, level = layout.blocks[edge], layout.level(edge, along)
        right = layout.rightward[edge]
        x = block.x + block.wide if right else block.x
        way = 1.0 if right else -1.0
        painter.setPen(QPen(QColor(tones.ink), 2.0 * tones.thick))
        painter.drawLine(QLineF(x, level, x + 2.0 * way * gap, level))
        wide = metrics.horizontalAdvance(tr(words)) + 2.0
        left = x + 3.0 * gap if right else x - 3.0 * gap - wide
        painter.setPen(QColor(tones.ink))
        painter.drawText(
            QRectF(left, level - 0.5 * tall, wide, tall), Qt.AlignmentFlag.AlignVCenter, tr(words)
        )
    _name_ends(painter, layout, tones, tall)


def _name_ends(painter: QPainter, layout: Layout, tones: Tones, tall: float) -> None:
    """Write belt and sill between two edges."""
    blocks = sorted(layout.blocks.values(), key=lambda block: block.x)
    if len(blocks) < 2:
        return
    left, wide = blocks[0].x + blocks[0].wide, blocks[1].x - blocks[0].x - blocks[0].wide
    painter.setPen(QColor(tones.quiet))
    for words, top in ((tr("belt"), blocks[0].y), (tr("sill"), blocks[0].y + blocks[0].tall - tall)):
        painter.drawText(QRectF(left, top, wide, tall), Qt.AlignmentFlag.AlignCenter, words)


def swatch(painter: QPainter, area: QRectF, word: str, tones: Tones) -> None:
    """Paint the small area of a word in a legend."""
    fill(painter, area, mark_of(word), tones, area.topLeft())
    painter.setPen(QPen(QColor(tones.ink), tones.thick))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(area)


def legend(painter: QPainter, words: Mapping[str, int], area: QRectF, tones: Tones, font: QFont) -> None:
    """Paint a legend: swatch, word and count, in as many columns as fit."""
    metrics, each = QFontMetricsF(font), _each(words, font)
    row, box, columns = 1.5 * metrics.height(), 1.4 * metrics.height(), _columns(words, area.width(), font)
    painter.setFont(font)
    for number, (word, count) in enumerate(words.items()):
        down, across = divmod(number, columns)
        left, top = area.left() + across * each, area.top() + down * row
        swatch(painter, QRectF(left, top, box, metrics.height()), word, tones)
        place = QRectF(left + box + metrics.averageCharWidth(), top, each, metrics.height())
        painter.setPen(QColor(tones.ink))
        painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, f"{tr(word)}  {count}")


def legend_height(words: Mapping[str, int], wide: float, font: QFont) -> float:
    """Return the height a legend takes in a width [px]."""
    metrics = QFontMetricsF(font)
    return 1.5 * metrics.height() * -(-len(words) // _columns(words, wide, font))


def _columns(words: Mapping[str, int], wide: float, font: QFont) -> int:
    return max(1, int(wide // max(1.0, _each(words, font))))


def _each(words: Mapping[str, int], font: QFont) -> float:
    """Return the width of one entry of a legend [px]."""
    metrics = QFontMetricsF(font)
    told = [f"{tr(word)}  {count}" for word, count in words.items()]
    longest = max((metrics.horizontalAdvance(text) for text in told), default=0.0)
    return longest + 1.4 * metrics.height() + 2.5 * metrics.averageCharWidth()
