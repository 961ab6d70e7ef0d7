"""Counts of sheets and where their ends land: exact rational arithmetic on 4 by 8 sheets."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping, Optional

from arithmetic import around, down, exacts, share, up
from case_file import Builder, Case, Value, draws, exact

PRACTICE = "common practice, no source"
SHEET_SF = 32


def area_sheets(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """sheets = ceil(area x (1 + waste) / 32)."""
    (area,) = exacts(inputs, "deck_area_sf")
    return {"sheets": up(area * (1 + share(inputs["waste_pct"])) / SHEET_SF)}


def sheets_by_area() -> Iterable[Case]:
    """Quick count of sheets by area, with waste."""
    made = Builder(f"{PRACTICE}: a 4 by 8 sheet is 32 sq ft", tolerance="0")
    source = draws("sheets_by_area")

    def add(class_: str, area: Value, waste: Value, **other: str) -> None:
        inputs = {"deck_area_sf": area, "waste_pct": waste}
        made.add(class_, inputs, area_sheets(inputs), **other)

    for area in ("288", "704.36", "766.78", "1408.72", "1973.26", "2114.67", "3885", "12345.67"):
        for waste in ("0", "5", "8", "10", "12", "15"):
            add("ordinary", area, waste)
    for _ in range(190):
        add("ordinary", f"{source.randint(10000, 2000000) / 100:.2f}", f"{source.randint(0, 400) / 10:.1f}")
    for area in ("1", "1.01", "199999.99", "200000"):
        for waste in ("0", "0.1", "99.9", "100"):
            add("end", area, waste)
    for sheets in (1, 2, 3, 23, 44, 100, 1250, 6249):
        for area in around(sheets * SHEET_SF, "0.001"):
            add("step", area, "0")
    for sheets, waste in ((11, 10), (22, 10), (21, 5), (28, 12), (23, 15), (27, 8), (33, 10), (220, 10)):
        for area in around(Fraction(sheets * SHEET_SF * 100, 100 + waste), "0.01"):
            add("step", area, str(waste))
    for area, waste in (("16", "100"), ("15.99", "100"), ("16.01", "100"), ("1", "0"), ("32", "0")):
        add("degenerate", area, waste)
    return made.cases


def course_sheets(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """Courses of 4 ft from the eave; r is what whole courses leave.

    rip: ceil(whole x L / 8) + ceil((L / 8) / floor(4 / r)); equal: one whole course fewer and two of (4 + r) / 2;
    two-foot: one whole course fewer, one of 2 + r, and one of 2 ft at the ridge, two of which come from a sheet. The
    last two act only where 0 < r < 2 ft and there is a whole course; each group of equal courses is rounded up by itself.
    """
    eave, slope, least = exacts(inputs, "eave_ft", "slope_length_ft", "min_strip_in")
    whole, row = down(slope / 4), eave / 8
    strip = slope - 4 * whole
    rule = inputs["strip_rule"] if 0 < strip < 2 and whole > 0 else "rip"
    if strip == 0:
        sheets, last = up(whole * row), Fraction(4)
    elif rule == "rip":
        sheets, last = up(whole * row) + up(row / down(4 / strip)), strip
    elif rule == "equal":
        sheets, last = up((whole - 1) * row) + up(2 * row), (4 + strip) / 2
    else:
        sheets, last = up((whole - 1) * row) + up(row) + up(row / 2), Fraction(2)
    return {"sheets": sheets, "last_course_in": last * 12, "narrow": last * 12 < least}


def sheets_by_course() -> Iterable[Case]:
    """Sheets of a rectangular plane in courses, by what is done with the strip at the ridge."""
    made = Builder(
        f"{PRACTICE}: courses of 4 by 8 sheets, no kerf, each group of equal courses rounded up by itself",
        within="1e-9",
    )
    source = draws("sheets_by_course")

    def add(class_: str, eave: Value, slope: Value, rule: str, least: Value = "24") -> None:
        inputs = {"eave_ft": eave, "slope_length_ft": slope, "strip_rule": rule, "min_strip_in": least}
        made.add(class_, inputs, course_sheets(inputs))

    rules = ("rip", "equal", "two-foot")
    for rule in rules:
        for slope in ("12.5", "13", "13.5", "14.5", "15", "16.77", "19", "26.25"):
            add("ordinary", "40", slope, rule)
        for eave, slope in (("42", "16.77"), ("29", "13.22"), ("74", "26.25"), ("37.5", "9.1"), ("51.25", "21.4")):
            add("ordinary", eave, slope, rule)
        for _ in range(6):
            add(
                "ordinary",
                f"{source.randint(10, 5000) / 10:.1f}",
                f"{source.randint(50, 2000) / 10:.1f}",
                rule,
                str(source.randint(1, 48)),
            )
        for eave in ("1", "500"):
            for slope in ("0.5", "200"):
                add("end", eave, slope, rule)
        add("end", "40", "13", rule, "1")
        add("end", "40", "13", rule, "48")
        for slope in (*around("16"), *around("14"), *around("18")):
            add("step", "40", slope, rule)
        for eave in around("48"):
            add("step", eave, "13", rule)
        for slope in ("3", "1.5", "2"):
            add("degenerate", "24", slope, rule)
    for strip in ("1", "0.8", "0.5"):
        for slope in around(exact("8") + exact(strip), "0.0001"):
            add("step", "80", slope, "rip")
    for least in around("12"):
        add("step", "40", "13", "rip", least)
    for least in around("30"):
        add("step", "40", "13", "equal", least)
    for least in around("24"):
        add("governing", "40", "13", "two-foot", least)
    for rule in rules:
        for slope in around("6"):
            add("governing", "40", slope, rule)
        for slope in ("5.999", "4.001", "3.999"):
            add("governing", "40", slope, rule)
    add("degenerate", "8", "4", "rip")
    add("degenerate", "8", "0.5", "rip")
    return made.cases


def bearing(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """What lies of each sheet end between the rafter's two faces, never less than none; both must reach the least."""
    center, joint, gap, width, least = exacts(
        inputs, "rafter_center_in", "joint_in", "gap_in", "rafter_width_in", "min_bearing_in"
    )
    near, far = center - width / 2, center + width / 2
    left = max(Fraction(0), min(joint, far) - near)
    right = max(Fraction(0), far - max(joint + gap, near))
    return {"left_in": left, "right_in": right, "ok": left >= least and right >= least}


