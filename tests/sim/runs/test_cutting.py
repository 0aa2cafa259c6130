"""Cutting and stripping as moves of a plan, on a door and on the whole side.

Sources
-------
Balance of the books and connectivity: laws of conservation and geometry, no source.  A caution names what
trim still hides and stripping first reveals it; a wide face is cut from its narrow side; a cut left short
keeps a tie; the moment a sheet begins to tear is the moment to stop: common practice, no source.
"""

from __future__ import annotations

import json
from dataclasses import replace
from functools import lru_cache

import msgspec
import numpy as np
import pytest

from sim.blades import line, section
from sim.bond import END
from sim.checks.facts import NICK
from sim.cut_place import blades_of
from sim.cut_plan import Cut, DoorCut, FittingCut, PillarCut, Strip
from sim.door_model import build_model
from sim.hidden import CAUTION
from sim.ledger import Ledger
from sim.lookout import FOOT_M, foot_room
from sim.outcome import limit
from sim.plan import Car, EdgePoint, Plan, Spread
from sim.planfile import dumps_plan, loads_plan
from sim.pocket import rooms
from sim.problems import PlanError
from sim.results import result_json
from sim.run import Begin, MoveRun, solve_plan
from sim.stop_and_cut import STOP, stop_and_cut

DOOR = Car(lattice_spacing_m=0.09)
SIDE = Car(lattice_spacing_m=0.06, extent="side")


@lru_cache
def solved(*moves, car=SIDE):
    """Return model and results of a plan."""
    model, records = solve_plan(Plan(car=car, moves=moves), with_residual=False)
    return model, records


def kinds(record):
    return [(event.kind, event.part) for event in record.result.events]


TOP = Cut(PillarCut(0.95))
UNDER = Cut(PillarCut(0.89))


def test_a_top_cut_is_found_open_and_names_the_hidden_anchor():
    _, (record,) = solved(TOP)
    assert kinds(record) == [(CAUTION, "belt anchor behind trim"), ("cut open", "pillar")]
    note = record.result.cut
    assert note.open and note.left_m == 0.0 and note.cut_m == pytest.approx(0.30, rel=0.1)
    assert record.result.metal == ("cut open",)
    assert record.result.sharp_edge_count == 2
    assert abs(record.result.ledger_j["gap"]) < 1e-9
    assert record.result.ledger_j["cut"] == record.result.ledger_j["work of the tips"] == note.work_j
    assert record.result.solver.failed_count == 0


def test_stripped_first_there_is_no_caution():
    _, (off, cut) = solved(Strip(), TOP)
    assert "Now to be seen" in off.result.sentence and "belt anchor" in off.result.sentence
    assert kinds(cut) == [("cut open", "pillar")]
    # who takes trim off lifts what had sunk with the metal: the books know the work
    assert abs(off.result.ledger_j["gap"]) < 1e-9 and off.result.ledger_j["weight"] > 0.0
    assert off.frames[0].state.sha256() != off.frames[-1].state.sha256()  # what is gone is part of the state


def test_low_down_the_hidden_tensioner_is_named_and_high_up_it_is_not():
    _, (low,) = solved(Cut(PillarCut(0.08, "rear"), depth_m=0.06))
    assert kinds(low) == [(CAUTION, "belt tensioner behind trim"), ("cut short", "pillar")]
    assert low.result.cut.left_m > 0.2


def test_a_second_cut_under_the_first_takes_a_piece_out():
    _, (_, second) = solved(TOP, UNDER)
    assert second.result.cut.taken_kg > 0.1
    assert "came out" in second.result.sentence
    assert second.result.sharp_edge_count == 2
    assert second.frames[-1].triangles is not None  # the picture is told of the parted sheet


def test_one_cut_leaves_a_kerf_and_a_second_room_for_the_tips():
    """Common practice, no source: the pocket is what tips or a ram's head are set in."""
    _, (first, second) = solved(TOP, UNDER)
    assert first.result.cut.room_m < 1e-3
    assert second.result.cut.room_m == pytest.approx(0.06, abs=0.03)  # a row of 26 mm of place
    (room,) = rooms(model_of(TOP, UNDER), second.frames[-1].points)
    assert room.takes_tips and 0.8 < room.place[2] < 1.0
    assert room.gap_m == second.result.cut.room_m
    _, (short,) = solved(Cut(PillarCut(0.95), short_m=0.02))
    assert short.result.cut.room_m == 0.0
    written = json.loads(result_json(Plan(car=SIDE, moves=(TOP, UNDER)), (first, second)))
    assert written["moves"][1]["cut"]["taken_kg"] == second.result.cut.taken_kg
    assert "cut" not in json.loads(result_json(Plan(), ()))


