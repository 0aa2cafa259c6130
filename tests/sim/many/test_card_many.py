"""The model card's chapters on many runs: every unknown with its source, every kept answer with its word."""

import pytest

from sim import card_many, scenario_told
from sim.likely import likelihood
from sim.scenario import load_scenario
from sim.unknowns import about, times, within
from sim.vary import TABLE
from tests.sim.many.test_scenario import READY

KEPT = sorted((READY / "came").glob("*.json"))


def test_every_unknown_is_told_with_its_range_and_its_source():
    lines = card_many.varied_lines()
    assert len(lines) == len(TABLE)
    for row, line in zip(TABLE, lines, strict=True):
        assert len(line) == len(card_many.VARIED_HEADS) and all(line), row.path
        assert line[3] == row.source


@pytest.mark.parametrize(
    ("span", "unit", "words"),
    [
        (within(0.001, 0.002), "m", "1 to 2 mm"),
        (within(0.3, 0.6), "", "0.3 to 0.6"),
        (times(0.8, 1.6, least=1.0), "", "0.8 to 1.6 times the plan's, never below 1"),
        (about(0.02), "m", "the plan's, 20 mm to either side"),
    ],
)
def test_ranges_in_words(span, unit, words):
    assert span.words(unit) == words


@pytest.mark.parametrize("file", KEPT, ids=lambda file: file.stem)
def test_what_is_kept_belongs_to_a_ready_scenario_and_tells_its_asks(file):
    came = scenario_told.from_json(file.read_bytes())
    asked = load_scenario(READY / f"{file.stem}.toml")
    assert [answer.words for answer in came.answers] == [ask.words for ask in asked.scenario.asks]
    assert set(came.plans) == set(asked.plans) and came.title == asked.scenario.title
    for answer in came.answers:
        if answer.ask in ("told", "apart"):
            continue
        assert answer.total == came.run_count
        said = likelihood(answer.words, answer.count, answer.total, answer.unsure)
        assert answer.word == said.word
        assert (answer.low, answer.high) == pytest.approx((said.low, said.high), abs=1e-12)


def test_kept_answers_stand_on_the_card_each_with_its_scenario():
    assert KEPT
    lines = card_many.came_lines()
    assert len(lines) == sum(len(came.answers) for came in card_many.kept())
    assert all(len(line) == len(card_many.CAME_HEADS) and line[0] and line[1] for line in lines)
