"""The outcome map's side of the window: its page, the band on the door, and what is picked on either."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QImage, QPainter

from sim.map_words import cell_brief
from sim.outcome_map import Ask, MapDifference, OutcomeMap, asked
from sim.plan import EdgePoint, Plan, Spread
from sim.problems import PlanError
from ui.main_window import MainWindow
from ui.map_jobs import MapWorker
from ui.panels.look import Look
from ui.panels.map_card import MapCard, MapSheet
from ui.panels.pieces import dress
from ui.panels.told_sheet import ToldSheet
from ui.state import steering
from ui.state.locks import ASK_FIRST, MAP
from ui.state.map_telling import MapWords, note, refused, text, told
from ui.state.maps import Maps, MapTrouble
from ui.state.session import Session

if TYPE_CHECKING:
    from ui.stage_side import StageSide

KEPT = "maps"
SHUT_BY_TEACHER = "The outcome map is kept shut; key T opens it."
SHUT_BY_PREDICTION = "The outcome map is kept shut until prediction and outcome have been compared."


class MapSide:
    """Holds the maps and connects page, band and worker.

    Parameters
    ----------
    session, window : of what, and where it shows;  folder : the settings' folder
    """

    def __init__(self, session: Session, window: MainWindow, folder: Path) -> None:
        self.session, self.window = session, window
        self.maps, self.worker = Maps(folder / KEPT), MapWorker(folder / KEPT)
        self.card = MapCard(self._paint)
        self._sheet: MapSheet | None = None
        self._told: ToldSheet | None = None
        self._side: StageSide | None = None
        self._other: str = ""
        self._cursor: int | None = None
        self._by_step = False
        self._ask: tuple[object, Ask | None, str] = (None, None, "")
        self._papered: tuple[object, ...] = ()
        self.before_opening: Callable[[], object] = lambda: None
        """Called before the page is opened: puts away what else is in its place."""
        window.right_pages.addWidget(self.card)
        self._connect()

    def _connect(self) -> None:
        session, maps, card = self.session, self.maps, self.card
        maps.asked.connect(self.worker.submit)
        maps.dropped.connect(self.worker.drop)
        maps.changed.connect(self.show)
        self.worker.ready.connect(self._take, Qt.ConnectionType.QueuedConnection)
        for signal in (
            session.document.changed, session.selection.changed, session.changed, session.locks.changed,
            session.asking.changed, session.view.changed,
        ):  # fmt: skip
            signal.connect(self._show_if_on)
        self.window.right_pages.currentChanged.connect(lambda _: self.show())
        self.window.closing.connect(self.worker.close)
        card.chosen.connect(self._compare)
        card.make_wished.connect(self.make)
        card.stop_wished.connect(maps.stop)
        card.large_wished.connect(self.large)
        card.words_wished.connect(self.in_words)
        card.away_wished.connect(self.away)
        self._connect_canvas(card.canvas)
        card.canvas.restyled.connect(self.show_band)

    def _connect_canvas(self, canvas: Any) -> None:
        canvas.pointed.connect(lambda cell: self._point(None if cell < 0 else cell))
        canvas.picked.connect(self.pick)

    def stage_ready(self, side: StageSide) -> None:
        """Take the stage the band is drawn on, once it is there."""
        self._side = side
        side.map = self

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of the map do, by name."""
        return {"map": self.turn, "map_large": self.large}

    # --- opening -----------------------------------------------------------------------------------------

    @property
    def on(self) -> bool:
        """Whether the map's page is what the right column shows."""
        return self.window.right_pages.currentWidget() is self.card

    @property
    def shut(self) -> str:
        """Why the map may not be seen now, in a sentence; empty when it may."""
        if not self.session.hides(MAP):
            return ""
        if self.session.asking.unspoken:
            return SHUT_BY_PREDICTION
        return ASK_FIRST if self.session.map_waits() else SHUT_BY_TEACHER

    def turn(self) -> None:
        """Open the map, or put it away."""
        if self.on:
            self.away()
        else:
            self.open()

    def open(self, other: str = "") -> bool:
        """Open the page, with what changes on another map by its key; return whether it could be."""
        if self.shut:
            self.window.notice.say(self.shut)
            return False
        self.before_opening()
        self.session.asking.end()
        self._other = other
        self.window.right_pages.setCurrentWidget(self.card)
        view = self.session.view
        if view.options.drawer != "reading":
            import dataclasses

            view.set(dataclasses.replace(view.options, drawer="reading"))
        self.show()
        return True

    def for_step(self, wanted: str, other: Plan | None) -> None:
        """Open what a lesson's step asks for: "one" map, "both" for what changes; put it away for none."""
        if wanted:
            self._by_step = self.open(asked(other).key if wanted == "both" and other is not None else "")
        elif self._by_step:
            self._by_step = False
            self.away()

    def away(self) -> None:
        """Put the page away and show the reading again."""
        if not self.on:
            return
        self._cursor = None
        self.window.right_pages.setCurrentWidget(self.window.reading)
        self.window.focus_stage()

    def large(self) -> None:
        """Show the chart over the whole window."""
        if not self.on and not self.open():
            return
        if self.outcome is None:
            return
        if self._sheet is None:
            self._sheet = MapSheet(self.window, self._paint)
            self._connect_canvas(self._sheet.canvas)
        dress(self._sheet, self.window.look)
        self._sheet.show_words(self._words())
        self._sheet.open_over(self.window.size())

    def in_words(self) -> None:
        """Show the map in words."""
        if self._told is None:
            self._told = ToldSheet(
                self.window,
                "Outcome map in words",
                "The outcome map in words",
                "From the sill up, edge by edge and depth by depth.",
                "Copy the words",
            )
        self._told.show_text(self._text)

    # --- what is shown -----------------------------------------------------------------------------------

    @property
    def ask(self) -> Ask | None:
        """What a map of the plan shown would be asked for; None where it has no spread."""
        session = self.session
        index = session.selection.now.move
        chosen = index if isinstance(session.move, Spread) else None
        key = (session.plan, chosen)
        if self._ask[0] != key:
            try:
                self._ask = (key, asked(session.plan, chosen), "")
            except PlanError as problem:
                self._ask = (key, None, str(problem))
        return self._ask[1]

    @property
    def outcome(self) -> OutcomeMap | None:
        """The map that may be seen now."""
        ask = self.ask
        return None if ask is None or self.shut else self.maps.known(ask)

    @property
    def apart(self) -> MapDifference | None:
        """What changes on the map chosen to compare with."""
        ask = self.ask
        if ask is None or self.outcome is None or not self._other:
            return None
        other = next((one for one in self.maps.others(ask) if one.key == self._other), None)
        return self.maps.compared(ask, other)

    def make(self) -> None:
        """Have the map of the plan shown made."""
        if self.ask is not None and not self.shut:
            self.maps.make(self.ask)

    def stop(self) -> bool:
        """Stop what is under way; return whether anything was."""
        busy = self.maps.busy
        self.maps.stop()
        return busy

    def _take(self) -> None:
        for said in self.worker.waiting():
            if self.maps.take(said) and isinstance(said, MapTrouble):
                self.window.notice.say(said.sentence, said.report)

    def _compare(self, index: int) -> None:
        ask = self.ask
        others = () if ask is None else self.maps.others(ask)
        self._other = others[index - 1].key if 0 < index <= len(others) else ""
        self.show()

    def _show_if_on(self) -> None:
        if self.on:
            self.show()

    def show(self) -> None:
        """Show page, band and large chart as things stand."""
        shown = self.on
        words = self._words() if shown else MapWords()  # what is put away holds nothing of it
        self.card.show_words(words)
        if shown:
            self.card.canvas.update()
            self.window.show_lower_third(words.sentence)
        if self._sheet is not None and self._sheet.isVisible():
            if self.outcome is None or not shown:
                self._sheet.close()
            else:
                self._sheet.show_words(self._words())
        if self._told is not None and self._told.isVisible() and (self.outcome is None or not shown):
            self._told.close()
        self.show_band()

    def _words(self) -> MapWords:
        maps, units = self.maps, self.session.view.options.units
        ask, outcome = self.ask, self.outcome
        if self.shut:
            return MapWords(note=self.shut)
        if ask is None:
            return MapWords(note=refused(self._ask[2]))
        if outcome is None:
            return MapWords(note=note(maps, ask), can_make=not maps.busy, busy=maps.busy)
        return told(maps, ask, outcome, self.apart, self._other, self._cursor, units)

    @property
    def class_words(self) -> str:
        """What a class reads below a stage that stands alone: the map in one sentence, while it is open."""
        return self._words().sentence if self.on else ""

    def _text(self) -> str:
        outcome = self.outcome
        return self.shut if outcome is None else text(outcome, self.apart, self.session.view.options.units)

    # --- painting ----------------------------------------------------------------------------------------

    def _paint(self, painter: QPainter, wide: float, tall: float, look: Look, large: bool) -> Any:
        from ui.map_chart import Tones, gap_for, legend, legend_height, paint
        from ui.map_page import chart_of, words_of
        from ui.state.map_layout import lay_out

        outcome, apart = self.outcome, self.apart
        if outcome is None:
            return None
        tones = look.tones
        unit = look.scale * (1.4 if large else 1.0)
        with_ink = Tones(
            tones.paper, tones.ink, tones.quiet, tones.hairline, 9.0 * unit, 1.5 if look.projector else 1.0
        )
        font = look.font("body" if large else "small")
        words = words_of(outcome, apart)
        foot = legend_height(words, wide, font)
        left_side = outcome.ask.plan.car.side == "left"
        type_px = QFontMetricsF(font).height() * 0.85
        chart = chart_of(outcome, apart, self._cursor)
        gap, room = gap_for(chart, font), tall - foot - 0.6 * type_px
        layout = lay_out(outcome.ask.grid, wide - 1, room, type_px, gap, left_side=left_side)
        paint(painter, chart, layout, with_ink, font)
        legend(painter, words, QRectF(0.0, tall - foot, wide, foot), with_ink, font)
        return layout

    def show_band(self) -> None:
        """Draw the band on the door, or take it away."""
        side = self._side
        if side is None:
            return
        model, outcome = self.session.model, self.outcome if self.on else None
        if model is None or outcome is None:
            side.hide_map()
            self._papered = ()
            return
        apart = self.apart
        panel = model.panels()[outcome.ask.grid.panel]
        look = self.window.look
        key = (outcome.key, self._other, look, self._cursor, id(model))
        drawn = None
        if key != self._papered:
            from ui.map_page import chart_of
            from ui.map_pictures import band_pictures, beside_band

            chart = chart_of(outcome, apart, self._cursor)
            grid, right = outcome.ask.grid, model.outboard_sign > 0.0
            made = band_pictures(chart, grid, look.tones, right)
            drawn = {edge: _array(image) for edge, image in made.items()}, beside_band(chart, grid, right)
        if side.show_map(panel, outcome.ask.grid, drawn):
            self._papered = key

    # --- pointing ----------------------------------------------------------------------------------------

    def _point(self, cell: int | None) -> None:
        if cell == self._cursor:
            return
        self._cursor = cell
        canvases = [self.card.canvas] + ([self._sheet.canvas] if self._sheet is not None else [])
        for canvas in canvases:
            canvas.cursor_cell = cell
        self.show()

    def cell_under(self, pointed: Any) -> int | None:
        """Return the cell of the band under the pointer; None where there is none."""
        if self._side is None or pointed is None or not self.on or self.outcome is None:
            return None
        if not str(pointed.part).replace("_", " ").endswith("outer skin"):
            return None
        return self._side.map_cell(pointed.point)

    def hover(self, pointed: Any) -> str:
        """Take note of what is under the pointer on the stage; return what it says, "" off the band."""
        cell = self.cell_under(pointed)
        if self.on and self.outcome is not None:
            self._point(cell)
        if cell is None or self.outcome is None:
            return ""
        return cell_brief(self.outcome.told[cell], self.session.view.options.units)

    def click(self, pointed: Any) -> bool:
        """Set the tips at the cell that was clicked on the band; return whether there was one."""
        cell = self.cell_under(pointed)
        if cell is None:
            return False
        self.pick(cell)
        return True

    def pick(self, cell: int) -> None:
        """Set the tips of the mapped push at a cell."""
        session, outcome = self.session, self.outcome
        if outcome is None or session.queue.busy:
            return
        place = outcome.told[cell].cell
        move = session.move if isinstance(session.move, Spread) else None
        if move is None:
            spreads = [k for k, one in enumerate(session.plan.moves) if isinstance(one, Spread)]
            session.selection.select_move(spreads[-1])
            move = session.move if isinstance(session.move, Spread) else Spread()
        door = EdgePoint(
            edge=place.edge, along_m=place.along_m, depth_m=place.depth_m, surface=move.door.surface,
            panel=outcome.ask.grid.panel,
        )  # fmt: skip
        import msgspec

        changed = msgspec.structs.replace(steering.placed(move, door), against=None)
        session.change_move(changed, "Set tip one at a place of the map")
        self._cursor = cell
        self.show()


def _array(image: QImage) -> np.ndarray:
    """Return a picture as an array, shape (height, width, 3)."""
    image = image.convertToFormat(QImage.Format.Format_RGB888)
    raw = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())
    return raw[:, : 3 * image.width()].reshape(image.height(), image.width(), 3).copy()
