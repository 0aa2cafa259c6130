"""Where the metal folded, in words and steps: its plastic work per area, from its own history."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from sim.record import Frame, folded
from sim.units import length_text
from ui.state.locks import ANSWERS

if TYPE_CHECKING:
    from ui.state.session import Session

Floats = NDArray[np.float64]

FOLDED = "folded"
"""The colours' name among `ui.state.view_options.COLOUR_WORDS`."""

STEPS_J_PER_M2 = (50.0, 200.0, 1000.0, 5000.0)
"""Bounds between the steps [J/m^2]: chosen, for they tell a first bend from a crease on all ready plans.

A skin of 0.7 mm at 220 MPa bent sharply by 60 degrees takes t^2 Y / 4 = 27 N m per metre and radian; spread
over two rows of 45 mm that is 0.3 kJ/m^2, a crease; stretched by 5 % it takes 7.7 kJ/m^2.
"""
STEP_WORDS = ("as it was", "bent", "creased", "folded", "crushed")
FOLDED_FROM = 2
"""The first step that is told in words as a fold."""


def bound_words() -> tuple[str, ...]:
    """Return the bounds as they are written, the last with its unit."""
    kilo = [f"{1e-3 * bound:g}" for bound in STEPS_J_PER_M2]
    return (*kilo[:-1], f"{kilo[-1]} kJ/m\u00b2")


BY_SHAPE = "read from kept shapes"


def coloured(session: Session) -> str:
    """Return the colours the metal is shown in: plain while what they tell is kept shut."""
    mode = session.view.options.colour_mode
    return "material" if mode == FOLDED and session.hides(ANSWERS) else mode


def fold_note(frame: Frame | None) -> str:
    """Return where a moment's folding is known from, "" from the metal's own memory."""
    by_shape = frame is not None and frame.fold_j_per_m2 is None and frame.replayed is not None
    return BY_SHAPE if by_shape else ""


def fold_words(session: Session) -> str:
    """Return in words where the metal of the moment shown has folded, as its colours show it; or nothing."""
    frame, model = session.timeline.frame, session.model
    if frame is None or model is None or coloured(session) != FOLDED:
        return ""
    work = folded(frame)
    if work is None:
        return ""
    surface, points = model.surface, model.start.points
    if float(work.max(initial=0.0)) < STEPS_J_PER_M2[0]:
        return "No sheet has been bent for good."
    at = int(np.argmax(work))
    part = surface.part_names[int(surface.triangle_part[at])].replace("_", " ")
    up = float(points[model.structure.triangles[at], 2].mean())
    area = model.network.rest.area
    share = float(area[work >= STEPS_J_PER_M2[FOLDED_FROM - 1]].sum() / area.sum())
    step = STEP_WORDS[int(np.digitize(work[at], STEPS_J_PER_M2))]
    high = length_text(abs(up), session.view.options.units)
    way = "above" if up >= 0.0 else "below"
    note = " Read from kept shapes, to about a tenth." if fold_note(frame) else ""
    return (
        f"Folded most: {part}, {high} {way} the door's lower edge, {1e-3 * work[at]:.2g} kJ/m\u00b2, {step}. "
        f"Creased or more: {100.0 * share:.2g} % of the sheets.{note}"
    )
