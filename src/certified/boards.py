"""Boards, clips, cut pieces and weights of panels."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping

from arithmetic import around, down, exacts, share, up
from case_file import Builder, Case, Value, draws, exact
from panels import ROWS, TABLE, Panel

PRACTICE = "common practice, no source"
BOARDS = "IRC 2021 Table R803.1, alike in 2015 to 2024, read on state code pages"
TONGUED = ((270, 340000, 48), (420, 660000, 60), (600, 1150000, 72))


def reach(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """5/8 in: 24 in; 1-1/2 in tongue and groove: the longest whose bending value and modulus are both met."""
    thickness, bending, modulus, spacing = exacts(
        inputs, "thickness_in", "bending_psi", "modulus_psi", "support_spacing_in"
    )
    most = 24 if thickness >= Fraction(5, 8) else 0
    if inputs["board_edge"] == "tongue-and-groove" and thickness >= Fraction(3, 2):
        most = max([most] + [span for fb, e, span in TONGUED if bending >= fb and modulus >= e])
    return {"max_span_in": most, "ok": spacing <= most}


def board_span() -> Iterable[Case]:
    """Printed rows, and both sides of every limit."""
    made = Builder(BOARDS, tolerance="0")

    def add(
        class_: str, thickness: Value, edge: str, bending: Value, modulus: Value, spacing: Value, **other: str
    ) -> None:
        inputs = {
            "thickness_in": thickness,
            "board_edge": edge,
            "bending_psi": bending,
            "modulus_psi": modulus,
            "support_spacing_in": spacing,
        }
        made.add(class_, inputs, reach(inputs), **other)

    add("edge", "0.625", "square", "0", "0", "24", kind="printed")
    for bending, modulus, span in TONGUED:
        add("edge", "1.5", "tongue-and-groove", str(bending), str(modulus), str(span), kind="printed")
        for by in (-1, 0, 1):
            add("edge", "1.5", "tongue-and-groove", str(bending + by), str(modulus), str(span))
            add("edge", "1.5", "tongue-and-groove", str(bending), str(modulus + by), str(span))
        for spacing in around(str(span)):
            add("governing", "1.5", "tongue-and-groove", str(bending), str(modulus), spacing)
        add("governing", "1.5", "tongue-and-groove", "5000", str(modulus), str(span))
        add("governing", "1.5", "tongue-and-groove", str(bending), "3000000", str(span))
    for thickness in (*around("0.625"), *around("1.5")):
        for edge in ("square", "tongue-and-groove"):
            add("edge", thickness, edge, "700", "1200000", "24")
    for thickness in ("0.6875", "0.75", "0.8125", "1", "1.25"):
        for spacing in ("16", "24", "32"):
            add("ordinary", thickness, "square", "0", "0", spacing)
    for thickness in ("1.5", "1.75", "2.5"):
        for bending, modulus in (("500", "900000"), ("875", "1300000"), ("300", "1400000"), ("1000", "500000")):
            for spacing in ("24", "48", "60"):
                add("ordinary", thickness, "tongue-and-groove", bending, modulus, spacing)
    for thickness in ("0.25", "6"):
        for edge in ("square", "tongue-and-groove"):
            add("end", thickness, edge, "0", "0", "6")
            add("end", thickness, edge, "5000", "3000000", "96")
    for spacing in around("24"):
        add("governing", "0.75", "square", "0", "0", spacing)
    for edge in ("square", "tongue-and-groove"):
        add("degenerate", "0.5", edge, "5000", "3000000", "6")
        add("degenerate", "1.5", edge, "0", "0", "24")
    return made.cases


def base(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """Each against its limit; on the limit it passes."""
    thickness, gap, hole, least, most_gap, most_hole = exacts(
        inputs, "thickness_in", "gap_in", "hole_in", "min_thickness_in", "max_gap_in", "max_hole_in"
    )
    answers = {"thick_enough": thickness >= least, "gap_ok": gap <= most_gap, "hole_ok": hole <= most_hole}
    return {**answers, "ok": all(answers.values())}


def board_base() -> Iterable[Case]:
    """Whether boards do as a base."""
    made = Builder(f"{PRACTICE}: covering makers commonly ask for 25/32 in, 1/4 in and 1 in", tolerance="0")
    source = draws("board_base")

    def add(
        class_: str,
        thickness: Value,
        gap: Value,
        hole: Value = "0",
        least: Value = "0.78125",
        most_gap: Value = "0.25",
        most_hole: Value = "1",
    ) -> None:
        inputs = {
            "thickness_in": thickness,
            "gap_in": gap,
            "hole_in": hole,
            "min_thickness_in": least,
            "max_gap_in": most_gap,
            "max_hole_in": most_hole,
        }
        made.add(class_, inputs, base(inputs))

    for thickness in ("0.75", "0.78125", "0.875", "1"):
        for gap, hole in (("0.125", "0"), ("0.5", "0"), ("0.1875", "0.75"), ("0.25", "2")):
            add("ordinary", thickness, gap, hole)
    for _ in range(70):
        add(
            "ordinary",
            Fraction(source.randint(20, 36), 32),
            Fraction(source.randint(0, 16), 32),
            Fraction(source.randint(0, 24), 16),
            source.choice(("0.75", "0.78125", "0.6875")),
            source.choice(("0.125", "0.25", "0.5")),
            source.choice(("0.5", "1")),
        )
    for thickness in around("0.78125", "0.0001"):
        add("step", thickness, "0.125")
    for gap in around("0.25"):
        add("step", "0.875", gap)
    for hole in around("1"):
        add("step", "0.875", "0.125", hole)
    for thickness, gap, hole in (("0.25", "0", "0"), ("6", "12", "48"), ("6", "0", "0"), ("0.25", "12", "48")):
        add("end", thickness, gap, hole)
        add("end", thickness, gap, hole, "6", "12", "48")
        add("end", thickness, gap, hole, "0", "0", "0")
    add("degenerate", "0.875", "0", "0", "0.875", "0", "0")
    return made.cases


def laid(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """linear = area / (face + gap); boards = ceil(linear x (1 + waste) / stock)."""
    area, face, gap, stock = exacts(inputs, "deck_area_sf", "board_face_in", "gap_in", "stock_ft")
    linear = area * 12 / (face + gap)
    return {"linear_ft": linear, "boards": up(linear * (1 + share(inputs["waste_pct"])) / stock)}


def boards_to_replace() -> Iterable[Case]:
    """Feet of board and boards to buy."""
    made = Builder(f"{PRACTICE}: arithmetic")
    source = draws("boards_to_replace")

    def add(class_: str, area: Value, face: Value, gap: Value, stock: Value, waste: Value) -> None:
        inputs = {"deck_area_sf": area, "board_face_in": face, "gap_in": gap, "stock_ft": stock, "waste_pct": waste}
        made.add(class_, inputs, laid(inputs))

    for area, face, gap in (
        ("100", "7.25", "0"),
        ("64", "5.5", "0.125"),
        ("384", "9.25", "0.25"),
        ("1152", "7.25", "2"),
    ):
        for stock, waste in (("8", "10"), ("12", "5"), ("16", "10"), ("16", "15")):
            add("ordinary", area, face, gap, stock, waste)
    for _ in range(60):
        add(
            "ordinary",
            Fraction(source.randint(40, 20000), 10),
            Fraction(source.randint(28, 92), 8),
            Fraction(source.randint(0, 16), 16),
            str(source.choice((8, 10, 12, 14, 16))),
            str(source.randint(0, 25)),
        )
    for area in ("0", "50000"):
        for face, gap in (("1", "0"), ("24", "6")):
            for stock, waste in (("2", "0"), ("24", "100")):
                add("end", area, face, gap, stock, waste)
    for boards in (1, 2, 10, 125):
        for area in around(Fraction(boards * 16 * 6, 12)):
            add("step", area, "6", "0", "16", "0")
        for area in around(Fraction(boards * 11 * 6, 12)):
            add("step", area, "5.5", "0.5", "12.1", "10")
    for area in ("0", "0.01", "8"):
        add("degenerate", area, "6", "0", "16", "0")
    return made.cases


def clipped(panel: Panel, inputs: Mapping[str, Value]) -> dict[str, Value]:
    """One clip midway in each bay, two where supports stand 48 in apart; blocking is the clear bay."""
    spacing, width, edge = exacts(inputs, "support_spacing_in", "rafter_width_in", "edge_ft")
    bays, each = up(edge * 12 / spacing), 2 if spacing >= 48 else 1
    return {
        "clips_per_bay": each,
        "needed": spacing > panel.bare,
        "clips": bays * each,
        "blocking_ft": bays * (spacing - width) / 12,
        "counted_as": panel.rating,
    }


def edge_clips() -> Iterable[Case]:
    """Clips, whether they are needed, and blocking instead."""
    made = Builder(f"{TABLE}, with its footnotes on clips; bays counted up", within="1e-9")
    source = draws("edge_clips")

    def add(class_: str, panel: Panel, spacing: Value, edge: Value, width: Value = "1.5") -> None:
        inputs = {
            "span_rating": panel.rating,
            "thickness_in": panel.thicknesses[0],
            "support_spacing_in": spacing,
            "rafter_width_in": width,
            "edge_ft": edge,
        }
        if exact(spacing) <= panel.supported:
            made.add(class_, inputs, clipped(panel, inputs))

    for panel in ROWS:
        for spacing in ("16", "19.2", "24", "32"):
            add("ordinary", panel, spacing, "42")
        for spacing in around(panel.bare):
            add("edge", panel, spacing, "74")
        add("edge", panel, str(panel.supported), "74")
        add("end", panel, "6", "50000", "1")
        add("end", panel, "16", "0", "5")
    for _ in range(25):
        add(
            "ordinary",
            source.choice(ROWS),
            Fraction(source.randint(24, 64), 2),
            Fraction(source.randint(50, 9000), 10),
            str(source.choice(("1.5", "3", "1.75"))),
        )
    wide = next(panel for panel in ROWS if panel.rating == "60/32")
    for spacing in around("48"):
        add("governing", wide, spacing, "96")
    for edge in (*around("74"), *around("2"), *around("400")):
        add("step", ROWS[4], "24", edge)
    for edge in ("0", "0.5", "2"):
        add("degenerate", ROWS[4], "24", edge)
    return made.cases


def fitted(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """Both ends on supports: spans = floor((length + width of a rafter - 2 bearings) / spacing), two at least."""
    length, width, spacing, rafter, least_length, least_width, bearing = exacts(
        inputs,
        "piece_length_in",
        "piece_width_in",
        "support_spacing_in",
        "rafter_width_in",
        "min_length_in",
        "min_width_in",
        "min_bearing_in",
    )
    spans = max(0, down((length + rafter - 2 * bearing) / spacing))
    wide, held, long = width >= least_width, inputs["edges_supported"] == "yes", length >= least_length
    return {
        "spans": spans,
        "wide_enough": wide,
        "two_spans": spans >= 2,
        "long_enough": long,
        "ok": (wide or held) and spans >= 2 and long,
    }


def piece_fit() -> Iterable[Case]:
    """Whether a cut piece may lie over these supports."""
    made = Builder(
        "IRC 2021 Table R503.2.1.1(1), notes on 24 in of width and two spans; bearing common practice, no source",
        tolerance="0",
    )
    source = draws("piece_fit")

    def add(
        class_: str,
        length: Value,
        width: Value,
        spacing: Value,
        edges: str = "no",
        rafter: Value = "1.5",
        least_length: Value = "0",
        least_width: Value = "24",
        bearing: Value = "0.5",
    ) -> None:
        inputs = {
            "piece_length_in": length,
            "piece_width_in": width,
            "strength_axis": "across",
            "edges_supported": edges,
            "support_spacing_in": spacing,
            "rafter_width_in": rafter,
            "min_length_in": least_length,
            "min_width_in": least_width,
            "min_bearing_in": bearing,
        }
        made.add(class_, inputs, fitted(inputs))

    for length, width in (("47.875", "24"), ("32", "48"), ("96", "9.25"), ("64", "30"), ("48", "23.9375")):
        for spacing in ("16", "19.2", "24"):
            for edges in ("yes", "no"):
                add("ordinary", length, width, spacing, edges)
    for _ in range(45):
        add(
            "ordinary",
            Fraction(source.randint(64, 768), 8),
            Fraction(source.randint(32, 384), 8),
            source.choice(("16", "19.2", "24")),
            source.choice(("yes", "no")),
            "1.5",
            source.choice(("0", "48")),
            source.choice(("0", "24")),
            source.choice(("0.5", "0.75")),
        )
    for length, width, spacing in (("1", "1", "6"), ("192", "96", "96"), ("192", "1", "6"), ("1", "96", "96")):
        add("end", length, width, spacing)
        add("end", length, width, spacing, "yes", "5", "192", "48", "2.5")
        add("end", length, width, spacing, "no", "1", "0", "0", "0")
    for length in (*around("47.5"), *around("71.5"), *around("23.5")):
        add("step", length, "48", "24")
    for width in around("24"):
        for edges in ("yes", "no"):
            add("governing", "96", width, "24", edges)
    for length in around("48"):
        add("governing", length, "48", "16", "no", "1.5", "48")
    for spacing in around("24", "0.25"):
        add("step", "47.5", "48", spacing)
    for length in ("1", "6", "24"):
        add("degenerate", length, "48", "24")
    return made.cases


def panel_weight() -> Iterable[Case]:
    """Weights that a list prints, and a trade rule of 3 lb for each inch and square foot within a fifth."""
    made = Builder("panel makers' list, reprinted; secondary source", kind="printed", within="0.05", tolerance="0")
    rule = Builder(
        "common practice, no source: 3 lb a square foot for each inch, makers within a fifth", tolerance="0.2"
    )
    kinds = ("plywood", "osb")
    for category, plywood, osb in (
        ("7/16-in", None, "1.4"),
        ("15/32-in", "1.4", "1.5"),
        ("1/2-in", "1.5", "1.7"),
        ("19/32-in", "1.8", "2.0"),
    ):
        for kind, listed in zip(kinds, (plywood, osb)):
            if listed:
                for length, width in (("96", "48"), ("120", "48"), ("96", "24")):
                    made.add(
                        "edge",
                        {"category": category, "kind": kind, "sheet_length_in": length, "sheet_width_in": width},
                        {"weight_psf": listed},
                    )
                sheet = Fraction(listed) * 32
                made.add(
                    "edge",
                    {"category": category, "kind": kind, "sheet_length_in": "96", "sheet_width_in": "48"},
                    {"weight_psf": listed, "sheet_lb": sheet},
                    within=str(float(Fraction("0.05") * 32)),
                )
    for category in ("3/8-in", "7/16-in", "15/32-in", "1/2-in", "19/32-in", "5/8-in", "23/32-in", "3/4-in"):
        for kind in kinds:
            inches = Fraction(category[:-3])
            rule.add(
                "ordinary",
                {"category": category, "kind": kind, "sheet_length_in": "96", "sheet_width_in": "48"},
                {"weight_psf": 3 * inches, "sheet_lb": 96 * inches},
            )
            for length, width in (("1", "1"), ("192", "96")):
                rule.add(
                    "end",
                    {"category": category, "kind": kind, "sheet_length_in": length, "sheet_width_in": width},
                    {"weight_psf": 3 * inches, "sheet_lb": 3 * inches * Fraction(length) * Fraction(width) / 144},
                )
    return made.cases + rule.cases


FUNCTIONS = {
    "board_base": board_base,
    "board_span": board_span,
    "boards_to_replace": boards_to_replace,
    "edge_clips": edge_clips,
    "panel_weight": panel_weight,
    "piece_fit": piece_fit,
}
