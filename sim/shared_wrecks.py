"""Wrecks that several runs have in common: solved once, kept as saved starts under what they were made of.

Two plans of one scenario that begin with the same wreck draw it alike, so run k of one and run k of the other
stand on the same metal; it is solved for the first of them and read for the others.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from pathlib import Path

import msgspec

from sim.plan import Plan
from sim.planfile import plan_sha256
from sim.results import MODEL_VERSION
from sim.starts import save_start
from sim.wreck import car_before, model_of, wrecked


def start_name(plan: Plan) -> str:
    """Return the name of the file that keeps a plan's wreck: hash of car, wreck and version of the model."""
    made_of = plan_sha256(Plan(car=car_before(plan), wreck=plan.wreck))
    return hashlib.sha256(f"{MODEL_VERSION} {made_of}".encode()).hexdigest()[:24] + ".npz"


def on_start(plan: Plan, folder: Path, cancelled: Callable[[], bool]) -> Plan:
    """Return a plan that begins with the saved start of its wreck, which is solved where it is not kept yet.

    Raises
    ------
    PlanError
        When the wreck cannot be made.
    CancelledError
        When ``cancelled()`` turned true while it was solved.
    """
    if not plan.wreck:
        return plan
    file = folder / start_name(plan)
    if not file.is_file():
        folder.mkdir(parents=True, exist_ok=True)
        save_start(file, plan, wrecked(plan, model_of(plan), cancelled=cancelled))
    return msgspec.structs.replace(plan, wreck=(), start=str(file))
