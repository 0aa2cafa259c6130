"""A squeeze, then a push along the car: the crease has to be deeper than the crown to go in.

Sources
-------
A pinch leaves a crease inward, a later push along the car makes it bigger; a door nobody pinched does not go
in: common practice, no source.  A bow pressed along grows with its own sign, w0 / (1 - P / Pcr)
[timoshenko-gere-1961].  A squeeze of 60 mm leaves less than the skin was crowned by, one of 100 mm more.
"""

from functools import cache, lru_cache
from types import SimpleNamespace

import numpy as np
import pytest

from sim.creases import LEAST_M, crease_in, crease_words, upper_moved_m, upper_nodes
from sim.door_model import build_model
from sim.ledger import Ledger
from sim.plan import Car, Ease, EdgePoint, Spread, Squeeze
from sim.run import Begin, MoveRun

CAR = Car(lattice_spacing_m=0.06)
SEATS = (0.61, 0.62, 0.63)
PUSH_M = 0.005


@cache
def left_by(closing_m):
    """Return what a squeeze across the upper panel leaves; nothing squeezed is the untouched door."""
    model = build_model(CAR)
    begin = Begin(model.start, Ledger())
    if not closing_m:
        return begin
    for move in (Squeeze(along_m=0.55, height_m=0.60, closing_m=closing_m), Ease()):
        run = MoveRun(model, move, begin)
        list(run)
        begin = run.end
    return begin


@lru_cache
def pushed(closing_m, along_m):
    """Return the push along the car, up to 5 mm."""
    door = EdgePoint(along_m=along_m, depth_m=0.02)
    run = MoveRun(build_model(CAR), Spread(door=door, tilt_rad=0.0, opening_m=PUSH_M), left_by(closing_m))
    list(run)
    return run


def over_the_crease():
    """Return the skin's nodes where the deep squeeze has creased it, and their crown [m]."""
    model = build_model(CAR)
    crease = crease_in(model, left_by(0.10).state.points)
    return crease.nodes, float(model.start.points[crease.nodes, 1].mean())


def gone_m(run, nodes):
    first, last = run.ends
    return float((last.points[nodes, 1] - first.points[nodes, 1]).mean())


def bow_m(closing_m, nodes):
    """Return how far the skin stands out of its hem's plane before the push."""
    return float(left_by(closing_m).state.points[nodes, 1].mean())


def test_only_the_deep_squeeze_turns_the_bow_round():
    nodes, crown = over_the_crease()
    assert bow_m(0.0, nodes) == pytest.approx(crown) and crown > 0.03
    assert 0.0 < bow_m(0.06, nodes) < crown - 0.010  # in by more than counts as moved, and still bowed out
    assert bow_m(0.10, nodes) < -0.01


@pytest.mark.parametrize("along_m", SEATS)
def test_the_skin_begins_to_go_the_way_it_is_bowed(along_m):
    nodes, _ = over_the_crease()
    for closing_m in (0.0, 0.06, 0.10):
        way = gone_m(pushed(closing_m, along_m), nodes)
        assert np.sign(way) == np.sign(bow_m(closing_m, nodes))
        assert abs(way) > 5.0e-4  # half a millimetre: the solver's own is a thousandth of that
    assert abs(gone_m(pushed(0.10, along_m), nodes)) < gone_m(pushed(0.0, along_m), nodes)


def moved(points_m):
    return SimpleNamespace(points=points_m)


def test_the_sentence_names_the_crease_that_was_there():
    model = build_model(CAR)
    rest = model.start.points
    squeezed = left_by(0.10).state.points
    crease = crease_in(model, squeezed)
    assert 0.03 < crease.deep_m < 0.10
    for way_m, words in ((-0.03, "went 30 mm further in"), (0.03, "came 30 mm back out"), (0.0, "stayed")):
        after = squeezed.copy()
        after[:, 1] += way_m
        assert words in crease_words(model, moved(squeezed), moved(after))
    dent = rest.copy()
    dent[crease.nodes, 1] -= 0.9 * LEAST_M
    assert crease_in(model, dent) is None and crease_words(model, moved(rest), moved(dent)) == ""
    assert "The crease that was there before" in pushed(0.10, 0.62).result(with_residual=False).sentence
    assert "crease" not in pushed(0.0, 0.62).result(with_residual=False).sentence


def test_the_upper_panel_is_read_between_bar_and_belt():
    model = build_model(CAR)
    after = model.start.points.copy()
    skin, inner = (upper_nodes(model, sheet) for sheet in ("skin", "inner"))
    assert not set(skin) & set(inner)
    assert np.abs(after[skin, 2] - 0.48).max() < 0.15 and np.abs(after[skin, 0] - 0.525).max() < 0.15
    after[skin, 1] -= 0.02
    after[inner, 1] += 0.01
    gone = upper_moved_m(model, moved(model.start.points), moved(after))
    assert gone == pytest.approx({"skin": -0.02, "inner": 0.01})
