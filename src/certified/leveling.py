"""Leveling: strings and straightedges, shims, laps, and what is done about a low place; exact rational arithmetic."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable


from arithmetic import up
from case_file import Builder, Case
from precise import grid
from wood import SIZES

STEPS = "strips to the next step: common practice, no source"


def shim_nail() -> Iterable[Case]:
    made = Builder("geometry: nail and strip")
    for class_, nail, shim in [
        ("ordinary", n, s)
        for n in ("2", "2.375", "2.5", "3", "3.25")
        for s in ("0.0625", "0.125", "0.1875", "0.375", "0.5")
    ] + [("end", n, s) for n in ("0.5", "8") for s in ("0", "3")]:
        made.add(class_, {"nail_in": nail, "shim_in": shim}, {"nail_needed_in": Fraction(nail) + Fraction(shim)})
    return made.cases


def shim_taper() -> Iterable[Case]:
    made = Builder("taper = |last - first| / length; 1/4 in in a foot: common practice, no source")

    def add(class_: str, first: str, last: str, length: str, most: str = "0.25") -> None:
        taper = abs(Fraction(last) - Fraction(first)) / Fraction(length)
        made.add(
            class_,
            {"first_thickness_in": first, "last_thickness_in": last, "length_ft": length, "most_in_12": most},
            {"taper_in_12": taper, "taper_ratio": taper / Fraction(most), "gradual": taper <= Fraction(most)},
        )

    for row in grid(
        first=("0", "0.3125", "0.5"), last=("0.125", "0.75"), length=("2", "3.5", "8"), most=("0.25", "0.125")
    ):
        add("ordinary", **row)
    for row in grid(first=("0", "24"), last=("0", "24"), length=("0.1", "40"), most=("0.01", "3")):
        add("degenerate" if row["first"] == row["last"] else "end", **row)
    for last in ("0.4999", "0.5", "0.5001"):
        add("step", "0", last, "2")
    return made.cases


def shim_thickness() -> Iterable[Case]:
    made = Builder(STEPS)

    def add(class_: str, build_up: str, step: str = "0.0625") -> None:
        missing, by = Fraction(build_up), Fraction(step)
        made.add(class_, {"build_up_in": build_up, "step_in": step}, {"thickness_in": max(0, up(missing / by)) * by})

    for build_up, step in (
        (b, s) for b in ("0.03", "0.1", "0.2", "0.33", "0.41", "0.77", "1.13") for s in ("0.0625", "0.125", "0.25")
    ):
        add("ordinary", build_up, step)
    for whole in (1, 2, 5, 12, 40):
        for off in ("-0.0001", "0", "0.0001"):
            add("step", str(float(Fraction(whole, 16) + Fraction(off))))
    for build_up, step in (
        ("24", "0.01"),
        ("24", "1"),
        ("-24", "0.01"),
        ("-24", "1"),
        ("0", "0.0625"),
        ("-0.001", "0.0625"),
        ("0.0001", "1"),
    ):
        add("degenerate" if build_up == "0" else "end", build_up, step)
    return made.cases


def sister_lap() -> Iterable[Case]:
    made = Builder("geometry; 2-1/2 in for two rows of nails: common practice, no source")

    def add(class_: str, build_up: str, sister: str, rafter: str, least: str = "2.5") -> None:
        high, depth = Fraction(build_up), {size: Fraction(sides[1]) for size, sides in SIZES.items()}
        laps = {size: max(Fraction(0), min(depth[size] - high, depth[rafter])) for size in SIZES}
        smallest = next((size for size in SIZES if laps[size] >= Fraction(least)), "none")
        ratio = Fraction(least) / laps[sister] if laps[sister] else None
        made.add(
            class_,
            {"build_up_in": build_up, "sister_size": sister, "rafter_size": rafter, "least_lap_in": least},
            {"lap_in": laps[sister], "lap_ratio": ratio, "smallest_size": smallest},
        )

    for build_up, sister, rafter in (
        (u, s, r) for u in ("0.5", "1.625", "2.75") for s in ("2x4", "2x6", "2x10") for r in ("2x4", "2x6", "2x8")
    ):
        add("ordinary", build_up, sister, rafter)
    for build_up, least in (("0", "1"), ("12", "1"), ("0", "12"), ("12", "12"), ("10.25", "1"), ("10.26", "1")):
        add("end", build_up, "2x12", "2x12", least)
    for build_up in ("0.999", "1", "1.001", "2.999", "3", "3.001", "4.749", "4.75", "4.751"):
        add("step", build_up, "2x8", "2x6")
    for build_up in ("3.5", "5.5", "7.25"):
        add("degenerate", build_up, "2x4" if build_up == "3.5" else "2x6", "2x6")
    return made.cases


def chord_deviation() -> Iterable[Case]:
    made = Builder("geometry: below the straight line through two places", within="1e-12")
    names = ("first_in", "first_drop_in", "last_in", "last_drop_in", "place_in", "drop_in")

    def add(class_: str, *values: str) -> None:
        first, first_drop, last, last_drop, place, drop = (Fraction(value) for value in values)
        made.add(
            class_,
            dict(zip(names, values)),
            {"deviation_in": drop - (first_drop + (place - first) / (last - first) * (last_drop - first_drop))},
        )

    for first_drop, last_drop, place, drop in (
        (a, b, p, d)
        for a in ("0", "0.125")
        for b in ("0.25", "-0.375")
        for p in ("36", "60", "84")
        for d in ("0.5", "-0.125", "0.3125")
    ):
        add("ordinary", "0", first_drop, "120", last_drop, place, drop)
    for row in (
        ("-1200", "-24", "2400", "24", "2400", "24"),
        ("-1200", "24", "2400", "-24", "-1200", "24"),
        ("0", "24", "0.5", "-24", "2400", "24"),
        ("2399", "1", "2400", "0", "-1200", "0"),
    ):
        add("end", *row)
    for place in ("0", "120"):
        add("degenerate", "0", "0.25", "120", "0.5", place, "0.25" if place == "0" else "0.5")
    return made.cases


def sag_fraction() -> Iterable[Case]:
    made = Builder("arithmetic; L/240 and L/180 from memory of span tables")

    def add(class_: str, sag: str, span: str, fraction: str = "240") -> None:
        limit = Fraction(span) * 12 / Fraction(fraction)
        made.add(
            class_,
            {"sag_in": sag, "span_ft": span, "fraction": fraction},
            {
                "span_over_sag": Fraction(span) * 12 / Fraction(sag) if Fraction(sag) else None,
                "sag_limit_in": limit,
                "sag_ratio": Fraction(sag) / limit,
                "ok": Fraction(sag) <= limit,
            },
        )

    for row in grid(sag=("0.375", "0.875", "1.625"), span=("11.25", "13.5", "16"), fraction=("180", "240", "360")):
        add("ordinary", **row)
    for row in grid(sag=("0", "24"), span=("2", "40"), fraction=("60", "1000")):
        add("degenerate" if row["sag"] == "0" else "end", **row)
    for sag in ("0.5999", "0.6", "0.6001"):
        add("step", sag, "12")
    return made.cases


def drop_below_string() -> Iterable[Case]:
    made = Builder("string-line method: common practice, no source", within="1e-12")

    def add(class_: str, reading: str, block: str, hang: str = "0", **other: str) -> None:
        made.add(
            class_,
            {"reading_in": reading, "block_in": block, "string_sag_in": hang},
            {"drop_in": Fraction(reading) - Fraction(block) + Fraction(hang)},
            **other,
        )

    for row in grid(reading=("0.5", "0.8125", "1.375", "2"), block=("0.75", "1.5"), hang=("0", "0.045", "0.0625")):
        add("ordinary", **row)
    for row in grid(reading=("0", "24"), block=("0", "12"), hang=("0", "3")):
        add("end", **row)
    for reading in ("0.75", "0.95", "1.10", "0.90"):
        add(
            "ordinary",
            reading,
            "0.750",
            kind="worked",
            source="readings 0.75 0.95 1.10 0.90 on blocks of 0.750, worked by hand: 0, 0.20, 0.35, 0.15",
        )
    return made.cases


def string_sag() -> Iterable[Case]:
    made = Builder("statics of a tight string: w x (L - x)/(2 T)", within="1e-15")

    def add(class_: str, length: str, weight: str, tension: str, place: str) -> None:
        x = Fraction(place)
        made.add(
            class_,
            {"string_ft": length, "line_lb_per_ft": weight, "tension_lb": tension, "place_ft": place},
            {"string_sag_in": Fraction(weight) * x * (Fraction(length) - x) / (2 * Fraction(tension)) * 12},
        )

    for length, weight, tension in (
        (l, w, t) for l in ("14", "20", "33.5") for w in ("0.0015", "0.003") for t in ("10", "20", "35")
    ):
        for place in ("3.5", "7"):
            add("ordinary", length, weight, tension, place)
    for row in (
        ("1", "0", "1", "1"),
        ("200", "1", "1", "100"),
        ("200", "1", "500", "200"),
        ("200", "0.0015", "500", "0"),
        ("1", "1", "500", "0.5"),
    ):
        add("end", *row)
    made.add(
        "ordinary",
        {"string_ft": "20", "line_lb_per_ft": "0.0015", "tension_lb": "20", "place_ft": "10"},
        {"string_sag_in": "0.045"},
        kind="worked",
        source="20 ft of 0.0015 lb/ft at 20 lb, by hand: 0.045 in",
    )
    return made.cases


def leveling_action() -> Iterable[Case]:
    made = Builder("1/8 in and 3/8 in: common practice, no source; trusses by IRC R802.7.2, secondary source")

    def add(class_: str, build_up: str, leave: str = "0.125", shim: str = "0.375", truss: str = "no") -> None:
        high, left = Fraction(build_up), Fraction(leave)
        action = "sister" if high > Fraction(shim) else "shim" if high > left else "leave" if high >= -left else "plane"
        if truss == "yes" and action in ("sister", "plane"):
            action = "stop"
        made.add(
            class_, {"build_up_in": build_up, "leave_in": leave, "shim_in": shim, "truss": truss}, {"action": action}
        )

    for build_up, truss in (
        (u, t) for u in ("-1", "-0.2", "-0.05", "0", "0.09", "0.25", "0.36", "0.6", "2") for t in ("yes", "no")
    ):
        add("ordinary", build_up, truss=truss)
    for edge in ("-0.125", "0.125", "0.375"):
        for off in ("-0.0001", "0", "0.0001"):
            for truss in ("yes", "no"):
                add("step", str(float(Fraction(edge) + Fraction(off))), truss=truss)
    for build_up in ("-24", "24", "0.5", "-0.5", "1"):
        add("end", build_up, "0", "1")
        add("end", build_up, "1", "1")
    return made.cases


FUNCTIONS = {
    "shim_nail": shim_nail,
    "shim_taper": shim_taper,
    "shim_thickness": shim_thickness,
    "sister_lap": sister_lap,
    "chord_deviation": chord_deviation,
    "sag_fraction": sag_fraction,
    "drop_below_string": drop_below_string,
    "string_sag": string_sag,
    "leveling_action": leveling_action,
}
