"""Made-up frames, doors and records: the state looks at a few of their fields and hands the rest on."""

from types import SimpleNamespace

import numpy as np
import pytest

from sim.record import Clearance, Event, Frame, MoveRecord, Rung


def make_frame(opening_m=0.0, *, move=0, force_n=0.0, events=(), ladder=(), ledger=None, gap_m=0.05):
    return Frame(
        move_index=move,
        increment=round(opening_m / 0.0025),
        opening_m=opening_m,
        force_n=force_n,
        points=np.zeros((3, 3)),
        seam_damage=np.zeros(2),
        load=np.zeros(1),
        ledger_j=ledger or {"work of the tips": 0.0},
        ladder=tuple(Rung(*rung) for rung in ladder),
        clearance=Clearance(gap_m, (0, 0, 0), (0, 0, 0), "chest"),
        parted_length_m=0.0,
        torn_length_m=0.0,
        latch_demand_ratio=0.0,
        skin_mid_outboard_m=0.0,
        inner_mid_outboard_m=0.0,
        drive_points=np.zeros((1, 3)),
        drive_forces=np.zeros((1, 3)),
        reactions={},
        iterations=1,
        events=tuple(Event(kind, "seam", opening_m, force_n) for kind in events),
    )


def make_record(openings, *, move=0, sentence="The metal bent."):
    result = SimpleNamespace(sentence=sentence, plan_effect="spent", seats=("hem lip", "pillar edge"))
    return MoveRecord(tuple(make_frame(o, move=move) for o in openings), result)


@pytest.fixture
def frame():
    return make_frame


@pytest.fixture
def record():
    return make_record
