"""Tearing within an increment: where a line is due the tips stop, it runs, they go on."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.increment import Point, Stepper
from sim.ledger import spent
from sim.model import DoorModel
from sim.network import Network, State
from sim.split import carried_over, shared_load, split
from sim.tear import Candidate, neck_law, worst_cut
from sim.torn import part_word

Ints = NDArray[np.int64]

MOST_AT_ONCE = 40  # splits at one tip position: beyond, the line is left to the next increment
DUE_TOLERANCE = 0.05  # demand above one at which a line still counts as just due
HALVINGS = 6  # of a step, to find where a line becomes due


@dataclass(frozen=True)
class Reached:
    """Where the tips have come to: the stepper there, and the last point before on the same sheet.

    start : equals ``point`` when a line has run just there
    """

    stepper: Stepper
    start: Point
    point: Point


def advance(stepper: Stepper, start: Point, travel_m: float, barred: Ints) -> Reached:
    """Return the point at ``travel_m``, or where a tie let go before; every line due on the way has run.

    The tips stop where a line is due (its demand between one and a tolerance above), it runs, they go on.

    Parameters
    ----------
    barred : nodes under a pad, which do not split
    """
    while True:
        end = stepper.advance(start, travel_m)
        found = worst_cut(stepper.network, end.evaluation, barred)
        if found is None or found.demand_ratio < 1.0:
            return Reached(stepper, start, end)
        due = _when_due(stepper, start, end, barred)
        torn, point = tear_on(stepper, due, barred)
        if due.freed or torn is stepper or point.travel_m >= travel_m:
            return Reached(torn, point, point)
        stepper, start = torn, point


def _when_due(stepper: Stepper, start: Point, end: Point, barred: Ints) -> Point:
    """Return a point on the way at which a line has just become due."""
    low = start
    for _ in range(HALVINGS):
        found = worst_cut(stepper.network, end.evaluation, barred)
        if found is None or found.demand_ratio <= 1.0 + DUE_TOLERANCE:
            break
        middle = stepper.advance(low, 0.5 * (low.travel_m + end.travel_m))
        found = worst_cut(stepper.network, middle.evaluation, barred)
        if found is not None and found.demand_ratio >= 1.0:
            end = middle
        elif middle.freed:
            return middle
        else:
            low = middle
    return end


def tear_on(stepper: Stepper, point: Point, barred: Ints) -> tuple[Stepper, Point]:
    """Return stepper and point after every line that is due at this tip position has run.

    One node at a time, the most pressed first; each time the metal comes to rest again at the same tips.
    """
    for _ in range(MOST_AT_ONCE):
        found = worst_cut(stepper.network, point.evaluation, barred)
        if found is None or found.demand_ratio < 1.0:
            break
        opened = open_cut(stepper, point, found)
        if opened is None:
            stepper.tally.failed += 1
            break
        stepper, point = opened
    return stepper, point


def open_cut(stepper: Stepper, point: Point, found: Candidate) -> tuple[Stepper, Point] | None:
    """Return stepper and point with one node split and its neck in place; None where that cannot be solved.

    The tips stand still and do no work; what the metal stored less is booked as spent on the neck, in folding
    and, for the rest, as released in a jump.
    """
    old = stepper.network
    new = len(old.structure.points)
    drives = []
    for drive in old.drives:
        nodes, weights = shared_load(drive.nodes, drive.weights, found.node, new)
        drives.append(replace(drive, nodes=nodes, weights=weights))
    limit = found.cost_j / found.length_m
    law = neck_law(found, limit)
    try:
        network = Network(split(old.structure, found, law), drives)
    except ValueError:  # the torn sheet could not be meshed: this edge does not tear
        return None
    network.factor.seconds, network.assemble_seconds = old.factor.seconds, old.assemble_seconds
    trial = replace(stepper, network=network)
    state = carried_over(point.state, old, network, found.node)
    load = trial.load(point.travel_m, state)
    answer = trial.balanced(state, load, state.points)
    if not answer.converged:
        return None
    ev = answer.evaluation
    lines = spent(network, state, ev, load)
    lines["released in a jump"] = max(point.ledger.stored_j - ev.stored_j - sum(lines.values()), 0.0)
    start = replace(point, state=state)
    return trial, trial.accept(start, point.travel_m, ev, lines, 0.0)


def due_part(network: Network, state: State) -> str:
    """Return the part whose most pressed line is due to tear as it stands; empty when none is."""
    load = Stepper(network, bool).load(0.0, state)
    found = worst_cut(network, network.evaluate(state.points, state, load), np.zeros(0, dtype=np.int64))
    if found is None or found.demand_ratio < 1.0:
        return ""
    return part_word(network, found.node)


def splits(before: Network, after: Network) -> list[tuple[int, int]]:
    """Return the nodes that have split between two networks of one sheet, each with its new half."""
    count = len(before.structure.bonds.law)
    return [(int(pair[0]), int(pair[1])) for pair in after.structure.bonds.nodes[count:, :2]]


def torn_model(model: DoorModel, network: Network) -> DoorModel:
    """Return the model with the torn sheet in place of the whole one."""
    start = replace(model.start, points=network.structure.points)
    return replace(model, structure=network.structure, network=network, start=start)
