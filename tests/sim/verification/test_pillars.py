"""The pillar's section, its spots and its fold, against handbook formulas typed here once more.

Sources
-------
Section moments, beam integral and Bredt's formula: any handbook of mechanics of materials, from memory; here
they are summed up numerically round the section, so that a slip in the closed form would show.
Effective width: Winter's curve, from memory. Spots: [aws-welds-2013], least values typed from a table made of
it. What gives first at a foot: common practice, no source.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from meshes.pillar import PillarMesh, PillarShape, build_pillar
from sim import materials
from sim.checks import pillars
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.network import Drive, Load, Network
from sim.pillar import PillarBuild, pillar_structure, spot_strength
from sim.problems import PlanError

E_PA, G_PA = 210.0e9, 210.0e9 / 2.6
ORDINARY = PillarBuild(
    pressed=materials.PATCH_STEEL, pressed_m=0.0012, closing_m=0.0010, held=("foot",)
)  # an ordinary steel of 350 MPa throughout
HARD = PillarBuild(held=("foot",))
PUSH_HEIGHT_M = 0.55


def contour(width: float, depth: float, count: int = 4000) -> tuple[np.ndarray, np.ndarray]:
    """Return points (k, 2) round a rectangle's midline and the length each stands for."""
    corner = 0.5 * np.array([[-width, -depth], [width, -depth], [width, depth], [-width, depth]])
    share = (np.arange(count) + 0.5)[:, None] / count
    sides = [a + share * (b - a) for a, b in zip(corner, np.roll(corner, -1, axis=0), strict=True)]
    size = np.repeat([width, depth, width, depth], count) / count
    return np.concatenate(sides), size


def summed(width: float, depth: float, wall: float) -> tuple[float, float, float]:
    """Return I, the first moments' sum and Bredt's J, summed round the midline."""
    points, size = contour(width, depth)
    y = points[:, 1]
    turned = np.roll(points, -1, axis=0)
    area = 0.5 * abs(np.sum(points[:, 0] * turned[:, 1] - points[:, 1] * turned[:, 0]))
    return (
        float(np.sum(wall * size * y * y)),
        float(np.sum(wall * size * np.abs(y))),
        float(4.0 * area**2 / np.sum(size / wall)),
    )


@pytest.mark.parametrize("size", [(0.125, 0.095), (0.075, 0.05), (0.2, 0.06)])
def test_closed_forms_are_what_the_section_sums_to(size):
    second, first, torsion = summed(*size, 0.0015)
    assert pillars.second_moment(*size, 0.0015) == pytest.approx(second, rel=1e-6)
    assert pillars.first_moments(*size, 0.0015) == pytest.approx(first, rel=1e-6)
    assert pillars.torsion_constant(*size, 0.0015) == pytest.approx(torsion, rel=1e-3)


def test_head_of_a_tapering_pillar_moves_as_the_integral_says():
    """Within 3 % at 20 mm; midpoint sum of M^2 / E I and V^2 / G A over 5000 slices."""
    z = (np.arange(5000) + 0.5) / 5000
    width, depth = 0.125 - 0.050 * z, 0.095 - 0.045 * z
    second = 2 * width * 0.0015 * (depth / 2) ** 2 + 2 * 0.0015 * depth**3 / 12
    expected = np.mean((1 - z) ** 2 / (E_PA * second) + 1 / (G_PA * 2 * 0.0015 * depth))
    assert pillars.tip(0.02).got == pytest.approx(expected, rel=0.03)


def test_pillar_in_torsion_is_as_stiff_as_bredt_says():
    """Half a per cent: the sheet's own torsion, 2 (b + h) t^3 / 3 over J, is 0.03 %."""
    _, _, torsion = summed(0.125, 0.095, 0.0015)
    assert pillars.twist_stiffness(0.03)[1] == pytest.approx(G_PA * torsion / 1.0, rel=5e-3)


def test_stocky_pillar_folds_at_its_plastic_moment():
    """Within 8 % at 20 mm, never below: the fold is short and lies half a row above the foot."""
    _, first, _ = summed(0.09, 0.07, 0.006)
    found = pillars.pushed_over(0.006, (0.09, 0.07), 350.0e6, 0.02)
    moment = found.force_n * 0.8
    assert moment[-1] == pytest.approx(350.0e6 * first, rel=0.08)
    assert moment[-1] > 350.0e6 * first
    assert abs(moment[-1] - moment[-2]) < 0.01 * moment[-1]  # a plateau, not a peak
    assert found.gap_ratio < 0.02


