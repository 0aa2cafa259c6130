"""The stage: the door, what stands round it and what is said about it, on any pyvista plotter.

It holds no rule: it shows what it is given. No Qt here, so that the same stage draws windows and pictures.
Nothing is rendered by it; ``request_frame`` asks whoever owns the plotter for at most one frame.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import ArrayLike, NDArray
from vtkmodules.vtkCommonDataModel import vtkPlane
from vtkmodules.vtkRenderingCore import vtkBillboardTextActor3D, vtkLight

from sim.record import Aim, Clearance, Frame
from ui.scene import cameras, ghost, surroundings, tubes
from ui.scene.colours import IN, OUT, THEMES, ColourMode, Theme, rgb
from ui.scene.door_scene import DoorScene
from ui.scene.drawn import Drawn, Shading
from ui.scene.layers import LAYERS, Mode, opacity_of
from ui.scene.pick import Picker, Pointed, Solid

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

MODEL_THINGS = ("body", "body_edges", "occupant", "ground", "grid", "shadow")


def _nothing() -> None:
    """Ask nobody."""


class Stage:
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
        self.request_frame = request_frame
        self.theme: Theme = THEMES["light"]
        self.mode = ColourMode.MATERIAL
        self.door: DoorScene | None = None
        self.layer_modes = dict.fromkeys(LAYERS, Mode.SOLID)
        self.line_scale = 1.0
        self.words = {"out": "outward", "in": "inward"}
        self._things: dict[str, Drawn] = {}
        self._aim: Aim | None = None
        self._picked: Ints | None = None
        self._label = vtkBillboardTextActor3D()
        self._section: vtkPlane | None = None
        self._picker = Picker()
        self._picker_is_stale = True
        self._light()

    # set-up -----------------------------------------------------------------------------------------------

    def _light(self) -> None:
        self.plotter.remove_all_lights()
        light = vtkLight()
        light.SetLightTypeToHeadlight()
        self.plotter.renderer.AddLight(light)
        self.plotter.renderer.SetAutomaticLightCreation(False)

    @property
    def _sign(self) -> float:
        return self.door.sign if self.door is not None else 1.0

    def set_model(self, model) -> None:
        """Show another door, at its start."""
        first = self.door is None
        for thing in self._all():
            self.plotter.renderer.RemoveActor(thing.actor)
        self._things.clear()
        self._aim, self._picked = None, None
        self.plotter.renderer.RemoveActor(self._label)
        self.door = DoorScene(model)
        self._picker_is_stale = True
        self._add_surroundings(model)
        for thing in self._all():
            self._admit(thing)
        self._repaint_all()
        if first:
            self.view_preset("home")
        self.request_frame()

    def _admit(self, thing: Drawn) -> None:
        thing.scale_lines(self.line_scale)
        self.plotter.renderer.AddActor(thing.actor)

    def _all(self) -> list[Drawn]:
        door = self.door.drawn if self.door is not None else []
        return [*self._things.values(), *door]

    def _add_surroundings(self, model) -> None:
        sign = self._sign
        points, triangles, normals = surroundings.body_solid(model.body)
        self._put("body", points, triangles, normals)
        self._put_lines("body_edges", surroundings.body_edges(model.body), 1.2)
        points, triangles, normals = surroundings.occupant_solid(model.occupant)
        self._put("occupant", points, triangles, normals)
        points, triangles, self._shadow_dark = surroundings.shadow_patch(sign)
        self._things["shadow"] = Drawn("ground", points, triangles=triangles, shading=Shading.PLAIN)
        self._put_lines("grid", surroundings.grid_lines(sign), 1.0)
        for name in ("shadow", "grid", "body_edges"):
            self._things[name].actor.PickableOff()

    def _put(self, name: str, points: Floats, triangles: Ints, normals: Floats, *, plain: bool = False) -> Drawn:
        shading = Shading.PLAIN if plain else Shading.SMOOTH
        thing = Drawn(name, points, triangles=triangles, shading=shading)
        thing.move(points, normals)
        self._things[name] = thing
        return thing

    def _put_lines(self, name: str, segments: Floats, width: float) -> Drawn:
        count = segments.shape[1]
        ids = np.arange(len(segments) * count).reshape(-1, count)
        thing = Drawn(name, segments.reshape(-1, 3), lines=ids, shading=Shading.PLAIN, width=width)
        self._things[name] = thing
        return thing

    # the metal --------------------------------------------------------------------------------------------

    def show_points(self, points: ArrayLike, frame: Frame | None = None) -> None:
        """Move the metal to points [m], shape (n, 3), in place; the frame brings the seam's damage and the load."""
        if self.door is None:
            return
        damage = None if frame is None else frame.seam_damage
        load = None if frame is None else frame.load
        self.door.move(np.asarray(points, dtype=np.float64), damage, load)
        self._picker_is_stale = True
        self._paint_door()
        self._show_motion()
        self.request_frame()

    def _paint_door(self) -> None:
        if self.door is not None:
            self.door.paint(self.theme, self.mode, self._picked)

    def set_colour_mode(self, mode: ColourMode | str) -> None:
        """Colour the metal by "material", "outboard", "seam" or "load"."""
        self.mode = ColourMode(mode)
        self._paint_door()
        self._show_motion()
        self.request_frame()

    def highlight(self, nodes: ArrayLike | None) -> None:
        """Pick out some nodes of the model by tone, or none."""
        self._picked = None if nodes is None else np.asarray(nodes, dtype=np.int64).reshape(-1)
        self._paint_door()
        self.request_frame()

    def _show_motion(self) -> None:
        """In the outboard colours, arrows at true length on the skin: the sign also in a grey print."""

    # what is said about it --------------------------------------------------------------------------------

    def show_aim(self, aim: Aim | None, tool: object | None = None) -> None:
        """Show the tips, their line of action and the outward or inward share before a push, or nothing."""
        self._aim = aim
        self._drop("tips", "rod", "share")
        self.plotter.renderer.RemoveActor(self._label)
        if aim is not None:
            self._put("tips", *ghost.tips(aim, self._sign, tool))
            self._put("rod", *ghost.action_rod(aim))
            arrow = ghost.share_arrow(aim, self._sign)
            if arrow is not None:
                self._put("share", *arrow)
                self._place_label(aim)
            for name in ("tips", "rod", "share"):
                if name in self._things:
                    self._things[name].actor.PickableOff()
                    self._admit(self._things[name])
            self._paint_ghosts()
        self.request_frame()

    def _place_label(self, aim: Aim) -> None:
        text = self.words["out"] if aim.outward_ratio > 0 else self.words["in"]
        self._label.SetInput(text)
        self._label.SetPosition(*ghost.arrow_label_point(aim, self._sign))
        look = self._label.GetTextProperty()
        look.SetFontSize(int(17 * self.line_scale))
        look.BoldOn()
        look.SetColor(*rgb(OUT if aim.outward_ratio > 0 else IN))
        look.SetJustificationToCentered()
        self._label.PickableOff()
        self.plotter.renderer.AddActor(self._label)

    def show_start_ghost(self, on: bool) -> None:
        """Show or hide the outline of the start shape."""
        self._drop("start")
        if on and self.door is not None:
            thing = self._put_lines("start", self._start_outline(), 1.6)
            thing.actor.PickableOff()
            self._admit(thing)
            thing.paint(rgb(self.theme.outline))
        self.request_frame()

    def _start_outline(self) -> Floats:
        """Return the start shape's rims and sharp edges as polylines, shape (k, count, 3) [m]."""
        sheet = self.door.skin_sheet
        place = sheet.drawn_points(self.door.rest)
        return place[sheet.lines[sheet.always]]

    def show_clearance(self, clearance: Clearance | None) -> None:
        """Show the taut line from the metal to the occupant's envelope, or nothing."""
        self._drop("clearance")
        if clearance is not None:
            ends = np.array([clearance.metal_point, clearance.body_point], dtype=np.float64)
            line, _ = tubes.tube_points(np.linspace(*ends, 2)[None], 0.0026, 8)
            solids = [(line, tubes.tube_triangles(1, 2, 8), line * 0 + [0, 0, 1.0])]
            solids += [tubes.ball(end, 0.007) for end in ends]
            thing = self._put("clearance", *tubes.joined(solids), plain=True)
            thing.actor.PickableOff()
            self._admit(thing)
            thing.paint(rgb(self.theme.text))
        self.request_frame()

    def show_path(self, frame: Frame | None) -> None:
        """Show the load path of a frame, or nothing."""
        self.request_frame()

    def _drop(self, *names: str) -> None:
        for name in names:
            thing = self._things.pop(name, None)
            if thing is not None:
                self.plotter.renderer.RemoveActor(thing.actor)

    # looks ------------------------------------------------------------------------------------------------

    def set_layer(self, layer: str, mode: Mode | str) -> None:
        """Show a layer "solid", "see_through" or "off"."""
        self.layer_modes[layer] = Mode(mode)
        self._picker_is_stale = True
        self._apply_layers()
        self.request_frame()

    def _layer_things(self, layer: str) -> list[Drawn]:
        if layer in ("body", "occupant"):
            names = ("body", "body_edges") if layer == "body" else ("occupant",)
            return [self._things[name] for name in names if name in self._things]
        return self.door.layers[layer] if self.door is not None else []

    def _apply_layers(self) -> None:
        for layer, mode in self.layer_modes.items():
            for thing in self._layer_things(layer):
                thing.show(mode is not Mode.OFF)
                lines = thing.data.GetNumberOfPolys() == 0
                thing.set_opacity(1.0 if lines else opacity_of(layer, mode))

    def set_theme(self, theme: Theme | str) -> None:
        """Show in another theme, given by itself or by its name."""
        self.theme = THEMES[theme] if isinstance(theme, str) else theme
        self._repaint_all()
        self.request_frame()

    def set_line_scale(self, scale: float) -> None:
        """Draw lines and words ``scale`` times as large, for pictures and high-density screens."""
        self.line_scale = scale
        for thing in self._all():
            thing.scale_lines(scale)

    def _repaint_all(self) -> None:
        theme = self.theme
        self.plotter.renderer.SetBackground(*rgb(theme.ground))
        self.plotter.renderer.SetBackground2(*rgb(theme.sky))
        self.plotter.renderer.SetGradientBackground(theme.ground != theme.sky)
        self._paint_door()
        self._paint_surroundings()
        self._paint_ghosts()
        self._apply_layers()

    def _paint_surroundings(self) -> None:
        theme, things = self.theme, self._things
        plain = {"body_edges": theme.body_edge, "start": theme.outline, "clearance": theme.text}
        for name, tone in plain.items():
            if name in things:
                things[name].paint(rgb(tone))
        for name, tone in (("body", theme.body), ("occupant", theme.occupant)):
            if name in things:
                things[name].paint(rgb(tone))
        if "grid" in things:
            points = np.asarray(things["grid"].points, dtype=np.float64)
            things["grid"].paint(surroundings.grid_colours(points, self._sign, rgb(theme.ground), rgb(theme.grid)))
            dark = self._shadow_dark[:, None] * 0.16
            things["shadow"].paint((1.0 - dark) * rgb(theme.ground))

    def _paint_ghosts(self) -> None:
        if self._aim is None:
            return
        self._things["tips"].paint(rgb(self.theme.outline))
        self._things["tips"].set_opacity(0.55)
        self._things["rod"].paint(rgb(self.theme.text))
        if "share" in self._things:
            self._things["share"].paint(rgb(OUT if self._aim.outward_ratio > 0 else IN))

    # the camera -------------------------------------------------------------------------------------------

    def view_preset(self, name: str) -> None:
        """Put the camera at a saved view; "section" also cuts the door at the height of the latch."""
        shot = cameras.SHOTS[name].mirrored(self._sign)
        camera = self.plotter.renderer.GetActiveCamera()
        camera.SetPosition(*shot.position)
        camera.SetFocalPoint(*shot.focus)
        camera.SetViewUp(*shot.up)
        camera.SetViewAngle(shot.angle_deg)
        self.plotter.renderer.camera_set = True
        self.plotter.renderer.ResetCameraClippingRange()
        self.cut(cameras.SECTION_HEIGHT_M if name == "section" else None)
        self.request_frame()

    def cut(self, height_m: float | None) -> None:
        """Cut everything above a height away, or nothing."""
        self._section = None
        if height_m is not None:
            self._section = vtkPlane()
            self._section.SetOrigin(0.0, 0.0, height_m)
            self._section.SetNormal(0.0, 0.0, -1.0)
        for thing in self._all():
            thing.mapper.RemoveAllClippingPlanes()
            if self._section is not None:
                thing.mapper.AddClippingPlane(self._section)

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
        model, shown = self.door.model, self.layer_modes
        solids = [s for layer, s in self.door.solids() if shown[layer] is not Mode.OFF]
        if shown["body"] is not Mode.OFF:
            solids += [Solid(s.points, s.triangles, np.zeros(len(s.triangles), dtype=np.int64), (name,))
                       for name, s in model.body.surfaces.items()]
        if shown["occupant"] is not Mode.OFF:
            for part in model.occupant:
                points, triangles, _ = surroundings.occupant_solid((part,))
                solids.append(Solid(points, triangles, np.zeros(len(triangles), dtype=np.int64), (part.name,)))
        return solids

    def close(self) -> None:
        """Take everything off the plotter."""
        for thing in self._all():
            self.plotter.renderer.RemoveActor(thing.actor)
        self.plotter.renderer.RemoveActor(self._label)
        self._things.clear()
        self.door = None
