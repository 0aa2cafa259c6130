"""Predict, lock, reveal with no window: nothing is seen before the lock, no run grades anybody."""

import tomllib
from datetime import UTC, datetime, timedelta
from types import SimpleNamespace

import pytest

from sim.many import GIVES
from sim.plan import Car, Crush, CutSpread, Ease, Plan, Press, Spread, Squeeze
from sim.record import Event, MoveRecord
from sim.units import Units
from ui.state import asking_file
from ui.state.answers import DoorReady, Ended, MoveReady
from ui.state.asking import Asking, Standing
from ui.state.cards import cards
from ui.state.locks import ANSWERS, ARROW, LADDER, LOCK_WORDS, MAP, SHUT, Locks, veiled
from ui.state.questions import FIRST, FIRST_WORDS, OWN, WAY, WHY, can_ask, competitors, questions
from ui.state.reading import read
from ui.state.session import Session
from ui.state.verdict import GIVING, compared, verdict

START = datetime(2026, 11, 26, 9, 0, 0, tzinfo=UTC)
LADDER_OF_A_DOOR = (
    ("latch", "latch free", 0.9),
    ("seam", "seam parting", 0.1),
    ("upper hinge", "hinge free", 0.2),
    ("lower hinge", "hinge free", 0.1),
)


def later(seconds):
    return START + timedelta(seconds=seconds)


def run_of(frame, events=(), *, moved_m=0.0, failed=0, effect="spent"):
    """Return the record of a push of 20 mm with events (kind, opening) and a way of the skin's middle."""
    frames = []
    for step in range(9):
        made = frame(0.0025 * step, ladder=LADDER_OF_A_DOOR)
        frames.append(made)
    object.__setattr__(frames[-1], "skin_mid_outboard_m", moved_m)
    told = tuple(Event(kind, kind.partition(" ")[0], at, 2000.0) for kind, at in events)
    result = SimpleNamespace(
        sentence="The metal bent, nothing let go. The tips were on the hem lip.",
        plan_effect=effect,
        events=told,
        seats=("hem lip", "pillar edge"),
        solver=SimpleNamespace(failed_count=failed),
    )
    return MoveRecord(tuple(frames), result)


@pytest.fixture
def asked(frame):
    """Return a prediction on a spread, its card open."""
    plan = Plan(moves=(Spread(),))
    kinds = competitors(frame(ladder=LADDER_OF_A_DOOR).ladder, plan.moves[0], wedged=False)
    found = Asking()
    found.ask(plan, 0, questions(kinds, plan.moves[0], Units.METRIC))
    return found


def answer(asking, first="latch free", way="out", why="inner"):
    asking.choose(FIRST, first)
    asking.choose(WAY, way)
    asking.choose(WHY, why)


class TestHands:
    def test_most_hands_choose_until_somebody_chooses_otherwise(self, asked):
        asked.count(FIRST, "latch free", 3)
        assert asked.now.chosen[FIRST] == "latch free"
        asked.count(FIRST, "seam parting", 9)
        assert asked.now.chosen[FIRST] == "seam parting"
        asked.count(FIRST, "latch free", 9)
        assert FIRST not in asked.now.chosen  # as many: somebody has to say
        asked.choose(FIRST, "hinge free")
        asked.count(FIRST, "latch free", 12)
        assert asked.now.chosen[FIRST] == "hinge free"

    def test_hands_after_a_choice_leave_it(self, asked):
        asked.choose(FIRST, "latch free")
        asked.count(FIRST, "seam parting", 9)
        assert asked.now.chosen[FIRST] == "latch free"


