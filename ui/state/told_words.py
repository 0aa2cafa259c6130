"""What the program puts together while it runs, read from its own text, to hold a translation to it.

Each text with a gap in it, and each of several words, stands here as it would be said with 7 in its gaps.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from ui.state.tongue_words import speaks

GAP = "7"
ROOMS = ("sim", "ui", "ui/state", "ui/panels", "ui/scene")
UNTOLD = frozenset({
    # the command line and what its words write, in English
    "ui/command.py", "ui/environment.py", "ui/start.py", "ui/starting.py", "ui/start_files.py",
    "ui/scenarios.py", "ui/solving.py", "ui/progress_line.py",
    "ui/lessons.py", "ui/rooms.py", "ui/mapping.py", "ui/many_runs.py", "ui/figures.py", "ui/exporting.py",
    "ui/folders.py", "ui/seats.py", "ui/checking.py", "ui/state/lesson_check.py", "ui/state/room_curve.py",
    "ui/scene/room_picture.py", "sim/feinput.py", "sim/exports.py", "sim/asks.py", "sim/answers.py",
    "sim/scenario.py", "sim/scenario_told.py", "sim/scenario_runs.py", "sim/card.py", "sim/card_many.py",
    "ui/state/figure_list.py", "ui/state/lesson_file.py", "sim/door_test.py", "sim/map_file.py",
    "sim/plan_fields.py",
    # names inside the laws and the solver, style sheets, other words for the finder, the tongues themselves
    "sim/check.py", "sim/edging.py", "sim/factor.py", "sim/giving.py", "sim/grips.py", "sim/grounds.py",
    "sim/joined.py", "sim/pattern.py", "sim/raw.py", "sim/rubbing.py", "sim/seam.py", "sim/struts.py",
    "sim/compiled.py", "sim/kept_frames.py", "sim/planhash.py", "sim/door_structure.py",
    "ui/printing.py", "ui/paging.py", "ui/panels/look.py", "ui/state/finder.py", "ui/scene/colours.py",
    "ui/state/tongue.py", "ui/state/tongue_words.py", "ui/state/told_words.py", "ui/state/phrases.py",
})  # fmt: skip
"""Modules whose texts no window shows."""
UNTOLD_CALLS = frozenset({
    "compile", "startswith", "endswith", "removesuffix", "removeprefix", "replace", "partition", "split",
    "TypeVar",
    "get", "index", "count", "setStyleSheet", "debug", "warning", "info", "exception", "getLogger", "field",
    "sub",
})  # fmt: skip
"""Functions whose text is looked for, or is no text for readers."""
_NO_WORDS = re.compile(r"<\w|px|\\|\(\.\+|^[\w.\[\]-]+$|^[\w-]+:7|\(\*\.pdf\)|\[tuple|\"\.\.\.\"")
"""Marks of what is no sentence: tags, styles, patterns, paths."""


def told(root: Path) -> dict[str, str]:
    """Return every text that may be shown while the program runs, gaps filled, with its module."""
    found: dict[str, str] = {}
    for room in ROOMS:
        for path in sorted((root / room).glob("*.py")):
            place = path.relative_to(root).as_posix()
            if place not in UNTOLD:
                for text in templates(path):
                    found.setdefault(text, place)
    return found


def templates(path: Path) -> Iterator[str]:
    """Return all that a module may say, gaps filled; its own comments and names are left out."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    quiet = {id(node) for found in ast.walk(tree) for node in _quiet(found)}
    for node in ast.walk(tree):
        if id(node) in quiet:
            continue
        text = ""
        if isinstance(node, ast.JoinedStr):
            text = "".join(_filled(value) for value in node.values)
            text = re.sub(rf"^{GAP}+(?=[A-Z])|(?<=\.){GAP}$|(?<=[a-z]){GAP}", "", text)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and " " in node.value.strip():
            text = re.sub(r"\{\w*\}", GAP, node.value)
        if speaks(text) and not _NO_WORDS.search(text):
            yield text


def _filled(value: ast.expr) -> str:
    """Return a piece of a text: its words, or what stands for a gap; nothing for what may be left out."""
    if isinstance(value, ast.Constant):
        return str(value.value)
    inside = value.value if isinstance(value, ast.FormattedValue) else value
    if isinstance(inside, ast.IfExp):
        ends = (inside.body, inside.orelse)
        if any(isinstance(end, ast.Constant) and end.value == "" for end in ends):
            return ""
    return GAP


def _quiet(node: ast.AST) -> Iterator[ast.AST]:
    """Return what of a node is no text for readers, all the way down."""
    roots: list[ast.AST] = []
    body = getattr(node, "body", None)
    if isinstance(body, list):
        roots += [s.value for s in body if isinstance(s, ast.Expr) and isinstance(s.value, ast.Constant)]
    if isinstance(node, ast.JoinedStr):
        roots += [v for v in node.values if isinstance(v, ast.Constant)]
    if isinstance(node, ast.FormattedValue) and node.format_spec is not None:
        yield node.format_spec
        roots.append(node.format_spec)
    if isinstance(node, ast.Compare):
        roots += [node.left, *node.comparators]
    if isinstance(node, ast.Subscript):
        roots.append(node.slice)
    if isinstance(node, ast.arg | ast.AnnAssign) and node.annotation is not None:
        roots.append(node.annotation)
    if isinstance(node, ast.FunctionDef) and node.returns is not None:
        roots.append(node.returns)
    if isinstance(node, ast.Call):
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if name in UNTOLD_CALLS:
            roots += node.args
    for root in roots:
        yield from ast.walk(root)
