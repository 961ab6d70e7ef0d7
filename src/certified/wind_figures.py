"""The small figures that go with wind: how wide a zone is, how high a roof stands, what is allowable."""

from __future__ import annotations

from typing import Iterable

from mpmath import mpf

from arithmetic import number
from case_file import Builder, Case


def zone_width() -> Iterable[Case]:
    made = Builder("ASCE 7-10 notes of Figure 30.4-2A: 10 % of least width or 0.4 h, not under 4 % of it nor 3 ft")

    def add(class_: str, width: str, height: str, **other: str) -> None:
        wide, high = number(width), number(height)
        least = max(min(wide / 10, high * 2 / 5), wide / 25, mpf(3))
        made.add(class_, {"least_width_ft": width, "height_ft": height}, {"zone_width_ft": least}, **other)

    for width, height in (("28", "20"), ("50", "15"), ("120", "12"), ("36", "18"), ("44.5", "21.25"), ("62", "14")):
        add("ordinary", width, height)
    for width, height in (("8", "1"), ("8", "60"), ("300", "1"), ("300", "60")):
        add("end", width, height)
    for width in ("29.9", "30", "30.1", "59.9", "60", "60.1"):
        for height in ("7.4", "7.5", "7.6", "14.9", "15", "15.1"):
            add("governing", width, height)
    return made.cases


def mean_roof_height() -> Iterable[Case]:
    made = Builder("mean of eave and ridge height, ASCE 7-16 section 26.2")

    def add(class_: str, eave: str, run: str, rise: str) -> None:
        made.add(
            class_,
            {"eave_height_ft": eave, "run_ft": run, "rise_in_12": rise},
            {"height_ft": number(eave) + number(run) * number(rise) / 24},
        )

    for eave, run, rise in (
        (e, r, p) for e in ("9", "10.5", "18.75") for r in ("12", "14.25", "16") for p in ("3", "4.5", "8")
    ):
        add("ordinary", eave, run, rise)
    for eave, run, rise in (
        ("1", "0.5", "0"),
        ("60", "200", "24"),
        ("1", "200", "24"),
        ("60", "0.5", "24"),
        ("60", "200", "0"),
    ):
        add("end", eave, run, rise)
    made.add(
        "ordinary",
        {"eave_height_ft": "10", "run_ft": "16", "rise_in_12": "3.2153903091734720"},
        {"height_ft": "12.14"},
        kind="worked",
        tolerance="0",
        within="0.005",
        source="ASCE guide to 7-16 ch. 8: 10 + 16 tan 15 / 2, secondary source",
    )
    return made.cases


def allowable_pressure() -> Iterable[Case]:
    made = Builder("0.6 W, ASCE 7-16 section 2.4.1")
    for class_, strength in [("end", "0"), ("end", "1000"), ("degenerate", "0.001")] + [
        ("ordinary", str(at))
        for at in (
            "12.5",
            "13.67",
            "16",
            "20",
            "25.75",
            "31.4",
            "40",
            "48.125",
            "55",
            "62.3",
            "71",
            "80.3",
            "88",
            "95.2",
            "101",
            "110.5",
            "123",
            "150",
            "175",
            "200",
            "250",
            "400.4",
            "733",
        )
    ]:
        made.add(class_, {"strength_psf": strength}, {"allowable_psf": number(strength) * 3 / 5})
    return made.cases


FUNCTIONS = {"zone_width": zone_width, "mean_roof_height": mean_roof_height, "allowable_pressure": allowable_pressure}
