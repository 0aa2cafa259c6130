"""Equilibrium of one increment: Newton on the full tangent with predicted spring forces.

A thin sheet that turns by dtheta in one step appears stretched by dtheta^2 / 2, and a tangent built on that
false tension makes the next step tiny.  So the geometric part uses the spring forces predicted linearly by
the last step (the mixed form of Newton's method for slender shells [magisano-2017], from memory); the
residual is always the true one, so the answer is the same and comes in a third of the iterations.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.factor import NotPositiveError
from sim.network import Evaluation, Load, Network, State

Floats = NDArray[np.float64]

TOLERANCE_RATIO = 1.0e-6  # unbalanced force over tool force, the balance every load path is drawn with
TOLERANCE_N = 1.0e-3


class CancelledError(Exception):
    """The user stopped the solve between two factorisations."""


@dataclass(frozen=True)
class Options:
    """Limits of the iteration."""

    mixed_limit: int = 14
    damped_limit: int = 60
    largest_step_m: float = 0.03


@dataclass(frozen=True)
class Equilibrium:
    """Outcome of one solve: the last evaluation and how it was reached."""

    evaluation: Evaluation
    converged: bool
    iteration_count: int
    residual_n: float


def _never() -> bool:
    return False


def _limit(network: Network, ev: Evaluation) -> float:
    pushed = float(np.abs(ev.drive_force).max()) if len(ev.drive_force) else 0.0
    held = float(np.abs(ev.tie_force).max()) if len(ev.tie_force) else 0.0
    return max(TOLERANCE_N, TOLERANCE_RATIO * max(pushed, held))


def _factor(network: Network, ev: Evaluation, state: State, load: Load, guess: Floats) -> bool:
    """Factor the tangent; fall back to its positive part, then to a shift.  Return whether it was definite."""
    try:
        network.factor.refactor(network.stiffness_values(ev, state, load, guess))
    except NotPositiveError:
        pass
    else:
        return True
    network.evaluate(ev.points.copy(), state, load, soften=False, out=ev)
    shift = 0.0
    while True:
        try:
            network.factor.refactor(network.stiffness_values(ev, state, load, guess, positive=True, shift=shift))
        except NotPositiveError:
            shift = max(1.0e3, 10.0 * shift)
            if shift > 1.0e12:
                raise
        else:
            return False


def step_of(network: Network, ev: Evaluation) -> Floats:
    """Return the Newton step of the last factor, shape (n, 3) [m]."""
    out: Floats = network.factor.solve(-network.residual(ev).ravel()).reshape(-1, 3)
    return out


def mixed_newton(
    network: Network, state: State, load: Load, start: Floats, guess: Floats | None, options: Options,
    cancelled: Callable[[], bool],
) -> Equilibrium:  # fmt: skip
    """Iterate with predicted spring forces and full steps (shortened only beyond a largest node step)."""
    ev = network.evaluate(start, state, load)
    best = np.inf
    springs = ev.springs.copy() if guess is None else guess
    for count in range(options.mixed_limit + 1):
        size = float(np.abs(network.residual(ev)).max())
        if not np.isfinite(size):
            return Equilibrium(ev, False, count, size)
        if size <= _limit(network, ev):
            return Equilibrium(ev, True, count, size)
        if count == options.mixed_limit or (count > 6 and size > 1.0e3 * best):
            break
        best = min(best, size)
        if cancelled():
            raise CancelledError
        definite = _factor(network, ev, state, load, springs)
        step = step_of(network, ev)
        longest = float(np.abs(step).max())
        if longest > options.largest_step_m:
            step *= options.largest_step_m / longest
        springs = ev.springs + network.spring_change(ev, step)
        if not definite:
            springs = ev.springs.copy()
        ev = network.evaluate(ev.points + step, state, load, out=None)
    return Equilibrium(ev, False, count, size)


def damped_newton(
    network: Network, state: State, load: Load, start: Floats, options: Options, cancelled: Callable[[], bool]
) -> Equilibrium:
    """Descend the potential with a line search; always ends lower than it began."""
    ev = network.evaluate(start, state, load)
    size = np.inf
    for count in range(options.damped_limit + 1):
        residual = network.residual(ev)
        size = float(np.abs(residual).max())
        if size <= _limit(network, ev):
            return Equilibrium(ev, True, count, size)
        if count == options.damped_limit:
            break
        if cancelled():
            raise CancelledError
        _factor(network, ev, state, load, ev.springs)
        step = step_of(network, ev)
        longest = float(np.abs(step).max())
        scale = min(1.0, options.largest_step_m / longest) if longest > 0.0 else 1.0
        slope = float(np.sum(residual * step))
        before = ev.potential_j
        while True:
            trial = network.evaluate(ev.points + scale * step, state, load)
            if trial.potential_j <= before + 1.0e-4 * scale * slope + 1.0e-12 * abs(before):
                break
            if scale < 1.0e-6:
                return Equilibrium(ev, False, count, size)
            scale *= 0.4
        ev = trial
    return Equilibrium(ev, False, count, size)


def equilibrate(
    network: Network,
    state: State,
    load: Load,
    start: Floats,
    guess: Floats | None = None,
    *,
    options: Options = Options(),
    cancelled: Callable[[], bool] = _never,
) -> Equilibrium:
    """Return the equilibrium of one increment.

    Parameters
    ----------
    start : shape (n, 3), where to begin [m];  guess : predicted spring forces there, shape (m, 6)

    Raises
    ------
    CancelledError
        When ``cancelled()`` turns true; asked before each factorisation.
    """
    answer = damped_newton(network, state, load, start, options, cancelled)
    if answer.converged:
        return answer
    again = damped_newton(network, state, load, state.points, options, cancelled)
    return Equilibrium(
        again.evaluation, again.converged, answer.iteration_count + again.iteration_count, again.residual_n
    )
