"""Steering the tips: how far in, at which tilt, how far along; and what a click on a part means."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

import msgspec
import numpy as np
from numpy.typing import NDArray

from meshes.body import BodyStub
from meshes.door import DoorMesh
from sim.plan import (
    BeltPoint,
    BodyPoint,
    Crush,
    EdgePoint,
    FacePoint,
    Lip,
    Move,
    Place,
    Spread,
    Squeeze,
    Tool,
)

Seat = Literal["pillar_edge", "pillar_outside", "hinge_pillar", "rocker", "roof_rail"]

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
        raise CannotSteer(
            "Tilt belongs to tips in a gap; a squeeze closes square to the panel and a crush keeps its line."
        )
    if isinstance(move.door, BeltPoint):
        raise CannotSteer("At the belt the push goes along the line between its tips; it has no tilt to set.")
    low, high = TILT_RANGE_RAD
    steps = round((move.tilt_rad + by_rad) / TILT_STEP_RAD)
    return msgspec.structs.replace(move, tilt_rad=min(max(steps * TILT_STEP_RAD, low), high))


def slid(move: Move, by_m: float, limit: Reach) -> Move:
    """Return the move with its tip further along its edge (up, or rearward) by `by_m`."""
    if isinstance(move, Spread):
        along = round(limit.along(move.door.along_m + by_m), 6)
        place = msgspec.structs.replace(move.door, along_m=along)
        return msgspec.structs.replace(move, door=place, against=_going_along(move, place))
    if isinstance(move, Squeeze | Crush):
        return msgspec.structs.replace(move, height_m=round(move.height_m + by_m, 6))
    raise CannotSteer("Letting the tool off has no place on the door.")


def placed(move: Move, place: Place) -> Move:
    """Return the move with tip one at `place`; a face makes it a squeeze, an edge or the belt a spread."""
    if isinstance(move, Crush):
        if not isinstance(place, FacePoint):
            raise CannotSteer("A crush has no tips; click the skin to set where along the car it presses.")
        return msgspec.structs.replace(move, along_m=place.along_m)
    tool, words = (move.tool if isinstance(move, (Spread, Squeeze)) else Tool()), move.words
    if isinstance(place, FacePoint):
        if isinstance(move, Squeeze):
            where = {"along_m": place.along_m, "height_m": place.height_m, "panel": place.panel}
            return msgspec.structs.replace(move, **where, on=None)
        return Squeeze(place.along_m, place.height_m, tool=tool, words=words, panel=place.panel)
    if isinstance(move, Spread):
        on_body = isinstance(move.against, BodyPoint) and move.against.seat in SEATS[edge_of(place)]
        kept = _going_along(move, place) if on_body else None
        return msgspec.structs.replace(move, door=place, against=kept)
    return Spread(door=place, tool=tool, words=words)


def _going_along(move: Spread, place: EdgePoint | BeltPoint) -> BodyPoint | Place | None:
    """Return where tip two stands once tip one is at `place`: it goes along where it stood beside tip one."""
    held = move.against
    beside = isinstance(held, BodyPoint) and abs(held.along_m - move.door.along_m) <= ACROSS_M
    if not isinstance(held, BodyPoint) or not beside or edge_of(place) != edge_of(move.door):
        return held
    along = round(held.along_m + place.along_m - move.door.along_m, 6)
    return msgspec.structs.replace(held, along_m=along)


def edge_of(place: EdgePoint | BeltPoint) -> str:
    """Return the name of the edge a tip stands on, or "belt"."""
    return place.edge if isinstance(place, EdgePoint) else "belt"


SEATS: dict[str, tuple[Seat, ...]] = {
    "latch_edge": ("pillar_edge", "pillar_outside"),
    "hinge_edge": ("hinge_pillar",),
    "sill_edge": ("rocker",),
    "belt": ("roof_rail",),
}
"""For each place of tip one, the seats on the body from which the tips can open along one line."""

SEAT_WORDS: dict[Seat, str] = {
    "pillar_edge": "the pillar's edge, across the gap",
    "pillar_outside": "the pillar's outside",
    "hinge_pillar": "the hinge pillar, across the gap",
    "rocker": "the rocker, across the gap",
    "roof_rail": "the roof rail above the window",
}
PART_SEATS: dict[str, Seat] = {
    "hinge_pillar": "hinge_pillar", "hinge_pillar_upper": "hinge_pillar", "rocker": "rocker",
    "roof_rail": "roof_rail",
}  # fmt: skip
"""Parts of the body that are one seat; the latch pillar has two."""

EDGE_OF_PILLAR_M = 0.018
"""A click nearer than this to the pillar's edge means the edge, further on the outside."""
ACROSS_M = 0.05
"""Within this along the gap, tip two simply stands across from tip one and goes where that goes."""


