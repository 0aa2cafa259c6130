"""What lies under the pointer, on one door or a whole side: its name, and what a tip would stand on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from sim.plan import BodyPoint, Move, Place, Spread, Squeeze
from sim.push import seat_at
from ui.state import steering

if TYPE_CHECKING:
    from sim.door_model import DoorModel

Floats = NDArray[np.float64]

PILLAR = "middle_pillar"
BODY_OF: dict[str, dict[str, str]] = {
    "front": {PILLAR: "latch_pillar", "front_pillar": "hinge_pillar"},
    "rear": {PILLAR: "hinge_pillar", "rear_pillar": "latch_pillar"},
}
"""What a member of the side is to the door that tip one stands on."""
STILL = ("rocker", "roof_rail", "front_pillar", "rear_pillar")
RODS = ("bar", "window_frame", "belt_outer_lip")
WORDS = {PILLAR: "pillar between the doors"}


@dataclass(frozen=True)
class Under:
    """What lies under the pointer.

    word : the part in words;  seat : what a tip would stand on, "" for nothing of its own
    place : where tip one would be set, None off the doors;  body : where tip two would, None on the doors
    on_body : whether it is the body round the doors
    """

    word: str
    seat: str = ""
    place: Place | None = None
    body: BodyPoint | None = None
    on_body: bool = False


def panel_of(move: Move | None) -> str:
    """Return the door that tip one of a move stands on."""
    if isinstance(move, Spread):
        return str(getattr(move.door, "panel", "front"))
    return str(getattr(move, "panel", "front")) if isinstance(move, Squeeze) else "front"


def under(model: DoorModel, part: str, point: Floats, points: Floats, panel: str) -> Under:
    """Return what lies at a point [m] on a part of the picture, tip one standing on a door by name."""
    member = PILLAR if part.startswith(PILLAR) else part
    if hasattr(model, "side") and (member == PILLAR or member in STILL):
        door = model.panels()[panel]
        own = BODY_OF[panel].get(member, member)
        place = steering.seat_under(door.body, own, np.asarray(point) - door.shift_m)
        return _body(WORDS.get(member, member.replace("_", " ")), place)
    if part in model.body.surfaces:
        place = steering.seat_under(model.body, part, np.asarray(point))
        return _body(part.replace("_", " "), place)
    words = part.replace("_", " ")
    if any(one.name == part for one in model.occupant):
        return Under(f"occupant: {words}")
    found = _door(model, part)
    if found is None:
        return Under(words)
    name, own = found
    hit = seat_at(model, np.asarray(point), points, name)
    lead = f"{name} door, " if hasattr(model, "side") else ""
    if own in RODS[:1] or "hinge" in own or own in ("latch", "striker"):
        return Under(lead + own.replace("_", " "), "", hit.place)
    return Under(lead + hit.part, "" if hit.seat == hit.part else hit.seat, hit.place)


def _body(word: str, place: BodyPoint | None) -> Under:
    words = {str(seat): text for seat, text in steering.SEAT_WORDS.items()}
    seat = words[place.seat].partition(",")[0] if place else ""
    return Under(word, seat, None, place, True)


def _door(model: DoorModel, part: str) -> tuple[str, str] | None:
    """Return the door a part belongs to and its name there; None for what is no part of a door."""
    for name, door in model.panels().items():
        own = part.removeprefix(f"{name}_") if hasattr(model, "side") else part
        known = (*door.mesh.surface.part_names, *RODS, "latch", "striker")
        if own in known and (own != part or not hasattr(model, "side")):
            return name, own
    return None