def model_of(*moves):
    """Return the structure a plan leaves."""
    begin = Begin(build_model(SIDE).start, Ledger())
    for index, move in enumerate(moves):
        run = MoveRun(build_model(SIDE), move, begin, index)
        list(run)
        begin = run.end
    return run.model.structure


def test_a_short_cut_leaves_metal_and_says_how_much():
    _, (record,) = solved(Cut(PillarCut(0.95), short_m=0.02))
    note = record.result.cut
    assert kinds(record)[-1] == ("cut short", "pillar")
    assert f"{1e3 * note.left_m:.0f} mm of sheet still stand" in record.result.sentence
    assert 0.06 < note.left_m < 0.16  # the far wall and twice 20 mm, to half an edge


def test_at_the_striker_the_blades_take_the_latch():
    model, (record,) = solved(Cut(PillarCut(0.36)))
    assert ("latch free", "latch") in kinds(record)
    names = [tie.name for tie in model.structure.ties]
    assert not record.end_state.holding[names.index("latch")]
    assert record.end_state.holding[names.index("rear upper hinge")]


def test_blades_too_weak_stall_and_part_nothing():
    _, (record,) = solved(Cut(PillarCut(0.36), force_n=2.0e5))
    assert [kind for kind, _ in kinds(record)][-1] == "stalled"
    assert record.result.plan_effect == "spent" and record.result.cut.cut_m == 0.0
    assert "stalled" in record.result.sentence
    assert record.result.sharp_edge_count == 0


def test_the_same_plan_gives_the_same_answer_bit_for_bit():
    first = solve_plan(Plan(car=SIDE, moves=(TOP, UNDER)))[1]
    assert first[-1].end_state.sha256() == solved(TOP, UNDER)[1][-1].end_state.sha256()


def test_a_tilted_cut_crosses_more_metal_and_goes_with_the_car():
    """Tilted by 0.4 rad about the blades' way the section grows by 1 / cos; moved as a body it is alike."""
    model = build_model(SIDE)
    whole = blades_of(model, model.start, Cut(PillarCut(0.45)))
    tilted = blades_of(model, model.start, Cut(PillarCut(0.45), angle_rad=0.4))
    assert float(whole.normal @ tilted.normal) == pytest.approx(np.cos(0.4), rel=1e-6)
    np.testing.assert_allclose(whole.way, tilted.way, atol=1e-12)
    found = section(model.network, model.start.points, whole)
    slanted = section(model.network, model.start.points, tilted)
    # 3 %: the pillar tapers by a fifth of its depth over its height
    assert slanted.width_m == pytest.approx(found.width_m / np.cos(0.4), rel=0.03)
    turn, _ = np.linalg.qr(np.random.default_rng(5).normal(size=(3, 3)))
    turn *= np.sign(np.linalg.det(turn))
    moved = replace(model.start, points=model.start.points @ turn.T + [0.3, -0.2, 0.5])
    there = blades_of(model, moved, Cut(PillarCut(0.45), angle_rad=0.4))
    np.testing.assert_allclose(there.normal, turn @ tilted.normal, atol=1e-9)
    np.testing.assert_allclose(there.place, turn @ tilted.place + [0.3, -0.2, 0.5], atol=1e-9)
    here = line(model.network, model.start.points, tilted, slanted)
    same = line(model.network, moved.points, there, section(model.network, moved.points, there))
    assert {tuple(e) for e in here.edges.tolist()} == {tuple(e) for e in same.edges.tolist()}


def test_left_side_mirrors():
    _, (right,) = solved(TOP)
    _, (left,) = solved(TOP, car=msgspec.structs.replace(SIDE, side="left"))
    assert left.result.cut.cut_m == pytest.approx(right.result.cut.cut_m, rel=1e-9)
    assert kinds(left) == kinds(right)


def test_slits_into_a_door_part_what_was_named():
    for place, edges in (
        (DoorCut(edge="belt", along_m=0.5), 2),
        (DoorCut(edge="latch_edge", along_m=0.3), 2),
        (DoorCut(edge="latch_edge", along_m=0.3, sheets="inner panel"), 2),
        (DoorCut(edge="sill_edge", along_m=0.5, sheets="whole door"), 4),
    ):
        _, (record,) = solved(Cut(place, depth_m=0.2), car=DOOR)
        assert record.result.sharp_edge_count == edges, place
        assert kinds(record)[0][0] == "cut short"
        assert abs(record.result.ledger_j["gap"]) < 1e-9


def test_a_cut_through_the_whole_door_parts_its_bar():
    through = Cut(DoorCut(edge="belt", along_m=0.5, sheets="whole door"), depth_m=0.7)
    _, (record,) = solved(through, car=DOOR)
    note = record.result.cut
    assert note.beams == ("bar",) and note.left_m == 0.0
    assert not note.open and "hangs together" in record.result.sentence  # by its window frame
    assert note.cut_m > 2.0 * 0.6


