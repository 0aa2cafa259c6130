"""The worked door on the stage: sheets, folds, rods, fittings and stitches, moved and painted in place."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from meshes.door import DoorMesh
from ui.scene import fittings, tubes
from ui.scene.colours import MAPS, SEAM, ColourMode, Theme, rgb
from ui.scene.drawn import Drawn, Shading
from ui.scene.folding import Folding
from ui.scene.metal import TRIANGLE_BUDGET, Sheet, choose_levels, make_sheet, polished, shade
from ui.scene.pick import Solid
from ui.scene.rail_scene import RailScene
from ui.scene.seam import RINGS, SIDES, Stitches, make_stitches, own_points
from ui.scene.torn import origins, stitches_after

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

FAINT_LINE = 0.60
"""Tone of the faintest fold line over that of its metal, so that no line is lighter than the metal."""
FOLD_LINE_CUT = 0.10
"""Folds fainter than this are not drawn at all."""
SEAM_REACH_M = 0.06
"""In the seam's colours the metal this near to a parted stitch takes its colour."""


SHAPES_KEPT = 32
"""Torn states whose drawing is remembered."""


@dataclass(frozen=True, eq=False)
class _Shape:
    """All that hangs on how the sheets are connected."""

    rest: Floats
    skin: Sheet
    inner: Sheet
    seam: Stitches
    near_seam: dict[bool, tuple[Ints, Floats]]


@dataclass(frozen=True, eq=False)
class DoorPart:
    """Which door of a model is drawn.

    Parameters
    ----------
    mesh : its mesh, in its own axes or the model's
    first : its first node in the model;  rows : its triangles among the model's
    word : stands before its parts' names, "" where there is only one door
    budget : most drawn triangles of its sheets
    carried : nodes of the model that carry the other half of "latch", "lower_hinge" or "upper_hinge"
    thread : sides and points of a drawn stitch, and which of its path's points they are
    """

    mesh: DoorMesh
    first: int
    rows: slice
    word: str = ""
    budget: int = TRIANGLE_BUDGET
    carried: Mapping[str, Ints] = field(default_factory=dict)
    thread: tuple[int, tuple[int, ...]] = (SIDES, tuple(range(RINGS)))


