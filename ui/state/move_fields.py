"""The fields of every type of move as a form shows them: plain word, unit, range; only what applies.

A field is named by its way through the move ("door.depth_m"); the name of a place alone ("door") stands for
which kind of place it is.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeAlias

import msgspec

from sim.carcheck import RANGES
from sim.cut_plan import DoorCut, FittingCut, PillarCut
from sim.plan import (
    BaseSpot,
    BeltPoint,
    BodyPoint,
    Crush,
    Cut,
    CutSpread,
    Ease,
    EdgePoint,
    FacePoint,
    Flex,
    FramePoint,
    Hold,
    Latch,
    Move,
    PanelName,
    PillarSpot,
    Press,
    Spread,
    Squeeze,
    Strip,
    Support,
)
from sim.units import Units
from ui.state.car_fields import FORCE, LENGTH, Choice, Number
from ui.state.steering import SEAT_WORDS, SEATS

DEGREES = "\u00b0"
NONE = ""
"""The value of a place that is left to the program."""


@dataclass(frozen=True)
class Measure(Number):
    """A number with the range its box goes through, in SI units; angles are shown in degrees."""

    low: float = 0.0
    high: float = 2.0

    def shown(self, value: float, units: Units) -> float:
        """Return a value as the reader sees it."""
        return math.degrees(value) if self.kind == DEGREES else super().shown(value, units)


Field: TypeAlias = Choice | Measure

NEW_MOVES: dict[str, tuple[str, Callable[[], Move]]] = {
    "add_spread": ("Spread", Spread),
    "add_squeeze": ("Squeeze", Squeeze),
    "add_ease": ("Let the tool off", Ease),
    "add_flex": ("Flex with a bar", Flex),
    "add_cut": ("Cut", Cut),
    "add_spread_cut": ("Spread the ends of a cut", CutSpread),
    "add_strip": ("Strip trim, seals, glass", Strip),
    "add_press": ("Press with a ram", Press),
    "add_hold": ("Take hold of a door", Hold),
    "add_latch": ("Check a latch or hold it open", Latch),
    "add_support": ("Put on blocks", Support),
    "add_crush": ("Crush by a rigid body", Crush),
}
"""The moves that can be added: the action's name, its word, and the move as it first is."""


def new_move(name: str, *, side: bool) -> Move:
    """Return a move as it is first added: on a car of one door it is set to that door."""
    move = NEW_MOVES[name][1]()
    if not side and isinstance(move, Cut):
        return Cut(place=DoorCut())
    return Press(head=FacePoint(side="inner")) if not side and isinstance(move, Press) else move


EDGES = (("latch_edge", "latch edge"), ("hinge_edge", "hinge edge"), ("sill_edge", "sill edge"))
SURFACES = (("painted", "painted steel"), ("bare", "bare steel"), ("rubber", "rubber seal left on"))
PANELS = (("front", "front door"), ("rear", "rear door"))
LIPS = (("outer", "outer lip"), ("inner", "inner lip"), ("both", "both lips"))
BASES = (
    ("far_rocker", "far rocker"),
    ("far_pillar", "far pillar"),
    ("tunnel_edge", "tunnel's edge"),
    ("pillar", "pillar between the doors"),
    ("front", "front inner panel"),
    ("rear", "rear inner panel"),
)
FITTINGS = ("trim", "seals", "glass")


def _length(name: str, words: str, low: float, high: float, step: float = 10.0, decimals: int = 0) -> Measure:
    return Measure(name, words, LENGTH, decimals, step, low, high)


def _angle(name: str, words: str, low: float, high: float) -> Measure:
    return Measure(name, words, DEGREES, 0, 5.0, math.radians(low), math.radians(high))


def fields_of(move: Move, *, side: bool) -> tuple[Field, ...]:
    """Return the fields of a move as it stands; ``side`` tells whether the car has more than one door."""
    makers: dict[type, Callable[[Any, bool], list[Field]]] = {
        Spread: _spread,
        Squeeze: _squeeze,
        Crush: _crush,
        Press: _press,
        Flex: _flex,
        Hold: _hold,
        Latch: _latch,
        Cut: _cut,
        CutSpread: _cut_spread,
    }
    make = makers.get(type(move))
    if make is not None:
        return tuple(make(move, side))
    if isinstance(move, Support):
        return (Choice("on", "The car stands on", (("blocks", "blocks"), ("wheels", "its wheels alone"))),)
    if isinstance(move, Strip):
        yes = ((True, "taken off"), (False, "left on"))
        return tuple(Choice(f"what:{name}", name.capitalize(), yes) for name in FITTINGS)
    return ()


