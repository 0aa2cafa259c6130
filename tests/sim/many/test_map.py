"""The outcome map: every cell a run, the same alone as among others, honest about what is not settled.

Most runs here are stand-ins that solve nothing.  The trade facts are held against the maps that come with the
program, which are solved ones.
"""

import itertools
import multiprocessing
from pathlib import Path

import msgspec
import pytest

from sim import map_file, map_words, workers
from sim.likely import NOT_SETTLED
from sim.many import FAILED
from sim.map_cell import CANNOT, Job, Look, base_plan, look
from sim.map_file import MapStore
from sim.map_grid import Cell, at, grid_of
from sim.map_run import MapRun
from sim.outcome_map import Ask, asked, difference, fittings, made
from sim.plan import BeltPoint, Car, Ease, EdgePoint, Plan, Spread, Tool
from sim.planfile import load_plan
from sim.problems import PlanError
from sim.results import MODEL_VERSION
from tests.sim.many import map_fakes

PLAN = Plan(moves=(Spread(),))
ROOT = Path(__file__).resolve().parents[3]


def follow(ask: Ask, job=map_fakes.quick, store=None, **more):
    run = MapRun(ask, store, job=job, prepare=workers.nothing, **more)
    for _ in run:
        pass
    return run


def ready(name: str):
    return map_file.read_kept(ROOT / "assets" / "maps" / f"{name}.json")


@pytest.fixture(autouse=True)
def no_process_stays():
    yield
    assert not multiprocessing.active_children()


class TestGrid:
    def test_cells_cover_the_edge_from_sill_to_belt_and_from_lip_to_behind_the_bend(self):
        ask = asked(PLAN)
        grid = ask.grid
        assert grid.tall_m * len(grid.along_m) == pytest.approx(0.66, abs=1e-9)  # the door's own height
        assert grid.depth_m[0] < 0.010 and grid.depth_m[-1] > 0.100  # on the hem; past the inner bend
        assert len(grid.cells) == 2 * len(grid.along_m) * len(grid.depth_m)

    def test_a_cell_is_found_by_its_own_middle(self):
        grid = asked(PLAN).grid
        for index, cell in enumerate(grid.cells):
            assert at(grid, cell.edge, cell.along_m, cell.depth_m) == index
        assert at(grid, "sill_edge", 0.3, 0.01) is None
        assert at(grid, "latch_edge", 0.9, 0.01) is None

    def test_cells_beside_one_another_say_so_of_each_other(self):
        grid = asked(PLAN).grid
        for index in range(len(grid.cells)):
            assert all(index in grid.beside(near) for near in grid.beside(index))
            assert all(grid.cells[near].edge == grid.cells[index].edge for near in grid.beside(index))

    def test_a_narrower_shut_face_moves_the_depths_with_it(self):
        grid = asked(PLAN.with_car(Car(shut_face_depth_m=0.08))).grid
        assert grid.depth_m[-1] == pytest.approx(0.084, abs=1e-9)  # a twentieth past the bend


