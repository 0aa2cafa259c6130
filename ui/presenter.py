"""Presenting: the big picture on the class's display, notes and the next page on the teacher's."""

from __future__ import annotations

import dataclasses
import time
from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QGuiApplication

from ui.lesson_side import LessonSide
from ui.main_window import MainWindow
from ui.panels.notes import NotesWindow, NotesWords
from ui.state.asking import Standing
from ui.state.locks import ANSWERS
from ui.state.presenting import Page, displays, page_at, plan_pages
from ui.state.session import Session
from ui.teaching import Teaching

TICK_MS = 20_000
"""How often the clock of the notes is set; it shows minutes."""
STANDING_WORDS = {
    Standing.OFF: "",
    Standing.OPEN: "A prediction is open: nothing of the outcome is shown. Lock it (L).",
    Standing.LOCKED: "The prediction is locked. Run the push (Return), then compare (R).",
    Standing.SHOWN: "Prediction and outcome are compared.",
}
ONE_DISPLAY = "One display: the notes lie behind key F7; Page Up and Page Down turn the pages, F5 ends."


class Presenter:
    """Shows the stage alone on one display and the teacher's notes on another, or behind a key.

    Parameters
    ----------
    session, window : what is shown
    lessons, teaching : where pages come from when a lesson is open; what Ask and Shut do
    """

    def __init__(self, session: Session, window: MainWindow, lessons: LessonSide, teaching: Teaching) -> None:
        self.session, self.window = session, window
        self._lessons, self._teaching = lessons, teaching
        self.on = False
        self.notes: NotesWindow | None = None
        self.changed: Callable[[], object] = lambda: None
        """Called when what the class reads below the stage has changed."""
        self._number = 0
        self._before: tuple[bool, Qt.WindowState] = (False, Qt.WindowState.WindowNoState)
        self._place, self._came_from = window.geometry(), window.screen()
        self._began = 0.0
        self._clock = QTimer(window)
        self._clock.setInterval(TICK_MS)
        self._clock.timeout.connect(self._show_clock)
        lessons.walk.changed.connect(self._show)
        session.timeline.moved.connect(self._moved)
        session.changed.connect(self._show)
        session.asking.changed.connect(self._show)
        session.locks.changed.connect(self._show)
        window.closing.connect(self._close_notes)

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of presenting do, by name."""
        return {"present": self.turn, "notes": self.turn_notes}

    # --- on and off --------------------------------------------------------------------------------------

    def turn(self) -> None:
        """Begin to present, or end it and leave the window as it was."""
        if self.on:
            self._end()
        else:
            self._begin()

    def _begin(self) -> None:
        window, view = self.window, self.session.view
        self.on, self._began = True, time.monotonic()
        self._before = (view.options.stage_only, window.windowState())
        self._place = window.normalGeometry() if window.isMaximized() else window.geometry()
        self._came_from = window.screen()
        view.set(dataclasses.replace(view.options, stage_only=True))
        screens = QGuiApplication.screens()
        rects = [tuple(screen.geometry().getRect()) for screen in screens]
        for_class, for_notes = displays(rects, screens.index(QGuiApplication.primaryScreen()))
        # the display first: which one a window fills is settled before its new place has come back
        if screens[for_class] is not self._came_from:
            window.showNormal()  # one that fills a display cannot be moved to another
        window.setScreen(screens[for_class])
        window.setGeometry(screens[for_class].geometry())
        window.showFullScreen()
        self._number = page_at(self.pages, self.session.timeline.position)
        if for_notes is not None:
            notes = self._notes_window()
            notes.setScreen(screens[for_notes])
            notes.setGeometry(screens[for_notes].availableGeometry())
            notes.showMaximized()
        else:
            window.notice.hint(ONE_DISPLAY)
        self._clock.start()
        self._show()
        window.focus_stage()

    def _end(self) -> None:
        self.on = False
        self._clock.stop()
        alone, state = self._before
        self._close_notes()
        there = self._came_from in QGuiApplication.screens()  # it may have been unplugged meanwhile
        if there and self._came_from is not self.window.screen():
            self.window.showNormal()  # as on the way there
            self.window.setScreen(self._came_from)
            self.window.setGeometry(self._place)
        self.window.setWindowState(state)
        if state is Qt.WindowState.WindowNoState:
            self.window.setGeometry(self._place)
        self.session.view.set(dataclasses.replace(self.session.view.options, stage_only=alone))
        self.window.notice.take_back(ONE_DISPLAY)
        self.changed()
        self.window.focus_stage()

    def turn_notes(self) -> None:
        """Show the notes, or put them away: the key for rooms with one display."""
        if self.notes is not None and self.notes.isVisible():
            self.notes.hide()
            self.window.activateWindow()
            self.window.focus_stage()
            return
        notes = self._notes_window()
        self._show()
        area = self.window.screen().availableGeometry()
        notes.resize(min(720, area.width() * 3 // 5), min(520, area.height() * 3 // 4))
        notes.move(area.center() - notes.rect().center())
        notes.show()
        notes.raise_()
        notes.activateWindow()

    def _notes_window(self) -> NotesWindow:
        if self.notes is None:
            notes = self.notes = NotesWindow(self.window)
            notes.addActions(self.window.actions())
            notes.on_wished.connect(lambda: self.go(1))
            notes.back_wished.connect(lambda: self.go(-1))
            notes.ask_wished.connect(self._teaching.ask)
            notes.shut_wished.connect(self.session.locks.turn_all)
            notes.end_wished.connect(self._end_or_close)
        self.notes.set_look(self.window.look)
        return self.notes

    def _end_or_close(self) -> None:
        if self.on:
            self._end()
        else:
            self._close_notes()

    def _close_notes(self) -> None:
        if self.notes is not None:
            self.notes.hide()

    # --- pages -------------------------------------------------------------------------------------------

    @property
    def pages(self) -> tuple[Page, ...]:
        """The pages: the lesson's steps if one is open, else the plan's own."""
        walk, session = self._lessons.walk, self.session
        if walk.is_open:
            return tuple(
                Page(f"{step.title}", walk.fill(step.words), walk.fill(step.notes)) for step in walk.steps
            )
        records = [] if session.asking.open else session.records()
        return plan_pages(
            session.plan, records, session.view.options.units, spoken=not session.asking.unspoken
        )

    @property
    def number(self) -> int:
        """Which page is shown."""
        walk = self._lessons.walk
        return walk.position if walk.is_open else min(self._number, len(self.pages) - 1)

    def go(self, way: int) -> None:
        """Turn to the next page, or to the one before."""
        walk, session = self._lessons.walk, self.session
        if way > 0 and session.asking.open:
            self._teaching.remind()
            return
        if walk.is_open:
            walk.go(walk.position + way)
            return
        self._teaching.page_turned()
        pages = self.pages
        self._number = min(max(self.number + way, 0), len(pages) - 1)
        page = pages[self._number]
        if page.move >= 0:
            session.selection.select_move(page.move)
        if page.moment is not None:
            session.line.go(page.moment)
        self._show()

    def _moved(self) -> None:
        """Follow the moment shown where it was reached by other ways than by turning pages."""
        if not self.on and self.notes is None:
            return
        walk, pages = self._lessons.walk, self.pages
        here = None if walk.is_open or self._number >= len(pages) else pages[self._number].moment
        if here is not None and here != self.session.timeline.position:
            self._number = page_at(pages, self.session.timeline.position)
            self._show()

    @property
    def class_words(self) -> str:
        """What the class reads below the stage; empty where it reads what the metal does."""
        if not self.on:
            return ""
        page = self.pages[self.number]
        hidden = page.tells and self.session.hides(ANSWERS)
        return "" if hidden or page.tells else page.words or page.title

    # --- showing -----------------------------------------------------------------------------------------

    def _show(self) -> None:
        if self.on:
            self.changed()
        if self.notes is None:
            return
        pages, number = self.pages, self.number
        page = pages[number]
        following = pages[number + 1].title if number + 1 < len(pages) else ""
        shut = "Answers are shut (T opens them). " if self.session.locks.shut else ""
        self.notes.show_words(
            NotesWords(
                f"Page {number + 1} of {len(pages)}", page.title, page.words, page.notes, following,
                shut + STANDING_WORDS[self.session.asking.standing], self._time(),
            )
        )  # fmt: skip

    def _show_clock(self) -> None:
        if self.notes is not None:
            self.notes.show_clock(self._time())

    def _time(self) -> str:
        now = datetime.now().strftime("%H:%M")
        return f"{now}, {(time.monotonic() - self._began) / 60:.0f} min" if self.on else now
