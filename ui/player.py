"""Plays the moments: once, again and again, slowly; and lets a move stop at events."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QTimer

from ui.main_window import MainWindow
from ui.state.playing import Playing
from ui.state.questions import is_wedged
from ui.state.session import Session
from ui.state.stops import can_stop, stops, turned

FRAME_MS = 66
STILL_MS = 1000
"""How long a moment stands where nothing is to move on the screen: event by event, not frame by frame."""


class Player:
    """Goes on to the next moment at every tick of its timer.

    Parameters
    ----------
    session, window : whose moments, and where pace, loop and stops show
    timer : ticks while moments are played
    """

    def __init__(self, session: Session, window: MainWindow, timer: QTimer) -> None:
        self.session, self.window, self._timer = session, window, timer
        self.playing = Playing()
        self.playing.changed.connect(self._show)
        timer.setInterval(FRAME_MS)
        scrub = window.scrub
        scrub.pace_wished.connect(self.playing.next_pace)
        scrub.loop_wished.connect(self.playing.next_loop)
        scrub.stops_wished.connect(self.offer_stops)
        scrub.stop_turned.connect(self.turn_stop)
        self._show()

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of playing do, by name."""
        return {
            "play": self.turn,
            "pace": self.playing.next_pace,
            "loop": self.playing.next_loop,
            "stops": self.window.scrub.ask_stops,
        }

    def turn(self) -> None:
        """Play from the moment shown, or halt."""
        line = self.session.line
        if self._timer.isActive():
            self.halt()
        elif len(line) > 1:
            line.go(self.playing.beginning(line.position, len(line), self._marks()))
            self._start()

    def play_from(self, position: int) -> None:
        """Play from a moment on."""
        self.session.line.go(position)
        self._start()

    def halt(self) -> None:
        """Play no further."""
        self._timer.stop()
        self.window.scrub.show_playing(False)

    def play_on(self) -> None:
        """Show the next moment; at the last one, halt."""
        line = self.session.line
        after = self._after(line.position)
        if after is not None:
            line.go(after)
        if after is None or self._after(line.position) is None:
            self.halt()

    def _after(self, position: int) -> int | None:
        """Return the next moment to show: the next event's where nothing is to move, or the last."""
        count, marks = len(self.session.line), self._marks()
        after = self.playing.following(position, count, marks)
        while self.session.view.options.calm and after is not None and after not in marks:
            further = self.playing.following(after, count, marks)
            if further is None or further <= after:
                break
            after = further
        return after

    def _start(self) -> None:
        self._show()
        self._timer.start()
        self.window.scrub.show_playing(True)

    def _marks(self) -> tuple[int, ...]:
        return tuple(mark.position for mark in self.session.line.marks)

    def _show(self) -> None:
        step = STILL_MS if self.session.view.options.calm else FRAME_MS
        self._timer.setInterval(step * self.playing.pace)
        self.window.scrub.show_manner(self.playing.pace, self.playing.loop, self.playing.words)

    # --- stops -------------------------------------------------------------------------------------------

    def offer_stops(self) -> None:
        """List the events that the selected move may stop at."""
        session = self.session
        move, index = session.move, session.selection.now.move
        if move is None or not can_stop(move) or session.start is None:
            self.window.scrub.show_stops(())
            return
        record = session.record(index - 1) if index else None
        metal = session.start if record is None else record.frames[-1]
        wedged = is_wedged(session.model, metal)
        self.window.scrub.show_stops(stops(move, metal.ladder, wedged=wedged))

    def turn_stop(self, kind: str) -> None:
        """Let the selected move stop at one event more, or no longer at it."""
        move = self.session.move
        if move is not None and can_stop(move):
            changed = turned(move, kind)
            words = f"Stops at {kind}" if kind in changed.stop_at else f"Goes on past {kind}"
            self.session.change_move(changed, words)
        self.window.focus_stage()
