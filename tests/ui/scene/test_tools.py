"""Ram, bar, blocks and raw edges as they are drawn: their ends, lengths and places are the mechanics' own."""

from __future__ import annotations

import msgspec
import numpy as np
import pytest

from sim.door_model import build_model
from sim.plan import Car, Ease, EntryBar, PillarSpot, Press, Ram
from sim.pressing import make_ram
from sim.run import start_frame
from tests.ui.scene.test_torn import torn  # noqa: F401 - a fixture
from ui.scene import tools
from ui.scene.raw_edges import raw_edges, teeth
from ui.tools_shown import ram_ahead


@pytest.mark.parametrize("out_m", [0.0, 0.12, 0.5, 0.85])
def test_a_ram_reaches_from_its_foot_to_its_head_however_far_it_is_out(out_m):
    ram = Ram()
    foot = np.array([0.4, -1.2, 0.1])
    line = np.array([0.6, 0.8, 0.0])
    whole = ram.closed_m + ram.piece_m + out_m
    points = tools.ram_solid(np.array([foot + whole * line, foot]), out_m, ram)[0]
    along = (points - foot) @ line
    assert along.min() == pytest.approx(0.0, abs=1e-9) and along.max() == pytest.approx(whole, abs=1e-9)
    away = np.linalg.norm(points - foot - along[:, None] * line, axis=1)
    # its body ends where the stages begin, and each of those is thinner
    body_end, head_face = whole - out_m - tools.PLATE_M, whole - tools.PLATE_M
    at_end = away[np.abs(along - body_end) < 1e-9]
    assert at_end.max() == pytest.approx(tools.BARREL_M, abs=1e-9)
    assert away[(along > body_end + 1e-6) & (along < head_face - 1e-6)].max(initial=0.0) < tools.BARREL_M
    if out_m:
        last = away[np.abs(along - head_face) < 1e-9]
        assert np.isclose(last[:, None], tools.STAGE_M, atol=1e-9).any()


def test_a_bars_tip_goes_along_the_push_by_its_way_and_its_heel_stays():
    """Way of the tip x = tip_m sin(turn): the lever's own geometry."""
    bar, push, away = EntryBar(), np.array([0.0, 1.0, 0.0]), np.array([1.0, 0.3, 0.2])
    start = np.array([0.5, 0.0, 1.0])
    heels = []
    for way in (0.0, 0.02, 0.04):
        turn = np.arcsin(way / bar.tip_m)
        side = away - (away @ push) * push
        side /= np.linalg.norm(side)
        # the tip moves on its arc: along the push by the way, and towards the heel by the rest
        tip = start + way * push + bar.tip_m * (1.0 - np.cos(turn)) * side
        points = tools.bar_solid(tip, push, way, bar, away)[0]
        away_m = np.linalg.norm(points - tip, axis=1)
        hand = np.unique(points[away_m > away_m.max() - 1e-9].round(12), axis=0).mean(axis=0)
        assert np.linalg.norm(hand - tip) == pytest.approx(bar.length_m, abs=1e-9)
        heels.append(tip + bar.tip_m * (hand - tip) / bar.length_m)
    assert np.ptp(np.array(heels), axis=0).max() < 1e-9


def test_blocks_stand_on_the_ground_and_reach_the_rocker():
    points = tools.block_solid(0.4, 1.0, -0.30, -0.15)[0]
    assert points[:, 2].min() == pytest.approx(-0.30, abs=1e-9)
    assert points[:, 2].max() == pytest.approx(-0.15, abs=1e-9)


def test_both_lips_of_a_tear_are_raw_and_their_teeth_point_off_the_metal(model, torn):  # noqa: F811
    structure, tear, frame = torn
    pairs, third = raw_edges(
        np.asarray(model.structure.triangles), structure.triangles, len(model.start.points)
    )
    assert len(pairs) == 2  # one edge torn, two lips
    assert all(tear.tip in pair for pair in pairs.tolist())
    points = np.asarray(frame.points)
    strokes = teeth(points, pairs, third)
    for pair, corner in zip(pairs, third, strict=True):
        own = teeth(points, pair[None], corner[None])
        inward = points[corner] - points[pair].mean(axis=0)
        assert len(own) >= 2
        assert ((own[:, 1] - own[:, 0]) @ inward < 0.0).all()
    assert np.linalg.norm(strokes[:, 1] - strokes[:, 0], axis=1) == pytest.approx(0.007, abs=1e-9)


