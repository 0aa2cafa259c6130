"""The sentence after a press: what slipped, moved, held or gave, and why."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from sim import outcome
from sim.foot_words import foot_words
from sim.record import BASE_GIVING, SEAT_OFF, SEAT_SLIPPING, RamNow
from sim.stood import base_words

if TYPE_CHECKING:
    from sim.pressing import PressCourse

IDLE_N = 50.0
"""A ram that pushes with less bears on nothing."""


def press_sentence(course: PressCourse) -> str:
    """Return the sentence after a press."""
    first, last = course.run.ends
    kinds = [event.kind for event in course.run.events]
    moved = course.hold.moved_m(last.points, course.hold.first_line) * 1e3
    out = f"{last.opening_m * 1e3:.0f} mm"
    part = course.set.head.word
    what, why = f"The ram went out {out} and the {part} moved {moved:.0f} mm", ""
    if SEAT_SLIPPING in kinds or SEAT_OFF in kinds:
        end = next(event.part for event in course.run.events if event.kind in (SEAT_SLIPPING, SEAT_OFF))
        what = f"The {end} slipped with the ram {out} out and the {part} moved {moved:.0f} mm"
        off = off_square_words(course.slipped_at) if end == "head" else ""
        why = "The line stood too far off square to what it pressed on"
        why += f"{off}; ease, set it squarer or give it a better grip, press again."
    elif BASE_GIVING in kinds:
        why = base_words(course.run.events, last.ram.sink_m if last.ram is not None else 0.0)
    elif "stalled" in kinds:
        why = "The ram has no more force at this stage."
    elif last.ram is not None:
        why = _held_words(course)
    said = f"{what}, {_let_go_words(course)}; {outcome.clearance_words(first, last)}. {why}"
    return f"{said} {foot_words(course.run)}".strip()


def off_square_words(at: RamNow | None) -> str:
    """Return how far off square the line stood when the head slipped, and how far it holds."""
    if at is None:
        return ""
    angle = f"{math.degrees(at.angle_rad):.0f}"
    if at.rolled:
        return f" ({angle} degrees) and the head rolled onto its rim"
    held = f"{math.degrees(at.angle_rad + at.margin_rad):.0f}"
    if held == angle:
        return f" (just past the {held} degrees it holds)"
    return f" ({angle} degrees, it holds up to {held})"


def _held_words(course: PressCourse) -> str:
    """Return by how much both ends held, at the last moment at which the ram pressed on anything."""
    pressing = [f for f in course.run.frames if f.ram is not None and f.force_n > IDLE_N]
    if not pressing or pressing[-1].ram is None:
        return "The ram never pressed on anything."
    ram = pressing[-1].ram
    left = math.degrees(min(ram.margin_rad, ram.foot_margin_rad))
    words = f"Both ends held, with {left:.0f} degrees to spare"
    return (
        f"{words}." if pressing[-1] is course.run.ends[1] else f"{words}; then the part ran ahead of the ram."
    )


def _let_go_words(course: PressCourse) -> str:
    """Return what let go during a press, in words."""
    first, last = course.run.ends
    gone = [outcome.rung_words(e.part, e.kind) for e in course.run.events if e.kind.endswith(" free")]
    spots = last.spots_gone - first.spots_gone
    if spots > 0:
        gone.append(f"{spots} {'spot' if spots == 1 else 'spots'} of the pillar popped")
    return ", ".join(gone) if gone else "nothing let go"
