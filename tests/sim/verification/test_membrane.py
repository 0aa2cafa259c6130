"""In-plane sheet springs: the distorted patch, the pulled bar and the sheared panel, figures typed here.

Sources
-------
[macneal-harder-1985] the distorted patch under a linear edge displacement: the paper was found, its
numbers are from memory; the stresses for both Poisson ratios are computed (Hooke, plane stress).
Bar and panel: F L / E A and F / b t G, textbook, computed from the formula.
"""

import numpy as np
import pytest

from sim.checks import membrane
from sim.checks.specimens import ANGLES_DEG


@pytest.mark.parametrize("nu", [0.25, 1.0 / 3.0])
def test_inner_points_of_a_distorted_patch_land_on_the_linear_field(nu):
    row = membrane.patch_field(nu)
    assert row.passed
    # the field's own size times 1e-6: coupled edge springs hold a constant strain exactly
    assert 0.0 <= row.got < 1e-6


@pytest.mark.parametrize(
    ("nu", "sigma_mpa", "tau_mpa"),
    [
        (0.25, 1333.3333, 400.0),  # from memory, and computed
        (1.0 / 3.0, 1500.0, 375.0),  # computed
    ],
)
def test_patch_stress_is_the_constant_stress(nu, sigma_mpa, tau_mpa):
    rows = membrane.patch_direct(nu), membrane.patch_shear(nu)
    assert all(row.passed for row in rows)
    np.testing.assert_allclose([row.got for row in rows], (sigma_mpa, tau_mpa), rtol=1e-4)  # printed digits
    # the large-strain part of 1e-3 strain that was taken out, by hand: 1 + e/2 (1 + 1/4) and 1 + e
    assert membrane.green_over_linear(nu) == pytest.approx((1.000625, 1.001), abs=1e-9)


@pytest.mark.parametrize("nu", [0.3, 1.0 / 3.0])
@pytest.mark.parametrize("angle_deg", ANGLES_DEG)
def test_bar_lengthens_and_narrows_as_hooke_says(angle_deg, nu):
    growth, narrowing = membrane.bar_growth(angle_deg, nu), membrane.bar_narrowing(angle_deg, nu)
    assert growth.passed
    assert narrowing.passed
    # 0.1 %: the strain of 2.4e-4 itself is all that tells Green from small strain; same for every angle
    np.testing.assert_allclose(growth.got, 0.0238095, rtol=1e-3)
    np.testing.assert_allclose(narrowing.got, -nu * 1000.0 / (210e9 * 1e-3) * 1e3, rtol=1e-3)


@pytest.mark.parametrize(("nu", "shear_gpa"), [(0.3, 80.769), (1.0 / 3.0, 78.75)])
@pytest.mark.parametrize("angle_deg", ANGLES_DEG)
def test_sheared_panel_has_the_shear_modulus(angle_deg, nu, shear_gpa):
    row = membrane.panel_shear(angle_deg, nu)
    assert row.passed
    np.testing.assert_allclose(row.got, shear_gpa, rtol=1e-3)  # 0.1 %, as for the bar
