"""Which way the metal under the tip will go, said before the push: a quick guess, and a touch that tries.

The line of the tool is not the way of the metal: a push inboard along a wall that leans, or against the
flange the door rests on, slides along it or out.  So the arrow is the pad's own motion: at once from the
elastic answer of the door (`sim.elastic`), and then from one increment of the solver itself, tried from where
the metal is now and thrown away.  What the guess lacks is mostly geometry: a wall that has bowed by more than
its thickness follows the push, long before it yields.
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import replace
from weakref import WeakKeyDictionary

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim.elastic import Elastic, elastic
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.model import DoorModel
from sim.plan import Spread, Squeeze
from sim.problems import PlanError
from sim.push import Push, make_push
from sim.record import Aim, Touch
from sim.run import Begin, MoveRun, let_off, never

TOUCH_M = 0.0035  # in the first 2.5 mm one push in twenty has not yet taken the way it goes by 5 mm

Floats = NDArray[np.float64]

_AT_REST: WeakKeyDictionary[DoorModel, Elastic] = WeakKeyDictionary()
_LOCK = threading.Lock()


def untouched(model: DoorModel) -> Elastic:
    """Return the elastic answer of a door nobody has pushed yet, kept as long as the model."""
    with _LOCK:
        found = _AT_REST.get(model)
        if found is None:
            found = _AT_REST[model] = elastic(model.network, model.start)
        return found


def line(model: DoorModel, move: Spread | Squeeze, points: Floats | None = None) -> Aim:
    """Return where the tips stand and push, with no arrow yet; never raises for a bad plan, but says why.

    Parameters
    ----------
    points : shape (n, 3), where the metal is now [m]; None is the untouched door
    """
    return _aim(model, move, points, None)


def aim(
    model: DoorModel, move: Spread | Squeeze, points: Floats | None = None, answer: Elastic | None = None
) -> Aim:
    """Return what can be said of a push at once: its line, and the quick guess which way the metal will go.

    Never raises for a bad plan, but says why.

    Parameters
    ----------
    points : shape (n, 3), where the metal is now [m]; None is the untouched door
    answer : the elastic answer of the metal as it is now; None is the untouched door's
    """
    return _aim(model, move, points, untouched(model) if answer is None else answer)


def _aim(model: DoorModel, move: Spread | Squeeze, points: Floats | None, answer: Elastic | None) -> Aim:
    here = model.start.points if points is None else points
    try:
        push = make_push(model, move)
    except PlanError as error:
        nothing = np.zeros((2, 3))
        words, none = ("in air", "in air"), np.zeros((0, 3))
        return Aim(nothing, np.zeros(3), 0.0, 0.0, words, none, None, (str(error),), "nothing")
    pad = push.pads[0]
    tips = np.stack([pad.point(here), push.other])
    known = Aim(tips, push.direction, 0.0, pad.skin_share, push.seats, pad.pad, pad.station_m, (), "nothing")
    if answer is None:
        return known
    return replace(known, outward_ratio=_ratio(model, answer.way(push)), basis="guess")


def _ratio(model: DoorModel, way: Floats) -> float:
    size = float(np.linalg.norm(way))
    return float(way[1]) * model.outboard_sign / size if size > 0.0 else 0.0


def touched(model: DoorModel, before: Aim, touch: Touch) -> Aim:
    """Return an aim whose arrow rests on a touch."""
    return replace(before, outward_ratio=_ratio(model, touch.way), basis="touch", touch=touch)


def at_rest(model: DoorModel, begin: Begin, cancelled: Callable[[], bool] = never) -> Begin:
    """Return a beginning with the last tool drawn back: what a push is aimed at.

    Raises
    ------
    CancelledError
        When ``cancelled()`` turns true; asked before each factorisation and each step.
    """
    if begin.engaged is None:
        return begin
    now = model if begin.model is None else begin.model
    point = let_off(now, begin.engaged, begin, lambda network: Stepper(network, cancelled))
    return replace(begin, state=point.state, ledger=point.ledger, engaged=None, opening_m=0.0)


def answer_of(model: DoorModel, begin: Begin) -> Elastic:
    """Return the elastic answer of the metal at a beginning with no tool on it."""
    now = model if begin.model is None else begin.model
    if begin.state is model.start:
        return untouched(model)
    return elastic(now.network, begin.state)


def touch(
    model: DoorModel,
    move: Spread | Squeeze,
    begin: Begin,
    *,
    travel_m: float = TOUCH_M,
    cancelled: Callable[[], bool] = never,
) -> Touch:
    """Return what the first millimetres of a push do, run as the push itself; nothing is kept.

    Raises
    ------
    PlanError
        When the push cannot be made.
    CancelledError
        When ``cancelled()`` turns true; asked before each factorisation and each step.
    """
    now = model if begin.model is None else begin.model
    push: Push = make_push(now, move)
    travel, pad = min(travel_m, push.limit_m), push.pads[0]
    reach = "closing_m" if isinstance(move, Squeeze) else "opening_m"
    run = MoveRun(
        model, msgspec.structs.replace(move, **{reach: travel, "stop_at": ()}), begin, cancelled=cancelled
    )
    first, *_, last = run
    way = pad.point(last.points) - pad.point(first.points)
    return Touch(
        last.opening_m,
        last.force_n,
        way,
        last.inner_mid_outboard_m - first.inner_mid_outboard_m,
        last.clearance.distance_m - first.clearance.distance_m,
    )


def tried(model: DoorModel, move: Spread | Squeeze) -> Aim:
    """Return the aim of a push at the untouched door with its touch; a bad plan's says why it is one."""
    first = line(model, move)
    if first.problems:
        return first
    return touched(model, first, touch(model, move, Begin(model.start, Ledger())))