def joint_bearing() -> Iterable[Case]:
    """Bearing of two sheet ends on one rafter."""
    made = Builder(f"{PRACTICE}: the overlap of two intervals", within="1e-9")
    source = draws("joint_bearing")

    def add(
        class_: str, center: Value, joint: Value, gap: Value = "0.125", width: Value = "1.5", least: Value = "0.5"
    ) -> None:
        inputs = {
            "rafter_center_in": center,
            "joint_in": joint,
            "gap_in": gap,
            "rafter_width_in": width,
            "min_bearing_in": least,
        }
        made.add(class_, inputs, bearing(inputs))

    for center, joint in (
        ("47.25", "48"),
        ("95", "96"),
        ("144.5", "144"),
        ("48", "47.9375"),
        ("96", "96"),
        ("192", "191.5"),
        ("192", "192.25"),
        ("384.25", "384"),
        ("576", "575.125"),
    ):
        add("ordinary", center, joint)
        add("ordinary", center, joint, "0.0625", "1.75", "0.625")
    for _ in range(50):
        center = source.randint(0, 6000 * 16)
        joint = min(max(0, center + source.randint(-24, 24)), 6000 * 16)
        add(
            "ordinary",
            Fraction(center, 16),
            Fraction(joint, 16),
            Fraction(source.randint(0, 16), 32),
            Fraction(source.randint(10, 28), 8),
            Fraction(source.randint(4, 14), 16),
        )
    for center, joint in (("0", "0"), ("6000", "6000"), ("0", "6000"), ("6000", "0"), ("0.5", "0"), ("5999.5", "6000")):
        add("end", center, joint)
    for gap, width, least in (
        ("0", "1", "0"),
        ("2", "12", "3"),
        ("2", "1", "0.5"),
        ("0", "12", "3"),
        ("2", "1.5", "0"),
    ):
        add("end", "48", "48", gap, width, least)
    for joint in (*around("47.75", "0.0001"), *around("48.125", "0.0001")):
        add("governing", "48", joint)
    for joint in (*around("47.25", "0.0001"), *around("48.75", "0.0001"), *around("48.625", "0.0001")):
        add("step", "48", joint)
    for gap in around("0.5", "0.0001"):
        add("step", "48", "47.75", gap)
    for center, joint, gap, width, least in (
        ("48", "48", "0", "1.5", "0.75"),
        ("48", "48", "0", "1.5", "0.7501"),
        ("48", "20", "0.125", "1.5", "0.5"),
        ("48", "90", "0.125", "1.5", "0.5"),
        ("48", "46", "2", "1.5", "0.5"),
        ("48", "47.25", "1.5", "1.5", "0"),
    ):
        add("degenerate", center, joint, gap, width, least)
    return made.cases


