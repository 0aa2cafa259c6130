"""A wreck before the plan: said to be unknown until it is known, watched like a move, and never mixed up."""

from types import SimpleNamespace

import msgspec
import pytest

from sim.plan import Car, Crush, Plan, Spread
from ui.state.answers import DoorReady, Ended, FoundReady, FramesReady
from ui.state.beside import put_on
from ui.state.describing import described
from ui.state.session import Session
from ui.state.solve_queue import Job
from ui.state.wreck_card import (
    AGAIN,
    BACK,
    NOT_WRECKED,
    WATCH,
    WORK_OUT,
    before_plan,
    wreck_card,
    wreck_words,
)

WRECK = (Crush(travel_m=0.1), Crush(shape="pole", travel_m=0.04))
PLAN = Plan(wreck=WRECK, moves=(Spread(opening_m=0.1),))
FOUND = SimpleNamespace(sentence=lambda: "The door's skin is in 60 mm at its deepest.")


@pytest.fixture
def sitting(frame):
    """Return a session whose plan has a wreck that is not known, and what it asked for."""
    session = Session(PLAN)
    asked = []
    session.asked.connect(asked.append)
    session.prepare()
    model = SimpleNamespace(structure=SimpleNamespace(sliders=()))
    session.take([DoorReady(asked[0].number, Car(), model, frame(gap_m=0.2)), Ended(asked[0].number)])
    return SimpleNamespace(session=session, asked=asked)


def found(number, frame, moves=True, plan=PLAN):
    """Return the answer that a wreck was worked out."""
    frames = ((frame(0.0, move=-2), frame(0.1, move=-2)), (frame(0.0, move=-1), frame(0.04, move=-1)))
    start = frame(gap_m=0.05)
    return FoundReady(number, plan.car, plan.past(0), start, FOUND, frames if moves else ())


def test_before_it_is_known_the_window_says_so_and_sets_no_tool_on_the_car(sitting):
    session = sitting.session
    card = wreck_card(session)
    assert "Not worked out yet" in card.outcome
    assert card.verb == WORK_OUT
    assert len(card.lines) == 2
    assert not session.start_is_known
    assert before_plan(session)
    assert wreck_words(session) == NOT_WRECKED
    assert NOT_WRECKED in described(session)
    assert not session.aiming
    assert not session.can_open
    session.hold()  # the key that opens the tips works the wreck out instead
    assert sitting.asked[-1].job is Job.FIND


def test_it_is_watched_as_it_is_worked_out_and_ends_with_the_start_of_the_plan(sitting, frame):
    session = sitting.session
    session.find()
    number = sitting.asked[-1].number
    line = session.timeline
    for move, opening in ((-2, 0.0), (-2, 0.05), (-2, 0.1), (-1, 0.0), (-1, 0.04)):
        session.take([FramesReady(number, move, (frame(opening, move=move),))])
        assert line.shows_wreck
        assert wreck_card(session).outcome.startswith("Pressed in")
    assert len(line) == 1 + 5
    session.take([found(number, frame), Ended(number)])
    assert line.at_end
    assert line.move == -1
    assert line.starts() == (1, 3, 5)
    assert session.start.clearance.distance_m == 0.05
    assert session.compared_with.clearance.distance_m == 0.2  # in the wreck: the car as it was built
    assert wreck_words(session).endswith("The door's skin is in 60 mm at its deepest.")
    assert wreck_card(session).verb == BACK
    assert session.result_here is None
    assert not session.can_go_on_from_here
    line.go(2)
    assert wreck_words(session) == "Pressing in: 100\u00a0mm."
    session.leave_wreck()
    assert not line.shows_wreck
    assert len(line) == 1
    assert session.timeline.frame is session.start
    assert session.compared_with is session.start
    assert session.aiming
    assert session.can_open
    assert wreck_words(session) == ""
    assert wreck_card(session).verb == WATCH
    session.watch_wreck()
    assert line.shows_wreck
    assert len(line) == 6  # the car before, two and two moments, the car as it was found


