"""Sisters over a break, the nails along a sister, and what both pieces bring to a support."""

from __future__ import annotations

from typing import Iterable

from mpmath import ceil, mpf

from arithmetic import number
from case_file import Builder, Case, Value
from precise import grid
from sisters import section, uniform
from wood import SIZES


def sister_splice() -> Iterable[Case]:
    made = Builder("statics of a splice: moment and shear at the break, two groups of nails on each side")

    def add(class_: str, **row: Value) -> None:
        length, x, arm, near = (
            number(row["span_ft"]) * 12,
            number(row["break_ft"]) * 12,
            number(row["arm_in"]),
            number(row["near_in"]),
        )
        w, many = uniform(row["spacing_in"], number(row["live_psf"]), number(row["dead_psf"])), int(
            row.get("sisters", "1")
        )
        moment, shear = w * x * (length - x) / 2, abs(w * (length / 2 - x))
        far = (moment + near * shear) / arm / many
        forces, each = (far + shear / many, far), number(row["lateral_lb"])
        nails = [max(3, int(ceil(force / each))) for force in forces]
        ratio = (moment + near * shear) / many / (number(row["sister_bending_psi"]) * section(row["sister_size"])[1])
        made.add(
            class_,
            row,
            {
                "moment_in_lb": moment,
                "shear_lb": shear,
                "near_lb": forces[0],
                "far_lb": far,
                "near_nails": nails[0],
                "far_nails": nails[1],
                "least_length_ft": 2 * (near + arm + number(row.get("end_distance_in", "3"))) / 12,
                "sister_ratio": ratio,
            },
        )

    house = {
        "spacing_in": "24",
        "live_psf": "30",
        "dead_psf": "10",
        "lateral_lb": "135.7",
        "sister_bending_psi": "1428.3",
    }
    for row in grid(
        span_ft=("11.5", "13"),
        break_ft=("4.25", "5.5"),
        near_in=("4", "8"),
        arm_in=("18", "30"),
        sister_size=("2x8",),
        sisters=("1", "2"),
    ):
        add("ordinary", **house, **row)
    base = house | {"span_ft": "13", "break_ft": "6.5", "near_in": "6", "arm_in": "24", "sister_size": "2x8"}
    for row in (
        {"arm_in": "120", "span_ft": "40", "break_ft": "20"},
        {"near_in": "0"},
        {"break_ft": "4.5", "near_in": "0"},
        {"end_distance_in": "0"},
        {"end_distance_in": "24"},
        {"lateral_lb": "5000"},
        {"live_psf": "1", "dead_psf": "0"},
        {"spacing_in": "48"},
        {"sister_size": "2x12"},
        {"span_ft": "40", "break_ft": "20"},
    ):
        add("end", **(base | row))
    for lateral in ("140.8", "140.9", "120.7", "120.8", "281.6", "281.7"):
        add("step", **(base | {"lateral_lb": lateral}))
    made.add(
        "ordinary",
        base | {"arm_in": "24.05"},
        {"moment_in_lb": "20280", "far_lb": "843.2", "near_lb": "843.2", "far_nails": 7},
        kind="worked",
        tolerance="0",
        within="0.05",
        source="break at midspan, 6.667 lb/in, 156 in, arm 24.05 in: 843.2 lb, held against a two-beam model",
    )
    return made.cases


def nails_along_sister() -> Iterable[Case]:
    made = Builder("statics: transfer a w L, each nail a w s; the common 12 in from memory of IRC 2021 Table R602.3(1)")

    def add(class_: str, **row: Value) -> None:
        w = uniform(row["spacing_in"], number(row["live_psf"]), number(row["dead_psf"]))
        share, each = number(row["sister_share"]), number(row["lateral_lb"])
        transfer, load = share * w * number(row["span_ft"]) * 12, share * w * number(row.get("nail_spacing_in", "12"))
        greatest = each / (share * w) if share else None
        ends = 2 if row["sister_bears"] == "yes" else max(2, int(ceil(number("1.25") * transfer / (2 * each))))
        made.add(
            class_,
            row,
            {
                "transfer_lb": transfer,
                "each_lb": load,
                "nail_ratio": load / each,
                "greatest_spacing_in": greatest,
                "common_spacing_in": 12,
                "use_spacing_in": min(greatest, mpf(12)) if share else 12,
                "end_nails": ends,
            },
        )

    for row in grid(
        sister_share=("0.36", "0.5", "0.7236"),
        span_ft=("11.25", "14"),
        spacing_in=("16", "24"),
        live_psf=("30",),
        dead_psf=("10",),
        lateral_lb=("97", "135.7"),
        sister_bears=("yes", "no"),
    ):
        add("ordinary", **row)
    base = {
        "sister_share": "0.5",
        "span_ft": "13",
        "spacing_in": "24",
        "live_psf": "30",
        "dead_psf": "10",
        "lateral_lb": "136",
        "sister_bears": "no",
    }
    for row in (
        {"sister_share": "0"},
        {"sister_share": "1"},
        {"span_ft": "1"},
        {"span_ft": "40"},
        {"live_psf": "1"},
        {"live_psf": "300"},
        {"dead_psf": "0"},
        {"dead_psf": "100"},
        {"nail_spacing_in": "1"},
        {"nail_spacing_in": "48"},
        {"lateral_lb": "1"},
        {"lateral_lb": "5000"},
        {"spacing_in": "4"},
        {"spacing_in": "48"},
    ):
        add("end", **(base | row))
    for lateral in ("162.49", "162.51", "108.33", "108.34", "39.99", "40.01"):
        add("step", **(base | {"lateral_lb": lateral}))
    return made.cases


