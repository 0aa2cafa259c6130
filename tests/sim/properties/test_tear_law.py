"""Properties of the law on the tear line: its area, its forces, what it does not make, what it remembers."""

from dataclasses import replace

import numpy as np
import pytest

from sim import torn
from sim.bond import END, LENGTH, bond_response
from sim.checks.tears import clamped_strip, metal, pull, trousers
from sim.cuts import cuts_of, find_cuts
from sim.network import Load, Network
from sim.split import carried_over, split
from sim.tear import (
    Candidate,
    begun_ratios,
    edge_pulls,
    measure,
    neck_law,
    opening_force,
    stretch_ratios,
    worst_cut,
)

STEEL = metal(220.0e6, 1.0e9, 308.0e6)


def candidate(network, ev, barred=None):
    found = worst_cut(network, ev, barred)
    assert found is not None
    return found


@pytest.fixture(scope="module")
def bent():
    """Return network, state and evaluation of trousers whose legs have yielded, just before they tear."""
    specimen = trousers(0.02, STEEL)
    stepper, point, _ = pull(specimen, 0.02, 0.34)
    assert point.ledger.lines["folding skin"] > 0.5
    assert len(point.state.points) == len(specimen.network.structure.points)
    return stepper.network, point.state, point.evaluation


@pytest.mark.parametrize("force_n", [1.0, 200.0, 1.0e4])
@pytest.mark.parametrize("drive", [0.5, 1.0, 1.3])
def test_a_neck_spends_its_energy_whatever_its_force(force_n, drive):
    cut = Candidate(0, 1, (0,), 0.02, 2.8, drive, drive, 0.0, force_n)
    law = neck_law(cut, 140.0)
    opening = np.linspace(0.0, law[END], 20001)
    force = np.array([bond_response(d, 0.0, law)[2] for d in opening]) * law[LENGTH]
    # trapezium rule over straight pieces, a kink inside one interval
    assert np.trapezoid(force, opening) == pytest.approx(2.8, rel=1e-3)
    assert bond_response(0.0, law[END], law)[1] * law[LENGTH] == pytest.approx(2.8, rel=1e-9)


def test_the_pull_across_a_cut_is_what_the_halves_would_feel():
    specimen = clamped_strip(0.04, metal())
    _, point, _ = pull(specimen, 1.0e-4, 2.0e-4)
    network = specimen.network
    ev = point.evaluation
    cuts = find_cuts(network)
    force = opening_force(network, cuts, ev)
    rows = np.flatnonzero(cuts.node == specimen.tip)
    assert len(rows) == 5
    for row in rows:
        cut = Candidate(int(cuts.node[row]), int(cuts.tip[row]), cuts.side[row], 0.0, 0.0)
        open_ = Network(split(network.structure, cut), network.drives)
        state = carried_over(point.state, network, open_, specimen.tip)
        loose = open_.evaluate(state.points, state, Load((point.travel_m,) * len(network.drives)))
        # the new half is pulled by minus its energy gradient; 1e-6 N is the rounding of kilonewtons
        np.testing.assert_allclose(-loose.forces[-1], force[row], rtol=1e-9, atol=1e-6)
        np.testing.assert_allclose(loose.forces[specimen.tip], force[row], rtol=1e-9, atol=1e-2)


def test_splitting_a_bent_sheet_makes_no_energy(bent):
    network, state, ev = bent
    cut = candidate(network, ev)
    open_ = Network(split(network.structure, cut, neck_law(cut, 140.0)), network.drives)
    load = Load((0.34,) * len(network.drives))
    before = network.evaluate(state.points, state, load)
    after = open_.evaluate(
        carried_over(state, network, open_, cut.node).points,
        carried_over(state, network, open_, cut.node),
        load,
    )
    # metal that has flowed keeps its stress, the rest loses what the hinge along the cut held
    assert after.stored_j <= before.stored_j * (1.0 + 1e-9)
    assert after.stored_j > 0.5 * before.stored_j
    assert after.triangle_folding.sum() == pytest.approx(before.triangle_folding.sum(), abs=1e-9)


def test_measures_do_not_see_the_whole_sheet_turned(bent):
    network, state, ev = bent
    angle = 0.7
    turn = np.array([[np.cos(angle), 0, np.sin(angle)], [0, 1, 0], [-np.sin(angle), 0, np.cos(angle)]])
    turned = replace(state, points=state.points @ turn.T)
    other = network.evaluate(turned.points, turned, Load((0.0,) * len(network.drives)))
    cuts = cuts_of(network)
    one, two = measure(network, cuts, ev), measure(network, cuts, other)
    np.testing.assert_allclose(two.drive, one.drive, rtol=1e-6, atol=1e-9)
    np.testing.assert_allclose(two.stretch, one.stretch, rtol=1e-6, atol=1e-9)
    np.testing.assert_array_equal(two.heading.taken, one.heading.taken)


def test_a_pad_holds_its_nodes_together(bent):
    network, _, ev = bent
    first = candidate(network, ev)
    assert candidate(network, ev, np.array([first.node])).node != first.node


