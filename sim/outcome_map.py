"""The outcome map of a door: what a push would do at each place along its edges, and how two doors differ.

Every cell is a solved push on two lattices, stopped at what gives first.  Its word is told only where it is
settled: both runs converged and say the same, nothing else was close to giving, and some neighbouring cell
comes out the same.  Anything else is *not settled*, with the reason.  No word is looked up in a table.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping, Sequence

import msgspec

from meshes.door_shape import DoorShape
from sim.kept import CLOSE_RATIO
from sim.likely import NOT_SETTLED
from sim.many import FAILED, SETTLED
from sim.map_cell import CANNOT, LOST, Look, alike, base_plan
from sim.map_grid import Cell, Grid, grid_of
from sim.plan import Car, Edge, PanelName, Plan, Spread
from sim.planfile import plan_sha256
from sim.problems import PlanError
from sim.results import MODEL_VERSION

REACH_M = 0.06
"""How far the tips open in a cell at most: on every ready door what gives first has given by then."""
COARSER_RATIO = 1.25
"""How much coarser than the first the second lattice is, where the plan's own is no finer than that."""


class Ask(msgspec.Struct, frozen=True):
    """What a map is asked for: it settles every cell, so its hash names the map.

    plan : car, what was done before, and the push that is set at every cell (`sim.map_cell.base_plan`)
    grid : the cells;  spacings_m : the two lattices, the first one run everywhere [m]
    """

    plan: Plan
    grid: Grid
    spacings_m: tuple[float, float]

    @property
    def key(self) -> str:
        """The map's name: a hash of all that decides it, the version of the model among it."""
        told = (MODEL_VERSION, plan_sha256(self.plan), self.grid, self.spacings_m)
        return hashlib.sha256(msgspec.json.encode(told, order="deterministic")).hexdigest()[:40]

    @property
    def move(self) -> Spread:
        """The push that is set at every cell."""
        move = self.plan.moves[-1]
        assert isinstance(move, Spread)
        return move


def asked(plan: Plan, move_index: int | None = None, *, reach_m: float = REACH_M) -> Ask:
    """Return the map of a plan's push: at its last spread, unless one is named.

    Raises
    ------
    PlanError
        When the plan has no spread, the move is none, or the door cannot be meshed.
    """
    from sim.vary import PREVIEW_SPACING_M

    if move_index is None:
        spreads = [k for k, move in enumerate(plan.moves) if isinstance(move, Spread)]
        if not spreads:
            raise PlanError("moves", "hold no spread, so there is nothing to map; add one")
        move_index = spreads[-1]
    shared = base_plan(plan, move_index, reach_m)
    panel = shared.moves[-1].door.panel  # type: ignore[union-attr]
    own = plan.car.lattice_spacing_m
    first = max(PREVIEW_SPACING_M, own)
    coarser = round(COARSER_RATIO * PREVIEW_SPACING_M, 6)
    second = own if own < first else coarser if own < coarser else PREVIEW_SPACING_M
    return Ask(shared, grid_of(_shape(plan.car, panel), panel=panel), (first, second))


def _shape(car: Car, panel: PanelName) -> DoorShape:
    """Return the dimensions of the door that is mapped."""
    from sim.door_structure import door_shape  # the mechanics come when a map is asked for
    from sim.side import side_shape

    if car.extent == "door":
        return door_shape(car)
    side = side_shape(car)
    return side.front if panel == "front" else side.rear


def fittings(ask: Ask) -> tuple[tuple[Edge, float, str], ...]:
    """Return what stands at a height of the mapped edges: edge, height above the sill [m], name."""
    shape = _shape(ask.plan.car, ask.grid.panel)
    return (
        ("latch_edge", shape.latch_height_m, "latch"),
        ("hinge_edge", shape.upper_hinge_height_m, "upper hinge"),
        ("hinge_edge", shape.lower_hinge_height_m, "lower hinge"),
    )


class Told(msgspec.Struct, frozen=True, omit_defaults=True):
    """One cell of a map as it is told.

    word : the outcome, or "not settled";  why : in a sentence, of a cell that is not settled
    first, second : the runs on the two lattices; no second where the first has already left it open
    """

    cell: Cell
    word: str
    first: Look
    second: Look | None = None
    why: str = ""

    @property
    def settled(self) -> bool:
        """Whether the word may be relied on, as far as the model goes."""
        return self.word != NOT_SETTLED


