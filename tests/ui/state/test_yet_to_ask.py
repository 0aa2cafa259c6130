"""What a lesson has yet to ask is known and not told, before somebody runs it."""

from types import SimpleNamespace

import pytest

from sim.move_words import opened
from sim.plan import Car, Ease, Plan, Spread
from ui.state.answers import DoorReady, Ended
from ui.state.lesson import Step
from ui.state.locks import ANSWERS, ARROW, MAP
from ui.state.session import Session
from ui.state.yet_to_ask import YetToAsk

LIP = Plan(title="lip", moves=(Spread(opening_m=0.1), Ease()))
BEND = Plan(title="bend", moves=(Spread(opening_m=0.1, tilt_rad=0.3), Ease()))
STEPS = (
    Step(phase="show", title="Lip, at first", plan="lip"),
    Step(phase="show", title="What gives?", plan="lip", question="first"),
    Step(phase="show", title="The lip's end", plan="lip", moment="end"),
    Step(phase="show", title="And deeper?", plan="bend", question="second"),
    Step(phase="show", title="The bend's end", plan="bend", moment="end"),
)


class Lesson:
    """Stands in a lesson's place: its steps, and which one is shown."""

    def __init__(self):
        self.steps, self.position = STEPS, 0
        self.results = {"lip": SimpleNamespace(plan=LIP), "bend": SimpleNamespace(plan=BEND)}

    @property
    def step(self):
        return self.steps[self.position]

    @property
    def result(self):
        return self.results[self.step.plan]


@pytest.fixture
def class_room(frame, record):
    """Return session, lesson and what is yet to be asked; both plans are known from before."""
    session, lesson = Session(LIP), Lesson()
    asks, asked = YetToAsk(session, lesson), []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, Car(), SimpleNamespace(), frame()), Ended(asked[0].number)])
    for plan in (LIP, BEND):
        session.know(plan, [record((0.0, 0.01)), record((0.01,), move=1)])
    return SimpleNamespace(session=session, lesson=lesson, asks=asks)


def test_nothing_known_of_the_push_is_laid_out_or_told(class_room):
    session, lesson = class_room.session, class_room.lesson
    assert len(session.worked_out()) == 2
    assert (session.records(), session.record(0), len(session.timeline)) == ((), None, 1)
    assert session.hides(ARROW)
    assert session.hides(MAP)
    assert not session.hides(ANSWERS)  # nothing is shut: there is nothing to tell
    assert not class_room.asks.asks_now()
    lesson.position = 1
    assert class_room.asks.asks_now()
    session.show_again()
    assert len(session.timeline) == 1


def test_other_plans_that_make_the_same_push_are_kept_back_too(class_room):
    session = class_room.session
    session.document.commit(BEND, "Ready plan")
    assert (session.records(), len(session.timeline)) == ((), 1)
    session.document.undo()
    longer = Plan(title="another title", moves=(*LIP.moves, Spread()))
    assert class_room.asks.unasked(longer) == 0
    assert class_room.asks.unasked(LIP.with_move(0, opened(LIP.moves[0], 0.02))) is None
    assert session.records(longer) == ()


def test_who_runs_it_sees_it_and_the_next_question_still_waits(class_room):
    session, lesson = class_room.session, class_room.lesson
    lesson.position = 1
    session.run()
    assert len(session.records()) == 2
    assert session.timeline.move == 1
    assert session.records(BEND) == ()
    lesson.position = 3
    session.document.commit(BEND, "Lesson: And deeper?")
    assert session.records() == ()
    lesson.position = 4  # gone on: the step itself shows the end
    assert len(session.records()) == 2


def test_what_is_locked_may_be_seen_and_what_is_put_away_may_not(class_room):
    session, lesson = class_room.session, class_room.lesson
    lesson.position = 1
    session.asking.ask(LIP, 0, ())
    assert session.records() == ()
    session.asking.lock(None)
    assert len(session.records()) == 2
    assert session.records(BEND) == ()
    session.asking.end()
    assert session.records() == ()


def test_a_step_that_shows_its_end_before_a_later_question_means_to(class_room):
    lesson = class_room.lesson
    lesson.steps = (STEPS[2], STEPS[1])
    assert class_room.asks.unasked(LIP) is None
    lesson.position = 1
    assert class_room.asks.unasked(LIP) == 0


TWICE = Plan(title="twice", moves=(Spread(opening_m=0.1), Ease(), Spread(opening_m=0.2)))
TWICE_STEPS = (
    Step(phase="show", title="What gives?", plan="twice", move=1, question="first"),
    Step(phase="show", title="It gave", plan="twice", move=1, moment="end"),
    Step(phase="show", title="And again?", plan="twice", move=3, question="second"),
    Step(phase="show", title="The end", plan="twice", move=3, moment="end"),
)


@pytest.fixture
def twice(frame, record):
    """Return a class that is asked about two moves of one plan, all of it known from before."""
    session, lesson = Session(TWICE), Lesson()
    lesson.steps, lesson.results = TWICE_STEPS, {"twice": SimpleNamespace(plan=TWICE)}
    asks, asked = YetToAsk(session, lesson), []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, Car(), SimpleNamespace(), frame()), Ended(asked[0].number)])
    session.know(TWICE, [record((0.0, 0.01)), record((0.01,), move=1), record((0.0, 0.02), move=2)])
    return SimpleNamespace(session=session, lesson=lesson, asks=asks)


@pytest.mark.parametrize("way", ["run all", "run one", "lock"])
def test_of_a_plan_asked_about_twice_the_later_push_waits_for_its_own_question(twice, way):
    session, lesson = twice.session, twice.lesson
    assert session.records() == ()
    if way == "lock":
        session.asking.ask(TWICE, 0, ())
        assert session.records() == ()
        session.asking.lock(None)
        assert len(session.records()) == 2
        session.run()
        session.asking.end()
    else:
        session.run(0 if way == "run one" else None)
    assert len(session.records()) == 2
    assert session.record(2) is None
    assert session.timeline.last_of(2) is None
    lesson.position = 1  # the end of the first push is shown
    assert len(session.records()) == 2
    session.selection.select_move(0)
    assert not session.hides(ARROW)  # of the push that was seen
    session.selection.select_move(2)
    assert session.hides(ARROW)
    lesson.position = 2
    assert twice.asks.asks_now()
    assert len(session.records()) == 2
    session.asking.ask(TWICE, 2, ())
    assert len(session.records()) == 2
    session.asking.lock(None)
    assert len(session.records()) == 3


def test_a_push_behind_a_question_is_not_held_before_it_was_asked(twice):
    session = twice.session
    session.selection.select_move(2)
    twice.lesson.position = 0
    session.hold()  # the pushes before the question are run, and not its own
    assert (session.timeline.move, session.timeline.last_of(2)) == (1, None)
    assert twice.asks.push_begins(2) == 2  # its own question is the next one now
    twice.asks.seen.clear()
    assert twice.asks.push_begins(2) == 1
    twice.lesson.position = 2
    assert twice.asks.push_begins(2) == 2  # who runs what is asked now sees it
    assert len(session.records()) == 3
