"""Two doors and the pillar between them as one structure: nothing lost in joining, and forces that balance.

Sources
-------
Balance, additivity and mirror images are laws of statics, no source. That the latch gives before the seam
when tips push behind the inner bend is common practice, no source.
"""

from dataclasses import replace

import numpy as np
import pytest

from meshes.side import build_side
from meshes.side_shape import SIDES
from sim.door_structure import door_structure
from sim.increment import Stepper
from sim.joined import Part, joined
from sim.ladder import tie_ratios
from sim.ledger import Ledger
from sim.network import Drive, Load, Network
from sim.pillar import WELD_KIND, pillar_structure
from sim.plan import Car
from sim.problems import PlanError
from sim.side_model import ON_PILLAR, side_structure

LOW = SIDES["low car"]
COARSE = replace(
    LOW,
    front=replace(LOW.front, spacing_m=0.06),
    rear=replace(LOW.rear, spacing_m=0.06),
    pillar=replace(LOW.pillar, spacing_m=0.03),
)
CAR = Car()


@pytest.fixture(scope="module")
def right():
    mesh = build_side(COARSE)
    return mesh, side_structure(CAR, mesh)


def pad(points, nodes, place):
    """Return nodes and weights of a pad round a place."""
    away = np.linalg.norm(points[nodes] - place, axis=1)
    near = away < 0.05
    weights = 1.0 - away[near] / 0.05
    return nodes[near], weights / weights.sum()


def pushed(mesh, side, travels):
    """Return stepper and points of a push at the latch, front door's bend against the pillar's edge."""
    points, sign = side.structure.points, side.structure.outboard_sign
    first, last = mesh.front.edges["latch_edge"]
    bend = mesh.front.wall[-1, first : last + 1]
    edge = mesh.pillar.surface.chains["front_outer_edge"] + side.first["pillar"]
    height = mesh.shape.front.latch_height_m
    sides = [
        pad(points, nodes, points[nodes[np.argmin(np.abs(points[nodes, 2] - height))]])
        for nodes in (bend, edge)
    ]
    nodes = np.concatenate([sides[0][0], sides[1][0]])
    weights = np.concatenate([sides[0][1], -sides[1][1]])
    way = np.array([-1.0, sign, 0.0]) / np.sqrt(2.0)
    drive = Drive(nodes, weights, way, float(way @ (weights @ points[nodes])))
    stepper = Stepper(Network(side.structure, [drive]), lambda: False)
    out = [stepper.first_point(stepper.network.initial_state(), Ledger())]
    for travel in travels:
        out.append(stepper.advance(out[-1], travel))
    assert stepper.tally.failed == 0
    return stepper, out[1:]


@pytest.fixture(scope="module")
def opened(right):
    return pushed(*right, [0.0025, 0.005, 0.0075])


def test_untied_parts_hold_what_they_hold_alone(right):
    """Joined and not yet tied, energy and forces of a shaken whole are those of its parts."""
    mesh, _ = right
    parts = [
        Part("front", door_structure(CAR, mesh.front), mesh.shifts["front"]),
        Part("rear", door_structure(CAR, mesh.rear), mesh.shifts["rear"]),
        Part("pillar", pillar_structure(mesh.pillar), mesh.shifts["pillar"]),
    ]
    whole = Network(joined(parts))
    shake = 1.0e-4 * np.random.default_rng(3).standard_normal(whole.structure.points.shape)
    load = Load()
    at = whole.evaluate(whole.structure.points + shake, whole.initial_state(), load)
    energy, forces, first = 0.0, [], 0
    for part in parts:
        alone = Network(part.structure)
        count = len(part.structure.points)
        moved = part.structure.points + shake[first : first + count]
        ev = alone.evaluate(moved, alone.initial_state(), load)
        energy += ev.potential_j
        forces.append(ev.forces.copy())
        first += count
    assert at.potential_j == pytest.approx(energy, rel=1e-9)
    np.testing.assert_allclose(at.forces, np.concatenate(forces), rtol=1e-7, atol=1e-4)


