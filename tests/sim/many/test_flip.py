"""The search for what flips an outcome, on stand-ins whose thresholds are known and on a real door."""

import pytest

from sim import flip, many, workers
from sim.flip import FlipSearch
from sim.plan import Car, EdgePoint, Plan, Spread
from sim.vary import inputs, written
from tests.sim.many import fakes

PLAN = Plan(moves=(Spread(door=EdgePoint(depth_m=0.005)),))


def search(job, plan=PLAN, **other) -> flip.FlipAnswer:
    found = FlipSearch(plan, worker_count=2, job=job, prepare=workers.nothing, **other)
    for _ in found:
        pass
    return found.answer


def test_thresholds_are_found_and_the_nearest_comes_first():
    answer = search(fakes.quick)
    assert answer.verdict == "seam parting"
    assert [item.input.path for item in answer.flips] == [fakes.LATCH, fakes.DEPTH]
    latch, depth = answer.flips
    # bisection leaves a thirty-second of half a side; rounding the value to three digits adds up to 0.5 %
    for item, threshold, base in ((latch, fakes.LATCH_THRESHOLD, 1.25), (depth, fakes.THRESHOLD_M, 0.005)):
        step = 0.5 * (item.input.high - base) / 32
        assert threshold < item.value <= threshold + step + 0.005 * threshold
        assert item.verdict == "latch free"
        assert item.change_ratio == pytest.approx((item.value - base) / (item.input.high - item.input.low))
    assert {item.path for item in answer.steady} == {i.path for i in inputs(PLAN)} - {
        fakes.LATCH,
        fakes.DEPTH,
    }


def test_what_is_reported_was_run_at_that_very_value():
    answer = search(fakes.quick)
    for item in answer.flips:
        (run,) = [r for r in answer.runs if r.values == {item.input.path: item.value}][:1]
        assert flip.verdict_of(run) == item.verdict
        changed = written(PLAN, item.input.path, item.value)
        assert fakes.quick(fakes.Draw(0, {}, changed)).first == item.verdict


def test_nothing_flips_is_an_answer():
    answer = search(fakes.never_other)
    assert answer.flips == () and answer.untold == ()
    assert {item.path for item in answer.steady} == {item.path for item in inputs(PLAN)}
    assert "nothing within its range flips it" in flip.sentence(answer)


def test_runs_that_do_not_settle_are_told_and_are_no_flip():
    answer = search(fakes.unsettled_when_deep)
    assert answer.flips == ()
    assert [item.path for item in answer.untold] == [fakes.DEPTH]
    assert "Not told for the depth of the tips" in flip.sentence(answer)


def test_a_plan_that_does_not_settle_has_no_verdict_to_flip():
    deep = PLAN.with_move(0, Spread(door=EdgePoint(depth_m=0.02)))
    answer = search(fakes.unsettled_when_deep, deep)
    assert answer.verdict is None and answer.flips == ()
    assert "does not settle" in flip.sentence(answer)


def test_sentence_names_number_value_and_outcome():
    words = flip.sentence(search(fakes.quick))
    assert words.startswith("As planned the seam gives first; the nearest flip: the latch's strength at 1.4")
    assert "instead of 1.25" in words and words.endswith("then the latch gives first.")


def test_cancelled_search_has_no_answer():
    found = FlipSearch(PLAN, job=fakes.slow, prepare=workers.nothing, cancelled=lambda: True)
    assert list(found) == []
    with pytest.raises(ValueError, match="not come to its end"):
        _ = found.answer


def test_only_the_judged_move_is_shortened():
    two = Plan(moves=(PLAN.moves[0], Spread(door=EdgePoint(depth_m=0.12), stop_at=("folding out",))))
    short = many.shortened(two)
    assert short.moves[0] == PLAN.moves[0]
    assert set(short.moves[1].stop_at) == {"folding out", *many.MANY_GIVES}


@pytest.mark.slow
def test_depth_flips_a_real_door_between_lip_and_bend():
    """Shallow the seam gives first, deep the latch (common practice, no source): some depth must flip it."""
    between = Plan(
        car=Car(lattice_spacing_m=0.09), moves=(Spread(door=EdgePoint(depth_m=0.024), opening_m=0.04),)
    )
    found = FlipSearch(between, only=(fakes.DEPTH,), worker_count=2)
    for _ in found:
        pass
    answer = found.answer
    depth = [item for item in answer.flips if item.input.path == fakes.DEPTH]
    assert depth, flip.sentence(answer)
    assert {answer.verdict, depth[0].verdict} == {"seam parting", "latch free"}
