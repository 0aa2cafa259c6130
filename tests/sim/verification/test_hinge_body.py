"""A hinge's knuckle under the shut line: seen and reached only where the gap over it is open.

Sources
-------
Geometry alone: blades 30 mm thick go into a gap that is wider and not into one that is narrower.  That they
need some 30 mm of room, and that a hinge is spread or cut once the gap over it has been opened: common
practice, no source.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from sim.cut_plan import FittingCut
from sim.door_model import build_model
from sim.exposed import grains
from sim.hinge_body import (
    KNUCKLE_DEPTH_M,
    RECESS_M,
    WING_EDGE_M,
    carried_by,
    carrier_rows,
    hinge_view,
    knuckle_of,
    set_back,
)
from sim.ledger import Ledger
from sim.lookout import OPENING_M, lookout_of
from sim.plan import Car, Cut, EdgePoint, Spread, Tool
from sim.run import Begin, MoveRun

UP = np.array([0.0, 0.0, 1.0])
SEATS = np.array([0.012, -0.05, 0.0]), np.array([0.0, -0.05, 0.0])  # on the door, on what it hangs on
LEAN = np.radians(8.0)


def plate(corner, first, second):
    a, b, c = (np.array(v, dtype=float) for v in (corner, first, second))
    return np.array([a, a + b, a + b + c, a + c]), np.array([[0, 1, 2], [0, 2, 3]])


def edges(gap_m, lean_rad=0.0):
    """Return points of a flat outer face with a shut line, and of both walls behind it, set well back."""
    turn = Rotation.from_rotvec([0.0, lean_rad, 0.0]).as_matrix().T
    spots = []
    for start, way in ((0.006 - 0.5 * gap_m, -1.0), (0.006 + 0.5 * gap_m, 1.0)):
        face = plate((start, 0.0, -0.4), (way * 0.3, 0.0, 0.0), (0.0, 0.0, 0.8))
        wall = plate((start + way * 0.03, -0.1, -0.4), (0.0, 0.1, 0.0), (0.0, 0.0, 0.8))
        spots += [grains(*one, np.zeros(3), 0.35) for one in (face, wall)]
    return np.concatenate(spots) @ turn, UP @ turn


def test_the_knuckle_stands_in_the_middle_of_the_gap_near_the_outer_face():
    knuckle = knuckle_of(*SEATS, UP, 1.0)
    np.testing.assert_allclose(knuckle.middle, [0.006, -KNUCKLE_DEPTH_M, 0.0], atol=1e-12)
    np.testing.assert_allclose(knuckle.into, [1.0, 0.0, 0.0], atol=1e-12)
    left = knuckle_of(*(seat * [1.0, -1.0, 1.0] for seat in SEATS), UP, -1.0)
    np.testing.assert_allclose(left.middle, knuckle.middle * [1.0, -1.0, 1.0], atol=1e-12)


@pytest.mark.parametrize(("gap", "fits"), [(0.006, False), (0.018, False), (0.028, True), (0.06, True)])
@pytest.mark.parametrize("lean", [0.0, LEAN])
def test_blades_reach_it_where_the_shut_line_is_wider_than_they_are_there(gap, fits, lean):
    """30 mm out of the knuckle blades are 10 + 20 (30 / 50) = 22 mm thick; a leaning edge takes no more."""
    spots, up = edges(gap, lean)
    found = hinge_view(knuckle_of(*SEATS, up, 1.0), spots, 0.14)
    assert (found is not None) == fits
    if found is not None:
        assert abs(found.normal @ up) < 1e-9


def test_only_the_face_behind_the_wings_edge_stands_back():
    knuckle = knuckle_of(*SEATS, UP, 1.0)
    spots = np.array([[0.0, -0.05, 0.1], [0.0, -0.5 * WING_EDGE_M, 0.1], [-0.2, -0.05, 0.0]])
    moved = set_back(spots, knuckle) - spots
    np.testing.assert_allclose(moved, [[-RECESS_M, 0.0, 0.0], [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]], atol=1e-12)


def test_a_shut_door_hides_both_hinges_whichever_side_it_is_on():
    for side in ("right", "left"):
        model = build_model(Car(lattice_spacing_m=0.09, side=side))
        assert lookout_of(model).views(model.structure, model.start.points, OPENING_M) == {}


@pytest.fixture(scope="module")
def opened():
    """Return the run of wide tips that roll the door's edge back level with the upper hinge."""
    model = build_model(Car(lattice_spacing_m=0.07))
    door = EdgePoint(edge="hinge_edge", along_m=0.5, depth_m=0.014)
    tool = Tool(tip_width_m=0.1)
    move = Spread(door=door, tilt_rad=0.0, opening_m=0.09, tool=tool, stop_at=("exposed",))
    run = MoveRun(model, move, Begin(model.start, Ledger()))
    for _ in run:
        pass
    return run


def test_opening_the_gap_over_a_hinge_exposes_it_and_blades_then_part_it(opened):
    assert [event.part for event in opened.events if event.kind == "exposed"] == ["upper hinge"]
    assert not any(event.kind == "hinge free" for event in opened.events)
    cut = MoveRun(opened.first_model, Cut(FittingCut(fitting="upper hinge")), opened.end, 1)
    for _ in cut:
        pass
    names = [tie.name for tie in cut.model.structure.ties]
    holding = dict(zip(names, cut.frames[-1].state.holding, strict=True))
    assert not holding["upper hinge"] and holding["lower hinge"]
    assert cut.result(with_residual=False).ledger_closure_ratio < 0.02


def test_rear_hinges_hang_on_the_pillar_and_move_with_it():
    """The pillar turned and shifted as a rigid body takes the knuckle along; a front one stays put."""
    model = build_model(Car(lattice_spacing_m=0.09, extent="side"))
    structure, side = model.structure, model.side
    ties = {tie.name: tie for tie in structure.ties}
    rows = carrier_rows(structure, ties["rear upper hinge"])
    assert set(np.unique(structure.triangles[rows])) == set(np.unique(model.pillar_triangles))
    assert not carrier_rows(structure, ties["upper hinge"]).any()
    turn, shift = Rotation.from_rotvec([0.1, -0.2, 0.05]).as_matrix(), np.array([0.03, 0.1, -0.02])
    nodes = np.unique(model.pillar_triangles)
    points = structure.points.copy()
    points[nodes] = points[nodes] @ turn.T + shift
    at_rest = knuckle_of(*SEATS, UP, 1.0)
    moved = carried_by(structure, ties["rear upper hinge"], points, at_rest)
    np.testing.assert_allclose(moved.middle, turn @ at_rest.middle + shift, atol=1e-9)
    np.testing.assert_allclose(moved.axis, turn @ at_rest.axis, atol=1e-9)
    assert carried_by(structure, ties["upper hinge"], points, at_rest) is at_rest
    assert side.pillar.surface.node_count == len(nodes)
