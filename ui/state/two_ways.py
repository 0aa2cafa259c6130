"""Going on with a spread against stopping at the mark to cut: what each costs, beside each other."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sim.plan import Move, Spread
from sim.record import STOP
from sim.units import Units, length_text
from ui.state.locks import ANSWERS, MAP

if TYPE_CHECKING:
    from sim.stop_and_cut import Cost, StopAndCut
    from ui.state.session import Session

NO_SPREAD = "Going on against a cut is asked of a spread: choose one in the plan."
WORKING = "Working out both ways on: the spread to its end, and stopped at the mark and cut. Esc stops it."
HEADS = ("Going on", "Stopping to cut")
ROW_WORDS = ("Sheet torn", "Sharp edges", "Tips opened to", "Door opened by", "Let go")
BOTH_END_OFF = "Door opened by: with the tool off again."


def can_weigh(move: Move | None) -> bool:
    """Tell whether both ways on can be asked of a move."""
    return isinstance(move, Spread)


def offered(session: Session) -> tuple[str, ...]:
    """Return the offer to weigh both ways, longest wording first: from a spread's mark on, once unlocked."""
    line = session.timeline
    if session.beside.on or session.aiming or session.hides(ANSWERS) or session.hides(MAP):
        return ()
    here = [m for m in line.marks if m.move == line.move and m.position <= line.position]
    mark = next((m for m in here if m.event.kind == STOP), None)
    if mark is None or not can_weigh(session.plan.moves[line.move] if line.move >= 0 else None):
        return ()
    at = length_text(mark.event.opening_m, session.view.options.units)
    return (
        f"Mark at {at}: go on, or stop and cut? (Ctrl+K)",
        "Go on, or stop and cut? (Ctrl+K)",
        "Go on, or cut?",
    )


def rows(ways: StopAndCut, units: Units) -> tuple[tuple[str, str, str], ...]:
    """Return what is compared: its words, then the figure of going on and of stopping; () with no moment."""
    if ways.stopped is None:
        return ()
    on, off = _figures(ways.going_on, units), _figures(ways.stopped, units)
    return tuple(zip(ROW_WORDS, on, off, strict=True))


def lines(ways: StopAndCut, units: Units) -> tuple[str, ...]:
    """Return the comparison as lines to copy."""
    return tuple(
        f"{words}: {HEADS[0].lower()} {on}, {HEADS[1].lower()} {off}" for words, on, off in rows(ways, units)
    )


def _figures(cost: Cost, units: Units) -> tuple[str, ...]:
    return (
        length_text(cost.torn_m, units),
        str(cost.sharp_edges),
        length_text(cost.opening_m, units),
        length_text(cost.opened_m, units),
        ", ".join(cost.freed) or "nothing",
    )
