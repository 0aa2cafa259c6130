"""Habits people expect of any program: the moment in words, the window as at first, the machine, the log."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QWidget

from ui.listening import new_log
from ui.machine import facts_here, versions
from ui.main_window import MainWindow
from ui.panels.room import fills, first_size
from ui.panels.told_sheet import ToldSheet
from ui.state.describing import described
from ui.state.machine import report
from ui.state.session import Session
from ui.state.tongue import tr


class HelpSide:
    """Opens the small windows of help; puts the window back to how it began.

    Parameters
    ----------
    session, window : what is told of, and what is put back
    folder : where settings are remembered
    """

    def __init__(self, session: Session, window: MainWindow, folder: Path) -> None:
        self.session, self.window, self._folder = session, window, folder
        self.log = new_log()
        # when the window stands: asking every library for its version takes longer than making a panel
        QTimer.singleShot(0, window, lambda: self.log.note("start", versions()))
        window.notice.told.connect(self._note)
        self._sheets: dict[str, ToldSheet] = {}
        self._view: QWidget | None = None
        for signal in (session.timeline.moved, session.timeline.changed, session.document.changed):
            signal.connect(self._tell_reader)

    def watch(self, view: QWidget) -> None:
        """Name the stage for screen readers, and tell them the moment it shows."""
        self._view = view
        view.setAccessibleName(tr("Stage: the door in three dimensions"))
        self._tell_reader()

    def _tell_reader(self) -> None:
        if self._view is not None and QAccessible.isActive():
            self._view.setAccessibleDescription(tr(described(self.session)))

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of help do, by name."""
        return {
            "describe": self.describe,
            "layout": self.reset_layout,
            "here": self.here,
            "log": self.show_log,
        }

    def _note(self, sentence: str, report: str) -> None:
        self.log.note("said", sentence)
        self.log.note("report", report)

    def _machine(self) -> str:
        return report(facts_here(self._folder, pictures=self._view is not None))

    def here(self) -> None:
        """Show what this machine has, and what helps where it is too little."""
        self._sheet(
            "here",
            "Will it run here",
            "What this machine has",
            "What was found, a word for it, and what to do.",
            "Copy the report",
        ).show_text(self._machine)

    def show_log(self) -> None:
        """Show what happened in the program, with the machine it happened on."""
        self._sheet(
            "log",
            "What happened in the program",
            "Log and machine",
            "For a report: no names, no folders, no text of yours. Read it before you send it.",
            "Copy the report",
        ).show_text(lambda: f"{versions()}\n\n{self._machine()}\n\n{self.log.text}")

    def describe(self) -> None:
        """Show the moment in words."""
        self._sheet(
            "describe",
            "This moment in words",
            "The moment in words",
            "For a screen reader, a caption, or beside a picture.",
            "Copy the words",
        ).show_text(lambda: described(self.session))

    def _sheet(self, key: str, title: str, name: str, lead: str, copy: str) -> ToldSheet:
        if key not in self._sheets:
            self._sheets[key] = ToldSheet(self.window, title, name, lead, copy)
        return self._sheets[key]

    def reset_layout(self) -> None:
        """Put columns, drawers, pages and size of the window back to how they were at first."""
        window, view = self.window, self.session.view
        view.set(dataclasses.replace(view.options, stage_only=False, drawer="reading"))
        screen = window.screen().availableGeometry()
        window.setWindowState(Qt.WindowState.WindowNoState)
        if fills(screen.size()):
            window.showMaximized()  # with a frame round it the window would reach past the screen
        else:
            window.resize(first_size(screen.size()))
            window.move(screen.topLeft())
        window.left_pages.setCurrentIndex(0)
        if not self.session.asking.unspoken and self.session.beside.plan is None:
            window.right_pages.setCurrentWidget(window.reading)
        window.focus_stage()