def test_spots_hold_what_the_rule_asks_times_the_shop_s_ratio():
    """Least values at 1.0 and 1.5 mm, in kN: shear 2.18, 4.42, 8.11; cross tension 1.25, 3.05."""
    for t, tensile, shear, peel in ((1.0, 300, 2.18, 1.25), (1.0, 600, 4.42, 1.25), (1.5, 600, 8.11, 3.05)):
        found = np.array(spot_strength(1e-3 * t, 1e6 * tensile)) / 2.0 / 1e3
        np.testing.assert_allclose(found, [peel, shear], rtol=4e-3)  # the table has three figures


@pytest.mark.parametrize("side", ["right", "left"])
def test_spots_peel_away_from_the_rigid_face_and_press_towards_it(side):
    """1 mm along a flange's own way off opens every spot of it by 1 mm; the other way it presses."""
    mesh = build_pillar() if side == "right" else build_pillar().mirrored()
    structure = pillar_structure(mesh, PillarBuild())
    network = Network(structure)
    state = network.initial_state()
    spots = np.flatnonzero(structure.bonds.of("pillar weld"))
    names = np.array([name for name, item in mesh.welds.items() for _ in item.points])
    for name, item in mesh.welds.items():
        mine = spots[names == name]
        for way in (1.0, -1.0):
            points = structure.points.copy()
            points[mesh.surface.nodes[name]] += way * 1.0e-3 * item.away[0]
            ev = network.evaluate(points, state, Load())
            np.testing.assert_allclose(ev.opening[mine], way * 1.0e-3, rtol=1e-9)
            pull = np.sign(ev.normal_force[mine])
            assert (pull == way).all() and (ev.bond_parted[mine] > 0.0).all() == (way > 0.0)


def pushed(build: PillarBuild, travels, mesh: PillarMesh | None = None):
    """Return the points of a push outward on the inner wall half-way up, and the spots gone at each."""
    mesh = build_pillar() if mesh is None else mesh
    structure = pillar_structure(mesh, build)
    points, sign = mesh.surface.points, mesh.outboard_sign
    inner = mesh.surface.nodes_of(("inner",))
    middle = np.mean([np.interp(PUSH_HEIGHT_M, mesh.cuts[:, 0], mesh.cuts[:, k]) for k in (1, 3)])
    away = np.hypot(points[inner, 0] - middle, points[inner, 2] - PUSH_HEIGHT_M)
    nodes, weights = inner[away < 0.05], 1.0 - away[away < 0.05] / 0.05
    weights = weights / weights.sum()
    outward = np.array([0.0, sign, 0.0])
    drive = Drive(nodes, weights, outward, float(outward @ (weights @ points[nodes])))
    stepper = Stepper(Network(structure, [drive]), lambda: False)
    spots = structure.bonds.of("pillar weld")
    out: list[tuple[Point, list[str]]] = []
    names = [name for name, item in mesh.welds.items() if name[:4] in build.held for _ in item.points]
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    for travel in travels:
        point = stepper.advance(point, float(travel))
        gone = stepper.network.parted(point.state)[spots]
        out.append((point, [name for name, lost in zip(names, gone, strict=True) if lost]))
    return mesh, stepper, out


def folding_below(mesh, point, height_m):
    """Return the share of the plastic strain that lies below a height."""
    worst = np.abs(point.state.hardening).sum(axis=1)
    height = mesh.surface.points[mesh.surface.triangles].mean(axis=1)[:, 2]
    return float(worst[height < height_m].sum() / worst.sum())


def turned(mesh, point, from_m, to_m):
    """Return how far a stretch of the rear outer edge has turned outward, as a slope."""
    edge = mesh.surface.chains["outer_rear_edge"]
    height = mesh.surface.points[edge, 2]
    edge = edge[(height >= from_m) & (height <= to_m)]
    out = point.state.points[edge, 1] - mesh.surface.points[edge, 1]
    return float(np.polyfit(mesh.surface.points[edge, 2], out, 1)[0])


