"""What trim still hides, and what blades would meet of it.

Restraint parts stand behind trim (`meshes.fittings`).  They go with the metal round them.  Cutting where one
still hides records a caution that names the hazard and no figure; what to do about it stands in the car
maker's rescue sheet and in local procedure.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from meshes.fittings import Fitting, Fittings, build_fittings
from meshes.side import SideMesh
from sim.blades import Blades, Section
from sim.exposed import grains
from sim.model import DoorModel
from sim.problems import PlanError
from sim.state import State
from sim.structure import Structure
from sim.surround import Carried

Floats = NDArray[np.float64]

STRIPPED = "stripped fittings"
"""Key of `State.kept`: 1 for every fitting, in its order, that has been taken off since the start."""
CAUTION = "caution"
"""Kind of the event: the blades went where a restraint part still hides behind trim."""
BLADE_M = 0.02  # half the breadth of what blades sweep beside their plane, assumed
HAZARDS = {
    "roof inflator": "restraint inflator behind trim",
    "roof bag": "undeployed bag behind trim",
    "belt tensioner": "belt tensioner behind trim",
    "belt anchor": "belt anchor behind trim",
}
"""What a caution names, by the fitting; one without a line is told as a restraint part."""
KINDS = {"trim": "trim", "seals": "seal", "glass": "glass"}


@lru_cache(maxsize=4)
def _built(side: SideMesh) -> Fittings:
    return build_fittings(side)


def fittings_of(model: DoorModel, state: State) -> Fittings | None:
    """Return the fittings with what is gone by now; None for a car that is one door."""
    side: Any = getattr(model, "side", None)
    if side is None:
        return None
    built = _built(side)
    whole = model.car.whole_side
    off = {
        kind for kind, on in (("trim", whole.trim), ("seal", whole.seals), ("glass", whole.glass)) if not on
    }
    start = frozenset(item.name for item in built.items if item.kind in off)
    mask = state.kept.get(STRIPPED, np.zeros(len(built.items)))
    names = {item.name for item, gone in zip(built.items, mask, strict=True) if gone > 0.0}
    return Fittings(built.items, start | names)


def names_of(fittings: Fittings, what: Iterable[str]) -> tuple[str, ...]:
    """Return the names of what is to be stripped, words for all of a kind spelt out.

    Raises
    ------
    PlanError
        For a name that is not there or cannot be stripped.
    """
    may = [item.name for item in fittings.items if item.kind in KINDS.values()]
    out: list[str] = []
    for word in what:
        if word in KINDS:
            out += [item.name for item in fittings.items if item.kind == KINDS[word]]
        elif word in may:
            out.append(word)
        else:
            words = ", ".join(repr(one) for one in (*KINDS, *may))
            raise PlanError("what", f"names {word!r}, which cannot be stripped; use some of: {words}")
    if not out:
        raise PlanError("what", "is empty; name trim, seals or glass")
    return tuple(dict.fromkeys(out))


def stripped(model: DoorModel, state: State, what: Iterable[str]) -> tuple[State, tuple[str, ...]]:
    """Return the state with some fittings taken off, and what has come to light by it."""
    before = fittings_of(model, state)
    assert before is not None
    names = names_of(before, what)
    mask = state.kept.get(STRIPPED, np.zeros(len(before.items))).copy()
    for k, item in enumerate(before.items):
        mask[k] = max(mask[k], float(item.name in names))
    after = replace(state, kept={**state.kept, STRIPPED: mask})
    now = before.without(*names)
    seen = {item.name for item in before.seen()}
    return after, tuple(item.name for item in now.seen() if item.name not in seen)


CARRIED = {"trim": "trim", "seal": "seals", "glass": "glass"}
"""What a door carries of each kind of fitting (`sim.standing`)."""


def without_weight_of(model: DoorModel, what: Iterable[str]) -> Structure:
    """Return the structure without the masses its doors carried of what is stripped."""
    around, fittings = model.structure.surround, fittings_of(model, model.start)
    if around is None or fittings is None:
        return model.structure
    names = set(names_of(fittings, what))
    gone = {
        (panel, CARRIED[item.kind])
        for item in fittings.items
        if item.name in names and item.kind in CARRIED
        for panel in ("front", "rear")
        if item.name.startswith(panel)
    }
    first = model.panels()["rear"].first

    def stays(one: Carried) -> bool:
        return ("front" if int(one.nodes[0]) < first else "rear", one.name) not in gone

    kept = tuple(one for one in around.carried if stays(one))
    if len(kept) == len(around.carried):
        return model.structure
    return replace(model.structure, surround=replace(around, carried=kept))


def _moved(model: DoorModel, points: Floats, fitting: Fitting) -> Floats:
    """Return a fitting's points now, shape (k, 3): they go with the mean of the metal nearest to them."""
    s = model.structure
    nodes = np.unique(s.triangles)
    middle = fitting.surface.points.mean(axis=0)
    away = np.linalg.norm(s.points[nodes] - middle, axis=1)
    near = nodes[np.argsort(away, kind="stable")[:12]]
    if float(away.min()) > 0.3:  # on the roof's edge: it stands still
        return np.asarray(fitting.surface.points, dtype=float)
    out: Floats = fitting.surface.points + (points[near] - s.points[near]).mean(axis=0)
    return out


def met(model: DoorModel, state: State, blades: Blades, found: Section) -> tuple[str, ...]:
    """Return the restraint parts still hidden that the blades go through or close on, by name."""
    fittings = fittings_of(model, state)
    if fittings is None:
        return ()
    out = []
    for item in fittings.hidden():
        if item.kind != "restraint":
            continue
        points = _moved(model, state.points, item)
        spots = grains(points, item.surface.triangles, blades.place, 1.0)
        if len(spots) and bool(_swept(spots, blades, found).any()):
            out.append(item.name)
    return tuple(out)


def _swept(spots: Floats, blades: Blades, found: Section) -> NDArray[np.bool_]:
    apart = spots - blades.place
    along, across = apart @ blades.way, apart @ blades.across
    end = min(found.near_m + blades.depth_m, found.far_m - blades.short_m)
    middle = 0.5 * (found.low_m + found.high_m)
    inside: NDArray[np.bool_] = (
        (np.abs(apart @ blades.normal) < BLADE_M)
        & (along > found.near_m - BLADE_M)
        & (along < end + BLADE_M)
        & (np.abs(across - middle) < 0.5 * blades.opening_m)
    )
    return inside
