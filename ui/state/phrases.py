"""Finished English told in another language: by whole templates with named slots, never word by word.

What the mechanics say is put together where it is measured, and kept results, files and other processes hold
it as finished English. So a translation names the template of a sentence, `The {part} let go at {n} mm`, and
its own order of the same slots, `{part:nominative} gab bei {n} mm frei`; what a slot held is told likewise.
A text that is no template is taken apart at its full stops, semicolons, colons and commas.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache

Catalogue = Mapping[str, Mapping[str, str]]
"""Messages by context: "" the ordinary one, others forms of a word that a slot asks for by name."""

FORMS = ("nominative", "accusative", "dative")
"""Contexts that hold a word with its article, as a slot asks for it: `{part:dative}`."""
AS_IT_IS = "\u2060"
"""A line that begins with this sign, which nobody sees, is told already, or stays English on purpose."""
SLOT = re.compile(r"\{(\w+)(?::(\w+))?\}|#")
_EDGES = tuple(
    re.compile(rf"([\s{opening}]*)(.*?)([\s{closing}]*)", re.DOTALL)
    for opening, closing in ((";,.:", r";,.:!?\u2026"), (r";,.:(\[", r";,.:!?\u2026)\]"))
)
"""What stands round a text and is not translated: punctuation, then brackets too."""
_BREAKS = tuple(
    re.compile(f"({mark})")
    for mark in (
        r"\n+|[ \u00a0]{2,}",
        r"(?<=[^\s.][.!?])\s+(?=\S)",
        r";\s+",
        r":\s+",
        r"[ \u00a0]\(|\)[ \u00a0]?",
        r",\s+",
        r" and ",
        r" to ",
    )
)
"""Where a text may be taken apart, the strongest first."""
_WHOLE = 4
"""From this break on a text is told only if all its pieces can be told."""
_UNITS = "mm|cm|m|kN|N|N m|N/mm|J|kJ|J/m|kg|s|min|h|%|\u00b0|in|inches|lbf|lb|ft|ft-lb|px|MB|GB|MPa|GPa|Pa"
_QUANTITY = re.compile(rf"[-+\u2212]?\d[\d.,:]*[ \u00a0]?(?:{_UNITS})?(?![A-Za-z])")
_WORD = re.compile(r"[^\W\d_]{2}")
_PATH = re.compile(
    r"(?<![\w.])(?:[a-z]\w*(?:\[\d+\])?(?:\.\w+(?:\[\d+\])?)+"
    r"|[a-z]\w*\[\d+\]|[a-z]+(?:_[a-z0-9]+)+|'[^' ]*')"
)
"""A field of a plan, a file's name, or a word of a plan in quotes: the same in every language."""
FIELD = re.compile(r"(?<![\w.])[a-z]\w*(?:\[\d+\]|\.[a-z]\w*_\w)")
"""A field of a plan by its path: a sentence about one speaks of a file."""
_VERBS = (
    "is|are|must|cannot|does|has|hold|holds|needs|names|stands|lies|puts|makes|leaves|sets|lets|finds|parts"
)
_REFUSED = re.compile(
    rf"((?:{_PATH.pattern}):?|.{{3,60}}?)([ \u00a0])((?:(?:{_VERBS})[ \u00a0]|(?<=:[ \u00a0])).+)", re.DOTALL
)
"""A refusal: the field it is about, as a path or in words, and what is wrong with it."""
_NUMBER = r"[-+\u2212]?\d(?:[\d.,]*\d)?"
_ANYTHING = r".+?"
_CLAUSE = r"(?:(?![.!?][ \u00a0]|;[ \u00a0]|\n).)+?"
DEPTH = 7
MOST = 0.8
"""Share of a line that must be told before the rest of it may stay English beside it: prose is not mixed."""
FREE = frozenset({"name", "title", "path", "value", "raw", "why", "error", "hash", "plan", "author"})
"""Slots for words that are somebody's own: a title, a file, what a system said. They may stay as they are."""


@dataclass(frozen=True)
class Told:
    """A text told; ``whole`` says that no word of it is left in English."""

    text: str
    whole: bool


@dataclass(frozen=True)
class _Template:
    """A message with slots; ``key`` is a word that a text must hold to be one, "" where there is none."""

    key: str
    weight: int
    text: str
    names: tuple[str, ...]
    said: str

    @cached_property
    def pattern(self) -> re.Pattern[str]:
        """What a text must look like; made when one is first held to it."""
        return re.compile(self.text, re.DOTALL)


def _slot_pattern(name: str) -> str:
    if re.fullmatch(r"n\d*", name):
        return _NUMBER
    if re.fullmatch(r"length\d*", name):
        return _NUMBER + r"(?:[ \u00a0](?:mm|m|in|inches|ft)\b)?"
    return _ANYTHING if name.endswith("text") else _CLAUSE


def _template(source: str, said: str) -> _Template:
    pattern, at = "", 0
    names: list[str] = []
    literals: list[str] = []
    for found in SLOT.finditer(source):
        literals.append(source[at : found.start()])
        names.append(found[1] or f"n{len(names) + 1}")
        pattern += re.escape(literals[-1]) + f"({_slot_pattern(names[-1])})"
        at = found.end()
    literals.append(source[at:])
    pattern = (pattern + re.escape(literals[-1])).replace(r"\ ", "[ \u00a0]")
    if source[0].isalpha():
        pattern = f"[{source[0].upper()}{source[0].lower()}]{pattern[1:]}"
    bounded = re.findall(r"(?<![\w}])[a-z]+(?![\w{])", source.lower())
    key = max((word for word in bounded if word in "\0".join(literals).lower()), key=len, default="")
    return _Template(key, sum(map(len, literals)), pattern, tuple(names), said)


