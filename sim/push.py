"""The line of a push: direction, drive and tool force, and what lies under the pointer."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Literal, cast

import msgspec
import numpy as np
from numpy.typing import NDArray

from meshes.door import DoorMesh
from sim.grip import FRICTION_RATIO
from sim.model import DoorModel, Seat
from sim.network import Drive
from sim.other_tip import other_tip
from sim.pads import pad_on
from sim.pillar_pads import wall_pad
from sim.plan import (
    BeltPoint,
    BodyPoint,
    Edge,
    EdgePoint,
    FacePoint,
    Lip,
    PanelName,
    Place,
    Spread,
    Squeeze,
    Surface,
    Tool,
)
from sim.problems import PlanError
from sim.ranges import check_tilt
from sim.tip import Footprint, footprint

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SAME_POINT_M = 1.0e-3
LEAN_LIMIT_RAD = 0.5
LEAST_OPENING_M = 1.0e-4
CLOSING_LIMIT_M = 0.3
CLOSING_FORCE_RATIO = 0.5  # squeezing about half of spreading: common practice, from memory

# direction of the push along the car at tilt zero: away from the pillar
ALONG = {
    "latch_edge": (-1.0, 0.0, 0.0),
    "hinge_edge": (1.0, 0.0, 0.0),
    "sill_edge": (0.0, 0.0, 1.0),
}


@dataclass(frozen=True)
class Push:
    """A move made ready: contact, direction, what it may do.

    pads : the pad or pads on the door;  drive : node weights along the direction
    direction : unit vector of the push on the first pad;  other : the other tip's place at rest, shape (3,)
    reach_m : how far apart the tips stand before the push: the tool is open that far already [m]
    limit_m : travel asked for;  seats : words of the two seats
    place : where the pad on the door was set, None where the tool closes on the door or stands on it with
        both tips: such a tool's pads are not followed as they slide
    friction : force across over force pressed with at which the pad on the door, and the other tip, slides
    lean_rad, stands : as `Spread`: lean of the pad, and whether the tool's body stands still
    on : what the other tip stands on where that gives: nodes and weights; None on what stands still
    """

    pads: tuple[Footprint, ...]
    nodes: Ints
    weights: Floats
    direction: Floats
    other: Floats
    seats: tuple[str, str]
    limit_m: float
    tool: Tool
    force_ratio: float = 1.0
    reach_m: float = 0.0
    place: EdgePoint | BeltPoint | None = None
    friction: tuple[float, float] = (0.0, 0.0)
    lean_rad: float = 0.0
    stands: bool = False
    on: Seat | None = None

    def both(self) -> Seat:
        """Return nodes and weights of both tips: the metal under the other is pushed back with as much."""
        if self.on is None:
            return self.nodes, self.weights
        nodes, weights = self.on
        return np.concatenate([self.nodes, nodes]), np.concatenate([self.weights, -weights])

    def apart(self, points: Floats) -> Floats:
        """Return where the pad is, from the metal under the other tip if that gives, shape (3,) [m]."""
        nodes, weights = self.both()
        place: Floats = weights @ points[nodes]
        return place

    def drive(self, points: Floats) -> Drive:
        """Return the tool contact with its travel counted from the given points."""
        nodes, weights = self.both()
        return Drive(nodes, weights, self.direction, float(self.direction @ (weights @ points[nodes])))

    def torn(self, drive: Drive) -> Push:
        """Return the push on the nodes its drive has after a sheet has torn under the pad."""
        if self.on is not None:
            mine = ~np.isin(drive.nodes, self.on[0])
            on = drive.nodes[~mine], -drive.weights[~mine]
            return replace(self, nodes=drive.nodes[mine], weights=drive.weights[mine], on=on)
        return replace(self, nodes=drive.nodes, weights=drive.weights)

    def force_limit(self, opening_m: float) -> float:
        """Return the most the tool can push with at an opening [N]."""
        return self.force_ratio * float(
            np.interp(self.reach_m + opening_m, self.tool.opening_m, self.tool.force_n)
        )


def push_direction(model: DoorModel, edge: str, tilt_rad: float) -> Floats:
    """Return the unit vector of the push on the door, shape (3,)."""
    along = np.array(ALONG[edge])
    outboard = np.array([0.0, model.outboard_sign, 0.0])
    unit: Floats = math.cos(tilt_rad) * along + math.sin(tilt_rad) * outboard
    return unit


def check_tool(tool: Tool) -> None:
    """Raise PlanError naming the field and the remedy when a tool's numbers make no sense."""
    if not 0.005 <= tool.tip_width_m <= 0.15:
        raise PlanError("tool.tip_width_m", f"is {tool.tip_width_m} m; use 0.005 to 0.15 m")
    if not 0.005 <= tool.tip_depth_m <= 0.15:
        raise PlanError("tool.tip_depth_m", f"is {tool.tip_depth_m} m; use 0.005 to 0.15 m")
    if len(tool.opening_m) != len(tool.force_n) or len(tool.opening_m) < 2:
        raise PlanError("tool.force_n", "needs as many forces as tool.opening_m has openings, at least two")
    if tool.opening_m[0] < 0.0:
        raise PlanError("tool.opening_m", f"begins at {tool.opening_m[0]} m; use 0, tips that touch, or more")
    if not all(b > a for a, b in zip(tool.opening_m, tool.opening_m[1:], strict=False)):
        raise PlanError("tool.opening_m", "must rise from one entry to the next")
    if min(tool.force_n) <= 0.0:
        raise PlanError("tool.force_n", "must be above zero everywhere")
    if not 0.5 * tool.opening_m[-1] < tool.arm_m <= 100.0:
        least = 0.5 * tool.opening_m[-1]
        raise PlanError(
            "tool.arm_m", f"is {tool.arm_m} m; use more than {least:.3g} m, half the widest opening"
        )
    if not 0.0 <= tool.friction_ratio <= 10.0:
        raise PlanError(
            "tool.friction_ratio",
            f"is {tool.friction_ratio}; use 0 (slides freely) to 10 (bites), 0.3 to 0.6 for serrated tips",
        )
    if not 0.0 <= tool.hold_n_m <= 1.0e5:
        raise PlanError(
            "tool.hold_n_m", f"is {tool.hold_n_m} N m; use 0 (goes as it will) to 1e5 (cannot turn)"
        )


