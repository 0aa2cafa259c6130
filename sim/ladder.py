"""The ladder: every competitor on a push, with how much of what it can hold it carries.

Demand over capacity is 1 when the thing happens.  For a bond the measure is its worst opening over the
opening at which nothing is left; for a tear what `sim.torn.demand` says; for latch, hinge and foot the
ellipsoid of forces; for the tip's edge the force over the shear strength of the sheet it bears on; for the
tool its force over what it can give.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.bond import END
from sim.giving import used_ratio
from sim.grips import FORCE
from sim.model import DoorModel
from sim.network import Evaluation, Network, State
from sim.push import Push
from sim.record import SLIPPING, Rung
from sim.shear import edges_under
from sim.torn import demand as tear_demand

Floats = NDArray[np.float64]

PRESSES_N = (
    100.0  # below, a tip lies on metal that swings away rather than slips: half a tool's weight, assumed
)
TIE_EVENT = {"latch": "latch free", "upper hinge": "hinge free", "lower hinge": "hinge free"}


def tie_event(name: str) -> str:
    """Return the kind of event when a tie lets go; the rear door's are told as the front door's."""
    return TIE_EVENT.get(name.removeprefix("rear "), "bar foot free")


def tie_ratios(network: Network, state: State, ev: Evaluation) -> Floats:
    """Return demand over capacity of every tie, shape (ties,); 0 once it has let go.

    Force over limit on its ellipsoid, or for a tie that bends first what `sim.giving` says.
    """
    ties = network.structure.ties
    ratio = [float(np.sqrt(np.sum((ev.tie_force[i] / t.limit_n) ** 2))) for i, t in enumerate(ties)]
    return np.where(state.holding, used_ratio(network.structure, state, np.array(ratio)), 0.0)


def _slipping(network: Network, ev: Evaluation, push: Push) -> list[Rung]:
    """Return the rung of a pad that grips: what it holds across over what friction lets it hold."""
    out = []
    for drive, force in zip(network.drives, ev.read.get(FORCE, ()), strict=False):
        if drive.grip is None:
            continue
        pressed = float(force @ drive.grip.bearing)
        limit = min(push.friction) * pressed
        across = float(np.linalg.norm(force - pressed * drive.grip.bearing))
        part = push.seats[1] if push.friction[1] < push.friction[0] else push.pads[0].part
        if pressed >= PRESSES_N:
            out.append(Rung(part, SLIPPING, across / limit if limit > 0.0 else 1.0))
    return out


def rungs(
    model: DoorModel, network: Network, state: State, ev: Evaluation, push: Push | None, opening_m: float
) -> tuple[Rung, ...]:
    """Return the ladder, most loaded first."""
    out = []
    ratio = tie_ratios(network, state, ev)
    for i, tie in enumerate(network.structure.ties):
        if np.isfinite(tie.limit_n).all() and state.holding[i]:
            out.append(Rung(tie.name, tie_event(tie.name), float(ratio[i])))
    bonds = network.structure.bonds
    for kind, event in (("seam", "seam parting"), ("weld", "weld broken")):
        left = bonds.of(kind) & (state.worst < bonds.law[:, END])
        if left.any():
            demand = np.maximum(ev.worst, state.worst)[left] / bonds.law[left, END]
            out.append(Rung("seam", event, float(demand.max())))
    tearing = tear_demand(network, state, ev, None if push is None else push.nodes)
    if tearing is not None:
        out.append(Rung(tearing[0], "skin tearing", tearing[1]))
    if push is not None:
        force = float(np.abs(ev.drive_force).max(initial=0.0))
        edge = edges_under(model, push)[0]
        out.append(
            Rung(
                "outer skin" if edge.outer else push.pads[0].part, "tip shearing through", force / edge.tip_n
            )
        )
        out += _slipping(network, ev, push)
        out.append(Rung("tool", "stalled", force / push.force_limit(opening_m)))
    return tuple(sorted(out, key=lambda rung: -rung.demand_ratio))
