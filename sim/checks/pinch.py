"""A squeeze, then a push along the car: which way the crease goes, and why it does not go far.

The squeeze leaves the skin further in than it was crowned out, so its bow has changed sign.  The push that
follows is set as high on the latch edge as the pad goes and 10 and 20 mm lower, across lip and shut face.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

import numpy as np

from sim.checks.row import TRADE, Row
from sim.creases import crease_in
from sim.door_model import build_model
from sim.ledger import Ledger
from sim.plan import Car, Ease, EdgePoint, Spread, Squeeze
from sim.record import Frame
from sim.run import Begin, MoveRun

SEATS = (0.63, 0.62, 0.61)
CAR, SPACING = Car(), "45 mm door"
SQUEEZE = Squeeze(along_m=0.55, height_m=0.60, closing_m=0.10)
FIRST_M = 0.005  # of the push: what follows is the door's corner folding
MOVED_MM = 10.0  # less does not count as moved
STAYS = (
    "the latch edge's top corner folds at about 3 kN, a tenth of what buckles the panel: in the first 5 mm "
    "the squeezed skin stays where it is within 1 mm, and a skin not squeezed goes out by 3 to 4 mm"
)
LOWER = (0.62, 0.61)  # seats at which it does not go in at once


@cache
def squeezed() -> Begin:
    """Return what a squeeze across the upper panel leaves, the tool off."""
    model = build_model(CAR)
    begin = Begin(model.start, Ledger())
    for move in (SQUEEZE, Ease()):
        run = MoveRun(model, move, begin)
        for _ in run:
            pass
        begin = run.end
    return begin


@cache
def pushed(along_m: float, *, first: bool) -> tuple[Frame, ...]:
    """Return the push's moments up to 60 mm, on the door squeezed ``first`` or on one that was not."""
    model = build_model(CAR)
    begin = squeezed() if first else Begin(model.start, Ledger())
    move = Spread(door=EdgePoint(along_m=along_m, depth_m=0.02), tilt_rad=0.0, opening_m=0.06)
    return tuple(MoveRun(model, move, begin))


def crown_m() -> float:
    """Return how far the skin stands out of its hem's plane over the crease, as it was made [m]."""
    model = build_model(CAR)
    crease = crease_in(model, squeezed().state.points)
    assert crease is not None
    return float(np.mean(model.outboard_sign * model.start.points[crease.nodes, 1]))


def crease_mm() -> float:
    """Return how far in the squeeze has left the skin [mm]."""
    crease = crease_in(build_model(CAR), squeezed().state.points)
    assert crease is not None
    return 1e3 * crease.deep_m


def gone_mm(frames: Sequence[Frame], opening_m: float) -> float:
    """Return how far the skin over the crease has gone outboard by an opening [mm]."""
    model = build_model(CAR)
    crease = crease_in(model, squeezed().state.points)
    assert crease is not None
    now = [frame for frame in frames if frame.opening_m <= opening_m + 1e-9][-1]
    before, after = (model.outboard(frame.points, crease.nodes) for frame in (frames[0], now))
    return 1e3 * (after - before)


def deeper_than_crown() -> Row:
    """Return whether the squeeze has turned the bow's sign."""
    return Row(
        "squeeze across the upper panel by 100 mm: the crease it leaves against the skin's crown there",
        TRADE,
        1e3 * crown_m(),
        crease_mm(),
        "mm",
        relation="more than",
        spacing=SPACING,
    )


def crease_goes_in(along_m: float) -> Row:
    """Return which way the skin over the crease begins to go under a push along the car."""
    return Row(
        f"squeezed first, then pushed along the car, {along_m:.2f} m up: the skin in the first 5 mm, out",
        TRADE,
        0.0,
        gone_mm(pushed(along_m, first=True), FIRST_M),
        "mm",
        relation="less than",
        spacing=SPACING,
        known=STAYS if along_m in LOWER else "",
    )


def less_out_at_once(along_m: float) -> Row:
    """Return whether the squeezed skin begins to go less far out than one that was not squeezed."""
    return Row(
        f"the same, {along_m:.2f} m up: the skin in the first 5 mm, out, against a door not squeezed",
        TRADE,
        gone_mm(pushed(along_m, first=False), FIRST_M),
        gone_mm(pushed(along_m, first=True), FIRST_M),
        "mm",
        relation="less than",
        spacing=SPACING,
    )


def crown_goes_out(along_m: float) -> Row:
    """Return which way the same skin begins to go where nobody has squeezed."""
    return Row(
        f"the same push on a door not squeezed, {along_m:.2f} m up: the skin in the first 5 mm, out",
        TRADE,
        0.0,
        gone_mm(pushed(along_m, first=False), FIRST_M),
        "mm",
        relation="more than",
        spacing=SPACING,
    )


def in_at_the_end(along_m: float) -> Row:
    """Return how far out the push has taken a squeezed door's skin in the end."""
    return Row(
        f"squeezed first, then pushed along the car by 60 mm, {along_m:.2f} m up: the skin, out",
        TRADE,
        -MOVED_MM,
        gone_mm(pushed(along_m, first=True), 0.06),
        "mm",
        relation="at most",
        spacing=SPACING,
    )


def less_if_not_squeezed(along_m: float) -> Row:
    """Return the same of a door not squeezed: not in, or less."""
    return Row(
        f"pushed along the car by 60 mm, not squeezed, {along_m:.2f} m up: the skin, out, against squeezed",
        TRADE,
        gone_mm(pushed(along_m, first=True), 0.06),
        gone_mm(pushed(along_m, first=False), 0.06),
        "mm",
        relation="more than",
        spacing=SPACING,
    )
