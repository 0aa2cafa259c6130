"""What is not known well about pillars, rams, cuts and entry bars: a row a number, its range, its source."""

from __future__ import annotations

from typing import Any

from sim.cut_plan import DoorCut, PillarCut
from sim.plan import BaseSpot, Cut, CutSpread, FacePoint, Flex, PillarSpot, Plan, Press, Squeeze
from sim.unknowns import SEAT_M, Row, about, always, even, peaked, peaked_ratio, times, within

PLACE_M = 0.02
"""How far from where it was meant to a ram's end or a bar's tip comes to stand (assumed)."""
ON_THE_WALL_M = 0.04
"""Further off the middle a head would hang over the edge of a pillar's inner wall, some 90 mm wide: seen."""
ALL_THE_WAY_M = 0.3
"""Depth from which on a cut goes through whatever it meets: its end is then no number of the plan's."""


def _side(plan: Plan, _move: Any) -> bool:
    return plan.car.extent == "side"


def _soft_foot(plan: Plan, move: Any) -> bool:
    return _side(plan, move) and plan.car.whole_side.soft_foot_m > 0.0


def _rail_gives(plan: Plan, _move: Any) -> bool:
    return plan.car.rail_wall_m > 0.0


def _on_base(_plan: Plan, move: Any) -> bool:
    return isinstance(move.foot, BaseSpot)


def _head_on_pillar(_plan: Plan, move: Any) -> bool:
    return isinstance(move.head, PillarSpot)


def _head_on_door(_plan: Plan, move: Any) -> bool:
    return isinstance(move.head, FacePoint)


def _across_pillar(_plan: Plan, move: Any) -> bool:
    return isinstance(move.place, PillarCut)


def _into_door(_plan: Plan, move: Any) -> bool:
    return isinstance(move.place, DoorCut)


def _short(plan: Plan, move: Any) -> bool:
    return _across_pillar(plan, move) and move.short_m > 0.0


def _part_way(_plan: Plan, move: Any) -> bool:
    return float(move.depth_m) < ALL_THE_WAY_M


def _across_door(_plan: Plan, move: Any) -> bool:
    return move.on is None


_BY_EYE = "assumed: blades are set and stopped by eye, to within 10 mm"
_SET = "assumed: a trained hand sets the ends of a ram to within 20 mm"
_TIPS = "assumed: a trained hand puts a tip to within 5 mm"
_GRADE = "grades are named by their least yield stress and come up to a quarter above it, from memory"

