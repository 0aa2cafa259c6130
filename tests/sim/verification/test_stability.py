"""Buckling: the load at which the flat state's tangent stops being positive definite, and the bent column.

Sources
-------
Euler P = pi^2 E I / (K L)^2; simply supported square plate pressed on two edges,
sigma = 4 pi^2 E / (12 (1 - nu^2)) (t / b)^2 [timoshenko-gere-1961]: from memory; 86.36 N, 21.59 N, 345.44 N
and 12.147 MPa are computed from the formulas, as are a bow's growth and the bend under a load off the middle.
The column beyond its load: elliptic integrals, typed here.
"""

import numpy as np
import pytest
from scipy.special import ellipe, ellipk

from sim.checks import stability


@pytest.mark.parametrize(("ends", "newtons"), [("pinned", 86.36), ("cantilever", 21.59), ("clamped", 345.44)])
@pytest.mark.parametrize("count", [16, 32])
def test_strip_buckles_at_eulers_load(ends, newtons, count):
    row = stability.euler(ends, count)
    assert row.passed
    # 3 %, the case's allowance for sixteen segments
    np.testing.assert_allclose(row.got, newtons, rtol=0.03)


@pytest.mark.parametrize("ends", list(stability.FACTOR))
def test_eulers_load_is_neared_on_finer_triangles(ends):
    """Second order or nearly: half the spacing has a quarter of the error, beside a clamp less than half."""
    errors = [stability.euler(ends, count).error for count in (16, 32)]
    assert stability.euler_settles(ends).passed
    assert 0.2 < errors[1] / errors[0] < 0.5


@pytest.mark.parametrize("angle_deg", list(stability.COLUMN))
def test_column_stands_where_the_elliptic_integrals_put_it(angle_deg):
    """Cantilever of tip angle a, k = sin(a / 2): P / Pcr = (2 K / pi)^2, x = 2 E / K - 1, y = 2 k / K."""
    k = np.sin(np.radians(angle_deg) / 2.0)
    K, E = ellipk(k**2), ellipe(k**2)
    exact = (2.0 * K / np.pi) ** 2, 2.0 * E / K - 1.0, 2.0 * k / K
    np.testing.assert_allclose(stability.COLUMN[angle_deg], exact, rtol=0.0, atol=1e-4)
    rows = [stability.column(angle_deg, way) for way in ("along", "across")]
    assert all(row.passed for row in rows)
    np.testing.assert_allclose(
        [row.got for row in rows], exact[1:], rtol=0.0, atol=0.04
    )  # the case's allowance


@pytest.mark.parametrize("sign", [1, -1])
def test_a_bow_pressed_along_grows_with_its_own_sign(sign):
    """w0 = 0.2 mm; at 0.3 and 0.5 of the buckling load 0.2857 and 0.4 mm, in or out as it was."""
    for share, millimetres in ((0.3, 0.2857), (0.5, 0.4)):
        row = stability.bowed(sign, share)
        assert row.passed
        # 1 %: the bow's higher half waves and the strip's spacing
        np.testing.assert_allclose(row.got, sign * millimetres, rtol=0.01)


@pytest.mark.parametrize("sign", [1, -1])
def test_a_load_off_the_middle_bends_the_strip_away_from_it(sign):
    """Off by e = 0.2 mm at half the buckling load: e (sec(pi / 2 sqrt(1/2)) - 1) = 0.2504 mm."""
    row = stability.off_the_middle(sign, 0.5)
    assert row.passed
    np.testing.assert_allclose(row.got, -sign * 0.2504, rtol=0.01)  # as above


def test_supported_plate_buckles_at_four():
    coarse, fine = stability.plate(8), stability.plate(16)
    assert coarse.passed
    assert fine.passed
    # 8 %, the case's allowance on 16 x 16
    np.testing.assert_allclose(fine.got, 12.147, rtol=0.08)
    assert stability.plate_settles().got < 0.6
