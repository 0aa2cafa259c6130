"""Settings, looks, actions, cards, the curve as typed, the reading and the section."""

import dataclasses
import math
from types import SimpleNamespace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from meshes.body import build_body
from meshes.door import build_door
from meshes.door_shape import DoorShape
from sim.move_words import tilt_words
from sim.plan import BeltPoint, EdgePoint, Plan, Spread, Squeeze, Tool
from sim.record import Event
from sim.units import Units
from ui.state import actions, settings, wording
from ui.state.cards import cards, place_of
from ui.state.curve_form import CurveError, as_text, from_text
from ui.state.locks import Locks
from ui.state.reading import Reading, left_behind, read, shares_of
from ui.state.section_view import section_view
from ui.state.session import Session
from ui.state.steering import CannotSteer, tilted
from ui.state.timeline import Timeline
from ui.state.view_options import LAYER_WORDS, Shown, ViewOptions, ViewState
from ui.state.wording import in_units


def test_settings_that_cannot_be_read_are_put_aside_and_told_once(tmp_path):
    (tmp_path / settings.FILE_NAME).write_text('{"theme": "da')
    said = settings.set_aside_broken(tmp_path)
    assert said.count("settings-unreadable.json") == 1
    assert (tmp_path / "settings-unreadable.json").read_text() == '{"theme": "da'
    assert settings.set_aside_broken(tmp_path) == ""
    assert settings.save(settings.Settings(theme="dark"), tmp_path)
    assert settings.set_aside_broken(tmp_path) == ""
    assert settings.load(tmp_path).theme == "dark"


def test_settings_come_back_as_they_were(tmp_path):
    kept = settings.Settings(True, ("a.toml", "b.toml"), "dark", True, True)
    assert settings.save(kept, tmp_path / "new")
    assert settings.load(tmp_path / "new") == kept


@pytest.mark.parametrize("text", ["", "{", "[1]", "null", '{"recent": 3, "theme": 7}', "\x00"])
def test_a_damaged_file_costs_the_memory_and_not_the_start(tmp_path, text):
    (tmp_path / settings.FILE_NAME).write_text(text)
    assert settings.load(tmp_path) == settings.Settings()


def test_a_folder_that_cannot_be_written_is_said_and_not_raised(tmp_path):
    (tmp_path / "file").write_text("")
    assert not settings.save(settings.Settings(), tmp_path / "file")


def test_recent_files_newest_first_each_once(tmp_path):
    kept = settings.Settings()
    for name in ("a", "b", "a", *"cdefghij"):
        kept = kept.with_recent(tmp_path / name)
    assert len(kept.recent) == settings.RECENT_LIMIT
    assert kept.recent[0] == str(tmp_path / "j")
    assert len(set(kept.recent)) == len(kept.recent)


@pytest.mark.parametrize("layer", LAYER_WORDS)
def test_three_key_presses_bring_a_layer_back(layer):
    options = ViewOptions()
    modes = []
    for _ in range(3):
        options = options.with_next(layer)
        modes.append(options.layers[layer])
    assert modes == [Shown.SEE_THROUGH, Shown.OFF, Shown.SOLID]
    assert options == ViewOptions()


def test_projector_type_is_never_below_24_px_on_a_full_screen():
    assert 14 * ViewOptions(projector=True).text_scale(1920) >= 24.0
    assert ViewOptions().text_scale(1920) == 1.0


@pytest.mark.parametrize(
    ("width", "drawer", "shown"),
    [(1280, None, (True, True)), (1024, None, (False, False)), (1024, "plan", (True, False))],
)
def test_columns_become_drawers_where_there_is_no_room(width, drawer, shown):
    assert ViewOptions(drawer=drawer).columns(width) == shown
    assert ViewOptions(drawer=drawer, stage_only=True).columns(width) == (False, False)


def test_view_state_tells_only_real_changes():
    state, told = ViewState(), []
    state.changed.connect(lambda: told.append(True))
    state.set(ViewOptions())
    state.set(ViewOptions(theme="dark"))
    assert told == [True]


