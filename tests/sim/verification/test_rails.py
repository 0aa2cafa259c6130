"""The roof rail between its pillars, against beam formulas typed here once more; how the pillar hangs on it.

Sources
-------
Beams held at one or both ends, plastic hinges, section moments: any handbook of mechanics of materials and of
plastic design, from memory.  Effective width: Winter's curve, from memory.
"""

from __future__ import annotations

import numpy as np
import pytest

from meshes.rail import FRONT_END, REAR_END, rail_of_side, rail_over_door
from meshes.side_shape import SideShape
from sim.car import Car
from sim.checks import members, rails
from sim.door_model import build_model
from tests.sim.verification import hung

E_PA, G_PA = 210.0e9, 210.0e9 / 2.6
DEPTH_M, HEIGHT_M, SPAN_M = 0.050, 0.060, 1.5907
"""Section of the low car's rail, and its length between front and rear pillar."""


def test_the_section_and_the_span_are_the_ones_reckoned_with():
    mesh = rail_of_side(SideShape())
    assert rails.section_m(mesh) == pytest.approx((DEPTH_M, HEIGHT_M))
    start, end = members.span_m(mesh)
    assert end - start == pytest.approx(SPAN_M, abs=1e-4)


def test_a_rail_held_at_both_ends_bends_as_a_beam_does():
    """P L^3 / 192 E I + P L / 4 G A with A the two side walls; 6 % at 20 mm, as a pillar's."""
    t = 0.0015
    second = 2 * DEPTH_M * t * (HEIGHT_M / 2) ** 2 + 2 * t * HEIGHT_M**3 / 12
    expected = SPAN_M**3 / (192 * E_PA * second) + SPAN_M / (4 * G_PA * 2 * t * HEIGHT_M)
    assert 1e-6 * rails.deflection(0.02).got == pytest.approx(expected, rel=0.06)


def test_a_stocky_rail_held_at_both_ends_folds_at_three_places():
    """8 M / L with M the yield stress times the first moments of both halves; never below, 12 % above."""
    t = 0.004
    plastic = 350.0e6 * (2 * DEPTH_M * t * HEIGHT_M / 2 + 4 * t * (HEIGHT_M / 2) ** 2 / 2)
    found, _ = rails.bent("both", t, 0.008, 0.03)
    forces = found.forces
    load = 8 * plastic / SPAN_M
    assert load < forces.max() < 1.12 * load
    assert abs(forces[-1] - forces[-3]) < 0.03 * forces[-1]  # a plateau: three hinges are a mechanism
    assert found.gap < 0.02


def test_a_thin_rail_cut_at_its_front_buckles_at_its_rear_joint():
    """Winter's pressed wall, 34 mm of 50 at 350 MPa and 1.5 mm: within 15 % at 20 mm, and it falls after."""
    found, full = rails.bent("rear", 0.0015, 0.012, 0.02)
    forces, lever = found.forces, found.behind_m
    slender = 1.052 / 2.0 * (DEPTH_M / 0.0015) * np.sqrt(350.0e6 / E_PA)
    share = min(1.0, (1.0 - 0.22 / slender) / slender)
    assert forces.max() * lever < 1.15 * full
    assert forces.max() * lever > (1.0 - 0.5 * (1.0 - share)) * 0.85 * full
    assert forces[-1] < 0.8 * forces.max()


@pytest.mark.parametrize(("held", "ends"), [("both", 2), ("front", 1), ("rear", 1)])
def test_the_rail_is_held_where_the_car_says(held, ends):
    model = build_model(Car(lattice_spacing_m=0.09, rail_wall_m=0.0015, rail_held=held))
    rail, fixed = model.rail, model.structure.fixed
    still = [bool(fixed[rail.mesh.surface.nodes[end] + rail.first].all()) for end in (FRONT_END, REAR_END)]
    assert sum(still) == ends
    assert still[0] == (held != "rear")


def test_a_left_hand_rail_is_the_mirror_image():
    right, left = (
        build_model(Car(lattice_spacing_m=0.09, rail_wall_m=0.001, side=side)) for side in ("right", "left")
    )
    rail = right.rail.nodes
    np.testing.assert_array_equal(left.start.points[rail], right.start.points[rail] * [1.0, -1.0, 1.0])
    np.testing.assert_array_equal(left.rail.triangles, right.rail.triangles[:, ::-1])
    assert rail_over_door(left.body).surface.node_count == right.rail.count


@pytest.fixture(scope="module", params=["right", "left"])
def side(request):
    """Return a side whose rail gives."""
    car = Car(extent="side", lattice_spacing_m=0.08, rail_wall_m=0.0015, side=request.param)
    return build_model(car)


def head_bonds(model, kind="pillar weld"):
    """Return the bonds of a kind at the head."""
    bonds = model.structure.bonds
    return np.flatnonzero(bonds.of(kind) & (model.structure.points[bonds.nodes[:, 0], 2] > 0.9))


def test_spots_of_the_head_peel_away_from_the_rail_and_press_towards_it(side):
    spots = head_bonds(side)
    assert len(spots) == len(hung.flange_of_spot(side, "head")) >= 8
    hung.hold_that_flanges_peel_and_press(side, "head", spots)


def test_the_head_goes_along_when_the_rail_moves_and_turns(side):
    """Rail and pillar shifted and turned as one about the rail: no spot and no flange feels anything."""
    ev = hung.moved_as_one(side, side.rail.nodes)
    head = np.concatenate([head_bonds(side, kind) for kind in ("pillar weld", "pillar touch")])
    assert len(head) > 40
    # 1e-4 N: a spot is 1e8 N/m stiff and places are known to 1e-13 m
    np.testing.assert_allclose(ev.normal_force[head], 0.0, atol=1.0e-4)


def test_a_whole_side_at_the_default_lattice_stays_below_4000_nodes():
    model = build_model(Car(extent="side", rail_wall_m=0.0015))
    assert 3900 < len(model.start.points) <= 4000
    assert model.whole_count == len(model.start.points)
