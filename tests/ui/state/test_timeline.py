"""Moments in one row: positions, events, and a plan cut at the moment shown."""

from sim.move_words import opening_of
from sim.plan import Plan, Spread
from ui.state.timeline import Timeline, cut_here


def laid_out(frame):
    line = Timeline()
    first = [frame(0.0025 * i, events=("seam parting",) if i == 2 else ()) for i in range(4)]
    second = [frame(0.0025 * i, move=1, events=("latch free",) if i == 1 else ()) for i in range(3)]
    line.show(frame(), [first, second])
    return line


def test_the_last_moment_is_shown_first(frame):
    line = laid_out(frame)
    assert len(line) == 8
    assert line.at_end
    assert line.move == 1
    assert line.starts() == (1, 5)
    assert [(mark.position, mark.event.kind) for mark in line.marks] == [
        (3, "seam parting"),
        (6, "latch free"),
    ]


def test_positions_are_kept_within_the_row(frame):
    line, moved = laid_out(frame), []
    line.moved.connect(lambda: moved.append(line.position))
    line.go(99)
    line.go(-5)
    line.go(0)
    assert moved == [0]
    assert line.move == -1


def test_events_are_stepped_through(frame):
    line = laid_out(frame)
    line.go(0)
    seen = []
    for _ in range(4):
        line.go_to_mark(+1)
        seen.append(line.position)
    assert seen == [3, 6, 7, 7]
    line.go_to_mark(-1)
    assert line.position == 6


def test_a_plan_is_cut_at_the_moment_shown(frame):
    line = laid_out(frame)
    plan = Plan(moves=(Spread(opening_m=0.0075), Spread(opening_m=0.005)))
    line.go(3)
    cut = cut_here(plan, line)
    assert [opening_of(move) for move in cut.moves] == [0.005]
    line.go(4)
    assert cut_here(plan, line).moves == plan.moves[:1]
    line.go(7)
    assert cut_here(plan, line) == plan
    line.go(0)
    assert cut_here(plan, line) == plan


def test_an_empty_row_has_no_moment():
    line = Timeline()
    line.go(3)
    line.go_to_mark(1)
    assert line.frame is None
    assert line.position == 0
    assert line.marks == ()
