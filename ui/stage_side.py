"""What belongs to the 3D stage: drawing the moment and the aim, and what pointing at it means.

Imported in the window's first idle moment, because the drawing library takes its time to load. Connects
nothing; `ui.app` does.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
from PySide6.QtCore import Qt

from sim.builds import labelled
from sim.crush import make_press
from sim.outcome import live_words
from sim.plan import Crush, Ease, Move, Plan, Spread, Squeeze
from sim.problems import PlanError
from sim.push import aim as aim_of
from sim.push import seat_at
from sim.record import Aim, Clearance
from sim.units import Units, length_text
from ui.main_window import MainWindow
from ui.panels.legend import Scale
from ui.scene.cameras import SHOTS
from ui.scene.colours import colour_bar
from ui.scene.picture import save_png, screenshot
from ui.scene.view import StageView
from ui.state import steering
from ui.state.cards import tilt_words
from ui.state.section_view import section_view
from ui.state.session import Session
from ui.state.steering import CannotSteer

__all__ = ["StageSide", "StageView"]

DEPTH, TILT = "depth", "tilt"
VIEWS = ("three_quarter", "latch", "section", "patient", "hinge", "top")
HINT_FIRST = "Click the door's edge to set tip one"
HINT_SECOND = "Click what stands still beside it for tip two, or leave it across the gap"
HINT_WHEEL = "wheel: depth, Shift+wheel: tilt, Esc: wheel zooms again"


class StageSide:
    """Shows the session on a stage and turns pointing into wishes.

    Parameters
    ----------
    view, window, session : what is shown, where, and of what
    """

    def __init__(self, view: StageView, window: MainWindow, session: Session) -> None:
        self.view, self._window, self._session = view, window, session
        self._stage: Any = view.stage
        self._model: object = None
        self._view_index = 0
        self._aim: Aim | None = None
        self._said = ""
        self._said_of: Plan | None = None
        view.wheel_filter = self.wheel

    # --- showing -----------------------------------------------------------------------------------------

    def show_options(self) -> None:
        """Show layers, colours and theme."""
        options = self._session.view.options
        theme = "dark" if options.theme == "dark" else "projector" if options.projector else "light"
        self._stage.set_theme(theme)
        self._stage.set_words(
            out="outward", into="inward", length=lambda value_m: length_text(value_m, options.units)
        )
        self._stage.set_line_scale(options.text_scale(self._window.width()))
        for layer, mode in options.layers.items():
            self._stage.set_layer(layer, mode.value)
        self._stage.set_colour_mode(options.colour_mode)
        stops, labels = colour_bar(options.colour_mode)
        words = dict(labels)
        zero = 0.5 if words.get(0.5) == "0" else None
        scale = Scale(tuple(stops), words.get(0.0, ""), words.get(1.0, ""), zero)
        self._window.layers.legend.show_scale(scale)

    def show_moment(self) -> None:
        """Draw the metal as it is at the moment shown, with the tips on it."""
        session = self._session
        model, frame = session.model, session.timeline.frame
        if model is None or frame is None:
            return
        if model is not self._model:
            self._model = model
            self._stage.set_model(model)
            self.show_options()
        self._stage.show_points(frame.points, frame)
        moved = session.timeline.position > 0
        self._stage.show_start_ghost(moved)
        self._stage.show_clearance(frame.clearance if moved and _tells(frame.clearance) else None)
        self._stage.show_path(frame if moved and frame.force_n > 0.0 else None)
        self.show_aim()

    def show_aim(self) -> None:
        """Draw the tips of the move of this moment (or of the next one) and show its section."""
        move = self._move_shown()
        self._aim = None
        frame, model = self._session.timeline.frame, self._session.model
        if isinstance(move, Spread | Squeeze) and model is not None and frame is not None:
            self._aim = aim_of(model, move, frame.points)
            fine = not self._aim.problems
            pushing = not self._session.aiming and frame.opening_m > 0.0
            self._stage.show_aim(self._aim if fine else None, move.tool, share=not pushing)
            if not fine and self._session.aiming:
                self._say(_sentence(self._aim.problems[0]))
        else:
            self._stage.show_aim(None)
            self._show_barrier(move)
        self.show_section()

    def _show_barrier(self, move: Move | None) -> None:
        """Show the body of a crush that has yet to begin; once under way it comes with the moment."""
        model, frame = self._session.model, self._session.timeline.frame
        if not isinstance(move, Crush) or not self._session.aiming or model is None or frame is None:
            return
        try:
            self._stage.show_barrier(make_press(model, move, frame.points).barrier)
        except PlanError as problem:
            self._stage.show_barrier(None)
            self._say(_sentence(str(problem)))

    def _move_shown(self) -> Move | None:
        session = self._session
        if session.aiming or session.timeline.move < 0:
            return session.move
        index = session.timeline.move
        return session.plan.moves[index] if index < len(session.plan.moves) else session.move

    def show_section(self) -> None:
        """Show the section through the selected move's tip, its seat and the skin's share."""
        move, model, panel = self._session.move, self._session.model, self._window.section
        units = self._session.view.options.units
        panel.setVisible(not isinstance(move, Crush | Ease))  # nothing to set: the cards have the room
        if model is None or not isinstance(move, Spread | Squeeze):
            panel.show_section(None, 0.0)
            panel.show_words(seat="", split="", share=None, depth="", tilt="")
            return
        aim = aim_of(model, move)
        view = section_view(model, move) if isinstance(move, Spread) and not aim.problems else None
        panel.show_section(view, aim.outward_ratio)
        depth, tilt = _switch_words(move, units)
        if aim.problems:
            panel.show_words(seat=_sentence(aim.problems[0]), split="", share=None, depth=depth, tilt=tilt)
            return
        seat = f"Tip one: {aim.seats[0]}. Tip two: {aim.seats[1]}."
        if isinstance(move, Squeeze):
            panel.show_words(seat=seat, split="", share=None, depth=depth, tilt=tilt)
            return
        panel.show_words(seat=seat, split=_split_words(aim), share=aim.skin_share, depth=depth, tilt=tilt)

    def live_words(self) -> str:
        """Return the clause for a moment on the way; empty where nothing is pushed yet."""
        frame = self._session.timeline.frame
        if frame is None or frame.opening_m <= 0.0:
            return ""
        words = live_words(frame)
        return words[0].upper() + words[1:] + "."

    def show_hint(self) -> None:
        """Say what the next click or turn of the wheel does."""
        now = self._session.selection.now
        if self._said_of is not None and self._said_of != self._session.plan:
            self._said_of = None
            self._window.readout.show_words("")
        words = HINT_SECOND if now.tip == 2 else HINT_FIRST
        self._window.readout.show_hint(HINT_WHEEL if now.steering and now.tip == 1 else words)

    # --- pointing ----------------------------------------------------------------------------------------

    def hover(self, pointed: object) -> None:
        """Name the part and the seat under the pointer."""
        self._window.readout.show_words(self._name(pointed) if pointed is not None else self._last_said())

    def _name(self, pointed: Any) -> str:
        model, frame = self._session.model, self._session.timeline.frame
        if model is None or frame is None:
            return ""
        words = pointed.part.replace("_", " ")
        if pointed.part in model.body.surfaces:
            place = steering.seat_under(model.body, pointed.part, pointed.point)
            seat = steering.SEAT_WORDS[place.seat].partition(",")[0] if place else ""
            return _named(words, seat)
        if any(part.name == pointed.part for part in model.occupant):
            return f"Occupant: {words}"
        hit = seat_at(model, np.asarray(pointed.point), frame.points)
        if words in ("latch", "striker", "bar") or "hinge" in words:
            return _named(words, "")
        return _named(hit.part, hit.seat)

    def click(self, pointed: object) -> None:
        """Set the tip that is next at the place clicked; a click beside everything gives the wheel back."""
        session = self._session
        if pointed is None:
            session.selection.let_wheel_go()
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
        on_body = pointed.part in model.body.surfaces
        if session.selection.now.tip == 2 or on_body:
            if move is None:
                raise CannotSteer("Set tip one first: click the edge of the door.")
            place = (
                steering.seat_under(model.body, pointed.part, np.asarray(pointed.point)) if on_body else None
            )
            changed, words = steering.second_placed(move, pointed.part, place)
            session.change_move(changed, "Set tip two")
            session.selection.next_tip(1, steering=True)
            return words
        hit = seat_at(model, np.asarray(pointed.point), frame.points)
        if hit.place is None:
            raise CannotSteer(f"A tip would be in the air on the {pointed.part.replace('_', ' ')} here.")
        changed = steering.placed(move if move is not None else Spread(), hit.place)
        session.change_move(changed, "Set tip one")
        squeeze = isinstance(changed, Squeeze)
        session.selection.next_tip(1 if squeeze else 2, steering=not squeeze)
        return f"Tip one: {hit.seat}." + (" Tip two follows on the inner panel." if squeeze else "")

    # --- steering ----------------------------------------------------------------------------------------

    def wheel(self, notches: int, modifiers: Any) -> bool:
        """Turn depth or tilt by the wheel; return whether the wheel was taken."""
        control = bool(modifiers & Qt.KeyboardModifier.ControlModifier)
        shift = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
        if not (control or self._session.selection.now.steering):
            return False
        if shift:
            self.tilt(notches)
        else:
            self.deepen(notches)
        return True

    def deepen(self, steps: int, *, far: bool = False) -> None:
        """Set tip one deeper by some steps."""
        step = steering.DEPTH_LEAP_M if far else steering.DEPTH_STEP_M
        self._steer(DEPTH, lambda move, limit: steering.deepen(move, steps * step, limit))

    def tilt(self, steps: int) -> None:
        """Turn the push outward by some steps."""
        self._steer(TILT, lambda move, _: steering.tilted(move, steps * steering.TILT_STEP_RAD))

    def slide(self, steps: int, *, far: bool = False) -> None:
        """Move tip one along its edge by some steps."""
        step = steering.SLIDE_LEAP_M if far else steering.SLIDE_STEP_M
        self._steer("place", lambda move, limit: steering.slid(move, steps * step, limit))

    def _steer(self, what: str, turn: Callable[[Move, steering.Reach], Move]) -> None:
        session = self._session
        move, model = session.move, session.model
        if move is None or model is None or session.queue.busy:
            return
        try:
            place = move.door if isinstance(move, Spread) else None
            limit = steering.reach(model.mesh, place) if place is not None else steering.Reach(0.0, 9.0, 0.0)
            changed = turn(move, limit)
        except CannotSteer as problem:
            self._say(str(problem))
            return
        units = session.view.options.units
        depth, tilt = _switch_words(changed, units)
        label = {DEPTH: f"Depth {depth}", TILT: f"Tilt {tilt}"}.get(what, "Moved the tip along the edge")
        session.change_move(changed, label, (what, session.selection.now.move))

    # --- views -------------------------------------------------------------------------------------------

    def next_view(self) -> None:
        """Go to the next of the saved views."""
        self._view_index = (self._view_index + 1) % len(VIEWS)
        self.show_view(VIEWS[self._view_index])

    def show_view(self, name: str) -> None:
        """Go to a saved view."""
        if name in SHOTS:
            self._stage.view_preset(name)

    def save_picture(self, size: tuple[int, int], caption: str, path: Path) -> None:
        """Write the stage as a PNG picture of a size with a caption; OSError where it cannot be written."""
        words = labelled(self._session.plan.car, caption)
        save_png(screenshot(self._stage, size, words), path)

    def _last_said(self) -> str:
        """Return what was said last, while it is still true of the plan."""
        return self._said if self._said_of == self._session.plan else ""

    def _say(self, words: str) -> None:
        self._said, self._said_of = words, self._session.plan
        self._window.readout.show_words(words)


def _tells(clearance: Clearance) -> bool:
    return bool(np.isfinite(clearance.distance_m))


def _named(part: str, seat: str) -> str:
    words = part[0].upper() + part[1:]
    return words if seat in ("", part, f"the {part}", "in air") else f"{words}: {seat}"


def _sentence(words: str) -> str:
    return words[0].upper() + words[1:] + ("" if words.endswith(".") else ".")


def _switch_words(move: Move, units: Units) -> tuple[str, str]:
    """Return depth and tilt in words; a dash where the move has none."""
    if not isinstance(move, Spread):
        return "\u2013", "\u2013"
    depth = getattr(move.door, "depth_m", None)
    lip = getattr(move.door, "lip", "")
    words = length_text(depth, units) if depth is not None else {"both": "both lips"}.get(lip, f"{lip} lip")
    return words, tilt_words(move.tilt_rad)


def _split_words(aim: Aim) -> str:
    """Return who carries the push, in words."""
    share = aim.skin_share
    if share >= 0.95:
        return "All of the push goes into the outer skin's lip."
    if share <= 0.05:
        return "All of the push goes into the inner panel."
    return f"{share:.0%} of the push goes into the outer skin's lip, the rest into the inner panel."
