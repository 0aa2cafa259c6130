"""Values of a file that are none of the program's: told by field and remedy in the words of a TOML file."""

import copy
import tomllib
from collections.abc import Iterator
from importlib import resources

import pytest

from sim.plan import Plan
from sim.problems import PlanError
from sim.scenario import Scenario
from sim.typed import converted, parsed

ASSETS = resources.files("assets")
WRONG = ("a word", [], {}, [1], {"x": 1}, True, [{}], ["a"])
READERS = ("plans", Plan), ("scenarios", Scenario)


def places(value: object, path: tuple = ()) -> Iterator[tuple]:
    """Yield the path of every value of a file, the tables and lists among them."""
    if path:
        yield path
    pairs = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, item in pairs:
        yield from places(item, (*path, key))


def with_value(raw: dict, path: tuple, value: object) -> dict:
    """Return a file's values with one of them put in place of another."""
    raw = copy.deepcopy(raw)
    holder = raw
    for key in path[:-1]:
        holder = holder[key]
    holder[path[-1]] = value
    return raw


def refused(raw: dict, kind: type) -> str:
    """Return what is said of a file's values, "" where they are taken."""
    try:
        converted(raw, kind, "file")
    except PlanError as error:
        return str(error)
    return ""


@pytest.mark.parametrize(("folder", "kind"), READERS)
def test_any_field_of_the_ready_files_with_another_type_is_told_with_field_and_remedy(folder, kind):
    seen, said = set(), []
    for file in sorted((ASSETS / folder).iterdir(), key=lambda file: file.name):
        if not file.name.endswith(".toml"):
            continue
        raw = tomllib.loads(file.read_text(encoding="utf-8").replace("_deg =", "_rad ="))
        for path in places(raw):
            shape = tuple("#" if isinstance(key, int) else key for key in path)
            if shape in seen:
                continue
            seen.add(shape)
            said += [(path, told) for value in WRONG if (told := refused(with_value(raw, path, value), kind))]
    assert len(seen) > 30 and len(said) > 4 * len(seen)
    for path, told in said:
        field, remedy = told.split(" ", 1)
        assert field.startswith(str(path[0])), told
        assert ";" in remedy and "`" not in told and "..." not in field, told


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("banana = 1", "banana is not a field of a plan; check its spelling, or remove it"),
        ("[car]\nlatch_wedge_kn = 1", "give 'latch_wedge_n' in SI units instead"),
        ("[[moves]]\nmove = 'spread'\ndoor = {edge = 'latch'}", "moves[0].door.at is missing; add it"),
        (
            "[[moves]]\nmove = 'spread'\ndoor = {at = 'edge', edge = 'latch'}",
            "moves[0].door.edge is 'latch'; use one of: 'hinge_edge', 'latch_edge', 'sill_edge'",
        ),
        ("[[moves]]\nmove = 'spread'\ndoor = {at = 'roof'}", "moves[0].door.at is 'roof'; use one of:"),
        ("[[moves]]\nmove = 'hold'\nway = 'push'", "moves[0].way is 'push'; use one of: 'let go', 'prop'"),
        ("[[moves]]\nmove = 'spread'\ndoor = 3", "moves[0].door is a whole number; give a table instead"),
    ],
)
def test_a_plan_s_field_is_told_with_what_it_may_be(line, words):
    with pytest.raises(PlanError) as told:
        converted(parsed(f"schema_version = 1\n{line}\n", "plan"), Plan, "plan")
    assert words in str(told.value)


def test_a_table_of_names_is_told_by_the_name_that_is_wrong():
    raw = {"schema_version": 1, "title": "A", "asks": [], "plans": {"lip": "lip.toml", "bend": 3}}
    assert refused(raw, Scenario) == "plans.bend is a whole number; give text in quotes instead"


def test_what_may_be_left_out_is_told_by_the_type_it_has_when_given():
    raw = {"schema_version": 1, "title": "A", "asks": [], "plans": {}, "lattice_spacing_m": "fine"}
    assert refused(raw, Scenario) == "lattice_spacing_m is text in quotes; give a number instead"
