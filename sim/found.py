"""A wrecked car in figures: how far the metal lies from where it was, what has parted, what let go."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from sim.frames import seam_share_m
from sim.model import DoorModel
from sim.network import Network, State
from sim.pillar import WELD_KIND
from sim.side import SideModel

Floats = NDArray[np.float64]

CREASED_STRAIN = 0.005  # plastic strain on a sheet's face beyond which a fold can be seen, assumed


@dataclass(frozen=True)
class Found:
    """How a car was found.

    skin_in_m, inner_in_m : how far the middle of the front door's skin and of its inner panel lie inboard of
        where they were;  deepest_in_m : the most that any of the door's skin does
    pillar_in_m : the most the pillar between the doors has moved inboard, and at which height above the sill;
        None for a door alone
    creased_m2 : area of sheet that was strained beyond what can be seen
    parted_length_m, spots_gone : hem that has parted; spots of foot and head that have popped
    gone : latches, hinges and feet that let go
    wedge_n : what is left in each latch, the force that wedges its striker
    jammed : latches whose handle was pulled and which hold
    """

    skin_in_m: float
    inner_in_m: float
    deepest_in_m: float
    creased_m2: float
    parted_length_m: float
    spots_gone: int
    gone: tuple[str, ...]
    wedge_n: Mapping[str, float] = field(default_factory=dict)
    jammed: tuple[str, ...] = ()
    pillar_in_m: float | None = None
    pillar_in_at_m: float | None = None

    def as_dict(self) -> dict[str, Any]:
        """Return every figure by name, as plain values."""
        out = dict(vars(self))
        out["wedge_n"], out["gone"], out["jammed"] = dict(self.wedge_n), list(self.gone), list(self.jammed)
        return out

    def sentence(self) -> str:
        """Return the figures in one sentence."""
        words = [f"the door's skin is in {1e3 * self.deepest_in_m:.0f} mm at its deepest"]
        if self.pillar_in_m is not None and self.pillar_in_at_m is not None:
            at = f"{1e3 * self.pillar_in_at_m:.0f} mm above the sill"
            words.insert(0, f"the pillar is in {1e3 * self.pillar_in_m:.0f} mm, {at}")
        words.append(f"{1e3 * self.parted_length_m:.0f} mm of seam parted")
        if self.pillar_in_m is not None:
            words.append(f"{self.spots_gone} spots popped")
        if self.gone:
            words.append(f"let go: {', '.join(self.gone)}")
        words += [f"{name} wedged with {force / 1e3:.1f} kN" for name, force in self.wedge_n.items()]
        if self.jammed:
            words.append(f"jammed although the handle is pulled: {', '.join(self.jammed)}")
        text = "; ".join(words)
        return text[0].upper() + text[1:] + "."


def found_now(
    model: DoorModel, network: Network, state: State, wedge_n: Mapping[str, float], jammed: tuple[str, ...]
) -> Found:
    """Return the figures of a state at rest."""
    names, rest, ties = model.structure.names, model.start.points, model.structure.ties
    inboard = -model.outboard_sign * (state.points[: len(rest), 1] - rest[:, 1])
    skin = model.mesh.surface.nodes_of(("outer_skin",))
    pillar: dict[str, float] = {}
    if isinstance(model, SideModel):
        own = np.unique(model.pillar_triangles)
        deepest = int(own[np.argmax(inboard[own])])
        pillar = {"pillar_in_m": float(inboard[deepest]), "pillar_in_at_m": float(rest[deepest, 2])}
    flow = np.abs(state.plastic).max(axis=(1, 2))
    parted = network.parted(state)[: len(model.structure.bonds.law)]
    return Found(
        float(np.mean(inboard[names["skin_mid"]])),
        float(np.mean(inboard[names["inner_mid"]])),
        float(inboard[skin].max()),
        float(network.rest.area[flow > CREASED_STRAIN].sum()),
        float(seam_share_m(model)[parted].sum()),
        int((model.structure.bonds.of(WELD_KIND) & parted).sum()),
        tuple(tie.name for tie, held in zip(ties, state.holding, strict=True) if not held),
        wedge_n,
        jammed,
        **pillar,
    )