def second_seats(move: Move) -> tuple[Seat, ...]:
    """Return the seats tip two may take; CannotSteer, saying why, for a move that leaves no choice."""
    if isinstance(move, Squeeze):
        raise CannotSteer("A squeeze sets tip two by itself: on the inner panel, across from tip one.")
    if isinstance(move, Crush):
        raise CannotSteer("A crush has no tips; click the skin to set where along the car it presses.")
    if not isinstance(move, Spread):
        raise CannotSteer("Letting the tool off has no tips to place.")
    return SEATS[edge_of(move.door)]


EDGE_WORDS = {
    "latch_edge": "the latch edge", "sill_edge": "the sill edge", "hinge_edge": "the hinge edge",
    "belt": "the belt",
}  # fmt: skip
"""Where tip one may stand, in the order in which a key goes through them."""
SECOND_STEP_M = 0.06
"""One step of tip two along its seat; a shorter one would leave it across from tip one."""


def on_next_edge(move: Move) -> Move:
    """Return the move with tip one on the next edge of its door, tip two straight across from it.

    Height, or place along the car, and depth are kept where both edges have them.
    """
    if isinstance(move, Crush):
        raise CannotSteer("A crush has no tips; click the skin to set where along the car it presses.")
    if not isinstance(move, Spread):
        tool, words = (move.tool, move.words) if isinstance(move, Squeeze) else (Tool(), "")
        return Spread(tool=tool, words=words)
    edges = tuple(EDGE_WORDS)
    old = move.door
    edge = edges[(edges.index(edge_of(old)) + 1) % len(edges)]
    if edge == "belt":
        place: Place = BeltPoint(along_m=old.along_m, surface=old.surface, panel=old.panel)
        return msgspec.structs.replace(move, door=place, against=None)
    upright = edge in ("latch_edge", "hinge_edge")
    was_upright = isinstance(old, EdgePoint) and old.edge in ("latch_edge", "hinge_edge")
    fresh = EdgePoint(surface=old.surface, panel=old.panel)
    along = old.along_m if upright == was_upright else fresh.along_m if upright else BeltPoint().along_m
    depth = old.depth_m if isinstance(old, EdgePoint) else fresh.depth_m
    place = msgspec.structs.replace(fresh, edge=edge, along_m=along, depth_m=depth)
    return msgspec.structs.replace(move, door=place, against=None)


def on_next_seat(move: Move) -> tuple[Move, str]:
    """Return the move with tip two on its next seat, and a sentence; CannotSteer where there is one alone."""
    seats = second_seats(move)
    assert isinstance(move, Spread)
    if len(seats) < 2:
        raise CannotSteer(f"Tip two has one place here: {SEAT_WORDS[seats[0]]}.")
    now = move.against.seat if isinstance(move.against, BodyPoint) else seats[0]
    seat = seats[(seats.index(now) + 1) % len(seats)] if now in seats else seats[0]
    place = None if seat == seats[0] else BodyPoint(seat, move.door.along_m)
    return msgspec.structs.replace(move, against=place), f"Tip two stands on {SEAT_WORDS[seat]}."


def second_slid(move: Move, steps: int, limit: Reach) -> Move:
    """Return the move with tip two further along its seat (up, or rearward) by some steps."""
    seats = second_seats(move)
    assert isinstance(move, Spread)
    held = move.against if isinstance(move.against, BodyPoint) else BodyPoint(seats[0], move.door.along_m)
    along = round(limit.along(held.along_m + steps * SECOND_STEP_M), 6)
    if held.seat == seats[0] and abs(along - move.door.along_m) <= ACROSS_M:
        return msgspec.structs.replace(move, against=None)
    return msgspec.structs.replace(move, against=msgspec.structs.replace(held, along_m=along))


def seat_under(body: BodyStub, part: str, point: NDArray[np.float64]) -> BodyPoint | None:
    """Return the seat on the body that lies under a point [m], shape (3,); None where there is none."""
    if part.startswith("latch_pillar"):
        low, high = 0.0, body.door.height_m
        height = min(max(float(point[2]), low), high)
        edge = float(body.seat_point("pillar_edge", height)[0])
        seat: Seat = "pillar_edge" if float(point[0]) - edge < EDGE_OF_PILLAR_M else "pillar_outside"
        return BodyPoint(seat, round(height, 3))
    if part not in PART_SEATS:
        return None
    seat = PART_SEATS[part]
    along = float(point[2] if seat == "hinge_pillar" else point[0])
    return BodyPoint(seat, round(along, 3))


def second_placed(move: Move, part: str, place: BodyPoint | None) -> tuple[Move, str]:
    """Return the move with tip two at a seat, and a sentence; CannotSteer, saying why, where it cannot be."""
    seats = second_seats(move)
    wanted = " or ".join(SEAT_WORDS[seat] for seat in seats)
    if place is None or place.seat not in seats or not isinstance(move, Spread):
        here = part.replace("_", " ") or "thin air"
        raise CannotSteer(f"Tip two cannot stand on the {here} here; its place is {wanted}.")
    across = place.seat == seats[0] and abs(place.along_m - move.door.along_m) <= ACROSS_M
    words = f"Tip two stands on {SEAT_WORDS[place.seat]}."
    return msgspec.structs.replace(move, against=None if across else place), words
