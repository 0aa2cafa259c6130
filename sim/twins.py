"""Twins: two plans or two cars that differ in one thing, and what exactly differs between any two.

A contrast teaches when one thing differs and is seen side by side; so the list names every field that
differs, with both values, and tells what the metal feels from what only stands in words.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, TypeVar

import msgspec

from sim.builds import BUILDS
from sim.carcheck import check_car
from sim.plan import Car, Plan
from sim.problems import PlanError
from sim.typed import converted

Root = TypeVar("Root", bound=Car | Plan)

IN_WORDS = frozenset({"title", "words", "author", "licence", "name", "build", "schema_version"})
"""Last names of fields that no metal feels."""

WORDS = {
    "car": "car",
    "seam": "seam",
    "metal": "metal",
    "skin_thickness_m": "skin's thickness",
    "inner_thickness_m": "inner panel's thickness",
    "seam_energy_j_per_m": "energy to part a metre of seam",
    "seam_strength_n_per_m": "strength of a metre of seam",
    "bead_gaps": "gaps in the bead",
    "seam_variation_ratio": "how uneven the seam is",
    "seam_correlation_m": "length over which the seam changes",
    "seam_seed": "seed of the uneven seam",
    "weld_pitch_m": "distance between spots",
    "weld_peel_n": "peel strength of a spot",
    "weld_shear_n": "shear strength of a spot",
    "weld_energy_j": "energy to pull out a spot",
    "latch": "latch",
    "latch_wedge_n": "force that wedges the striker",
    "handle_n": "pull on the handle",
    "latch_strength_ratio": "latch's strength over the rule's",
    "hinge_strength_ratio": "hinges' strength over the rule's",
    "bar": "bar",
    "hinge_depth_m": "depth of the hinges' axis",
    "fitting_give_m": "way latch and hinges bend before they let go",
    "bar_foot_strength_n": "strength of the bar's feet",
    "rail_wall_m": "roof rail's wall",
    "rail_yield_pa": "roof rail's yield stress",
    "rail_held": "roof rail held at",
    "hem_width_m": "width of the hem",
    "shut_face_depth_m": "depth of the shut face",
    "lattice_spacing_m": "size of the lattice",
    "side": "side of the car",
    "door": "tip on the door",
    "against": "other tip",
    "edge": "edge",
    "along_m": "place along it",
    "depth_m": "depth from the lip",
    "height_m": "height above the sill",
    "lip": "lip of the belt",
    "seat": "what it stands on",
    "tilt_rad": "direction of the push",
    "opening_m": "opening",
    "closing_m": "closing",
    "shape": "rigid body's shape",
    "size_m": "rigid body's width",
    "tall_m": "rigid body's height",
    "skew_rad": "rigid body's line",
    "travel_m": "how far it is pressed in",
    "tool": "tool",
    "tip_width_m": "width of the tips",
    "tip_depth_m": "length of the pads",
    "force_n": "force",
    "arm_m": "length of the arms",
    "friction_ratio": "friction of the tips",
    "hold_n_m": "moment the crew hold the tool with",
    "lean_rad": "lean of the pad",
    "tool_body": "tool's body",
    "surface": "surface under the tip",
    "stop_at": "stops at",
    "start_m": "start",
    "length_m": "length",
    "seed": "seed",
    "moves": "moves",
    "wreck": "how it was wrecked",
    "extent": "how much of the car",
    "whole_side": "whole side",
    "panel": "door",
    "start": "saved start",
    "title": "title",
    "words": "words",
    "author": "author",
    "licence": "licence",
    "name": "name",
    "build": "ready build",
    "schema_version": "version of the file's form",
}
"""A plain word for each field's last name."""

_UNITS = (
    ("_j_per_m", "J/m", 1.0),
    ("_n_per_m", "kN/m", 1e-3),
    ("_m", "mm", 1e3),
    ("_n", "kN", 1e-3),
    ("_j", "J", 1.0),
)
"""Ending of a field's name, the unit it is spoken in, and how many of it the SI unit is."""


@dataclass(frozen=True)
class Difference:
    """One field that differs.

    path : as in a plan file, such as "car.seam" or "moves[0].door.depth_m"
    words : the same in plain words;  first, second : both values as plain values, None where there is none
    """

    path: str
    words: str
    first: Any
    second: Any

    @property
    def felt(self) -> bool:
        """Tell whether the metal feels it, or it only stands in words."""
        return self.path.rpartition(".")[2].partition("[")[0] not in IN_WORDS

    def text(self, value: Any) -> str:
        """Return one of the values with its unit (SI sizes as they are spoken: mm, kN)."""
        return value_text(self.path, value)

    def __str__(self) -> str:
        return f"{self.words}: {self.text(self.first)} against {self.text(self.second)} ({self.path})"


def value_text(path: str, value: Any) -> str:
    """Return a field's value with its unit: lengths in mm, forces in kN, angles in degrees."""
    if value is None or value == "":
        return "nothing"
    if isinstance(value, msgspec.Struct):
        return struct_text(path, value)
    if isinstance(value, tuple | list):
        return ", ".join(value_text(path, item) for item in value) or "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, int | float):
        return _number_text(path.rpartition(".")[2], value)
    return str(value).replace("_", " ")


