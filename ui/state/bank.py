"""Questions whose key is the run's own result: what is asked, what may be answered, and what came out.

A key counts only where it is settled: the run converged, the runs next to it (a little to either side, a
coarser lattice) say the same, and what came second was not close behind.  Anything else is shown and talked
about, and never graded.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from sim.kept import CLOSE_RATIO, Told
from sim.many import NOTHING_GAVE
from sim.neighbours import LATTICES
from sim.outcome import limit
from ui.state.lesson import Choice, Question
from ui.state.lesson_results import PlanResult

EASY_RATIO = 0.5
APART = 0.15
"""Two figures that differ by less than this of the larger count as about the same (assumed)."""
TURNED_RAD = 0.035
"""A ram's line that turns by less than this, two degrees, counts as having stayed (assumed)."""
FIRST = ("gives first", "at the ram")
"""What is asked for with what gives first as its answer."""
SAME = "about the same"

CHOICES: Mapping[str, tuple[Choice, ...]] = {
    "gives first": (
        Choice("The seam parts", "seam parting"),
        Choice("A weld breaks", "weld broken"),
        Choice("The latch lets go", "latch free"),
        Choice("A hinge lets go", "hinge free"),
        Choice("The sheet tears", "skin tearing"),
        Choice("Nothing lets go", NOTHING_GAVE),
    ),
    "at the ram": (
        Choice("The ram's head slips", "seat slipping"),
        Choice("The base under its foot sinks", "base giving"),
        Choice("Sheet tears", "skin tearing"),
        Choice("None of these: it holds to the end", NOTHING_GAVE),
    ),
    "ram's line": (
        Choice("It comes nearer to square", "in line"),
        Choice("It turns further off square", "out of line"),
        Choice("It stays as it was", "hardly"),
    ),
    "for the plan": (
        Choice("It gains: something is freed, no room is lost", "gained"),
        Choice("The effort is spent, nothing is freed", "spent"),
        Choice("Ground is lost: the patient has less room", "lost ground"),
        Choice("Stop: the sheet tears", "stop here"),
    ),
    "skin's middle": (
        Choice("It moves out", "out"),
        Choice("It moves in", "in"),
        Choice("It hardly moves", "hardly"),
    ),
    "upper skin": (
        Choice("It moves out", "out"),
        Choice("It moves in, towards the patient", "in"),
        Choice("It hardly moves", "hardly"),
    ),
    "inner panel": (
        Choice("It moves out", "out"),
        Choice("It moves in, towards the patient", "in"),
        Choice("It hardly moves", "hardly"),
    ),
    "room": (
        Choice("The patient has more room", "more"),
        Choice("The patient has less room", "less"),
        Choice("The room stays as it was", "same"),
    ),
    "tears": (Choice("The sheet tears", "yes"), Choice("No sheet tears", "no")),
    "latch": (
        Choice("The latch lets go", "free"),
        Choice("It holds, with at least half of what it can take", "half"),
        Choice("It holds, with less than half of what it can take", "little"),
    ),
}
"""What may be answered to each thing asked."""


@dataclass(frozen=True)
class Key:
    """The answer of the runs.

    outcome : the outcome that is right, "" when nothing was solved
    settled : whether it may be graded;  why_not : a sentence where it may not
    difficulty : "plain", "close" or "not settled", from the margin
    """

    outcome: str
    settled: bool
    why_not: str
    difficulty: str


def choices_of(question: Question, results: Mapping[str, PlanResult]) -> tuple[Choice, ...]:
    """Return what may be answered."""
    if question.choices:
        return question.choices
    if question.asks != "more":
        return CHOICES[question.asks]
    pair = (question.plan, question.other)
    names = [results[name].plan.title if name in results else name for name in pair]
    return (
        Choice(names[0], question.plan),
        Choice(names[1], question.other),
        Choice(SAME.capitalize(), SAME),
    )


def outcome(asks: str, move: Told) -> str:
    """Return the outcome of one move that is asked for."""
    if asks in FIRST:
        return move.first
    if asks == "for the plan":
        return move.effect
    if asks == "ram's line":
        first, last = move.off_square_rad or (0.0, 0.0)
        return _way(first - last, TURNED_RAD, "in line", "out of line")
    ways = {"skin's middle": move.skin_m, "upper skin": move.upper_skin_m, "inner panel": move.inner_m}
    if asks in ways:
        return _way(ways[asks], limit("moved_m"), "out", "in")
    if asks == "room":
        way = _way(move.clearance_change_m, limit("clearance_m"), "more", "less")
        return "same" if way == "hardly" else way
    if asks == "tears":
        return "yes" if move.torn_length_m >= limit("torn_m") else "no"
    if asks == "latch":
        if "latch free" in move.metal or "striker out" in move.metal:
            return "free"
        return "half" if move.latch_demand_ratio >= 0.5 else "little"
    raise KeyError(asks)


