"""Hands, straps and props on a door: swung on its hinges, held where it is, propped from the ground.

Hands are a soft spring from the door's latch end to a place that goes along an arc about the hinges; what
they can push with is limited, and where more is needed the door stays.  Their work is on the ledger's first
line.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.grounds import PROP_FORCE
from sim.increment import Point, Stepper
from sim.ledger import spent
from sim.losses import carried_drag_j
from sim.newton import equilibrate
from sim.problems import PlanError
from sim.structure import Structure, Tie
from sim.surround import Prop, Surround

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

HANDS_N_PER_M = 2.0e4  # arms and gloves: a hand's breadth less at 500 N would be 5e3, assumed
STRAP_N_PER_M = 1.0e5  # a strap of a metre or two, from memory
PROP_N_PER_M = 5.0e5  # a strut or a stack of timber under an edge, assumed
STEP_M = 0.02  # way of the hands in one increment


@dataclass(frozen=True)
class Grasp:
    """Where a door is taken hold of, and the line it turns about.

    nodes : shape (k,), weights even: its latch end
    axis : points on the line through the hinges, shape (2, 3) [m], lower first
    """

    nodes: Ints
    axis: Floats

    @property
    def weights(self) -> Floats:
        """Even weights, shape (k,)."""
        return np.full(len(self.nodes), 1.0 / len(self.nodes))

    def at(self, points: Floats) -> Floats:
        """Return the middle of what is held, shape (3,) [m]."""
        out: Floats = self.weights @ points[self.nodes]
        return out


def leaf(tie: Tie, points: Floats) -> Floats:
    """Return where a hinge's leaf on the door is now, (3,) [m]; one on a pillar has weights below zero."""
    mine = tie.weights > 0.0
    share = tie.weights[mine]
    out: Floats = share @ points[tie.nodes[mine]] / share.sum()
    return out


def grasp(structure: Structure, points: Floats, nodes: Ints, word: str = "") -> Grasp:
    """Return the grasp of a door at some nodes of its latch end.

    Parameters
    ----------
    word : what stands before its hinges' names, "rear " for the rear door
    """
    ties = {tie.name: tie for tie in structure.ties}
    low, high = (leaf(ties[f"{word}{which} hinge"], points) for which in ("lower", "upper"))
    return Grasp(np.unique(nodes), np.stack([low, high]))


def turned(place: Floats, axis: Floats, angle_rad: float) -> Floats:
    """Return a place turned about a line by an angle, right-handed from its first point to its second."""
    along = axis[1] - axis[0]
    along = along / np.linalg.norm(along)
    arm = place - axis[0]
    c, s = math.cos(angle_rad), math.sin(angle_rad)
    out: Floats = axis[0] + c * arm + s * np.cross(along, arm) + (1.0 - c) * (along @ arm) * along
    return out


def opened_rad(grip: Grasp, start: Floats, points: Floats) -> float:
    """Return by how much the door has turned about its hinges since ``start`` (n, 3) [rad], never below 0."""
    along = grip.axis[1] - grip.axis[0]
    along = along / np.linalg.norm(along)
    arms = [grip.at(p) - grip.axis[0] for p in (start, points)]
    flat = [arm - (along @ arm) * along for arm in arms]
    turn = math.atan2(float(along @ np.cross(*flat)), float(flat[0] @ flat[1]))
    return abs(turn)


def around(structure: Structure) -> Surround:
    """Return what a structure stands among.

    Raises
    ------
    PlanError
        When it has no weight: then there is nothing to hold.
    """
    if structure.surround is None:
        raise PlanError(
            "car", "has no weight and no ground, so there is nothing to hold; use extent = 'side'"
        )
    return structure.surround


def with_prop(structure: Structure, prop: Prop) -> Structure:
    """Return the structure with a prop more, in place of one of its name."""
    return replace(structure, surround=around(structure).with_prop(prop))


def strap(name: str, grip: Grasp, points: Floats) -> Prop:
    """Return what holds a door in all directions where it is."""
    return Prop(name, grip.nodes, grip.weights, grip.at(points), STRAP_N_PER_M)


def strut(name: str, structure: Structure, grip: Grasp, points: Floats, lift_m: float) -> Prop:
    """Return a prop from the ground under a door's latch end, its head ``lift_m`` above where that is."""
    here = around(structure)
    up = -here.gravity_m_s2 / float(np.linalg.norm(here.gravity_m_s2))
    place = grip.at(points)
    nodes, weights = grip.nodes, grip.weights
    if here.body is not None:
        own = here.body.weights(place[None])[0]
        nodes, weights = np.concatenate([nodes, here.body.nodes]), np.concatenate([weights, own])
        place = place + own @ (points[here.body.nodes] - structure.points[here.body.nodes])
    return Prop(name, nodes, weights, place + lift_m * up, PROP_N_PER_M, up)


def moved_prop(
    stepper: Stepper, point: Point, name: str, places: Sequence[Floats], most_n: float
) -> Iterator[Point]:
    """Yield a point for each place a prop is moved to; ends where it would need more than it can give.

    The work is the mean of the force at both ends times the way.
    """
    for place in places:
        structure = stepper.network.structure
        old = _named(structure, name)
        index = [p.name for p in around(structure).props].index(name)
        new = replace(old, place=place)
        swapped = tuple(new if p.name == name else p for p in around(structure).props)
        network = stepper.network.standing(
            replace(structure, surround=replace(around(structure), props=swapped))
        )
        trial = replace(stepper, network=network)
        state = trial.look(point.state)
        load = trial.load(point.travel_m, state)
        answer = equilibrate(trial.network, state, load, state.points, cancelled=stepper.cancelled)
        stepper.tally.iterations += answer.iteration_count
        ev = answer.evaluation
        force = ev.read[PROP_FORCE][index]
        if float(np.linalg.norm(force)) > most_n:
            return
        stepper.tally.failed += not answer.converged
        before = point.evaluation.read[PROP_FORCE][index]
        work = 0.5 * float((before + force) @ (place - old.place))
        stepper.network = trial.network
        start = replace(point, state=state)
        lines = spent(stepper.network, state, ev, load)
        if point.before is not None:
            moved = state.points - point.before, ev.points - state.points
            lines["viscous"] += carried_drag_j(*moved, stepper.viscous_n_per_m)
        point = stepper.accept(start, point.travel_m, ev, lines, work)
        point = stepper.let_go(point)
        yield point


def _named(structure: Structure, name: str) -> Prop:
    return next(prop for prop in around(structure).props if prop.name == name)


def swung(
    stepper: Stepper, point: Point, name: str, grip: Grasp, angle_rad: float, most_n: float, sign: float
) -> Iterator[Point]:
    """Yield points of a door swung outboard about its hinges by an angle, by hands of limited force.

    Parameters
    ----------
    sign : +1 where outboard is +y
    """
    hands = Prop(name, grip.nodes, grip.weights, grip.at(point.state.points), HANDS_N_PER_M)
    stepper.network = stepper.network.among(with_prop(stepper.network.structure, hands))
    point = replace(stepper.first_point(point.state, point.ledger), travel_m=point.travel_m)
    start = grip.at(point.state.points)
    arm = float(np.linalg.norm(start - grip.axis[0]))
    count = max(1, math.ceil(abs(angle_rad) * arm / STEP_M))
    places = [turned(start, grip.axis, sign * angle_rad * (k + 1) / count) for k in range(count)]
    yield from moved_prop(stepper, point, name, places, most_n)