class TestAsking:
    def test_what_settles_no_cell_does_not_rename_the_map(self):
        moved = Plan(title="another", seed=7, moves=(Spread(door=EdgePoint(along_m=0.2), words="hm"), Ease()))
        assert asked(moved).key == asked(PLAN).key

    @pytest.mark.parametrize(
        "other",
        [
            PLAN.with_car(Car(seam="welded")),
            PLAN.with_move(0, Spread(tool=Tool(tip_width_m=0.02))),
            PLAN.with_move(0, Spread(tilt_rad=0.3)),
            Plan(moves=(Ease(), Spread())),
        ],
    )
    def test_what_settles_a_cell_does(self, other):
        assert asked(other).key != asked(PLAN).key

    def test_the_model_s_version_is_in_the_name(self, monkeypatch):
        before = asked(PLAN).key
        monkeypatch.setattr("sim.outcome_map.MODEL_VERSION", "another")
        assert asked(PLAN).key != before

    @pytest.mark.parametrize(
        ("own", "both"),
        [(0.03, (0.06, 0.03)), (0.045, (0.06, 0.045)), (0.06, (0.06, 0.075)), (0.09, (0.09, 0.06))],
    )
    def test_it_is_run_on_two_lattices_the_plan_s_own_among_them(self, own, both):
        assert asked(PLAN.with_car(Car(lattice_spacing_m=own))).spacings_m == both

    def test_a_plan_without_a_spread_is_refused_in_a_sentence(self):
        with pytest.raises(PlanError, match="moves hold no spread"):
            asked(Plan(moves=(Ease(),)))

    def test_a_push_with_both_tips_on_the_door_is_refused(self):
        inside = Plan(moves=(Spread(against=BeltPoint()),))
        with pytest.raises(PlanError, match=r"moves\[0\].against is on the door"):
            asked(inside)


class TestVerdicts:
    def test_a_map_that_agrees_everywhere_is_settled_everywhere(self):
        outcome = follow(asked(PLAN)).answer
        assert outcome.counts == {"seam parting": 88, "hinge free": 11, "latch free": 11}
        assert all(told.settled and told.second == told.first for told in outcome.told)

    def test_where_the_lattices_disagree_it_is_not_settled(self):
        outcome = follow(asked(PLAN), map_fakes.finer_says_otherwise).answer
        loose = [told for told in outcome.told if not told.settled]
        assert [told.cell for told in loose] == [Cell("latch_edge", 0.03, 0.005)]
        assert loose[0].why == "On the second lattice it comes out otherwise: skin tearing."

    def test_a_lost_run_is_never_an_outcome(self):
        outcome = follow(asked(PLAN), map_fakes.dies).answer
        lost = outcome.told[0]
        assert lost.word == NOT_SETTLED and lost.first.standing == FAILED and "the run was lost" in lost.why

    @pytest.mark.parametrize(
        ("changes", "why"),
        [
            ({"standing": NOT_SETTLED}, "did not come to rest"),
            ({"margin_ratio": 0.1}, "Nearly as close to happening: latch free."),
            ({"together": "latch free"}, "In the same step there was also: latch free."),
        ],
    )
    def test_a_run_that_is_close_or_did_not_converge_is_not_settled_and_not_run_again(self, changes, why):
        ask = asked(PLAN)
        first = [map_fakes.quick(Job(ask.plan, cell, 0.06)) for cell in ask.grid.cells]
        first[0] = msgspec.structs.replace(first[0], **changes)
        outcome = made(ask, first, {k: one for k, one in enumerate(first) if k})
        assert outcome.told[0].word == NOT_SETTLED and why in outcome.told[0].why
        assert outcome.told[0].second is None and outcome.told[1].settled

    def test_a_cell_alone_among_its_neighbours_is_not_settled(self):
        ask = asked(PLAN)
        first = [map_fakes.quick(Job(ask.plan, cell, 0.06)) for cell in ask.grid.cells]
        first[27] = Look("skin tearing", "outer skin", 0.02, 3e3)
        outcome = made(ask, first, dict(enumerate(first)))
        assert [k for k, told in enumerate(outcome.told) if not told.settled] == [27]
        assert outcome.told[27].why == "No place beside it comes out the same."

    def test_a_place_where_tips_cannot_stand_says_that(self):
        ask = asked(PLAN)
        job = Job(ask.plan, Cell("latch_edge", 0.9, 0.005), 0.09)
        found = look(job)
        assert found.word == CANNOT and found.standing == FAILED and "tip is in the air" in found.why


