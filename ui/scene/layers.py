"""The layers of the picture and the three ways to show each."""

from __future__ import annotations

from enum import Enum

LAYERS = ("skin", "seam", "bar", "inner", "latch_hinges", "pillar", "trim_glass", "body", "occupant")


class Mode(Enum):
    """How a layer is shown."""

    SOLID = "solid"
    SEE_THROUGH = "see_through"
    OFF = "off"


_OPACITY = {
    "skin": 0.24,
    "inner": 0.30,
    "pillar": 0.30,
    "trim_glass": 0.30,
    "body": 0.30,
    "occupant": 0.35,
    "bar": 0.45,
    "latch_hinges": 0.45,
    "seam": 0.45,
}


def opacity_of(layer: str, mode: Mode) -> float:
    """Return the opacity of a layer's surfaces in a mode."""
    return _OPACITY[layer] if mode is Mode.SEE_THROUGH else 1.0
