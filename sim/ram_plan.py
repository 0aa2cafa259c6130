"""A ram and an entry bar by their numbers, and the places a ram stands on, as plans name them."""

from __future__ import annotations

from typing import Literal

import msgspec


class PillarSpot(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="pillar", tag_field="at"):
    """A place on the inner wall of the pillar between the doors.

    height_m : above the pillar's foot [m];  off_m : rearward of the wall's middle [m]
    """

    height_m: float = 0.45
    off_m: float = 0.0


class BaseSpot(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="base", tag_field="at"):
    """A base for a ram's foot on the rest of the car, which stands still but for the wall that dents.

    base : "far_rocker", its inner wall in the corner of the floor, "far_pillar", its inner wall some way up,
        or "tunnel_edge", its upper edge on the near side
    rearward_m : of straight across the car from the head [m];  raised_m : above its usual height [m]
    inboard_m : from the doors' outer face [m]; 0 is its usual place
    wall_m : thickness of its sheet [m];  rib_m : of a rib behind it [m], 0 is none
    """

    base: Literal["far_rocker", "far_pillar", "tunnel_edge"] = "far_rocker"
    rearward_m: float = 0.0
    raised_m: float = 0.0
    inboard_m: float = 0.0
    wall_m: float = 0.0015
    rib_m: float = 0.0


class Ram(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A ram by its numbers.

    name : its name;  head : "flat" (smooth), "waffle" (grooved) or "pointed" (four points that bite)
    head_m, plate_m : diameter of the head, side of the foot's plate [m]
    hinge_m : how far behind its face the head turns [m]; assumed
    closed_m : from end to end when shut;  piece_m : length of an extension piece put on [m]
    stage_m, stage_n : stroke [m] and force [N] of each stage, in the order they come out
    """

    name: str = "stepped ram"
    head: Literal["flat", "waffle", "pointed"] = "waffle"
    head_m: float = 0.06
    plate_m: float = 0.06
    hinge_m: float = 0.015
    closed_m: float = 0.5
    piece_m: float = 0.5
    stage_m: tuple[float, ...] = (0.35, 0.30, 0.20)
    stage_n: tuple[float, ...] = (200e3, 120e3, 60e3)


class EntryBar(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A forcible-entry bar by its numbers.

    length_m : from end to end;  tip_m : from its heel to the tip behind the metal [m]
    tip_width_m : of the tip along the edge [m];  hand_n : the most a hand pulls with [N]
    """

    length_m: float = 0.8
    tip_m: float = 0.05
    tip_width_m: float = 0.04
    hand_n: float = 500.0
