"""One bond: its energy, its two strengths, and the mix of both.

Sources
-------
Area of the force-opening law = energy of parting, the definition of a cohesive law [turon-2007] (memory);
ellipse (Fs / Fs0)^2 + (Fn / Fn0)^2 = 1 at failure: common form for spot welds, from memory.
"""

import numpy as np
import pytest
from scipy.integrate import quad

from sim.bond import bond_law, bond_response, envelope
from sim.checks import bonds
from sim.checks.bonds import WAYS, parting_work, pulled, strengths_on_ellipse

SEAM = {
    "strength": 5.0e3,
    "energy": 60.0,
    "shear_ratio": 19.0,
    "rise_m": 3.0e-4,
    "pressure": 2.7e7,
    "length_m": 0.02,
}
WELD = {"strength": 1.5e3, "energy": 3.0, "shear_ratio": 2.0, "rise_m": 2.0e-4, "pressure": 1.0e6}
LAWS = {
    "seam": SEAM,
    "strong seam": SEAM | {"strength": 12.0e3, "energy": 250.0, "shear_ratio": 5.0},
    "weak seam": SEAM | {"strength": 4.0e3, "energy": 12.0, "shear_ratio": 3.0, "rise_m": 1.0e-4},
    "weld": WELD,
    "no plateau": WELD | {"plateau_share": 0.0},
}


def size(law):
    return law.get("length_m", 1.0)


@pytest.mark.parametrize("name", list(LAWS))
def test_area_under_the_law_is_its_energy(name):
    row = bond_law(**LAWS[name])
    kinks = row[1:3]
    end = row[3]
    area, _ = quad(
        lambda d: envelope(d, row)[1], 0.0, end, points=list(kinks), limit=200, epsabs=0, epsrel=1e-10
    )
    # 1e-9: straight pieces, integrated piece by piece
    np.testing.assert_allclose(area, LAWS[name]["energy"], rtol=1e-9)
    stored, spent, force, _ = bond_response(1.01 * end, 0.0, row)
    np.testing.assert_allclose(
        (stored, spent, force), (0.0, LAWS[name]["energy"], 0.0), rtol=1e-9, atol=1e-12
    )


@pytest.mark.parametrize("name", list(LAWS))
@pytest.mark.parametrize("way", list(WAYS))
def test_parting_costs_the_energy_per_length_times_the_length_in_every_direction(name, way):
    law = LAWS[name]
    work, spent = parting_work(law | {"length_m": size(law)}, WAYS[way])
    # 1e-6, the case's figure; the force is piecewise straight, so the trapezoid is exact
    np.testing.assert_allclose((work, spent), law["energy"] * size(law), rtol=1e-6)


@pytest.mark.parametrize("name", ["seam", "weld"])
def test_rows_stand_for_the_door_s_own_seam(name):
    row = bonds.parting_energy(name, "peel")
    assert row.passed
    np.testing.assert_allclose(row.got, LAWS[name]["energy"] * size(LAWS[name]), rtol=1e-6)
    assert bonds.parting_booked(name, "mix").got == pytest.approx(row.got, rel=1e-6)


@pytest.mark.parametrize("name", list(LAWS))
@pytest.mark.parametrize("slip_share", [0.0, 0.02, 0.1, 0.3, 0.7, 1.0])
def test_strengths_meet_on_the_ellipse(name, slip_share):
    law = LAWS[name]
    # 1e-9: the law's own peak, met exactly at the end of its rise
    np.testing.assert_allclose(
        strengths_on_ellipse(law | {"length_m": size(law)}, slip_share), 1.0, rtol=1e-9
    )


def test_closing_presses_and_never_pulls():
    law = LAWS["seam"]
    forces, spent = pulled(law, (0, -1, 0), [1.0e-5, 2.0e-5, 1.0e-5])
    # penalty per length times length, on top of the bead's own zero opening
    np.testing.assert_allclose(
        forces[:, 1], -law["pressure"] * size(law) * np.array([1, 2, 1]) * 1.0e-5, rtol=1e-9
    )
    assert spent == 0.0
