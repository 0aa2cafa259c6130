"""Figures in texts, keys of questions, practice, and the walk through a lesson."""

import dataclasses

import msgspec
import pytest

from sim.many import NOTHING_GAVE
from sim.units import Units
from tests.ui.state.lesson_tools import LESSON, move, result
from ui.state.bank import SAME, key_of, outcome
from ui.state.lesson import Debrief, Expected, Question
from ui.state.lesson_check import changes, expectation
from ui.state.lesson_file import loads_lesson
from ui.state.lesson_results import NOT_YET, PlanResult, filled, lesson_filled, moment_at, stale_words
from ui.state.lesson_walk import LessonWalk
from ui.state.practice import SCORED_LINE, Mode, Practice, items_of

LIP = Question("lip-first", "What?", "lip")


class TestFigures:
    def test_a_figure_is_put_in_with_its_unit(self):
        text = filled("{lip.first} at {lip.first_opening}, {lip.peak_force}", {"lip": result()})
        assert text.replace("\u00a0", " ") == "the seam at 10 mm, 4.0 kN"

    def test_units_are_the_readers(self):
        assert "lbf" in filled("{lip.peak_force}", {"lip": result()}, Units.IMPERIAL)

    def test_what_is_not_solved_says_so(self):
        empty = PlanResult("lip", "lip", result().plan, None, "not yet", result().folder)
        assert filled("{lip.torn}", {"lip": empty}) == NOT_YET

    def test_a_whole_lesson_is_filled(self):
        lesson = lesson_filled(loads_lesson(LESSON), {"lip": result(), "bend": result("bend")})
        assert lesson.steps[0].words.startswith("First: the seam at 10")

    def test_stale_results_are_told_in_one_sentence(self):
        assert stale_words([result()]) == ""
        said = stale_words([result(why_stale="One is old; run it."), result("bend", why_stale="x")])
        assert said.startswith("Plan lip, Plan bend: ") and said.count(". ") == 0


