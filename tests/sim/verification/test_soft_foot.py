"""What force folds a soft pillar at its foot: the section's moment over the lever, and nothing else.

Sources
-------
[winter-1947] effective width of a pressed wall that has buckled; its section then holds at least until its
    pressed wall yields
Plastic moment of a section: any handbook of mechanics of materials, from memory; summed up by slices here.
A soft foot takes a ram of 11 to 23 kN at 0.6 m (7 to 14 kN m), an estimate: common practice, no source.
1.35 to 2.7 mm of a pillar's pressed part have been published: from memory.
"""

from dataclasses import replace
from functools import lru_cache

import numpy as np
import pytest

from meshes.pillar import build_pillar
from meshes.side_shape import SIDES
from sim import materials
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network
from sim.pillar import WELD_KIND, PillarBuild, pillar_structure

YIELD_PA, YOUNG_PA, POISSON = 350.0e6, 206.0e9, 0.3
RAM_M, REACH_M, STEP_M = 0.6, 0.06, 0.005
SHAPE = replace(SIDES["low car"].placed_pillar, spacing_m=0.03, weld_pitch_m=0.025, foot_flare_m=0.25)
WALLS = {"ready plans": (0.0012, 0.0010), "middle": (0.0020, 0.0015), "thickest": (0.0027, 0.0015)}


def moments(width, depth, outer, inner, count=4000):
    """Return the moment [N m] at which the pressed wall yields, buckled as it is, and the plastic one."""
    slender = np.sqrt(YIELD_PA / (np.pi**2 * YOUNG_PA / (3.0 * (1.0 - POISSON**2)))) * width / outer
    kept = min(1.0, (1.0 - 0.22 / slender) / slender)
    sides = depth * (np.arange(count) + 0.5) / count
    y = np.concatenate([[0.0, depth], sides])
    web = np.full(count, 2.0 * outer * depth / count)
    whole = np.concatenate([[inner * width, outer * width], web])
    order = np.argsort(y, kind="stable")
    half = y[order][np.searchsorted(np.cumsum(whole[order]), 0.5 * whole.sum())]
    buckled = np.concatenate([[inner * width, kept * outer * width], web])
    middle = buckled @ y / buckled.sum()
    first = YIELD_PA * (buckled @ (y - middle) ** 2) / (depth - middle)
    return float(first), float(YIELD_PA * (whole @ np.abs(y - half)))


@lru_cache
def pressed(walls, height_m=RAM_M, travel_m=0.025):
    """Return the greatest force [N] at a height of the inner wall, the pillar's head free, and spots gone."""
    mesh = build_pillar(SHAPE)
    outer, inner = WALLS[walls]
    build = PillarBuild(
        pressed=materials.PATCH_STEEL, pressed_m=outer, closing_m=inner, thin_m=outer, held=("foot",)
    )
    structure = pillar_structure(mesh, build)
    points, own = mesh.surface.points, mesh.surface.nodes_of(("inner",))
    middle = np.mean([np.interp(height_m, mesh.cuts[:, 0], mesh.cuts[:, k]) for k in (1, 3)])
    away = np.hypot(points[own, 0] - middle, points[own, 2] - height_m)
    nodes, share = own[away < REACH_M], 1.0 - away[away < REACH_M] / REACH_M
    share = share / share.sum()
    drive = Drive(nodes, share, np.array([0.0, 1.0, 0.0]), float(share @ points[nodes, 1]))
    stepper = Stepper(Network(structure, [drive]), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    most = 0.0
    for k in range(round(travel_m / STEP_M)):
        point = stepper.advance(point, (k + 1) * STEP_M)
        most = max(most, float(point.force_n[0]))
    assert stepper.tally.failed == 0
    gone = stepper.network.parted(point.state)[structure.bonds.of(WELD_KIND)]
    return most, int(gone.sum())


@pytest.mark.parametrize("walls", WALLS)
def test_it_folds_between_the_moment_its_buckled_wall_yields_at_and_the_plastic_one(walls):
    """15 % below the first: Winter's curve was fitted to tests that scatter by as much."""
    first, plastic = moments(SHAPE.foot_width_m, SHAPE.foot_depth_m, *WALLS[walls])
    force, gone = pressed(walls)
    assert gone == 0
    assert 0.85 * first < force * RAM_M < 1.02 * plastic


def test_half_the_lever_takes_twice_the_force():
    """A moment folds it: F x lever is the same to a tenth."""
    assert pressed("ready plans", 0.3)[0] * 0.3 == pytest.approx(pressed("ready plans")[0] * RAM_M, rel=0.1)


def test_sheet_as_thick_as_published_takes_what_the_trade_tells_of_a_soft_foot():
    assert 11.0e3 < pressed("middle")[0] < pressed("thickest")[0] < 23.0e3


def test_the_thin_soft_foot_of_the_ready_plans_cannot_by_its_plastic_moment_alone():
    _, plastic = moments(SHAPE.foot_width_m, SHAPE.foot_depth_m, *WALLS["ready plans"])
    assert plastic / RAM_M < 11.0e3
    assert pressed("ready plans")[0] < plastic / RAM_M
