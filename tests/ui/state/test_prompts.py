"""Prompts come at the right moment, named to the hazard at hand; they hold nothing up.

Sources
-------
That trim is stripped before a post is pushed or cut, glass handled, the car supported, and that getting out
with little help is thought of first: common practice, no source.
"""

from types import SimpleNamespace

import pytest

from sim.plan import (
    BeltPoint,
    BodyPoint,
    Car,
    Cut,
    Ease,
    Flex,
    Hold,
    Plan,
    Press,
    Spread,
    Strip,
    Support,
)
from sim.whole_side import WholeSide
from ui.state.answers import DoorReady, Ended
from ui.state.describing import described
from ui.state.prompts import IS_IT_NEEDED, before_force, first_force, hazards_of, plan_hazards, prompts
from ui.state.session import Session
from ui.state.signs import hazards, signs

SIDE = Car(extent="side")


def of(*moves, index=-1, car=SIDE):
    plan = Plan(car=car, moves=moves)
    return hazards_of(plan, index % len(moves))


def test_a_post_is_cut_or_pushed_with_the_word_on_restraints_until_trim_is_off():
    assert "restraints" in of(Cut())
    assert "restraints" in of(Press())
    assert "restraints" in of(Spread(against=BodyPoint("pillar_outside", 0.4)))
    assert "restraints" not in of(Spread())
    assert "restraints" not in of(Strip(what=("trim",)), Cut())
    assert "restraints" in of(Strip(what=("seals",)), Cut())
    assert "restraints" in of(Cut(), Strip(what=("trim",)), index=0)  # too late is not before


def test_each_type_of_move_brings_its_own_hazard():
    assert "sharp edges" in of(Cut())
    assert "high voltage" in of(Cut())
    assert "stored energy" in of(Press())
    assert "glass" in of(Spread(door=BeltPoint()))
    assert "glass" not in of(Strip(what=("glass",)), Spread(door=BeltPoint()))
    assert "swinging door" in of(Hold())
    assert "stability" in of(Spread())
    assert "stability" not in of(Support(), Spread())
    assert "stability" in of(Support(), Support(on="wheels"), Spread())
    assert of(Ease()) == ()
    assert of(Spread(), car=Car()) == ("stored energy",)


def test_a_car_that_starts_on_blocks_is_told_so_and_one_on_its_side_is_not_told_of_wheels():
    blocks = Car(extent="side", whole_side=WholeSide(stands_on="blocks"))
    assert "stability" not in of(Spread(), car=blocks)
    assert "stability" in of(Support(on="wheels"), Spread(), car=blocks)
    assert "(on blocks in this plan)" in before_force(Plan(car=blocks, moves=(Spread(),)), 0)[0]
    lying = Car(extent="side", whole_side=WholeSide(lies="this side up"))
    assert "on its side, on no blocks" in before_force(Plan(car=lying, moves=(Spread(),)), 0)[0]
    assert "stability" in of(Spread(), car=lying)


def test_a_bar_on_the_frame_or_a_spread_at_the_belt_of_a_single_door_is_told_of_glass():
    assert "glass" in of(Flex(), car=Car())
    assert "glass" in of(Spread(door=BeltPoint()), car=Car())
    assert "glass" not in of(Spread(), car=Car())


def test_every_hazard_has_its_card_and_the_caution_its_sign():
    plan = Plan(car=SIDE, moves=(Strip(), Cut(), Press(), Hold(), Spread(door=BeltPoint()), Support()))
    assert set(plan_hazards(plan)) <= set(hazards())
    assert "caution" in signs()


def test_what_was_looked_at_says_what_the_plan_itself_does():
    plan = Plan(car=SIDE, moves=(Support(), Strip(what=("trim", "glass")), Spread()))
    words = "; ".join(before_force(plan, 2))
    assert "on blocks in this plan" in words
    assert "trim stripped (stripped in this plan)" in words
    bare = "; ".join(before_force(Plan(car=SIDE, moves=(Spread(),)), 0))
    assert "on its wheels alone" in bare
    assert "not stripped" in bare
    assert "still in" in bare
    assert first_force(plan) == 2
    assert first_force(Plan(moves=(Ease(), Strip()))) is None


@pytest.fixture
def sitting(frame, record):
    """Return a session with a support, a cut and a spread, its car set out."""
    session = Session(Plan(car=SIDE, moves=(Support(), Cut(), Spread())))
    model = SimpleNamespace(structure=SimpleNamespace(sliders=()))
    asked = []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, SIDE, model, frame()), Ended(asked[0].number)])
    return session


def test_the_question_comes_first_and_only_before_the_first_force(sitting):
    assert [card.name for card in prompts(sitting)] == ["Stability"]  # blocks are no force on metal
    sitting.selection.select_move(1)
    cards = prompts(sitting)
    assert cards[0].words.startswith(IS_IT_NEEDED)
    assert cards[1].name == "Restraints"
    assert not any(card.happened for card in cards)
    assert IS_IT_NEEDED in described(sitting)
    sitting.selection.select_move(2)
    assert all(not card.words.startswith(IS_IT_NEEDED) for card in prompts(sitting))


def test_blades_that_met_what_trim_hid_are_named_from_that_moment_on(sitting, frame, record):
    from dataclasses import replace

    from sim.record import Event

    done = record([0.0, 0.0, 0.0], move=1)
    event = Event("caution", "belt tensioner behind trim", 0.0, 0.0)
    torn = Event("cut open", "pillar", 0.0, 0.0)
    met = replace(done.frames[1], events=(event, torn))
    done = replace(done, frames=(done.frames[0], met, done.frames[2]))
    sitting.know(sitting.plan, [record([0.0], move=0), done])
    line = sitting.timeline
    line.go(2)
    assert line.move == 1
    assert prompts(sitting) == ()
    for place in (3, 4):
        line.go(place)
        cards = prompts(sitting)
        assert [card.name for card in cards] == ["Belt tensioner behind trim", "Sharp edges"]
        assert all(card.happened for card in cards)
        assert "Caution: belt tensioner behind trim; sharp edges." in described(sitting)
    sitting.locks.restore(("answers",))
    assert prompts(sitting) == ()
