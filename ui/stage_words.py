"""Small words of the stage: names, sentences, and who carries the push."""

from __future__ import annotations

from collections.abc import Sequence

from sim.move_words import title_of
from sim.outcome import live_words
from sim.plan import Crush, Move, Spread, Squeeze
from sim.record import Aim, Frame
from sim.twins import WORDS
from sim.units import NO_BREAK, Units, length_text
from ui.state.slid import slid_words

HINT_FIRST = "Click the door's edge to set tip one"
HINT_SECOND = "Click what stands still beside it for tip two, or leave it across the gap"
HINT_CRUSH = "Click the skin to set where along the car the body presses"
HINT_WHEEL = "wheel: depth, Shift+wheel: tilt, Esc: wheel zooms again"
HINT_RAN = "B puts another plan beside this one; click the edge to set a tip again"
HINT_RUNS = "Esc stops; what has been worked out stays"
HINT_FORM = "Ctrl+E changes the move"


def hint_words(move: Move | None, tip: int, *, steering: bool, ran: bool = False, runs: bool = False) -> str:
    """Return what the next click, key or turn of the wheel does; a move without tips is changed in its form.

    Parameters
    ----------
    ran : whether the end of a run is shown: what it came to can be compared
    runs : whether a run is under way: a click would set no tip
    """
    if runs:
        return HINT_RUNS
    if ran and tip == 1 and not steering:
        return HINT_RAN
    if isinstance(move, Crush):
        return HINT_CRUSH
    if move is not None and not isinstance(move, Spread | Squeeze):
        return HINT_FORM
    if steering and tip == 1:
        return HINT_WHEEL
    return HINT_SECOND if tip == 2 else HINT_FIRST


def next_words(move: Move | None) -> str:
    """Return what is said of a move that has yet to begin and has no tips to aim; "" of one that has."""
    if move is None or isinstance(move, Spread | Squeeze):
        return ""
    return f"Next: {title_of(move)[:1].lower()}{title_of(move)[1:]}."


def named(part: str, seat: str) -> str:
    """Return a part with the seat on it, or alone where the seat says no more."""
    words = part[0].upper() + part[1:]
    return words if seat in ("", part, f"the {part}", "in air") else f"{words}: {seat}"


def sentence(words: str) -> str:
    """Return words as a sentence; a field's name as it stands in a file is put in plain words."""
    field, _, rest = words.partition(" ")
    plain = WORDS.get(field.rpartition(".")[2], "") if "_" in field else ""
    words = f"{plain} {rest}".replace("_", " ") if plain else words
    return words[0].upper() + words[1:] + ("" if words.endswith(".") else ".")


def seat_words(aim: Aim, frame: Frame | None, units: Units, lead: str = "") -> str:
    """Return where both tips stand, and how far the first has slid in a frame."""
    far = "" if frame is None or frame.seat is None else length_text(frame.seat.slid_m, units)
    return f"{lead}Tip one: {aim.seats[0]}{slid_words(frame, far)}. Tip two: {aim.seats[1]}."


def moment_words(frame: Frame, way: Sequence[Frame] = ()) -> str:
    """Return the clauses for a moment of a push as a sentence; ``way`` are the move's moments up to it."""
    words = live_words(frame, way)
    return words[0].upper() + words[1:].replace(" %", f"{NO_BREAK}%") + "."


def split_words(aim: Aim) -> str:
    """Return who carries the push, in words."""
    share = aim.skin_share
    if share >= 0.95:
        return "All of the push goes into the outer skin's lip."
    if share <= 0.05:
        return "All of the push goes into the inner panel."
    return f"{share:.0%} of the push goes into the outer skin's lip, the rest into the inner panel."
