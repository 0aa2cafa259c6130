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
    from sim.door_model import DoorModel
    from sim.plan import Car
    from sim.record import Frame
    from sim.room import InTheWay
    from ui.state.timeline import Timeline

NEAREST = "to the person"
"""Name of the one line there is where a door alone was worked out: it is told for no body part."""
FAR_M = 0.3
"""A body part that metal never comes nearer to is told by its word alone: it would flatten the others."""
NONE_YET = "none yet"
SHUT_M = 0.1
"""A free stretch shorter than about a hand's breadth is told as shut (assumed)."""
OUT_OF_REACH_M = 10.0
"""What is further from all metal is not told: nobody sits there."""


@dataclass(frozen=True)
class RoomNow:
    """Curves of room and exit width, and where the moment shown lies on them.

    way_m : the tools' way so far at each moment [m];  cursor : index of the moment shown
    lines_m : room by name of the body part [m], as many values each;  exit_m : exit width [m], () at a door
    begun_m : ways at which a move begins;  marks : indices of moments at which something happened
    shoulders_m : breadth of this person's shoulders [m], None where nobody was chosen
    in_the_way : what stands in the way out at the moment shown; None where they get out, or it is not read
    """

    way_m: tuple[float, ...]
    cursor: int
    lines_m: Mapping[str, tuple[float, ...]]
    exit_m: tuple[float, ...] = ()
    begun_m: tuple[float, ...] = ()
    marks: tuple[int, ...] = ()
    shoulders_m: float | None = None
    in_the_way: InTheWay | None = None

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

    def way_words(self, units: Units) -> str:
        """Return what stands in the way out and how wide the narrowest height is; "" where they get out."""
        return "" if self.in_the_way is None else way_words(self.in_the_way, units)

    def told(self, units: Units) -> str:
        """Return every number of the moment shown in words, for those who do not see the curves."""
        rooms = [f"{name} {length_text(values[self.cursor], units)}" for name, values in self.lines_m.items()]
        words = f"Room: {', '.join(rooms)}"
        words += f"; exit width: {self.exit_words(units)}" if self.exit_m else ""
        return f"{words}. {self.way_words(units)}" if self.in_the_way is not None else words


def way_words(way: InTheWay, units: Units) -> str:
    """Return what stands in the way out, and how wide the opening is where it is narrowest."""
    parts = [f"{round(100 * share)}{NO_BREAK}%" for share in way.shares]
    metal = ", ".join(f"{name} {part}" for name, part in zip(way.metal, parts, strict=True))
    shut = [height for height, free in zip(way.heights_m, way.free_m, strict=True) if free < SHUT_M]
    if len(shut) == len(way.heights_m):
        where = "Shut at every height from hip to shoulder"
    elif len(shut) > 1:
        low, high = (length_text(height, units) for height in (shut[0], shut[-1]))
        where = f"Shut from {low} to {high} above the sill"
    else:
        height, free = (length_text(value, units) for value in way.narrowest)
        where = f"Narrowest {height} above the sill, {free} free"
    return f"In the way, by share of the opening: {metal}. {where}."


class _Ways:
    """What stood in the way at the last moment asked for: a moment is told by several panels."""

    def __init__(self) -> None:
        self._of: tuple[object, object] = (None, None)
        self._found: InTheWay | None = None

    def at(self, model: DoorModel | None, frame: Frame) -> InTheWay | None:
        """Return what stands in the way out at a moment; None where they get out, or no whole side."""
        if getattr(model, "side", None) is None or not 0.0 <= (frame.exit_width_m or 0.0) < SHUT_M:
            return None
        if self._of[0] is not model or self._of[1] is not frame:
            # Imported here: the mechanics take their time to load, and the window shows before.
            from sim.room import in_the_way

            triangles = model.structure.triangles if frame.triangles is None else frame.triangles  # type: ignore[union-attr]
            self._of = model, frame
            self._found = in_the_way(model, frame.points, triangles)  # type: ignore[arg-type]
        return self._found


in_the_way_at = _Ways().at


def room_now(timeline: Timeline, car: Car, model: DoorModel | None = None) -> RoomNow | None:
    """Return the curves of all moments laid out; None where there are none, or nobody sits there.

    Parameters
    ----------
    timeline : the moments;  car : whose person it is
    model : the car's, to tell what stands in the way out; None to leave that out
    """
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
        in_the_way_at(model, frames[timeline.position]) if whole else None,
    )
