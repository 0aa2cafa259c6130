"""What the teacher reads at a step of a lesson, and what of it waits for the push."""

from __future__ import annotations

from ui.state.lesson import FIGURE
from ui.state.lesson_walk import LessonWalk
from ui.state.signs import hazards
from ui.state.tongue import own, tr, with_english

NOTES_WAIT = "The notes wait until prediction and outcome are compared; F7 shows them in their own window."
NOTES_HELD = "What came out stands here once the push has been run; F7 shows it in its own window."


def notes_of(walk: LessonWalk, *, to_come: bool, unspoken: bool) -> str:
    """Return the notes of the step shown, in a window that the class sees; the first step names the hazards.

    Parameters
    ----------
    to_come : whether the step stands before a push nobody has run yet: what tells its figures waits
    unspoken : whether a prediction is open: all of them wait
    """
    step, lesson = walk.step, walk.lesson
    assert step is not None and lesson is not None
    if step.question and unspoken:
        return NOTES_WAIT
    lines = step.notes.splitlines()
    told = [line for line in lines if not (to_come and FIGURE.search(line))]
    held = [tr(NOTES_HELD)] if told != lines else []
    notes = "\n".join(filter(None, (own(walk.fill("\n".join(told))), *held)))
    named = [
        with_english(f"{name.capitalize()}: {hazards()[name]}")
        for name in lesson.hazards
        if name in hazards()
    ]
    return "\n\n".join((notes, tr("Hazards to name:"), *named)) if walk.position == 0 and named else notes
