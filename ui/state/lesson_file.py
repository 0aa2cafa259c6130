"""Lesson files: TOML with a schema version, comments kept, unknown fields kept and named.

Every refusal is a `PlanError`: the field's path, what is wrong, and what to do.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from importlib import resources
from pathlib import Path
from typing import Any

import msgspec
import msgspec.inspect
import tomlkit

from sim.planfile import check_version
from sim.problems import PlanError
from sim.textfiles import read_text, write_whole
from sim.typed import converted, parsed
from ui.state.lesson import FIGURE, MAP_STEPS, SCHEMA_VERSION, Lesson
from ui.state.view_options import COLOUR_WORDS, LAYER_WORDS, Shown

CAMERAS = ("three_quarter", "latch", "hinge", "patient", "section", "top")
"""Saved views a step may ask for; a test holds them against the views there are."""
MOMENTS = ("start", "end")


def ready_lessons() -> tuple[str, ...]:
    """Return the names of the program's ready lessons, in the order they are taught."""
    folder = resources.files("assets").joinpath("lessons")
    names = sorted(item.name for item in folder.iterdir() if item.name.endswith(".toml"))
    return tuple(name.removesuffix(".toml") for name in names)


def ready_path(name: str) -> Path:
    """Return where a ready lesson lies."""
    return Path(str(resources.files("assets").joinpath("lessons", f"{name}.toml")))


def ready_titles() -> tuple[tuple[str, str], ...]:
    """Return name and title of every ready lesson, for a menu; read quickly, without the rest."""
    found = []
    for name in ready_lessons():
        with ready_path(name).open(encoding="utf-8") as lines:
            title = next((line for line in lines if line.startswith("title = ")), "")
        found.append((name, title.partition('"')[2].rpartition('"')[0] or name))
    return tuple(found)


def load_lesson(path: Path | str) -> Lesson:
    """Return the lesson in a file.

    Raises
    ------
    PlanError
        When the file cannot be read, or as `loads_lesson`.
    """
    return loads_lesson(read_text(Path(path), "lesson"))


def loads_lesson(text: str) -> Lesson:
    """Return the lesson in a TOML text; unknown fields are passed over and named by `unknown_fields`.

    Raises
    ------
    PlanError
        Syntax, missing or newer version, a value that cannot be, a name that leads nowhere.
    """
    raw = _raw(text)
    check_version(raw, SCHEMA_VERSION)
    return checked(converted(raw, Lesson, "lesson"))


def unknown_fields(text: str) -> tuple[str, ...]:
    """Return the paths of the fields in a lesson's text that this program does not know."""
    return tuple(_unknown(_raw(text), msgspec.inspect.type_info(Lesson), ""))


def _raw(text: str) -> dict[str, Any]:
    return _plain(parsed(text, "lesson"))  # type: ignore[no-any-return]


def _plain(value: Any) -> Any:
    """Return values as plain ones: a date written without quotes becomes its text."""
    if isinstance(value, dict):
        return {key: _plain(item) for key, item in value.items()}
    if isinstance(value, list):
        return [_plain(item) for item in value]
    return value.isoformat() if hasattr(value, "isoformat") else value


def _unknown(raw: Any, kind: msgspec.inspect.Type, path: str) -> Iterator[str]:
    if isinstance(kind, msgspec.inspect.StructType) and isinstance(raw, Mapping):
        known = {field.name: field.type for field in kind.fields}
        for key, value in raw.items():
            where = f"{path}.{key}" if path else str(key)
            if key not in known:
                yield where
            else:
                yield from _unknown(value, known[key], where)
    elif isinstance(kind, msgspec.inspect.VarTupleType) and isinstance(raw, Sequence):
        for index, value in enumerate(raw):
            yield from _unknown(value, kind.item_type, f"{path}[{index}]")


# what must lead somewhere -------------------------------------------------------------------------------


def checked(lesson: Lesson) -> Lesson:
    """Return the lesson when every name in it leads somewhere.

    Raises
    ------
    PlanError
        Naming the field, the value and what it may be.
    """
    for field in ("title", "author", "licence"):
        if not getattr(lesson, field).strip():
            raise PlanError(field, f"is empty; give the lesson's {field}")
    if not lesson.steps:
        raise PlanError("steps", "are missing; add a [[steps]] table with phase and title")
    _once("plans", [plan.name for plan in lesson.plans])
    _once("questions", [question.name for question in lesson.questions])
    plans = {plan.name for plan in lesson.plans}
    questions = {question.name for question in lesson.questions}
    for k, step in enumerate(lesson.steps):
        here = f"steps[{k}]"
        _among(f"{here}.plan", step.plan, plans, "name one of [[plans]]")
        _among(f"{here}.beside", step.beside, plans, "name one of [[plans]]")
        _among(f"{here}.question", step.question, questions, "name one of [[questions]]")
        _among(f"{here}.camera", step.camera, CAMERAS, "use")
        _among(f"{here}.colours", step.colours, COLOUR_WORDS, "use")
        _among(f"{here}.map", step.map, MAP_STEPS, "use")
        if step.map == "both" and not step.beside:
            raise PlanError(f"{here}.beside", "is missing; name the plan whose map is compared")
        for layer, shown in step.layers.items():
            _among(f"{here}.layers.{layer}", layer, LAYER_WORDS, "layers are")
            _among(f"{here}.layers.{layer}", shown, [mode.value for mode in Shown], "use")
    for k, question in enumerate(lesson.questions):
        _among(f"questions[{k}].plan", question.plan, plans, "name one of [[plans]]", empty=False)
        _among(f"questions[{k}].other", question.other, plans, "name one of [[plans]]")
        if question.asks == "more" and not question.other:
            raise PlanError(f"questions[{k}].other", "is missing; name the plan to compare with")
    for k, pair in enumerate(lesson.expected):
        _among(f"expected[{k}].first", pair.first, plans, "name one of [[plans]]", empty=False)
        _among(f"expected[{k}].second", pair.second, plans, "name one of [[plans]]", empty=False)
    for k, claim in enumerate(lesson.claims):
        _among(f"claims[{k}].plan", claim.plan, plans, "name one of [[plans]]")
    for path, text in texts_of(lesson):
        for name, _, _ in FIGURE.findall(text):
            _among(path, name, plans, "a figure begins with the name of one of [[plans]]")
    return lesson


