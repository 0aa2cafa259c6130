"""What belongs to the 3D stage: drawing the moment and the aim, and what pointing at it means.

Imported in the window's first idle moment, because the drawing library takes its time to load. Connects
nothing; `ui.app` does.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
from PySide6.QtCore import QTimer

from sim import aim as aims
from sim.builds import labelled
from sim.crush import make_crush
from sim.plan import Crush, Move, Place, Plan, Spread, Squeeze
from sim.problems import PlanError
from sim.record import Aim, Frame
from sim.units import Units, length_text
from ui.colour_scale import scale_of
from ui.main_window import MainWindow
from ui.map_on_stage import MapOnStage
from ui.scene.cameras import SHOTS
from ui.scene.picture import save_png, screenshot
from ui.scene.view import StageView
from ui.stage_words import hint_words, moment_words, named, next_words, seat_words, sentence, split_words
from ui.state import steering
from ui.state.aims import AIMED, aim_words, arrow_words, pointed_words
from ui.state.describing import written_inside
from ui.state.folds import coloured
from ui.state.locks import ARROW, LADDER
from ui.state.pointing import Under, panel_of, under
from ui.state.reading import clearance_told
from ui.state.section_view import section_view
from ui.state.session import Session
from ui.state.slid import aim_now, as_now
from ui.state.steering import CannotSteer
from ui.state.two_ways import offered
from ui.state.wreck_card import before_plan, wreck_words
from ui.tip_steering import TipSteering, switch_words
from ui.tools_shown import shown_with, taken_off

__all__ = ["StageSide", "StageView"]

MADE_KEPT = 4
STILL_MS = 150
"""How long pointer and wheel must rest before a push is tried."""
VIEWS = ("three_quarter", "latch", "section", "patient", "hinge", "top")


class StageSide(TipSteering, MapOnStage):
    """Shows the session on a stage and turns pointing into wishes.

    Parameters
    ----------
    view, window, session : what is shown, where, and of what
    """

    def __init__(self, view: StageView, window: MainWindow, session: Session) -> None:
        self.view, self._window, self._session = view, window, session
        self._stage: Any = view.stage
        self.more_stages: list[Any] = []
        """Stages beside this one, dressed as it is."""
        self._model: object = None
        self._view_index = 0
        self._hovered: Spread | Squeeze | None = None
        self.aimed: Callable[[], object] = self.show_aim
        """Called when another push is pointed at."""
        self._made: dict[tuple[object, ...], tuple[Aim, object, object, object]] = {}
        self._aim_at_rest = QTimer(window)
        self._aim_at_rest.setSingleShot(True)
        self._aim_at_rest.setInterval(STILL_MS)
        self._aim_at_rest.timeout.connect(self._try_aim)
        self._said = self._coloured = ""
        self._said_of: Plan | None = None
        self.start_shape = True
        self.leaving: Callable[[], object] = _nothing
        self.arrived: Callable[[str], object] = _nothing
        self.moment_shown: Callable[[], object] = _nothing
        """Called before a saved view is gone to, with its name once it is, and when another moment shows."""
        view.wheel_filter = self.wheel

    # --- showing -----------------------------------------------------------------------------------------

    def show_options(self) -> None:
        """Show layers, colours and theme, on a stage beside as well."""
        for stage in (self._stage, *self.more_stages):
            self.dress_stage(stage)
        self._coloured = coloured(self._session)
        self._window.show_scale(scale_of(self._session))

    def dress_stage(self, stage: Any) -> None:
        """Show layers, colours and theme on a stage."""
        options = self._session.view.options
        theme = "projector" if options.projector else "dark" if options.theme == "dark" else "light"
        stage.set_theme(theme)
        stage.set_words(arrow=arrow_words, length=lambda value_m: length_text(value_m, options.units))
        stage.set_line_scale(options.text_scale(self._window.width()))
        for layer, mode in options.layers.items():
            stage.set_layer(layer, mode.value)
        stage.set_colour_mode(coloured(self._session))

    def show_moment(self) -> None:
        """Draw the metal as it is at the moment shown, with the tips on it."""
        session = self._session
        model, frame = session.model, session.timeline.frame
        if model is None or frame is None:
            return
        if model is not self._model:
            self._model = model
            self._stage.set_model(model)
            self._window.layers.show_side(getattr(model, "side", None) is not None)
            self.show_options()
        elif coloured(session) != self._coloured:
            self.show_options()  # opened or kept shut since
        self._stage.show_points(frame.points, frame)
        self.map_follows()
        self._window.show_scale(scale_of(session))
        if frame.state is None:  # a kept moment: what has come off is known from the plan
            line = session.timeline
            begun = line.move >= 0 and frame is not line.frames_of(line.move)[0]
            self._stage.show_gone(taken_off(model, session.plan, line.move, begun=begun))
        moved = session.timeline.position > 0
        self._stage.show_start_ghost(moved and self.start_shape, session.begun)
        self._stage.show_clearance(clearance_told(frame, session.start) if moved else None)
        self._stage.show_path(frame if moved and frame.force_n > 0.0 and not session.hides(LADDER) else None)
        self._stage.show_tools(*shown_with(session))
        self.show_aim()
        self.moment_shown()

    def show_aim(self) -> None:
        """Draw the tips of the move of this moment (or of the next one) and show its section."""
        self._draw_tips()
        self.show_section()

    def show_foretold(self) -> None:
        """Draw the tips with what is known beforehand by now; a push under way hangs on none of it."""
        if self._frame_pushing() is None:
            self.show_aim()

    def _draw_tips(self) -> None:
        session = self._session
        if before_plan(session):
            self._stage.show_aim(None)  # nobody has set a tool on it yet
            return
        index, move = self._move_shown()
        frame = session.timeline.frame
        pushing = frame is not None and not session.aiming and frame.opening_m > 0.0
        aim = self._aim_while(move) if pushing else self._aim_of(index, move)
        self._show_barrier(move)
        if aim is None or frame is None or not isinstance(move, Spread | Squeeze):
            self._stage.show_aim(None)
            return
        share = not pushing and not session.hides(ARROW)
        self._stage.show_aim(None if aim.problems else aim, move.tool, share=share)
        if aim.problems and session.aiming and self._hovered is None:
            self._say(sentence(aim.problems[0]))
        if share and aim.touch is None and not aim.problems:
            self._aim_at_rest.setInterval(0 if aim.basis == "nothing" else STILL_MS)
            self._aim_at_rest.start()

    def _show_barrier(self, move: Move | None) -> None:
        """Show the body of a crush that has yet to begin; once under way it comes with the moment."""
        model, frame = self._session.model, self._session.timeline.frame
        if not self._session.aiming or frame is None:
            return
        if not isinstance(move, Crush) or model is None:
            self._stage.show_barrier(None)
            return
        try:
            self._stage.show_barrier(make_crush(model, move, frame.points).barrier)
        except PlanError as problem:
            self._stage.show_barrier(None)
            self._say(sentence(str(problem)))

    def _aim_of(self, index: int, move: Move | None) -> Aim | None:
        """Return what is known beforehand of a move in its place of the plan; None if it has no tips."""
        session = self._session
        model, frame = session.model, session.timeline.frame
        if model is None or frame is None or not isinstance(move, Spread | Squeeze):
            return None
        before = session.before(index)
        answer, touch = session.aims.answer(before), session.aims.touch(before, move)
        key = (model, move, id(frame), id(answer), id(touch))
        if key not in self._made:
            if len(self._made) >= MADE_KEPT:
                self._made.clear()
            if answer is None:
                aim = aims.line(model, move, frame.points)
            else:
                aim = aims.aim(model, move, frame.points, answer)
            if touch is not None and not aim.problems:
                aim = aims.touched(model, aim, touch)
            self._made[key] = aim, frame, answer, touch  # kept together: a number stands for one object only
        return self._made[key][0]

    def _aim_while(self, move: Move | None) -> Aim | None:
        """Return where the tips of a push are at the moment shown, under way; None if it has none."""
        model, frame = self._session.model, self._session.timeline.frame
        if model is None or frame is None or not isinstance(move, Spread | Squeeze):
            return None
        key = (model, move, id(frame))
        if key not in self._made:
            if len(self._made) >= MADE_KEPT:
                self._made.clear()
            now = aims.line(model, as_now(model, move, frame), frame.points)
            self._made[key] = aim_now(now, frame, model.outboard_sign), frame, None, None
        return self._made[key][0]

    def _try_aim(self) -> None:
        """Ask for a touch of the push that is aimed at: the pointer or the wheel has come to rest."""
        index, move = self._move_shown()
        if move is not None:
            self._session.wish_touch(index, move)

    def _move_shown(self) -> tuple[int, Move | None]:
        """Return the move whose tips are drawn, and its place in the plan."""
        session = self._session
        if session.aiming or session.timeline.move < 0:
            return session.selection.now.move, self._hovered or session.move
        index = session.timeline.move
        return index, session.plan.moves[index] if index < len(session.plan.moves) else session.move

    def _frame_pushing(self) -> Frame | None:
        """Return the frame shown when it is one of the selected move's own push."""
        session, frame = self._session, self._session.timeline.frame
        of_move = session.timeline.move == session.selection.now.move
        pushing = frame is not None and not session.aiming and frame.opening_m > 0.0 and of_move
        return frame if pushing else None

    def show_section(self) -> None:
        """Show the section through the tip of the push that is drawn, its seat and the skin's share."""
        model, panel = self._session.model, self._window.section
        pointed = self._hovered if self._session.aiming else None
        move = self._session.move if pointed is None else pointed
        units = self._session.view.options.units
        tips = (move is None or isinstance(move, Spread | Squeeze)) and not before_plan(self._session)
        panel.setVisible(tips)  # without any there is nothing to set: the cards have the room
        if model is None or not isinstance(move, Spread | Squeeze):
            panel.show_section(None, 0.0)
            panel.show_words(seat="", split="", share=None, depth="", tilt="")
            return
        frame = self._frame_pushing()
        if frame is None:
            shown: Move = move
            aim = self._aim_of(self._session.selection.now.move, move) or aims.line(model, move)
        else:
            shown = as_now(model, move, frame)
            aim = self._aim_while(move) or aims.line(model, move)
        view = section_view(model, shown) if isinstance(shown, Spread) and not aim.problems else None
        shut = self._session.hides(ARROW)
        panel.show_section(view, 0.0 if aim.way == "along" or shut else aim.outward_ratio)
        depth, tilt = switch_words(move, units)
        if aim.problems:
            panel.show_words(seat=sentence(aim.problems[0]), split="", share=None, depth=depth, tilt=tilt)
            return
        seat = seat_words(aim, frame, units, "" if pointed is None else f"{pointed_words(pointed)}. ")
        if shut or isinstance(move, Squeeze):
            panel.show_words(seat=seat, split="", share=None, depth=depth, tilt=tilt)
            return
        panel.show_words(seat=seat, split=split_words(aim), share=aim.skin_share, depth=depth, tilt=tilt)

    def live_words(self) -> str:
        """Return the clause for a moment on the way, and before the push what is expected of it."""
        session = self._session
        frame = session.timeline.frame
        told = wreck_words(session)
        if told:
            return told
        if frame is None or frame.opening_m <= 0.0:
            aim = self._aim_of(*self._move_shown()) if session.aiming else None
            lead = AIMED if self._hovered is None else pointed_words(self._hovered)
            if aim is not None:
                return aim_words(aim, Units.METRIC, lead)
            return next_words(session.move if session.aiming else self._move_shown()[1])
        return moment_words(frame, session.timeline.way())

    def show_hint(self) -> None:
        """Say what the next click or turn of the wheel does."""
        session, now = self._session, self._session.selection.now
        if self._said_of is not None and self._said_of != session.plan:
            self._said_of = None
            self._window.readout.show_words("")
        ran = session.result_here is not None and not session.beside.on
        hint = hint_words(session.move, now.tip, steering=now.steering, ran=ran, runs=session.runs)
        self._window.readout.show_hint("" if before_plan(session) else hint, offered(session))

    # --- pointing ----------------------------------------------------------------------------------------

    def hover(self, pointed: object) -> None:
        """Name the part and the seat under the pointer, and show the push that a click would aim."""
        before = self._hovered
        self._hovered, words = None, self._last_said()
        mapped = "" if self.map is None else self.map.hover(pointed)
        if mapped:
            words = mapped
        elif pointed is not None:
            words = self._name(pointed)
        self._window.readout.show_words(words)
        if before is not self._hovered:
            self.aimed()

    def _hover_at(self, place: Place | None) -> None:
        """Remember the push that a click here would aim; none while the wheel belongs to a tip set before."""
        session, now = self._session, self._session.selection.now
        if place is None or not session.aiming or session.queue.busy or now.tip != 1 or now.steering:
            return
        try:
            moved = steering.placed(session.move if session.move is not None else Spread(), place)
        except CannotSteer:
            return
        self._hovered = moved if isinstance(moved, Spread | Squeeze) else None

    def _name(self, pointed: Any) -> str:
        model, frame = self._session.model, self._session.timeline.frame
        if model is None or frame is None:
            return ""
        found = self._under(pointed)
        if found.place is not None:
            self._hover_at(found.place)
        return named(found.word, found.seat)

    def _under(self, pointed: Any) -> Under:
        session = self._session
        assert session.model is not None and session.timeline.frame is not None
        points = session.timeline.frame.points
        where = np.asarray(pointed.point)
        return under(session.model, pointed.part, where, points, panel_of(session.move))

    def click(self, pointed: object) -> None:
        """Set the tip that is next at the place clicked; a click beside everything gives the wheel back."""
        session = self._session
        self._hovered = None
        if pointed is None:
            session.selection.let_wheel_go()
            return
        if self.map is not None and self.map.click(pointed):
            return
        try:
            self._say(self._set_tip(pointed))
        except CannotSteer as problem:
            self._say(str(problem))

    def _set_tip(self, pointed: Any) -> str:
        session = self._session
        model, frame, move = session.model, session.timeline.frame, session.move
        if model is None or frame is None or session.queue.busy:
            return "Wait until the metal has come to rest."
        found = self._under(pointed)
        if session.selection.now.tip == 2 or found.on_body:
            if move is None:
                raise CannotSteer("Set tip one first: click the edge of the door.")
            changed, words = steering.second_placed(move, found.word.replace(" ", "_"), found.body)
            session.change_move(changed, "Set tip two")
            session.selection.next_tip(1, steering=True)
            return words
        if found.place is None:
            raise CannotSteer(f"A tip would be in the air on the {found.word} here.")
        changed = steering.placed(move if move is not None else Spread(), found.place)
        session.change_move(changed, "Set tip one")
        squeeze = isinstance(changed, Squeeze)
        session.selection.next_tip(1 if squeeze else 2, steering=not squeeze)
        on = found.seat or found.word.rpartition(", ")[2]  # a face is a seat of its own
        return f"Tip one: {on}." + (" Tip two follows on the inner panel." if squeeze else "")

    # --- views -------------------------------------------------------------------------------------------

    def next_view(self) -> None:
        """Go to the next of the saved views."""
        self._view_index = (self._view_index + 1) % len(VIEWS)
        self.show_view(VIEWS[self._view_index])

    def show_view(self, name: str) -> None:
        """Go to a saved view."""
        if name in SHOTS:
            self.leaving()
            self._stage.view_preset(name)
            self.arrived(name)

    def save_picture(self, size: tuple[int, int], caption: str, path: Path) -> None:
        """Write the stage as a PNG picture, the moment in words inside; OSError where it cannot be."""
        image = screenshot(self._stage, size, labelled(self._session.plan.car, caption))
        for key, words in written_inside(self._session, caption).items():
            image.setText(key, words)
        save_png(image, path)

    def _last_said(self) -> str:
        """Return what was said last, while it is still true of the plan."""
        return self._said if self._said_of == self._session.plan else ""

    def _say(self, words: str) -> None:
        self._said, self._said_of = words, self._session.plan
        self._window.readout.show_words(words)


def _nothing(*_words: object) -> None:
    """Tell nobody."""
