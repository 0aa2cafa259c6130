"""The sheets of a lesson: bridge, evaluation, review, handout, and the lesson itself on paper.

Every figure on them comes from the kept result of a plan; what could not be settled says so.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from sim.builds import car_words
from sim.kept import Told
from sim.move_words import title_of as title_of_move
from sim.units import Units
from ui.state.bank import key_of
from ui.state.drill_log import Drill
from ui.state.drill_paper import log_on_paper
from ui.state.lesson import Lesson
from ui.state.lesson_results import FIGURES, PlanResult, filled
from ui.state.overlay import Overlay
from ui.state.papers import handout, quiz_on_paper
from ui.state.practice import items_of, reveal
from ui.state.prompts import CAUTION, IS_IT_NEEDED, plan_hazards
from ui.state.reading import edges_words
from ui.state.sheet import (
    BEFORE,
    BOX,
    FULL_PX,
    LOCAL_FIRST,
    NOT_THE_ORDER,
    ON_METAL,
    TURN,
    Picture,
    Sheet,
    beside,
    boxed,
    bullets,
    camera_of,
    fields,
    gap,
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
from ui.state.signs import ALWAYS, events_of, hazards, signs
from ui.state.tongue import bare, capital, is_told, own, tr, with_english
from ui.state.wording import told

PLANS_A_PAGE = 3


# bridge -------------------------------------------------------------------------------------------------


def bridge(
    results: Sequence[PlanResult], title: str, overlay: Overlay | None = None, more: Sequence[str] = ()
) -> Sheet:
    """Return the sheet that leads from the screen to the drill ground, for one plan or a lesson's."""
    moves = [move for result in results for move in (result.kept.moves if result.kept else ())]
    shown = [result for result in results if result.kept is not None][:2]
    pictures = tuple(
        Picture(
            result.called,
            result.called,
            camera=camera_of(result.plan),
            layers=open_doors(result.plan),
            aim=True,
            moment="start",
        )
        for result in shown
    )
    body = title_of(title) + _shown_row(shown)
    met = cautions_met(results)
    rows = [signs()[ALWAYS], *(signs()[event] for event in events_of(moves, (*more, *met)))]
    body += heading("On the screen, and on the metal")
    body += table(
        ("On the screen", "Look", "Listen", "Feel", "Stop"),
        [
            (
                f"<b>{said(sign.screen)}</b>",
                said(sign.look),
                said(sign.listen),
                said(sign.feel),
                f"<b>{said(sign.stop)}</b>",
            )
            for sign in rows
        ],
        (16, 25, 16, 17, 26),
        size="8.5pt",
        pad=3,
    )
    body += TURN + _named_hazards(results)
    body += _local(overlay)
    body += heading("What happened on the metal")
    body += fields(("Date", "Place", "Door: seam, metal, latch (no make)", "Tool"), (16, 22, 38, 24))
    boxes = " &nbsp; ".join(f"{BOX}&nbsp;{said(word).replace(' ', '&nbsp;')}" for word in ON_METAL)
    style = "font-size:9pt; margin-top:6px; margin-bottom:0px;"
    body += f'<p style="{style}"><b>{said("First to give")}</b> &nbsp; {boxes}</p>'
    body += (
        rules(1)
        + gap(2)
        + boxed(paragraph(with_english(f"{BEFORE} {LOCAL_FIRST} {NOT_THE_ORDER}"), size="9pt", below=0))
    )
    return Sheet("Bridge sheet", title, (body,), pictures)


