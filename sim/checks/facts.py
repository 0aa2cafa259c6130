"""Facts of the trade: which part gives first, and which way the metal goes.  Order and sign, not newtons.

Each fact stands at three seats 10 mm apart, so that it cannot hang on where a tip meets a node.
All are common practice; none has a published source.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Literal

import msgspec

from sim.builds import BUILDS
from sim.checks.row import TRADE, Row
from sim.cut_plan import Cut, DoorCut
from sim.door_model import build_model
from sim.ledger import Ledger
from sim.many import force_drops
from sim.plan import BeltPoint, Car, EdgePoint, Plan, Spread, Tool
from sim.record import MoveResult
from sim.run import Begin, MoveRun, solve_plan

LETS_GO = (
    "seam parting",
    "latch free",
    "hinge free",
    "bar foot free",
    "tip shearing through",
    "skin tearing",
)
"""Kinds of event in which a part gives; the others tell how the metal moved."""
LATCH_SEATS, HINGE_SEATS, BELT_SEATS = (0.35, 0.36, 0.37), (0.49, 0.50, 0.51), (0.50, 0.51, 0.52)
LIP_M, DEEP_M = 0.005, 0.120
NARROW = msgspec.structs.replace(Tool(), name="narrow-tip combi", tip_width_m=0.02)
WIDE = Tool()
STEEL, ALLOY, SPOTS, OPEN = Car(), BUILDS["bonded alloy"], Car(seam="welded"), Car(latch="open")
SPACING = "45 mm door"
Edge = Literal["latch_edge", "hinge_edge"]


@dataclass(frozen=True)
class Done:
    """A push solved.

    result : what it came to;  force_n : tip force at every increment [N]
    parted_m : opening and length of seam parted by then, at every increment [m]
    """

    result: MoveResult
    force_n: tuple[float, ...]
    parted_m: tuple[tuple[float, float], ...] = ()

    @property
    def first(self) -> str:
        """The first part that gave, in words."""
        return next((e.kind for e in self.result.events if e.kind in LETS_GO), "nothing gave")

    @property
    def drops_n(self) -> float:
        """Return the sum of force drops above 15 % of the peak [N]."""
        return force_drops(self.force_n)


@cache
def done(car: Car, move: Spread) -> Done:
    """Return a push solved on an untouched door."""
    model = build_model(car)
    run = MoveRun(model, move, Begin(model.start, Ledger()))
    told = [(frame.force_n, (frame.opening_m, frame.parted_length_m)) for frame in run]
    return Done(run.result(with_residual=False), *zip(*told, strict=True))


def bite(along_m: float, depth_m: float = LIP_M, edge: Edge = "latch_edge", tool: Tool = WIDE) -> Spread:
    """Return a push at the door's edge that ends where a part gives."""
    door = EdgePoint(edge=edge, along_m=along_m, depth_m=depth_m)
    return Spread(door=door, opening_m=0.06, tool=tool, stop_at=LETS_GO)


def through(along_m: float, tool: Tool = WIDE) -> Spread:
    """Return a push on the hem lip at the latch that goes on to 60 mm."""
    return Spread(door=EdgePoint(along_m=along_m), opening_m=0.06, tool=tool)


def lip_parts_seam(along_m: float, tips: str) -> Row:
    """Return what gives first when wide or narrow tips push on the hem lip at the latch."""
    tool = NARROW if tips == "narrow" else WIDE
    return Row(
        f"{tips} tips on the hem lip at the latch, {along_m:.2f} m up: what gives first",
        TRADE,
        "seam parting",
        done(STEEL, bite(along_m, tool=tool)).first,
        relation="same",
        spacing=SPACING,
    )


def lip_spares_latch(along_m: float, tips: str) -> Row:
    """Return how much of its limit the latch carries meanwhile."""
    tool = NARROW if tips == "narrow" else WIDE
    return Row(
        f"{tips} tips on the hem lip at the latch, {along_m:.2f} m up: the latch meanwhile",
        TRADE,
        0.5,
        done(STEEL, bite(along_m, tool=tool)).result.latch_demand_ratio,
        "of its limit",
        relation="less than",
        spacing=SPACING,
    )


def lip_at_hinge(along_m: float) -> Row:
    """Return what gives first on the hem lip at the hinge edge."""
    return Row(
        f"tips on the hem lip at the hinge edge, {along_m:.2f} m up: what gives first",
        TRADE,
        "seam parting",
        done(STEEL, bite(along_m, edge="hinge_edge")).first,
        relation="same",
        spacing=SPACING,
    )


def deep_frees_latch(along_m: float) -> Row:
    """Return what gives first behind the inner bend."""
    return Row(
        f"tips behind the inner bend at the latch, {along_m:.2f} m up: what gives first",
        TRADE,
        "latch free",
        done(STEEL, bite(along_m, DEEP_M)).first,
        relation="same",
        spacing=SPACING,
    )