class OutcomeMap(msgspec.Struct, frozen=True):
    """A whole map.

    model_version, key : by which model it was made, and what of (`Ask.key`)
    ask : what was asked;  told : every cell, in the order of `Grid.cells`
    """

    model_version: str
    key: str
    ask: Ask
    told: tuple[Told, ...]

    def word(self, cell: Cell) -> str:
        """Return the word of a cell."""
        return self.told[self.ask.grid.cells.index(cell)].word

    @property
    def counts(self) -> Mapping[str, int]:
        """How many cells bear each word, most first; what is not settled last."""
        found: dict[str, int] = {}
        for told in self.told:
            found[told.word] = found.get(told.word, 0) + 1
        order = sorted(found, key=lambda word: (word == NOT_SETTLED, -found[word], word))
        return {word: found[word] for word in order}


def open_question(first: Look) -> str:
    """Return why a cell is not settled by its first run alone, in a sentence; empty when nothing says so."""
    if first.word == LOST:
        return f"Its run was lost: {first.why}"
    if first.word == CANNOT:
        return ""
    if first.standing != SETTLED:
        return "Some steps of its run did not come to rest."
    if first.together:
        return f"In the same step there was also: {first.together}."
    if first.gave and first.rival and first.margin_ratio < CLOSE_RATIO:
        return f"Nearly as close to happening: {first.rival}."
    return ""


def needs_second(first: Look) -> bool:
    """Tell whether a cell is to be run on the second lattice too."""
    return first.standing != FAILED and not open_question(first)


def verdicts(grid: Grid, first: Sequence[Look], second: Mapping[int, Look]) -> tuple[Told, ...]:
    """Return every cell as it is told.

    Parameters
    ----------
    first : of every cell;  second : by the cell's number, of those that needed one
    """
    words = [alike(look.word) for look in first]
    out = []
    for index, cell in enumerate(grid.cells):
        other = second.get(index)
        near = [words[k] for k in grid.beside(index)]
        why = open_question(first[index]) or _other_lattice(first[index], other)
        if not why and words[index] != CANNOT and near and words[index] not in near:
            why = "No place beside it comes out the same."
        out.append(Told(cell, NOT_SETTLED if why else first[index].word, first[index], other, why))
    return tuple(out)


def _other_lattice(first: Look, second: Look | None) -> str:
    """Return why the second run leaves a cell open, in a sentence; empty when it says the same."""
    if first.standing == FAILED:
        return ""
    if second is None:
        return "It has not been run on a second lattice."
    if second.standing != SETTLED:
        return "On the second lattice some steps did not come to rest."
    if alike(second.word) != alike(first.word):
        return f"On the second lattice it comes out otherwise: {second.word}."
    why = open_question(second)
    return f"On the second lattice: {why[0].lower()}{why[1:]}" if why else ""


def made(ask: Ask, first: Sequence[Look], second: Mapping[int, Look]) -> OutcomeMap:
    """Return a map from its runs."""
    return OutcomeMap(MODEL_VERSION, ask.key, ask, verdicts(ask.grid, first, second))


# two maps -------------------------------------------------------------------------------------------------


class Change(msgspec.Struct, frozen=True):
    """A cell that comes out otherwise on two maps: its number and both words."""

    index: int
    cell: Cell
    before: str
    after: str


class MapDifference(msgspec.Struct, frozen=True):
    """Two maps of the same cells, and the cells that change between them."""

    before: OutcomeMap
    after: OutcomeMap
    changes: tuple[Change, ...]


def same_cells(one: Ask, other: Ask) -> None:
    """Raise PlanError when two maps have other cells, so that they cannot be compared."""
    if one.grid != other.grid:
        raise PlanError(
            "car", "of the two plans has doors of another size, so their cells are not the same; use one size"
        )


def difference(before: OutcomeMap, after: OutcomeMap) -> MapDifference:
    """Return the cells in which two maps differ; a broken weld counts as its seam parting.

    Raises
    ------
    PlanError
        When the maps have other cells.
    """
    same_cells(before.ask, after.ask)
    pairs = zip(before.told, after.told, strict=True)
    changes = [
        Change(index, one.cell, one.word, two.word)
        for index, (one, two) in enumerate(pairs)
        if alike(one.word) != alike(two.word)
    ]
    return MapDifference(before, after, tuple(changes))
