"""What is done to the picture: plane, parts apart, one alone, measuring, pen, the camera's way back.

Imported with the stage. Connects the row of controls with what the stage shows; knows no rule of the metal.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np

from sim.plan import EdgePoint, Spread, Squeeze
from sim.units import NO_BREAK, length_text
from ui.main_window import MainWindow
from ui.scene.cameras import Shot
from ui.scene.view import StageView
from ui.stage_side import StageSide
from ui.state import marks as marking
from ui.state.camera_history import CameraHistory
from ui.state.measuring import CLICKS, KIND_WORDS, Kind, Measure, Metal, Spot, Taken, spot_at, taken
from ui.state.metal_now import metal_now
from ui.state.seeing import WAYS, CutPlane, SeeingState, Way
from ui.state.session import Session
from ui.state.view_options import LAYER_WORDS, SIDE_LAYERS

SECTION_VIEW = CutPlane("level", 0.36)
RANGES_M: dict[Way, tuple[float, float]] = {
    "level": (-0.12, 1.06), "across": (-0.20, 1.15), "lengthwise": (-0.45, 0.06),
}  # fmt: skip
"""Where the plane may stand at one door [m], the last outboard; a side reaches further back."""
PLACE_WORDS = {
    "level": "{} above the sill",
    "across": "{} behind the hinges",
    "lengthwise": "{} outboard of the belt",
}
NEXT_WORDS = ("Click the first point", "Click the second point", "Click the third point")


class SeeSide:
    """Turns keys, sliders and drags into what the stage shows of itself.

    Parameters
    ----------
    view, window, session, side : what shows, where, of what, and who points at the metal otherwise
    """

    def __init__(self, view: StageView, window: MainWindow, session: Session, side: StageSide) -> None:
        self.view, self._window, self._session, self._side = view, window, session, side
        self._stage: Any = view.stage
        self.seeing, self.marks = SeeingState(), marking.MarksState()
        self.cameras: CameraHistory[Shot] = CameraHistory()
        self._by_view = False
        self._history: object = None
        self._unreadable: Path | None = None
        self._kind: Kind = "length"
        self._spots: list[Spot] = []
        self._last: Taken | None = None
        self.stroke: str = "pen"
        self._drawing: list[np.ndarray] = []
        self._plane: tuple[np.ndarray, np.ndarray] | None = None
        self._layer_under: str | None = None
        self._by_turns = False
        self._connect()

    def _connect(self) -> None:
        row, view, side = self._window.see, self.view, self._side
        row.way_wished.connect(self._turn_plane)
        row.place_wished.connect(self._move_plane)
        row.asunder_wished.connect(lambda ratio: self.seeing.set(self.seeing.now.with_asunder(ratio)))
        row.kind_wished.connect(self._choose_kind)
        row.stroke_wished.connect(self._choose_stroke)
        row.back_wished.connect(self._take_back)
        row.clear_wished.connect(self._clear)
        row.done.connect(self.put_away)
        self._window.layers.tools.wished.connect(self.toggle)
        self.seeing.changed.connect(self.show)
        self.marks.changed.connect(self._marked)
        self._session.document.filed.connect(self._filed)
        self._load()
        view.left.connect(self.cameras.leave)
        side.leaving = lambda: self.cameras.leave(self._stage.shot)
        side.arrived = self._arrived
        side.moment_shown = self.show_marks

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what each action of the picture does, by its name."""
        tools = {
            name: (lambda name=name: self.toggle(name)) for name in ("section", "asunder", "measure", "pen")
        }
        views = {
            f"see_{name}": (lambda name=name: self._side.show_view(name))
            for name in ("three_quarter", "front", "latch", "patient", "square", "section")
        }
        rest = {"alone": self.alone, "start_shape": self._start_shape, "camera_back": self.camera_back}
        return {**{f"see_tool_{name}": act for name, act in tools.items()}, **views, **rest}

    # the picture ------------------------------------------------------------------------------------------

    def show(self) -> None:
        """Show the picture as it is to be taken apart, and the controls of the tool."""
        now, row = self.seeing.now, self._window.see
        row.show_tool(now.tool)
        self._window.layers.tools.show_tool(now.tool)
        self._stage.set_asunder(now.asunder_ratio)
        self._stage.set_alone(now.alone)
        self._stage.set_cut(now.cut)
        self._side.start_shape = now.start_shape
        self._side.show_moment()
        self.view.hand = self if now.tool == "pen" else None
        if now.cut is not None:
            row.show_plane(now.cut.way, self._share(now.cut), self._place_words(now.cut))
        row.show_asunder(now.asunder_ratio)
        row.show_stroke(self.stroke)
        self.show_marks()

    def toggle(self, tool: str) -> None:
        """Bring a tool's controls out, or put them away."""
        self._spots.clear()
        self._side.hover(None)
        self._by_view = False
        fresh = self.seeing.now.cut is None
        now = self.seeing.now.toggled(tool)
        if fresh and now.cut is not None:
            now = now.with_cut(CutPlane("level", self._tip_height()))
        self.seeing.set(now)
        self._window.focus_stage()

    def put_away(self) -> bool:
        """Put the controls away; return whether any were out."""
        if self.seeing.now.tool is None and self.seeing.now.alone is None:
            return False
        self._spots.clear()
        self.seeing.set(dataclasses.replace(self.seeing.now.with_tool(None), alone=None))
        self._window.focus_stage()
        return True

    def _start_shape(self) -> None:
        now = self.seeing.now
        self.seeing.set(dataclasses.replace(now, start_shape=not now.start_shape))

    def hover(self, pointed: Any) -> None:
        """Remember which layer is under the pointer, and let the metal be named."""
        self._layer_under = None if pointed is None else self._stage.layer_of(pointed.part)
        if self.seeing.now.tool in (None, "section"):
            self._side.hover(pointed)
            return
        words = "" if pointed is None else pointed.part.replace("_", " ").capitalize()
        self._window.readout.show_words(self._parts_words() or words)

    def alone(self) -> None:
        """Show the layer under the pointer alone, or all again; with no pointer there, one after another."""
        now, wished = self.seeing.now, None
        if now.alone is None:
            self._by_turns = self._layer_under is None
        if self._by_turns:
            side = getattr(self._session.model, "side", None) is not None
            names = [name for name in LAYER_WORDS if side or name not in SIDE_LAYERS]
            place = names.index(now.alone) + 1 if now.alone in names else 0
            wished = names[place] if place < len(names) else None
        elif now.alone is None:
            wished = self._layer_under
        self.seeing.set(dataclasses.replace(now, alone=wished))
        words = "" if wished is None else LAYER_WORDS[wished]
        self._window.readout.show_words(f"{words[:1].upper()}{words[1:]} alone" if words else "")

    def _range(self, way: Way) -> tuple[float, float]:
        low, high = RANGES_M[way]
        side = getattr(self._session.model, "side", None)
        if side is not None and way == "across":
            high = float(side.members["rear_pillar"].surface.points[:, 0].max())
        return low, high

    def _share(self, cut: CutPlane) -> float:
        low, high = self._range(cut.way)
        place = cut.place_m * self._outward(cut.way)
        return min(1.0, max(0.0, (place - low) / (high - low)))

    def _outward(self, way: Way) -> float:
        model = self._session.model
        return float(model.outboard_sign) if way == "lengthwise" and model is not None else 1.0

    def _move_plane(self, share: float) -> None:
        cut = self.seeing.now.cut
        if cut is not None:
            low, high = self._range(cut.way)
            place = (low + share * (high - low)) * self._outward(cut.way)
            self.seeing.set(self.seeing.now.with_cut(dataclasses.replace(cut, place_m=place)))

    def _turn_plane(self, way: str) -> None:
        found = next(one for one in WAYS if one == way)
        low, high = self._range(found)
        place = {"level": 0.36, "across": 0.5 * (low + high), "lengthwise": -0.06}[found] * self._outward(
            found
        )
        self._by_view = False
        self.seeing.set(self.seeing.now.with_cut(CutPlane(found, place)))

    def _tip_height(self) -> float:
        """Return at which height a level plane cuts through the tip [m]; where there is none, the latch's."""
        move, place = self._session.move, CutPlane().place_m
        if isinstance(move, Spread) and isinstance(move.door, EdgePoint):
            place = move.door.along_m if move.door.edge != "sill_edge" else place
        elif isinstance(move, Squeeze):
            place = move.height_m
        low, high = self._range("level")
        return min(high, max(low, place))

    def _place_words(self, cut: CutPlane) -> str:
        return PLACE_WORDS[cut.way].format(self._length(cut.place_m * self._outward(cut.way)))

    def _length(self, value_m: float) -> str:
        return length_text(value_m, self._session.view.options.units)

    # the camera -------------------------------------------------------------------------------------------

    def camera_back(self) -> None:
        """Go back to where the viewer stood before."""
        shot = self.cameras.back()
        if shot is not None:
            self._stage.shot = shot
            self._stage.set_cut(self.seeing.now.cut)

    def _arrived(self, name: str) -> None:
        """Cut in the section's view; take the plane away when that view is left."""
        if name == "section":
            self._by_view |= self.seeing.now.tool != "section"  # a plane that was out before stays out
            self.seeing.set(self.seeing.now.with_tool("section").with_cut(SECTION_VIEW))
        elif self._by_view:
            self._by_view = False
            self.seeing.set(self.seeing.now.with_tool(None))
        else:
            self._stage.set_cut(self.seeing.now.cut)

    # measuring --------------------------------------------------------------------------------------------

    def click(self, pointed: Any) -> None:
        """Set a point of a measurement, or let the click set a tip."""
        if self.seeing.now.tool != "measure":
            self._side.click(pointed)
            return
        metal = self._metal()
        if pointed is None or metal is None:
            return
        self._spots.append(spot_at(np.asarray(pointed.point), metal))
        self._measure_when_ready()

    def _choose_kind(self, kind: str) -> None:
        self._kind = next(one for one in CLICKS if one == kind)  # type: ignore[assignment]
        self._spots.clear()
        self._window.focus_stage()
        self._measure_when_ready()

    def _measure_when_ready(self) -> None:
        if len(self._spots) == CLICKS[self._kind]:
            done, self._spots = tuple(self._spots), []
            self.marks.measure(Measure(self._kind, done))
        self.show_marks()

    def _metal(self) -> Metal | None:
        model, frame = self._session.model, self._session.timeline.frame
        return None if model is None or frame is None else metal_now(model, frame)

    def measured(self) -> list[Taken]:
        """Return what every measurement gives at the moment shown."""
        metal = self._metal() if self.marks.now.measures else None
        if metal is None:
            return []
        return [taken(marking.restored(one), metal) for one in self.marks.now.measures]

    def words_of(self, found: Taken) -> str:
        """Return a measurement in words."""
        if found.kind == "angle":
            return f"{np.degrees(found.value):.0f}{NO_BREAK}\N{DEGREE SIGN}"
        words = self._length(found.value)
        return f"{words} torn" if found.kind == "tear" else words

    def show_marks(self) -> None:
        """Show strokes and measurements on the stage, and the last one in words."""
        found = self.measured() if self.seeing.now.asunder_ratio == 0.0 else []
        lines = [(one.line_m, self.words_of(one)) for one in found]
        strokes = [(one.kind, np.array(one.points_m)) for one in self.marks.now.strokes]
        if len(self._drawing) > 1:
            strokes.append((self.stroke, self._stroke_points()))
        self._stage.show_marks(strokes, lines)
        self._last = found[-1] if found else None
        self._window.see.show_measure(self._kind, self._last_words())
        if self.seeing.now.tool == "measure":
            self._window.readout.show_words(self._parts_words())

    def _last_words(self) -> str:
        last = self._last
        if self._spots or last is None or last.kind != self._kind:
            return NEXT_WORDS[len(self._spots)] if CLICKS[self._kind] else KIND_WORDS[self._kind]
        return self.words_of(last)

    def _parts_words(self) -> str:
        """Return what the last width is along the car, outboard and up."""
        last = self._last
        if self.seeing.now.tool != "measure" or last is None or last.parts_m is None:
            return ""
        along, out, up = (self._length(value) for value in last.parts_m)
        return f"Width {self.words_of(last)}: along the car {along}, outboard {out}, up {up}"

    # pen and arrows ---------------------------------------------------------------------------------------

    def _choose_stroke(self, kind: str) -> None:
        self.stroke = kind
        self._window.focus_stage()

    def press(self, x: float, y: float) -> None:
        """Begin a stroke on a plane that faces the viewer, at the depth of what is under the pen."""
        pointed = self.view.pointed_at(x, y)
        shot = self._stage.shot
        focus, eye = np.array(shot.focus), np.array(shot.position)
        self._plane = (focus if pointed is None else np.asarray(pointed.point), focus - eye)
        self._drawing = [self._on_plane(x, y)]

    def drag(self, x: float, y: float) -> None:
        """Draw on."""
        if self._plane is not None:
            self._drawing.append(self._on_plane(x, y))
            self.show_marks()

    def release(self) -> None:
        """End the stroke; a mere click draws nothing."""
        points, self._plane = self._stroke_points(), None
        self._drawing = []
        if len(points) > 1:
            places = tuple((float(x), float(y), float(z)) for x, y, z in points)
            self.marks.add(marking.Stroke("arrow" if self.stroke == "arrow" else "pen", places))
        self.show_marks()

    def _stroke_points(self) -> np.ndarray:
        points = np.array(self._drawing).reshape(-1, 3)
        if self.stroke == "arrow" and len(points):
            return points[[0, -1]] if len(points) > 1 else points
        return points

    def _on_plane(self, x: float, y: float) -> np.ndarray:
        assert self._plane is not None
        start, end = self.view.ray(x, y)
        through, normal = self._plane
        way = end - start
        return np.asarray(start + way * float((through - start) @ normal) / float(way @ normal))

    def _take_back(self) -> None:
        if self._spots:
            self._spots.pop()
            self.show_marks()
            return
        self.marks.take_back("strokes" if self.seeing.now.tool == "pen" else "measures")

    def _clear(self) -> None:
        self._spots.clear()
        self.marks.clear("strokes" if self.seeing.now.tool == "pen" else "measures")

    # the file beside the plan -----------------------------------------------------------------------------

    def _filed(self) -> None:
        """Read the marks of a plan that was opened; write those of one that was saved."""
        if self._session.document.history is self._history:
            self._keep()
        else:
            self._load()

    def _keep(self) -> None:
        """Write the marks beside the plan, where the plan lies in a file."""
        path = self._session.document.path
        if path is None or path == self._unreadable:
            return
        try:
            marking.write(marking.path_beside(path), self.marks.now)
        except marking.MarksError as trouble:
            self._window.notice.say(str(trouble))

    def _load(self) -> None:
        document = self._session.document
        self._history = None  # what is read is not to be written back
        found = marking.Marks()
        if document.path is not None and marking.path_beside(document.path).exists():
            try:
                found = marking.read(marking.path_beside(document.path))
                self._unreadable = None
            except marking.MarksError as trouble:
                self._unreadable = document.path  # never written over
                self._window.notice.say(str(trouble))
        self.marks.set(found)
        self._history = document.history

    def _marked(self) -> None:
        if self._history is not None:
            self._keep()
        self.show_marks()