def test_what_tore_in_one_move_is_not_told_again_in_the_next():
    # a whole hem is not stretched to necking, so the push is beside a cut in it, from which the skin tears
    moves = (NICK, Spread(opening_m=0.06), Cut(DoorCut(edge="latch_edge", along_m=0.20), depth_m=0.15))
    _, (_, push, cut) = solved(*moves, car=DOOR)
    assert ("skin tearing", "outer skin") in kinds(push)
    assert (STOP, "outer skin tearing") in kinds(push)
    assert push.result.torn_length_m == cut.result.torn_length_m >= 0.02
    assert kinds(cut) == [("cut short", "front outer skin")]
    assert cut.result.sharp_edge_count == push.result.sharp_edge_count + 2


def test_a_slit_goes_with_the_door_it_is_in():
    """After a push the place is on the metal where it is now, and the push's energy stays in the books."""
    _, (push, cut) = solved(
        Spread(door=EdgePoint(depth_m=0.115), opening_m=0.04),
        Cut(DoorCut(edge="latch_edge", along_m=0.5), depth_m=0.2),
        car=DOOR,
    )
    pushed, slit = push.result.ledger_j, cut.result.ledger_j
    assert abs(pushed["gap"]) < 0.02 * pushed["work of the tips"]
    assert cut.result.cut.cut_m > 0.15
    assert cut.result.solver.failed_count == 0
    assert abs(slit["gap"]) < 1e-6
    # of what the push has left in the metal a slit lets some go, and never more than all of it
    assert 0.0 > slit["stored"] > -pushed["stored"]


def test_what_cannot_be_seen_is_not_cut():
    for fitting in ("striker", "upper hinge", "lower hinge", "bar"):
        with pytest.raises(
            PlanError, match=r"moves\[0\].place.fitting is the front .*cannot be seen .*open the gap"
        ):
            solve_plan(Plan(car=DOOR, moves=(Cut(FittingCut(fitting=fitting)),)))


def test_a_striker_that_shows_is_cut_and_holds_no_more():
    """The door stood open by twenty degrees with its latch still tied: the blades fit, the tie goes."""
    model = build_model(DOOR)
    points, axis = model.start.points, np.array([-0.025, -0.05, 0.33])
    a = np.radians(20.0)
    turn = np.array([[np.cos(a), -np.sin(a), 0.0], [np.sin(a), np.cos(a), 0.0], [0.0, 0.0, 1.0]])
    state = replace(model.start, points=(points - axis) @ turn.T + axis)
    run = MoveRun(model, Cut(FittingCut()), Begin(state, Ledger()))
    made = run.course.change(run.at_rest())
    names = [tie.name for tie in model.structure.ties]
    assert not made[1].holding[names.index("latch")]
    gone = replace(state, holding=made[1].holding)
    with pytest.raises(PlanError, match="no longer holds"):
        MoveRun(model, Cut(FittingCut()), Begin(gone, Ledger()))


def test_the_popped_foot_is_told_once_blades_have_room_round_it():
    """Doors shut beside it: none; spots whole: not looked for; doors gone and a spot popped: room."""
    model = build_model(SIDE)
    network, state = model.network, model.start
    bonds = network.structure.bonds
    spots = np.flatnonzero(bonds.of("pillar weld"))
    low = spots[network.structure.points[bonds.nodes[spots, 0], 2] < FOOT_M]
    worst = state.worst.copy()
    worst[low[0]] = bonds.law[low[0], END]
    popped = replace(state, worst=worst)
    points = state.points.copy()
    points[: model.first["pillar"], 1] += 1.5
    away = replace(state, points=points)
    assert not foot_room(model, network, state, 0.18)
    assert not foot_room(model, network, popped, 0.18)
    assert not foot_room(model, network, away, 0.18)
    assert foot_room(model, network, replace(away, worst=worst), 0.18)
    assert not foot_room(model, network, replace(away, worst=worst), 0.06)


# ---- stop and cut ----------------------------------------------------------------------------------------


@pytest.mark.slow
def test_going_on_tears_more_than_stopping_when_it_begins():
    slit = Cut(DoorCut(edge="latch_edge", along_m=0.20), depth_m=0.1)
    found = stop_and_cut(Plan(car=DOOR, moves=(NICK, Spread(opening_m=0.1))), 1, (slit,))
    assert found.at_m is not None and "tearing" in found.why
    assert found.stopped.torn_m < 0.5 * found.going_on.torn_m
    assert found.stopped.opening_m == found.at_m < found.going_on.opening_m
    assert (
        found.stopped.sharp_edges == 6 and found.going_on.sharp_edges == 4
    )  # the cut in the hem leaves two, the tear two, the slit two of its own
    assert "stop: going on to 100 mm" in found.sentence()
    # with the tool off: what going on has opened the door itself by counts as nothing, and 90 mm tear for it
    assert abs(found.going_on.opened_m - found.stopped.opened_m) < limit("moved_m")


