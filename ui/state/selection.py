"""What is selected: a move, a tip, and whether the wheel steers it. Never undone."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ui.state.signal import Signal


@dataclass(frozen=True)
class Selection:
    """What the next click or turn of the wheel is about.

    Parameters
    ----------
    move : index of the selected move
    tip : the tip that the next click places, 1 or 2
    steering : the wheel alone changes the tip's depth (otherwise it brings the picture nearer)
    """

    move: int = 0
    tip: int = 1
    steering: bool = False


class SelectionState:
    """Holds the selection and tells when it changes."""

    def __init__(self) -> None:
        self._now = Selection()
        self.changed: Signal[[]] = Signal()

    @property
    def now(self) -> Selection:
        """The present selection."""
        return self._now

    def select_move(self, index: int) -> None:
        """Select a move; its first tip is the next to be placed."""
        self._set(Selection(move=max(0, index)))

    def next_tip(self, tip: int, *, steering: bool) -> None:
        """Say which tip the next click places, and whether the wheel steers."""
        self._set(replace(self._now, tip=tip, steering=steering))

    def let_wheel_go(self) -> None:
        """Give the wheel back to the picture."""
        self._set(replace(self._now, steering=False, tip=1))

    def keep_within(self, move_count: int) -> None:
        """Keep the selected move inside a plan of this many moves."""
        index = min(self._now.move, max(0, move_count - 1))
        if index != self._now.move:
            self.select_move(index)

    def _set(self, selection: Selection) -> None:
        if selection != self._now:
            self._now = selection
            self.changed.emit()
