"""Results kept beside a plan: what is read back, and what is known to be stale.

Laws: the same run gives the same bytes; a kept moment lies within half a step of its grid; a result speaks
for one plan and one model version and for nothing else.
"""

import dataclasses

import msgspec
import numpy as np
import pytest

from sim import kept, kept_frames
from sim.neighbours import LATTICES
from sim.plan import Car, Crush, CutSpread, Ease, EdgePoint, Hold, Plan, Press, Spread
from sim.problems import PlanError
from sim.ram_plan import PillarSpot
from sim.record import MoveRecord, RamNow
from sim.rigid import Barrier
from sim.run import solve_plan

PLAN = Plan(
    title="short push",
    car=Car(lattice_spacing_m=0.09),
    moves=(Spread(door=EdgePoint(depth_m=0.005), opening_m=0.015),),
)


@pytest.fixture(scope="module")
def solved():
    return solve_plan(PLAN)


@pytest.fixture(scope="module")
def folder(solved, tmp_path_factory):
    folder = tmp_path_factory.mktemp("kept")
    kept.keep(PLAN, folder, "plan", solve=lambda _: solved, with_neighbours=False)
    return folder


def test_what_was_kept_is_read_back(folder, solved):
    found = kept.read(folder, "plan")
    result = solved[1][0].result
    assert found.moves[0].sentence == result.sentence
    assert found.moves[0].peak_force_n == max(frame.force_n for frame in solved[1][0].frames)
    assert kept.stale(found, PLAN, "it") == ""


def test_the_same_run_gives_the_same_bytes(folder, solved, tmp_path):
    slower = [
        dataclasses.replace(
            record,
            result=dataclasses.replace(
                record.result, solver=dataclasses.replace(record.result.solver, wall_s=99.0)
            ),
        )
        for record in solved[1]
    ]
    kept.keep(PLAN, tmp_path, "plan", solve=lambda _: (solved[0], slower), with_neighbours=False)
    for name in ("plan.json", "plan.npz"):
        assert (tmp_path / name).read_bytes() == (folder / name).read_bytes()


def test_moments_are_read_back_to_the_grid(folder, solved):
    found = kept.moments(folder, "plan", kept.read(folder, "plan"), solved[0])
    assert len(found) == len(solved[1])
    assert found[0].result.events == solved[1][0].result.events
    for mine, theirs in zip(found[0].frames, solved[1][0].frames, strict=True):
        # half a step of the grid, and what rounding of the sum adds
        np.testing.assert_allclose(mine.points, theirs.points, rtol=0.0, atol=0.5001 * kept_frames.GRID_M)
        np.testing.assert_allclose(mine.seam_damage, theirs.seam_damage, rtol=0.0, atol=0.51 / 255.0)
        assert mine.events == theirs.events
        assert mine.clearance == theirs.clearance
        assert mine.seat.place == theirs.seat.place
        assert [rung.part for rung in mine.ladder] == [rung.part for rung in theirs.ladder]


def test_the_largest_flow_of_the_load_path_is_kept_with_its_pair(folder, solved):
    found = kept.moments(folder, "plan", kept.read(folder, "plan"), solved[0])
    mine, theirs = found[0].frames[-1], solved[1][0].frames[-1]
    top = theirs.path_pairs[np.argmax(theirs.path_flow_n)]
    assert mine.path_pairs[np.argmax(mine.path_flow_n)].tolist() == top.tolist()
    assert mine.path_flow_n.max() == pytest.approx(theirs.path_flow_n.max(), rel=1e-6)


def test_what_only_some_moves_have_is_kept_too(solved, tmp_path):
    model, records = solved
    arrow = np.array([0.0, 0.6, 0.8])
    ram = RamNow(np.eye(3)[:2], arrow, arrow, 0.1, 2, 6.0e4, 0.1, 0.2, 0.3, True, 0.004, 0.001)
    barrier = Barrier(np.array([0.1, 0.1, 0.3]), 0.01, False, np.zeros(3), arrow, np.arange(5))
    frame = dataclasses.replace(
        records[0].frames[-1],
        ram=ram,
        barrier=barrier,
        grounded_n={"front door": 120.0},
        part_clearance_m={"head": 0.25},
        exit_width_m=0.7,
        spots_gone=3,
        seat=None,
    )
    path = tmp_path / "frames.npz"
    path.write_bytes(kept_frames.packed(model, [MoveRecord((records[0].frames[0], frame), None)]))
    ((_, found),) = kept_frames.unpacked(path, model)
    np.testing.assert_array_equal(found.ram.ends, ram.ends)
    np.testing.assert_array_equal(found.ram.line, ram.line)
    np.testing.assert_array_equal(found.barrier.core, barrier.core)
    assert (found.ram.stage, found.ram.rolled, found.barrier.is_box) == (2, True, False)
    assert (found.grounded_n, found.part_clearance_m) == (frame.grounded_n, frame.part_clearance_m)
    assert (found.exit_width_m, found.spots_gone, found.seat) == (0.7, 3, None)


@pytest.mark.parametrize(
    ("change", "word"),
    [
        (lambda k: msgspec.structs.replace(k, model_version="1"), "model version 1"),
        (lambda k: msgspec.structs.replace(k, plan_sha256="0" * 64), "the plan is another"),
        (lambda _: None, "has not been solved yet"),
    ],
)
def test_a_stale_result_says_why_in_one_sentence(folder, change, word):
    said = kept.stale(change(kept.read(folder, "plan")), PLAN, "it")
    assert word in said
    assert said.count(". ") == 0


