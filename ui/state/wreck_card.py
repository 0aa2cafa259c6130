"""How the plan's car was wrecked, in words and figures: what stands before the first move."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import PurePath

from sim.move_words import opening_of, title_of, words_of
from sim.outcome import rung_words
from sim.units import length_text
from ui.state.cards import place_of
from ui.state.session import Session
from ui.state.solve_queue import Job
from ui.state.wording import in_units

NOT_WRECKED = "This is the car before its wreck, not yet what the first move finds: work the wreck out first."
"""Said wherever the untouched car stands in for a start that is not known."""
WORK_OUT, AGAIN, WATCH, BACK = "Work it out", "Work it out again to watch", "Watch it", "Back to the plan"


@dataclass(frozen=True)
class WreckCard:
    """The wreck in words.

    title, lines : what happened, and the numbers of each of its moves
    outcome : how the car was found, or that it is not known yet
    verb : what can be done: work it out, watch it, go back; "" for nothing
    shown : whether the moments shown are the wreck's;  editable : whether its moves can be changed here
    """

    title: str
    lines: tuple[str, ...]
    outcome: str
    verb: str
    shown: bool
    editable: bool


def wreck_card(session: Session) -> WreckCard | None:
    """Return the card of what wrecked the plan's car; None where nothing did."""
    if not session.is_wrecked:
        return None
    plan, units = session.plan, session.view.options.units
    lines = tuple(f"{title_of(move)}: {place_of(move, units)}" for move in plan.wreck)
    title = "Before the plan: how it was wrecked"
    if plan.start:
        title, lines = "Before the plan: a saved start", (PurePath(plan.start).name,)
    found = session.found
    if found is not None:
        outcome = in_units(found.told.sentence(), units)
    else:
        outcome = _under_way(session) or _not_yet(session)
    shown = session.timeline.shows_wreck
    return WreckCard(title, lines, outcome, _verb(session, shown=shown), shown, not plan.start)


def _not_yet(session: Session) -> str:
    if session.start_is_known:
        return "Kept results are shown; the wreck itself has not been worked out here."
    if session.plan.start:
        return "Not read yet: the car is shown as it was before."
    return "Not worked out yet: the car is shown as it was before."


def _under_way(session: Session) -> str:
    """Return how far the wreck is worked out; "" while it is not being worked out."""
    request, line, moves = session.queue.current, session.timeline, session.plan.wreck
    if request is None or request.aside or request.job is Job.PREPARE:
        return ""
    if not line.shows_wreck or line.last_move >= -1:
        return "Wrecking the car" if session.found is None else ""
    units = session.view.options.units
    index = line.last_move + 1 + len(moves)
    frames = line.frames_of(line.last_move)
    if not 0 <= index < len(moves) or not frames or not opening_of(moves[index]):
        return "Wrecking the car"
    gone, whole = (length_text(v, units) for v in (frames[-1].opening_m, opening_of(moves[index])))
    return f"Pressed in {gone} of {whole}"


def _verb(session: Session, *, shown: bool) -> str:
    if session.queue.busy:
        return ""
    if shown:
        return BACK
    if session.found is not None and session.found.moves:
        return WATCH
    if not session.can_find or (session.plan.start and session.found is not None):
        return ""
    return WORK_OUT if session.found is None else AGAIN


def before_plan(session: Session) -> bool:
    """Tell whether the moment shown lies before anybody sets a tool on the car."""
    return session.timeline.shows_wreck or not session.start_is_known


def wreck_words(session: Session) -> str:
    """Return what is said of a moment before the plan: before, in or after its wreck; "" in the plan."""
    line, units = session.timeline, session.view.options.units
    frame = line.frame
    if frame is None or line.move >= 0 or not session.is_wrecked:
        return ""
    if not line.shows_wreck:
        return "" if session.start_is_known else NOT_WRECKED
    if line.move == -1 and session.found is not None:
        return f"As it was found: {in_units(session.found.told.sentence(), units)}"
    moves = session.plan.wreck
    index = line.move + 1 + len(moves)
    if not 0 <= index < len(moves):
        return "The car before its wreck."
    so_far = [
        rung_words(event.part, event.kind)
        for item in line.frames_of(line.move)
        for event in item.events
        if item.opening_m <= frame.opening_m
    ]
    gone = length_text(frame.opening_m, units)
    given = f"; so far {', '.join(dict.fromkeys(so_far))}" if so_far else ""
    return f"{words_of(moves[index]).verbs[1]}: {gone}{given}."