def _check_angles(move: Spread) -> None:
    """Raise PlanError where a push's tilt or its pad's lean is out of range."""
    check_tilt(move.tilt_rad)
    if not -LEAN_LIMIT_RAD <= move.lean_rad <= LEAN_LIMIT_RAD:
        degrees = math.degrees(move.lean_rad)
        raise PlanError(
            "lean_deg", f"is {degrees:.3g}; use -28 (outboard end first) to 28 degrees (inboard end first)"
        )


def _check_reach(move: Spread, reach: float, *, of_pads: bool) -> None:
    """Raise PlanError where the tips stand too near, or too far for the tool, or are to open further than it.

    reach : between the tips [m];  of_pads : whether both are pads on the door
    """
    if reach < SAME_POINT_M:
        raise PlanError("against", "is on the same point as the tip on the door; move one of the two")
    if of_pads and reach < move.tool.tip_width_m:
        raise PlanError(
            "against",
            f"is {reach:.3f} m from the tip on the door, so the pads lie on one another; "
            f"set them {move.tool.tip_width_m} m apart or more",
        )
    left = move.tool.opening_m[-1] - reach
    if left <= 0.0:
        raise PlanError(
            "against", f"is {reach:.2f} m from the tip on the door, wider than the tool opens; move it nearer"
        )
    if not 0.0 < move.opening_m <= left:
        raise PlanError(
            "opening_m",
            f"is {move.opening_m} m; with its tips {reach:.2f} m apart the tool has 0 to {left:.2f} m left",
        )


