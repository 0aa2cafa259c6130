"""Two ways to the same door: begun at the frame or at the edge; spread to the end or stopped and cut."""

from __future__ import annotations

from functools import cache
from importlib import resources
from pathlib import Path

from sim.checks.facts import LETS_GO, NICK, SPACING
from sim.checks.row import TRADE, Row
from sim.cut_plan import Cut, DoorCut
from sim.plan import Car, Plan, Spread
from sim.planfile import load_plan
from sim.record import MoveResult
from sim.run import solve_plan
from sim.stop_and_cut import Cost, stop_and_cut

SLIT = Cut(DoorCut(edge="latch_edge", along_m=0.30), depth_m=0.1)
WHOLE_HEM = (
    "neither tears: up to 100 mm on a whole hem the seam parts and the lip is not stretched to necking"
)
MOVED_MM = 10.0  # less does not count as moved: no gain in opening


def plan_path(name: str) -> Path:
    """Return where a ready plan stands."""
    return Path(str(resources.files("assets").joinpath("plans", f"{name}.toml")))


@cache
def ready(name: str) -> tuple[MoveResult, ...]:
    """Return the results of a ready plan's moves."""
    records = solve_plan(load_plan(plan_path(name)))[1]
    return tuple(record.result for record in records if record.result is not None)


def first_to_give(name: str) -> str:
    """Return what gives first in a ready plan's last push."""
    return next((event.kind for event in ready(name)[-1].events if event.kind in LETS_GO), "nothing gave")


def top_reaches_latch() -> Row:
    """Return what gives first when the attack begins at the window frame."""
    return Row(
        "from the top: what gives first",
        TRADE,
        "latch free",
        first_to_give("from-the-top"),
        relation="same",
        spacing=SPACING,
    )


def edge_leaves_latch() -> Row:
    """Return how much of its limit the latch carries when the attack begins on the hem."""
    return Row(
        "begun on the hem at the latch, 100 mm: the latch meanwhile",
        TRADE,
        1.0,
        ready("edge-at-latch")[-1].latch_demand_ratio,
        "of its limit",
        relation="less than",
        spacing=SPACING,
    )


def top_tears_less() -> Row:
    """Return the length torn from the window frame to the latch against the edge attack's."""
    return Row(
        "from the top until the latch is free: torn length against the edge attack's",
        TRADE,
        1e3 * ready("edge-at-latch")[-1].torn_length_m,
        1e3 * ready("from-the-top")[-1].torn_length_m,
        "mm",
        relation="less than",
        spacing=SPACING,
        known=WHOLE_HEM,
    )


@cache
def _ways() -> tuple[Cost, Cost]:
    """Return the cost of a spread on the lip to its end, and of stopping when the skin tears and slitting it.

    The hem has a cut, from which the skin tears.  Nothing is exposed there, so the cut made on stopping is
    one into the skin: see `sim.stop_and_cut`.
    """
    found = stop_and_cut(Plan(car=Car(), moves=(NICK, Spread(opening_m=0.1))), 1, (SLIT,))
    assert found.stopped is not None
    return found.going_on, found.stopped


def stopping_tears_less() -> Row:
    """Return the torn length when stopped at the first tear and cut, against going on."""
    on, off = _ways()
    return Row(
        "stopped when the skin begins to tear, and cut: torn length against going on to 100 mm",
        TRADE,
        1e3 * on.torn_m,
        1e3 * off.torn_m,
        "mm",
        relation="less than",
        spacing=SPACING,
    )


def going_on_opens_no_further() -> Row:
    """Return how much further going on has opened the door itself, its inner structure, than stopping."""
    on, off = _ways()
    return Row(
        "going on against stopping and cutting, tool off: further out at the inner structure's latch edge",
        TRADE,
        MOVED_MM,
        1e3 * (on.opened_m - off.opened_m),
        "mm",
        relation="at most",
        spacing=SPACING,
    )
