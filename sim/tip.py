"""Where a tip bears: its pad on the sheets, the share each sheet carries, the words for its seat.

The pad is a rectangle, tip width along the edge by pad depth inboard.  The hem stands proud of the shut
face, so a pad whose middle is still on the lip rests on the lip alone; from there the lip's share falls with
the overlap that is left, to nothing once the whole pad lies behind the hem:

    share = clip((hem width - depth + pad / 2) / (pad / 2), 0, 1).

The rest goes to the sheet under the pad.  No law reads a seat's name.

A pad that leans on its seat bears harder at one end, as a rigid pad does on a bed of springs: with a mean
dent of SEAT_DENT_M under it the pressure falls along the pad by the lean, and where it would pull the pad has
lifted.  It is taken as the shorter pad, under even pressure, that has the same resultant at the same place.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from meshes.door import DoorMesh
from meshes.part import MeshError
from sim.plan import BeltPoint, EdgePoint, FacePoint, Tool
from sim.problems import PlanError

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

INNER_PARTS = ("shut_face", "inner_panel", "latch_patch", "hinge_patch", "latch_wrap")
SAMPLES_ALONG, SAMPLES_DEEP = 9, 5
SEAT_DENT_M = 1.0e-3  # how far a door's sheet gives under a pad before the push is on its way, assumed


@dataclass(frozen=True)
class Footprint:
    """Node weights of one pad; they sum to one.

    nodes : shape (k,);  weights : shape (k,)
    skin_share : how much of the load the outer skin's lip carries, 0 .. 1
    pad : shape (j, 3), sample points on the sheet at rest [m]
    seat : word for the seat;  part : part it bears on
    station_m : place along the hem, None away from it
    """

    nodes: Ints
    weights: Floats
    skin_share: float
    pad: Floats
    seat: str
    part: str
    station_m: float | None

    def point(self, points: Floats) -> Floats:
        """Return the pad's middle on the moved metal, shape (3,) [m]."""
        middle: Floats = self.weights @ points[self.nodes]
        return middle


def lip_share(depth_m: float, pad_m: float, hem_m: float) -> float:
    """Return the hem lip's share of the load of a pad with its middle at ``depth_m``."""
    half = 0.5 * pad_m
    return float(np.clip((hem_m - depth_m + half) / half, 0.0, 1.0))


def loaded_part(pad_m: float, lean_rad: float) -> tuple[float, float]:
    """Return how far inboard of the pad's middle its load sits, and the length that bears [m].

    Rigid pad on a bed of springs [winkler-1867]: while it bears all along, the resultant lies
    pad^2 tan(lean) / (12 dent) off the middle; once one end has lifted, the pressure is a triangle over
    sqrt(2 pad dent / tan(lean)).
    """
    slope = math.tan(abs(lean_rad))
    if slope * pad_m <= 2.0 * SEAT_DENT_M:
        off = pad_m**2 * slope / (12.0 * SEAT_DENT_M)
    else:
        off = 0.5 * pad_m - math.sqrt(2.0 * pad_m * SEAT_DENT_M / slope) / 3.0
    return math.copysign(off, lean_rad) if lean_rad else 0.0, pad_m - 2.0 * off


def _gather(pairs: list[tuple[Ints, Floats]]) -> tuple[Ints, Floats]:
    nodes = np.concatenate([p[0].ravel() for p in pairs])
    weights = np.concatenate([p[1].ravel() for p in pairs])
    unique, place = np.unique(nodes, return_inverse=True)
    total = np.bincount(place, weights)
    keep = total > 1.0e-12
    return unique[keep].astype(np.int64), total[keep] / total[keep].sum()


def _on_chain(chain: Ints, station: Floats, at: Floats) -> tuple[Ints, Floats]:
    """Return node pairs and linear weights of stations along a chain, shapes (k, 2)."""
    cell = np.clip(np.searchsorted(station, at, side="right") - 1, 0, len(station) - 2)
    xi = np.clip((at - station[cell]) / (station[cell + 1] - station[cell]), 0.0, 1.0)
    return np.stack([chain[cell], chain[cell + 1]], axis=1), np.stack([1.0 - xi, xi], axis=1)


def _centred(count: int, width: float) -> Floats:
    spots: Floats = ((np.arange(count) + 0.5) / count - 0.5) * width
    return spots


def _on_sheet(mesh: DoorMesh, points: Floats, parts: tuple[str, ...]) -> tuple[Ints, Floats]:
    triangle, weights, _ = mesh.locate(points, parts)
    return mesh.surface.triangles[triangle], weights


def seat_word(mesh: DoorMesh, depth_m: float, pad_m: float, edge: str, along_m: float) -> tuple[str, str]:
    """Return seat and part in words for a tip in the gap; nothing but pictures and text reads them."""
    shape = mesh.shape
    bend = shape.shut_face_depth_m
    near_latch = edge == "latch_edge" and abs(along_m - shape.latch_height_m) <= 0.5 * shape.latch_patch_m
    if depth_m - 0.5 * pad_m >= bend - 0.5 * pad_m:
        return "behind the inner bend", "inner panel"
    if lip_share(depth_m, pad_m, shape.hem_width_m) >= 0.5:
        return "hem lip", "hem"
    if near_latch and depth_m > shape.hem_width_m + pad_m:
        return "latch plate", "shut face"
    return "shut-face edge", "shut face"


def edge_footprint(mesh: DoorMesh, place: EdgePoint, tool: Tool, lean_rad: float = 0.0) -> Footprint:
    """Return the pad of a tip in the gap at an edge.

    Raises
    ------
    PlanError
        When the tip would be in the air: above or below the edge, outside the lip or past the door's middle.
    """
    if place.depth_m < 0.0:
        message = f"is {place.depth_m} m: the tip is in the air outside the lip; use 0 or more"
        raise PlanError("depth_m", message)
    return slid_footprint(mesh, place, tool, lean_rad)


