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

from sim import card_many
from sim.builds import BUILDS
from sim.checks.facts import SPACING as DOOR
from sim.checks.facts import STEEL, done
from sim.checks.row import TRADE, Row
from sim.checks.specimens import NotSolvedError
from sim.cut_plan import Cut, PillarCut
from sim.door_model import DoorModel, build_model
from sim.fall import settle
from sim.grounding import GROUNDED_N, grounded_n
from sim.handling import around, grasp, swung
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.network import Network
from sim.outcome import limit
from sim.plan import (
    BeltPoint,
    BodyPoint,
    Car,
    Crush,
    CutSpread,
    Ease,
    EdgePoint,
    FacePoint,
    Plan,
    Press,
    Spread,
    Support,
)
from sim.record import OFF, SLIPPING, Frame
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
def _freed(hinge: Hinge) -> tuple[float, float]:
    """Return what a door stands on the ground with once a hinge is gone [N], and its lowest point [m]."""
    model, held, point = _open_door()
    surround = replace(around(held.network.structure), props=())
    stepper = Stepper(held.network.among(replace(held.network.structure, surround=surround)), lambda: False)
    index = [tie.name for tie in model.structure.ties].index(hinge)
    state = stepper.network.release_tie(point.state, index)
    steps = list(settle(stepper, stepper.first_point(state, Ledger())))
    end = steps[-1].point.state
    return sum(grounded_n(model, end).values()), float(end.points[model.mesh.hem_inner, 2].min())


ON_ITS_LIP = (
    "the corner of the freed door's sill lip comes to stand on the rocker's edge and carries it; whether it "
    "slides past hangs on the lattice and on where the hinges' axis lies"
)


def hinge_first(hinge: Hinge) -> Row:
    """Return the ground's push on a door whose latch is free and whose upper or lower hinge goes first."""
    return Row(
        f"latch free, door open, {hinge} first: the ground carries",
        TRADE,
        GROUNDED_N,
        _freed(hinge)[0],
        "N",
        relation="at least" if hinge == "upper hinge" else "at most",
        spacing=DOOR_60,
        known=ON_ITS_LIP if hinge == "upper hinge" else "",
    )


