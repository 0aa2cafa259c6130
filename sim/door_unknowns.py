"""What is not known well about a door and the tips of a tool: a row a number, its range, and who says so."""

from __future__ import annotations

from sim.plan import Crush, EdgePoint, Plan, Spread
from sim.tip import lip_share
from sim.unknowns import SEAT_M, UNEVEN, Row, about, always, even, peaked, peaked_ratio, times, within


def _bonded(plan: Plan, _move: Spread | None) -> bool:
    return plan.car.seam != "welded"


def _welded(plan: Plan, _move: Spread | None) -> bool:
    return plan.car.seam != "bonded"


def _latched(plan: Plan, _move: Spread | None) -> bool:
    return plan.car.latch != "open"


def _at_edge(_plan: Plan, move: Spread | None) -> bool:
    return move is not None and isinstance(move.door, EdgePoint)


def _near_lip(plan: Plan, move: Spread | None) -> bool:
    """Tell whether some of the pad may come to bear on the hem lip."""
    if move is None or not isinstance(move.door, EdgePoint):
        return False
    nearest = max(0.0, move.door.depth_m - SEAT_M)
    return lip_share(nearest, move.tool.tip_depth_m, plan.car.hem_width_m) > 0.0


ROWS = (
    Row(
        "door.lip_share_ratio",
        "the hem lip's share of the load",
        "",
        about(0.4, 0.0, 1.0),
        even,
        "assumed: how proud of the shut face the hem stands is not known; from taking all to taking 0.6",
        _near_lip,
    ),
    Row(
        "door.depth_m",
        "the depth of the tips",
        "m",
        about(SEAT_M, 0.0),
        even,
        "assumed: a trained hand puts a tip to within 5 mm",
        _at_edge,
    ),
    Row(
        "door.along_m",
        "the place of the tips along the edge",
        "m",
        about(SEAT_M),
        even,
        "assumed: a trained hand puts a tip to within 5 mm",
        always,
    ),
    Row(
        "tool.friction_ratio",
        "the friction of the tips",
        "",
        within(0.3, 0.6),
        even,
        "serrated tips on painted steel 0.3 to 0.6, from memory",
        always,
    ),
    Row(
        "travel_m",
        "how far the door is pushed in",
        "m",
        about(0.01, 0.001),
        even,
        "assumed: a bow is judged by eye to within 10 mm",
        always,
        Crush,
    ),
    Row(
        "car.seam_energy_j_per_m",
        "the seam's energy",
        "J/m",
        times(0.4, 2.0),
        peaked_ratio,
        "hem adhesive 2-4 kJ/m2 on 10 mm and unrolling the fold 25-40 J/m, from memory; "
        "gaps, thin beads and age widen it (assumed)",
        _bonded,
    ),
    Row(
        "car.seam_strength_n_per_m",
        "the seam's strength",
        "N/m",
        times(0.8, 2.4),
        peaked_ratio,
        "peel demands of 4-8 N/mm and measured 12 N/mm (an adhesive maker's public article)",
        _bonded,
    ),
    Row(
        UNEVEN,
        "how uneven the seam is",
        "",
        within(0.0, 0.4),
        even,
        "assumed: from an even seam to a careless one; each run has a hem of its own (`sim.seam`)",
        always,
    ),
    Row(
        "car.weld_peel_n",
        "the welds' strength in peel",
        "N",
        times(0.6, 1.8),
        peaked_ratio,
        "between the minimum and the typical rows of the spot-weld table (AWS D8.1M, from memory)",
        _welded,
    ),
    Row(
        "car.weld_energy_j",
        "the welds' energy",
        "J",
        times(0.5, 2.0),
        peaked_ratio,
        "assumed: pull-out over one to four millimetres",
        _welded,
    ),
    Row(
        "car.weld_pitch_m",
        "the distance of the welds",
        "m",
        times(0.8, 1.2),
        peaked,
        "spots 40-60 mm apart: common practice, no source",
        _welded,
    ),
    Row(
        "car.skin_thickness_m",
        "the skin's thickness",
        "m",
        times(0.88, 1.06),
        peaked,
        "sheet tolerance about 0.05 mm on 0.7 mm (EN 10131, from memory); thinning in the press assumed",
        always,
    ),
    Row(
        "car.inner_thickness_m",
        "the inner panel's thickness",
        "m",
        times(0.85, 1.06),
        peaked,
        "as the skin; deeper drawn, so thinner (assumed)",
        always,
    ),
    Row(
        "car.latch_strength_ratio",
        "the latch's strength",
        "",
        times(0.8, 1.6, least=1.0),
        peaked,
        "never below UN R11 / GTR 1; how far above is assumed",
        _latched,
    ),
    Row(
        "car.hinge_strength_ratio",
        "the hinges' strength",
        "",
        times(0.65, 1.6, least=1.0),
        peaked,
        "never below UN R11 / GTR 1; sets often hold 15-40 kN (an estimate of the trade, assumed)",
        always,
    ),
)
