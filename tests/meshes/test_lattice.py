"""Lattices against closed forms: areas, Euler's polyhedron formula, angles, the direction they are turned to.

Verification, no source needed: plane geometry. An equilateral lattice of spacing h has edges h, angles of
60 degrees and 2 / (sqrt(3) h^2) nodes per area; a disc in the plane has V - E + F = 1 (Euler).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from meshes import lattice
from meshes.lattice import Lattice
from meshes.part import MeshError, triangle_areas_and_normals

CORNERS = np.array([[0.0, 0, 0], [1.0, 0, 0], [1.1, 0, 0.7], [-0.1, 0, 0.7]])
SHAPES = {
    "patch": lambda: lattice.unit_patch(7, 5),
    "rectangle": lambda: lattice.rectangle(1.0, 0.6, 0.07),
    "turned 30": lambda: lattice.rectangle(1.0, 0.6, 0.07, np.radians(30)),
    "turned 45": lambda: lattice.rectangle(1.0, 0.6, 0.07, np.radians(45)),
    "one diagonal": lambda: lattice.one_diagonal(1.0, 0.6, 5, 4),
    "disc": lambda: lattice.disc(0.5, 6),
    "slit ring": lambda: lattice.slit_ring(6.0, 10.0, 6, 40),
}


def areas(mesh: Lattice) -> np.ndarray:
    return triangle_areas_and_normals(mesh.points, mesh.triangles)[0]


@pytest.mark.parametrize("name", SHAPES)
def test_every_flat_shape_is_one_disc_wound_one_way_and_uses_every_node(
    name: str, edge_counts: Callable
) -> None:
    mesh = SHAPES[name]()
    edges, count = edge_counts(mesh.triangles)
    assert set(count.tolist()) == {1, 2}
    assert len(mesh.points) - len(edges) + len(mesh.triangles) == 1
    assert np.array_equal(np.unique(mesh.triangles), np.arange(len(mesh.points)))
    assert (triangle_areas_and_normals(mesh.points, mesh.triangles)[1][:, 2] > 0).all()


@pytest.mark.parametrize("name", SHAPES)
def test_the_boundary_chains_are_exactly_the_open_edges(name: str, edge_counts: Callable) -> None:
    mesh = SHAPES[name]()
    edges, count = edge_counts(mesh.triangles)
    chains = [ids for key, ids in mesh.boundary.items() if key != "centre"]
    if name == "disc":
        chains = [np.append(mesh.boundary["rim"], mesh.boundary["rim"][0])]
    steps = np.concatenate([np.column_stack((ids[:-1], ids[1:])) for ids in chains])
    assert {tuple(sorted(step)) for step in steps.tolist()} == {
        tuple(edge) for edge in edges[count == 1].tolist()
    }


@pytest.mark.parametrize("rows", [1, 2, 5, 6])
def test_counts_of_the_unit_patch(rows: int) -> None:
    columns = 7
    mesh = lattice.unit_patch(columns, rows)
    odd_rows = (rows + 1) // 2
    assert len(mesh.points) == (rows + 1) * (columns + 1) + odd_rows
    assert len(mesh.triangles) == rows * (2 * columns + 1)
    for side, s in (("left", 0.0), ("right", 1.0)):
        ids = mesh.boundary[side]
        np.testing.assert_array_equal(mesh.points[ids, 0], s)
        np.testing.assert_array_equal(mesh.points[ids, 1], np.arange(rows + 1) / rows)
    for side, t in (("bottom", 0.0), ("top", 1.0)):
        np.testing.assert_array_equal(mesh.points[mesh.boundary[side], 1], t)
        assert (np.diff(mesh.points[mesh.boundary[side], 0]) > 0).all()


def test_a_patch_of_fitting_size_is_equilateral_but_for_the_half_triangles_at_the_sides(
    angles_deg: Callable,
) -> None:
    spacing = 0.05
    columns, rows = lattice.patch_counts(10 * spacing, 8 * spacing * np.sqrt(0.75), spacing)
    assert (columns, rows) == (10, 8)
    width, height = 10 * spacing, 8 * spacing * np.sqrt(3) / 2
    mesh = lattice.quad_patch([[0, 0, 0], [width, 0, 0], [width, 0, height], [0, 0, height]], columns, rows)
    angle = np.sort(angles_deg(mesh.points, mesh.triangles), axis=1)
    whole = np.isclose(angle, 60.0, rtol=0, atol=1e-9).all(axis=1)  # 1e-9 degrees: rounding
    half = np.isclose(angle, [30.0, 60.0, 90.0], rtol=0, atol=1e-9).all(axis=1)
    assert (whole | half).all()
    assert half.sum() == 2 * rows  # one a row and side


def test_the_bilinear_patch_has_the_area_of_its_four_corners() -> None:
    mesh = lattice.quad_patch(CORNERS, 9, 7)
    x, z = CORNERS[:, 0], CORNERS[:, 2]
    shoelace = 0.5 * abs(np.dot(x, np.roll(z, -1)) - np.dot(z, np.roll(x, -1)))
    np.testing.assert_allclose(areas(mesh).sum(), shoelace, rtol=1e-13)  # sum of a hundred roundings
    ends = [
        mesh.boundary[side][end] for side, end in (("left", 0), ("right", 0), ("right", -1), ("left", -1))
    ]
    np.testing.assert_allclose(mesh.points[ends], CORNERS, rtol=0, atol=1e-15)


def test_the_area_of_a_bulged_patch_converges_to_the_cylinder() -> None:
    """Part of a cylinder: area = radius x angle x height; chords are short by h^2 / 24 R^2."""
    radius, half = 2.0, 0.5
    exact = 2 * radius * np.arcsin(half / radius)

    def bulge(s: np.ndarray, t: np.ndarray) -> np.ndarray:
        return np.sqrt(radius**2 - (s - half) ** 2) - np.sqrt(radius**2 - half**2)

    corners = [[0, 0, 0], [1, 0, 0], [1, 0, 1], [0, 0, 1]]
    error = [exact - areas(lattice.quad_patch(corners, n, n, bulge)).sum() for n in (8, 16, 32)]
    assert error[2] > 0
    for coarse, fine in pairwise(error):
        np.testing.assert_allclose(
            coarse / fine, 4.0, rtol=0.05
        )  # second order; 5 % for the next term and the ends


@settings(deadline=None, max_examples=30, derandomize=True)
@given(
    length=st.floats(0.3, 2.0),
    width=st.floats(0.3, 2.0),
    spacing=st.floats(0.05, 0.12),
    angle=st.floats(-np.pi, np.pi),
)
def test_any_turned_rectangle_is_filled_once(
    length: float, width: float, spacing: float, angle: float
) -> None:
    mesh = lattice.rectangle(length, width, spacing, angle)
    area, normal = triangle_areas_and_normals(mesh.points, mesh.triangles)
    np.testing.assert_allclose(area.sum(), length * width, rtol=1e-12)  # sum of a thousand roundings
    assert (normal[:, 2] > 0).all()
    for side, axis, value in (("left", 0, 0.0), ("right", 0, length), ("bottom", 1, 0.0), ("top", 1, width)):
        place = mesh.points[mesh.boundary[side]]
        np.testing.assert_array_equal(place[:, axis], value)
        assert (np.diff(place[:, 1 - axis]) > 0).all()


@pytest.mark.parametrize("angle_deg", [0, 10, 30, 45])
def test_inside_a_turned_rectangle_the_lattice_is_equilateral_and_points_the_way_it_was_turned(
    angle_deg: float, angles_deg: Callable
) -> None:
    spacing = 0.06
    mesh = lattice.rectangle(1.0, 0.6, spacing, np.radians(angle_deg))
    angle = angles_deg(mesh.points, mesh.triangles)
    assert angle.min() > 20.0  # no slivers beside the edges
    inner = ~np.isin(mesh.triangles, np.concatenate(list(mesh.boundary.values()))).any(axis=1)
    np.testing.assert_allclose(angle[inner], 60.0, rtol=0, atol=1e-6)  # rounding of 1e-16 m in 0.06 m
    assert inner.mean() > 0.5
    first = mesh.points[mesh.triangles[inner]]
    edge = first[:, 1] - first[:, 0]
    np.testing.assert_allclose(np.linalg.norm(edge, axis=1), spacing, rtol=1e-10)
    direction = np.degrees(np.arctan2(edge[:, 1], edge[:, 0])) - angle_deg
    np.testing.assert_allclose((direction + 30) % 60 - 30, 0.0, rtol=0, atol=1e-6)


def test_node_density_is_that_of_an_equilateral_lattice() -> None:
    length, width, spacing = 3.0, 2.0, 0.04
    mesh = lattice.rectangle(length, width, spacing, 0.3)
    np.testing.assert_allclose(
        len(mesh.points), length * width * 2 / (np.sqrt(3) * spacing**2), rtol=0.03
    )  # edge nodes: perimeter x spacing / area


def test_the_disc_has_the_area_of_its_polygon_and_rings_of_six() -> None:
    radius, rings = 0.5, 6
    mesh = lattice.disc(radius, rings)
    assert len(mesh.points) == 1 + 3 * rings * (rings + 1)
    assert len(mesh.triangles) == 6 * rings**2
    corners = 6 * rings
    np.testing.assert_allclose(
        areas(mesh).sum(), 0.5 * corners * radius**2 * np.sin(2 * np.pi / corners), rtol=1e-13
    )
    np.testing.assert_allclose(np.hypot(*mesh.points[mesh.boundary["rim"], :2].T), radius, rtol=1e-14)
    assert mesh.points[mesh.boundary["centre"][0]].tolist() == [0.0, 0.0, 0.0]


def test_the_slit_ring_has_the_area_between_its_polygons_and_two_lips_that_share_no_node() -> None:
    inner, outer, around = 6.0, 10.0, 40
    mesh = lattice.slit_ring(inner, outer, 6, around)
    polygon = 0.5 * around * np.sin(2 * np.pi / around)
    np.testing.assert_allclose(areas(mesh).sum(), polygon * (outer**2 - inner**2), rtol=1e-12)
    start, end = mesh.boundary["slit_start"], mesh.boundary["slit_end"]
    assert not set(start.tolist()) & set(end.tolist())
    np.testing.assert_allclose(mesh.points[start], mesh.points[end], rtol=0, atol=1e-14)
    np.testing.assert_allclose(mesh.points[start, 0], np.linspace(inner, outer, 7), rtol=1e-14)


@pytest.mark.parametrize(
    ("call", "parameter"),
    [
        (lambda: lattice.rectangle(0.0, 1.0, 0.1), "length_m"),
        (lambda: lattice.rectangle(1.0, -1.0, 0.1), "width_m"),
        (lambda: lattice.rectangle(1.0, 1.0, np.nan), "spacing_m"),
        (lambda: lattice.one_diagonal(1.0, 1.0, 0, 3), "nx"),
        (lambda: lattice.one_diagonal(1.0, 1.0, 3, 0), "ny"),
        (lambda: lattice.disc(1.0, 0), "rings"),
        (lambda: lattice.disc(-1.0, 3), "radius_m"),
        (lambda: lattice.slit_ring(2.0, 2.0, 3, 8), "outer_m"),
        (lambda: lattice.unit_patch(0, 3), "columns"),
        (lambda: lattice.unit_patch(3, 0), "rows"),
        (lambda: lattice.quad_patch(CORNERS[:3], 3, 3), "corners"),
    ],
)
def test_shapes_that_cannot_be_made_name_the_parameter(call: Callable, parameter: str) -> None:
    with pytest.raises(MeshError) as caught:
        call()
    assert caught.value.parameter == parameter
