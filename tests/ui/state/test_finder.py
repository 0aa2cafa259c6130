"""Every action can be found by words a person would type, and every key stands on the sheet."""

from pathlib import Path

import pytest

from sim.scenario import loads_scenario
from ui import files
from ui.state.finder import OTHER_WORDS, entries, find, keys_of, sheet
from ui.state.move_fields import NEW_MOVES
from ui.state.ready_plans import ACTION, SINGLE, group_of, groups, ready_path, told

ALL = entries([("lesson_one", "The first lesson")])

# What people type is common practice, no source: everyday words for what the menus call otherwise.
TYPED = [
    ("predict", "ask"), ("reveal", "compare"), ("exploded", "see_tool_asunder"), ("inches", "imperial"),
    ("slice", "see_tool_section"), ("font", "larger"), ("print", "sheets"), ("glossary", "words"),
    ("shortcuts", "keys"), ("recover", "bring_back"), ("ruler", "see_tool_measure"), ("png", "picture"),
    ("left right", "form"), ("undo", "undo"), ("ctrl+z", "undo"), ("hide answers", "shut"),
]  # fmt: skip


@pytest.mark.parametrize(("typed", "name"), TYPED)
def test_everyday_words_lead_to_the_action_among_the_first_three(typed, name):
    assert name in [entry.name for entry in find(typed, ALL)][:3]


def test_no_word_lists_all_and_a_strange_word_none():
    assert find("  ", ALL) == ALL
    assert find("zebra crossing", ALL) == ()


def test_each_action_is_found_first_or_second_by_its_own_words():
    for entry in ALL:
        assert entry in find(entry.words.rstrip("\u2026").replace(",", "").replace(":", ""), ALL)[:2], entry


def test_other_words_belong_to_actions_that_are_there():
    names = {entry.name for entry in ALL}
    assert set(OTHER_WORDS) <= names


def test_every_move_that_can_be_added_is_an_action():
    assert set(NEW_MOVES) <= {entry.name for entry in ALL}


def test_the_sheet_holds_every_key_once():
    told = [keys for _, rows in sheet() for keys, _ in rows]
    for entry in entries():
        if entry.keys:
            assert told.count(" or ".join(entry.keys)) == 1, entry.name
    assert keys_of("run", "Return") == ("Return", "Enter")


def test_every_ready_plan_stands_in_one_group_and_under_its_own_title():
    named = [pair for group in groups() for pair in group.plans]
    there = {path.stem for path in ready_path("x").parent.glob("*.toml")}
    assert sorted(name for name, _ in named) == sorted(there)
    assert all(files.read(ready_path(name))[0].title == title for name, title in named)
    assert len({title for _, title in named}) == len(named)  # a list by title must tell them apart


def test_plans_of_a_scenario_stand_under_its_title_and_tell_what_it_shows():
    for path in sorted((ready_path("x").parents[1] / "scenarios").glob("*.toml")):
        scenario = loads_scenario(path.read_text(encoding="utf-8"))
        group = next(group for group in groups() if group.title == scenario.title)
        assert {name for name, _ in group.plans} <= {Path(place).stem for place in scenario.plans.values()}
        assert scenario.words in told(group.plans[0][0])
    assert told(next(group for group in groups() if group.title == SINGLE).plans[0][0]) == ""
    assert group_of("pinch-not-made").title != SINGLE


def test_a_ready_plan_is_found_first_by_its_title_and_by_its_scenarios_words():
    for name, title in (pair for group in groups() for pair in group.plans):
        found = [entry.name for entry in find(title.replace(",", "").replace(":", ""), ALL)]
        assert f"{ACTION}{name}" in found[:2], title
    assert f"{ACTION}ram-bare" in [entry.name for entry in find("ram school", ALL)]
