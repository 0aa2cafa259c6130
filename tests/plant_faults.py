"""Plant one fault at a time in a copy of the program and see the test named for it go red.

    python tests/plant_faults.py              every fault
    python tests/plant_faults.py latch arrow  those whose name holds one of the words

A fault stays green when its test passes in spite of it; then that test proves nothing, and this script ends
with 1.  The tests are first run in a copy without any fault: red there, and nothing can be learned (2).
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
COPIED = ("sim", "meshes", "assets", "tests", "ui", "pyproject.toml")
BOOKS = "tests/sim/runs/test_books.py"
ASKING = "tests/ui/state/test_asking.py"
FACTS = "tests/sim/trade/test_facts.py"
MAP = "tests/sim/many/test_map.py"
WEIGHT = "tests/sim/verification/test_weight.py"
SURROUND = "tests/sim/properties/test_surround.py"


@dataclass(frozen=True)
class Fault:
    """One fault: where it is put, and the test that must see it."""

    name: str
    file: str
    old: str
    new: str
    test: str


FAULTS = (
    Fault(
        "seam energy halved in the law",
        "sim/bond.py",
        "end = (2.0 * energy / strength +",
        "end = (1.0 * energy / strength +",
        f"{BOOKS}::test_seam_spends_its_energy_per_metre_on_any_lattice[0.06-60.0]",
    ),
    Fault(
        "a contact's sign turned",
        "sim/springs.py",
        "np.add.at(ev.forces[:, 1], s.rim, -s.outboard_sign * ev.rim_push)",
        "np.add.at(ev.forces[:, 1], s.rim, s.outboard_sign * ev.rim_push)",
        f"{BOOKS}::TestContacts::test_rim_only_pushes_and_only_outboard",
    ),
    Fault(
        "a rigid body pulls",
        "sim/rigid.py",
        "forces[corners[k, i], j] -= weights[q, i] * push[k, q] * along",
        "forces[corners[k, i], j] += weights[q, i] * push[k, q] * along",
        "tests/sim/properties/test_rigid.py::test_it_pushes_and_never_pulls[0.001-cylinder]",
    ),
    Fault(
        "a tip pulls",
        "sim/springs.py",
        "if drive.pushes_only and gap < 0.0:",
        "if False and gap < 0.0:",
        "tests/sim/properties/test_contact.py::test_a_tip_pushes_by_its_travel_and_never_pulls[-0.0001]",
    ),
    Fault(
        "a strap pushes away what it holds",
        "sim/grounds.py",
        "read[i] = -prop.stiffness_n_per_m * gap",
        "read[i] = prop.stiffness_n_per_m * gap",
        "tests/sim/properties/test_contact.py::test_a_prop_holds_against_the_way_it_is_left[strap]",
    ),
    Fault(
        "a ram pulls",
        "sim/strut.py",
        "force = stiffness * max(length_m - now, 0.0)",
        "force = stiffness * (length_m - now)",
        "tests/sim/properties/test_struts.py::test_it_pushes_and_never_pulls[rigid]",
    ),
    Fault(
        "a ram's head does not roll on a bow",
        "sim/head.py",
        "out = middle + plate.hinge_m * tilt / lean",
        "out = middle + 0.0 * tilt / lean",
        "tests/sim/verification/test_rams.py::test_on_a_bow_the_head_rolls_and_its_angle_grows[1.0-0.04]",
    ),
    Fault(
        "a base dents at no cost",
        "sim/strut.py",
        "wall.work_j(dent) - wall.work_j(dent_m),",
        "0.0 * dent_m,  # planted",
        "tests/sim/properties/test_struts.py::"
        "test_a_wall_dented_and_let_off_has_cost_its_dent_and_gives_nothing_back[thin]",
    ),
    Fault(
        "a pillar's spot peels the wrong way",
        "sim/pillar.py",
        "coefficients[:, 1, 4], coefficients[:, 1, 5] = -sign, sign",
        "coefficients[:, 1, 4], coefficients[:, 1, 5] = sign, -sign",
        "tests/sim/verification/test_pillars.py::"
        "test_spots_peel_away_from_the_rigid_face_and_press_towards_it[right]",
    ),
    Fault(
        "a spot on a rail that gives peels the wrong way",
        "sim/rail.py",
        'np.einsum("ki,ki->k", np.cross(b - a, c - a), away) < 0.0',
        'np.einsum("ki,ki->k", np.cross(b - a, c - a), away) > 0.0',
        "tests/sim/verification/test_rails.py::"
        "test_spots_of_the_head_peel_away_from_the_rail_and_press_towards_it[right]",
    ),
    Fault(
        "a rail that gives is read the wrong way round",
        "sim/stood.py",
        "return door, -float(push.direction",
        "return door, float(push.direction",
        "tests/sim/runs/test_rail.py::test_the_weak_rail_moves_and_the_door_does_not",
    ),
    Fault(
        "the pillar takes half of what the latch pulls",
        "sim/side_model.py",
        "np.concatenate([held.weights, -weights])",
        "np.concatenate([held.weights, -0.5 * weights])",
        "tests/sim/runs/test_side.py::"
        "test_what_holds_the_side_still_takes_exactly_the_tools_force_and_the_tool_none",
    ),
    Fault(
        "the metal under the other tip is not pushed back",
        "sim/push.py",
        "np.concatenate([self.weights, -weights])",
        "np.concatenate([self.weights, 0.0 * weights])",
        "tests/sim/runs/test_side_plans.py::"
        "test_tips_between_door_and_pillar_push_the_pillar_back_with_as_much",
    ),
    Fault(
        "a hand that holds the latch open does not draw its pawl",
        "sim/latching.py",
        "model.network.release_tie(state, pull.tie)",
        "replace(state)",
        "tests/sim/runs/test_latching.py::TestHeldOpen::"
        "test_held_by_hand_is_the_field_held_open_for_what_follows[free]",
    ),
    Fault(
        "a look at the latch lets the tool off",
        "sim/latching.py",
        "run.push = run.begin.engaged",
        "run.push = None",
        "tests/sim/runs/test_latching.py::TestChecked::test_a_look_changes_nothing_and_lets_no_tool_off",
    ),
    Fault(
        "what a bent latch carried is gone when its pawl is drawn",
        "sim/latching.py",
        "return replace(structure, sliders=sliders), replace(",
        "return structure, replace(",
        "tests/sim/runs/test_latching.py::TestHeldOpen::"
        "test_a_bent_latch_goes_on_as_the_jam_of_what_it_carried[right]",
    ),
    Fault(
        "a bent latch is wedged by half of what is left in it",
        "sim/wreck.py",
        "force = float(np.linalg.norm(ev.tie_force[index]))",
        "force = 0.5 * float(np.linalg.norm(ev.tie_force[index]))",
        "tests/sim/runs/test_wreck.py::test_the_wedge_is_the_force_left_in_the_latch_and_rubs",
    ),
    Fault(
        "hinges uncoupled",
        "sim/sheet.py",
        "inverse: Floats = np.asarray(np.linalg.inv(b), dtype=float)",
        "inverse: Floats = np.asarray(np.linalg.inv(b) * np.eye(3), dtype=float)",
        "tests/sim/verification/test_free_edges.py::test_free_plate_twists_by_its_own_poisson_ratio",
    ),
    Fault(
        "arrow mirrored",
        "sim/aim.py",
        "return float(way[1]) * model.outboard_sign / size",
        "return -float(way[1]) * model.outboard_sign / size",
        "tests/sim/trade/test_not_scripted.py::test_arrow_foretells_the_way_of_the_two_attacks",
    ),
    Fault(
        "tip share ignored",
        "sim/tip.py",
        "return float(np.clip((hem_m - depth_m + half) / half, 0.0, 1.0))",
        "return 1.0",
        f"{FACTS}::test_tips_behind_the_bend_free_the_latch_first[0.36]",
    ),
    Fault(
        "viscosity x 1000",
        "sim/increment.py",
        "VISCOUS_N_PER_M = 5.0",
        "VISCOUS_N_PER_M = 5.0e3",
        f"{BOOKS}::TestLedger::test_damping_takes_little[lip]",
    ),
    Fault(
        "a fitting that bends spends nothing",
        "sim/giving.py",
        "0.5 * float(force @ force) / k, float(force @ on), row",
        "0.5 * float(force @ force) / k, 0.0, row",
        "tests/sim/properties/test_giving.py::test_pulled_straight_it_is_the_textbooks_spring_in_few_steps_as_in_many",
    ),
    Fault(
        "friction pushes the pad on",
        "sim/grip.py",
        "stiffness * (max(along, 0.0) * bearing + share * across)",
        "stiffness * (max(along, 0.0) * bearing - share * across)",
        "tests/sim/verification/test_grips.py::test_friction_takes_its_limit_times_the_way_slid_and_the_books_close",
    ),
    Fault(
        "friction booked at the step's end alone",
        "sim/losses.py",
        "carried += 0.5 * (before - now)",
        "carried += 0.0 * (before - now)",
        "tests/sim/verification/test_losses.py"
        "::test_books_close_while_the_force_pressed_with_falls_and_the_pad_slides",
    ),
    Fault(
        "latch released at half its limit",
        "sim/ladder.py",
        "np.sum((ev.tie_force[i] / t.limit_n) ** 2)",
        "np.sum((ev.tie_force[i] / (0.5 * t.limit_n)) ** 2)",
        "tests/sim/runs/test_ready_plans.py"
        "::test_the_latch_lets_go_at_its_own_strength_and_not_below_the_rule",
    ),
    Fault(
        "a crease that went in is told to have come out",
        "sim/creases.py",
        "    if further < 0.0:",
        "    if further > 0.0:",
        "tests/sim/trade/test_pinch.py::test_the_sentence_names_the_crease_that_was_there",
    ),
    Fault(
        "a squeeze presses the sheets apart",
        "sim/push.py",
        "direction = np.array([0.0, -model.outboard_sign, 0.0])",
        "direction = np.array([0.0, model.outboard_sign, 0.0])",
        "tests/sim/trade/test_pinch.py::test_only_the_deep_squeeze_turns_the_bow_round",
    ),
    Fault(
        "blades leave every second edge standing",
        "sim/blades.py",
        "inside = on & (along <= end)",
        "inside = on & (along <= end) & (np.arange(len(along)) % 2 == 0)",
        "tests/sim/verification/test_blades.py"
        "::test_cut_through_a_pulled_box_lets_all_its_energy_go_and_holds_nothing",
    ),
    Fault(
        "weight points up",
        "sim/weight.py",
        "ev.forces -= self.mass[:, None] * g",
        "ev.forces += self.mass[:, None] * g",
        f"{WEIGHT}::test_a_plate_weighs_its_volume_times_its_density_and_what_it_carries",
    ),
    Fault(
        "the ground pulls",
        "sim/grounds.py",
        "deep = np.minimum(places @ g.normal - g.level_m, 0.0)",
        "deep = places @ g.normal - g.level_m",
        f"{SURROUND}::test_ground_and_stands_push_and_never_pull",
    ),
    Fault(
        "half of a fall is not booked",
        "sim/fall.py",
        'lines["drop"] = max(point',
        'lines["drop"] = 0.5 * max(point',
        f"{WEIGHT}::test_a_falling_plate_books_m_g_h_and_the_drag_took_as_much",
    ),
    Fault(
        "an edge presses on the corners of its triangle alike",
        "sim/edging.py",
        "coefficients[:, 0, 0], coefficients[:, 0, 2:5] = 1.0, -rows[:, 4:7]",
        "coefficients[:, 0, 0], coefficients[:, 0, 2:5] = 1.0, -0.3 + 0.0 * rows[:, 4:7]",
        f"{SURROUND}::test_edges_press_equally_on_both_and_turn_with_the_metal",
    ),
    Fault(
        "the car's body does not turn",
        "sim/surround.py",
        "np.column_stack([1.0 - arms.sum(axis=1), arms])",
        "np.column_stack([1.0 + 0.0 * arms.sum(axis=1), 0.0 * arms])",
        f"{WEIGHT}::test_a_push_from_the_ground_lifts_the_car_as_a_rigid_body_on_four_springs[22000.0]",
    ),
    Fault(
        "tips slip into any kerf",
        "sim/raw_seat.py",
        "return math.acos(gap_m / NOSE_M)",
        "return 0.0 * gap_m",
        "tests/sim/runs/test_pocket.py::test_after_one_cut_tips_slip_off_and_the_metal_never_feels_them",
    ),
    Fault(
        "blades have no thickness at a hinge",
        "sim/hinge_body.py",
        "half = 0.5 * np.clip(TIP_M",
        "half = 0.05 * np.clip(TIP_M",
        "tests/sim/verification/test_hinge_body.py::test_blades_reach_it_where_the_shut_line_is_wider_than_they_are_there",
    ),
    Fault(
        "a check that holds nothing",
        "sim/check.py",
        "way / arm, one.moment_n_m / arm",
        "way / arm, 1.0e-3 * one.moment_n_m / arm",
        f"{WEIGHT}::test_a_check_holds_a_door_up_to_its_moment_and_no_further[0.7-False]",
    ),
    Fault(
        "hands of any strength",
        "sim/handling.py",
        "if float(np.linalg.norm(point.evaluation.read[PROP_FORCE][index])) > most_n:",
        "if float(np.linalg.norm(point.evaluation.read[PROP_FORCE][index])) > 1.0e9 * most_n:",
        "tests/sim/runs/test_holding.py::test_weak_hands_move_it_no_further_and_it_says_so",
    ),
    Fault(
        "half of what edges let go in a swing is not booked",
        "sim/hands.py",
        "max(held.potential_j - ev.potential_j - carried, 0.0)",
        "max(0.5 * (held.potential_j - ev.potential_j) - carried, 0.0)",
        "tests/sim/runs/test_holding.py::test_metal_out_of_balance_comes_to_rest_before_the_hands_go_on_and_what_it_lets_go_is_measured",
    ),
    Fault(
        "metal flows a fifth above its stress",
        "sim/yielding.py",
        "flow = yield_pa + hardening_pa * old\n",
        "flow = 1.2 * yield_pa + hardening_pa * old\n",
        "tests/sim/verification/test_yielding.py::"
        "test_pulled_strip_yields_at_the_same_force_whatever_the_lattice[30.0]",
    ),
    Fault(
        "a stretched sheet does not narrow",
        "sim/yielding.py",
        "bulk = young_pa / (1.0 - poisson_ratio)",
        "bulk = young_pa / (1.0 - 0.0 * poisson_ratio)",
        "tests/sim/verification/test_membrane.py::test_bar_lengthens_and_narrows_as_hooke_says[0.0-0.3]",
    ),
    Fault(
        "a tube folds at half its plastic moment",
        "sim/chains.py",
        "limit.append(beam.plastic_moment_n_m)",
        "limit.append(0.5 * beam.plastic_moment_n_m)",
        "tests/sim/verification/test_beams.py::test_tube_collapses_at_its_plastic_moment",
    ),
    Fault(
        "slip parts a seam at the strength of peel",
        "sim/bond.py",
        "plateau, end, shear_ratio**2, pressure",
        "plateau, end, shear_ratio**0, pressure",
        "tests/sim/verification/test_bonds.py::test_strengths_meet_on_the_ellipse[0.7-weld]",
    ),
    Fault(
        "a wedged striker pushes itself out",
        "sim/rubbing.py",
        "return after * unit, 0.5",
        "return -after * unit, 0.5",
        "tests/sim/properties/test_rubbing.py::"
        "test_a_block_pulled_through_the_network_moves_when_friction_is_overcome",
    ),
    Fault(
        "a tip shears a sheet out along its width alone",
        "sim/shear.py",
        "return width_m + 2.0 * depth_m",
        "return width_m + 0.0 * depth_m",
        "tests/sim/verification/test_grips.py::test_a_pad_shears_its_sheet_out_on_three_sides",
    ),
    Fault(
        "a latch weaker than the rule",
        "sim/latch.py",
        "LATCH_FLOOR_N = (11.0e3, 9.0e3, 9.0e3)\n",
        "LATCH_FLOOR_N = (9.9e3, 9.0e3, 9.0e3)\n",
        "tests/sim/verification/test_fittings.py::"
        "test_fitting_at_the_floor_holds_the_regulations_force_and_then_lets_go",
    ),
    Fault(
        "a tear's energy ignored",
        "sim/tear.py",
        "np.where(has, np.maximum(work, 0.0), 0.0) / (cuts.cost_j_per_m * along_m)",
        "np.where(has, np.maximum(work, 0.0), 0.0) / (1.0e-3 * cuts.cost_j_per_m * along_m)",
        "tests/sim/verification/test_tearing.py::test_a_cut_strip_runs_where_its_energy_pays[0.04]",
    ),
    Fault(
        "a smooth edge's nearness to necking read from the nodes' forces",
        "sim/tear.py",
        "pull = np.where(cuts.behind[:, 0] < 0, edge_pulls(network, cuts, ev.points), pull)",
        "pull = np.where(cuts.behind[:, 0] < 0, pull, pull)",
        "tests/sim/verification/test_catalogue.py::test_fast_check[told_most-30.0]",
    ),
    Fault(
        "a smooth edge told by one of its two pieces",
        "sim/tear.py",
        "for side in (0, 1):\n        other = cuts.lips",
        "for side in (0, 0):\n        other = cuts.lips",
        "tests/sim/properties/test_tear_law.py::test_a_smooth_edge_is_told_by_both_its_pieces",
    ),
    Fault(
        "moments seen before the lock",
        "ui/state/session.py",
        "if not self.asking.hides(k)",
        "if not self.asking.hides(-1)",
        f"{ASKING}::TestNothingIsSeenBeforeTheLock::test_no_moment_no_record_no_word_of_a_run_in_store",
    ),
    Fault(
        "a run not settled is compared",
        "ui/state/verdict.py",
        "settled = all(",
        "settled = any(",
        f"{ASKING}::TestVerdict::test_an_earlier_move_that_is_not_settled_unsettles_it_too",
    ),
    Fault(
        "a map's lattices need not agree",
        "sim/outcome_map.py",
        "if alike(second.word) != alike(first.word):",
        "if False:",
        f"{MAP}::TestVerdicts::test_where_the_lattices_disagree_it_is_not_settled",
    ),
    Fault(
        "an older map's answer is taken",
        "ui/state/maps.py",
        "if request is None or said.number != request.number:",
        "if request is None:",
        "tests/ui/state/test_maps.py::TestWishes::test_answers_to_an_older_wish_are_dropped",
    ),
    Fault(
        "another car passes for the same start",
        "ui/state/beside.py",
        'digest = hashlib.sha256(msgspec.json.encode(bare, order="deterministic"))',
        "digest = hashlib.sha256()",
        "tests/ui/state/test_beside.py::TestStart::test_the_same_car_and_state_hash_alike_whatever_the_car_is_called",
    ),
    Fault(
        "a branch is lost by undo",
        "ui/state/history.py",
        "self._steps.append(Step(label, plan, self._position))",
        "self._steps[self._position + 1 :] = [Step(label, plan, self._position)]",
        "tests/ui/state/test_history.py::test_a_commit_after_undo_begins_a_branch_and_loses_none",
    ),
    Fault(
        "a run that did not converge answers",
        "sim/answers.py",
        "any(m.failed_count for m in trace.moves[:last])",
        "any(m.failed_count for m in trace.moves[:0])",
        "tests/sim/many/test_answers.py::"
        "test_a_run_that_failed_or_did_not_converge_is_unsure_and_never_dropped",
    ),
    Fault(
        "twins drawn apart",
        "sim/vary.py",
        "float(row[place[item.path]])",
        "float(row[varied[name].index(item)])",
        "tests/sim/many/test_vary.py::TestTogether::test_what_two_plans_have_in_common_is_drawn_alike",
    ),
)


class PlantError(Exception):
    """The fault cannot be put in place: its old text is not there exactly once."""


def copy_tree(into: Path) -> Path:
    """Return a copy of what the tests need, compiled kernels too."""
    for name in COPIED:
        source = ROOT / name
        if source.is_dir():
            shutil.copytree(source, into / name, ignore=shutil.ignore_patterns("*.pyc"))
        else:
            shutil.copy2(source, into / name)
    return into


def plant(tree: Path, fault: Fault) -> None:
    """Put a fault into a copy; compiled code knows its source by its text and is made anew.

    Raises
    ------
    PlantError
        When the old text does not stand exactly once in the file.
    """
    path = tree / fault.file
    text = path.read_text(encoding="utf-8")
    if text.count(fault.old) != 1:
        raise PlantError(f"{fault.name}: {fault.file} holds {text.count(fault.old)} times: {fault.old}")
    path.write_text(text.replace(fault.old, fault.new), encoding="utf-8")


def run_tests(tree: Path, tests: list[str]) -> subprocess.CompletedProcess[str]:
    """Return pytest's answer for some tests of a copy."""
    command = [sys.executable, "-P", "-m", "pytest", "-q", "-x", "--no-header", "-p", "no:cacheprovider"]
    command += ["-p", "no:pytest-qt", "-p", "no:xvfb", "--rootdir", str(tree), *tests]
    variables = {key: value for key, value in os.environ.items() if not key.startswith("PYTEST")}
    variables["PYTHONPATH"] = str(tree)
    return subprocess.run(command, cwd=tree, env=variables, capture_output=True, text=True, check=False)


