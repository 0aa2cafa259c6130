"""Plan files: TOML with a schema version, units in the names, comments kept.

Angles are given in degrees in files (`tilt_deg`) and lengths in metres, forces in newtons, as named.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, get_args

import msgspec
import msgspec.inspect
import tomlkit
from tomlkit.exceptions import ParseError
from tomlkit.items import AoT

from sim.builds import build_defaults
from sim.carcheck import check_car
from sim.event_kinds import KINDS
from sim.plan import (
    SCHEMA_VERSION,
    Car,
    Move,
    PanelName,
    Plan,
    Surface,
)
from sim.planhash import plan_sha256 as plan_sha256
from sim.problems import PlanError
from sim.textfiles import read_text, write_whole
from sim.whole_side import WholeSide
from sim.wreckcheck import check_wreck

# unit endings a person may try; the plan's names carry SI units only
_OTHER_UNITS = {"mm": "m", "cm": "m", "in": "m", "kn": "n", "lbf": "n", "deg": "rad"}
CAR_TYPES = {
    f"{path}{field.name}": field.type
    for path, struct in (("", Car), ("whole_side.", WholeSide))
    for field in getattr(msgspec.inspect.type_info(struct), "fields", ())
}
MOVE_WORDS = {
    "surface": get_args(Surface),
    "panel": get_args(PanelName),
    "tool_body": ("comes", "stands"),
    "base": ("far_rocker", "far_pillar", "tunnel_edge"),
    "head": ("flat", "waffle", "pointed"),
    "tips_from": ("front", "rear", "outer"),
}
MOVE_KINDS = {kind.__struct_config__.tag: kind for kind in get_args(Move)}
_IN_TOML = {
    "array": "a list",
    "object": "a table",
    "float": "a number",
    "int": "a whole number",
    "str": "text in quotes",
    "bool": "true or false",
    "datetime": "a date",
    "date": "a date",
    "time": "a time",
}
"""Types of values as a person who writes a plan calls them, by the reader's own words."""
_LISTS = ("moves", "wreck", "bead_gaps")
_PATH = re.compile(r" - at `\$\.?(.*)`$")

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


def _choices(path: str) -> tuple[Any, ...]:
    """Return the words a field of the car or of a move can have, () when it is free."""
    if path.rpartition(".")[2] in MOVE_WORDS:
        return MOVE_WORDS[path.rpartition(".")[2]]
    kind = CAR_TYPES.get(path.removeprefix("car."))
    return tuple(sorted(kind.values)) if isinstance(kind, msgspec.inspect.LiteralType) else ()


def _explain(error: msgspec.ValidationError) -> PlanError:
    """Turn msgspec's message into a sentence with the field's path and a remedy."""
    text = str(error)
    match = _PATH.search(text)
    path = match.group(1) if match else ""
    text = _PATH.sub("", text)
    unknown = re.search(r"unknown field `(.+?)`", text)
    if unknown:
        name = unknown.group(1)
        full = f"{path}.{name}" if path else name
        stem, _, unit = name.rpartition("_")
        if unit.lower() in _OTHER_UNITS:
            return PlanError(
                full, f"has the unit '{unit}'; give '{stem}_{_OTHER_UNITS[unit.lower()]}' in SI units instead"
            )
        return PlanError(full, "is not a field of a plan; check its spelling, or remove it")
    missing = re.search(r"missing required field `(.+?)`", text)
    if missing:
        return PlanError(f"{path}.{missing.group(1)}" if path else missing.group(1), "is missing; add it")
    if path.endswith(".move") and "nvalid value" in text:
        wrong = text.rpartition("value ")[2]
        return PlanError(path, f"is {wrong}; use one of: " + ", ".join(repr(word) for word in MOVE_KINDS))
    wanted = re.search(r"xpected `(\w+)[^`]*`, got `(\w+)`", text)
    if wanted and set(wanted.groups()) <= set(_IN_TOML):
        want, got = (_IN_TOML[word] for word in wanted.groups())
        return PlanError(path or "plan", f"is {got}; give {want} instead")
    choices = _choices(path)
    if choices and "nvalid enum value" in text:
        wrong = text.rpartition("value ")[2]
        return PlanError(path, f"is {wrong}; use one of: " + ", ".join(repr(word) for word in choices))
    return PlanError(path or "plan", f"cannot be read: {text[0].lower()}{text[1:]}")


def loads_plan(text: str) -> Plan:
    """Return the plan in a TOML text.

    Raises
    ------
    PlanError
        Syntax, missing or newer version, unknown field, wrong unit or type, value out of range.
    """
    try:
        raw = tomlkit.parse(text).unwrap()
    except ParseError as error:
        raise PlanError("plan", f"is not valid TOML: {error}; mend that line") from error
    check_version(raw)
    _degrees_to_radians(raw)
    _start_from_build(raw)
    try:
        plan = msgspec.convert(raw, Plan, strict=False) if _numbers_ok(raw) else Plan()
    except msgspec.ValidationError as error:
        raise _explain(error) from error
    return check_plan(plan)


def _numbers_ok(raw: Any, path: str = "") -> bool:
    """Return True when no number is NaN or infinite and no number is hidden in quotes.

    Raises
    ------
    PlanError
        Naming the field.
    """
    if isinstance(raw, dict):
        for key, value in raw.items():
            _numbers_ok(value, f"{path}.{key}" if path else str(key))
    elif isinstance(raw, list):
        for index, value in enumerate(raw):
            _numbers_ok(value, f"{path}[{index}]")
    elif isinstance(raw, float) and not math.isfinite(raw):
        raise PlanError(path, f"is {raw}; use a finite number")
    elif isinstance(raw, str) and path.rpartition("_")[2] in ("m", "n", "j", "pa", "rad", "deg", "ratio"):
        raise PlanError(path, f"is the text {raw!r}; give a plain number without quotes or unit")
    return True


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
