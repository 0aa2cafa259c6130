"""Sheets on paper: the same pages to a printer or into a PDF, with the limits line at the foot of each."""

from __future__ import annotations

import errno
from collections.abc import Mapping
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QRectF, QSizeF, Qt, QUrl
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QColor,
    QFont,
    QFontDatabase,
    QImage,
    QPagedPaintDevice,
    QPageSize,
    QPainter,
    QPdfWriter,
    QTextDocument,
)

from sim.textfiles import write_whole
from ui.paging import BREAK, with_whole_rows
from ui.state.sheet import TURN, Sheet
from ui.state.tongue import tr

PAPERS = {"a4": QPageSize.PageSizeId.A4, "letter": QPageSize.PageSizeId.Letter}
DPI = 300
SIDE_MM, TOP_MM, FOOT_MM = 16.0, 15.0, 17.0
"""Empty space at the sides; above the body, for the head; below it, for the foot."""
INK, QUIET, LINE = QColor("#17191c"), QColor("#51575d"), QColor("#9aa0a5")
FAMILIES = ("Noto Sans", "Segoe UI", "Helvetica Neue", "DejaVu Sans")
LIMITS_PT = 9.0
"""Type of the limits line at the foot, where there is room for it [pt]."""
PEN_MM = 0.18
SHRUNK = (1.0, 0.97, 0.94, 0.91, 0.88)
"""What runs over by a little is made this much smaller, before it takes one page more."""


def family() -> str:
    """Return the first of the wanted typefaces that this machine has."""
    there = set(QFontDatabase.families())
    general = QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont).family()
    return next((name for name in FAMILIES if name in there), general)


def write_pdf(sheet: Sheet, path: Path, pictures: Mapping[str, QImage], paper: str = "a4") -> int:
    """Write a sheet as PDF; return how many pages it came to.

    Raises
    ------
    OSError
        When the file cannot be written; an older one stays as it was.
    """
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setTitle(f"{tr(sheet.kind)}: {tr(sheet.title)}")
    writer.setCreator(sheet.foot)
    writer.setResolution(DPI)
    set_up(writer, paper)
    pages = paint(sheet, writer, pictures)
    buffer.close()
    write_whole(path, data.data())
    return pages


def set_up(device: QPagedPaintDevice, paper: str) -> None:
    """Give a device its paper; the margins are drawn by us."""
    device.setPageSize(QPageSize(PAPERS[paper]))
    device.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0))


class _Paper:
    """The measures of one page on a device."""

    def __init__(self, device: QPagedPaintDevice) -> None:
        self.mm = device.logicalDpiX() / 25.4
        whole = device.pageLayout().fullRectPixels(device.logicalDpiX())
        self.width, self.height = float(whole.width()), float(whole.height())
        self.side, self.top, self.foot = SIDE_MM * self.mm, TOP_MM * self.mm, FOOT_MM * self.mm
        self.body = QSizeF(self.width - 2.0 * self.side, self.height - self.top - self.foot)


def paint(sheet: Sheet, device: QPagedPaintDevice, pictures: Mapping[str, QImage]) -> int:
    """Paint a sheet's pages on a device; return how many there were; OSError where it takes none."""
    paper = _Paper(device)
    fitted = [_fitted(sheet.page(k), device, paper, pictures) for k in range(len(sheet.pages))]
    total = sum(document.pageCount() for document, _ in fitted)
    painter = QPainter(device)
    if not painter.isActive():
        raise OSError(errno.EIO, "cannot be painted on")
    number = 0
    try:
        for document, scale in fitted:
            for page in range(document.pageCount()):
                if number:
                    device.newPage()
                number += 1
                _paint_page(painter, document, page, paper, scale)
                _paint_edges(painter, sheet, number, total, paper)
    finally:
        painter.end()
    return total


