"""Nailing that the codes print for roof panels: their rows and wind footnotes, as read on state code pages."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Iterable, Optional

from arithmetic import around
from case_file import Builder, Case, Value

READ = "read on state code pages"
THIN = ("3/8", "7/16", "15/32", "1/2")
MIDDLE = ("19/32", "5/8", "23/32", "3/4")
ONE = ("7/8", "1")
THICK = ("1-1/8", "1-1/4")
HEAVY = ("10d-common", "deformed-2-1/2")


@dataclass(frozen=True)
class Row:
    """A printed row: item, thicknesses, nails, edge and field, and whether the wind footnote stands on it."""

    item: str
    thicknesses: tuple[str, ...]
    nails: tuple[str, ...]
    edge: int
    field: int
    noted: bool


@dataclass(frozen=True)
class Edition:
    """A code's edition with its roof rows and its table's number."""

    code: str
    table: str
    rows: tuple[Row, ...]
    gravities: tuple[str, ...] = ("0.36", "0.42", "0.5")

    @property
    def source(self) -> str:
        """Table and edition."""
        return f"{self.code.upper().replace('-', ' ')} Table {self.table}, {READ}"


EIGHTS = ("8d-common", "rsrs-01")
EDITIONS = (
    Edition(
        "irc-2015",
        "R602.3(1)",
        (
            Row("30", THIN, ("8d-common",), 6, 12, True),
            Row("31", MIDDLE + ONE, ("8d-common",), 6, 12, True),
            Row("32", THICK, HEAVY, 6, 12, False),
        ),
    ),
    Edition(
        "irc-2018",
        "R602.3(1)",
        (
            Row("30", THIN, EIGHTS, 6, 12, True),
            Row("31", MIDDLE + ONE, EIGHTS, 6, 12, True),
            Row("32", THICK, HEAVY, 6, 12, False),
        ),
    ),
    Edition(
        "irc-2021",
        "R602.3(1)",
        (
            Row("31", THIN, EIGHTS, 6, 6, True),
            Row("32", MIDDLE, EIGHTS, 6, 6, True),
            Row("33", ONE + THICK, HEAVY, 6, 12, False),
        ),
    ),
    Edition(
        "irc-2024",
        "R602.3(1)",
        (
            Row("31", THIN, EIGHTS, 6, 6, True),
            Row("32", MIDDLE, EIGHTS, 6, 6, True),
            Row("33", ONE + THICK, HEAVY, 6, 12, False),
        ),
        ("0.42", "0.5"),
    ),
    Edition(
        "ibc-2021",
        "2304.10.2",
        (
            Row("30", THIN, (*EIGHTS, "deformed-2-1/2"), 6, 6, True),
            Row("31", MIDDLE, (*EIGHTS, "deformed-2-1/2"), 6, 6, True),
            Row("32", ONE + THICK, HEAVY, 6, 12, False),
        ),
    ),
    Edition(
        "ibc-2024",
        "2304.10.2",
        (
            Row("30", THIN, (*EIGHTS, "deformed-2-1/2"), 6, 6, True),
            Row("31", MIDDLE, (*EIGHTS, "deformed-2-1/2"), 6, 6, True),
            Row("32", ONE + THICK, HEAVY, 6, 12, False),
        ),
        ("0.42", "0.5"),
    ),
)


def noted(edition: str, wind: Fraction, exposure: str, field: int) -> tuple[int, int]:
    """Footnote f: spacing on supports within 48 in of roof edges and ridges, and on gable-end framing."""
    if edition == "irc-2015":
        return (6, 4) if wind > 130 else (field, 6)
    if edition == "irc-2018":
        return (4, 4) if wind >= 130 else (6, 6)
    beyond = wind > (130 if exposure == "b" else 110)
    return (4, 4) if beyond else (field, 6)


def schedule(edition: Edition, row: Row, wind: Value, exposure: str, spacing: Value = "24") -> dict[str, Value]:
    """The printed spacings; in the IRC at most 6 in on all supports where spans are 48 in or more."""
    field = min(row.field, 6) if edition.code.startswith("irc") and Fraction(spacing) >= 48 else row.field
    answer: dict[str, Value] = {"edge_spacing_in": row.edge, "field_spacing_in": field, "item": row.item}
    if row.noted:
        near, gable = noted(edition.code, Fraction(wind), exposure, field)
        answer.update({"near_edges_spacing_in": min(near, field), "gable_spacing_in": gable})
    return answer


def nailing_schedule() -> Iterable[Case]:
    """Every printed row, both sides of each wind of the footnote, and spans of 48 in."""
    cases: list[Case] = []
    for edition in EDITIONS:
        printed = Builder(edition.source, kind="printed", tolerance="0")
        noted_rows = Builder(f"{edition.source}, footnote on wind", kind="printed", tolerance="0")

        def add(
            made: Builder,
            class_: str,
            row: Row,
            thickness: str,
            nail: str,
            wind: Value,
            exposure: str,
            spacing: Value = "24",
            gravity: Optional[str] = None,
        ) -> None:
            inputs = {
                "code": edition.code,
                "thickness_in": thickness,
                "nail": nail,
                "wind_mph": wind,
                "exposure": exposure,
                "support_spacing_in": spacing,
                "specific_gravity": gravity or edition.gravities[-1],
            }
            made.add(class_, inputs, schedule(edition, row, wind, exposure, spacing))

        for row in edition.rows:
            for thickness in row.thicknesses:
                for nail in row.nails:
                    add(printed, "edge", row, thickness, nail, "105", "b")
            for gravity in edition.gravities[:-1]:
                add(printed, "edge", row, row.thicknesses[0], row.nails[0], "105", "b", gravity=gravity)
            for exposure in ("b", "c"):
                for wind in (*around("110"), "115", "120", *around("130"), "139.9"):
                    if row.noted:
                        add(noted_rows, "governing", row, row.thicknesses[0], row.nails[0], wind, exposure)
                    add(noted_rows, "end", row, row.thicknesses[-1], row.nails[-1], "85", exposure)
            for spacing in ("6", "16", *around("48"), "96"):
                add(
                    printed,
                    "step" if spacing not in ("6", "96") else "end",
                    row,
                    row.thicknesses[0],
                    row.nails[0],
                    "100",
                    "b",
                    spacing,
                )
        cases += printed.cases + noted_rows.cases
    return cases + list(single_nails())


def single_nails() -> Iterable[Case]:
    """Rows of one nail: thin nails of the IBC, and the nail for light framing since 2024."""
    rows = (
        ("ibc-2015", "2304.10.1", THIN, "8d-box", "115", "0.42", 6, 12),
        ("ibc-2015", "2304.10.1", THIN, "sheathing-2-3/8", "115", "0.42", 4, 8),
        ("irc-2024", "R602.3(1)", THIN + MIDDLE, "rsrs-03", "105", "0.36", 6, 6),
        ("irc-2024", "R602.3(1)", ("7/16",), "rsrs-03", "105", "0.35", 6, 6),
        ("irc-2024", "R602.3(1)", ("7/16",), "rsrs-03", "105", "0.419", 6, 6),
        ("ibc-2024", "2304.10.2", THIN + MIDDLE, "rsrs-03", "105", "0.36", 6, 6),
    )
    for code, table, thicknesses, nail, wind, gravity, edge, field in rows:
        for thickness in thicknesses:
            yield Case(
                "edge",
                "printed",
                f"{code.upper().replace('-', ' ')} Table {table}, {READ}",
                {
                    "code": code,
                    "thickness_in": thickness,
                    "nail": nail,
                    "wind_mph": wind,
                    "exposure": "b",
                    "support_spacing_in": "24",
                    "specific_gravity": gravity,
                },
                {"edge_spacing_in": edge, "field_spacing_in": field},
                tolerance="0",
            )


ALTERNATES = (
    (THIN, (("staple-15-ga", "1.75", 4, 8), ("nail-0.097", "2.25", 3, 6), ("staple-16-ga", "1.75", 3, 6))),
    (
        ("19/32", "5/8"),
        (
            ("nail-0.113", "2", 3, 6),
            ("staple-15-ga", "2", 4, 8),
            ("staple-16-ga", "2", 4, 8),
            ("nail-0.097", "2.25", 4, 8),
        ),
    ),
    (
        ("23/32", "3/4"),
        (
            ("staple-14-ga", "2", 4, 8),
            ("staple-15-ga", "1.75", 3, 6),
            ("nail-0.097", "2.25", 4, 8),
            ("staple-16-ga", "2", 4, 8),
        ),
    ),
    (
        ("1",),
        (
            ("staple-14-ga", "2.25", 4, 8),
            ("nail-0.113", "2.25", 3, 6),
            ("staple-15-ga", "2.25", 4, 8),
            ("nail-0.097", "2.5", 4, 8),
        ),
    ),
)


def alternate_schedule() -> Iterable[Case]:
    """Every printed alternate; since 2021 a footnote makes roofs 3 in at all supports, up to 110 mph."""
    for code, most in (("irc-2015", "129.9"), ("irc-2018", "129.9"), ("irc-2021", "110"), ("irc-2024", "110")):
        made = Builder(f"{code.upper().replace('-', ' ')} Table R602.3(2), {READ}", kind="printed", tolerance="0")
        old = code in ("irc-2015", "irc-2018")
        for thicknesses, fasteners in ALTERNATES:
            for thickness in thicknesses:
                for fastener, length, edge, field in fasteners:
                    for class_, wind in (("edge", "105"), ("end", "85"), ("governing", most)):
                        if class_ == "edge" or thickness == thicknesses[-1]:
                            made.add(
                                class_,
                                {
                                    "code": code,
                                    "thickness_in": thickness,
                                    "alternate": fastener,
                                    "wind_mph": wind,
                                    "specific_gravity": "0.42",
                                },
                                {
                                    "length_in": length,
                                    "edge_spacing_in": edge if old else 3,
                                    "field_spacing_in": field if old else 3,
                                },
                            )
        yield from made.cases


WINDS = (115, 120, 130, 140, 150, 160, 170, 180)
HIGH_WIND = {
    ("b", "0.42"): "6/6 6/6 6/6 6/6 6/6 4/4 4/4 4/4",
    ("b", "0.49"): "6/12 6/12 6/6 6/6 6/6 6/6 6/6 6/6",
    ("c", "0.42"): "6/6 6/6 6/6 4/4 4/4 4/4 3/3 3/3",
    ("c", "0.49"): "6/6 6/6 6/6 6/6 6/6 6/6 4/4 4/4",
    ("d", "0.42"): "6/6 6/6 4/4 4/4 4/4 3/3 3/3 3/3",
    ("d", "0.49"): "6/6 6/6 6/6 6/6 4/4 4/4 4/4 4/4",
}


def high_wind_schedule() -> Iterable[Case]:
    """Every printed cell, and winds and gravities between them: the next larger wind, the next smaller gravity."""
    printed = Builder("FBC-Residential 2023 Table R803.2.3.1, two copies read", kind="printed", tolerance="0")
    between = Builder(
        "FBC-Residential 2023 Table R803.2.3.1, two copies read: next larger wind, next smaller gravity", tolerance="0"
    )
    for (exposure, gravity), cells in HIGH_WIND.items():
        for wind, cell in zip(WINDS, cells.split()):
            edge, field = cell.split("/")
            results = {"edge_spacing_in": edge, "field_spacing_in": field}

            def add(made: Builder, class_: str, speed: Value, wood: str) -> None:
                made.add(class_, {"wind_mph": speed, "exposure": exposure, "specific_gravity": wood}, results)

            add(printed, "edge", str(wind), gravity)
            add(between, "edge", Fraction(wind * 1000 - 1, 1000), gravity)
            if wind < 180:
                lower = WINDS[WINDS.index(wind) - 1] if wind > 115 else 85
                add(between, "end" if wind == 115 else "ordinary", str(lower if wind == 115 else lower + 3), gravity)
            add(between, "ordinary" if gravity == "0.42" else "end", str(wind), "0.489" if gravity == "0.42" else "0.8")
    return printed.cases + between.cases


FUNCTIONS = {
    "nailing_schedule": nailing_schedule,
    "alternate_schedule": alternate_schedule,
    "high_wind_schedule": high_wind_schedule,
}
