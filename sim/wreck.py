"""How a car was wrecked before the plan begins: crushes solved, let off, and what became of the latches.

A latch that was bent does not come to rest free of force: what is left in it presses the striker into the
fork. That force, read at rest, is the wedge of `sim.latch`: it rubs when the striker is drawn out, and it
leans on the pawl. When the plan's car says that the handle is pulled (latch = "open"), the pawl lets go only
where the pull is enough; where it is not, the latch is jammed. No table says which.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim import starts
from sim.course import Begin, come_to_rest, never
from sim.door_model import DoorModel, build_model
from sim.found import found_now
from sim.frames import LATCHES
from sim.increment import Point, Stepper
from sim.latch import FITTING_STIFFNESS_N_PER_M, FORK_DEPTH_M, WEDGED, friction_n, pawl_stays
from sim.ledger import Ledger
from sim.letoff import let_off
from sim.move_run import MoveRun
from sim.network import Network
from sim.plan import Car, Plan
from sim.problems import PlanError
from sim.record import Frame
from sim.rubbing import SLIP
from sim.structure import Slider, Tie

Floats = NDArray[np.float64]

LEAST_WEDGE_N = 1.0  # below, a latch at rest holds nothing: the solver's own tolerance and no wedge


def car_before(plan: Plan) -> Car:
    """Return the car as it ran into its wreck: nobody pulled a handle then."""
    latch = "full" if plan.car.latch == "open" else plan.car.latch
    return msgspec.structs.replace(plan.car, latch=latch)


def model_of(plan: Plan) -> DoorModel:
    """Return the untouched model of a plan's car.

    Raises
    ------
    MeshError, PlanError
        As `sim.door_model.build_model`.
    """
    if not (plan.wreck or plan.start):
        return build_model(plan.car)
    return replace(build_model(car_before(plan)), car=plan.car)


def begin_of(
    plan: Plan,
    model: DoorModel,
    *,
    folder: Path | None = None,
    cancelled: Callable[[], bool] = never,
    on_frame: Callable[[Frame], None] | None = None,
) -> Begin:
    """Return what a plan's first move finds: the untouched car, its wreck solved, or its saved start.

    Parameters
    ----------
    model : of `model_of`
    folder : where a saved start is looked for
    on_frame : takes the wreck's frames; their ``move_index`` counts down to -1

    Raises
    ------
    PlanError
        When a crush cannot be made, or the saved start cannot be read or does not fit.
    """
    if plan.start:
        return as_found(plan, model, starts.load_start(plan.start, plan, model, folder))
    if not plan.wreck:
        return Begin(model.start, Ledger())
    return as_found(plan, model, wrecked(plan, model, cancelled=cancelled, on_frame=on_frame))


def wrecked(
    plan: Plan,
    model: DoorModel,
    *,
    cancelled: Callable[[], bool] = never,
    on_frame: Callable[[Frame], None] | None = None,
) -> Begin:
    """Return the state a wreck leaves, at rest with nothing pressing, before anyone pulls a handle."""
    begin = Begin(model.start, Ledger())
    for index, move in enumerate(plan.wreck):
        try:
            run = MoveRun(model, move, begin, index - len(plan.wreck), cancelled=cancelled)
        except PlanError as error:
            raise error.inside(f"wreck[{index}]") from error
        for frame in run:
            if on_frame is not None:
                on_frame(frame)
        begin = run.end
    rest = let_off(model, begin.engaged, begin, lambda network: Stepper(network, cancelled))
    return Begin(rest.state, rest.ledger)


def as_found(plan: Plan, model: DoorModel, rest: Begin) -> Begin:
    """Return the start as it is found: strikers wedged by what is left in the latches, handles tried."""
    structure, network = model.structure, model.network
    load = Stepper(network, never).load(0.0, rest.state)
    ev = network.evaluate(rest.state.points, rest.state, load)
    wedges: dict[int, float] = {}
    for index, tie in enumerate(structure.ties):
        force = float(np.linalg.norm(ev.tie_force[index]))
        if tie.name in LATCHES and rest.state.holding[index] and force > LEAST_WEDGE_N:
            wedges[index] = force
    held = [(structure.ties[index], force) for index, force in wedges.items()]
    sliders = tuple(_slider(tie, force) for tie, force in held)
    new = Network(replace(structure, sliders=sliders))
    rows = [_unslipped(tie, structure.points, rest.state.points) for tie, _ in held]
    kept = {**rest.state.kept, SLIP: np.array(rows)} if rows else rest.state.kept
    state = replace(rest.state, kept=kept)
    pulled = plan.car.latch == "open"
    jammed = []
    point = Stepper(new, never).first_point(state, rest.ledger)
    for index, tie in enumerate(structure.ties):
        if tie.name != "latch" or not state.holding[index] or not pulled:
            continue
        if pawl_stays(wedges.get(index, 0.0), plan.car.handle_n):
            jammed.append(tie.name)
            continue
        point = replace(point, state=new.release_tie(point.state, index))
        point = _rested(new, point)
    found = found_now(model, new, point.state, {tie.name: force for tie, force in held}, tuple(jammed))
    changed = replace(model, structure=new.structure, network=new)
    return Begin(point.state, point.ledger, model=changed, found=found)


def _rested(network: Network, point: Point) -> Point:
    return come_to_rest(Stepper(network, never), point)[1]


def _slider(tie: Tie, wedge_n: float) -> Slider:
    """Return the friction of a striker wedged with a force."""
    name = tie.name.replace("latch", WEDGED)
    return Slider(name, tie.nodes, tie.weights, FITTING_STIFFNESS_N_PER_M, friction_n(wedge_n), FORK_DEPTH_M)


def _unslipped(tie: Tie, rest: Floats, now: Floats) -> Floats:
    """Return the slip row (4,) of a slider set on the metal as it is: nothing stretched, nothing slid."""
    pull = tie.weights @ (now[tie.nodes] - rest[tie.nodes])
    return np.append(pull, 0.0)
