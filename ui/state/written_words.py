"""What stands in the program's own data files for readers, by kind, to hold a translation to it."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from ui.state.glossary import listed
from ui.state.lesson import FIGURE
from ui.state.lesson_file import load_lesson
from ui.state.lesson_tongue import texts
from ui.state.told_words import templates
from ui.state.tongue_words import speaks


def written(root: Path) -> dict[str, dict[str, str]]:
    """Return every text of the data files by kind, each with the file it stands in.

    Kinds: lessons, plans, scenarios, figures, card (its words, names and sources of numbers), glossary;
    and "checks", what rows of checks claim, with 7 in their gaps.
    """
    assets = root / "assets"
    card, words = assets / "card", assets / "texts" / "glossary.toml"
    kinds = {
        "lessons": ((path, texts(load_lesson(path))) for path in _files(assets / "lessons")),
        "plans": (
            (path, _found(_toml(path), ("title", "words", "name"))) for path in _files(assets / "plans")
        ),
        "scenarios": (
            (path, _found(_toml(path), ("title", "words"))) for path in _files(assets / "scenarios")
        ),
        "figures": ((path, _found(_toml(path), ("title", "words"))) for path in _files(assets / "figures")),
        "card": [
            (card / "words.toml", _found(_toml(card / "words.toml"))),
            (card / "numbers.toml", _numbers(_toml(card / "numbers.toml"))),
        ],
        "glossary": [(words, _terms(_toml(words)))],
        "checks": ((path, templates(path)) for path in sorted((root / "sim" / "checks").glob("*.py"))),
    }
    return {kind: _placed(root, files) for kind, files in kinds.items()}


def _placed(root: Path, files: Iterable[tuple[Path, Iterable[str]]]) -> dict[str, str]:
    found: dict[str, str] = {}
    for path, said in files:
        for text in said:
            if speaks(FIGURE.sub("", text)):
                found.setdefault(text.strip(), path.relative_to(root).as_posix())
    return found


def _files(folder: Path) -> list[Path]:
    return sorted(folder.glob("*.toml"))


def _toml(path: Path) -> dict[str, Any]:
    return tomllib.loads(path.read_text(encoding="utf-8"))


def _found(value: Any, keys: tuple[str, ...] = (), key: str = "") -> Iterator[str]:
    """Yield the texts under some keys, wherever they stand; under all keys for none."""
    if isinstance(value, dict):
        for name, item in value.items():
            yield from _found(item, keys, name)
    elif isinstance(value, list):
        for item in value:
            yield from _found(item, keys, key)
    elif isinstance(value, str) and (not keys or key in keys):
        yield value


def _terms(raw: dict[str, Any]) -> Iterator[str]:
    """Yield the glossary's names, meanings, and each term's other words as one text."""
    for term in raw["term"]:
        yield from (term["name"], term["meaning"], listed(term.get("aliases", ())))


def _numbers(raw: dict[str, Any]) -> Iterator[str]:
    """Yield the model's numbers: their groups, names and sources; places and units stay as they are."""
    for group in raw["group"]:
        yield group["name"]
        for _, name, _, _, source in group["numbers"]:
            yield from (name, source)
