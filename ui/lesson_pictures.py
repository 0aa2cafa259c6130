"""The pictures on a lesson's sheets, drawn from the kept moments: no solving, no window."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFont, QImage, QPainter

from meshes.part import MeshError
from sim import aim as aims
from sim import kept
from sim.door_model import DoorModel, build_model
from sim.plan import Car, Ease, Move, Spread, Squeeze
from sim.problems import PlanError
from sim.record import Aim, Frame, MoveRecord
from ui.scene.still import Look, grey, still
from ui.state.lesson_results import PlanResult, moment_at
from ui.state.sheet import Picture, Sheet
from ui.state.slid import aim_now, as_now
from ui.state.tongue import tr
from ui.tools_shown import ram_ahead, solids_at


class Darkroom:
    """Draws moments of kept plans; doors and moments are made once.

    Parameters
    ----------
    results : plans with what was kept of them, by name
    """

    def __init__(self, results: Mapping[str, PlanResult]) -> None:
        self.results = results
        self._doors: dict[Car, DoorModel] = {}
        self._records: dict[str, tuple[MoveRecord, ...]] = {}

    def door(self, car: Car) -> DoorModel:
        """Return a car's door."""
        if car not in self._doors:
            self._doors[car] = build_model(car)
        return self._doors[car]

    def records(self, name: str) -> tuple[MoveRecord, ...]:
        """Return the kept moments of a plan, () when there are none that fit it."""
        if name not in self._records:
            result = self.results[name]
            door = self.door(result.plan.car)
            known = result.kept is not None
            self._records[name] = (
                kept.moments(result.folder, result.file, result.kept, door) if known and result.kept else ()
            )
        return self._records[name]

    def draw(self, wanted: Picture, *, colour: bool) -> QImage:
        """Return one picture; where nothing is known, an empty one that says so."""
        try:
            image = self._drawn(wanted)
        except (MeshError, PlanError):
            image = None
        if image is None:
            return _empty(wanted.size, "Not solved yet")
        return image if colour else grey(image)

    def _drawn(self, wanted: Picture) -> QImage | None:
        result = self.results.get(wanted.plan)
        records = self.records(wanted.plan) if result is not None else ()
        if result is None or not records:
            return None
        index = wanted.move - 1 if wanted.move else _last_push(result)
        if index >= len(records):
            return None
        frames = records[index].frames
        frame = frames[moment_at(frames, wanted.moment)]
        move = result.plan.moves[index]
        door = self.door(result.plan.car)
        first = wanted.moment == "start"
        aim = tips_of(door, move, frame, arrow=wanted.aim and first and index == 0)
        look = Look(wanted.camera, wanted.colours, dict(wanted.layers), ghost=not first)
        tool = move.tool if isinstance(move, Spread | Squeeze) else None
        solids = solids_at(door, result.plan, index, frame)
        if first and frame.ram is None:
            solids += ram_ahead(door, move, frame)
        shares = wanted.aim and first
        return still(door, frame, look, wanted.size, aim=aim, tool=tool, share=shares, solids=solids)


def tips_of(door: DoorModel, move: Move, frame: Frame, *, arrow: bool = False) -> Aim | None:
    """Return the tips of a push as they stand in a moment; with its arrow, tried on the untouched door."""
    if not isinstance(move, Spread | Squeeze):
        return None
    if arrow:
        return aims.tried(door, move)
    aim = aim_now(aims.line(door, as_now(door, move, frame), frame.points), frame, door.outboard_sign)
    return None if aim.problems else aim


def _last_push(result: PlanResult) -> int:
    pushes = [k for k, move in enumerate(result.plan.moves) if not isinstance(move, Ease)]
    return pushes[-1] if pushes else 0


def pictures_of(
    sheet: Sheet, results: Mapping[str, PlanResult], *, colour: bool = False
) -> dict[str, QImage]:
    """Return the pictures of a sheet by name, in grey unless colour is asked for."""
    room = Darkroom(results)
    return {picture.name: room.draw(picture, colour=colour) for picture in sheet.pictures}


def _empty(size: tuple[int, int], words: str) -> QImage:
    image = QImage(*size, QImage.Format.Format_RGB32)
    image.fill(QColor("#f1f1ef"))
    painter = QPainter(image)
    font = QFont()
    font.setPixelSize(36)
    painter.setFont(font)
    painter.setPen(QColor("#51575d"))
    painter.drawText(QRectF(0, 0, *size), Qt.AlignmentFlag.AlignCenter, tr(words))
    painter.end()
    return image
