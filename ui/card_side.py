"""The model card's side of the window: its sheet, what it shows, and the checks that are run for it."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt

from sim.checks.row import Row
from ui.check_job import CheckJob
from ui.main_window import MainWindow
from ui.panels.card import CardSheet
from ui.panels.pieces import dress
from ui.state import drill_log
from ui.state.model_card import ModelCard

SHARE = 0.94
"""Share of the window that the sheet takes."""


class CardSide:
    """Holds the sheet and connects it; made when the card is first opened.

    Parameters
    ----------
    window : over what it opens;  folder : where the drill log lies
    """

    def __init__(self, window: MainWindow, folder: Path | None = None) -> None:
        self.window, self._folder = window, folder
        self.state, self.sheet, self.job = ModelCard(), CardSheet(window), CheckJob()
        sheet, state = self.sheet, self.state
        sheet.chapter_wished.connect(state.show)
        sheet.words_wished.connect(state.search)
        sheet.check_wished.connect(self._check)
        sheet.stop_wished.connect(self.job.stop)
        self.job.row.connect(self._take, Qt.ConnectionType.QueuedConnection)
        self.job.ended.connect(state.end, Qt.ConnectionType.QueuedConnection)
        state.changed.connect(lambda: sheet.show_card(state))
        window.closing.connect(self.job.close)

    def open(self) -> None:
        """Show the card over the window, as large as that allows."""
        dress(self.sheet, self.window.look)
        if self._folder is not None:
            self.state.drills = drill_log.load(self._folder)
        room = self.window.size()
        self.sheet.resize(QSize(round(SHARE * room.width()), round(SHARE * room.height())))
        self.sheet.show()
        self.sheet.show_card(self.state)
        self.sheet.refit()
        self.sheet.raise_()

    def _check(self) -> None:
        self.state.begin(self.job.total)
        self.job.start()

    def _take(self, answer: tuple[str, Row]) -> None:
        if self.state.running:
            self.state.take(*answer)
