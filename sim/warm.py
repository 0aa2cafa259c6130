"""Compile every kernel once, so the first push does not wait for the compiler."""

from __future__ import annotations

from sim.folded import Replay
from sim.plan import Car, Plan, Spread
from sim.run import solve_plan


def main() -> None:
    """Solve one small increment; numba keeps what it compiled."""
    car = Car(lattice_spacing_m=0.06)
    model, records = solve_plan(Plan(car=car, moves=(Spread(opening_m=0.0025),)))
    Replay(model.network, [records[0].frames[-1].points], [None]).work(0)


if __name__ == "__main__":
    main()
