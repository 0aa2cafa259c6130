"""The ready plans by what they show: those of a scenario under its title, the others by themselves."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from importlib import resources
from pathlib import Path

from ui.state.tongue import own, tr

ACTION = "plan_"
"""What the name of an action begins with that shows a ready plan; the file's name follows."""
SINGLE = "Single plans"
"""The group of plans that no scenario names."""

_TEXT = re.compile(r'^(title|words) = "(.*)"\s*$')
_NAMED = re.compile(r'^[\w-]+ = "\.\./plans/([\w-]+)\.toml"\s*$')


@dataclass(frozen=True)
class Group:
    """Ready plans that belong together.

    title, words : the scenario's own, "" for words of no scenario;  plans : file name and title of each
    """

    title: str
    words: str
    plans: tuple[tuple[str, str], ...]


def ready_path(name: str) -> Path:
    """Return the file of a ready plan."""
    return _assets() / "plans" / f"{name}.toml"


@cache
def groups() -> tuple[Group, ...]:
    """Return every ready plan once, in groups: the scenarios by file, then the rest; read line by line."""
    files = sorted((_assets() / "plans").glob("*.toml"))
    titles = {path.stem: _texts(path).get("title", path.stem) for path in files}
    found, left = [], dict(titles)
    for path in sorted((_assets() / "scenarios").glob("*.toml")):
        texts = _texts(path)
        names = [match[1] for match in map(_NAMED.match, _lines(path)) if match and match[1] in left]
        plans = tuple((name, left.pop(name)) for name in names)
        if plans:
            found.append(Group(texts.get("title", path.stem), texts.get("words", ""), plans))
    return (*found, Group(SINGLE, "", tuple(left.items())))


def group_of(name: str) -> Group:
    """Return the group that a ready plan stands in."""
    return next(group for group in groups() if any(name == plan for plan, _ in group.plans))


def told(name: str) -> str:
    """Return what is said when a ready plan is shown: the scenario it is one of, "" for one by itself."""
    group = group_of(name)
    if not group.words:
        return ""
    one_of = tr(f"One of {len(group.plans)} ready plans of \u201c{group.title}\u201d.")
    return own(f"{one_of} {tr(group.words)}")


def _assets() -> Path:
    return Path(str(resources.files("assets")))


def _lines(path: Path) -> list[str]:
    return path.read_text(encoding="utf-8").splitlines()


def _texts(path: Path) -> dict[str, str]:
    """Return title and words of a file, from the lines before its first table."""
    return {match[1]: match[2] for match in map(_TEXT.match, _head(_lines(path))) if match}


def _head(lines: Iterable[str]) -> list[str]:
    kept = []
    for line in lines:
        if line.startswith("["):
            break
        kept.append(line)
    return kept
