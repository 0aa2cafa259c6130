"""The books of a run: where the work of the tips went, line by line.

    work of the tips = stored + weight + folding + seam peel + seam slip + tear + cut + latch and hinges
                       + friction + base + viscous + drop + released in a jump + gap

Work is the trapezoid of tip force over tip travel; every other line is computed on its own, and what is
left stays visible as the gap.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from sim.bond import OFFSET
from sim.network import Evaluation, Load, Network, State

Floats = NDArray[np.float64]

SPENT = (
    "folding skin",
    "folding inner",
    "folding bar",
    "folding pillar",
    "seam peel",
    "seam slip",
    "pads",
    "tear",
    "cut",
    "latch and hinges",
    "bar feet",
    "friction",
    "base",
    "viscous",
    "drop",
    "released in a jump",
)
SEAM_KINDS = ("seam", "weld", "pillar weld", "rocker weld")


@dataclass(frozen=True)
class Ledger:
    """Energies since the start of the plan [J]; ``lines`` holds every name of SPENT.

    A structure whose sheets fold under another name has that line besides (`knowing`).

    stored_j : elastic energy and that of weight;  weight_j : of weight alone, below zero where it has sunk
    """

    work_j: float = 0.0
    stored_j: float = 0.0
    lines: Mapping[str, float] = field(default_factory=lambda: dict.fromkeys(SPENT, 0.0))
    weight_j: float = 0.0

    @property
    def gap_j(self) -> float:
        """Return what the books do not explain [J]."""
        return self.work_j - self.stored_j - sum(self.lines.values())

    def knowing(self, groups: Iterable[str]) -> Ledger:
        """Return the books with a line for each of some names of folding that they have none for."""
        new = {name: 0.0 for name in groups if name not in self.lines}
        return replace(self, lines={**self.lines, **new}) if new else self

    def closure_ratio(self, scale_j: float | None = None) -> float:
        """Return the gap over the work put in."""
        scale = max(abs(self.work_j), 1.0e-9) if scale_j is None else scale_j
        return abs(self.gap_j) / scale

    def as_dict(self) -> dict[str, float]:
        """Return every line by name, work and gap included."""
        return {
            "work of the tips": self.work_j,
            "stored": self.stored_j - self.weight_j,
            "weight": self.weight_j,
            **self.lines,
            "gap": self.gap_j,
        }

    def plus(
        self, work_j: float, stored_j: float, lines: Mapping[str, float], weight_j: float | None = None
    ) -> Ledger:
        """Return the books with one step entered; ``stored_j``, ``weight_j`` (None: as before) are levels."""
        total = dict(self.lines)
        for name, value in lines.items():
            total[name] += value
        level = self.weight_j if weight_j is None else weight_j
        return Ledger(self.work_j + work_j, stored_j, total, level)


def spent(network: Network, before: State, ev: Evaluation, load: Load) -> dict[str, float]:
    """Return the energy newly spent in one step, by line [J], as the step's potential counts it.

    What drag and friction carried over from the step before take besides: see `sim.losses`.
    """
    s = network.structure
    lines: dict[str, float] = {}
    for index, section in enumerate(s.sections):
        mine = s.triangle_section == index
        lines[section.group] = lines.get(section.group, 0.0) + float(ev.triangle_folding[mine].sum())
    for k, beam in enumerate(network.beams.bend_beam):
        group = s.beams[beam].group
        lines[group] = lines.get(group, 0.0) + float(ev.bend_folding[k])
    grown = ev.bond_parted - network.bond_spent(before)
    peel = peel_share(network, ev)
    for kind in s.bonds.kinds:
        mine = s.bonds.of(kind)
        if kind in SEAM_KINDS:
            lines["seam peel"] = lines.get("seam peel", 0.0) + float((grown * peel)[mine].sum())
            lines["seam slip"] = lines.get("seam slip", 0.0) + float((grown * (1.0 - peel))[mine].sum())
        elif kind == "pad":
            lines["pads"] = float(grown[mine].sum())
        elif kind == "tear":
            lines["tear"] = float(grown[mine].sum())
    for law in network.laws:
        if law.name in ev.spent:
            lines[law.line] = lines.get(law.line, 0.0) + ev.spent[law.name]
    if load.origin is not None:
        moved = ev.points - load.origin
        lines["viscous"] = 0.5 * load.viscous_n_per_m * float(np.sum(moved * moved))
    return lines


def peel_share(network: Network, ev: Evaluation) -> Floats:
    """Return the share of each bond's effective opening that is peel and not slip, shape (bonds,)."""
    bonds = network.structure.bonds
    gap = np.maximum(ev.opening - bonds.law[:, OFFSET], 0.0)
    effective2 = np.maximum(network.bond_opening(ev) ** 2, 1.0e-30)
    share: Floats = np.clip(gap**2 / effective2, 0.0, 1.0)
    return share
