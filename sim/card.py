"""The model card: what is modelled and what is not, every number with its source, where it is known to fail.

The words are the program's data (assets/card); the numbers' values are read from the program itself, so that
the card cannot say another value than the one that is used.
"""

from __future__ import annotations

import html
import importlib
import math
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib import resources
from typing import Any

from sim import card_many
from sim.checks import report, sources
from sim.checks.row import Row

PLAIN = ("assumed", "estimate", "from memory", "textbook", "common practice", "numerical")
"""How the source of a number begins when it is no published work."""

Families = Sequence[tuple[str, Sequence[Row]]]


@dataclass(frozen=True)
class Number:
    """One number of the model.

    place : where it stands, "module:name" or "module:Name.field";  value : as written, with its unit
    """

    group: str
    name: str
    value: str
    source: str
    place: str

    @property
    def cited(self) -> tuple[str, ...]:
        """Keys of the published sources it names."""
        words = self.source.replace(";", " ").replace(",", " ").replace(":", " ").split()
        return tuple(word for word in words if word in sources.all_sources())


@dataclass(frozen=True)
class Spacing:
    """What a push comes to on a coarse, the usual and a fine lattice, and whether that settles it."""

    push: str
    what: str
    coarse: str
    usual: str
    fine: str
    verdict: str


@dataclass(frozen=True)
class Card:
    """The whole card."""

    title: str
    lead: str
    modelled: tuple[str, ...]
    left_out: tuple[str, ...]
    failures: tuple[str, ...]
    spacing: tuple[Spacing, ...]
    numbers: tuple[Number, ...]


def value_at(place: str) -> Any:
    """Return what stands at "module:name" or "module:Name.field": a default, an entry of a table, its field.

    Raises
    ------
    LookupError
        When nothing stands there.
    """
    module, _, path = place.partition(":")
    name, _, field = path.partition(".")
    try:
        found = getattr(importlib.import_module(module), name)
        if isinstance(found, Mapping) and field:
            key, _, field = field.partition(".")
            found = found[key]
            found = found[0] if isinstance(found, tuple) else found
        if not field:
            return found
        return getattr(found() if isinstance(found, type) else found, field)
    except (ImportError, AttributeError, KeyError) as error:
        raise LookupError(f"{place}: nothing stands there") from error


GONE = "\u2014 no longer in the program"
"""What the card says of a number that has moved without its line; a test sees to it that there is none."""


def _shown(place: str, unit: str, factor: float) -> str:
    try:
        return written(value_at(place), unit, factor)
    except LookupError:
        return GONE


def written(value: float | Sequence[float], unit: str, factor: float) -> str:
    """Return a number, or a list of numbers, with its unit."""
    many = value if isinstance(value, Sequence) else (value,)
    if any(math.isinf(one) for one in many):
        return "no limit"
    words = ", ".join(f"{factor * one:.4g}" for one in many)
    return f"{words} {unit}".strip()


