"""Where a cut of a plan closes on the metal as it is now.

A place is told on the untouched car; it goes with the metal round it, as a rigid body that fits it best, and
so do the way the blades come in and their plane.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import connected_components

from meshes.door import DoorMesh
from sim.blades import Blades
from sim.cut_plan import Cut, DoorCut, FittingCut, PillarCut
from sim.model import DoorModel
from sim.problems import PlanError
from sim.ranges import Range, check_ranges
from sim.state import State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

AROUND_M = 0.12  # metal this near a place tells where it has gone
LONG_M = 0.35  # how far round its place a cut across the pillar looks
SHEETS = {
    "outer skin": ("outer_skin",),
    "inner panel": ("inner_panel", "latch_patch", "hinge_patch", "latch_wrap", "shut_face"),
}
RANGES: dict[str, Range] = {
    "angle_rad": (-1.05, 1.05, "0 is square across the section"),
    "depth_m": (0.005, 0.9, "say how far in the blades go"),
    "short_m": (0.0, 0.2, "say how far short of the far face they stop, or 0"),
    "opening_m": (0.05, 0.3, "cutters open 0.14 to 0.21 m"),
    "force_n": (1.0e4, 3.0e6, "cutters give 400 to 1200 kN"),
}


def check_cut(model: DoorModel, move: Cut) -> None:
    """Raise PlanError naming the field and the remedy when a cut's numbers make no sense on this car."""
    check_ranges(RANGES, move)
    place = move.place
    if isinstance(place, PillarCut):
        high = _side(model, "place.at").pillar.shape.height_m
        _within(
            "place.height_m", place.height_m, 0.01, high - 0.01, "keep between the pillar's foot and head"
        )
        return
    if place.panel == "rear":
        _side(model, "place.panel")
    if move.short_m > 0.0:
        raise PlanError(
            "short_m", "is for the pillar, whose far face it is measured from; set it to 0, use depth_m"
        )
    shape = door_of(model, place.panel).shape
    longest = max(shape.length_m, shape.height_m)
    if isinstance(place, DoorCut) and place.edge in ("latch_edge", "hinge_edge"):
        longest = shape.height_m
    _within("place.along_m", place.along_m, 0.0, longest, "keep on the door")


def _within(name: str, value: float, low: float, high: float, remedy: str) -> None:
    if not (math.isfinite(value) and low <= value <= high):
        raise PlanError(name, f"is {value:g} m; use {low:g} to {high:.3f} m: {remedy}")


def _side(model: DoorModel, field: str) -> Any:
    side = getattr(model, "side", None)
    if side is None:
        raise PlanError(field, "needs the whole side; set car.extent to 'side', or cut the front door")
    return side


def door_of(model: DoorModel, panel: str) -> DoorMesh:
    """Return a door's mesh in its own axes."""
    return model.panels()[panel].mesh


def word_of(panel: str, name: str) -> str:
    """Return the name a door's tie or beam has in a model's structure."""
    return name if panel == "front" else f"{panel} {name}"


def rows_of(model: DoorModel, part: str) -> Bools:
    """Return which triangles are of "front", "rear" or "pillar", shape (m,): their order never changes."""
    count = len(model.structure.triangles)
    out = np.zeros(count, dtype=bool)
    side = getattr(model, "side", None)
    if side is None:
        out[: len(model.mesh.surface.triangles)] = part == "front"
        return out
    sizes = [len(one.surface.triangles) for one in (side.front, side.rear, side.pillar)]
    first = np.cumsum([0, *sizes])
    which = ("front", "rear", "pillar").index(part)
    out[first[which] : first[which + 1]] = True
    return out


def moved_with(structure: Structure, points: Floats, rows: Bools, place: Floats) -> tuple[Floats, Floats]:
    """Return turn (3, 3) and shift (3,) of the rigid motion that fits the metal round a place best.

    Only metal that still hangs together with the nearest of it is read.
    """
    triangles = structure.triangles[rows]
    pairs = np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]]])
    size = len(structure.points)
    graph = sparse.coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(size, size))
    piece = connected_components(graph, directed=False)[1]
    nodes = np.unique(triangles)
    away = np.linalg.norm(structure.points[nodes] - place, axis=1)
    own = nodes[piece[nodes] == piece[nodes[int(away.argmin())]]]
    away = np.linalg.norm(structure.points[own] - place, axis=1)
    near = own[away <= max(AROUND_M, float(np.sort(away)[min(11, len(away) - 1)]))]
    rest, now = structure.points[near], points[near]
    a, b = rest.mean(axis=0), now.mean(axis=0)
    u, _, vt = np.linalg.svd((rest - a).T @ (now - b))
    flip = np.diag([1.0, 1.0, float(np.sign(np.linalg.det(u @ vt)))])
    turn: Floats = (u @ flip @ vt).T
    return turn, b - turn @ a


def _turned(vector: Floats, axis: Floats, angle_rad: float) -> Floats:
    """Return a vector turned about a unit axis (Rodrigues)."""
    c, s = math.cos(angle_rad), math.sin(angle_rad)
    out: Floats = c * vector + s * np.cross(axis, vector) + (1.0 - c) * (axis @ vector) * axis
    return out


