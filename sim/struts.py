"""Rams as a law of the network: see `sim.strut` for the law itself."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.law import Into
from sim.state import Drive, Evaluation, Load, State
from sim.structure import Structure
from sim.strut import Pushed, Strut

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

DENT = "struts dent"
"""Key of what is kept, (drives,): depth of the dent under each ram's foot [m]."""
FORCE, SINK = "struts force", "struts sink"
"""Keys of what is read: force on the head (drives, 3) [N], depth of the foot now (drives,) [m]."""


def undented(state: State) -> State:
    """Return the state with every ram's foot on a wall not dented yet."""
    return replace(state, kept={key: value for key, value in state.kept.items() if key != DENT})


def dent_m(state: State, index: int = 0) -> float:
    """Return how deep the dent under a ram's foot is [m]."""
    return float(state.kept[DENT][index]) if DENT in state.kept else 0.0


class Struts:
    """Rams: each pushes its ends apart along the line between them, wherever they are."""

    name, line = "struts", "base"

    def __init__(self, _: Structure, drives: tuple[Drive, ...]) -> None:
        self._drives = drives
        self._mine: list[tuple[int, Drive, Strut]] = [
            (i, drive, drive.strut) for i, drive in enumerate(drives) if drive.strut is not None
        ]

    @property
    def means(self) -> Sequence[Ints]:
        """Return the nodes of each ram: those under its head, and under its foot if that is on the metal."""
        return [drive.nodes for _, drive, _ in self._mine]

    @staticmethod
    def _answer(
        i: int, drive: Drive, strut: Strut, points: Floats, state: State, load: Load
    ) -> Pushed:  # fmt: skip
        between = drive.weights @ points[drive.nodes] - strut.foot_m
        return strut.answer(between, load.travel_m[i], dent_m(state, i), drive.stiffness_n_per_m)

    def forces(self, points: Floats, state: State, load: Load, ev: Evaluation) -> None:
        """Add what the rams push with; fill ``ev.drive_force`` (drives,) [N] and what is read."""
        if not self._mine:
            return
        count = len(self._drives)
        force, sink, dent = np.zeros((count, 3)), np.zeros(count), np.zeros(count)
        stored = spent = 0.0
        for i, drive, strut in self._mine:
            ram = self._answer(i, drive, strut, points, state, load)
            stored, spent = stored + ram.stored_j, spent + ram.spent_j
            ev.drive_force[i], force[i] = ram.force_n, ram.force_n * ram.line
            sink[i], dent[i] = ram.sink_m, ram.dent_m
            ev.forces[drive.nodes] -= drive.weights[:, None] * force[i]
        ev.stored[self.name], ev.spent[self.name] = stored, spent
        ev.read[FORCE], ev.read[SINK], ev.read[DENT] = force, sink, dent

    def stiffness(self, ev: Evaluation, state: State, load: Load, into: Into) -> None:
        """Add the rams that push, along their lines; what they give way across is left out."""
        for index, (i, drive, strut) in enumerate(self._mine):
            ram = self._answer(i, drive, strut, ev.points, state, load)
            if ram.force_n > 0.0:
                into.mean(index, drive.weights, ram.positive)

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with the dents under the feet."""
        if not self._mine:
            return state
        return replace(state, kept={**state.kept, DENT: ev.read[DENT].copy()})
