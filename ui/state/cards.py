"""The plan in words: one card a move, with what became of it."""

from __future__ import annotations

from dataclasses import dataclass

from sim.move_words import title_of, words_of
from sim.plan import Move
from sim.units import Units, length_text
from ui.state.locks import ANSWERS
from ui.state.prompts import CAUTION
from ui.state.session import Session
from ui.state.solve_queue import Job
from ui.state.stops import stop_words
from ui.state.wording import EFFECT_WORDS, MET_HIDDEN, in_units, told


@dataclass(frozen=True)
class Card:
    """One move in words.

    Parameters
    ----------
    title : what is done and where
    place : the numbers of it
    outcome : what the metal did and what came of it; empty before it was run
    effect : what that means for the plan, one or two words
    selected : whether the next push is this move
    """

    title: str
    place: str
    outcome: str
    effect: str
    selected: bool


def place_of(move: Move, units: Units) -> str:
    """Return the numbers of a move in one line."""
    return words_of(move).place(move, lambda length_m: length_text(length_m, units)) + stop_words(move)


def cards(session: Session) -> tuple[Card, ...]:
    """Return the cards of the plan shown."""
    units = session.view.options.units
    found = []
    for index, move in enumerate(session.plan.moves):
        record = session.record(index)
        result = record.result if record is not None and not session.hides(ANSWERS) else None
        if result is not None:
            whole = told(result.sentence, result.plan_effect)
            outcome = whole.partition(". ")[0].rstrip(".") + "."
            effect = EFFECT_WORDS.get(result.plan_effect, result.plan_effect)
            if any(event.kind == CAUTION for event in result.events):
                effect = MET_HIDDEN
        else:
            kept_shut = "Run; what happened is kept shut"
            outcome, effect = _on_the_way(session, index) if record is None else kept_shut, ""
        chosen = index == session.selection.now.move
        found.append(Card(title_of(move), place_of(move, units), in_units(outcome, units), effect, chosen))
    return tuple(found)


def _on_the_way(session: Session, index: int) -> str:
    """Return what is said of a move without a result; empty where it has not begun."""
    request = session.queue.current
    if request is not None and request.job is not Job.PREPARE and not request.aside:
        return "Under way" if index == max(session.solved_count, request.first) else ""
    moved = any(frame.opening_m > 0.0 for frame in session.timeline.frames_of(index))
    return "Stopped on the way: no result" if moved else ""
