"""Nails of pieces, boards and re-roof rules, their boxes, and the seams of a plane: exact counts."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping

from arithmetic import around, exacts, share, up
from case_file import Builder, Case, Value, draws
from nails import EDGE_DISTANCE, LINES, PRACTICE, placed, sheet, sheet_nails

HALF_RAFTER = Fraction(3, 4)


def piece(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """A line of nails on every support within the piece, at the edge spacing where the piece ends on it.

    A support half a rafter, 3/4 in, beyond either end still bears that end. On blocking both long edges are nailed at
    the edge spacing from end to end, the ends that hang over as well.
    """
    first, length, width, spacing, edge, field = exacts(
        inputs,
        "first_support_in",
        "piece_length_in",
        "piece_width_in",
        "support_spacing_in",
        "edge_spacing_in",
        "field_spacing_in",
    )
    lines, at = [], first
    while at <= length + HALF_RAFTER:
        lines.append(at)
        at += spacing
    ends = [line for line in lines if line <= HALF_RAFTER or abs(line - length) <= HALF_RAFTER]
    nails = sum(
        placed(EDGE_DISTANCE, max(EDGE_DISTANCE, width - EDGE_DISTANCE), edge if line in ends else field)
        for line in lines
    )
    if inputs.get("blocked_edges") == "yes":
        places = sorted({Fraction(0), *(min(line, length) for line in lines), length})
        nails += 2 * sum(placed(left, right, edge) - 2 for left, right in zip(places, places[1:]))
    return {"supports": len(lines), "nails": nails}


def nails_per_piece() -> Iterable[Case]:
    """Nails of one piece or patch, counted support by support."""
    made = Builder(f"{LINES}; counted by placing each nail", kind="limit", tolerance="0")
    source = draws("nails_per_piece")

    def add(
        class_: str,
        first: Value,
        length: Value,
        width: Value,
        spacing: Value,
        edge: Value = "6",
        field: Value = "12",
        blocked: str = "no",
    ) -> None:
        inputs = {
            "first_support_in": first,
            "piece_length_in": length,
            "piece_width_in": width,
            "support_spacing_in": spacing,
            "edge_spacing_in": edge,
            "field_spacing_in": field,
            "blocked_edges": blocked,
        }
        made.add(class_, inputs, piece(inputs))

    for first, length, width, spacing in (
        ("0", "48", "48", "24"),
        ("8", "32", "24", "16"),
        ("0", "96", "48", "16"),
        ("0", "72", "24", "24"),
        ("12", "48", "30", "24"),
        ("0", "32", "48", "16"),
        ("4", "60", "48", "19.2"),
        ("0", "96", "9.25", "16"),
    ):
        for edge, field in (("6", "12"), ("6", "6"), ("4", "8"), ("4", "4")):
            add("ordinary", first, length, width, spacing, edge, field)
        add("ordinary", first, length, width, spacing, "6", "12", "yes")
    for _ in range(40):
        spacing = source.choice((12, 16, 24, Fraction("19.2")))
        length = source.randint(4 * int(spacing), 192 * 4)
        add(
            "ordinary",
            Fraction(source.randint(0, 4 * int(spacing)), 4),
            Fraction(length, 4),
            str(source.randint(4, 96)),
            spacing,
            Fraction(source.randint(8, 48), 4),
            Fraction(source.randint(8, 96), 4),
        )
    for first, length, width, spacing in (
        ("0", "4", "4", "6"),
        ("0", "192", "96", "6"),
        ("0", "192", "4", "96"),
        ("96", "192", "96", "96"),
        ("0", "4", "96", "96"),
        ("6", "192", "4", "6"),
    ):
        for edge, field in (("1", "1"), ("24", "24")):
            add("end", first, length, width, spacing, edge, field)
    for length in (*around("47.25"), *around("48"), *around("24.75")):
        add("step", "0", length, "48", "24")
    for width in (*around("36.75"), *around("24.75"), *around("48.75")):
        add("step", "0", "96", width, "16")
    for first in (*around("0.75"), *around("8")):
        add("step", first, "40", "24", "16")
    for field in around("11.8125", "0.0001"):
        add("step", "8", "64", "48", "16", "6", field)
    for first, length, width, spacing in (
        ("4", "4", "4", "6"),
        ("20", "20", "48", "24"),
        ("10", "20", "48", "24"),
        ("0", "10", "48", "24"),
        ("0", "24", "48", "24"),
    ):
        add("degenerate", first, length, width, spacing)
    return made.cases


def order(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """with waste = nails x (1 + waste); whole boxes, pounds, whole coils."""
    nails, box, pound, coil = exacts(inputs, "nails", "nails_per_box", "nails_per_pound", "nails_per_coil")
    all_ = nails * (1 + share(inputs["waste_pct"]))
    return {"nails_with_waste": all_, "boxes": up(all_ / box), "pounds_lb": all_ / pound, "coils": up(all_ / coil)}


def nail_order() -> Iterable[Case]:
    """Boxes, pounds and coils."""
    made = Builder(f"{PRACTICE}: arithmetic", within="1e-9")
    source = draws("nail_order")

    def add(
        class_: str, nails: Value, waste: Value = "5", box: Value = "2500", pound: Value = "100", coil: Value = "300"
    ) -> None:
        inputs = {
            "nails": nails,
            "waste_pct": waste,
            "nails_per_box": box,
            "nails_per_pound": pound,
            "nails_per_coil": coil,
        }
        made.add(class_, inputs, order(inputs))

    for nails in ("589", "2790", "4356", "4030", "33", "1247"):
        for waste, box, pound, coil in (
            ("5", "2500", "100", "300"),
            ("10", "1000", "106", "200"),
            ("0", "5000", "148", "250"),
        ):
            add("ordinary", nails, waste, box, pound, coil)
    for _ in range(55):
        add(
            "ordinary",
            str(source.randint(20, 60000)),
            str(source.randint(0, 20)),
            str(source.choice((500, 1000, 2000, 2500, 3000, 5000))),
            str(source.randint(60, 180)),
            str(source.choice((120, 200, 225, 250, 300))),
        )
    for nails, waste, box, pound, coil in (
        ("0", "0", "1", "1", "1"),
        ("1000000", "100", "1", "1", "1"),
        ("1000000", "0", "50000", "5000", "5000"),
        ("0", "100", "50000", "5000", "5000"),
        ("1", "0", "50000", "5000", "5000"),
    ):
        add("end", nails, waste, box, pound, coil)
    for boxes in (1, 2, 4):
        for nails in (boxes * 2500 - 1, boxes * 2500, boxes * 2500 + 1):
            add("step", nails, "0")
        for nails in (boxes * 2000 - 1, boxes * 2000, boxes * 2000 + 1):
            add("step", nails, "25")
    for nails in (2380, 2381, 285, 286, 2000, 2001):
        add("step", nails)
    for waste in around("5"):
        add("step", "2000", waste, "2100", "100", "300")
    add("degenerate", "0")
    add("degenerate", "1", "0", "1", "1", "1")
    add("degenerate", "300", "0", "300", "300", "300")
    return made.cases


def seams(inputs: Mapping[str, Value]) -> Fraction:
    """Feet of seam: laid course by course and joint by joint, every second course beginning with half a sheet."""
    eave, slope, length, width = exacts(inputs, "eave_ft", "slope_length_ft", "sheet_length_in", "sheet_width_in")
    length, width = length / 12, width / 12
    seam, bottom, course = Fraction(0), Fraction(0), 0
    while bottom < slope:
        height = min(width, slope - bottom)
        first = length if course % 2 == 0 else length / 2
        joints = up(max(Fraction(0), eave - first) / length) if eave > first else 0
        seam += joints * height + (eave if bottom > 0 else 0)
        bottom, course = bottom + width, course + 1
    return seam


def seam_length() -> Iterable[Case]:
    """Feet of seam of a rectangular plane."""
    made = Builder(
        "geometry, laid course by course: every second course begins with half a sheet", kind="limit", within="1e-9"
    )
    source = draws("seam_length")

    def add(class_: str, eave: Value, slope: Value, length: Value = "96", width: Value = "48") -> None:
        inputs = {"eave_ft": eave, "slope_length_ft": slope, "sheet_length_in": length, "sheet_width_in": width}
        made.add(class_, inputs, {"seam_ft": seams(inputs)})

    for eave, slope in (
        ("24", "12"),
        ("42", "16.7705"),
        ("29", "13.2204"),
        ("74", "26.25"),
        ("40", "14"),
        ("30", "13"),
        ("26", "10"),
        ("52", "18.5"),
    ):
        for length, width in (("96", "48"), ("120", "48"), ("96", "24")):
            add("ordinary", eave, slope, length, width)
    for _ in range(50):
        add(
            "ordinary",
            Fraction(source.randint(40, 900), 10),
            Fraction(source.randint(20, 400), 10),
            str(source.choice((48, 72, 96, 108, 120))),
            str(source.choice((24, 36, 48))),
        )
    for eave, slope in (("0.5", "0.5"), ("500", "200"), ("0.5", "200"), ("500", "0.5")):
        add("end", eave, slope)
        add("end", eave, slope, "192", "96")
    add("end", "3", "3", "1", "1")
    add("end", "3.04", "2.02", "1", "1")
    for eave in (*around("24"), *around("28"), *around("4"), *around("8")):
        add("step", eave, "12")
    for slope in (*around("12"), *around("4"), *around("8")):
        add("step", "24", slope)
    for eave, slope in (("8", "4"), ("4", "4"), ("4", "8"), ("3", "8"), ("8", "3")):
        add("degenerate", eave, slope)
    return made.cases


def board_nails() -> Iterable[Case]:
    """Nails to add where boards cross rafters."""
    made = Builder(
        f"{PRACTICE}: two 8d a crossing; FBC-Existing Building 2023 706.7.1.1 asks for as many", tolerance="0"
    )
    source = draws("board_nails")

    def add(class_: str, crossings: int, sound: int, each: int = 2) -> None:
        made.add(
            class_,
            {"crossings": crossings, "sound_nails": sound, "nails_each": each},
            {"nails": max(0, crossings * each - sound)},
        )

    for crossings, sound in ((400, 690), (1250, 2100), (36, 10), (820, 0), (96, 180), (2400, 4000)):
        for each in (1, 2, 3):
            add("ordinary", crossings, sound, each)
    for _ in range(70):
        crossings = source.randint(10, 5000)
        add("ordinary", crossings, source.randint(0, 3 * crossings), source.choice((2, 2, 3)))
    for crossings in (0, 100000):
        for sound in (0, 500000):
            for each in (1, 4):
                add("end", crossings, sound, each)
    for sound in (799, 800, 801):
        add("governing", 400, sound)
    for sound in (1199, 1200, 1201):
        add("governing", 400, sound, 3)
    for crossings, sound in ((0, 0), (1, 0), (1, 2), (1, 3)):
        add("degenerate", crossings, sound)
    return made.cases


def re_nailed(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """None where old nails count and stand near enough; else the rule's nails, less the sound ones if those count."""
    counts = inputs["old_nails_count"] == "yes"
    enough, old, sound = exacts(inputs, "enough_spacing_in", "old_spacing_in", "sound_nails")
    if counts and enough > 0 and old <= enough:
        return {"needed": False, "nails": 0}
    wanted = sheet_nails(sheet(inputs["support_spacing_in"], inputs["edge_spacing_in"], inputs["field_spacing_in"]))
    nails = max(0, wanted - int(sound)) if counts else wanted
    return {"needed": nails > 0, "nails": nails}


