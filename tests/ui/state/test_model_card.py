"""The model card's state: chapters narrowed by words, and the checks as they come in."""

from dataclasses import replace

import pytest

from sim.checks.row import Row
from ui.state.drill_log import Drill
from ui.state.model_card import CHAPTERS, CHECKS, DRILLS, NUMBERS, UNCHECKED, ModelCard, narrowed

GOOD = Row("peel load", "kendall-1975", 2.0, 2.05, "N/mm", 0.05, spacing="45 mm")
POOR = replace(GOOD, claim="latch", got=3.0)
KNOWN = replace(POOR, claim="plate", known="coarse")


@pytest.fixture
def state():
    return ModelCard()


@pytest.mark.parametrize("chapter", range(len(CHAPTERS)))
def test_every_chapter_is_a_table_of_equal_lines(state, chapter):
    state.show(chapter)
    page = state.page()
    assert page.heads
    assert 0 <= page.wide < len(page.heads)
    assert {len(line) for line in page.lines} <= {len(page.heads)}
    assert bool(page.lines) is (chapter not in (CHECKS, DRILLS))


def test_words_narrow_a_chapter_wherever_they_stand(state):
    state.show(NUMBERS)
    everything = len(state.page().lines)
    state.search("STEEL yield")
    found = state.page().lines
    assert 3 <= len(found) < everything
    told = [" ".join(line).lower() for line in found]  # in any column
    assert all("steel" in line and "yield" in line for line in told)
    state.search("no such thing at all")
    assert state.page().lines == ()


def test_no_words_leave_every_line():
    assert narrowed([("a", "b"), ("c", "d")], "  ") == [0, 1]


def test_checks_come_in_one_by_one_and_what_fails_stands_first_in_the_end(state):
    told = []
    state.changed.connect(lambda: told.append(state.said))
    assert state.said == UNCHECKED
    state.begin(3)
    assert (state.chapter, state.running) == (CHECKS, True)
    for row in (GOOD, KNOWN, POOR):
        state.take("a family", row)
    assert [line[0] for line in state.page().lines] == ["peel load", "plate", "latch"]
    assert state.said == "3 of 3 checks"
    state.end()
    page = state.page()
    assert [line[0] for line in page.lines] == ["latch", "plate", "peel load"]
    assert page.marked == {0, 1}
    assert [line[-1] for line in page.lines] == ["FAIL", "FAIL, known", "pass"]
    assert "1 unexpected" in state.said
    assert len(told) == 5


def test_a_stop_and_a_trouble_are_told(state):
    state.begin(3)
    state.take("a family", GOOD)
    state.end()
    assert state.said.startswith("Stopped: 1 of 1 rows")
    state.begin(3)
    assert state.rows == ()
    state.end("The checks could not be started.")
    assert state.said == "The checks could not be started."
    assert not state.running


def test_marks_follow_the_lines_when_narrowed(state):
    state.begin(2)
    state.take("f", POOR)
    state.take("f", GOOD)
    state.end()
    state.search("peel")
    assert state.page().marked == frozenset()
    state.search("latch")
    assert state.page().marked == {0}


def test_the_services_own_drills_stand_in_the_card():
    drill = Drill("2026-11-26", "", "a plan", "0" * 64, "2", "seam parting", "seam parting")
    state = ModelCard([drill] * 6)
    state.show(DRILLS)
    assert len(state.page().lines) == 6
    assert state.rate.startswith("In 6 of 6 drills")