def test_whole_metal_has_no_raw_edge(model):
    whole = np.asarray(model.structure.triangles)
    pairs, _ = raw_edges(whole, whole, len(model.start.points))
    assert len(pairs) == 0


def test_a_prop_stands_on_the_ground_under_what_it_holds():
    points = tools.prop_solid(np.array([0.9, 0.4, 0.35]), -0.31)[0]
    assert points[:, 2].min() == pytest.approx(-0.31, abs=1e-9)
    assert points[:, 2].max() == pytest.approx(0.35, abs=1e-9)
    assert np.abs(points[:, :2] - [0.9, 0.4]).max() <= 3.0 * tools.PROP_M + 1e-9


def test_a_strap_is_a_flat_band_from_the_door_to_the_body():
    door, body = np.array([1.0, 0.5, 0.4]), np.array([1.1, 0.0, 1.2])
    points = tools.strap_solid(door, body)[0]
    along = (body - door) / np.linalg.norm(body - door)
    way = (points - door) @ along
    ends = 0.4 * tools.STRAP_M[0]  # a ball at each end
    assert way.min() == pytest.approx(-ends, abs=1e-3)
    assert way.max() == pytest.approx(np.linalg.norm(body - door) + ends, abs=1e-3)
    off = points - door - way[:, None] * along
    away = np.linalg.norm(off, axis=1)
    assert away.max() == pytest.approx(0.5 * np.hypot(*tools.STRAP_M), abs=1e-9)
    corners = off[away > away.max() - 1e-9]  # of the band alone: the balls are smaller
    sides = np.linalg.norm(corners - corners[0], axis=1)
    assert set(sides.round(9)) == {0.0, *tools.STRAP_M, round(float(np.hypot(*tools.STRAP_M)), 9)}
    assert set(way[away > away.max() - 1e-9].round(9)) == {0.0, round(float(np.linalg.norm(body - door)), 9)}


def test_a_spreaders_arms_run_from_its_tips_to_a_pivot_an_arm_away():
    tips, out = np.array([[1.0, 0.0, 0.9], [1.0, 0.0, 0.98]]), np.array([0.0, 1.0, 0.0])
    points = tools.arms_solid(tips, out, 0.45)[0]
    pivot = np.sqrt(0.45**2 - 0.04**2)
    assert points[:, 1].max() == pytest.approx(pivot + 2.0 * tools.ARM_M, abs=2e-3)
    assert points[:, 1].min() == pytest.approx(-tools.NOSE_M, abs=2e-3)
    # both arms lie between the ends they push, not in the metal beyond
    nose = points[points[:, 1] < 0.0]
    assert nose[:, 2].min() > 0.9 - 1e-3 and nose[:, 2].max() < 0.98 + 1e-3


def test_a_ram_yet_to_come_stands_between_its_base_and_the_pillar_and_one_that_cannot_is_not_drawn():
    model = build_model(Car(extent="side", lattice_spacing_m=0.09))
    frame = start_frame(model)
    move = Press(head=PillarSpot(height_m=0.55))
    (solid,) = ram_ahead(model, move, frame)
    ready = make_ram(model, move, frame.points)
    for end in (ready.head.middle(frame.points), ready.foot.place):
        assert np.linalg.norm(solid[0] - end, axis=1).min() <= 0.5 * move.ram.plate_m
    short = msgspec.structs.replace(move, ram=Ram(piece_m=0.0, stage_m=(0.1,), stage_n=(1e4,)))
    assert ram_ahead(model, short, frame) == []
    assert ram_ahead(model, Ease(), frame) == []
