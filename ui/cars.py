"""The command line's words about cars: the ready builds, and what differs between two plans."""

from __future__ import annotations

import sys
from pathlib import Path

from ui.refusal import read_plan


def builds() -> int:
    """List the ready builds of the car, each with what sets it apart."""
    from sim import twins

    sys.stdout.write(twins.builds_told())
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
