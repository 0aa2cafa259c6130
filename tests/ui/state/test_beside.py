"""Two plans side by side with no window: same start or a reason, one clock, exact differences."""

from types import SimpleNamespace

import msgspec
import pytest

from sim.plan import Car, Ease, EdgePoint, Plan, Spread, Tool
from sim.units import Units
from ui.state.answers import DoorReady, Ended, FramesReady, MoveReady
from ui.state.beside import Beside, put_on, refusal, row_of, shared_moves, start_sha256
from ui.state.contrast import contrast
from ui.state.pair_words import pair_words
from ui.state.session import Session

STEP = 0.0025
EDGE = Plan(title="lip", moves=(Spread(opening_m=0.01),))
BEND = Plan(title="bend", moves=(Spread(door=EdgePoint(depth_m=0.12), opening_m=0.01),))


class Metal:
    """A state of metal that is known by its hash alone."""

    def __init__(self, name):
        self.name = name

    def sha256(self):
        return self.name


class TestStart:
    def test_the_same_car_and_state_hash_alike_whatever_the_car_is_called(self):
        here = start_sha256(Car(), Metal("a"))
        assert here == start_sha256(Car(name="another name"), Metal("a"))
        assert here != start_sha256(Car(), Metal("b"))
        # two metals on one shape: the untouched states are equal, the cars are not
        assert here != start_sha256(Car(metal="alloy"), Metal("a"))

    def test_moves_stand_for_a_state_that_is_not_at_hand(self):
        after = start_sha256(Car(), None, EDGE.moves)
        assert after == start_sha256(Car(), None, EDGE.moves)
        assert after != start_sha256(Car(), None, BEND.moves)

    def test_another_start_is_refused_with_what_differs(self):
        other = Plan(car=Car(seam="welded", bar=False), moves=EDGE.moves)
        words = refusal(EDGE, other, start_sha256(EDGE.car, Metal("a")), start_sha256(other.car, Metal("a")))
        assert "same metal" in words
        assert "seam bonded against welded" in words
        assert "bar yes against no" in words
        assert "Put the other plan's moves on this car" in words

    def test_the_same_start_is_let_and_the_same_plan_is_not(self):
        assert refusal(EDGE, BEND, "x", "x") == ""
        assert "same plan" in refusal(EDGE, EDGE, "x", "x")

    def test_put_on_this_car_a_single_push_goes_as_far(self):
        other = Plan(car=Car(seam="welded"), moves=(Spread(tilt_rad=0.1, opening_m=0.05),))
        assert put_on(other, EDGE).car == EDGE.car
        assert put_on(other, EDGE).moves[0] == Spread(tilt_rad=0.1, opening_m=0.01)

    def test_moves_in_common(self):
        more = Plan(moves=(*EDGE.moves, Ease(), Spread()))
        assert shared_moves(EDGE, more) == 1
        assert shared_moves(EDGE, BEND) == 0


class TestClock:
    @pytest.fixture
    def pair(self, frame, record):
        """Return a pair: four steps that part at the second, against two steps of another length."""
        first = record([0.0, STEP, 2 * STEP, 3 * STEP, 4 * STEP])
        second = record([0.0, 0.004, 0.008])
        object.__setattr__(first.frames[2], "events", frame(2 * STEP, events=("seam parting",)).events)
        beside = Beside()
        beside.show(BEND, "hash")
        beside.lay_out(row_of(frame(), [first]), row_of(frame(), [second]))
        return beside

    def test_it_ticks_through_every_moment_of_both_and_each_shows_its_last_before(self, pair):
        openings = []
        for tick in range(len(pair)):
            pair.go(tick)
            openings.append((pair.frame(0).opening_m, pair.frame(1).opening_m))
        assert openings == [
            (0, 0), (0, 0), (STEP, 0), (STEP, 0.004), (2 * STEP, 0.004), (3 * STEP, 0.004),
            (3 * STEP, 0.008), (4 * STEP, 0.008),
        ]  # fmt: skip
        assert pair.ended(1)
        assert pair.at_end

    def test_it_goes_to_the_events_of_both_and_says_whose_they_are(self, pair):
        pair.go(0)
        pair.go_to_mark(1)
        assert pair.frame(0).opening_m == 2 * STEP
        assert [mark.event.kind for mark in pair.marks] == ["left: seam parting"]

    def test_more_moments_do_not_turn_the_clock(self, pair, frame, record):
        pair.go(3)
        longer = record([0.0, 0.004, 0.008, 0.012])
        pair.lay_out(pair.rows[0], row_of(frame(), [longer]))
        assert (pair.frame(0).opening_m, pair.frame(1).opening_m) == (STEP, 0.004)

    def test_a_tool_let_off_counts_on_behind_its_push(self, frame, record):
        row = row_of(frame(), [record([0.0, STEP]), record([STEP, 0.0], move=1)])
        assert list(row.ticks) == sorted(row.ticks)
        assert [tick[0] for tick in row.ticks] == [-1, 0, 0, 1, 1]
        assert len(set(row.ticks)) == 5