def _mean(value: Callable[[Done], float], car: Car, tool: Tool = WIDE) -> float:
    return sum(value(done(car, through(along, tool))) for along in LATCH_SEATS) / len(LATCH_SEATS)


def _mean_parting_n(tool: Tool) -> float:
    """Return the mean force at which tips part the seam at three seats [N]; each push ends there."""
    pushes = [done(STEEL, bite(along, tool=tool)) for along in LATCH_SEATS]
    return sum(_first_parting_n(push) for push in pushes) / len(pushes)


def wide_needs_more() -> Row:
    """Return the peak force of wide tips on the lip against that of narrow ones, mean of three seats."""
    return Row(
        "wide tips on the hem lip: peak force against narrow tips'",
        TRADE,
        _mean(lambda push: max(push.force_n), STEEL, NARROW) / 1e3,
        _mean(lambda push: max(push.force_n), STEEL, WIDE) / 1e3,
        "kN",
        relation="more than",
        spacing=SPACING,
    )


def _first_parting_n(push: Done) -> float:
    return next(event.force_n for event in push.result.events if event.kind == "seam parting")


def wide_parts_later() -> Row:
    """Return the force at which wide tips part the seam against that of narrow ones, mean of three seats."""
    return Row(
        "wide tips on the hem lip: force when the seam begins to part against narrow tips'",
        TRADE,
        _mean_parting_n(NARROW) / 1e3,
        _mean_parting_n(WIDE) / 1e3,
        "kN",
        relation="more than",
        spacing=SPACING,
    )


def more_force_same_verdict(share: float) -> Row:
    """Return what gives first with a tool of a multiple of the force that parts the seam."""
    free = done(STEEL, bite(0.36))
    force = share * max(free.force_n)
    tool = msgspec.structs.replace(WIDE, force_n=(force,) * len(WIDE.force_n))
    return Row(
        f"hem lip with {share:g} times the force it takes: what gives first",
        TRADE,
        free.first,
        done(STEEL, bite(0.36, tool=tool)).first,
        relation="same",
        spacing=SPACING,
    )


@lru_cache
def _belt(along_m: float) -> MoveResult:
    move = Spread(door=BeltPoint(along_m=along_m, lip="outer"), opening_m=0.045)
    return done(STEEL, move).result


def belt_moves_skin_out(along_m: float) -> Row:
    """Return how far the skin's middle goes out under a vertical spread on the belt's outer lip."""
    # 10 mm counts as moved
    return Row(
        f"vertical spread on the belt's outer lip, {along_m:.2f} m back: skin's middle out",
        TRADE,
        10.0,
        1e3 * _belt(along_m).skin_mid_outboard_m,
        "mm",
        relation="at least",
        spacing=SPACING,
    )


def open_latch_jams_only() -> Row:
    """Return the force to open behind the bend with the latch held open, against that of a latched door."""
    move = msgspec.structs.replace(bite(0.36, DEEP_M), opening_m=0.03)
    latched, free = (max(done(car, move).force_n) for car in (STEEL, OPEN))
    # a twentieth counts as no more than a jam
    return Row(
        "latch held open, tips behind the inner bend: peak force against a latched door's",
        TRADE,
        0.05,
        free / latched,
        "of the latched door's",
        relation="at most",
        spacing=SPACING,
    )


def spots_let_go_in_steps() -> Row:
    """Return the force drops of a welded door against a bonded one's, mean of three seats."""
    return Row(
        "welded twin on the hem lip: drops above 15 % of the peak, against the bonded door's",
        TRADE,
        _mean(lambda push: push.drops_n, STEEL) / 1e3,
        _mean(lambda push: push.drops_n, SPOTS) / 1e3,
        "kN",
        relation="more than",
        spacing=SPACING,
    )


NICK = Cut(DoorCut(edge="latch_edge", along_m=0.42), depth_m=0.05)
"""A cut through the hem above the tips.  A whole hem is not stretched to necking by any push up to 100 mm; a
line that has begun runs where its energy pays, so tears are compared on a door that has one."""


@cache
def nicked(car: Car, along_m: float) -> MoveResult:
    """Return a push on the hem lip that goes on to 60 mm beside a cut in the hem."""
    records = solve_plan(Plan(car=car, moves=(NICK, through(along_m))), with_residual=False)[1]
    result = records[-1].result
    assert result is not None
    return result


def alloy_tears_more() -> Row:
    """Return the length an alloy door tears from a cut in its hem against a steel one's, mean of seats."""
    steel, alloy = (
        sum(nicked(car, along).torn_length_m for along in LATCH_SEATS) / len(LATCH_SEATS)
        for car in (STEEL, ALLOY)
    )
    return Row(
        "alloy twin, lip beside a cut in the hem: torn length against the steel door's",
        TRADE,
        1e3 * steel,
        1e3 * alloy,
        "mm",
        relation="more than",
        spacing=SPACING,
    )
