"""What a scenario asks of its runs, as frozen values: each ask reads events and figures and decides nothing.

An ask is a table in a scenario's file with its kind under ``ask``:

* ``happens`` : one of some kinds of event happened;
* ``order`` : one of some kinds happened, and none of some others before it;
* ``seat`` : the tips or ends stood on something, by a piece of its words;
* ``figure`` : a figure lies above or below a number;
* ``versus`` : a figure of one plan is more than so many times another plan's, in the same draw;
* ``alike`` : what gives first is the same in two plans, in the same draw;
* ``together`` : several other asks, by their names, are so in the same run;
* ``apart`` : by how much the shares of two other asks differ;
* ``told`` : a figure as it is, with no number to hold it against.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import msgspec

from sim.event_kinds import KINDS
from sim.ledger import SPENT
from sim.problems import PlanError
from sim.traces import BODY_PARTS, CURVES, clearance_curve

DROPS = "force_drops_n"
"""What the force loses in jerks, by the move (`sim.many.force_drops`) [N]."""
CUT_FIGURES = ("cut_left_m", "cut_room_m", "cut_cut_m", "cut_open")
FIGURES = frozenset((*CURVES, *(clearance_curve(part) for part in BODY_PARTS), DROPS, *CUT_FIGURES))
"""Names of figures that can be asked for."""

At = Literal["end", "start", "most", "least", "rise", "dip"]


class Asking(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True, tag_field="ask"):
    """What every ask has: its sentence, and a name by which other asks can call it."""

    words: str
    name: str = ""


class OfOne(Asking, frozen=True, kw_only=True):
    """An ask of one plan.

    of : the plan's name in the scenario;  moves : which of its moves are read, from 1; all when left out
    """

    of: str
    moves: tuple[int, ...] = ()


class Happens(OfOne, frozen=True, kw_only=True, tag="happens"):
    """One of some kinds of event happened; ``part`` is a piece of the part's name."""

    event: tuple[str, ...]
    part: str = ""


class Order(OfOne, frozen=True, kw_only=True, tag="order"):
    """One of some kinds of event happened, and none of the kinds in ``before`` had happened by then."""

    event: tuple[str, ...]
    before: tuple[str, ...]


class Seat(OfOne, frozen=True, kw_only=True, tag="seat"):
    """A tip or an end stood on something whose words hold a piece of text."""

    on: str


class Reading(OfOne, frozen=True, kw_only=True):
    """A figure read from a run.

    figure : names of `FIGURES`; several are added up
    lines : lines of the books instead: their share of the work put in
    at : where along the moves: "end", "start", "most", "least", "rise" (end less start), "dip" (start less
        least); cuts' figures and `DROPS` are one number a move, and are added up
    at_event : at the first of these kinds of event instead; a run without one has no figure
    until_ratio : only this part of the way, from its beginning
    """

    figure: tuple[str, ...] = ()
    lines: tuple[str, ...] = ()
    at: At = "end"
    at_event: tuple[str, ...] = ()
    until_ratio: float = 1.0


class Figure(Reading, frozen=True, kw_only=True, tag="figure"):
    """A figure lies above, below or between; without a figure (``at_event`` never came) it is not so."""

    above: float | None = None
    below: float | None = None


class Versus(Reading, frozen=True, kw_only=True, tag="versus"):
    """A figure is more than ``times`` another plan's and ``plus`` in the same draw."""

    against: str
    times: float = 1.0
    plus: float = 0.0


class Alike(Asking, frozen=True, kw_only=True, tag="alike"):
    """What gives first is the same in two plans, in the same draw."""

    of: str
    against: str


class Together(Asking, frozen=True, kw_only=True, tag="together"):
    """Other asks, by name, are all so in the same run."""

    these: tuple[str, ...]


class Apart(Asking, frozen=True, kw_only=True, tag="apart"):
    """The share of one ask less the share of another."""

    one: str
    other: str


class Told(Reading, frozen=True, kw_only=True, tag="told"):
    """A figure as it came out: its middle, and the range of all runs."""


Ask = Happens | Order | Seat | Figure | Versus | Alike | Together | Apart | Told


def check_asks(asks: Sequence[Ask], plans: Sequence[str]) -> None:
    """Say the first thing that is wrong with some asks, if any.

    Raises
    ------
    PlanError
        Naming the field, its value and the remedy.
    """
    known: list[str] = []
    for index, ask in enumerate(asks):
        try:
            _check(ask, plans, known)
        except PlanError as error:
            raise error.inside(f"asks[{index}]") from error
        if ask.name:
            known.append(ask.name)


def _check(ask: Ask, plans: Sequence[str], known: Sequence[str]) -> None:
    if not ask.words.strip():
        raise PlanError("words", "is empty; say what is asked in a sentence")
    if ask.name in known:
        raise PlanError("name", f"is {ask.name!r}, which another ask has; use a name of its own")
    for field in ("of", "against"):
        _one_of(field, getattr(ask, field, None), plans, "a name under plans")
    for field in ("event", "before", "at_event"):
        for kind in getattr(ask, field, ()):
            _one_of(field, kind, KINDS, "a kind of event")
    if isinstance(ask, Happens | Order) and not ask.event:
        raise PlanError("event", "is empty; name one kind of event or more")
    if isinstance(ask, Together):
        for name in ask.these:
            _one_of("these", name, known, "the name of an ask above it")
    if isinstance(ask, Apart):
        _one_of("one", ask.one, known, "the name of an ask above it")
        _one_of("other", ask.other, known, "the name of an ask above it")
    if isinstance(ask, OfOne) and any(number < 1 for number in ask.moves):
        raise PlanError("moves", f"is {list(ask.moves)}; moves count from 1")
    if isinstance(ask, Reading):
        _check_reading(ask)


def _check_reading(ask: Reading) -> None:
    if bool(ask.figure) == bool(ask.lines):
        raise PlanError("figure", "and lines: give one of the two")
    for name in ask.figure:
        _one_of("figure", name, sorted(FIGURES), "a figure of a run")
    for line in ask.lines:
        _one_of("lines", line, SPENT, "a line of the books")
    if not 0.0 < ask.until_ratio <= 1.0:
        raise PlanError("until_ratio", f"is {ask.until_ratio}; use above 0 to 1")
    if isinstance(ask, Figure) and ask.above is None and ask.below is None:
        raise PlanError("above", "and below are both left out; give one, or use ask = 'told'")


def _one_of(field: str, value: str | None, known: Sequence[str], what: str) -> None:
    if value is not None and value not in known:
        raise PlanError(field, f"is {value!r}, not {what}; use one of: {', '.join(known) or '(none yet)'}")