class DoorScene:
    """All that is drawn of one door, the only one of a model or one of several.

    ``layers`` maps "skin", "seam", "bar", "inner" and "latch_hinges" to the drawn things of each; of an only
    door "body" too where the roof rail over it gives.
    """

    def __init__(self, model, part: DoorPart | None = None) -> None:
        self.model = model
        self.part = part or DoorPart(model.mesh, 0, slice(0, len(model.mesh.surface.triangles)))
        self.whole = np.asarray(self.part.mesh.surface.triangles) + self.part.first
        self.triangles = self.whole
        self.start = np.array(model.start.points)
        self.rest = self.start
        self._known: dict[bytes, _Shape] = {}
        self.sign = float(model.mesh.outboard_sign)
        self.points = self.rest
        self.damage = np.zeros(0)
        self.load: Floats | None = None
        self.folding: Folding | None = None
        self._make_sheets()
        self._make_rods()
        self._make_fittings()
        self._make_seam()
        self.layers = {
            "skin": [self.skin, self.skin_lines, self.belt],
            "inner": [self.inner, self.inner_lines, self.frame],
            "bar": [self.bar],
            "latch_hinges": [self.hardware],
            "seam": [self.stitches],
        }
        self.rail = RailScene(model) if part is None and model.rail is not None else None
        if self.rail is not None:
            self.layers |= self.rail.layers
        self.move(self.rest)

    @property
    def drawn(self) -> list[Drawn]:
        """Every drawn thing of the door."""
        return [thing for things in self.layers.values() for thing in things]

    # making -----------------------------------------------------------------------------------------------

    def _make_sheets(self) -> None:
        surface = self.part.mesh.surface
        self.outer = surface.triangle_part == surface.part_index("outer_skin")
        counts = int(self.outer.sum()), int((~self.outer).sum())
        self._levels = choose_levels(*counts, self.part.budget)
        self.skin_sheet, self.inner_sheet = self._sheets(self.start, self.whole)
        self.whole_sheet = self.skin_sheet
        self.skin, self.skin_lines = _sheet_things("outer_skin", self.skin_sheet, 1.5)
        self.inner, self.inner_lines = _sheet_things("inner_panel", self.inner_sheet, 1.2)

    def _sheets(self, rest: Floats, triangles: Ints) -> tuple[Sheet, Sheet]:
        masks = ((self.outer, self._levels[0]), (~self.outer, self._levels[1]))
        made = [make_sheet(rest, triangles[mask], np.flatnonzero(mask), level) for mask, level in masks]
        return made[0], made[1]

    def set_triangles(self, triangles: Ints | None) -> None:
        """Take the model's connectivity as it is now, (m, 3): torn open, or whole again for None."""
        if self.rail is not None:
            self.rail.set_triangles(triangles)
        wanted = self.whole if triangles is None else np.asarray(triangles)[self.part.rows]
        if wanted is self.triangles or np.array_equal(wanted, self.triangles):
            return
        self.triangles = wanted
        shape = self._shape(wanted)
        self.rest, self.seam, self._near_seam = shape.rest, shape.seam, shape.near_seam
        self.skin_sheet, self.inner_sheet = shape.skin, shape.inner
        for sheet, metal, lines in (
            (shape.skin, self.skin, self.skin_lines),
            (shape.inner, self.inner, self.inner_lines),
        ):
            flat = np.zeros((len(sheet.source), 3))
            metal.reshape(flat, triangles=sheet.triangles)
            lines.reshape(flat, lines=sheet.lines[sheet.always])

    def _shape(self, triangles: Ints) -> _Shape:
        """Return all that hangs on the connectivity; the last few are kept, for scrubbing to and fro."""
        key = triangles.tobytes()
        if key not in self._known:
            rest = self._rest_of(triangles)
            skin, inner = self._sheets(rest, triangles)
            seam = stitches_after(self.whole_seam, self.whole, triangles)
            near = {
                True: self._near_stitches(skin, seam, rest),
                False: self._near_stitches(inner, seam, rest),
            }
            while len(self._known) >= SHAPES_KEPT:
                self._known.pop(next(iter(self._known)))
            self._known[key] = _Shape(rest, skin, inner, seam, near)
        return self._known[key]

    def _rest_of(self, triangles: Ints) -> Floats:
        """Return the start shape of every node there is now; nodes of other parts stand at the origin."""
        from_node = origins(self.whole, triangles, len(self.start))
        own = from_node < len(self.start)
        rest = np.zeros((len(from_node), 3))
        rest[own] = self.start[from_node[own]]
        return rest

    def _make_rods(self) -> None:
        first = self.part.first
        chains = {name: ids + first for name, ids in self.part.mesh.surface.chains.items()}
        self.bar_rods = fittings.make_rods([(chains["bar"], fittings.BAR_RADIUS_M)])
        self.frame_rods = fittings.make_rods([
            (chains["frame"], fittings.FRAME_RADIUS_M), (chains["belt_inner_strip"], fittings.STRIP_RADIUS_M),
        ])  # fmt: skip
        self.belt_rods = fittings.make_rods([(chains["belt_outer_strip"], fittings.STRIP_RADIUS_M)])
        self.belt = Drawn(
            "belt_outer_lip", self.belt_rods.points(self.rest)[0], triangles=self.belt_rods.triangles
        )
        self.bar = Drawn("bar", self.bar_rods.points(self.rest)[0], triangles=self.bar_rods.triangles)
        self.frame = Drawn(
            "window_frame", self.frame_rods.points(self.rest)[0], triangles=self.frame_rods.triangles
        )

    def _make_fittings(self) -> None:
        self.hardware_parts = fittings.latch_and_hinges(
            self.part.mesh, self.rest, self.part.first, self.part.carried
        )
        points, triangles, _ = tubes.joined([part.solid for part in self.hardware_parts])
        self.hardware = Drawn("latch_hinges", points, triangles=triangles)

    def _make_seam(self) -> None:
        mesh, first = self.part.mesh, self.part.first
        self.seam = make_stitches(self.model, mesh, first)
        self._own_seam = own_points(self.model, mesh, first)
        self.whole_seam = self.seam
        self.damage = np.zeros(self.seam.count)
        self._near_seam = {
            sheet is self.skin_sheet: self._near_stitches(sheet, self.seam, self.rest)
            for sheet in (self.skin_sheet, self.inner_sheet)
        }
        sides, rows = self.part.thread
        triangles = tubes.tube_triangles(self.seam.count, len(rows), sides)
        points = np.zeros((self.seam.count * len(rows) * sides, 3))
        self.stitches = Drawn("seam", points, triangles=triangles)

    # moving -----------------------------------------------------------------------------------------------

    def move(self, points: Floats, damage: Floats | None = None, load: Floats | None = None) -> None:
        """Put the door where its nodes are [m], (n, 3), with the seam's damage and the sheets' load."""
        if self.rail is not None:
            self.rail.move(points, load)
        if len(points) < len(self.rest):  # whole metal, whatever was torn before
            self.set_triangles(None)
        points = points[: max(len(self.rest), len(self.start))]
        self.points = points
        self.damage = np.zeros(self.seam.count) if damage is None else np.asarray(damage)[self._own_seam]
        self.load = None if load is None else np.asarray(load)[self.part.rows]
        for sheet, metal in ((self.skin_sheet, self.skin), (self.inner_sheet, self.inner)):
            place = sheet.drawn_points(points)
            metal.move(place, sheet.drawn_normals(place))
        self.skin_lines.move(self.skin.points)
        self.inner_lines.move(self.inner.points)
        self.bar.move(*self.bar_rods.points(points))
        self.frame.move(*self.frame_rods.points(points))
        self.belt.move(*self.belt_rods.points(points))
        solids = [part.points(points) for part in self.hardware_parts]
        self.hardware.move(np.concatenate([s[0] for s in solids]), np.concatenate([s[1] for s in solids]))
        sides, rows = self.part.thread
        paths = self.seam.paths(points, self.damage)[:, rows]
        radii = self.seam.radii(self.damage)[:, rows]
        self.stitches.move(*tubes.tube_points(paths, radii, sides))

    def fold(self, work: Floats | None) -> None:
        """Take what the model's triangles were folded, (m,) [J/m^2], for the colours; None: not known."""
        self.folding = None if work is None else Folding(work[self.part.rows])
        if self.rail is not None:
            self.rail.fold(work)

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer: coarse sheets and rods as they stand."""
        surface, word = self.part.mesh.surface, self.part.word
        names = tuple(named(word, name) for name in surface.part_names)
        out = []
        for layer, mask in (("skin", self.outer), ("inner", ~self.outer)):
            out.append((layer, Solid(self.points, self.triangles[mask], surface.triangle_part[mask], names)))
        for layer, name, thing, triangles in (
            ("bar", "bar", self.bar, self.bar_rods.triangles),
            ("inner", "window_frame", self.frame, self.frame_rods.triangles),
        ):
            place = np.asarray(thing.points, dtype=np.float64)
            out.append((layer, Solid.of(named(word, name), place, triangles)))
        return out if self.rail is None else out + self.rail.solids()

    # what others draw of it -------------------------------------------------------------------------------

    @property
    def arrow_nodes(self) -> Ints:
        """Nodes of the outer skin, on which arrows of its motion may stand."""
        return self.part.mesh.surface.nodes_of(("outer_skin",)) + self.part.first

    def lines_at(self, points: Floats) -> Floats:
        """Return rims and sharp edges of a whole shape, shape (k, count, 3) [m]."""
        sheet = self.whole_sheet
        return sheet.drawn_points(points[: len(self.start)])[sheet.lines[sheet.always]]

    def start_lines_of(self, begun: Floats | None = None) -> list[Floats]:
        """Return the start shape's lines, part by part; of the shape as it was built, or of another."""
        points = self.start if begun is None else begun
        return [self.lines_at(points)] + ([] if self.rail is None else [self.rail.lines_at(points)])

    def sheets(self) -> list[tuple[str, str, Drawn, Sheet]]:
        """Return the sheets with their layers and names, as they are cut by a plane."""
        word = self.part.word
        rail = [] if self.rail is None else self.rail.sheets()
        return [
            ("skin", named(word, "outer_skin"), self.skin, self.skin_sheet),
            ("inner", named(word, "inner_panel"), self.inner, self.inner_sheet),
            *rail,
        ]

    # painting ---------------------------------------------------------------------------------------------

    def paint(self, theme: Theme, mode: ColourMode, picked: Ints | None = None) -> None:
        """Colour everything for the theme and the colour mode, with some nodes picked out."""
        for name, sheet, metal, lines in (
            ("skin", self.skin_sheet, self.skin, self.skin_lines),
            ("inner", self.inner_sheet, self.inner, self.inner_lines),
        ):
            if mode is ColourMode.FOLDED and self.folding is not None:
                colours, seen = self.folding.dress(sheet, metal, self.rest, self.sign)
            else:
                metal.wear(None)
                colours = seen = self._sheet_colours(sheet, metal, mode, rgb(getattr(theme, name)))
            if picked is not None and len(picked):
                colours = self._picked_out(sheet, colours, picked, theme)
            metal.paint(colours)
            self._paint_lines(sheet, lines, seen, rgb(theme.crease))
        if self.rail is not None:
            self.rail.paint(theme, mode, picked)
        self._paint_rods(theme)
        self.hardware.paint(shade(self.hardware.normals, rgb(theme.fittings), self.sign, contrast=2.2))
        self._paint_stitches(theme)

    def _sheet_colours(self, sheet: Sheet, metal: Drawn, mode: ColourMode, tone: Floats) -> Floats:
        normals = np.asarray(metal.normals, dtype=np.float64)
        if mode in (ColourMode.MATERIAL, ColourMode.FOLDED):
            return polished(normals, tone, self.sign)
        values = self._values(sheet, mode)
        return shade(normals, MAPS[mode](values), self.sign, contrast=0.45)

    def _values(self, sheet: Sheet, mode: ColourMode) -> Floats:
        if mode is ColourMode.OUTBOARD:
            return sheet.to_drawn @ (self.sign * (self.points[sheet.nodes, 1] - self.rest[sheet.nodes, 1]))
        if mode is ColourMode.LOAD:
            if self.load is None:
                return np.zeros(len(sheet.source))
            return sheet.values_at_points(np.asarray(self.load))
        return self._seam_values(sheet)

    def _seam_values(self, sheet: Sheet) -> Floats:
        """Return the damage of the nearest stitch, fading with the rest distance to the hem, shape (d,)."""
        index, share = self._near_seam[sheet is self.skin_sheet]
        return self.damage[index] * share

    def _near_stitches(self, sheet: Sheet, seam: Stitches, rest: Floats) -> tuple[Ints, Floats]:
        """Return each drawn point's nearest stitch and how strongly it speaks there, 1 at the hem to 0."""
        skin, _ = seam.ends(rest)
        distance, index = cKDTree(skin).query(sheet.drawn_points(rest))
        return index, np.clip(1.0 - distance / SEAM_REACH_M, 0.0, 1.0)

    def _picked_out(self, sheet: Sheet, colours: Floats, picked: Ints, theme: Theme) -> Floats:
        mask = np.isin(sheet.nodes, picked).astype(np.float64)
        share = np.clip(sheet.to_drawn @ mask, 0.0, 1.0)[:, None] * 0.75
        return (1.0 - share) * colours + share * rgb(theme.outline)

    def _paint_lines(self, sheet: Sheet, lines: Drawn, colours: Floats, dark: Floats) -> None:
        strength = sheet.fold_strength(self.points)
        shown = strength > FOLD_LINE_CUT
        ids = sheet.lines[shown]
        lines.set_lines(ids)
        toned = np.array(colours)
        best = np.zeros(len(colours))
        np.maximum.at(best, ids.reshape(-1), np.repeat(strength[shown], ids.shape[1]))
        share = np.sqrt(best)[:, None]
        lines.paint((1.0 - share) * FAINT_LINE * toned + share * dark)

    def _paint_rods(self, theme: Theme) -> None:
        length = len(self.bar_rods.chains[0])
        tones = fittings.striped_tones(length, rgb(theme.bar), rgb(theme.stripe))
        self.bar.paint(shade(np.asarray(self.bar.normals, dtype=np.float64), tones, self.sign, contrast=1.6))
        tone = 0.5 * (rgb(theme.inner) + rgb(theme.bar))
        for rods in (self.frame, self.belt):
            rods.paint(shade(np.asarray(rods.normals, dtype=np.float64), tone, self.sign, contrast=1.4))

    def _paint_stitches(self, theme: Theme) -> None:
        share = np.clip(self.damage * 1.6, 0.0, 1.0)[:, None]
        colours = (1.0 - share) * rgb(theme.thread) + share * rgb(SEAM)
        sides, rows = self.part.thread
        self.stitches.paint(np.repeat(colours, len(rows) * sides, axis=0))


def named(word: str, name: str) -> str:
    """Return a part's name, with its door's word before it where there are two."""
    return f"{word}_{name}" if word else name


def _sheet_things(name: str, sheet: Sheet, width: float) -> tuple[Drawn, Drawn]:
    start = np.zeros((len(sheet.source), 3))
    metal = Drawn(name, start, triangles=sheet.triangles)
    lines = Drawn(name, start, lines=sheet.lines[sheet.always], shading=Shading.PLAIN, width=width)
    return metal, lines
