"""The seam of a car's door: a bead along the hem, spots at a pitch, or both, and how good each bit of it is.

A bead that is missing over a length leaves the folded hem: to unroll it, the skin's flange turns by about
`FOLD_TURN_RAD` at its plastic moment, M_p = sigma_y t^2 / 4 per metre, under a force M_p / hem width.  A
seam point whose length is missing in part has both in proportion, so a gap costs the same on any lattice.

The seam's quality is a stationary random field along the hem, lognormal with mean one; its logarithm is
Gaussian with correlation exp(-d / l), made exactly on a fixed grid of stations, so that one seed is one hem
whatever the lattice [vanmarcke-1983].  A bead takes the mean over the length it stands for, a spot the value
where it sits.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.door import DoorMesh
from sim import materials
from sim.bond import bond_law, touch_law
from sim.carcheck import SEAM_RISE_M, WELD_RISE_M
from sim.plan import Car
from sim.structure import Bonds

Floats = NDArray[np.float64]

# lap shear 10-25 MPa on a 10 mm bead (hem-flange epoxy, from memory) over a peel strength of 4-12 N/mm
SEAM_SHEAR_RATIO = 19.0
SEAM_PRESSURE_N_PER_M2 = 8000.0 / SEAM_RISE_M  # as stiff closing as opening
FOLD_TURN_RAD = 1.2  # assumed: 25-40 J/m for 0.7 mm of skin steel, an estimate of the trade, is 0.9-1.5 rad
FOLD_SHEAR_RATIO = 1.0  # assumed: a fold without its bead slides as easily as it opens
LEAST_ENERGY_J_PER_M = 1.0  # assumed: a flange that is not folded at all still rubs
WELD_PRESSURE_N_PER_M = 1.0e6  # penalty of the flanges on each other at a spot
FIELD_STEP_M = 0.005  # grid of the random field along the hem


def hem_fold(car: Car) -> tuple[float, float]:
    """Return energy [J/m] and strength [N/m] of the folded hem alone, never more than the whole seam's."""
    skin = materials.SKIN[car.metal]
    moment = 0.25 * skin.yield_pa * car.skin_thickness_m**2 if car.metal != "composite" else 0.0
    energy = max(FOLD_TURN_RAD * moment, LEAST_ENERGY_J_PER_M)
    strength = max(moment / car.hem_width_m, LEAST_ENERGY_J_PER_M / car.hem_width_m)
    return min(energy, car.seam_energy_j_per_m), min(strength, car.seam_strength_n_per_m)


def quality_field(length_m: float, *, variation_ratio: float, correlation_m: float, seed: int) -> Floats:
    """Return the seam's quality at stations 0, 5, 10 ... mm of hem: mean 1, shape (k,), all above 0.

    Parameters
    ----------
    length_m : of hem; a longer one begins with the same values
    variation_ratio : standard deviation over mean, >= 0
    correlation_m : distance at which the logarithm's correlation has fallen to 1/e, > 0
    """
    count = int(np.ceil(length_m / FIELD_STEP_M)) + 1
    draws = np.random.Generator(np.random.PCG64(seed)).standard_normal(count)
    keep = np.exp(-FIELD_STEP_M / correlation_m)
    fresh = np.sqrt(1.0 - keep * keep)
    field = np.empty(count)
    field[0] = draws[0]
    for i in range(1, count):
        field[i] = keep * field[i - 1] + fresh * draws[i]
    spread = np.sqrt(np.log1p(variation_ratio**2))
    quality: Floats = np.exp(spread * field - 0.5 * spread**2)
    return quality


def mean_between(field: Floats, start_m: Floats, end_m: Floats) -> Floats:
    """Return the mean of a field on the 5 mm grid, straight between its points, over lengths of hem, (k,)."""
    grid = FIELD_STEP_M * np.arange(len(field))
    area = np.concatenate([[0.0], np.cumsum(0.5 * (field[1:] + field[:-1]) * FIELD_STEP_M)])

    def below(at: Floats) -> Floats:
        cell = np.clip((at / FIELD_STEP_M).astype(int), 0, len(field) - 2)
        rest = at - grid[cell]
        slope = (field[cell + 1] - field[cell]) / FIELD_STEP_M
        value: Floats = area[cell] + field[cell] * rest + 0.5 * slope * rest * rest
        return value

    mean: Floats = (below(end_m) - below(start_m)) / (end_m - start_m)
    return mean


def missing_share(car: Car, start_m: Floats, end_m: Floats) -> Floats:
    """Return how much of each length of hem has no bead, 0 .. 1, shape (k,); gaps may overlap."""
    covered = np.zeros_like(start_m)
    done = -np.inf
    for first, last in sorted((gap.start_m, gap.start_m + gap.length_m) for gap in car.bead_gaps):
        begin = max(first, done)
        covered += np.maximum(np.minimum(end_m, last) - np.maximum(start_m, begin), 0.0)
        done = max(done, last)
    share: Floats = covered / (end_m - start_m)
    return share


def _field(car: Car, length_m: float) -> Floats:
    return quality_field(
        length_m,
        variation_ratio=car.seam_variation_ratio,
        correlation_m=car.seam_correlation_m,
        seed=car.seam_seed,
    )


