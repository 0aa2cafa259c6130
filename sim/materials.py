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


# skin steel of the bake-hardening class, 180-240 MPa (HX180BD, from memory); hardening assumed
SKIN_STEEL = Metal("skin steel", STEEL_YOUNG_PA, 0.3, 220.0e6, 1.0e9)
# deep-drawing steel, 120-220 MPa (DX54D, from memory)
INNER_STEEL = Metal("inner steel", STEEL_YOUNG_PA, 0.3, 180.0e6, 1.0e9)
# high-strength low-alloy reinforcement, 340-420 MPa (HX340LAD, from memory)
PATCH_STEEL = Metal("patch steel", STEEL_YOUNG_PA, 0.3, 350.0e6, 1.0e9)
# martensitic or press-hardened bar, 950-1200 MPa (MS1200, from memory)
BAR_STEEL = Metal("bar steel", STEEL_YOUNG_PA, 0.3, 1000.0e6, 1.0e9)
# AA6016-T4 baked about 180-200 MPa (public sheet supplier's table for T6 180-260)
SKIN_ALLOY = Metal("skin alloy", ALLOY_YOUNG_PA, 0.33, 190.0e6, 0.8e9, 2700.0)
INNER_ALLOY = Metal("inner alloy", ALLOY_YOUNG_PA, 0.33, 150.0e6, 0.8e9, 2700.0)
