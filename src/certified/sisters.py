"""Sisters: stock for sagged rafters, shares by stiffness, pairs in bending, splices, nails along, reactions."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import ceil, mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import grid
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
    return {
        "length_ft": length,
        "stock_ft": bought,
        "pieces": pieces,
        "nails": int(row.get("nail_rows", "2")) * row_of * pieces,
        "end_offset_in": sag * (1 - (length / span) ** 2),
        "near_miss_in": short_by if shorter and short_by < 1 else 0,
    }


def sister_stock() -> Iterable[Case]:
    made = Builder(PARABOLA, within="1e-9")

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, stock(row))

    for row in grid(
        sag_in=("0.875", "1.625", "2.25"),
        span_ft=("11.25", "13.5", "16.75"),
        tolerance_in=("0.25", "0.375"),
        lap_in=("12", "24"),
        rafter_count=("7",),
    ):
        add("ordinary", **row)
    for row in grid(
        sister_size=tuple(SIZES),
        nail_spacing_in=("8", "16"),
        nail_rows=("1", "3"),
        sag_in=("1.25",),
        span_ft=("14.5",),
        tolerance_in=("0.125",),
        lap_in=("18",),
        rafter_count=("18",),
    ):
        add("ordinary", **row)
    for size in STOCK:
        for off in ("-0.001", "0", "0.001", "0.0825", "0.084"):
            if size + number(off) <= 20:
                add(
                    "step",
                    sag_in="1",
                    span_ft=str(float(size + number(off))),
                    tolerance_in="0",
                    lap_in="0",
                    rafter_count="4",
                )
    for inches in ("99.99", "100.01", "104", "111.99", "112.01", "123.99", "124.01"):
        add(
            "step",
            sag_in="1",
            span_ft=f"{float(number(inches) / 12):.10g}",
            tolerance_in="0",
            lap_in="0",
            rafter_count="1",
            nail_spacing_in="12",
            nail_rows="1",
        )
    for span, spacing in (("9", "8"), ("9.5", "10"), ("12", "10"), ("15", "16"), ("12.25", "11")):
        add("step", sag_in="1", span_ft=span, tolerance_in="0", lap_in="0", rafter_count="3", nail_spacing_in=spacing)
    for sag, tolerance in (
        ("0", "0"),
        ("0.375", "0.375"),
        ("0.3749", "0.375"),
        ("0.3751", "0.375"),
        ("0", "2"),
        ("2", "2"),
    ):
        add("degenerate", sag_in=sag, span_ft="12", tolerance_in=tolerance, lap_in="12", rafter_count="9")
    for row in (
        {"span_ft": "2"},
        {"lap_in": "120"},
        {"lap_in": "0"},
        {"rafter_count": "0"},
        {"rafter_count": "500"},
        {"tolerance_in": "2"},
        {"nail_rows": "4"},
        {"nail_spacing_in": "2"},
        {"nail_spacing_in": "48"},
        {"sag_in": "6", "sister_size": "2x8"},
        {"span_ft": "20", "lap_in": "0"},
    ):
        add(
            "end",
            **({"sag_in": "2.5", "span_ft": "13", "tolerance_in": "0.25", "lap_in": "12", "rafter_count": "5"} | row),
        )
    random = draws("sister_stock")
    for _ in range(30):
        add(
            "ordinary",
            sag_in=str(random.randint(4, 40) / 8),
            span_ft=str(random.randint(400, 2000) / 100),
            tolerance_in=str(random.randint(0, 6) / 16),
            lap_in=str(random.randint(0, 36)),
            rafter_count=str(random.randint(1, 40)),
            nail_spacing_in=str(random.randint(6, 24)),
            nail_rows=str(random.randint(1, 3)),
        )
    return made.cases


def sister_share() -> Iterable[Case]:
    made = Builder(SIDE_BY_SIDE)

    def add(
        class_: str, rafter: str, sister: str, e_rafter: str = "1400000", e_sister: str = "1400000", **other: str
    ) -> None:
        old, new = section(rafter)[2] * number(e_rafter), section(sister)[2] * number(e_sister)
        made.add(
            class_,
            {
                "rafter_size": rafter,
                "rafter_modulus_psi": e_rafter,
                "sister_size": sister,
                "sister_modulus_psi": e_sister,
            },
            {"rafter_share": old / (old + new), "sister_share": new / (old + new)},
            **other,
        )

    for rafter, sister in ((r, s) for r in SIZES for s in SIZES):
        add("degenerate" if rafter == sister else "ordinary", rafter, sister)
        add("ordinary", rafter, sister, "1200000", "1600000")
    for row in (("100000", "5000000"), ("5000000", "100000"), ("100000", "100000"), ("5000000", "5000000")):
        add("end", "2x4", "2x12", *row)
        add("end", "2x12", "2x4", *row)
    made.add(
        "ordinary",
        {"rafter_size": "2x6", "sister_size": "2x8", "sister_modulus_psi": "1600000"},
        {"sister_share": "0.7236"},
        kind="worked",
        tolerance="0",
        within="0.00005",
        source="2x6 of 1.4 and 2x8 of 1.6 million psi, worked by hand: 0.7236",
    )
    return made.cases


def uniform(spacing: Value, *pressures: mpf) -> mpf:
    """Pounds for each inch of span."""
    return sum(pressures) * number(spacing) / 144


def paired(row: Mapping[str, Value]) -> dict[str, Value]:
    """Answers of sistered_rafter."""
    b, d = number(row.get("rafter_thickness_in", "1.5")), number(row["rafter_depth_in"])
    modulus, inertia = b * d**2 / 6, b * d**3 / 12
    _, new_modulus, new_inertia = section(row["sister_size"])
    old, new = inertia * number(row.get("rafter_modulus_psi", "1400000")), new_inertia * number(
        row.get("sister_modulus_psi", "1400000")
    )
    length, live, dead = number(row["span_ft"]) * 12, number(row["live_psf"]), number(row["dead_psf"])
    locked = mpf(0) if row.get("jacked") == "yes" else number(row["existing_psf"])
    moment = {
        name: uniform(row["spacing_in"], load) * length**2 / 8
        for name, load in (("all", live + dead), ("locked", locked), ("added", live + dead - locked))
    }
    share, takes = old / (old + new), (
        number(row["rafter_bending_psi"]) * modulus,
        number(row["sister_bending_psi"]) * new_modulus,
    )
    sag = 5 * uniform(row["spacing_in"], live) * length**4 / (384 * (old + new))
    ratios = {
        "rafter_ratio": (moment["locked"] + share * moment["added"]) / takes[0],
        "sister_ratio": (1 - share) * moment["added"] / takes[1],
        "sag_ratio": sag / (length / number(row.get("deflection_limit", "180"))),
    }
    return (
        {"rafter_share": share, "sister_share": 1 - share, "alone_ratio": moment["all"] / takes[0]}
        | ratios
        | {
            "sag_in": sag,
            "capacity_in_lb": min(takes[0] / share, takes[1] / (1 - share)),
            "ok": max(ratios.values()) <= 1,
        }
    )


def sistered_rafter() -> Iterable[Case]:
    made = Builder(f"{SIDE_BY_SIDE}; NDS 2018 3.3, secondary source")

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, paired(row))

    house = {"rafter_bending_psi": "1006", "sister_bending_psi": "1350", "spacing_in": "16", "existing_psf": "4"}
    for row in grid(
        rafter_depth_in=("3.625", "5.5"),
        sister_size=("2x6", "2x8"),
        span_ft=("11", "14.5"),
        live_psf=("20", "35"),
        dead_psf=("10", "15"),
        jacked=("yes", "no"),
    ):
        add("ordinary", **house, **row)
    base = house | {"rafter_depth_in": "5.5", "sister_size": "2x6", "span_ft": "13", "live_psf": "30", "dead_psf": "10"}
    for row in (
        {"span_ft": "1"},
        {"span_ft": "40"},
        {"live_psf": "1"},
        {"live_psf": "300"},
        {"dead_psf": "0", "existing_psf": "0"},
        {"dead_psf": "100", "existing_psf": "100"},
        {"rafter_thickness_in": "0.5"},
        {"rafter_thickness_in": "6"},
        {"rafter_depth_in": "2"},
        {"rafter_depth_in": "16"},
        {"deflection_limit": "120"},
        {"deflection_limit": "480"},
        {"rafter_modulus_psi": "100000"},
        {"sister_modulus_psi": "5000000"},
        {"spacing_in": "4"},
        {"spacing_in": "48"},
    ):
        add("end", **(base | row))
    at = paired(base)
    for off in ("0.9999", "1.0001"):
        live = 30 * number(off) / max(at["rafter_ratio"], at["sag_ratio"], at["sister_ratio"])
        add("step", **(base | {"live_psf": f"{float(live):.8g}", "dead_psf": "0", "existing_psf": "0"}))
    for existing in ("0", "5", "9.99", "10"):
        add("governing", **(base | {"existing_psf": existing}))
    return made.cases


FUNCTIONS = {
    "sister_stock": sister_stock,
    "sister_share": sister_share,
    "sistered_rafter": sistered_rafter,
}
