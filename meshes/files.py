"""Meshes to and from files, and independent checks of them, through trimesh (imported only when called).

STL carries no names and no unit: ours are written in metres. GLB is metres with +y up by its standard
(Khronos glTF 2.0, section 3.4), so the door's z up is turned on the way out and back on the way in; names
are kept.
"""

from __future__ import annotations

import importlib
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from meshes.part import FloatArray, IntArray, MeshError, Surface

if TYPE_CHECKING:
    import trimesh

_TO_Y_UP = np.array([[1.0, 0.0, 0.0], [0.0, 0.0, 1.0], [0.0, -1.0, 0.0]])
"""Turns (x, y, z up) into (x, z, -y): y up, and still right-handed."""


@dataclass(frozen=True)
class SurfaceReport:
    """What an independent library finds about a surface.

    Parameters
    ----------
    is_winding_consistent
        Whether neighbouring triangles run the same way round.
    is_watertight
        Whether every edge has two triangles.
    open_edge_count, crowded_edge_count
        Edges with one triangle, and with three or more.
    area_m2
        Area of all triangles.
    volume_m3
        Enclosed volume, positive where normals point outward; none for a surface that is not watertight.
    """

    is_winding_consistent: bool
    is_watertight: bool
    open_edge_count: int
    crowded_edge_count: int
    area_m2: float
    volume_m3: float | None


def to_trimesh(
    surface: Surface, parts: tuple[str, ...] | None = None, *, merge: bool = False
) -> trimesh.Trimesh:
    """Return the named parts (none named: all) as a trimesh; `merge` joins nodes that stand at one place."""
    import trimesh

    names = surface.part_names if parts is None else parts
    triangles = np.concatenate([surface.triangles_of(name) for name in names])
    mesh = trimesh.Trimesh(surface.points, triangles, process=False)
    mesh.remove_unreferenced_vertices()
    if merge:
        mesh.merge_vertices()
    return mesh


def inspect_surface(
    surface: Surface, parts: tuple[str, ...] | None = None, *, merge: bool = False
) -> SurfaceReport:
    """Return winding, open and crowded edges, area and volume of the named parts (none named: all)."""
    mesh = to_trimesh(surface, parts, merge=merge)
    _, count = np.unique(mesh.edges_sorted, axis=0, return_counts=True)
    closed = bool(mesh.is_watertight)
    return SurfaceReport(
        bool(mesh.is_winding_consistent),
        closed,
        int((count == 1).sum()),
        int((count > 2).sum()),
        float(mesh.area),
        float(mesh.volume) if closed else None,
    )


def closest_points(
    surface: Surface, points: npt.ArrayLike, parts: tuple[str, ...] | None = None
) -> tuple[FloatArray, FloatArray, IntArray]:
    """Return closest points [m] (k, 3), distances [m] (k,), rows among the parts' triangles (k,); slow."""
    proximity: Any = importlib.import_module("trimesh.proximity")
    query = np.asarray(points, dtype=np.float64)
    found, distance, row = proximity.closest_point_naive(to_trimesh(surface, parts), query)
    return np.asarray(found), np.asarray(distance), np.asarray(row, dtype=np.int64)


def write_stl(surface: Surface, path: Path, parts: tuple[str, ...] | None = None) -> None:
    """Write the named parts (none named: all) as binary STL, metres, z up."""
    mesh: Any = to_trimesh(surface, parts)
    path.write_bytes(mesh.export(file_type="stl"))


def write_glb(surface: Surface, path: Path) -> None:
    """Write every part that has triangles as a named mesh of a GLB file, metres, y up as glTF wants it."""
    import trimesh

    scene: Any = trimesh.Scene()
    for name in surface.part_names:
        if len(surface.triangles_of(name)):
            mesh = to_trimesh(surface, (name,))
            mesh.vertices = mesh.vertices @ _TO_Y_UP.T
            scene.add_geometry(mesh, node_name=name, geom_name=name)
    path.write_bytes(scene.export(file_type="glb"))


def read_glb(path: Path) -> Surface:
    """Return the parts of a GLB file written by `write_glb`; node sets and chains are not in such a file.

    Raises
    ------
    MeshError
        If the file holds no triangles.
    """
    import trimesh

    scene: Any = trimesh.load_scene(path, file_type="glb", process=False)
    meshes = {name: item for name, item in scene.geometry.items() if isinstance(item, trimesh.Trimesh)}
    names = tuple(sorted(meshes))
    if not names:
        raise MeshError("path", f"{path} holds no mesh; pick a file written by this program")
    points, triangles, part, shift = [], [], [], 0
    for index, name in enumerate(names):
        mesh = meshes[name]
        points.append(np.asarray(mesh.vertices) @ _TO_Y_UP)
        triangles.append(np.asarray(mesh.faces, dtype=np.int64) + shift)
        part.append(np.full(len(mesh.faces), index))
        shift += len(mesh.vertices)
    return Surface(np.concatenate(points), np.concatenate(triangles), np.concatenate(part), names)
