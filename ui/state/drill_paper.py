"""The drill log on paper: what was written down of a lesson's plans, and lines for the next drills."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from sim.planfile import plan_sha256
from ui.state.drill_log import Drill, rate_words
from ui.state.lesson import Lesson
from ui.state.lesson_results import PlanResult
from ui.state.sheet import LOCAL_FIRST, Sheet, boxed, gap, heading, paragraph, said, strong, table
from ui.state.sheet import title as title_of
from ui.state.tongue import bare, own, tr, with_english

LINES, LEAST_LINES = 14, 3
"""Empty lines for the next drills, where none is written down yet and where many are."""
FIRST_WRITE = "Write it down before anybody talks it over."
HEADS = ("Date", "Plan", "The model said", "The metal did first", "Agree", "Door, note")
WIDTHS = (12, 22, 16, 18, 8, 24)


def of_lesson(
    drills: Sequence[Drill], lesson: Lesson, results: Mapping[str, PlanResult]
) -> tuple[Drill, ...]:
    """Return the drills of a lesson: written down in it, in whatever language, or of one of its plans."""
    hashes = {plan_sha256(result.plan) for result in results.values()}
    return tuple(d for d in drills if d.plan_sha256 in hashes or d.lesson == bare(lesson.title))


def log_on_paper(lesson: Lesson, results: Mapping[str, PlanResult], drills: Sequence[Drill]) -> Sheet:
    """Return the log of a lesson's drills: how often model and metal agreed, a line a drill, empty lines."""
    mine = of_lesson(drills, lesson, results)
    body = title_of(lesson.title) + strong(rate_words(mine), "11pt")
    body += paragraph(
        "One line a drill: by plan and date, with no names and no make. A drill that could not be seen "
        "counts neither way.",
        size="9pt",
    )
    if mine:
        body += table(HEADS, [_line(drill) for drill in mine], WIDTHS, size="8.5pt", pad=4)
    body += heading("The next drills")
    empty = ("<br/><br/>", *([""] * (len(HEADS) - 1)))
    lines = max(LEAST_LINES, LINES - 3 * len(mine) // 4)  # so that ten drills and their room are one page
    body += table(HEADS, [empty] * lines, WIDTHS, size="8.5pt", pad=4) + gap(4)
    words = with_english(" ".join((FIRST_WRITE, LOCAL_FIRST)))
    return Sheet("Drill log", lesson.title, (body + boxed(paragraph(words, size="9pt", below=0)),))


def _line(drill: Drill) -> tuple[str, ...]:
    agree = {True: "yes", False: "no", None: "\u2013"}[drill.agrees]
    told = [said(text) for text in (own(drill.date), drill.plan, drill.model_said, drill.metal_did, agree)]
    door = (drill.build, drill.note, tr(f"Hemline, model {drill.model_version}"))
    return (*told, said(own("; ".join(text for text in door if text))))
