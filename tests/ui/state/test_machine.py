"""Each finding has a word and, where it is not good, a remedy; the log holds nothing personal."""

from dataclasses import replace
from pathlib import Path

import pytest

from ui.state.events_log import KEPT, EventsLog, impersonal
from ui.state.machine import ENOUGH, GOOD, LITTLE, Facts, findings, report, runs, verdict

FINE = Facts((4, 6), "a graphics card", None, 8.0, 4.0, 4, (1920, 1080), "~/settings", True, 50.0)


def test_a_good_machine_is_called_good_throughout():
    found = findings(FINE)
    assert {item.word for item in found} == {GOOD}
    assert runs(found)
    assert verdict(found) == "Hemline runs here."


WORSE = [
    ({"gl_version": (2, 1), "pictures": True}, "drawing", ENOUGH),
    ({"gl_version": (0, 0), "pictures": False}, "drawing", LITTLE),
    ({"gl_name": "llvmpipe (LLVM 15.0.6, 256 bits)"}, "drawing", ENOUGH),
    ({"memory_gb": 2.0}, "memory", ENOUGH),
    ({"memory_gb": 1.0}, "memory", LITTLE),
    ({"free_gb": 0.3}, "memory free now", ENOUGH),
    ({"cores": 1}, "processor cores", ENOUGH),
    ({"screen": (1024, 768)}, "screen", ENOUGH),
    ({"screen": (800, 600)}, "screen", LITTLE),
    ({"writable": False}, "folder of the settings", LITTLE),
    ({"disk_gb": 0.1}, "folder of the settings", ENOUGH),
]


@pytest.mark.parametrize(("changes", "what", "word"), WORSE)
def test_what_is_short_is_named_and_has_a_remedy(changes, what, word):
    found = findings(replace(FINE, **changes))
    (item,) = [item for item in found if item.word != GOOD]
    assert (item.what, item.word) == (what, word)
    assert len(item.remedy) > 20
    assert runs(found) == (word != LITTLE)
    assert what in verdict(found)
    assert item.remedy in report(replace(FINE, **changes))


def test_what_cannot_be_seen_is_left_out():
    assert findings(Facts()) == ()


def test_the_log_names_no_person_and_no_folder():
    home = Path.home()
    said = (
        f"plan.toml could not be written to {home}/Jane Roe/Station 4/plan.toml: no room",
        r"C:\Users\jane\Documents\crew-red.toml was not opened",
        "jane-roe.toml was not opened: name a plan",
        'File "/opt/program/ui/app.py", line 3, in start',
    )
    log = EventsLog(("/opt/program",))
    for text in said:
        log.note("said", text)
    for word in ("jane", "roe", "station", "crew", "red.toml", "documents"):
        assert word not in log.text.lower()
    assert 'File "ui/app.py", line 3' in log.text
    assert "(a file ending in .toml)" in log.text
    assert impersonal("5 mm at 3 kN/mm", ()) == "5 mm at 3 kN/mm"


def test_the_log_keeps_the_last_lines_and_says_nothing_twice():
    log = EventsLog()
    for number in range(KEPT + 20):
        log.note("said", f"line {number}")
        log.note("said", f"line {number}")
    lines = log.text.splitlines()
    assert len(lines) == KEPT
    assert lines[-1].endswith(f"line {KEPT + 19}")
