"""What a solved move says: frames along the way and the result at its end."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
from numpy.typing import NDArray

from sim.plan import BeltPoint, EdgePoint

if TYPE_CHECKING:
    from sim.network import State
    from sim.rigid import Barrier

Floats = NDArray[np.float64]


SLIPPING, OFF = "tip slipping", "tip off"
BASE_GIVING = "base giving"
"""Kinds of event of the tips themselves."""
LEFT_TEARING = "left tearing"
"""Kind of event of a sheet that a wreck had left about to tear, when the metal next comes to rest."""
STOP = "stop here"
"""Kind of the event of a spread where a gap suffices or tearing has begun; its part says which."""
SEAT_SLIPPING, SEAT_OFF = "seat slipping", "seat off"
"""Kinds of event of a ram's head or foot."""


@dataclass(frozen=True)
class Event:
    """Something let go, parted, slipped, turned inward or stopped.

    kind : "seam parting", "latch free", "striker out", "hinge free", "weld broken", "bar foot free",
        "held open", "spot popped", "skin tearing", "tip shearing through", "tip slipping", "tip off",
        "stalled", "folding out", "folding in", "not converged"
    """

    kind: str
    part: str
    opening_m: float
    force_n: float


@dataclass(frozen=True)
class Rung:
    """One competitor of the ladder: how much of what it can hold it carries (1 = it happens)."""

    part: str
    event: str
    demand_ratio: float


@dataclass(frozen=True)
class Clearance:
    """Least distance from metal to the occupant's envelope, and where."""

    distance_m: float
    metal_point: tuple[float, float, float]
    body_point: tuple[float, float, float]
    body_part: str


@dataclass(frozen=True)
class SeatNow:
    """How the tips stand at one moment of a push.

    place : of the pad's middle on the door at rest;  seat : in words;  skin_share : of the lip, 0 .. 1
    slid_m, other_slid_m : how far the pad has slid on the metal, and the other tip on the body
    line : unit vector of the line of action, shape (3,);  tips : shape (2, 3) [m], door tip and the other
    """

    place: EdgePoint | BeltPoint
    seat: str
    skin_share: float
    slid_m: float
    other_slid_m: float
    line: Floats
    tips: Floats


@dataclass(frozen=True)
class RamNow:
    """How a ram stands at one moment of a press.

    ends : shape (2, 3) [m], head and foot;  line : unit vector from foot to head, shape (3,)
    normal : unit vector into the metal where the head bears, shape (3,)
    out_m : how far it is driven out;  stage : which stage moves, from 1;  limit_n : what it can push with
    angle_rad : between line and normal;  margin_rad : what is left of it to the angle at which the head slips
    foot_margin_rad : the same of the foot;  rolled : whether the head stands on its rim
    sink_m : how deep the foot stands in its wall;  slid_m : how far the head has slid on the metal
    """

    ends: Floats
    line: Floats
    normal: Floats
    out_m: float
    stage: int
    limit_n: float
    angle_rad: float
    margin_rad: float
    foot_margin_rad: float
    rolled: bool
    sink_m: float
    slid_m: float


@dataclass(frozen=True)
class Frame:
    """One converged increment.

    points : shape (n, 3) [m], all nodes (a torn sheet has more than it began with)
    seam_damage : shape (seam points,), 0 whole .. 1 parted
    load : shape (triangles,), membrane force per width over its yield force [-], for colouring
    ledger_j : energy by line, summed since the start of the plan [J]
    path_pairs, path_flow_n : the load path's strongest flows, (k, 2) from node to node and (k,) [N]
    drive_points, drive_forces : where the tips push (k, 3) [m] and with what force (k, 3) [N], k = 1 or 2
    """

    move_index: int
    increment: int
    opening_m: float
    force_n: float
    points: Floats
    seam_damage: Floats
    load: Floats
    ledger_j: Mapping[str, float]
    ladder: tuple[Rung, ...]
    clearance: Clearance
    parted_length_m: float
    torn_length_m: float
    latch_demand_ratio: float
    skin_mid_outboard_m: float
    inner_mid_outboard_m: float
    drive_points: Floats
    drive_forces: Floats
    reactions: Mapping[str, tuple[float, float, float]]
    iterations: int
    events: tuple[Event, ...] = ()
    state: State | None = None
    path_pairs: NDArray[np.int64] = field(default_factory=lambda: np.zeros((0, 2), np.int64))
    path_flow_n: Floats = field(default_factory=lambda: np.zeros(0))
    barrier: Barrier | None = None  # the rigid body of a crush, ``opening_m`` along its line
    seat: SeatNow | None = None  # None where the pads are not followed
    triangles: NDArray[np.int64] | None = None  # (m, 3), given once a sheet has torn: its connectivity now
    sharp_edge_count: int = 0  # raw edges left by tears, two for each
    grounded_n: Mapping[str, float] = field(default_factory=dict)  # what the ground carries, by part [N]
    body_rise_m: float = 0.0  # of the car's body over the near wheels' middle, on its stands
    ram: RamNow | None = None  # of a press
    # of a whole side: metal to head, trunk, hip, thigh and lower leg; width to bring the occupant out by
    part_clearance_m: Mapping[str, float] = field(default_factory=dict)
    exit_width_m: float | None = None
    spots_gone: int = 0  # of the pillar's spots at foot and head
    upper_skin_outboard_m: float = 0.0  # the upper panel's middle, half-way from bar to belt
    upper_inner_outboard_m: float = 0.0
    belt_skin_outboard_m: float = 0.0  # the skin close under the belt, half-way along the door
    # plastic work of every triangle per rest area, shape (triangles,) [J/m^2]; read by `sim.folded.folded`
    fold_j_per_m2: Floats | None = None
    replayed: Any = None  # `sim.folded.Replayed`, of a moment kept without it


