"""Lesson files: what is read, what is refused in a sentence, what stays as written; and the ready ones."""

import re

import msgspec
import pytest

from sim import kept
from sim.problems import PlanError
from tests.ui.state.lesson_tools import LESSON
from ui.state.lesson import FIGURE
from ui.state.lesson_check import expectation, looked_through
from ui.state.lesson_file import (
    dumps_lesson,
    load_lesson,
    loads_lesson,
    ready_lessons,
    ready_path,
    save_lesson,
    texts_of,
    unknown_fields,
)
from ui.state.lesson_results import results_of, unknown_figures
from ui.state.practice import items_of
from ui.state.signs import hazards, signs

FIGURE_WITH_UNIT = re.compile(r"\d[\d.,]*[ \u00a0]?(mm|cm|m|kN|N|J|%|kg|bar|degrees|lbf|in)\b")


class TestReading:
    def test_a_lesson_is_read(self):
        lesson = loads_lesson(LESSON)
        assert [step.phase for step in lesson.steps] == ["open", "show"]
        assert lesson.plan_of("bend").file == "first-bite-bend"
        assert lesson.question_of("first").asks == "gives first"

    @pytest.mark.parametrize(
        ("old", "new", "field", "remedy"),
        [
            ("schema_version = 1", "", "schema_version", "put 'schema_version = 1'"),
            ("schema_version = 1", "schema_version = 9", "schema_version", "update the program"),
            ('licence = "CC0-1.0"', "", "licence", "give the lesson's licence"),
            ('phase = "open"', 'phase = "begin"', "steps[...].phase", "'check', 'open', 'show', 'try'"),
            ('phase = "open"\n', "", "steps[0].phase", "add it"),
            ('moment = "end"', 'camera = "moon"', "steps[1].camera", "'latch'"),
            ('moment = "end"', 'layers = {roof = "off"}', "steps[1].layers.roof", "'skin'"),
            ('moment = "end"', "move = true", "steps[1].move", "give a whole number instead"),
            ('plan = "lip"\nmoment', 'plan = "lap"\nmoment', "steps[1].plan", "'bend', 'lip'"),
            ("{bend.effect}", "{bond.effect}", "steps[1].notes", "'bend', 'lip'"),
            ('question = "first"', 'question = "last"', "steps[1].question", "'first'"),
            ('why = "Because."', 'asks = "more"', "questions[0].other", "name the plan to compare with"),
            ('name = "bend"', 'name = "lip"', "plans[1].name", "use another name"),
            ("title = ", "title ", "lesson", "mend that line"),
        ],
    )
    def test_a_fault_is_named_with_its_path_and_remedy(self, old, new, field, remedy):
        assert old in LESSON
        with pytest.raises(PlanError) as caught:
            loads_lesson(LESSON.replace(old, new, 1))
        path = re.sub(r"\[\d+\]", "[...]", caught.value.field) if "..." in field else caught.value.field
        assert path == field
        assert remedy in caught.value.message

    def test_a_missing_file_says_so(self, tmp_path):
        with pytest.raises(PlanError, match="does not exist"):
            load_lesson(tmp_path / "none.toml")


class TestWriting:
    def test_an_unchanged_lesson_is_written_as_it_was(self):
        assert dumps_lesson(loads_lesson(LESSON), LESSON) == LESSON

    def test_comments_and_unknown_fields_stay_and_are_named(self):
        text = LESSON.replace('title = "Begin"', 'title = "Begin"\nour_own = 3 # ours', 1)
        lesson = loads_lesson(text)
        assert unknown_fields(text) == ("steps[0].our_own",)
        steps = (msgspec.structs.replace(lesson.steps[0], title="Start"), *lesson.steps[1:])
        written = dumps_lesson(msgspec.structs.replace(lesson, steps=steps), text)
        assert "our_own = 3 # ours" in written
        assert "# a comment to keep" in written
        assert 'title = "Start"' in written

    def test_a_new_file_reads_back_equal(self, tmp_path):
        lesson = loads_lesson(LESSON)
        save_lesson(lesson, tmp_path / "new.toml")
        assert load_lesson(tmp_path / "new.toml") == lesson


@pytest.mark.parametrize("name", ready_lessons())
class TestReadyLessons:
    def test_it_loads_with_every_plan_it_names(self, name):
        lesson = load_lesson(ready_path(name))
        assert set(results_of(lesson, ready_path(name))) == {plan.name for plan in lesson.plans}

    def test_no_figure_is_typed_and_every_named_one_is_there(self, name):
        for path, text in texts_of(load_lesson(ready_path(name))):
            assert not FIGURE_WITH_UNIT.search(text), (path, text)
            assert unknown_figures(text) == (), path

    def test_it_is_whole(self, name):
        lesson = load_lesson(ready_path(name))
        phases = [step.phase for step in lesson.steps]
        assert phases == sorted(phases, key=("open", "show", "try", "check").index)
        assert {phases[0], phases[-1]} == {"open", "check"}
        goal = lesson.objective
        assert all((goal.audience, goal.behaviour, goal.condition, goal.degree))
        assert lesson.limits and lesson.claims and lesson.evaluation and lesson.debrief.questions
        assert set(lesson.hazards) <= set(hazards())
        assert set(lesson.signs) <= set(signs())
        assert all(claim.source for claim in lesson.claims)
        assert unknown_fields(ready_path(name).read_text(encoding="utf-8")) == ()

    def test_every_plan_has_a_kept_result_that_is_fresh_and_whole(self, name):
        lesson = load_lesson(ready_path(name))
        for result in results_of(lesson, ready_path(name)).values():
            assert result.fresh, result.why_stale
            assert result.kept.moments_sha256
            assert kept.whole(result.folder, result.file, result.kept), result.file
            moves = len(result.plan.moves)
            assert len(result.kept.moves) == len(result.kept.results) == moves

    def test_what_it_expects_comes_out_of_its_kept_results(self, name):
        path = ready_path(name)
        lesson = load_lesson(path)
        results = results_of(lesson, path)
        assert [
            said for pair in lesson.expected if not (said := expectation(pair, results)).startswith("comes")
        ] == []
        report = looked_through(lesson, results, path.read_text(encoding="utf-8"))
        assert not report.failed, report.lines
        assert lesson.expected or name == "00-parts-of-a-door"

    def test_every_question_can_be_answered_and_some_are_graded(self, name):
        lesson = load_lesson(ready_path(name))
        results = results_of(lesson, ready_path(name))
        items = items_of(lesson, results)
        for item in items:
            assert item.key.outcome in [choice.outcome for choice in item.choices], item.question.name
            assert item.why, item.question.name
        assert any(item.key.settled for item in items) or name in ("00-parts-of-a-door", "05-high-striker")

    def test_a_step_shows_the_move_whose_figures_it_tells(self, name):
        lesson = load_lesson(ready_path(name))
        results = results_of(lesson, ready_path(name))
        for step in lesson.steps:
            if step.moment == "start" or not step.plan:
                continue
            result = results[step.plan]
            last = next(k for k, move in enumerate(result.kept.moves, 1) if move is result.move())
            told = [int(n or last) for plan, _, n in FIGURE.findall(step.words) if plan == step.plan]
            assert not told or max(told) == step.move, step.title

    def test_a_step_that_asks_stands_before_the_push_it_asks_of(self, name):
        for step in load_lesson(ready_path(name)).steps:
            assert not step.question or (step.plan and step.moment == "start"), step.title
