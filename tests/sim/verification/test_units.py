"""Conversions for reading, against exact definitions and against scipy's table of constants."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants

from sim import units
from sim.units import Units


def test_factors_are_the_exact_definitions():
    """NIST Special Publication 811 (2008), appendix B.8: inch, pound-force and foot pound-force."""
    assert units.INCH_M == 0.0254
    # rel: the printed digits of the exact products
    assert pytest.approx(4.4482216152605, rel=1e-15) == units.POUND_FORCE_N
    assert pytest.approx(1.3558179483314004, rel=1e-15) == units.FOOT_POUND_J


def test_factors_agree_with_a_reference_library():
    assert pytest.approx(constants.inch, rel=1e-15) == units.INCH_M
    assert pytest.approx(constants.pound_force, rel=1e-15) == units.POUND_FORCE_N
    assert pytest.approx(constants.foot * constants.pound_force, rel=1e-15) == units.FOOT_POUND_J


@given(st.floats(-1e3, 1e3), st.sampled_from(list(Units)))
def test_what_was_written_is_read_back(value, family):
    # rel 1e-12: two roundings of double precision and no more
    assert units.length_si(units.length(value, family)[0], family) == pytest.approx(
        value, rel=1e-12, abs=1e-300
    )
    assert units.force_si(units.force(value, family)[0], family) == pytest.approx(
        value, rel=1e-12, abs=1e-300
    )


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (units.length_text(0.0625, Units.METRIC), "62\u00a0mm"),
        (units.length_text(0.0007, Units.METRIC), "0.7\u00a0mm"),
        (units.length_text(0.0508, Units.IMPERIAL), "2.0\u00a0in"),
        (units.length_text(0.0, Units.METRIC), "0\u00a0mm"),
        (units.length_text(0.0, Units.IMPERIAL), "0.0\u00a0in"),
        (units.length_text(0.007, Units.IMPERIAL), "0.28\u00a0in"),
        (units.length_text(-0.01, Units.METRIC), "\u221210\u00a0mm"),
        (units.length_text(-0.00001, Units.METRIC), "0.0\u00a0mm"),
        (units.force_text(8140.0, Units.METRIC), "8.1\u00a0kN"),
        (units.force_text(8140.0, Units.IMPERIAL), "1830\u00a0lbf"),
        (units.energy_text(412.3, Units.METRIC), "412\u00a0J"),
        (units.energy_text(412.3, Units.IMPERIAL), "304\u00a0ft\u00b7lbf"),
    ],
)
def test_numbers_are_written_as_a_reader_expects(text, words):
    assert text == words
