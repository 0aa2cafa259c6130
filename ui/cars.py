"""The command line's words about cars: the ready builds, and what differs between two plans."""

from __future__ import annotations

import sys
from pathlib import Path

from sim.problems import PlanError
from ui.refusal import Refusal, read_plan


def builds() -> int:
    """List the ready builds of the car, each with what sets it apart."""
    from sim import twins

    sys.stdout.write(twins.builds_told())
    return 0


def fields(only: str = "") -> int:
    """List every field of a plan file: what may stand there, what stands there if nothing is said.

    Parameters
    ----------
    only
        A type of move or the name of a table, such as "press" or "car"; everything if left out.
    """
    from sim import plan_fields

    try:
        sys.stdout.write(plan_fields.told(only))
    except PlanError as problem:
        raise Refusal(str(problem)) from problem
    return 0


def contrast(first: Path, second: Path) -> int:
    """Say what differs between two plans: each field with both values, what the metal feels first.

    Parameters
    ----------
    first
        One plan, as a TOML file.
    second
        The other, as a TOML file.
    """
    from sim import twins

    sys.stdout.write(twins.told(read_plan(first), read_plan(second)))
    return 0
