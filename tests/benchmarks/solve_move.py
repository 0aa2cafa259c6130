"""Time the solve of one move, by hand, one thread:

    OMP_NUM_THREADS=1 PYTHONPATH=. python tests/benchmarks/solve_move.py [lattice in mm ...]

For each lattice a push on the hem lip (100 mm) and one behind the inner bend (60 mm, with the latch let go
when its limit is reached) on the plain grid of increments: factorisations and steps an increment, CPU
milliseconds, their split over looking at forces, assembly, factor and solve, and the whole over CHOLMOD
alone: for the same matrices, each factored and solved once; and for all the solves the move made with them.
"""

import sys
import time

import msgspec
import numpy as np

from sim.door_model import build_model
from sim.factor import NotPositiveError
from sim.increment import VISCOUS_N_PER_M
from sim.ladder import tie_ratios
from sim.network import Load
from sim.newton import equilibrate
from sim.plan import Car, EdgePoint, Spread
from sim.push import make_push
from sim.run import STEP_M

MOVES = {
    "lip": Spread(door=EdgePoint(depth_m=0.005), opening_m=0.1),
    "bend": Spread(door=EdgePoint(depth_m=0.12), opening_m=0.06),
}


class Clock:
    """CPU seconds spent in some methods of some objects, each counted once."""

    def __init__(self):
        self.seconds = {}
        self.matrices = []
        self.solves = []

    def watch(self, owner, method, name, keep=False):
        """Replace a method by one that is timed; ``keep`` also keeps what it is given."""
        plain = getattr(owner, method)
        self.seconds.setdefault(name, 0.0)

        def timed(*args, **words):
            if keep:
                self.matrices.append(args[0].copy())
                self.solves.append(0)
            elif name == "solve":
                self.solves[-1] += 1
            start = time.process_time()
            try:
                return plain(*args, **words)
            finally:
                self.seconds[name] += time.process_time() - start

        setattr(owner, method, timed)
        return plain


def alone(refactor, solve, matrices, solves, size):
    """Return CPU seconds of factoring the same matrices and solving with each so many times, no more."""
    right = np.ones(size)
    start = time.process_time()
    for values, count in zip(matrices, solves, strict=True):
        try:
            refactor(values)
        except NotPositiveError:
            continue
        for _ in range(count):
            solve(right)
    return time.process_time() - start


def run(model, move):
    """Return how one move went, as a dict of numbers."""
    push = make_push(model, move)
    network = model.network.with_drives([push.drive(model.start.points)])
    return timed_push(network, model.start, move.opening_m)


def timed_push(network, start_state, opening_m):
    """Return how one push on the plain grid of increments went, as a dict of numbers."""
    clock = Clock()
    clock.watch(network, "evaluate", "forces")
    clock.watch(network, "stiffness_values", "assembly")
    refactor = clock.watch(network.factor, "refactor", "factor", keep=True)
    solve = clock.watch(network.factor, "solve", "solve")
    state, before = start_state, None
    iterations, steps, failed, released = [], [], 0, []
    start = time.process_time()
    for k in range(1, round(opening_m / STEP_M) + 1):
        load = Load((k * STEP_M,), None, VISCOUS_N_PER_M, state.points)
        guess = state.points if before is None else 2.0 * state.points - before
        answer = equilibrate(network, state, load, guess)
        iterations.append(answer.iteration_count)
        steps.append(answer.step_count)
        failed += not answer.converged
        before, state = state.points, network.commit(state, answer.evaluation)
        ratio = tie_ratios(network, state, answer.evaluation)
        if ratio.max() >= 1.0:
            index = int(ratio.argmax())
            released.append((network.structure.ties[index].name, k))
            state = network.release_tie(state, index)
    total = time.process_time() - start
    once = [1] * len(clock.matrices)
    by_once, by_all = (
        alone(refactor, solve, clock.matrices, solves, 3 * len(state.points))
        for solves in (once, clock.solves)
    )
    return {
        "iterations": iterations, "steps": steps, "failed": failed, "released": released, "total": total,
        "once": by_once, "all": by_all, "factors": len(clock.matrices), **clock.seconds,
    }  # fmt: skip


def line(name, nodes, got):
    """Return the one line printed for a move."""
    count = len(got["iterations"])
    part = " ".join(
        f"{key} {1e3 * got[key] / count:5.1f}" for key in ("forces", "assembly", "factor", "solve")
    )
    return (
        f"{name:5s} {nodes:5d} nodes {count:3d} increments: iterations {np.mean(got['iterations']):5.2f}"
        f" (most {max(got['iterations'])}), factors {got['factors'] / count:5.2f},"
        f" steps {np.mean(got['steps']):5.1f} an increment;"
        f" {1e3 * got['total'] / count:6.1f} ms each ({part});"
        f" whole over CHOLMOD alone, one solve a factor {got['total'] / got['once']:4.2f},"
        f" all solves {got['total'] / got['all']:4.2f}; failed {got['failed']};"
        f" let go {got['released']}"
    )


def main():
    """Print one line per lattice and move."""
    for spacing in [float(word) / 1e3 for word in sys.argv[1:]] or [0.06, 0.045, 0.03]:
        model = build_model(msgspec.structs.replace(Car(), lattice_spacing_m=spacing))
        quick = msgspec.structs.replace(MOVES["lip"], opening_m=0.005)
        run(model, quick)  # compiled once, outside the time
        for name, move in MOVES.items():
            print(
                line(f"{1e3 * spacing:.0f} {name}", len(model.structure.points), run(model, move)), flush=True
            )


if __name__ == "__main__":
    main()
