"""The ready plans on three lattices each: what gives, in order, the highest force, seam parted, the books.

    python tests/benchmarks/three_spacings.py [NAME ...] --out FOLDER [--spacings 60 45 30] [--workers 1]

Prints each plan and how far its lattices are apart.  Answers are kept in the folder as they come, so a call
that was stopped goes on where it was.  Without names all plans of a single door are solved, one to three
minutes of CPU time each; a plan of a side takes many.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from dataclasses import asdict, dataclass
from pathlib import Path

import msgspec

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from sim import warm
from sim.checks.facts import Done
from sim.checks.spacings import FORCES, LENGTHS, story
from sim.planfile import load_plan
from sim.run import solve_plan
from sim.workers import Fault, Workers
from tests.sim.runs.random_pushes import LEAST_WORK_J

PLANS = Path(__file__).resolve().parents[2] / "assets" / "plans"
LEAST_M = 0.05
"""Lengths closer than this are alike whatever their ratio: about one triangle of the usual lattice."""


@dataclass(frozen=True)
class Answer:
    """What a ready plan comes to on a lattice.

    story : what each move did, in order;  peak_n : highest force [N]
    parted_m, torn_m : seam and sheet at the end [m];  effect : what the last move was for the plan
    closure, viscous : worst gap of the books, and most drag, over the work, of all moves that take any
    """

    plan: str
    spacing_mm: int
    nodes: int
    story: tuple[str, ...]
    peak_n: float
    parted_m: float
    torn_m: float
    effect: str
    closure: float
    viscous: float
    cpu_s: float


def answer(asked: tuple[str, int]) -> Answer:
    """Return what a ready plan comes to on a lattice of so many millimetres."""
    name, spacing_mm = asked
    plan = load_plan(PLANS / f"{name}.toml")
    plan = plan.with_car(msgspec.structs.replace(plan.car, lattice_spacing_m=1e-3 * spacing_mm))
    began = time.process_time()
    model, records = solve_plan(plan, folder=PLANS, with_residual=False)
    forces = [tuple(frame.force_n for frame in record.frames) for record in records]
    results = [record.result for record in records if record.result is not None]
    worked = [result for result in results if result.ledger_j["work of the tips"] > LEAST_WORK_J]
    between = [event.force_n for result in results for event in result.events]
    return Answer(
        plan=name,
        spacing_mm=spacing_mm,
        nodes=len(model.start.points),
        story=tuple(story(Done(result, force)) for result, force in zip(results, forces, strict=True)),
        peak_n=max(0.0, *between, *(n for force in forces for n in force)),
        parted_m=results[-1].parted_length_m,
        torn_m=results[-1].torn_length_m,
        effect=results[-1].plan_effect,
        closure=max((result.ledger_closure_ratio for result in worked), default=0.0),
        viscous=max((result.viscous_ratio for result in worked), default=0.0),
        cpu_s=time.process_time() - began,
    )


def apart(told: list[Answer]) -> str:
    """Return in words how far the answers of one plan are apart; empty when they agree."""
    words = ["another story"] if len({one.story for one in told}) > 1 else []
    peaks = [one.peak_n for one in told]
    if max(peaks) > FORCES * min(peaks):
        words.append(f"force {max(peaks) / max(min(peaks), 1.0):.2f} times")
    for what in ("parted", "torn"):
        lengths = [getattr(one, f"{what}_m") for one in told]
        if max(lengths) - min(lengths) > LEAST_M and max(lengths) > LENGTHS * min(lengths):
            words.append(f"{what} {1e3 * min(lengths):.0f} to {1e3 * max(lengths):.0f} mm")
    return "; ".join(words)


def show(told: list[Answer]) -> None:
    """Print one plan's answers and how far they are apart."""
    print(f"\n{told[0].plan}: {apart(told) or 'the same on all'}")
    for one in told:
        print(
            f"  {one.spacing_mm} mm, {one.nodes} nodes: {1e-3 * one.peak_n:.2f} kN,"
            f" parted {1e3 * one.parted_m:.0f}, torn {1e3 * one.torn_m:.0f} mm, {one.effect};"
            f" books {100 * one.closure:.2f} %, drag {100 * one.viscous:.1f} %; {one.cpu_s:.0f} s"
        )
        print(*(f"      {number}: {line}" for number, line in enumerate(one.story, 1)), sep="\n")


def main() -> None:
    """Solve what is not kept yet, and print all."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("names", nargs="*")
    parser.add_argument("--out", type=Path, required=True)
    parser.add_argument("--spacings", type=int, nargs="+", default=[60, 45, 30])
    parser.add_argument("--workers", type=int, default=1)
    asked = parser.parse_args()
    asked.out.mkdir(parents=True, exist_ok=True)
    file = asked.out / "answers.jsonl"
    kept = [json.loads(line) for line in file.read_text().splitlines()] if file.exists() else []
    have = {(one["plan"], one["spacing_mm"]): Answer(**one | {"story": tuple(one["story"])}) for one in kept}
    doors = [path.stem for path in sorted(PLANS.glob("*.toml")) if load_plan(path).car.extent == "door"]
    names = asked.names or doors
    todo = [(name, mm) for name in names for mm in asked.spacings if (name, mm) not in have]
    with Workers(answer, asked.workers, warm.main) as workers:
        for said in workers.answer(todo):
            if said is None:
                continue
            index, one = said
            if isinstance(one, Fault):
                print(f"{todo[index]}: {one.sentence}", flush=True)
                continue
            have[todo[index]] = one
            with file.open("a") as lines:
                lines.write(json.dumps(asdict(one)) + "\n")
    for name in names:
        if told := [have[name, mm] for mm in asked.spacings if (name, mm) in have]:
            show(told)


if __name__ == "__main__":
    main()
