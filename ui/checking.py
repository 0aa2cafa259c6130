"""The command that checks the computation: rows one after another, progress aside, the table at the end."""

from __future__ import annotations

import json
import sys
from pathlib import Path

from sim import card
from sim.checks import report
from sim.checks.catalogue import bad, chosen
from sim.checks.row import Row
from sim.textfiles import write_whole
from ui.progress_line import ProgressLine

PAGES = (".html", ".htm")
ENDINGS = (*PAGES, ".md")


def compute(*, full: bool) -> list[tuple[str, list[Row]]]:
    """Return the rows by family; says on the error stream how far it is."""
    checks = chosen(full=full)
    families: dict[str, list[Row]] = {}
    line = ProgressLine()
    for index, check in enumerate(checks):
        families.setdefault(check.family, []).append(check.run())
        tenth = 10 * (index + 1) // len(checks)
        if line.live or tenth > 10 * index // len(checks):
            line.write(f"{index + 1} of {len(checks)} checks, {check.family}")
    line.end()
    return list(families.items())


def write_card(file: Path, *, full: bool, version: str) -> int:
    """Write the model card with its checks, as HTML or Markdown by its ending; return 0 or 1 as `check`.

    Raises
    ------
    OSError
        When the file cannot be written.
    """
    families = compute(full=full)
    make = card.page if file.suffix.lower() in PAGES else card.markdown
    write_whole(file, make(card.load(), families, version))
    rows = [row for _, members in families for row in members]
    sys.stdout.write(f"{report.summary(rows)}\n{file}\n")
    return int(any(bad(row) for row in rows))


def check(*, full: bool, file: Path | None) -> int:
    """Return 0 when every row holds or is known to miss, 1 when one does not; prints the table.

    Raises
    ------
    OSError
        When the file cannot be written; the table has been printed by then.
    """
    families = compute(full=full)
    rows = [row for _, members in families for row in members]
    sys.stdout.write(f"{report.table(families)}\n\nSources\n{report.cited(rows)}\n\n{report.summary(rows)}\n")
    if told := report.misses(rows):
        sys.stdout.write(f"{told}\n")
    if file is not None:
        write_whole(file, json.dumps(report.plain(families), indent=1) + "\n")
    return int(any(bad(row) for row in rows))
