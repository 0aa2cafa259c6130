"""Keeps the sitting as it changes, and brings back one that was left behind, to the same step.

The window only hands over references; a thread of its own writes them, at most every few tenths of a second.
"""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer

from ui.keeping_files import Left, SittingFile, WriterThread, keep_solved, left_behind, solved_before
from ui.keeping_view import KeepingView
from ui.main_window import MainWindow
from ui.scene.cameras import Shot
from ui.state.session import Session
from ui.state.sitting import (
    KeptCamera,
    KeptLesson,
    Sitting,
    restore_asking,
    restore_document,
    restore_moment,
    sitting_of,
    tried_again,
)

if TYPE_CHECKING:
    from sim.plan import Plan
    from sim.record import MoveRecord
    from ui.acting import Acting
    from ui.showing import Showing
    from ui.stage_side import StageSide

EVERY_MS = 300
MOST_TRIES = 2
"""A sitting that ended the program while it was brought back is not tried by itself more often."""
LEFT = "Hemline was not closed the last time. "


class Keeping:
    """The autosave of one window.

    Parameters
    ----------
    session, window, acting, showing : what is kept and brought back
    folder : where settings are remembered
    """

    def __init__(
        self, session: Session, window: MainWindow, acting: Acting, showing: Showing, folder: Path
    ) -> None:
        self.session, self.window, self._acting, self._showing = session, window, acting, showing
        self._folder, self._file, self._writer = folder, SittingFile(folder), WriterThread()
        self.view = KeepingView(session, window, acting, folder)
        self._side: StageSide | None = None
        self._last: Sitting | None = None
        self._coming: Sitting | None = None
        self._running = False
        self._solved: set[tuple[object, ...]] = set()
        self.left: Left | None = None
        self._timer = QTimer(window)
        self._timer.setSingleShot(True)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self._keep)

    # --- beginning ---------------------------------------------------------------------------------------

    def begin(self, side: StageSide | None, path: Path | None) -> None:
        """Look for a sitting left behind, bring it back where it is the one wanted, and keep from now on."""
        self._side = side
        self.left, trouble = left_behind(self._folder)
        if trouble:
            self.window.notice.say(trouble)
        self._connect(side)
        if self.left is None:
            return
        sitting = self.left.sitting
        if sitting.tries < MOST_TRIES and (path is None or str(path) in _files(sitting)):
            self.bring_back()
        else:
            self.window.notice.say(f"{LEFT}File, Bring back the last sitting: shows it again.")

    def _connect(self, side: StageSide | None) -> None:
        session, lessons = self.session, self._acting.lessons
        for signal in (
            session.document.changed, session.document.filed, session.timeline.moved,
            session.timeline.changed, session.selection.changed, session.view.changed,
            session.asking.changed, session.locks.changed, lessons.walk.changed, session.changed,
        ):  # fmt: skip
            signal.connect(self.soon)
        self.view.connect(self.soon)
        session.changed.connect(self._go_on)
        session.queue.changed.connect(self._go_on)
        if side is not None:
            side.view.frameSwapped.connect(self.soon)

    def soon(self) -> None:
        """Keep the sitting in a moment; many changes are kept once."""
        if not self._timer.isActive():
            self._timer.start()

    # --- keeping -----------------------------------------------------------------------------------------

    def _now(self) -> Sitting:
        walk, camera = self._acting.lessons.walk, None
        lesson = None
        if walk.path is not None:
            in_front = self.window.left_pages.currentWidget() is self._acting.lessons.panel
            lesson = KeptLesson(str(walk.path.absolute()), walk.position, in_front)
        if self._side is not None:
            shot = self._side.view.stage.shot
            camera = KeptCamera(shot.position, shot.focus, shot.up, shot.angle_deg)
        return sitting_of(self.session, lesson, camera, self.view.now())

    def _keep(self) -> None:
        if self._coming is not None:
            return
        now = self._now()
        if now != self._last:
            self._last = now
            self._writer.submit("sitting", lambda: self._file.write(now))
        self._keep_solved()

    def _keep_solved(self) -> None:
        session, other = self.session, self.session.beside.plan
        if session.queue.busy:
            return
        self._keep_records(session.plan, session.worked_out())
        if other is not None and not session.beside.is_twin:
            self._keep_records(other, session.worked_out(other))

    def _keep_records(self, plan: Plan, records: tuple[MoveRecord, ...]) -> None:
        model = self.session.model_of(plan)
        if model is None or not records:
            return
        if plan.start:  # its name says nothing of what the file holds
            return
        key = (plan.car, plan.past(len(records)))
        if key not in self._solved:
            self._solved.add(key)
            self._writer.submit("solved", lambda: keep_solved(self._folder, plan, model, records))

    def close(self) -> bool:
        """End the keeping; the window was closed by its user, so nothing is left behind."""
        self._timer.stop()
        if self.left is not None:
            self.left.let_go()
            self.left = None
        self._writer.submit("sitting", self._file.end)
        return self._writer.close()

    # --- bringing back -----------------------------------------------------------------------------------

    def bring_back(self) -> None:
        """Show the sitting that was left behind as it was."""
        if self.left is None:
            self.window.notice.say("There is no sitting that was left behind.")
            return
        sitting, left, self.left = tried_again(self.left.sitting), self.left, None
        # kept under this window's name first: should the program end now, it is found again
        if self._file.write(sitting):
            left.done()
        else:
            left.let_go()
        self._coming, self._running = sitting, False
        lesson = sitting.lesson
        if lesson is not None and Path(lesson.path).is_file():
            self._acting.lessons.open(Path(lesson.path), lesson.step)
        restore_document(self.session, sitting)
        if lesson is not None and not lesson.in_front:
            self.window.left_pages.setCurrentIndex(0)
        self.window.notice.say(f"{LEFT}{_when(sitting.written_at)}")
        self._go_on()

    @property
    def coming(self) -> bool:
        """Whether a sitting is still being brought back."""
        return self._coming is not None

    def _go_on(self) -> None:
        """Go on with bringing back, as soon as the door is there and the worker free."""
        session, sitting = self.session, self._coming
        if sitting is None or session.model is None or session.queue.busy:
            return
        if session.plan != sitting.plan:  # somebody went on working meanwhile: that counts
            self._come()
            return
        wanted, known = sitting.moves_shown, len(session.worked_out())
        if known < wanted:
            self._coming = None  # what is laid out here is told by the same signals
            session.know(session.plan, solved_before(self._folder, session.plan, wanted, session.model))
            self._coming = sitting
        if len(session.worked_out()) < wanted and not self._running:
            self._running = True
            session.run(wanted - 1)
            return
        self._place(sitting)

    def _place(self, sitting: Sitting) -> None:
        self._coming = None
        restore_moment(self.session, sitting)
        restore_asking(self.session, sitting)
        self.session.selection.select_move(sitting.selected)
        self.view.show_picture(sitting.view)
        self._showing.show_dirty()
        camera = sitting.camera
        if camera is not None and self._side is not None:
            self._side.view.stage.shot = Shot(camera.position, camera.focus, camera.angle_deg, camera.up)
        self.view.show_rest(sitting.view)
        self._come()

    def _come(self) -> None:
        """Keep the window from now on: it has come to rest."""
        self._coming = None
        self.soon()


def _files(sitting: Sitting) -> tuple[str, ...]:
    lesson = "" if sitting.lesson is None else sitting.lesson.path
    found = [name for name in (sitting.path, lesson) if name]
    return tuple(str(Path(name)) for name in found)


def _when(written_at: datetime | None) -> str:
    if written_at is None:
        return "Everything is as it was."
    return f"Everything is as it was at {written_at.astimezone():%H:%M}."