def test_latch_and_rear_hinges_pull_on_the_pillar_what_they_pull_on_the_doors(right):
    _, side = right
    names = {tie.name: tie for tie in side.structure.ties}
    hung = [name for name in ON_PILLAR if name in names]
    assert len(hung) == 3
    for name, tie in names.items():
        wanted = 0.0 if name in hung or "bar foot" in name else 1.0
        assert float(tie.weights.sum()) == pytest.approx(wanted, abs=1e-12)
    pillar = side.first["pillar"]
    for name in hung:
        tie = names[name]
        mine = tie.weights[tie.nodes >= pillar]
        assert float(mine.sum()) == pytest.approx(-1.0)
        door = tie.weights[tie.nodes < pillar] @ side.structure.points[tie.nodes[tie.nodes < pillar]]
        post = -mine @ side.structure.points[tie.nodes[tie.nodes >= pillar]]
        assert np.abs(door - post)[1:].max() < 0.02  # beside each other, across the gap
        assert abs(door[0] - post[0]) < 0.04


def test_nothing_pulls_at_rest(right):
    _, side = right
    network = Network(side.structure)
    ev = network.evaluate(side.structure.points, network.initial_state(), Load())
    assert float(np.abs(network.residual(ev)).max()) < 1e-3  # the solver's own force limit
    assert ev.stored_j < 1e-9


def test_what_holds_the_side_still_takes_exactly_the_tools_force_and_the_tool_none(opened):
    """The tips push on each other: rigid nodes, ties to what stands still, rims and drag sum to nothing."""
    stepper, points = opened
    network, s = stepper.network, stepper.network.structure
    end = points[0]
    ev = end.evaluation
    total = np.where(network.free, 0.0, ev.forces).sum(axis=0)
    held = ("front upper hinge", "front lower hinge", "rear latch")  # on what stands still, and no other
    for tie, force in zip(s.ties, ev.tie_force, strict=True):
        total -= force if tie.name in held else 0.0
    total[1] += s.outboard_sign * ev.rim_push.sum()
    total -= stepper.viscous_n_per_m * (end.state.points - s.points).sum(axis=0)
    assert np.abs(total).max() < 1e-3 * float(end.force_n[0])


def test_tips_behind_the_bend_free_the_latch_from_the_pillar_and_part_no_seam(opened):
    stepper, points = opened
    freed = [one.name for point in points for one in point.freed]
    assert freed == ["front latch"]
    s = stepper.network.structure
    gone = stepper.network.parted(points[-1].state)
    assert not gone[s.bonds.of("seam")].any() and not gone[s.bonds.of(WELD_KIND)].any()
    assert points[-1].ledger.closure_ratio() < 0.02


def test_the_pillar_gives_and_takes_the_rear_hinges_along(right, opened):
    mesh, side = right
    stepper, points = opened
    before = points[0]
    patch = mesh.pillar.surface.nodes["striker_patch"] + side.first["pillar"]
    moved = before.state.points[patch] - side.structure.points[patch]
    assert 1e-5 < float(np.linalg.norm(moved, axis=1).max()) < 5e-3
    ratio = tie_ratios(stepper.network, before.state, before.evaluation)
    names = [tie.name for tie in side.structure.ties]
    assert ratio[names.index("front latch")] > 0.2
    assert min(ratio[names.index(f"rear {which} hinge")] for which in ("upper", "lower")) > 1e-4


def test_the_left_side_mirrors_the_answer(right, opened):
    mesh, side = right
    left = mesh.mirrored()
    _, points = pushed(left, side_structure(CAR, left), [0.0025])
    here = opened[1][0]
    assert float(points[0].force_n[0]) == pytest.approx(float(here.force_n[0]), rel=1e-5)
    flipped = here.state.points * [1, -1, 1]
    own = np.any(np.abs(side.structure.points) < 10.0, axis=1) & ~np.any(
        np.array(side.structure.fixed), axis=1
    )
    np.testing.assert_allclose(points[0].state.points[own], flipped[own], atol=1e-7)


def test_parts_that_do_not_go_together_are_refused(right):
    mesh, _ = right
    front = Part("front", door_structure(CAR, mesh.front), np.zeros(3))
    other = Part("rear", door_structure(CAR, mesh.rear.mirrored()), np.zeros(3))
    with pytest.raises(PlanError, match="rear faces another side"):
        joined([front, other])
    with pytest.raises(PlanError, match="a word of its own"):
        joined([front, front])
