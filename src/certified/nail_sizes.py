"""Sizes of nails by name, as printed; how each was had stands with it."""

from __future__ import annotations

from typing import Iterable

from case_file import Builder, Case

MEMORY = "NDS 2018 Appendix L and ASTM F1667, from memory"
READ = "diameter and length read on code pages, head from memory of NDS 2018 Appendix L"
SIZES = (
    ("6d-common", "0.113", "2", "0.266", READ),
    ("8d-common", "0.131", "2.5", "0.281", READ),
    ("10d-common", "0.148", "3", "0.312", READ),
    ("16d-common", "0.162", "3.5", "0.344", MEMORY),
    ("6d-box", "0.099", "2", "0.266", MEMORY),
    ("8d-box", "0.113", "2.5", "0.297", READ),
    ("10d-box", "0.128", "3", "0.312", READ),
    ("8d-sinker", "0.113", "2.375", "0.266", MEMORY),
    ("rsrs-01", "0.113", "2.375", "0.281", READ),
    ("rsrs-02", "0.120", "2.5", "0.281", MEMORY),
    ("rsrs-03", "0.131", "2.5", "0.281", READ),
    ("rsrs-04", "0.120", "3", "0.281", READ),
    ("rsrs-05", "0.131", "3", "0.281", MEMORY),
)
HALF_DIGIT = "0.0005"


def nail_dimensions() -> Iterable[Case]:
    """Every name: 100 ksi up to 0.142 in of shank, 90 ksi from there to 0.177 in."""
    for name, diameter, length, head, source in SIZES:
        bending = 100000 if float(diameter) <= 0.142 else 90000
        results = {"diameter_in": diameter, "length_in": length, "head_diameter_in": head, "bending_yield_psi": bending}
        if name.startswith("rsrs"):
            results["rings_in"] = "1.5"
        made = Builder(source, kind="printed", tolerance="0", within=HALF_DIGIT)
        made.add("edge", {"nail": name}, results)
        yield from made.cases
    code = Builder(
        "IRC 2015 to 2024 Table R602.3(2), read on code pages", kind="printed", tolerance="0", within=HALF_DIGIT
    )
    code.add("edge", {"nail": "sheathing-2-3/8"}, {"diameter_in": "0.113", "length_in": "2.375"})
    yield from code.cases


FUNCTIONS = {"nail_dimensions": nail_dimensions}