class TestWords:
    def test_the_differences_are_exactly_the_changed_fields(self, frame):
        beside = Beside()
        other = msgspec.structs.replace(BEND, words="deep")
        beside.show(other, "0123456789")
        beside.lay_out(row_of(frame(), []), row_of(frame(), []))
        words = pair_words(EDGE, beside, ((), ()), 0, Units.METRIC, False)
        assert words.heading == "One thing differs"
        assert [(row.words, row.first, row.second) for row in words.rows] == [
            ("move 1, tip on the door: depth from the lip", "5 mm", "120 mm")
        ]
        assert words.in_words == "In words alone: title, words."
        assert words.can_run

    def test_what_happened_stays_shut(self, frame, record):
        beside = Beside()
        beside.show(BEND, "0123456789")
        both = (record([0.0, STEP], sentence="It let go."), record([0.0, STEP], sentence="It bent."))
        beside.lay_out(row_of(frame(), [both[0]]), row_of(frame(), [both[1]]))
        told = pair_words(EDGE, beside, ((both[0],), (both[1],)), 0, Units.METRIC, False)
        assert told.sentences == ("It let go.", "It bent.")
        shut = pair_words(EDGE, beside, ((both[0],), (both[1],)), 0, Units.METRIC, True)
        assert "It" not in shut.sentences[0] + shut.sentences[1]


def test_a_plan_is_worked_out_aside_and_changes_nothing_that_is_shown(frame, record):
    session = Session(EDGE)
    asked = []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, Car(), SimpleNamespace(), frame()), Ended(asked[0].number)])
    session.beside.show(BEND, "hash")
    session.run_aside(BEND)
    request = asked[-1]
    assert request.aside
    assert session.busy_words == "Working out the plan beside"
    assert session.works_aside
    found = record([0.0, STEP])
    session.take([FramesReady(request.number, 0, found.frames)])
    session.take([MoveReady(request.number, 0, BEND, found), Ended(request.number)])
    assert len(session.timeline) == 1
    assert session.records() == ()
    assert session.records(BEND) == (found,)
    assert not session.works_aside
    session.run_aside(BEND)
    assert asked[-1] is request
    # taken away while it is worked out, it is given up
    other = Plan(moves=(Spread(tilt_rad=0.2),))
    session.beside.show(other, "hash")
    session.run_aside(other)
    session.beside.show(None)
    session.document.commit(Plan(moves=(Spread(tilt_rad=0.3),)), "Tilt")
    assert not session.queue.busy


def test_a_tools_curve_is_told_by_its_ends():
    first = Plan(moves=(Spread(),))
    other = Plan(moves=(Spread(tool=Tool(opening_m=tuple(0.5 * x for x in Tool().opening_m))),))
    (row,) = contrast(first, other, Units.METRIC).rows
    assert row.first.replace("\u00a0", " ") == "from 0 mm to 660 mm"
    assert row.second.replace("\u00a0", " ") == "from 0 mm to 330 mm"
