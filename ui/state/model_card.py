"""What the model card shows: its chapters as tables, narrowed by words, and the checks as they come in."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from sim import card, card_many
from sim.checks import report, sources
from sim.checks.row import Row
from ui.state.drill_log import Drill, rate_words
from ui.state.signal import Signal
from ui.state.tongue import own, tr

CHAPTERS = (
    "Modelled",
    "Left out",
    "Failures",
    "Lattice",
    "Numbers",
    "Checks",
    "Drills",
    "Varied",
    "Scenarios",
)
"""The card's chapters in a word each."""
NUMBERS, CHECKS, DRILLS, VARIED, SCENARIOS = 4, 5, 6, 7, 8
UNCHECKED = "Nothing has been checked since the program was started."


@dataclass(frozen=True)
class Page:
    """One chapter as a table.

    heads : of the columns;  lines : cells as words;  wide : the column that takes the room left over
    marked : lines to be told from the others: rows that fail
    """

    heads: tuple[str, ...]
    lines: tuple[tuple[str, ...], ...]
    wide: int = 0
    marked: frozenset[int] = frozenset()


def narrowed(lines: Sequence[tuple[str, ...]], words: str) -> list[int]:
    """Return the places of the lines that hold every word, wherever it stands, upper or lower case."""
    wanted = words.lower().split()
    return [k for k, line in enumerate(lines) if all(word in " ".join(line).lower() for word in wanted)]


class ModelCard:
    """The card and its checks.

    Parameters
    ----------
    drills : what the model said and the metal did, as the service wrote it down

    Attributes
    ----------
    changed : emitted when something to be seen is another
    """

    def __init__(self, drills: Sequence[Drill] = ()) -> None:
        self.changed: Signal[[]] = Signal()
        self.drills = tuple(drills)
        self.card = card.load()
        self.chapter = 0
        self.words = ""
        self.running = False
        self.total = 0
        self.said = UNCHECKED
        self._rows: list[tuple[str, Row]] = []

    @property
    def rows(self) -> tuple[tuple[str, Row], ...]:
        """The rows so far, each with its family."""
        return tuple(self._rows)

    def show(self, chapter: int) -> None:
        """Turn to a chapter."""
        self.chapter = chapter
        self.changed.emit()

    def search(self, words: str) -> None:
        """Show only lines that hold these words."""
        self.words = words
        self.changed.emit()

    def begin(self, total: int) -> None:
        """Begin to check anew."""
        self._rows.clear()
        self.running, self.total = True, total
        self.said = "Starting the checks \u2026"
        self.chapter = CHECKS
        self.changed.emit()

    def take(self, family: str, row: Row) -> None:
        """Take one checked row."""
        self._rows.append((family, row))
        self.said = f"{len(self._rows)} of {self.total} checks"
        self.changed.emit()

    def end(self, trouble: str = "") -> None:
        """End the checks, all done, stopped or in trouble."""
        self.running = False
        rows = [row for _, row in self._rows]
        self.said = report.summary(rows) if rows else UNCHECKED
        if trouble:
            self.said = trouble
        elif len(rows) < self.total:
            self.said = f"Stopped: {self.said}"
        self.changed.emit()

    @property
    def rate(self) -> str:
        """How often model and metal agreed in the service's own drills, in a sentence."""
        return rate_words(self.drills)

    def page(self) -> Page:
        """Return the chapter now shown, narrowed by the words now sought."""
        whole = self._whole()
        said = tuple(tuple(tr(cell) for cell in line) for line in whole.lines)
        kept = narrowed([(*a, *b) for a, b in zip(whole.lines, said, strict=True)], self.words)
        marked = frozenset(k for k, place in enumerate(kept) if place in whole.marked)
        return Page(whole.heads, tuple(tuple(map(own, said[k])) for k in kept), whole.wide, marked)

    def _whole(self) -> Page:
        lists = (self.card.modelled, self.card.left_out, self.card.failures)
        if self.chapter < len(lists):
            heading = card.CHAPTERS[self.chapter]
            return Page((heading,), tuple((item,) for item in lists[self.chapter]))
        if self.chapter == NUMBERS:
            numbers = self.card.numbers
            told = tuple((n.name, n.value, _source(n), n.group) for n in numbers)
            return Page((*card.NUMBER_HEADS, "belongs to"), told, 2)
        if self.chapter == CHECKS:
            rows = [row for _, row in self._rows]
            if not self.running:  # what fails is what a reviewer asks for first
                rows.sort(key=lambda row: (row.passed, bool(row.known)))
            lines = tuple(check_cells(row) for row in rows)
            marked = frozenset(k for k, row in enumerate(rows) if not row.passed)
            return Page(
                ("claim", "who says so", "lattice", "expected", "got", "error", "verdict"), lines, 0, marked
            )
        if self.chapter == DRILLS:
            log = tuple((d.date, d.plan, d.model_said, d.metal_did, d.note) for d in reversed(self.drills))
            return Page(("date", "plan", "model said", "metal did", "note"), log, 4)
        if self.chapter == VARIED:
            return Page(card_many.VARIED_HEADS, card_many.varied_lines(), 3)
        if self.chapter == SCENARIOS:
            return Page(card_many.CAME_HEADS, card_many.came_lines(), 1)
        return Page(card.SPACING_HEADS, tuple(card.spacing_cells(line) for line in self.card.spacing), 5)


def check_cells(row: Row) -> tuple[str, ...]:
    """Return a checked row's cells, its unit with what was got."""
    claim, authority, lattice, expected, got, unit, error, verdict = report.cells(row)
    return claim, authority, lattice, expected, f"{tr(got)} {tr(unit)}".strip(), error, verdict


def _source(number: card.Number) -> str:
    """Return a number's source with keys in a reader's words, in the language spoken."""
    words = tr(number.source)
    for key in number.cited:
        words = words.replace(key, tr(sources.short(key)))
    return words
