"""What each type of move is called, and which of its fields says how far it goes: one entry a type.

Plain values only, so that a window can show a plan before the mechanics are loaded.  A type of move without
an entry is told by its tag and is done at once; the class that makes it stands in `sim/moves.py`.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import msgspec

from sim.cut_plan import DoorCut, PillarCut
from sim.plan import (
    BaseSpot,
    BeltPoint,
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
    PillarSpot,
    Press,
    Spread,
    Squeeze,
    Strip,
    Support,
)

Length = Callable[[float], str]
"""Writes a length [m] in the reader's units."""

EDGE_WORDS = {"latch_edge": "latch edge", "hinge_edge": "hinge edge", "sill_edge": "sill edge"}
LIP_WORDS = {"outer": "outer lip", "inner": "inner lip", "both": "both lips"}
PANELS_ACROSS = {"front": "panel", "rear": "rear door's panel"}
SHAPE_WORDS = {"cylinder": "cylinder", "face": "flat face", "pole": "pole"}


@dataclass(frozen=True)
class MoveWords:
    """How a type of move is told.

    title : what it does and where;  place : its numbers in one line
    travel_field : the field that says how far it goes [m]; empty for a move done at once
    verbs : on the button, while it is made, and once it is done
    """

    title: Callable[[Any], str]
    place: Callable[[Any, Length], str]
    travel_field: str = ""
    verbs: tuple[str, str, str] = ("Do it", "At work", "Did it")


def tilt_words(tilt_rad: float) -> str:
    """Return a tilt in degrees and in words."""
    degrees = round(math.degrees(tilt_rad))
    if degrees == 0:
        return "0\u00b0, straight along"
    return f"{abs(degrees)}\u00b0 {'outward' if degrees > 0 else 'inward'}"


def _spread_title(move: Spread) -> str:
    if isinstance(move.door, BeltPoint):
        return "Spread at the belt"
    return f"Spread at the {EDGE_WORDS[move.door.edge]}"


def _spread_place(move: Spread, length: Length) -> str:
    if isinstance(move.door, EdgePoint):
        way = "along" if move.door.edge == "sill_edge" else "up"
        where = f"{length(move.door.depth_m)} deep, {length(move.door.along_m)} {way}"
    else:
        where = f"{LIP_WORDS[move.door.lip]}, {length(move.door.along_m)} along"
        return f"{where}; opens {length(move.opening_m)}"  # it pushes along the line between its tips
    return f"{where}, tilt {tilt_words(move.tilt_rad)}; opens {length(move.opening_m)}"


def _squeeze_place(move: Squeeze, length: Length) -> str:
    if move.on is not None:
        return f"{length(move.on.height_m)} up the pillar; closes {length(move.closing_m)}"
    along, up = length(move.along_m), length(move.height_m)
    return f"{along} from the hinge edge, {up} up; closes {length(move.closing_m)}"


def _crush_place(move: Crush, length: Length) -> str:
    size, along, up = (length(value) for value in (move.size_m, move.along_m, move.height_m))
    goes = length(move.travel_m)
    return f"{size} wide, {along} from the hinge edge, lower end {up} up; goes in {goes}"


def _end_words(place: PillarSpot | FacePoint | BaseSpot, length: Length) -> str:
    if isinstance(place, BaseSpot):
        return place.base.replace("_", " ")
    part = "pillar" if isinstance(place, PillarSpot) else "inner panel"
    return f"{part}, {length(place.height_m)} up"


def _press_place(move: Press, length: Length) -> str:
    head, foot = _end_words(move.head, length), _end_words(move.foot, length)
    return f"{move.ram.head} head on the {head}; foot on the {foot}; drives out {length(move.extension_m)}"


def _hold_title(move: Hold) -> str:
    door = f"the {move.door} door"
    return {
        "swing": f"Swing {door}",
        "strap": f"Strap {door} where it is",
        "prop": f"Prop {door} up",
        "let go": f"Let go of {door}",
    }[move.way]


def _hold_place(move: Hold, length: Length) -> str:
    if move.way == "swing":
        out = "out" if move.angle_rad >= 0.0 else "in"
        return (
            f"{abs(round(math.degrees(move.angle_rad)))}\u00b0 {out}, hands push {move.hands_n:.0f} N at most"
        )
    if move.way == "prop":
        return f"head {length(move.lift_m)} above where the latch end is"
    return ""


def _latch_title(move: Latch) -> str:
    latch = "latch" if move.door == "front" else f"{move.door} latch"
    return f"Check the {latch}" if move.way == "check" else f"Hold the {latch} open"


def _latch_place(move: Latch, _length: Length) -> str:
    does = "nothing is changed" if move.way == "check" else "held until the end"
    return f"{move.handle_n:.0f} N at the handle; {does}"


def _flex_place(move: Flex, length: Length) -> str:
    word = "along" if isinstance(move.on, FramePoint) else "up"
    where = f"{length(move.on.along_m)} {word}"
    return f"{where}, bar {length(move.bar.length_m)} long; tip goes {length(move.opening_m)}"


