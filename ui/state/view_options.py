"""How things are looked at: layers, colours, units, theme, size. Never undone, never part of a plan."""

from __future__ import annotations

import enum
from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from sim.units import Units
from ui.state.signal import Signal


class Shown(enum.Enum):
    """How a layer is drawn."""

    SOLID = "solid"
    SEE_THROUGH = "see_through"
    OFF = "off"

    @property
    def following(self) -> Shown:
        """The mode that one more key press brings."""
        order = list(Shown)
        return order[(order.index(self) + 1) % len(order)]


LAYER_WORDS: Mapping[str, str] = {
    "skin": "outer skin",
    "seam": "seam",
    "bar": "bar",
    "inner": "inner panel",
    "latch_hinges": "latch and hinges",
    "pillar": "pillar between the doors",
    "trim_glass": "trim, seals and glass",
    "body": "body",
    "occupant": "occupant",
}
"""The layers in the order of their keys, 1 to 9."""

SIDE_LAYERS = ("pillar", "trim_glass")
"""Layers that only the whole side has."""

COLOUR_WORDS: Mapping[str, str] = {
    "material": "Plain metal",
    "outboard": "Moved out or in",
    "seam": "Seam",
    "load": "Load in the metal",
    "folded": "Where it folded",
}
"""The colour modes and what they are called."""

SHOWN_WORDS = {Shown.SOLID: "solid", Shown.SEE_THROUGH: "see-through", Shown.OFF: "off"}

TEXT_RATIOS = (1.0, 1.25, 1.5, 1.75, 2.0)
"""Factors on all type to choose from."""

DRAWER_WIDTH_PX = 1180
"""Below this width the columns slide over to drawers, so that the stage stays wide enough to teach on."""


@dataclass(frozen=True)
class ViewOptions:
    """Everything about the look that a person can choose.

    Parameters
    ----------
    layers : mode of each layer of `LAYER_WORDS`
    colour_mode : one of `COLOUR_WORDS`
    theme : "light" or "dark"
    projector : white ground, black ink, larger type and thicker lines, for the back row; before the theme
    text_ratio : factor on all type, one of `TEXT_RATIOS`
    calm : the moments are played as stills, a second each
    right_turns : the right button of the mouse turns the picture, and the left one sets tips alone
    stage_only : the stage with the sentence below it, and nothing else
    units : what lengths and forces are written in
    drawer : which column is out where there is no room for both: "plan", "reading" or None
    """

    layers: Mapping[str, Shown] = field(default_factory=lambda: dict.fromkeys(LAYER_WORDS, Shown.SOLID))
    colour_mode: str = "material"
    theme: str = "light"
    projector: bool = False
    text_ratio: float = 1.0
    calm: bool = False
    right_turns: bool = False
    stage_only: bool = False
    units: Units = Units.METRIC
    drawer: str | None = "reading"

    def with_layer(self, layer: str, mode: Shown) -> ViewOptions:
        """Return the options with one layer drawn another way; KeyError for a layer that is not there."""
        if layer not in self.layers:
            raise KeyError(layer)
        return replace(self, layers={**self.layers, layer: mode})

    def with_next(self, layer: str) -> ViewOptions:
        """Return the options with one layer in its following mode."""
        return self.with_layer(layer, self.layers[layer].following)

    def text_scale(self, width_px: int) -> float:
        """Return the factor on all type; in projector mode the smallest type is 24 px on a 1920 px screen."""
        if not self.projector:
            return self.text_ratio
        return max(1.25, 24.0 / 14.0 * min(1.0, width_px / 1920.0), self.text_ratio)

    def with_text(self, steps: int) -> ViewOptions:
        """Return the options with type so many steps larger; the ends of `TEXT_RATIOS` stay."""
        place = min(range(len(TEXT_RATIOS)), key=lambda k: abs(TEXT_RATIOS[k] - self.text_ratio))
        return replace(self, text_ratio=TEXT_RATIOS[min(max(place + steps, 0), len(TEXT_RATIOS) - 1)])

    def columns(self, width_px: int) -> tuple[bool, bool]:
        """Return whether the plan and the reading stand beside the stage in a window of this width."""
        if self.stage_only:
            return False, False
        if width_px >= DRAWER_WIDTH_PX * max(1.25 if self.projector else 1.0, 0.85 * self.text_ratio):
            return True, True
        return self.drawer == "plan", self.drawer == "reading"


class ViewState:
    """Holds the options now in force and tells when they change."""

    def __init__(self, options: ViewOptions | None = None) -> None:
        self._options = options or ViewOptions()
        self.changed: Signal[[]] = Signal()

    @property
    def options(self) -> ViewOptions:
        """The options now in force."""
        return self._options

    def set(self, options: ViewOptions) -> None:
        """Put other options in force."""
        if options != self._options:
            self._options = options
            self.changed.emit()