def creep(inputs: Mapping[str, Value]) -> Optional[int]:
    """floor((width / 2 - gap / 2 - least) / |length + gap - 96|), none below none; no limit where nothing creeps."""
    length, gap, width, least = exacts(inputs, "panel_length_in", "gap_in", "rafter_width_in", "min_bearing_in")
    slack, step = width / 2 - gap / 2 - least, abs(length + gap - 96)
    if step == 0:
        return None if slack >= 0 else 0
    return max(0, down(slack / step))


def joint_creep() -> Iterable[Case]:
    """Whole sheets before a joint that began on the middle of a rafter loses its bearing.

    No limit is a blank cell, which the form cannot state: the cases stand just beside it.
    """
    made = Builder(f"{PRACTICE}: arithmetic on an 8 ft module", tolerance="0")
    source = draws("joint_creep")

    def add(class_: str, length: Value, gap: Value = "0.125", width: Value = "1.5", least: Value = "0.5") -> None:
        inputs = {"panel_length_in": length, "gap_in": gap, "rafter_width_in": width, "min_bearing_in": least}
        panels = creep(inputs)
        if panels is not None:
            made.add(class_, inputs, {"panels": panels})

    for length in ("95.9375", "95.75", "96", "95.96875", "95.8125", "95.85", "95.9", "96.0625"):
        for gap, width, least in (("0.125", "1.5", "0.5"), ("0.0625", "1.5", "0.5"), ("0.125", "3", "0.75")):
            add("ordinary", length, gap, width, least)
    for _ in range(45):
        add(
            "ordinary",
            Fraction(source.randint(95 * 64, 97 * 64), 64),
            Fraction(source.randint(0, 16), 64),
            Fraction(source.randint(12, 28), 8),
            Fraction(source.randint(4, 10), 16),
        )
    for length, gap, width, least in (
        ("90", "0.125", "1.5", "0.5"),
        ("100", "0.125", "1.5", "0.5"),
        ("90", "2", "12", "0"),
        ("100", "0", "12", "0"),
        ("96", "2", "12", "3"),
        ("95", "2", "12", "0"),
        ("96", "0.125", "1", "0"),
        ("95.9", "0", "1", "3"),
        ("90", "0", "12", "3"),
        ("100", "2", "1", "0"),
    ):
        add("end", length, gap, width, least)
    for panels in (1, 2, 3, 4, 5, 8):
        for length in around(exact("95.875") + Fraction(3, 16) / panels, "0.0001"):
            if Fraction(round(length * 10**6), 10**6) == length:
                add("step", length)
    for least in around("0.5", "0.0001"):
        add("step", "95.9375", "0.125", "1.5", least)
    for width in around("1.5", "0.0001"):
        add("step", "95.9375", "0.125", width)
    for by in ("0.0001", "0.001", "0.01"):
        for length in around("95.875", by):
            add("governing", length)
    for least in around("0.6875", "0.0001"):
        add("governing", "95.9375", "0.125", "1.5", least)
    for length, gap, width, least in (
        ("96", "0", "1.5", "0.75"),
        ("94", "2", "12", "3"),
        ("96", "0", "1", "0"),
        ("96", "0.125", "1.5", "0.6875"),
    ):
        add("degenerate", length, gap, width, least)
    return made.cases


FUNCTIONS = {
    "sheets_by_area": sheets_by_area,
    "sheets_by_course": sheets_by_course,
    "joint_bearing": joint_bearing,
    "joint_creep": joint_creep,
}