def make_push(model: DoorModel, move: Spread | Squeeze) -> Push:
    """Return a move made ready on a door.

    Raises
    ------
    PlanError
        When a tip is in the air, both stand on one point, or the tool's numbers make no sense.
    """
    check_tool(move.tool)
    if isinstance(move, Squeeze):
        return _squeeze(model, move)
    _check_angles(move)
    try:
        pad = pad_on(model, move.door, move.tool, move.lean_rad)
    except PlanError as error:
        raise error.inside("door") from error
    if move.against is None or isinstance(move.against, BodyPoint):
        beside = other_tip(model, move)
        other, word, on = beside.point, beside.seat, beside.on
        second = None
    else:
        try:
            second = pad_on(model, move.against, move.tool)
        except PlanError as error:
            raise error.inside("against") from error
        other, word, on = second.point(model.start.points), second.seat, None
    reach = float(np.linalg.norm(pad.point(model.start.points) - other))
    _check_reach(move, reach, of_pads=second is not None)
    if isinstance(move.door, BeltPoint) or second is not None:
        # the tool fills the opening: it is a two-force member and pushes along the line between its tips
        line = pad.point(model.start.points) - other
        direction = line / float(np.linalg.norm(line))
    else:
        direction = push_direction(model, move.door.edge, move.tilt_rad)
    if second is not None:
        return _inside(pad, second, direction, move, reach)
    surface = move.against.surface if isinstance(move.against, BodyPoint) else "painted"
    return Push(
        (pad,),
        pad.nodes,
        pad.weights,
        direction,
        other,
        (pad.seat, word),
        move.opening_m,
        move.tool,
        reach_m=reach,
        place=move.door,
        friction=(friction_on(move.tool, move.door.surface), friction_on(move.tool, surface)),
        lean_rad=move.lean_rad,
        stands=move.tool_body == "stands",
        on=on,
    )


def friction_on(tool: Tool, surface: Surface) -> float:
    """Return the tool's friction on a surface; its number is the one on painted steel."""
    return tool.friction_ratio * FRICTION_RATIO[surface] / FRICTION_RATIO["painted"]


def _inside(pad: Footprint, other: Footprint, direction: Floats, move: Spread, reach_m: float) -> Push:
    """Return a push with both tips on the door: what one is pushed with, the other is pushed back with."""
    nodes, place = np.unique(np.concatenate([pad.nodes, other.nodes]), return_inverse=True)
    weights = np.bincount(place, np.concatenate([pad.weights, -other.weights]))
    middle: Floats = np.asarray(other.pad.mean(axis=0), dtype=float)
    return Push(
        (pad, other),
        nodes,
        np.asarray(weights, dtype=float),
        direction,
        middle,
        (pad.seat, other.seat),
        move.opening_m,
        move.tool,
        reach_m=reach_m,
    )


def opening_left(model: DoorModel, move: Spread) -> float:
    """Return how much further a tool can open from where its tips stand [m].

    Raises
    ------
    PlanError
        As `make_push`.
    """
    push = make_push(model, msgspec.structs.replace(move, opening_m=LEAST_OPENING_M))
    return move.tool.opening_m[-1] - push.reach_m


def _squeeze(model: DoorModel, move: Squeeze) -> Push:
    if not 0.0 < move.closing_m <= CLOSING_LIMIT_M:
        raise PlanError("closing_m", f"is {move.closing_m} m; use above 0 to {CLOSING_LIMIT_M} m")
    places = [
        FacePoint(side=side, along_m=move.along_m, height_m=move.height_m, panel=move.panel)
        for side in ("outer", "inner")
    ]
    if move.on is None:
        outer, inner = (pad_on(model, place, move.tool) for place in places)
    else:
        outer, inner = (wall_pad(model, move.on, move.tool, wall) for wall in ("outer", "inner"))
    nodes = np.concatenate([outer.nodes, inner.nodes])
    weights = np.concatenate([outer.weights, -inner.weights])
    direction = np.array([0.0, -model.outboard_sign, 0.0])
    return Push(
        (outer, inner),
        nodes,
        weights,
        direction,
        inner.point(model.start.points),
        (outer.seat, inner.seat),
        move.closing_m,
        move.tool,
        CLOSING_FORCE_RATIO,
    )


