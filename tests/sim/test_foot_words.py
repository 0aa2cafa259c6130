"""What is said of a pillar's foot once its spots have popped: how many, the tensioner, room for blades.

Sources
-------
That a fold shows popped welds and the belt tensioner at the foot, and that one looks there for room for a
last cut: common practice, no source. The side is built and not pushed: its spots are let go by hand.
"""

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from sim.bond import END
from sim.foot_words import foot_words
from sim.hidden import STRIPPED, fittings_of
from sim.lookout import FOOT_M, foot_spots
from sim.pillar import WELD_KIND
from sim.plan import Car, Plan
from sim.side import SideModel
from sim.wreck import model_of


@pytest.fixture(scope="module")
def side():
    model = model_of(Plan(car=Car(extent="side", lattice_spacing_m=0.09)))
    assert isinstance(model, SideModel)
    return model


def folded(side, count, *, trim=True, before=0):
    """Return a move at whose end ``count`` of the foot's spots are gone."""
    bonds, state = side.structure.bonds, side.start
    low = np.flatnonzero(bonds.of(WELD_KIND) & (side.structure.points[bonds.nodes[:, 0], 2] < FOOT_M))
    worst = state.worst.copy()
    worst[low[:count]] = 2.0 * bonds.law[low[:count], END]
    kept = dict(state.kept)
    if not trim:
        items = fittings_of(side, state).items
        kept[STRIPPED] = np.array([float(item.kind == "trim") for item in items])
    end = replace(state, worst=worst, kept=kept)
    frames = (SimpleNamespace(spots_gone=before), SimpleNamespace(spots_gone=count, state=end))
    return SimpleNamespace(ends=frames, model=side, network=side.network), len(low)


def test_a_foot_that_held_is_not_spoken_of(side):
    assert foot_words(folded(side, 0)[0]) == ""
    assert foot_words(folded(side, 5, before=5)[0]) == ""  # an earlier move popped them


def test_popped_spots_are_counted_of_those_that_are_there(side):
    run, spots = folded(side, 5)
    assert foot_spots(side.structure, run.ends[1].state) == (5, spots)
    assert foot_words(run).startswith(f"At the foot 5 of {spots} spots are gone; ")


def test_the_tensioner_is_told_hidden_while_trim_is_on_and_seen_once_it_is_off(side):
    assert "trim still hides the belt tensioner there" in foot_words(folded(side, 5)[0])
    assert "the belt tensioner shows there" in foot_words(folded(side, 5, trim=False)[0])


def test_a_straight_pillar_between_shut_doors_leaves_blades_no_room_and_one_with_nothing_round_it_does(
    side, monkeypatch
):
    run, _ = folded(side, 5)
    assert foot_words(run).endswith("blades that open 180 mm have no room for a last cut.")
    monkeypatch.setattr("sim.lookout.room_for", lambda *_: True)
    assert foot_words(run).endswith("blades that open 180 mm have room for a last cut.")
