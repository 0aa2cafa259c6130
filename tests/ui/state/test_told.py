"""What the mechanics say, in another language: every template, kind, part and caution has its German."""

import json
import re
import tomllib
from pathlib import Path

import pytest

from sim import card, move_words
from sim.door_model import build_model
from sim.event_kinds import KINDS
from sim.outcome import HAPPENS, SHARE_WORDS, rung_words
from sim.planfile import load_plan, loads_plan
from sim.problems import PlanError
from sim.push import make_push
from ui.state import tongue
from ui.state.glossary import terms
from ui.state.phrases import AS_IT_IS, SLOT, Phrases
from ui.state.sheets import bridge
from ui.state.signs import hazards, signs
from ui.state.told_words import told
from ui.state.wording import EFFECT_WORDS
from ui.state.wording import told as settled

ROOT = Path(__file__).resolve().parents[3]
LESSONS = ROOT / "assets" / "lessons"
LANGUAGES = [code for code in tongue.TONGUES if code != tongue.ENGLISH]
NO_SENTENCES = {
    "Callable[[Plan], tuple[DoorModel, tuple[MoveRecord, ...]]]", "; 7 7 not settled", "pillar 7",
    "7lower hinge", "7upper hinge", "7 cut", "pillar start_ring",
    "Python 7", "solver's answers", "7&nbsp;7",
    "7 door", "77 hinge", "7 the 7", "7 7 wheel", "7 door, ",
    " color:7;", "{7.first}",
    "7 of 7 as the model has it.7 7", ", 777 than at the start", "map latch_edge", "map hinge_edge", "map 7",
    "door 7", "7 7 This sheet is kept by seat number, in your service's records.",
    ("The tips went 7 mm in and opened 7 mm: the cut end went 7 mm down and 7 mm 7, the stub 7 mm up; 7; 7. "
     "7."),
}  # fmt: skip
"""Names that no reader sees; sentences that run together with 7 in all their gaps (tested below as said)."""


@pytest.fixture(autouse=True)
def english():
    yield
    tongue.speak(tongue.ENGLISH)


@pytest.fixture(scope="module")
def german():
    return Phrases(tongue.catalogue("de"))


def left(phrases, texts):
    """Return what of some texts is left in English."""
    return [text for text in texts if text and not phrases.tell(text).whole]


@pytest.fixture(scope="module")
def found():
    return told(ROOT)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_template_of_the_program_has_its_translation(language, found):
    assert len(found) > 1500
    missing = left(Phrases(tongue.catalogue(language)), (text for text in found if text not in NO_SENTENCES))
    assert [(found[text], text) for text in missing] == []


def test_no_exception_has_gone_out_of_use(found):
    assert NO_SENTENCES - set(found) == set()


def test_kinds_parts_effects_and_moves(german):
    words = [*KINDS, *EFFECT_WORDS, *EFFECT_WORDS.values(), *(share for _, share in SHARE_WORDS)]
    for part in ("latch", "upper hinge", "rear lower hinge", "outer skin", "inner panel", "seam", "pillar"):
        words += [rung_words(part, kind) for kind in KINDS]
        words += [said.format(part=part) for said in HAPPENS.values()]
    for verbs in (entry.verbs for entry in move_words.WORDS.values()):
        words += verbs
    assert left(german, words) == []


def test_cautions_signs_and_words_of_the_trade(german):
    words = [text for card_ in hazards().items() for text in card_]
    for sign in signs().values():
        words += [sign.screen, sign.look, sign.listen, sign.feel, sign.stop]
    words += [text for term in terms() for text in (term.name, term.meaning)]
    assert len(words) > 150
    assert left(german, words) == []


def test_what_the_model_card_claims(german):
    """What is modelled and what is not; its failures hold figures that change with the runs."""
    shown = card.load()
    assert left(german, (shown.title, shown.lead, *shown.modelled, *shown.left_out)) == []


