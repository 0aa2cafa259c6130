"""Pages a class is led through, and which display shows what."""

from types import SimpleNamespace

import pytest

from sim.plan import Ease, Plan, Spread
from sim.record import MoveRecord
from sim.units import Units
from ui.state.presenting import displays, page_at, plan_pages

PLAN = Plan(title="First bite", words="Tips on the lip.", moves=(Spread(), Ease()))


@pytest.fixture
def solved(frame):
    result = SimpleNamespace(sentence="The skin came away. Why.", plan_effect="spent")
    push = [frame(0.0), frame(0.0025), frame(0.005, events=("seam parting",)), frame(0.0075)]
    return (
        MoveRecord(tuple(push), result),
        MoveRecord((frame(0.0075), frame(0.0)), result),
    )


def test_pages_go_from_the_start_over_question_and_events_to_the_end(solved):
    pages = plan_pages(PLAN, solved, Units.METRIC, spoken=True)
    assert [(page.title, page.moment) for page in pages] == [
        ("First bite", 0),
        ("Move 1: Spread at the latch edge. What will happen?", 0),
        ("The seam parts: the skin comes off its edge, at 5\u00a0mm", 3),
        ("Move 1: Spread at the latch edge, its end", 4),
        ("Move 2: Let the tool off, its end", 6),
    ]
    assert [page.tells for page in pages] == [False, False, True, True, True]
    assert all(page.notes for page in pages)


def test_before_the_lock_no_page_tells_what_happens(solved):
    told = " ".join(
        f"{page.title} {page.words}" for page in plan_pages(PLAN, solved, Units.METRIC, spoken=False)
    )
    assert "seam" not in told
    assert "came away" not in told
    nothing = plan_pages(PLAN, (), Units.METRIC, spoken=True)
    assert [page.moment for page in nothing] == [0, 0, None]


def test_a_moment_belongs_to_the_page_before_the_next_one(solved):
    pages = plan_pages(PLAN, solved, Units.METRIC, spoken=True)
    assert [page_at(pages, position) for position in (0, 2, 3, 4, 5, 6)] == [0, 0, 2, 3, 3, 4]
    assert page_at((), 3) == 0


def test_the_teacher_keeps_the_own_display_and_the_class_gets_the_largest_other():
    laptop, projector, side = (0, 0, 1366, 768), (1366, 0, 1920, 1080), (3286, 0, 1024, 768)
    assert displays([laptop], 0) == (0, None)
    assert displays([laptop, projector], 0) == (1, 0)
    assert displays([projector, laptop], 1) == (0, 1)
    assert displays([side, laptop, projector], 1) == (2, 1)
