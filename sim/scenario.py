"""Scenarios: some plans of one teaching situation, run many times together, and what is asked of the runs.

A scenario is a TOML file that names plans beside it and asks (`sim.asks`).  Nothing in it tells how anything
ends; it tells what is counted.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

import msgspec

from sim.asks import Ask, check_asks
from sim.carcheck import RANGES
from sim.event_kinds import KINDS
from sim.many import judged, stopping
from sim.plan import Plan
from sim.planfile import check_version, load_plan
from sim.problems import PlanError
from sim.starts import find_start
from sim.textfiles import read_text
from sim.typed import converted, parsed
from sim.vary import Draw, draws_together

SCHEMA_VERSION = 1
MOST_RUNS = 4096


class Scenario(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A teaching situation, its plans, and what is asked of their runs.

    runs : how many of each plan;  seed : draws them
    lattice_spacing_m : of all plans; None leaves each its own
    plans : files by a name of their own, beside the scenario's file
    wrecks : "drawn", with how far they went in and the car's numbers varied, each solved once for all plans
        that have it; or "as planned", solved once and the moves alone varied
    stops : kinds of event at which a plan's last driven move ends, by the plan's name: where nothing that is
        asked of it comes after them, the rest need not be solved
    """

    schema_version: int
    title: str
    plans: dict[str, str]
    asks: tuple[Ask, ...]
    words: str = ""
    author: str = ""
    licence: str = ""
    seed: int = 1
    runs: int = 64
    lattice_spacing_m: float | None = None
    wrecks: Literal["drawn", "as planned"] = "drawn"
    stops: dict[str, tuple[str, ...]] = {}


@dataclass(frozen=True)
class Asked:
    """A scenario with its plans read, each on the lattice it is run on."""

    scenario: Scenario
    plans: Mapping[str, Plan]

    def on_starts(self, starts: Path) -> Asked:
        """Return the scenario with wrecks that are not drawn solved, and kept in a folder.

        Raises
        ------
        PlanError
            When a wreck cannot be made.
        """
        if self.scenario.wrecks == "drawn":
            return self
        from sim.shared_wrecks import on_start  # who only reads a scenario needs no mechanics

        made = {name: on_start(plan, starts, bool) for name, plan in self.plans.items()}
        return Asked(self.scenario, made)

    def draws(self, count: int) -> dict[str, tuple[Draw, ...]]:
        """Return many plans out of each, what they have in common drawn alike."""
        return draws_together(self.plans, count, self.scenario.seed)


def loads_scenario(text: str) -> Scenario:
    """Return the scenario in a TOML text.

    Raises
    ------
    PlanError
        Syntax, missing or newer version, unknown field, wrong type, an ask that cannot be read.
    """
    raw = parsed(text, "scenario")
    check_version(raw, SCHEMA_VERSION)
    return _checked(converted(raw, Scenario, "scenario"))


def _checked(scenario: Scenario) -> Scenario:
    if not scenario.plans:
        raise PlanError("plans", "is empty; name one plan or more")
    if not scenario.asks:
        raise PlanError("asks", "is empty; add an [[asks]] table")
    if not 1 <= scenario.runs <= MOST_RUNS:
        raise PlanError("runs", f"is {scenario.runs}; use 1 to {MOST_RUNS}")
    if scenario.seed < 0:
        raise PlanError("seed", f"is {scenario.seed}; use a whole number from 0 on")
    low, high, remedy = RANGES["lattice_spacing_m"]
    spacing = scenario.lattice_spacing_m
    if spacing is not None and not low <= spacing <= high:
        raise PlanError("lattice_spacing_m", f"is {spacing}; use {low} to {high} ({remedy})")
    for name, kinds in scenario.stops.items():
        if name not in scenario.plans:
            raise PlanError(f"stops.{name}", "is not a name under plans; use one of them")
        for kind in kinds:
            if kind not in KINDS:
                raise PlanError(f"stops.{name}", f"holds {kind!r}, which is no kind of event")
    check_asks(scenario.asks, list(scenario.plans))
    return scenario


def load_scenario(path: Path) -> Asked:
    """Return the scenario of a file with its plans read.

    Raises
    ------
    PlanError
        When a file cannot be read, or as `loads_scenario`.
    """
    scenario = loads_scenario(read_text(path, "scenario"))
    return Asked(scenario, {name: _plan(scenario, name, path.parent) for name in scenario.plans})


def _plan(scenario: Scenario, name: str, folder: Path) -> Plan:
    file = folder / scenario.plans[name]
    try:
        plan = load_plan(file)
        judged(plan)
    except PlanError as error:
        raise error.inside(f"plans.{name}: {file.name}") from error
    if plan.start:
        plan = msgspec.structs.replace(plan, start=str(find_start(plan.start, file.parent)))
    if name in scenario.stops:
        plan = stopping(plan, scenario.stops[name])
    if scenario.lattice_spacing_m is None or plan.start:
        return plan
    car = msgspec.structs.replace(plan.car, lattice_spacing_m=scenario.lattice_spacing_m)
    return plan.with_car(car)
