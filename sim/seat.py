"""How a pad bears on its seat: the way it presses, and the two ways it can slide.

A pad is a flat face set square to the push (but for its lean) that turns with its arm.  On an edge of the
door, the lip or the inner bend when the pad reaches past it, the face's own normal is the way it presses, as
far as the edge has that normal; on the flat of the shut face the sheet's normal is.  Between lip and flat the
lip's share of the load weighs the two.  No law reads a seat's name.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.arms import inboard_of
from sim.model import DoorModel, Panel
from sim.plan import BeltPoint, EdgePoint
from sim.push import ALONG
from sim.tip import Footprint, loaded_part

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@dataclass(frozen=True)
class Axes:
    """The plane across an edge and the edge itself: unit vectors, shape (3,).

    into : into the door, square to the edge;  outboard : out of the car
    edge : along the edge, the way ``along_m`` grows
    """

    into: Floats
    outboard: Floats
    edge: Floats


@dataclass(frozen=True)
class Seat:
    """How a pad bears: unit vectors square to one another, shape (3,).

    bearing : the way it presses;  inboard : the way its depth grows as it slides;  edge : along the edge
    """

    bearing: Floats
    inboard: Floats
    edge: Floats


def axes_of(model: DoorModel, place: EdgePoint | BeltPoint) -> Axes:
    """Return the axes at a place on the door."""
    outboard = np.array([0.0, model.outboard_sign, 0.0])
    upright = isinstance(place, EdgePoint) and place.edge != "sill_edge"
    edge = np.array([0.0, 0.0, 1.0]) if upright else np.array([1.0, 0.0, 0.0])
    into = np.array(ALONG[place.edge] if isinstance(place, EdgePoint) else (0.0, 0.0, -1.0))
    return Axes(into, outboard, edge)


def seat_of(
    model: DoorModel, place: EdgePoint | BeltPoint, pad: Footprint, face: Floats, lean_rad: float,
    pad_m: float, points: Floats,
) -> Seat:  # fmt: skip
    """Return how a pad bears with its face turned to ``face``, on the metal where it is now."""
    axes = axes_of(model, place)
    bearing = face
    if isinstance(place, EdgePoint):
        shut_face, panel = _sheets(model.panel(place))
        off, loaded = loaded_part(pad_m, lean_rad)
        end = place.depth_m + off + 0.5 * loaded
        shut = _into_sheet(pad, points, shut_face, axes.into)
        other = shut
        if end > model.mesh.shape.shut_face_depth_m:
            inner = _into_sheet(pad, points, panel, axes.outboard)
            other = between(face, shut, inner, axes)
        bearing = pad.skin_share * face + (1.0 - pad.skin_share) * other
        bearing = bearing / np.linalg.norm(bearing)
    inboard = inboard_of(bearing, axes.into, axes.outboard)
    inboard = inboard - (inboard @ bearing) * bearing
    inboard = inboard / np.linalg.norm(inboard)
    edge = np.cross(bearing, inboard)
    return Seat(bearing, inboard, edge if edge @ axes.edge > 0.0 else -edge)


def between(face: Floats, shut: Floats, panel: Floats, axes: Axes) -> Floats:
    """Return the way (3,) a face presses on the inner bend: its normal, as far as both sheets leave it."""
    turn, low, high = (math.atan2(v @ axes.outboard, v @ axes.into) for v in (face, shut, panel))
    if turn < low:
        return shut
    return panel if turn > high else face


def _sheets(panel: Panel) -> tuple[Ints, Ints]:
    """Return the triangles of the shut face (lip to inner bend) and of the inner panel, (m, 3) each."""
    triangles, skin = panel.triangles, panel.nodes_of(("outer_skin",))
    inner = triangles[~np.isin(triangles, skin).any(axis=1)]
    wall = np.isin(inner, panel.mesh.wall + panel.first).all(axis=1)
    return inner[wall], inner[~wall]


def _into_sheet(pad: Footprint, points: Floats, triangles: Ints, otherwise: Floats) -> Floats:
    """Return the way into the triangles under a pad as they are now, (3,); ``otherwise`` without any."""
    corners = triangles[np.isin(triangles, pad.nodes).any(axis=1)]
    if not len(corners):
        return otherwise
    a, b, c = (points[corners[:, k]] for k in range(3))
    normal = -np.cross(b - a, c - a).sum(axis=0)
    size = float(np.linalg.norm(normal))
    return normal / size if size > 0.0 else otherwise