class TestKeys:
    def test_the_key_is_the_runs_own_result(self):
        for first in ("seam parting", "latch free", NOTHING_GAVE):
            key = key_of(LIP, {"lip": result(told=move(first))})
            assert (key.outcome, key.settled) == (first, True)

    @pytest.mark.parametrize(
        ("changed", "why"),
        [
            ({"told": move(settled=False)}, "did not come to rest"),
            ({"told": move(margin_ratio=0.1)}, "nearly as close"),
            ({"beside": (("a coarser lattice", move("latch free")),)}, "a coarser lattice it comes out"),
            ({"beside": ()}, "has not been run beside"),
            ({"beside": (("10 mm to one side", move()),)}, "not been run on another lattice"),
            ({"why_stale": "It is old."}, "It is old."),
        ],
    )
    def test_what_is_not_settled_is_never_graded(self, changed, why):
        key = key_of(LIP, {"lip": result(**changed)})
        assert not key.settled
        assert why in key.why_not
        assert key.difficulty == "not settled"

    def test_a_neighbour_that_was_not_run_as_far_settles_only_what_gives_first(self):
        short = {"lip": result(beside=(("a coarser lattice", move(opening_m=0.02)),))}
        assert key_of(LIP, short).settled
        tears = key_of(Question("tears", "?", "lip", asks="tears"), short)
        assert not tears.settled and "not run as far" in tears.why_not

    def test_a_neighbour_in_which_the_move_could_not_be_made_settles_nothing(self):
        lip = result()
        beside = tuple(msgspec.structs.replace(n, moves=()) for n in lip.kept.neighbours)
        kept = msgspec.structs.replace(lip.kept, neighbours=beside)
        key = key_of(LIP, {"lip": dataclasses.replace(lip, kept=kept)})
        assert not key.settled and "could not be made" in key.why_not

    @pytest.mark.parametrize(
        ("angles", "way"),
        [((0.36, 0.07), "in line"), ((0.38, 0.56), "out of line"), ((0.2, 0.22), "hardly"), ((), "hardly")],
    )
    def test_a_rams_line_is_read_from_its_first_and_last_angle(self, angles, way):
        asked = Question("line", "?", "lip", asks="ram's line")
        key = key_of(asked, {"lip": result(told=move(off_square_rad=angles), beside=())})
        assert key.outcome == way

    def test_difficulty_comes_from_the_margin(self):
        assert key_of(LIP, {"lip": result(told=move(margin_ratio=0.3))}).difficulty == "close"
        assert key_of(LIP, {"lip": result()}).difficulty == "plain"

    def test_two_plans_are_compared_by_a_figure(self):
        asked = Question("more", "?", "lip", asks="more", other="bend", measure="force_n")
        for force, right in ((9000.0, "bend"), (1000.0, "lip"), (4100.0, SAME)):
            pair = {"lip": result(), "bend": result("bend", move(peak_force_n=force))}
            assert key_of(asked, pair).outcome == right

    def test_two_plans_may_be_asked_about_by_moves_of_their_own(self):
        asked = Question(
            "more", "?", "lip", asks="more", other="bend", measure="opening_m", move=1, other_move=2
        )
        lip, bend = result(told=move(opening_m=0.0)), result("bend", move(opening_m=0.0))
        moves = (move(opening_m=0.0), move(opening_m=0.06))
        beside = tuple(msgspec.structs.replace(n, moves=moves) for n in bend.kept.neighbours)
        bend = dataclasses.replace(
            bend, kept=msgspec.structs.replace(bend.kept, moves=moves, neighbours=beside)
        )
        key = key_of(asked, {"lip": lip, "bend": bend})
        assert (key.outcome, key.settled) == ("bend", True)

    def test_what_one_of_two_plans_was_run_beside_counts_too(self):
        asked = Question("more", "?", "lip", asks="more", other="bend", measure="force_n")
        lower = move(peak_force_n=1000.0)
        pair = {
            "lip": result(beside=(("the head 10 mm lower", lower), ("a coarser lattice", move()))),
            "bend": result("bend", move(peak_force_n=2000.0), beside=(("a coarser lattice", lower),)),
        }
        key = key_of(asked, pair)
        assert key.outcome == "lip"
        assert "With the head 10 mm lower it comes out otherwise" in key.why_not

    def test_a_run_beside_that_could_go_no_further_went_as_far(self):
        asked = Question("more", "?", "lip", asks="more", other="bend", measure="force_n")
        short = move(opening_m=0.05, ended=("short of its way",))
        beside = (("10 mm to one side", short), ("a coarser lattice", short))
        pair = {"lip": result(beside=beside), "bend": result("bend", move(peak_force_n=9000.0))}
        assert key_of(asked, pair).settled

    def test_room_lost_is_less_than_room_gained(self):
        asked = Question("more", "?", "lip", asks="more", other="bend", measure="clearance_change_m")
        lost = result("bend", move(clearance_change_m=-0.03))
        pair = {"lip": result(told=move(clearance_change_m=0.02)), "bend": lost}
        assert key_of(asked, pair).outcome == "lip"

    def test_outcomes_are_read_from_what_was_measured(self):
        assert outcome("at the ram", move("base giving")) == "base giving"
        assert outcome("skin's middle", move(skin_m=0.02)) == "out"
        assert outcome("inner panel", move(inner_m=-0.02)) == "in"
        assert outcome("upper skin", move(upper_skin_m=-0.011)) == "in"
        assert outcome("upper skin", move(upper_skin_m=0.009)) == "hardly"
        assert outcome("room", move(clearance_change_m=0.001)) == "same"
        assert outcome("tears", move(torn_length_m=0.03)) == "yes"
        assert outcome("latch", move(latch_demand_ratio=0.6)) == "half"


def practice(mode):
    items = items_of(loads_lesson(LESSON), {"lip": result(), "bend": result("bend")})
    return Practice(items, mode)


