"""The sitting as a whole: what is asked of the worker, and what its answers do to plan and moments."""

from types import SimpleNamespace

import pytest

from sim.move_words import opened
from sim.plan import Car, Ease, EdgePoint, Plan, Spread
from ui.state.answers import DoorReady, Ended, FramesReady, MoveReady, Refused, Stopped
from ui.state.session import AT_ITS_END, Session
from ui.state.solve_queue import Job

STEP = 0.0025


@pytest.fixture
def sitting(frame):
    """Return a session with one spread, its door set out, and the requests it has asked for."""
    session = Session(Plan(moves=(Spread(opening_m=0.1),)))
    asked = []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, Car(), SimpleNamespace(), frame()), Ended(asked[0].number)])
    return SimpleNamespace(session=session, asked=asked)


def push(sitting, record, count):
    """Hold the tips over some steps and let go; return the request."""
    session = sitting.session
    session.hold()
    request = sitting.asked[-1]
    found = record([STEP * i for i in range(count + 1)])
    for item in found.frames:
        session.take([FramesReady(request.number, request.last, (item,))])
    session.let_go()
    move = opened(session.plan.moves[request.last], found.frames[-1].opening_m)
    plan = session.plan.with_move(request.last, move)
    session.take([MoveReady(request.number, request.last, plan, found), Ended(request.number, 1.0)])
    return request


def test_letting_the_tool_off_has_no_opening(sitting, record):
    """However it is asked for, by the held key or by the number beside, the plan stays as it is."""
    session = sitting.session
    push(sitting, record, 2)
    session.document.commit(session.plan.with_move(1, Ease()), "Added: let the tool off")
    session.selection.select_move(1)
    plan = session.plan
    for wish in (session.hold, lambda: session.run_selected_to(0.003)):
        wish()
        assert sitting.asked[-1].job is Job.SOLVE
        assert (sitting.asked[-1].first, sitting.asked[-1].last) == (1, 1)
        assert session.plan == plan
        session.stop()


def test_the_door_is_asked_for_once(sitting):
    assert [request.job for request in sitting.asked] == [Job.PREPARE]
    sitting.session.prepare()
    assert len(sitting.asked) == 1
    assert sitting.session.can_open
    assert len(sitting.session.timeline) == 1


def test_holding_and_letting_go_commits_the_opening_reached(sitting, record):
    session = sitting.session
    request = push(sitting, record, 4)
    assert request.job is Job.PUSH
    assert session.plan.moves[0].opening_m == pytest.approx(4 * STEP, abs=1e-12)
    assert session.document.history.undo_label == "Opened the tips to 10\u00a0mm"
    assert session.timeline.at_end
    assert len(session.timeline) == 1 + 5
    assert session.result_here.sentence == "The metal bent."
    assert not session.queue.busy


def test_a_push_let_go_early_is_still_meant_to_go_as_far(sitting, record):
    session = sitting.session
    push(sitting, record, 2)
    assert session.plan.moves[0].opening_m == pytest.approx(2 * STEP)
    assert session.wanted_opening_m == 0.1
    session.change_move(Spread(opening_m=2 * STEP, door=EdgePoint(depth_m=0.05)), "Depth 50 mm")
    assert session.plan.moves[0].opening_m == 0.1
    session.run_selected_to(0.03)
    assert session.wanted_opening_m == 0.03


def test_what_stands_where_it_was_let_go_has_further_to_go(sitting, record):
    session = sitting.session
    push(sitting, record, 3)
    assert session.stands_let_go
    session.timeline.go(1)
    assert not session.stands_let_go
    session.run_selected_to(session.wanted_opening_m)
    request = sitting.asked[-1]
    whole = record([0.0, 0.1])
    session.take([MoveReady(request.number, 0, session.plan, whole), Ended(request.number, 1.0)])
    assert session.timeline.at_end
    assert not session.stands_let_go


def test_running_what_stands_at_its_end_says_so(sitting, record):
    session, said = sitting.session, []
    session.said.connect(lambda words, _: said.append(words))
    push(sitting, record, 2)
    session.run()
    assert said == [AT_ITS_END]
    session.timeline.go(0)
    session.run()
    assert said == [AT_ITS_END] and session.timeline.at_end


def test_undo_brings_back_the_plan_and_redo_finds_the_record_without_solving(sitting, record):
    session = sitting.session
    push(sitting, record, 4)
    asked = len(sitting.asked)
    session.document.undo()
    assert session.plan.moves[0].opening_m == 0.1
    assert session.solved_count == 0
    assert len(session.timeline) == 1
    session.document.redo()
    assert session.solved_count == 1
    assert len(sitting.asked) == asked


