"""Facts of the trade about the whole side: cuts and tips, hinges and ground, support, the belt's inner lip.

Order and sign, not newtons; all are common practice, none has a published source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any, Literal

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim.builds import BUILDS
from sim.checks.facts import SPACING as DOOR
from sim.checks.facts import STEEL, done
from sim.checks.row import TRADE, Row
from sim.cut_plan import Cut, PillarCut
from sim.door_model import DoorModel, build_model
from sim.fall import settle
from sim.grounding import GROUNDED_N, grounded_n
from sim.handling import around, grasp, swung
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.network import Network
from sim.outcome import limit
from sim.plan import BeltPoint, BodyPoint, Car, Crush, CutSpread, EdgePoint, Plan, Spread, Support
from sim.record import OFF, SLIPPING
from sim.run import Begin, MoveRun, solve_plan
from sim.standing import door_among
from sim.whole_side import WholeSide

Floats = NDArray[np.float64]
Hinge = Literal["upper hinge", "lower hinge"]

SIDE, DOOR_60 = "80 mm side", "60 mm door"
SOFT = WholeSide(
    pillar_pressed_m=0.0012,
    pillar_closing_m=0.001,
    pillar_pressed_yield_pa=350.0e6,
    spot_pitch_m=0.025,
    rear_latch="open",
    trim=False,
)
OPENED = Car(lattice_spacing_m=0.08, extent="side", latch="open", whole_side=SOFT)
TOP_M, UNDER_M = 0.95, 0.89  # the two cuts, above the pillar's foot
SILL_M, SWUNG_RAD, HANDS_N = 0.3, 1.1, 400.0


@dataclass(frozen=True)
class Moved:
    """Some moves made on a car: the run of each."""

    model: DoorModel
    runs: tuple[MoveRun, ...]


def moved(car: Car, moves: Sequence[Any]) -> Moved:
    """Return moves made one after another on an untouched car."""
    model = build_model(car)
    begin, runs = Begin(model.start, Ledger()), []
    for number, move in enumerate(moves):
        run = MoveRun(model, move, begin, number)
        for _ in run:
            pass
        begin = run.end
        runs.append(run)
    return Moved(model, tuple(runs))


@lru_cache
def _tips_after(cuts: int) -> str:
    """Return what tips do that are opened where the pillar has been cut: "hold" or "slip"."""
    heights = (TOP_M, UNDER_M)[:cuts]
    spread = CutSpread(height_m=float(np.mean(heights)), depth_m=0.08, opening_m=0.01)
    last = moved(OPENED, [*(Cut(PillarCut(height)) for height in heights), spread]).runs[-1]
    kinds = {event.kind for event in last.events}
    return "slip" if kinds & {SLIPPING, OFF} else "hold"


def tips_in_a_cut(cuts: int, wanted: str) -> Row:
    """Return what the tips do after one top cut, or after a second just under it."""
    word = {1: "one top cut, tips on the raw edge", 2: "a second cut under it, tips in the pocket"}[cuts]
    return Row(f"{word}: they", TRADE, wanted, _tips_after(cuts), relation="same", spacing=SIDE)


@lru_cache
def _open_door() -> tuple[DoorModel, Stepper, Point]:
    """Return a door with weight, its latch free, swung wide and held."""
    plain = build_model(Car(lattice_spacing_m=0.06, latch="open"))
    structure = door_among(plain.structure, plain.mesh, plain.body, ground_z_m=-SILL_M)
    stepper = Stepper(Network(structure), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    grip = grasp(structure, point.state.points, plain.mesh.surface.nodes["latch_plate"])
    for now in swung(stepper, point, "hands", grip, SWUNG_RAD, HANDS_N, 1.0):
        point = now
    return replace(plain, structure=structure), stepper, point


@lru_cache
def _grounded_n(hinge: Hinge) -> float:
    """Return what the door stands on the ground with once a hinge is gone and nobody holds it [N]."""
    model, held, point = _open_door()
    surround = replace(around(held.network.structure), props=())
    stepper = Stepper(held.network.among(replace(held.network.structure, surround=surround)), lambda: False)
    index = [tie.name for tie in model.structure.ties].index(hinge)
    state = stepper.network.release_tie(point.state, index)
    steps = list(settle(stepper, stepper.first_point(state, Ledger())))
    return sum(grounded_n(model, steps[-1].point.state).values())


def hinge_first(hinge: Hinge) -> Row:
    """Return the ground's push on a door whose latch is free and whose upper or lower hinge goes first."""
    return Row(
        f"latch free, door open, {hinge} first: the ground carries",
        TRADE,
        GROUNDED_N,
        _grounded_n(hinge),
        "N",
        relation="at least" if hinge == "upper hinge" else "at most",
        spacing=DOOR_60,
    )