def seen(fault: Fault) -> bool:
    """Return whether the fault's test fails, with the fault planted, by a failed test and nothing else."""
    with tempfile.TemporaryDirectory() as folder:
        tree = copy_tree(Path(folder))
        plant(tree, fault)
        answer = run_tests(tree, [fault.test])
    if answer.returncode not in (0, 1):
        raise PlantError(f"{fault.name}: {fault.test} could not be run\n{answer.stdout}{answer.stderr}")
    return answer.returncode == 1


def sound(faults: tuple[Fault, ...]) -> bool:
    """Return whether the faults' tests pass in a copy without a fault."""
    with tempfile.TemporaryDirectory() as folder:
        answer = run_tests(copy_tree(Path(folder)), [fault.test for fault in faults])
    if answer.returncode:
        print(answer.stdout[-4000:])
    return answer.returncode == 0


def main(words: list[str]) -> int:
    """Return the exit code: 0 when every fault is seen, 1 when one stays green, 2 when nothing is learned."""
    faults = tuple(f for f in FAULTS if not words or any(word in f.name for word in words))
    if not faults or not sound(faults):
        print("no such fault" if not faults else "the tests fail without any fault")
        return 2
    green = []
    for fault in faults:
        red = seen(fault)
        green += [] if red else [fault]
        print(f"{'red  ' if red else 'GREEN'}  {fault.name:34s} {fault.test}", flush=True)
    print(f"{len(faults) - len(green)} of {len(faults)} faults seen")
    return 1 if green else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
