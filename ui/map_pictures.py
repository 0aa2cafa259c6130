"""The pictures of an outcome map's band on the door, one an edge, and the words that find no room on them."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QImage, QPainter, QPen

from sim.map_grid import Grid
from sim.plan import Edge
from ui.map_chart import (
    LEAST_REGION,
    Chart,
    Tones,
    borders,
    fill,
    mark_of,
    name_regions,
    paint_changes,
    plate_wide,
    rect,
    ring,
)
from ui.state.map_layout import Box, Layout, label_spot, regions
from ui.state.tongue import tr

PER_ROW_PX, PER_COLUMN_PX = 112, 64
"""Size of a cell in the picture of a band."""
BAND_TYPE_PX = 36
WORDS_APART_M = 0.09
"""Least distance of two words beside a band, one above the other."""


def band_pictures(chart: Chart, grid: Grid, tones: Any, right_side: bool) -> dict[Edge, QImage]:
    """Return the picture of each edge's band, as it is seen from outside, the sill at its foot."""
    out: dict[Edge, QImage] = {}
    font = _band_font()
    ink = Tones(tones.paper, tones.ink, tones.quiet, tones.hairline, 26.0, 3.0)
    for edge in grid.edges:
        wide, tall = PER_COLUMN_PX * len(grid.depth_m), PER_ROW_PX * len(grid.along_m)
        image = QImage(wide, tall, QImage.Format.Format_RGB32)
        image.fill(QColor(tones.paper))
        layout = _band_layout(grid, edge, right_side)
        painter = QPainter(image)
        try:
            _paint_edge(painter, chart, layout, ink, font, edge)
        finally:
            painter.end()
        out[edge] = image
    return out


def beside_band(chart: Chart, grid: Grid, right_side: bool) -> list[tuple[Edge, float, str]]:
    """Return the words that find no room on the bands: edge, height above the sill [m], word; rising.

    Each once, at its largest region, unless it is written on a band; no two nearer than they can be read.
    """
    if chart.other:
        return []
    metrics = QFontMetricsF(_band_font())
    layouts = {edge: _band_layout(grid, edge, right_side) for edge in grid.edges}
    found: dict[str, tuple[Edge, float]] = {}
    written: set[str] = set()
    for region in regions(grid, chart.words):
        word, edge = chart.words[region[0]], grid.place(region[0])[0]
        if len(region) < LEAST_REGION:
            continue
        if label_spot(layouts[edge], region, _wide(word, metrics)) is not None:
            written.add(word)
        heights = [grid.along_m[grid.place(index)[1]] for index in region]
        found.setdefault(word, (edge, sum(heights) / len(heights)))
    out: list[tuple[Edge, float, str]] = []
    last = -WORDS_APART_M  # of both edges: seen aslant, what is level with another covers it
    for word, (edge, height) in sorted(found.items(), key=lambda item: (item[1][1], item[0])):
        if word not in written:
            last = max(height, last + WORDS_APART_M)
            out.append((edge, last, tr(word)))
    return out


def _wide(word: str, metrics: QFontMetricsF) -> float:
    return plate_wide(tr(word), metrics)


def _band_font() -> QFont:
    font = QFont()
    font.setPixelSize(BAND_TYPE_PX)
    font.setBold(True)
    return font


def _band_layout(grid: Grid, edge: Edge, right_side: bool) -> Layout:
    wide, tall = PER_COLUMN_PX * len(grid.depth_m), PER_ROW_PX * len(grid.along_m)
    return Layout(grid, {edge: Box(0.0, 0.0, wide, tall)}, {edge: (edge == "latch_edge") == right_side})


def _paint_edge(
    painter: QPainter, chart: Chart, layout: Layout, tones: Tones, font: QFont, edge: Edge
) -> None:
    """Paint the cells of one edge."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(font)
    mine = [k for k in range(len(chart.words)) if layout.grid.place(k)[0] == edge]
    if chart.other:
        paint_changes(painter, chart, layout, tones, mine)
    else:
        for index in mine:
            fill(painter, rect(layout.cell(index)), mark_of(chart.words[index]), tones)
        borders(painter, chart.words, layout, tones)
        name_regions(painter, chart.words, layout, tones, font)
    painter.setPen(QPen(QColor(tones.ink), 2.0 * tones.thick))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect(layout.blocks[edge]))
    if chart.cursor in mine:
        assert chart.cursor is not None
        ring(painter, rect(layout.cell(chart.cursor)), tones)