@dataclass(frozen=True)
class SolverNote:
    """Which solver ran and what it took."""

    name: str
    kernels: str
    node_count: int
    increment_count: int
    iteration_count: int
    failed_count: int
    factor_s: float
    assemble_s: float
    wall_s: float


@dataclass(frozen=True)
class CutNote:
    """What a cut did.

    open : no metal of the part crosses the blades' plane any more
    cut_m, left_m : sheet parted and sheet left standing there;  work_j, force_n : what the blades needed
    taken_kg : mass of a piece that came out;  freed, beams : fittings and bars parted
    cautions : hazards met;  room_m : the widest room between raw ends afterwards (`sim.pocket`)
    """

    open: bool
    cut_m: float
    left_m: float
    work_j: float
    force_n: float
    taken_kg: float
    freed: tuple[str, ...] = ()
    beams: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    room_m: float = 0.0


@dataclass(frozen=True)
class LatchNote:
    """What a pull at a handle found.

    state : "shut" (the pawl holds and can be drawn), "jammed" (it cannot), "held open" (this move drew it),
        "open" (it was out before), or "gone" (the latch had let go)
    pawl_n, needed_n : what the fork leans on the pawl with, and the pull on the handle that draws it
    holds_n : what the latch can hold, the least and the most of its three directions; zeros where it does not
    jam_n : what it takes to draw the striker out of the fork once the pawl is out
    """

    door: str
    state: str
    pawl_n: float
    needed_n: float
    holds_n: tuple[float, float]
    jam_n: float


def folded(frame: Frame) -> Floats | None:
    """Return the plastic work per area of a moment's triangles [J/m^2]; None where it is not known."""
    if frame.fold_j_per_m2 is not None:
        return frame.fold_j_per_m2
    return None if frame.replayed is None else np.asarray(frame.replayed.work())


@dataclass(frozen=True)
class MoveResult:
    """A finished move, as it goes to result.json."""

    seats: tuple[str, ...]
    events: tuple[Event, ...]
    metal: tuple[str, ...]
    plan_effect: str
    sentence: str
    ladder: tuple[Rung, ...]
    ledger_j: Mapping[str, float]
    ledger_closure_ratio: float
    viscous_ratio: float
    parted_length_m: float
    torn_length_m: float
    latch_demand_ratio: float
    skin_mid_outboard_m: float
    inner_mid_outboard_m: float
    inner_residual_outboard_m: float | None
    clearance_m: Mapping[str, float]
    start_sha256: str
    solver: SolverNote
    sharp_edge_count: int = 0
    notes: tuple[str, ...] = ()
    part_clearance_m: Mapping[str, Mapping[str, float]] = field(default_factory=dict)
    exit_width_m: Mapping[str, float] = field(default_factory=dict)
    spots_gone: int = 0
    cut: CutNote | None = None
    found: Mapping[str, Any] = field(default_factory=dict)  # a wrecked car as the first move finds it
    upper_panel_m: Mapping[str, float] = field(default_factory=dict)  # skin and inner, outboard in the move
    latch: LatchNote | None = None


@dataclass(frozen=True)
class MoveRecord:
    """A move's frames and, once it has ended, its result."""

    frames: tuple[Frame, ...]
    result: MoveResult | None = None
    end_state: State | None = field(default=None, repr=False)


@dataclass(frozen=True)
class Touch:
    """What one increment of the push did, tried beforehand and thrown away.

    opening_m : how far the tips opened;  force_n : their force then [N]
    way : shape (3,), how far the pad's middle went, followed on the metal [m]
    inner_m : how far the middle of the inner panel went outboard [m]
    room_m : by how much the room to the occupant grew [m]
    """

    opening_m: float
    force_n: float
    way: Floats
    inner_m: float = 0.0
    room_m: float = 0.0


Way = Literal["out", "in", "along"]

BEHIND_M = 0.001
"""How far the inner panel comes in during a touch of 3.5 mm before it is told of: more than it flexes by."""
ALONG_RATIO = 0.05
"""A pad that goes out or in by a smaller part of its way than this goes along the flange."""


@dataclass(frozen=True)
class Aim:
    """What can be said of a push before it is made.

    tips : shape (2, 3) [m], where the two tips stand
    direction : unit vector of the push on the door
    outward_ratio : outboard part of the way the metal under the pad is expected to go, -1 .. 1; 0: unknown
    skin_share : share of the load the skin's lip carries, 0 .. 1
    seats : words for the two seats;  pad : shape (k, 3) [m], sample points of the door tip's pad
    station_m : place along the hem (edge points), None at the belt
    problems : sentences; empty when the push can be made
    basis : what the ratio rests on: nothing yet, the quick elastic guess, or a touch
    touch : that touch
    """

    tips: Floats
    direction: Floats
    outward_ratio: float
    skin_share: float
    seats: tuple[str, str]
    pad: Floats
    station_m: float | None
    problems: tuple[str, ...] = ()
    basis: Literal["nothing", "guess", "touch"] = "guess"
    touch: Touch | None = None

    @property
    def turns_in(self) -> bool:
        """Whether the inner panel comes in behind metal that goes outward: found by the touch alone."""
        return self.way == "out" and self.touch is not None and self.touch.inner_m < -BEHIND_M

    @property
    def way(self) -> Way:
        """Which way the metal under the pad is expected to go; "along" the flange is neither out nor in."""
        if abs(self.outward_ratio) < ALONG_RATIO:
            return "along"
        return "out" if self.outward_ratio > 0.0 else "in"