@dataclass(frozen=True)
class SeatHit:
    """What is under the pointer: part and seat in words, and the place a tip would take there."""

    part: str
    seat: str
    place: Place | None


def seat_at(model: DoorModel, point: Floats, points: Floats | None = None, panel: str = "front") -> SeatHit:
    """Return what lies at a point in space, seen on the moved metal of one of the model's doors.

    A point near the door's edge becomes an `EdgePoint` (depth as touched), one at the belt a `BeltPoint`,
    anything else a `FacePoint`.
    """
    door = model.panels()[panel]
    mesh, own = door.mesh, slice(door.first, door.first + door.mesh.surface.node_count)
    start = model.start.points[own] - door.shift_m
    here = start if points is None else points[own] - door.shift_m
    point = np.asarray(point, dtype=float) - door.shift_m
    name = cast(PanelName, panel)
    nodes = mesh.surface.nodes_of(("outer_skin", *_inner()))
    near = nodes[np.argsort(np.linalg.norm(here[nodes] - point, axis=1))[:3]]
    offset = np.mean(here[near] - start[near], axis=0)
    rest = np.asarray(point, dtype=float) - offset
    shape = mesh.shape
    triangle, _, distance = mesh.locate(rest[None])
    if float(distance[0]) > 0.08:
        return SeatHit("body", "in air", None)
    part = mesh.surface.part_names[int(mesh.surface.triangle_part[int(triangle[0])])]
    outer = part == "outer_skin"
    depth = -float(rest[1]) * model.outboard_sign
    top = float(shape.height_m - rest[2])
    sides = _to_edges(mesh, rest)
    edge = cast(Edge, min(sides, key=lambda name: sides[name]))
    margin = 0.03 if outer or depth >= 0.9 * shape.shut_face_depth_m else 0.06
    if top < 0.025 and sides[edge] > 0.06:
        lip: Lip = "outer" if outer else "inner"
        belt = BeltPoint(along_m=round(float(rest[0]), 3), lip=lip, panel=name)
        return SeatHit("belt line", f"belt {lip} lip", belt)
    if sides[edge] < margin or part in ("shut_face", "latch_patch", "hinge_patch"):
        along = float(rest[0]) if edge == "sill_edge" else float(rest[2])
        place = EdgePoint(
            edge=edge,
            along_m=round(along, 3),
            depth_m=round(max(0.0, 0.005 if outer else depth), 3),
            panel=name,
        )
        try:
            pad = footprint(mesh, place, Tool())
        except PlanError:
            return SeatHit(_part_word(part), "in air", None)
        return SeatHit(pad.part, pad.seat, place)
    side: Literal["outer", "inner"] = "outer" if outer else "inner"
    place_face = FacePoint(
        side=side, along_m=round(float(rest[0]), 3), height_m=round(float(rest[2]), 3), panel=name
    )
    return SeatHit(_part_word(part), "outer skin" if outer else "inner face", place_face)


def _to_edges(mesh: DoorMesh, rest: Floats) -> dict[str, float]:
    """Return how far inwards of each edge's lip a point at rest lies [m]."""
    out = {}
    for edge, (first, last) in mesh.edges.items():
        lip = mesh.surface.points[mesh.hem_skin[first : last + 1]]
        if edge == "sill_edge":
            out[edge] = float(rest[2] - lip[:, 2].min())
            continue
        order = np.argsort(lip[:, 2])
        x = float(np.interp(rest[2], lip[order, 2], lip[order, 0]))
        out[edge] = float(rest[0]) - x if edge == "hinge_edge" else x - float(rest[0])
    return out


def _part_word(part: str) -> str:
    return part.replace("_", " ")


def _inner() -> tuple[str, ...]:
    return ("shut_face", "inner_panel", "latch_patch", "hinge_patch", "latch_wrap")
