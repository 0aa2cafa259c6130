"""At which events a move stops early: what may be chosen for it, in words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import msgspec

from sim.plan import Move
from ui.state.questions import FIRST_WORDS, NOTHING, STALLED, competitors

if TYPE_CHECKING:
    from sim.record import Rung

MOTION_WORDS = {
    "tip slipping": "The tip slips",
    "folding in": "A panel folds inward",
    "folding out": "A panel folds outward",
}
"""Events that are no part's giving, and at which a push may stop all the same."""
NEVER = (NOTHING, STALLED)


@dataclass(frozen=True)
class Stop:
    """One event to stop at: its kind, its words, and whether it is chosen."""

    kind: str
    words: str
    on: bool


def can_stop(move: Move | None) -> bool:
    """Tell whether a type of move can stop at an event."""
    return move is not None and "stop_at" in move.__struct_fields__


def stops(move: Move, ladder: Iterable[Rung], *, wedged: bool) -> tuple[Stop, ...]:
    """Return the events a move may stop at; one that the plan names and nothing offers is listed too."""
    chosen: tuple[str, ...] = getattr(move, "stop_at", ())
    offered = [kind for kind in competitors(ladder, move, wedged=wedged) if kind not in NEVER]
    kinds = dict.fromkeys((*offered, *MOTION_WORDS, *chosen))
    words = FIRST_WORDS | MOTION_WORDS
    return tuple(Stop(kind, words.get(kind, kind.capitalize()), kind in chosen) for kind in kinds)


def turned(move: Any, kind: str) -> Any:
    """Return the move that stops at one event more, or no longer at it."""
    chosen = tuple(k for k in move.stop_at if k != kind)
    return msgspec.structs.replace(move, stop_at=chosen if kind in move.stop_at else (*chosen, kind))


def stop_words(move: Any) -> str:
    """Return at which events a move stops, in a clause; empty where it goes all the way."""
    chosen = getattr(move, "stop_at", ())
    return f"; stops at {' or '.join(chosen)}" if chosen else ""