def test_a_caution_stands_in_german_with_its_english():
    tongue.speak("de")
    for words in hazards().values():
        both = tongue.with_english(words)
        assert both.startswith(tongue.tr(words))
        assert both.endswith(f"{AS_IT_IS}{words}")
        assert tongue.tr(both) == both, "the English beside it was translated too"
    tongue.speak(tongue.ENGLISH)
    assert tongue.with_english("Anything.") == "Anything."


KEPT = (
    "first-bite-lip",
    "first-bite-bend",
    "high-striker-fold",
    "pinch-then-spread",
    "one-cut",
    "ram-off-centre",
)
"""An edge push, one behind the bend, a fold-down with rams and cuts, a squeeze, a pillar cut, a ram."""


@pytest.mark.parametrize("name", KEPT)
def test_a_solved_plan_is_told_without_english(german, name):
    moves = load_plan(ROOT / "assets" / "plans" / f"{name}.toml").moves
    said: list[str] = []
    for move in moves:
        said += [
            move_words.title_of(move),
            move_words.words_of(move).place(move, lambda value: f"{1e3 * value:.0f} mm"),
        ]
    for result in json.loads((LESSONS / "solved" / f"{name}.json").read_text(encoding="utf-8"))["results"]:
        said += [settled(result["sentence"], result["plan_effect"]), *result["metal"], *result["seats"]]
        said += [f"{event['part']}: {event['kind']}" for event in result["events"]]
    assert len(said) > 3
    assert left(german, said) == []


def test_a_bridge_sheet_is_german_with_its_cautions_in_both():
    tongue.speak("de")
    words = bridge([], "A door", more=KINDS).plain
    assert "Zuerst gibt nach" in words
    assert "Das Schloss gibt frei" in words
    assert "First to give" not in words
    assert "The latch lets go" not in words
    assert "Before metal work: scene protected" in words
    assert "Vor der Arbeit am Metall: Einsatzstelle gesichert" in words


def test_word_order_and_articles_are_german(german):
    told_ = german.tell(
        "The upper hinge let go at 45 mm; the latch carried about half of what it can hold at most; 3 mm "
        "less clearance. The tips were on the shut-face edge, so the inner structure carried the push."
    )
    assert told_.text == (
        "Das obere Scharnier gab bei 45 mm frei; das Schloss trug höchstens etwa die Hälfte von dem, was es "
        "halten kann; 3 mm weniger Abstand. Die Spitzen standen an dem Rand der Stirnfläche; die innere "
        "Struktur trug den Druck."
    )
    assert german.tell("1 spot of the pillar popped").text == "1 Punkt der Säule sprang auf"
    assert german.tell("4 spots of the pillar popped").text == "4 Punkte der Säule sprangen auf"


def test_a_refused_plan_is_told_in_german_with_its_field(german):
    path = ROOT / "assets" / "plans" / "edge-at-latch.toml"
    text = re.sub(r"depth_m = [\d.]+", "depth_m = -0.01", path.read_text(encoding="utf-8"))
    plan = loads_plan(text.replace("[car]", "[car]\nlattice_spacing_m = 0.06"))
    with pytest.raises(PlanError) as problem:
        make_push(build_model(plan.car), plan.moves[0])
    words = german.tell(f"It cannot be done so: {problem.value}")
    assert words.whole
    assert words.text.startswith("So geht es nicht: ")
    assert problem.value.field in words.text


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_translation_fills_only_slots_its_source_has(language):
    for messages in tongue.catalogue(language).values():
        for source, said in messages.items():
            names = [{slot[1] for slot in SLOT.finditer(text)} for text in (source, said)]
            assert names[1] <= names[0], source


def test_a_lesson_s_own_text_is_left_alone(german):
    """Prose of a lesson is not taken to pieces: a text half in each language would help nobody."""
    lessons = [tomllib.loads(p.read_text(encoding="utf-8")) for p in sorted(LESSONS.glob("0[1-8]*.toml"))]
    prose = [
        step["words"] for lesson in lessons for step in lesson["steps"] if len(step.get("words", "")) > 80
    ]
    assert len(prose) > 20
    mixed = [text for text in prose if not german.tell(text).whole and german.tell(text).text != text]
    assert mixed == []
