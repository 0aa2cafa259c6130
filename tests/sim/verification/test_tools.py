"""The spreader's curve as the standards read it, what a run keeps to, and what every run must keep.

Sources
-------
[nfpa-1936-2015] ten readings from closed to 95 % of the widest opening; [en-13204-2016] spreader types.
[save-massonnet-1972] collapse of round plates: from memory.
Virtual work, balance and mirror image: conservation laws, no source.
"""

import msgspec
import numpy as np
import pytest

from sim.checks import collapse, crush, runs, tools
from sim.plan import Tool


def test_ten_readings_of_a_rising_curve():
    # evenly from 20 kN closed to 60 kN at 0.8 m: every tenth of 0.95 x 40 kN, by hand
    np.testing.assert_allclose(tools.readings_n(tools.RISING), 20e3 + 38e3 * np.arange(10) / 9.0, rtol=1e-12)
    assert tools.highest().passed
    assert tools.lowest().passed
    assert (tools.highest().got, tools.lowest().got) == pytest.approx((58.0, 20.0))


@pytest.mark.parametrize(
    ("name", "newtons", "metres"), [("AS", 20e3, 0.6), ("BS", 50e3, 0.8), ("CS", 80e3, 0.5)]
)
def test_types_ask_for_force_and_distance(name, newtons, metres):
    assert tools.TYPES[name] == (newtons, metres)
    weak = msgspec.structs.replace(Tool(), force_n=(0.99 * newtons,) * 10)
    assert tools.readings_n(weak).min() < newtons


def test_the_ready_spreader_is_of_the_type_it_is_called():
    force, distance = tools.type_force(), tools.type_distance()
    assert force.passed
    assert distance.passed
    assert force.got >= 20.0
    assert distance.got >= 600.0


def test_a_run_stalls_where_the_curve_says():
    row = tools.stall()
    assert row.passed
    np.testing.assert_allclose(row.got, 0.8, rtol=0.01)  # the solver's own tolerance of a stall


@pytest.mark.parametrize("depth_m", [0.005, 0.120])
def test_energy_gained_per_opening_is_the_tips_force(depth_m):
    row = tools.virtual_work(depth_m)
    assert row.passed
    assert row.expected > 500.0
    np.testing.assert_allclose(row.got, row.expected, rtol=1e-6)


@pytest.mark.parametrize("seat", list(runs.DEPTH_M))
def test_a_short_push_keeps_what_every_run_must(seat):
    rows = {make: make(seat, 0.06) for make in (runs.forces, runs.moments, runs.books, runs.mirror)}
    assert all(row.passed for row in rows.values())
    assert rows[runs.forces].got < 1e-6
    assert rows[runs.moments].got < 1e-6
    assert rows[runs.books].got < 0.02
    assert rows[runs.mirror].got < 1e-3
    assert max(frame.force_n for frame in runs.pushed(seat, 0.06).frames) > 500.0


@pytest.mark.parametrize("angle_rad", [0.3, 2.0])
def test_a_door_turned_as_one_has_no_energy(angle_rad):
    row = runs.rigid(angle_rad, 0.06)
    assert row.passed
    assert 0.0 <= row.got < 1e-9


# 6 m, 11.26 m over the radius squared, and 2 pi m, with m = s t^2 / 4 and a 60 mm plate of 5 mm, 200 MPa
@pytest.mark.parametrize(
    ("edge", "load", "kilonewtons"),
    [("supported", "point", 7.854), ("supported", "even", 23.562), ("clamped", "even", 44.218)],
)
@pytest.mark.parametrize("rings", [8, 16])
def test_thick_round_plates_collapse(edge, load, kilonewtons, rings):
    row = collapse.collapse(edge, load, rings)
    assert row.passed
    np.testing.assert_allclose(row.got, kilonewtons, rtol=0.15)  # the case's allowance


# F = min(0.2 x, 25) + 0.1 max(0, x - 305) kN, x in mm [fmvss-214-2007]: areas and end value by hand
@pytest.mark.parametrize(
    ("stage", "kilonewtons"),
    [
        ("initial", (0.5 * 125.0 * 25.0 + 27.0 * 25.0) / 152.0),
        ("intermediate", (0.5 * 125.0 * 25.0 + 180.0 * 25.0) / 305.0),
        ("peak", 25.0 + 15.2),
    ],
)
def test_means_and_peak_of_a_known_crush_curve(stage, kilonewtons):
    row = crush.known_curve(stage)
    assert row.passed
    np.testing.assert_allclose(row.expected, kilonewtons, rtol=1e-4)  # the printed digits
    np.testing.assert_allclose(row.got, kilonewtons, rtol=1e-3)  # the case's figure
