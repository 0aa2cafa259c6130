"""Seams: the energy a gap leaves, the spots' places and strength, and the random field along the hem.

Sources
-------
Variance of the mean of a field with correlation exp(-d / l) over a length T:
2 (l / T)^2 (T / l - 1 + exp(-T / l)) of the point variance [vanmarcke-1983], from memory, derived again.
Mean and variance of a lognormal variable: any textbook of statistics.
Least strengths of a spot weld, t in mm, S in MPa: shear (-6.36e-7 S^2 + 6.58e-4 S + 1.674) S 4 t^1.5 N,
cross tension 1250 t^2.2 N [aws-welds-2013]; shop values are two to three times these; all from memory.
That a spot peels off well below what it holds in shear: common practice, no source.
Plastic moment of a sheet per metre, sigma_y t^2 / 4: textbook.  The turn of an unrolled hem is assumed.
"""

import math

import msgspec
import numpy as np
import pytest

from sim import materials
from sim.bond import END, LENGTH, bond_response
from sim.door_model import build_model
from sim.frames import seam_share_m
from sim.plan import BeadGap, Car
from sim.seam import FIELD_STEP_M, FOLD_TURN_RAD, hem_fold, mean_between, quality_field, weld_stations
from tests.sim.runs.solved import car

COARSE, FINE = 0.06, 0.045


def seam_of(of):
    """Return length [m], energy, strength (of a metre, or of a spot) and station of every seam bond."""
    bonds = build_model(of).structure.bonds
    mask = bonds.of("seam") | bonds.of("weld")
    law = bonds.law[mask]
    energy = np.array([bond_response(0.0, row[END], row)[1] for row in law])
    return law[:, LENGTH], energy, law[:, 0] * law[:, 1], bonds.station[mask]


def test_an_even_bead_has_the_car_s_energy_and_strength_everywhere():
    size, energy, strength, _ = seam_of(car(lattice_spacing_m=COARSE))
    np.testing.assert_allclose(energy, 60.0, rtol=1e-12)
    np.testing.assert_allclose(strength, 5000.0, rtol=1e-12)
    assert size.sum() == pytest.approx(build_model(car(lattice_spacing_m=COARSE)).mesh.hem_station_m[-1])


@pytest.mark.parametrize("spacing_m", [COARSE, FINE])
def test_a_gap_takes_the_bead_s_energy_over_its_length_and_leaves_the_fold_s(spacing_m):
    gaps = (BeadGap(1.0, 0.13), BeadGap(1.9, 0.05), BeadGap(1.08, 0.1))  # the first and the last overlap
    size, energy, _, _ = seam_of(car(lattice_spacing_m=spacing_m, bead_gaps=gaps))
    moment = materials.SKIN_STEEL.yield_pa * 0.0007**2 / 4.0
    lost = (0.18 + 0.05) * (60.0 - FOLD_TURN_RAD * moment)
    assert (size * energy).sum() == pytest.approx(60.0 * size.sum() - lost, rel=1e-9)


def test_the_fold_s_energy_lies_in_the_band_the_trade_gives():
    # 25-40 J/m for 0.7 mm of skin steel: estimate of the trade, no source
    energy, strength = hem_fold(Car())
    assert 25.0 <= energy <= 40.0
    assert strength < Car().seam_strength_n_per_m


def test_spots_sit_a_pitch_apart_and_half_a_pitch_from_the_ends():
    stations = weld_stations(car(weld_pitch_m=0.05), 2.3)
    assert len(stations) == 46
    np.testing.assert_allclose(np.diff(stations), 0.05, rtol=1e-12)
    assert stations[0] == pytest.approx(0.025)


def test_a_mixed_seam_holds_what_bead_and_spots_hold_together():
    bead = seam_of(car(lattice_spacing_m=COARSE))
    spots = seam_of(car(lattice_spacing_m=COARSE, seam="welded", weld_pitch_m=0.2))
    both = seam_of(car(lattice_spacing_m=COARSE, seam="mixed", weld_pitch_m=0.2))
    assert (both[0] * both[1]).sum() == pytest.approx((bead[0] * bead[1]).sum() + (spots[0] * spots[1]).sum())
    assert set(np.round(spots[3], 9)) < set(np.round(both[3], 9))
    # the hem is counted once: its length is the bead's
    model = build_model(car(lattice_spacing_m=COARSE, seam="mixed", weld_pitch_m=0.2))
    assert seam_share_m(model).sum() == pytest.approx(model.mesh.hem_station_m[-1])


