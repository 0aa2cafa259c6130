"""A lesson looked through: what leads nowhere, what is stale, what does not come out, what has changed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from sim.kept import Kept, Told
from sim.units import Units
from ui.state.bank import key_of, more, outcome
from ui.state.lesson import Expected, Lesson
from ui.state.lesson_file import texts_of, unknown_fields
from ui.state.lesson_results import FIGURES, PlanResult, unknown_figures
from ui.state.maps import ready_map
from ui.state.signs import hazards, signs


@dataclass(frozen=True)
class Report:
    """What was found, a line each.

    failed : whether an expected contrast does not come out of fresh results
    """

    lines: tuple[str, ...]
    failed: bool


def looked_through(lesson: Lesson, results: Mapping[str, PlanResult], text: str) -> Report:
    """Return what is to be said of a lesson."""
    lines = [f"not a field of a lesson, kept as it is: {path}" for path in unknown_fields(text)]
    for path, words in texts_of(lesson):
        lines += [f"{path}: {figure} is no figure" for figure in unknown_figures(words)]
    lines += [f"no hazard card of this name: {name}" for name in lesson.hazards if name not in hazards()]
    lines += [f"no sign of this name: {name}" for name in lesson.signs if name not in signs()]
    lines += _maps(lesson, results)
    lines += [result.why_stale for result in results.values() if not result.fresh]
    failed = False
    for pair in lesson.expected:
        found = expectation(pair, results)
        failed |= found.startswith("DOES NOT COME OUT")
        lines.append(found)
    for question in lesson.questions:
        key = key_of(question, results)
        graded = f"key: {key.outcome}, {key.difficulty}" if key.settled else f"not graded: {key.why_not}"
        lines.append(f"question {question.name}: {graded}")
    return Report(tuple(lines), failed)


def _maps(lesson: Lesson, results: Mapping[str, PlanResult]) -> list[str]:
    """Return which outcome maps that steps ask for do not come with the program."""
    from sim.outcome_map import asked  # the mechanics come when a lesson is looked through

    lines = []
    for step in lesson.steps:
        names = [step.plan, step.beside] if step.map == "both" else [step.plan] if step.map else []
        lines += [
            f"no outcome map of {results[name].file}: a class would wait for it; make it with hemline map"
            for name in names
            if name in results and ready_map(asked(results[name].plan)) is None
        ]
    return list(dict.fromkeys(lines))


def expectation(pair: Expected, results: Mapping[str, PlanResult]) -> str:
    """Return whether an expected contrast comes out, in a line."""
    moves = [
        results[name].move(number) if name in results and results[name].fresh else None
        for name, number in ((pair.first, pair.first_move), (pair.second, pair.second_move))
    ]
    first, second = moves
    if first is None or second is None:
        return f"not known yet: {pair.words}"
    if pair.asks == "more":
        which = more(pair.measure, first, second)
        wrong = [] if which == 1 else [f"{pair.second} has {'more' if which else 'about as much'}"]
    else:
        sides = ((pair.first, first, pair.first_is), (pair.second, second, pair.second_is))
        came = [(name, outcome(pair.asks, move), wanted) for name, move, wanted in sides]
        wrong = [f"{name}: {is_}, expected {wanted}" for name, is_, wanted in came if wanted not in ("", is_)]
    return f"DOES NOT COME OUT: {pair.words} ({'; '.join(wrong)})" if wrong else f"comes out: {pair.words}"


WATCHED = ("first", "first_opening", "peak_force", "latch", "parted", "torn", "skin", "inner", "effect")
"""Figures of a move that are compared when a plan is solved again."""


def changes(before: PlanResult, now: Kept) -> tuple[str, ...]:
    """Return what has changed between a kept result and a new one: verdicts first, figures after them."""
    name = before.file
    if before.kept is None:
        return (f"{name}: solved for the first time: {_verdicts(now)}",)
    old = before.kept.moves
    lines = []
    for k, move in enumerate(now.moves):
        if k >= len(old):
            lines.append(f"{name}, move {k + 1}: new")
            continue
        lines += [f"{name}, move {k + 1}: {line}" for line in _changed(old[k], move)]
    return tuple(lines) or (f"{name}: nothing has changed",)


def _verdicts(kept: Kept) -> str:
    return "; ".join(f"{move.first}, {move.effect}" for move in kept.moves)


def _changed(old: Told, new: Told) -> list[str]:
    verdicts, figures = [], []
    if old.settled != new.settled:
        verdicts.append(f"VERDICT CHANGED: {'now settled' if new.settled else 'no longer settled'}")
    for name in WATCHED:
        was, now = (FIGURES[name][1](move, Units.METRIC) for move in (old, new))
        if was == now:
            continue
        if name in ("first", "effect"):
            verdicts.append(f"VERDICT CHANGED: {FIGURES[name][0]}: {was}, now {now}")
        else:
            figures.append(f"{FIGURES[name][0]}: {was}, now {now}")
    return verdicts + figures
