"""What data files say in another language: lessons, plans, scenarios, figures, glossary, card, checks."""

import re
import tomllib
from pathlib import Path

import pytest

from sim import card
from sim.checks import sources
from sim.planfile import load_plan
from ui.state import overlay, tongue
from ui.state.figure_words import caption
from ui.state.glossary import in_tongue, search, terms, with_local
from ui.state.lesson import FIGURE
from ui.state.lesson_file import load_lesson, loads_lesson, ready_lessons, ready_path
from ui.state.lesson_results import results_of
from ui.state.lesson_tongue import in_tongue as told_lesson
from ui.state.lesson_tongue import texts
from ui.state.lesson_walk import LessonWalk
from ui.state.model_card import CHAPTERS, CHECKS, DRILLS, ModelCard
from ui.state.phrases import AS_IT_IS, Phrases
from ui.state.sheets import SHEETS, sheet_of
from ui.state.written_words import written

ROOT = Path(__file__).resolve().parents[3]
LANGUAGES = [code for code in tongue.TONGUES if code != tongue.ENGLISH]
WHOLE_MESSAGES = ("lessons", "plans", "scenarios", "figures", "glossary")
"""Kinds of prose: each text has a message of its own, for pieces put together are no sentence."""
KEY = re.compile(r"\b[a-z]+(?:-[a-z]+)*-\d{4}\b")
"""A source by its key, which the window shows by its author."""
ENGLISH_WORDS = re.compile(
    r"\b(the|and|of|with|which|what|does|is|are|on|to|from|push|seam|latch|skin|room|tips|first|after|at|value|number|asked|runs|scenario|verdict|what)\b"
)


@pytest.fixture(autouse=True)
def english():
    yield
    tongue.speak(tongue.ENGLISH)


@pytest.fixture(scope="module")
def found():
    return written(ROOT)


def test_there_is_something_of_every_kind(found):
    counts = {kind: len(texts_) for kind, texts_ in found.items()}
    least = {"lessons": 500, "plans": 80, "scenarios": 120, "figures": 4, "card": 450, "glossary": 100,
             "checks": 250}  # fmt: skip
    assert {kind for kind, count in least.items() if counts[kind] < count} == set()


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", [*WHOLE_MESSAGES, "card", "checks"])
def test_every_text_of_the_data_has_its_translation(language, kind, found):
    """A text without one is named here with its file: add a <message> to assets/tongues/taught_ or card_."""
    phrases = Phrases(tongue.catalogue(language))
    if kind == "glossary":  # a meaning may be told sentence by sentence
        told = {text: phrases.tell(text).whole for text in found[kind]}
    elif kind in WHOLE_MESSAGES:
        told = {text: phrases.message(text) is not None for text in found[kind]}
    else:
        told = {text: any(phrases.tell(t).whole for t in (text, KEY.sub("", text))) for text in found[kind]}
    assert [(found[kind][text], text) for text, there in told.items() if not there] == []


def test_a_missing_text_would_be_seen(found, tmp_path):
    """The same reading finds a step that somebody adds to a lesson."""
    lesson = load_lesson(ready_path("01-first-bite"))
    text = ready_path("01-first-bite").read_text(encoding="utf-8")
    more = text.replace('title = "Why the first bite matters"', 'title = "A new step"')
    folder = tmp_path / "assets" / "lessons"
    folder.mkdir(parents=True)
    (folder / "mine.toml").write_text(more, encoding="utf-8")
    assert lesson.steps[0].title in found["lessons"]
    said = set(texts(load_lesson(folder / "mine.toml"))) - set(found["lessons"])
    assert {text for text in said if FIGURE.sub("", text)} == {"A new step"}
    assert Phrases(tongue.catalogue("de")).message("A new step") is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_figures_are_named_alike(language, found):
    held = tongue.translations(language)
    for text in found["lessons"]:
        names = [sorted(FIGURE.findall(words)) for words in (text, held.get(text, text))]
        assert names[0] == names[1], text


@pytest.mark.parametrize("name", ready_lessons())
def test_a_ready_lesson_is_told_in_german_from_its_title_to_its_debrief(name):
    tongue.speak("de")
    walk = LessonWalk()
    walk.open(ready_path(name))
    said = [walk.lesson.title]
    for place in range(len(walk.steps)):
        walk.go(place)
        said += [walk.step.title, walk.words, walk.notes]
    left = [text for text in said if ENGLISH_WORDS.search(tongue.bare(text))]
    assert left == []


@pytest.mark.parametrize("kind", SHEETS)
@pytest.mark.parametrize("name", ["01-first-bite", "05-high-striker", "07-ram-school"])
def test_a_sheet_of_a_ready_lesson_is_german_but_for_its_cautions(name, kind):
    tongue.speak("de")
    path = ready_path(name)
    lesson = told_lesson(load_lesson(path))
    sheet = sheet_of(kind, lesson, results_of(lesson, path), seats=("7",))
    cautions = [words for words in re.split(r"<[^>]+>|\n", "\n".join(sheet.pages)) if AS_IT_IS not in words]
    standards = {f"{s.name}, {s.edition}" for s in lesson.standards} | {s.name for s in lesson.standards}
    left = [w for w in cautions if ENGLISH_WORDS.search(w) and not any(s in w for s in standards)]
    assert left == []


