"""The one sentence: what happened in large type, why and what else in smaller type below it."""

from __future__ import annotations

import re
from html import escape

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QSizePolicy

from ui.panels.look import GRID, Look
from ui.panels.pieces import Label, unbroken
from ui.state.tongue import tr

LEAD = re.compile(r"^(.{12,}?[.;])\s+(\S.*)$", re.DOTALL)
"""The first clause of some words, and what is left: never a number cut at its point."""


class Sentence(Label):
    """A label whose first clause is read from the back row; its text is plain words all the same."""

    def __init__(self) -> None:
        super().__init__()
        self._words, self._look = "", Look()
        self._sizes = "head", "body"
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def text(self) -> str:
        """Return the words, without how they are set."""
        return self._words

    def setText(self, text: str) -> None:
        """Show words in the language spoken."""
        if tr(text) != self._words:
            self._words = tr(text)
            self._set()

    def set_look(self, look: Look) -> None:
        """Set the words in the type of a look."""
        self._look = look
        self._set()

    def set_sizes(self, lead: str, more: str) -> None:
        """Set the first clause, and what follows it, in two of the four sizes of type."""
        if (lead, more) != self._sizes:
            self._sizes = lead, more
            self._set()

    def _set(self) -> None:
        words = unbroken(self._words)
        found = LEAD.match(words)
        lead, rest = found.groups() if found else (words, "")
        if rest and lead.endswith(";"):  # a clause of its own: it ends like one
            lead, rest = lead[:-1] + ".", rest[0].upper() + rest[1:]
        head, more = (self._look.px(size) for size in self._sizes)
        told = [f'<p style="font-size:{head}px; font-weight:600; margin:0">{escape(lead)}</p>']
        if rest:
            told.append(f'<p style="font-size:{more}px; margin:{GRID // 2}px 0 0 0">{escape(rest)}</p>')
        QLabel.setText(self, "".join(told) if self._words else "")
