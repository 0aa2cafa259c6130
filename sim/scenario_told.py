"""What a scenario came to, told: lines for the terminal, a table in Markdown, and a file of plain values.

Shares are told with their counts and interval and the fixed words of `sim.likely`; figures with their middle
and range.  Nothing is passed or failed.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import PurePath
from typing import TYPE_CHECKING

import msgspec

from sim.answers import Answer
from sim.asks import DROPS, Reading
from sim.likely import TELLS
from sim.planfile import plan_sha256
from sim.results import LIMITS_LINE, MODEL_VERSION
from sim.traces import RunTrace

if TYPE_CHECKING:
    from sim.scenario import Asked  # draws need statistics, and who reads what came out does not

HEADINGS = ("asked", "runs", "true share", "word")


class PlanCame(msgspec.Struct, frozen=True):
    """One plan of a scenario: its file and hash, its lattice, runs made and how many answer nothing."""

    file: str
    title: str
    plan_sha256: str
    lattice_spacing_m: float
    start: str
    unsure: int
    whys: tuple[str, ...]


class Came(msgspec.Struct, frozen=True):
    """What a scenario came to, and what that is true for."""

    model_version: str
    limits: str
    title: str
    seed: int
    run_count: int
    plans: dict[str, PlanCame]
    answers: tuple[Answer, ...]
    units: tuple[str, ...]


def came_to(asked: Asked, runs: dict[str, tuple[RunTrace, ...]], answers: Sequence[Answer]) -> Came:
    """Return what a scenario came to."""
    scenario = asked.scenario
    plans = {}
    for name, plan in asked.plans.items():
        whys = dict.fromkeys(run.why for run in runs[name] if run.why)
        unsure = sum(not run.moves or any(m.failed_count for m in run.moves) for run in runs[name])
        plans[name] = PlanCame(
            PurePath(scenario.plans[name]).name,
            plan.title,
            plan_sha256(plan),
            plan.car.lattice_spacing_m,
            PurePath(plan.start).name,
            unsure,
            tuple(whys),
        )
    count = len(next(iter(runs.values())))
    units = tuple(_unit(ask) if isinstance(ask, Reading) else "" for ask in scenario.asks)
    return Came(
        MODEL_VERSION, LIMITS_LINE, scenario.title, scenario.seed, count, plans, tuple(answers), units
    )


def _unit(ask: Reading) -> str:
    """Return the unit a figure is told in: by the ending of its name."""
    if ask.lines:
        return "%"
    name = ask.figure[0]
    if name == DROPS:
        return "kN"
    return {"m": "mm", "n": "kN", "rad": "deg", "ratio": ""}.get(name.rpartition("_")[2], "")


_FACTORS = {"mm": 1e3, "kN": 1e-3, "deg": 57.29577951308232, "%": 100.0}


def number_words(value: float, unit: str) -> str:
    """Return a figure in the unit it is told in, without the unit."""
    told = value * _FACTORS.get(unit, 1.0)
    digits = 0 if abs(told) >= 100.0 or unit in ("mm", "%") else 1 if unit else 2
    return f"{told:.{digits}f}"


def cells(answer: Answer, unit: str) -> tuple[str, str, str, str]:
    """Return an answer in the order of `HEADINGS`."""
    unsure = f", {answer.unsure} unsure" if answer.unsure else ""
    if answer.ask == "told":
        if answer.middle is None or answer.least is None or answer.most is None:
            return answer.words, f"0 of {answer.total}{unsure}", "", "no figure"
        told = [number_words(value, unit) for value in (answer.middle, answer.least, answer.most)]
        return (
            answer.words,
            f"{answer.count} of {answer.total}{unsure}",
            "",
            f"{told[0]} ({told[1]} to {told[2]}) {unit}".strip(),
        )
    share = f"{100 * answer.low:.0f} to {100 * answer.high:.0f} %"
    if answer.ask == "apart":
        return answer.words, "", share, f"apart by {100 * (answer.middle or 0.0):.0f} %"
    return answer.words, f"{answer.count} of {answer.total}{unsure}", share, answer.word


def lines(came: Came) -> list[str]:
    """Return a line an ask."""
    out = []
    for answer, unit in zip(came.answers, came.units, strict=True):
        words, count, share, word = cells(answer, unit)
        runs = f"{count} " if count else ""
        between = f"(true share {share}) " if share and answer.ask != "apart" else ""
        between = f"({share}) " if answer.ask == "apart" else between
        out.append(f"{words}: {runs}{between}: {word}".replace(" : ", ": "))
    if came.run_count < TELLS:
        out.append(f"With fewer than {TELLS} runs no word can be said: the counts tell.")
    for name, plan in came.plans.items():
        if plan.unsure:
            why = f" ({plan.whys[0]})" if plan.whys else ""
            out.append(f"{name}: {plan.unsure} of {came.run_count} runs failed or did not settle{why}")
    return out


def markdown(came: Came) -> str:
    """Return the table of a scenario, with what it is true for."""
    spacings = sorted({1e3 * plan.lattice_spacing_m for plan in came.plans.values()})
    lattice = " and ".join(f"{value:.0f}" for value in spacings)
    head = (
        f"**{came.title}** ({came.run_count} runs a plan, lattice {lattice} mm, seed {came.seed}, "
        f"model {came.model_version})"
    )
    rows = [cells(*pair) for pair in zip(came.answers, came.units, strict=True)]
    table = ["| " + " | ".join(HEADINGS) + " |", "| --- | --- | --- | --- |"]
    table += ["| " + " | ".join(cell.replace("|", "/") for cell in row) + " |" for row in rows]
    return head + "\n\n" + "\n".join(table) + "\n"


def to_json(came: Came) -> str:
    """Return the file of plain values."""
    return msgspec.json.format(msgspec.json.encode(came), indent=1).decode() + "\n"


def from_json(text: str | bytes) -> Came:
    """Return what a file of plain values says.

    Raises
    ------
    msgspec.MsgspecError
        When it is no such file.
    """
    return msgspec.json.decode(text, type=Came)
