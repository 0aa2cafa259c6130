"""Fittings that bend before they let go: a latch or hinge as an elastic, perfectly plastic tie.

A hinge's leaf unfolds and a striker bends over at about the force the fitting holds, some way before it comes
apart.  With u the stretch, p what has been bent so far, and E the ellipsoid of forces the fitting holds,

    W(u) = min over q of  k |u - q|^2 / 2 + max over G in E of G . (q - p),

whose answer is the force nearest to k (u - p) within E: with L the half axes and T = k (u - p),

    F = A T,   A = diag(1 / (1 + z / L^2)),   z >= 0 so that sum (F / L)^2 = 1,

one number sought by Newton.  What is spent is F . (q - p).  The tangent is k times

    A - A n n' A / (n' A n),   n = F / L^2,

and A alone where nothing bends (z = 0).  When the way bent comes to the fitting's give it lets go like any
other tie [simo-hughes-1998: return to the nearest point of a convex set].
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.law import Into
from sim.state import Drive, Evaluation, Load, State
from sim.structure import Structure, Tie

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

BENT, WAY = "fitting bent", 3
"""Key of what is kept, (giving ties, 4): how far each is bent [m] and, in column `WAY`, over what way."""
NEWTON_STEPS, TOLERANCE = 60, 1.0e-13


def giving(structure: Structure) -> list[int]:
    """Return which ties bend before they let go."""
    return [i for i, tie in enumerate(structure.ties) if tie.give_m > 0.0]


def nearest_force(trial_n: Floats, limit_n: Floats) -> tuple[Floats, Floats]:
    """Return the force (3,) [N] nearest to a trial force within an ellipsoid, and the factors A (3,)."""
    if float(np.sum((trial_n / limit_n) ** 2)) <= 1.0:
        return trial_n, np.ones(3)
    square = limit_n * limit_n
    z = 0.0
    for _ in range(NEWTON_STEPS):
        share = 1.0 / (1.0 + z / square)
        force = trial_n * share
        over = float(np.sum(force * force / square)) - 1.0
        # convex and falling in z: Newton from z = 0 comes from the left and never passes the root
        step = over / (2.0 * float(np.sum(force * force * share / (square * square))))
        z += step
        if abs(step) <= TOLERANCE * z:
            break
    share = 1.0 / (1.0 + z / square)
    return trial_n * share, share


def bend(tie: Tie, stretch: Floats, bent: Floats) -> tuple[Floats, float, float, Floats]:
    """Return force (3,) [N], stored and newly spent energy [J] and the new row (4,) of what is bent.

    Parameters
    ----------
    stretch : shape (3,), of the tie since rest [m];  bent : shape (4,), its row at the last commit
    """
    k = tie.stiffness_n_per_m
    trial = k * (stretch - bent[:WAY])
    force, _ = nearest_force(trial, tie.limit_n)
    on = (trial - force) / k
    row = np.append(bent[:WAY] + on, bent[WAY] + float(np.linalg.norm(on)))
    return force, 0.5 * float(force @ force) / k, float(force @ on), row


def bend_stiffness(tie: Tie, stretch: Floats, bent: Floats) -> Floats:
    """Return the tangent (3, 3) [N/m], symmetric and never negative."""
    k = tie.stiffness_n_per_m
    force, share = nearest_force(k * (stretch - bent[:WAY]), tie.limit_n)
    out = np.diag(share)
    if (share < 1.0).any():
        normal = force / (tie.limit_n * tie.limit_n)
        row = share * normal
        out = out - np.outer(row, row) / float(normal @ row)
    return k * out


def used_ratio(structure: Structure, state: State, ratio: Floats) -> Floats:
    """Return demand over capacity of every tie, shape (ties,), from the share of its force.

    A tie that bends is half-way when it begins to, and at one when its give is used up.
    """
    out = ratio.copy()
    rows = state.kept.get(BENT)
    for row, index in enumerate(giving(structure)):
        way = 0.0 if rows is None else float(rows[row, WAY])
        # on its ellipsoid but for rounding
        force = min(float(ratio[index]), 1.0)
        force = 1.0 if force > 1.0 - 1.0e-9 else force
        out[index] = 0.5 * force + 0.5 * way / structure.ties[index].give_m
    return out


class Giving:
    """All ties that bend before they let go, as a law of the network; `sim.springs.Ties` leaves them out."""

    name, line = "giving", "latch and hinges"

    def __init__(self, structure: Structure, _: tuple[Drive, ...]) -> None:
        self._index = giving(structure)
        self._all = [structure.ties[i] for i in self._index]
        self._rest = [tie.weights @ structure.points[tie.nodes] for tie in self._all]
        self._none = np.zeros((len(self._all), 4))

    @property
    def means(self) -> Sequence[Ints]:
        """Return the nodes of each."""
        return [tie.nodes for tie in self._all]

    def _stretch(self, row: int, points: Floats) -> Floats:
        tie = self._all[row]
        out: Floats = tie.weights @ points[tie.nodes] - self._rest[row]
        return out

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add what they pull with; fill ``ev.tie_force``, ``ev.tie_stored`` and the rows read."""
        if not self._all:
            return
        old = state.kept.get(BENT, self._none)
        rows = old.copy()
        stored = spent = 0.0
        for row, (index, tie) in enumerate(zip(self._index, self._all, strict=True)):
            if not state.holding[index]:
                continue
            force, kept, heat, rows[row] = bend(tie, self._stretch(row, points), old[row])
            ev.tie_force[index], ev.tie_stored[index] = force, kept
            stored, spent = stored + kept, spent + heat
            ev.forces[tie.nodes] += tie.weights[:, None] * force
        ev.stored[self.name], ev.spent[self.name], ev.read[BENT] = stored, spent, rows

    def stiffness(self, ev: Evaluation, state: State, _: Load, into: Into) -> None:
        """Add their tangents."""
        old = state.kept.get(BENT, self._none)
        for row, (index, tie) in enumerate(zip(self._index, self._all, strict=True)):
            if state.holding[index]:
                into.mean(row, tie.weights, bend_stiffness(tie, self._stretch(row, ev.points), old[row]))

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with what is bent so far."""
        if not self._all:
            return state
        return replace(state, kept={**state.kept, BENT: ev.read[BENT].copy()})