def _panel(name: str, side: bool) -> list[Field]:
    return [Choice(name, "Door", PANELS)] if side else []


def _spread(move: Spread, side: bool) -> list[Field]:
    fields: list[Field] = [Choice("door", "Tip one at", (*EDGES, ("belt", "belt")))]
    fields += _panel("door.panel", side)
    if isinstance(move.door, BeltPoint):
        fields += [
            Choice("door.lip", "Stands on", LIPS),
            _length("door.along_m", "Behind hinge edge", 0.0, 1.5),
        ]
    else:
        up = "Behind hinge edge" if move.door.edge == "sill_edge" else "Above sill"
        fields += [
            _length("door.depth_m", "Depth", 0.0, 0.3, 2.0, 1),
            _length("door.along_m", up, 0.0, 1.5),
        ]
    fields.append(Choice("door.surface", "Bears on", SURFACES))
    edge = move.door.edge if isinstance(move.door, EdgePoint) else "belt"
    seats = tuple((seat, SEAT_WORDS[seat].partition(",")[0]) for seat in SEATS[edge])
    fields.append(
        Choice("against", "Tip two on", ((NONE, "straight across"), *seats, ("ground", "the ground")))
    )
    if isinstance(move.against, BodyPoint):
        fields.append(_length("against.along_m", "Tip two's place", -0.5, 2.5))
    if isinstance(move.door, EdgePoint):
        fields.append(_angle("tilt_rad", "Push tilted outward", -90.0, 90.0))
    fields += [
        _angle("lean_rad", "Pad leans inboard", -28.0, 28.0),
        Choice("tool_body", "Tool's body", (("comes", "follows the arms"), ("stands", "stands still"))),
        _length("opening_m", "Opens", 0.0025, 0.66),
    ]
    return fields


def _squeeze(move: Squeeze, side: bool) -> list[Field]:
    fields: list[Field] = []
    if side:
        fields.append(Choice("on", "Across", ((NONE, "a door's panel"), ("pillar", "pillar"))))
    if move.on is not None:
        fields += [
            _length("on.height_m", "Above pillar's foot", 0.0, 1.5),
            _length("on.off_m", "Off its middle", -0.1, 0.1, 5.0),
        ]
    else:
        fields += [
            *_panel("panel", side),
            _length("along_m", "Behind hinge edge", 0.0, 1.5),
            _length("height_m", "Above sill", 0.0, 1.2),
        ]
    return [*fields, _length("closing_m", "Closes", 0.0025, 0.3)]


def _crush(_move: Crush, _side: bool) -> list[Field]:
    shapes = (("cylinder", "cylinder, upright"), ("face", "flat face"), ("pole", "pole, upright"))
    return [
        Choice("shape", "Body", shapes),
        _length("size_m", "Width", 0.05, 2.0, 25.0),
        _length("tall_m", "Height of the body", 0.05, 2.5, 25.0),
        _length("height_m", "Lower end above sill", -1.0, 1.2, 25.0),
        _length("along_m", "Behind hinge edge", -0.5, 2.0, 25.0),
        _angle("skew_rad", "Line turned rearward", -60.0, 60.0),
        _length("travel_m", "Goes in", 0.001, 0.7),
    ]


def _press(move: Press, side: bool) -> list[Field]:
    heads = (("pillar", "pillar"), ("front", "front inner panel"), ("rear", "rear inner panel"))
    fields: list[Field] = [Choice("head", "Head on", heads if side else heads[1:2])]
    fields += _ram_end("head", move.head)
    bases = BASES if side else tuple(base for base in BASES if base[0] not in ("pillar", "rear"))
    fields.append(Choice("foot", "Foot on", bases))
    fields += _ram_end("foot", move.foot)
    kinds = (("flat", "smooth"), ("waffle", "grooved"), ("pointed", "four points"))
    return [
        *fields,
        Choice("surface", "Head bears on", SURFACES),
        Measure("grip_ratio", "Grip", "of the usual", 2, 0.1, 0.2, 3.0),
        Choice("ram.head", "Head of the ram", kinds),
        _length("ram.closed_m", "Ram, shut", 0.1, 1.5, 25.0),
        _length("ram.piece_m", "Piece put on", 0.0, 1.5, 25.0),
        _length("extension_m", "Drives out", 0.0025, 1.0),
    ]