def _cut_title(move: Cut) -> str:
    place = move.place
    if isinstance(place, PillarCut):
        return "Cut across the pillar"
    if isinstance(place, DoorCut):
        return f"Cut into the {place.panel} {'door' if place.sheets == 'whole door' else place.sheets}"
    return f"Cut the {place.panel} {place.fitting}"


def _cut_place(move: Cut, length: Length) -> str:
    place = move.place
    blades = f"blades open {length(move.opening_m)}"
    if isinstance(place, PillarCut):
        short = f", stops {length(move.short_m)} short" if move.short_m > 0.0 else ""
        return f"{length(place.height_m)} above the foot, from the {place.blades_from}{short}; {blades}"
    if isinstance(place, DoorCut):
        edge = EDGE_WORDS.get(place.edge, place.edge)
        return f"from the {edge} at {length(place.along_m)}, {length(move.depth_m)} in; {blades}"
    return blades


def _cut_spread_place(move: CutSpread, length: Length) -> str:
    where = f"{length(move.height_m)} above the foot, from the {move.tips_from}, {length(move.depth_m)} in"
    return f"{where}; opens {length(move.opening_m)}"


def _tag_title(move: Any) -> str:
    return str(move.__struct_config__.tag).replace("_", " ").capitalize()


OTHER = MoveWords(_tag_title, lambda _move, _length: "")
"""Of a type without an entry."""

WORDS: dict[type, MoveWords] = {
    Spread: MoveWords(
        _spread_title, _spread_place, "opening_m", ("Open the tips", "Opening the tips", "Opened the tips")
    ),
    Squeeze: MoveWords(
        lambda move: f"Squeeze across the {'pillar' if move.on else PANELS_ACROSS[move.panel]}",
        _squeeze_place,
        "closing_m",
        ("Close the tips", "Closing the tips", "Closed the tips"),
    ),
    Crush: MoveWords(
        lambda move: f"Crush by a {SHAPE_WORDS[move.shape]}",
        _crush_place,
        "travel_m",
        ("Press it in", "Pressing in", "Pressed in"),
    ),
    Press: MoveWords(
        lambda move: (
            f"Press the {'pillar' if isinstance(move.head, PillarSpot) else 'inner panel'} with a ram"
        ),
        _press_place,
        "extension_m",
        ("Drive the ram out", "Driving the ram out", "Drove the ram out"),
    ),
    Support: MoveWords(
        lambda move: "Put the car on blocks" if move.on == "blocks" else "Take the blocks away",
        lambda _move, _length: "The same push then moves the car less, or more",
        verbs=("Do it", "Settling", "Done"),
    ),
    Hold: MoveWords(_hold_title, _hold_place, verbs=("Take hold", "At work on the door", "Held the door")),
    Latch: MoveWords(
        _latch_title, _latch_place, verbs=("Pull the handle", "Pulling the handle", "Pulled the handle")
    ),
    Flex: MoveWords(
        lambda move: f"Flex the {'window frame' if isinstance(move.on, FramePoint) else 'edge'} with a bar",
        _flex_place,
        "opening_m",
        ("Pull the bar", "Pulling the bar", "Pulled the bar"),
    ),
    Cut: MoveWords(_cut_title, _cut_place, verbs=("Cut", "Cutting", "Cut")),
    CutSpread: MoveWords(
        lambda _: "Spread the ends of the cut",
        _cut_spread_place,
        "opening_m",
        ("Open the tips", "Opening the tips", "Opened the tips"),
    ),
    Strip: MoveWords(
        lambda _: "Strip trim, seals and glass",
        lambda move, _length: ", ".join(move.what),
        verbs=("Strip", "Stripping", "Stripped"),
    ),
    Ease: MoveWords(
        lambda _: "Let the tool off",
        lambda _move, _length: "The metal springs back to what is left of its shape",
        verbs=("Let the tool off", "Letting the tool off", "Let the tool off"),
    ),
}


def words_of(move: Any) -> MoveWords:
    """Return how a move is told."""
    return WORDS.get(type(move), OTHER)


def title_of(move: Any) -> str:
    """Return what a move does and where, in a few words."""
    return words_of(move).title(move)


def is_driven(move: Any) -> bool:
    """Tell whether a move goes along a travel, so that it can be opened by hand and stopped on the way."""
    return bool(words_of(move).travel_field)


def opened(move: Any, travel_m: float) -> Any:
    """Return the move with another travel (a spread's opening, a squeeze's closing ...)."""
    field = words_of(move).travel_field
    return msgspec.structs.replace(move, **{field: travel_m}) if field else move


def opening_of(move: Any) -> float:
    """Return how far a move goes [m]; nothing for one that is done at once."""
    field = words_of(move).travel_field
    return float(getattr(move, field)) if field else 0.0
