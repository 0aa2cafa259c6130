"""What a plan file may hold, told field by field: nothing without words, nothing a file does not take."""

from typing import get_args

import msgspec
import pytest

from sim import plan_fields
from sim.plan import Car, EdgePoint, Move, Plan
from sim.planfile import loads_plan
from sim.problems import PlanError
from sim.whole_side import WholeSide

MOVES = {kind.__struct_config__.tag: kind for kind in get_args(Move)}


def table(word, told_by=""):
    """Return the one table that is called so."""
    (found,) = [
        one
        for one in plan_fields.tables()
        if (one.told_by == told_by if told_by else one.headings == (f"[{word}]",))
    ]
    return found


def test_every_field_of_a_plan_has_its_words():
    fields = [(one.headings, field) for one in plan_fields.tables() for field in one.fields]
    assert len(fields) > 150
    assert [(where, field.name) for where, field in fields if not field.words.strip(" ;")] == []
    missing = [
        (kind.__name__, field.name)
        for kind in (Plan, Car, WholeSide, EdgePoint, *MOVES.values())
        for field in msgspec.structs.fields(kind)
        if field.name not in plan_fields.field_words(kind)
    ]
    assert missing == []


@pytest.mark.parametrize("tag", list(MOVES))
def test_what_is_told_of_a_move_can_be_written_so_and_is_what_it_is_by_itself(tag):
    told = table("moves", f'move = "{tag}"')
    plain = [field for field in told.fields if field.default not in ("a table", "left out")]
    lines = [f"{field.name} = {field.default}" for field in plain]
    text = "\n".join(["schema_version = 1", "[[moves]]", told.told_by, *lines])
    (move,) = loads_plan(text).moves
    usual = MOVES[tag]()
    for field in msgspec.structs.fields(usual):
        wished = getattr(usual, field.name)  # an angle comes back from its degrees
        got = getattr(move, field.name)
        assert got == (pytest.approx(wished, abs=1e-4) if isinstance(wished, float) else wished), field.name


@pytest.mark.parametrize(("word", "kind"), [("car", Car), ("car.whole_side", WholeSide)])
def test_what_is_told_of_a_car_is_what_it_is_by_itself(word, kind):
    told = {field.name: field for field in table(word).fields}
    assert set(told) == {name.replace("_rad", "_deg") for name in kind.__struct_fields__}
    plain = [field for field in told.values() if field.default not in ("a table", "left out")]
    lines = [f"{field.name} = {field.default}" for field in plain]
    car = loads_plan("\n".join(["schema_version = 1", f"[{word}]", *lines])).car
    car = msgspec.structs.replace(
        car,
        whole_side=msgspec.structs.replace(
            car.whole_side, occupant_lean_rad=pytest.approx(car.whole_side.occupant_lean_rad)
        ),
    )
    assert car == Car()


def test_angles_are_told_as_they_stand_in_files_and_ranges_with_them():
    lean = next(f for f in table("car.whole_side").fields if f.name == "occupant_lean_deg")
    assert lean.default == "25" and "0 to 60 (" in lean.words
    tilt = next(f for f in table("", 'move = "spread"').fields if f.name == "tilt_deg")
    assert tilt.default == "45"


def test_one_word_tells_a_table_and_what_stands_in_it():
    text = plan_fields.told("press")
    assert 'move = "press"' in text and "[moves.ram]" in text and "stage_n = [" in text
    assert 'move = "spread"' not in text and "[car]" not in text
    assert "one of " in text


def test_a_word_that_names_no_table_is_told_with_those_that_do():
    with pytest.raises(PlanError, match=r"names no table of a plan file; use one of .*car.*press.*spread"):
        plan_fields.told("hammer")
