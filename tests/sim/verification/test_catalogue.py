"""Every row of the installed checks holds, names its authority, and can fail.

Sources
-------
Each row names its own; their list is the program's data, assets/sources.toml.
"""

import math
from dataclasses import replace
from functools import partial

import pytest

from sim.checks import crush, facts, side_facts, sources, ways
from sim.checks.catalogue import bad, catalogue, chosen
from sim.checks.row import Row, settling
from tests.sim.runs.solved import crushed, done, nicked, ready_records

FAST = chosen(full=False)
SLOW = tuple(check for check in catalogue() if not check.fast)
ELSEWHERE = {
    "crease_goes_in": "trade/test_pinch.py, the same seats on a 60 mm lattice",
    "crown_goes_out": "trade/test_pinch.py, the same seats on a 60 mm lattice",
    "less_out_at_once": "trade/test_pinch.py, the same seats on a 60 mm lattice",
    "less_if_not_squeezed": "what a squeeze does is in_at_the_end; the push of crown_goes_out",
    "strong_dent_stays_inboard": "trade/test_facts.py, the same row on a 90 mm lattice",
    "strong_dent_is_another_verdict": "known to miss; the same push as the row before",
    "intruded_room_lost": "trade/test_push_back.py, the same rows",
    "intruded_room_gained": "trade/test_push_back.py, the same row",
    "without_bar": "trade/test_door_test.py, without its bar a door lies clearly below",
    "sim.checks.spacings": "regression/test_lattices.py, story, peak, seam and motion of the same attacks",
    "wide_needs_more": "wide_parts_later at the first parting, trade/test_tips.py before a sheet tears",
    "sim.checks.runs": "runs/test_books.py, balance, books and mirror of the same pushes on a 90 mm lattice",
    "stopping_tears_less": "runs/test_cutting.py, going on against stopping",
    "going_on_opens_no_further": "runs/test_cutting.py, going on against stopping",
    "door_least": "trade/test_door_test.py, the same door up to the first of the three stages",
    "door_most": "trade/test_door_test.py, the same door up to the first of the three stages",
    "spots_let_go_in_steps": "trade/test_builds.py, the same pushes on a 90 mm lattice",
    "alloy_tears_more": "trade/test_builds.py, the same push at the middle seat",
    "belt_moves_skin_out": "trade/test_facts.py, the same pushes on a 90 mm lattice",
    "more_force_same_verdict": "trade/test_facts.py, the same shares of the force on a 90 mm lattice",
    "open_latch_jams_only": "trade/test_builds.py, the same push at three seats",
    "tips_in_a_cut": "runs/test_pocket.py, the same cuts and tips on the same car",
    "hinge_first": "trade/test_grounded.py, the same door and lattice",
    "upper_hinge_first_sinks_further": "trade/test_grounded.py, the same door and lattice",
    "unsupported_moves_more": "trade/test_on_its_wheels.py, the same push on the same car",
    "unsupported_opens_less": "trade/test_on_its_wheels.py, the same push on the same car",
    "deeper_than_crown": "trade/test_pinch.py, the same squeeze on a 60 mm lattice",
    "collapse": "the same plates with eight rings, among the fast checks",
    "in_at_the_end-0.61": "the same at 0.62 m",
    "in_at_the_end-0.63": "the same at 0.62 m",
    "inner_lip_is_another_verdict-0.5-skin": "the same at 0.51 m",
    "inner_lip_is_another_verdict-0.5-inner panel": "the same at 0.51 m",
    "inner_lip_is_another_verdict-0.52-skin": "the same at 0.51 m",
    "inner_lip_is_another_verdict-0.52-inner panel": "the same at 0.51 m",
    "trouser_load-0.015": "the same test on 20 mm",
    "trouser_energy-0.015": "the same test on 20 mm",
}
"""Full checks whose claim other tests hold: minutes more, for --whole and for `hemline check --full`."""


def name(check):
    words = (*getattr(check.make, "args", ()), *getattr(check.make, "keywords", {}).values())
    function = getattr(check.make, "func", check.make)
    return "-".join([function.__name__, *(getattr(w, "__name__", str(w)) for w in words)])


def called(check):
    """Return what a check may be called in the table above: its module, its function and its own name."""
    function = check.make.func if isinstance(check.make, partial) else check.make
    return {function.__module__, function.__name__, name(check)}


def with_mark(check):
    """Return a check as a test's parameter, marked where its claim is held elsewhere too."""
    whole = called(check) & ELSEWHERE.keys()
    return pytest.param(check, id=name(check), marks=pytest.mark.whole if whole else ())


