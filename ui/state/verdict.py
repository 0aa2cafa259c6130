"""What the run says to a prediction: beside each answer what happened, and how near the other came.

Nothing is called right or wrong. A run that is not settled is told and never compared.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.outcome import limit
from sim.units import NO_BREAK, Units, force_text, length_text
from ui.state.questions import FIRST, FIRST_WORDS, IN, NOTHING, OUT, OWN, STALLED, STAYS, WAY, WHY, Question
from ui.state.wording import UNSETTLED, in_units, told

if TYPE_CHECKING:
    from sim.record import Frame, MoveRecord
    from ui.state.asking import Prediction

GIVING = frozenset(FIRST_WORDS) - {NOTHING, STALLED}
"""Kinds of event in which something gives."""
AS_SAID, OTHERWISE = "as foretold", "the metal went another way"


@dataclass(frozen=True)
class Verdict:
    """What came out of a run.

    settled : whether it can be compared: every step came to rest
    first : the keys of what gave first (several when they gave in the same step);  way : OUT, IN or STAYS
    first_m, first_n : opening and force when it gave, None when nothing did
    moved_m : of the skin's middle, outward above zero
    """

    settled: bool
    first: tuple[str, ...]
    way: str
    first_m: float | None
    first_n: float | None
    moved_m: float

    def holds(self, question: str, choice: str) -> bool | None:
        """Tell whether a choice came out; None where the run compares nothing: not settled, or a reason."""
        if not self.settled or question == WHY:
            return None
        return choice in self.first if question == FIRST else choice == self.way


def verdict(record: MoveRecord, before: Sequence[MoveRecord] = ()) -> Verdict:
    """Return what a move's record says; the moves before it must have settled as well."""
    result = record.result
    assert result is not None
    settled = all(_settled(item) for item in (*before, record))
    give = next((event for event in result.events if event.kind in GIVING), None)
    if give is not None:
        together = [e.kind for e in result.events if e.opening_m == give.opening_m and e.kind in GIVING]
        first = tuple(dict.fromkeys(together))
    else:
        stalled = any(event.kind == STALLED for event in result.events)
        first = (STALLED if stalled else NOTHING,)
        give = next((event for event in result.events if event.kind == STALLED), None)
    moved = record.frames[-1].skin_mid_outboard_m - record.frames[0].skin_mid_outboard_m
    way = STAYS if abs(moved) <= limit("moved_m") else OUT if moved > 0.0 else IN
    at, push = (give.opening_m, give.force_n) if give is not None else (None, None)
    return Verdict(settled, first, way, at, push, moved)


def _settled(record: MoveRecord) -> bool:
    result = record.result
    return result is not None and result.plan_effect != UNSETTLED and not result.solver.failed_count


@dataclass(frozen=True)
class Line:
    """One question at the comparison.

    asked, said, came : question, answer, outcome, in words;  word : how the two stand to each other
    hands : how many of how many said the same as the run;  empty when nobody was counted
    agrees : None where nothing is compared
    """

    asked: str
    said: str
    came: str
    word: str
    hands: str
    agrees: bool | None


@dataclass(frozen=True)
class Comparison:
    """Prediction beside outcome.

    lines : one a question;  sentence : what happened;  near : how near what was foretold came
    note : said where nothing can be compared
    """

    lines: tuple[Line, ...]
    sentence: str
    near: str
    note: str


NOT_COMPARED = (
    "Not settled: some steps did not come to rest, so this run says neither yes nor no to anybody's answer. "
    "It is not counted."
)


def compared(
    prediction: Prediction, questions: Sequence[Question], record: MoveRecord, units: Units
) -> Comparison:
    """Return a prediction beside what happened, in words."""
    found, result = prediction.verdict, record.result
    assert found is not None
    assert result is not None
    sentence = in_units(told(result.sentence, result.plan_effect), units)
    what, _, why = sentence.partition(". ")
    came = {FIRST: _first_words(found, units), WAY: _way_words(found, units), WHY: why or what}
    lines = []
    for question in questions:
        choice = prediction.chosen.get(question.key, "")
        own = question.key == WHY and choice == OWN
        said = f"\u201c{prediction.own_words.strip()}\u201d" if own else question.words_of(choice)
        agrees = found.holds(question.key, choice)
        word = {True: AS_SAID, False: OTHERWISE, None: ""}[agrees]
        if question.key == WHY:
            word = "read the two together"
        lines.append(
            Line(
                question.words,
                said,
                came[question.key],
                word,
                hands_words(question, prediction.hands, found),
                agrees,
            )
        )
    near = nearest_words(prediction.chosen.get(FIRST, ""), found, record) if found.settled else ""
    first = f"{what.rstrip('.')}."
    return Comparison(tuple(lines), first, near, "" if found.settled else NOT_COMPARED)


def hands_words(question: Question, hands: Mapping[tuple[str, str], int], found: Verdict) -> str:
    """Return how many of the hands counted went with the run; empty where nobody was counted."""
    counted = {c.key: hands.get((question.key, c.key), 0) for c in question.choices}
    total = sum(counted.values())
    if not question.counted or not total:
        return ""
    if not found.settled:
        return f"{total} hands counted, not compared"
    same = sum(n for key, n in counted.items() if found.holds(question.key, key))
    return f"{same} of {total} hands were for what happened"


def nearest_words(said: str, found: Verdict, record: MoveRecord) -> str:
    """Return how near the part that was foretold came before something else gave; empty where none was."""
    if said in found.first or said in (NOTHING, STALLED, ""):
        return ""
    before = [frame for frame in record.frames if found.first_m is None or frame.opening_m < found.first_m]
    best = _highest(before, said)
    if best is None:
        return ""
    part, share = best
    until = "in this push" if found.first_m is None else "before something else gave"
    return f"How near it was: {part} carried at most {min(share, 0.99):.0%} of what it can hold {until}."


def _highest(frames: Sequence[Frame], event: str) -> tuple[str, float] | None:
    rungs = [rung for frame in frames for rung in frame.ladder if rung.event == event]
    if not rungs:
        return None
    best = max(rungs, key=lambda rung: rung.demand_ratio)
    part = best.part if best.part.startswith("the ") else f"the {best.part}"
    return part, best.demand_ratio


def _first_words(found: Verdict, units: Units) -> str:
    words = " and ".join(FIRST_WORDS[key][0].lower() + FIRST_WORDS[key][1:] for key in found.first)
    words = words[0].upper() + words[1:]
    if found.first_m is None or found.first_n is None:
        return words
    return f"{words}, at {length_text(found.first_m, units)} and {force_text(found.first_n, units)}"


def _way_words(found: Verdict, units: Units) -> str:
    far = length_text(abs(found.moved_m), units)
    if found.way == STAYS:
        return f"It stayed within{NO_BREAK}{far}"
    return f"It went {far} {'outward' if found.way == OUT else 'inward'}"
