"""Checks of rafters over a given span, and the thrust of a pair."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import mpf

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import grid
from rafters import SETS, Loaded, woods
from wood import SIZES, SUPPLEMENT


CHECK = f"NDS 2018 3.3 to 3.5, 3.10 on the projection; {SUPPLEMENT}"


def rafter_check() -> Iterable[Case]:
    made = Builder(CHECK)

    def add(class_: str, row: Mapping[str, Value]) -> None:
        made.add(class_, row, checked(row), source=CHECK + SETS[row["value_set"]])

    random = draws("rafter_check")
    loads = list(
        grid(
            spacing_in=("12", "16", "19.2", "24", "32"),
            live_psf=("20", "25", "40", "60"),
            dead_psf=("8", "12.5", "20"),
            load=("roof-live", "snow"),
            deflection_limit=("180", "240"),
            span_ft=("7.5", "10", "12.25", "15"),
            bearing_in=("1.5", "3.5"),
        )
    )
    for stick in woods():
        add("ordinary", stick | random.choice(loads))
    stick = {
        "species": "spruce-pine-fir",
        "grade": "no-2",
        "size": "2x6",
        "value_set": "nds2018",
        "load": "snow",
        "deflection_limit": "180",
    }
    for row in grid(
        spacing_in=("4", "48"),
        live_psf=("1", "300"),
        dead_psf=("0", "100"),
        span_ft=("1", "40"),
        bearing_in=("0.5", "12"),
    ):
        add("end", stick | row)
    for spacing in ("23.99", "24", "24.01"):
        add("step", stick | {"spacing_in": spacing, "live_psf": "30", "dead_psf": "10", "span_ft": "11"})
    for size, live in (
        ("2x4", "300"),
        ("2x6", "300"),
        ("2x12", "300"),
        ("2x12", "120"),
        ("2x12", "60"),
        ("2x6", "20"),
        ("2x8", "20"),
    ):
        for seat in ("0.5", "1.5", "6"):
            add(
                "governing",
                stick
                | {
                    "size": size,
                    "live_psf": live,
                    "dead_psf": "10",
                    "spacing_in": "24",
                    "span_ft": "3.5",
                    "bearing_in": seat,
                },
            )
    _at_the_limit(add, stick)
    return made.cases


def checked(row: Mapping[str, Value]) -> dict[str, Value]:
    """Ratios of rafter_check; a tie of two ratios is no case."""
    loaded, length = Loaded(row), number(row["span_ft"]) * 12
    wood, seat = loaded.wood, number(row.get("bearing_in", "1.5"))
    ratios = {
        "bending": loaded.total * length**2 / 8 / wood.modulus / loaded.bending,
        "shear": 3 * loaded.total * length / (4 * wood.area) / loaded.shear,
        "deflection": 5 * loaded.live * length**4 / (384 * wood.e * wood.inertia) / (length / loaded.limit),
        "bearing": loaded.total * length / 2 / (wood.b * seat) / wood.fc_perp,
    }
    longest = min(loaded.by_bending(), loaded.by_shear(), loaded.by_sag(), loaded.by_bearing(seat))
    return {f"{name}_ratio": ratio for name, ratio in ratios.items()} | {
        "ok": max(ratios.values()) <= 1,
        "governs": max(ratios, key=ratios.__getitem__),
        "longest_span_ft": longest / 12,
    }


def _at_the_limit(add, stick: Mapping[str, Value]) -> None:
    """A span just under and just over the longest that passes."""
    for size, spacing in ((s, c) for s in SIZES for c in ("16", "24")):
        row = stick | {
            "size": size,
            "spacing_in": spacing,
            "live_psf": "20",
            "dead_psf": "15",
            "span_ft": "10",
            "load": "roof-live",
        }
        longest = checked(row)["longest_span_ft"]
        for off in ("-0.0001", "0.0001"):
            add("step", row | {"span_ft": str(round(float(longest + number(off)), 6))})


def rafter_thrust() -> Iterable[Case]:
    made = Builder("three-hinged frame: H = w L/(2 tan) / (1 - Hc/Hr), Hr = L tan")

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, {"thrust_lb": thrust(row)})

    for row in grid(
        span_ft=("10.5", "14"),
        rise_in_12=("3", "6.5", "12"),
        spacing_in=("16", "24"),
        load_psf=("30",),
        tie_height_in=("0", "9"),
    ):
        add("ordinary", **row)
    for row in grid(span_ft=("1", "40"), rise_in_12=("1", "24"), spacing_in=("4", "48"), load_psf=("1", "400")):
        add("end", **row)
    for tie in ("19.99", "20"):
        add("end", span_ft="12", rise_in_12="5", spacing_in="16", load_psf="30", tie_height_in=tie)
    made.add(
        "ordinary",
        {"span_ft": "12", "rise_in_12": "4", "spacing_in": "16", "load_psf": "30"},
        {"thrust_lb": "720"},
        kind="worked",
        tolerance="1e-12",
        source="gable of 12 ft run, 4 in 12, 16 in, 30 psf, by hand: 720 lb",
    )
    return made.cases


def thrust(row: Mapping[str, Value]) -> mpf:
    """H of one pair of rafters, in pounds."""
    length, slope = number(row["span_ft"]), number(row["rise_in_12"]) / 12
    raised = number(row.get("tie_height_in", "0")) / 12 / (length * slope)
    return number(row["load_psf"]) * number(row["spacing_in"]) / 12 * length / (2 * slope) / (1 - raised)


FUNCTIONS = {"rafter_check": rafter_check, "rafter_thrust": rafter_thrust}
