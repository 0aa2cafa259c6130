"""Values of a file a person writes, as the program's types; what does not fit is told in their words."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any, TypeVar

import msgspec
import tomlkit
from msgspec import inspect
from tomlkit.exceptions import ParseError

from sim.problems import PlanError

T = TypeVar("T")

# unit endings a person may try; files carry SI units only
OTHER_UNITS = {"mm": "m", "cm": "m", "in": "m", "kn": "n", "lbf": "n", "deg": "rad"}
_IN_TOML = {
    "array": "a list",
    "list": "a list",
    "object": "a table",
    "dict": "a table",
    "float": "a number",
    "int": "a whole number",
    "str": "text in quotes",
    "bool": "true or false",
    "datetime": "a date",
    "date": "a date",
    "time": "a time",
}
"""Types of values as a person who writes a file calls them, by the reader's own words."""
_PATH = re.compile(r" - at `\$\.?(.*)`$")
_STEP = re.compile(r"\[(\d+|\.\.\.)\]|([^.\[\]]+)")


def parsed(text: str, what: str) -> dict[str, Any]:
    """Return the plain values of a TOML text; PlanError naming ``what`` it should be where it is none."""
    try:
        raw: dict[str, Any] = tomlkit.parse(text).unwrap()
    except ParseError as error:
        raise PlanError(what, f"is not valid TOML: {error}; mend that line") from error
    return raw


def converted(raw: Mapping[str, Any], kind: type[T], what: str, *, strict: bool = True) -> T:
    """Return plain values as a struct.

    Parameters
    ----------
    what : what the file is, in a word, as "plan"
    strict : False also takes a value that is written as text

    Raises
    ------
    PlanError
        An unknown or missing field, another unit or type, a word that is none of a field's choices.
    """
    try:
        return msgspec.convert(raw, kind, strict=strict)
    except msgspec.ValidationError as error:
        raise explained(error, raw, kind, what) from error


def explained(error: msgspec.ValidationError, raw: Any, kind: Any, what: str) -> PlanError:
    """Return msgspec's message as a sentence with the field's path and a remedy."""
    text = str(error)
    found = _PATH.search(text)
    path, types = _followed(found[1] if found else "", raw, inspect.type_info(kind))
    text = _PATH.sub("", text)
    at = f"{path}." if path else ""
    unknown = re.search(r"unknown field `(.+?)`", text)
    if unknown:
        return _unknown(at, unknown[1], what)
    missing = re.search(r"missing required field `(.+?)`", text)
    if missing:
        return PlanError(f"{at}{missing[1]}", "is missing; add it")
    wanted = re.search(r"xpected `([^`]+)`, got `(\w+)`", text)
    if wanted:
        want, got = wanted[1].split(" | ")[0], wanted[2]
        if want in _IN_TOML and got in _IN_TOML:
            return PlanError(path or what, f"is {_IN_TOML[got]}; give {_IN_TOML[want]} instead")
    words = _words(types, path.rpartition(".")[2])
    if words and ("nvalid enum value" in text or "nvalid value" in text):
        wrong = text.rpartition("value ")[2]
        return PlanError(path, f"is {wrong}; use one of: " + ", ".join(repr(word) for word in words))
    return PlanError(path or what, f"cannot be read: {text[0].lower()}{text[1:]}; mend that value")


def _unknown(at: str, name: str, what: str) -> PlanError:
    stem, _, unit = name.rpartition("_")
    if unit.lower() in OTHER_UNITS:
        right = f"{stem}_{OTHER_UNITS[unit.lower()]}"
        return PlanError(f"{at}{name}", f"has the unit '{unit}'; give '{right}' in SI units instead")
    return PlanError(f"{at}{name}", f"is not a field of a {what}; check its spelling, or remove it")


def _followed(path: str, raw: Any, kind: inspect.Type) -> tuple[str, list[inspect.Type]]:
    """Return a path with the keys msgspec leaves out, and the types along it, outermost first."""
    said, types = "", [kind]
    for index, name in _STEP.findall(path):
        kind = _member(kind, raw)
        if isinstance(kind, inspect.DictType) and index == "...":
            name = _unfit(raw, kind.value_type)
        if name:
            said += f".{name}" if said else name
            raw = raw.get(name) if isinstance(raw, Mapping) else None
        else:
            said += f"[{index}]"
            raw = raw[int(index)] if isinstance(raw, list | tuple) and index.isdigit() else None
        kind = _inside(kind, name)
        types.append(kind)
    return said, types


def _member(kind: inspect.Type, raw: Any) -> inspect.Type:
    """Return the one of some types that a value is meant for, by its tag; the type itself where it is one."""
    if not isinstance(kind, inspect.UnionType):
        return kind
    types = [one for one in kind.types if not isinstance(one, inspect.NoneType)]
    for one in types if isinstance(raw, Mapping) else ():
        if isinstance(one, inspect.StructType) and one.tag_field and raw.get(one.tag_field) == one.tag:
            return one
    return types[0] if len(types) == 1 else kind


def _inside(kind: inspect.Type, name: str) -> inspect.Type:
    """Return the type of what a type holds: of the field of a name, or of any item."""
    if isinstance(kind, inspect.StructType):
        return next((field.type for field in kind.fields if field.name == name), inspect.AnyType())
    if isinstance(kind, inspect.DictType):
        return kind.value_type
    if isinstance(kind, inspect.VarTupleType | inspect.ListType):
        return kind.item_type
    return inspect.AnyType()


def _unfit(raw: Any, kind: inspect.Type) -> str:
    """Return the first key of a table whose value is not of a type; "" where all are."""
    if isinstance(raw, Mapping):
        for key, value in raw.items():
            expected = {inspect.StrType: str, inspect.VarTupleType: list}.get(type(kind), object)
            if not isinstance(value, expected):
                return str(key)
    return ""


def _words(types: list[inspect.Type], name: str) -> tuple[Any, ...]:
    """Return the words the field at the end of a path can have, () when it is free."""
    for one in _each(types[-1]):
        if isinstance(one, inspect.LiteralType):
            return tuple(sorted(one.values, key=str))
    for holder in reversed(types[:-1]):
        tags = tuple(
            one.tag
            for one in _each(holder)
            if isinstance(one, inspect.StructType) and one.tag_field == name and one.tag is not None
        )
        if tags:
            return tags
    return ()


def _each(kind: inspect.Type) -> Iterator[inspect.Type]:
    """Yield the types a value may be of."""
    yield from kind.types if isinstance(kind, inspect.UnionType) else (kind,)
