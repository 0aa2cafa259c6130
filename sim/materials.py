"""Metals of the model, with the source of every number.

Source keys stand in assets/sources.toml; "assumed" says there is none.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

STEEL_YOUNG_PA = 210.0e9  # textbook value, steel
ALLOY_YOUNG_PA = 70.0e9  # textbook value, aluminium


@dataclass(frozen=True)
class Metal:
    """Isotropic sheet metal.

    young_pa : [Pa];  poisson_ratio : [-], 0 to 0.5;  yield_pa : [Pa]
    hardening_pa : plastic modulus, stress per plastic strain [Pa]
    density_kg_per_m3 : [kg/m^3]
    tensile_pa : tension at which a thin sheet necks, per rest area [Pa];  inf never tears
    tear_energy_j_per_m2 : work of necking and tearing per new area, thickness times length [J/m^2]
    """

    name: str
    young_pa: float
    poisson_ratio: float
    yield_pa: float
    hardening_pa: float
    density_kg_per_m3: float = 7850.0
    tensile_pa: float = math.inf
    tear_energy_j_per_m2: float = math.inf


# Work of tearing thin sheets (essential work of fracture, the neck's work included): mild steel
# 100-400 kJ/m^2, from memory, low confidence; alloy 5754 of 1.8 mm 63 kJ/m^2 [abdellah-2023], assumed to hold
# for a skin's 6016.  Tensile strength over yield 1.4: assumed (Rm about 300 at Re about 210).
STEEL_TEAR_J_PER_M2, ALLOY_TEAR_J_PER_M2 = 2.0e5, 6.3e4
TENSILE_OVER_YIELD = 1.4


def _sheet(name: str, young_pa: float, poisson_ratio: float, yield_pa: float, hardening_pa: float) -> Metal:
    steel = young_pa == STEEL_YOUNG_PA
    return Metal(
        name,
        young_pa,
        poisson_ratio,
        yield_pa,
        hardening_pa,
        7850.0 if steel else 2700.0,
        TENSILE_OVER_YIELD * yield_pa,
        STEEL_TEAR_J_PER_M2 if steel else ALLOY_TEAR_J_PER_M2,
    )


# bake-hardening skin steel of the 180 class: 180-240 MPa (EN 10268, HX180BD, from memory); hardening assumed
SKIN_STEEL = _sheet("skin steel", STEEL_YOUNG_PA, 0.3, 220.0e6, 1.0e9)
# deep-drawing inner steel: 120-220 MPa (EN 10346, DX54D, from memory); hardening assumed
INNER_STEEL = _sheet("inner steel", STEEL_YOUNG_PA, 0.3, 180.0e6, 1.0e9)
# high-strength low-alloy reinforcement: 340-420 MPa (EN 10268, 340 class, from memory)
PATCH_STEEL = _sheet("patch steel", STEEL_YOUNG_PA, 0.3, 350.0e6, 1.0e9)
# martensitic or press-hardened bar, 950-1200 MPa (MS1200, from memory)
BAR_STEEL = Metal("bar steel", STEEL_YOUNG_PA, 0.3, 1000.0e6, 1.0e9)
# press-hardened boron steel of pillars: yield at least 950 MPa, strength 1300-1650 MPa [press-hardened-2026];
# hardening assumed, energy of tearing "lower than mild steel's" (from memory, low confidence): half, assumed
PRESSED_STEEL = Metal(
    "press-hardened steel", STEEL_YOUNG_PA, 0.3, 1000.0e6, 1.0e9, 7850.0, 1400.0e6, 0.5 * STEEL_TEAR_J_PER_M2
)
# 6016 aluminium sheet: 80-140 MPa as delivered, 180-260 MPa fully aged [alloy-sheet-2026]; a sister alloy has
# 205 MPa after 2 % strain and 20 minutes at 170 degC [alloy-bake-2026]: formed and baked skin 190, inner 150
# (less strained, assumed); hardening assumed; Poisson's ratio and density textbook values
SKIN_ALLOY = _sheet("skin alloy", ALLOY_YOUNG_PA, 0.33, 190.0e6, 0.8e9)
INNER_ALLOY = _sheet("inner alloy", ALLOY_YOUNG_PA, 0.33, 150.0e6, 0.8e9)
# illustrative only, every number assumed: a moulded sheet that gives at 80 MPa and hardly stretches after it
SKIN_COMPOSITE = Metal(
    "composite skin (illustrative, assumed)", 10.0e9, 0.3, 80.0e6, 0.2e9, 1800.0, 90.0e6, 3.0e4
)

SKIN = {"steel": SKIN_STEEL, "alloy": SKIN_ALLOY, "composite": SKIN_COMPOSITE}
"""Metal of the outer skin by a car's word for it."""

INNER = {"steel": INNER_STEEL, "alloy": INNER_ALLOY, "composite": INNER_STEEL}
"""Metal of shut face and inner panel by the same word: a composite skin sits on a steel structure."""
