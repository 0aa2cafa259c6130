"""What is said about the metal on the stage: aim, start shape, clearance, load path."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.record import Aim, Clearance, Frame
from sim.rigid import Barrier
from sim.units import Units, length_text
from ui.scene import ghost, tubes
from ui.scene.barrier import barrier_solid
from ui.scene.cast import Cast
from ui.scene.colours import IN, LOAD, OUT, Theme, rgb
from ui.scene.door_scene import DoorScene
from ui.scene.label import Label
from ui.scene.metal import shade
from ui.scene.path import LoadPath

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

BARRIER_OPACITY = 0.35
GUESS_OPACITY = 0.6
COVERED_OPACITY = 0.28
"""Of the load path where metal covers it."""
CLEARANCE_COVERED_OPACITY = 0.5
"""Of the clearance where metal covers it: the number on top belongs to a line one can see."""
CLEARANCE_RADIUS_M, CLEARANCE_END_M = 0.0026, 0.007
LEFT_M = 0.004
"""The start shape is drawn where the metal has left it by more than this: elsewhere it would double edges."""
BELOW_M = np.array([0.0, 0.0, 0.16])
"""The arrow of the panel behind a lip stands below the lip's own, clear of its word."""
ABOVE_M = np.array([0.0, 0.0, 0.045])
"""The number of the clearance stands over its line, not on it."""


def way_word(aim: Aim) -> str:
    """Return the bare word for the way of an arrow."""
    return {"out": "outward", "in": "inward", "along": "along the flange"}[aim.way]


def millimetres(value_m: float) -> str:
    """Return a length in words."""
    return length_text(value_m, Units.METRIC)


def _pieces(lines: Sequence[Floats]) -> Floats:
    """Return polylines piece by piece, shape (k, 2, 3) [m]."""
    return np.concatenate([np.stack((one[:, :-1], one[:, 1:]), axis=2).reshape(-1, 2, 3) for one in lines])