class Phrases:
    """What a catalogue of messages makes of English texts.

    Parameters
    ----------
    catalogue : translations by context and English source; a source may hold slots
    """

    def __init__(self, catalogue: Catalogue) -> None:
        self._exact = {
            form: {plain(s): t for s, t in messages.items() if not SLOT.search(s)}
            for form, messages in catalogue.items()
        }
        self._templates = {
            form: _by_key(_template(plain(s), t) for s, t in messages.items() if SLOT.search(s))
            for form, messages in catalogue.items()
        }
        self.tell = lru_cache(maxsize=4096)(self._tell)

    def message(self, text: str) -> str | None:
        """Return what a text's own message says, None where it has none."""
        return self._exact.get("", {}).get(plain(text.strip()))

    def _tell(self, text: str) -> Told:
        return self._say(text, "", DEPTH)

    def _say(self, text: str, form: str, depth: int) -> Told:
        """Return a text told whole, by its template, or piece by piece."""
        core = text.strip()
        if not core or core.startswith(AS_IT_IS):
            return Told(text, whole=True)
        before, after = text[: len(text) - len(text.lstrip())], text[len(text.rstrip()) :]
        found = self._exactly(core, form)
        for edges in _EDGES:
            if found is None:
                first, inside, last = edges.fullmatch(core).groups()  # type: ignore[union-attr]
                bare = self._known(inside, form, depth) if inside != core else None
                found = bare and Told(f"{first}{bare.text}{last}", whole=True)
        found = found or self._by_template(core, form, depth)
        if found is None and form:
            return self._say(text, "", depth)
        found = found or self._apart(core, depth)
        return Told(f"{before}{found.text}{after}", found.whole)

    def _known(self, core: str, form: str, depth: int) -> Told | None:
        return self._exactly(core, form) or self._by_template(core, form, depth)

    def _exactly(self, core: str, form: str) -> Told | None:
        """Return a text that is a message as it stands, or has no words in it."""
        exact = self._exact.get(form, {})
        flipped = core[:1].swapcase() + core[1:]
        said = exact.get(plain(core)) or exact.get(plain(flipped))
        if said is not None:
            return Told(_like(core, said), whole=True)
        if not form and not _WORD.search(_QUANTITY.sub("", _PATH.sub("", core))):
            return Told(core, whole=True)
        return None

    def _by_template(self, core: str, form: str, depth: int) -> Told | None:
        """Return the text by the longest template whose slots can all be told."""
        if depth <= 0:
            return None
        words = {"", *re.findall(r"[a-z]+", core.lower())}
        kept = self._templates.get(form, {})
        fitting = [template for word in words for template in kept.get(word, ())]
        for template in sorted(fitting, key=lambda template: (-template.weight, len(template.names))):
            found = template.pattern.fullmatch(core)
            if found is None:
                continue
            said = self._filled(template, found.groups(), depth - 1)
            if said is not None:
                return Told(_like(core, said), whole=True)
        return None

    def _filled(self, template: _Template, values: Sequence[str], depth: int) -> str | None:
        """Return what a template says with its slots told; None where one cannot be."""
        given = dict(zip(template.names, values, strict=True))
        said, at = "", 0
        for count, slot in enumerate(SLOT.finditer(template.said)):
            name = slot[1] or f"n{count + 1}"
            told = self._say(given[name], slot[2] or "", depth)
            if not told.whole and name not in FREE:
                return None
            said += template.said[at : slot.start()] + (told.text if told.whole else given[name])
            at = slot.end()
        return said + template.said[at:]

    def _apart(self, core: str, depth: int) -> Told:
        """Return the text told piece by piece, at the strongest break it has."""
        refused = _REFUSED.fullmatch(core)
        if refused is not None and depth > 0:
            field, rest = (self._say(refused[group], "", depth - 1) for group in (1, 3))
            if field.whole and rest.whole:
                return Told(field.text + refused[2] + rest.text, whole=True)
        for rank, mark in enumerate(_BREAKS):
            pieces = mark.split(core)
            if len(pieces) == 1 or depth <= 0:
                continue
            told = [self._say(piece, "", depth - 1) for piece in pieces[::2]]
            whole = all(t.whole for t in told)
            known = sum(len(piece) for piece, t in zip(pieces[::2], told, strict=True) if t.whole)
            if not whole and rank > 0 and (rank >= _WHOLE or known < MOST * len(core)):
                continue
            words = [t.text for t in told]
            joints = [self._exact.get("", {}).get(joint, joint) for joint in pieces[1::2]]
            out = words[0] + "".join(j + w for j, w in zip(joints, words[1:], strict=True))
            return Told(out, whole)
        return Told(core, whole=False)


def _by_key(templates: Iterable[_Template]) -> dict[str, list[_Template]]:
    found: dict[str, list[_Template]] = {}
    for template in templates:
        found.setdefault(template.key, []).append(template)
    return found


def plain(text: str) -> str:
    """Return a text with ordinary spaces."""
    return text.replace("\u00a0", " ")


def _like(source: str, said: str) -> str:
    """Return what is said with a capital where its source has one."""
    return said[:1].upper() + said[1:] if source[:1].isupper() else said