def _once(path: str, names: Sequence[str]) -> None:
    for k, name in enumerate(names):
        if not re.fullmatch(r"[a-z0-9_-]+", name):
            raise PlanError(f"{path}[{k}].name", f"is {name!r}; use small letters, digits, - and _")
        if name in names[:k]:
            raise PlanError(f"{path}[{k}].name", f"{name!r} stands there twice; use another name")


def _among(path: str, value: str, known: Any, remedy: str, *, empty: bool = True) -> None:
    if (value == "" and empty) or value in known:
        return
    there = ", ".join(repr(word) for word in sorted(known)) or "none yet"
    raise PlanError(path, f"is {value!r}, which is not there; {remedy}: {there}")


def texts_of(lesson: Lesson) -> Iterator[tuple[str, str]]:
    """Yield every text of a lesson with its field's path."""
    yield from _texts(msgspec.to_builtins(lesson), "")


def _texts(value: Any, path: str) -> Iterator[tuple[str, str]]:
    if isinstance(value, str):
        yield path, value
    elif isinstance(value, Mapping):
        for key, item in value.items():
            yield from _texts(item, f"{path}.{key}" if path else str(key))
    elif isinstance(value, Sequence):
        for index, item in enumerate(value):
            yield from _texts(item, f"{path}[{index}]")


# writing ------------------------------------------------------------------------------------------------


def dumps_lesson(lesson: Lesson, previous_text: str | None = None) -> str:
    """Return the lesson as TOML; with the text it was read from, comments and unknown fields stay.

    Fields that have their default value and did not stand in the text are left out.
    """
    document = tomlkit.parse(previous_text) if previous_text is not None else tomlkit.document()
    _write(document, lesson)
    return tomlkit.dumps(document)


def _write(table: Any, struct: msgspec.Struct) -> None:
    defaults = dict(zip(struct.__struct_fields__[::-1], struct.__struct_defaults__[::-1], strict=False))
    for name in struct.__struct_fields__:
        value, old = getattr(struct, name), table.get(name)
        if isinstance(value, msgspec.Struct):
            _write_one(table, name, value)
        elif isinstance(value, tuple) and value and isinstance(value[0], msgspec.Struct):
            _write_tables(table, name, value)
        elif old is None and name != "schema_version" and value in (defaults.get(name), (), {}):
            continue
        elif old is None or _plain(_unwrapped(old)) != _listed(value):
            table[name] = _listed(value)


def _write_one(table: Any, name: str, value: msgspec.Struct) -> None:
    if name in table:
        _write(table[name], value)
    elif value != type(value)():
        fresh = tomlkit.table()
        _write(fresh, value)
        table[name] = fresh


def _write_tables(table: Any, name: str, values: Sequence[msgspec.Struct]) -> None:
    if name not in table:
        table[name] = tomlkit.aot()
    old = table[name]
    for item, value in zip(old, values, strict=False):
        _write(item, value)
    while len(old) > len(values):
        del old[len(old) - 1]
    for value in values[len(old) :]:
        fresh = tomlkit.table()
        _write(fresh, value)
        old.append(fresh)


def _unwrapped(item: Any) -> Any:
    return item.unwrap() if hasattr(item, "unwrap") else item


def _listed(value: Any) -> Any:
    if isinstance(value, tuple | list):
        return [_listed(item) for item in value]
    return {k: _listed(v) for k, v in value.items()} if isinstance(value, Mapping) else value


def save_lesson(lesson: Lesson, path: Path, previous_text: str | None = None) -> None:
    """Write a lesson beside its place and move it there.

    Raises
    ------
    PlanError
        When the folder cannot be written; the old file stays as it was.
    """
    try:
        write_whole(path, dumps_lesson(lesson, previous_text))
    except OSError as error:
        raise PlanError(
            str(path), f"cannot be written ({error.strerror or error}); choose another folder"
        ) from error
