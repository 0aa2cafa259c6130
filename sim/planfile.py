"""Plan files: TOML with a schema version, units in the names, comments kept.

Angles are given in degrees in files (`tilt_deg`) and lengths in metres, forces in newtons, as named.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, get_args

import msgspec
import tomlkit
from tomlkit.items import AoT

from sim.builds import build_defaults
from sim.carcheck import check_car
from sim.event_kinds import KINDS
from sim.plan import (
    SCHEMA_VERSION,
    Car,
    Move,
    Plan,
)
from sim.planhash import plan_sha256 as plan_sha256
from sim.problems import PlanError
from sim.textfiles import read_text, write_whole
from sim.typed import converted, parsed
from sim.wreckcheck import check_wreck

MOVE_KINDS = {kind.__struct_config__.tag: kind for kind in get_args(Move)}
_LISTS = ("moves", "wreck", "bead_gaps")

MOVE_LISTS = ("moves", "wreck")
"""Fields of a plan that hold moves."""
ANGLES = ("tilt", "lean", "skew", "angle", "occupant_lean", "occupant_inboard")
"""Fields that are degrees in a file and radians in a plan."""


def check_plan(plan: Plan) -> Plan:
    """Return the plan when its numbers make sense.

    Raises
    ------
    PlanError
        Naming the field, the value and the remedy.
    """
    check_car(plan.car)
    check_wreck(plan)
    for name in MOVE_LISTS:
        for index, move in enumerate(getattr(plan, name)):
            for kind in getattr(move, "stop_at", ()):
                if kind not in KINDS:
                    known = ", ".join(repr(word) for word in KINDS)
                    field = f"{name}[{index}].stop_at"
                    raise PlanError(field, f"names {kind!r}, which never happens; use {known}")
    return plan


def check_version(raw: Mapping[str, Any], latest: int = SCHEMA_VERSION) -> None:
    """Raise PlanError when a file names no version of its form, or one that is not known yet."""
    version = raw.get("schema_version")
    if version is None:
        raise PlanError(
            "schema_version", f"is missing; put 'schema_version = {latest}' at the top of the file"
        )
    if not isinstance(version, int) or isinstance(version, bool) or version < 1:
        raise PlanError("schema_version", f"is {version!r}; use the whole number {latest}")
    if version > latest:
        raise PlanError(
            "schema_version",
            f"is {version}, from a newer Hemline; this one reads up to {latest}: update the program",
        )


def _degrees_to_radians(raw: dict[str, Any]) -> None:
    for path, table in _with_angles(raw):
        for name in ANGLES:
            if f"{name}_deg" in table:
                value = table.pop(f"{name}_deg")
                if isinstance(value, bool) or not isinstance(value, int | float):
                    raise PlanError(f"{path}.{name}_deg", f"is {value!r}; use a number of degrees")
                table[f"{name}_rad"] = math.radians(value)


def _with_angles(raw: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    """Yield the tables of a plan that may hold angles, each with its path."""
    for name in MOVE_LISTS:
        moves = raw.get(name, [])
        for move in moves if isinstance(moves, list | tuple) else ():
            if isinstance(move, dict):
                yield f"{name}[]", move
    car = raw.get("car")
    if isinstance(car, dict) and isinstance(car.get("whole_side"), dict):
        yield "car.whole_side", car["whole_side"]


def _start_from_build(raw: dict[str, Any]) -> None:
    """Lay what the file says of the car over the ready build it names."""
    car = raw.get("car")
    if isinstance(car, dict) and isinstance(car.get("build"), str) and car["build"]:
        raw["car"] = {**build_defaults(car["build"]), **car}


def loads_plan(text: str) -> Plan:
    """Return the plan in a TOML text.

    Raises
    ------
    PlanError
        Syntax, missing or newer version, unknown field, wrong unit or type, value out of range.
    """
    raw = parsed(text, "plan")
    check_version(raw)
    _degrees_to_radians(raw)
    _start_from_build(raw)
    _check_numbers(raw)
    return check_plan(converted(raw, Plan, "plan", strict=False))


def _check_numbers(raw: Any, path: str = "") -> None:
    """Raise PlanError, naming the field, where a number is NaN or infinite, or hidden in quotes."""
    if isinstance(raw, dict):
        for key, value in raw.items():
            _check_numbers(value, f"{path}.{key}" if path else str(key))
    elif isinstance(raw, list):
        for index, value in enumerate(raw):
            _check_numbers(value, f"{path}[{index}]")
    elif isinstance(raw, float) and not math.isfinite(raw):
        raise PlanError(path, f"is {raw}; use a finite number")
    elif isinstance(raw, str) and path.rpartition("_")[2] in ("m", "n", "j", "pa", "rad", "deg", "ratio"):
        raise PlanError(path, f"is the text {raw!r}; give a plain number without quotes or unit")


def load_plan(path: Path | str) -> Plan:
    """Return the plan in a file.

    Raises
    ------
    PlanError
        When the file cannot be read, or as `loads_plan`.
    """
    return loads_plan(read_text(Path(path), "plan"))


def plan_to_raw(plan: Plan) -> dict[str, Any]:
    """Return the plan as plain values, with angles in degrees."""
    raw: dict[str, Any] = msgspec.to_builtins(plan)
    for _, table in _with_angles(raw):
        for name in ANGLES:
            if f"{name}_rad" in table:
                table[f"{name}_deg"] = round(math.degrees(table.pop(f"{name}_rad")), 9)
        for name in ("against", "on"):
            if table.get(name, 0) is None:
                del table[name]
    return raw


def _update(table: Any, raw: dict[str, Any]) -> None:
    """Write values into a TOML table in place, so comments, order and layout stay."""
    for key in [k for k in table if k not in raw]:
        del table[key]
    for key, value in raw.items():
        old = table.get(key)
        if isinstance(value, dict) and hasattr(old, "keys"):
            _update(old, value)
        elif key in _LISTS and old is not None and value:
            _update_list(old, value)
        elif old is None or _plain(old) != value:
            if hasattr(old, "trivia"):
                item = tomlkit.item(value)
                item.trivia.comment_ws, item.trivia.comment = old.trivia.comment_ws, old.trivia.comment
                table[key] = item
            else:
                table[key] = value


def _update_list(old: Any, values: list[dict[str, Any]]) -> None:
    for item, new in zip(old, values, strict=False):
        _update(item, new)
    while len(old) > len(values):
        del old[len(old) - 1]
    for new in values[len(old) :]:
        old.append(tomlkit.item(new) if isinstance(old, AoT) else new)


def _plain(item: Any) -> Any:
    return item.unwrap() if hasattr(item, "unwrap") else item


def dumps_plan(plan: Plan, previous_text: str | None = None) -> str:
    """Return the plan as TOML; with the text it was read from, its comments and order are kept.

    Fields that have their default value and did not stand in the text are left out.
    """
    shown: dict[str, Any] = {}
    document = tomlkit.document()
    if previous_text is not None:
        document = tomlkit.parse(previous_text)
        shown = document.unwrap()
    raw = _pruned(plan_to_raw(plan), shown)
    if previous_text is None:
        for name in MOVE_LISTS:
            written = raw.get(name, ())
            if name in raw:
                raw[name] = tomlkit.aot()
            for move in written:
                raw[name].append(tomlkit.item(move))
        for key, value in raw.items():
            document[key] = value
    else:
        _update(document, raw)
    return tomlkit.dumps(document)


_ALWAYS = (
    "schema_version",
    "moves",
    "move",
    "at",
    "seam",
    "edge",
    "along_m",
    "depth_m",
    "height_m",
    "tilt_deg",
    "opening_m",
    "shape",
    "size_m",
    "skew_deg",
    "travel_m",
)


def _default_of(value: dict[str, Any]) -> dict[str, Any]:
    """Return the defaults of a move or place by its tag, as plain values."""
    if "move" in value:
        return plan_to_raw(Plan(moves=(MOVE_KINDS[value["move"]](),)))["moves"][0]  # type: ignore[no-any-return]
    return {}


def _pruned(
    raw: dict[str, Any],
    shown: Any,
    default: dict[str, Any] | None = None,
    always: tuple[str, ...] = _ALWAYS,
) -> dict[str, Any]:
    """Return what differs from the defaults, names the thing, or stands in the file already."""
    default = plan_to_raw(Plan()) if default is None else default
    shown = shown if isinstance(shown, dict) else {}
    out: dict[str, Any] = {}
    for key, value in raw.items():
        if key == "panel" and value == "front" and key not in shown:
            continue
        if key in MOVE_LISTS:
            written = shown.get(key, [])
            if not value and key != "moves" and key not in shown:
                continue
            out[key] = [
                _pruned(move, written[i] if i < len(written) else {}, _default_of(move))
                for i, move in enumerate(value)
            ]
        elif isinstance(value, dict):
            base = default.get(key)
            if key == "car" and value["build"]:
                ready = msgspec.convert(build_defaults(value["build"]), Car)
                base = {**plan_to_raw(Plan(car=ready))["car"], "build": ""}
            same = isinstance(base, dict) and base.get("at") == value.get("at")
            kept = () if key == "whole_side" else always
            inner = _pruned(value, shown.get(key), base if same and base is not None else {}, kept)
            if inner or key in shown:
                out[key] = inner
        elif (
            key in shown
            or (key in always and not isinstance(value, list | tuple) and not raw.get("build"))
            or value != default.get(key)
        ):
            out[key] = value
    return out


def save_plan(plan: Plan, path: Path | str, previous_text: str | None = None) -> None:
    """Write the plan beside its place and move it there, so nothing half-written is left.

    Raises
    ------
    PlanError
        When the folder cannot be written or the disk is full; the old file stays as it was.
    """
    try:
        write_whole(Path(path), dumps_plan(plan, previous_text))
    except OSError as error:
        raise PlanError(
            str(path),
            f"cannot be written ({error.strerror or error}); choose another folder or free some space",
        ) from error