def test_no_key_means_two_things():
    rows = [*actions.FILE, *actions.PLAN, *actions.TEACH, *actions.VIEW, *actions.HELP]
    keys = [keys for _, _, keys in rows if keys] + [key for _, _, key in actions.STEER]
    keys += [key for same in actions.SAME_KEYS.values() for key in same[1:]]
    keys += [str(number) for number in range(1, actions.LAYER_KEYS + 1)] + ["Space"]
    assert len(keys) == len(set(keys))
    names = [name for name, _, _ in rows if name != actions.SEPARATOR] + [
        name for name, _, _ in actions.STEER
    ]
    assert len(names) == len(set(names))


@given(st.lists(st.floats(0.001, 0.06), min_size=9, max_size=9), st.sampled_from(list(Units)))
def test_a_curve_left_as_shown_keeps_its_exact_values(gaps, units):
    openings = (0.0, *(float(value) for value in np.cumsum(gaps)))
    tool = Tool(opening_m=openings, force_n=tuple(40e3 + 0.123 * i for i in range(10)))
    assert from_text(tool, as_text(tool, units), units) == tool


def test_a_typed_point_is_taken_in_the_units_shown():
    rows = list(as_text(Tool(), Units.IMPERIAL))
    rows[1] = ("3", "9000")
    tool = from_text(Tool(), rows, Units.IMPERIAL)
    # 3 in and 9000 lbf by the exact definitions of the inch and of the pound-force
    assert tool.opening_m[1] == pytest.approx(0.0762, rel=1e-12)
    assert tool.force_n[1] == pytest.approx(40033.9945373445, rel=1e-12)
    assert tool.opening_m[2:] == Tool().opening_m[2:]


@pytest.mark.parametrize(
    ("row", "pair", "words"),
    [
        (2, ("30", "x"), "force of point 3 is not a number"),
        (1, ("0", "40"), "Point 2 of the curve opens no wider"),
        (0, ("-1", "40"), "opens less than nothing"),
        (4, ("280", "0"), "Point 5 of the curve has no force"),
        (3, ("nan", "1"), "out of any range"),
    ],
)
def test_a_curve_that_cannot_be_used_is_refused_in_a_sentence(row, pair, words):
    rows = list(as_text(Tool(), Units.METRIC))
    rows[row] = pair
    with pytest.raises(CurveError, match=words):
        from_text(Tool(), rows, Units.METRIC)


def test_a_comma_is_a_decimal_point_too():
    rows = [(o.replace(".", ","), f.replace(".", ",")) for o, f in as_text(Tool(), Units.METRIC)]
    assert from_text(Tool(), rows, Units.METRIC).force_n == pytest.approx(Tool().force_n, abs=51.0)


def test_cards_say_what_each_move_does():
    session = Session(Plan(moves=(Spread(), Squeeze())))
    first, second = cards(session)
    assert first.title == "Spread at the latch edge"
    assert first.selected and not second.selected
    assert first.outcome == ""
    assert place_of(Spread(), Units.METRIC).startswith(
        "5\u00a0mm deep, 360\u00a0mm up, tilt 45\u00b0 outward"
    )
    assert "14.2\u00a0in up" in place_of(Spread(), Units.IMPERIAL)
    assert place_of(Spread(door=BeltPoint()), Units.METRIC).startswith("outer lip, 550\u00a0mm along")


def test_a_card_says_of_a_cut_through_what_trim_hid_that_it_did():
    """The cut was done like any other, its card said, and no more."""
    session = Session(Plan(moves=(Spread(), Squeeze())))
    hidden, plain = (
        SimpleNamespace(
            result=SimpleNamespace(sentence="It is cut open.", plan_effect="done", events=list(events))
        )
        for events in ((Event("caution", "belt anchor behind trim", 0.0, 0.0),), ())
    )
    session.record = lambda index: (hidden, plain)[index]
    assert [card.effect for card in cards(session)] == [wording.MET_HIDDEN, "Done: no room was lost"]


