"""What is said while the tips open: an event as it happens, else what is nearest to giving, and its share."""

from types import SimpleNamespace

import pytest

from sim.event_kinds import KINDS
from sim.outcome import HAPPENS, live_words
from sim.record import Event, Rung


def moment(*events, ladder=()):
    return SimpleNamespace(events=events, ladder=tuple(Rung(*rung) for rung in ladder))


@pytest.mark.parametrize(
    ("kind", "part", "words"),
    [
        ("seam parting", "seam", "the seam parts"),
        ("hinge free", "upper hinge", "the upper hinge lets go"),
        ("skin tearing", "outer skin", "the outer skin tears"),
        ("grounded", "front door", "front door: grounded"),
    ],
)
def test_an_event_is_told_as_it_happens(kind, part, words):
    assert live_words(moment(Event(kind, part, 0.01, 2000.0), ladder=[("latch", "latch free", 0.5)])) == words


def test_between_events_the_nearest_to_giving_is_told_with_its_share():
    told = live_words(moment(ladder=[("hem", "tip slipping", 0.5), ("latch", "latch free", 0.2)]))
    assert told == "the tip is nearest to slipping, 50 %"
    assert (
        live_words(moment(ladder=[("seam", "weld broken", 0.5)]))
        == "nearest to giving: seam (weld broken), 50 %"
    )


def test_every_event_that_has_a_sentence_is_one_there_is():
    assert set(HAPPENS) <= set(KINDS)


@pytest.mark.parametrize(
    ("rungs", "said"),
    [
        (
            (Rung("seam", "seam parting", 0.56), Rung("latch", "latch free", 0.1)),
            "the seam is nearest to parting, 56 %",
        ),
        ((Rung("outer skin", "skin tearing", 1.0),), "the outer skin is tearing"),
        ((Rung("upper hinge", "hinge free", 0.7),), "the upper hinge is nearest to letting go, 70 %"),
        ((Rung("hem", "tip slipping", 0.8),), "the tip is nearest to slipping, 80 %"),
        (
            (Rung("hem", "tip slipping", 1.0), Rung("seam", "seam parting", 0.3)),
            "the tip is slipping; the seam is nearest to parting, 30 %",
        ),
        ((Rung("seam", "seam parting", 0.001),), "holding"),
        ((), "holding"),
    ],
)
def test_a_moment_on_the_way_is_told_as_one_would_say_it(rungs, said):
    assert live_words(SimpleNamespace(ladder=rungs, events=())) == said
