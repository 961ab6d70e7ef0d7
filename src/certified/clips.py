"""How far apart nails and clips may stand against uplift, and the ties and joints below."""

from __future__ import annotations

from typing import Iterable


from arithmetic import number
from case_file import Builder, Case, Value
from precise import grid

AREA = "load of the area that one fastener holds: lb = psf x in x in / 144"


def nail_spacing_for_uplift() -> Iterable[Case]:
    made = Builder(AREA)

    def add(class_: str, resistance: str, uplift: str, supports: str, **other: str) -> None:
        made.add(
            class_,
            {"resistance_lb": resistance, "uplift_psf": uplift, "support_spacing_in": supports},
            {"spacing_in": 144 * number(resistance) / (number(uplift) * number(supports))},
            **other,
        )

    for row in grid(
        resistance=("48.5", "68.2", "80.6", "102.1"), uplift=("16.7", "33.7", "57.3"), supports=("16", "19.2", "24")
    ):
        add("ordinary", **row)
    for row in grid(resistance=("1", "2000"), uplift=("1", "500"), supports=("6", "96")):
        add("end", **row)
    for resistance, uplift, supports in (
        ("60", "60", "24"),
        ("60", "30", "24"),
        ("72", "24", "24"),
        ("48", "48", "36"),
        ("50", "100", "24"),
    ):
        add("step", resistance, uplift, supports)
        add("step", str(float(number(resistance) - number("0.001"))), uplift, supports)
        add("step", str(float(number(resistance) + number("0.001"))), uplift, supports)
    for supports, said in (("24", "7.14"), ("16", "10.71")):
        made.add(
            "ordinary",
            {"resistance_lb": "68.2", "uplift_psf": "57.3", "support_spacing_in": supports},
            {"spacing_in": said},
            kind="worked",
            tolerance="0",
            within="0.005",
            source="8d common of 68.2 lb under 57.3 psf, worked by hand",
        )
    return made.cases


def clip_spacing() -> Iterable[Case]:
    made = Builder(AREA)

    def add(class_: str, resistance: str, screws: str, uplift: str, cover: str) -> None:
        made.add(
            class_,
            {"resistance_lb": resistance, "screws_per_clip": screws, "uplift_psf": uplift, "panel_cover_in": cover},
            {"spacing_in": 144 * number(screws) * number(resistance) / (number(uplift) * number(cover))},
        )

    for row in grid(
        resistance=("57.8", "71.6", "94.8"),
        screws=("1", "2", "3"),
        uplift=("33.7", "57.3", "80.3"),
        cover=("12", "16", "18"),
    ):
        add("ordinary", **row)
    for row in grid(resistance=("1", "2000"), screws=("1", "6"), uplift=("1", "500"), cover=("4", "48")):
        add("end", **row)
    for resistance, said in (("71.6", "16.05"), ("94.8", "21.25")):
        made.add(
            "ordinary",
            {"resistance_lb": resistance, "screws_per_clip": "2", "uplift_psf": "80.3", "panel_cover_in": "16"},
            {"spacing_in": said},
            kind="worked",
            tolerance="0",
            within="0.0051",
            source="two #10 a clip under 80.3 psf, 16 in cover, worked by hand",
        )
    return made.cases


def clip_spacing_limit() -> Iterable[Case]:
    made = Builder(f"{AREA}; a test is not stretched to wider spacings")

    def add(class_: str, **row: Value) -> None:
        pull = number(row["uplift_psf"]) * number(row["panel_cover_in"]) / 144
        tested = number(row["tested_spacing_in"])
        limits = {
            "screws": number(row["screws_per_clip"]) * number(row["resistance_lb"]) / pull,
            "clip": number(row["clip_lb"]) / pull,
            "seam": min(tested, tested * number(row["seam_psf"]) / number(row["uplift_psf"])),
            "maker": number(row["maker_most_in"]),
        }
        governs = min(limits, key=limits.__getitem__)
        if sorted(limits.values())[0] < sorted(limits.values())[1]:
            made.add(class_, row, {"spacing_in": limits[governs], "governs": governs})

    base = {
        "resistance_lb": "71.6",
        "screws_per_clip": "2",
        "seam_psf": "90",
        "clip_lb": "250",
        "panel_cover_in": "16",
        "tested_spacing_in": "24",
        "maker_most_in": "30",
        "uplift_psf": "57.3",
    }
    for row in grid(
        resistance_lb=("40", "71.6", "150"), clip_lb=("100", "250"), seam_psf=("45", "90"), maker_most_in=("12", "36")
    ):
        add("ordinary", **(base | row))
    for row in (
        {"resistance_lb": "1"},
        {"resistance_lb": "2000"},
        {"screws_per_clip": "1"},
        {"screws_per_clip": "6"},
        {"seam_psf": "1"},
        {"seam_psf": "500"},
        {"clip_lb": "1"},
        {"clip_lb": "5000"},
        {"panel_cover_in": "4"},
        {"panel_cover_in": "48"},
        {"tested_spacing_in": "1"},
        {"maker_most_in": "1"},
        {"maker_most_in": "72"},
        {"uplift_psf": "1"},
        {"uplift_psf": "500"},
    ):
        add("end", **(base | row))
    for name, values in (
        ("maker_most_in", ("22.49", "22.5")),
        ("clip_lb", ("143.19", "143.21")),
        ("seam_psf", ("53.7", "53.73")),
        ("resistance_lb", ("76.3", "76.5")),
    ):
        for value in values:
            add("governing", **(base | {name: value}))
    return made.cases