class TestQuestions:
    def test_choices_are_the_competitors_of_the_metal_and_in_no_order_of_nearness(self, frame):
        ladder = frame(ladder=LADDER_OF_A_DOOR).ladder
        spread = competitors(ladder, Spread(), wedged=False)
        assert set(spread) == {
            "latch free", "seam parting", "hinge free", "tip shearing through", "stalled", "nothing gave"
        }  # fmt: skip
        assert spread == competitors(tuple(reversed(ladder)), Spread(), wedged=False)
        assert list(spread) == [kind for kind in FIRST_WORDS if kind in spread]

    def test_what_has_let_go_already_is_not_offered(self, frame):
        ladder = [rung for rung in frame(ladder=LADDER_OF_A_DOOR).ladder if rung.event != "latch free"]
        assert "latch free" not in competitors(ladder, Squeeze(), wedged=False)
        assert "striker out" in competitors(ladder, Squeeze(), wedged=True)

    def test_every_part_that_can_give_has_its_words(self):
        assert set(GIVES) <= GIVING
        assert "stalled" not in competitors((), Crush(), wedged=False)
        wanted = ("seat slipping", "base giving", "stalled", "nothing gave")
        assert competitors((), Press(), wedged=False) == wanted
        ends = competitors((), CutSpread(), wedged=False)
        assert ends == ("base giving", "stalled", "nothing gave")  # the stub above a cut may give first

    def test_nothing_is_asked_of_letting_off(self):
        assert not can_ask(Ease())
        assert not can_ask(None)
        assert can_ask(Spread())


class TestLock:
    def test_every_question_needs_a_choice_and_the_reason_too(self, asked):
        assert not asked.lock(START)
        asked.choose(FIRST, "latch free")
        asked.choose(WAY, "out")
        assert "reason" in asked.missing
        assert not asked.lock(START)
        asked.choose(WHY, OWN)
        assert asked.missing == "Write the reason down in a few words."
        asked.write("the bend is stiff")
        assert asked.lock(START)
        assert asked.standing is Standing.LOCKED

    def test_nothing_can_be_changed_after_it(self, asked):
        answer(asked)
        asked.count(FIRST, "latch free", 12)
        asked.lock(START)
        before = asked.now
        asked.choose(FIRST, "seam parting")
        asked.count(FIRST, "latch free", 1)
        asked.write("something else")
        assert asked.now is before

    def test_it_is_compared_only_once_it_was_run_and_the_times_are_in_order(self, asked, frame):
        found = verdict(run_of(frame, [("seam parting", 0.01)]))
        answer(asked)
        assert not asked.show(found, later(1))
        asked.lock(later(2))
        assert not asked.show(found, later(3))
        asked.run(later(4))
        asked.run(later(9))
        assert asked.show(found, later(5))
        now = asked.now
        assert (now.locked_at, now.ran_at, now.shown_at) == (later(2), later(4), later(5))

    def test_a_clock_set_back_puts_no_run_before_its_prediction(self, asked):
        answer(asked)
        asked.lock(later(10))
        asked.run(later(3))
        assert asked.now.ran_at == later(10)

    def test_asking_again_of_another_plan_keeps_only_what_is_still_offered(self, asked):
        answer(asked)
        asked.count(FIRST, "latch free", 3)
        plan = Plan(moves=(Squeeze(),))
        asked.ask(plan, 0, questions(("seam parting", "nothing gave"), plan.moves[0], Units.METRIC))
        assert asked.now.chosen == {WAY: "out"}
        assert asked.now.hands == {}

    def test_it_is_about_the_plan_however_far_the_tips_go(self, asked):
        assert asked.about(Plan(moves=(Spread(opening_m=0.02),)))
        assert not asked.about(Plan(moves=(Spread(opening_m=0.02, tilt_rad=0.1),)))
        assert not asked.about(Plan(car=Car(seam="welded"), moves=(Spread(),)))


