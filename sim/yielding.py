"""Yielding of sheet metal: plane-stress J2 flow in layers through the thickness.

A sheet's section is read at seven heights.  The three outer pairs are the three parallel parts with
bending shares .49 / .285 / .225 that begin to yield at 1.0 / 1.52 / 2.57 times the first-yield
curvature; the middle layer carries what is left of the membrane area.  The rule keeps E t and
E t^3 / 12 exactly, has a plastic moment of 1.50 My and follows the exact moment-curvature knee
M / My = 1.5 [1 - (ky / k)^2 / 3] within six per cent (at the last corner, 2.57 ky; the curvature left after
unloading within five points), so membrane and bending yield together without
a separate interaction formula.

The return mapping is the classical one for plane stress [simo-taylor-1986].
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel

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


@inlined
def multiplier(p2: float, d2: float, old: float, moduli: tuple[float, float, float, float]) -> float:
    """Return the plastic multiplier: equivalent stress of both decayed modes equals the flow stress.

    Flow stress over equivalent stress, less one, is solved for zero: with one mode alone it is a straight
    line in the multiplier, with both nearly so, and Newton comes to it in two or three steps.

    moduli : decay of the mean and of the deviator mode, yield stress, hardening modulus
    """
    a_plus, a_minus, yield_pa, hardening_pa = moduli
    flow = yield_pa + hardening_pa * old
    g = 0.0
    for _ in range(50):
        q_plus = 1.0 / (1.0 + a_plus * g)
        q_minus = 1.0 / (1.0 + a_minus * g)
        plus, minus = p2 * q_plus * q_plus, d2 * q_minus * q_minus
        equivalent = np.sqrt(plus + minus)
        residual = equivalent - flow - hardening_pa * g * equivalent
        if abs(residual) <= 1.0e-12 * yield_pa:
            break
        # d (flow / equivalent + H g) / d g
        slope = flow * (plus * q_plus * a_plus + minus * q_minus * a_minus) / equivalent**3 + hardening_pa
        g = max(g + residual / (equivalent * slope), 0.0)
    return g


@kernel
def _fill_tangent(
    x_plus: float, x_minus: float, normal: tuple[float, float, float], beta: float, tangent: Floats
) -> None:
    """Fill Xi - (Xi n)(Xi n)^T / (n Xi n + beta); elastic when ``beta`` is infinite."""
    n0, n1, n2 = normal
    m0 = (x_plus + x_minus) * n0 + (x_plus - x_minus) * n1
    m1 = (x_plus - x_minus) * n0 + (x_plus + x_minus) * n1
    m2 = x_minus * n2
    inverse = 1.0 / (n0 * m0 + n1 * m1 + n2 * m2 + beta)
    tangent[0, 0] = x_plus + x_minus - m0 * m0 * inverse
    tangent[1, 1] = x_plus + x_minus - m1 * m1 * inverse
    tangent[2, 2] = x_minus - m2 * m2 * inverse
    tangent[0, 1] = tangent[1, 0] = x_plus - x_minus - m0 * m1 * inverse
    tangent[0, 2] = tangent[2, 0] = -m0 * m2 * inverse
    tangent[1, 2] = tangent[2, 1] = -m1 * m2 * inverse


@kernel
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
    # spectral form: mean, deviator half difference, shear
    plus = bulk * (e0 + e1) / 2.0
    minus = shear * (e0 - e1)
    tau = shear * (strain[2] - plastic_old[2])
    flow = yield_pa + hardening_pa * hardening_old
    # J2 in plane stress: plus^2 + 3 minus^2 + 3 tau^2 = flow^2
    p2 = plus * plus
    d2 = 3.0 * (minus * minus + tau * tau)
    g = 0.0
    if p2 + d2 > flow * flow:
        g = multiplier(p2, d2, hardening_old, (0.5 * bulk, 3.0 * shear, yield_pa, hardening_pa))
    q_plus = 1.0 / (1.0 + 0.5 * bulk * g)
    q_minus = 1.0 / (1.0 + 3.0 * shear * g)
    plus *= q_plus
    minus *= q_minus
    tau *= q_minus
    stress[0] = plus + minus
    stress[1] = plus - minus
    stress[2] = tau
    # flow direction d f / d sigma in Voigt, f = (s0^2 + s1^2 - s0 s1 + 3 tau^2) / 2
    normal = (0.5 * plus + 1.5 * minus, 0.5 * plus - 1.5 * minus, 3.0 * tau)
    stored = 0.0
    for i in range(3):
        plastic[i] = plastic_old[i] + g * normal[i]
        stored += 0.5 * stress[i] * (strain[i] - plastic[i])
    x_plus, x_minus = q_plus * bulk / 2.0, q_minus * shear
    if g == 0.0:
        _fill_tangent(x_plus, x_minus, (0.0, 0.0, 0.0), 1.0, tangent)
        return hardening_old, stored, 0.0
    equivalent = np.sqrt(p2 * q_plus * q_plus + d2 * q_minus * q_minus)
    beta = hardening_pa * equivalent * equivalent / (1.0 - hardening_pa * g)
    _fill_tangent(x_plus, x_minus, normal, beta, tangent)
    gain = g * equivalent
    hardening = hardening_old + gain
    dissipated = yield_pa * gain + 0.5 * hardening_pa * (hardening**2 - hardening_old**2)
    return hardening, stored, dissipated