def test_a_push_on_which_nothing_tears_has_no_moment():
    found = stop_and_cut(Plan(car=DOOR, moves=(Spread(opening_m=0.005),)), 0)
    assert found.at_m is None and found.stopped is None
    assert "no moment" in found.sentence()
    assert STOP not in {event.kind for event in solved(Spread(opening_m=0.005), car=DOOR)[1][0].result.events}
    with pytest.raises(PlanError, match=r"moves\[0\] is no spread"):
        stop_and_cut(Plan(car=DOOR, moves=(Cut(DoorCut()),)), 0)


# ---- bad input and files ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("move", "message"),
    [
        (Cut(PillarCut(), angle_rad=1.5), "angle_deg is 85.9437; use -60.2 to 60.2"),
        (Cut(PillarCut(), angle_rad=float("nan")), "angle_deg is nan"),
        (Cut(PillarCut(), depth_m=0.0), "depth_m is 0; use 0.005 to 0.9"),
        (Cut(PillarCut(), depth_m=2.0), "depth_m is 2"),
        (Cut(PillarCut(), short_m=-0.01), "short_m is -0.01; use 0 to 0.2"),
        (Cut(PillarCut(), opening_m=0.5), "opening_m is 0.5; use 0.05 to 0.3"),
        (Cut(PillarCut(), opening_m=0.05), "opening_m is 0.05 m and the section there is"),
        (Cut(PillarCut(), force_n=1.0), "force_n is 1; use 10000 to"),
        (Cut(PillarCut(3.0)), "place.height_m is 3 m; use 0.01 to 1.0"),
        (Cut(PillarCut(0.0)), "place.height_m is 0 m"),
        (Cut(DoorCut(along_m=4.0)), "place.along_m is 4 m; use 0 to"),
        (Cut(DoorCut(edge="latch_edge", along_m=0.9)), "place.along_m is 0.9 m"),
        (Cut(DoorCut(), short_m=0.02), "short_m is for the pillar"),
        (
            Strip(what=("bonnet",)),
            "what names 'bonnet', which cannot be stripped; use some of: 'trim', 'seals', 'glass'",
        ),
        (Strip(what=("belt anchor",)), "what names 'belt anchor'"),
        (Strip(what=()), "what is empty; name trim"),
    ],
)
def test_bad_values_are_refused_by_field_and_remedy(move, message):
    model = build_model(SIDE)
    with pytest.raises(PlanError) as caught:
        MoveRun(model, move, Begin(model.start, Ledger()))
    assert message in str(caught.value)


@pytest.mark.parametrize(
    ("move", "message"),
    [
        (Cut(PillarCut()), "place.at needs the whole side; set car.extent to 'side'"),
        (Cut(DoorCut(panel="rear")), "place.panel needs the whole side"),
        (Cut(FittingCut(panel="rear")), "place.panel needs the whole side"),
        (Strip(), "what has nothing to strip on a single door"),
    ],
)
def test_what_a_single_door_lacks_is_refused(move, message):
    model = build_model(DOOR)
    with pytest.raises(PlanError) as caught:
        MoveRun(model, move, Begin(model.start, Ledger()))
    assert message in str(caught.value)


def test_cuts_and_strips_go_through_a_file():
    plan = Plan(
        car=SIDE,
        moves=(
            Strip(what=("upper pillar trim", "glass")),
            Cut(PillarCut(0.95, "rear"), angle_rad=float(np.radians(10.0)), short_m=0.02),
            Cut(DoorCut("rear", "latch_edge", 0.3, "whole door"), depth_m=0.15),
            Cut(FittingCut("rear", "lower hinge"), opening_m=0.2),
        ),
    )
    text = dumps_plan(plan)
    assert "angle_deg = 10" in text and "angle_rad" not in text
    assert loads_plan(text) == plan


@pytest.mark.parametrize(
    ("line", "message"),
    [
        ('place = { at = "roof" }', "moves[0].place"),
        ('place = { at = "pillar", blades_from = "above" }', "moves[0].place.blades_from"),
        ('place = { at = "fitting", fitting = "mirror" }', "moves[0].place.fitting"),
        ("depth_mm = 20", "moves[0].depth_mm has the unit 'mm'; give 'depth_m'"),
        ('opening_m = "wide"', "opening_m"),
        ("angle_deg = true", "angle_deg"),
    ],
)
def test_bad_lines_of_a_file_are_refused(line, message):
    text = f'schema_version = 1\n[[moves]]\nmove = "cut"\n{line}\n'
    with pytest.raises(PlanError) as caught:
        loads_plan(text)
    assert message in str(caught.value)
