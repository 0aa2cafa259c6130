"""An outcome map, or the difference of two, as a page: title, sentence, chart, legend, caption and limits."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QFontMetricsF, QImage, QPainter

from sim.map_words import caption, difference_sentence, sentence
from sim.outcome_map import MapDifference, OutcomeMap, fittings
from sim.results import MODEL_VERSION
from ui.map_chart import Chart, Tones, gap_for, legend, paint
from ui.scene.colours import THEMES, Theme
from ui.scene.picture import LIMITS, Sheet
from ui.state.map_layout import lay_out

SIZE = (1600, 1000)
HALVES = "In a cell that changes the left half is the first, the right half the second."


def map_page(
    outcome: OutcomeMap, title: str, *, apart: MapDifference | None = None, size: tuple[int, int] = SIZE,
    scale: float = 1.0, theme: Theme | str = "light", version: str = "",
) -> QImage:  # fmt: skip
    """Return the page; with ``apart`` the cells that change between two maps, ``outcome`` the first of them.

    Parameters
    ----------
    size, scale : in logical pixels, and how many real pixels each is wide
    """
    theme = THEMES[theme] if isinstance(theme, str) else theme
    sheet = Sheet(size, scale, theme)
    sheet.image.fill(QColor(theme.paper))
    painter = QPainter(sheet.image)
    try:
        told = _paint(painter, sheet, outcome, title, apart, version)
    finally:
        painter.end()
    sheet.image.setText("Description", f"{title}. {told} {LIMITS}")
    return sheet.image


def tones_of(theme: Theme, unit: float) -> Tones:
    """Return what a chart of a theme is painted with."""
    return Tones(theme.paper, theme.text, theme.muted, theme.grid, 9.0 * unit, unit)


def _paint(
    painter: QPainter,
    sheet: Sheet,
    outcome: OutcomeMap,
    title: str,
    apart: MapDifference | None,
    version: str,
) -> str:
    unit, inner, left = sheet.unit, sheet.width - 2 * sheet.margin, sheet.margin
    tones = tones_of(sheet.theme, unit)
    said = sentence(outcome) if apart is None else difference_sentence(apart)
    lines = [caption(outcome)] if apart is None else [caption(outcome), caption(apart.after), HALVES]
    top = sheet.margin
    top += sheet._paragraph(painter, title, sheet.font(22), top, sheet.theme.text) + 8 * unit
    top += sheet._paragraph(painter, said, sheet.font(30), top, sheet.theme.text) + 20 * unit
    small, body = sheet.font(17), sheet.font(20)
    low = sheet.height - sheet.margin - 24 * unit
    foot = QRectF(left, low, inner, 24 * unit)
    text = "\n".join(lines)
    low -= sheet._text_height(text, small, inner) + 10 * unit
    sheet._paragraph(painter, text, small, low, sheet.theme.muted)
    words = words_of(outcome, apart)
    wide = 0.24 * inner
    row = 1.5 * QFontMetricsF(body).height()
    area = QRectF(left, top, inner - wide - 32 * unit, low - top - 16 * unit)
    painter.save()
    painter.translate(area.topLeft())
    left_side = outcome.ask.plan.car.side == "left"
    chart, grid = chart_of(outcome, apart), outcome.ask.grid
    gap = gap_for(chart, body)
    layout = lay_out(grid, area.width(), area.height(), body.pixelSize(), gap, left_side=left_side)
    paint(painter, chart, layout, tones, body)
    painter.restore()
    legend(painter, words, QRectF(area.right() + 32 * unit, top + row, wide, area.height()), tones, body)
    painter.setFont(small)
    painter.setPen(QColor(sheet.theme.muted))
    painter.drawText(foot, f"{LIMITS}   {version or f'model {MODEL_VERSION}'}")
    return " ".join((said, *lines))


def chart_of(outcome: OutcomeMap, apart: MapDifference | None, cursor: int | None = None) -> Chart:
    """Return what is painted of a map, or of what changes from it to another."""
    words = [told.word for told in outcome.told]
    marks = [mark for mark in fittings(outcome.ask) if mark[0] in outcome.ask.grid.edges]
    if apart is None:
        return Chart(words, cursor=cursor, marks=marks)
    other = [told.word for told in apart.after.told]
    return Chart(words, other, frozenset(change.index for change in apart.changes), cursor, marks)


def words_of(outcome: OutcomeMap, apart: MapDifference | None) -> Mapping[str, int]:
    """Return the words of a legend with their counts: of all cells, or of both sides of those that change."""
    if apart is None:
        return outcome.counts
    found: dict[str, int] = {}
    for change in apart.changes:
        for word in (change.before, change.after):
            found[word] = found.get(word, 0) + 1
    return dict(sorted(found.items(), key=lambda item: (-item[1], item[0])))
