"""Curves of room against progress: read from a run's files, compared only from one start."""

import csv
import io

import numpy as np
import pytest

from sim.problems import PlanError
from ui.state.room_curve import PARTS, curve_of, one_start, table

HEADS = [
    "move_index",
    "opening_m",
    *(f"clearance_{part.replace(' ', '_')}_m" for part in PARTS),
    "exit_width_m",
]
# a cut done at once, a press of 40 mm, let off, a press of 60 mm
STEPS = [(0, 0.0), (0, 0.0), (1, 0.0), (1, 0.02), (1, 0.04), (2, 0.04), (2, 0.0), (3, 0.0), (3, 0.06)]
HIP = [0.015, 0.016, 0.016, 0.010, 0.030, 0.030, 0.028, 0.028, 0.080]


def series(hip=HIP, heads=HEADS):
    out = io.StringIO()
    writer = csv.DictWriter(out, heads)
    writer.writeheader()
    for (move, opening), room in zip(STEPS, hip, strict=True):
        row = dict.fromkeys(heads, 0.3) | {"move_index": move, "opening_m": opening}
        if "clearance_hip_m" in heads:
            row["clearance_hip_m"] = room
        writer.writerow(row)
    return out.getvalue()


def result(start="ab" * 32, version="3", title="Fold"):
    return {"title": title, "model_version": version, "moves": [{"start_sha256": start}]}


def test_progress_is_the_tools_way_of_all_moves_after_one_another():
    curve = curve_of(result(), series())
    np.testing.assert_allclose(curve.way_m, [0.0, 0.0, 0.0, 0.02, 0.04, 0.04, 0.04, 0.04, 0.10])
    np.testing.assert_allclose(curve.progress, [0.0, 0.0, 0.0, 0.2, 0.4, 0.4, 0.4, 0.4, 1.0])
    assert curve.move.tolist() == [1, 1, 2, 2, 2, 3, 3, 4, 4]


def test_the_least_room_is_told_with_where_and_to_which_part():
    curve = curve_of(result(), series())
    np.testing.assert_allclose(curve.least_m, HIP)
    assert (curve.least_at, curve.nearest(curve.least_at)) == (3, "hip")
    assert curve.change_m(1.0 / 3.0) == pytest.approx(-0.005)
    assert curve.change_m(0.1) == pytest.approx(0.0)
    assert "less room on the way" in curve.sentence() and "20 % (hip)" in curve.sentence()
    risen = curve_of(result(), series([0.015 + 0.005 * k for k in range(9)]))
    assert "never less room" in risen.sentence()


def test_only_runs_of_one_start_and_one_version_are_compared():
    here = curve_of(result(), series())
    assert one_start([here, curve_of(result(title="Rip"), series())]) == "ab" * 32
    for other, word in ((result(start="cd" * 32), "one start"), (result(version="2"), "versions")):
        with pytest.raises(PlanError, match=word):
            one_start([here, curve_of(other, series())])


def test_a_run_of_a_single_door_has_no_body_parts():
    with pytest.raises(PlanError, match="extent = 'side'"):
        curve_of(result(), series(heads=["move_index", "opening_m", "exit_width_m"]))


def test_a_plan_without_any_way_stands_at_nothing():
    rows = series().splitlines()
    curve = curve_of(result(), "\n".join(rows[:3]) + "\n")
    assert curve.progress.tolist() == [0.0, 0.0]


def test_the_table_has_a_row_for_each_plan_and_moment_and_says_its_units():
    curve = curve_of(result(), series())
    rows = list(csv.DictReader(io.StringIO(table([curve, curve]))))
    assert len(rows) == 2 * len(STEPS)
    assert [float(row["clearance_hip_m"]) for row in rows[: len(STEPS)]] == HIP
    assert all("_" in name for name in rows[0] if name not in ("plan", "move"))