def test_a_changed_plan_is_stale(folder):
    other = PLAN.with_car(msgspec.structs.replace(PLAN.car, skin_thickness_m=0.0008))
    assert "the plan is another" in kept.stale(kept.read(folder, "plan"), other, "it")


def test_moments_of_another_lattice_are_not_shown(folder):
    model, _ = solve_plan(Plan(car=Car(lattice_spacing_m=0.08)))
    assert kept.moments(folder, "plan", kept.read(folder, "plan"), model) == ()


def test_neighbours_differ_in_one_thing_each():
    beside = dict(kept.neighbours_of(PLAN.with_car(Car())))
    assert len(beside) == 3
    places = [plan.moves[0].door.along_m for plan in beside.values()]
    assert sorted(round(place - 0.36, 6) for place in places) == [-0.01, 0.0, 0.01]
    assert beside["a coarser lattice"].moves == PLAN.moves


@pytest.mark.parametrize(
    ("spacing_m", "words", "other_m"),
    [(0.045, "a coarser lattice", 0.06), (0.06, "a coarser lattice", 0.075), (0.07, "a finer lattice", 0.06)],
)
def test_a_door_on_any_lattice_is_run_on_another(spacing_m, words, other_m):
    other = dict(kept.neighbours_of(with_spacing(PLAN, spacing_m)))[words]
    assert other == with_spacing(PLAN, other_m)


def test_bites_at_one_edge_move_together_and_a_bite_elsewhere_stays():
    places = [EdgePoint(along_m=0.55), EdgePoint(edge="hinge_edge", along_m=0.5), EdgePoint(along_m=0.45)]
    plan = msgspec.structs.replace(PLAN, moves=(*(Spread(door=place) for place in places), Ease()))
    moved = dict(kept.neighbours_of(plan))["10 mm to one side"]
    assert [move.door.along_m for move in moved.moves[:3]] == [0.54, 0.5, 0.44]


def test_a_neighbour_is_kept_up_to_the_move_that_cannot_be_made(solved, tmp_path):
    """The run beside is refused at its second move, as a cut is where nothing shows; the first one stands."""
    plan = msgspec.structs.replace(PLAN, moves=(*PLAN.moves, Ease()))

    def solve(asked):
        if asked.car != plan.car and len(asked.moves) > 1:
            raise PlanError("moves[1].place", "cannot be reached")
        model, records = solved
        return model, records * len(asked.moves)

    found = {one.words: one.moves for one in kept.keep(plan, tmp_path, "plan", solve=solve).neighbours}
    assert [len(moves) for moves in found.values()] == [2, 2, 1]


class TestBesideARam:
    PLAN = Plan(
        car=Car(extent="side", lattice_spacing_m=0.08),
        moves=(
            CutSpread(height_m=0.92),
            Press(head=PillarSpot(height_m=0.6)),
            Ease(),
            Press(head=PillarSpot(height_m=0.5)),
            Hold(),
        ),
    )

    def test_heads_and_tips_move_together_and_nothing_else(self):
        beside = dict(kept.neighbours_of(self.PLAN))
        assert list(beside) == ["the head 10 mm lower", "the head 10 mm higher", "a finer lattice"]
        low = beside["the head 10 mm lower"]
        assert [low.moves[k].head.height_m for k in (1, 3)] == [0.59, 0.49]
        assert low.moves[0] == msgspec.structs.replace(self.PLAN.moves[0], off_m=-0.01)
        assert low.moves[2::2] == self.PLAN.moves[2::2]
        assert low.car == self.PLAN.car

    @pytest.mark.parametrize(
        ("change", "words", "spacing_m"),
        [
            (lambda plan: plan, "a finer lattice", 0.06),
            (lambda plan: with_spacing(plan, 0.06), "a coarser lattice", 0.08),
            (lambda plan: msgspec.structs.replace(plan, wreck=(Crush(),)), "a coarser lattice", 0.09),
        ],
    )
    def test_the_other_lattice_of_a_side(self, change, words, spacing_m):
        plan = change(self.PLAN)
        other = dict(kept.neighbours_of(plan))[words]
        assert other.car.lattice_spacing_m == spacing_m
        assert (other.moves, other.wreck) == (plan.moves, plan.wreck)

    def test_a_saved_start_has_no_other_lattice(self):
        words = dict(kept.neighbours_of(msgspec.structs.replace(self.PLAN, start="a.npz")))
        assert len(words) == 2 and not set(words) & set(LATTICES)


def with_spacing(plan, spacing_m):
    return plan.with_car(msgspec.structs.replace(plan.car, lattice_spacing_m=spacing_m))


def test_moments_that_are_not_those_kept_with_the_words_are_not_shown(solved, folder, tmp_path):
    found = kept.read(folder, "plan")
    assert kept.whole(folder, "plan", found)
    kept.keep(PLAN, tmp_path, "plan", solve=lambda _: solved, with_neighbours=False)
    data = bytearray((tmp_path / "plan.npz").read_bytes())
    data[len(data) // 2] ^= 1
    (tmp_path / "plan.npz").write_bytes(data)
    assert not kept.whole(tmp_path, "plan", found)
    assert kept.moments(tmp_path, "plan", found, solved[0]) == ()


def test_a_move_that_ended_early_says_so(solved):
    (whole,) = kept.told(solved[1], PLAN.moves)
    (short,) = kept.told(solved[1], (Spread(opening_m=0.1),))
    assert (whole.ended, short.ended) == ((), (kept.SHORT,))
    assert whole.clearance_m == solved[1][0].frames[-1].clearance.distance_m
