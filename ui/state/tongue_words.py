"""Which words the window holds: read from the program's own text, to hold a translation to them."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

SHOWN_BY = frozenset({
    "label", "button", "IconButton", "setText", "setToolTip", "setWindowTitle", "setAccessibleName",
    "setPlaceholderText", "addItem", "addMenu", "QMenu", "QCheckBox", "QRadioButton", "tr", "say",
})  # fmt: skip
"""Functions whose text is shown."""
ROOMS = ("ui/panels", "ui")


def literals(root: Path) -> dict[str, str]:
    """Return every plain text handed to a function that shows it, with the file it stands in."""
    found: dict[str, str] = {}
    for room in ROOMS:
        for path in sorted((root / room).glob("*.py")):
            for text in _texts(ast.parse(path.read_text(encoding="utf-8"))):
                found.setdefault(text, path.relative_to(root).as_posix())
    return found


def _texts(tree: ast.AST) -> Iterator[str]:
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if name not in SHOWN_BY:
            continue
        words = [*node.args, *(k.value for k in node.keywords if k.arg in ("tip", "text"))]
        first = 1 if name == "IconButton" else 0
        wanted = words[first : first + 1] if name != "button" else [*words[:1], *words[2:]]
        for argument in wanted:
            yield from (text for text in _constants(argument) if speaks(text))


def _constants(node: ast.AST) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.BoolOp):
        for value in node.values:
            yield from _constants(value)
    elif isinstance(node, ast.IfExp):
        yield from _constants(node.body)
        yield from _constants(node.orelse)


def speaks(text: str) -> bool:
    """Tell whether a text has a word in it: two letters that follow each other."""
    return any(a.isalpha() and b.isalpha() for a, b in pairwise(text))


def tables() -> tuple[str, ...]:
    """Return the words of the tables that the window shows: actions, hands, layers, colours and so on."""
    from ui.state import (
        actions,
        car_fields,
        measuring,
        practice,
        questions,
        ready_plans,
        seeing,
        stops,
        tool_list,
        two_ways,
    )
    from ui.state.locks import LOCK_WORDS
    from ui.state.reading import LEDGER_WORDS
    from ui.state.view_options import COLOUR_WORDS, LAYER_WORDS, SHOWN_WORDS
    from ui.state.wording import EFFECT_WORDS

    rows = [*actions.MENUS, (actions.STEERING, actions.STEER)]
    found = [word for menu, table in rows for word in (menu, *(words for _, words, _ in table))]
    found += [word for pair in actions.HANDS for word in pair]
    for words in (
        LAYER_WORDS, COLOUR_WORDS, SHOWN_WORDS, LOCK_WORDS, LEDGER_WORDS, EFFECT_WORDS, seeing.WAY_WORDS,
        seeing.TOOL_WORDS, seeing.PEN_WORDS, measuring.KIND_WORDS, questions.FIRST_WORDS,
        questions.WHY_SPREAD, questions.WHY_OTHER, stops.MOTION_WORDS, practice.MODE_WORDS,
        tool_list.TOOL_WORDS,
    ):  # fmt: skip
        found += words.values()
    found += [*questions.ASKED, questions.WHY_OWN, *questions.WAYS, ready_plans.SINGLE]
    found += [*two_ways.HEADS, *two_ways.ROW_WORDS]
    found += [field.words for field in (car_fields.BUILD, *car_fields.FIELDS)]
    return tuple(dict.fromkeys(word for word in found if speaks(word)))
