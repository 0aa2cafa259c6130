"""The one hook through which the window's words pass: English, or what a translation says for it.

A translation is a Qt Linguist file (.ts) in assets/tongues, read as it is; a text it does not hold stays
English. Cautions are always shown with their English beside them: a draft must never be the only warning.
"""

from __future__ import annotations

import xml.etree.ElementTree as Tree
from importlib import resources

from ui.state.phrases import AS_IT_IS, FORMS, Phrases

ENGLISH = "en"
TONGUES: dict[str, str] = {
    ENGLISH: "English",
    "de": "Deutsch (Entwurf, nicht gepr\u00fcft: draft, not reviewed)",
}
"""Languages there are, each in its own name."""

FILES = ("hemline", "told")
"""Files of a language: the window's own fixed words; what is put together while it runs."""


class _Spoken:
    """The language now spoken, and what it says for each English text; nothing for English."""

    language = ENGLISH
    phrases: Phrases | None = None


def speak(language: str) -> None:
    """Speak another language from now on; one that there is not is English."""
    _Spoken.language = language if language in TONGUES else ENGLISH
    _Spoken.phrases = None if _Spoken.language == ENGLISH else Phrases(catalogue(_Spoken.language))


def spoken() -> str:
    """Return the code of the language spoken."""
    return _Spoken.language


def tr(text: str) -> str:
    """Return a text in the language spoken; numbers in it stay, and English where nothing is known for it."""
    if _Spoken.phrases is None or not text:
        return text
    return _Spoken.phrases.tell(text).text


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
    return "\n".join(f"{AS_IT_IS}{line}" if line else line for line in english.splitlines())
