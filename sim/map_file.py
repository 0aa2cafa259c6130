"""Outcome maps on disk: runs as they come, whole maps as JSON and as a table, units in the names."""

from __future__ import annotations

import contextlib
import csv
import io
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import msgspec

from sim.map_cell import Look
from sim.outcome_map import Ask, MapDifference, OutcomeMap, made, needs_second
from sim.problems import PlanError
from sim.results import LIMITS_LINE, MODEL_VERSION
from sim.textfiles import write_whole


class _Line(msgspec.Struct, frozen=True):
    """One run in a store: 0 for the first lattice and 1 for the second, the cell's number, what came out."""

    turn: int
    index: int
    look: Look


class MapStore:
    """Runs of maps in a folder, one file a map: a line is added as each run ends; a torn line is lost alone.

    What cannot be written is not kept, and costs nobody the map.
    """

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def path(self, ask: Ask) -> Path:
        """Return the file of a map's runs."""
        return self.folder / f"{ask.key}.jsonl"

    def looks(self, ask: Ask) -> dict[tuple[int, int], Look]:
        """Return the runs that are kept, by lattice and cell."""
        try:
            lines = self.path(ask).read_bytes().splitlines()
        except OSError:
            return {}
        found = {}
        for raw in lines:
            with contextlib.suppress(msgspec.DecodeError):
                line = msgspec.json.decode(raw, type=_Line)
                found[line.turn, line.index] = line.look
        cells = len(ask.grid.cells)
        return {key: one for key, one in found.items() if key[0] in (0, 1) and 0 <= key[1] < cells}

    def whole(self, ask: Ask) -> OutcomeMap | None:
        """Return the map, if every run it needs is kept."""
        found = self.looks(ask)
        first = [found.get((0, index)) for index in range(len(ask.grid.cells))]
        known = [one for one in first if one is not None]
        second = {index: one for (turn, index), one in found.items() if turn == 1}
        needed = {k for k, one in enumerate(known) if needs_second(one)}
        if len(known) < len(first) or not needed <= set(second):
            return None
        return made(ask, known, {index: second[index] for index in needed})

    def add(self, ask: Ask, turn: int, index: int, one: Look) -> None:
        """Keep one run."""
        raw = msgspec.json.encode(_Line(turn, index, one)) + b"\n"
        with contextlib.suppress(OSError):
            self.folder.mkdir(parents=True, exist_ok=True)
            with self.path(ask).open("ab") as file:
                file.write(raw)


class Kept(msgspec.Struct, frozen=True):
    """A whole map as it is kept: what was asked, and the runs; its words are read from them anew."""

    model_version: str
    key: str
    limits: str
    ask: Ask
    first: tuple[Look, ...]
    second: dict[int, Look]


def kept_json(outcome: OutcomeMap) -> str:
    """Return a map as the text of a kept file."""
    second = {k: told.second for k, told in enumerate(outcome.told) if told.second is not None}
    kept = Kept(
        outcome.model_version,
        outcome.key,
        LIMITS_LINE,
        outcome.ask,
        tuple(told.first for told in outcome.told),
        second,
    )
    return msgspec.json.encode(kept).decode().replace('{"word"', '\n{"word"') + "\n"


def read_kept(path: Path) -> OutcomeMap | None:
    """Return a kept map; None when it is not there, cannot be read, or is of another model."""
    try:
        kept = msgspec.json.decode(path.read_bytes(), type=Kept)
    except (OSError, msgspec.DecodeError):
        return None
    whole = len(kept.first) == len(kept.ask.grid.cells)
    if kept.model_version != MODEL_VERSION or kept.key != kept.ask.key or not whole:
        return None
    return made(kept.ask, kept.first, kept.second)


def kept_in(folder: Path, ask: Ask) -> OutcomeMap | None:
    """Return the kept map of a folder that answers what is asked; None when there is none."""
    try:
        paths = sorted(folder.glob("*.json"))
    except OSError:
        return None
    for path in paths:
        with contextlib.suppress(OSError):
            if ask.key.encode() in path.read_bytes()[:400]:
                return read_kept(path)
    return None


def _look(one: Look | None) -> dict[str, Any] | None:
    return None if one is None else msgspec.to_builtins(one)


def _cells(outcome: OutcomeMap) -> list[dict[str, Any]]:
    return [
        {
            "edge": told.cell.edge,
            "along_m": told.cell.along_m,
            "depth_m": told.cell.depth_m,
            "word": told.word,
            "why": told.why,
            "runs": [_look(told.first), _look(told.second)],
        }
        for told in outcome.told
    ]


def map_json(outcome: OutcomeMap, words: Mapping[str, str]) -> str:
    """Return map.json's text: what was asked, the words about it, and every cell with its runs."""
    raw = {
        "model_version": outcome.model_version,
        "limits": LIMITS_LINE,
        "map_sha256": outcome.key,
        **words,
        "lattices_m": list(outcome.ask.spacings_m),
        "counts": dict(outcome.counts),
        "cells": _cells(outcome),
    }
    return msgspec.json.format(msgspec.json.encode(raw), indent=1).decode() + "\n"


_COLUMNS = ("opening_m", "force_n", "part", "rival", "margin_ratio")


def map_csv(outcome: OutcomeMap) -> str:
    """Return a row per cell: where, its word, why it is not settled, and its runs on the two lattices."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(
        ["edge", "along_m", "depth_m", "seat", "word", "why", "first_word", "second_word", *_COLUMNS]
    )
    for told in outcome.told:
        first, second = told.first, told.second
        writer.writerow([
            told.cell.edge, told.cell.along_m, told.cell.depth_m, first.seat, told.word, told.why,
            first.word, "" if second is None else second.word,
            *(getattr(first, name) for name in _COLUMNS),
        ])  # fmt: skip
    return out.getvalue()


def difference_csv(apart: MapDifference) -> str:
    """Return a row per cell that changes: where, and both words."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["edge", "along_m", "depth_m", "before", "after"])
    for change in apart.changes:
        cell = change.cell
        writer.writerow([cell.edge, cell.along_m, cell.depth_m, change.before, change.after])
    return out.getvalue()


def write(path: Path, text: str) -> None:
    """Write a file whole or not at all; PlanError when it cannot be written."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        write_whole(path, text)
    except OSError as error:
        raise PlanError(
            str(path), f"cannot be written ({error.strerror or error}); choose another"
        ) from error
