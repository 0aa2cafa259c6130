"""The stage: the door, what stands round it and what is said about it, on any pyvista plotter.

It holds no rule: it shows what it is given. No Qt here, so that the same stage draws windows and pictures.
Nothing is rendered by it; ``request_frame`` asks whoever owns the plotter for at most one frame.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import ArrayLike, NDArray
from vtkmodules.vtkRenderingCore import vtkLight

from sim.record import Aim, Clearance, Frame, folded
from sim.rigid import Barrier
from ui.scene import cameras
from ui.scene.asunder import ONE_DOOR_REACH, SIDE_REACH, Asunder
from ui.scene.cast import Cast
from ui.scene.colours import THEMES, ColourMode, Theme, rgb
from ui.scene.cutting import Cutting
from ui.scene.door_scene import DoorScene
from ui.scene.drawn import Drawn
from ui.scene.layers import LAYERS, Mode, opacity_of
from ui.scene.map_band import MapBand
from ui.scene.marks import DrawnMarks
from ui.scene.motion import MotionArrows
from ui.scene.notes import Notes
from ui.scene.pick import Picker, Pointed, Solid
from ui.scene.raw_edges import RawEdges
from ui.scene.setting import THINGS, Setting
from ui.scene.side_scene import SideScene
from ui.scene.viewer import Viewer
from ui.state.seeing import CutPlane

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Solid3 = tuple[Floats, Ints, Floats]


def _nothing() -> None:
    """Ask nobody."""


class Stage(Viewer):
    """The drawn scene of one door.

    Parameters
    ----------
    plotter
        Any pyvista plotter; the stage adds actors, one light and a background, and never renders.
    request_frame
        Called after every change.
    """

    def __init__(self, plotter, request_frame: Callable[[], None] = _nothing) -> None:
        self.plotter = plotter
        self.renderer = plotter.renderer
        self.request_frame = request_frame
        self.theme: Theme = THEMES["light"]
        self.mode = ColourMode.MATERIAL
        self.door: DoorScene | SideScene | None = None
        self._setting: Setting | None = None
        self.layer_modes = dict.fromkeys(LAYERS, Mode.SOLID)
        self.cast = Cast(self.renderer)
        self.notes = Notes(self.cast)
        self.marks = DrawnMarks(self.cast)
        self.cutting = Cutting(self.cast, self.notes, self.marks)
        self._raw = RawEdges(self.cast)
        self.asunder = Asunder(self.cast)
        self.band = MapBand(self.cast)
        self.alone: str | None = None
        self.frame: Frame | None = None
        self.picked: Ints | None = None
        self._arrows: MotionArrows | None = None
        self._picker = Picker()
        self._picker_is_stale = True
        self._add_light()

    def _add_light(self) -> None:
        self.plotter.remove_all_lights()
        light = vtkLight()
        light.SetLightTypeToHeadlight()
        self.renderer.AddLight(light)
        self.renderer.SetAutomaticLightCreation(False)

    @property
    def _sign(self) -> float:
        return self.door.sign if self.door is not None else 1.0

    # the model --------------------------------------------------------------------------------------------

    def set_model(self, model) -> None:
        """Show another door, at its start."""
        first = self.door is None
        self.band.hide()
        self.cast.clear()
        self.door = SideScene(model) if getattr(model, "side", None) is not None else DoorScene(model)
        self.frame = self.picked = None
        self._picker_is_stale = True
        self.notes.start_over(self.door)
        self.asunder.reach = SIDE_REACH if isinstance(self.door, SideScene) else ONE_DOOR_REACH
        for index, thing in enumerate(self.door.drawn):
            self.cast.admit(f"door {index}", thing, pointable=True)
        self._setting = Setting(self.cast, model, self._sign)
        self._arrows = MotionArrows(self.door.rest, self.door.arrow_nodes, self._sign)
        self.cast.admit("motion", self._arrows.drawn)
        self._repaint()
        if first:
            self.view_preset("home")
        self.request_frame()

    # the metal --------------------------------------------------------------------------------------------

    def show_points(self, points: ArrayLike, frame: Frame | None = None) -> None:
        """Move the metal to points [m], shape (n, 3), in place; the frame brings seam damage and load."""
        if self.door is None:
            return
        self.frame = frame
        damage = None if frame is None else frame.seam_damage
        load = None if frame is None else frame.load
        if frame is not None:
            self.door.set_triangles(frame.triangles)
        place = np.asarray(points, dtype=np.float64)
        if isinstance(self.door, SideScene) and frame is not None:
            self.door.take_fittings(frame)
        self.door.move(place, damage, load)
        self.band.move(place)
        torn = None if frame is None else frame.triangles
        self._raw.show(place, self.door.model.structure.triangles, torn, len(self.door.start))
        self._picker_is_stale = True
        self._paint_door()
        self.notes.show_barrier(
            None if frame is None else frame.barrier, 0.0 if frame is None else frame.opening_m, self.theme
        )
        if self.cutting.plane is not None:
            self._show_cut()
        self.request_frame()

    def show_gone(self, names: frozenset[str] | None) -> None:
        """Leave out panes, trim and seals that have been taken away, and show what they hid."""
        if isinstance(self.door, SideScene) and names is not None and names != self.door.inside.now.gone:
            self.door.inside.show_gone(names)
            self._picker_is_stale = True
            self._repaint()
            self.request_frame()

    def set_colour_mode(self, mode: ColourMode | str) -> None:
        """Colour the metal by "material", "outboard", "seam", "load" or "folded"."""
        self.mode = ColourMode(mode)
        self._paint_door()
        self.request_frame()

    def highlight(self, nodes: ArrayLike | None) -> None:
        """Pick out some nodes of the model by tone, or none."""
        self.picked = None if nodes is None else np.asarray(nodes, dtype=np.int64).reshape(-1)
        self._paint_door()
        self.request_frame()

    def _paint_door(self) -> None:
        if self.door is None or self._arrows is None:
            return
        self.door.fold(folded(self.frame) if self.frame and self.mode is ColourMode.FOLDED else None)
        self.door.paint(self.theme, self.mode, self.picked)
        on = self.mode is ColourMode.OUTBOARD and self._modes["skin"] is not Mode.OFF
        self._arrows.drawn.show(on)
        if on:
            self._arrows.move(self.door.points)
            self._arrows.drawn.paint(rgb(self.theme.text))

    # what is said about it --------------------------------------------------------------------------------

    def show_aim(self, aim: Aim | None, tool: object | None = None, *, share: bool = True) -> None:
        """Show the tips, their line of action and, before a push, its outward or inward share; or nothing."""
        self.notes.show_aim(aim, tool, self.theme, share=share)
        self._said()

    def show_tools(self, *solids: Solid3) -> None:
        """Show what works on the metal or carries the car, solids of `ui.scene.tools`; or nothing."""
        self.notes.show_tools(solids, self.theme)
        self._said()

    def show_barrier(self, barrier: Barrier | None) -> None:
        """Show the rigid body of a crush where it first touches the metal, or nothing."""
        self.notes.show_barrier(barrier, 0.0, self.theme)
        self._said()

    def show_start_ghost(self, on: bool, begun: Floats | None = None) -> None:
        """Show or hide the outline of the start shape."""
        self.notes.show_start(on, self.theme, begun)
        self._said()

    def show_clearance(self, clearance: Clearance | None) -> None:
        """Show the taut line from the metal to the occupant's envelope, or nothing."""
        self.notes.show_clearance(clearance, self.theme)
        self._said()

    def show_path(self, frame: Frame | None) -> None:
        """Show the load path of a frame as ribbons, wide by force, or nothing."""
        self.notes.show_path(frame)
        self._said()

    def _said(self) -> None:
        """Hide what was just said while the metal is drawn elsewhere or cut away, and ask for a frame."""
        self.asunder.hush()
        if self.asunder.ratio > 0.0:
            self.notes.hush()
        if self.cutting.plane is not None:
            self.notes.mind_the_cut(self.cutting.keeps)
        self.request_frame()

    def set_words(self, *, arrow: Callable[[Aim], str], length: Callable[[float], str]) -> None:
        """Set how the arrow's word is found, and how a length [m] is written."""
        self.notes.arrow_words = arrow
        self.notes.length_words = length
        self._say_again()

    def _say_again(self) -> None:
        notes, theme = self.notes, self.theme
        notes.show_aim(notes.aim, notes.tool, theme, share=notes.share)
        notes.show_barrier(notes.barrier, notes.barrier_m, theme)
        notes.show_tools(notes.solids, theme)
        notes.show_clearance(notes.clearance, theme)
        notes.show_start("start" in self.cast, theme, notes.begun)
        self._show_cut()
        self._apply_asunder()
        self.marks.show(self.marks.strokes, self.marks.measures, theme)

    # looks ------------------------------------------------------------------------------------------------

    def set_layer(self, layer: str, mode: Mode | str) -> None:
        """Show a layer "solid", "see_through" or "off"."""
        self.layer_modes[layer] = Mode(mode)
        self._picker_is_stale = True
        self._apply_layers()
        self._paint_door()
        self._say_again()
        self.request_frame()

    def set_alone(self, layer: str | None) -> None:
        """Show one layer alone, or all as they are set."""
        self.alone = layer
        self._picker_is_stale = True
        self._apply_layers()
        self._paint_door()
        self._say_again()
        self.request_frame()

    @property
    def _modes(self) -> dict[str, Mode]:
        """How each layer is shown now, the others off where one is alone."""
        if self.alone is None:
            return self.layer_modes
        alone = {self.alone: Mode.SOLID}
        return {layer: alone.get(layer, Mode.OFF) for layer in self.layer_modes}

    def _layer_things(self, layer: str) -> list[Drawn]:
        still = self._setting.things(layer) if self._setting is not None and layer in THINGS else []
        return still + (self.door.layers.get(layer, []) if self.door is not None else [])

    def _apply_layers(self) -> None:
        for layer, mode in self._modes.items():
            for thing in self._layer_things(layer):
                thing.show(mode is not Mode.OFF)
                thing.set_opacity(1.0 if thing.is_lines else opacity_of(layer, mode))

    def set_theme(self, theme: Theme | str) -> None:
        """Show in another theme, given by itself or by its name."""
        self.theme = THEMES[theme] if isinstance(theme, str) else theme
        self._repaint()
        self.request_frame()

    def set_line_scale(self, scale: float) -> None:
        """Draw lines and words ``scale`` times as large, for pictures and high-density screens."""
        self.cast.set_line_scale(scale)
        self.notes.set_scale(scale)
        self.cutting.scale = self.asunder.scale = self.marks.scale = scale
        self._say_again()

    def _repaint(self) -> None:
        theme = self.theme
        self.renderer.SetGradientBackground(False)
        self.renderer.SetBackground(*rgb(theme.paper))
        if self.door is None:
            return
        self._paint_door()
        if self._setting is not None:
            self._setting.paint(theme)
        self._say_again()
        self._apply_layers()

    # the camera -------------------------------------------------------------------------------------------

    def view_preset(self, name: str) -> None:
        """Put the camera at a saved view; "section" also cuts the door at the height of the latch."""
        self.shot = self._shot(name)
        self.set_cut(CutPlane("level", cameras.SECTION_HEIGHT_M) if name == "section" else None)

    def _shot(self, name: str) -> cameras.Shot:
        if name == "patient" and self.door is not None:
            heads = [c for c in self.door.model.occupant if c.name == "head"]
            if heads:
                return cameras.from_seat(0.5 * (heads[0].start + heads[0].end), self._sign)
        if not isinstance(self.door, SideScene):
            return cameras.SHOTS[name].mirrored(self._sign)
        shot = cameras.SIDE_SHOTS[name].mirrored(self._sign)
        wide = name in cameras.WIDE
        return cameras.fitted(shot, self.renderer.GetTiledAspectRatio()) if wide else shot

    def set_cut(self, plane: CutPlane | None) -> None:
        """Cut the scene by a plane, the viewer's side left out, and show the cut faces; or cut nothing."""
        self.cutting.set_plane(plane, np.array(self.renderer.GetActiveCamera().GetPosition()))
        self.notes.show_clearance(self.notes.clearance, self.theme)
        self._show_cut()
        self.request_frame()

    def set_asunder(self, ratio: float) -> None:
        """Draw the parts apart, 0 (together) .. 1."""
        was, self.asunder.ratio = self.asunder.ratio, float(np.clip(ratio, 0.0, 1.0))
        self._picker_is_stale = True
        if was > 0.0 and self.asunder.ratio == 0.0:
            self._say_again()
        self._apply_asunder()
        self._said()

    def _apply_asunder(self) -> None:
        self.asunder.apply(self._layer_things, self._modes, self._sign, self.theme)

    def show_marks(
        self, strokes: Sequence[tuple[str, Floats]], measures: Sequence[tuple[Floats, str]]
    ) -> None:
        """Show what was drawn, ("pen" or "arrow", points [m]), and what was measured, lines with words."""
        self.marks.show(strokes, measures, self.theme)
        self.request_frame()

    @property
    def apart(self) -> tuple[CutPlane | None, float, str | None]:
        """How the picture is taken apart: the plane, how far the parts are drawn asunder, what is alone."""
        return self.cutting.plane, self.asunder.ratio, self.alone

    def take_apart(self, plane: CutPlane | None, ratio: float, alone: str | None) -> None:
        """Take the picture apart as another stage's is."""
        if (plane, ratio, alone) != self.apart:
            self.set_alone(alone)
            self.set_asunder(ratio)
            self.set_cut(plane)

    def settle(self) -> None:
        """Put names where they are seen from here: the viewer has come to rest."""
        if self.cutting.plane is not None:
            self._show_cut()

    def _show_cut(self) -> None:
        self.notes.mind_the_cut(self.cutting.keeps)
        self.cutting.show(self.door, self._setting, self._modes, self.theme)

    # pointing ---------------------------------------------------------------------------------------------

    def first_hit(self, start: Floats, end: Floats) -> Pointed | None:
        """Return the first shown part that the segment between two points [m] meets, or None."""
        if self.door is None:
            return None
        if self._picker_is_stale:
            self._picker.load(self._solids())
            self._picker_is_stale = False
        return self._picker.first_hit(start, end)

    def _solids(self) -> list[Solid]:
        shown = self._modes
        solids = [
            solid.moved(self.asunder.offset(layer, self._sign))
            for layer, solid in self.door.solids()
            if shown[layer] is not Mode.OFF
        ]
        for layer in THINGS:
            if shown[layer] is not Mode.OFF and self._setting is not None:
                solids += self._setting.solids(layer)
        return solids

    def layer_of(self, part: str) -> str | None:
        """Return the layer a part that was pointed at belongs to."""
        if self.door is None or self._setting is None:
            return None
        solids = self.door.solids() + [
            (layer, one) for layer in THINGS for one in self._setting.solids(layer)
        ]
        return next((layer for layer, solid in solids if solid.holds(part)), None)

    # the end -------------------------------------------------------------------------------------------

    def close(self) -> None:
        """Take everything off the plotter."""
        self.cast.clear()
        self.notes.close()
        self.cutting.close()
        self.asunder.close()
        self.marks.close()
        self.band.close()
        self.door, self._arrows, self._setting, self._picker = None, None, None, Picker()
