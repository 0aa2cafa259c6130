"""The section plane on the stage: what it leaves out, the faces it shows, and their names."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from ui.scene.cast import Cast
from ui.scene.colours import SEAM, Theme, rgb
from ui.scene.door_scene import DoorScene
from ui.scene.hem_fold import folds
from ui.scene.label import Label, at_pixels, on_pixels
from ui.scene.layers import Mode
from ui.scene.marks import DrawnMarks
from ui.scene.naming import on_picture, part_places
from ui.scene.notes import Notes
from ui.scene.pick import Solid
from ui.scene.section import crossing, cut_segments, filled, segments_of, strips
from ui.scene.setting import Setting
from ui.scene.side_scene import SideScene
from ui.scene.word_room import Picture, Wish, find_rooms
from ui.state.seeing import CutPlane

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

LINE_WIDTH, HALO_WIDTH = 2.4, 6.0
"""Least width of a cut sheet on the screen, for at arm's length a sheet is thinner than a pixel; and of the
light line behind it, which lifts it off dark metal."""
NAMES_MOST, LEAST_PX = 10, 12
"""Most names at a cut; a face that is smaller on the picture has none."""
LEADER_WIDTH = 1.2
FACE_SAMPLES = 100
"""Places on all faces that names are weighed against."""
IN_VIEW = 0.92
OVER_HALO = 0.15
"""How far a cut's dark line lies before its halo, of the depth: seen aslant the halo would break it up."""
LIFT_M = 0.0003
"""Faces stand this far behind the plane, on the side that is shown."""
FILLED = {"body": "body_edge", "occupant": "occupant", "trim_glass": "bar"}
"""Layers of solids that are filled, and the theme's tone of the filling."""
FACES = ("cut_halo", "cut_lines", "cut_sheets", "cut_bond")
SHEETS = ("skin", "inner", "pillar")
STILL = ("body", "occupant")
"""Layers of what never moves."""
UNNAMED = ("latch_patch", "hinge_patch", "latch_wrap", "flange", "belt_outer_lip")


class Cut(NamedTuple):
    """Where one solid of a layer meets the plane: segments (k, 2, 3) [m], with the part of each by index."""

    layer: str
    names: tuple[str, ...]
    part: Ints
    segments: Floats


