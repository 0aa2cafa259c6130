"""The section across the hem: where a tip of a given depth lies, and what to draw of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from meshes.part import FloatArray, MeshError

if TYPE_CHECKING:
    from meshes.door import DoorMesh

HEM_LIP, SHUT_FACE, INNER_FACE = "hem_lip", "shut_face", "inner_face"

FOLD_GAP_M = 0.002
"""Distance between the skin and the folded-back lip as drawn: three sheets and the bond, rounded up."""

OUTLINE_REACH_M = 0.16
"""How far inwards of the lip the section is drawn."""

UPRIGHT_EDGES = ("hinge_edge", "latch_edge")


def edge_station(door: DoorMesh, edge: str, along_m: float) -> float:
    """Return the length along the hem [m] at a height z (hinge and latch edge) or a distance x (sill edge).

    Raises
    ------
    MeshError
        If there is no such edge, or it does not reach that height or distance.
    """
    if edge not in door.edges:
        raise MeshError("edge", f"no edge named {edge!r}; there are {tuple(door.edges)}")
    first, last = door.edges[edge]
    axis = 2 if edge in UPRIGHT_EDGES else 0
    place = door.surface.points[door.hem_skin[first : last + 1], axis]
    station = door.hem_station_m[first : last + 1]
    if place[0] > place[-1]:
        place, station = place[::-1], station[::-1]
    slack = 1e-9
    if not place[0] - slack <= along_m <= place[-1] + slack:
        reach = f"{place[0]:.4g} to {place[-1]:.4g} m"
        raise MeshError("along_m", f"is {along_m} m, the {edge} runs from {reach}; stay within it")
    return float(np.interp(along_m, place, station))


def edge_of_station(door: DoorMesh, station_m: float) -> str:
    """Return the edge a length along the hem [m] belongs to; a corner belongs to the upright edge.

    Raises
    ------
    MeshError
        If the hem is shorter than that, or the length is negative.
    """
    end = float(door.hem_station_m[-1])
    if not -1e-9 <= station_m <= end + 1e-9:
        raise MeshError("station_m", f"is {station_m} m, the hem runs from 0 to {end:.4g} m")
    for edge in UPRIGHT_EDGES:
        first, last = door.edges[edge]
        if door.hem_station_m[first] <= station_m <= door.hem_station_m[last]:
            return edge
    if station_m < 0.0:  # rounding only: the check above has refused the rest
        return "hinge_edge"
    return "sill_edge" if station_m < end else "latch_edge"


def inward_direction(door: DoorMesh, station_m: float) -> FloatArray:
    """Return the unit vector, shape (3,), in the hem plane, square to the edge, towards the door's middle."""
    first, last = door.edges[edge_of_station(door, station_m)]
    start, end = door.surface.points[door.hem_skin[[first, last]]]
    along = (end - start) / np.linalg.norm(end - start)
    return np.array([-along[2], 0.0, along[0]])


def wall_points(door: DoorMesh, station_m: float) -> FloatArray:
    """Return the points [m] of the shut face square to the edge, lip to inner bend, shape (n_rows, 3).

    Next to a corner, where the narrower bend ends before the lip does, the nearest point of each row stands
    in.
    """
    first, last = door.edges[edge_of_station(door, station_m)]
    rows = door.surface.points[door.wall[:, first : last + 1]]
    start, end = rows[0, 0], rows[0, -1]
    along = (rows - start) @ (end - start) / np.linalg.norm(end - start)
    here = station_m - door.hem_station_m[first]
    return np.array(
        [[np.interp(here, along[row], rows[row, :, axis]) for axis in range(3)] for row in range(len(rows))]
    )


def section_point(door: DoorMesh, station_m: float, depth_m: float) -> tuple[str, FloatArray]:
    """Return what a tip at a depth lies on, and the point [m], shape (3,); continuous in depth.

    The depth is measured inboard from the lip: on the hem lip up to the hem's width, then down the shut face
    to the inner bend, then along the inner face, square to the edge, towards the middle of the door.

    Raises
    ------
    MeshError
        If the station is off the hem, or the depth is negative or leads past the middle of the door.
    """
    shape = door.shape
    reach = shape.shut_face_depth_m + 0.5 * min(shape.height_m, shape.sill_length_m) - shape.shut_face_inset_m
    if not 0.0 <= depth_m <= reach:
        raise MeshError("depth_m", f"is {depth_m} m, allowed are 0 to {reach:.4g} m (middle of the door)")
    wall = wall_points(door, station_m)
    point = np.array([np.interp(depth_m, door.wall_depth_m, wall[:, axis]) for axis in range(3)])
    if depth_m > shape.shut_face_depth_m:
        point += (depth_m - shape.shut_face_depth_m) * inward_direction(door, station_m)
        return INNER_FACE, point
    return (HEM_LIP if depth_m <= shape.hem_width_m else SHUT_FACE), point


def section_outline(door: DoorMesh, station_m: float) -> dict[str, FloatArray]:
    """Return the section as named polylines (inwards of the lip, outboard) [m], each (k, 2).

    "skin" runs from the inside to the lip, "hem" round its fold, "shut_face" from lip to inner bend and
    "inner_panel" on from there; "bend" is the one point of the inner bend. Sheets are drawn as lines.
    """
    lip = wall_points(door, station_m)
    inward = inward_direction(door, station_m)
    sign = door.outboard_sign
    face = np.column_stack(((lip - lip[0]) @ inward, sign * (lip[:, 1] - lip[0, 1])))
    away = np.linspace(0.0, OUTLINE_REACH_M, 17)
    flat = lip[0] + away[:, None] * inward
    flat[:, 2] = np.clip(flat[:, 2], 0.0, door.shape.height_m)
    skin = np.column_stack((away, door.shape.skin_point(flat[:, 0], flat[:, 2])[:, 1]))
    width = door.shape.hem_width_m
    rise = float(np.interp(width, away, skin[:, 1]))
    hem = np.array([[width, rise], [0.0, 0.0], [0.0, -FOLD_GAP_M], [width, rise - FOLD_GAP_M]])
    panel = np.array([face[-1], [OUTLINE_REACH_M, face[-1, 1]]])
    return {"skin": skin[::-1], "hem": hem, "shut_face": face, "bend": face[-1:], "inner_panel": panel}
