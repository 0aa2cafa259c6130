"""The latch: fork, pawl and handle; what holds the striker, and what lets it go.

The pawl keeps the fork shut on the striker: a tie with the strength the rule asks for, times the car's ratio.
A wreck may wedge the striker in the fork.  Two things follow, both plain statics of dry friction:

* pulling the striker out against the fork's two flanks, each pressed with the wedging force N, takes
  2 mu N, and less as the striker slides out of the fork's depth;
* the fork leans on the pawl with a share of N, and to draw the pawl from under it takes mu times that; the
  hand feels it divided by the gain of handle and rod.  When the pull on the handle is less, the pawl stays
  and the latch holds with all its strength although the handle is pulled: it is jammed.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.plan import Car
from sim.structure import Slider, Tie

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

# floors of UN R11 / GTR 1 [un-regulation-2010]: across the latch face, along the fork's opening; z assumed
# equal to the transverse floor
LATCH_FLOOR_N = (11.0e3, 9.0e3, 9.0e3)
HALF_LATCH_FLOOR_N = (4.5e3, 4.5e3, 4.5e3)  # secondary position, both directions; z assumed
FITTING_STIFFNESS_N_PER_M = 1.0e7  # assumed: about a millimetre at the floor

FRICTION_RATIO = 0.2  # steel on steel with what is left of its grease, 0.1-0.3 in handbooks, from memory
FLANKS = 2  # the fork grips the striker from two sides
PAWL_LOAD_SHARE = 0.5  # assumed: the pawl stands twice as far from the fork's pivot as the striker
HANDLE_GAIN = 4.0  # assumed: the hand travels four times as far as the pawl
FORK_DEPTH_M = 0.015  # assumed: the striker is clear of the fork after this much sliding
WEDGED = "wedged striker"
"""Name of the slider that is nothing but the friction of a wedged striker."""


def friction_n(wedge_n: float) -> float:
    """Return the force that draws a wedged striker out of an open fork [N]."""
    return FLANKS * FRICTION_RATIO * wedge_n


def release_n(wedge_n: float) -> float:
    """Return the pull on the handle that draws the pawl from under a wedged fork [N]."""
    return FRICTION_RATIO * PAWL_LOAD_SHARE * wedge_n / HANDLE_GAIN


def wedge_n(drawn_out_n: float) -> float:
    """Return the force that wedges a striker which it takes so much to draw out [N]."""
    return drawn_out_n / (FLANKS * FRICTION_RATIO)


def pawl_stays(wedge_n: float, handle_n: float) -> bool:
    """Return whether the pawl stays under a fork wedged with a force although the handle is pulled."""
    return release_n(wedge_n) > handle_n


def pawl_holds(car: Car) -> bool:
    """Return whether the pawl is in: nobody pulls the handle, or the pull is not enough."""
    if car.latch == "jammed":
        return pawl_stays(car.latch_wedge_n, car.handle_n)
    return car.latch != "open"


def latch_ties(car: Car, foot: tuple[Ints, Floats]) -> list[Tie]:
    """Return the pawl's tie of the latch's foot, nodes and weights, to the striker, if the pawl is in."""
    if not pawl_holds(car):
        return []
    floor = HALF_LATCH_FLOOR_N if car.latch == "half" else LATCH_FLOOR_N
    limit = np.array(floor) * car.latch_strength_ratio
    return [Tie("latch", *foot, FITTING_STIFFNESS_N_PER_M, limit, give_m=car.fitting_give_m)]


def latch_sliders(car: Car, foot: tuple[Ints, Floats]) -> tuple[Slider, ...]:
    """Return the friction of a wedged striker, if it is wedged."""
    if car.latch_wedge_n <= 0.0:
        return ()
    friction = friction_n(car.latch_wedge_n)
    return (Slider(WEDGED, *foot, FITTING_STIFFNESS_N_PER_M, friction, FORK_DEPTH_M),)
