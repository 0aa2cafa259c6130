"""The plan as a list: moves added, changed, put in another order and taken out, and the wreck before them."""

from __future__ import annotations

from collections.abc import Callable

import msgspec

from meshes.part import MeshError
from sim.move_words import title_of
from sim.plan import Crush, Move, Plan
from sim.problems import PlanError
from ui.main_window import MainWindow
from ui.panels.move_form import MoveForm
from ui.state.car_fields import one_line
from ui.state.move_fields import NEW_MOVES, Field, changed, fields_of, new_move
from ui.state.session import Session
from ui.state.wreck_card import wreck_card

WRECK_M = 0.12
"""How far the body goes in when a wreck is first put before a plan."""
SET_BY_POINTING = ("add_spread", "add_ease", "add_crush")
"""Moves whose form does not open by itself: they are set on the stage, or there is nothing to set."""


class PlanSide:
    """Does what cards, form and keys of the plan wish.

    Parameters
    ----------
    session, window : whose plan, and where it shows
    """

    def __init__(self, session: Session, window: MainWindow) -> None:
        self.session, self.window = session, window
        self.form = MoveForm()
        self._wreck_index: int | None = None
        window.left_pages.addWidget(self.form)
        plan = window.plan
        plan.unwanted.connect(self.take_out)
        plan.moved.connect(self.put)
        plan.change_wished.connect(self.change)
        plan.add_wished.connect(lambda name: self.actions()[name]())
        wreck = plan.wreck
        wreck.picked.connect(session.watch_wreck)
        wreck.verb_wished.connect(self.turn_wreck)
        wreck.change_wished.connect(self._change_wreck)
        wreck.unwanted.connect(self._drop_wreck)
        self.form.wished.connect(self._wish)
        self.form.earlier.connect(lambda: self._shift(-1))
        self.form.later.connect(lambda: self._shift(1))
        self.form.unwanted.connect(self._take_out_shown)
        self.form.done.connect(self._back)

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of the plan do, by name."""
        found: dict[str, Callable[[], object]] = {
            name: lambda name=name: self.add(name)  # type: ignore[misc]
            for name in NEW_MOVES
        }
        return found | {
            "add_wreck": self._add_wreck,
            "change_move": self._turn_form,
            "move_earlier": lambda: self._shift(-1),
            "move_later": lambda: self._shift(1),
            "take_out": lambda: self.take_out(self.session.selection.now.move),
            "wreck": self.turn_wreck,
        }

    # --- the list ----------------------------------------------------------------------------------------

    def add(self, name: str) -> None:
        """Add a move of a type after the last one, as the last of its type stands in the plan."""
        words, _ = NEW_MOVES[name]
        new = new_move(name, side=self.session.plan.car.extent == "side")
        moves = self.session.plan.moves
        move = next((move for move in reversed(moves) if type(move) is type(new)), new)
        label = f"Added: {words[0].lower()}{words[1:]}"
        self.session.document.commit(self.session.plan.with_move(len(moves), move), label)
        self.session.selection.select_move(len(moves))
        if name not in SET_BY_POINTING:
            self.change(len(moves))

    def take_out(self, index: int) -> None:
        """Take a move out of the plan."""
        plan = self.session.plan
        if 0 <= index < len(plan.moves) and not self.session.asking.open:
            self.session.document.commit(plan.without_move(index), f"Took out move {index + 1}")

    def put(self, index: int, place: int) -> None:
        """Put a move at another place in the order and work out again what was worked out."""
        session = self.session
        moves = list(session.plan.moves)
        if not (0 <= index < len(moves) and 0 <= place < len(moves)) or index == place or session.asking.open:
            return
        moves.insert(place, moves.pop(index))
        plan = msgspec.structs.replace(session.plan, moves=tuple(moves))
        session.change_plan(plan, f"Put move {index + 1} at place {place + 1}")
        session.selection.select_move(place)

    def _shift(self, way: int) -> None:
        index = self.session.selection.now.move
        self.put(index, index + way)

    # --- the form ----------------------------------------------------------------------------------------

    def change(self, index: int) -> None:
        """Open the form of a move."""
        self._wreck_index = None
        self.session.selection.select_move(index)
        self.window.left_pages.setCurrentWidget(self.form)
        self.show()

    def _turn_form(self) -> None:
        if self.window.left_pages.currentWidget() is self.form:
            self._back()
        elif self.session.move is not None:
            self.change(self.session.selection.now.move)

    def _back(self) -> None:
        self.window.left_pages.setCurrentIndex(0)
        self.window.focus_stage()

    def show(self) -> None:
        """Show the selected move, or the wreck's, in the form, if that is open."""
        if self.window.left_pages.currentWidget() is not self.form:
            return
        session, plan = self.session, self.session.plan
        wreck, index = self._wreck_index, session.selection.now.move
        if wreck is not None and wreck >= len(plan.wreck):
            wreck = self._wreck_index = None
        move = session.move if wreck is None else plan.wreck[wreck]
        if move is None:
            self.form.show_move("No move is chosen", None, (), "", session.view.options.units)
            return
        number = f"{index + 1}  " if wreck is None else "Before the plan: "
        fields = fields_of(move, side=plan.car.extent == "side")
        trouble = self._trouble(move)
        self.form.show_move(f"{number}{title_of(move)}", move, fields, trouble, session.view.options.units)
        count = len(plan.moves)
        self.form.show_able(up=wreck is None and index > 0, down=wreck is None and index + 1 < count)

    def _trouble(self, move: Move) -> str:
        """Return why a move cannot be made on the car as it was built; "" where it can."""
        model = self.session.model
        if model is None:
            return ""
        # Imported here: the mechanics of the moves are loaded by then, and the window shows before.
        from sim.moves import course_of

        try:
            getattr(course_of(move), "ready", lambda *_: None)(model, move)
        except PlanError as problem:
            side = self.session.plan.car.extent == "side"
            row = next((f.words for f in fields_of(move, side=side) if f.name == problem.field), "")
            words = f"{row} {problem.message}.".replace("_", " ") if row else one_line(problem)
            return f"It cannot be done so: {words}"
        except MeshError as problem:
            return f"It cannot be done so: {problem}."
        return ""

    def _wish(self, field: Field, value: object) -> None:
        session, plan, wreck = self.session, self.session.plan, self._wreck_index
        if session.asking.open:
            session.said.emit("A prediction is open: compare it before the plan is changed.", "")
            self.show()
            return
        if wreck is None:
            if session.move is not None:
                run = (field.name, session.selection.now.move)
                session.change_move(
                    changed(session.move, field.name, value), f"Changed: {field.words.lower()}", run
                )
        else:
            moves = list(plan.wreck)
            moves[wreck] = changed(moves[wreck], field.name, value)
            self._commit_wreck(
                tuple(moves), f"Changed the wreck: {field.words.lower()}", (field.name, -1 - wreck)
            )
        self.show()

    def _take_out_shown(self) -> None:
        if self._wreck_index is None:
            self.take_out(self.session.selection.now.move)
        else:
            moves = list(self.session.plan.wreck)
            del moves[self._wreck_index]
            self._commit_wreck(tuple(moves), "Took a move out of the wreck")
        self._back()

    # --- the wreck ---------------------------------------------------------------------------------------

    def turn_wreck(self) -> None:
        """Work the wreck out, watch it, or go back to the plan: whichever comes next."""
        session = self.session
        if session.timeline.shows_wreck and not session.queue.busy:
            session.leave_wreck()
        elif session.found is not None and session.found.moves:
            session.watch_wreck()
        else:
            session.find()

    def _change_wreck(self) -> None:
        if self.session.plan.wreck:
            self._wreck_index = 0
            self.window.left_pages.setCurrentWidget(self.form)
            self.show()

    def _add_wreck(self) -> None:
        session = self.session
        if session.plan.start:
            session.said.emit("The plan begins with a saved start; take that out before another wreck.", "")
            return
        wreck = (*session.plan.wreck, Crush(travel_m=WRECK_M))
        self._commit_wreck(wreck, "Put a wreck before the plan" if len(wreck) == 1 else "Added to the wreck")
        self._wreck_index = len(wreck) - 1
        self.window.left_pages.setCurrentWidget(self.form)
        self.show()

    def _drop_wreck(self) -> None:
        plan = msgspec.structs.replace(self.session.plan, wreck=(), start="")
        self._commit(plan, "Took out what was before the plan")

    def _commit_wreck(self, wreck: tuple[Move, ...], label: str, run: object = None) -> None:
        self._commit(msgspec.structs.replace(self.session.plan, wreck=wreck), label, run)

    def _commit(self, plan: Plan, label: str, run: object = None) -> None:
        # Imported here: what a wreck may hold is checked where the mechanics are.
        from sim.wreckcheck import check_wreck

        try:
            check_wreck(plan)
        except PlanError as problem:
            self.session.said.emit(one_line(problem), "")
            return
        if not self.session.asking.open:
            self.session.document.commit_run(plan, label, run)

    def show_wreck(self) -> None:
        """Show the card of what wrecked the car."""
        self.window.plan.wreck.show_card(wreck_card(self.session))
