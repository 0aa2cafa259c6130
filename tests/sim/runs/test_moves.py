"""The table of moves: every type has its class and its words, and a new one needs nothing else."""

from __future__ import annotations

from dataclasses import replace
from typing import get_args

import msgspec
import numpy as np
import pytest

from sim import moves
from sim.course import AtOnce, come_to_rest
from sim.door_model import build_model
from sim.ledger import Ledger
from sim.move_words import WORDS, is_driven, opened, opening_of, words_of
from sim.network import Network
from sim.plan import Car, Ease, Move, Spread
from sim.run import Begin, MoveRun
from sim.state import Drive, Load

CAR = Car(lattice_spacing_m=0.09)


class Unlatch(msgspec.Struct, frozen=True, tag="free_the_latch", tag_field="move"):
    """A type of move this test adds."""

    words: str = ""


class UnlatchCourse(AtOnce):
    """Take the latch's tie away at once."""

    def change(self, rest):
        """Return the state without its latch."""
        names = [tie.name for tie in self.run.model.structure.ties]
        return self.run.model, self.run.network.release_tie(rest.state, names.index("latch"))


def test_every_type_of_move_has_its_class_and_its_words():
    assert set(get_args(Move)) <= set(moves.COURSES)
    assert set(get_args(Move)) <= set(WORDS)


@pytest.mark.parametrize("kind", get_args(Move))
def test_the_field_of_travel_is_a_field_of_the_move(kind):
    move = kind()
    further = opened(move, 0.0125)
    assert (further != move) == is_driven(move) == (opening_of(move) > 0.0)
    assert opening_of(further) == (0.0125 if is_driven(move) else 0.0)


def test_an_unknown_type_changes_nothing_and_is_told_by_its_tag():
    model = build_model(CAR)
    run = MoveRun(model, Unlatch(), Begin(model.start, Ledger()))
    frames = list(run)
    assert [frame.opening_m for frame in frames] == [0.0] * 4
    assert np.allclose(frames[-1].points, model.start.points, rtol=0.0, atol=1e-9)
    result = run.result()
    assert result.plan_effect == "done"
    assert "Free the latch" in result.sentence
    assert words_of(Unlatch()).place(Unlatch(), str) == ""


def test_a_tool_that_is_off_pushes_nothing_in_the_next_move(monkeypatch):
    """Metal torn under a tool carries that tool's tips on its network: they are not there any more."""
    monkeypatch.setitem(moves.COURSES, Unlatch, UnlatchCourse)
    model = build_model(CAR)
    node = int(model.structure.names["inner_mid"][0])
    place = float(model.start.points[node, 1])
    tips = Drive(np.array([node]), np.ones(1), np.array([0.0, 1.0, 0.0]), place + 0.01)
    ghost = replace(model, network=model.network.with_drives([tips]))
    ends = []
    for begin in (Begin(model.start, Ledger()), Begin(model.start, Ledger(), model=ghost)):
        run = MoveRun(model, Unlatch(), begin)
        list(run)
        ends.append(run.end.state)
    assert ends[0].sha256() == ends[1].sha256()
    assert (
        np.abs(ghost.network.evaluate(model.start.points, model.start, Load((0.0,))).drive_force).max()
        > 1.0e3
    )


def test_a_move_done_at_once_lets_the_metal_spring_and_books_it(monkeypatch):
    monkeypatch.setitem(moves.COURSES, Unlatch, UnlatchCourse)
    model = build_model(CAR)
    push = MoveRun(model, Spread(opening_m=0.01), Begin(model.start, Ledger()))
    list(push)
    run = MoveRun(model, Unlatch(), push.end, 1)
    frames = list(run)
    result = run.result()
    assert result.start_sha256 == push.end.state.sha256()
    moved = np.linalg.norm(frames[-1].points - frames[0].points, axis=1).max()
    assert moved > 1.0e-5  # what the push had left in the door springs
    assert abs(result.ledger_j["gap"]) < 1.0e-6  # the books of coming to rest close by their definition
    assert result.ledger_j["released in a jump"] > 0.0
    assert result.ledger_j["work of the tips"] == 0.0
    again = come_to_rest(run.stepper, run._point)[1].state.points
    assert np.linalg.norm(again - frames[-1].points, axis=1).max() < 0.02 * moved  # it is at rest
    after = MoveRun(model, Ease(), run.end, 2)
    assert len(list(after)) == 2


def test_a_changed_model_goes_on_to_the_next_move(monkeypatch):
    class Softer(UnlatchCourse):
        """Put a network of its own in place of the model's."""

        def change(self, rest):
            """Return a model on a copy of its network."""
            model = self.run.model
            new = msgspec.structs.replace(model.car, name="changed")
            changed = type(model)(**{**model.__dict__, "car": new, "network": Network(model.structure)})
            return changed, rest.state

    monkeypatch.setitem(moves.COURSES, Unlatch, Softer)
    model = build_model(CAR)
    run = MoveRun(model, Unlatch(), Begin(model.start, Ledger()))
    list(run)
    assert run.end.model is not None
    assert run.end.model.car.name == "changed"
