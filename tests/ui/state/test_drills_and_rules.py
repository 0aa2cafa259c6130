"""The drill log, local rules, the glossary, and what the sheets say."""

import csv
import io
import re
from dataclasses import replace

import pytest

from sim.planfile import plan_sha256
from sim.problems import PlanError
from tests.ui.state.lesson_tools import LESSON, move, result
from ui.state import drill_log, glossary, overlay
from ui.state.drill_log import UNKNOWN, Drill, rate_words
from ui.state.drill_paper import LINES
from ui.state.lesson_file import loads_lesson
from ui.state.practice import SCORED_LINE
from ui.state.sheet import LOCAL_FIRST, NOT_THE_ORDER
from ui.state.sheets import SHEETS, record_csv, sheet_of
from ui.state.signs import ALWAYS, events_of, signs


def drill(metal_did, said="seam parting"):
    return Drill(
        "2026-11-26", "First bite", "lip", "0" * 64, "2", said, metal_did, note='a "note", with commas'
    )


class TestDrills:
    def test_ten_drills_give_a_rate(self):
        drills = [drill("seam parting")] * 7 + [drill("latch free")] * 3 + [drill(UNKNOWN)]
        said = rate_words(drills)
        assert said.startswith("In 7 of 10 drills")
        # exact interval of 7 of 10 at 95 % [clopper-pearson-1934]: .348 to .933, from memory
        assert "between 35 and 93 %" in said
        assert "1 could not be seen" in said

    def test_few_drills_give_no_rate(self):
        assert "too few" in rate_words([drill("seam parting")] * 3)
        assert "No drill" in rate_words([drill(UNKNOWN)])

    def test_the_log_is_kept_and_can_be_deleted(self, tmp_path):
        drills = (drill("seam parting"), drill("=cmd"))
        assert drill_log.save(drills, tmp_path)
        assert drill_log.load(tmp_path)[0] == drills[0]
        rows = list(csv.DictReader(io.StringIO(drill_log.as_csv(drills))))
        assert rows[1]["metal_did"] == "'=cmd"
        assert drill_log.delete(tmp_path)
        assert drill_log.load(tmp_path) == ()


class TestTheLogOnPaper:
    @pytest.fixture
    def lesson(self):
        return loads_lesson(LESSON)

    def test_it_holds_the_drills_of_that_lesson_and_their_rate(self, lesson):
        mine = [
            replace(drill(did), lesson=lesson.title, plan="On the lip") for did in ("latch free", UNKNOWN)
        ]
        other = replace(drill("weld broken"), lesson="Another evening", plan="Somewhere else")
        sheet = sheet_of("log", lesson, {}, drills=(*mine, other))
        words, page = sheet.plain, sheet.pages[0]
        assert "In 0 of 1 drills" in words
        assert words.count("On the lip") == 2 and "Somewhere else" not in words
        rows = re.findall(r"<td>On the lip</td><td>(.*?)</td><td>(.*?)</td><td>(.*?)</td>", page)
        assert rows == [("seam parting", "latch free", "no"), ("seam parting", UNKNOWN, "\N{EN DASH}")]
        assert LOCAL_FIRST in words

    def test_a_plan_of_the_lesson_is_known_by_its_hash_in_any_language(self, lesson):
        lip = result()
        there = replace(drill("seam parting"), lesson="Erster Ansatz", plan_sha256=plan_sha256(lip.plan))
        assert "In 1 of 1 drills" in sheet_of("log", lesson, {"lip": lip}, drills=(there,)).plain

    def test_with_no_drill_there_are_lines_to_write_on(self, lesson):
        sheet = sheet_of("log", lesson, {})
        assert "No drill has been written down yet" in sheet.plain
        assert sheet.pages[0].count("<tr>") >= LINES