class TestVerdict:
    @pytest.mark.parametrize(
        ("events", "moved_m", "first", "way"),
        [
            ((("tip slipping", 0.0025), ("seam parting", 0.01)), 0.0, ("seam parting",), "stays"),
            ((("latch free", 0.01), ("seam parting", 0.01)), 0.02, ("latch free", "seam parting"), "out"),
            ((("stalled", 0.01),), -0.02, ("stalled",), "in"),
            ((), 0.0, ("nothing gave",), "stays"),
        ],
    )
    def test_what_came_is_read_from_the_run(self, frame, events, moved_m, first, way):
        found = verdict(run_of(frame, events, moved_m=moved_m))
        assert (found.first, found.way, found.settled) == (first, way, True)
        assert all(found.holds(FIRST, key) for key in first)
        assert not found.holds(FIRST, "hinge free")

    @pytest.mark.parametrize("how", [{"failed": 1}, {"effect": "not settled"}])
    def test_a_run_that_is_not_settled_is_never_compared(self, asked, frame, how):
        record = run_of(frame, [("latch free", 0.01)], **how)
        answer(asked)
        asked.count(FIRST, "latch free", 7)
        asked.lock(START)
        asked.run(later(1))
        asked.show(verdict(record), later(2))
        found = compared(asked.now, asked.questions, record, Units.METRIC)
        assert [line.agrees for line in found.lines] == [None, None, None]
        assert "not counted" in found.note
        assert found.near == ""
        text = asking_file.written("", asked.now, asked.questions)
        assert "as_foretold" not in text

    def test_an_earlier_move_that_is_not_settled_unsettles_it_too(self, frame):
        good, bad = run_of(frame), run_of(frame, failed=2)
        assert verdict(good, [good]).settled
        assert not verdict(good, [bad]).settled

    def test_the_words_grade_nobody_and_say_how_near_it_was(self, asked, frame):
        record = run_of(frame, [("seam parting", 0.01)])
        answer(asked)
        asked.count(FIRST, "seam parting", 3)
        asked.count(FIRST, "latch free", 9)
        asked.lock(START)
        asked.run(later(1))
        asked.show(verdict(record), later(2))
        found = compared(asked.now, asked.questions, record, Units.METRIC)
        told = " ".join(
            [found.sentence, found.near, found.note, *(f"{x.word} {x.hands}" for x in found.lines)]
        )
        for word in ("wrong", "right", "correct", "fail", "score", "mistake", "!"):
            assert word not in told.lower()
        assert found.lines[0].agrees is False
        assert found.lines[0].hands == "3 of 12 hands were for what happened"
        assert found.lines[2].agrees is None
        assert "the latch carried at most 90% of what it can hold" in found.near


class TestNothingIsSeenBeforeTheLock:
    @pytest.fixture
    def session(self, frame):
        """Return a session whose push has been worked out before the card is opened."""
        session = Session(Plan(moves=(Spread(), Ease())))
        requests = []
        session.asked.connect(requests.append)
        session.prepare()
        start = frame(ladder=LADDER_OF_A_DOOR)
        model = SimpleNamespace(structure=SimpleNamespace(sliders=()))
        session.take([DoorReady(requests[0].number, Car(), model, start), Ended(requests[0].number)])
        session.run()
        number = requests[-1].number
        first = run_of(frame, [("seam parting", 0.01)])
        session.take([MoveReady(number, k, session.plan, first) for k in (0, 1)] + [Ended(number)])
        assert len(session.timeline) == 1 + 2 * 9
        kinds = competitors(start.ladder, session.move, wedged=False)
        session.asking.ask(session.plan, 0, questions(kinds, session.move, Units.METRIC))
        session.show_again()
        return session

    def test_no_moment_no_record_no_word_of_a_run_in_store(self, session):
        assert len(session.timeline) == 1
        assert session.timeline.marks == ()
        session.timeline.go(5)
        assert session.timeline.position == 0
        assert session.record(0) is None
        assert session.record(1) is None
        assert session.result_here is None
        assert [card.outcome for card in cards(session)] == ["", ""]
        assert all(session.hides(what) for what in LOCK_WORDS)

    def test_nothing_can_be_run(self, session):
        requests = []
        session.asked.connect(requests.append)
        session.run()
        session.hold()
        session.run_selected_to(0.01)
        session.go_on_from_here()
        assert requests == []
        assert not session.can_open

    def test_after_the_lock_the_metal_is_seen_and_its_words_only_after_the_comparison(self, session):
        answer(session.asking)
        session.asking.lock(START)
        session.show_again(before=0)
        assert session.timeline.position == 0
        assert len(session.timeline) == 1 + 2 * 9
        assert session.hides(ANSWERS)
        assert all("kept shut" in card.outcome for card in cards(session))
        session.asking.run(later(1))
        session.asking.show(verdict(session.record(0)), later(2))
        assert not session.hides(ANSWERS)
        assert "kept shut" not in cards(session)[0].outcome


