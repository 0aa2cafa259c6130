"""The tool's arms: two of one length that turn about one pivot, so the tips move on arcs.

With half the opening angle beta the tips stand 2 a sin(beta) apart and a cos(beta) ahead of the pivot, so as
they part they draw back towards the body by a (1 - cos(beta)).  Virtual work with torque M on each arm:

    F d(opening) = 2 M d(beta)     so     F a cos(beta) = M,

force along the line between the tips times its lever about the pivot.

When the body may draw back by as much (the crew hold the tool's direction and let its body come) the tip on
the door keeps to its line; when the body stands still it moves on its arc.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


def half_angle_rad(opening_m: float, arm_m: float) -> float:
    """Return the angle of each arm with the tool's axis [rad], for an opening below twice the arm."""
    return math.asin(min(0.5 * opening_m / arm_m, 1.0))


def drawn_back_m(opening_m: float, arm_m: float) -> float:
    """Return how far the tips have drawn back towards the body since they were closed [m]."""
    return arm_m * (1.0 - math.cos(half_angle_rad(opening_m, arm_m)))


def torque_n_m(force_n: float, opening_m: float, arm_m: float) -> float:
    """Return the torque on each arm that pushes with a force along the line between the tips [N m]."""
    return force_n * arm_m * math.cos(half_angle_rad(opening_m, arm_m))


def inboard_of(direction: Floats, along: Floats, outboard: Floats) -> Floats:
    """Return the direction a quarter turn inboard of another in the plane across an edge, shape (3,).

    Straight along the car it is straight inboard; ``along`` and ``outboard`` are unit vectors of the plane.
    """
    turned: Floats = (direction @ outboard) * along - (direction @ along) * outboard
    size = float(np.linalg.norm(turned))
    return turned / size if size > 0.0 else -outboard


def chord(start_m: float, end_m: float, arm_m: float, direction: Floats, inboard: Floats) -> Floats:
    """Return the tip's way per metre of opening between two openings with the body standing still, (3,).

    It leads along the push and back towards the body, away from ``inboard``.
    """
    back = (drawn_back_m(end_m, arm_m) - drawn_back_m(start_m, arm_m)) / max(end_m - start_m, 1.0e-12)
    way: Floats = direction - back * inboard
    return way


def face_of(direction: Floats, inboard: Floats, turn_rad: float) -> Floats:
    """Return the way a pad's face presses when it has turned outboard from square to the push, (3,)."""
    face: Floats = math.cos(turn_rad) * direction - math.sin(turn_rad) * inboard
    return face
