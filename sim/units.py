"""Units for reading: SI inside, and kilonewtons and millimetres or pounds-force and inches at the edge.

References
----------
National Institute of Standards and Technology, Special Publication 811 (2008), appendix B:
the international inch is 0.0254 m, the pound 0.453 592 37 kg, standard gravity 9.806 65 m/s^2; all exact.
"""

from __future__ import annotations

import enum

INCH_M = 0.0254
FOOT_M = 12 * INCH_M
POUND_KG = 0.45359237
STANDARD_GRAVITY_M_PER_S2 = 9.80665
POUND_FORCE_N = POUND_KG * STANDARD_GRAVITY_M_PER_S2
FOOT_POUND_J = FOOT_M * POUND_FORCE_N

NO_BREAK = "\u00a0"
MINUS = "\u2212"


class Units(enum.Enum):
    """The two families a reader can choose."""

    METRIC = "metric"
    IMPERIAL = "imperial"


def length(value_m: float, units: Units) -> tuple[float, str]:
    """Return a length as (number, unit): millimetres or inches."""
    return (value_m * 1e3, "mm") if units is Units.METRIC else (value_m / INCH_M, "in")


def force(value_n: float, units: Units) -> tuple[float, str]:
    """Return a force as (number, unit): kilonewtons or pounds-force."""
    return (value_n / 1e3, "kN") if units is Units.METRIC else (value_n / POUND_FORCE_N, "lbf")


def energy(value_j: float, units: Units) -> tuple[float, str]:
    """Return an energy as (number, unit): joules or foot-pounds."""
    return (value_j, "J") if units is Units.METRIC else (value_j / FOOT_POUND_J, "ft\u00b7lbf")


def length_si(number: float, units: Units) -> float:
    """Return the length [m] of a number that a reader wrote in millimetres or inches."""
    return number / 1e3 if units is Units.METRIC else number * INCH_M


def force_si(number: float, units: Units) -> float:
    """Return the force [N] of a number that a reader wrote in kilonewtons or pounds-force."""
    return number * 1e3 if units is Units.METRIC else number * POUND_FORCE_N


def plain(number: float, decimals: int) -> str:
    """Return the number with a true minus sign, and no sign at all on a rounded zero."""
    text = f"{abs(number):.{decimals}f}"
    return f"{MINUS}{text}" if number < 0 and float(text) != 0 else text


def length_text(value_m: float, units: Units) -> str:
    """Return a length in words, such as "62 mm" or "2.4 in"; small ones get more decimals."""
    number, unit = length(value_m, units)
    thin, small = 0.0 < abs(value_m) < 0.0045, 0.0 < abs(value_m) < INCH_M
    decimals = (1 if thin else 0) if units is Units.METRIC else (3 if thin else 2 if small else 1)
    return f"{plain(number, decimals)}{NO_BREAK}{unit}"


def force_text(value_n: float, units: Units) -> str:
    """Return a force in words, such as "8.1 kN" or "1820 lbf" (to ten pounds: the model knows no better)."""
    number, unit = force(value_n, units)
    if units is Units.METRIC:
        return f"{plain(number, 1)}{NO_BREAK}{unit}"
    return f"{plain(round(number, -1), 0)}{NO_BREAK}{unit}"


def energy_text(value_j: float, units: Units) -> str:
    """Return an energy in words, such as "412 J" or "304 ft·lbf"."""
    number, unit = energy(value_j, units)
    return f"{plain(number, 0)}{NO_BREAK}{unit}"
