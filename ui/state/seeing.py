"""How the picture is taken apart: section plane, parts drawn asunder, one part alone, start shape.

Never part of a plan and never undone with it. A plane lies square to an axis of the car; one number moves it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Literal

from ui.state.signal import Signal

Way = Literal["level", "across", "lengthwise"]
WAYS: tuple[Way, ...] = ("level", "across", "lengthwise")
AXIS_OF: Mapping[Way, int] = {"level": 2, "across": 0, "lengthwise": 1}
"""Axis a plane is square to: height, along the car, outboard."""
WAY_WORDS: Mapping[Way, str] = {
    "level": "Level",
    "across": "Across the car",
    "lengthwise": "Along the car",
}
TOOLS = ("section", "asunder", "measure", "pen")
"""Ways to work on the picture that bring their row of controls; one at a time."""
TOOL_WORDS: Mapping[str, str] = {
    "section": "Section plane (key X)",
    "asunder": "Parts drawn apart (key E)",
    "measure": "Measure (key M)",
    "pen": "Draw on the picture (key N)",
}
PEN_WORDS: Mapping[str, str] = {"pen": "Pen", "arrow": "Arrow"}


@dataclass(frozen=True)
class CutPlane:
    """A plane that cuts what is drawn: the axis it is square to, and where it stands on it [m]."""

    way: Way = "level"
    place_m: float = 0.36

    @property
    def axis(self) -> int:
        """The axis the plane is square to."""
        return AXIS_OF[self.way]


@dataclass(frozen=True)
class Seeing:
    """What is done to the picture.

    Parameters
    ----------
    tool : which of `TOOLS` has its controls out, None for none of them
    cut : the plane, None for nothing cut
    asunder_ratio : how far the parts are drawn apart, 0 together .. 1
    start_shape : whether the outline of the start shape stands beside moved metal
    alone : the one layer that is shown, None for all
    """

    tool: str | None = None
    cut: CutPlane | None = None
    asunder_ratio: float = 0.0
    start_shape: bool = True
    alone: str | None = None

    def with_tool(self, tool: str | None) -> Seeing:
        """Return this with another tool's controls out; plane and parts drawn asunder exclude each other."""
        if tool is not None and tool not in TOOLS:
            raise ValueError(f"no tool named {tool!r}; there are {TOOLS}")
        cut = self.cut if tool != "asunder" else None
        if tool == "section" and cut is None:
            cut = CutPlane()
        if self.tool == "section" and tool is None:
            cut = None
        ratio = self.asunder_ratio if tool in ("asunder", "pen") else 0.0
        if tool == "asunder" and ratio == 0.0:
            ratio = 1.0
        return replace(self, tool=tool, cut=cut, asunder_ratio=ratio)

    def toggled(self, tool: str) -> Seeing:
        """Return this with a tool's controls out, or put away if they were."""
        return self.with_tool(None if self.tool == tool else tool)

    def with_cut(self, cut: CutPlane | None) -> Seeing:
        """Return this with another plane."""
        return replace(self, cut=cut, asunder_ratio=0.0 if cut is not None else self.asunder_ratio)

    def with_asunder(self, ratio: float) -> Seeing:
        """Return this with the parts drawn apart by a ratio, cut off at 0 and 1."""
        return replace(self, asunder_ratio=min(1.0, max(0.0, ratio)), cut=None)


class SeeingState:
    """Holds how the picture is taken apart, and tells when that changes."""

    def __init__(self) -> None:
        self._now = Seeing()
        self.changed: Signal[[]] = Signal()

    @property
    def now(self) -> Seeing:
        """What is done to the picture now."""
        return self._now

    def set(self, seeing: Seeing) -> None:
        """Do something else to it."""
        if seeing != self._now:
            self._now = seeing
            self.changed.emit()