def _fitted(
    text: str, device: QPagedPaintDevice, paper: _Paper, pictures: Mapping[str, QImage]
) -> tuple[QTextDocument, float]:
    """Return a page's document and its scale: a little smaller where that keeps it on one sheet of paper.

    A page that may be turned over (`TURN`) and does not fit on one side goes over there.
    """

    def laid_out(scale: float, text: str = text) -> QTextDocument:
        return with_whole_rows(text, lambda html: _document(html, device, paper, pictures, scale))

    whole = laid_out(1.0)
    pages = whole.pageCount()
    turned = TURN in text
    for scale in SHRUNK[1:] if pages == 2 else SHRUNK[1:3] if pages > 2 and not turned else ():
        smaller = laid_out(scale)
        if smaller.pageCount() < pages:
            return smaller, scale
    for scale in SHRUNK if turned and pages > 1 else ():
        both = laid_out(scale, text.replace(TURN, BREAK))
        if both.pageCount() == 2:
            return both, scale
    return whole, 1.0


def _document(
    text: str, device: QPagedPaintDevice, paper: _Paper, pictures: Mapping[str, QImage], scale: float
) -> QTextDocument:
    document = QTextDocument()
    document.documentLayout().setPaintDevice(device)
    document.setDocumentMargin(0.0)
    font = QFont(family())
    font.setPointSizeF(10.0)
    document.setDefaultFont(font)
    document.setDefaultStyleSheet(f"body {{ color: {INK.name()}; }}")
    for name, picture in pictures.items():
        document.addResource(QTextDocument.ResourceType.ImageResource.value, QUrl(name), picture)
    document.setHtml(text)
    document.setPageSize(paper.body / scale)
    return document


def _paint_page(painter: QPainter, document: QTextDocument, page: int, paper: _Paper, scale: float) -> None:
    size = paper.body / scale
    part = QRectF(0.0, page * size.height(), size.width(), size.height())
    painter.save()
    painter.translate(paper.side, paper.top)
    painter.scale(scale, scale)
    painter.translate(0.0, -part.top())
    painter.setClipRect(part)
    context = QAbstractTextDocumentLayout.PaintContext()
    context.clip = part
    context.palette.setColor(context.palette.ColorRole.Text, INK)
    document.documentLayout().draw(painter, context)
    painter.restore()


def _paint_edges(painter: QPainter, sheet: Sheet, number: int, total: int, paper: _Paper) -> None:
    """Paint the head and the foot of a page."""
    wide, mm = paper.body.width(), paper.mm
    left, right = Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignRight
    middle = Qt.AlignmentFlag.AlignVCenter
    painter.setPen(QUIET)
    painter.setFont(_font(8.0))
    head = QRectF(paper.side, 7.0 * mm, wide, 5.0 * mm)
    painter.drawText(head, left | middle, f"{tr(sheet.kind)}   \N{MIDDLE DOT}   {tr(sheet.title)}")
    painter.drawText(head, right | middle, f"{number} / {total}" if total > 1 else "")
    base = paper.height - paper.foot
    foot = QRectF(paper.side, base + 4.0 * mm, wide, 6.0 * mm)
    painter.drawText(foot, right | middle, tr(sheet.foot))
    room = wide - painter.fontMetrics().horizontalAdvance(tr(sheet.foot)) - 4.0 * mm
    painter.setPen(INK)
    painter.setFont(_font(LIMITS_PT, strong=True))
    need = painter.fontMetrics().horizontalAdvance(tr(sheet.limits))
    if need > room:  # in two languages it is as long as the page is wide
        painter.setFont(_font(LIMITS_PT * room / need, strong=True))
    painter.drawText(foot, left | middle, tr(sheet.limits))
    pen = painter.pen()
    pen.setColor(LINE)
    pen.setWidthF(PEN_MM * mm)
    painter.setPen(pen)
    for at in (12.5 * mm, base + 2.5 * mm):
        painter.drawLine(round(paper.side), round(at), round(paper.side + wide), round(at))


def _font(points: float, *, strong: bool = False) -> QFont:
    font = QFont(family())
    font.setPointSizeF(points)
    font.setBold(strong)
    return font