def test_a_lesson_of_one_s_own_keeps_its_words(tmp_path):
    text = ready_path("01-first-bite").read_text(encoding="utf-8")
    mine = text.replace('title = "Why the first bite matters"', 'title = "Our own door, and the reason"')
    tongue.speak("de")
    steps = told_lesson(loads_lesson(mine)).steps
    assert steps[0].title == "Our own door, and the reason"
    assert steps[1].title != loads_lesson(mine).steps[1].title
    german = mine.replace('language = "en"', 'language = "de"')
    assert told_lesson(loads_lesson(german)) == loads_lesson(german)


@pytest.mark.parametrize("chapter", [k for k in range(len(CHAPTERS)) if k not in (CHECKS, DRILLS)])
def test_a_chapter_of_the_model_card_is_german(chapter):
    tongue.speak("de")
    shown = ModelCard()
    shown.show(chapter)
    names = [sources.short(key) for key in sources.all_sources()]
    cells = [re.sub("`.*?`", "", tongue.bare(cell)) for line in shown.page().lines for cell in line]
    cells += [tongue.tr(head[0].upper() + head[1:]) for head in shown.page().heads]
    assert len(cells) > 5
    for name in names:
        cells = [cell.replace(name, "") for cell in cells]
    assert [cell for cell in cells if ENGLISH_WORDS.search(cell)] == []


def test_the_card_is_searched_in_either_language():
    tongue.speak("de")
    shown = ModelCard()
    shown.show(4)
    shown.search("Streckgrenze Außenhaut")
    german = shown.page().lines
    shown.search("skin steel yield")
    assert german[0] in shown.page().lines
    assert "Stahl der Außenhaut, Streckgrenze" in tongue.bare(german[0][0])


def test_a_claim_of_a_check_is_told_with_its_numbers():
    tongue.speak("de")
    said = tongue.tr("narrow tips on the hem lip at the latch, 0.36 m up: what gives first")
    assert said == "schmale Spitzen auf der Falzkante am Schloss, 0,36 m hoch: was zuerst nachgibt"


def test_the_glossary_is_found_by_german_and_english_words():
    tongue.speak("de")
    there = in_tongue(terms())
    for word in ("B-Säule", "post", "Mittelsäule"):
        assert search(there, word)[0].name == "Säule", word
    assert search(there, "Brechstange")[0].name == "Brechstange"
    names = [term.name for term in there]
    assert len(set(names)) == len(names), "two ideas under one German word"


def test_one_german_word_for_one_part(found):
    """What the glossary calls a part, lessons call so too: the trade's terms in both, word by word."""
    held = tongue.translations("de")
    for english, german in (("striker", "chließkeil"), ("ram", "ylinder"), ("rocker", "chweller"),
                            ("latch", "chl"), ("hinge", "charnier"), ("pillar", "äule"),
                            ("spreader", "preizer")):  # fmt: skip
        word = re.compile(rf"\b{english}s?\b(?! head| school)", re.IGNORECASE)
        missing = [
            text
            for kind in WHOLE_MESSAGES
            for text in found[kind]
            if word.search(text.replace("High striker", "")) and german not in held.get(text, text)
        ]
        assert [text for text in missing if "; " not in text and text in held] == [], english


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("1.7 kN and 0.36 m", "1,7 kN and 0,36 m"),
        ("Licence CC0-1.0", "Licence CC0-1.0"),
        ("0.6-1.2 mm", "0,6-1,2 mm"),
        ("moves[0].tool.tip_width_m is 0.9 m", "moves[0].tool.tip_width_m is 0.9 m"),
        ("49 CFR 571.206, S5.1", "49 CFR 571.206, S5.1"),
        ("version 0.1.0 of plan-1.5.toml at 45.", "version 0.1.0 of plan-1.5.toml at 45."),
        (f"{AS_IT_IS}At 0.5 m", f"{AS_IT_IS}At 0.5 m"),
    ],
)
def test_numbers_have_the_decimal_mark_of_the_language(text, said):
    tongue.speak("de")
    assert tongue.decimals(text) == said
    tongue.speak(tongue.ENGLISH)
    assert tongue.decimals(text) == text


def test_plans_of_the_ready_files_carry_no_second_language():
    for path in sorted((ROOT / "assets" / "plans").glob("*.toml")):
        raw = tomllib.loads(path.read_text(encoding="utf-8"))
        assert not any(key.endswith("_de") for key in raw), path.name
    assert card.load().title.startswith("Model card")


def test_an_example_of_own_rules_is_german_and_can_be_read():
    tongue.speak("de")
    text = overlay.example("2026-11-26")
    assert ENGLISH_WORDS.search("".join(line for line in text.splitlines() if line.startswith("#"))) is None
    ours = overlay.loads(text)
    assert ours.words == {"Ansatzpunkt": "Spalt"}
    term = next(t for t in with_local(terms(), ours.words) if t.name == "gap")
    assert term.local == ("Ansatzpunkt",)


def test_a_moment_told_on_a_sheet_keeps_its_move_and_what_it_did_apart():
    tongue.speak("de")
    path = ready_path("05-high-striker")
    lesson = told_lesson(load_lesson(path))
    words = tongue.bare(sheet_of("bridge", lesson, results_of(lesson, path)).plain)
    assert "Vordere Tür schwenken: " in words or "Die vordere Tür schwenken: " in words


def test_a_figure_s_caption_and_text_are_german():
    tongue.speak("de")
    plan = load_plan(ROOT / "assets" / "plans" / "first-bite-lip.toml")
    said = caption(plan, "Narrow tips on the hem lip, to the end.", "", "0123456789abcdef")
    assert said.startswith("Schmale Spitzen auf der Falzkante, bis zum Ende. Wahrer Maßstab.")
    english = said.partition("(Teaching model")
    assert ENGLISH_WORDS.search(english[0]) is None
