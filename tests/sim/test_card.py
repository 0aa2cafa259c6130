"""The model card: no number of the model is missing from it, none without a source, and it can be written.

Sources
-------
None: the card's own sources are the program's data.
"""

import importlib
import numbers
from html.parser import HTMLParser

import msgspec
import pytest

from sim import card, card_many, materials
from sim.checks import sources
from sim.checks.row import Row
from sim.plan import Car, Tool

CARD = card.load()
PLACES = {number.place for number in CARD.numbers}
# modules whose plain constants are numbers of the model
MODULES = (
    "door_structure",
    "seam",
    "latch",
    "tear",
    "builds",
    "pillar",
    "rocker",
    "surround",
    "standing",
    "side_model",
    "cutting",
    "raw",
    "blade_work",
    "pieces",
    "ram",
    "base",
)
# the same number under another module's name, or not a number of the metal
ELSEWHERE = {
    "sim.seam:SEAM_RISE_M", "sim.seam:WELD_RISE_M", "sim.pillar:WELD_RISE_M",  # of sim.carcheck
    "sim.rocker:WELD_RISE_M", "sim.rocker:FACE_N_PER_M", "sim.rocker:PULL_OUT_M",  # of sim.pillar
    "sim.seam:FIELD_STEP_M", "sim.side_model:SEAT_SPOTS",  # grids
    "sim.ram:LINE_POINTS",  # a grid
    "sim.standing:GRAVITY_M_S2", "sim.standing:BODY_ARM_M",  # of sim.surround
    "sim.standing:RIGID_FROM", "sim.standing:FRONT", "sim.standing:REAR", "sim.standing:PILLAR",
    "sim.standing:RAIL", "sim.standing:ROCKER",  # counts
    "sim.rocker:PRESSURE",  # a column of a bond's law
    # grids of places and looks
    *(f"sim.exposed:{name}" for name in ("GRAIN_M", "ALONG_PIN", "LOOKS_DEG", "LEANS", "ROUND", "ROLLS")),
}  # fmt: skip
# columns of a bond's law and of a slip row
ELSEWHERE |= {f"sim.{m}:{k}" for m in MODULES for k in ("END", "LENGTH", "STIFFNESS", "OFFSET", "WAY")}
FAMILIES = [("peeling", [Row("peel | load", "kendall-1975", 2.0, 2.05, "N/mm", 0.05, spacing="45 mm")])]


def is_number(value):
    if isinstance(value, tuple) and value:
        return all(is_number(one) for one in value)
    return isinstance(value, numbers.Number) and not isinstance(value, bool)


@pytest.mark.parametrize("struct", [Car, Tool])
def test_every_numeric_default_of_car_and_tool_is_on_the_card(struct):
    names = [f.name for f in msgspec.structs.fields(struct) if is_number(getattr(struct(), f.name))]
    assert len(names) >= 5
    assert [name for name in names if f"sim.plan:{struct.__name__}.{name}" not in PLACES] == []


def test_every_number_of_every_metal_is_on_the_card():
    metals = {k: v for k, v in vars(materials).items() if isinstance(v, materials.Metal)}
    assert len(metals) >= 6
    wanted = {
        f"sim.materials:{name}.{field}"
        for name, metal in metals.items()
        for field, value in vars(metal).items()
        if is_number(value)
    }
    assert wanted - PLACES == set()


@pytest.mark.parametrize("module", MODULES)
def test_every_constant_of_the_model_is_on_the_card(module):
    found = importlib.import_module(f"sim.{module}")
    places = {f"sim.{module}:{k}" for k, v in vars(found).items() if k.isupper() and is_number(v)}
    assert places
    assert places - PLACES - ELSEWHERE == set()


def test_every_number_has_a_value_a_name_of_its_own_and_a_source():
    for number in CARD.numbers:
        assert number.value != card.GONE, number.place
        plain = number.source.startswith(card.PLAIN)
        assert plain or number.source.split(";")[0].split()[0] in sources.all_sources(), number
    named = [(n.group, n.name) for n in CARD.numbers]
    assert len(set(named)) == len(named)
    assert len(PLACES) == len(CARD.numbers)


def test_values_are_the_programs_own():
    by_place = {n.place: n.value for n in CARD.numbers}
    assert by_place["sim.plan:Car.skin_thickness_m"] == "0.7 mm"
    assert by_place["sim.materials:SKIN_STEEL.yield_pa"] == "220 MPa"
    assert by_place["sim.latch:LATCH_FLOOR_N"] == "11, 9, 9 kN"
    assert by_place["sim.outcome:LIMITS.parted_m"] == "20 mm"
    with pytest.raises(LookupError, match="nothing stands there"):
        card.value_at("sim.plan:Car.colour")


def test_markdown_holds_every_chapter_and_every_number():
    text = card.markdown(CARD, FAMILIES, "version 0")
    for heading in card.CHAPTERS:
        assert f"## {heading}" in text
    for number in CARD.numbers:
        assert f"| {number.name} | {number.value} |" in text
    assert "peel \\| load" in text
    assert "Thin-film peeling" in text
    assert f"## {card.CHAPTERS[5]}" not in card.markdown(CARD, [], "version 0")


class Counter(HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.cells, self.words = [], 0, []

    def handle_starttag(self, tag, attrs):
        if tag not in ("meta", "br"):
            self.open.append(tag)
        self.cells += tag == "td"

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        self.words.append(data)


def test_page_is_whole_and_holds_the_same():
    reader = Counter()
    reader.feed(card.page(CARD, FAMILIES, "version 0"))
    assert reader.open == []
    of_many = 4 * len(card_many.varied_lines()) + 5 * len(card_many.came_lines())
    assert reader.cells == 3 * len(CARD.numbers) + 6 * len(CARD.spacing) + of_many + 8
    words = " ".join(reader.words)
    assert "peel | load" in words
    assert all(number.name in words for number in CARD.numbers)
