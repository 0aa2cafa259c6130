"""Matching pictures chosen in the window: taken once, written with their plans, and read again."""

from dataclasses import replace
from types import SimpleNamespace

import pytest

from sim.plan import Car, EdgePoint, Plan, Spread
from sim.planfile import loads_plan
from ui.state.answers import DoorReady, Ended, MoveReady
from ui.state.figure_choice import FILE_NAME, SIZE_CHOICES, Choice, dumps, opened, view_of, view_words, write
from ui.state.figure_list import load, loads
from ui.state.session import Session

TILT_RAD = loads_plan('schema_version = 1\n[[moves]]\nmove = "spread"\ntilt_deg = 30.0\n').moves[0].tilt_rad
"""A direction that stands in a file as it is: others are rounded there."""


@pytest.fixture
def session(frame, record):
    """Return a sitting whose one push has been run over three moments."""
    plan = Plan(title="Edge: a try", moves=(Spread(opening_m=0.0075, tilt_rad=TILT_RAD),))
    session, asked = Session(plan), []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, Car(), SimpleNamespace(), frame()), Ended(asked[0].number)])
    session.run()
    number = asked[-1].number
    session.take([MoveReady(number, 0, plan, record([0.0, 0.0025, 0.005, 0.0075])), Ended(number, 1.0)])
    return session


def test_a_moment_is_taken_once_and_says_which_it_is(session):
    session.timeline.go(len(session.timeline))
    one = Choice().with_moment(session)
    assert one.taken[0].state.moment == "end" and one.taken[0].state.opening_m is None
    assert one.with_moment(session) is one
    session.timeline.go(2)
    two = one.with_moment(session)
    assert [taken.state.name for taken in two.taken] == ["m1", "m2"]
    assert two.taken[1].state.opening_m == pytest.approx(0.0025)
    session.timeline.go(0)
    assert two.with_moment(session).taken[2].state.moment == "start"


def test_there_is_no_moment_of_a_plan_without_moves(session):
    empty = Session(Plan())
    assert Choice().with_moment(empty) == Choice()


def test_views_are_named_by_what_they_are_and_no_two_have_one_name(session):
    view = view_of(session, "latch", "seam", dark=True, labels=False)
    other = view_of(session, "latch", "seam", dark=True, labels=True)
    choice = Choice().with_view(view).with_view(other)
    assert [one.name for one in choice.views] == ["latch-seam-dark", "latch-seam-dark-2"]
    assert choice.with_view(other) is choice
    assert view_words(choice.views[1]) == "Close on the latch, seam, dark, names"


def test_what_is_missing_is_said_and_the_pictures_are_counted(session):
    choice = Choice()
    assert "moment" in choice.missing
    choice = choice.with_moment(session)
    assert "view" in choice.missing
    choice = choice.with_view(view_of(session, "latch", "seam", dark=False, labels=False))
    assert choice.missing == ""
    choice = replace(choice, sizes=SIZE_CHOICES[:2], styles=("colour", "grey"))
    assert choice.count == 1 * 1 * 2 * 2
    assert choice.told.endswith("= 4 pictures")
    assert "kind of file" in replace(choice, formats=()).missing


def test_a_list_is_written_with_its_plans_and_read_again(session, tmp_path):
    choice = Choice(title="Two plans").with_moment(session)
    session.change_move(Spread(opening_m=0.0075, tilt_rad=TILT_RAD, door=EdgePoint(depth_m=0.03)), "deeper")
    choice = choice.with_moment(session).with_view(view_of(session, "top", "seam", dark=True, labels=True))
    # no door of these tests can be kept
    choice = replace(choice, taken=tuple(replace(one, model=None, records=()) for one in choice.taken))
    path = write(choice, tmp_path / "made")
    assert path.name == FILE_NAME
    assert sorted(p.name for p in path.parent.glob("*.toml")) == [
        "edge-a-try-2.toml", "edge-a-try.toml", FILE_NAME,
    ]  # fmt: skip
    again = opened(path, load(path))
    assert [one.plan for one in again.taken] == [one.plan for one in choice.taken]
    assert (again.views, again.sizes, again.title) == (choice.views, choice.sizes, "Two plans")


def test_only_what_is_not_so_anyway_is_written(session):
    view = view_of(session, "latch", "seam", dark=False, labels=False)
    listed = Choice().with_moment(session).with_view(view).listed
    text = dumps(listed)
    assert "ghost" not in text and "labels" not in text
    assert loads(text) == listed
