"""Every action can be found by words a person would type, and every key stands on the sheet."""

import pytest

from ui.state.finder import OTHER_WORDS, entries, find, keys_of, sheet

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


def test_the_sheet_holds_every_key_once():
    told = [keys for _, rows in sheet() for keys, _ in rows]
    for entry in entries():
        if entry.keys:
            assert told.count(" or ".join(entry.keys)) == 1, entry.name
    assert keys_of("run", "Return") == ("Return", "Enter")
