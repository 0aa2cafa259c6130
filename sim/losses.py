"""What drag and the tips' friction take in a step, by the forces at both of its ends.

The potential of a step knows only the forces of its end: the drag grows from nothing over the step, and
friction slides at one limit, that of the force pressed with when the step began.  The metal, though, starts
the step in balance with the drag and the friction of the step before, and the tips' work is the trapezoid
of a force that carries both.  So each is taken by the same trapezoid,

    drag       (c m0 + c m) . m / 2              m0, m: what each node moved in the last step and in this one
    friction   (t0 + t) . s / 2                  t0, t: force across at both ends, s: what has slid,

and this module gives what that adds to the potential's own c m . m / 2 and t . s.  A pad that held when the
step began slides at t alone: its force has a knee, and the trapezoid of the tips' work lacks (t - t0).s / 2.
At a snap both are read where the branch ended: what follows happens at one tip position.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.grips import FORCE, SLID, SLIDES
from sim.state import Drive, Evaluation, State

Floats = NDArray[np.float64]


def balanced_n(drives: tuple[Drive, ...], force_n: Floats, ev: Evaluation) -> Floats:
    """Return the tip forces the metal is in balance with, per drive [N]: along the ways of the next step.

    Parameters
    ----------
    force_n : shape (drives,), of the point [N];  ev : its evaluation
    """
    out = force_n.copy()
    if FORCE in ev.read:
        for i, drive in enumerate(drives):
            if drive.grip is not None:
                out[i] = ev.read[FORCE][i] @ drive.grip.way
    return out


def carried_drag_j(moved_before: Floats, moved: Floats, viscous_n_per_m: float) -> float:
    """Return what the drag carried over from the last step takes in this one [J], half of it on the way.

    Parameters
    ----------
    moved_before, moved : shape (n, 3) [m];  viscous_n_per_m : per node
    """
    return 0.5 * viscous_n_per_m * float(np.sum(moved_before * moved))


def friction_terms_j(
    drives: tuple[Drive, ...], start: Evaluation, state: State, ev: Evaluation
) -> tuple[float, float]:
    """Return what friction takes beyond its limit of this step times the slip, and the work of knees [J].

    Parameters
    ----------
    start : of the point the step starts from;  state : there;  ev : of the end, or of a branch's end
    """
    carried = knee = 0.0
    if FORCE not in start.read or FORCE not in ev.read:
        return carried, knee
    for i, drive in enumerate(drives):
        if drive.grip is None:
            continue
        slip = ev.read[SLID][i] - (state.kept[SLID][i] if SLID in state.kept else 0.0)
        before, now = float(start.read[FORCE][i] @ slip), float(ev.read[FORCE][i] @ slip)
        if start.read[SLIDES][i] and before > 0.0:
            carried += 0.5 * (before - now)
        else:
            knee += 0.5 * (now - before)
    return carried, knee