class TestPractice:
    def test_a_test_tells_nothing_before_its_end(self):
        now = practice(Mode.TEST)
        assert not now.ask_hint()
        assert (now.hint, now.told) == ("", "")
        now.answer("latch free")
        assert now.done and now.told == ""
        assert now.score.words == f"0 of 1 as the model has it. {SCORED_LINE}"

    def test_coached_practice_tells_after_the_answer(self):
        now = practice(Mode.COACHED)
        assert now.told == ""
        now.answer("seam parting")
        assert now.told == "In the model: The seam parts. Because."
        assert now.score.right == 1

    def test_guided_practice_shows_the_answer_and_takes_none(self):
        now = practice(Mode.GUIDED)
        now.answer("latch free")
        assert now.answered() == ""
        assert "The seam parts" in now.told

    def test_free_practice_asks_nothing(self):
        assert practice(Mode.FREE).done

    def test_unsettled_questions_are_answered_and_not_graded(self):
        items = items_of(loads_lesson(LESSON), {"lip": result(beside=()), "bend": result("bend")})
        now = Practice(items, Mode.TEST)
        now.answer("seam parting")
        assert (now.score.graded, now.score.not_graded) == (0, 1)
        assert "not settled" in now.score.words


class TestWalk:
    @pytest.fixture
    def walk(self, tmp_path):
        (tmp_path / "a.toml").write_text(LESSON, encoding="utf-8")
        walk = LessonWalk()
        walk.open(tmp_path / "a.toml")
        return walk

    def test_steps_go_on_and_back_and_stop_at_the_ends(self, walk):
        seen = []
        walk.changed.connect(lambda: seen.append(walk.position))
        assert not walk.back()
        assert walk.on()
        assert walk.following is None
        assert not walk.on()
        assert walk.back()
        assert seen == [1, 0]

    def test_a_step_tells_its_question_and_place(self, walk):
        assert walk.question is None
        walk.go_to_phase("show")
        assert walk.question.name == "first"
        assert walk.place_words == "step 2 of 2, show"

    def test_results_that_are_missing_are_told(self, walk):
        assert "run them again" in walk.stale_words
        assert NOT_YET in walk.words

    def test_a_lesson_is_opened_again_where_it_was_left(self, walk):
        walk.open(walk.path, 1)
        assert walk.step.title == "Look"
        walk.close()
        assert walk.step is None and walk.words == ""


class TestExpected:
    def test_more_is_held_against_the_figures_of_the_moves_it_names(self):
        pair = Expected("It pushes harder.", "lip", "bend", asks="more", measure="force_n")
        for force, said in ((1000.0, "comes out"), (4100.0, "as much"), (9000.0, "bend has more")):
            both = {"lip": result(), "bend": result("bend", move(peak_force_n=force))}
            assert said in expectation(pair, both)

    def test_what_is_not_solved_is_not_known(self):
        pair = Expected("It does.", "lip", "bend", first_is="seam parting")
        assert expectation(pair, {"lip": result(), "bend": result("bend", why_stale="old")}).startswith(
            "not known"
        )


class TestChanges:
    def test_a_verdict_that_flipped_is_told_first(self):
        before = result()
        now = result(told=move("latch free", peak_force_n=9000.0)).kept
        lines = changes(before, now)
        assert lines[0] == "lip, move 1: VERDICT CHANGED: what gave first: the seam, now the latch"
        assert any("largest force" in line for line in lines)

    def test_nothing_changed(self):
        assert changes(result(), result().kept) == ("lip: nothing has changed",)


def test_a_moment_that_did_not_come_leads_to_the_end():
    class Moment:
        def __init__(self, *kinds):
            self.events = [type("E", (), {"kind": kind}) for kind in kinds]

    frames = [Moment(), Moment("seam parting"), Moment()]
    assert [moment_at(frames, m) for m in ("start", "seam parting", "latch free", "end")] == [0, 1, 2, 2]


class TestDebrief:
    def test_a_lesson_ends_with_its_debrief(self):
        lesson = loads_lesson(LESSON)
        lesson = msgspec.structs.replace(
            lesson, debrief=Debrief(("What happened?", "Why?"), ("The line decides.",))
        )
        *own, last = lesson.walked
        assert tuple(own) == lesson.steps
        assert (last.title, last.phase, last.plan) == ("Debrief", "check", "")
        assert last.words.split("\n\n") == ["What happened?", "Why?"]
        assert "The line decides." in last.notes and "The line decides." not in last.words

    def test_a_lesson_without_one_has_no_step_for_it(self):
        lesson = msgspec.structs.replace(loads_lesson(LESSON), debrief=Debrief())
        assert lesson.walked == lesson.steps
