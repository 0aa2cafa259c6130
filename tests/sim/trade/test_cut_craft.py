"""One cut or two, and short or through: what cuts do to a pillar a ram pushes out, on the whole side.

Sources
-------
All common practice, no source: a top cut frees the pillar to fold at its foot; a cut left short is a strong
tie, so foot or rail give instead; a relief cut at the foot lowers the force to fold it by 40 % or more; one
cut leaves no room for tips, a second just under it does.
"""

from __future__ import annotations

from functools import lru_cache

import pytest

from sim.checks import side_facts
from sim.cut_plan import Cut, PillarCut
from sim.plan import Car, PillarSpot, Plan, Press
from sim.run import solve_plan

CAR = Car(lattice_spacing_m=0.06, extent="side", latch="open", whole_side=side_facts.SOFT)
TOP, UNDER, SHORT = Cut(PillarCut(0.95)), Cut(PillarCut(0.89)), Cut(PillarCut(0.95), short_m=0.02)
RELIEF = Cut(PillarCut(0.06, "inner"), depth_m=0.06)
PUSH = Press(head=PillarSpot(height_m=0.55), extension_m=0.03)


@lru_cache
def pushed(*cuts):
    """Return the records of some cuts and the ram after them."""
    _, records = solve_plan(Plan(car=CAR, moves=(*cuts, PUSH)), with_residual=False)
    assert all(record.result.solver.failed_count == 0 for record in records)
    assert records[-1].result.ledger_closure_ratio < 0.02
    return records


def peak_n(*cuts):
    return max(frame.force_n for frame in pushed(*cuts)[-1].frames)


@pytest.mark.slow
def test_a_cut_left_short_ties_the_pillar_to_the_rail():
    assert peak_n(SHORT) > 1.5 * peak_n(TOP)
    assert not pushed(SHORT)[0].result.cut.open and pushed(TOP)[0].result.cut.open


@pytest.mark.slow
def test_a_relief_cut_at_the_foot_lowers_the_force_to_fold_it():
    assert peak_n(TOP, RELIEF) < 0.6 * peak_n(TOP)


@pytest.mark.slow
def test_only_the_second_top_cut_makes_room_for_tips():
    rooms = [record.result.cut.room_m for record in pushed(TOP, UNDER)[:2]]
    assert rooms[0] < 0.005 < 0.035 < rooms[1]