class TestDifference:
    def test_it_is_the_cell_wise_difference(self):
        one = follow(asked(PLAN)).answer
        two = follow(asked(PLAN.with_car(Car(seam="welded"))), map_fakes.finer_says_otherwise).answer
        apart = difference(one, two)
        pairs = zip(one.told, two.told, strict=True)
        wanted = [(k, a.word, b.word) for k, (a, b) in enumerate(pairs) if a.word != b.word]
        assert (
            [(c.index, c.before, c.after) for c in apart.changes]
            == wanted
            == [(0, "seam parting", NOT_SETTLED)]
        )
        assert "1 of 110 places come out otherwise" in map_words.difference_sentence(apart)

    def test_a_broken_weld_is_its_seam_parting(self):
        one = follow(asked(PLAN)).answer
        first = [t.first for t in one.told]
        welded = [
            msgspec.structs.replace(f, word="weld broken") if f.word == "seam parting" else f for f in first
        ]
        ask = asked(PLAN.with_car(Car(seam="welded")))
        two = made(ask, welded, dict(enumerate(welded)))
        assert two.counts["weld broken"] == 88 and difference(one, two).changes == ()

    def test_maps_of_other_cells_are_refused(self):
        one = follow(asked(PLAN)).answer
        two = follow(asked(PLAN.with_car(Car(shut_face_depth_m=0.08)))).answer
        with pytest.raises(PlanError, match="other"):
            difference(one, two)


class TestKeeping:
    def test_a_map_that_was_stopped_goes_on_from_its_runs(self, tmp_path):
        ask, store = asked(PLAN), MapStore(tmp_path)
        done = []
        run = MapRun(
            ask, store, job=map_fakes.quick, prepare=workers.nothing, cancelled=lambda: len(done) >= 40
        )
        for progress in run:
            done[:] = range(progress.done)
        assert not run.whole
        kept = store.looks(ask)
        assert 40 <= len(kept) < 220
        again = MapRun(
            ask, store, job=map_fakes.dies, prepare=workers.nothing
        )  # what is kept is not run again
        first = next(iter(again))
        assert first.done == len(kept)
        again.workers.end()
        assert follow(ask, store=store).answer == follow(ask).answer

    def test_a_line_torn_off_is_lost_alone(self, tmp_path):
        ask, store = asked(PLAN), MapStore(tmp_path)
        one = Look("latch free", "latch", 0.007, 1.6e4)
        for index in range(3):
            store.add(ask, 0, index, one)
        path = store.path(ask)
        path.write_bytes(path.read_bytes()[:-20])
        assert store.looks(ask) == {(0, 0): one, (0, 1): one}

    def test_a_folder_that_cannot_be_written_costs_nobody_the_map(self, tmp_path):
        blocked = tmp_path / "file"
        blocked.write_text("")
        assert follow(asked(PLAN), store=MapStore(blocked / "maps")).whole

    def test_a_kept_map_reads_back_the_same_and_another_model_s_is_not_read(self, tmp_path):
        outcome = follow(asked(PLAN), map_fakes.finer_says_otherwise).answer
        path = tmp_path / "one.json"
        map_file.write(path, map_file.kept_json(outcome))
        assert map_file.read_kept(path) == outcome
        assert map_file.kept_in(tmp_path, asked(PLAN)) == outcome
        assert map_file.kept_in(tmp_path, asked(PLAN.with_car(Car(seam="welded")))) is None
        path.write_text(
            path.read_text().replace(f'"model_version":"{MODEL_VERSION}"', '"model_version":"2"', 1)
        )
        assert map_file.read_kept(path) is None


class TestWords:
    def test_every_word_a_run_can_bring_has_a_clause(self):
        from sim.many import GIVES

        told = {*GIVES, CANNOT, NOT_SETTLED} - {"seat slipping", "base giving"}  # those are a ram's
        assert told <= set(map_words.CLAUSES)

    def test_the_description_adds_up_to_the_edge(self):
        outcome = follow(asked(PLAN), map_fakes.finer_says_otherwise).answer
        lines = map_words.described(outcome)
        assert len(lines) == 2 * len(outcome.ask.grid.depth_m)
        assert lines[0].startswith("Latch edge, lip (5\u00a0mm in): not settled from 0\u00a0mm to 60\u00a0mm")
        assert all("all along" in line for line in lines[1:])

    def test_a_cell_tells_where_and_what(self):
        outcome = follow(asked(PLAN), map_fakes.finer_says_otherwise).answer
        assert "not settled. On the second lattice" in map_words.cell_words(outcome.told[0])
        assert "the seam parts first, at 10\u00a0mm" in map_words.cell_words(outcome.told[1])


