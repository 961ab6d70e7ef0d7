"""Ties of rafters to walls and to each other."""

from __future__ import annotations

from typing import Iterable

from mpmath import ceil

from arithmetic import number
from case_file import Builder, Case, Value
from precise import TESTS, grid, printed
from rafter_checks import thrust


def uplift_tie() -> Iterable[Case]:
    made = Builder("IRC 2018 Table R802.11, Exposure B, secondary source", kind="printed", tolerance="0")
    lines = printed(TESTS / "framing" / "rafter" / "irc-r802.11.csv")

    def cell(spacing: str, span: str, wind: str, steep: bool) -> str:
        line = next(line for line in lines if (line["spacing"], line["span"]) == (spacing, span))
        return line[f"v{wind}_{'steep' if steep else 'low'}"]

    for line, wind, rise in (
        (line, wind, rise) for line in lines for wind in ("110", "115", "120", "130", "140") for rise in ("4", "6")
    ):
        uplift = cell(line["spacing"], line["span"], wind, rise == "6")
        made.add(
            "ordinary",
            {
                "spacing_in": line["spacing"],
                "wind_mph": wind,
                "exposure": "b",
                "roof_span_ft": line["span"],
                "rise_in_12": rise,
                "tie_lb": "175",
            },
            {"uplift_lb": uplift, "missing_lb": max(0, int(uplift) - 175), "ok": int(uplift) <= 175},
        )
    between = (
        ("16", "24", "110", "4.999", "16", "24"),
        ("16", "24", "110", "5", "16", "24"),
        ("12.01", "24", "115", "4", "16", "24"),
        ("4", "1", "85", "0", "12", "12"),
        ("16.01", "24.01", "115.01", "4", "24", "28"),
        ("19.2", "26", "118", "8", "24", "28"),
        ("24", "36", "140", "24", "24", "36"),
    )
    for spacing, span, wind, rise, next_spacing, next_span in between:
        next_wind = next(at for at in ("110", "115", "120", "130", "140") if number(at) >= number(wind))
        made.add(
            "edge",
            {"spacing_in": spacing, "wind_mph": wind, "exposure": "b", "roof_span_ft": span, "rise_in_12": rise},
            {"uplift_lb": cell(next_spacing, next_span, next_wind, number(rise) >= 5)},
        )
    return made.cases


HEEL_3_IN_12 = {
    "to-20": ((4, 6, 8, 10), (5, 8, 10, 13), (7, 11, 15, 19)),
    "to-30": ((4, 6, 8, 11), (5, 8, 11, 14), (7, 11, 16, 21)),
    "to-50": ((5, 8, 12, 15), (6, 11, 15, 20), (9, 16, 23, 30)),
    "to-70": ((6, 11, 15, 20), (8, 14, 20, 26), (12, 21, 30, 39)),
}


def heel_nails() -> Iterable[Case]:
    made = Builder("three-hinged frame; three nails at least from memory, IRC Table R602.3(1)")

    def add(class_: str, **row: Value) -> None:
        pull = thrust(row)
        nails = max(3, int(ceil(pull / number(row["adjusted_lb"]))))
        missing = max(0, nails - int(row.get("nails_found", "0")))
        made.add(
            class_,
            row,
            {"thrust_lb": pull, "computed_nails": nails, "nails": nails, "nails_missing": missing, "ok": missing == 0},
        )

    for row in grid(
        span_ft=("11.5", "14"),
        rise_in_12=("3", "5.5"),
        spacing_in=("16", "24"),
        load_psf=("30", "43.5"),
        adjusted_lb=("147.5",),
        tie_height_in=("0", "11"),
        nails_found=("3",),
    ):
        add("ordinary", **row)
    base = {"span_ft": "12", "rise_in_12": "4", "spacing_in": "16", "load_psf": "30", "adjusted_lb": "144"}
    for adjusted in ("143.99", "144", "144.01", "180", "179.9", "240.1"):
        add("step", **(base | {"adjusted_lb": adjusted}))
    for row in (
        {"span_ft": "1"},
        {"span_ft": "40"},
        {"rise_in_12": "1"},
        {"rise_in_12": "24"},
        {"load_psf": "1"},
        {"load_psf": "400"},
        {"adjusted_lb": "1"},
        {"adjusted_lb": "1000"},
        {"nails_found": "100"},
        {"nails_found": "4"},
        {"nails_found": "5"},
        {"spacing_in": "48"},
        {"tie_height_in": "15.9"},
    ):
        add("end", **(base | row))
    for snow, rows in HEEL_3_IN_12.items():
        for spacing, nails in zip(("12", "16", "24"), rows):
            for span, count in zip(("6", "10", "14", "18"), nails):
                made.add(
                    "edge",
                    {
                        "span_ft": span,
                        "rise_in_12": "3",
                        "spacing_in": spacing,
                        "load_psf": "1",
                        "adjusted_lb": "1000",
                        "code_snow": snow,
                    },
                    {"code_nails": count},
                    kind="printed",
                    tolerance="0",
                    source="IRC 2018 Table R802.5.2, 3 in 12, from memory",
                )
    return made.cases


FUNCTIONS = {"uplift_tie": uplift_tie, "heel_nails": heel_nails}
