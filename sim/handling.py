"""Hands, straps and props on a door: swung on its hinges, held where it is, propped from the ground.

Hands are a soft spring from the door's latch end to a place that goes along an arc about the hinges; what
they can push with is limited, and where more is needed the door stays.  Their work is on the ledger's first
line.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.grounds import PROP_FORCE
from sim.hands import HandsStepper
from sim.increment import Freed, Point, Stepper
from sim.problems import PlanError
from sim.structure import Structure, Tie
from sim.surround import Prop, Surround

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

HANDS_N_PER_M = 2.0e4  # arms and gloves: a hand's breadth less at 500 N would be 5e3, assumed
STRAP_N_PER_M = 1.0e5  # a strap of a metre or two, from memory
PROP_N_PER_M = 5.0e5  # a strut or a stack of timber under an edge, assumed
STEP_M = 0.02  # way of the hands in one increment
HANDS_DRAG_N_PER_M = (
    0.5  # per node and increment: a tenth of a tool's, for a swing goes hundreds of mm, not tens
)


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
    """Return a place (3,) turned about a line (2, 3), right-handed from its first point to its second [m]."""
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


def _put(structure: Structure, index: int, place: Floats) -> Structure:
    """Return the structure with a prop of its list in another place."""
    around_it = around(structure)
    props = tuple(replace(p, place=place) if i == index else p for i, p in enumerate(around_it.props))
    return replace(structure, surround=replace(around_it, props=props))


def moved_prop(
    stepper: Stepper,
    point: Point,
    name: str,
    way: Callable[[float], Floats],
    ends: Sequence[float],
    most_n: float,
) -> Iterator[Point]:
    """Yield a point for each step along a prop's way; ends where it would need more than it can give.

    Parameters
    ----------
    way : place of the prop, (3,) [m], by how far it has gone [m];  ends : of the steps, ways gone, rising [m]
    """
    index = [prop.name for prop in around(stepper.network.structure).props].index(name)
    hands = HandsStepper(
        stepper.network,
        stepper.cancelled,
        HANDS_DRAG_N_PER_M,
        stepper.tally,
        prop=index,
        way=way,
        tool_travel_m=point.travel_m,
    )
    point = replace(point, travel_m=0.0)
    for end in ends:
        failed, jumps = stepper.tally.failed, stepper.tally.jumps
        freed: list[Freed] = []
        while point.travel_m < end:
            point = hands.advance(point, end)
            freed += point.freed
        if float(np.linalg.norm(point.evaluation.read[PROP_FORCE][index])) > most_n:
            stepper.tally.failed, stepper.tally.jumps = failed, jumps
            return
        hands.network = hands.network.standing(_put(hands.network.structure, index, way(end)))
        stepper.network = hands.network
        yield replace(point, travel_m=hands.tool_travel_m, freed=tuple(freed))


def swung(
    stepper: Stepper, point: Point, name: str, grip: Grasp, angle_rad: float, most_n: float, sign: float
) -> Iterator[Point]:
    """Yield points of a door swung outboard about its hinges by an angle, by hands of limited force.

    Parameters
    ----------
    sign : +1 where outboard is +y
    """
    hands = Prop(name, grip.nodes, grip.weights, grip.at(point.state.points), HANDS_N_PER_M)
    held = stepper.first_point(point.state, point.ledger)
    stepper.network = stepper.network.among(with_prop(stepper.network.structure, hands))
    fresh = stepper.first_point(point.state, point.ledger)
    # what held the door before the hands did lets go
    left = held.evaluation.stored.get("props", 0.0) - fresh.evaluation.stored["props"]
    ledger = fresh.ledger.plus(0.0, fresh.ledger.stored_j - left, {"released in a jump": left})
    point = replace(fresh, ledger=ledger, travel_m=point.travel_m)
    start = grip.at(point.state.points)
    arm = float(np.linalg.norm(start - grip.axis[0]))
    length = abs(angle_rad) * arm
    count = max(1, math.ceil(length / STEP_M))

    def way(gone_m: float) -> Floats:
        return turned(start, grip.axis, sign * angle_rad * gone_m / length) if gone_m > 0.0 else start

    yield from moved_prop(stepper, point, name, way, [length * (k + 1) / count for k in range(count)], most_n)