@pytest.fixture(autouse=True)
def solved_once(monkeypatch):
    """Give the rows the pushes that other tests solve too; that both mean the same stands below."""
    for module in (facts, side_facts):
        monkeypatch.setattr(module, "done", done)
    monkeypatch.setattr(facts, "nicked", nicked)
    monkeypatch.setattr(crush, "find", crushed)
    monkeypatch.setattr(ways, "ready", lambda name: tuple(record.result for record in ready_records(name)))


def test_what_is_solved_for_the_rows_is_what_they_would_solve(monkeypatch):
    move = facts.bite(0.36, facts.DEEP_M)
    shared = facts.done(facts.STEEL, move)
    monkeypatch.undo()
    alone = facts.done(facts.STEEL, move)
    assert facts.done is not done
    assert (shared.force_n, shared.result.events) == (alone.force_n, alone.result.events)


def held(check):
    row = check.run()
    assert sources.full(row.authority)
    assert row.claim and row.spacing
    assert not bad(row), f"{row.claim}: expected {row.expected}, got {row.got} {row.unit}"
    assert row.seconds > 0.0


@pytest.mark.parametrize("check", FAST, ids=name)
def test_fast_check(check):
    held(check)


@pytest.mark.slow
@pytest.mark.timeout(1200)  # a door crushed half a metre deep is minutes of work
@pytest.mark.parametrize("check", [with_mark(check) for check in SLOW])
def test_full_check(check):
    held(check)


def test_every_check_held_elsewhere_is_one_of_the_catalogue_s():
    assert ELSEWHERE.keys() <= set().union(*map(called, SLOW))


def test_no_check_stands_twice_and_no_claim_is_ambiguous():
    names = [name(check) for check in catalogue()]
    assert len(names) == len(set(names)) > 200


ROW = Row("claim", "kendall-1975", 2.0, 2.0, "N", 0.05, spacing="one")


@pytest.mark.parametrize(
    ("row", "holds"),
    [
        (ROW, True),
        (replace(ROW, got=2.09), True),
        (replace(ROW, got=2.11), False),
        (replace(ROW, got=1.89), False),
        (replace(ROW, got=math.nan), False),
        (replace(ROW, got=math.inf), False),
        (replace(ROW, relation="within", got=2.06), False),
        (replace(ROW, relation="within", got=2.04), True),
        (replace(ROW, relation="at least", got=99.0), True),
        (replace(ROW, relation="at least", got=1.89), False),
        (replace(ROW, relation="at most", got=-99.0), True),
        (replace(ROW, relation="at most", got=2.11), False),
        (replace(ROW, relation="more than", got=2.001), True),
        (replace(ROW, relation="more than", got=2.0), False),  # whatever the tolerance
        (replace(ROW, relation="less than", got=1.999), True),
        (replace(ROW, relation="less than", got=2.0), False),
        (
            replace(ROW, relation="more than", expected=0.0, got=0.0),
            False,
        ),  # not more than nothing
        (replace(ROW, relation="more than", got=math.inf), False),
        (replace(ROW, relation="same", expected="seam", got="seam"), True),
        (replace(ROW, relation="same", expected="seam", got="latch"), False),
        (replace(ROW, expected="seam", got="seam"), False),  # words are compared only where asked for
        (replace(ROW, expected=2.0, got="not solved"), False),
        (replace(ROW, expected=0.0, got=1e-9), False),  # no tolerance is a share of nothing
    ],
)
def test_a_row_holds_within_its_tolerance_and_nowhere_else(row, holds):
    assert row.passed is holds
    assert bad(row) is not holds


def test_a_known_miss_is_news_once_it_has_come_right():
    known = replace(ROW, known="coarse")
    assert bad(known)
    assert not bad(replace(known, got=3.0))


def test_errors_are_of_the_expected_value_or_in_its_unit():
    assert replace(ROW, got=2.1).error == pytest.approx(0.05)
    assert replace(ROW, got=2.1, relation="within").error == pytest.approx(0.1)
    assert replace(ROW, expected=0.0, got=0.3).error == pytest.approx(0.3)
    assert replace(ROW, got="words").error is None


def test_settling_compares_the_errors_of_two_lattices():
    coarse, fine = replace(ROW, got=2.4), replace(ROW, got=1.9)
    assert settling("x", coarse, fine).got == pytest.approx(0.25)
    assert settling("x", coarse, fine).passed
    assert not settling("x", fine, coarse).passed
    assert not settling("x", replace(ROW, got=2.0), fine).passed  # nothing shrinks from an exact answer