def sister_reactions() -> Iterable[Case]:
    made = Builder(
        "NDS 2018 3.4.3, 3.10, secondary source, notch (dn/d)2 from memory; a sister off the plate takes nothing"
    )

    def add(class_: str, **row: Value) -> None:
        old, added, share = number(row["existing_lb"]), number(row["added_lb"]), number(row["rafter_share"])
        bears, seat = row["sister_bears"] == "yes", number(row.get("bearing_in", "1.5"))
        rafter, sister = (old + share * added, (1 - share) * added) if bears else (old + added, mpf(0))
        b, d = number(row.get("rafter_thickness_in", "1.5")), number(row["rafter_depth_in"])
        new_b, new_d = (number(side) for side in SIZES[row["sister_size"]])

        def shear(reaction: mpf, width: mpf, depth: mpf, notch: Value, psi: Value) -> mpf:
            left = depth - number(notch)
            return reaction / (mpf(2) / 3 * number(psi) * width * left * (left / depth) ** 2)

        old_shear = (b, d, row.get("rafter_notch_in", "0"), row["rafter_shear_psi"])
        by_seat = number(row["rafter_bearing_psi"]) * b * seat
        made.add(
            class_,
            row,
            {
                "rafter_reaction_lb": rafter,
                "sister_reaction_lb": sister,
                "alone_shear_ratio": shear(old + added, *old_shear),
                "alone_bearing_ratio": (old + added) / by_seat,
                "rafter_shear_ratio": shear(rafter, *old_shear),
                "rafter_bearing_ratio": rafter / by_seat,
                "sister_shear_ratio": shear(
                    sister, new_b, new_d, row.get("sister_notch_in", "0"), row["sister_shear_psi"]
                ),
                "sister_bearing_ratio": sister / (number(row["sister_bearing_psi"]) * new_b * seat),
                "carried_by": "rafter-and-sister" if bears else "rafter-alone",
            },
        )

    house = {
        "rafter_shear_psi": "155.25",
        "rafter_bearing_psi": "425",
        "sister_shear_psi": "207",
        "sister_bearing_psi": "625",
    }
    for row in grid(
        existing_lb=("40", "110"),
        added_lb=("180", "420"),
        rafter_share=("0.2764", "0.5"),
        sister_bears=("yes", "no"),
        rafter_depth_in=("5.5",),
        sister_size=("2x6", "2x8"),
        rafter_notch_in=("0", "1.25"),
    ):
        add("ordinary", **house, **row)
    base = house | {
        "existing_lb": "50",
        "added_lb": "300",
        "rafter_share": "0.5",
        "sister_bears": "yes",
        "rafter_depth_in": "5.5",
        "sister_size": "2x6",
    }
    for row in (
        {"existing_lb": "0"},
        {"added_lb": "0"},
        {"rafter_share": "0"},
        {"rafter_share": "1"},
        {"bearing_in": "0.5"},
        {"bearing_in": "12"},
        {"sister_notch_in": "1.375"},
        {"rafter_notch_in": "1.375"},
        {"rafter_thickness_in": "0.5"},
        {"rafter_thickness_in": "6"},
        {"rafter_depth_in": "16", "rafter_notch_in": "4"},
        {"rafter_depth_in": "2"},
    ):
        add("end", **(base | row))
    return made.cases


FUNCTIONS = {
    "sister_splice": sister_splice,
    "nails_along_sister": nails_along_sister,
    "sister_reactions": sister_reactions,
}