@lru_cache
def _from_the_ground(on: Literal["wheels", "blocks"]) -> tuple[float, float]:
    """Return how far the car rises and how far its sill opens under a push from the ground [m]."""
    car = Car(lattice_spacing_m=0.09, extent="side", latch="open")
    push = Spread(
        door=EdgePoint(edge="sill_edge", along_m=0.5, depth_m=0.09),
        against=BodyPoint(seat="ground", along_m=0.5),
        tilt_rad=0.0,
        opening_m=0.004,
    )
    made = moved(car, [Support(), push] if on == "blocks" else [push])
    first, last = made.runs[-1].ends
    start, end = made.model.mesh.edges["sill_edge"]
    nodes = made.model.mesh.wall[-1, start:end]
    opened = float((last.points[nodes, 2] - first.points[nodes, 2]).max())
    return (last.body_rise_m or 0.0) - (first.body_rise_m or 0.0), opened


def unsupported_moves_more() -> Row:
    """Return how far the same stroke lifts a car on its wheels against one on blocks."""
    blocks, wheels = (1e3 * _from_the_ground(on)[0] for on in ("blocks", "wheels"))
    return Row(
        "sill pushed up from the ground: the car on its wheels rises, against one on blocks",
        TRADE,
        blocks,
        wheels,
        "mm",
        relation="more than",
        spacing="90 mm side",
    )


def unsupported_opens_less() -> Row:
    """Return how far the same stroke opens the sill of a car on its wheels against one on blocks."""
    blocks, wheels = (1e3 * _from_the_ground(on)[1] for on in ("blocks", "wheels"))
    return Row(
        "sill pushed up from the ground: opening on wheels, against that on blocks",
        TRADE,
        blocks,
        wheels,
        "mm",
        relation="less than",
        spacing="90 mm side",
    )


@lru_cache
def _dished_out_m(in_m: float, spacing_m: float) -> float:
    """Return how far out of a sound door's the skin's middle stands after a spread on a dished one [m]."""
    car = msgspec.structs.replace(
        BUILDS["bonded steel"],
        latch_strength_ratio=2.25,
        hinge_strength_ratio=3.5,
        lattice_spacing_m=spacing_m,
    )
    post = Crush(shape="pole", size_m=0.25, tall_m=0.42, height_m=0.14, along_m=0.5, travel_m=in_m)
    push = Spread(door=BeltPoint(along_m=0.51, lip="outer"), opening_m=0.045)
    _, records = solve_plan(Plan(car=car, wreck=(post,), moves=(push,)))
    result = records[-1].result
    assert result is not None
    return result.skin_mid_outboard_m


def strong_dent_is_another_verdict(spacing_m: float = 0.06) -> Row:
    """Return where the skin's middle stands after the same push on a door that has been dished 180 mm."""
    return Row(
        "vertical spread, outer lip, door dished 180 mm before: skin's middle out of a sound door's",
        TRADE,
        0.0,
        1e3 * _dished_out_m(0.18, spacing_m),
        "mm",
        relation="less than",
        spacing=f"{1e3 * spacing_m:.0f} mm door",
    )


def inner_lip_is_another_verdict(along_m: float) -> Row:
    """Return how far the inner panel's middle goes out under a vertical spread on the belt's inner lip."""
    push = done(STEEL, Spread(door=BeltPoint(along_m=along_m, lip="inner"), opening_m=0.045))
    # 10 mm counts as moved: on the outer lip the skin goes out by more, here the door is to do something else
    return Row(
        f"vertical spread on the belt's inner lip, {along_m:.2f} m back: inner panel's middle out",
        TRADE,
        1e3 * limit("moved_m"),
        1e3 * push.result.inner_mid_outboard_m,
        "mm",
        relation="at most",
        spacing=DOOR,
    )
