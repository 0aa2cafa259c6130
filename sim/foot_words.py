"""What a fold leaves at the pillar's foot: spots popped, the belt tensioner, room for a last cut."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sim.hidden import fittings_of
from sim.lookout import OPENING_M, foot_room, foot_spots

if TYPE_CHECKING:
    from sim.course import UnderWay

TENSIONER = "belt tensioner"


def foot_words(run: UnderWay) -> str:
    """Return the sentence on the foot of a pillar whose spots this move has popped; "" where it popped none.

    It asks what a crew would look for before a last cut: how much of the foot still holds, whether the
    tensioner shows, and whether blades as one looks with (`sim.lookout.OPENING_M`) have room there now.
    """
    first, last = run.ends
    state = last.state
    if state is None or last.spots_gone <= first.spots_gone:
        return ""
    gone, spots = foot_spots(run.network.structure, state)
    if not gone:
        return ""
    room = foot_room(run.model, run.network, state, OPENING_M)
    blades = f"blades that open {1e3 * OPENING_M:.0f} mm have room for a last cut"
    if not room:
        blades = f"blades that open {1e3 * OPENING_M:.0f} mm have no room for a last cut"
    parts = [f"At the foot {gone} of {spots} spots are gone", *_tensioner(run), blades]
    return f"{'; '.join(parts)}."


def _tensioner(run: UnderWay) -> list[str]:
    state = run.ends[1].state
    fittings = None if state is None else fittings_of(run.model, state)
    if fittings is None:
        return []
    if any(item.name == TENSIONER for item in fittings.hidden()):
        return ["trim still hides the belt tensioner there"]
    if any(item.name == TENSIONER for item in fittings.seen()):
        return ["the belt tensioner shows there"]
    return []
