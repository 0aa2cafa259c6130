"""The ladder: every competitor on a push, with how much of what it can hold it carries.

Demand over capacity is 1 when the thing happens.  For a bond the measure is its worst opening over the
opening at which nothing is left; for latch, hinge and foot the ellipsoid of forces; for the tip's edge the
force over the shear strength of the sheet it bears on; for the tool its force over what it can give.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.bond import END
from sim.door_model import DoorModel
from sim.network import Evaluation, Network, State
from sim.push import Push
from sim.record import Rung

Floats = NDArray[np.float64]

SHEAR_ULTIMATE_RATIO = 0.8  # ultimate shear over tensile strength of mild sheet, from memory
TENSILE_OVER_YIELD = 1.4  # assumed for the skin and inner grades (Rm about 300 at Re about 210)
TIE_EVENT = {"latch": "latch free", "upper hinge": "hinge free", "lower hinge": "hinge free"}


def tie_ratios(network: Network, state: State, ev: Evaluation) -> Floats:
    """Return force over limit of every tie on its ellipsoid, shape (ties,); 0 once it has let go."""
    ties = network.structure.ties
    ratio = [float(np.sqrt(np.sum((ev.tie_force[i] / t.limit_n) ** 2))) for i, t in enumerate(ties)]
    return np.where(state.holding, np.array(ratio), 0.0)


def shear_through_n(model: DoorModel, push: Push) -> float:
    """Return the force at which the tip cuts into the sheet it bears on [N]: tau_u t (width + 2 depth)."""
    section = model.structure.sections[0 if push.pads[0].skin_share >= 0.5 else 1]
    shear_pa = SHEAR_ULTIMATE_RATIO * TENSILE_OVER_YIELD * section.metal.yield_pa
    edge = push.tool.tip_width_m + 2.0 * push.tool.tip_depth_m
    return shear_pa * section.thickness_m * edge


def rungs(
    model: DoorModel, network: Network, state: State, ev: Evaluation, push: Push | None, opening_m: float
) -> tuple[Rung, ...]:
    """Return the ladder, most loaded first."""
    out = []
    ratio = tie_ratios(network, state, ev)
    for i, tie in enumerate(network.structure.ties):
        if np.isfinite(tie.limit_n).all() and state.holding[i]:
            out.append(Rung(tie.name, TIE_EVENT.get(tie.name, "bar foot free"), float(ratio[i])))
    bonds = network.structure.bonds
    for kind, event in (("seam", "seam parting"), ("weld", "weld broken")):
        left = bonds.of(kind) & (state.worst < bonds.law[:, END])
        if left.any():
            demand = np.maximum(ev.worst, state.worst)[left] / bonds.law[left, END]
            out.append(Rung("seam", event, float(demand.max())))
    if push is not None:
        force = float(np.abs(ev.drive_force).max(initial=0.0))
        part = "outer skin" if push.pads[0].skin_share >= 0.5 else push.pads[0].part
        share = max(push.pads[0].skin_share, 1.0 - push.pads[0].skin_share)
        out.append(Rung(part, "tip shearing through", share * force / shear_through_n(model, push)))
        out.append(Rung("tool", "stalled", force / push.force_limit(opening_m)))
    return tuple(sorted(out, key=lambda rung: -rung.demand_ratio))
