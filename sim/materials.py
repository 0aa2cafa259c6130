"""Metals of the model, with the source of every number.

Source keys stand in assets/sources.toml; "assumed" says there is none.
"""

from __future__ import annotations

from dataclasses import dataclass

STEEL_YOUNG_PA = 210.0e9  # textbook value, steel
ALLOY_YOUNG_PA = 70.0e9  # textbook value, aluminium


@dataclass(frozen=True)
class Metal:
    """Isotropic sheet metal.

    young_pa : [Pa];  poisson_ratio : [-], 0 to 0.5;  yield_pa : [Pa]
    hardening_pa : plastic modulus, stress per plastic strain [Pa]
    density_kg_per_m3 : [kg/m^3]
    """

    name: str
    young_pa: float
    poisson_ratio: float
    yield_pa: float
    hardening_pa: float
    density_kg_per_m3: float = 7850.0


# bake-hardening skin steel of the 180 class: 180-240 MPa (EN 10268, HX180BD, from memory); hardening assumed
SKIN_STEEL = Metal("skin steel", STEEL_YOUNG_PA, 0.3, 220.0e6, 1.0e9)
# deep-drawing inner steel: 120-220 MPa (EN 10346, DX54D, from memory); hardening assumed
INNER_STEEL = Metal("inner steel", STEEL_YOUNG_PA, 0.3, 180.0e6, 1.0e9)
# high-strength low-alloy reinforcement: 340-420 MPa (EN 10268, 340 class, from memory)
PATCH_STEEL = Metal("patch steel", STEEL_YOUNG_PA, 0.3, 350.0e6, 1.0e9)
# martensitic or press-hardened bar, 950-1200 MPa (MS1200, from memory)
BAR_STEEL = Metal("bar steel", STEEL_YOUNG_PA, 0.3, 1000.0e6, 1.0e9)
# 6016 aluminium sheet: 80-140 MPa as delivered, 180-260 MPa fully aged [alloy-sheet-2026]; a sister alloy has
# 205 MPa after 2 % strain and 20 minutes at 170 degC [alloy-bake-2026]: formed and baked skin 190, inner 150
# (less strained, assumed); hardening assumed; Poisson's ratio and density textbook values
SKIN_ALLOY = Metal("skin alloy", ALLOY_YOUNG_PA, 0.33, 190.0e6, 0.8e9, 2700.0)
INNER_ALLOY = Metal("inner alloy", ALLOY_YOUNG_PA, 0.33, 150.0e6, 0.8e9, 2700.0)
# illustrative only, every number assumed: a moulded sheet that gives at 80 MPa and hardly stretches after it
SKIN_COMPOSITE = Metal("composite skin (illustrative, assumed)", 10.0e9, 0.3, 80.0e6, 0.2e9, 1800.0)

SKIN = {"steel": SKIN_STEEL, "alloy": SKIN_ALLOY, "composite": SKIN_COMPOSITE}
"""Metal of the outer skin by a car's word for it."""

INNER = {"steel": INNER_STEEL, "alloy": INNER_ALLOY, "composite": INNER_STEEL}
"""Metal of shut face and inner panel by the same word: a composite skin sits on a steel structure."""