def _data(name: str) -> dict[str, Any]:
    text = resources.files("assets").joinpath("card", f"{name}.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)


@cache
def load() -> Card:
    """Return the card as the program stands now."""
    words = _data("words")
    numbers = tuple(
        Number(group["name"], name, _shown(place, unit, factor), source, place)
        for group in _data("numbers")["group"]
        for place, name, unit, factor, source in group["numbers"]
    )
    lists = {name: tuple(words[name]) for name in ("modelled", "left_out", "failures")}
    spacing = tuple(Spacing(**line) for line in words["spacing"])
    return Card(title=words["title"], lead=words["lead"], spacing=spacing, numbers=numbers, **lists)


CHAPTERS = (
    "What is modelled",
    "What is not",
    "Known failures",
    "Where the lattice decides",
    "Every number",
    "Checks",
    "What is varied in many runs",
    "What scenarios came to",
)
NUMBER_HEADS = ("number", "value", "source")
SPACING_HEADS = ("push", "what", "60 mm", "45 mm", "30 mm", "verdict")


def spacing_cells(line: Spacing) -> tuple[str, ...]:
    """Return a line's cells in the order of `SPACING_HEADS`."""
    return line.push, line.what, line.coarse, line.usual, line.fine, line.verdict


def source_words(number: Number) -> str:
    """Return a number's source with keys in a reader's words."""
    words = number.source
    for key in number.cited:
        words = words.replace(key, sources.short(key))
    return words


def cited_sources(card: Card, families: Families) -> tuple[str, ...]:
    """Return the keys of all published works the card names, in the order they are met."""
    keys = [key for number in card.numbers for key in number.cited]
    keys += [row.authority for _, rows in families for row in rows if row.authority not in sources.PLAIN]
    return tuple(dict.fromkeys(keys))


# --- as a file


def _table(heads: Sequence[str], lines: Sequence[Sequence[str]]) -> str:
    def row(cells: Sequence[str]) -> str:
        return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"

    return "\n".join([row(heads), row(["---"] * len(heads)), *(row(line) for line in lines)])


def markdown(card: Card, families: Families, version: str) -> str:
    """Return the card as Markdown; ``families`` are the checked rows, none for a card without them."""
    out = [f"# {card.title}", card.lead, version]
    for heading, items in zip(CHAPTERS, (card.modelled, card.left_out, card.failures), strict=False):
        out += [f"## {heading}", "\n".join(f"* {item}" for item in items)]
    out += [f"## {CHAPTERS[3]}", _table(SPACING_HEADS, [spacing_cells(line) for line in card.spacing])]
    out += [f"## {CHAPTERS[4]}"]
    for group in dict.fromkeys(number.group for number in card.numbers):
        lines = [(n.name, n.value, source_words(n)) for n in card.numbers if n.group == group]
        out += [f"### {group}", _table(NUMBER_HEADS, lines)]
    rows = [row for _, members in families for row in members]
    if rows:
        out += [f"## {CHAPTERS[5]}", report.summary(rows)]
        for family, members in families:
            out += [
                f"### {family[0].upper()}{family[1:]}",
                _table(report.HEADINGS, [report.cells(r) for r in members]),
            ]
    out += [f"## {CHAPTERS[6]}", _table(card_many.VARIED_HEADS, card_many.varied_lines())]
    out += [f"## {CHAPTERS[7]}", _table(card_many.CAME_HEADS, card_many.came_lines())]
    keys = cited_sources(card, families)
    out += ["## Sources", "\n".join(f"* {sources.short(key)}: {sources.full(key)}" for key in keys)]
    return "\n\n".join(out) + "\n"


_STYLE = """
body { font: 18px/1.45 system-ui, sans-serif; color: #17191c }
body { max-width: 1200px; margin: 2em auto; padding: 0 1em }
table { border-collapse: collapse; width: 100%; margin: .5em 0 1.5em }
td, th { border-bottom: 1px solid #d3d5d6; text-align: left; padding: .3em .6em; vertical-align: top }
th { font-weight: 600 }
h1 { font-size: 1.9em }
h2 { margin-top: 2em }
"""


def page(card: Card, families: Families, version: str) -> str:
    """Return the card as a page of HTML that stands alone."""
    body = [_as_html(part) for part in markdown(card, families, version).split("\n\n")]
    head = f'<meta charset="utf-8"><title>{html.escape(card.title)}</title><style>{_STYLE}</style>'
    return (
        f'<!doctype html>\n<html lang="en"><head>{head}</head><body>\n'
        + "\n".join(body)
        + "\n</body></html>\n"
    )


def _as_html(part: str) -> str:
    """Return one block of the card's own Markdown as HTML."""
    text = html.escape(part.strip(), quote=False)
    if text.startswith("#"):
        level = len(text) - len(text.lstrip("#"))
        return f"<h{level}>{text.lstrip('# ')}</h{level}>"
    if text.startswith("* "):
        return "<ul>" + "".join(f"<li>{line[2:]}</li>" for line in text.split("\n")) + "</ul>"
    if text.startswith("|"):
        return _html_table(text.split("\n"))
    return f"<p>{text}</p>"


def _html_table(lines: Sequence[str]) -> str:
    def cells(line: str, tag: str) -> str:
        parts = line[2:-2].split(" | ")
        return (
            "<tr>" + "".join(f"<{tag}>{part.replace(chr(92) + '|', '|')}</{tag}>" for part in parts) + "</tr>"
        )

    return "<table>" + cells(lines[0], "th") + "".join(cells(line, "td") for line in lines[2:]) + "</table>"
