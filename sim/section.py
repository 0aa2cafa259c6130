"""Sections compiled: resultants and stiffness of a sheet read in layers through its thickness.

Tested against the plain sum over the layers of `sim.yielding`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel
from sim.yielding import plane_stress_return

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
    scratch: Floats,
) -> tuple[float, float, bool]:
    """Return stored and newly dissipated energy per area [J/m^2] and whether a layer flows; fill resultants.

    The forces of `section_response` without its stiffness.
    """
    resultant[:] = 0.0
    strain = scratch[0]
    stress = scratch[1]
    tangent = scratch[2:5]
    bulk = metal[0] / (1.0 - metal[1])
    shear = metal[0] / (2.0 * (1.0 + metal[1]))
    stored = 0.0
    dissipated = 0.0
    flowing = False
    for layer in range(heights.shape[0]):
        z = heights[layer] * thickness_m * form_ratio
        w = weights[layer] * thickness_m
        old = plastic_old[layer]
        for i in range(3):
            strain[i] = membrane[i] + z * curvature[i]
        e0, e1, e2 = strain[0] - old[0], strain[1] - old[1], strain[2] - old[2]
        plus = bulk * (e0 + e1) / 2.0
        minus = shear * (e0 - e1)
        tau = shear * e2
        flow = metal[2] + metal[3] * hardening_old[layer]
        if plus * plus + 3.0 * (minus * minus + tau * tau) <= flow * flow:
            stress[0] = plus + minus
            stress[1] = plus - minus
            stress[2] = tau
            stored += w * 0.5 * (stress[0] * e0 + stress[1] * e1 + tau * e2)
            hardening[layer] = hardening_old[layer]
            for i in range(3):
                plastic[layer, i] = old[i]
        else:
            flowing = True
            new, psi, heat = plane_stress_return(
                strain, old, hardening_old[layer], metal[0], metal[1], metal[2], metal[3],
                stress, plastic[layer], tangent,
            )  # fmt: skip
            hardening[layer] = new
            stored += w * psi
            dissipated += w * heat
        for i in range(3):
            resultant[i] += w * stress[i]
            resultant[3 + i] += w * z * stress[i]
    return stored, dissipated, flowing


@kernel
def is_virgin(plastic: Floats, hardening: Floats) -> bool:
    """Return whether no layer has ever flowed."""
    for layer in range(hardening.shape[0]):
        if hardening[layer] != 0.0 or plastic[layer, 0] != 0.0:
            return False
        if plastic[layer, 1] != 0.0 or plastic[layer, 2] != 0.0:
            return False
    return True


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
