"""Grip of a pad: what it presses with, and what friction lets it hold across.

A tip at a given opening stands at one place; the metal under its pad may lag behind by

    delta = tip - pad's metal - slid        (3,) [m],

with what the pad has slid on the metal taken off.  Along its bearing b the pad pushes with k (b . delta) and
never pulls; across it a spring as stiff holds the metal up to a limit, then slides (Coulomb),

    E = k/2 <b . delta>^2 + k/2 |d|^2                     d = delta - b (b . delta),  k |d| <= limit
                          + limit |d| - limit^2 / 2k      beyond,

which has one tangent at the limit and is convex, so the descent of the potential may use it.  Beyond
the limit its elastic part is limit^2 / 2k and the rest, limit (|d| - limit / k), has gone into friction.

Coulomb's limit [coulomb-1785], friction_ratio x force pressed with, would have no potential.  The force
pressed with is therefore that of the last converged step: an error of first order, halved with the step.  A
pad just set holds for its first step.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

# Coefficients of friction, from memory, in the order common practice gives heads of tools: a slide on rubber,
# painted steel, bare steel.  Serrated tips on painted steel: 0.3 to 0.6, from memory.
FRICTION_RATIO = {"painted": 0.4, "bare": 0.55, "rubber": 0.15}


@dataclass(frozen=True)
class Grip:
    """How a tip holds the metal during one step of the grid.

    anchor : shape (3,), the tip's place at travel 0, less what its spring is loaded by [m]
    way : shape (3,), how far the tip moves per metre of opening: the chord of its path
    bearing : unit vector, shape (3,), the way the pad presses
    friction_ratio : force across over force pressed with, at which it slides
    cap_n : most force across, whatever is pressed with [N]
    """

    anchor: Floats
    way: Floats
    bearing: Floats
    friction_ratio: float
    cap_n: float = float("inf")

    def limit_n(self, pressed_n: float) -> float:
        """Return the most the pad can hold across [N]; NaN stands for a pad just set, which holds."""
        return float("inf") if np.isnan(pressed_n) else min(self.friction_ratio * pressed_n, self.cap_n)

    def lag(self, place: Floats, travel_m: float, slid: Floats) -> Floats:
        """Return how far the pad's metal lags behind the tip, shape (3,) [m]."""
        lag: Floats = self.anchor + travel_m * self.way - place - slid
        return lag


def _split(lag: Floats, bearing: Floats) -> tuple[float, Floats, float]:
    along = float(bearing @ lag)
    across = lag - along * bearing
    return along, across, float(np.sqrt(across @ across))


def grip_energy(lag: Floats, bearing: Floats, limit_n: float, stiffness: float) -> tuple[float, float]:
    """Return the stored energy and what has gone into friction [J]."""
    along, _, size = _split(lag, bearing)
    held = min(stiffness * size, limit_n)
    stored = 0.5 * stiffness * max(along, 0.0) ** 2 + 0.5 * held**2 / stiffness
    return stored, held * (size - held / stiffness)


def grip_gradient(lag: Floats, bearing: Floats, limit_n: float, stiffness: float) -> Floats:
    """Return the derivative of the energy by the lag, which is the force on the metal, shape (3,) [N]."""
    along, across, size = _split(lag, bearing)
    share = min(1.0, limit_n / (stiffness * size)) if size > 0.0 else 1.0
    force: Floats = stiffness * (max(along, 0.0) * bearing + share * across)
    return force


def grip_hessian(lag: Floats, bearing: Floats, limit_n: float, stiffness: float) -> Floats:
    """Return the second derivative of the energy by the lag, shape (3, 3) [N/m]; never negative."""
    along, across, size = _split(lag, bearing)
    normal = np.outer(bearing, bearing)
    out = stiffness * normal if along > 0.0 else np.zeros((3, 3))
    if stiffness * size <= limit_n:
        return np.asarray(out + stiffness * (np.eye(3) - normal))
    # the force across keeps its size and turns with the lag: d(limit d/|d|) = limit/|d| (1 - b b' - t t')
    unit = across / size
    return np.asarray(out + limit_n / size * (np.eye(3) - normal - np.outer(unit, unit)))


def grip_slip(lag: Floats, bearing: Floats, limit_n: float, stiffness: float) -> Floats:
    """Return how far the pad slides on the metal in this step, (3,) [m]: what the spring cannot take."""
    _, across, size = _split(lag, bearing)
    if stiffness * size <= limit_n:
        return np.zeros(3)
    slip: Floats = across * (1.0 - limit_n / (stiffness * size))
    return slip