def _shown_row(shown: Sequence[PlanResult]) -> str:
    """Return what the model showed: each plan's picture over its sentence, beside each other."""
    if not shown:
        return paragraph("No run of the model stands behind this sheet; the signs are those of the trade.")
    wide = (FULL_PX - 16) // 2
    cells = []
    for result in shown:
        move = result.move()
        assert move is not None
        text = image(result.called, wide if len(shown) > 1 else FULL_PX // 2)
        text += strong(result.plan.title, "11pt")
        text += paragraph(told(move.sentence, move.effect), size="9pt") + _moves_told(result)
        if not result.fresh:
            text += paragraph(result.why_stale, quiet=True, size="8pt")
        cells.append(text)
    if len(cells) == 1:
        picture, _, words = cells[0].partition("/>")
        return beside([(52, f"{picture}/>"), (48, words)])
    return beside([(49, cells[0]), (2, ""), (49, cells[1])])


def cautions_met(results: Sequence[PlanResult]) -> tuple[str, ...]:
    """Return the event of blades that met a hidden restraint part, if a kept run came to it."""
    raw = [one for result in results if result.kept for one in result.kept.results]
    kinds = {event["kind"] for one in raw for event in one.get("events", ())}
    return (CAUTION,) if CAUTION in kinds else ()


def _named_hazards(results: Sequence[PlanResult]) -> str:
    """Return the cards of the hazards that the plans' own moves bring, each once."""
    names = dict.fromkeys(name for result in results for name in plan_hazards(result.plan))
    if not names:
        return ""
    cards = (with_english(f"{name.capitalize()}: {hazards()[name]}") for name in names if name in hazards())
    text = heading("Before any real door") + paragraph(with_english(IS_IT_NEEDED), size="9pt", below=3)
    return text + bullets(cards, "9pt")


def _local(overlay: Overlay | None) -> str:
    if overlay is None or not (overlay.stop_rules or overlay.hazards):
        return ""
    text = heading("Our own rules")
    text += bullets((*overlay.stop_rules, *overlay.hazards))
    return text + paragraph(overlay.signed, quiet=True, size="8pt")


# evaluation ---------------------------------------------------------------------------------------------


def evaluation(lesson: Lesson, seats: Sequence[str] = ("",), overlay: Overlay | None = None) -> Sheet:
    """Return the evaluation: a page a seat, satisfactory or unsatisfactory a step, with the reason."""
    return Sheet(
        "Evaluation sheet",
        lesson.title,
        tuple(_evaluation_page(lesson, seat, overlay) for seat in seats or ("",)),
    )


def _evaluation_page(lesson: Lesson, seat: str, overlay: Overlay | None) -> str:
    goal = lesson.objective
    body = title_of(lesson.title) + strong(f"{goal.audience} {goal.behaviour}.", "11pt")
    body += paragraph(f"{capital(goal.condition)}; {goal.degree}.", size="9.5pt")
    cells = fields(
        ("Seat number (no name)", "Date", "Place", "Try (first, second)"), (25, 20, 30, 25), first=seat
    )
    body += cells + gap(5)
    rows = [
        (f"<b>{k}</b>", f"<b>{said(skill.does)}</b><br/>{said(skill.looked_for)}", "", "", "", "")
        for k, skill in enumerate(lesson.evaluation, 1)
    ]
    body += table(
        ("", "Step, and what is looked for", "S", "U", "Reason (for each U)", "Again"),
        rows,
        (4, 44, 6, 6, 28, 12),
        size="9.5pt",
        pad=6,
    )
    body += gap(2)
    body += paragraph(
        "S satisfactory, U unsatisfactory. A step marked U has its reason, and is tried again by itself.",
        quiet=True,
        size="8.5pt",
        above=6,
    )
    body += _local(overlay)
    body += fields(("Evaluator's signature", "Signed by the one evaluated", "Date"), (40, 40, 20))
    words = f"{NOT_THE_ORDER} {LOCAL_FIRST} This sheet is kept by seat number, in your service's records."
    return body + gap(4) + boxed(paragraph(with_english(words), size="9pt", below=0))


def record_csv(lesson: Lesson, seats: Sequence[str]) -> str:
    """Return an empty record of the evaluation for a spreadsheet: a line a seat and step."""
    lines = ["lesson,seat,step,S_or_U,reason,again_S_or_U"]
    for seat in seats:
        for k, skill in enumerate(lesson.evaluation, 1):
            title, step = (bare(t).replace('"', '""') for t in (lesson.title, f"{k} {skill.does}"))
            lines.append(f'"{title}","{seat}","{step}",,,')
    return "\n".join(lines) + "\n"


# review -------------------------------------------------------------------------------------------------


def review(lesson: Lesson, results: Mapping[str, PlanResult]) -> Sheet:
    """Return the sheet an expert signs: each plan's picture, what is claimed, who says so, which model."""
    pictures = tuple(
        Picture(name, name, camera="three_quarter", layers=open_doors(result.plan))
        for name, result in results.items()
    )
    body = title_of(lesson.title) + paragraph(
        f"{lesson.author}, {lesson.written_on or 'no date'}. Licence {lesson.licence}. Piloted on: "
        f"{lesson.piloted_on or 'not yet'}. Level: {lesson.level}. "
        f"For: {_inside(lesson.objective.audience)}.",
        size="9pt",
    )
    parts = [_review_plan(lesson, result, results) for result in results.values()]
    pages = ["".join(parts[k : k + PLANS_A_PAGE]) for k in range(0, len(parts), PLANS_A_PAGE)] or [""]
    pages[0] = body + pages[0]
    body = heading("Claims of the lesson as a whole")
    body += table(
        ("Claim", "Source", "Correct", "To change"),
        [(said(claim.words), said(claim.source), "", "") for claim in lesson.claims],
        (52, 26, 9, 13),
    )
    body += heading("Standards named")
    body += table(
        ("Standard", "Edition", "What for", "Clause read by, on"),
        [(said(s.name), said(s.edition), said(s.words), said(s.checked)) for s in lesson.standards],
        (34, 12, 30, 24),
    )
    body += gap(6)
    body += fields(("Reviewed by (post)", "Owner of the procedure", "Date", "Signatures"), (26, 26, 14, 34))
    return Sheet("Review sheet", lesson.title, (*pages, body), pictures)


def _inside(words: str) -> str:
    """Return words as they stand inside a sentence: in small letters, but for those told already."""
    return words if is_told(words) else words.lower()


def _review_plan(lesson: Lesson, result: PlanResult, results: Mapping[str, PlanResult]) -> str:
    move = result.move()
    words = strong(own(f"{result.called}: {tr(result.plan.title)}"), "11pt")
    if move is None:
        return words + paragraph(result.why_stale, size="9pt")
    words += paragraph(told(move.sentence, move.effect), size="9pt") + _moves_told(result)
    keys = [key_of(q, results) for q in lesson.questions if q.plan == result.called]
    loose = sum(not key.settled for key in keys)
    kept = result.kept
    assert kept is not None
    rows = [
        ("Car", car_words(result.plan.car)),
        ("First to give", filled(f"{{{result.called}.first}}", {result.called: result})),
        ("Next nearest", rival_words(move)),
        ("Questions on it", f"{len(keys)}, of them not graded: {loose}"),
        ("Says so", f"this model, version {kept.model_version}; plan {kept.plan_sha256[:12]}"),
        ("Kept result", "fresh" if result.fresh else result.why_stale),
        ("Right / to change", ""),
    ]
    words += table(("", ""), [(f"<b>{said(a)}</b>", said(b)) for a, b in rows], (30, 70), size="8.5pt", pad=3)
    wide = FULL_PX // 2 - 8
    return beside([(50, image(result.called, wide)), (2, ""), (48, words)]) + gap(6)


def rival_words(move: Told) -> str:
    """Return what else was nearest to giving just before, and how far off it was."""
    if not move.rival:
        return "nothing"
    away = f"{100 * move.margin_ratio:.0f}"
    return f"{move.rival}, just as near" if away == "0" else f"{move.rival}, {away} % away"


def _moves_told(result: PlanResult) -> str:
    """Return what each move of a plan of several did, then the way out and sharp edges at the end."""
    moves = result.kept.moves if result.kept else ()
    edges = _edges_left(result)
    if len(moves) < 2:
        return _small(said(edges)) if edges else ""
    lines = []
    for move, told_of in zip(result.plan.moves, moves, strict=False):
        did = ", ".join(word for word in told_of.metal if word != "holding")
        lines.append(own(f"{tr(title_of_move(move))}: {tr(did)}") if did else title_of_move(move))
    text = "<br/>".join(f"<b>{k}</b> {said(line)}" for k, line in enumerate(lines, 1))
    if moves[-1].exit_width_m is not None:
        way = FIGURES["width"][1](moves[-1], Units.METRIC)
        text += f"<br/>{said('Width to bring the patient out by')}: {said(way)}"
    return _small(f"{text}<br/>{said(edges)}" if edges else text)


def _edges_left(result: PlanResult) -> str:
    """Return how many sharp edges stand at the end of a kept run, "" where there is none."""
    results = result.kept.results if result.kept else ()
    return edges_words(int(results[-1].get("sharp_edge_count", 0))) if results else ""


def _small(text: str) -> str:
    return f'<p style="font-size:8pt; margin-top:2px; margin-bottom:4px;">{text}</p>'


# the lesson itself --------------------------------------------------------------------------------------


def lesson_on_paper(
    lesson: Lesson, results: Mapping[str, PlanResult], overlay: Overlay | None = None
) -> Sheet:
    """Return the whole lesson for the teacher: for when the laptop stays in the bag."""
    words = dict(results)
    goal = lesson.objective
    body = title_of(lesson.title) + strong(filled(lesson.words, words))
    rows = [
        ("Level, session", f"{lesson.level}; {lesson.session}; about {lesson.duration_min} min"),
        ("Who", goal.audience),
        ("Does what", goal.behaviour),
        ("Given what", goal.condition),
        ("How well", goal.degree),
        ("Standards", "; ".join(f"{s.name}, {s.edition}" for s in lesson.standards) or "none named"),
        ("Written", f"{lesson.author}, {lesson.written_on}; {tr('licence')} {lesson.licence}"),
    ]
    body += table(("", ""), [(f"<b>{said(a)}</b>", said(b)) for a, b in rows], (20, 80), size="9pt", pad=4)
    body += beside(
        [
            (49, heading("To have ready") + bullets(lesson.materials)),
            (2, ""),
            (49, heading("To have read") + bullets(lesson.references)),
        ]
    )
    body += heading("Steps")
    body += table(
        ("", "For the class", "For the teacher"),
        [
            (
                f"<b>{k}</b> {said(step.phase)}",
                f"<b>{said(step.title)}</b><br/>{said(filled(step.words, words))}",
                said(filled(step.notes, words)),
            )
            for k, step in enumerate(lesson.steps, 1)
        ],
        (10, 40, 50),
        pad=5,
    )
    body += heading("Questions, and what the runs say")
    for item in items_of(lesson, results):
        body += paragraph(own(f"{item.ask}  {tr(reveal(item))}"), size="9pt", below=4)
    body += heading("To end with")
    body += bullets(filled(text, words) for text in (*lesson.debrief.questions, *lesson.debrief.points))
    body += _local(overlay)
    body += heading("Limits, and hazards to name")
    body += bullets(
        (
            *lesson.limits,
            *(
                with_english(f"{name.capitalize()}: {hazards()[name]}")
                for name in lesson.hazards
                if name in hazards()
            ),
        )
    )
    return Sheet("Lesson", lesson.title, (body,))


SHEETS = ("bridge", "evaluation", "review", "handout", "test", "log", "lesson")
"""The sheets by name, as they are asked for."""


def sheet_of(
    kind: str,
    lesson: Lesson,
    results: Mapping[str, PlanResult],
    *,
    overlay: Overlay | None = None,
    seats: Sequence[str] = ("",),
    drills: Sequence[Drill] = (),
) -> Sheet:
    """Return one of a lesson's sheets; KeyError for another word."""
    makers = {
        "bridge": lambda: bridge(list(results.values()), lesson.title, overlay, lesson.signs),
        "evaluation": lambda: evaluation(lesson, seats, overlay),
        "review": lambda: review(lesson, results),
        "handout": lambda: handout(lesson, results),
        "test": lambda: quiz_on_paper(lesson, results, seats),
        "log": lambda: log_on_paper(lesson, results, drills),
        "lesson": lambda: lesson_on_paper(lesson, results, overlay),
    }
    return makers[kind]()