class Notes:
    """Notes about one door on one cast."""

    def __init__(self, cast: Cast) -> None:
        self.cast = cast
        self.door: DoorScene | None = None
        self.arrow_words: Callable[[Aim], str] = way_word
        self.length_words: Callable[[float], str] = millimetres
        self.aim: Aim | None = None
        self.tool: object | None = None
        self.share = True
        self.barrier: Barrier | None = None
        self.barrier_m = 0.0
        self.clearance: Clearance | None = None
        self.path_frame: Frame | None = None
        self.begun: Floats | None = None
        self.solids: tuple[tuple[Floats, Ints, Floats], ...] = ()
        self._path: LoadPath | None = None
        self._way = Label(cast.renderer, kept_in=True)
        self._gap = Label(cast.renderer, on_top=True, beside=True, kept_in=True)

    def start_over(self, door: DoorScene) -> None:
        """Belong to another door, and say nothing about it yet."""
        self.door = door
        self.aim = self.tool = self.clearance = self.path_frame = self.barrier = self.begun = None
        self.solids = ()
        self._path = LoadPath(door.model)
        self._way.hide()
        self._gap.hide()

    def set_scale(self, scale: float) -> None:
        """Write ``scale`` times as large."""
        self._way.scale = self._gap.scale = scale

    def close(self) -> None:
        """Leave the scene."""
        self._way.remove()
        self._gap.remove()
        self.door = self._path = None

    # before the push --------------------------------------------------------------------------------------

    def show_aim(self, aim: Aim | None, tool: object | None, theme: Theme, *, share: bool = True) -> None:
        """Show the tips, the line of action and (with share) which way the metal will go, or nothing."""
        self.aim, self.tool, self.share = aim, tool, share
        self.cast.drop("tips", "tip_edges", "rod", "share", "behind")
        self._way.hide()
        if aim is None or self.door is None:
            return
        solid, edges = ghost.tips(aim, self.door.sign, tool)
        tips = self.cast.solid("tips", *solid)
        tips.paint(shade(solid[2], rgb(theme.tool), self.door.sign, contrast=1.4))
        self.cast.lines("tip_edges", edges, 1.5).paint(rgb(theme.crease))
        self.cast.solid("rod", *ghost.action_rod(aim)).paint(rgb(theme.text))
        if share:
            self._show_share(aim, self.door, theme)

    def _show_share(self, aim: Aim, door: DoorScene, theme: Theme) -> None:
        """Show the arrow of the way the metal will go; a guess is broken and one sees through it."""
        middle = door.start[door.model.mesh.surface.nodes["skin_mid"]].mean(axis=0)
        place = ghost.word_place(aim, door.sign, middle)
        if place is None:
            return
        colour = {"out": rgb(OUT), "in": rgb(IN), "along": rgb(theme.text)}[aim.way]
        arrow = ghost.share_arrow(aim, door.sign, middle)
        if arrow is not None:
            drawn = self.cast.solid("share", *arrow)
            if aim.basis == "guess":
                drawn.set_opacity(GUESS_OPACITY)
            drawn.paint(colour)
        if aim.turns_in:
            other = replace(aim, outward_ratio=-1.0, tips=aim.tips - BELOW_M)
            behind = ghost.share_arrow(other, door.sign, middle)
            if behind is not None:
                self.cast.solid("behind", *behind).paint(rgb(IN))
        self._way.say(self.arrow_words(aim), place, colour, theme)

    def show_barrier(self, barrier: Barrier | None, travel_m: float, theme: Theme) -> None:
        """Show the rigid body of a crush where it stands along its line [m], or nothing."""
        self.barrier, self.barrier_m = barrier, travel_m
        self.cast.drop("barrier")
        if barrier is None or self.door is None:
            return
        solid = self.cast.solid("barrier", *barrier_solid(barrier, travel_m))
        solid.set_opacity(BARRIER_OPACITY)
        solid.paint(rgb(theme.outline))

    def show_tools(self, solids: Sequence[tuple[Floats, Ints, Floats]], theme: Theme) -> None:
        """Show solids that work on the metal or carry the car, or nothing."""
        self.solids = tuple(solids)
        self.cast.drop("tools")
        if self.solids and self.door is not None:
            tools = self.cast.solid("tools", *tubes.joined(list(self.solids)))
            normals = np.asarray(tools.normals, dtype=np.float64)
            tools.paint(shade(normals, rgb(theme.bar), self.door.sign, contrast=1.8))

    # beside the metal -------------------------------------------------------------------------------------

    def show_start(self, on: bool, theme: Theme, begun: Floats | None = None) -> None:
        """Show or hide the rims and sharp edges of the start shape: as built, or as it was found."""
        if begun is not self.begun:
            self.begun = begun
            self.cast.drop("start")
        if self.door is None or not on:
            self.cast.drop("start")
            return
        if "start" not in self.cast:
            self.cast.lines("start", _pieces(self.door.start_lines_of(begun)), 2.0)
        start = self.cast["start"]
        now = _pieces(self.door.start_lines_of(self.door.points)).reshape(-1, 3)
        left = np.linalg.norm(now - start.points, axis=1).reshape(-1, 2).max(axis=1) > LEFT_M
        start.set_lines(np.arange(len(now)).reshape(-1, 2)[left])
        start.paint(rgb(theme.outline))

    def show_clearance(self, clearance: Clearance | None, theme: Theme) -> None:
        """Show a taut line from the metal to the occupant's envelope with its length, or nothing."""
        self.clearance = clearance
        self.cast.drop("clearance", "clearance_covered")
        self._gap.hide()
        if clearance is None:
            return
        ends = np.array([clearance.metal_point, clearance.body_point], dtype=np.float64)
        line, normals = tubes.tube_points(ends[None], CLEARANCE_RADIUS_M, 8)
        solids = [(line, tubes.tube_triangles(1, 2, 8), normals)]
        solids += [tubes.ball(end, CLEARANCE_END_M, 5, 10) for end in ends]
        points, triangles, _ = tubes.joined(solids)
        self.cast.plain("clearance", points, triangles).paint(rgb(theme.text))
        covered = self.cast.plain("clearance_covered", points, triangles)
        covered.shine_through(CLEARANCE_COVERED_OPACITY)
        covered.paint(rgb(theme.text))
        ink = rgb(theme.plate_text)
        words = f"{self.length_words(clearance.distance_m)} to the occupant"
        self._gap.say(words, ends.mean(axis=0) + ABOVE_M, ink, theme)

    @property
    def labels(self) -> tuple[Label, ...]:
        """The words that stand on the stage, or may."""
        return self._way, self._gap

    def key_places(self) -> Floats:
        """Return what words of others must not cover, (k, 3) [m]: the tips' places, ends of the clearance."""
        places = [] if self.aim is None else [np.asarray(self.aim.tips, dtype=np.float64).reshape(-1, 3)]
        if self.clearance is not None:
            places.append(np.array([self.clearance.metal_point, self.clearance.body_point]))
        return np.concatenate(places) if places else np.zeros((0, 3))

    def hush(self) -> None:
        """Hide the words, as long as the metal is not drawn where they stand."""
        self._way.hide()
        self._gap.hide()

    def mind_the_cut(self, keeps: Callable[[Floats], bool]) -> None:
        """Leave out load path and line of action, which would cover the faces, and a clearance cut away."""
        cut = not (keeps(np.full(3, -1e3)) and keeps(np.full(3, 1e3)))
        for name in ("path", "path_covered", "rod"):
            if name in self.cast:
                self.cast[name].show(not cut)
        if self.clearance is None or "clearance" not in self.cast:
            return
        ends = (self.clearance.metal_point, self.clearance.body_point)
        seen = all(keeps(np.array(end)) for end in ends)
        for name in ("clearance", "clearance_covered"):
            self.cast[name].show(seen)
        if not seen:
            self._gap.hide()

    def show_path(self, frame: Frame | None) -> None:
        """Show the load path of a frame as ribbons, wide by force, or nothing."""
        self.path_frame = frame
        ribbons = (
            None if frame is None or self._path is None or self.door is None else self._path.ribbons(frame)
        )
        if ribbons is None:
            self.cast.drop("path", "path_covered")
            return
        self.cast.solid("path", *ribbons).paint(rgb(LOAD))
        covered = self.cast.solid("path_covered", *ribbons)
        covered.shine_through(COVERED_OPACITY)
        covered.paint(rgb(LOAD))