def test_a_cell_run_alone_is_the_same_again_and_as_the_window_s_own_push():
    """The same bit for bit: alone, after another cell, and as a plan of one move solved by itself."""
    from sim.many import first_give
    from sim.run import solve_plan

    plan = Plan(car=Car(lattice_spacing_m=0.09), moves=(Spread(opening_m=0.02),))
    base = base_plan(plan, 0, 0.02)
    grid = grid_of_plan(plan)
    cells = [grid.cells[k] for k in (0, 24)]
    jobs = [Job(base, cell, 0.09) for cell in cells]
    alone = look(jobs[1])
    assert [look(job) for job in jobs] == [look(jobs[0]), alone]
    door = EdgePoint(edge=cells[1].edge, along_m=cells[1].along_m, depth_m=cells[1].depth_m)
    _, records = solve_plan(Plan(car=plan.car, moves=(Spread(door=door, opening_m=0.02),)))
    give = first_give(records[0].result.events)
    assert give is not None
    assert (alone.word, alone.opening_m) == (give.kind, pytest.approx(give.opening_m, abs=1e-6))


def grid_of_plan(plan: Plan):
    from sim.door_structure import door_shape

    return grid_of(door_shape(plan.car))


READY = ("three-doors-bonded", "three-doors-welded")


class TestReadyMaps:
    @pytest.mark.parametrize("name", READY)
    def test_it_is_true_for_its_plan_and_this_model(self, name):
        """A map that is stale is not read: make it again with ``hemline map`` and keep what it writes."""
        outcome = ready(name)
        assert outcome is not None
        assert outcome.key == asked(load_plan(ROOT / "assets" / "plans" / f"{name}.toml")).key

    @pytest.mark.parametrize("name", READY)
    def test_cells_run_again_say_what_the_map_says(self, name):
        """One on the lip, one behind the bend at the latch: every run is as short as what gives first."""
        outcome = ready(name)
        ask = outcome.ask
        for place in (("latch_edge", 5, 0), ("latch_edge", 6, 4)):
            told = outcome.told[ask.grid.index(*place)]
            found = look(Job(ask.plan, told.cell, ask.spacings_m[0]))
            assert (found.word, found.part, found.standing) == (
                told.first.word,
                told.first.part,
                told.first.standing,
            )
            assert found.opening_m == pytest.approx(
                told.first.opening_m, rel=0.02
            )  # other machines round otherwise

    @pytest.mark.parametrize("name", READY)
    def test_on_the_lip_the_skin_s_seam_gives_and_never_latch_or_hinge(self, name):
        """Pushed on its outer edge a door skins and stays shut: common practice, no source."""
        outcome = ready(name)
        grid = outcome.ask.grid
        for edge, row in itertools.product(grid.edges, range(len(grid.along_m))):
            assert outcome.told[grid.index(edge, row, 0)].word in ("seam parting", "weld broken", NOT_SETTLED)

    @pytest.mark.parametrize("name", READY)
    def test_behind_the_bend_beside_latch_or_hinge_what_holds_the_door_gives(self, name):
        """Push between inner bend and pillar, near what holds the door: common practice, no source."""
        outcome = ready(name)
        grid = outcome.ask.grid
        for edge, along, words in fittings(outcome.ask):
            index = at(grid, edge, along, grid.depth_m[-1])
            assert index is not None
            assert outcome.told[index].word == ("latch free" if words == "latch" else "hinge free")
