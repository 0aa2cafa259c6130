"""A twin in the window: the open plan's car is duplicated, one thing changed, and both stand side by side."""

from __future__ import annotations

from sim.plan import Plan
from sim.problems import PlanError
from ui.beside_side import BesideSide
from ui.main_window import MainWindow
from ui.panels.twin_form import TwinForm
from ui.state.car_fields import one_line
from ui.state.session import Session
from ui.state.side_fields import BY_NAME, trouble_words
from ui.state.twin import twin_of


class TwinSide:
    """Asks for the one field that is changed on the twin, and puts the twin beside the plan.

    Parameters
    ----------
    session, window : the plan whose car is duplicated, and where it shows
    beside : shows both
    """

    def __init__(self, session: Session, window: MainWindow, beside: BesideSide) -> None:
        self.session, self.window, self._beside = session, window, beside
        self.form = TwinForm()
        self._change: tuple[str, object] | None = None
        window.left_pages.addWidget(self.form)
        self.form.wished.connect(self._wish)
        self.form.done.connect(self.back)
        beside.gone = self.back
        session.document.changed.connect(self.show)
        session.view.changed.connect(self.show)

    @property
    def form_on(self) -> bool:
        """Whether the form is what the left column shows."""
        return self.window.left_pages.currentWidget() is self.form

    def turn(self) -> None:
        """Open the form of a twin, or put it away; while two stand side by side, to make another."""
        if self._beside.page_on:  # two views may have taken the form's room
            self._beside.away()
        elif self.form_on:
            self.back()
            return
        why = self._beside.why_not()
        if why:
            self.window.notice.say(why)
            return
        if self.session.model is None:
            return
        self._change = None
        self.window.left_pages.setCurrentWidget(self.form)
        self.show()
        self.form.take_focus()

    @property
    def change(self) -> tuple[str, object] | None:
        """The field changed on the twin that stands beside the plan, and its value; None where none does."""
        return self._change if self.session.beside.is_twin else None

    def put_beside(self, name: str, value: object) -> None:
        """Put the twin with one field changed beside the plan, as the form does."""
        self._wish(name, value)

    def back(self) -> None:
        """Show the plan in the left column again; the pair stays where it is."""
        if self.form_on:
            self.window.left_pages.setCurrentIndex(0)
            self.window.focus_stage()

    def show(self) -> None:
        """Show the twin's car in the form, if that is open."""
        if self.form_on:
            twin = self._made(self.session.plan) or self.session.plan
            self.form.show_car(twin.car, self.session.view.options.units)

    def _made(self, plan: Plan) -> Plan | None:
        """Return a plan's twin by the change that was asked for; None where it has no such twin."""
        if self._change is None:
            return None
        try:
            return twin_of(plan, *self._change)
        except PlanError:
            return None

    def _wish(self, name: str, value: object) -> None:
        why = self._beside.why_not()
        units = self.session.view.options.units
        try:
            twin = twin_of(self.session.plan, name, value, units)
        except PlanError as problem:
            if name in BY_NAME:
                self.form.side.show_trouble(name, trouble_words(problem, units))
                return
            why = why or one_line(problem)
        if why:
            self.window.notice.say(why)
        else:
            self.window.notice.say("")
            self._change = name, value
            self._beside.put_twin(twin, self._made)
        self.show()
