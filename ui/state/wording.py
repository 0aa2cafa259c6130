"""Sentences of the mechanics in the reader's units: they come in millimetres and kilonewtons."""

from __future__ import annotations

import re

from sim.record import Event
from sim.units import Units, force_text, length_text

UNSETTLED = "not settled"
"""Word of the mechanics for a move of which some steps did not converge."""

EFFECT_WORDS = {
    "gained": "Gained: it let go, and no room was lost",
    "spent": "Spent: nothing gained",
    "lost ground": "Lost ground: less room than before",
    "stop here": "Stop here: the sheet tears",
    UNSETTLED: "Not settled: do not teach from it",
    "wrecked": "Wrecked: the metal lies as the body left it",
    "eased": "Eased: the tool is off",
    "done": "Done: no room was lost",
}
"""What a move meant for the plan, as it is told."""
MET_HIDDEN = "Caution: the blades met a part that trim still hid"
"""What a cut meant for the plan that went where a restraint part was not yet to be seen."""

_LENGTH = re.compile(r"(\d+(?:\.\d+)?)[ \u00a0]mm\b")
_IN_IN = re.compile(r"(?<=\d\u00a0)in(?= in\b)")
_FORCE = re.compile(r"(\d+(?:\.\d+)?)[ \u00a0]kN\b")


TEARING = "skin tearing"
"""The kind of event in which any sheet begins to tear, whichever it is."""
TORN_WORDS = {"skin": TEARING, "pillar": "pillar tearing", "rail": "rail tearing", "rocker": "rocker tearing"}
"""What is said of it by a word of the part that tears."""


def event_words(event: Event) -> str:
    """Return an event's kind as it is true of its part: not every sheet that tears is a skin."""
    if event.kind != TEARING:
        return event.kind
    return next((words for part, words in TORN_WORDS.items() if part in event.part), "sheet tearing")


def told(sentence: str, effect: str) -> str:
    """Return the sentence of a result; one that is not settled says so first."""
    if effect != UNSETTLED:
        return sentence
    return f"Not settled: some steps did not come to rest. As far as it went: {sentence}"


def in_units(sentence: str, units: Units) -> str:
    """Return a sentence with its lengths and forces written in other units."""
    if units is Units.METRIC:
        return sentence
    sentence = _LENGTH.sub(lambda found: length_text(float(found[1]) * 1e-3, units), sentence)
    sentence = _IN_IN.sub("inches", sentence)  # "5.3 inches in all", not "in in"
    return _FORCE.sub(lambda found: force_text(float(found[1]) * 1e3, units), sentence)