def test_going_on_shows_no_moment_twice(sitting, record):
    session = sitting.session
    push(sitting, record, 3)
    session.hold()
    request = sitting.asked[-1]
    assert request.shown_from_m == pytest.approx(3 * STEP, abs=1e-12)
    for item in record([STEP * i for i in range(6)]).frames:
        session.take([FramesReady(request.number, 0, (item,))])
    openings = [item.opening_m for item in session.timeline.frames_of(0)]
    assert openings == pytest.approx([STEP * i for i in range(6)], abs=1e-12)


def test_holding_after_scrubbing_back_goes_on_from_the_moment_shown(sitting, record):
    session = sitting.session
    push(sitting, record, 6)
    session.timeline.go(3)
    session.hold()
    assert sitting.asked[-1].shown_from_m == pytest.approx(2 * STEP, abs=1e-12)
    assert len(session.timeline) == 4


def test_stale_answers_change_nothing(sitting, record):
    session = sitting.session
    session.hold()
    old = sitting.asked[-1].number
    session.stop()
    session.hold()
    before = len(session.timeline)
    session.take(
        [FramesReady(old, 0, record([0.01]).frames), MoveReady(old, 0, session.plan, record([0.01]))]
    )
    session.take([Ended(old), Stopped(old), Refused(old, "no")])
    assert len(session.timeline) == before
    assert session.queue.busy


def test_a_door_that_comes_late_is_kept_for_its_car(sitting, frame):
    session = sitting.session
    welded = Car(seam="welded")
    session.document.commit(session.plan.with_car(welded), "welded")
    number = sitting.asked[-1].number
    session.document.undo()
    session.take([DoorReady(number, welded, SimpleNamespace(), frame())])
    session.document.redo()
    assert session.model is not None
    assert session.can_open


def test_stop_keeps_the_moments_shown_and_commits_nothing(sitting, record):
    session, dropped = sitting.session, []
    session.dropped.connect(lambda: dropped.append(True))
    session.hold()
    number = sitting.asked[-1].number
    session.take([FramesReady(number, 0, record([0.0, STEP]).frames)])
    session.stop()
    assert dropped == [True]
    assert len(session.timeline) == 3
    assert not session.document.history.can_undo


def test_a_refusal_is_told_in_a_sentence_and_nothing_is_lost(sitting):
    session, told = sitting.session, []
    session.said.connect(lambda sentence, report: told.append((sentence, report)))
    plan = session.plan
    session.run()
    session.take([Refused(sitting.asked[-1].number, "The tip is in the air.", "")])
    assert told == [("The tip is in the air.", "")]
    assert session.plan == plan
    assert session.can_open


def test_moving_a_tip_drops_its_moments_and_those_after(sitting, record):
    session = sitting.session
    push(sitting, record, 4)
    session.change_move(Spread(door=EdgePoint(depth_m=0.05)), "deeper")
    assert session.solved_count == 0
    assert len(session.timeline) == 1
    assert session.aiming


def test_changing_the_plan_while_it_is_worked_out_gives_that_up(sitting):
    session, dropped = sitting.session, []
    session.dropped.connect(lambda: dropped.append(True))
    session.run()
    session.change_move(Spread(door=EdgePoint(depth_m=0.05)), "deeper")
    assert dropped == [True]
    assert not session.queue.busy


def test_another_car_is_run_again_once_its_door_stands(sitting, record, frame):
    session = sitting.session
    push(sitting, record, 4)
    welded = Car(seam="welded")
    session.change_car(welded, "Changed the seam")
    assert sitting.asked[-1].job is Job.PREPARE
    assert not session.runs  # metal that is set out is no run that could be stopped
    number = sitting.asked[-1].number
    session.take([DoorReady(number, welded, SimpleNamespace(), frame()), Ended(number)])
    assert sitting.asked[-1].job is Job.SOLVE
    assert session.runs
    assert sitting.asked[-1].plan.car == welded


def test_going_on_from_here_cuts_the_move_and_runs_it(sitting, record):
    session = sitting.session
    push(sitting, record, 6)
    session.timeline.go(3)
    assert session.can_go_on_from_here
    session.go_on_from_here()
    assert session.plan.moves[0].opening_m == pytest.approx(2 * STEP, abs=1e-12)
    assert sitting.asked[-1].job is Job.SOLVE


def test_going_on_after_the_first_move_drops_the_second_without_solving(sitting, record):
    session = sitting.session
    push(sitting, record, 2)
    session.document.commit(session.plan.with_move(1, Ease()), "let off")
    asked = len(sitting.asked)
    session.timeline.go(len(session.timeline))
    session.go_on_from_here()
    assert len(session.plan.moves) == 1
    assert len(sitting.asked) == asked


def test_letting_the_tool_off_cannot_be_held(sitting):
    session = sitting.session
    session.document.commit(Plan(moves=(Ease(),)), "ease")
    assert not session.can_open
    assert not session.aiming