def bead_strength(car: Car, start_m: Floats, end_m: Floats, length_m: float) -> tuple[Floats, Floats, Floats]:
    """Return energy [J/m], peel strength [N/m] and shear over peel strength of lengths of hem, each (k,)."""
    share = missing_share(car, start_m, end_m)
    fold_energy, fold_strength = hem_fold(car)
    quality = np.ones_like(start_m)
    if car.seam_variation_ratio > 0.0:
        quality = mean_between(_field(car, length_m), start_m, end_m)
    bead_n = (1.0 - share) * quality * car.seam_strength_n_per_m
    energy = (1.0 - share) * quality * car.seam_energy_j_per_m + share * fold_energy
    strength = bead_n + share * fold_strength
    shear = (bead_n * SEAM_SHEAR_RATIO + share * fold_strength * FOLD_SHEAR_RATIO) / strength
    return energy, strength, np.where(share > 0.0, shear, SEAM_SHEAR_RATIO)


def weld_stations(car: Car, length_m: float) -> Floats:
    """Return where the spots sit along the hem [m]: half a pitch from its ends, one pitch apart."""
    count = max(2, round(length_m / car.weld_pitch_m))
    stations: Floats = (np.arange(count) + 0.5) * length_m / count
    return stations


def _hem_bonds(mesh: DoorMesh, stations: Floats, laws: Floats, kind: str) -> Bonds:
    """Return bonds at lengths along the hem, opening along the shut face's depth line."""
    hem = mesh.hem_station_m
    cell = np.clip(np.searchsorted(hem, stations, side="right") - 1, 0, len(hem) - 2)
    xi = (stations - hem[cell]) / (hem[cell + 1] - hem[cell])
    flange, deeper = mesh.wall[0], mesh.wall[1]
    nodes = np.stack(
        [
            mesh.hem_skin[cell],
            mesh.hem_skin[cell + 1],
            flange[cell],
            flange[cell + 1],
            deeper[cell],
            deeper[cell + 1],
        ],
        axis=1,
    )
    zero = np.zeros_like(xi)
    r = np.stack([1 - xi, xi, xi - 1, -xi, zero, zero], axis=1)
    p = np.stack([zero, zero, 1 - xi, xi, xi - 1, -xi], axis=1)
    count = len(stations)
    return Bonds(
        nodes.astype(np.int64),
        np.stack([r, p, np.zeros_like(p)], axis=1),
        np.zeros(count, bool),
        laws,
        np.zeros(count, np.int64),
        (kind,),
        stations,
        np.full(count, 2.0 * mesh.shape.hem_width_m),
    )


def _points(hem: Floats) -> tuple[Floats, Floats]:
    """Return the seam points' stations, two to a hem edge, and the length each stands for [m]."""
    length = np.diff(hem)
    stations = np.concatenate([hem[:-1] + 0.25 * length, hem[:-1] + 0.75 * length])
    share = np.concatenate([length, length]) / 2.0
    order = np.argsort(stations)
    return stations[order], share[order]


def _bead(car: Car, mesh: DoorMesh) -> Bonds:
    stations, share = _points(mesh.hem_station_m)
    whole = float(mesh.hem_station_m[-1])
    values = bead_strength(car, stations - 0.5 * share, stations + 0.5 * share, whole)
    laws = [
        bond_law(
            strength=float(strength),
            energy=float(energy),
            shear_ratio=float(shear),
            rise_m=SEAM_RISE_M,
            pressure=SEAM_PRESSURE_N_PER_M2,
            length_m=float(size),
        )
        for energy, strength, shear, size in zip(*values, share, strict=True)
    ]
    return _hem_bonds(mesh, stations, np.array(laws), "seam")


def _spots(car: Car, mesh: DoorMesh) -> Bonds:
    whole = float(mesh.hem_station_m[-1])
    stations = weld_stations(car, whole)
    quality = np.ones_like(stations)
    if car.seam_variation_ratio > 0.0:
        field = _field(car, whole)
        quality = np.interp(stations, FIELD_STEP_M * np.arange(len(field)), field)
    laws = [
        bond_law(
            strength=car.weld_peel_n * float(good),
            energy=car.weld_energy_j * float(good),
            shear_ratio=car.weld_shear_n / car.weld_peel_n,
            rise_m=WELD_RISE_M,
            pressure=WELD_PRESSURE_N_PER_M,
        )
        for good in quality
    ]
    return _hem_bonds(mesh, stations, np.array(laws), "weld")


def _bare(mesh: DoorMesh) -> Bonds:
    """Return the flanges' touch between spots: they press and never hold."""
    stations, share = _points(mesh.hem_station_m)
    laws = [touch_law(pressure=SEAM_PRESSURE_N_PER_M2 * float(size), offset_m=0.0) for size in share]
    return _hem_bonds(mesh, stations, np.array(laws), "hem touch")


def seam_bonds(car: Car, mesh: DoorMesh) -> Bonds:
    """Return the seam: a bead at two points per hem edge, spots with bare touch between, or both."""
    if car.seam == "bonded":
        return _bead(car, mesh)
    if car.seam == "mixed":
        return Bonds.join([_bead(car, mesh), _spots(car, mesh)])
    return Bonds.join([_spots(car, mesh), _bare(mesh)])
