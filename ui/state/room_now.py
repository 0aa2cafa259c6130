"""Room to each body part and exit width at every moment that may be seen, along the tools' way.

The way is that of `ui.state.room_curve`: all tools', move after move; a move done at once takes none.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from meshes.occupant import BODY_SIZES
from sim.units import NO_BREAK, Units, length_text
from ui.state.room_curve import PARTS, way_along

if TYPE_CHECKING:
    from sim.plan import Car
    from ui.state.timeline import Timeline

NEAREST = "to the person"
"""Name of the one line there is where a door alone was worked out: it is told for no body part."""
FAR_M = 0.3
"""A body part that metal never comes nearer to is told by its word alone: it would flatten the others."""
NONE_YET = "none yet"
OUT_OF_REACH_M = 10.0
"""What is further from all metal is not told: nobody sits there."""


@dataclass(frozen=True)
class RoomNow:
    """Curves of room and exit width, and where the moment shown lies on them.

    way_m : the tools' way so far at each moment [m];  cursor : index of the moment shown
    lines_m : room by name of the body part [m], as many values each;  exit_m : exit width [m], () at a door
    begun_m : ways at which a move begins;  marks : indices of moments at which something happened
    shoulders_m : breadth of this person's shoulders [m], None where nobody was chosen
    """

    way_m: tuple[float, ...]
    cursor: int
    lines_m: Mapping[str, tuple[float, ...]]
    exit_m: tuple[float, ...] = ()
    begun_m: tuple[float, ...] = ()
    marks: tuple[int, ...] = ()
    shoulders_m: float | None = None

    @property
    def nearest(self) -> str:
        """Name of the line that metal is nearest to at the moment shown."""
        return min(self.lines_m, key=lambda name: self.lines_m[name][self.cursor])

    @property
    def far(self) -> frozenset[str]:
        """Names of the lines that metal never comes near to, where there are others: they say nothing."""
        away = frozenset(name for name, values in self.lines_m.items() if min(values) > FAR_M)
        return away if len(away) < len(self.lines_m) else frozenset()

    @property
    def at_first_m(self) -> float:
        """Least room at the first moment [m]."""
        return min(values[0] for values in self.lines_m.values())

    def room_words(self, units: Units) -> str:
        """Return the least room at the moment shown, in a few words."""
        name = self.nearest
        room = length_text(self.lines_m[name][self.cursor], units)
        return room if name == NEAREST else f"{name.replace(' ', NO_BREAK)} {room}"

    def exit_words(self, units: Units) -> str:
        """Return the exit width at the moment shown."""
        width = self.exit_m[self.cursor] if self.exit_m else 0.0
        return length_text(width, units) if width > 0.0 else NONE_YET

    def told(self, units: Units) -> str:
        """Return every number of the moment shown in words, for those who do not see the curves."""
        rooms = [f"{name} {length_text(values[self.cursor], units)}" for name, values in self.lines_m.items()]
        words = f"Room: {', '.join(rooms)}"
        return words + (f"; exit width: {self.exit_words(units)}" if self.exit_m else "")


def room_now(timeline: Timeline, car: Car) -> RoomNow | None:
    """Return the curves of all moments laid out; None where there are none, or nobody sits there."""
    moves, frames = timeline.moves, timeline.frames
    if not frames or not math.isfinite(frames[0].clearance.distance_m):
        return None
    if abs(frames[0].clearance.distance_m) >= OUT_OF_REACH_M:
        return None
    whole = all(frame.part_clearance_m for frame in frames)
    lines = (
        {part: tuple(frame.part_clearance_m[part] for frame in frames) for part in PARTS}
        if whole
        else {NEAREST: tuple(frame.clearance.distance_m for frame in frames)}
    )
    way = way_along(moves, [frame.opening_m for frame in frames])
    size = BODY_SIZES[car.whole_side.occupant]
    return RoomNow(
        tuple(float(value) for value in way),
        timeline.position,
        lines,
        tuple(frame.exit_width_m or 0.0 for frame in frames) if whole else (),
        tuple(float(way[k]) for k in timeline.starts() if 0.0 < way[k] < way[-1]),
        tuple(k for k, frame in enumerate(frames) if frame.events),
        size.shoulder_breadth_m if whole else None,
    )
