"""Counts of nails: lines of nails at a stated spacing, in exact rational arithmetic."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping

from arithmetic import around, exacts, up
from case_file import Builder, Case, Value, draws, exact

PRACTICE = "common practice, no source"
EDGE_DISTANCE = Fraction(3, 8)
LINES = f"{PRACTICE}: lines of nails no further apart than stated, 3/8 in from the sheet's edges"
PLACED = f"{LINES}; counted by placing each nail"


def on_line(width: Fraction, spacing: Fraction) -> int:
    """Nails across a width: ceil((width - 2 x 3/8) / spacing) + 1."""
    return up(max(Fraction(0), width - 2 * EDGE_DISTANCE) / spacing) + 1


def in_bays(length: Fraction, supports: Fraction, spacing: Fraction) -> int:
    """Nails of one long edge on blocking: in each bay ceil(bay / spacing) - 1, the last bay what is left."""
    bays = [supports] * (up(length / supports) - 1)
    bays.append(length - sum(bays))
    return sum(up(bay / spacing) - 1 for bay in bays)


def sheet_nails(inputs: Mapping[str, Value]) -> int:
    """Two end lines at the edge spacing, the lines between at the field spacing, both long edges if they are blocked."""
    supports, edge, field, length, width = exacts(
        inputs, "support_spacing_in", "edge_spacing_in", "field_spacing_in", "sheet_length_in", "sheet_width_in"
    )
    nails = 2 * on_line(width, edge) + (up(length / supports) - 1) * on_line(width, field)
    return nails + (2 * in_bays(length, supports, edge) if inputs["blocked_edges"] == "yes" else 0)


def placed(first: Fraction, last: Fraction, spacing: Fraction) -> int:
    """Nails that are driven one after the other from the first place until the last is reached."""
    count, at = 1, first
    while at < last:
        at, count = min(at + spacing, last), count + 1
    return count


def placed_nails(inputs: Mapping[str, Value]) -> int:
    """The same count by brute force: support by support, nail by nail."""
    supports, edge, field, length, width = exacts(
        inputs, "support_spacing_in", "edge_spacing_in", "field_spacing_in", "sheet_length_in", "sheet_width_in"
    )
    lines, at = [Fraction(0)], supports
    while at < length:
        lines.append(at)
        at += supports
    lines.append(length)
    nails = sum(
        placed(EDGE_DISTANCE, max(EDGE_DISTANCE, width - EDGE_DISTANCE), edge if line in (0, length) else field)
        for line in lines
    )
    if inputs["blocked_edges"] == "yes":
        nails += 2 * sum(placed(left, right, edge) - 2 for left, right in zip(lines, lines[1:]))
    return nails


def sheet(
    supports: Value, edge: Value, field: Value, blocked: str = "no", length: Value = "96", width: Value = "48"
) -> dict[str, Value]:
    """The inputs of one sheet."""
    return {
        "support_spacing_in": supports,
        "edge_spacing_in": edge,
        "field_spacing_in": field,
        "blocked_edges": blocked,
        "sheet_length_in": length,
        "sheet_width_in": width,
    }


def nails_per_sheet() -> Iterable[Case]:
    """Nails of one whole sheet."""
    made = Builder(LINES, tolerance="0")
    source = draws("nails_per_sheet")

    def add(class_: str, *given: Value) -> None:
        inputs = sheet(*given)
        made.add(class_, inputs, {"nails": sheet_nails(inputs)})

    for supports in ("12", "16", "19.2", "24"):
        for edge, field in (("6", "12"), ("6", "6"), ("4", "8"), ("4", "6"), ("4", "4"), ("3", "6"), ("3", "3")):
            for blocked in ("no", "yes"):
                add("ordinary", supports, edge, field, blocked)
    for supports in ("16", "24"):
        add("ordinary", supports, "6", "12", "no", "48", "48")
        add("ordinary", supports, "6", "12", "yes", "96", "24")
        add("ordinary", supports, "6", "6", "no", "120", "48")
    for _ in range(165):
        inputs = sheet(
            Fraction(source.randint(12 * 16, 48 * 16), 16),
            Fraction(source.randint(8, 48), 4),
            Fraction(source.randint(8, 96), 4),
            source.choice(("yes", "no")),
            str(source.randint(24, 192)),
            str(source.randint(6, 96)),
        )
        made.add("ordinary", inputs, {"nails": placed_nails(inputs)}, kind="limit", source=PLACED)
    for supports in ("6", "96"):
        for edge in ("1", "24"):
            for field in ("1", "24"):
                add("end", supports, edge, field, "yes")
    for length, width in (("1", "1"), ("192", "96"), ("192", "1"), ("1", "96")):
        for blocked in ("no", "yes"):
            add("end", "16", "6", "12", blocked, length, width)
    for field in (
        *around("11.8125", "0.0001"),
        *around("15.75", "0.0001"),
        *around("5.90625", "0.0001"),
        *around("23.625", "0.0001"),
    ):
        add("step", "16", "6", field)
    for edge in (*around("7.875", "0.0001"), *around("3.9375", "0.0001"), *around("5.25", "0.0001")):
        add("step", "24", edge, "12")
    for supports in (*around("16"), *around("24"), *around("19.2"), *around("32"), *around("48")):
        add("step", supports, "6", "12")
    for edge in (*around("4", "0.0001"), *around("8", "0.0001"), *around("6", "0.0001")):
        add("step", "24", edge, "12", "yes")
    for width in (*around("36.75"), *around("48.75"), *around("24.75")):
        add("step", "24", "6", "12", "no", "96", width)
    for length in around("96", "0.001"):
        add("step", "24", "6", "12", "yes", length)
    for given in (
        ("96", "6", "12"),
        ("48", "6", "12"),
        ("20", "6", "12", "yes"),
        ("24", "24", "24", "yes"),
        ("24", "6", "12", "no", "24", "48"),
        ("24", "6", "12", "yes", "20", "48"),
        ("96", "6", "12", "yes"),
    ):
        add("degenerate", *given)
    for width in ("1", "1.5", "6.75"):
        add("degenerate", "24", "6", "12", "no", "96", width)
    return made.cases


def added(inputs: Mapping[str, Value]) -> int:
    """The schedule's count less the sound nails, none below none; all of it where the old ones may not count."""
    sound = int(exact(inputs["sound_nails"])) if inputs["credit"] == "yes" else 0
    return max(0, sheet_nails(inputs) - sound)


