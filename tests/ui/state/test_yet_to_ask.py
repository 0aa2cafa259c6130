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
