"""Captions and texts for those who do not see a picture: what is shown, where the tips are, what happened."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sim.builds import car_words
from sim.move_words import title_of
from sim.outcome import live_words
from sim.plan import Plan
from sim.planfile import plan_sha256
from sim.results import LIMITS_LINE, MODEL_VERSION
from sim.units import Units, force_text, length_text
from ui.state.cards import place_of
from ui.state.tongue import tr
from ui.state.view_options import COLOUR_WORDS
from ui.state.wording import in_units

if TYPE_CHECKING:
    from collections.abc import Sequence

    from sim.record import Frame, MoveResult

CAMERA_WORDS = {
    "three_quarter": "seen from outside, from the rear quarter",
    "latch": "seen from outside, near the latch",
    "hinge": "seen from outside, near the hinges",
    "patient": "seen from the patient's seat",
    "section": "cut level with the latch and seen from above",
    "top": "seen from above",
}
TRUE_SCALE = "True scale"


def caption(plan: Plan, words: str, sentence: str, sha256: str, licence: str = "") -> str:
    """Return a picture's caption in the language spoken: words, what happened, what it is not, its source.

    Parameters
    ----------
    plan, sha256 : what is shown;  words, sentence : of the picture and of the run, "" for none
    licence : of the picture; "" where it is its plan's
    """
    parts = [words or plan.title, sentence, f"{TRUE_SCALE}. {LIMITS_LINE}.", *source(plan, licence)]
    parts.append(made_from(sha256))
    return " ".join(_sentence(tr(part)) for part in parts if part)


def source(plan: Plan, licence: str = "") -> tuple[str, ...]:
    """Return who made what is shown and under which licence, as far as the plan says so."""
    licence = licence or plan.licence
    by = f"Source: {plan.author}" if plan.author else ""
    return by, f"Licence: {licence}" if licence else ""


def made_from(sha256: str) -> str:
    """Return which plan and which version of the model a picture is of."""
    return f"Plan {sha256[:12]}, model version {MODEL_VERSION}."


def chunks(plan: Plan, title: str, description: str) -> dict[str, str]:
    """Return what stands inside a saved picture, by the keywords of the PNG standard."""
    told = {
        "Title": title,
        "Author": plan.author,
        "Copyright": plan.licence,
        "Software": f"Hemline, model version {MODEL_VERSION}",
        "Comment": made_from(plan_sha256(plan)),
        "Description": description,
    }
    return {key: words for key, words in told.items() if words}


def _sentence(words: str) -> str:
    return words if words.endswith((".", "!", "?")) else f"{words}."


def _begun(words: str) -> str:
    return words[:1].upper() + words[1:]


def alt_text(
    plan: Plan,
    move_index: int,
    frame: Frame,
    result: MoveResult | None,
    camera: str,
    colours: str,
    units: Units = Units.METRIC,
    way: Sequence[Frame] = (),
) -> str:
    """Return a picture in words, in the language spoken.

    Parameters
    ----------
    plan, move_index : what is shown;  frame : the moment;  result : of the move, where its end is shown
    camera, colours : how it is looked at
    way : the move's moments up to this one
    """
    move = plan.moves[move_index]
    begin = f"A drawing of {car_words(plan.car)}, {CAMERA_WORDS.get(camera, camera)}."
    what = f"{title_of(move)}: {place_of(move, units)}."
    opening, force = length_text(frame.opening_m, units), force_text(frame.force_n, units)
    now = f"The tips are {opening} open and push {force}."
    if frame.opening_m <= 0.0:
        now = "Nothing has been pushed yet."
    said = result.sentence if result is not None else _sentence(_begun(live_words(frame, way)))
    if frame.opening_m <= 0.0 and result is None:
        said = ""
    room = f"From the metal to the occupant it is {length_text(frame.clearance.distance_m, units)}."
    tone = "" if colours == "material" else f"The colours show: {COLOUR_WORDS[colours].lower()}."
    parts = (part for part in (begin, what, now, said, room, tone) if part)
    return " ".join(tr(in_units(part, units)) for part in parts)
