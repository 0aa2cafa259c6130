"""The worked door on the stage: sheets, folds, rods, fittings and stitches, moved and painted in place."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from ui.scene import fittings, tubes
from ui.scene.colours import MAPS, SEAM, ColourMode, Theme, rgb
from ui.scene.drawn import Drawn, Shading
from ui.scene.metal import Sheet, choose_levels, make_sheet, shade
from ui.scene.pick import Solid
from ui.scene.seam import RINGS, SIDES, Stitches, make_stitches
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


class DoorScene:
    """All that is drawn of one door model.

    ``layers`` maps "skin", "seam", "bar", "inner" and "latch_hinges" to the drawn things of each.
    """

    def __init__(self, model) -> None:
        self.model = model
        self.whole = np.asarray(model.mesh.surface.triangles)
        self.triangles = self.whole
        self.start = np.array(model.start.points)
        self.rest = self.start
        self._known: dict[bytes, _Shape] = {}
        self.sign = float(model.mesh.outboard_sign)
        self.points = self.rest
        self.damage = np.zeros(0)
        self.load: Floats | None = None
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
        self.move(self.rest)

    @property
    def drawn(self) -> list[Drawn]:
        """Every drawn thing of the door."""
        return [thing for things in self.layers.values() for thing in things]

    # making -----------------------------------------------------------------------------------------------

    def _make_sheets(self) -> None:
        surface = self.model.mesh.surface
        self.outer = surface.triangle_part == surface.part_index("outer_skin")
        self._levels = choose_levels(int(self.outer.sum()), int((~self.outer).sum()))
        self.skin_sheet, self.inner_sheet = self._sheets(self.start, self.whole)
        self.whole_sheet = self.skin_sheet
        self.skin, self.skin_lines = _sheet_things("outer_skin", self.skin_sheet, 1.5)
        self.inner, self.inner_lines = _sheet_things("inner_panel", self.inner_sheet, 1.2)

    def _sheets(self, rest: Floats, triangles: Ints) -> tuple[Sheet, Sheet]:
        masks = ((self.outer, self._levels[0]), (~self.outer, self._levels[1]))
        made = [make_sheet(rest, triangles[mask], np.flatnonzero(mask), level) for mask, level in masks]
        return made[0], made[1]

    def set_triangles(self, triangles: Ints | None) -> None:
        """Take the sheets' connectivity as it is now, (m, 3): torn open, or whole again for None."""
        wanted = self.whole if triangles is None else np.asarray(triangles)
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
            rest = self.start[origins(self.whole, triangles, len(self.start))]
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

    def _make_rods(self) -> None:
        chains = self.model.mesh.surface.chains
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
        self.hardware_parts = fittings.latch_and_hinges(self.model.mesh, self.rest)
        points, triangles, _ = tubes.joined([part.solid for part in self.hardware_parts])
        self.hardware = Drawn("latch_hinges", points, triangles=triangles)

    def _make_seam(self) -> None:
        self.seam: Stitches = make_stitches(self.model)
        self.whole_seam = self.seam
        self.damage = np.zeros(self.seam.count)
        self._near_seam = {
            sheet is self.skin_sheet: self._near_stitches(sheet, self.seam, self.rest)
            for sheet in (self.skin_sheet, self.inner_sheet)
        }
        points, _ = tubes.tube_points(self.seam.paths(self.rest), 0.002, SIDES)
        self.stitches = Drawn("seam", points, triangles=self.seam.triangles())

    # moving -----------------------------------------------------------------------------------------------

    def move(self, points: Floats, damage: Floats | None = None, load: Floats | None = None) -> None:
        """Put the door where its nodes are [m], (n, 3), with the seam's damage and the sheets' load."""
        if len(points) < len(self.rest):  # whole metal, whatever was torn before
            self.set_triangles(None)
        points = points[: len(self.rest)]
        self.points = points
        self.damage = np.zeros(self.seam.count) if damage is None else np.asarray(damage)
        self.load = load
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
        self.stitches.move(*tubes.tube_points(self.seam.paths(points), self.seam.radii(self.damage), SIDES))

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer: coarse sheets and rods as they stand."""
        surface = self.model.mesh.surface
        out = []
        for layer, mask in (("skin", self.outer), ("inner", ~self.outer)):
            out.append(
                (
                    layer,
                    Solid(self.points, self.triangles[mask], surface.triangle_part[mask], surface.part_names),
                )
            )
        for layer, name, thing, triangles in (
            ("bar", "bar", self.bar, self.bar_rods.triangles),
            ("inner", "window_frame", self.frame, self.frame_rods.triangles),
        ):
            out.append((layer, Solid.of(name, np.asarray(thing.points, dtype=np.float64), triangles)))
        return out

    # painting ---------------------------------------------------------------------------------------------

    def paint(self, theme: Theme, mode: ColourMode, picked: Ints | None = None) -> None:
        """Colour everything for the theme and the colour mode, with some nodes picked out."""
        for name, sheet, metal, lines in (
            ("skin", self.skin_sheet, self.skin, self.skin_lines),
            ("inner", self.inner_sheet, self.inner, self.inner_lines),
        ):
            tone = rgb(getattr(theme, name))
            colours = self._sheet_colours(sheet, metal, mode, tone)
            if picked is not None and len(picked):
                colours = self._picked_out(sheet, colours, picked, theme)
            metal.paint(colours)
            self._paint_lines(sheet, lines, colours, rgb(theme.crease))
        self._paint_rods(theme)
        self.hardware.paint(shade(self.hardware.normals, rgb(theme.fittings), self.sign, contrast=2.2))
        self._paint_stitches(theme)

    def _sheet_colours(self, sheet: Sheet, metal: Drawn, mode: ColourMode, tone: Floats) -> Floats:
        normals = np.asarray(metal.normals, dtype=np.float64)
        if mode is ColourMode.MATERIAL:
            return shade(normals, tone, self.sign)
        values = self._values(sheet, mode)
        return shade(normals, MAPS[mode](values), self.sign, contrast=0.45)

    def _values(self, sheet: Sheet, mode: ColourMode) -> Floats:
        if mode is ColourMode.OUTBOARD:
            return sheet.to_drawn @ (self.sign * (self.points - self.rest)[sheet.nodes, 1])
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
        self.stitches.paint(np.repeat(colours, RINGS * SIDES, axis=0))


def _sheet_things(name: str, sheet: Sheet, width: float) -> tuple[Drawn, Drawn]:
    start = np.zeros((len(sheet.source), 3))
    metal = Drawn(name, start, triangles=sheet.triangles)
    lines = Drawn(name, start, lines=sheet.lines[sheet.always], shading=Shading.PLAIN, width=width)
    return metal, lines
