"""Cutting and stripping as moves of a plan: frozen values, SI, the unit in the name."""

from __future__ import annotations

from typing import Literal

import msgspec

Panel = Literal["front", "rear"]
From = Literal["front", "rear", "outer", "inner"]
Fitting = Literal["striker", "upper hinge", "lower hinge", "bar"]
Sheets = Literal["outer skin", "inner panel", "whole door"]
DoorEdge = Literal["latch_edge", "hinge_edge", "sill_edge", "belt"]


class PillarCut(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="pillar", tag_field="at"):
    """Across the pillar between the doors.

    height_m : above its foot, along it [m];  blades_from : the side the blades come from
    """

    height_m: float = 0.9
    blades_from: From = "front"


class DoorCut(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="door", tag_field="at"):
    """Into a door from one of its edges.

    panel : which door;  edge : which edge of it
    along_m : height above the sill (latch, hinge edge) or distance from the hinge edge (sill edge, belt) [m]
    sheets : what the blades take between them
    """

    panel: Panel = "front"
    edge: DoorEdge = "belt"
    along_m: float = 0.5
    sheets: Sheets = "outer skin"


class FittingCut(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="fitting", tag_field="at"):
    """Round a fitting that can be seen and reached: a striker, a hinge, the bar.

    panel : which door;  fitting : what is cut round
    along_m : of the bar, from the hinge edge [m]
    """

    panel: Panel = "front"
    fitting: Fitting = "striker"
    along_m: float = 0.5


CutPlace = PillarCut | DoorCut | FittingCut


class Cut(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="cut", tag_field="move"):
    """Close a pair of blades on the metal as it is now.

    place : where the blades close
    angle_rad : of the blades' plane about the way they come in, from square to the pillar; in a door, of that
        way about the edge's own square
    depth_m : how far in the cut goes from the near face, in as many bites as it takes [m]
    short_m : how far short of the far face it stops, on the pillar [m]; 0 is all the way
    opening_m : between the open blades: 0.140 to 0.210 m, from memory
    force_n : of the blades in their notch [N]: 400 to 1200 kN, from memory
    words : a line of one's own that goes with the move
    """

    place: CutPlace = PillarCut()
    angle_rad: float = 0.0
    depth_m: float = 0.3
    short_m: float = 0.0
    opening_m: float = 0.18
    force_n: float = 800.0e3
    words: str = ""


class Strip(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="strip", tag_field="move"):
    """Take trim, rubber seals and panes off: what they hid can be seen then.

    what : names of what goes ("lower pillar trim", "front pane" ...) or "trim", "seals", "glass" for all such
    words : a line of one's own that goes with the move
    """

    what: tuple[str, ...] = ("trim",)
    words: str = ""
