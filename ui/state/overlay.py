"""A service's own rules, words and hazards, laid over the program's: with author and date, never overwritten.

One TOML file in the user's own folder.  Local procedure comes first, so what stands here is shown beside
the lesson and on its sheets, always with who wrote it and when.  What replaces it keeps the old file.
"""

from __future__ import annotations

import datetime
import hashlib
from pathlib import Path
from typing import Any

import msgspec
import tomlkit

from sim.problems import PlanError
from sim.textfiles import write_whole
from sim.typed import converted, parsed
from ui.state.tongue import tr

FILE_NAME = "our-rules.toml"
SCHEMA_VERSION = 1


class Overlay(msgspec.Struct, frozen=True, forbid_unknown_fields=False):
    """What a service adds.

    service : its name for itself;  author : a post or initials, who answers for it;  date : as 2026-11-26
    stop_rules : sentences;  hazards : sentences;  words : local word to the program's term
    photos : file names beside this file
    """

    schema_version: int = SCHEMA_VERSION
    service: str = ""
    author: str = ""
    date: str = ""
    stop_rules: tuple[str, ...] = ()
    hazards: tuple[str, ...] = ()
    words: dict[str, str] = {}
    photos: tuple[str, ...] = ()

    @property
    def signed(self) -> str:
        """Who wrote it and when: stands wherever any of it is shown."""
        who = ", ".join(part for part in (self.service, self.author) if part)
        return f"Local rules: {who}, {self.date}"


def loads(text: str) -> Overlay:
    """Return the overlay in a TOML text.

    Raises
    ------
    PlanError
        When it cannot be read, or does not say who wrote it and when.
    """
    raw = parsed(text, "rules file")
    if hasattr(raw.get("date"), "isoformat"):
        raw["date"] = raw["date"].isoformat()
    overlay = converted(raw, Overlay, "rules file")
    if overlay.schema_version > SCHEMA_VERSION:
        raise PlanError("schema_version", f"is {overlay.schema_version}, from a newer Hemline; update it")
    for field in ("author", "date"):
        if not getattr(overlay, field).strip():
            raise PlanError(field, f"is empty; local rules are shown with their {field}, so give it")
    try:
        datetime.date.fromisoformat(overlay.date)
    except ValueError as error:
        raise PlanError("date", f"is {overlay.date!r}; write it as 2026-11-26") from error
    return overlay


def load(folder: Path) -> Overlay | None:
    """Return the overlay kept in a folder, None when there is none.

    Raises
    ------
    PlanError
        When there is one and it cannot be read.
    """
    try:
        return loads((folder / FILE_NAME).read_text(encoding="utf-8"))
    except FileNotFoundError:
        return None
    except (OSError, UnicodeDecodeError) as error:
        raise PlanError(FILE_NAME, f"cannot be read ({error}); check the file") from error


def fingerprint(folder: Path) -> str:
    """Return a hash of the file as it lies there, "" for none: to see whether somebody changed it."""
    try:
        return hashlib.sha256((folder / FILE_NAME).read_bytes()).hexdigest()
    except OSError:
        return ""


def put(text: str, folder: Path, *, seen: str) -> Path | None:
    """Put local rules in force; return where the old ones now lie, None when there were none.

    Parameters
    ----------
    text : the new file's text, checked before anything is touched
    seen : `fingerprint` of the file that the writer has looked at ("" for none)

    Raises
    ------
    PlanError
        When the text cannot be read, or the file there is another than the one that was looked at.
    """
    loads(text)
    if fingerprint(folder) != seen:
        raise PlanError(FILE_NAME, "was changed by somebody else meanwhile; look at it, then replace it")
    path = folder / FILE_NAME
    old: Path | None = None
    try:
        folder.mkdir(parents=True, exist_ok=True)
        if path.exists():
            old = _aside(path)
            old.write_bytes(path.read_bytes())
        write_whole(path, text)
    except OSError as error:
        raise PlanError(str(path), f"cannot be written ({error.strerror or error})") from error
    return old


def _aside(path: Path) -> Path:
    """Return a name beside the old file that is free: its date, and a number if need be."""
    try:
        stamp = loads(path.read_text(encoding="utf-8")).date
    except (PlanError, OSError, UnicodeDecodeError):
        stamp = "unread"
    number = 1
    while (found := path.with_name(f"our-rules-before-{stamp}-{number}.toml")).exists():
        number += 1
    return found


def example(date: str) -> str:
    """Return a file to begin with, as text."""
    document = tomlkit.document()
    for line in (
        "The rules, words and hazards of your own service, shown beside lessons and on sheets.",
        "They come before anything this program says. Change every line; keep author and date true.",
    ):
        document.add(tomlkit.comment(tr(line)))
    values: dict[str, Any] = {
        "schema_version": SCHEMA_VERSION,
        "service": tr("your service"),
        "author": tr("training officer on duty"),
        "date": date,
        "stop_rules": [tr("Stop when the skin begins to tear; the officer decides how to go on.")],
        "hazards": [tr("Our second engine carries no cutter: call for it before a post is touched.")],
    }
    for key, value in values.items():
        document.add(key, tomlkit.item(value))
    words = tomlkit.table()
    words.add(tomlkit.comment(tr("a word of yours = the word this program uses")))
    words.add(tr("purchase"), tr("gap"))
    document.add("words", words)
    return tomlkit.dumps(document)
