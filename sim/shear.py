"""Tips that cut: the force at which a pad shears the sheet it bears on out, and what that costs.

A pad that stands at a sheet's free edge shears a piece as wide and as deep as itself out of it along three
sides, the fourth being free,

    F = tau_u t (width + 2 depth),

with what each sheet carries of the push.  The piece has come out when the tip has gone on by the sheet's own
thickness at that force; the work, F t, is tau_u t for each area t x length cut, which is close to the energy
a running tear asks for.  After that the sheet no longer carries the tip.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.model import DoorModel
from sim.push import Push
from sim.tip import loaded_part

Floats = NDArray[np.float64]

SHEAR_ULTIMATE_RATIO = 0.8  # ultimate shear over tensile strength of mild sheet, from memory
TENSILE_OVER_YIELD = 1.4  # assumed for the skin and inner grades (Rm about 300 at Re about 210)


@dataclass(frozen=True)
class Edge:
    """What one sheet under a pad can bear before it is cut.

    outer : whether it is the outer skin;  share : of the push that it carries
    limit_n : force on it that shears it;  thickness_m : of it;  length_m : of the cut
    """

    outer: bool
    share: float
    limit_n: float
    thickness_m: float
    length_m: float

    @property
    def tip_n(self) -> float:
        """Force of the tip at which this sheet is cut [N]."""
        return self.limit_n / self.share


def cut_length_m(width_m: float, depth_m: float) -> float:
    """Return the length of a cut round a pad at a free edge [m]."""
    return width_m + 2.0 * depth_m


def edges_under(model: DoorModel, push: Push) -> tuple[Edge, ...]:
    """Return the sheets under the first pad, the one that is cut at the least force first."""
    tool = push.tool
    length = cut_length_m(tool.tip_width_m, loaded_part(tool.tip_depth_m, push.lean_rad)[1])
    share = push.pads[0].skin_share
    out = []
    for outer, part in ((True, share), (False, 1.0 - share)):
        if part > 0.0:
            strength, thickness = _sheet(model, push, outer=outer)
            out.append(Edge(outer, part, strength * length, thickness, length))
    return tuple(sorted(out, key=lambda edge: edge.tip_n))


def _sheet(model: DoorModel, push: Push, *, outer: bool) -> tuple[float, float]:
    """Return shear strength times thickness [N/m] and thickness [m], each a mean over what the pad is on."""
    structure = model.structure
    skin = np.zeros(len(structure.triangles), dtype=bool)
    for panel in model.panels().values():
        surface = panel.mesh.surface
        mine = np.flatnonzero(surface.triangle_part == surface.part_index("outer_skin"))
        skin[mine + panel.first_triangle] = True
    weight = np.zeros(len(structure.points))
    weight[push.pads[0].nodes] = push.pads[0].weights
    on = np.where(skin == outer, weight[structure.triangles].sum(axis=1), 0.0)
    thickness = np.array([s.thickness_m for s in structure.sections])[structure.triangle_section]
    yields = np.array([s.metal.yield_pa for s in structure.sections])[structure.triangle_section]
    strength = SHEAR_ULTIMATE_RATIO * TENSILE_OVER_YIELD * yields * thickness
    return float(on @ strength / on.sum()), float(on @ thickness / on.sum())