def slid_footprint(
    mesh: DoorMesh, place: EdgePoint, tool: Tool, lean_rad: float = 0.0, *, lip: bool = True
) -> Footprint:
    """Return the pad of a tip at an edge where it has slid to: its middle may be outside the lip.

    ``lip`` False is a lip that the tip has cut through and that no longer carries it.

    Raises
    ------
    PlanError
        As `edge_footprint`, but for a depth below zero.
    """
    off, pad = loaded_part(tool.tip_depth_m, lean_rad)
    shape, depth = mesh.shape, place.depth_m + off
    try:
        station = mesh.edge_station(place.edge, place.along_m)
        centre = mesh.section_point(station, max(depth, 0.0))[1]
    except MeshError as error:
        raise PlanError(error.parameter, f"{error.message}; the tip is in the air there") from error
    if not 0.0 <= place.lip_share_ratio <= 1.0:
        raise PlanError("lip_share_ratio", f"is {place.lip_share_ratio}; use 0 to 1")
    share = place.lip_share_ratio * lip_share(depth, pad, shape.hem_width_m) if lip else 0.0
    hem = mesh.hem_station_m
    along = np.clip(station + _centred(SAMPLES_ALONG, tool.tip_width_m), hem[0], hem[-1])
    pairs, spots = [], [centre[None]]
    if share > 0.0:
        nodes, weights = _on_chain(mesh.hem_skin, hem, along)
        pairs.append((nodes, weights * share / len(along)))
    if share < 1.0:
        low = max(depth - 0.5 * pad, shape.hem_width_m)
        high = max(depth + 0.5 * pad, low)
        deep = low + (np.arange(SAMPLES_DEEP) + 0.5) / SAMPLES_DEEP * (high - low)
        spots = [np.array([mesh.section_point(float(s), float(d))[1] for s in along for d in deep])]
        nodes, weights = _on_sheet(mesh, spots[0], INNER_PARTS)
        pairs.append((nodes, weights * (1.0 - share) / len(spots[0])))
    nodes, weights = _gather(pairs)
    seat, part = seat_word(mesh, depth, pad, place.edge, place.along_m)
    return Footprint(nodes, weights, share, np.concatenate(spots), seat, part, station)


def belt_footprint(mesh: DoorMesh, place: BeltPoint, tool: Tool) -> Footprint:
    """Return the pad of a tip that stands on the belt line, on one lip or across both."""
    points = mesh.surface.points
    pairs, spots = [], []
    lips = ("outer", "inner") if place.lip == "both" else (place.lip,)
    for lip in lips:
        chain = mesh.surface.nodes[f"belt_{lip}_lip"]
        x = points[chain, 0]
        if not x[0] <= place.along_m <= x[-1]:
            raise PlanError(
                "along_m",
                f"is {place.along_m} m: the belt runs from {x[0]:.3g} to {x[-1]:.3g} m, "
                "the tip is in the air",
            )
        at = np.clip(place.along_m + _centred(SAMPLES_ALONG, tool.tip_width_m), x[0], x[-1])
        nodes, weights = _on_chain(chain, x, at)
        pairs.append((nodes, weights / (len(at) * len(lips))))
        spots.append(np.einsum("ks,ksi->ki", weights, points[nodes]))
    nodes, weights = _gather(pairs)
    word = {"outer": "belt outer lip", "inner": "belt inner lip", "both": "belt, both lips"}[place.lip]
    share = {"outer": 1.0, "inner": 0.0, "both": 0.5}[place.lip]
    return Footprint(nodes, weights, share, np.concatenate(spots), word, "belt line", None)


def face_footprint(mesh: DoorMesh, place: FacePoint, tool: Tool) -> Footprint:
    """Return the pad of a tip flat on the outer skin or on the inner panel."""
    shape = mesh.shape
    inset = shape.shut_face_inset_m
    if not (inset < place.along_m < shape.sill_length_m - inset and inset < place.height_m <= shape.height_m):
        raise PlanError(
            "along_m, height_m",
            f"{place.along_m}, {place.height_m} m lie off the panel: the tip is in the air",
        )
    x = place.along_m + _centred(SAMPLES_DEEP, tool.tip_width_m)
    z = place.height_m + _centred(SAMPLES_DEEP, tool.tip_width_m)
    grid = np.array([[a, 0.0, min(b, shape.height_m)] for a in x for b in z])
    if place.side == "outer":
        grid[:, 1] = shape.skin_point(grid[:, 0], grid[:, 2])[:, 1] * mesh.outboard_sign
        parts, word, part = ("outer_skin",), "outer skin", "outer skin"
    else:
        grid[:, 1] = -shape.shut_face_depth_m * mesh.outboard_sign
        parts, word, part = ("inner_panel",), "inner face", "inner panel"
    nodes, weights = _gather([(n, w / len(grid)) for n, w in [_on_sheet(mesh, grid, parts)]])
    return Footprint(nodes, weights, float(place.side == "outer"), grid, word, part, None)


def footprint(
    mesh: DoorMesh, place: EdgePoint | BeltPoint | FacePoint, tool: Tool, lean_rad: float = 0.0
) -> Footprint:
    """Return the pad of a tip anywhere on the door; a lean matters in a gap at the edge."""
    if isinstance(place, EdgePoint):
        return edge_footprint(mesh, place, tool, lean_rad)
    if isinstance(place, BeltPoint):
        return belt_footprint(mesh, place, tool)
    return face_footprint(mesh, place, tool)
