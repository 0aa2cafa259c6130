"""Steering the tips: how far in, at which tilt, how far along; and what a click on a part means."""

from __future__ import annotations

import math
from dataclasses import dataclass

import msgspec

from meshes.door import DoorMesh
from sim.plan import BeltPoint, EdgePoint, FacePoint, Lip, Move, Place, Spread, Squeeze, Tool

DEPTH_STEP_M = 0.002
DEPTH_LEAP_M = 0.010
TILT_STEP_RAD = math.radians(5.0)
SLIDE_STEP_M = 0.010
SLIDE_LEAP_M = 0.050

TILT_RANGE_RAD = (math.radians(-45.0), math.radians(90.0))
BEHIND_BEND_M = 0.060
"""How far past the inner bend a tip may be set: about the length of a pad."""
KEEP_OFF_M = 0.020
"""Tips keep this far from the end of an edge."""

LIPS: tuple[Lip, ...] = ("outer", "both", "inner")


class CannotSteer(ValueError):  # noqa: N818 - it is a sentence to the reader, not a fault
    """A wish that this move cannot grant; the text is a sentence for the reader."""


@dataclass(frozen=True)
class Reach:
    """How far a tip can go on this door [m]."""

    along_low_m: float
    along_high_m: float
    depth_high_m: float

    def along(self, value_m: float) -> float:
        """Return a place along the edge kept within reach."""
        return min(max(value_m, self.along_low_m), self.along_high_m)

    def depth(self, value_m: float) -> float:
        """Return a depth kept within reach."""
        return min(max(value_m, 0.0), self.depth_high_m)


def reach(mesh: DoorMesh, place: Place) -> Reach:
    """Return how far a tip at this place can be moved on this door."""
    shape = mesh.shape
    depth = shape.shut_face_depth_m + BEHIND_BEND_M
    if isinstance(place, EdgePoint) and place.edge in ("latch_edge", "hinge_edge"):
        return Reach(KEEP_OFF_M, shape.height_m - KEEP_OFF_M, depth)
    front = float(mesh.surface.points[mesh.hem_skin, 0].min())
    rear = float(mesh.surface.points[mesh.hem_skin, 0].max())
    inset = 0.1 if isinstance(place, BeltPoint) else 0.06
    return Reach(front + inset, rear - inset, depth)


def deepen(move: Move, by_m: float, limit: Reach) -> Move:
    """Return the move with its tip deeper by `by_m`; at the belt a step goes to the next lip."""
    if not isinstance(move, Spread):
        raise CannotSteer("Depth belongs to tips in a gap; this move has none there.")
    if isinstance(move.door, BeltPoint):
        index = LIPS.index(move.door.lip) + (1 if by_m > 0 else -1)
        lip = LIPS[min(max(index, 0), len(LIPS) - 1)]
        return msgspec.structs.replace(move, door=msgspec.structs.replace(move.door, lip=lip))
    depth = round(limit.depth(move.door.depth_m + by_m), 6)
    return msgspec.structs.replace(move, door=msgspec.structs.replace(move.door, depth_m=depth))


def tilted(move: Move, by_rad: float) -> Move:
    """Return the move with its push turned outboard by `by_rad`."""
    if not isinstance(move, Spread):
        raise CannotSteer("Tilt belongs to tips in a gap; a squeeze closes square to the panel.")
    low, high = TILT_RANGE_RAD
    steps = round((move.tilt_rad + by_rad) / TILT_STEP_RAD)
    return msgspec.structs.replace(move, tilt_rad=min(max(steps * TILT_STEP_RAD, low), high))


def slid(move: Move, by_m: float, limit: Reach) -> Move:
    """Return the move with its tip further along its edge (up, or rearward) by `by_m`."""
    if isinstance(move, Spread):
        along = round(limit.along(move.door.along_m + by_m), 6)
        return msgspec.structs.replace(move, door=msgspec.structs.replace(move.door, along_m=along))
    if isinstance(move, Squeeze):
        return msgspec.structs.replace(move, height_m=round(move.height_m + by_m, 6))
    raise CannotSteer("Letting the tool off has no place on the door.")


def placed(move: Move, place: Place) -> Move:
    """Return the move with tip one at `place`; a face makes it a squeeze, an edge or the belt a spread."""
    tool, words = (move.tool if isinstance(move, (Spread, Squeeze)) else Tool()), move.words
    if isinstance(place, FacePoint):
        if isinstance(move, Squeeze):
            return msgspec.structs.replace(move, along_m=place.along_m, height_m=place.height_m)
        return Squeeze(place.along_m, place.height_m, tool=tool, words=words)
    if isinstance(move, Spread):
        return msgspec.structs.replace(move, door=place)
    return Spread(door=place, tool=tool, words=words)


STANDS_STILL = {
    "latch_edge": ("latch_pillar", "pillar across the gap"),
    "hinge_edge": ("hinge_pillar", "hinge pillar across the gap"),
    "sill_edge": ("rocker", "rocker across the gap"),
    "belt": ("roof_rail", "roof rail above the window"),
    "squeeze": ("inner_panel", "inner panel, across from tip one"),
}
"""For each place of tip one: the part that stands still beside it, and how to say so."""


def second_seat(move: Move) -> tuple[str, str]:
    """Return the part tip two stands on, and that part in words; CannotSteer if the move has no tips."""
    if isinstance(move, Squeeze):
        return STANDS_STILL["squeeze"]
    if isinstance(move, Spread):
        return STANDS_STILL[move.door.edge if isinstance(move.door, EdgePoint) else "belt"]
    raise CannotSteer("Letting the tool off has no tips to place.")


def second_tip_words(move: Move, part: str) -> str:
    """Return a sentence that confirms `part` for tip two; CannotSteer, saying why, where it cannot stand."""
    wanted, words = second_seat(move)
    if part.replace(" ", "_").startswith(wanted):
        return f"Tip two stands on the {words}."
    here = part.replace("_", " ")
    raise CannotSteer(
        f"Tip two cannot stand on the {here}: the tips open along one line, so its place is the {words}."
    )
