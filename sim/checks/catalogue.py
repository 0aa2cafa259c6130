"""Every check by family, which of them are fast, and how they are run one after another."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cache, partial
from itertools import product

from sim.checks import (
    bending,
    blades,
    bonds,
    collapse,
    cracks,
    crush,
    facts,
    fittings,
    free_edges,
    heads,
    laps,
    membrane,
    necks,
    peel,
    pillars,
    pinch,
    plastic,
    plates,
    rails,
    rockers,
    runs,
    sections,
    shells,
    side_facts,
    spacings,
    stability,
    tears,
    tools,
    ways,
)
from sim.checks.row import CONSERVATION, Row
from sim.checks.specimens import ANGLES_DEG, NotSolvedError


@dataclass(frozen=True)
class Check:
    """One row to be computed.

    family : the heading it stands under;  fast : whether it belongs to the set that takes seconds
    """

    family: str
    make: Callable[[], Row]
    fast: bool = True

    def run(self) -> Row:
        """Return the row with the time it took; an equilibrium not found is a row that fails."""
        began = time.perf_counter()
        try:
            row = self.make()
        except (NotSolvedError, ValueError, ArithmeticError) as problem:
            row = Row(_name_of(self.make), CONSERVATION, "a solved specimen", str(problem), relation="same")
        return replace(row, seconds=time.perf_counter() - began)


def _name_of(make: Callable[[], Row]) -> str:
    if isinstance(make, partial):
        words = ", ".join(str(a) for a in (*make.args, *make.keywords.values()) if not callable(a))
        return f"{make.func.__name__.replace('_', ' ')} ({words})"
    return getattr(make, "__name__", "check").replace("_", " ")


def _each(
    family: str, function: Callable[..., Row], cases: Iterable[tuple[object, ...]], *, fast: bool = True
) -> Iterator[Check]:
    for case in cases:
        yield Check(family, partial(function, *case), fast)


def _in_plane() -> Iterator[Check]:
    family = "stretched sheet"
    function: Callable[..., Row]
    for function in (membrane.patch_field, membrane.patch_direct, membrane.patch_shear):
        yield from _each(family, function, product(membrane.PATCH_STRESS))
    for function in (membrane.bar_growth, membrane.bar_narrowing, membrane.panel_shear):
        yield from _each(family, function, product(ANGLES_DEG, (0.3,)))
        yield from _each(family, function, product(ANGLES_DEG, (1.0 / 3.0,)), fast=False)


def _bent() -> Iterator[Check]:
    family = "plates"
    for edge, load in plates.ALPHA:
        yield from _each(family, plates.square_plate, ((edge, load, count) for count in (12, 24)))
        yield from _each(family, plates.square_plate, [(edge, load, 48)], fast=False)
        yield from _each(family, plates.square_settles, [(edge, load)])
        yield from _each(family, plates.round_plate, ((edge, load, rings) for rings in (8, 16)))
        yield from _each(family, plates.round_settles, [(edge, load)])
    turned = plates.TURNED_DEG
    yield from _each(family, plates.square_plate, product(["clamped"], plates.LOAD_WORD, (12, 24), turned))
    yield from _each(family, plates.square_settles, product(["clamped"], plates.LOAD_WORD, turned))
    yield from _each(family, plates.square_plate, product(["supported"], plates.LOAD_WORD, (12, 24), turned))
    yield from _each(family, plates.turned_plate, product(plates.LOAD_WORD, turned))
    family = "free edges"
    kinds = (0.0, *turned, free_edges.ONE_DIAGONAL)
    yield from _each(family, free_edges.twist, product(kinds, (0.3,), (3, 1)))
    yield from _each(family, free_edges.twist, product(kinds, (0.0,), (3, 1)), fast=False)
    yield from _each(family, free_edges.twist, product((0.0, *turned), (0.3,), (3, 1), (24,)), fast=False)
    yield from _each(family, free_edges.bent_curvature, product(ANGLES_DEG, (0.3,)))
    yield from _each(family, free_edges.bent_saddle, product(ANGLES_DEG, (0.3,)))
    yield from _each(family, free_edges.bent_saddle, product(ANGLES_DEG, (0.0,)), fast=False)


def _far_bent() -> Iterator[Check]:
    family = "strips bent far"
    yield from _each(family, bending.cantilever, product(bending.STRIPS))
    yield from _each(family, bending.cantilever_plate, product(bending.STRIPS))
    yield from _each(family, bending.elastica, product(bending.MATTIASSON, bending.WAYS, (10, 20)))
    yield from _each(
        family, bending.elastica, product(bending.MATTIASSON, bending.WAYS, (40, 80)), fast=False
    )
    yield from _each(family, bending.elastica_settles, product(bending.MATTIASSON, bending.WAYS), fast=False)
    for way in ("w", "shortening"):
        yield from _each(family, bending.end_shear, ((share, way, 16) for share in bending.END_SHEAR))
        yield from _each(family, bending.end_shear_settles, [(way,)])
    yield from _each(family, bending.roll_up, product(bending.TURNS, "xz"))
    family = "sheets far out of plane"
    for size, fast in (((6, 30), True), ((10, 60), False)):
        cases = [(share, lip, *size) for lip in shells.LIPS for share in shells.SLIT_RING]
        yield from _each(family, shells.slit_ring, cases, fast=fast)
    yield from _each(family, shells.slit_ring_settles, product(shells.LIPS), fast=False)
    yield from _each(family, shells.stiffened_disc, product(shells.ROUND, (10,)))
    yield from _each(family, shells.stiffened_disc, product(shells.ROUND, (20,)), fast=False)
    yield from _each(family, shells.stiffened_square, product(shells.SQUARE, (14,)))
    yield from _each(family, shells.stiffened_square, product(shells.SQUARE, (28,)), fast=False)
    family = "buckling"
    yield from _each(family, stability.euler, product(stability.FACTOR, (16, 32)))
    yield from _each(family, stability.euler_settles, product(stability.FACTOR))
    yield from _each(family, stability.column, product(stability.COLUMN, ("along", "across"), (16,)))
    yield from _each(
        family, stability.column, product(stability.COLUMN, ("along", "across"), (32,)), fast=False
    )
    yield from _each(family, stability.plate, ((8,), (16,)))
    yield from _each(family, stability.plate_settles, [()])
    yield from _each(family, stability.bowed, product((1, -1), (0.3, 0.5)))
    yield from _each(family, stability.off_the_middle, product((1, -1), (0.5,)))


def _yielding() -> Iterator[Check]:
    family = "yielding"
    yield from _each(family, plastic.bent_moment, product(plastic.ROWS))
    yield Check(family, plastic.plastic_moment)
    yield from _each(family, plastic.springback, product(plastic.ROWS))
    for function in (plastic.tube_stiffness, plastic.tube_first_yield):
        yield from _each(family, function, product(plastic.TUBES))
    for case in plastic.TUBES:
        for clamps in (False, True):
            yield Check(family, partial(plastic.tube_collapse, case, clamps=clamps))
    yield from _each(family, plastic.clamped_tube_stiffness, [(plastic.TUBES[0],)])
    yield from _each(family, collapse.collapse, ((*case, 8) for case in collapse.CASES))
    yield from _each(family, collapse.collapse, ((*case, 16) for case in collapse.CASES), fast=False)


def _pillars() -> Iterator[Check]:
    family = "pillar"
    yield from _each(family, pillars.tip_deflection, ((0.03,), (0.02,)))
    yield Check(family, pillars.tip_settles)
    yield from _each(family, pillars.twist, [(0.03,)])
    yield from _each(family, pillars.plastic_moment, ((0.03,), (0.02,)))
    yield Check(family, pillars.plastic_settles)
    yield from _each(family, pillars.thin_moment, product(pillars.THIN_METALS, (0.018,)), fast=False)
    family = "cut members"
    yield from _each(family, blades.open_stiffness, ((0.03,), (0.02,)))
    yield Check(family, blades.open_settles)
    yield Check(family, blades.gap_moment)
    yield Check(family, blades.gap_settles)
    yield from _each(family, blades.parted_pull, [(0.03,)])
    yield from _each(family, blades.released, [(0.03,)])


def _rails() -> Iterator[Check]:
    family = "roof rail"
    yield from _each(family, rails.deflection, ((0.03,), (0.02,)))
    yield Check(family, rails.deflection_settles)
    yield from _each(family, rails.collapse, ((0.03,),))
    yield from _each(family, rails.cut_at_front, ((0.03,), (0.02,)))


def _rockers() -> Iterator[Check]:
    family = "rocker"
    yield from _each(family, rockers.deflection, ((rockers.CAR_M,), (rockers.FINE_M,)))
    yield Check(family, rockers.rocker_bending_settles)
    yield from _each(family, rockers.twist, ((rockers.CAR_M,),))
    yield from _each(family, rockers.collapse, ((rockers.CAR_M,),))
    yield from _each(family, rockers.plastic_torque, ((rockers.CAR_M,),))
    yield from _each(family, rockers.thin_collapse, ((rockers.CAR_M,), (rockers.FINE_M,)))


def _seams() -> Iterator[Check]:
    family = "seams"
    function: Callable[..., Row]
    for function in (bonds.parting_energy, bonds.parting_booked):
        yield from _each(family, function, product(bonds.LAWS, bonds.WAYS))
    yield from _each(family, bonds.ellipse, product(bonds.LAWS, (0.0, 0.1, 0.7, 1.0)))
    yield from _each(family, laps.lap, product(laps.JOINTS, (10, 20)))
    yield from _each(family, laps.lap_settles, product(laps.JOINTS))
    yield from _each(family, sections.bent_lap, product(sections.JOINTS, (4, 6)))
    family = "running cracks"
    yield from _each(family, cracks.split_compliance, product(cracks.SPLITS, (1, 2)))
    for function in (cracks.split_load, cracks.split_books):
        yield from _each(family, function, [("thick", 8)])
        yield from _each(family, function, (("thick", 16), ("skin", 8)), fast=False)
    yield from _each(family, cracks.split_settles, [("thick",)], fast=False)
    for function in (sections.notched_compliance, sections.notched_load):
        yield from _each(family, function, ((6,), (8,)), fast=False)
    family = "peeling"
    yield from _each(family, peel.right_angle_load, ((0.045,), (0.0225,)))
    yield from _each(family, peel.right_angle_seam, ((0.045,), (0.0225,)))
    for function in (peel.right_angle_load, peel.right_angle_seam):
        yield from _each(family, function, [(0.01125,)], fast=False)
    yield from _each(family, peel.t_peel_load, ((0.0225,), (0.01125,)), fast=False)
    yield from _each(family, peel.folded_load, ((0.045,), (0.0225,), (0.01125,)), fast=False)
    cases = ((peel.from_base, 0.045), (peel.from_base, 0.0225), (peel.from_twin, 0.0225))
    for function in (peel.halved_load, peel.halved_energy):
        yield from _each(family, function, cases, fast=False)
    for function in (peel.plastic_load, peel.plastic_seam, peel.plastic_books):
        yield from _each(family, function, ((180.0e6,), (220.0e6,)), fast=False)


def _tears() -> Iterator[Check]:
    family = "tearing"
    yield from _each(family, tears.strip_runs, ((0.04,), (0.02,)), fast=False)
    yield from _each(family, tears.strip_energy, ((0.02, 15.0), (0.02, 30.0)), fast=False)
    for function in (tears.trouser_load, tears.trouser_energy):
        yield from _each(family, function, [(0.03,)])
        yield from _each(family, function, ((0.02,), (0.015,)), fast=False)
    yield from _each(family, necks.told_most, ((0.0,), (30.0,)))
    yield from _each(family, necks.told_least, [(30.0,)])


def _rules() -> Iterator[Check]:
    family = "latch and hinges"
    yield from _each(family, fittings.fitting, fittings.FLOOR_N)
    yield from _each(family, fittings.untouched_latch, (("along",), ("across",)))
    family = "side-door crush"
    yield from _each(family, crush.known_curve, product(crush.STAGES))
    for function in (crush.door_least, crush.door_most):
        yield from _each(family, function, product(crush.STAGES), fast=False)
    yield from _each(family, crush.without_bar, product(crush.STAGES), fast=False)


def _tools() -> Iterator[Check]:
    family = "tool"
    function: Callable[..., Row]
    for function in (tools.highest, tools.lowest, tools.type_force, tools.type_distance, tools.stall):
        yield Check(family, function)
    yield from _each(family, tools.virtual_work, ((0.005,), (0.120,)))


def _every_run() -> Iterator[Check]:
    family = "every run"
    for function in (runs.forces, runs.moments, runs.books):
        yield from _each(family, function, product(runs.DEPTH_M, (0.06,)))
        yield from _each(family, function, product(runs.DEPTH_M, (0.045,)), fast=False)
    yield from _each(family, runs.mirror, product(runs.DEPTH_M, (0.06, 0.045)), fast=False)
    yield from _each(family, runs.rigid, product((0.3, 2.0), (0.06,)))


def _trade() -> Iterator[Check]:
    family = "facts of the trade"
    function: Callable[..., Row]
    for function in (facts.lip_parts_seam, facts.lip_spares_latch):
        yield from _each(family, function, product(facts.LATCH_SEATS, ("wide", "narrow")), fast=False)
    yield from _each(family, facts.lip_at_hinge, product(facts.HINGE_SEATS), fast=False)
    yield from _each(family, facts.deep_frees_latch, product(facts.LATCH_SEATS), fast=False)
    yield from _each(family, facts.more_force_same_verdict, ((1.2,), (2.0,), (4.0,)), fast=False)
    yield from _each(family, facts.belt_moves_skin_out, product(facts.BELT_SEATS), fast=False)
    rest = (
        facts.wide_needs_more,
        facts.wide_parts_later,
        facts.open_latch_jams_only,
        facts.spots_let_go_in_steps,
        facts.alloy_tears_more,
    )
    for function in rest:
        yield Check(family, function, fast=False)
    cases = product(facts.BELT_SEATS, ("skin", "inner panel"))
    yield from _each(family, side_facts.inner_lip_is_another_verdict, cases, fast=False)
    yield from _each(family, side_facts.tips_in_a_cut, ((1, "slip"), (2, "hold")), fast=False)
    yield from _each(family, side_facts.hinge_first, (("upper hinge",), ("lower hinge",)), fast=False)
    yield Check(family, side_facts.upper_hinge_first_sinks_further, fast=False)
    yield Check(family, side_facts.strong_dent_stays_inboard, fast=False)
    yield Check(family, side_facts.strong_dent_is_another_verdict, fast=False)
    lost = (("spread", "more than"), ("pushed back", "at most"))
    yield from _each(family, side_facts.intruded_room_lost, lost, fast=False)
    yield Check(family, side_facts.intruded_room_gained, fast=False)
    yield from _each(family, side_facts.high_striker_draws, side_facts.DRAWN)
    for function in (side_facts.unsupported_moves_more, side_facts.unsupported_opens_less):
        yield Check(family, function, fast=False)
    yield from _each(family, heads.head_on_wall, heads.ON_WALLS)
    yield from _each(family, heads.head_on_thin_sheet, heads.ON_THIN_SHEET)
    yield from _each(family, heads.line_on_wall, heads.LINES)


def _pinch_and_ways() -> Iterator[Check]:
    family = "facts of the trade"
    function: Callable[..., Row]
    yield Check(family, pinch.deeper_than_crown, fast=False)
    for function in (
        pinch.crease_goes_in,
        pinch.crown_goes_out,
        pinch.less_out_at_once,
        pinch.in_at_the_end,
        pinch.less_if_not_squeezed,
    ):
        yield from _each(family, function, product(pinch.SEATS), fast=False)
    two_ways = (
        ways.top_reaches_latch,
        ways.edge_leaves_latch,
        ways.top_tears_less,
        ways.stopping_tears_less,
        ways.going_on_opens_no_further,
    )
    for function in two_ways:
        yield Check(family, function, fast=False)


def _spacings() -> Iterator[Check]:
    family = "three lattices"
    yield from _each(
        family, spacings.same_story, product(spacings.ATTACKS, spacings.LATTICES_M[:-1]), fast=False
    )
    for function in (spacings.same_peak, spacings.same_motion):
        yield from _each(family, function, product(spacings.ATTACKS), fast=False)
    yield from _each(family, spacings.same_parted, product(spacings.ON_THE_WAY_MM), fast=False)


@cache
def catalogue() -> tuple[Check, ...]:
    """Return every check, family by family."""
    makers = (
        _in_plane,
        _bent,
        _far_bent,
        _yielding,
        _pillars,
        _rails,
        _rockers,
        _seams,
        _tears,
        _rules,
        _tools,
        _every_run,
        _trade,
        _pinch_and_ways,
        _spacings,
    )
    return tuple(check for make in makers for check in make())


def chosen(*, full: bool) -> tuple[Check, ...]:
    """Return the fast checks, or (``full``) all of them."""
    return tuple(check for check in catalogue() if full or check.fast)


def bad(row: Row) -> bool:
    """Return whether a row is news: it fails, or one known to miss holds and must be struck off."""
    return row.passed == bool(row.known)


def fast_one(index: int) -> tuple[str, Row]:
    """Return the family and the row of one fast check, by its place among them; named to worker processes."""
    check = chosen(full=False)[index]
    return check.family, check.run()