def upper_hinge_first_sinks_further() -> Row:
    """Return how high the door's lowest point stands with its upper hinge gone, against its lower one."""
    return Row(
        "latch free, door open, upper hinge first: lowest point over the sill, against lower hinge first",
        TRADE,
        1e3 * _freed("lower hinge")[1] - 25.0,  # an inch counts
        1e3 * _freed("upper hinge")[1],
        "mm",
        relation="less than",
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
def _dished_ends(in_m: float, spacing_m: float) -> tuple[Frame, Frame]:
    """Return the first and the last moment of a vertical spread on a door that was dished before."""
    car = msgspec.structs.replace(
        BUILDS["bonded steel"],
        latch_strength_ratio=2.25,
        hinge_strength_ratio=3.5,
        lattice_spacing_m=spacing_m,
    )
    post = Crush(shape="pole", size_m=0.25, tall_m=0.42, height_m=0.14, along_m=0.5, travel_m=in_m)
    push = Spread(door=BeltPoint(along_m=0.51, lip="outer"), opening_m=0.045)
    _, records = solve_plan(Plan(car=car, wreck=(post,), moves=(push,)))
    frames = records[-1].frames
    return frames[0], frames[-1]


def strong_dent_stays_inboard(spacing_m: float = 0.06) -> Row:
    """Return where the skin's middle stands after the same push on a door that has been dished 180 mm."""
    # a tenth of the dent counts: a door that came out whole would stand further out
    return Row(
        "vertical spread, outer lip, door dished 180 mm before: skin's middle out of a sound door's",
        TRADE,
        -18.0,
        1e3 * _dished_ends(0.18, spacing_m)[1].skin_mid_outboard_m,
        "mm",
        relation="less than",
        spacing=f"{1e3 * spacing_m:.0f} mm door",
    )


def strong_dent_is_another_verdict(spacing_m: float = 0.06) -> Row:
    """Return how far the skin's middle goes out in the same push on a door that has been dished 180 mm."""
    before, after = _dished_ends(0.18, spacing_m)
    return Row(
        "the same: skin's middle out in the push itself",
        TRADE,
        1e3 * limit("moved_m"),
        1e3 * (after.skin_mid_outboard_m - before.skin_mid_outboard_m),
        "mm",
        relation="at most",
        spacing=f"{1e3 * spacing_m:.0f} mm door",
        known="a dished skin is drawn outward as a straight one is: it comes out of its dent by a third",
    )


def inner_lip_is_another_verdict(along_m: float, part: Literal["skin", "inner panel"]) -> Row:
    """Return where a vertical spread on the belt's inner lip takes the middle of skin or inner panel."""
    push = done(STEEL, Spread(door=BeltPoint(along_m=along_m, lip="inner"), opening_m=0.045)).result
    # on the outer lip the skin goes out by more than what counts as moved and the inner panel stays
    skin = part == "skin"
    moved_mm = 1e3 * limit("moved_m")
    return Row(
        f"vertical spread on the belt's inner lip, {along_m:.2f} m back: {part}'s middle out",
        TRADE,
        moved_mm if skin else -moved_mm,
        1e3 * (push.skin_mid_outboard_m if skin else push.inner_mid_outboard_m),
        "mm",
        relation="less than",
        spacing=DOOR,
    )


# An intruded door: another car's corner at the height of the hip, after which the latch still holds.
INTRUDED = Car(lattice_spacing_m=0.075, latch_strength_ratio=2.5, hinge_strength_ratio=3.0)
CORNER = Crush(shape="face", size_m=0.3, tall_m=0.3, height_m=0.2, along_m=0.55, travel_m=0.15)
FIRST: dict[str, Spread | Press] = {
    "spread": Spread(door=EdgePoint(depth_m=0.05), tilt_rad=0.0, opening_m=0.015),
    "pushed back": Press(head=FacePoint(side="inner", along_m=0.8, height_m=0.25), extension_m=0.05),
}


@lru_cache
def _intruded() -> Moved:
    """Return a door pressed in to the person, with nothing pressing any more."""
    made = moved(INTRUDED, [CORNER, Ease()])
    names = [tie.name for tie in made.model.structure.ties]
    if not made.runs[-1].end.state.holding[names.index("latch")]:
        raise NotSolvedError("the intruded door's latch let go in the wreck: it is no intruded door then")
    return made


@lru_cache
def _room_m(first: str) -> tuple[float, ...]:
    """Return the room to the person at every moment of the first move on an intruded door [m]."""
    made = _intruded()
    run = MoveRun(made.model, FIRST[first], made.runs[-1].end, len(made.runs))
    room = tuple(frame.clearance.distance_m for frame in run)
    if run.result(with_residual=False).solver.failed_count:
        raise NotSolvedError(f"{first} first: increments did not settle")
    return room


def intruded_room_lost(first: str, wanted: Literal["more than", "at most"]) -> Row:
    """Return the most room that is lost on the way when an intruded door is spread or pushed back first."""
    room = _room_m(first)
    # 3 mm is seen beyond rounding; pushed back a tenth of a millimetre counts as none
    return Row(
        f"door intruded to the person, {first} first: room lost on the way",
        TRADE,
        3.0 if wanted == "more than" else 0.1,
        1e3 * (room[0] - min(room)),
        "mm",
        relation=wanted,
        spacing="75 mm door",
    )


def intruded_room_gained() -> Row:
    """Return the room gained at the end of a push back from inside."""
    room = _room_m("pushed back")
    return Row(
        "door intruded to the person, pushed back first: room gained at the end",
        TRADE,
        5.0,
        1e3 * (room[-1] - room[0]),
        "mm",
        relation="more than",
        spacing="75 mm door",
    )


HIGH_STRIKER = "High striker: three ways from one start"
STRETCHED = (
    "the wrecked door is a stretched skin that slackens when its edge is pressed forward, and the hinge by "
    "which a rip would pull went in the wreck; a rail and a rocker that give change nothing"
)


def high_striker_draws(words: str, relation: Literal["at least", "at most"], known: str = "") -> Row:
    """Return in how many kept draws of the high striker something was so: most of them, or next to none."""
    came = next(one for one in card_many.kept() if one.title == HIGH_STRIKER)
    answer = next(one for one in came.answers if one.words == words)
    share = 0.9 if relation == "at least" else 0.1  # as the words "nearly always" and "hardly ever" begin
    return Row(
        f"high striker, drawn {answer.total} times: {words[0].lower()}{words[1:]}",
        TRADE,
        share * answer.total,
        answer.count,
        "draws",
        relation=relation,
        spacing=f"{SIDE}, kept draws of model {came.model_version}",
        known=known,
    )


DRAWN = (
    ("Folded: the patient's room is never more than 2 mm below its start", "at least"),
    ("Forward: the room is 15 mm less within the first third of the way", "at least", STRETCHED),
    ("Ripped: the room dips by 2 mm or more", "at least", STRETCHED),
)
