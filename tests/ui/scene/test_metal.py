"""The sheets as drawn: budgets, normals, folds."""

from __future__ import annotations

import numpy as np
import pytest
import trimesh

from meshes.door import build_door
from sim.door_structure import door_shape
from sim.plan import Car
from tests.ui.scene.conftest import moved
from ui.scene import metal


def sheet_of(model, *, skin: bool, levels: int):
    surface = model.mesh.surface
    mask = surface.triangle_part == surface.part_index("outer_skin")
    ids = np.flatnonzero(mask if skin else ~mask)
    return metal.make_sheet(model.start.points, surface.triangles[ids], ids, levels)


@pytest.mark.parametrize("spacing_m", [0.02, 0.03, 0.045, 0.06, 0.09])
def test_triangles_stay_within_the_budget_of_a_machine_without_a_graphics_card(spacing_m):
    surface = build_door(door_shape(Car(lattice_spacing_m=spacing_m))).surface
    skin = len(surface.triangles_of("outer_skin"))
    inner = len(surface.triangles) - skin
    levels = metal.choose_levels(skin, inner)
    drawn = skin * 4 ** levels[0] + inner * 4 ** levels[1]
    assert drawn <= metal.TRIANGLE_BUDGET or levels == (0, 0)  # its own triangles are the least of a sheet
    assert levels[0] >= levels[1]
    assert (levels[0] >= 1) == (spacing_m >= 0.045)  # finer ones are fine enough as they are


def test_normals_are_an_independent_librarys(model):
    """On the smooth skin; weights differ (area here, angle there), so they agree within a degree."""
    sheet = sheet_of(model, skin=True, levels=1)
    place = sheet.drawn_points(model.start.points)
    theirs = trimesh.Trimesh(place, sheet.triangles, process=False).vertex_normals
    cosine = np.einsum("ij,ij->i", sheet.drawn_normals(place), theirs)
    assert cosine.min() > np.cos(np.radians(1.0))
    assert (sheet.drawn_normals(place)[:, 1] > 0.9).all()  # outward


def test_drawn_points_hold_every_node(model, frame):
    for skin in (True, False):
        sheet = sheet_of(model, skin=skin, levels=1)
        place = sheet.drawn_points(frame.points)
        at_nodes = sheet.source < len(sheet.nodes)
        expected = frame.points[sheet.nodes[sheet.source[at_nodes]]]
        np.testing.assert_allclose(place[at_nodes], expected, rtol=0, atol=1e-15)


def test_the_rounded_skin_is_the_true_curved_skin(model):
    """Between nodes the drawing keeps to the skin's own formula, as far as an eye can tell.

    Within a third of a sheet's thickness in 99 of 100 places; where the lattice changes its size next to a
    rim it is more, but less than a third of a pixel of the stage (1.5 mm on the door).
    """
    sheet = sheet_of(model, skin=True, levels=2)
    place = sheet.drawn_points(model.start.points)
    exact = model.mesh.shape.skin_point(place[:, 0], place[:, 2])
    off = np.abs(place[:, 1] - exact[:, 1])
    assert np.quantile(off, 0.99) < Car().skin_thickness_m / 3.0
    assert off.max() < 0.5e-3


def test_a_new_crease_shows_and_a_gentle_bulge_does_not(model):
    sheet = sheet_of(model, skin=True, levels=1)
    rest = model.start.points
    assert sheet.fold_strength(rest)[~sheet.always].max() == 0.0
    bulge = rest.copy()
    bulge[:, 1] += 0.02 * np.sin(np.pi * rest[:, 0])
    assert sheet.fold_strength(bulge)[~sheet.always].max() == 0.0
    height = 0.36
    crease = rest.copy()
    crease[:, 1] += 1.2 * np.clip(rest[:, 2] - height, 0.0, None)  # a fold of 50 degrees from edge to edge
    folded = sheet.fold_strength(crease)
    shown = (folded > 0.3) & ~sheet.always
    ends = rest[sheet.nodes][sheet.edges.ends[shown]]
    assert np.abs(ends[..., 2] - height).max() < Car().lattice_spacing_m
    assert np.ptp(ends[..., 0]) > 0.85  # metres of a door about one metre long


def test_values_spread_over_points_stay_between_their_least_and_most(model):
    sheet = sheet_of(model, skin=False, levels=1)
    load = np.random.default_rng(1).uniform(0.2, 0.7, len(model.mesh.surface.triangles))
    spread = sheet.values_at_points(load)
    assert spread.min() >= 0.2 and spread.max() <= 0.7
    np.testing.assert_allclose(sheet.values_at_points(np.full_like(load, 0.4)), 0.4, rtol=1e-12)


def test_a_mirrored_door_is_drawn_as_the_mirror_image(model, left_model):
    flip = np.array([1.0, -1.0, 1.0])
    right, left = (sheet_of(m, skin=True, levels=1) for m in (model, left_model))
    mirrored = moved(left_model).points * flip
    np.testing.assert_allclose(mirrored, moved(model).points, rtol=0, atol=1e-12)
    found = left.drawn_points(mirrored * flip) * flip
    expected = right.drawn_points(mirrored)
    order = [np.lexsort(p.round(9).T) for p in (found, expected)]
    np.testing.assert_allclose(found[order[0]], expected[order[1]], rtol=0, atol=1e-9)
