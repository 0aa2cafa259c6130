"""The pillar alone, cut twice under its head, with a spreader's tips in the pocket: set up and opened."""

from __future__ import annotations

from dataclasses import dataclass, replace
from types import SimpleNamespace

import numpy as np

from meshes.pillar import build_pillar
from meshes.side_shape import SIDES
from sim import materials
from sim.cut_place import blades_of
from sim.cut_plan import Cut, PillarCut
from sim.cutting import cut
from sim.folded import fold_work
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Network
from sim.pillar import PillarBuild, pillar_structure
from sim.plan import CutSpread, Tool
from sim.pocketing import STEP_M, TOOL_N_PER_M
from sim.raw_seat import seat_on_raw
from sim.state import Drive
from sim.strut import Strut

SHAPE = replace(SIDES["low car"].placed_pillar, spacing_m=0.026, weld_pitch_m=0.025, foot_flare_m=0.25)
SOFT = PillarBuild(pressed=materials.PATCH_STEEL, pressed_m=0.0012, closing_m=0.0010)
TOP, UNDER = Cut(PillarCut(0.95)), Cut(PillarCut(0.89))
FOLDS_M = 0.1  # how high the metal of the foot reaches that may fold


@dataclass
class Opened:
    """What the tips did.

    travel_m, force_n, arm_m : shape (k,), arm of the line between the tips about the foot's middle
    end_m, stub_m : how far cut end and stub have gone at last (3,);  foot_share : of all folding
    foot_m : width and depth of the section at the foot
    """

    travel_m: np.ndarray
    force_n: np.ndarray
    arm_m: np.ndarray
    end_m: np.ndarray
    stub_m: np.ndarray
    foot_share: float
    foot_m: tuple[float, float]
    failed: int
    gap_ratio: float


def opened(tip_width_m, opening_m=0.06, build=SOFT, depth_m=0.08):
    """Cut the pillar at both heights, set tips in the pocket and open them."""
    mesh = build_pillar(SHAPE)
    structure = pillar_structure(mesh, build)
    stepper = Stepper(Network(structure), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    nothing = SimpleNamespace(surface=SimpleNamespace(triangles=np.zeros((0, 3), np.int64)))
    side = SimpleNamespace(front=nothing, rear=nothing, pillar=mesh, shifts={"pillar": np.zeros(3)})
    model = SimpleNamespace(side=side, structure=structure, outboard_sign=1.0)
    for move in (TOP, UNDER):
        stepper, point, _ = cut(stepper, point, blades_of(model, point.state, move))
        model.structure = stepper.network.structure
    move = CutSpread(height_m=0.92, depth_m=depth_m, tool=Tool(tip_width_m=tip_width_m))
    seat = seat_on_raw(model, point.state, move)
    nodes, weights = seat.drive_ends()

    def ends(points):
        return seat.lower.point(points), seat.upper.point(points)

    first = ends(point.state.points)
    drive = Drive(
        nodes, weights, np.zeros(3), 0.0, TOOL_N_PER_M,
        strut=Strut(np.zeros(3), float(np.linalg.norm(first[0] - first[1]))),
    )  # fmt: skip
    stepper = Stepper(stepper.network.with_drives([drive]), lambda: False)
    point = stepper.first_point(point.state, Ledger())
    at_foot = mesh.surface.points[mesh.surface.nodes["start_ring"]].mean(axis=0)
    rows = []
    for k in range(round(opening_m / STEP_M)):
        point = stepper.advance(point, (k + 1) * STEP_M)
        lower, upper = ends(point.state.points)
        way = (lower - upper) / np.linalg.norm(lower - upper)
        arm = -np.cross(lower - at_foot, way)[0]
        rows.append((point.travel_m, float(point.force_n.max()), arm))
    network = stepper.network
    work = fold_work(network, point.state.hardening) * network.rest.area
    height = network.structure.points[network.structure.triangles].mean(axis=1)[:, 2]
    last = ends(point.state.points)
    travel, force, arm = np.array(rows).T
    return Opened(
        travel, force, arm, last[0] - first[0], last[1] - first[1],
        float(work[height < FOLDS_M].sum() / work.sum()), mesh.section_at(0.0),
        stepper.tally.failed, point.ledger.closure_ratio(),
    )  # fmt: skip