def _ram_end(name: str, place: object) -> list[Field]:
    if isinstance(place, PillarSpot):
        return [
            _length(f"{name}.height_m", "Above pillar's foot", 0.0, 1.5),
            _length(f"{name}.off_m", "Off its middle", -0.1, 0.1, 5.0),
        ]
    if isinstance(place, FacePoint):
        return [
            _length(f"{name}.along_m", "Behind hinge edge", 0.0, 1.5),
            _length(f"{name}.height_m", "Above sill", 0.0, 1.2),
        ]
    return [
        _length(f"{name}.rearward_m", "Rearward of the head", -0.6, 0.6),
        _length(f"{name}.raised_m", "Raised", 0.0, 0.8),
        _length(f"{name}.wall_m", "Wall there", 0.0006, 0.004, 0.1, 1),
        _length(f"{name}.rib_m", "Rib behind it", 0.0, 0.004, 0.1, 1),
    ]


def _flex(move: Flex, side: bool) -> list[Field]:
    fields: list[Field] = [Choice("on", "Tip behind", (("frame", "window frame"), *EDGES))]
    fields += _panel("on.panel", side)
    if isinstance(move.on, EdgePoint):
        fields.append(_length("on.depth_m", "Depth", 0.0, 0.3, 2.0, 1))
    along = "Along it from its foot" if isinstance(move.on, FramePoint) else "Along the edge"
    return [
        *fields,
        _length("on.along_m", along, 0.0, 2.5),
        _angle("tilt_rad", "Pulled outward", -90.0, 90.0),
        _length("bar.length_m", "Bar's length", 0.4, 1.5, 25.0),
        _length("bar.tip_m", "Heel to tip", 0.01, 0.3, 2.0),
        Measure("bar.hand_n", "Hand pulls at most", FORCE, 2, 0.05, 50.0, 2000.0),
        _length("opening_m", "Tip goes", 0.0025, 0.3, 5.0),
    ]


def _hold(move: Hold, side: bool) -> list[Field]:
    ways = (
        ("swing", "swing it by hand"),
        ("strap", "strap it where it is"),
        ("prop", "prop it from the ground"),
        ("let go", "let go of it"),
    )
    fields: list[Field] = [*_panel("door", side), Choice("way", "How", ways)]
    if move.way == "swing":
        fields += [
            _angle("angle_rad", "Swung outward", -114.0, 114.0),
            Measure("hands_n", "Hands push at most", FORCE, 2, 0.05, 10.0, 2000.0),
        ]
    if move.way == "prop":
        fields.append(_length("lift_m", "Above where it is", -0.05, 0.5))
    return fields


def _latch(_move: Latch, side: bool) -> list[Field]:
    low, high, _ = RANGES["handle_n"]
    return [
        *_panel("door", side),
        Choice("way", "How", (("check", "pull and let go: look"), ("hold", "pull and hold it open"))),
        Measure("handle_n", "Pull on handle", FORCE, 2, 0.05, low, high),
    ]


def _cut(move: Cut, side: bool) -> list[Field]:
    places = (("pillar", "the pillar"), ("door", "a door, from an edge"), ("fitting", "a fitting that shows"))
    place = move.place
    fields: list[Field] = [Choice("place", "Cut", places if side else places[1:])]
    if isinstance(place, PillarCut):
        sides = (("front", "the front"), ("rear", "the rear"), ("outer", "outside"), ("inner", "inside"))
        fields += [
            _length("place.height_m", "Above its foot", 0.01, 1.5),
            Choice("place.blades_from", "Blades from", sides),
            _length("short_m", "Stops short by", 0.0, 0.2, 5.0),
        ]
    elif isinstance(place, DoorCut):
        sheets = tuple((name, name) for name in ("outer skin", "inner panel", "whole door"))
        fields += _panel("place.panel", side)
        fields += [
            Choice("place.edge", "From the", (*EDGES, ("belt", "belt"))),
            _length("place.along_m", "Place on it", 0.0, 1.5),
            Choice("place.sheets", "Through", sheets),
        ]
    else:
        fittings = tuple((name, name) for name in ("striker", "upper hinge", "lower hinge", "bar"))
        fields += [*_panel("place.panel", side), Choice("place.fitting", "Fitting", fittings)]
        if place.fitting == "bar":
            fields.append(_length("place.along_m", "Behind hinge edge", 0.0, 1.5))
    return [
        *fields,
        *([] if isinstance(place, FittingCut) else [_length("depth_m", "Goes in", 0.005, 1.0)]),
        _angle("angle_rad", "Blades turned", -60.0, 60.0),
        _length("opening_m", "Blades open", 0.05, 0.4),
        Measure("force_n", "Blades' force", FORCE, 0, 50.0, 50.0e3, 2.0e6),
    ]