def nails_to_add() -> Iterable[Case]:
    """Nails to add to a sheet that has some."""
    made = Builder(f"{PRACTICE}: the schedule's count less the sound nails", tolerance="0")
    source = draws("nails_to_add")

    def add(class_: str, sound: Value, credit: str, *given: Value) -> None:
        inputs = {"sound_nails": sound, "credit": credit, **sheet(*given)}
        made.add(class_, inputs, {"nails": added(inputs)})

    for credit in ("yes", "no"):
        for supports in ("16", "24"):
            for edge, field in (("6", "12"), ("6", "6"), ("4", "4")):
                for sound in ("24", "33"):
                    add("ordinary", sound, credit, supports, edge, field)
        add("ordinary", "20", credit, "19.2", "6", "12", "yes")
        add("end", "0", credit, "16", "6", "12")
        add("end", "500", credit, "16", "6", "12")
        for spacing in ("1", "24"):
            add("end", "0", credit, "6", spacing, spacing, "yes")
            add("end", "30", credit, "96", spacing, spacing)
        for length, width in (("1", "1"), ("192", "96")):
            add("end", "5", credit, "16", "6", "12", "no", length, width)
        for sound in ("42", "43", "44"):
            add("governing", sound, credit, "16", "6", "12")
        for sound in ("44", "45", "46"):
            add("governing", sound, credit, "24", "6", "6")
        for field in around("11.8125", "0.0001"):
            add("step", "30", credit, "16", "6", field)
        for supports in around("24"):
            add("step", "30", credit, supports, "6", "6")
        add("degenerate", "4", credit, "96", "24", "24", "no", "24", "24")
        add("degenerate", "0", credit, "24", "24", "24", "no", "1", "1")
    for _ in range(30):
        add(
            "ordinary",
            str(source.randint(0, 70)),
            source.choice(("yes", "no")),
            Fraction(source.randint(12 * 8, 32 * 8), 8),
            Fraction(source.randint(12, 32), 4),
            Fraction(source.randint(12, 64), 4),
            source.choice(("yes", "no")),
        )
    return made.cases


FUNCTIONS = {"nails_per_sheet": nails_per_sheet, "nails_to_add": nails_to_add}
