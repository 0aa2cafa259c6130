"""Several structures put together as one: node ids counted on, names told apart by the part's word."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.problems import PlanError
from sim.structure import Bonds, Structure

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Part:
    """One structure of a whole: its word ("front") and where its origin stands [m], shape (3,)."""

    word: str
    structure: Structure
    shift_m: Floats


def first_nodes(parts: Sequence[Part]) -> dict[str, int]:
    """Return where each part's nodes begin in the whole, by its word."""
    counts = np.cumsum([0, *(len(part.structure.points) for part in parts)])
    return {part.word: int(first) for part, first in zip(parts, counts, strict=False)}


def joined(parts: Sequence[Part]) -> Structure:
    """Return the parts as one structure, each where it stands and not yet tied to the others.

    Raises
    ------
    PlanError
        When two parts bear one word, face opposite sides, or rest on rims of another stiffness or width.
    """
    if len({part.word for part in parts}) != len(parts) or not parts:
        raise PlanError("parts", "need at least one, each with a word of its own")
    one = parts[0].structure
    for part in parts[1:]:
        other = part.structure
        same = other.outboard_sign == one.outboard_sign
        if not same or (other.rim_stiffness_n_per_m, other.rim_width_m) != (
            one.rim_stiffness_n_per_m,
            one.rim_width_m,
        ):
            raise PlanError(
                "parts", f"{part.word} faces another side or rests on another rim; build it alike"
            )
    first = first_nodes(parts)
    moved = [_shifted(part, first[part.word]) for part in parts]
    section = np.cumsum([0, *(len(item.sections) for item in moved)])
    held = [np.zeros(item.points.shape, bool) if item.fixed is None else item.fixed for item in moved]
    return Structure(
        np.concatenate([item.points for item in moved]),
        np.concatenate([item.triangles for item in moved]),
        np.concatenate([item.triangle_section + section[k] for k, item in enumerate(moved)]),
        tuple(one for item in moved for one in item.sections),
        tuple(one for item in moved for one in item.beams),
        Bonds.join([item.bonds for item in moved]),
        tuple(one for item in moved for one in item.ties),
        rim=np.concatenate([item.rim for item in moved]),
        rim_y_m=np.concatenate([item.rim_y_m for item in moved]),
        rim_stiffness_n_per_m=one.rim_stiffness_n_per_m,
        rim_width_m=one.rim_width_m,
        outboard_sign=one.outboard_sign,
        fixed=np.concatenate(held),
        names={name: ids for item in moved for name, ids in item.names.items()},
        sliders=tuple(one for item in moved for one in item.sliders),
    )


def _shifted(part: Part, first: int) -> Structure:
    """Return a part's structure at its place, ids counted on and names with its word in front."""
    s, word = part.structure, part.word
    body = first + np.arange(len(s.points))
    return replace(
        s,
        points=s.points + part.shift_m,
        triangles=s.triangles + first,
        sections=tuple(replace(one, name=f"{word} {one.name}") for one in s.sections),
        beams=tuple(
            replace(
                one,
                name=f"{word} {one.name}",
                nodes=one.nodes + first,
                beside=body if one.beside is None else one.beside + first,
            )
            for one in s.beams
        ),
        bonds=replace(s.bonds, nodes=s.bonds.nodes + first),
        ties=tuple(replace(one, name=f"{word} {one.name}", nodes=one.nodes + first) for one in s.ties),
        sliders=tuple(replace(one, name=f"{word} {one.name}", nodes=one.nodes + first) for one in s.sliders),
        rim=s.rim + first,
        rim_y_m=s.rim_y_m + part.shift_m[1],
        names={f"{word} {name}": ids + first for name, ids in s.names.items()},
    )
