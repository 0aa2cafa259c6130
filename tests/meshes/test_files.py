"""Files: what is written comes back, and other programs see it the right way up.

Axes and unit of GLB: Khronos glTF 2.0 specification, section "Coordinate System and Units" (+y up, metres),
from memory.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
import trimesh

from meshes.door import DoorMesh
from meshes.files import closest_points, inspect_surface, read_glb, to_trimesh, write_glb, write_stl
from meshes.lattice import disc
from meshes.part import MeshError, Surface, triangle_areas_and_normals

SINGLE = 1e-6  # single precision holds seven figures of a metre


def test_glb_brings_back_points_parts_and_winding(door: DoorMesh, tmp_path: Path) -> None:
    write_glb(door.surface, tmp_path / "door.glb")
    back = read_glb(tmp_path / "door.glb")
    assert set(back.part_names) == set(door.surface.part_names)
    for part in door.surface.part_names:
        ours = door.surface.points[door.surface.triangles_of(part)]
        theirs = back.points[back.triangles_of(part)]
        np.testing.assert_allclose(theirs, ours, rtol=0, atol=SINGLE)
    assert inspect_surface(back, merge=True).is_winding_consistent


def test_other_programs_find_the_belt_up_and_the_skin_towards_minus_z(door: DoorMesh, tmp_path: Path) -> None:
    write_glb(door.surface, tmp_path / "door.glb")
    scene = trimesh.load_scene(tmp_path / "door.glb")
    np.testing.assert_allclose(scene.bounds[:, 1], [0.0, door.shape.height_m], rtol=0, atol=SINGLE)
    skin = scene.geometry["outer_skin"]
    assert skin.face_normals[:, 2].mean() < -0.9  # z forward in glTF is -y here


def test_stl_keeps_triangles_area_and_normals(door: DoorMesh, tmp_path: Path) -> None:
    write_stl(door.surface, tmp_path / "door.stl")
    data = (tmp_path / "door.stl").read_bytes()
    count = len(door.surface.triangles)
    assert len(data) == 84 + 50 * count  # binary STL: 80 byte header, count, 50 bytes a triangle
    mesh = trimesh.load_mesh(tmp_path / "door.stl")
    by_part = np.concatenate([door.surface.triangles_of(part) for part in door.surface.part_names])
    area, normal = triangle_areas_and_normals(door.surface.points, by_part)
    np.testing.assert_allclose(mesh.area, area.sum(), rtol=1e-6)
    np.testing.assert_allclose(
        mesh.face_normals, normal, rtol=0, atol=1e-4
    )  # single precision on 20 mm edges


def test_one_part_alone_can_be_written(door: DoorMesh, tmp_path: Path) -> None:
    write_stl(door.surface, tmp_path / "skin.stl", ("outer_skin",))
    assert len(trimesh.load_mesh(tmp_path / "skin.stl").faces) == len(door.surface.triangles_of("outer_skin"))


def test_an_open_sheet_has_no_volume_and_its_rim_as_open_edges() -> None:
    mesh = disc(0.5, 4)
    surface = Surface(mesh.points, mesh.triangles, np.zeros(len(mesh.triangles), dtype=np.int64), ("disc",))
    report = inspect_surface(surface)
    assert (report.is_watertight, report.volume_m3) == (False, None)
    assert report.open_edge_count == len(mesh.boundary["rim"])
    assert report.is_winding_consistent
    turned = mesh.triangles.copy()
    turned[0] = turned[0, ::-1]
    spoilt = Surface(mesh.points, turned, np.zeros(len(turned), dtype=np.int64), ("disc",))
    assert not inspect_surface(spoilt).is_winding_consistent


def test_merging_joins_the_hem_only_when_asked(door: DoorMesh) -> None:
    apart, joined = to_trimesh(door.surface), to_trimesh(door.surface, merge=True)
    assert len(apart.vertices) - len(joined.vertices) == len(door.hem_skin)


def test_closest_points_of_the_slow_way_by_hand() -> None:
    mesh = disc(1.0, 1)
    surface = Surface(mesh.points, mesh.triangles, np.zeros(6, dtype=np.int64), ("disc",))
    found, distance, _ = closest_points(surface, [[0.1, 0.1, 2.0], [3.0, 0.0, 0.0]])
    np.testing.assert_allclose(found, [[0.1, 0.1, 0.0], [1.0, 0.0, 0.0]], rtol=0, atol=1e-12)
    np.testing.assert_allclose(distance, [2.0, 2.0], rtol=1e-12)


def test_a_file_without_meshes_is_refused(tmp_path: Path) -> None:
    empty = tmp_path / "empty.glb"
    dots = trimesh.Scene([trimesh.PointCloud([[0.0, 0, 0], [1, 1, 1]])])
    empty.write_bytes(dots.export(file_type="glb"))
    with pytest.raises(MeshError) as caught:
        read_glb(empty)
    assert caught.value.parameter == "path"
