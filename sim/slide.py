"""Tips that hold by friction: where they stand as the push goes on, what gives way, and when a tip is off.

A step of the grid is solved with one grip: a place to push from, a way to go, a bearing and a limit.  When it
has converged, what the spring could not hold has slid, by whichever gives first:

* the pad on the door slides on the metal: its depth and its place along the edge change, and with them the
  nodes that carry it and the lip's share;
* the other tip slides on the body, when its friction is less: the tool moves, the pad stays;
* the tool turns in the crew's hands, when their hold over the tips' distance is less than friction: the line
  of action turns after the metal.

Then the next grip is set from there, its spring loaded as before, so force and stored energy go on without a
step.  Put onto other nodes, the pad presses each sheet as deep as it did where it stood, and the metal comes
to rest at the same tips: what it takes for that is work of the tips, what it gives is let go in a jump.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import msgspec
import numpy as np
from numpy.typing import NDArray

from meshes.part import MeshError
from sim import arms
from sim.grip import Grip
from sim.ladder import PRESSES_N
from sim.model import DoorModel
from sim.network import Drive
from sim.pads import belt_pad_on, slid_pad_on
from sim.plan import BeltPoint, EdgePoint
from sim.problems import PlanError
from sim.push import Push
from sim.seat import Axes, Seat, axes_of, seat_of
from sim.split import shared_load
from sim.tip import Footprint

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

LEAST_SLIDE_M = 0.0005  # a pad is put onto other nodes when it has slid this far
DOOR, OTHER, TOOL = 0, 1, 2  # what gives way across the line


@dataclass(frozen=True)
class Tips:
    """The tool as it stands at one moment of a push.

    push : the push with the pad as it bears now;  place : of the pad's middle now
    seat : how it bears;  drive : the contact of the next step
    tip, other : shape (3,), places of the tip on the door and of the other one [m]
    root : shape (3,), where the line of action comes from [m]: the other tip, but for what the gap is wide
    slid_m : shape (2,), how far pad and other tip have slid in all
    pending : shape (3,), slid but not yet put onto other nodes [m];  across_m : slid across a belt
    splits : nodes at which the sheet has torn in this move, each with the node of the other side
    lip : whether the lip still carries, or the tip has cut through it
    """

    push: Push
    place: EdgePoint | BeltPoint
    seat: Seat
    drive: Drive
    tip: Floats
    other: Floats
    root: Floats
    slid_m: Floats
    pending: Floats
    across_m: float = 0.0
    off: bool = False
    splits: tuple[tuple[int, int], ...] = ()
    lip: bool = True


def opening_of(push: Push, travel_m: float) -> float:
    """Return how far apart a tool's tips stand after some travel [m]."""
    return push.reach_m + travel_m


def first_tips(model: DoorModel, push: Push, points: Floats, step_m: float) -> Tips:
    """Return the tips set and ready for their first step of ``step_m``; the push has a place of its own."""
    assert push.place is not None
    here = push.weights @ points[push.nodes]
    root = here - push.reach_m * push.direction
    seat = _seat(model, push, push.place, push.direction, 0.0, points)
    none = np.zeros(3)
    tips = Tips(push, push.place, seat, push.drive(points), here, push.other, root, np.zeros(2), none)
    return replace(tips, drive=_drive(model, tips, points, none, 0.0, step_m))


def _seat(
    model: DoorModel, push: Push, place: EdgePoint | BeltPoint, line: Floats, travel_m: float, points: Floats
) -> Seat:
    arm = push.tool.arm_m
    turned = arms.half_angle_rad(opening_of(push, travel_m), arm) - arms.half_angle_rad(push.reach_m, arm)
    axes = axes_of(model, place)
    face = arms.face_of(line, _inboard(axes, line), push.lean_rad + turned)
    return seat_of(model, place, push.pads[0], face, push.lean_rad, push.tool.tip_depth_m, points)


def _inboard(axes: Axes, line: Floats) -> Floats:
    inboard = arms.inboard_of(line, axes.into, axes.outboard)
    inboard = inboard - (inboard @ line) * line
    unit: Floats = inboard / np.linalg.norm(inboard)
    return unit


def _line(tips: Tips) -> Floats:
    """Return the line of action now, from the other tip to the one on the door, unit vector."""
    if tips.push.stands:
        return tips.push.direction
    line = tips.tip - tips.root
    size = float(np.linalg.norm(line))
    return line / size if size > 0.0 else tips.push.direction


def _drive(
    model: DoorModel, tips: Tips, points: Floats, loaded: Floats, travel_m: float, next_m: float
) -> Drive:
    """Return the contact of the step to ``next_m``, its spring loaded by ``loaded`` [m] at ``travel_m``."""
    push, line = tips.push, _line(tips)
    now, then = opening_of(push, travel_m), opening_of(push, next_m)
    way = line
    if push.stands:
        way = arms.chord(now, then, push.tool.arm_m, line, _inboard(axes_of(model, tips.place), line))
    here = push.apart(points)
    hold = float("inf") if push.stands else push.tool.hold_n_m / max(now, 1.0e-6)
    grip = Grip(here + loaded - travel_m * way, way, tips.seat.bearing, min(push.friction), hold)
    return replace(push.drive(points), direction=line, grip=grip)


def gives_way(tips: Tips, pressed_n: float) -> int:
    """Return which of pad, other tip and tool gives way first across the line."""
    friction, grip = tips.push.friction, tips.drive.grip
    assert grip is not None
    if grip.cap_n < min(friction) * pressed_n:
        return TOOL
    return OTHER if friction[1] < friction[0] else DOOR


