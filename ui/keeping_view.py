"""What else of the window a sitting holds: the form's page, section plane and measuring, the plan beside."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from ui.keeping_files import solved_before
from ui.state.sitting import KeptBeside, KeptView, picture_of, seeing_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from ui.acting import Acting
    from ui.main_window import MainWindow
    from ui.state.session import Session
    from ui.twin_side import TwinSide


class KeepingView:
    """Reads what stands open in the window, and opens it again.

    Parameters
    ----------
    session, window, acting : what is read and opened again;  folder : where solved results lie

    Attributes
    ----------
    twins : makes twins, once it is there
    """

    def __init__(self, session: Session, window: MainWindow, acting: Acting, folder: Path) -> None:
        self._session, self._window, self._acting, self._folder = session, window, acting, folder
        self.twins: TwinSide | None = None

    def connect(self, soon: Callable[[], None]) -> None:
        """Have something called whenever what stands open changes."""
        window, beside, see = self._window, self._session.beside, self._acting.see
        window.left_pages.currentChanged.connect(lambda _: soon())
        window.form.page_buttons.idClicked.connect(lambda _: soon())
        for signal in (beside.changed, beside.moved):
            signal.connect(soon)
        if see is not None:
            for signal in (see.seeing.changed, see.marks.changed):
                signal.connect(soon)

    def now(self) -> KeptView:
        """Return what stands open."""
        window, see = self._window, self._acting.see
        form = window.form if window.left_pages.currentWidget() is window.form else None
        return KeptView(
            None if form is None else form.pages.currentIndex(),
            None if see is None else picture_of(see.seeing.now, see.marks.now),
            self._beside_now(),
        )

    def _beside_now(self) -> KeptBeside | None:
        session, beside = self._session, self._session.beside
        if beside.plan is None:
            return None
        change = None if self.twins is None else self.twins.change
        if beside.is_twin and change is None:
            return None
        known = len(session.records(beside.plan))
        return KeptBeside(beside.plan, change, beside.position, known)  # type: ignore[arg-type]

    def show_picture(self, view: KeptView | None) -> None:
        """Take the picture apart as it was, with what was drawn and measured on it."""
        see = self._acting.see
        if view is None or view.picture is None or see is None:
            return
        see.marks.set(view.picture.marks)
        see.seeing.set(seeing_of(view.picture))

    def show_rest(self, view: KeptView | None) -> None:
        """Put the plan beside again, and open the form where it stood open."""
        if view is None:
            return
        if view.beside is not None:
            self._put_beside(view.beside)
        if view.form_page is not None:
            self._window.form.turn_to(view.form_page)
            self._acting.act("form")

    def _put_beside(self, kept: KeptBeside) -> None:
        session, model = self._session, self._session.model
        if kept.change is not None:
            if self.twins is not None:
                self.twins.put_beside(*kept.change)
                self._acting.beside.keep_camera()
            return
        if model is not None and kept.known:
            session.know(kept.plan, solved_before(self._folder, kept.plan, kept.known, model))
        if self._acting.beside.put_beside(kept.plan):
            self._acting.beside.keep_camera()
            session.beside.go(kept.place)