def test_the_plan_goes_on_from_what_was_found(sitting, frame, record):
    session = sitting.session
    session.run()
    request = sitting.asked[-1]
    assert request.job is Job.SOLVE
    session.take([FramesReady(request.number, -1, (frame(0.02, move=-1),))])
    assert session.timeline.shows_wreck
    session.take([found(request.number, frame)])
    session.take([FramesReady(request.number, 0, record([0.0, 0.01]).frames)])
    assert not session.timeline.shows_wreck
    assert session.timeline.starts() == (1,)
    assert len(session.timeline) == 3


def test_a_start_read_from_a_file_is_known_and_can_be_worked_out_again_to_be_watched(sitting, frame):
    session = sitting.session
    session.take([found(sitting.asked[0].number, frame, moves=False)])
    assert session.start_is_known
    card = wreck_card(session)
    assert card.verb == AGAIN
    session.watch_wreck()
    assert not session.timeline.shows_wreck
    session.find()
    assert sitting.asked[-1].job is Job.FIND


def test_another_wreck_is_another_start_and_nothing_is_carried_over(sitting, frame):
    session = sitting.session
    session.take([found(sitting.asked[0].number, frame)])
    asked = len(sitting.asked)
    other = msgspec.structs.replace(PLAN, wreck=WRECK[:1])
    session.document.commit(other, "Took a move out of the wreck")
    assert not session.start_is_known
    assert sitting.asked[-1].job is Job.PREPARE  # it may have been kept
    assert len(sitting.asked) == asked + 1
    session.document.undo()
    assert session.start_is_known
    assert put_on(Plan(moves=(Spread(opening_m=0.02),)), PLAN).wreck == WRECK


def test_a_kept_result_tells_the_start_where_the_wreck_itself_is_not_known(sitting, record):
    session = sitting.session
    session.know(PLAN, [record([0.0, 0.05, 0.1])])
    assert session.start_is_known
    assert session.start.opening_m == 0.0
    assert "Kept results" in wreck_card(session).outcome


def test_a_start_by_name_is_forgotten_with_the_file_it_was_read_beside(frame, record, tmp_path):
    plan = Plan(start="dented.npz", moves=(Spread(opening_m=0.1),))
    session = Session(plan)
    asked = []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(1, Car(), SimpleNamespace(), frame()), Ended(1)])
    session.take([found(1, frame, moves=False, plan=plan)])
    session.know(plan, [record([0.0, 0.1])])
    assert session.solved_count == 1
    assert wreck_card(session).lines == ("dented.npz",)
    assert not wreck_card(session).editable
    session.document.open(plan, tmp_path / "elsewhere" / "plan.toml")
    assert session.solved_count == 0
    assert not session.start_is_known
    assert asked[-1].file == tmp_path / "elsewhere" / "plan.toml"


def test_a_plan_without_a_wreck_has_no_such_card(sitting):
    session = sitting.session
    session.document.commit(msgspec.structs.replace(PLAN, wreck=()), "Took out what was before the plan")
    assert wreck_card(session) is None
    assert session.start_is_known
    assert wreck_words(session) == ""


def test_a_start_is_kept_beside_the_file_of_its_own_plan_alone(sitting, tmp_path):
    session, path = sitting.session, tmp_path / "plan.toml"
    assert not sitting.asked[-1].keeps  # nowhere filed
    session.document.mark_saved(path)
    assert (sitting.asked[-1].file, sitting.asked[-1].keeps) == (path, True)
    session.document.commit(msgspec.structs.replace(PLAN, wreck=WRECK[:1]), "Took a move out of the wreck")
    assert not sitting.asked[-1].keeps  # the file holds another wreck
    session.take([Ended(sitting.asked[-1].number)])
    session.document.mark_saved(path)
    assert sitting.asked[-1].keeps


def test_a_lessons_start_is_looked_for_beside_the_lessons_plan(sitting, tmp_path):
    session = sitting.session
    session.starts["dented.npz"] = tmp_path / "lessons" / "plan.toml"
    session.document.commit(Plan(start="dented.npz", moves=PLAN.moves), "Lesson: first step")
    assert sitting.asked[-1].file == tmp_path / "lessons" / "plan.toml"