def after_step(
    model: DoorModel, tips: Tips, points: Floats, slid: Floats, pressed_n: float, before_m: float,
    travel_m: float, next_m: float,
) -> Tips:  # fmt: skip
    """Return the tips after a converged step and ready for the next.

    Parameters
    ----------
    slid : shape (3,), what slid in the step [m];  pressed_n : force pressed with during it
    before_m, travel_m, next_m : travel before and after it, and of the next one
    """
    grip = tips.drive.grip
    assert grip is not None
    loaded = grip.lag(tips.push.apart(points), travel_m, slid)
    tip = tips.tip + (travel_m - before_m) * grip.way
    way_given = float(np.linalg.norm(slid))
    part = gives_way(tips, pressed_n)
    deeper = 0.0
    if part == DOOR:
        # below that a tip lies on metal that swings away: it is not followed
        followed = slid if pressed_n >= PRESSES_N else np.zeros(3)
        counted = tips.slid_m + np.array([float(np.linalg.norm(followed)), 0.0])
        tips = replace(tips, tip=tip, slid_m=counted, pending=tips.pending + followed)
        if float(np.linalg.norm(tips.pending)) >= LEAST_SLIDE_M:
            before = tips.push
            tips = _onto(model, tips)
            deeper = _as_deep(model, tips.place, before, tips.push, tips.seat.bearing, points)
    elif part == OTHER:
        given = tips.slid_m + np.array([0.0, way_given])
        tips = replace(tips, tip=tip - slid, root=tips.root - slid, other=tips.other - slid, slid_m=given)
    else:
        tips = replace(tips, tip=tip - slid)
    seat = _seat(model, tips.push, tips.place, _line(tips), travel_m, points)
    tips = replace(tips, seat=seat)
    loaded = loaded + max(deeper, -max(float(seat.bearing @ loaded), 0.0)) * seat.bearing
    return replace(tips, drive=_drive(model, tips, points, loaded, travel_m, next_m))


def _as_deep(
    model: DoorModel,
    place: EdgePoint | BeltPoint,
    old: Push,
    new: Push,
    bearing: Floats,
    points: Floats,
) -> float:
    """Return how much further a pad must press on other nodes to dent each sheet as it did [m]."""
    moved = (points - model.start.points) @ bearing
    skin = model.panel(place).nodes_of(("outer_skin",))
    total = 0.0
    for mine in (True, False):
        shares = []
        for push in (old, new):
            here = np.isin(push.nodes, skin) == mine
            share = float(push.weights[here].sum())
            shares.append((share, float(push.weights[here] @ moved[push.nodes[here]])))
        (was, dent), (share, there) = shares
        if was > 0.0 and share > 0.0:
            total += share * (dent / was - there / share)
    return total


def _onto(model: DoorModel, tips: Tips) -> Tips:
    """Return the tips with the pad on the nodes it has slid to, or off."""
    push, seat, place = tips.push, tips.seat, tips.place
    inboard, edge = float(tips.pending @ seat.inboard), float(tips.pending @ seat.edge)
    along = place.along_m + edge * float(seat.edge @ axes_of(model, place).edge)
    moved = replace(tips, pending=np.zeros(3))
    half = 0.5 * push.tool.tip_depth_m
    try:
        if isinstance(place, EdgePoint):
            place = msgspec.structs.replace(place, along_m=along, depth_m=place.depth_m + inboard)
            pad = slid_pad_on(model, place, push.tool, push.lean_rad, lip=tips.lip)
            off = place.depth_m <= -half or _past_the_bend(model, moved, place, inboard)
        else:
            place = msgspec.structs.replace(place, along_m=along)
            pad = belt_pad_on(model, place, push.tool)
            moved = replace(moved, across_m=tips.across_m + inboard)
            off = abs(moved.across_m) > half
    except (PlanError, MeshError):
        return replace(moved, off=True)
    moved = replace(moved, place=place, push=_with_pad(push, pad, tips.splits))
    return replace(moved, off=True) if off else moved


def after_cut(
    model: DoorModel, tips: Tips, points: Floats, travel_m: float, next_m: float, *, outer: bool
) -> Tips:
    """Return the tips after they have cut through a sheet: on what is behind it, unloaded, or off.

    ``outer`` says that it was the outer skin's lip; behind it lies the shut face, behind the inner
    sheet nothing.
    """
    place, push = tips.place, tips.push
    if not (outer and isinstance(place, EdgePoint)):
        return replace(tips, off=True)
    try:
        pad = slid_pad_on(model, place, push.tool, push.lean_rad, lip=False)
    except (PlanError, MeshError):
        return replace(tips, off=True)
    tips = replace(tips, push=_with_pad(push, pad, tips.splits), lip=False, pending=np.zeros(3))
    seat = _seat(model, tips.push, place, _line(tips), travel_m, points)
    tips = replace(tips, seat=seat)
    return replace(tips, drive=_drive(model, tips, points, np.zeros(3), travel_m, next_m))


def _past_the_bend(model: DoorModel, tips: Tips, place: EdgePoint, inboard_m: float) -> bool:
    """Return whether a pad that slides inboard has left the door's edge: all of it is past the bend."""
    axes = axes_of(model, place)
    hooked = float(tips.seat.bearing @ axes.outboard) > 0.0
    end = place.depth_m - 0.5 * tips.push.tool.tip_depth_m
    return inboard_m > 0.0 and not hooked and end >= model.mesh.shape.shut_face_depth_m


def _with_pad(push: Push, pad: Footprint, splits: tuple[tuple[int, int], ...]) -> Push:
    """Return the push with its pad elsewhere; where the sheet has torn both sides carry it."""
    nodes, weights = pad.nodes, pad.weights
    for node, new in splits:
        nodes, weights = shared_load(nodes, weights, node, new)
    return replace(push, pads=(pad,), nodes=nodes, weights=weights, seats=(pad.seat, push.seats[1]))
