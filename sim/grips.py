"""The tips that hold by friction, as a law of the network: see `sim.grip` for the law itself."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.grip import Grip, grip_energy, grip_gradient, grip_hessian, grip_slip
from sim.law import Into
from sim.state import Drive, Evaluation, Load, State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SLID, PRESSED = "grips slid", "grips pressed"
"""Keys of what is kept, (drives, 3) [m] and (drives,) [N]."""
FORCE, SLIDES = "grips force", "grips slides"
"""Keys of what is read besides: (drives, 3) [N], and (drives,) 1 for a pad that slid in the step, else 0."""


def just_set(state: State) -> State:
    """Return the state with every pad just set: nothing slid, no force pressed with yet."""
    return replace(state, kept={k: v for k, v in state.kept.items() if k not in (SLID, PRESSED)})


def held_on(state: State) -> State:
    """Return the state with nothing slid, at the force pressed with so far."""
    return replace(state, kept={**state.kept, SLID: np.zeros_like(state.kept[SLID])})


def grown(state: State, ratio: float) -> State:
    """Return the state with the force pressed with so far grown by a ratio, where it is known to grow."""
    return replace(state, kept={**state.kept, PRESSED: ratio * state.kept[PRESSED]})


class Grips:
    """Tips that hold the metal across their line up to friction; the tool force does the work of opening."""

    name, line = "grips", "friction"

    def __init__(self, _: Structure, drives: tuple[Drive, ...]) -> None:
        self._drives = drives
        self._mine: list[tuple[int, Drive, Grip]] = [
            (i, drive, drive.grip) for i, drive in enumerate(drives) if drive.grip is not None
        ]

    @property
    def means(self) -> Sequence[Ints]:
        """Return the nodes of each pad that grips."""
        return [drive.nodes for _, drive, _ in self._mine]

    @staticmethod
    def _kept(i: int, grip: Grip, state: State) -> tuple[Floats, float]:
        """Return how far a pad had slid, (3,) [m], and the most it holds across in this step [N]."""
        if PRESSED not in state.kept:
            return np.zeros(3), grip.limit_n(float("nan"))
        return state.kept[SLID][i], grip.limit_n(float(state.kept[PRESSED][i]))

    def forces(self, points: Floats, state: State, load: Load, ev: Evaluation) -> None:
        """Add what the tips hold with; fill ``ev.drive_force`` (drives,) [N] and what is read."""
        if not self._mine:
            return
        count = len(self._drives)
        slid, pressed, tip_force = np.zeros((count, 3)), np.zeros(count), np.zeros((count, 3))
        slides = np.zeros(count)
        stored = spent = 0.0
        for i, drive, grip in self._mine:
            before, limit = self._kept(i, grip, state)
            lag = grip.lag(drive.weights @ points[drive.nodes], load.travel_m[i], before)
            law = (lag, grip.bearing, limit, drive.stiffness_n_per_m)
            energy = grip_energy(*law)
            stored, spent = stored + energy[0], spent + energy[1]
            force = grip_gradient(*law)
            ev.drive_force[i], tip_force[i] = force @ grip.way, force
            pressed[i] = max(float(force @ grip.bearing), 0.0)
            slip = grip_slip(*law)
            slid[i], slides[i] = before + slip, float(slip.any())
            ev.forces[drive.nodes] -= drive.weights[:, None] * force
        ev.stored[self.name], ev.spent[self.name] = stored, spent
        ev.read[SLID], ev.read[PRESSED], ev.read[FORCE] = slid, pressed, tip_force
        ev.read[SLIDES] = slides

    def stiffness(self, ev: Evaluation, state: State, load: Load, into: Into) -> None:
        """Add the tips that hold, along and across."""
        for index, (i, drive, grip) in enumerate(self._mine):
            before, limit = self._kept(i, grip, state)
            lag = grip.lag(drive.weights @ ev.points[drive.nodes], load.travel_m[i], before)
            k = grip_hessian(lag, grip.bearing, limit, drive.stiffness_n_per_m)
            into.mean(index, drive.weights, k)

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with how far each pad has slid and what it presses with."""
        if not self._mine:
            return state
        kept = {SLID: ev.read[SLID].copy(), PRESSED: ev.read[PRESSED].copy()}
        return replace(state, kept={**state.kept, **kept})
