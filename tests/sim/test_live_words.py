"""What is said while the tips open: an event as it happens, else what is nearest to giving, and its share."""

from types import SimpleNamespace

import pytest

from sim.event_kinds import KINDS
from sim.outcome import HAPPENS, live_words
from sim.record import Event, Rung


def moment(*events, ladder=(), parted=0.0, torn=0.0):
    return SimpleNamespace(
        events=events,
        ladder=tuple(Rung(*rung) for rung in ladder),
        parted_length_m=parted,
        torn_length_m=torn,
    )


SEAM = Event("seam parting", "seam", 0.01, 2000.0)
SLIP = Event("tip slipping", "hem", 0.01, 2000.0)
LATCH = Event("latch free", "latch", 0.03, 9000.0)
SLIPPING = [("hem", "tip slipping", 0.96), ("seam", "seam parting", 0.6)]


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


def test_of_two_events_in_one_moment_both_are_told_and_what_gives_comes_first():
    assert live_words(moment(SLIP, SEAM)) == "the seam parts; the tip slips along the metal"
    assert live_words(moment(SEAM, SLIP, LATCH)).startswith("the latch lets go; the seam parts")


def test_on_the_way_what_has_happened_to_the_metal_comes_before_what_is_near():
    way = (moment(), moment(SEAM, parted=0.03), moment(ladder=SLIPPING, parted=0.43))
    said = "the outer skin has come away over 430 mm; the tip is nearest to slipping, 96 %"
    assert live_words(way[-1], way) == said
    alone = live_words(way[-1])  # of a moment by itself it is not known what was before
    assert alone == "the tip is nearest to slipping, 96 %"


def test_what_a_move_before_has_parted_is_not_told_as_this_move_s():
    way = (moment(parted=0.43), moment(ladder=SLIPPING, parted=0.44))
    assert live_words(way[-1], way) == "the tip is nearest to slipping, 96 %"


def test_a_latch_that_has_let_go_is_what_counts_afterwards():
    way = (moment(), moment(SEAM, LATCH, parted=0.05), moment(parted=0.2, torn=0.1))
    assert live_words(way[-1], way) == "the latch has let go"


def test_a_sheet_that_has_torn_is_told_with_its_length():
    way = (moment(), moment(torn=0.06))
    assert live_words(way[-1], way) == "the sheet has torn over 60 mm"
