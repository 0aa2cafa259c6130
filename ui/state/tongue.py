"""The one hook through which the window's words pass: English, or what a translation says for it.

A translation is a Qt Linguist file (.ts) in assets/tongues, read as it is; a text it does not hold stays
English. Cautions are always shown with their English beside them: a draft must never be the only warning.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as Tree
from functools import cache, lru_cache
from importlib import resources

from ui.state.phrases import AS_IT_IS, FIELD, FORMS, Phrases

ENGLISH = "en"
VARIABLE = "HEMLINE_LANGUAGE"
"""What tells a process of the window's own which language its captions have."""
TONGUES: dict[str, str] = {
    ENGLISH: "English",
    "de": "Deutsch (Entwurf, nicht gepr\u00fcft: draft, not reviewed)",
}
"""Languages there are, each in its own name."""

FILES = ("card", "taught", "hemline", "told")
"""Files of a language: the model card; what is taught (lessons, plans, scenarios); the window's own fixed
words; what is put together while it runs. Where two say a word, the later one is heard.
"""
DECIMAL_MARKS = {"de": ","}
"""What stands between a number's whole and its decimals, where that is not a point."""
_DECIMAL = re.compile(r"(?<![\w./])(?<![A-Za-z]-)(?<![A-Za-z]\d-)(\d+)\.(\d+)(?!\d|\.\w|/\w)")
_PER_CENT = re.compile(r"(?<=\d)%")
_NO_DECIMAL = re.compile(
    r"\b(?:CFR|ISO|EN|OpenGL|GL|Mesa|LLVM|VTK|Qt|Python|PySide6|PyVista|numpy|numba|Hemline) [\w./-]*\d"
)
"""Numbers of sections, standards and versions: their point is no decimal mark."""


class _Spoken:
    """The language now spoken, and what it says for each English text; nothing for English."""

    language = ENGLISH
    phrases: Phrases | None = None


def speak(language: str) -> None:
    """Speak another language from now on; one that there is not is English."""
    _Spoken.language = language if language in TONGUES else ENGLISH
    _Spoken.phrases = None if _Spoken.language == ENGLISH else _phrases(_Spoken.language)


@cache
def _phrases(language: str) -> Phrases:
    return Phrases(catalogue(language))


def spoken() -> str:
    """Return the code of the language spoken."""
    return _Spoken.language


def tr(text: str) -> str:
    """Return a text in the language spoken; numbers in it stay, and English where nothing is known for it."""
    if _Spoken.phrases is None or not text:
        return text
    return decimals(_Spoken.phrases.tell(text).text)


def whole(text: str) -> str:
    """Return words of a file told by a message of their own, and marked as told; else as they stand."""
    said = _Spoken.phrases.message(text) if _Spoken.phrases is not None else None
    return text if said is None else _kept(said)


def is_told(text: str) -> bool:
    """Tell whether a text is told already."""
    return text.startswith(AS_IT_IS)


def bare(text: str) -> str:
    """Return a text without the signs that say it is told: for a file."""
    return text.replace(AS_IT_IS, "")


def capital(text: str) -> str:
    """Return a text that begins with a capital, told already or not."""
    mark = AS_IT_IS if is_told(text) else ""
    words = text.removeprefix(mark)
    return f"{mark}{words[:1].upper()}{words[1:]}"


def decimals(text: str) -> str:
    """Return a text whose numbers have the decimal mark of the language spoken.

    A line with a field of a file keeps its points, for the file is written with them; so does English that
    stays English.
    """
    mark = DECIMAL_MARKS.get(_Spoken.language)
    return text if mark is None else _with_mark(text, mark)


def pointed(text: str) -> str:
    """Return a number as somebody writes it, with a point for the decimal mark of the language spoken."""
    mark = DECIMAL_MARKS.get(_Spoken.language)
    return text if mark is None else text.replace(mark, ".")


@lru_cache(maxsize=4096)
def _with_mark(text: str, mark: str) -> str:
    return "\n".join(_line_with_mark(line, mark) for line in text.split("\n"))


def _line_with_mark(line: str, mark: str) -> str:
    if is_told(line) or FIELD.search(line):
        return line
    line = _PER_CENT.sub("\u00a0%", line)
    kept = [found.span() for found in _NO_DECIMAL.finditer(line)]
    return _DECIMAL.sub(
        lambda found: (
            found[0] if any(a <= found.start() < b for a, b in kept) else f"{found[1]}{mark}{found[2]}"
        ),
        line,
    )


def own(text: str) -> str:
    """Return words that are somebody's own, of a lesson or a title, so that none of them is translated."""
    return text if _Spoken.language == ENGLISH or not text else _kept(text)


def with_english(text: str) -> str:
    """Return a caution in the language spoken with its English below it: a draft never warns alone."""
    said = tr(text)
    if said == text:
        return text
    return f"{said}\n{_kept(text)}"


def catalogue(language: str) -> dict[str, dict[str, str]]:
    """Return what a translation says for each English text, by context; the ordinary one is "".

    A file that cannot be read says nothing.
    """
    found: dict[str, dict[str, str]] = {"": {}}
    for name in FILES:
        place = resources.files("assets").joinpath("tongues", f"{name}_{language}.ts")
        try:
            root = Tree.fromstring(place.read_text(encoding="utf-8"))
        except (OSError, Tree.ParseError):
            continue
        for context in root.iter("context"):
            called = context.findtext("name") or ""
            messages = found.setdefault(called if called in FORMS else "", {})
            for message in context.iter("message"):
                source, said = message.findtext("source"), message.findtext("translation")
                if source and said:
                    messages[source] = said
    return found


def translations(language: str) -> dict[str, str]:
    """Return what a translation says for each English text on its own."""
    return catalogue(language)[""]


def caution(name: str) -> str:
    """Return a caution in the language spoken, with the English text below it."""
    texts = resources.files("assets")
    english = texts.joinpath("texts", f"{name}.txt").read_text(encoding="utf-8").strip()
    own = texts.joinpath("tongues", f"{name}_{_Spoken.language}.txt")
    if _Spoken.language == ENGLISH or not own.is_file():
        return english
    return f"{own.read_text(encoding='utf-8').strip()}\n\n{_kept(english)}"


def _kept(english: str) -> str:
    """Return English that stays English wherever it is shown."""
    return "\n".join(
        f"{AS_IT_IS}{line}" if line and not is_told(line) else line for line in english.splitlines()
    )
