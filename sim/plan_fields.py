"""Every field of a plan file: what may stand there, what stands there if nothing is said, and what it means.

The words are those of the fields' own classes: a paragraph of names before a colon and words after it.
"""

from __future__ import annotations

import math
import re
import textwrap
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cache
from typing import Any, Literal, get_args, get_origin, get_type_hints

import msgspec

from sim.carcheck import RANGES
from sim.plan import Car, Plan
from sim.problems import PlanError
from sim.ranges import Range
from sim.whole_side import SIDE_RANGES, WholeSide

USUAL: Mapping[type, Mapping[str, Range]] = {Car: RANGES, WholeSide: SIDE_RANGES}
"""Least and most of each number, and what is usual, where that is known without the metal."""
LISTS = ("moves", "car.bead_gaps")
"""Tables that may stand more than once."""
WIDTH, INDENT = 100, 6 * " "
_ENTRY = re.compile(r"^([a-z_]+(?:, [a-z_]+)*) : (.*)$")


@dataclass(frozen=True)
class Field:
    """One field: its name in a file, what stands there if nothing is said, what may stand, and its words."""

    name: str
    default: str
    choices: tuple[str, ...]
    words: str


@dataclass(frozen=True)
class Table:
    """One kind of table of a plan file.

    headings : where it may stand;  told_by : the field that says which kind it is, if one does
    within : words it is found by: its own and those of the tables it stands in
    """

    headings: tuple[str, ...]
    told_by: str
    within: frozenset[str]
    words: str
    fields: tuple[Field, ...]


@cache
def tables() -> tuple[Table, ...]:
    """Return every kind of table that a plan file may hold, the plan's own fields first."""
    found: dict[type, Table] = {}
    for kind, table in _tables(Plan, "", frozenset()):
        known = found.get(kind, table)
        headings = tuple(dict.fromkeys((*known.headings, *table.headings)))
        found[kind] = replace(known, headings=headings, within=known.within | table.within)
    return tuple(found.values())


def told(only: str = "") -> str:
    """Return the fields as text.

    Parameters
    ----------
    only : a type of move or the name of a table, such as "press" or "car": it and what stands in it; empty
        is all

    Raises
    ------
    PlanError
        When no table is called so.
    """
    wanted = [table for table in tables() if not only or only in table.within]
    if not wanted:
        known = ", ".join(sorted({word for table in tables() for word in table.within}))
        raise PlanError(f"the word {only!r}", f"names no table of a plan file; use one of {known}")
    return "\n".join(line for table in wanted for line in _lines(table))


def _lines(table: Table) -> Iterator[str]:
    yield f"{', '.join(table.headings) or 'at the top of the file'}   # {table.words}"
    if table.told_by:
        yield f"  {table.told_by}"
    for field in table.fields:
        yield f"  {field.name} = {field.default}"
        lines = [f"one of {', '.join(field.choices)}"] if field.choices else []
        for text in (*lines, field.words):
            yield textwrap.fill(text, WIDTH, initial_indent=INDENT, subsequent_indent=INDENT)
    yield ""


def _tables(
    kind: type[msgspec.Struct], path: str, within: frozenset[str]
) -> Iterator[tuple[type[msgspec.Struct], Table]]:
    """Yield the table of a class and those of the classes its fields may hold."""
    config = kind.__struct_config__
    own = {str(config.tag)} if config.tag else {path.rpartition(".")[2]} if path else set()
    within = within | own
    headings = ((f"[[{path}]]" if path in LISTS else f"[{path}]"),) if path else ()
    hints, words = get_type_hints(kind), field_words(kind)
    fields, inside = [], []
    for field in msgspec.structs.fields(kind):
        where = f"{path}.{field.name}" if path else field.name
        below = [part for part in _parts(hints[field.name]) if _is_struct(part)]
        inside += [(part, where) for part in below]
        make = _holder if below else _field
        fields.append(make(kind, field, hints[field.name], words.get(field.name, "")))
    told_by = f'{config.tag_field} = "{config.tag}"' if config.tag else ""
    yield kind, Table(headings, told_by, within, _first_line(kind), tuple(fields))
    for part, where in inside:
        if where != "wreck":  # crushes and letting off: as under the moves
            yield from _tables(part, where, within)


def _first_line(kind: type) -> str:
    return (kind.__doc__ or "").partition("\n")[0].rstrip(".")


def _holder(kind: type, field: Any, hint: Any, words: str) -> Field:
    """Return a field that holds a table, or a list of such."""
    del kind
    tags = [part.__struct_config__.tag for part in _parts(hint) if _is_struct(part)]
    default = "left out" if field.default in (None, ()) else "a table"
    return Field(field.name, default, tuple(f'"{tag}"' for tag in tags if tag), words)


def _parts(hint: Any) -> Iterator[Any]:
    """Yield the plain types of a hint: those of a union, of a tuple's items."""
    if get_args(hint) and get_origin(hint) is not Literal:
        for part in get_args(hint):
            yield from _parts(part)
    else:
        yield hint


def _is_struct(hint: Any) -> bool:
    return isinstance(hint, type) and issubclass(hint, msgspec.Struct)


def _field(kind: type, field: Any, hint: Any, words: str) -> Field:
    choices = tuple(f'"{word}"' for word in get_args(hint)) if get_origin(hint) is Literal else ()
    name, value = field.name, field.default
    usual = USUAL.get(kind, {}).get(name)
    if name.endswith("_rad"):
        name, value = _in_degrees(name), round(math.degrees(value), 2)
    if usual is not None:
        least, most = (round(math.degrees(x), 1) if field.name != name else x for x in usual[:2])
        words += f"; {least:g} to {most:g} ({usual[2]})"
    return Field(name, _toml(value), choices, words)


def _in_degrees(text: str) -> str:
    return re.sub(r"_rad\b", "_deg", text)


def _toml(value: Any) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, str):
        return f'"{value}"'
    if isinstance(value, tuple):
        return f"[{', '.join(_toml(item) for item in value)}]"
    return f"{value:g}" if isinstance(value, float) else str(value)


@cache
def field_words(kind: type) -> Mapping[str, str]:
    """Return what the docstring of a class says of each of its fields, by name."""
    lines: list[str] = []
    for line in (kind.__doc__ or "").splitlines()[1:]:
        text = line.strip()
        if line[:8].strip() or not text:
            lines.append(text)
        elif lines:  # a line that goes on with the one before stands further in
            lines[-1] += f" {text}"
    found = {}
    for line in lines:
        for entry in line.split(";  "):
            match = _ENTRY.match(entry)
            for name in match[1].split(", ") if match else ():
                found[name] = _in_degrees(match[2]) if match else ""
    return found
