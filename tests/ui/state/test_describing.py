"""The moment in words names tool, place, verdict and clearance, and keeps shut what is shut."""

import dataclasses

import pytest

from sim.plan import Car, EdgePoint, Plan, Spread
from sim.results import LIMITS_LINE
from sim.run import solve_plan
from sim.units import Units
from ui.state.answers import DoorReady
from ui.state.describing import AT_START, KEPT_SHUT, described
from ui.state.folds import coloured
from ui.state.session import Session

PLAN = Plan(
    title="A short push",
    car=Car(lattice_spacing_m=0.06, side="left"),
    moves=(Spread(door=EdgePoint(depth_m=0.005), opening_m=0.0075),),
)


@pytest.fixture(scope="module")
def solved():
    return solve_plan(PLAN)


@pytest.fixture
def session(solved):
    model, records = solved
    made = Session(PLAN)
    made.take([DoorReady(0, PLAN.car, model, records[0].frames[0])])
    made.know(PLAN, records)
    return made


def words_of(session):
    """Return the words with plain spaces."""
    return described(session).replace("\u00a0", " ")


def test_before_the_push_tool_place_and_room_are_told(session):
    session.timeline.go(0)
    words = words_of(session)
    for part in ("A short push", "left side", "Move 1 of 1", "wide-tip spreader", "50 mm wide", AT_START):
        assert part in words
    assert "Metal to occupant:" in words
    assert words.endswith(f"{LIMITS_LINE}.")


def test_at_the_end_the_verdict_is_the_runs_own_sentence(session, solved):
    session.timeline.go(len(session.timeline))
    words = words_of(session)
    assert solved[1][0].result.sentence.replace("\u00a0", " ") in words
    assert f"Moment {len(session.timeline)} of {len(session.timeline)}" in words
    assert "7.5 mm" in words or "8 mm" in words


def coloured_by_folding(session):
    session.view.set(dataclasses.replace(session.view.options, colour_mode="folded"))
    session.timeline.go(len(session.timeline))


def test_where_it_folded_is_told_in_words_and_numbers(session, solved):
    coloured_by_folding(session)
    model, records = solved
    work = records[0].frames[-1].fold_j_per_m2
    words = words_of(session)
    assert f"{1e-3 * work.max():.2g} kJ/m\u00b2" in words
    area = model.network.rest.area
    assert f"Creased or more: {100 * area[work >= 200.0].sum() / area.sum():.2g} % of the sheets." in words
    session.timeline.go(0)
    assert "No sheet has been bent for good." in words_of(session)


def test_where_it_folded_is_kept_shut_with_the_answers(session):
    coloured_by_folding(session)
    session.locks.turn("answers")
    words = words_of(session)
    assert "olded" not in words and "plain metal" in words
    assert coloured(session) == "material"
    session.locks.turn("answers")
    assert coloured(session) == "folded"


def test_what_is_kept_shut_stays_out(session, solved):
    session.timeline.go(len(session.timeline))
    session.locks.turn_all()
    words = words_of(session)
    assert solved[1][0].result.sentence.replace("\u00a0", " ") not in words
    assert KEPT_SHUT in words
    assert "force" not in words


def test_inches_where_inches_are_chosen(session):
    options = session.view.options
    session.view.set(dataclasses.replace(options, units=Units.IMPERIAL).with_next("skin"))
    words = words_of(session)
    assert " in wide" in words
    assert " mm" not in words
    assert "outer skin see-through" in words


def test_sharp_edges_are_told_with_the_moment_and_shut_with_the_answers(solved):
    first = solved[1][0]
    torn = dataclasses.replace(first.frames[-1], sharp_edge_count=2)
    model, records = solved
    session = Session(PLAN)
    session.take([DoorReady(0, PLAN.car, model, records[0].frames[0])])
    session.know(PLAN, [dataclasses.replace(first, frames=(*first.frames[:-1], torn))])
    session.timeline.go(0)
    assert "Sharp edges" not in described(session)
    session.timeline.go(len(session.timeline))
    assert "Sharp edges: 2." in described(session)
    session.locks.turn_all()
    assert "Sharp edges" not in described(session)