def re_nailing() -> Iterable[Case]:
    """What a re-roof rule adds to each sheet."""
    made = Builder(f"{PRACTICE}: the form that re-roof rules take", tolerance="0")
    rule = Builder(
        "FBC-Existing Building 2023 Table 706.7.1.2, read on a state code page; nails of a sheet counted by lines",
        kind="worked",
        tolerance="0",
    )
    source = draws("re_nailing")

    def add(
        class_: str,
        counts: str,
        old: Value,
        sound: int,
        spacing: Value = "24",
        enough: Value = "6",
        edge: Value = "6",
        field: Value = "6",
        builder: Builder = made,
    ) -> None:
        inputs = {
            "old_nails_count": counts,
            "enough_spacing_in": enough,
            "edge_spacing_in": edge,
            "field_spacing_in": field,
            "old_spacing_in": old,
            "sound_nails": sound,
            "support_spacing_in": spacing,
        }
        builder.add(class_, inputs, re_nailed(inputs))

    for spacing in ("16", "24"):
        for counts, old, sound in (
            ("no", "6", 45),
            ("no", "12", 33),
            ("yes", "6", 45),
            ("yes", "12", 33),
            ("yes", "8", 38),
        ):
            add("ordinary", counts, old, sound, spacing, builder=rule)
        for counts in ("yes", "no"):
            for old, sound in (("12", 24), ("9", 30), ("6", 43), ("4", 70)):
                add("ordinary", counts, old, sound, spacing, "6", "4", "4")
    for _ in range(55):
        add(
            "ordinary",
            source.choice(("yes", "no")),
            str(source.randint(3, 16)),
            source.randint(0, 60),
            source.choice(("12", "16", "19.2", "24")),
            str(source.choice((0, 4, 6, 8))),
            str(source.choice((3, 4, 6))),
            str(source.choice((4, 6, 12))),
        )
    for counts in ("yes", "no"):
        add("end", counts, "1", 0, "6", "24", "1", "1")
        add("end", counts, "48", 500, "96", "0", "24", "24")
        add("end", counts, "1", 0, "24", "0")
        add("end", counts, "48", 0, "24", "24")
        for old in around("6"):
            add("governing", counts, old, 30)
        for sound in (44, 45, 46):
            add("governing", counts, "8", sound)
        for field in around("5.90625", "0.0001"):
            add("step", counts, "12", 20, "24", "6", "6", field)
        add("degenerate", counts, "6", 0)
        add("degenerate", counts, "12", 500)
    return made.cases + rule.cases


FUNCTIONS = {
    "nails_per_piece": nails_per_piece,
    "nail_order": nail_order,
    "seam_length": seam_length,
    "board_nails": board_nails,
    "re_nailing": re_nailing,
}