def blades_of(model: DoorModel, state: State, move: Cut) -> Blades:
    """Return the blades of a cut across the pillar or into a door, on the metal as it is now."""
    place = move.place
    if isinstance(place, PillarCut):
        rows, rest, way, normal, reach = _across_pillar(model, place, move.angle_rad)
        beams: list[int] = []
        ties = _ties_on(model, rows)
    else:
        assert isinstance(place, DoorCut)
        rows, rest, way, normal = _into_door(model, place, move.angle_rad)
        reach = move.depth_m + 0.1
        beams, ties = [], []
        if place.sheets == "whole door":
            rear = place.panel == "rear"
            beams = [i for i, b in enumerate(model.structure.beams) if b.name.startswith("rear ") == rear]
            ties = _ties_on(model, rows)
    turn, shift = moved_with(model.structure, state.points, rows, rest)
    return Blades(
        turn @ rest + shift,
        turn @ way,
        turn @ normal,
        rows,
        tuple(beams),
        tuple(ties),
        move.opening_m,
        move.depth_m,
        move.short_m,
        reach,
    )


def _ties_on(model: DoorModel, rows: Bools) -> list[int]:
    nodes = np.unique(model.structure.triangles[rows])
    return [i for i, tie in enumerate(model.structure.ties) if np.isin(tie.nodes, nodes).any()]


def _across_pillar(
    model: DoorModel, place: PillarCut, angle_rad: float
) -> tuple[Bools, Floats, Floats, Floats, float]:
    side = _side(model, "place.at")
    mesh, sign = side.pillar, model.outboard_sign
    shift: Floats = side.shifts["pillar"]

    def middle(height: float) -> Floats:
        c = mesh.cuts
        z = min(max(height, float(c[0, 0])), float(c[-1, 0]))
        x, y = (np.interp(z, c[:, 0], 0.5 * (c[:, k] + c[:, k + 2])) for k in (1, 2))
        out: Floats = np.array([x, sign * y, z]) + shift
        return out

    step = 0.02
    axis = middle(place.height_m + step) - middle(place.height_m - step)
    axis /= np.linalg.norm(axis)
    ways = {"front": (1.0, 0, 0), "rear": (-1.0, 0, 0), "outer": (0, -sign, 0), "inner": (0, sign, 0)}
    way = np.array(ways[place.blades_from], dtype=float)
    way -= axis * (axis @ way)
    way /= np.linalg.norm(way)
    return rows_of(model, "pillar"), middle(place.height_m), way, _turned(axis, way, angle_rad), LONG_M


def _into_door(model: DoorModel, place: DoorCut, angle_rad: float) -> tuple[Bools, Floats, Floats, Floats]:
    mesh, sign = door_of(model, place.panel), model.outboard_sign
    side = getattr(model, "side", None)
    shift = np.zeros(3) if side is None else side.shifts[place.panel]
    depth = {"outer skin": 0.0, "inner panel": 1.0, "whole door": 0.5}[
        place.sheets
    ] * mesh.shape.shut_face_depth_m
    sill_hinge, sill_latch, belt_latch, belt_hinge = mesh.shape.corners_at_depth(depth)
    ends = {
        "latch_edge": (sill_latch, belt_latch),
        "hinge_edge": (belt_hinge, sill_hinge),
        "sill_edge": (sill_hinge, sill_latch),
        "belt": (belt_latch, belt_hinge),
    }[place.edge]
    low, high = (np.array(end) for end in ends)
    if place.edge in ("latch_edge", "hinge_edge"):
        share = (place.along_m - low[2]) / (high[2] - low[2])
    else:
        share = (place.along_m - low[0]) / (high[0] - low[0])
    rest = low + min(max(share, 0.0), 1.0) * (high - low)
    along = (high - low) / np.linalg.norm(high - low)
    outboard = np.array([0.0, 1.0, 0.0])
    way = _turned(np.cross(along, outboard), outboard, angle_rad)  # the corners go round, so this leads in
    way[1] = 0.0
    way /= np.linalg.norm(way)
    normal = np.cross(way, outboard)
    mirror = np.array([1.0, sign, 1.0])
    part = "front" if side is None else place.panel
    rows = rows_of(model, part)
    if place.sheets != "whole door":
        surface = mesh.surface
        names = SHEETS[place.sheets]
        kinds = [surface.part_names.index(name) for name in names if name in surface.part_names]
        own = np.flatnonzero(rows)
        rows[own] = np.isin(surface.triangle_part, kinds)
    return rows, rest * mirror + shift, way, normal


def fitting_tie(model: DoorModel, place: FittingCut) -> int:
    """Return the index of a fitting's tie; PlanError when the car has none that holds by it."""
    name = word_of(place.panel, "latch" if place.fitting == "striker" else place.fitting)
    names = [tie.name for tie in model.structure.ties]
    if name not in names:
        raise PlanError(
            "place.fitting", f"is '{place.fitting}', which holds nothing on this car; leave the cut out"
        )
    return names.index(name)
