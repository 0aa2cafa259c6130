"""Dry friction on a mean of nodes: a stiff elastic start, then sliding, weaker the further.

With s the slip so far, the stretch e = |u - s| is met by k e up to the friction F; past it the tie slides by
w along the stretch, and the friction falls in a straight line to nothing over the travel, by c per metre:

    k (e - w) = F - c w,    so w = (k e - F) / (k - c),

until nothing is left of F and it is free, w = e.  As energy of the increment

    k e^2 / 2                                       below F,
    (F - c w)^2 / (2 k)  +  F w - c w^2 / 2         above: stored, and turned to heat,

whose slope by e is the force F - c w.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.law import Into
from sim.state import Drive, Evaluation, Load, State
from sim.structure import Slider, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

WAY = 3
"""Column of a slip row that holds the way slid so far; the three before it are the slip itself [m]."""
SLIP, FORCE = "rubbing slip", "rubbing force"
"""Where the slip rows (k, 4) are kept, and the forces (k, 3) [N] read."""


def left_n(slider: Slider, way_m: float) -> float:
    """Return the friction that is left after a way slid [N]."""
    return slider.force_n * max(0.0, 1.0 - way_m / slider.travel_m)


def _slid(slider: Slider, size: float, way_m: float) -> tuple[float, float, float]:
    """Return the way slid in this increment [m] (0: it sticks) and the friction before and after it [N]."""
    k, fall = slider.stiffness_n_per_m, slider.force_n / slider.travel_m
    friction = left_n(slider, way_m)
    if k * size <= friction:
        return 0.0, friction, friction
    way = (k * size - friction) / (k - fall)
    if friction - fall * way <= 0.0:
        return size, friction, 0.0
    return way, friction, friction - fall * way


def slide(slider: Slider, pull: Floats, slip: Floats) -> tuple[Floats, float, float, Floats]:
    """Return force (3,) [N], stored and newly spent energy [J] and the new slip row (4,).

    Parameters
    ----------
    pull : shape (3,), how far the nodes' mean has moved since rest [m]
    slip : shape (4,), slip and way slid at the last committed increment [m]
    """
    stretch = pull - slip[:WAY]
    size = float(np.linalg.norm(stretch))
    k = slider.stiffness_n_per_m
    way, before, after = _slid(slider, size, float(slip[WAY]))
    if way == 0.0:
        return k * stretch, 0.5 * k * size * size, 0.0, slip
    unit = stretch / size
    new = np.append(slip[:WAY] + way * unit, slip[WAY] + way)
    # past the end of its travel nothing rubs any more
    rubbed = before * slider.travel_m / slider.force_n if after == 0.0 else way
    return after * unit, 0.5 * after * after / k, 0.5 * (before + after) * rubbed, new


def slide_stiffness(slider: Slider, pull: Floats, slip: Floats) -> Floats:
    """Return the positive part of the tangent (3, 3) [N/m]: k while it sticks, F / e across while it slides.

    Along the slide the friction falls by c k / (k - c) per metre; that negative part is left out.
    """
    stretch = pull - slip[:WAY]
    size = float(np.linalg.norm(stretch))
    way, before, after = _slid(slider, size, float(slip[WAY]))
    if before == 0.0 or (way > 0.0 and after == 0.0):
        return np.zeros((3, 3))
    if way == 0.0:
        return slider.stiffness_n_per_m * np.eye(3)
    across: Floats = (after / size) * (np.eye(3) - np.outer(stretch, stretch) / (size * size))
    return across


class Rubbing:
    """All dry friction on means of nodes, as a law of the network."""

    name, line = "rubbing", "friction"

    def __init__(self, structure: Structure, _: tuple[Drive, ...]) -> None:
        self._all = structure.sliders
        self._rest = [s.weights @ structure.points[s.nodes] for s in self._all]
        self._none = np.zeros((len(self._all), 4))

    @property
    def means(self) -> Sequence[Ints]:
        """Return the nodes of each slider."""
        return [slider.nodes for slider in self._all]

    def _pull(self, index: int, points: Floats) -> Floats:
        slider = self._all[index]
        pull: Floats = slider.weights @ points[slider.nodes] - self._rest[index]
        return pull

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add the friction; fill ``ev.read`` with forces and slip rows."""
        if not self._all:
            return
        old = state.kept.get(SLIP, self._none)
        slip, force = old.copy(), np.zeros((len(self._all), 3))
        stored = spent = 0.0
        for i, slider in enumerate(self._all):
            force[i], kept, heat, slip[i] = slide(slider, self._pull(i, points), old[i])
            stored, spent = stored + kept, spent + heat
            ev.forces[slider.nodes] += slider.weights[:, None] * force[i]
        ev.stored[self.name], ev.spent[self.name] = stored, spent
        ev.read[FORCE], ev.read[SLIP] = force, slip

    def stiffness(self, ev: Evaluation, state: State, _: Load, into: Into) -> None:
        """Add the sliders' positive stiffness."""
        old = state.kept.get(SLIP, self._none)
        for i, slider in enumerate(self._all):
            into.mean(i, slider.weights, slide_stiffness(slider, self._pull(i, ev.points), old[i]))

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with the slip so far."""
        if not self._all:
            return state
        return replace(state, kept={**state.kept, SLIP: ev.read[SLIP].copy()})
