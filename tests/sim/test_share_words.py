"""The word for what the latch carried is that of the nearest fraction, in kept sentences too."""

import json
from pathlib import Path

import pytest

from sim.outcome import _share_word

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
