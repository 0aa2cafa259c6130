"""What runs say to what a scenario asks: each ask read from every run, counted, and put in a word.

Nothing here is gated: an ask whose share is small is told like one whose share is large.  A run that could
not be made, or in which an increment did not converge, answers nothing and is counted as unsure.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import msgspec
import numpy as np

from sim.asks import (
    DROPS,
    Alike,
    Apart,
    Ask,
    Figure,
    Happens,
    OfOne,
    Order,
    Reading,
    Seat,
    Together,
    Told,
    Versus,
)
from sim.likely import likelihood
from sim.many import MANY_GIVES, NOTHING_GAVE, force_drops
from sim.problems import PlanError
from sim.record import Event
from sim.traces import MoveTrace, RunTrace

Runs = Mapping[str, Sequence[RunTrace]]
WORK = "work of the tips"
SAME_M = 1.0e-9


class Answer(msgspec.Struct, frozen=True):
    """What runs say to one ask.

    count, unsure, total : runs in which it is so, that answer nothing, and all
    low, high : interval of the true share (`sim.likely`), or of two shares' difference;  word : of the share
    middle, least, most : of a figure that is told, or the difference of two shares; None where there is none
    """

    words: str
    ask: str
    name: str = ""
    of: str = ""
    count: int = 0
    unsure: int = 0
    total: int = 0
    low: float = 0.0
    high: float = 1.0
    word: str = ""
    middle: float | None = None
    least: float | None = None
    most: float | None = None


# one run --------------------------------------------------------------------------------------------------


def chosen(trace: RunTrace, numbers: Sequence[int]) -> tuple[MoveTrace, ...] | None:
    """Return the moves that are read, None where the run failed or had not converged by then."""
    last = max(numbers, default=len(trace.moves))
    if not trace.moves or last > len(trace.moves) or any(m.failed_count for m in trace.moves[:last]):
        return None
    return tuple(trace.moves[k - 1] for k in numbers) or trace.moves


def happened(moves: Sequence[MoveTrace], ask: Happens) -> bool:
    """Tell whether one of some kinds of event happened."""
    events = (event for move in moves for event in move.events)
    return any(event.kind in ask.event and ask.part in event.part for event in events)


def in_order(moves: Sequence[MoveTrace], ask: Order) -> bool:
    """Tell whether an event happened with none of some others before it."""
    for event in (event for move in moves for event in move.events):
        if event.kind in ask.event:
            return True
        if event.kind in ask.before:
            return False
    return False


def gives_first(moves: Sequence[MoveTrace]) -> str:
    """Return the kind of the first event in which a part gives, over all moves."""
    kinds = (event.kind for move in moves for event in move.events)
    return next((kind for kind in kinds if kind in MANY_GIVES), NOTHING_GAVE)


def read(moves: Sequence[MoveTrace], ask: Reading) -> float | None:
    """Return a figure of a run, None where the moves have none."""
    if ask.lines:
        work = sum(move.ledger_j.get(WORK, 0.0) for move in moves)
        spent = sum(move.ledger_j.get(line, 0.0) for move in moves for line in ask.lines)
        return spent / work if work > 0.0 else None
    parts = [_figure(moves, name, ask) for name in ask.figure]
    return (
        None
        if any(part is None for part in parts)
        else float(sum(part for part in parts if part is not None))
    )


def _figure(moves: Sequence[MoveTrace], name: str, ask: Reading) -> float | None:
    if name == DROPS:
        return sum(force_drops(move.curves["force_n"]) for move in moves)
    if name.startswith("cut_"):
        found = [move.cut[name.removeprefix("cut_")] for move in moves if move.cut]
        return sum(found) if found else None
    if ask.at_event:
        return _at_event(moves, name, ask.at_event)
    curve = _curve(moves, name, ask.until_ratio)
    if not len(curve):
        return None
    start, end = float(curve[0]), float(curve[-1])
    told = {
        "end": end,
        "start": start,
        "most": float(curve.max()),
        "least": float(curve.min()),
        "rise": end - start,
        "dip": start - float(curve.min()),
    }
    return told[ask.at]


def _curve(moves: Sequence[MoveTrace], name: str, until_ratio: float) -> np.ndarray:
    """Return one figure over all frames of some moves up to a share of the way."""
    values, ways, way = [], [], 0.0
    for move in moves:
        own = move.curves.get(name)
        if own is None:
            continue
        openings = np.abs(np.asarray(move.curves["opening_m"]))
        values.append(np.asarray(own))
        ways.append(way + openings)
        way += float(openings.max(initial=0.0))
    if not values:
        return np.zeros(0)
    whole: np.ndarray = np.concatenate(values)
    return whole[np.concatenate(ways) <= until_ratio * way + SAME_M]


def _at_event(moves: Sequence[MoveTrace], name: str, kinds: Sequence[str]) -> float | None:
    for move in moves:
        event = next((event for event in move.events if event.kind in kinds), None)
        if event is None:
            continue
        own = move.curves.get(name)
        return None if own is None else own[_frame_at(move, event)]
    return None


def _frame_at(move: MoveTrace, event: Event) -> int:
    """Return the first frame that has come as far as an event."""
    openings = move.curves["opening_m"]
    far = 1.0e-5 * max(openings) + SAME_M  # curves are rounded
    return next((k for k, at in enumerate(openings) if at >= event.opening_m - far), len(openings) - 1)


# all runs -------------------------------------------------------------------------------------------------


def _so(ask: Ask, runs: Runs, index: int, before: Mapping[str, Sequence[bool | None]]) -> bool | None:
    """Return whether what is asked is so in one draw, None where it cannot be said."""
    if isinstance(ask, Together):
        answers = [before[name][index] for name in ask.these]
        return False if False in answers else None if None in answers else True
    if isinstance(ask, Alike):
        both = [chosen(runs[name][index], ()) for name in (ask.of, ask.against)]
        return None if None in both else gives_first(both[0] or ()) == gives_first(both[1] or ())
    assert isinstance(ask, OfOne)
    moves = chosen(runs[ask.of][index], ask.moves)
    if moves is None:
        return None
    if isinstance(ask, Happens):
        return happened(moves, ask)
    if isinstance(ask, Order):
        return in_order(moves, ask)
    if isinstance(ask, Seat):
        return any(ask.on in seat for move in moves for seat in move.seats)
    assert isinstance(ask, Figure | Versus)
    value = read(moves, ask)
    if isinstance(ask, Figure):
        return _within(value, ask)
    other = chosen(runs[ask.against][index], ask.moves)
    against = None if other is None else read(other, ask)
    return None if value is None or against is None else value > ask.times * against + ask.plus


def _within(value: float | None, ask: Figure) -> bool | None:
    if value is None:
        return False if ask.at_event else None
    return (ask.above is None or value > ask.above) and (ask.below is None or value < ask.below)


def _told(ask: Told, runs: Sequence[RunTrace]) -> Answer:
    moves = [chosen(run, ask.moves) for run in runs]
    found = [None if one is None else read(one, ask) for one in moves]
    values = [value for value in found if value is not None]
    if not values:
        return Answer(ask.words, "told", ask.name, ask.of, 0, len(runs), len(runs))
    return Answer(
        ask.words,
        "told",
        ask.name,
        ask.of,
        len(values),
        len(runs) - len(values),
        len(runs),
        middle=float(np.median(values)),
        least=min(values),
        most=max(values),
    )


def _apart(ask: Apart, one: Answer, other: Answer) -> Answer:
    """Return the difference of two shares; its interval takes both at their worst, so it is too wide."""
    difference = one.count / one.total - other.count / other.total
    low, high = one.low - other.high, one.high - other.low
    return Answer(
        ask.words, "apart", ask.name, total=one.total, low=low, high=high, word="", middle=difference
    )


def answer(asks: Sequence[Ask], runs: Runs) -> tuple[Answer, ...]:
    """Return what runs say to some asks, in their order.

    Parameters
    ----------
    runs : of each plan by name, equally many, in the order they were drawn

    Raises
    ------
    PlanError
        When a plan has no runs, or two have not equally many.
    """
    counts = {len(of_one) for of_one in runs.values()}
    if len(counts) != 1 or 0 in counts:
        raise PlanError("runs", f"are {sorted(counts)} of the plans; make equally many of each")
    total = counts.pop()
    per_run: dict[str, list[bool | None]] = {}
    named: dict[str, Answer] = {}
    out = []
    for ask in asks:
        if isinstance(ask, Told):
            found = _told(ask, runs[ask.of])
        elif isinstance(ask, Apart):
            found = _apart(ask, named[ask.one], named[ask.other])
        else:
            so = [_so(ask, runs, index, per_run) for index in range(total)]
            count, unsure = sum(one is True for one in so), sum(one is None for one in so)
            likely = likelihood(ask.words, count, total, unsure)
            kind, of = str(ask.__struct_config__.tag), getattr(ask, "of", "")
            found = Answer(
                ask.words, kind, ask.name, of, count, unsure, total, likely.low, likely.high, likely.word
            )
            per_run[ask.name] = so
        named[ask.name] = found
        out.append(found)
    return tuple(out)
