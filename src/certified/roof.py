"""Slopes of a roof: the theorem of Pythagoras, to 50 digits."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping

from mpmath import mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws

PYTHAGORAS = "theorem of Pythagoras"
TRIANGLE = "whole-number right triangle"
EXAM = "contractor's exam course, worked example at 6 in 12; secondary source"
RISES = tuple(str(rise) for rise in range(1, 24)) + (
    "0.25",
    "0.5",
    "1.5",
    "2.5",
    "3.5",
    "4.5",
    "5.5",
    "6.75",
    "7.5",
    "9.25",
    "11.999",
    "12.001",
    "17.125",
    "19.875",
)
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
    for rise in (*RISES, *drawn_rises("slope_factor", 55)):
        made.add("ordinary", {"rise_in_12": rise}, {"slope_factor": slope(rise)})
    made.add(
        "ordinary",
        {"rise_in_12": "6"},
        {"slope_factor": "1.118"},
        kind="worked",
        source=EXAM,
        tolerance="0",
        within="0.0005",
    )
    for rise in ENDS:
        made.add("end", {"rise_in_12": rise}, {"slope_factor": slope(rise)})
    made.add("degenerate", {"rise_in_12": "0"}, {"slope_factor": 1}, kind="limit", source="a flat roof is its plan")
    for rise, factor in (("5", "13/12"), ("9", "5/4"), ("16", "5/3"), ("3.5", "25/24")):
        made.add("degenerate", {"rise_in_12": rise}, {"slope_factor": Fraction(factor)}, kind="limit", source=TRIANGLE)
    return made.cases


def hip_valley_factor() -> Iterable[Case]:
    """sqrt(2 + (rise / 12)^2), and whole-number triangles in space."""
    made = Builder(PYTHAGORAS)
    for rise in (*RISES, *drawn_rises("hip_valley_factor", 55)):
        made.add("ordinary", {"rise_in_12": rise}, {"hip_valley_factor": hip(rise)})
    made.add(
        "ordinary",
        {"rise_in_12": "6"},
        {"hip_valley_factor": "1.50"},
        kind="worked",
        source=EXAM,
        tolerance="0",
        within="0.005",
    )
    for rise in ENDS:
        made.add("end", {"rise_in_12": rise}, {"hip_valley_factor": hip(rise)})
    made.add(
        "degenerate",
        {"rise_in_12": "0"},
        {"hip_valley_factor": sqrt(mpf(2))},
        kind="limit",
        source="diagonal of a unit square",
    )
    for rise, factor in (("6", "3/2"), ("1", "17/12"), ("14", "11/6")):
        made.add(
            "degenerate",
            {"rise_in_12": rise},
            {"hip_valley_factor": Fraction(factor)},
            kind="limit",
            source="whole-number triangle in space",
        )
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
    for run, rise, length in (
        ("12", "5", "13"),
        ("12", "9", "15"),
        ("12", "16", "20"),
        ("24", "3.5", "25"),
        ("20", "9", "25"),
        ("15", "0", "15"),
        ("0.5", "0", "0.5"),
        ("200", "0", "200"),
    ):
        made.add(
            "degenerate",
            {"run_ft": run, "rise_in_12": rise},
            {"slope_length_ft": length},
            kind="limit",
            source=TRIANGLE if rise != "0" else "a flat roof is its plan",
        )
    return made.cases


def roof_of(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """A body with equal slopes, hipped or gabled, and a gabled wing, edge by edge.

    The plan lies level, so the deck is plan x slope factor; a hip runs over half the width, a valley over half the
    wing's; the wing's ridge runs on from its gable until it meets the body's plane at its own height.
    """
    length, width, wing, out = (
        number(inputs[name]) for name in ("length_ft", "width_ft", "wing_width_ft", "wing_out_ft")
    )
    steep, corner = slope(inputs["rise_in_12"]), hip(inputs["rise_in_12"])
    hipped = inputs["ends"] == "hipped"
    has_wing = wing > 0
    return {
        "area_sf": (length * width + wing * out) * steep,
        "ridge_ft": (length - width if hipped else length) + (out + wing / 2 if has_wing else 0),
        "hip_ft": 4 * (width / 2) * corner if hipped else 0,
        "valley_ft": 2 * (wing / 2) * corner,
        "eave_ft": (2 * (length + width) if hipped else 2 * length) + (2 * out - wing if has_wing else 0),
        "rake_ft": (0 if hipped else 4 * (width / 2) * steep) + 2 * (wing / 2) * steep,
    }


def house() -> Iterable[Case]:
    """Whole roofs of hipped and gabled bodies with and without a wing."""
    made = Builder("derived: plan area times slope factor, theorem of Pythagoras", within="1e-9")
    source = draws("house")

    def add(
        class_: str,
        length: Value,
        width: Value,
        rise: Value,
        ends: str,
        at: Value = "0",
        wing: Value = "0",
        out: Value = "0",
    ) -> None:
        inputs = {
            "length_ft": length,
            "width_ft": width,
            "rise_in_12": rise,
            "ends": ends,
            "wing_at_ft": at,
            "wing_width_ft": wing,
            "wing_out_ft": out,
        }
        made.add(class_, inputs, roof_of(inputs))

    for ends in ("hipped", "gabled"):
        for length, width, rise in (
            ("42", "30", "6"),
            ("50", "32", "5"),
            ("52", "36", "4"),
            ("74", "42", "9"),
            ("29", "22", "8"),
        ):
            add("ordinary", length, width, rise, ends)
            add("ordinary", length, width, rise, ends, "5", "16", "9.5")
        for _ in range(32):
            width = source.randint(160, 480)
            length = width + source.randint(10, 400)
            wing = source.randint(60, width - 20)
            add(
                "ordinary",
                Fraction(length, 10),
                Fraction(width, 10),
                Fraction(source.randint(4, 64), 4),
                ends,
                Fraction(source.randint(0, length - wing), 10),
                Fraction(wing, 10),
                Fraction(source.randint(10, 250), 10),
            )
        for rise in ("1", "24"):
            add("end", "500", "200", rise, ends)
            add("end", "500", "200", rise, ends, "10", "190", "200")
            add("end", "4", "4", rise, ends)
        add("governing", "40", "30", "6", ends, "0", "29.99", "10")
        add("governing", "40", "30", "6", ends, "25", "15", "10")
        add("degenerate", "40", "40", "12", ends)
        add("degenerate", "30", "30", "9", ends, "5", "20", "0.5")
    return made.cases


def plane_of(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """A trapezoid between level eave and ridge: sides that lean in are hips, out are valleys, upright rakes."""
    eave, up_slope, left, right = (
        number(inputs[name]) for name in ("eave_ft", "slope_length_ft", "left_lean_ft", "right_lean_ft")
    )
    ridge = eave - left - right
    sides = [(lean, sqrt(lean**2 + up_slope**2)) for lean in (left, right)]
    return {
        "area_sf": (eave + ridge) / 2 * up_slope,
        "ridge_ft": ridge,
        "hip_ft": sum((side for lean, side in sides if lean > 0), mpf(0)),
        "valley_ft": sum((side for lean, side in sides if lean < 0), mpf(0)),
        "rake_ft": sum((side for lean, side in sides if lean == 0), mpf(0)),
    }


def plane_measures() -> Iterable[Case]:
    """Area and edges of one plane."""
    made = Builder("derived: area of a trapezoid, theorem of Pythagoras", within="1e-9")
    source = draws("plane_measures")

    def add(class_: str, eave: Value, up_slope: Value, left: Value = "0", right: Value = "0", **other: str) -> None:
        inputs = {"eave_ft": eave, "slope_length_ft": up_slope, "left_lean_ft": left, "right_lean_ft": right}
        made.add(class_, inputs, plane_of(inputs), **other)

    for eave, up_slope in (("42", "16.7705"), ("29", "13.2204"), ("74", "26.25"), ("40", "12"), ("52", "18.97")):
        for left, right in (("0", "0"), ("12", "12"), ("12", "0"), ("-11", "0"), ("-6.5", "9.25"), ("-4", "-4")):
            add("ordinary", eave, up_slope, left, right)
    for _ in range(55):
        eave = source.randint(100, 900)
        left, right = source.randint(-150, eave // 2), source.randint(-150, eave // 2)
        add(
            "ordinary",
            Fraction(eave, 10),
            Fraction(source.randint(20, 450), 10),
            Fraction(left, 10),
            Fraction(right, 10),
        )
    for eave, up_slope, left, right in (
        ("0.5", "0.5", "0", "0"),
        ("500", "200", "0", "0"),
        ("500", "200", "200", "200"),
        ("500", "200", "-200", "-200"),
        ("0.5", "200", "0", "0"),
        ("500", "0.5", "-200", "200"),
    ):
        add("end", eave, up_slope, left, right)
    for lean in ("-0.001", "0", "0.001"):
        add("governing", "24", "12", lean, "0")
        add("governing", "24", "12", "0", lean)
    for eave, up_slope, left, right in (("24", "12", "12", "12"), ("10", "12", "10", "0"), ("10", "12", "-5", "15")):
        add("degenerate", eave, up_slope, left, right)
    for eave, up_slope, lean in (("20", "12", "5"), ("30", "12", "9"), ("40", "15", "8"), ("30", "4", "3")):
        add("degenerate", eave, up_slope, lean, "0", kind="limit", source=TRIANGLE)
    return made.cases


FUNCTIONS = {
    "house": house,
    "plane_measures": plane_measures,
    "slope_factor": slope_factor,
    "hip_valley_factor": hip_valley_factor,
    "slope_length": slope_length,
}