class TestFile:
    def test_it_reads_back_with_the_prediction_before_the_run(self, asked, frame, tmp_path):
        path = asking_file.path_beside(tmp_path / "door.toml", tmp_path / "settings")
        assert path == tmp_path / "door.predictions.toml"
        answer(asked, why=OWN)
        asked.write('the hem is "folded"')
        asked.count(FIRST, "latch free", 12)
        asked.lock(later(1))
        asking_file.keep(path, asked.now, asked.questions)
        asked.run(later(2))
        asked.show(verdict(run_of(frame, [("latch free", 0.01)])), later(3))
        asking_file.keep(path, asked.now, asked.questions)
        (row,) = asking_file.load(path)
        assert row["locked_at"] < row["ran_at"] < row["shown_at"]
        assert row["why"] == 'the hem is "folded"'
        assert row["first_hands"] == {FIRST_WORDS["latch free"]: 12}
        assert row["first_as_foretold"] is True
        assert row["way_as_foretold"] is False
        assert path.read_text().startswith("# Predictions made with Hemline")

    def test_nothing_is_written_into_the_programs_own_folder(self, tmp_path):
        own, folder = tmp_path / "assets", tmp_path / "settings"
        lesson = own / "lessons" / "first-bite.toml"
        name = "first-bite.predictions.toml"
        assert asking_file.path_beside(lesson, folder, own=own) == folder / name
        assert asking_file.path_beside(lesson, folder) == lesson.with_name(name)
        assert asking_file.path_beside(None, folder, own=own) == folder / "unsaved.predictions.toml"

    def test_predictions_are_added_and_none_is_lost(self, asked, tmp_path):
        path = tmp_path / "door.predictions.toml"
        for second in (1, 2, 3):
            asked.ask(asked.now.plan, 0, asked.questions)
            answer(asked)
            asked.lock(later(second))
            asking_file.keep(path, asked.now, asked.questions)
        assert [row["locked_at"] for row in asking_file.load(path)] == [later(1), later(2), later(3)]

    def test_a_file_that_is_something_else_is_put_aside_and_kept(self, asked, tmp_path):
        path = tmp_path / "door.predictions.toml"
        path.write_text("my own notes\n")
        answer(asked)
        asked.lock(START)
        asking_file.keep(path, asked.now, asked.questions)
        assert len(asking_file.load(path)) == 1
        assert (tmp_path / "door.predictions.toml.old1").read_text() == "my own notes\n"
        assert tomllib.loads(path.read_text())["prediction"][0]["move"] == 1


class TestLocks:
    def test_all_at_once_and_one_by_one(self):
        locks = Locks()
        locks.turn_all()
        assert locks.shut == set(LOCK_WORDS)
        locks.turn(MAP)
        assert MAP not in locks.shut
        locks.turn_all()
        assert locks.shut == frozenset()
        with pytest.raises(KeyError):
            locks.turn("window")

    def test_a_veiled_reading_tells_nothing_the_clearance_neither(self, frame):
        session = Session()
        made = frame(
            0.01, force_n=2000.0, ladder=LADDER_OF_A_DOOR, ledger={"work of the tips": 3.0, "tear": 2.0}
        )
        session.timeline.show(frame(), [[frame(), made]])
        full = read(session.timeline, None, "The seam is opening.", frame())
        assert full.rungs
        assert full.shares
        shut = veiled(full, answers=True, ladder=True, arrow=False, aiming=False)
        assert shut.sentence == SHUT
        assert (shut.rungs, shut.shares, shut.curve, shut.marks, shut.work_j) == ((), (), (), (), 0.0)
        assert full.clearance is not None and shut.clearance is None
        aim = veiled(full, answers=True, ladder=False, arrow=False, aiming=True)
        assert aim.sentence == full.sentence
        assert veiled(full, answers=False, ladder=False, arrow=True, aiming=True).sentence == SHUT
        assert {ANSWERS, LADDER, ARROW, MAP} == set(LOCK_WORDS)