def weakest_link() -> Iterable[Case]:
    made = Builder("strength over the area that one fastener holds; the chain is as strong as its weakest link")

    def add(class_: str, **row: Value) -> None:
        uplift, clip_area = (
            number(row["uplift_psf"]),
            number(row["clip_spacing_in"]) * number(row["panel_cover_in"]) / 144,
        )
        holds = {
            "seam": number(row["seam_psf"]),
            "clip": number(row["clip_lb"]) / clip_area,
            "screws": number(row["screws_per_clip"]) * number(row["screw_lb"]) / clip_area,
            "nails": number(row["nail_lb"])
            * 144
            / (number(row["nail_spacing_in"]) * number(row["support_spacing_in"])),
        }
        answer = {f"{name}_ratio": uplift / strength for name, strength in holds.items()}
        answer |= {
            "covering_holds_psf": min(holds["seam"], holds["clip"], holds["screws"]),
            "deck_holds_psf": holds["nails"],
            "weakest": min(holds, key=holds.__getitem__),
            "ok": min(holds.values()) >= uplift,
        }
        made.add(class_, row, answer)

    base = {
        "uplift_psf": "57.3",
        "seam_psf": "90",
        "clip_lb": "250",
        "panel_cover_in": "16",
        "screw_lb": "71.6",
        "screws_per_clip": "2",
        "clip_spacing_in": "16",
        "nail_lb": "68.2",
        "nail_spacing_in": "6",
        "support_spacing_in": "24",
    }
    for row in grid(
        uplift_psf=("33.7", "57.3"),
        screws_per_clip=("1", "2"),
        nail_spacing_in=("4", "6", "12"),
        clip_spacing_in=("12", "24"),
        seam_psf=("60",),
    ):
        add("ordinary", **(base | row))
    ends = (
        ("uplift_psf", "1", "500"),
        ("seam_psf", "1", "500"),
        ("clip_lb", "1", "5000"),
        ("panel_cover_in", "4", "48"),
        ("screw_lb", "1", "2000"),
        ("screws_per_clip", "1", "6"),
        ("clip_spacing_in", "1", "72"),
        ("nail_lb", "1", "2000"),
        ("nail_spacing_in", "1", "24"),
        ("support_spacing_in", "6", "96"),
    )
    for name, low, high in ends:
        add("end", **(base | {name: low}))
        add("end", **(base | {name: high}))
    for uplift in ("68.19", "68.2", "68.21"):
        add("step", **(base | {"uplift_psf": uplift}))
    for screw in ("60.6", "60.7"):
        add("governing", **(base | {"screw_lb": screw}))
    return made.cases


def practical_nail_spacing() -> Iterable[Case]:
    made = Builder("nailed at 12, 6, 4 and 3 in: common practice, no source", tolerance="0")

    def add(class_: str, spacing: str, most: str) -> None:
        made.add(
            class_,
            {"spacing_in": spacing, "most_in": most},
            {"nail_spacing_in": max(at for at in (12, 6, 4, 3) if at <= min(number(spacing), number(most)))},
        )

    for spacing, most in (
        (s, m) for s in ("3.5", "4.7", "5.2", "7.14", "10.71", "15", "33") for m in ("4", "6", "12", "24")
    ):
        add("ordinary", spacing, most)
    for at in ("3", "4", "6", "12"):
        for off in ("0", "0.001") if at == "3" else ("-0.001", "0", "0.001"):
            add("step", str(float(number(at) + number(off))), "12")
    for spacing, most in (("1000", "24"), ("1000", "3"), ("3", "3"), ("3", "24")):
        add("end", spacing, most)
    return made.cases


def tributary_area() -> Iterable[Case]:
    made = Builder("rectangle")
    for spacing, line in ((s, l) for s in ("3", "4", "6", "7.14", "12") for l in ("12", "16", "19.2", "24")):
        made.add(
            "ordinary",
            {"spacing_in": spacing, "line_spacing_in": line},
            {"tributary_sf": number(spacing) * number(line) / 144},
        )
    for spacing, line in ((s, l) for s in ("1", "96") for l in ("1", "96")):
        made.add(
            "end",
            {"spacing_in": spacing, "line_spacing_in": line},
            {"tributary_sf": number(spacing) * number(line) / 144},
        )
    for spacing, area in (("12", "2"), ("6", "1"), ("3", "0.5")):
        made.add(
            "ordinary",
            {"spacing_in": spacing, "line_spacing_in": "24"},
            {"tributary_sf": area},
            kind="worked",
            tolerance="0",
            source="a thesis on sheathing nails: 2, 1 and 0.5 sq ft at 24 in, secondary source",
        )
    return made.cases


FUNCTIONS = {
    "nail_spacing_for_uplift": nail_spacing_for_uplift,
    "clip_spacing": clip_spacing,
    "clip_spacing_limit": clip_spacing_limit,
    "weakest_link": weakest_link,
    "practical_nail_spacing": practical_nail_spacing,
    "tributary_area": tributary_area,
}