class TestLocalRules:
    def test_they_carry_author_and_date(self):
        ours = overlay.loads(overlay.example("2026-11-26"))
        assert ours.signed == "Local rules: your service, training officer on duty, 2026-11-26"

    @pytest.mark.parametrize("field", ["author", "date"])
    def test_without_author_or_date_they_are_refused(self, field):
        text = "\n".join(
            line for line in overlay.example("2026-11-26").splitlines() if not line.startswith(field)
        )
        with pytest.raises(PlanError, match=field):
            overlay.loads(text)

    def test_they_are_never_overwritten_silently(self, tmp_path):
        first, second = overlay.example("2026-11-26"), overlay.example("2026-12-01")
        assert overlay.put(first, tmp_path, seen="") is None
        with pytest.raises(PlanError, match="changed by somebody else"):
            overlay.put(second, tmp_path, seen="")
        old = overlay.put(second, tmp_path, seen=overlay.fingerprint(tmp_path))
        assert old.read_text(encoding="utf-8") == first
        assert overlay.load(tmp_path).date == "2026-12-01"


class TestGlossary:
    def test_other_words_lead_to_ours(self):
        for alias, name in (("post", "pillar"), ("skinning", "seam parting"), ("purchase point", "gap")):
            assert glossary.search(glossary.terms(), alias)[0].name == name

    def test_local_words_lead_there_too(self):
        found = glossary.with_local(glossary.terms(), {"doodle": "striker"})
        assert glossary.search(found, "doodle")[0].name == "striker"

    def test_every_word_leads_to_one_idea(self):
        words = [word.lower() for term in glossary.terms() for word in term.all_words]
        assert len(words) == len(set(words))


class TestSheets:
    @pytest.fixture
    def lesson(self):
        return loads_lesson(LESSON + '[[evaluation]]\ndoes = "Looks"\nlooked_for = "both sides"\n')

    def test_every_sheet_carries_the_limits_line(self, lesson):
        for kind in SHEETS:
            sheet = sheet_of(kind, lesson, {"lip": result(), "bend": result("bend")})
            assert sheet.limits == "Teaching model - not a real car - local procedure first"
            assert sheet.plain

    def test_a_bridge_sheet_has_the_signs_of_what_happened_and_no_others(self, lesson):
        words = sheet_of("bridge", lesson, {"lip": result()}).plain
        assert signs()["seam parting"].stop in words
        assert signs()[ALWAYS].stop in words
        assert signs()["hinge free"].stop not in words
        assert "What happened on the metal" in words
        assert NOT_THE_ORDER in words

    def test_signs_stand_in_one_order_whatever_the_run(self):
        moves = [move("latch free"), move("seam parting", metal=("folding out (skin)",))]
        assert events_of(moves) == ("seam parting", "latch free", "folding out")

    def test_an_evaluation_has_a_page_a_seat(self, lesson):
        sheet = sheet_of("evaluation", lesson, {}, seats=("7", "8"))
        assert len(sheet.pages) == 2
        assert "Reason (for each U)" in sheet.plain and NOT_THE_ORDER in sheet.plain
        rows = list(csv.DictReader(io.StringIO(record_csv(lesson, ("7", "8")))))
        assert [row["seat"] for row in rows] == ["7", "8"]

    def test_a_review_names_model_version_and_plan(self, lesson):
        words = sheet_of("review", lesson, {"lip": result(), "bend": result("bend")}).plain
        assert "this model, version" in words and result().kept.plan_sha256[:12] in words

    def test_local_rules_stand_on_a_sheet_with_author_and_date(self, lesson):
        ours = overlay.loads(overlay.example("2026-11-26"))
        words = sheet_of("bridge", lesson, {"lip": result()}, overlay=ours).plain
        assert ours.signed in words and ours.stop_rules[0] in words

    def test_a_test_asks_what_is_settled_and_its_key_stands_apart(self, lesson):
        sheet = sheet_of("test", lesson, {"lip": result(), "bend": result("bend")}, seats=("7", "8"))
        assert len(sheet.pages) == 3
        for page in sheet.pages[:2]:
            assert "What lets go first?" in page and SCORED_LINE in page
            assert "In the model:" not in page and "Because." not in page
        assert "In the model: The seam parts. Because." in sheet.plain
        loose = sheet_of("test", lesson, {"lip": result(beside=()), "bend": result("bend")})
        assert "What lets go first?" not in loose.pages[0]
        assert "One question is left out" in loose.plain

    def test_a_handout_tells_no_answer(self, lesson):
        words = sheet_of("handout", lesson, {"lip": result(), "bend": result("bend")}).plain
        assert "What lets go first?" in words
        assert "In the model" not in words and "Because." not in words
