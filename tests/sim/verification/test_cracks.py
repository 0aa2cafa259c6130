"""Bonded arms split apart and slid along each other: compliance, running load and books.

Sources
-------
[kanninen-1973] arms on an elastic foundation: from memory; derived again here from its equation.
[russell-1982] end-notched bar: from memory; figures computed from the formula.
[goland-reissner-1944] lap whose sheets bend: from memory; figures computed from the formula.
"""

import numpy as np
import pytest

from sim.checks import cracks, laps, sections

# compliance [mm/kN] and running load [N] computed from the closed form
KANNINEN = {"thick": (0.29527, 1185.6), "skin": (136.130, 36.206)}


def foundation_compliance(case):
    """Return the arms' opening per load from E I w'''' + k w = 0 ahead of the crack, matched at the tip.

    w = exp(-l x) (A cos l x + B sin l x), moment P a and shear P at the tip, cantilever beyond it.
    """
    l, bending, a = 1.0 / case.reach_m, case.bending, case.crack_m  # noqa: E741 - the formula's own letter
    # w'' = 2 l^2 e^{-lx} (A sin - B cos) and w''' = 2 l^3 e^{-lx} (A (cos - sin) + B (sin + cos)) at x = 0
    B = -a / (2.0 * l**2 * bending)
    A = 1.0 / (2.0 * l**3 * bending) - B
    slope = l * (B - A)
    return 2.0 * (A - slope * a + a**3 / (3.0 * bending))


@pytest.mark.parametrize("name", list(KANNINEN))
def test_the_closed_form_is_the_beam_on_its_foundation(name):
    case = cracks.SPLITS[name]
    np.testing.assert_allclose(case.compliance, foundation_compliance(case), rtol=1e-9)
    np.testing.assert_allclose((1e6 * case.compliance, case.load_n), KANNINEN[name], rtol=1e-4)
    # energy released per crack length, by difference of the compliance
    step = 1e-6
    longer, shorter = (
        foundation_compliance(type(case)(case.name, case.height_m, case.width_m, case.crack_m + s))
        for s in (step, -step)
    )
    released = case.load_n**2 * (longer - shorter) / (2.0 * step) / (2.0 * case.width_m)
    np.testing.assert_allclose(released, case.energy_j_per_m2, rtol=1e-6)


@pytest.mark.parametrize("name", list(KANNINEN))
def test_double_cantilever_opens_by_kanninens_compliance(name):
    row = cracks.split_compliance(name, 2)
    assert row.passed
    np.testing.assert_allclose(row.got, KANNINEN[name][0], rtol=0.05)  # the case's allowance


@pytest.mark.parametrize(("name", "per_reach"), [("thick", 8), ("thick", 16), ("skin", 8)])
def test_double_cantilever_runs_at_kanninens_load_and_its_books_close(name, per_reach):
    load, books = cracks.split_load(name, per_reach), cracks.split_books(name, per_reach)
    assert load.passed
    assert books.passed
    np.testing.assert_allclose(load.got, KANNINEN[name][1], rtol=0.05)  # the case's allowance
    np.testing.assert_allclose(books.got, books.expected, rtol=0.02)  # the case's figure
    assert books.expected > 0.0


@pytest.mark.slow
def test_end_notched_bar_bends_and_runs_as_the_formula_says():
    rows = sections.notched_compliance(8), sections.notched_load(8)
    assert all(row.passed for row in rows)
    np.testing.assert_allclose([row.expected for row in rows], (0.063048, 17.454), rtol=1e-4)
    np.testing.assert_allclose([row.got for row in rows], (0.063048, 17.454), rtol=0.08)  # the allowance


@pytest.mark.parametrize(("sheet_m", "computed_mpa"), [(1.5e-3, 28.34), (0.8e-3, 20.20)])
@pytest.mark.parametrize("layers", [4, 6])
def test_lap_that_bends_peaks_above_the_lap_that_only_stretches(sheet_m, computed_mpa, layers):
    row, flat = sections.bent_lap(sheet_m, layers), laps.lap(sheet_m, 20)
    assert row.passed
    np.testing.assert_allclose(row.expected, computed_mpa, rtol=1e-3)  # the printed digits
    np.testing.assert_allclose(row.got, computed_mpa, rtol=0.15)  # the case's allowance
    # between the two closed forms, nearer the one that bends
    assert flat.got < row.got
    assert abs(row.got - computed_mpa) < abs(row.got - flat.got)
