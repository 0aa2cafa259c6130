"""The two attacks on finer and coarser lattices: the verdict is the metal's and not the lattice's.

The first figures are frozen.  They are believed because both stand inside hand estimates of the trade made
without this program (seam 0.6-1.7 kN and up, within a factor of two to three; latch at its own strength, 1.25
times the 9-11 kN of UN R11 / GTR 1, from memory), because three seats each agree, and because the ledger
closes.  Order and sign are the claim; the newtons guard against a change that nobody meant.
"""

import numpy as np
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
@pytest.mark.parametrize("spacing_m", [0.060, 0.050, 0.036, 0.030])
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


@pytest.mark.slow
@pytest.mark.parametrize(
    "move",
    [
        pytest.param(
            LIP,
            id="lip",
            marks=pytest.mark.xfail(
                strict=True, reason="the tip slips earlier on the finest lattice: 4.3, 4.3 and 3.4 kN"
            ),
        ),
        pytest.param(DEEP, id="deep"),
    ],
)
def test_what_gives_first_and_the_highest_force_agree_on_three_lattices(move):
    answers = [solve(car(lattice_spacing_m=spacing), move) for spacing in (0.060, 0.045, 0.030)]
    assert len({answer.first.kind for answer in answers}) == 1
    peaks = [
        max(answer.first.force_n, *(float(np.max(frame.force_n)) for frame in answer.frames))
        for answer in answers
    ]
    assert max(peaks) / min(peaks) < 1.15
