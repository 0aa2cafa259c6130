"""Rows of tables kept whole on paper: a text document lets a row run over the foot of a page.

The document is laid out, the first row that two pages share is found, and the text is given a break before
it; a table that goes on has its head again.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from PySide6.QtGui import QTextDocument, QTextFrame, QTextTable

MOST_BREAKS = 24
BREAK = '<p style="page-break-before:always; font-size:1pt; margin:0px;"></p>'
TAG = re.compile(r"<(/?)(table|tr|thead)\b[^>]*>")


def with_whole_rows(text: str, lay_out: Callable[[str], QTextDocument]) -> QTextDocument:
    """Return a text's document with no row of an outer table on two pages, where one page can hold the row.

    Parameters
    ----------
    text : HTML;  lay_out : returns a document of a text, laid out on its pages
    """
    document = lay_out(text)
    for _ in range(MOST_BREAKS):
        found = _shared_row(document)
        if found is None:
            break
        text = _broken(text, *found)
        document = lay_out(text)
    return document


def _shared_row(document: QTextDocument) -> tuple[int, int] | None:
    """Return which table, counted as they begin, and which of its rows first lies on two pages."""
    high = document.pageSize().height()
    tables = sorted(_tables(document.rootFrame()), key=lambda table: table.firstPosition())
    for number, table in enumerate(tables):
        if table.parentFrame() is not document.rootFrame():
            continue  # inside a cell nothing can be put on another page
        for row in range(table.rows()):
            top, foot = _span(document, table, row)
            begins = int(top // high) * high
            if foot > begins + high + 1.0 and foot - top < high and top > begins + 1.0:
                return number, row
    return None


def _tables(frame: QTextFrame) -> list[QTextTable]:
    found = [frame] if isinstance(frame, QTextTable) else []
    for child in frame.childFrames():
        found += _tables(child)
    return found


def _span(document: QTextDocument, table: QTextTable, row: int) -> tuple[float, float]:
    """Return where a row begins and ends, down from the top of the first page [device px]."""
    layout = document.documentLayout()
    cells = [table.cellAt(row, column) for column in range(table.columns())]
    tops = [layout.blockBoundingRect(cell.firstCursorPosition().block()).top() for cell in cells]
    feet = [layout.blockBoundingRect(cell.lastCursorPosition().block()).bottom() for cell in cells]
    return min(tops), max(feet)


def _broken(text: str, number: int, row: int) -> str:
    """Return a text with a page's end before a row of a table."""
    depth, count, rows, head, start, opening = 0, -1, -1, "", 0, ""
    inside, head_at = 0, 0
    for tag in TAG.finditer(text):
        close, name = tag[1] == "/", tag[2]
        if name == "table":
            if not close:
                count += 1
                if count == number:
                    start, opening, inside = tag.start(), tag[0], depth + 1
            depth += -1 if close else 1
        elif count >= number and depth == inside and name == "thead":
            if close:
                head = text[head_at : tag.end()]
            else:
                head_at = tag.start()
        elif count >= number and depth == inside and name == "tr" and not close:
            rows += 1
            if rows == row:
                if rows == (1 if head else 0):
                    return text[:start] + BREAK + text[start:]
                return f"{text[: tag.start()]}</table>{BREAK}{opening}{head}{text[tag.start() :]}"
    return text
