"""The lesson's sheets from the window: as PDF, or to a printer."""

from __future__ import annotations

import tempfile
from pathlib import Path

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QFileDialog

from sim import kept
from sim.problems import PlanError
from ui.lesson_pictures import pictures_of
from ui.main_window import MainWindow
from ui.panels.lesson_sheets import PrintSheet
from ui.panels.pieces import dress
from ui.printing import paint, set_up, write_pdf
from ui.refusal import Refusal, told_in_window
from ui.seats import seat_numbers
from ui.state import drill_log, overlay
from ui.state.lesson import Lesson
from ui.state.lesson_results import PlanResult
from ui.state.lesson_walk import LessonWalk
from ui.state.session import Session
from ui.state.sheet import Sheet
from ui.state.sheets import sheet_of
from ui.state.tongue import tr

SETTLE_MS = 60
"""A closed dialog is off the screen by then."""
NOTHING_YET = "Run the plan to its end, or open a lesson: a sheet is made from what came out."

NOT_PRINTED = "Nothing was printed: the printer took no page. Save the sheet as PDF instead."


class LessonPaper:
    """Asks which sheet, makes it, and brings it to paper.

    Parameters
    ----------
    window, session, walk : over what it opens, the plan shown, and the lesson in hand
    folder : where local rules lie
    """

    def __init__(self, window: MainWindow, session: Session, walk: LessonWalk, folder: Path) -> None:
        self.window, self.session, self.walk, self._folder = window, session, walk, folder
        self._scratch = tempfile.TemporaryDirectory(prefix="hemline-sheets-")
        self.results: dict[str, PlanResult] = {}
        self.sheet = PrintSheet(window)
        self.sheet.pdf_wished.connect(self._ask_pdf)
        self.sheet.print_wished.connect(self._ask_printer)
        window.closing.connect(self._scratch.cleanup)

    def open(self) -> None:
        """Show the window; without a lesson, for the plan that has been run."""
        if self._material() is None:
            self.window.notice.say(NOTHING_YET)
            return
        self.sheet.show_kinds(lesson=self.walk.is_open)
        dress(self.sheet, self.window.look)
        self.sheet.show()
        self.sheet.adjustSize()  # its words are as large as the window's, which it knows only now

    def _material(self) -> Lesson | None:
        """Return the lesson in hand, else the plan that has been run as one of its own; None for neither."""
        if self.walk.lesson is not None:
            self.results = self.walk.results
            return self.walk.lesson
        session = self.session
        plan, model, records = session.plan, session.model, session.records()
        if model is None or not records or len(records) < len(plan.moves):
            return None
        folder = Path(self._scratch.name)
        found = kept.put(plan, model, records, folder, "plan")
        self.results = {"plan": PlanResult("plan", "plan", plan, found, "", folder)}
        return Lesson(title=plan.title or "A plan")

    def _made(self, kind: str, seats: str) -> Sheet | None:
        try:
            lesson = self._material()
            if lesson is None:
                self.window.notice.say(NOTHING_YET)
                return None
            seats_asked, drills = seat_numbers(seats), drill_log.load(self._folder)
            ours = overlay.load(self._folder)
            return sheet_of(kind, lesson, self.results, overlay=ours, seats=seats_asked, drills=drills)
        except (PlanError, Refusal) as problem:
            self.window.notice.say(str(problem))
            return None

    def _ask_pdf(self, kind: str, paper: str, seats: str, colour: bool) -> None:
        made = self._made(kind, seats)
        if made is None:
            return
        place = str(Path.home() / f"{kind}.pdf")
        name, _ = QFileDialog.getSaveFileName(self.window, tr("Save the sheet"), place, "PDF (*.pdf)")
        if not name:
            return
        path = Path(name if name.lower().endswith(".pdf") else f"{name}.pdf")
        self.sheet.hide()
        self.window.notice.say(f"Making the sheet: {path.name} \u2026")
        # drawn once both dialogs are off the screen: the pictures take seconds on a slow machine
        QTimer.singleShot(SETTLE_MS, self.window, lambda: self.save(made, path, paper, colour=colour))

    def save(self, made: Sheet, path: Path, paper: str, *, colour: bool) -> None:
        """Write a sheet as PDF and say where it is."""
        QGuiApplication.setOverrideCursor(Qt.CursorShape.WaitCursor)
        try:
            pages = write_pdf(made, path, pictures_of(made, self.results, colour=colour), paper)
        except OSError as problem:
            self.window.notice.say(told_in_window(path, "written", problem))
            return
        finally:
            QGuiApplication.restoreOverrideCursor()
        self.sheet.hide()
        self.window.notice.say(f"{made.kind}, {pages} {'page' if pages == 1 else 'pages'}: {path}")

    def _ask_printer(self, kind: str, paper: str, seats: str, colour: bool) -> None:
        made = self._made(kind, seats)
        if made is None:
            return
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        set_up(printer, paper)
        dialog = QPrintDialog(printer, self.window)
        if dialog.exec() == QDialog.DialogCode.Accepted:
            self.sheet.hide()
            self.window.notice.say("Making the sheet \u2026")
            QTimer.singleShot(SETTLE_MS, self.window, lambda: self.put_on(printer, made, colour=colour))

    def put_on(self, printer: QPrinter, made: Sheet, *, colour: bool) -> None:
        """Print a sheet and say where it went."""
        QGuiApplication.setOverrideCursor(Qt.CursorShape.WaitCursor)
        try:
            pages = paint(made, printer, pictures_of(made, self.results, colour=colour))
        except OSError:
            self.window.notice.say(NOT_PRINTED)
            return
        finally:
            QGuiApplication.restoreOverrideCursor()
        where = printer.outputFileName() or f"sent to {printer.printerName()}"
        self.window.notice.say(f"{made.kind}, {pages} {'page' if pages == 1 else 'pages'}: {where}")
