"""Checked rows in words: an aligned table for reading, plain values for a file."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sim.checks import sources
from sim.checks.catalogue import bad
from sim.checks.row import Row

HEADINGS = ("claim", "authority", "lattice", "expected", "got", "unit", "error", "verdict")
PRINTED = ("verdict", "got", "expected", "unit", "error", "claim", "lattice", "authority")
"""The printed table's columns: short ones first, so that a narrow terminal breaks no figure."""
_SIGN = {"at least": "\u2265 ", "at most": "\u2264 ", "more than": "> ", "less than": "< "}
_RIGHT = {"expected", "got", "error"}


def number(value: float | str) -> str:
    """Return a figure with five digits; words as they are."""
    if isinstance(value, str):
        return value
    return "0" if abs(value) < 1.0e-12 else f"{value:.5g}"


def error_words(row: Row) -> str:
    """Return a row's deviation: in percent, or in the figure's unit where that is how it is allowed."""
    if row.error is None:
        return ""
    if row.relation == "within" or row.expected == 0.0:
        return f"{row.error:+.2g}"
    return f"{100.0 * row.error:+.2g} %"


def verdict(row: Row) -> str:
    """Return "pass", "FAIL", or "FAIL, known" for a miss that the model card lists."""
    if row.passed:
        return "pass" if not row.known else "pass, was known to fail"
    return "FAIL, known" if row.known else "FAIL"


def cells(row: Row) -> tuple[str, ...]:
    """Return a row's cells in the order of `HEADINGS`."""
    expected = _SIGN.get(row.relation, "") + number(row.expected)
    return (
        row.claim,
        sources.short(row.authority),
        row.spacing,
        expected,
        number(row.got),
        row.unit,
        error_words(row),
        verdict(row),
    )


def table(families: Sequence[tuple[str, Sequence[Row]]]) -> str:
    """Return rows under their families' headings, each family aligned; what is read first stands left."""
    return "\n\n".join(f"{family.upper()}\n{_aligned(rows)}" for family, rows in families)


def _aligned(rows: Sequence[Row]) -> str:
    """Return some rows and their headings in columns as wide as they need."""
    order = [HEADINGS.index(heading) for heading in PRINTED]
    lines = [PRINTED, *([cells(row)[at] for at in order] for row in rows)]
    widths = [max(len(line[i]) for line in lines) for i in range(len(PRINTED))]
    return "\n".join(
        "  ".join(
            word.rjust(width) if heading in _RIGHT else word.ljust(width)
            for word, width, heading in zip(line, widths, PRINTED, strict=True)
        ).rstrip()
        for line in lines
    )


def cited(rows: Sequence[Row]) -> str:
    """Return the authorities of some rows in full, one a line, first cited first."""
    keys = [key for key in dict.fromkeys(row.authority for row in rows) if key not in sources.PLAIN]
    return "\n".join(f"  {sources.short(key)}: {sources.full(key)}" for key in keys)


def summary(rows: Sequence[Row]) -> str:
    """Return how many rows hold, how many miss as is known, and how many are news, with their time."""
    news, known = sum(bad(row) for row in rows), sum(bool(row.known) and not row.passed for row in rows)
    seconds = sum(row.seconds for row in rows)
    words = f"{sum(row.passed for row in rows)} of {len(rows)} rows hold"
    if known:
        words += f", {known} known to miss"
    return f"{words}, {news or 'none'} unexpected; {seconds:.0f} s."


def misses(rows: Sequence[Row]) -> str:
    """Return the rows that are news, and those known to miss under the reason why, one a line."""
    groups: dict[str, list[str]] = {}
    for row in sorted(rows, key=bad, reverse=True):
        if bad(row):
            why = "Unexpected"
        elif row.known:
            why = f"Known to miss: {row.known}"
        else:
            continue
        told = f": {verdict(row)}" if bad(row) else ""
        groups.setdefault(why, []).append(f"    {row.claim}, {row.spacing}{told}")
    return "\n".join(f"  {why}\n" + "\n".join(told) for why, told in groups.items())


def plain(families: Sequence[tuple[str, Sequence[Row]]]) -> list[dict[str, Any]]:
    """Return rows as plain values for a file, authorities in full."""
    return [
        {
            "family": family,
            "claim": row.claim,
            "authority": row.authority,
            "source": sources.full(row.authority),
            "relation": row.relation,
            "expected": row.expected,
            "got": row.got,
            "unit": row.unit,
            "tolerance": row.tolerance,
            "error": row.error,
            "passed": row.passed,
            "known": row.known,
            "spacing": row.spacing,
            "seconds": round(row.seconds, 3),
        }
        for family, rows in families
        for row in rows
    ]