def test_sentences_are_written_in_the_units_chosen():
    """25.4 mm are one inch, 4.448 kN a thousand pounds-force."""
    words = "The latch let go at 17 mm; 889 mm of seam had parted at 4.4 kN (5 mm2)."
    assert in_units(words, Units.METRIC) == words
    turned = in_units(words, Units.IMPERIAL).replace("\u00a0", " ")
    assert turned == "The latch let go at 0.67 in; 35.0 in of seam had parted at 990 lbf (5 mm2)."


def test_inches_are_written_out_before_the_word_in():
    said = "the seam parted, 135 mm in all; the crease of 295 mm in, came 38 mm back out"
    turned = in_units(said, Units.IMPERIAL).replace("\u00a0", " ")
    assert turned == "the seam parted, 5.3 inches in all; the crease of 11.6 inches in, came 1.5 in back out"


@pytest.mark.parametrize(("degrees", "words"), [(0, "straight"), (30, "outward"), (-10, "inward")])
def test_a_tilt_is_said_with_its_side(degrees, words):
    assert words in tilt_words(math.radians(degrees))


def test_the_reading_orders_rungs_and_shares_and_says_what_changed(frame):
    line = Timeline()
    start = frame()
    ladder = (("latch", "latch free", 0.2), ("seam", "seam parting", 0.9))
    ledger = {"work of the tips": 100.0, "stored": 20.0, "folding skin": 70.0, "seam peel": 9.5, "gap": 0.5}
    line.show(start, [[frame(0.0), frame(0.01, force_n=8e3, ladder=ladder, ledger=ledger, gap_m=0.042)]])
    reading = read(line, None, "Live.", start)
    assert [rung.part for rung in reading.rungs] == ["seam", "latch"]
    assert [share.energy_j for share in reading.shares] == [70.0, 20.0, 9.5]
    assert reading.work_j == 100.0
    assert reading.sentence == "Live."
    assert reading.cursor == 1
    assert reading.clearance_change_m == pytest.approx(-0.008, abs=1e-12)


def test_the_books_shown_are_of_this_move_alone_and_add_up(frame):
    """What a wreck or an earlier move spent, tens of kilojoules, is no work of this move."""
    before = {"work of the tips": 34687.0, "stored": 900.0, "weight": 0.0, "folding pillar": 29957.0}
    now = {"work of the tips": 34787.0, "stored": 880.0, "weight": 0.0, "folding pillar": 29957.0}
    went = {"folding skin": 90.0, "seam peel": 29.2, "friction": 0.4, "tear": 0.4}
    line = Timeline()
    first = frame(0.0, move=1, ledger={**before, **dict.fromkeys(went, 0.0)})
    line.show(frame(), [[frame(0.0)], [first, frame(0.01, move=1, ledger={**now, **went})]])
    reading = read(line, None, "", frame())
    assert [(share.words, share.energy_j) for share in reading.shares] == [
        ("folding the outer skin", 90.0),
        ("peeling the seam", pytest.approx(29.2, rel=1e-12)),
    ]
    assert (reading.work_j, reading.sprung_j) == (100.0, 20.0)
    # work and what sprang back are what went somewhere: the two lines and 0.8 J that are too little for one
    assert reading.spent_j - sum(share.energy_j for share in reading.shares) == pytest.approx(0.8, abs=1e-9)
    line.go(2)
    assert read(line, None, "", frame()).shares == ()


def test_what_blades_met_behind_trim_stays_told_in_the_moves_after_it(frame):
    line, met = Timeline(), Event("caution", "belt anchor behind trim", 0.0, 0.0)
    cut = [frame(0.0), dataclasses.replace(frame(0.0), events=(met, met))]
    line.show(frame(), [cut, [frame(0.0, move=1), frame(0.01, move=1)]])
    said = []
    for position in range(len(line)):
        line.go(position)
        said.append(read(line, None, "", frame()).cautions)
    assert said == [(), (), *3 * [("belt anchor behind trim",)]][-len(said) :]
    assert left_behind(read(line, None, "", frame())) == "Cautions so far: belt anchor behind trim"
    assert left_behind(Reading(sharp_edges=2)) == "Sharp edges: 2"


