"""The two attacks on finer and coarser lattices: the verdict is the metal's and not the lattice's.

The first figures are frozen.  They are believed because both stand inside hand estimates of the trade made
without this program (seam 0.6-1.7 kN and up, within a factor of two to three; latch at its own strength, 1.25
times the 9-11 kN of UN R11 / GTR 1, from memory), because three seats each agree, and because the ledger
closes.  Order and sign are the claim; the newtons guard against a change that nobody meant.
"""

import msgspec
import pytest

from sim.run import STEP_M
from tests.sim.runs.solved import CAR, DEEP_M, car, edge, solve, solved

LIP, DEEP = edge(), edge(depth_m=DEEP_M)


@pytest.mark.parametrize(
    ("move", "kind", "opening_m", "force_n"),
    [(LIP, "seam parting", 0.0125, 2.58e3), (DEEP, "latch free", 0.0070, 16.2e3)],
    ids=["lip", "deep"],
)
def test_first_events_stand_where_they_stood(move, kind, opening_m, force_n):
    event = solved(CAR, move).first
    assert event.kind == kind
    # one step of the grid, and the spread over three seats 10 mm apart
    assert event.opening_m == pytest.approx(opening_m, abs=1.001 * STEP_M)
    assert event.force_n == pytest.approx(force_n, rel=0.08)


@pytest.mark.slow
@pytest.mark.parametrize("spacing_m", [0.060, 0.050])  # the finer ones: further down, with all that follows
def test_lip_parts_the_seam_on_every_lattice(spacing_m):
    answer = solve(car(lattice_spacing_m=spacing_m), LIP)
    assert answer.first.kind == "seam parting"
    assert answer.result.latch_demand_ratio < 0.5
    assert answer.result.ledger_closure_ratio < 0.02


@pytest.mark.slow
@pytest.mark.parametrize(
    "spacing_m",
    [
        0.060,
        0.050,
        0.036,
        0.030,
    ],
)
def test_deep_frees_the_latch_on_every_lattice(spacing_m):
    answer = solve(car(lattice_spacing_m=spacing_m), DEEP)
    assert answer.result.ledger_closure_ratio < 0.02
    assert answer.first.kind == "latch free"
    # the last frame is of the increment in which the latch lets go and the door jumps
    assert answer.frames[-2].parted_length_m == 0.0


LATTICES_M = (0.045, 0.036, 0.030)
"""The default spacing and two finer ones."""
SETTLED_M = (0.03, 0.035, 0.04)
"""Openings at which as much seam has parted on all three; at 20 mm a node more or less is a third of it."""


def _on_lattices(move):
    """Return a push on the three lattices, to 60 mm, past all that it lets go first."""
    move = msgspec.structs.replace(move, opening_m=0.06, stop_at=())
    return [solve(car(lattice_spacing_m=spacing), move) for spacing in LATTICES_M]


@pytest.fixture(scope="module")
def lips():
    return _on_lattices(LIP)


@pytest.fixture(scope="module")
def deeps():
    return _on_lattices(DEEP)


def _order(answer):
    """Return what the metal and the tips did, in order; a mark to stop at is no event of theirs."""
    events = sorted(answer.result.events, key=lambda event: event.opening_m)
    events = [event for event in events if event.kind != "stop here"]
    return tuple(dict.fromkeys(event.kind for event in events))


def _peak_n(answer):
    events = (event.force_n for event in answer.result.events)
    return max(*events, *(frame.force_n for frame in answer.frames))


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_on_the_lip_three_lattices_tell_one_story(lips):
    assert [_order(answer) for answer in lips] == [("tip slipping", "seam parting", "skin tearing")] * 3
    peaks = [_peak_n(answer) for answer in lips]
    assert max(peaks) < 1.15 * min(peaks)
    # which end of the parted length tears first, and when, is the lattice's (`sim.checks.necks`, rows known
    # to miss): past 40 mm the length of seam parted hangs on it
    for opening_m in SETTLED_M:
        parted = [answer.until(opening_m).parted_length_m for answer in lips]
        assert max(parted) < 1.2 * min(parted)
    assert all(answer.result.latch_demand_ratio < 0.5 for answer in lips)
    assert all(answer.result.ledger_closure_ratio < 0.02 for answer in lips)


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_behind_the_bend_three_lattices_tell_one_story(deeps):
    assert [_order(answer)[0] for answer in deeps] == ["latch free"] * 3
    peaks = [_peak_n(answer) for answer in deeps]
    assert max(peaks) < 1.15 * min(peaks)
    # a door whose latch is free jumps out, and on the finest lattice that parts one node's share of its hem
    assert max(answer.result.parted_length_m for answer in deeps) < 0.03
    assert all("folding out" in _order(answer) for answer in deeps)
