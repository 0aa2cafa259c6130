"""Undo gives back what was there: for any commits, then as many undos, plans are equal; redo undoes undo."""

import itertools

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from sim.plan import Car, EdgePoint, Plan, Spread
from ui.state.document import Document
from ui.state.history import History

depths = st.integers(0, 160).map(lambda mm: mm / 1000)
plans = st.builds(
    lambda seam, found, title: Plan(
        title=title, car=Car(seam=seam), moves=tuple(Spread(door=EdgePoint(depth_m=d)) for d in found)
    ),
    st.sampled_from(["bonded", "welded"]),
    st.lists(depths, max_size=3),
    st.sampled_from(["", "a", "b"]),
)


@given(first=plans, later=st.lists(plans, max_size=12))
def test_any_commits_then_as_many_undos_give_back_the_plan(first, later):
    history = History(first)
    made = sum(history.commit(plan, "step") for plan in later)
    last = history.plan
    for _ in range(made):
        history.undo()
    assert history.plan == first
    assert not history.can_undo
    for _ in range(made):
        history.redo()
    assert history.plan == last
    assert not history.can_redo


@given(first=plans, later=st.lists(plans, min_size=1, max_size=8), data=st.data())
def test_going_to_any_moment_shows_that_plan(first, later, data):
    history = History(first)
    for plan in later:
        history.commit(plan, "step")
    steps = history.steps
    place = data.draw(st.integers(0, len(steps) - 1))
    assert history.go(place) == steps[place].plan
    assert history.steps == steps


def test_an_equal_plan_is_no_step():
    history = History(Plan(title="a"))
    assert not history.commit(Plan(title="a"), "nothing")
    assert len(history.steps) == 1


def test_a_commit_after_undo_begins_a_branch_and_loses_none():
    history = History(Plan(title="a"))
    history.commit(Plan(title="b"), "b")
    history.undo()
    history.commit(Plan(title="c"), "c")
    assert [(step.plan.title, step.parent) for step in history.steps] == [("a", -1), ("b", 0), ("c", 0)]
    assert history.path == (0, 2)
    assert history.go(1).title == "b"
    history.undo()
    assert history.redo_label == "b"
    assert history.redo().title == "b"
    assert not history.can_redo


@given(data=st.data())
def test_any_walk_through_the_tree_finds_every_step_as_it_was(data):
    history, seen = History(Plan(seed=0)), {0: Plan(seed=0)}
    for turn in range(1, data.draw(st.integers(1, 30))):
        if data.draw(st.booleans()):
            history.go(data.draw(st.integers(0, len(history.steps) - 1)))
        if history.commit(Plan(seed=turn), f"{turn}"):
            seen[history.position] = history.plan
    for number in data.draw(st.permutations(sorted(seen))):
        assert history.go(number) == seen[number]
        assert history.path[-1] == number
        assert history.path[0] == 0
        steps = history.steps
        assert all(steps[after].parent == before for before, after in itertools.pairwise(history.path))


def test_a_place_that_is_not_there_is_refused():
    with pytest.raises(IndexError, match="steps 0 to 0"):
        History(Plan()).go(1)


def test_past_the_limit_the_oldest_step_that_nothing_hangs_on_goes_first(monkeypatch):
    monkeypatch.setattr("ui.state.history.LIMIT", 20)
    history = History(Plan(seed=0))
    for seed in range(1, 25):
        history.commit(Plan(seed=seed), "step")
    assert [step.plan.seed for step in history.steps] == list(range(5, 25))
    history.go(3)
    history.commit(Plan(seed=99), "branch")
    history.commit(Plan(seed=98), "branch")
    assert len(history.steps) == 20
    assert history.plan.seed == 98
    assert {step.plan.seed for step in history.steps} >= {24, 99, 98}
    assert history.path[0] == 0
    assert [history.steps[number].plan.seed for number in history.path][-3:] == [8, 99, 98]


def test_turns_of_one_wheel_are_one_step():
    document = Document(Plan(seed=0))
    for seed in range(1, 6):
        document.commit_run(Plan(seed=seed), f"depth {seed}", "depth")
    document.commit_run(Plan(seed=9), "tilt", "tilt")
    assert [step.plan.seed for step in document.steps] == [0, 5, 9]
    document.undo()
    document.undo()
    assert document.plan.seed == 0


def test_a_run_of_turns_ends_with_any_other_step():
    document = Document(Plan(seed=0))
    document.commit_run(Plan(seed=1), "depth", "depth")
    document.commit(Plan(seed=2), "other")
    document.commit_run(Plan(seed=3), "depth", "depth")
    assert [step.plan.seed for step in document.steps] == [0, 1, 2, 3]


def test_a_preview_is_shown_and_not_recorded():
    document = Document(Plan(title="a"))
    shown = []
    document.changed.connect(lambda: shown.append(document.plan.title))
    document.preview(Plan(title="b"))
    document.preview(None)
    assert shown == ["b", "a"]
    assert len(document.steps) == 1


def test_dirty_until_saved_and_clean_again_after_undo(tmp_path):
    document = Document(Plan(title="a"))
    document.commit(Plan(title="b"), "b")
    assert document.dirty
    document.mark_saved(tmp_path / "plan.toml", "text")
    assert not document.dirty
    document.undo()
    assert document.dirty
    document.redo()
    assert not document.dirty


def test_opening_another_plan_begins_a_history_of_its_own(tmp_path):
    document = Document(Plan(title="a"))
    document.commit(Plan(title="b"), "b")
    document.open(Plan(title="c"), tmp_path / "c.toml")
    assert not document.history.can_undo
    assert document.plan.title == "c"
    assert msgspec.structs.replace(document.plan) == document.committed
