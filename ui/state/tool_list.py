"""The crew's own tools by their numbers, kept in the user's settings; a plan keeps a tool of its own besides.

A file that cannot be read costs the list, never the start, and is put aside before another is written.
"""

from __future__ import annotations

import math
import tomllib
from dataclasses import dataclass
from pathlib import Path

import msgspec
import tomlkit

from sim.plan import Tool
from sim.textfiles import write_whole
from ui.state.curve_form import CurveError, check_curve
from ui.state.signal import Signal

FILE_NAME = "tools.toml"
HEAD = "The crew's own tools, by their numbers. A tool's name is the crew's own; what counts are the numbers."
RANGES: dict[str, tuple[float, float, str]] = {
    "tip_width_m": (0.005, 0.150, "20 to 60 mm is usual"),
    "tip_depth_m": (0.005, 0.100, "20 to 50 mm is usual"),
    "friction_ratio": (0.05, 3.0, "0.3 to 0.6 for serrated tips; above 2 they bite and never slide"),
}
"""Least and greatest of each number of the form, and what is usual (from memory)."""
TOOL_WORDS = {"tip_width_m": "Tip width", "tip_depth_m": "Tip length", "friction_ratio": "Friction"}
LONGEST_NAME = 40


class ToolTrouble(ValueError):  # noqa: N818 - a sentence to the reader
    """A tool that cannot be kept; the text is a sentence for the reader."""


def check_tool(tool: Tool) -> None:
    """Raise ToolTrouble, naming the number and its range, where a tool cannot be used."""
    if not tool.name.strip():
        raise ToolTrouble("Give the tool a name of your own before it is kept.")
    if len(tool.name) > LONGEST_NAME:
        raise ToolTrouble(f"The tool's name is longer than {LONGEST_NAME} letters; shorten it.")
    for name, (low, high, usual) in RANGES.items():
        value = getattr(tool, name)
        if not (math.isfinite(value) and low <= value <= high):
            words = TOOL_WORDS[name].lower()
            raise ToolTrouble(f"The tool's {words} is {value:g}; it goes from {low:g} to {high:g} ({usual}).")
    if len(tool.opening_m) != len(tool.force_n) or len(tool.opening_m) < 2:
        raise ToolTrouble("The tool's curve needs as many forces as openings, two at least.")
    try:
        check_curve(list(tool.opening_m), list(tool.force_n))
    except CurveError as problem:
        raise ToolTrouble(str(problem)) from problem


def alike(one: Tool, other: Tool) -> bool:
    """Tell whether two tools are the same but for their names."""
    return msgspec.structs.replace(one, name="") == msgspec.structs.replace(other, name="")


@dataclass(frozen=True)
class Loaded:
    """What a file held: the tools, and what could not be used of it, in sentences."""

    tools: tuple[Tool, ...] = ()
    troubles: tuple[str, ...] = ()


def loads(text: str) -> Loaded:
    """Return the tools in a text; one that cannot be used is left out and told."""
    try:
        rows = tomllib.loads(text).get("tool", [])
    except tomllib.TOMLDecodeError as problem:
        return Loaded((), (f"{FILE_NAME} cannot be read ({problem}).",))
    if not isinstance(rows, list):
        return Loaded((), (f"{FILE_NAME} holds no list of tools.",))
    tools: dict[str, Tool] = {}
    troubles = []
    for number, row in enumerate(rows, 1):
        try:
            tool = msgspec.convert(row, Tool)
            check_tool(tool)
        except (msgspec.ValidationError, ToolTrouble) as problem:
            troubles.append(f"{FILE_NAME}, tool {number}, was left out: {problem}")
            continue
        tools[tool.name] = tool
    return Loaded(tuple(tools.values()), tuple(troubles))


def dumps(tools: tuple[Tool, ...]) -> str:
    """Return the text that keeps some tools."""
    document = tomlkit.document()
    document.add(tomlkit.comment(HEAD))
    rows = tomlkit.aot()
    for tool in tools:
        rows.append(tomlkit.item(msgspec.to_builtins(tool, builtin_types=())))
    document["tool"] = rows
    return tomlkit.dumps(document)


class ToolList:
    """The list, and the file it is kept in.

    Parameters
    ----------
    folder : of the user's settings

    Attributes
    ----------
    changed : emitted when a tool came or went
    """

    def __init__(self, folder: Path) -> None:
        self._path = folder / FILE_NAME
        self.changed: Signal[[]] = Signal()
        try:
            found = loads(self._path.read_text(encoding="utf-8"))
        except FileNotFoundError:
            found = Loaded()
        except (OSError, UnicodeDecodeError) as problem:
            found = Loaded((), (f"{FILE_NAME} cannot be read ({problem}).",))
        self.tools, self.troubles = found.tools, found.troubles

    def named(self, tool: Tool) -> str:
        """Return the name under which a tool is kept; empty for one that is not."""
        return next((kept.name for kept in self.tools if alike(kept, tool)), "")

    def keep(self, tool: Tool) -> None:
        """Keep a tool, in the place of one of the same name.

        Raises
        ------
        ToolTrouble
            Where it cannot be used, or the file cannot be written; the list is as it was then.
        """
        tool = msgspec.structs.replace(tool, name=tool.name.strip())
        check_tool(tool)
        self._write((*(kept for kept in self.tools if kept.name != tool.name), tool))

    def drop(self, name: str) -> None:
        """Take a tool off the list; ToolTrouble where the file cannot be written."""
        self._write(tuple(kept for kept in self.tools if kept.name != name))

    def _write(self, tools: tuple[Tool, ...]) -> None:
        try:
            self._path.parent.mkdir(parents=True, exist_ok=True)
            if self.troubles and self._path.exists():  # what could not be read is not written over
                self._path.replace(self._path.with_name(FILE_NAME + ".old"))
            write_whole(self._path, dumps(tools))
        except OSError as problem:
            raise ToolTrouble(
                f"{FILE_NAME} cannot be written ({problem.strerror or problem}); the tool stays in the plan."
            ) from problem
        self.tools, self.troubles = tools, ()
        self.changed.emit()