@pytest.fixture(scope="module")
def ordinary():
    return pushed(ORDINARY, np.arange(0.0025, 0.1001, 0.0025))


def test_head_free_the_pillar_folds_at_its_foot_while_spots_pop_one_after_another(ordinary):
    mesh, stepper, out = ordinary
    counts = [len(gone) for _, gone in out]
    assert counts[0] == 0 and counts[-1] >= 6
    assert sum(b > a for a, b in pairwise(counts)) >= 4  # not all at once
    assert all(b >= a for a, b in pairwise(counts))
    first = next(gone for _, gone in out if gone)
    assert set(first) == {"foot_inner"}  # pulled on the side the ram stands on
    assert "foot_outer" not in out[-1][1]  # the fold's hinge
    assert stepper.tally.failed == 0
    end = out[-1][0]
    assert folding_below(mesh, end, 0.15) > 0.5  # most of it
    low, high = turned(mesh, end, 0.15, 0.45), turned(mesh, end, 0.65, 1.05)
    assert low > 0.1 and low == pytest.approx(high, rel=0.1)  # what is above the foot turns as one
    head = mesh.surface.nodes["end_ring"]
    assert (end.state.points[head, 1] - mesh.surface.points[head, 1]).min() > 0.12


def test_books_of_the_fold_close(ordinary):
    _, _, out = ordinary
    assert max(point.ledger.closure_ratio() for point, _ in out[1:]) < 0.02
    lines = out[-1][0].ledger.lines
    assert lines["folding pillar"] > 10.0
    assert lines["seam peel"] > 0.0 and lines["seam slip"] > 0.0
    assert min(lines.values()) >= 0.0


def test_closer_spots_hold_and_the_metal_folds_alone():
    mesh = build_pillar(PillarShape(weld_pitch_m=0.025))
    _, stepper, out = pushed(ORDINARY, np.arange(0.0025, 0.0501, 0.0025), mesh)
    assert out[-1][1] == []
    assert stepper.tally.failed == 0
    lines = out[-1][0].ledger.lines
    assert lines["folding pillar"] > 0.8 * out[-1][0].ledger.work_j
    assert out[-1][0].ledger.closure_ratio() < 0.02


@pytest.mark.slow
def test_books_close_when_the_last_spots_of_a_hard_foot_let_go_in_a_jump():
    """A spot that lets go takes the flange's stored energy with it: booked as released in a jump."""
    _, stepper, out = pushed(HARD, np.arange(0.0025, 0.1301, 0.0025))
    assert stepper.tally.jumps >= 1 and stepper.tally.failed == 0
    assert max(point.ledger.closure_ratio() for point, _ in out[1:]) < 0.02
    assert out[-1][0].ledger.lines["released in a jump"] > 1.0


def test_left_pillar_mirrors_the_answer():
    right = pushed(ORDINARY, [0.0025, 0.005])[2][-1][0]
    left = pushed(ORDINARY, [0.0025, 0.005], build_pillar().mirrored())[2][-1][0]
    assert float(left.force_n[0]) == pytest.approx(float(right.force_n[0]), rel=1e-6)
    count = build_pillar().surface.node_count
    flipped = right.state.points[:count] * [1, -1, 1]
    np.testing.assert_allclose(left.state.points[:count], flipped, atol=1e-9)


def test_held_at_the_head_too_it_takes_more():
    free = pushed(ORDINARY, [0.0025, 0.005])[2][-1][0]
    both = pushed(
        PillarBuild(pressed=materials.PATCH_STEEL, pressed_m=0.0012, closing_m=0.0010), [0.0025, 0.005]
    )
    assert float(both[2][-1][0].force_n[0]) > float(free.force_n[0])


@pytest.mark.parametrize(
    ("change", "name"),
    [
        ({"pressed_m": 0.1}, "pillar.pressed_m"),
        ({"closing_m": float("nan")}, "pillar.closing_m"),
        ({"soft_m": -1.0}, "pillar.soft_m"),
        ({"held": ("top",)}, "pillar.held"),
    ],
)
def test_bad_builds_are_refused_by_name(change, name):
    with pytest.raises(PlanError, match=name):
        pillar_structure(build_pillar(), PillarBuild(**change))