def test_measures_grow_with_the_pull_and_meet_at_the_neck():
    specimen = clamped_strip(0.04, STEEL)
    cuts = find_cuts(specimen.network)
    pulls = np.linspace(0.0, 1.3, 60)[:, None] * cuts.limit_n_per_m * cuts.share_m
    stretch = np.array([stretch_ratios(cuts, pull) for pull in pulls])
    begun = np.array([begun_ratios(cuts, pull) for pull in pulls])
    assert (np.diff(stretch, axis=0) > 0.0).all()
    assert (np.diff(begun, axis=0) >= 0.0).all()
    at_limit = stretch_ratios(cuts, cuts.limit_n_per_m * cuts.share_m)
    np.testing.assert_allclose(at_limit, 1.0, rtol=1e-12)
    # necking is the small part of a tear's work
    assert begun.max() < 0.15


def test_a_smooth_edge_begins_to_tear_where_the_sheet_necks():
    # a strip without a cut, its clamps far enough apart that its middle is in plain tension
    specimen = clamped_strip(0.04, STEEL, cut_m=0.0)
    assert len(specimen.network.structure.points) == len(np.unique(specimen.network.structure.triangles))
    _, point, steps = pull(specimen, 0.001, 0.03, 0.05)
    begin = next(s for s in steps if s.nodes > steps[0].nodes)
    # at a free edge the tension is uniaxial: 308 MPa are reached at a Green strain of (308 - 220) MPa / 1 GPa
    # and the elastic part, that is 8.5 % of engineering stretch; two steps of the pull, and the clamps' hold
    neck = np.sqrt(1.0 + 2.0 * (0.088 + 308.0e6 / 210.0e9)) - 1.0
    assert begin.travel_m / 0.16 == pytest.approx(neck, abs=0.016)
    assert steps[-1].torn_m > 0.05
    assert abs(point.ledger.gap_j) < 0.02 * point.ledger.work_j


def test_a_smooth_edge_is_told_by_both_its_pieces():
    """One piece of an edge stretched by 4 % and the other by 1 %: the node between is told the mean."""
    specimen = clamped_strip(0.04, STEEL, cut_m=0.0)
    network = specimen.network
    cuts = find_cuts(network)
    free = np.flatnonzero(cuts.behind[:, 0] < 0)
    k = free[len(free) // 2]
    node, (one, other) = cuts.node[k], cuts.lips[k]
    points = network.structure.points.copy()
    for far, stretch in ((one, 0.04), (other, 0.01)):
        points[far] = points[node] + (1.0 + stretch) * (points[far] - points[node])
    # the metal's curve: elastic up to 220 MPa, then 1 GPa of stress for each unit of plastic strain
    strain = 0.5 * sum(e + 0.5 * e**2 for e in (0.04, 0.01))
    stress = 220.0e6 + (strain - 220.0e6 / 210.0e9) / (1.0 / 210.0e9 + 1.0 / 1.0e9)
    told = edge_pulls(network, cuts, points)[k] / (cuts.limit_n_per_m[k] / 308.0e6 * cuts.share_m[k])
    assert told == pytest.approx(stress, rel=1e-9)


def test_an_edge_pressed_together_is_under_no_tension():
    network = clamped_strip(0.04, STEEL, cut_m=0.0).network
    cuts = find_cuts(network)
    assert (edge_pulls(network, cuts, 0.97 * network.structure.points) == 0.0).all()


def test_what_has_torn_is_counted_once():
    specimen = trousers(0.03, metal())
    stepper, point, steps = pull(specimen, 0.02, 0.70, 0.08)
    network, state = stepper.network, point.state
    assert torn.sharp_edge_count(network, state) == 2
    assert torn.torn_parts(network, state) == {"outer skin": pytest.approx(steps[-1].torn_m)}
    first = specimen.network
    assert torn.sharp_edge_count(first, first.initial_state()) == 0
    assert torn.torn_m(first, first.initial_state()) == 0.0


def test_the_rung_grows_to_one_where_the_line_tears():
    specimen = trousers(0.03, metal())
    ratios = []
    for end in (0.06, 0.12, 0.20, 0.28, 0.34, 0.37):
        stepper, point, _ = pull(specimen, 0.01, end)
        part, ratio = torn.demand(stepper.network, point.state, point.evaluation, specimen.gripped)
        ratios.append(ratio)
        assert part == "outer skin"
    assert (np.diff(ratios) > 0.0).all()
    assert 0.0 < ratios[0] < 0.05
    assert 0.5 < ratios[-1] < 1.0
    # and stays there while it runs
    stepper, point, _ = pull(specimen, 0.01, 0.42)
    assert torn.demand(stepper.network, point.state, point.evaluation, specimen.gripped)[1] == 1.0
    assert point.ledger.lines["tear"] > 0.0


def test_angles_are_found_again_past_half_a_turn(bent):
    network, state, ev = bent
    cut = candidate(network, ev)
    wound = replace(state, angle=state.angle + 2.0 * np.pi)
    open_ = Network(split(network.structure, cut, neck_law(cut, 140.0)), network.drives)
    kept = carried_over(wound, network, open_, cut.node)
    plain = carried_over(state, network, open_, cut.node)
    np.testing.assert_allclose(kept.angle, plain.angle + 2.0 * np.pi)
    # one hinge less: the one along the cut
    assert len(kept.angle) == len(state.angle) - 1
