"""A move as its tips stand now: where they have slid to, and along which line they push."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

import msgspec
import numpy as np

from sim.outcome import limit
from sim.plan import EdgePoint, Move, Spread
from sim.record import Aim, Frame

if TYPE_CHECKING:
    from sim.door_model import DoorModel


def as_now(model: DoorModel, move: Move, frame: Frame) -> Move:
    """Return the move with its tip where a frame of it has the tip; the move itself when it has not slid."""
    seat = frame.seat
    if not isinstance(move, Spread) or seat is None:
        return move
    place, tilt = seat.place, move.tilt_rad
    if isinstance(place, EdgePoint):
        place = msgspec.structs.replace(place, depth_m=max(place.depth_m, 0.0))
        from sim.seat import axes_of  # by now the mechanics are there

        axes = axes_of(model, place)
        tilt = math.atan2(float(seat.line @ axes.outboard), float(seat.line @ axes.into))
    return msgspec.structs.replace(move, door=place, tilt_rad=tilt)


def aim_now(aim: Aim, frame: Frame, outboard_sign: float) -> Aim:
    """Return an aim along the line of a frame, its second tip where that one has slid to."""
    seat = frame.seat
    if seat is None or aim.problems:
        return aim
    tips = np.stack([aim.tips[0], seat.tips[1]])
    return replace(aim, tips=tips, direction=seat.line, outward_ratio=float(seat.line[1]) * outboard_sign)


def slid_words(frame: Frame | None, length: str) -> str:
    """Return what is said beside a tip's seat, empty while it holds; ``length`` is how far it slid."""
    if frame is None or frame.seat is None or frame.seat.slid_m < limit("slid_m"):
        return ""
    return f", slipped {length}"
