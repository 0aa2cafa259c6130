"""Prompts, never orders: what to ask before the first force, and the caution for the hazard at hand.

Which hazard is at hand follows from the type of the move, where it is made and what the car still has on;
what was met by blades follows from the run's own events. Nothing here holds a move up.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.cut_plan import DoorCut, FittingCut, PillarCut
from sim.plan import (
    BeltPoint,
    BodyPoint,
    Cut,
    CutSpread,
    Flex,
    Hold,
    Latch,
    Move,
    PillarSpot,
    Plan,
    Press,
    Spread,
    Squeeze,
    Strip,
    Support,
)
from ui.state.signs import hazards

if TYPE_CHECKING:
    from ui.state.session import Session

CAUTION = "caution"
"""Kind of the event of blades that went where a restraint part still hid."""
IS_IT_NEEDED = (
    "Is metal work needed? Getting out alone or with a little help comes first, where procedure and medical "
    "lead allow it."
)
BLADES_WENT = "The blades went where it still hid."
BLOCKS = "on blocks in this plan"
FORCE = (Spread, Squeeze, Press, Flex, Cut, CutSpread)
TEARS = ("skin tearing", "tip shearing through", "cut open", "cut short")
LOOSE = ("latch free", "striker out", "hinge free", "grounded", "held open")


@dataclass(frozen=True)
class Prompt:
    """A card: its name, its words, and whether it tells of something that has happened."""

    name: str
    words: str
    happened: bool = False


def forces(move: Move) -> bool:
    """Tell whether a move puts force on metal."""
    return isinstance(move, FORCE)


def hazards_of(plan: Plan, index: int) -> tuple[str, ...]:
    """Return the hazards that a move brings with it, by the names of their cards, the nearest first."""
    move = plan.moves[index]
    before = plan.moves[:index]
    side = plan.car.extent == "side"
    found: list[str] = []
    if side and _at_a_post(move) and not _stripped(plan, before, "trim"):
        found.append("restraints")
    if isinstance(move, Cut):
        found += ["sharp edges", *(["high voltage"] if isinstance(move.place, PillarCut) else [])]
        if isinstance(move.place, FittingCut) and move.place.fitting != "bar":
            found.append("swinging door")
    if isinstance(move, CutSpread):
        found.append("sharp edges")
    if isinstance(move, Spread | Squeeze | Press | Flex | CutSpread):
        found.append("stored energy")
    if _near_glass(move) and not (side and _stripped(plan, before, "glass")):
        found.append("glass")
    if isinstance(move, Hold) or (isinstance(move, Latch) and move.way == "hold"):
        found.append("swinging door")
    if isinstance(move, Support) or (side and forces(move) and _stands(plan, before) != BLOCKS):
        found.append("stability")
    return tuple(dict.fromkeys(found))


def _at_a_post(move: Move) -> bool:
    if isinstance(move, Cut):
        return isinstance(move.place, PillarCut)
    if isinstance(move, Press):
        return isinstance(move.head, PillarSpot)
    if isinstance(move, Squeeze):
        return move.on is not None
    if isinstance(move, CutSpread):
        return True
    return isinstance(move, Spread) and isinstance(move.against, BodyPoint)


def _near_glass(move: Move) -> bool:
    if isinstance(move, Spread):
        return isinstance(move.door, BeltPoint)
    if isinstance(move, Cut):
        return isinstance(move.place, DoorCut) and move.place.edge == "belt"
    return isinstance(move, Flex)


def _stripped(plan: Plan, before: Iterable[Move], what: str) -> bool:
    """Tell whether trim or panes are off: never there on this car, or stripped by an earlier move."""
    whole = plan.car.whole_side
    return not getattr(whole, what) or any(what in move.what for move in before if isinstance(move, Strip))


def _stands(plan: Plan, before: Iterable[Move]) -> str:
    """Return what the car stands on: as the last support left it, else as the plan has it from the start."""
    supports = [move.on for move in before if isinstance(move, Support)]
    whole = plan.car.whole_side
    if (supports[-1] if supports else whole.stands_on) == "blocks":
        return BLOCKS
    if whole.lies == "on its wheels":
        return "on its wheels alone in this plan"
    return "on its side, on no blocks in this plan"


def before_force(plan: Plan, index: int) -> tuple[str, ...]:
    """Return what to have looked at before the first force, each with what the plan itself says of it."""
    before = plan.moves[:index]
    side = plan.car.extent == "side"
    stands = _stands(plan, before)
    trim = "stripped in this plan" if _stripped(plan, before, "trim") else "not stripped in this plan"
    glass = "off in this plan" if _stripped(plan, before, "glass") else "still in, in this plan"
    return (
        f"car stable{f' ({stands})' if side else ''}",
        "energy isolated",
        f"glass handled{f' ({glass})' if side else ''}",
        f"trim stripped{f' ({trim})' if side else ''}",
        "belts dealt with",
        "patient covered and cared for",
    )


def first_force(plan: Plan) -> int | None:
    """Return the index of the first move that puts force on metal; None where none does."""
    return next((index for index, move in enumerate(plan.moves) if forces(move)), None)


def happened(session: Session) -> tuple[Prompt, ...]:
    """Return what the moments up to the one shown have met, named to the hazard; the newest first."""
    line = session.timeline
    frames = [] if line.move < 0 else line.frames_of(line.move)
    found: dict[str, Prompt] = {}
    for frame in frames:
        for event in frame.events:
            if event.kind == CAUTION:
                found[event.part] = Prompt(
                    event.part.capitalize(),
                    f"{BLADES_WENT} {hazards()['restraints']}",
                    happened=True,
                )
            elif event.kind in TEARS:
                found["sharp edges"] = Prompt("Sharp edges", hazards()["sharp edges"], happened=True)
            elif event.kind in LOOSE:
                found["swinging door"] = Prompt("Swinging door", hazards()["swinging door"], happened=True)
        if frame is line.frame:
            break
    newest = reversed(found.values())
    return tuple(sorted(newest, key=lambda card: not card.words.startswith(BLADES_WENT)))


def prompts(session: Session) -> tuple[Prompt, ...]:
    """Return the cards of the moment shown: what has happened first, then what the move ahead brings."""
    plan, index = session.plan, session.selection.now.move
    if session.timeline.shows_wreck or not session.start_is_known:
        return ()
    if session.timeline.move >= 0:
        return () if session.hides("answers") else happened(session)
    if index >= len(plan.moves):
        return ()
    found: list[Prompt] = []
    if index == first_force(plan):
        looked = ", ".join(before_force(plan, index))
        found.append(Prompt("Before any force", f"{IS_IT_NEEDED} Then: {looked}."))
    cards = hazards()
    found += [Prompt(name.capitalize(), cards[name]) for name in hazards_of(plan, index) if name in cards]
    return tuple(found)


def plan_hazards(plan: Plan) -> tuple[str, ...]:
    """Return the hazards of all moves of a plan, by name, each once: for paper."""
    return tuple(dict.fromkeys(name for index in range(len(plan.moves)) for name in hazards_of(plan, index)))
