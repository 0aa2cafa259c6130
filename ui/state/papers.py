"""The papers of the class: the handout, and a test with its key."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ui.state.glossary import Term, in_tongue, terms
from ui.state.lesson import Lesson
from ui.state.lesson_results import PlanResult, filled
from ui.state.practice import SCORED_LINE, Item, items_of, reveal
from ui.state.sheet import (
    BEFORE,
    BOX,
    FULL_PX,
    LOCAL_FIRST,
    NOT_THE_ORDER,
    Picture,
    Sheet,
    beside,
    boxed,
    bullets,
    camera_of,
    fields,
    heading,
    image,
    open_doors,
    paragraph,
    rules,
    said,
    strong,
    table,
)
from ui.state.sheet import title as title_of
from ui.state.signs import hazards
from ui.state.tongue import tr, with_english


def handout(lesson: Lesson, results: Mapping[str, PlanResult]) -> Sheet:
    """Return the sheet for the class: pictures before the push, the questions, the words, the points."""
    shown = [result for result in results.values() if result.kept is not None][:2]
    pictures = tuple(
        Picture(
            result.called,
            result.called,
            moment="start",
            camera=camera_of(result.plan),
            layers=open_doors(result.plan),
        )
        for result in shown
    )
    words = dict(results)
    body = title_of(lesson.title) + strong(filled(lesson.words, words), "12pt")
    if shown:
        wide = (FULL_PX - 16) // 2
        cells = [
            (
                49,
                image(r.called, wide)
                + paragraph(f"{tr(r.plan.words)} {tr('True scale.')}", quiet=True, size="8.5pt"),
            )
            for r in shown
        ]
        body += beside([cells[0], (2, ""), *(cells[1:] or [(49, "")])])
    body += heading("What do you say?") if lesson.questions else rules(3)
    order = {question.name: k for k, question in enumerate(lesson.questions)}
    items = sorted(items_of(lesson, results), key=lambda item: order[item.question.name])
    for k, item in enumerate(items, 1):
        body += _paper_question(k, item)
    body += heading("Afterwards")
    body += bullets(filled(text, words) for text in lesson.debrief.questions)
    body += rules(2)
    second = heading("Words") + _words_table(lesson) + heading("Before any real door")
    second += bullets(map(with_english, (BEFORE, LOCAL_FIRST, NOT_THE_ORDER)))
    second += bullets(with_english(hazards()[name]) for name in lesson.hazards if name in hazards())
    second += heading("What this lesson does not say") + bullets(lesson.limits)
    second += heading("Notes") + rules(6)
    return Sheet("Handout", lesson.title, (body, second), pictures)


def _paper_question(number: int, item: Item) -> str:
    boxes = " &nbsp; ".join(f"{BOX}&nbsp;{said(choice.words)}" for choice in item.choices)
    return (
        f'<p style="font-size:10pt; margin-top:6px; margin-bottom:1px;"><b>{number}</b> &nbsp;'
        f"{said(item.ask)}</p>"
        f'<p style="font-size:9.5pt; margin-top:0px; margin-bottom:2px; margin-left:14px;">{boxes}</p>'
    )


def _words_table(lesson: Lesson) -> str:
    text = " ".join(step.words for step in lesson.steps).lower()
    named = [(term, (term.name.lower(), *term.english[:1])) for term in in_tongue(terms())]
    used = [term for term, names in named if any(name in text for name in names)][:10]
    rows = [(f"<b>{said(term.name)}</b>", said(term.meaning), _others(term)) for term in used]
    return table(("Word", "Means", "Also called"), rows, (18, 52, 30), size="8.5pt", pad=3)


def _others(term: Term) -> str:
    return said(", ".join(term.aliases[:3]))


def quiz_on_paper(lesson: Lesson, results: Mapping[str, PlanResult], seats: Sequence[str] = ("",)) -> Sheet:
    """Return a test, a page a seat, and last its key for the teacher; only what is settled is asked."""
    items = [item for item in items_of(lesson, results) if item.key.settled]
    left_out = len(lesson.questions) - len(items)
    pages = tuple(_test_page(lesson, items, seat) for seat in seats or ("",))
    return Sheet("Test", lesson.title, (*pages, _key_page(lesson, items, left_out)))


def _test_page(lesson: Lesson, items: Sequence[Item], seat: str) -> str:
    body = title_of(lesson.title)
    body += fields(("Seat number (no name)", "Date", "Right, of all"), (40, 30, 30), first=seat)
    body += (
        heading("One answer to each") if items else paragraph("The model has settled none of the questions.")
    )
    for k, item in enumerate(items, 1):
        body += _paper_question(k, item) + rules(1)
    return body + boxed(paragraph(with_english(f"{SCORED_LINE} {LOCAL_FIRST}"), size="9pt", below=0))


def _key_page(lesson: Lesson, items: Sequence[Item], left_out: int) -> str:
    body = title_of(f"{lesson.title}: {tr('the key')}") + paragraph(
        "For the teacher. It is what the runs themselves say."
    )
    rows = [(f"<b>{k}</b>", said(item.ask), said(reveal(item))) for k, item in enumerate(items, 1)]
    if rows:
        body += table(("", "Question", "In the model, and why"), rows, (5, 40, 55), size="9pt")
    few = "One question is" if left_out == 1 else f"{left_out} questions are"
    if left_out:
        body += paragraph(f"{few} left out: the model is not settled there. Show them and talk.", above=8)
    return body
