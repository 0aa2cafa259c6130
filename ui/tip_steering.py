"""Steering the tips by wheel and keys: depth, tilt, and the place along the edge."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt

from sim.move_words import tilt_words
from sim.plan import BeltPoint, Move, Spread
from sim.units import Units, length_text
from ui.state import steering
from ui.state.session import Session
from ui.state.steering import CannotSteer

DEPTH, TILT = "depth", "tilt"
LABELS = {
    "edge": "Tip one on another edge",
    "seat": "Tip two on another seat",
    "second": "Moved tip two",
}


class TipSteering:
    """What the stage's side knows of steering; it has a session and a place to say what cannot be."""

    _session: Session

    @abstractmethod
    def _say(self, words: str) -> None:
        """Say why something cannot be."""

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

    def next_edge(self) -> None:
        """Put tip one on the next edge of its door."""
        self._steer("edge", lambda move, _: steering.on_next_edge(move))
        move = self._session.move
        if isinstance(move, Spread):
            # a place that was kept from another edge may lie past the end of this one
            self._steer("edge", lambda move, limit: steering.slid(move, 0.0, limit))
            self._say(f"Tip one stands on {steering.EDGE_WORDS[steering.edge_of(move.door)]}.")

    def next_seat(self) -> None:
        """Put tip two on its next seat."""
        said: list[str] = []

        def turn(move: Move, _: steering.Reach) -> Move:
            changed, words = steering.on_next_seat(move)
            said.append(words)
            return changed

        self._steer("seat", turn)
        if said:
            self._say(said[0])

    def slide_second(self, steps: int) -> None:
        """Move tip two along its seat by some steps."""
        self._steer("second", lambda move, limit: steering.second_slid(move, steps, limit))

    def _steer(self, what: str, turn: Callable[[Move, steering.Reach], Move]) -> None:
        session = self._session
        move, model = session.move, session.model
        if move is None or model is None or session.queue.busy:
            return
        try:
            place = move.door if isinstance(move, Spread) else None
            limit = (
                steering.reach(model.panel(place).mesh, place)
                if place is not None
                else steering.Reach(0.0, 9.0, 0.0)
            )
            changed = turn(move, limit)
        except CannotSteer as problem:
            self._say(str(problem))
            return
        units = session.view.options.units
        depth, tilt = switch_words(changed, units)
        label = LABELS.get(what, "Moved the tip along the edge")
        label = {DEPTH: f"Depth {depth}", TILT: f"Tilt {tilt}"}.get(what, label)
        session.change_move(changed, label, (what, session.selection.now.move))


def switch_words(move: Move, units: Units) -> tuple[str, str]:
    """Return depth and tilt in words; a dash where the move has none."""
    if not isinstance(move, Spread):
        return "\u2013", "\u2013"
    depth = getattr(move.door, "depth_m", None)
    lip = getattr(move.door, "lip", "")
    words = length_text(depth, units) if depth is not None else {"both": "both lips"}.get(lip, f"{lip} lip")
    return words, "\u2013" if isinstance(move.door, BeltPoint) else tilt_words(move.tilt_rad)
