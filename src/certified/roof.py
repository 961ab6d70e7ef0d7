"""Slopes of a roof: the theorem of Pythagoras, to 50 digits."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable

from mpmath import mpf, sqrt

from case_file import Builder, Case, Value, draws, exact

PYTHAGORAS = "theorem of Pythagoras"
RISES = tuple(str(rise) for rise in range(1, 24)) + ("0.25", "0.5", "2.5", "4.5", "6.75", "9.25", "11.999", "17.125")


def number(value: Value) -> mpf:
    """An exact input as a 50-digit number."""
    fraction = exact(value)
    return mpf(fraction.numerator) / fraction.denominator


def slope(rise: Value) -> mpf:
    """Slope factor = sqrt(1 + (rise / 12)^2)."""
    return sqrt(1 + (number(rise) / 12) ** 2)


def hip(rise: Value) -> mpf:
    """Hip factor = sqrt(1 + 1 + (rise / 12)^2): equal slopes, square corner, so the hip runs at 45 degrees in plan."""
    return sqrt(2 + (number(rise) / 12) ** 2)


def slope_factor() -> Iterable[Case]:
    made = Builder(PYTHAGORAS)
    for rise in RISES:
        made.add("ordinary", {"rise_in_12": rise}, {"slope_factor": slope(rise)})
    for rise in ("0", "0.001", "23.999", "24"):
        made.add("end", {"rise_in_12": rise}, {"slope_factor": slope(rise)})
    made.add("degenerate", {"rise_in_12": "0"}, {"slope_factor": 1}, kind="limit", source="a flat roof is its plan")
    for rise, factor in (("5", Fraction(13, 12)), ("9", Fraction(5, 4)), ("16", Fraction(5, 3)), ("3.5", Fraction(25, 24))):
        made.add("degenerate", {"rise_in_12": rise}, {"slope_factor": factor},
                 kind="limit", source="whole-number right triangle")
    return made.cases


FUNCTIONS = {"slope_factor": slope_factor}
