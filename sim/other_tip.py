"""The tip that does not push on the door: on the body beside it, or on the door itself."""

from __future__ import annotations

from dataclasses import dataclass
from typing import cast

import numpy as np
from numpy.typing import NDArray

from meshes.part import MeshError
from sim.model import DoorModel, Seat
from sim.plan import BeltPoint, BodyPoint, BodySeat, EdgePoint, Spread
from sim.problems import PlanError

Floats = NDArray[np.float64]

OPPOSITE_WORD = {
    "pillar_edge": "pillar edge",
    "pillar_outside": "pillar outside",
    "hinge_pillar": "hinge pillar",
    "rocker": "rocker",
    "roof_rail": "roof rail",
    "ground": "ground",
}
ACROSS = {"latch_edge": "pillar_edge", "hinge_edge": "hinge_pillar", "sill_edge": "rocker"}
DEEPEST_M = 0.1


@dataclass(frozen=True)
class OtherTip:
    """Where the other tip stands on the body: point (3,) [m], seat in words, and what gives under it."""

    point: Floats
    seat: str
    on: Seat | None


def _on_ground(model: DoorModel, door: EdgePoint | BeltPoint, along_m: float) -> OtherTip:
    """Return a tip on the ground under the sill; as the car rises on its stands the tip sinks in its axes."""
    around = model.structure.surround
    if around is None or around.ground is None or around.ground.normal[2] < 0.5:
        raise PlanError(
            "against.seat", "is 'ground', which only a whole side on its wheels has; use extent = 'side'"
        )
    if not isinstance(door, EdgePoint) or door.edge != "sill_edge":
        raise PlanError("against.seat", "is 'ground', which lies under the sill; use edge = 'sill_edge'")
    panel = model.panel(door)
    length = panel.mesh.shape.length_m
    if not 0.0 <= along_m <= length:
        raise PlanError("against.along_m", f"is {along_m} m; the door is {length} m long: stay under it")
    depth = min(door.depth_m, DEEPEST_M)
    place = np.array([along_m + panel.shift_m[0], -model.outboard_sign * depth, around.ground.level_m])
    body = around.body
    on = None if body is None else (body.nodes, -body.weights(place[None])[0])
    return OtherTip(place, OPPOSITE_WORD["ground"], on)


def other_tip(model: DoorModel, move: Spread) -> OtherTip:
    """Return the other tip's place on the body beside the door that is pushed.

    Raises
    ------
    PlanError
        When it is in the air.
    """
    door, against = move.door, move.against
    assert against is None or isinstance(against, BodyPoint)
    panel = model.panel(door)
    if against is not None and against.seat == "ground":
        return _on_ground(model, door, against.along_m)
    if against is None:
        name = "roof_rail" if isinstance(door, BeltPoint) else ACROSS[door.edge]
        against = BodyPoint(seat=cast(BodySeat, name), along_m=door.along_m)
    try:
        if isinstance(door, EdgePoint) and move.against is None:
            depth = min(door.depth_m, DEEPEST_M)
            point = panel.body.opposite_seat(door.edge, door.along_m, depth)
        else:
            point = panel.body.seat_point(against.seat, against.along_m)
    except MeshError as error:
        message = f"{error.message}: the other tip is in the air"
        raise PlanError(f"against.{error.parameter}", message) from error
    point = point + panel.shift_m
    tip = move.tool.tip_width_m, move.tool.tip_depth_m
    seat = OPPOSITE_WORD[against.seat]
    return OtherTip(point, seat, model.yielding(against.seat, door.panel, point, tip))
