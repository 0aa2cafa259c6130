"""Equilibrium of one increment: descent of the potential on a factored tangent and remembered curvature.

Newton's full step is rarely taken here.  A thin sheet that turns by dtheta in one step appears stretched
by dtheta^2 / 2, sections begin to flow and contacts close half way, so the tangent is exact at a place that
the line search leaves at once, and a new factor costs ten times a look at the forces.  So one factor is
kept for many steps, each corrected by what the last steps have taught (`sim.recall`), and a new one is
made when that no longer pays.  Near the answer, where the tangent holds, the two are Newton's method.

Every step lowers the potential (sufficient decrease), so an indefinite tangent needs no care of its own: its
positive part is factored instead and the remembered curvature makes up for the rest.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.factor import NotPositiveError
from sim.network import Evaluation, Load, Network, State
from sim.recall import Recall

Floats = NDArray[np.float64]

TOLERANCE_RATIO = 1.0e-6  # unbalanced force over tool force, the balance every load path is drawn with
TOLERANCE_N = 1.0e-3
SUFFICIENT = 1.0e-4  # share of the foretold decrease a step must bring
ROUNDING = 1.0e-12  # of the potential: differences below are noise
SHORTEST = 1.0e-6
ROUGH = 2.0e4  # residual over its limit: above, a tangent just found indefinite is not tried whole again


class CancelledError(Exception):
    """The user stopped the solve between two factorisations."""


@dataclass(frozen=True)
class Options:
    """Limits of the iteration.

    factor_limit : factorisations of one descent;  step_limit : steps on one factor
    window, slow_ratio : a new factor is due when the foretold decrease of ``window`` steps has not fallen
        by ``slow_ratio`` each
    memory : steps remembered
    """

    factor_limit: int = 60
    step_limit: int = 30
    window: int = 5
    slow_ratio: float = 0.75
    memory: int = 25
    largest_step_m: float = 0.03


@dataclass(frozen=True)
class Equilibrium:
    """Outcome of one solve: the last evaluation and how it was reached.

    iteration_count : tangents factored;  step_count : steps taken on them
    """

    evaluation: Evaluation
    converged: bool
    iteration_count: int
    residual_n: float
    step_count: int = 0


def _never() -> bool:
    return False


def balance_limit_n(ev: Evaluation) -> float:
    """Return how much of a force may stay unbalanced [N]."""
    pushed = float(np.abs(ev.drive_force).max()) if len(ev.drive_force) else 0.0
    held = float(np.abs(ev.tie_force).max()) if len(ev.tie_force) else 0.0
    return max(TOLERANCE_N, TOLERANCE_RATIO * max(pushed, held))


def factor_tangent(network: Network, ev: Evaluation, state: State, load: Load, *, whole: bool) -> bool:
    """Factor the tangent, else its positive part, else that with a shift; return whether it was definite.

    ``whole`` False passes over the first, where it is not worth the try.
    """
    if whole:
        try:
            network.factor.refactor(network.stiffness_values(ev, state, load, ev.springs))
        except NotPositiveError:
            pass
        else:
            return True
    shift = 0.0
    while True:
        try:
            network.factor.refactor(
                network.stiffness_values(ev, state, load, ev.springs, positive=True, shift=shift)
            )
        except NotPositiveError:
            shift = max(1.0e3, 10.0 * shift)
            if shift > 1.0e12:
                raise
        else:
            return False


def _search(
    network: Network,
    state: State,
    load: Load,
    ev: Evaluation,
    step: Floats,
    slope: float,
    longest_m: float,
    out: Evaluation,
) -> float | None:
    """Fill ``out`` with the first point along a step that lowers the potential enough; return its share."""
    longest = float(np.abs(step).max())
    scale = min(1.0, longest_m / longest) if longest > 0.0 else 1.0
    before = ev.potential_j
    while scale >= SHORTEST:
        rise = network.evaluate(ev.points + scale * step, state, load, out=out).potential_j - before
        if rise <= SUFFICIENT * scale * slope + ROUNDING * abs(before):
            return scale
        # lowest point of the parabola through both values and the slope
        bend = rise - slope * scale
        best = -0.5 * slope * scale * scale / bend if bend > 0.0 else 0.0
        scale = min(max(best, 0.1 * scale), 0.5 * scale)
    return None


def descend(
    network: Network, state: State, load: Load, start: Floats, options: Options, cancelled: Callable[[], bool]
) -> Equilibrium:
    """Descend the potential from one start; always ends lower than it began."""
    ev = network.evaluate(start, state, load)
    spare = network.blank()
    recall = Recall(options.memory, start.size)
    residual = network.residual(ev)
    size = float(np.abs(residual).max())
    steps, definite = 0, True
    for count in range(options.factor_limit + 1):
        if size <= balance_limit_n(ev):
            return Equilibrium(ev, True, count, size, steps)
        if count == options.factor_limit or not np.isfinite(size):
            break
        if cancelled():
            raise CancelledError
        try:
            definite = factor_tangent(
                network, ev, state, load, whole=definite or size < ROUGH * balance_limit_n(ev)
            )
        except (
            NotPositiveError
        ):  # no shift helps: a chain folded flat on itself, say; this start leads nowhere
            return Equilibrium(ev, False, count + 1, size, steps)
        recall.clear()
        foretold: list[float] = []
        for _ in range(options.step_limit):
            if cancelled():
                raise CancelledError
            vector = residual.ravel().copy()
            recall.before(vector)
            vector = network.factor.solve(vector)
            recall.after(vector)
            step = -vector.reshape(-1, 3)
            slope = float(np.sum(residual * step))
            scale = _search(network, state, load, ev, step, slope, options.largest_step_m, spare)
            if scale is None:
                break
            ev, spare = spare, ev
            before, residual = residual, network.residual(ev)
            recall.add(scale * step.ravel(), (residual - before).ravel())
            size = float(np.abs(residual).max())
            foretold.append(-slope)
            steps += 1
            slow = options.slow_ratio**options.window
            if size <= balance_limit_n(ev) or _slow(foretold, options.window, slow):
                break
        if not foretold:
            return Equilibrium(ev, False, count + 1, size, steps)
    return Equilibrium(ev, False, options.factor_limit, size, steps)


def _slow(foretold: list[float], window: int, ratio: float) -> bool:
    return len(foretold) > window and foretold[-1] > ratio * foretold[-1 - window]


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
    start : shape (n, 3), where to begin [m];  guess : another place to begin from where that one fails

    Raises
    ------
    CancelledError
        When ``cancelled()`` turns true; asked before each factorisation and each step.
    """
    answer = descend(network, state, load, start, options, cancelled)
    if answer.converged:
        return answer
    again = descend(network, state, load, state.points if guess is None else guess, options, cancelled)
    return Equilibrium(
        again.evaluation, again.converged, answer.iteration_count + again.iteration_count, again.residual_n,
        answer.step_count + again.step_count,
    )  # fmt: skip
