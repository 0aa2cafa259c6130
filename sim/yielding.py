"""Yielding of sheet metal: plane-stress J2 flow in layers through the thickness.

A sheet's section is read at seven heights.  The three outer pairs are the three parallel parts with
bending shares .49 / .285 / .225 that begin to yield at 1.0 / 1.52 / 2.57 times the first-yield
curvature; the middle layer carries what is left of the membrane area.  The rule keeps E t and
E t^3 / 12 exactly, has a plastic moment of 1.50 My and follows the exact moment-curvature knee
M / My = 1.5 [1 - (ky / k)^2 / 3] within two per cent, so membrane and bending yield together without
a separate interaction formula.

The return mapping is the classical one for plane stress [simo-taylor-1986].
"""

from __future__ import annotations

import numpy as np
from numba import njit
from numpy.typing import NDArray

Floats = NDArray[np.float64]

PART_SHARES = (0.49, 0.285, 0.225)
PART_YIELD_RATIOS = (1.0, 1.52, 2.57)
LAYER_COUNT = 7


def layer_rule() -> tuple[Floats, Floats]:
    """Return heights and weights of the seven layers for a sheet of unit thickness.

    Returns
    -------
    heights : shape (7,), [-], height over thickness, within +-1/2
    weights : shape (7,), [-], share of the thickness; they sum to one
    """
    shares, ratios = np.array(PART_SHARES), np.array(PART_YIELD_RATIOS)
    height = 0.5 / ratios
    weight = shares / (24.0 * height**2)
    middle = 1.0 - 2.0 * weight.sum()
    heights = np.concatenate([-height, [0.0], height[::-1]])
    weights = np.concatenate([weight, [middle], weight[::-1]])
    return heights, weights


@njit(cache=True)
def plane_stress_return(
    strain: Floats,
    plastic_old: Floats,
    hardening_old: float,
    young_pa: float,
    poisson_ratio: float,
    yield_pa: float,
    hardening_pa: float,
    stress: Floats,
    plastic: Floats,
    tangent: Floats,
) -> tuple[float, float, float]:
    """Return hardening variable, stored and dissipated energy density of one layer; fill its stress.

    Strains are Voigt (xx, yy, 2xy).  ``stress``, ``plastic`` (new plastic strain) and ``tangent``
    (3, 3, consistent) are filled in place.  The three together derive from one incremental
    potential (stored + newly dissipated), so the tangent is symmetric.

    References
    ----------
    [simo-taylor-1986], plane-stress projection with a scalar equation in the plastic multiplier.
    """
    bulk = young_pa / (1.0 - poisson_ratio)
    shear = young_pa / (2.0 * (1.0 + poisson_ratio))
    e0 = strain[0] - plastic_old[0]
    e1 = strain[1] - plastic_old[1]
    e2 = strain[2] - plastic_old[2]
    # spectral form: mean, deviator half difference, shear
    plus = bulk * (e0 + e1) / 2.0
    minus = shear * (e0 - e1)
    tau = shear * e2
    flow = yield_pa + hardening_pa * hardening_old
    # J2 in plane stress: (s0 + s1)^2 / 4 + 3 (s0 - s1)^2 / 4 + 3 tau^2 = flow^2
    p2 = plus * plus
    d2 = 3.0 * (minus * minus + tau * tau)
    diag = bulk / 2.0
    if p2 + d2 <= flow * flow:
        stress[0] = plus + minus
        stress[1] = plus - minus
        stress[2] = tau
        for i in range(3):
            plastic[i] = plastic_old[i]
        tangent[0, 0] = diag + shear
        tangent[1, 1] = diag + shear
        tangent[0, 1] = diag - shear
        tangent[1, 0] = diag - shear
        tangent[2, 2] = shear
        tangent[0, 2] = tangent[2, 0] = tangent[1, 2] = tangent[2, 1] = 0.0
        stored = 0.5 * (stress[0] * e0 + stress[1] * e1 + stress[2] * e2)
        return hardening_old, stored, 0.0
    # plastic multiplier g: d plastic = g * (d f / d sigma), f = equivalent stress squared / 2
    # with f = (plus^2 + 3 minus^2 + 3 tau^2) / 2 the flow is (plus/2, ...) ; each mode decays on its own
    a_plus = bulk / 2.0
    a_minus = 3.0 * shear
    g = 0.0
    equivalent = np.sqrt(p2 + d2)
    for _ in range(50):
        q_plus = 1.0 / (1.0 + a_plus * g)
        q_minus = 1.0 / (1.0 + a_minus * g)
        value2 = p2 * q_plus * q_plus + d2 * q_minus * q_minus
        equivalent = np.sqrt(value2)
        flow = yield_pa + hardening_pa * (hardening_old + g * equivalent)
        residual = equivalent - flow
        if abs(residual) <= 1.0e-12 * yield_pa:
            break
        slope2 = -2.0 * (p2 * q_plus**3 * a_plus + d2 * q_minus**3 * a_minus)
        d_equivalent = 0.5 * slope2 / equivalent
        slope = d_equivalent - hardening_pa * (equivalent + g * d_equivalent)
        step = -residual / slope
        g = max(g + step, 0.0)
    q_plus = 1.0 / (1.0 + a_plus * g)
    q_minus = 1.0 / (1.0 + a_minus * g)
    plus *= q_plus
    minus *= q_minus
    tau *= q_minus
    stress[0] = plus + minus
    stress[1] = plus - minus
    stress[2] = tau
    # flow direction d f / d sigma in Voigt, f = (s0^2 + s1^2 - s0 s1 + 3 tau^2) / 2
    n0 = 0.5 * plus + 1.5 * minus
    n1 = 0.5 * plus - 1.5 * minus
    n2 = 3.0 * tau
    plastic[0] = plastic_old[0] + g * n0
    plastic[1] = plastic_old[1] + g * n1
    plastic[2] = plastic_old[2] + g * n2
    hardening = hardening_old + g * equivalent
    # consistent tangent: Xi - (Xi n)(Xi n)^T / (n Xi n + beta)
    x_plus = q_plus * bulk / 2.0
    x_minus = q_minus * shear
    m0 = (x_plus + x_minus) * n0 + (x_plus - x_minus) * n1
    m1 = (x_plus - x_minus) * n0 + (x_plus + x_minus) * n1
    m2 = x_minus * n2
    theta = 1.0 - hardening_pa * g
    beta = hardening_pa * equivalent * equivalent / theta
    inverse = 1.0 / (n0 * m0 + n1 * m1 + n2 * m2 + beta)
    tangent[0, 0] = x_plus + x_minus - m0 * m0 * inverse
    tangent[1, 1] = x_plus + x_minus - m1 * m1 * inverse
    tangent[2, 2] = x_minus - m2 * m2 * inverse
    tangent[0, 1] = tangent[1, 0] = x_plus - x_minus - m0 * m1 * inverse
    tangent[0, 2] = tangent[2, 0] = -m0 * m2 * inverse
    tangent[1, 2] = tangent[2, 1] = -m1 * m2 * inverse
    e0 = strain[0] - plastic[0]
    e1 = strain[1] - plastic[1]
    e2 = strain[2] - plastic[2]
    stored = 0.5 * (stress[0] * e0 + stress[1] * e1 + stress[2] * e2)
    gain = hardening - hardening_old
    dissipated = yield_pa * gain + 0.5 * hardening_pa * (hardening**2 - hardening_old**2)
    return hardening, stored, dissipated
