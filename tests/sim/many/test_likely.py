"""The likelihood words: fixed bands, an interval that stays inside, and how often a word is wrong.

Closed forms: the exact interval for n of n runs ends at (alpha/2)^(1/n) [clopper-pearson-1934]; the rest is
the binomial law itself, summed here with math.comb.
"""

import math
import random

import pytest

from sim import likely


def binomial(count: int, total: int, share: float) -> float:
    return math.comb(total, count) * share**count * (1.0 - share) ** (total - count)


def test_interval_of_all_alike_is_the_closed_form():
    low, high = likely.interval(64, 64)
    assert low == pytest.approx(0.025 ** (1 / 64), rel=1e-9)  # rounding only
    assert high == 1.0
    assert likely.interval(0, 64)[1] == pytest.approx(1.0 - 0.025 ** (1 / 64), rel=1e-9)


@pytest.mark.parametrize("share", [0.02, 0.1, 0.3, 0.35, 0.5, 0.65, 0.8, 0.9, 0.97])
def test_interval_covers_the_true_share_at_least_as_often_as_it_says(share):
    total = 64
    intervals = [likely.interval(k, total) for k in range(total + 1)]
    covered = sum(
        binomial(k, total, share) for k, (low, high) in enumerate(intervals) if low <= share <= high
    )
    assert covered >= likely.CONFIDENCE


@pytest.mark.parametrize("total", [16, 64, 256])
@pytest.mark.parametrize("share", [0.05, 0.2, 0.5, 0.75, 0.95])
def test_a_wrong_word_is_said_in_one_of_twenty_at_most(share, total):
    right = {likely.band(share), likely.NOT_SETTLED, likely.TOO_FEW}
    wrong = sum(
        binomial(k, total, share)
        for k in range(total + 1)
        if likely.likelihood("it", k, total).word not in right
    )
    assert wrong <= 1.0 - likely.CONFIDENCE


def test_a_share_in_the_middle_of_its_band_is_told_once_there_are_runs_enough():
    """Against a rule that never says anything: at 0.78 of 1000 fair draws the word is "likely"."""
    fair = random.Random(5)
    count = sum(fair.random() < 0.78 for _ in range(1000))
    assert likely.likelihood("it", count, 1000).word == "likely"


@pytest.mark.parametrize(
    ("share", "word"),
    [
        (1.0, "nearly always"), (0.90, "nearly always"), (0.899, "likely"), (0.65, "likely"),
        (0.649, "not settled"), (0.35, "not settled"), (0.349, "unlikely"), (0.10, "unlikely"),
        (0.099, "hardly ever"), (0.0, "hardly ever"),
    ],
)  # fmt: skip
def test_bands_begin_where_they_are_fixed(share, word):
    assert likely.band(share) == word


def test_a_door_of_64_runs():
    words = {k: likely.likelihood("it", k, 64).word for k in (0, 1, 2, 63, 64, 62, 50, 14, 32)}
    assert words[64] == words[63] == "nearly always"
    assert words[62] == "not settled"  # 62 of 64 may still be 89 %
    assert words[0] == words[1] == "hardly ever"
    assert words[2] == "not settled"
    assert words[50] == "likely"
    assert words[14] == "unlikely"
    assert words[32] == "not settled"


def test_fewer_than_36_runs_never_give_a_word():
    """0.025^(1/35) is just below 0.9, and the narrower bands need more still."""
    for total in range(1, 36):
        for count in range(total + 1):
            assert likely.likelihood("it", count, total).word == "too few runs", (count, total)
    assert likely.likelihood("it", 36, 36).word == "nearly always"


def test_uncertain_runs_count_for_and_against():
    assert likely.likelihood("it", 64, 64).word == "nearly always"
    low = likely.likelihood("it", 60, 64, unsure=4)
    assert low.word == "not settled"
    assert (low.low, low.high) == (likely.interval(60, 64)[0], 1.0)
    assert likely.likelihood("it", 0, 64, unsure=4).word == "not settled"


@pytest.mark.parametrize("counts", [(-1, 4, 0), (5, 4, 0), (3, 4, 2), (0, 0, 0), (1, 4, -1)])
def test_counts_that_cannot_be_are_refused(counts):
    with pytest.raises(ValueError, match="cannot be"):
        likely.likelihood("it", *counts)


def test_tally_counts_each_thing_and_keeps_uncertain_runs():
    runs = [("a", "b"), ("a",), None, ("c",)]
    found = {item.what: item for item in likely.tally(("a", "b", "d"), runs)}
    assert (found["a"].count, found["a"].unsure, found["a"].total) == (2, 1, 4)
    assert found["b"].count == 1 and found["d"].count == 0
    assert [item.count for item in likely.tally(("d", "b", "a"), runs)] == [2, 1, 0]
