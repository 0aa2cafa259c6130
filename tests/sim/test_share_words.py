"""The word for what the latch carried is that of the nearest fraction, in kept sentences too."""

import json
from pathlib import Path
from types import SimpleNamespace

import pytest

from sim.outcome import _share_word, inner_words

KEPT = Path(__file__).parents[2] / "assets/lessons/solved"
FRACTIONS = {1 / 5: "a fifth", 1 / 4: "a quarter", 1 / 3: "a third", 1 / 2: "about half"}


@pytest.mark.parametrize("percent", range(15, 56))
def test_the_word_is_the_nearest_fraction(percent):
    away = {word: abs(fraction - percent / 100) for fraction, word in FRACTIONS.items()}
    # within half a percent of the middle between two fractions either word will do
    near = {word for word, far in away.items() if far < min(away.values()) + 0.01}
    assert _share_word(percent / 100).removesuffix(" of what it can hold") in near


def test_under_a_seventh_is_little_and_near_its_limit_is_all():
    assert _share_word(0.1) == "little of what it can hold"
    assert _share_word(0.6) == "more than half of what it can hold"
    assert _share_word(0.8) == "most of what it can hold"
    assert _share_word(0.99) == "all it can hold"


def moves(found):
    if isinstance(found, dict):
        if "sentence" in found and "latch_demand_ratio" in found:
            yield found
        for value in found.values():
            yield from moves(value)
    elif isinstance(found, list):
        for value in found:
            yield from moves(value)


def test_kept_sentences_say_the_word_of_their_own_figure():
    told = [
        (move["sentence"], move["latch_demand_ratio"])
        for path in sorted(KEPT.glob("*.json"))
        for move in moves(json.loads(path.read_text(encoding="utf-8")))
        if "the latch carried" in move["sentence"]
    ]
    assert len(told) > 20
    for sentence, ratio in told:
        assert f"the latch carried {_share_word(ratio)} at most" in sentence


def told(found):
    """Yield every kept move in few figures."""
    return (move for move in moves(found) if "inner_m" in move)


def test_kept_pushes_name_an_inner_panel_that_came_in_and_no_other():
    named = 0
    for path in sorted(KEPT.glob("*.json")):
        for move in told(json.loads(path.read_text())):
            if "The tips were" not in move["sentence"] and "Both tips stood" not in move["sentence"]:
                continue  # a ram, a cut, a tool let off: told of in other words
            came_in = f"the inner panel came in {-1e3 * move['inner_m']:.0f} mm towards the patient"
            assert (came_in in move["sentence"]) == (move["inner_m"] < -0.010), path.name
            assert ("towards the patient" in move["sentence"]) == (move["inner_m"] < -0.010), path.name
            named += came_in in move["sentence"]
    assert named > 0


@pytest.mark.parametrize(
    ("came_in_m", "said"),
    [(0.0, ""), (0.0099, ""), (-0.05, ""), (0.0306, "; the inner panel came in 31 mm towards the patient")],
)
def test_what_is_seen_of_the_inner_panel_is_told_by_how_far_it_came(came_in_m, said):
    start, end = SimpleNamespace(inner_mid_outboard_m=0.004), SimpleNamespace()
    end.inner_mid_outboard_m = 0.004 - came_in_m
    assert inner_words(start, end) == said