def test_where_a_pillar_has_spots_the_books_name_them_with_the_seam():
    books = {"seam peel": 30.0, "seam slip": 20.0}
    assert [share.words for share in shares_of(books)] == ["peeling the seam", "shearing the seam"]
    assert [share.words for share in shares_of(books, side=True)] == [
        "peeling seam and spots", "shearing seam and spots",
    ]  # fmt: skip


def test_a_spread_at_the_belt_has_no_tilt_to_tell_or_to_turn():
    belt = Spread(BeltPoint(), tilt_rad=0.7854)
    assert "tilt" not in place_of(belt, Units.METRIC)
    assert "tilt" in place_of(Spread(EdgePoint()), Units.METRIC)
    with pytest.raises(CannotSteer, match="along the line between its tips"):
        tilted(belt, 0.1)


@pytest.mark.parametrize(("depth", "inward"), [(0.005, 0.0), (0.05, 0.006), (0.12, 0.032)])
def test_the_section_draws_the_pad_where_the_door_is(depth, inward):
    """Shut face: leans 12 mm inwards over 100 mm; past the bend the pad lies along the inner panel."""

    class Model:
        mesh = build_door(DoorShape())
        body = build_body(DoorShape())

        @classmethod
        def panel(cls, _place):
            return cls  # the only door there is

    view = section_view(Model, Spread(door=EdgePoint(depth_m=depth)))
    x, y = view.pad.mean(axis=0)
    # The pad of a shallow tip begins at the lip: its middle is not below its depth. 1 mm: the edge leans.
    assert x == pytest.approx(inward, abs=1.5e-3)
    assert y == pytest.approx(-min(max(depth, 0.01), 0.1), abs=1e-3)
    assert section_view(Model, Spread(door=BeltPoint())) is None


def test_a_result_that_is_not_settled_says_so_first():
    told = wording.told("The latch let go at 17 mm. The tips were behind the inner bend.", "not settled")
    assert told.startswith("Not settled: ")
    assert "The latch let go at 17 mm" in told
    assert wording.told("The latch let go at 17 mm.", "gained") == "The latch let go at 17 mm."


def test_every_plan_word_of_the_mechanics_is_explained():
    words = {"gained", "spent", "lost ground", "stop here", "not settled", "eased", "wrecked", "done"}
    assert set(wording.EFFECT_WORDS) == words
    for word, told in wording.EFFECT_WORDS.items():
        assert told.lower().startswith(f"{word}: ")


def test_what_the_teacher_shut_is_still_shut_the_next_time(tmp_path):
    locks = Locks()
    locks.turn_all()
    locks.turn("map")
    assert settings.save(settings.Settings(shut=tuple(sorted(locks.shut))), tmp_path)
    again = Locks()
    again.restore((*settings.load(tmp_path).shut, "no such thing"))
    assert again.shut == {"answers", "ladder", "arrow"}
    (tmp_path / settings.FILE_NAME).write_text('{"shut": 3}')
    assert settings.load(tmp_path).shut == ()


@pytest.mark.parametrize(
    ("part", "words"),
    [
        ("outer skin", "skin tearing"),
        ("pillar", "pillar tearing"),
        ("roof rail", "rail tearing"),
        ("inner panel", "sheet tearing"),
    ],
)
def test_a_tear_is_told_of_the_sheet_that_tears(part, words):
    """The mark on the time line says what tears: on a pillar it is no skin."""
    assert wording.event_words(Event("skin tearing", part, 0.02, 900.0)) == words
    assert wording.event_words(Event("seam parting", part, 0.02, 900.0)) == "seam parting"