def test_a_spot_s_strength_lies_between_the_least_allowed_and_three_times_it():
    thin_mm, tensile_mpa = 0.7, 300.0
    shear_n = (-6.36e-7 * tensile_mpa**2 + 6.58e-4 * tensile_mpa + 1.674) * tensile_mpa * 4.0 * thin_mm**1.5
    peel_n = 1250.0 * thin_mm**2.2
    plug_n = math.pi * 4.0 * math.sqrt(thin_mm) * thin_mm * 0.577 * tensile_mpa  # shear round the nugget
    assert shear_n == pytest.approx(plug_n, rel=0.03)  # the remembered formula against the computed one
    assert shear_n < Car().weld_shear_n < 3.0 * shear_n
    assert peel_n < Car().weld_peel_n < 3.0 * peel_n
    assert Car().weld_peel_n < 0.74 * Car().weld_shear_n


# ---- the random field --------------------------------------------------------------------------------------


def fields(variation, correlation, count=3000, length=0.5):
    return np.array([
        quality_field(length, variation_ratio=variation, correlation_m=correlation, seed=seed)
        for seed in range(count)
    ])  # fmt: skip


@pytest.fixture(scope="module")
def many():
    return fields(0.3, 0.1)


def test_mean_is_one_and_spread_is_what_was_asked(many):
    # 3000 hems: the mean's own spread is 0.3 / sqrt(3000) = 0.0055, the spread's about 0.005
    np.testing.assert_allclose(many.mean(axis=0), 1.0, atol=5 * 0.0055)
    np.testing.assert_allclose(many.std(axis=0), 0.3, atol=0.03)
    assert many.min() > 0.0


@pytest.mark.parametrize("distance_m", [0.02, 0.1, 0.2])
def test_correlation_of_the_logarithm_falls_as_an_exponential(many, distance_m):
    apart = round(distance_m / FIELD_STEP_M)
    logs = np.log(many)
    pairs = np.array([np.corrcoef(logs[:, i], logs[:, i + apart])[0, 1] for i in range(0, 60, 12)])
    # one coefficient of 3000 pairs spreads by (1 - rho^2) / sqrt(3000) < 0.019; five of them are averaged
    assert pairs.mean() == pytest.approx(math.exp(-distance_m / 0.1), abs=0.04)


@pytest.mark.parametrize("over_m", [0.05, 0.2, 0.4])
def test_a_mean_over_a_length_varies_less_as_the_variance_function_says(over_m):
    # small variation, where quality and its logarithm vary alike
    small = fields(0.05, 0.1)
    means = np.array([mean_between(f, np.array([0.02]), np.array([0.02 + over_m]))[0] for f in small])
    ratio = 0.1 / over_m
    expected = 0.05**2 * 2.0 * ratio**2 * (1.0 / ratio - 1.0 + math.exp(-1.0 / ratio))
    # variance of 3000 draws: relative spread sqrt(2 / 3000) = 0.026
    assert means.var() == pytest.approx(expected, rel=4 * 0.026)


def test_the_same_seed_is_the_same_hem_on_both_lattices():
    uneven = {"seam_variation_ratio": 0.3, "seam_seed": 7}
    coarse = seam_of(car(lattice_spacing_m=COARSE, **uneven))
    fine = seam_of(car(lattice_spacing_m=FINE, **uneven))
    # energy of the hem up to any station that both know: the running sums agree where the lengths end alike
    for at in (0.66, 1.64, 2.3):
        sums = []
        for size, energy, _, station in (coarse, fine):
            ends, total = station + 0.5 * size, np.cumsum(size * energy)
            sums.append(float(np.interp(at, ends, total)))
        assert sums[0] == pytest.approx(sums[1], rel=2e-3)  # half a seam point of 11 mm, interpolated
    other = seam_of(car(lattice_spacing_m=COARSE, seam_variation_ratio=0.3, seam_seed=8))
    assert np.abs(other[1] / coarse[1] - 1.0).max() > 0.1


def test_energy_and_strength_vary_together_and_the_spots_with_them():
    _, energy, strength, _ = seam_of(car(lattice_spacing_m=COARSE, seam_variation_ratio=0.4, seam_seed=3))
    np.testing.assert_allclose(energy / 60.0, strength / 5000.0, rtol=1e-12)
    _, energy, strength, _ = seam_of(
        car(lattice_spacing_m=COARSE, seam="welded", seam_variation_ratio=0.4, seam_seed=3)
    )
    np.testing.assert_allclose(energy / 3.0, strength / 1500.0, rtol=1e-12)
    assert energy.std() > 0.5


def test_no_variation_is_no_change_at_all():
    one, two = car(lattice_spacing_m=COARSE), car(lattice_spacing_m=COARSE, seam_seed=5)
    assert one != two
    np.testing.assert_array_equal(build_model(one).structure.bonds.law, build_model(two).structure.bonds.law)
    assert msgspec.structs.replace(two, seam_seed=0) == one