ROWS = (
    Row(
        "car.whole_side.spot_sheet_m",
        "the strength of the pillar's spots, by the sheet under them",
        "m",
        times(0.85, 1.25),
        peaked,
        "assumed: spots of one setting hold from three quarters to half as much again, as the least and the "
        "typical rows of the spot-weld table differ (AWS D8.1M, from memory)",
        _side,
    ),
    Row(
        "car.whole_side.pillar_pressed_m",
        "the thickness of the pillar's pressed part",
        "m",
        times(0.90, 1.05),
        peaked,
        "sheet tolerance about 0.07 mm on 1.5 mm (EN 10131, from memory); thinning in the press assumed",
        _side,
    ),
    Row(
        "car.whole_side.pillar_closing_m",
        "the thickness of the pillar's inner wall",
        "m",
        times(0.93, 1.05),
        peaked,
        "as its pressed part, drawn less (assumed)",
        _side,
    ),
    Row(
        "car.whole_side.pillar_pressed_yield_pa",
        "the yield stress of the pillar's pressed part",
        "Pa",
        times(0.95, 1.25),
        peaked,
        _GRADE,
        _side,
    ),
    Row(
        "car.whole_side.soft_foot_yield_pa",
        "the yield stress of the pillar's softer foot",
        "Pa",
        times(0.95, 1.25),
        peaked,
        _GRADE,
        _soft_foot,
    ),
    Row(
        "car.rail_wall_m",
        "the roof rail's thickness",
        "m",
        times(0.90, 1.05),
        peaked,
        "as the pillar's pressed part (EN 10131, from memory; thinning assumed)",
        _rail_gives,
    ),
    Row(
        "car.rail_yield_pa",
        "the roof rail's yield stress",
        "Pa",
        times(0.95, 1.25),
        peaked,
        _GRADE,
        _rail_gives,
    ),
    Row(
        "grip_ratio",
        "the friction of the ram's head and foot",
        "",
        within(0.7, 1.4),
        peaked_ratio,
        "friction of heads on dirty painted metal is not known; twice between the extremes, assumed",
        always,
        Press,
    ),
    Row(
        "head.height_m",
        "how high the ram's head stands",
        "m",
        about(PLACE_M, 0.0),
        even,
        _SET,
        always,
        Press,
    ),
    Row(
        "head.off_m",
        "how far off the pillar's middle the ram's head stands",
        "m",
        about(PLACE_M, -ON_THE_WALL_M, ON_THE_WALL_M),
        even,
        f"{_SET}, and never over the edge of the wall",
        _head_on_pillar,
        Press,
    ),
    Row(
        "head.along_m",
        "how far from the hinge edge the ram's head stands",
        "m",
        about(PLACE_M, 0.0),
        even,
        _SET,
        _head_on_door,
        Press,
    ),
    Row(
        "foot.rearward_m",
        "how far rearward the ram's foot stands",
        "m",
        about(PLACE_M),
        even,
        _SET,
        _on_base,
        Press,
    ),
    Row(
        "foot.wall_m",
        "the wall under the ram's foot",
        "m",
        within(0.001, 0.002),
        even,
        "rocker walls of 1.0 to 2.0 mm, from memory",
        _on_base,
        Press,
    ),
    Row(
        "place.height_m",
        "how high the pillar is cut",
        "m",
        about(0.01, 0.0),
        even,
        _BY_EYE,
        _across_pillar,
        Cut,
    ),
    Row("short_m", "how far the cut stops short", "m", about(0.01, 0.002), even, _BY_EYE, _short, Cut),
    Row("depth_m", "how deep the cut goes", "m", about(0.01, 0.005), even, _BY_EYE, _part_way, Cut),
    Row("place.along_m", "where the door is cut", "m", about(0.01, 0.0), even, _BY_EYE, _into_door, Cut),
    Row(
        "on.along_m",
        "the place of the entry bar's tip",
        "m",
        about(PLACE_M, 0.0),
        even,
        "assumed: a trained hand puts the bar to within 20 mm",
        always,
        Flex,
    ),
    Row(
        "bar.hand_n",
        "the pull of the hand on the entry bar",
        "N",
        within(400.0, 700.0),
        even,
        "a hand on a bar pulls with 400 to 700 N: an estimate of the trade, no source",
        always,
        Flex,
    ),
    Row(
        "along_m",
        "how far from the hinge edge the door is squeezed",
        "m",
        about(SEAT_M, 0.0),
        even,
        _TIPS,
        _across_door,
        Squeeze,
    ),
    Row(
        "height_m",
        "how high the door is squeezed",
        "m",
        about(SEAT_M, 0.0),
        even,
        _TIPS,
        _across_door,
        Squeeze,
    ),
    Row(
        "depth_m",
        "how far the tips go in between the raw ends",
        "m",
        about(SEAT_M, 0.001),
        even,
        _TIPS,
        always,
        CutSpread,
    ),
    Row(
        "off_m",
        "how far off the middle the tips go in between the raw ends",
        "m",
        about(0.01),
        even,
        "assumed: between raw ends, which are seen from one side, a tip is put to within 10 mm",
        always,
        CutSpread,
    ),
    Row(
        "tool.friction_ratio",
        "the friction of the tips on a raw edge",
        "",
        within(0.3, 0.6),
        even,
        "as on painted steel, serrated tips 0.3 to 0.6, from memory; a raw edge bites more (assumed not to)",
        always,
        CutSpread,
    ),
)
