"""Outcome maps in the window: asked, stopped, known, compared; and how their cells lie on a chart."""

from __future__ import annotations

import msgspec
import pytest

from sim.map_cell import Job
from sim.map_file import MapStore
from sim.outcome_map import asked, difference, made
from sim.plan import Car, Plan, Spread
from sim.units import Units
from tests.sim.many.map_fakes import finer_says_otherwise, quick
from ui.state import map_telling
from ui.state.map_layout import label_spot, lay_out, regions
from ui.state.maps import MapReady, Maps, MapStep, MapTrouble

ASK = asked(Plan(moves=(Spread(),)))
OTHER = asked(Plan(car=Car(name="welded one", seam="welded"), moves=(Spread(),)))


def map_of(ask, job=quick):
    first, second = (
        [job(Job(ask.plan, cell, spacing)) for cell in ask.grid.cells] for spacing in ask.spacings_m
    )
    return made(ask, first, dict(enumerate(second)))


class TestWishes:
    def test_a_map_is_counted_up_and_known_once_it_is_there(self):
        maps, asked_for = Maps(), []
        maps.asked.connect(asked_for.append)
        maps.make(ASK)
        (request,) = asked_for
        assert maps.busy and maps.known(ASK) is None
        assert maps.take(MapStep(request.number, 3, 220, 60.0))
        assert maps.progress.done == 3
        assert maps.take(MapReady(request.number, map_of(ASK)))
        assert not maps.busy and maps.known(ASK) == map_of(ASK)

    def test_answers_to_an_older_wish_are_dropped(self):
        maps = Maps()
        maps.make(ASK)
        old = maps.current.number
        maps.make(OTHER)
        assert not maps.take(MapReady(old, map_of(ASK)))
        assert maps.known(ASK) is None

    def test_stopping_tells_the_worker_and_keeps_no_half_map(self):
        maps, dropped = Maps(), []
        maps.dropped.connect(lambda: dropped.append(1))
        maps.make(ASK)
        maps.stop()
        assert dropped == [1] and not maps.busy and maps.known(ASK) is None
        maps.stop()
        assert dropped == [1]

    def test_trouble_is_told_in_the_map_s_place(self):
        maps = Maps()
        maps.make(ASK)
        maps.take(MapTrouble(maps.current.number, "It was lost.", "details"))
        assert map_telling.note(maps, ASK) == "It was lost."

    def test_a_map_of_an_earlier_sitting_is_found(self, tmp_path):
        store, whole = MapStore(tmp_path), map_of(ASK, finer_says_otherwise)
        for index, told in enumerate(whole.told):
            store.add(ASK, 0, index, told.first)
        assert Maps(tmp_path).known(ASK) is None  # the second lattice is still to come
        for index, told in enumerate(whole.told):
            store.add(ASK, 1, index, told.second)
        assert Maps(tmp_path).known(ASK) == whole

    def test_only_maps_of_the_same_cells_can_be_compared(self):
        maps = Maps()
        narrow = asked(Plan(car=Car(shut_face_depth_m=0.08), moves=(Spread(),)))
        for ask in (ASK, OTHER, narrow):
            maps.make(ask)
            maps.take(MapReady(maps.current.number, map_of(ask)))
        others = [one.key for one in maps.others(ASK)]
        assert OTHER.key in others and narrow.key not in others and ASK.key not in others


class TestTelling:
    def test_the_page_says_map_cell_and_what_it_can_be_compared_with(self):
        maps = Maps()
        for ask in (ASK, OTHER):
            maps.make(ask)
            maps.take(MapReady(maps.current.number, map_of(ask)))
        words = map_telling.told(maps, ASK, map_of(ASK), None, "", 0, Units.METRIC)
        assert words.sentence.startswith("Of 110 places") and "the seam parts first at 88" in words.sentence
        assert words.cell.startswith("Latch edge, 30\u00a0mm above the sill")
        assert "welded one" in words.others and words.chosen == 0
        assert "not a real car" in words.foot

    def test_a_comparison_says_what_changes_and_what_stays(self):
        one, two = map_of(ASK), map_of(OTHER, finer_says_otherwise)
        apart = difference(one, two)
        assert "On the other: not settled" in map_telling.cell_told(one, apart, 0, Units.METRIC)
        assert "The same on the other" in map_telling.cell_told(one, apart, 1, Units.METRIC)
        assert map_telling.halves_told(apart).endswith("Right half: welded one.")
        lines = map_telling.text(one, apart, Units.IMPERIAL).splitlines()
        assert any("seam parting becomes not settled" in line for line in lines)
        assert "1.2\u00a0in" in "".join(lines) and "mm" not in "".join(lines).replace("seam", "")


class TestLayout:
    @pytest.mark.parametrize("left_side", [False, True])
    def test_the_lip_lies_outermost_and_the_sill_at_the_foot(self, left_side):
        layout = lay_out(ASK.grid, 600.0, 400.0, 14.0, left_side=left_side)
        latch, hinge = layout.blocks["latch_edge"], layout.blocks["hinge_edge"]
        assert (latch.x < hinge.x) is not left_side  # a right-hand door seen from outside has its latch left
        for edge, block in layout.blocks.items():
            lip, bend = (layout.cell(ASK.grid.index(edge, 0, column)) for column in (0, 4))
            middle = 0.5 * 600.0
            assert abs(lip.middle[0] - middle) > abs(bend.middle[0] - middle)
            top = layout.cell(ASK.grid.index(edge, 10, 0))
            assert lip.y > top.y and lip.y + lip.tall == pytest.approx(block.y + block.tall)

    def test_every_cell_is_found_under_its_middle_and_none_in_the_gap(self):
        layout = lay_out(ASK.grid, 600.0, 400.0, 14.0)
        for index in range(len(ASK.grid.cells)):
            assert layout.at(*layout.cell(index).middle) == index
        assert layout.at(300.0, 200.0) is None

    def test_arrows_walk_over_every_cell_and_across_the_gap(self):
        layout = lay_out(ASK.grid, 600.0, 400.0, 14.0)
        seen, cell = [], layout.step(None, 1, 0)
        for _ in range(2 * len(ASK.grid.depth_m) - 1):
            seen.append(cell)
            cell = layout.step(cell, 1, 0)
        seen.append(cell)
        assert len(set(seen)) == 2 * len(ASK.grid.depth_m)
        x = [layout.cell(one).middle[0] for one in seen]
        assert x == sorted(x)
        assert layout.step(cell, 1, 0) == cell  # the end stays

    def test_regions_hang_together_and_hold_every_cell_once(self):
        words = [told.word for told in map_of(ASK, finer_says_otherwise).told]
        found = regions(ASK.grid, words)
        assert sorted(index for region in found for index in region) == list(range(len(words)))
        assert [len(region) for region in found] == [44, 43, 11, 11, 1]

    def test_a_word_stands_inside_its_region_or_nowhere(self):
        layout = lay_out(ASK.grid, 600.0, 400.0, 14.0)
        words = [told.word for told in map_of(ASK).told]
        for region in regions(ASK.grid, words):
            spot = label_spot(layout, region, 40.0)
            assert spot is not None and layout.at(*spot) in region
            assert label_spot(layout, region, 500.0) is None


def test_a_request_carries_what_settles_the_map():
    maps = Maps()
    maps.make(ASK)
    assert msgspec.structs.asdict(maps.current.ask) == msgspec.structs.asdict(ASK)
