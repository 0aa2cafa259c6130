"""The stage: the door, what stands round it and what is said about it, on any pyvista plotter.

It holds no rule: it shows what it is given. No Qt here, so that the same stage draws windows and pictures.
Nothing is rendered by it; ``request_frame`` asks whoever owns the plotter for at most one frame.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import ArrayLike, NDArray
from vtkmodules.vtkCommonDataModel import vtkPlane
from vtkmodules.vtkRenderingCore import vtkLight

from sim.record import Aim, Clearance, Frame
from sim.units import Units, length_text
from ui.scene import cameras, ghost, surroundings, tubes
from ui.scene.colours import IN, OUT, THEMES, ColourMode, Theme, rgb, word_of
from ui.scene.door_scene import DoorScene
from ui.scene.drawn import Drawn, Shading
from ui.scene.label import Label
from ui.scene.layers import LAYERS, Mode, opacity_of
from ui.scene.motion import MotionArrows
from ui.scene.pick import Picker, Pointed, Solid
from ui.scene.section import cut_faces, cut_segments

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
        self._label, self._clearance_label = Label(plotter.renderer), Label(plotter.renderer)
        self.length_words: Callable[[float], str] = lambda value_m: length_text(value_m, Units.METRIC)
        self._cut_height_m: float | None = None
        self._arrows: MotionArrows | None = None
        self._frame: Frame | None = None
        self._tool: object | None = None
        self._clearance: Clearance | None = None
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
        self._label.hide()
        self._clearance_label.hide()
        self.door = DoorScene(model)
        self._picker_is_stale = True
        self._add_surroundings(model)
        skin = model.mesh.surface.nodes_of(("outer_skin",))
        self._arrows = MotionArrows(self.door.rest, skin, self._sign)
        self._things["motion"] = self._arrows.drawn
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
        self._put("body", points, triangles, normals).set_light(0.68, 0.32)
        self._put_lines("body_edges", surroundings.body_edges(model.body), 1.2)
        self._put_lines("car", surroundings.car_lines(sign), 1.2)
        self._put_lines("marks", surroundings.floor_marks(sign), 1.6)
        points, triangles, normals = surroundings.occupant_solid(model.occupant)
        occupant = self._put("occupant", points, triangles, normals)
        occupant.set_light(0.66, 0.32)
        occupant.hide_backs()
        points, triangles, self._shadow_dark = surroundings.shadow_patch(sign)
        self._things["shadow"] = Drawn("ground", points, triangles=triangles, shading=Shading.PLAIN, veil=True)
        self._put_lines("grid", surroundings.grid_lines(sign), 1.0)
        for name in ("shadow", "grid", "body_edges", "car", "marks"):
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
        self._frame = frame
        damage = None if frame is None else frame.seam_damage
        load = None if frame is None else frame.load
        self.door.move(np.asarray(points, dtype=np.float64), damage, load)
        self._picker_is_stale = True
        self._paint_door()
        self._show_motion()
        if self._cut_height_m is not None:
            self._show_cut()
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
        on = self.mode is ColourMode.OUTBOARD and self.layer_modes["skin"] is not Mode.OFF
        if self._arrows is None or self.door is None:
            return
        self._arrows.drawn.show(on)
        if on:
            self._arrows.move(self.door.points)
            self._arrows.drawn.paint(rgb(self.theme.text))

    # what is said about it --------------------------------------------------------------------------------

    def show_aim(self, aim: Aim | None, tool: object | None = None) -> None:
        """Show the tips, their line of action and the outward or inward share before a push, or nothing."""
        self._aim, self._tool = aim, tool
        self._drop("tips", "rod", "share")
        self._label.hide()
        if aim is not None and self.door is not None:
            self._put("tips", *ghost.tips(aim, self._sign, tool))
            self._put("rod", *ghost.action_rod(aim))
            middle = self.door.rest[self.door.model.mesh.surface.nodes["skin_mid"]].mean(axis=0)
            arrow = ghost.share_arrow(aim, self._sign, middle)
            if arrow is not None:
                self._put("share", *arrow[0])
                out = aim.outward_ratio > 0
                self._label.say(self.words["out" if out else "in"], arrow[1], rgb(OUT if out else IN), self.theme)
            for name in ("tips", "rod", "share"):
                if name in self._things:
                    self._things[name].actor.PickableOff()
                    self._admit(self._things[name])
            self._paint_ghosts()
        self.request_frame()

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
        self._clearance = clearance
        self._drop("clearance")
        self._clearance_label.hide()
        if clearance is not None:
            ends = np.array([clearance.metal_point, clearance.body_point], dtype=np.float64)
            line, _ = tubes.tube_points(np.linspace(*ends, 2)[None], 0.0026, 8)
            solids = [(line, tubes.tube_triangles(1, 2, 8), line * 0 + [0, 0, 1.0])]
            solids += [tubes.ball(end, 0.007) for end in ends]
            thing = self._put("clearance", *tubes.joined(solids), plain=True)
            thing.actor.PickableOff()
            self._admit(thing)
            thing.paint(rgb(self.theme.text))
            words = self.length_words(clearance.distance_m)
            self._clearance_label.say(words, ends.mean(axis=0), rgb(self.theme.text), self.theme)
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
            names = ("body", "body_edges", "car") if layer == "body" else ("occupant",)
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
        for label in (self._label, self._clearance_label):
            label.scale = scale

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
        half = word_of(0.5 * (rgb(theme.grid) + rgb(theme.body_edge)))
        plain = {"body_edges": theme.body_edge, "car": half, "marks": half, "start": theme.outline, "clearance": theme.text}
        for name, tone in plain.items():
            if name in things:
                things[name].paint(rgb(tone))
        for name, tone in (("body", theme.body), ("occupant", theme.occupant)):
            if name in things:
                things[name].paint(rgb(tone))
        if "grid" in things:
            points = np.asarray(things["grid"].points, dtype=np.float64)
            things["grid"].paint(surroundings.grid_colours(points, self._sign, rgb(theme.ground), rgb(theme.grid)))
            veil = np.zeros((len(self._shadow_dark), 4))
            veil[:, 3] = theme.shadow * self._shadow_dark
            things["shadow"].paint(veil)

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
        shot = self._shot(name)
        camera = self.plotter.renderer.GetActiveCamera()
        camera.SetPosition(*shot.position)
        camera.SetFocalPoint(*shot.focus)
        camera.SetViewUp(*shot.up)
        camera.SetViewAngle(shot.angle_deg)
        self.plotter.renderer.camera_set = True
        self.set_clipping()
        self.cut(cameras.SECTION_HEIGHT_M if name == "section" else None)
        self.request_frame()

    def _shot(self, name: str) -> cameras.Shot:
        if name == "patient" and self.door is not None:
            heads = [c for c in self.door.model.occupant if c.name == "head"]
            if heads:
                return cameras.from_seat(0.5 * (heads[0].start + heads[0].end), self._sign)
        return cameras.SHOTS[name].mirrored(self._sign)

    def set_clipping(self) -> None:
        """Set how near and how far is drawn, tightly, so that lines on metal neither sink nor shine through."""
        camera = self.plotter.renderer.GetActiveCamera()
        near = cameras.NEAR_SHARE * camera.GetDistance()
        camera.SetClippingRange(near, camera.GetDistance() + cameras.FAR_M)

    def cut(self, height_m: float | None) -> None:
        """Cut everything above a height [m] away and show the cut faces, or cut nothing."""
        self._cut_height_m = height_m
        plane = None
        if height_m is not None:
            plane = vtkPlane()
            plane.SetOrigin(0.0, 0.0, height_m)
            plane.SetNormal(0.0, 0.0, -1.0)
        for thing in self._all():
            thing.mapper.RemoveAllClippingPlanes()
            if plane is not None:
                thing.mapper.AddClippingPlane(plane)
        self._show_cut()

    def _show_cut(self) -> None:
        """Draw the faces of the cut where the metal is now."""
        self._drop("cut_lines", "cut_faces")
        height = self._cut_height_m
        if height is None or self.door is None:
            return
        self._things["cut_lines"] = self._cut_lines(height)
        solids = [(s.points, s.triangles) for s in self.door.model.body.surfaces.values() if len(s.points) == 8]
        points, triangles = cut_faces(solids, height)
        if len(points):
            self._put("cut_faces", points, triangles, points * 0, plain=True)
            self._things["cut_faces"].paint(rgb(self.theme.body_edge))
        for name in ("cut_lines", "cut_faces"):
            if name in self._things:
                self._things[name].actor.PickableOff()
                self._admit(self._things[name])

    def _cut_lines(self, height: float) -> Drawn:
        things = [(layer, thing, sheet) for layer, thing, sheet in (
            ("skin", self.door.skin, self.door.skin_sheet), ("inner", self.door.inner, self.door.inner_sheet))
            if self.layer_modes[layer] is not Mode.OFF]
        segments = [cut_segments(np.asarray(thing.points, dtype=np.float64), sheet.triangles, height)
                    for _, thing, sheet in things]
        found = np.concatenate([*segments, np.zeros((0, 2, 3))])
        found = found + [0.0, 0.0, 0.0005]
        lines = self._put_lines("cut_lines", found, 3.0)
        lines.paint(rgb(self.theme.crease))
        return lines

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

    def copy_to(self, other: Stage) -> None:
        """Show on another stage what this one shows, from the same camera."""
        if self.door is None:
            return
        other.set_theme(self.theme)
        other.set_model(self.door.model)
        other.set_colour_mode(self.mode)
        for layer, mode in self.layer_modes.items():
            other.set_layer(layer, mode)
        other.show_points(self.door.points, self._frame)
        other.show_aim(self._aim, self._tool)
        other.show_clearance(self._clearance)
        other.show_start_ghost("start" in self._things)
        other.highlight(self._picked)
        mine, theirs = (s.plotter.renderer.GetActiveCamera() for s in (self, other))
        theirs.DeepCopy(mine)
        other.plotter.renderer.camera_set = True
        other.cut(self._cut_height_m)

    def close(self) -> None:
        """Take everything off the plotter."""
        for thing in self._all():
            self.plotter.renderer.RemoveActor(thing.actor)
        self._label.remove()
        self._clearance_label.remove()
        self._things.clear()
        self.door = None
