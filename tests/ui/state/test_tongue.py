"""A translation holds every word of the window, keeps numbers and keys, and never is the only caution."""

import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as Tree
from collections import Counter
from pathlib import Path

import pytest

from ui.state import tongue
from ui.state.finder import entries, find
from ui.state.phrases import AS_IT_IS, FORMS, Phrases
from ui.state.tongue_words import literals, tables

ROOT = Path(__file__).resolve().parents[3]
NOT_THE_WINDOWS = {"ui/environment.py", "ui/start.py", "ui/command.py"}
"""What these say, they say before there is a window, or with none."""
LANGUAGES = [code for code in tongue.TONGUES if code != tongue.ENGLISH]


@pytest.fixture(autouse=True)
def english():
    yield
    tongue.speak(tongue.ENGLISH)


def wanted():
    found = [text for text, place in literals(ROOT).items() if place not in NOT_THE_WINDOWS]
    return dict.fromkeys([*found, *tables()])


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_word_of_the_window_is_missing(language):
    held = tongue.translations(language)
    assert len(wanted()) > 250
    assert [text for text in wanted() if text not in held] == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_text_is_told_in_two_places_of_which_only_the_later_is_heard(language):
    told = []
    for name in tongue.FILES:
        root = Tree.parse(ROOT / "assets" / "tongues" / f"{name}_{language}.ts").getroot()
        for context in root.iter("context"):
            if context.findtext("name") not in FORMS:
                told += [message.findtext("source") for message in context.iter("message")]
    assert len(told) > 4000
    assert [text for text, count in Counter(told).items() if count > 1] == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_numbers_and_bracketed_keys_are_kept(language):
    keys = {"Return": "Eingabe", "Page Down": "Bild ab", "Page Up": "Bild auf", "Home": "Pos1"}
    for source, said in tongue.translations(language).items():
        numbers = [sorted(re.findall(r"\d+|#", text.replace("Pos1", ""))) for text in (source, said)]
        assert numbers[0] == numbers[1], source
        for key in re.findall(r"\(([A-Z]\d?|Return|Home|Page \w+)\)$", source):
            assert f"({keys.get(key, key)})" in said, source


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_caution_is_never_without_its_english(language):
    for name in ("caution", "before-metal", "line"):
        english = tongue.caution(name)
        tongue.speak(language)
        both = tongue.caution(name)
        assert tongue.tr(both).endswith(both.partition(AS_IT_IS)[2])
        tongue.speak(tongue.ENGLISH)
        assert both.replace(AS_IT_IS, "").endswith(english)
        assert len(both) > 1.8 * len(english)
        assert both.count("\n\n") >= english.count("\n\n") + 1


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_draft_says_that_it_is_one(language):
    assert "draft, not reviewed" in tongue.TONGUES[language]
    for name in tongue.FILES:
        text = (ROOT / "assets" / "tongues" / f"{name}_{language}.ts").read_text(encoding="utf-8")
        assert "Draft, not reviewed" in text
        assert text.count('type="unfinished"') == text.count("<message>")


def test_what_is_not_known_stays_english_and_numbers_pass(monkeypatch):
    monkeypatch.setattr(tongue._Spoken, "phrases", Phrases({"": {"# nodes, ready": "# Knoten, bereit"}}))
    assert tongue.tr("1289 nodes, ready") == "1289 Knoten, bereit"
    assert tongue.tr("something else") == "something else"


def test_an_action_is_found_in_either_language():
    tongue.speak("de")
    german = entries()
    assert find("rückgängig", german)[0].name == "undo"
    assert find("undo", german)[0].name == "undo"


def test_an_unknown_language_is_english():
    tongue.speak("xx")
    assert tongue.spoken() == tongue.ENGLISH
    assert tongue.tr("Quit") == "Quit"


@pytest.mark.parametrize("name", tongue.FILES)
def test_the_linguist_tools_read_the_file(tmp_path, name):
    """Qt's own compiler of translations takes the file as it is."""
    tool = shutil.which("pyside6-lrelease", path=str(Path(sys.executable).parent)) or shutil.which("lrelease")
    if tool is None:
        pytest.skip("Qt's lrelease is not installed")
    source = ROOT / "assets" / "tongues" / f"{name}_de.ts"
    done = subprocess.run(
        [tool, str(source), "-qm", str(tmp_path / "de.qm")], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    said = re.search(r"Generated (\d+) translation", done.stdout)
    assert said is not None
    assert int(said[1]) == source.read_text(encoding="utf-8").count("<message>")
