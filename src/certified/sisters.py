"""Sisters: stock for sagged rafters, shares by stiffness, pairs in bending, splices, nails along, reactions."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping

from mpmath import ceil, mpf, sqrt

from case_file import Builder, Case, Value, draws
from precise import grid, number
from wood import SIZES

STOCK = (8, 10, 12, 14, 16, 18, 20)
SIDE_BY_SIDE = "two pieces side by side bend to one curve: shares by E I; dressed sizes of PS 20-20"
PARABOLA = "straight stock on a parabola: common practice, no source; geometry"


def section(size: str) -> tuple[mpf, mpf, mpf]:
    """Width, section modulus and second moment of a dressed size."""
    b, d = (number(side) for side in SIZES[size])
    return b, b * d**2 / 6, b * d**3 / 12


def stock(row: Mapping[str, Value]) -> dict[str, Value]:
    """Answers of sister_stock: zeros where the sag may stay."""
    sag, span, tolerance = (number(row[name]) for name in ("sag_in", "span_ft", "tolerance_in"))
    if sag <= tolerance:
        return dict.fromkeys(("length_ft", "stock_ft", "pieces", "nails", "end_offset_in", "near_miss_in"), 0)
    length = min(span, span * sqrt(1 - tolerance / sag) + 2 * number(row["lap_in"]) / 12)
    bought = next(size for size in STOCK if size >= length)
    shorter = max((size for size in STOCK if size < length), default=0)
    short_by = (length - shorter) * 12
    row_of = int(ceil((length * 12 - 4) / number(row.get("nail_spacing_in", "12")))) + 1
    pieces = int(row["rafter_count"])
    return {"length_ft": length, "stock_ft": bought, "pieces": pieces, "nails": int(row.get("nail_rows", "2")) * row_of * pieces,
            "end_offset_in": sag * (1 - (length / span) ** 2), "near_miss_in": short_by if shorter and short_by < 1 else 0}


def sister_stock() -> Iterable[Case]:
    made = Builder(PARABOLA, within="1e-9")

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, stock(row))

    for row in grid(sag_in=("0.875", "1.625", "2.25"), span_ft=("11.25", "13.5", "16.75"), tolerance_in=("0.25", "0.375"), lap_in=("12", "24"), rafter_count=("7",)):
        add("ordinary", **row)
    for row in grid(sister_size=tuple(SIZES), nail_spacing_in=("8", "16"), nail_rows=("1", "3"), sag_in=("1.25",), span_ft=("14.5",), tolerance_in=("0.125",), lap_in=("18",), rafter_count=("18",)):
        add("ordinary", **row)
    for size in STOCK:
        for off in ("-0.001", "0", "0.001", "0.0825", "0.084"):
            if size + number(off) <= 20:
                add("step", sag_in="1", span_ft=str(float(size + number(off))), tolerance_in="0", lap_in="0", rafter_count="4")
    for inches in ("99.99", "100.01", "104", "111.99", "112.01", "123.99", "124.01"):
        add("step", sag_in="1", span_ft=f"{float(number(inches) / 12):.10g}", tolerance_in="0", lap_in="0", rafter_count="1", nail_spacing_in="12", nail_rows="1")
    for span, spacing in (("9", "8"), ("9.5", "10"), ("12", "10"), ("15", "16"), ("12.25", "11")):
        add("step", sag_in="1", span_ft=span, tolerance_in="0", lap_in="0", rafter_count="3", nail_spacing_in=spacing)
    for sag, tolerance in (("0", "0"), ("0.375", "0.375"), ("0.3749", "0.375"), ("0.3751", "0.375"), ("0", "2"), ("2", "2")):
        add("degenerate", sag_in=sag, span_ft="12", tolerance_in=tolerance, lap_in="12", rafter_count="9")
    for row in ({"span_ft": "2"}, {"lap_in": "120"}, {"lap_in": "0"}, {"rafter_count": "0"}, {"rafter_count": "500"}, {"tolerance_in": "2"}, {"nail_rows": "4"},
                {"nail_spacing_in": "2"}, {"nail_spacing_in": "48"}, {"sag_in": "6", "sister_size": "2x8"}, {"span_ft": "20", "lap_in": "0"}):
        add("end", **({"sag_in": "2.5", "span_ft": "13", "tolerance_in": "0.25", "lap_in": "12", "rafter_count": "5"} | row))
    random = draws("sister_stock")
    for _ in range(30):
        add("ordinary", sag_in=str(random.randint(4, 40) / 8), span_ft=str(random.randint(400, 2000) / 100), tolerance_in=str(random.randint(0, 6) / 16),
            lap_in=str(random.randint(0, 36)), rafter_count=str(random.randint(1, 40)), nail_spacing_in=str(random.randint(6, 24)), nail_rows=str(random.randint(1, 3)))
    return made.cases


def sister_share() -> Iterable[Case]:
    made = Builder(SIDE_BY_SIDE)

    def add(class_: str, rafter: str, sister: str, e_rafter: str = "1400000", e_sister: str = "1400000", **other: str) -> None:
        old, new = section(rafter)[2] * number(e_rafter), section(sister)[2] * number(e_sister)
        made.add(class_, {"rafter_size": rafter, "rafter_modulus_psi": e_rafter, "sister_size": sister, "sister_modulus_psi": e_sister},
                 {"rafter_share": old / (old + new), "sister_share": new / (old + new)}, **other)

    for rafter, sister in ((r, s) for r in SIZES for s in SIZES):
        add("degenerate" if rafter == sister else "ordinary", rafter, sister)
        add("ordinary", rafter, sister, "1200000", "1600000")
    for row in (("100000", "5000000"), ("5000000", "100000"), ("100000", "100000"), ("5000000", "5000000")):
        add("end", "2x4", "2x12", *row)
        add("end", "2x12", "2x4", *row)
    made.add("ordinary", {"rafter_size": "2x6", "sister_size": "2x8", "sister_modulus_psi": "1600000"}, {"sister_share": "0.7236"}, kind="worked",
             tolerance="0", within="0.00005", source="2x6 of 1.4 and 2x8 of 1.6 million psi, worked by hand: 0.7236")
    return made.cases


def uniform(spacing: Value, *pressures: mpf) -> mpf:
    """Pounds for each inch of span."""
    return sum(pressures) * number(spacing) / 144


def paired(row: Mapping[str, Value]) -> dict[str, Value]:
    """Answers of sistered_rafter."""
    b, d = number(row.get("rafter_thickness_in", "1.5")), number(row["rafter_depth_in"])
    modulus, inertia = b * d**2 / 6, b * d**3 / 12
    _, new_modulus, new_inertia = section(row["sister_size"])
    old, new = inertia * number(row.get("rafter_modulus_psi", "1400000")), new_inertia * number(row.get("sister_modulus_psi", "1400000"))
    length, live, dead = number(row["span_ft"]) * 12, number(row["live_psf"]), number(row["dead_psf"])
    locked = mpf(0) if row.get("jacked") == "yes" else number(row["existing_psf"])
    moment = {name: uniform(row["spacing_in"], load) * length**2 / 8 for name, load in (("all", live + dead), ("locked", locked), ("added", live + dead - locked))}
    share, takes = old / (old + new), (number(row["rafter_bending_psi"]) * modulus, number(row["sister_bending_psi"]) * new_modulus)
    sag = 5 * uniform(row["spacing_in"], live) * length**4 / (384 * (old + new))
    ratios = {"rafter_ratio": (moment["locked"] + share * moment["added"]) / takes[0], "sister_ratio": (1 - share) * moment["added"] / takes[1],
              "sag_ratio": sag / (length / number(row.get("deflection_limit", "180")))}
    return {"rafter_share": share, "sister_share": 1 - share, "alone_ratio": moment["all"] / takes[0]} | ratios | {
        "sag_in": sag, "capacity_in_lb": min(takes[0] / share, takes[1] / (1 - share)), "ok": max(ratios.values()) <= 1}


def sistered_rafter() -> Iterable[Case]:
    made = Builder(f"{SIDE_BY_SIDE}; NDS 2018 3.3, secondary source")

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, paired(row))

    house = {"rafter_bending_psi": "1006", "sister_bending_psi": "1350", "spacing_in": "16", "existing_psf": "4"}
    for row in grid(rafter_depth_in=("3.625", "5.5"), sister_size=("2x6", "2x8"), span_ft=("11", "14.5"), live_psf=("20", "35"), dead_psf=("10", "15"), jacked=("yes", "no")):
        add("ordinary", **house, **row)
    base = house | {"rafter_depth_in": "5.5", "sister_size": "2x6", "span_ft": "13", "live_psf": "30", "dead_psf": "10"}
    for row in ({"span_ft": "1"}, {"span_ft": "40"}, {"live_psf": "1"}, {"live_psf": "300"}, {"dead_psf": "0", "existing_psf": "0"}, {"dead_psf": "100", "existing_psf": "100"},
                {"rafter_thickness_in": "0.5"}, {"rafter_thickness_in": "6"}, {"rafter_depth_in": "2"}, {"rafter_depth_in": "16"}, {"deflection_limit": "120"},
                {"deflection_limit": "480"}, {"rafter_modulus_psi": "100000"}, {"sister_modulus_psi": "5000000"}, {"spacing_in": "4"}, {"spacing_in": "48"}):
        add("end", **(base | row))
    at = paired(base)
    for off in ("0.9999", "1.0001"):
        live = 30 * number(off) / max(at["rafter_ratio"], at["sag_ratio"], at["sister_ratio"])
        add("step", **(base | {"live_psf": f"{float(live):.8g}", "dead_psf": "0", "existing_psf": "0"}))
    for existing in ("0", "5", "9.99", "10"):
        add("governing", **(base | {"existing_psf": existing}))
    return made.cases


def sister_splice() -> Iterable[Case]:
    made = Builder("statics of a splice: moment and shear at the break, two groups of nails on each side")

    def add(class_: str, **row: Value) -> None:
        length, x, arm, near = number(row["span_ft"]) * 12, number(row["break_ft"]) * 12, number(row["arm_in"]), number(row["near_in"])
        w, many = uniform(row["spacing_in"], number(row["live_psf"]), number(row["dead_psf"])), int(row.get("sisters", "1"))
        moment, shear = w * x * (length - x) / 2, abs(w * (length / 2 - x))
        far = (moment + near * shear) / arm / many
        forces, each = (far + shear / many, far), number(row["lateral_lb"])
        nails = [max(3, int(ceil(force / each))) for force in forces]
        ratio = (moment + near * shear) / many / (number(row["sister_bending_psi"]) * section(row["sister_size"])[1])
        made.add(class_, row, {"moment_in_lb": moment, "shear_lb": shear, "near_lb": forces[0], "far_lb": far, "near_nails": nails[0], "far_nails": nails[1],
                               "least_length_ft": 2 * (near + arm + number(row.get("end_distance_in", "3"))) / 12, "sister_ratio": ratio})

    house = {"spacing_in": "24", "live_psf": "30", "dead_psf": "10", "lateral_lb": "135.7", "sister_bending_psi": "1428.3"}
    for row in grid(span_ft=("11.5", "13"), break_ft=("4.25", "5.5"), near_in=("4", "8"), arm_in=("18", "30"), sister_size=("2x8",), sisters=("1", "2")):
        add("ordinary", **house, **row)
    base = house | {"span_ft": "13", "break_ft": "6.5", "near_in": "6", "arm_in": "24", "sister_size": "2x8"}
    for row in ({"arm_in": "120", "span_ft": "40", "break_ft": "20"}, {"near_in": "0"}, {"break_ft": "4.5", "near_in": "0"}, {"end_distance_in": "0"}, {"end_distance_in": "24"},
                {"lateral_lb": "5000"}, {"live_psf": "1", "dead_psf": "0"}, {"spacing_in": "48"}, {"sister_size": "2x12"}, {"span_ft": "40", "break_ft": "20"}):
        add("end", **(base | row))
    for lateral in ("140.8", "140.9", "120.7", "120.8", "281.6", "281.7"):
        add("step", **(base | {"lateral_lb": lateral}))
    made.add("ordinary", base | {"arm_in": "24.05"}, {"moment_in_lb": "20280", "far_lb": "843.2", "near_lb": "843.2", "far_nails": 7}, kind="worked",
             tolerance="0", within="0.05", source="break at midspan, 6.667 lb/in, 156 in, arm 24.05 in: 843.2 lb, held against a two-beam model")
    return made.cases


def nails_along_sister() -> Iterable[Case]:
    made = Builder("statics: transfer a w L, each nail a w s; the common 12 in from memory of IRC 2021 Table R602.3(1)")

    def add(class_: str, **row: Value) -> None:
        w = uniform(row["spacing_in"], number(row["live_psf"]), number(row["dead_psf"]))
        share, each = number(row["sister_share"]), number(row["lateral_lb"])
        transfer, load = share * w * number(row["span_ft"]) * 12, share * w * number(row.get("nail_spacing_in", "12"))
        greatest = each / (share * w) if share else None
        ends = 2 if row["sister_bears"] == "yes" else max(2, int(ceil(number("1.25") * transfer / (2 * each))))
        made.add(class_, row, {"transfer_lb": transfer, "each_lb": load, "nail_ratio": load / each, "greatest_spacing_in": greatest, "common_spacing_in": 12,
                               "use_spacing_in": min(greatest, mpf(12)) if share else 12, "end_nails": ends})

    for row in grid(sister_share=("0.36", "0.5", "0.7236"), span_ft=("11.25", "14"), spacing_in=("16", "24"), live_psf=("30",), dead_psf=("10",), lateral_lb=("97", "135.7"),
                    sister_bears=("yes", "no")):
        add("ordinary", **row)
    base = {"sister_share": "0.5", "span_ft": "13", "spacing_in": "24", "live_psf": "30", "dead_psf": "10", "lateral_lb": "136", "sister_bears": "no"}
    for row in ({"sister_share": "0"}, {"sister_share": "1"}, {"span_ft": "1"}, {"span_ft": "40"}, {"live_psf": "1"}, {"live_psf": "300"}, {"dead_psf": "0"}, {"dead_psf": "100"},
                {"nail_spacing_in": "1"}, {"nail_spacing_in": "48"}, {"lateral_lb": "1"}, {"lateral_lb": "5000"}, {"spacing_in": "4"}, {"spacing_in": "48"}):
        add("end", **(base | row))
    for lateral in ("162.49", "162.51", "108.33", "108.34", "39.99", "40.01"):
        add("step", **(base | {"lateral_lb": lateral}))
    return made.cases


def sister_reactions() -> Iterable[Case]:
    made = Builder("NDS 2018 3.4.3, 3.10, secondary source, notch (dn/d)2 from memory; a sister off the plate takes nothing")

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
        made.add(class_, row, {
            "rafter_reaction_lb": rafter, "sister_reaction_lb": sister, "alone_shear_ratio": shear(old + added, *old_shear), "alone_bearing_ratio": (old + added) / by_seat,
            "rafter_shear_ratio": shear(rafter, *old_shear), "rafter_bearing_ratio": rafter / by_seat,
            "sister_shear_ratio": shear(sister, new_b, new_d, row.get("sister_notch_in", "0"), row["sister_shear_psi"]),
            "sister_bearing_ratio": sister / (number(row["sister_bearing_psi"]) * new_b * seat), "carried_by": "rafter-and-sister" if bears else "rafter-alone"})

    house = {"rafter_shear_psi": "155.25", "rafter_bearing_psi": "425", "sister_shear_psi": "207", "sister_bearing_psi": "625"}
    for row in grid(existing_lb=("40", "110"), added_lb=("180", "420"), rafter_share=("0.2764", "0.5"), sister_bears=("yes", "no"), rafter_depth_in=("5.5",), sister_size=("2x6", "2x8"),
                    rafter_notch_in=("0", "1.25")):
        add("ordinary", **house, **row)
    base = house | {"existing_lb": "50", "added_lb": "300", "rafter_share": "0.5", "sister_bears": "yes", "rafter_depth_in": "5.5", "sister_size": "2x6"}
    for row in ({"existing_lb": "0"}, {"added_lb": "0"}, {"rafter_share": "0"}, {"rafter_share": "1"}, {"bearing_in": "0.5"}, {"bearing_in": "12"}, {"sister_notch_in": "1.375"},
                {"rafter_notch_in": "1.375"}, {"rafter_thickness_in": "0.5"}, {"rafter_thickness_in": "6"}, {"rafter_depth_in": "16", "rafter_notch_in": "4"}, {"rafter_depth_in": "2"}):
        add("end", **(base | row))
    return made.cases


FUNCTIONS = {"sister_stock": sister_stock, "sister_share": sister_share, "sistered_rafter": sistered_rafter, "sister_splice": sister_splice,
             "nails_along_sister": nails_along_sister, "sister_reactions": sister_reactions}
