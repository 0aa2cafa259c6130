"""From one grip to the next while a move is run: the pad put onto the nodes it has slid to, or let go."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.grips import FORCE, PRESSED, SLID, SLIDES, grown, held_on, just_set
from sim.increment import Point, Stepper
from sim.model import DoorModel
from sim.network import Drive, Network, State
from sim.push import Push
from sim.record import SeatNow
from sim.slide import Tips, after_cut, after_step, first_tips

Floats = NDArray[np.float64]

FIRST_PARTS = 5


class Hold:
    """The tips of one move as it is run.

    Parameters
    ----------
    model, push, state : what is pushed, how and from where;  step_m : length of the first step

    Attributes
    ----------
    tips : how the tool stands now; None for a tool whose pads are not followed
    """

    def __init__(self, model: DoorModel, push: Push, state: State, step_m: float) -> None:
        self.push = push
        self.gone = False
        self.tips: Tips | None = None
        if push.place is not None:
            self.tips = first_tips(model, push, state.points, step_m)
        self._plain = push.drive(state.points)
        self._set_on = state.points

    @property
    def drive(self) -> Drive:
        """The contact of the next step."""
        return self._plain if self.tips is None else self.tips.drive

    @property
    def off(self) -> bool:
        """Whether the tip has left the metal."""
        return self.gone or (self.tips is not None and self.tips.off)

    def torn(self, push: Push, node: int, new_node: int) -> None:
        """Take over the pad's nodes after the sheet has torn at one of them."""
        self.push = push
        if self.tips is not None:
            nodes, weights = push.both()
            drive = replace(self.tips.drive, nodes=nodes, weights=weights)
            splits = (*self.tips.splits, (node, new_node))
            self.tips = replace(self.tips, push=push, drive=drive, splits=splits)

    def go_on(
        self, model: DoorModel, stepper: Stepper, point: Point, before_m: float, step_m: float
    ) -> tuple[Stepper, Point]:
        """Return stepper and point ready for the next step of ``step_m``, after one from ``before_m``."""
        if self.tips is None:
            return stepper, point
        state, travel = point.state, point.travel_m
        self.tips = after_step(
            model, self.tips, state.points, state.kept[SLID][0], float(state.kept[PRESSED][0]), before_m,
            travel, travel + step_m,
        )  # fmt: skip
        self.push = self.tips.push
        if self.tips.off:
            return let_go(stepper, point)
        return regrip(stepper, point, self.tips.drive)

    def cut(
        self, model: DoorModel, stepper: Stepper, point: Point, step_m: float, *, outer: bool
    ) -> tuple[Stepper, Point]:
        """Return stepper and point after the tip has cut through a sheet and the metal has sprung back."""
        stepper, point = let_go(stepper, point)
        if self.tips is None:
            self.gone = True
            return stepper, point
        travel = point.travel_m
        self.tips = after_cut(model, self.tips, point.state.points, travel, travel + step_m, outer=outer)
        self.push = self.tips.push
        if self.tips.off:
            return stepper, point
        network = with_drives(stepper.network, [self.tips.drive])
        stepper = replace(stepper, network=network)
        ev = network.evaluate(point.state.points, point.state, stepper.load(travel, point.state))
        return stepper, replace(point, evaluation=ev, force_n=ev.drive_force.copy())

    def now(self, points: Floats) -> SeatNow | None:
        """Return how the tips stand with the metal at ``points``; None where they are not followed."""
        if self.tips is None:
            return None
        tips = self.tips
        along = np.zeros(3)
        if tips.push.on is not None:  # the whole tool goes with what its other tip stands on
            nodes, weights = tips.push.on
            along = weights @ (points[nodes] - self._set_on[nodes])
        return SeatNow(
            tips.place,
            tips.push.seats[0],
            tips.push.pads[0].skin_share,
            float(tips.slid_m[0]),
            float(tips.slid_m[1]),
            tips.drive.direction,
            np.stack([tips.tip, tips.other]) + along,
        )


def first_step(
    begin: Point, travel_m: float, advance: Callable[[Point, float], tuple[Point, str]]
) -> tuple[Point, str]:
    """Return the point after the first step of a push, taken in doubling parts, and what held it up.

    The force a pad is pressed with grows from nothing, so the last one says nothing of the next; in parts
    that double it about doubles, and friction is given that.

    Parameters
    ----------
    advance : takes a point and a travel [m] and returns the next point, short of it when held up, and by what
    """
    point, halt = begin, ""
    for part in range(FIRST_PARTS - 1, -1, -1):
        target = travel_m / 2.0**part
        point, halt = advance(point, target)
        if halt or point.freed or point.travel_m < target:
            break
        if part and PRESSED in point.state.kept:
            point = replace(point, state=grown(point.state, 2.0))
    return point, halt


def regrip(stepper: Stepper, point: Point, drive: Drive) -> tuple[Stepper, Point]:
    """Return stepper and point with the next grip; on other nodes the metal comes to rest at the same tips.

    That step's books close by its definition: what the metal takes is work of the tips, which went up or down
    its dent, what it gives is released in a jump.
    """
    network, state = stepper.network, held_on(point.state)
    same = np.array_equal(network.drives[0].nodes, drive.nodes)
    if same and np.array_equal(network.drives[0].weights, drive.weights):
        stepper = replace(stepper, network=network.with_grips([drive]))
        ev = stepper.network.evaluate(state.points, state, stepper.load(point.travel_m, state))
        if FORCE in point.evaluation.read:  # what the metal is in balance with, by the limit of its step
            ev.read.update({key: point.evaluation.read[key] for key in (FORCE, SLIDES)})
        return stepper, replace(point, state=state, evaluation=ev, force_n=ev.drive_force.copy())
    return at_rest(stepper, replace(point, state=state), with_drives(network, [drive]))


def let_go(stepper: Stepper, point: Point) -> tuple[Stepper, Point]:
    """Return stepper and point after the tip has left the metal, which has sprung back; booked as a jump."""
    state = just_set(point.state)
    stepper.tally.jumps += 1
    network = with_drives(stepper.network, [])
    return at_rest(stepper, replace(point, state=state), network)


def with_drives(network: Network, drives: list[Drive]) -> Network:
    """Return the network with other contacts and its clocks kept."""
    new = network.with_drives(drives)
    new.factor.seconds += network.factor.seconds
    new.assemble_seconds += network.assemble_seconds
    return new


def at_rest(stepper: Stepper, point: Point, network: Network, rub_j: float = 0.0) -> tuple[Stepper, Point]:
    """Return stepper and point come to rest on another network at the same tips.

    What the metal stored less is spent on the way: on friction up to ``rub_j`` [J], the rest in a jump.
    """
    stepper = replace(stepper, network=network)
    load = stepper.load(point.travel_m, point.state)
    start = point.state.points
    answer, lines = stepper.rested(point.state, load)
    ev = answer.evaluation
    drop = point.ledger.stored_j - ev.stored_j - sum(lines.values())
    lines["friction"] = lines.get("friction", 0.0) + min(max(drop, 0.0), rub_j)
    lines["released in a jump"] = max(drop - rub_j, 0.0)
    state = network.commit(point.state, ev)
    ledger = point.ledger.plus(max(-drop, 0.0), ev.stored_j, lines)
    point = replace(point, state=state, evaluation=ev, force_n=ev.drive_force.copy(), ledger=ledger)
    return stepper, replace(point, before=start, before_travel_m=point.travel_m)
