"""Where the viewer stood before: the camera's own undo, apart from that of the plan."""

from __future__ import annotations

from typing import Generic, TypeVar

Place = TypeVar("Place")

KEPT = 50
"""Places remembered; the oldest is forgotten first."""


class CameraHistory(Generic[Place]):
    """Remembers the places the viewer left."""

    def __init__(self) -> None:
        self._left: list[Place] = []

    @property
    def can_go_back(self) -> bool:
        """Whether there is a place to go back to."""
        return bool(self._left)

    def leave(self, place: Place) -> None:
        """Remember a place that is left; one that is the last remembered already is not told twice."""
        if not self._left or self._left[-1] != place:
            self._left.append(place)
            del self._left[:-KEPT]

    def back(self) -> Place | None:
        """Return the place left last, and forget it; None when there is none."""
        return self._left.pop() if self._left else None