class Cutting:
    """The plane of one stage; shows nothing until it has a plane.

    Parameters
    ----------
    cast : of the stage;  notes, marks : what else is said on it, which no name may cover
    """

    def __init__(self, cast: Cast, notes: Notes, marks: DrawnMarks) -> None:
        self.cast, self._notes, self._marks = cast, notes, marks
        self.plane: CutPlane | None = None
        self.kept_sign = -1.0
        self.scale = 1.0
        self._labels: list[Label] = []
        self._fittings = np.zeros((0, 3))
        self._still: tuple[Setting, CutPlane, tuple[str, ...], list[Cut]] | None = None

    def set_plane(self, plane: CutPlane | None, viewer: Floats | None = None) -> None:
        """Cut by a plane: what lies on the viewer's side [m] of it is left out."""
        self.plane = plane
        if plane is None:
            self.cast.cut(None)
            return
        at_viewer = 1.0 if viewer is None else float(np.sign(viewer[plane.axis] - plane.place_m)) or 1.0
        self.kept_sign = -at_viewer
        normal = np.zeros(3)
        normal[plane.axis] = self.kept_sign
        self.cast.cut(normal, plane.place_m)

    def keeps(self, point: Floats) -> bool:
        """Tell whether a place [m], shape (3,), is on the side that is shown; all is, without a plane."""
        if self.plane is None:
            return True
        return self.kept_sign * (float(point[self.plane.axis]) - self.plane.place_m) >= 0.0

    def show(
        self,
        door: DoorScene | SideScene | None,
        setting: Setting | None,
        modes: dict[str, Mode],
        theme: Theme,
    ) -> None:
        """Show the faces of the plane through what is shown, with their names; or nothing."""
        self._hide_names()
        if self.plane is None or door is None or setting is None:
            self.cast.drop(*FACES, *(f"cut_{layer}" for layer in FILLED))
            return
        shown = {layer for layer, mode in modes.items() if mode is not Mode.OFF}
        sheets = [(layer, solid) for layer, solid in door.solids() if layer in shown]
        still = self._still_cuts(setting, tuple(layer for layer in STILL if layer in shown))
        self._sheets(door, shown, theme)
        # what stands still is drawn full; a rail that gives is a hollow box
        moving = _cuts(sheets, self.plane)
        self._fill([cut for cut in moving if cut.layer != "body"] + still, theme)
        self._fittings = _fittings(door)
        self._name(moving + still, theme)

    def _still_cuts(self, setting: Setting, layers: tuple[str, ...]) -> list[Cut]:
        """Return the cuts of what never moves: found once for a plane and the layers that are shown."""
        assert self.plane is not None
        if self._still is None or self._still[0] is not setting or self._still[1:3] != (self.plane, layers):
            solids = [(layer, one) for layer in layers for one in setting.solids(layer)]
            self._still = (setting, self.plane, layers, _cuts(solids, self.plane))
        return self._still[3]

    def _lifted(self, points: Floats, times: float = 1.0) -> Floats:
        out = np.array(points)
        assert self.plane is not None
        out[..., self.plane.axis] += times * LIFT_M * self.kept_sign
        return out

    def _sheets(self, door: DoorScene | SideScene, shown: set[str], theme: Theme) -> None:
        """Draw sheets and folds as strips of their thickness, and as lines that one can see."""
        assert self.plane is not None
        place, axis = self.plane.place_m, self.plane.axis
        found, thick = [np.zeros((0, 2, 3))], [np.zeros(0)]
        for layer, _, thing, sheet in door.sheets():
            if layer in shown:
                cut = cut_segments(np.asarray(thing.points, dtype=np.float64), sheet.triangles, place, axis)
                found.append(cut)
                thick.append(np.full(len(cut), _thickness(door.model.car, layer)))
        bonds = [np.zeros((0, 2, 3))]
        for fold in self._folds(door) if {"skin", "inner"} <= shown else ():
            found.append(fold.sheets)
            thick.append(fold.thickness_m)
            if fold.damage < 0.999 and "seam" in shown:
                bonds.append(fold.bond)
        segments = self._lifted(np.concatenate(found))
        self.cast.lines_anew("cut_halo", segments, HALO_WIDTH).paint(rgb(theme.plate))
        segments = self._lifted(segments, -3.0)
        line = self.cast.lines_anew("cut_lines", self._lifted(segments, -0.5), LINE_WIDTH)
        line.lie_before(OVER_HALO)
        line.paint(rgb(theme.plate_text))
        solid = strips(segments, np.concatenate(thick), axis)
        if len(solid[1]):
            self.cast.plain_anew("cut_sheets", *solid).paint(rgb(theme.plate_text))
        else:
            self.cast.drop("cut_sheets")
        bond = self._lifted(np.concatenate(bonds), -4.0)
        if len(bond):
            self.cast.lines_anew("cut_bond", bond, LINE_WIDTH).paint(rgb(SEAM))
        else:
            self.cast.drop("cut_bond")

    def _folds(self, door: DoorScene | SideScene) -> Iterator:
        assert self.plane is not None
        car = door.model.car
        for one in door.doors.values() if isinstance(door, SideScene) else (door,):
            yield from folds(
                one.seam, one.points, one.damage, self.plane.place_m, self.plane.axis,
                width_m=one.part.mesh.shape.hem_width_m, skin_m=car.skin_thickness_m,
                inner_m=car.inner_thickness_m,
            )  # fmt: skip

    def _fill(self, cuts: list[Cut], theme: Theme) -> None:
        assert self.plane is not None
        for layer, tone in FILLED.items():
            closed = [cut.segments for cut in cuts if cut.layer == layer]
            points, triangles = filled(closed, self.plane.axis)
            if len(points):
                face = self.cast.plain_anew(f"cut_{layer}", self._lifted(points, 1.5), triangles)
                face.paint(0.55 * rgb(getattr(theme, tone)) + 0.45 * rgb(theme.body))
            else:
                self.cast.drop(f"cut_{layer}")

    # names ------------------------------------------------------------------------------------------------

    def _name(self, cuts: list[Cut], theme: Theme) -> None:
        """Put the names of the largest faces beside them: none over another word or over a key place."""
        assert self.plane is not None
        renderer = self.cast.renderer
        found = _named_segments(cuts)
        middles = np.concatenate([np.zeros((0, 3)), *(segments.mean(axis=1) for _, segments in found)])
        seen = on_picture(renderer, middles)
        flat = 0.5 * (1.0 + seen) * renderer.GetSize()
        inside = (np.abs(seen) < IN_VIEW).all(axis=1)
        named, end = [], 0
        for word, segments in found:
            part = np.arange(end, end := end + len(segments))
            part = part[inside[part]]
            if len(part) and np.ptp(flat[part], axis=0).max() > LEAST_PX * self.scale:
                named.append((word, middles[part], flat[part]))
        wishes = []
        for index, (word, middle, place) in enumerate(named[:NAMES_MOST]):
            self._say(index, word, middle[0], theme)
            wishes.append(Wish(self._labels[index].size(), place))
        size = renderer.GetSize()
        rooms = find_rooms(wishes, self._picture((float(size[0]), float(size[1])), flat[inside]))
        leaders = []
        for label, (_, middle, _), room in zip(self._labels, named, rooms, strict=False):
            if room is None:
                label.hide()
                continue
            place = self._lifted(middle[room.place], -6.0)
            left, low, right, high = room.box
            label.put(at_pixels(renderer, np.array([0.5 * (left + right), low]), place))
            if room.led:
                x, y = on_pixels(renderer, place[None])[0]
                foot = np.array([np.clip(x, left, right), np.clip(y, low, high)])
                leaders.append((place, at_pixels(renderer, foot, place)))
        if leaders:
            lines = self.cast.lines("cut_leaders", np.array(leaders), LEADER_WIDTH)
            lines.lie_over(1.0)
            lines.paint(rgb(theme.text))

    def _picture(self, size: tuple[float, float], faces: Floats) -> Picture:
        """Return what names have to mind: other words, the tips and other key places, the faces."""
        renderer = self.cast.renderer
        boxes = [label.box() for label in (*self._notes.labels, *self._marks.labels)]
        return Picture(
            size,
            tuple(box for box in boxes if box is not None),
            on_pixels(renderer, self._notes.key_places()),
            faces[:: max(1, len(faces) // FACE_SAMPLES)],
            on_pixels(renderer, self._fittings),
        )

    def _say(self, index: int, word: str, place: Floats, theme: Theme) -> None:
        while len(self._labels) <= index:
            self._labels.append(Label(self.cast.renderer, on_top=True, beside=True))
        self._labels[index].scale = self.scale
        self._labels[index].say(word, place, rgb(theme.plate_text), theme)

    def _hide_names(self) -> None:
        self.cast.drop("cut_leaders")
        for label in self._labels:
            label.hide()

    @property
    def boxes(self) -> tuple[tuple[float, float, float, float], ...]:
        """What each name takes of the picture: left, low, right, high in pixels."""
        return tuple(box for label in self._labels if (box := label.box()) is not None)

    @property
    def names(self) -> tuple[str, ...]:
        """The names that stand at the cut now."""
        return tuple(label.words for label in self._labels if label.words)

    def close(self) -> None:
        """Leave the scene."""
        for label in self._labels:
            label.remove()
        self._labels.clear()
        self._still = None


def _fittings(door: DoorScene | SideScene) -> Floats:
    """Return where latch and hinges of an only door stand, (k, 3) [m]: names had better not cover them."""
    places = part_places(door.model.structure, door.points)
    found = [place for word, place in places.items() if word in ("latch", "upper hinge", "lower hinge")]
    return np.array(found).reshape(-1, 3)


def part_word(name: str) -> str:
    """Return a part's name as it is written."""
    words = name.replace("_", " ")
    return {"outer skin": "skin"}.get(words, words)


def _thickness(car, layer: str) -> float:
    if layer == "body":
        return float(car.rail_wall_m or car.whole_side.rocker_wall_m)
    return float(car.skin_thickness_m if layer == "skin" else car.inner_thickness_m)


def _cuts(solids: list[tuple[str, Solid]], plane: CutPlane) -> list[Cut]:
    """Return the cuts of those solids of some layers that meet a plane."""
    found = []
    for layer, solid in solids:
        met = crossing(solid.points, solid.triangles, plane.place_m, plane.axis)
        if len(met):
            segments = segments_of(solid.points[solid.triangles[met]], plane.place_m, plane.axis)
            found.append(Cut(layer, solid.names, solid.part[met], segments))
    return found


def _named_segments(cuts: list[Cut]) -> list[tuple[str, Floats]]:
    """Return the cut of each named part: sheets first, and among their like the longest first."""
    found: dict[str, list[Floats]] = {}
    rank: dict[str, int] = {}
    for layer, names, part, segments in cuts:
        for index in np.unique(part).tolist():
            name = _family(layer, names[index])
            if name:
                found.setdefault(name, []).append(segments[part == index])
                rank[name] = 0 if layer in SHEETS else 1
    whole = {name: np.concatenate(pieces) for name, pieces in found.items()}
    size = {name: float(np.linalg.norm(np.diff(cut, axis=1), axis=2).sum()) for name, cut in whole.items()}
    return [(part_word(name), whole[name]) for name in sorted(size, key=lambda n: (rank[n], -size[n]))]


def _family(layer: str, name: str) -> str:
    """Return the name a face bears; patches bear none, the pillar's walls one."""
    if any(name.endswith(word) for word in UNNAMED):
        return ""
    return {"pillar": "middle_pillar", "occupant": "occupant"}.get(layer, name)
