"""Sections compiled: resultants and stiffness of a sheet read in layers through its thickness.

Tested against the plain sum over the layers of `sim.yielding`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel
from sim.yielding import multiplier, plane_stress_return

Floats = NDArray[np.float64]


@kernel
def section_response(
    membrane: Floats,
    curvature: Floats,
    thickness_m: float,
    form_ratio: float,
    metal: Floats,
    heights: Floats,
    weights: Floats,
    plastic_old: Floats,
    hardening_old: Floats,
    plastic: Floats,
    hardening: Floats,
    resultant: Floats,
    stiffness: Floats,
    scratch: Floats,
) -> tuple[float, float]:
    """Return stored and newly dissipated energy per area [J/m^2]; fill resultants and stiffness.

    ``resultant`` is (N, M), shape (6,) [N/m, N]; ``stiffness`` shape (6, 6); ``metal`` is
    (E, nu, yield stress, hardening modulus); ``scratch`` shape (5, 3) is working room.
    """
    resultant[:] = 0.0
    stiffness[:, :] = 0.0
    strain = scratch[0]
    stress = scratch[1]
    tangent = scratch[2:5]
    stored = 0.0
    dissipated = 0.0
    for layer in range(heights.shape[0]):
        z = heights[layer] * thickness_m * form_ratio
        w = weights[layer] * thickness_m
        for i in range(3):
            strain[i] = membrane[i] + z * curvature[i]
        new, psi, heat = plane_stress_return(
            strain, plastic_old[layer], hardening_old[layer], metal[0], metal[1], metal[2], metal[3],
            stress, plastic[layer], tangent,
        )  # fmt: skip
        hardening[layer] = new
        stored += w * psi
        dissipated += w * heat
        for i in range(3):
            resultant[i] += w * stress[i]
            resultant[3 + i] += w * z * stress[i]
            for j in range(3):
                c = w * tangent[i, j]
                stiffness[i, j] += c
                stiffness[i, 3 + j] += z * c
                stiffness[3 + i, 3 + j] += z * z * c
    for i in range(3):
        for j in range(3):
            stiffness[3 + i, j] = stiffness[j, 3 + i]
    return stored, dissipated


@kernel
def section_forces(
    membrane: Floats,
    curvature: Floats,
    thickness_m: float,
    form_ratio: float,
    metal: Floats,
    heights: Floats,
    weights: Floats,
    plastic_old: Floats,
    hardening_old: Floats,
    plastic: Floats,
    hardening: Floats,
    resultant: Floats,
) -> tuple[float, float, bool]:
    """Return stored and newly dissipated energy per area [J/m^2] and whether a layer flows; fill resultants.

    The forces of `section_response` without its stiffness, and without what only the stiffness needs.
    """
    resultant[:] = 0.0
    bulk = metal[0] / (1.0 - metal[1])
    shear = metal[0] / (2.0 * (1.0 + metal[1]))
    moduli = (0.5 * bulk, 3.0 * shear, metal[2], metal[3])
    stored = 0.0
    dissipated = 0.0
    flowing = False
    for layer in range(heights.shape[0]):
        z = heights[layer] * thickness_m * form_ratio
        w = weights[layer] * thickness_m
        e0 = membrane[0] + z * curvature[0] - plastic_old[layer, 0]
        e1 = membrane[1] + z * curvature[1] - plastic_old[layer, 1]
        e2 = membrane[2] + z * curvature[2] - plastic_old[layer, 2]
        plus = 0.5 * bulk * (e0 + e1)
        minus = shear * (e0 - e1)
        tau = shear * e2
        old = hardening_old[layer]
        flow = metal[2] + metal[3] * old
        p2 = plus * plus
        d2 = 3.0 * (minus * minus + tau * tau)
        n0, n1, n2, gain = 0.0, 0.0, 0.0, 0.0
        if p2 + d2 > flow * flow:
            flowing = True
            g = multiplier(p2, d2, old, moduli)
            q_plus = 1.0 / (1.0 + moduli[0] * g)
            q_minus = 1.0 / (1.0 + moduli[1] * g)
            gain = g * np.sqrt(p2 * q_plus * q_plus + d2 * q_minus * q_minus)
            plus *= q_plus
            minus *= q_minus
            tau *= q_minus
            n0 = g * (0.5 * plus + 1.5 * minus)
            n1 = g * (0.5 * plus - 1.5 * minus)
            n2 = g * 3.0 * tau
            dissipated += w * gain * (metal[2] + metal[3] * (old + 0.5 * gain))
        s0, s1 = plus + minus, plus - minus
        plastic[layer, 0] = plastic_old[layer, 0] + n0
        plastic[layer, 1] = plastic_old[layer, 1] + n1
        plastic[layer, 2] = plastic_old[layer, 2] + n2
        hardening[layer] = old + gain
        stored += 0.5 * w * (s0 * (e0 - n0) + s1 * (e1 - n1) + tau * (e2 - n2))
        resultant[0] += w * s0
        resultant[1] += w * s1
        resultant[2] += w * tau
        resultant[3] += w * z * s0
        resultant[4] += w * z * s1
        resultant[5] += w * z * tau
    return stored, dissipated, flowing


@inlined
def is_virgin(hardening: Floats) -> bool:
    """Return whether no layer has ever flowed: what has flowed has hardened, by however little."""
    most = 0.0
    for layer in range(hardening.shape[0]):
        most = max(most, hardening[layer])
    return most == 0.0


@kernel
def face_yields(strain: Floats, curvature: Floats, z: float, metal: Floats) -> bool:
    """Return whether a virgin layer at height ``z`` [m] is past its yield stress."""
    bulk = metal[0] / (1.0 - metal[1])
    shear = metal[0] / (2.0 * (1.0 + metal[1]))
    e0 = strain[0] + z * curvature[0]
    e1 = strain[1] + z * curvature[1]
    plus = bulk * (e0 + e1) / 2.0
    minus = shear * (e0 - e1)
    tau = shear * (strain[2] + z * curvature[2])
    return bool(plus * plus + 3.0 * (minus * minus + tau * tau) > metal[2] * metal[2])
