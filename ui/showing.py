"""Showing the session in the window: each kind of change is drawn once, after the events at hand."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from sim.move_words import is_driven, opened, words_of
from sim.plan import Move, Plan, Spread, Squeeze
from sim.units import force_text, length_text
from ui.main_window import MainWindow
from ui.panels.look import Look
from ui.panels.scrub import Moments
from ui.state.cards import cards
from ui.state.locks import ANSWERS, ARROW, LADDER, SHUT, WAITS, veiled
from ui.state.questions import can_ask
from ui.state.reading import read
from ui.state.session import Session
from ui.state.tongue import tr
from ui.state.wording import event_words

if TYPE_CHECKING:
    from ui.stage_side import StageSide

ORDER = ("look", "options", "layout", "plan", "moment", "aim", "able")


class Showing:
    """What has changed, and how to show it.

    Parameters
    ----------
    session, window : what is shown, and where
    soon : called when something has changed and is to be shown after the events at hand
    """

    def __init__(self, session: Session, window: MainWindow, soon: Callable[[], object]) -> None:
        self.session, self.window, self._soon = session, window, soon
        self.side: StageSide | None = None
        self.ready: dict[str, Plan] = {}
        self.class_words: Callable[[], str] = lambda: ""
        """What the class is to read below the stage before anything has moved."""
        self.more: list[Callable[[], object]] = []
        """Shows what is told beside plan and moment: the wreck, a move's form, prompts."""
        self.page_words: Callable[[], str] = lambda: ""
        """What is read below a stage that stands alone while another page than the reading is open."""
        self.show_second: Callable[[], object] = lambda: None
        """Draws the plan beside, where there is one."""
        self._dirty: set[str] = set()

    def later(self, *what: str) -> None:
        """Show some things again when the events at hand are done: many changes, one drawing."""
        self._dirty.update(what)
        self._soon()

    def show_dirty(self) -> None:
        """Show what has changed, now."""
        dirty, self._dirty = self._dirty, set()
        if dirty & {"plan", "moment"}:
            dirty.add("able")
        for name in ORDER:
            if name in dirty:
                getattr(self, f"_show_{name}")()
                if name == "moment":
                    dirty.discard("aim")  # a part of the moment
        if dirty & {"plan", "moment", "layout"}:
            for show in self.more:
                show()

    def _show_look(self) -> None:
        options = self.session.view.options
        scale = options.text_scale(self.window.width())
        look = Look(options.theme == "dark", scale, options.projector)
        if look != self.window.look or not self.window.styleSheet():
            self.window.set_look(look)

    def _show_options(self) -> None:
        options = self.session.view.options
        self.window.show_options(options)
        self.window.layers.show_options(options)
        self.window.scrub.set_units(options.units)
        if self.side is not None:
            self.side.show_options()
            button = Qt.MouseButton.RightButton if options.right_turns else Qt.MouseButton.LeftButton
            for view in self.window.stages.views:
                view.turn_button = button

    def _show_layout(self) -> None:
        self.window.show_layout(self.session.view.options)

    def _show_plan(self) -> None:
        session, window = self.session, self.window
        plan, units = session.plan, session.view.options.units
        ready = next((name for name, made in self.ready.items() if alike(made, plan)), "")
        window.plan.show_plan(self._title(plan, ready), cards(session), ready)
        tool = next((move.tool for move in plan.moves if isinstance(move, Spread | Squeeze)), Spread().tool)
        window.form.show_form(plan.car, tool, units, plan.moves)
        window.show_steps(
            tuple(step.label for step in session.document.steps), session.document.history.position
        )
        path = session.document.path
        name = path.name if path else tr(self._title(plan, ready) or "New plan")
        window.setWindowTitle(f"{name}{' *' if session.document.dirty else ''} \u2013 Hemline")
        window.scrub.show_stop_count(len(getattr(session.move, "stop_at", ())))
        if session.move is not None:
            window.scrub.show_opening(session.wanted_opening_m if is_driven(session.move) else None)

    def _title(self, plan: Plan, ready: str) -> str:
        """Return the plan's title; a ready plan that was changed says that it was."""
        mine = not ready and any(plan.title == made.title for made in self.ready.values())
        return f"Changed from: {plan.title}" if mine else plan.title

    def _show_moment(self) -> None:
        session, window = self.session, self.window
        line, units = session.line, session.view.options.units
        shown = () if session.hides(ANSWERS) else line.marks
        marks = tuple((mark.position, event_words(mark.event)) for mark in shown)
        frame = session.timeline.frame
        force = (
            ""
            if frame is None or session.hides(LADDER) or session.beside.on
            else force_text(frame.force_n, units)
        )
        now = f"{length_text(frame.opening_m, units)}  {force}" if frame else ""
        if session.tool_rests:  # where the tips were let go is not where blades or hands are
            now = tr(words_of(session.plan.moves[session.timeline.move]).verbs[2])
        moments = Moments(len(line), line.position, line.starts(), marks, line.places())
        window.scrub.show_moments(moments, now)
        if self.side is not None:
            self.side.show_moment()
            self.side.show_hint()
            self.show_second()
        self._show_reading()

    def _show_aim(self) -> None:
        if self.side is not None:
            self.side.show_foretold()
            self._show_reading()

    def _show_reading(self) -> None:
        session, window = self.session, self.window
        line, units = session.timeline, session.view.options.units
        live = self.side.live_words() if self.side is not None else ""
        reading = veiled(
            read(
                line,
                session.result_here,
                live,
                session.compared_with,
                units,
                session.plan.car,
                session.model,
            ),
            answers=session.hides(ANSWERS),
            ladder=session.hides(LADDER),
            arrow=session.hides(ARROW),
            aiming=session.aiming,
            waits=session.arrow_waits() and not session.asking.unspoken,
        )
        window.reading.show_reading(reading, units)
        # where a lesson has yet to ask, its own step does
        window.reading.show_ask(on=session.aiming and can_ask(session.move) and not session.arrow_waits())
        read_here = window.right_pages.currentWidget() is window.reading
        told = reading.sentence if reading.sentence not in (SHUT, WAITS) else ""
        told = told.partition(". ")[0].rstrip(".") + "." if told else ""
        at_rest = session.aiming or reading.sentence == SHUT
        told = self.class_words() or told if at_rest else told
        # a card or a pair has its own words beside
        window.show_lower_third(told if read_here else self.page_words())

    def _show_able(self) -> None:
        session, window = self.session, self.window
        history = session.document.history
        at_once = session.move is not None and not is_driven(session.move)
        verb = "Open the tips" if session.move is None else words_of(session.move).verbs[0]
        verb = "Let go to stop" if session.queue.holding else verb
        if not session.start_is_known and not session.queue.busy:
            verb = "Work out the wreck"
        window.scrub.show_able(
            can_open=session.can_open
            or session.queue.holding
            or (at_once and session.can_run)
            or (session.can_find and not session.start_is_known),
            can_run=session.can_run,
            can_stop=session.can_stop,
            can_go_on=session.can_go_on_from_here,
            verb=verb,
        )
        drawn = self.side is not None and session.model is not None
        window.show_able({
            "undo": history.can_undo, "redo": history.can_redo, "run": session.can_run,
            "go_on": session.can_go_on_from_here, "picture": drawn,
            "mesh": session.model is not None,
        })  # fmt: skip
        window.actions_by_name["undo"].setText(
            f"{tr('Undo')}: {history.undo_label}" if history.can_undo else tr("Undo")
        )
        window.actions_by_name["redo"].setText(
            f"{tr('Redo')}: {history.redo_label}" if history.can_redo else tr("Redo")
        )
        window.solver.say(*self._solver_words())
        if self.side is not None:
            waits = session.model is None and session.busy_words
            window.stages.show_veil(f"{session.busy_words} \u2026" if waits else "")
            self.side.show_hint()

    def _solver_words(self) -> tuple[str, ...]:
        """Return what is going on or what was worked out, the longest wording first."""
        session = self.session
        if session.busy_words:
            return f"{session.busy_words} \u2026", "\u2026"
        record = session.record(max(session.timeline.move, 0))
        if record is None or record.result is None:
            nodes = len(session.model.structure.points) if session.model is not None else 0
            return (f"{nodes} nodes, ready", "ready", "") if nodes else ("",)
        note = record.result.solver
        nodes, steps = f"{note.node_count} nodes", counted(note.increment_count)
        told = (nodes, steps, note.name, f"{session.seconds:.1f} s")
        return ", ".join(told), f"{nodes}, {steps}, {told[-1]}", f"{nodes}, {steps}", nodes


def counted(steps: int) -> str:
    """Return how many steps the solver took, as one says it."""
    return "1 step" if steps == 1 else f"{steps} steps"


def alike(one: Plan, other: Plan) -> bool:
    """Tell whether two plans are the same but for how far the tips were opened."""
    if one.title != other.title or one.car != other.car or len(one.moves) != len(other.moves):
        return False
    return all(_aimed_alike(a, b) for a, b in zip(one.moves, other.moves, strict=True))


def _aimed_alike(one: Move, other: Move) -> bool:
    return opened(one, 0.0) == opened(other, 0.0)
