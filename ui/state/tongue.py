"""The one hook through which the window's words pass: English, or what a translation says for it.

A translation is a Qt Linguist file (.ts) in assets/tongues, read as it is; a text it does not hold stays
English. Cautions are always shown with their English beside them: a draft must never be the only warning.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as Tree
from importlib import resources

ENGLISH = "en"
TONGUES: dict[str, str] = {
    ENGLISH: "English",
    "de": "Deutsch (Entwurf, nicht gepr\u00fcft: draft, not reviewed)",
}
"""Languages there are, each in its own name."""

_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")


class _Spoken:
    """The language now spoken, and what it says for each English text."""

    language = ENGLISH
    words: dict[str, str] = {}


def speak(language: str) -> None:
    """Speak another language from now on; one that there is not is English."""
    _Spoken.language = language if language in TONGUES else ENGLISH
    _Spoken.words = {} if _Spoken.language == ENGLISH else translations(_Spoken.language)


def spoken() -> str:
    """Return the code of the language spoken."""
    return _Spoken.language


def tr(text: str) -> str:
    """Return a text in the language spoken; numbers in it stay, and English where nothing is known for it."""
    words = _Spoken.words
    if not words or not text:
        return text
    if text in words:
        return words[text]
    numbers = _NUMBER.findall(text)
    found = words.get(_NUMBER.sub("#", text)) if numbers else None
    if found is None or found.count("#") != len(numbers):
        return text
    for number in numbers:
        found = found.replace("#", number, 1)
    return found


def translations(language: str) -> dict[str, str]:
    """Return what a translation says for each English text; a file that cannot be read says nothing."""
    place = resources.files("assets").joinpath("tongues", f"hemline_{language}.ts")
    try:
        root = Tree.fromstring(place.read_text(encoding="utf-8"))
    except (OSError, Tree.ParseError):
        return {}
    found = {}
    for message in root.iter("message"):
        source, said = message.findtext("source"), message.findtext("translation")
        if source and said:
            found[source] = said
    return found


def caution(name: str) -> str:
    """Return a caution in the language spoken, with the English text below it."""
    texts = resources.files("assets")
    english = texts.joinpath("texts", f"{name}.txt").read_text(encoding="utf-8").strip()
    own = texts.joinpath("tongues", f"{name}_{_Spoken.language}.txt")
    if _Spoken.language == ENGLISH or not own.is_file():
        return english
    return f"{own.read_text(encoding='utf-8').strip()}\n\n{english}"