def _cut_spread(_move: CutSpread, _side: bool) -> list[Field]:
    sides = (("outer", "outside"), ("front", "the front"), ("rear", "the rear"))
    return [
        _length("height_m", "Cut above the foot", 0.01, 1.5),
        Choice("tips_from", "Tips from", sides),
        _length("off_m", "Off its middle", -0.1, 0.1, 5.0),
        _length("depth_m", "Goes in", 0.005, 0.2, 5.0),
        _length("opening_m", "Opens", 0.0025, 0.5),
    ]


# --- values ----------------------------------------------------------------------------------------------


def value_of(move: Any, name: str) -> Any:
    """Return a field's value; of a place its kind, of something that is stripped whether it goes."""
    if name.startswith("what:"):
        return name.removeprefix("what:") in move.what
    value = move
    for part in name.split("."):
        value = getattr(value, part)
    return _kind(value) if isinstance(value, msgspec.Struct) or value is None else value


def _kind(place: Any) -> str:
    if place is None:
        return NONE
    if isinstance(place, FacePoint):
        return place.panel
    for name in ("edge", "seat", "base"):
        if hasattr(place, name) and not isinstance(place, DoorCut):
            return str(getattr(place, name))
    return str(place.__struct_config__.tag)


def changed(move: Move, name: str, value: object) -> Move:
    """Return the move with one field changed; another kind of place begins where such a place usually is."""
    if name.startswith("what:"):
        what = tuple(item for item in getattr(move, "what", ()) if item != name.removeprefix("what:"))
        return msgspec.structs.replace(move, what=(*what, name.removeprefix("what:")) if value else what)
    head, _, rest = name.partition(".")
    now = getattr(move, head)
    if rest:
        now = msgspec.structs.replace(now, **{rest: value})
    elif isinstance(now, msgspec.Struct) or now is None:
        now = _place(move, head, now, str(value))
    else:
        now = value
    made: Move = msgspec.structs.replace(move, **{head: now})
    if isinstance(made, Spread) and name == "door" and isinstance(made.against, BodyPoint):
        edge = made.door.edge if isinstance(made.door, EdgePoint) else "belt"
        if made.against.seat not in (*SEATS[edge], "ground"):
            made = msgspec.structs.replace(made, against=None)
    if isinstance(made, Cut) and not isinstance(made.place, PillarCut) and made.short_m:
        made = msgspec.structs.replace(made, short_m=0.0)
    return made


def _place(move: Move, head: str, now: Any, kind: str) -> Any:
    edges = {edge for edge, _ in EDGES}
    panel: PanelName = getattr(now, "panel", "front")
    if kind == NONE:
        return None
    if head == "against":
        along = getattr(move, "door", EdgePoint()).along_m
        return BodyPoint(kind, along)  # type: ignore[arg-type]
    if isinstance(move, Cut):
        return {"pillar": PillarCut(), "door": DoorCut(panel=panel), "fitting": FittingCut(panel=panel)}[kind]
    if kind in edges:
        if isinstance(now, EdgePoint):
            return msgspec.structs.replace(now, edge=kind)
        return EdgePoint(edge=kind, panel=panel)  # type: ignore[arg-type]
    if kind in ("belt", "frame"):
        return BeltPoint(panel=panel) if kind == "belt" else FramePoint(panel=panel)
    if kind in ("front", "rear"):
        return FacePoint(side="inner", panel=kind)  # type: ignore[arg-type]
    return PillarSpot() if kind == "pillar" else BaseSpot(base=kind)  # type: ignore[arg-type]
