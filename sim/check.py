"""The door check: what keeps an open door from swinging by itself, as dry friction about its hinges.

The door's latch end is held along the way it would swing, t, square to the line through the hinges and to
the arm r from there, by a spring up to a force F = moment / r; beyond, it slides. With e what the spring was
stretched by when the step began and s how far the latch end has gone along t since,

    k (e + s)^2 / 2    up to F,    F |e + s| - F^2 / 2k    beyond: stored F^2 / 2k, the rest friction.

The way and the arm are those of the step's start. What it pushes on is the body, wherever the hinges hang.
It is gone with the last hinge of its door.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.law import Into
from sim.state import Evaluation, Load, State
from sim.structure import Structure
from sim.surround import Check

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

CHECK_ROWS = "check stretch"
"""Kept and read: what the spring of each check is stretched by, shape (checks,) [m]."""


class Checks:
    """The checks of all doors."""

    name, line = "check", "friction"

    def __init__(self, structure: Structure) -> None:
        assert structure.surround is not None
        self._all: tuple[Check, ...] = structure.surround.checks
        ties = {tie.name: (i, tie) for i, tie in enumerate(structure.ties)}
        self._hinges = [[ties[name] for name in one.hinges if name in ties] for one in self._all]
        self._none = np.zeros(len(self._all))
        self._for: State | None = None

    @property
    def means(self) -> Sequence[Ints]:
        """Return the latch end of each door."""
        return [one.nodes for one in self._all]

    def _from(self, state: State) -> None:
        """Read the way and the limit of each check where an increment begins."""
        if self._for is state:
            return
        self._for = state
        count = len(self._all)
        self._way, self._limit, self._at = np.zeros((count, 3)), np.zeros(count), np.zeros((count, 3))
        for i, (one, hinges) in enumerate(zip(self._all, self._hinges, strict=True)):
            self._at[i] = one.weights @ state.points[one.nodes]
            if len(hinges) < 2 or not any(state.holding[index] for index, _ in hinges):
                continue
            leaves = []
            for _, tie in hinges:
                mine = tie.weights > 0.0
                leaves.append(tie.weights[mine] @ state.points[tie.nodes[mine]] / tie.weights[mine].sum())
            along = leaves[1] - leaves[0]
            way = np.cross(along / np.linalg.norm(along), self._at[i] - leaves[0])
            arm = float(np.linalg.norm(way))
            self._way[i], self._limit[i] = way / arm, one.moment_n_m / arm

    def _stretch(self, points: Floats, state: State) -> Floats:
        now = np.array([one.weights @ points[one.nodes] for one in self._all])
        out: Floats = state.kept.get(CHECK_ROWS, self._none) + np.einsum(
            "ki,ki->k", self._way, now - self._at
        )
        return out

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add what the checks hold with; fill ``ev.read`` with what their springs are stretched by."""
        self._from(state)
        stretch = self._stretch(points, state)
        k = np.array([one.stiffness_n_per_m for one in self._all])
        held = np.clip(k * stretch, -self._limit, self._limit)
        for i, one in enumerate(self._all):
            ev.forces[one.nodes] += one.weights[:, None] * held[i] * self._way[i]
        ev.stored[self.name] = float(np.sum(0.5 * held**2 / k))
        ev.spent[self.name] = float(np.sum(held * (stretch - held / k)))
        ev.read[CHECK_ROWS] = held / k

    def stiffness(self, ev: Evaluation, state: State, _: Load, into: Into) -> None:
        """Add the checks that hold."""
        self._from(state)
        stretch = self._stretch(ev.points, state)
        for i, one in enumerate(self._all):
            if abs(one.stiffness_n_per_m * stretch[i]) <= self._limit[i] and self._limit[i] > 0.0:
                into.mean(i, one.weights, one.stiffness_n_per_m * np.outer(self._way[i], self._way[i]))

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with what each spring is stretched by."""
        return replace(state, kept={**state.kept, CHECK_ROWS: ev.read[CHECK_ROWS].copy()})
