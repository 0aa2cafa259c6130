"""The hash of what a plan says: it stays when a later version of the program knows more fields."""

from __future__ import annotations

import hashlib
from pathlib import PurePath
from typing import Any

import msgspec

from sim.plan import BeltPoint, Car, EdgePoint, FacePoint, Plan, Squeeze
from sim.whole_side import WholeSide

LATER: dict[type, tuple[str, ...]] = {
    Plan: ("wreck", "start"),
    Car: (
        "extent",
        "whole_side",
        "fitting_give_m",
        "hinge_depth_m",
        "rail_wall_m",
        "rail_yield_pa",
        "rail_held",
    ),
    EdgePoint: ("panel",),
    BeltPoint: ("panel",),
    FacePoint: ("panel",),
    Squeeze: ("on", "panel"),
    WholeSide: (
        "pillar_bow_m",
        "occupant_gap_m",
        "occupant_inboard_rad",
        "foot_flare_m",
        "foot_lap_m",
        "foot_rows",
        "foot_stiffener_m",
        "foot_stiffener_reach_m",
        "rocker_wall_m",
        "rocker_yield_pa",
        "rocker_bulkheads",
    ),
}
"""Fields that came after the first plans: at their default they do not enter the hash, so it stays."""


def _hashed(value: Any) -> Any:
    """Return a value as plain values in the order of the fields, without later fields at their default."""
    if isinstance(value, tuple):
        return [_hashed(item) for item in value]
    if not isinstance(value, msgspec.Struct):
        return value
    config, later = value.__struct_config__, LATER.get(type(value), ())
    out: dict[str, Any] = {} if config.tag is None else {str(config.tag_field): config.tag}
    for field in msgspec.structs.fields(value):
        item = getattr(value, field.name)
        if field.name not in later or item != field.default:
            out[field.encode_name] = _hashed(item)
    if isinstance(value, Plan) and value.start:  # wherever the file lies
        out["start"] = PurePath(value.start).name
    return out


def plan_sha256(plan: Plan) -> str:
    """Return the hash of what a plan says, comments and layout apart."""
    return hashlib.sha256(msgspec.json.encode(_hashed(plan))).hexdigest()
