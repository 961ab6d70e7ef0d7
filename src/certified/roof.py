"""Slopes of a roof: the theorem of Pythagoras, to 50 digits."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable

from mpmath import mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws

PYTHAGORAS = "theorem of Pythagoras"
TRIANGLE = "whole-number right triangle"
EXAM = "contractor's exam course, worked example at 6 in 12; secondary source"
RISES = tuple(str(rise) for rise in range(1, 24)) + (
    "0.25", "0.5", "1.5", "2.5", "3.5", "4.5", "5.5", "6.75", "7.5", "9.25", "11.999", "12.001", "17.125", "19.875")
ENDS = ("0", "0.001", "0.125", "23.875", "23.999", "24")


def slope(rise: Value) -> mpf:
    """Slope factor = sqrt(1 + (rise / 12)^2)."""
    return sqrt(1 + (number(rise) / 12) ** 2)


def hip(rise: Value) -> mpf:
    """Hip factor = sqrt(1 + 1 + (rise / 12)^2): equal slopes, square corner, so the hip runs at 45 degrees in plan."""
    return sqrt(2 + (number(rise) / 12) ** 2)


def drawn_rises(function: str, count: int) -> list[str]:
    """Rises in thousandths, drawn for one function."""
    source = draws(function)
    return [f"{source.randint(1, 23999) / 1000:.3f}" for _ in range(count)]


def slope_factor() -> Iterable[Case]:
    """sqrt(1 + (rise / 12)^2), and whole-number triangles."""
    made = Builder(PYTHAGORAS)
    for rise in (*RISES, *drawn_rises("slope_factor", 50)):
        made.add("ordinary", {"rise_in_12": rise}, {"slope_factor": slope(rise)})
    made.add("ordinary", {"rise_in_12": "6"}, {"slope_factor": "1.118"},
             kind="worked", source=EXAM, tolerance="0", within="0.0005")
    for rise in ENDS:
        made.add("end", {"rise_in_12": rise}, {"slope_factor": slope(rise)})
    made.add("degenerate", {"rise_in_12": "0"}, {"slope_factor": 1}, kind="limit", source="a flat roof is its plan")
    for rise, factor in (("5", "13/12"), ("9", "5/4"), ("16", "5/3"), ("3.5", "25/24")):
        made.add("degenerate", {"rise_in_12": rise}, {"slope_factor": Fraction(factor)}, kind="limit", source=TRIANGLE)
    return made.cases


def hip_valley_factor() -> Iterable[Case]:
    """sqrt(2 + (rise / 12)^2), and whole-number triangles in space."""
    made = Builder(PYTHAGORAS)
    for rise in (*RISES, *drawn_rises("hip_valley_factor", 50)):
        made.add("ordinary", {"rise_in_12": rise}, {"hip_valley_factor": hip(rise)})
    made.add("ordinary", {"rise_in_12": "6"}, {"hip_valley_factor": "1.50"},
             kind="worked", source=EXAM, tolerance="0", within="0.005")
    for rise in ENDS:
        made.add("end", {"rise_in_12": rise}, {"hip_valley_factor": hip(rise)})
    made.add("degenerate", {"rise_in_12": "0"}, {"hip_valley_factor": sqrt(mpf(2))},
             kind="limit", source="diagonal of a unit square")
    for rise, factor in (("6", "3/2"), ("1", "17/12"), ("14", "11/6")):
        made.add("degenerate", {"rise_in_12": rise}, {"hip_valley_factor": Fraction(factor)},
                 kind="limit", source="whole-number triangle in space")
    return made.cases


def slope_length() -> Iterable[Case]:
    """run x sqrt(1 + (rise / 12)^2)."""
    made = Builder(PYTHAGORAS)
    source = draws("slope_length")

    def add(class_: str, run: str, rise: str) -> None:
        made.add(class_, {"run_ft": run, "rise_in_12": rise}, {"slope_length_ft": number(run) * slope(rise)})

    for run in ("4", "8.5", "11", "13.375", "15", "16.0625", "21", "24.875", "36"):
        for rise in ("2", "3.5", "4", "5", "6", "8", "9", "12", "18"):
            add("ordinary", run, rise)
    for _ in range(15):
        add("ordinary", f"{source.randint(500, 200000) / 1000:.3f}", f"{source.randint(1, 24000) / 1000:.3f}")
    for run in ("0.5", "0.501", "199.999", "200"):
        for rise in ("0", "0.001", "23.999", "24"):
            add("end", run, rise)
    for run, rise, length in (("12", "5", "13"), ("12", "9", "15"), ("12", "16", "20"), ("24", "3.5", "25"),
                              ("20", "9", "25"), ("15", "0", "15"), ("0.5", "0", "0.5"), ("200", "0", "200")):
        made.add("degenerate", {"run_ft": run, "rise_in_12": rise}, {"slope_length_ft": length},
                 kind="limit", source=TRIANGLE if rise != "0" else "a flat roof is its plan")
    return made.cases


FUNCTIONS = {
    "slope_factor": slope_factor,
    "hip_valley_factor": hip_valley_factor,
    "slope_length": slope_length,
}
