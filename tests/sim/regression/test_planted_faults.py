"""Tests that would go on passing with a broken program prove nothing: two planted faults are seen.

The whole table is run by hand: ``python tests/plant_faults.py``.
"""

import pytest

from tests import plant_faults


def test_every_fault_can_be_put_where_it_belongs():
    for fault in plant_faults.FAULTS:
        text = (plant_faults.ROOT / fault.file).read_text(encoding="utf-8")
        assert text.count(fault.old) == 1, fault.name
        assert fault.new not in text, fault.name


@pytest.mark.slow
@pytest.mark.parametrize("name", ["arrow mirrored", "latch released at half its limit"])
def test_planted_fault_is_seen(name):
    (fault,) = [fault for fault in plant_faults.FAULTS if fault.name == name]
    assert plant_faults.sound((fault,))
    assert plant_faults.seen(fault)
