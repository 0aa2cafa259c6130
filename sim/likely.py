"""Likelihood words: how often something came out of many runs, and whether that many runs can tell.

The words and their bands are fixed.  A word is given only when the whole interval in which the true share
lies with 95 % confidence stays inside the word's band; anything else is "not settled", and "too few runs"
where no count could have given a word.

The interval is the exact one of Clopper and Pearson [clopper-pearson-1934], as scipy computes it: it covers
the true share at least as often as it says for independent runs; the runs here are spread more evenly than
chance would, which makes it wider than need be and never narrower.  Runs that failed or did not settle may be
either way: they count against a thing at the low end and for it at the high end.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

CONFIDENCE = 0.95

# word, from this share on; each band ends where the one above it begins
BANDS = (
    ("nearly always", 0.90),
    ("likely", 0.65),
    ("not settled", 0.35),
    ("unlikely", 0.10),
    ("hardly ever", 0.0),
)
NOT_SETTLED = "not settled"
TOO_FEW = "too few runs"
TELLS = 36
"""With fewer runs, even all alike, the interval is wider than the band of any word."""


@dataclass(frozen=True)
class Likelihood:
    """How often one thing came out.

    count : settled runs in which it did;  unsure : runs that failed or did not settle;  total : all runs
    low, high : the interval of the true share;  word : one of the fixed words
    """

    what: str
    count: int
    unsure: int
    total: int
    low: float
    high: float
    word: str


def band(share: float) -> str:
    """Return the word whose band holds a share; the upper bound of a band belongs to the band above."""
    return next(word for word, least in BANDS if share >= least)


def interval(count: int, total: int) -> tuple[float, float]:
    """Return the interval in which the true share lies with the confidence asked."""
    from scipy import stats  # half a second, and only a sitting with many runs asks for it

    found = stats.binomtest(count, total).proportion_ci(CONFIDENCE, method="exact")
    return float(found.low), float(found.high)


def likelihood(what: str, count: int, total: int, unsure: int = 0) -> Likelihood:
    """Return how likely a thing is, in a word, after it came out ``count`` times in ``total`` runs.

    Raises
    ------
    ValueError
        When the counts cannot be: negative, or more than there were runs.
    """
    if min(count, unsure) < 0 or total < 1 or count + unsure > total:
        raise ValueError(f"{count} and {unsure} unsure of {total} runs cannot be")
    low, high = interval(count, total)[0], interval(count + unsure, total)[1]
    word = band(low) if band(low) == band(high) else NOT_SETTLED if total >= TELLS else TOO_FEW
    return Likelihood(what, count, unsure, total, low, high, word)


def tally(things: Iterable[str], runs: Sequence[Sequence[str] | None]) -> tuple[Likelihood, ...]:
    """Return how likely each thing is, most often first.

    Parameters
    ----------
    things : what to count
    runs : what came out of each run; None for one that failed or did not settle
    """
    settled = [run for run in runs if run is not None]
    unsure = len(runs) - len(settled)
    found = [likelihood(thing, sum(thing in run for run in settled), len(runs), unsure) for thing in things]
    return tuple(sorted(found, key=lambda item: -item.count))