def _way(value: float, least: float, up: str, down: str) -> str:
    if abs(value) <= least:
        return "hardly"
    return up if value > 0.0 else down


def more(measure: str, first: Told, second: Told) -> int:
    """Return which of two moves has more of what is measured: 1, 2, or 0 where both have about the same."""
    one, two = (getattr(move, _FIELDS[measure]) or 0.0 for move in (first, second))
    if abs(one - two) <= APART * max(abs(one), abs(two)):
        return 0
    return 1 if one > two else 2


_FIELDS = {
    "force_n": "peak_force_n",
    "torn_length_m": "torn_length_m",
    "parted_length_m": "parted_length_m",
    "latch_demand_ratio": "latch_demand_ratio",
    "least_clearance_m": "least_clearance_m",
    "clearance_change_m": "clearance_change_m",
    "clearance_m": "clearance_m",
    "opening_m": "opening_m",
}


def key_of(question: Question, results: Mapping[str, PlanResult]) -> Key:
    """Return the key of a question from the kept results."""
    sides = [results.get(question.plan)]
    if question.asks == "more":
        sides.append(results.get(question.other))
    numbers = _numbers(question)
    told = [None if side is None else side.move(n) for side, n in zip(sides, numbers, strict=False)]
    if any(move is None for move in told):
        return Key("", False, "The plan has not been solved, so there is no key.", "not settled")
    moves = [move for move in told if move is not None]
    right = _outcome(question, moves)
    why = _why_not(question, [side for side in sides if side is not None], moves, right)
    margin = moves[0].margin_ratio if question.asks in FIRST else 1.0
    difficulty = "not settled" if why else "plain" if margin >= EASY_RATIO else "close"
    return Key(right, not why, why, difficulty)


def _outcome(question: Question, moves: list[Told]) -> str:
    if question.asks == "more":
        return (SAME, question.plan, question.other)[more(question.measure, *moves)]
    return outcome(question.asks, moves[0])


def _why_not(question: Question, sides: list[PlanResult], moves: list[Told], right: str) -> str:
    """Return why a key may not be graded, "" when it may."""
    stale = next((side.why_stale for side in sides if not side.fresh), "")
    if stale:
        return stale
    if not all(move.settled for move in moves):
        return "Some steps of the run did not come to rest."
    if question.asks in FIRST and moves[0].margin_ratio < CLOSE_RATIO and moves[0].rival:
        return "Two parts were nearly as close to giving."
    if not all(side.kept is not None and side.kept.neighbours for side in sides):
        return "It has not been run beside its own place, so it is not known whether that decides."
    beside = _beside(question, sides)
    if not any(words in LATTICES for words, _ in beside):
        return "It has not been run on another lattice, so it is not known whether that decides."
    return next(filter(None, (_beside_says(question, moves, right, *one) for one in beside)), "")


def _beside_says(question: Question, moves: list[Told], right: str, words: str, others: list[Told]) -> str:
    """Return why a neighbouring run speaks against a key, "" when it does not."""
    if len(others) < len(moves):
        return f"With {words} the move could not be made."
    if question.asks not in FIRST and not _as_far(others, moves):
        return f"With {words} it was not run as far."
    if _outcome(question, others) != right:
        return f"With {words} it comes out otherwise."
    return ""


def _as_far(others: list[Told], moves: list[Told]) -> bool:
    """Tell whether runs went as far as those they stand beside, or to where the tool could go no further."""
    return all(
        other.opening_m >= 0.99 * move.opening_m
        or other.ended
        or "stalled" in other.metal
        or "tip off" in other.metal
        for other, move in zip(others, moves, strict=True)
    )


def _beside(question: Question, sides: list[PlanResult]) -> list[tuple[str, list[Told]]]:
    """Return the neighbouring runs, each with the move asked for, or none where it could not be made there.

    What only one of two plans was run beside stands against the other plan as it is.
    """
    kept = [side.kept for side in sides if side.kept is not None]
    found = []
    for words in dict.fromkeys(neighbour.words for one in kept for neighbour in one.neighbours):
        moves = []
        for one, number in zip(kept, _numbers(question), strict=False):
            run = next((n.moves for n in one.neighbours if n.words == words), one.moves)
            moves.append(_move(run, number))
        found.append((words, [move for move in moves if move is not None]))
    return found


def _numbers(question: Question) -> tuple[int, int]:
    """Return which move is meant of a question's plan, and of the plan it is compared with."""
    return question.move, question.other_move or question.move


def _move(moves: tuple[Told, ...], number: int) -> Told | None:
    if number:
        return moves[number - 1] if number <= len(moves) else None
    pushed = [move for move in moves if move.seats]
    return pushed[-1] if pushed else None