def _number_text(name: str, value: float) -> str:
    if name.endswith("_rad"):
        return f"{math.degrees(value):.4g}\u00b0"
    unit, scale = next(((u, s) for ending, u, s in _UNITS if name.endswith(ending)), ("", 1.0))
    return f"{value * scale:.6g} {unit}".rstrip()


def struct_text(path: str, value: msgspec.Struct) -> str:
    """Return a whole move, place or gap in a few words: its kind and what it is driven by."""
    parts = []
    tag = value.__struct_config__.tag
    if isinstance(tag, str):
        parts.append(tag)
    for name in value.__struct_fields__:
        item = getattr(value, name)
        if isinstance(item, float | int | str) and name not in IN_WORDS and not isinstance(item, bool):
            parts.append(f"{_word(name)} {value_text(f'{path}.{name}', item)}")
    return ", ".join(parts)


def _word(name: str) -> str:
    """Return a field's plain word; one that has none is read without its unit."""
    bare = next((name.removesuffix(e) for e, _, _ in _UNITS if name.endswith(e)), name)
    return WORDS.get(name, bare.removesuffix("_rad").replace("_", " "))


def _spoken(path: str) -> str:
    """Return a path in plain words: "move 1, tip on the door: depth from the lip"."""
    parts = []
    for step in path.split("."):
        name, _, index = step.partition("[")
        number = int(index.rstrip("]")) + 1 if index else 0
        if name == "moves":
            parts.append(f"move {number}" if number else "moves")
        elif number:
            parts.append(f"{_word(name)} {number}")
        elif name != "car":
            parts.append(_word(name))
    if len(parts) < 2:
        return "".join(parts)
    return f"{', '.join(parts[:-1])}: {parts[-1]}"


def _walk(path: str, first: Any, second: Any) -> Iterator[Difference]:
    if type(first) is type(second) and isinstance(first, msgspec.Struct):
        for name in first.__struct_fields__:
            below = f"{path}.{name}" if path else name
            yield from _walk(below, getattr(first, name), getattr(second, name))
    elif _structs(first) and _structs(second):
        for index in range(max(len(first), len(second))):
            one = first[index] if index < len(first) else None
            two = second[index] if index < len(second) else None
            yield from _walk(f"{path}[{index}]", one, two)
    elif type(first) is not type(second) or first != second:
        yield Difference(path, _spoken(path), first, second)


def _structs(value: Any) -> bool:
    return isinstance(value, tuple) and all(isinstance(item, msgspec.Struct) for item in value)


def differences(first: Root, second: Root) -> tuple[Difference, ...]:
    """Return every field in which two cars or two plans differ, in the order of the fields.

    Where the kinds differ (a spread against a squeeze, an edge against the belt) the whole of both is named.
    """
    root = "car" if isinstance(first, Car) else ""
    return tuple(_walk(root, first, second))


def felt(first: Root, second: Root) -> tuple[Difference, ...]:
    """Return the differences that the metal feels: all but titles, words and names."""
    return tuple(d for d in differences(first, second) if d.felt)


def twin(plan: Plan, path: str, value: Any) -> Plan:
    """Return the plan's duplicate with one field changed, such as ("car.seam", "welded").

    Raises
    ------
    PlanError
        When there is no such field, the value is of the wrong kind or out of range, or nothing would change.
    """
    raw = msgspec.to_builtins(plan)
    steps = path.replace("]", "").replace("[", ".").split(".")
    at = raw
    try:
        for step in steps[:-1]:
            at = at[int(step)] if isinstance(at, list | tuple) else at[step]
        if steps[-1] not in at:
            raise KeyError(steps[-1])
    except (KeyError, IndexError, ValueError, TypeError) as error:
        raise PlanError(path, "is not a field of this plan; check its spelling") from error
    at[steps[-1]] = msgspec.to_builtins(value)
    changed = converted(raw, Plan, "plan")
    check_car(changed.car)
    if changed == plan:
        raise PlanError(path, f"is {value!r} already; a twin differs in one thing")
    return changed


def told(first: Plan, second: Plan) -> str:
    """Return what differs between two plans as lines of text, what the metal feels first."""
    found = differences(first, second)
    felt_lines = [f"  {d}" for d in found if d.felt]
    word_lines = [f"  {d}" for d in found if not d.felt]
    lines = [f"{first.title or 'first plan'} | {second.title or 'second plan'}"]
    if felt_lines:
        many = "1 thing differs" if len(felt_lines) == 1 else f"{len(felt_lines)} things differ"
        lines += [f"{many}, first against second:", *felt_lines]
    else:
        lines.append("The metal feels no difference.")
    if word_lines:
        lines += ["In words alone:", *word_lines]
    return "\n".join(lines) + "\n"


def builds_told() -> str:
    """Return the ready builds as lines of text, each with what sets it apart from the first."""
    first = next(iter(BUILDS.values()))
    lines = ['Ready builds, for a plan file: [car], build = "..."; fields that follow change it.']
    for name, car in BUILDS.items():
        apart = "; ".join(f"{d.words} {d.text(d.second)}" for d in felt(first, car))
        lines.append(f"  {name}: {apart or 'the car of a plan that names none'}")
    return "\n".join(lines) + "\n"
