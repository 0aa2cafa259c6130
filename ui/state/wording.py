"""Sentences of the mechanics in the reader's units: they come in millimetres and kilonewtons."""

from __future__ import annotations

import re

from sim.units import Units, force_text, length_text

_LENGTH = re.compile(r"(\d+(?:\.\d+)?)[ \u00a0]mm\b")
_FORCE = re.compile(r"(\d+(?:\.\d+)?)[ \u00a0]kN\b")


def in_units(sentence: str, units: Units) -> str:
    """Return a sentence with its lengths and forces written in other units."""
    if units is Units.METRIC:
        return sentence
    sentence = _LENGTH.sub(lambda found: length_text(float(found[1]) * 1e-3, units), sentence)
    return _FORCE.sub(lambda found: force_text(float(found[1]) * 1e3, units), sentence)
