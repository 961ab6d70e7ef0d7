"""Span of stamped roof panels: the printed cells of IRC Table R503.2.1.1(1), and the rule between them."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Iterable, Mapping, Optional

from arithmetic import exacts
from case_file import Builder, Case, Value, draws

TABLE = "IRC 2021 Table R503.2.1.1(1), alike in 2015, 2018 and 2024, read on state code pages"
BETWEEN = f"{TABLE}: next larger printed spacing, less dead load over its 10 psf"
OLD_STAMPS = "common practice, no source: an old stamp counts as the next lower rating that is printed"


@dataclass(frozen=True)
class Panel:
    """One row of the table: live loads at 16 and 24 in (none where blank), greatest spans, live load at the greatest."""

    rating: str
    thicknesses: tuple[str, ...]
    live_16: Optional[int]
    live_24: Optional[int]
    supported: int
    bare: int
    live_at_most: int

    def printed(self) -> list[tuple[int, int]]:
        """Printed spacings with their live loads, nearest first."""
        cells = {16: self.live_16, 24: self.live_24, self.supported: self.live_at_most}
        return sorted(
            (spacing, live) for spacing, live in cells.items() if live is not None and spacing <= self.supported
        )


ROWS = (
    Panel("16/0", ("3/8",), 30, None, 16, 16, 30),
    Panel("20/0", ("3/8",), 50, None, 20, 20, 30),
    Panel("24/0", ("3/8",), 100, 30, 24, 20, 30),
    Panel("24/0", ("15/32", "1/2"), 100, 30, 24, 24, 30),
    Panel("24/16", ("7/16",), 100, 40, 24, 24, 40),
    Panel("32/16", ("15/32", "1/2"), 180, 70, 32, 28, 30),
    Panel("40/20", ("19/32", "5/8"), 305, 130, 40, 32, 30),
    Panel("48/24", ("23/32", "3/4"), None, 175, 48, 36, 35),
    Panel("60/32", ("7/8",), None, 305, 60, 48, 35),
    Panel("16-oc", ("19/32", "5/8"), 100, 40, 24, 24, 40),
    Panel("20-oc", ("19/32", "5/8"), 150, 60, 32, 32, 30),
    Panel("24-oc", ("23/32", "3/4"), 240, 100, 48, 36, 25),
    Panel("32-oc", ("7/8",), None, 185, 48, 40, 40),
    Panel("48-oc", ("1-3/32", "1-1/8"), None, 290, 60, 48, 40),
)


def span(panel: Panel, inputs: Mapping[str, Value]) -> dict[str, Value]:
    """Greatest span by edge support; live load at the next larger printed spacing, less dead load over 10 psf."""
    spacing, dead = exacts(inputs, "support_spacing_in", "dead_psf")
    most = panel.supported if inputs["edge_support"] == "yes" else panel.bare
    live = next((Fraction(live) for printed, live in panel.printed() if spacing <= printed), Fraction(0))
    left = max(Fraction(0), live - max(Fraction(0), dead - 10))
    return {"max_span_in": most, "live_psf": left, "ok": spacing <= most and left > 0, "counted_as": panel.rating}


def panel_span() -> Iterable[Case]:
    """Every printed cell, both sides of each printed spacing, and where dead load uses the live load up."""
    made = Builder(BETWEEN, within="1e-9")
    source = draws("panel_span")

    def add(
        class_: str, panel: Panel, thickness: str, spacing: Value, edge: str, dead: Value = "10", **other: str
    ) -> None:
        inputs = {
            "span_rating": panel.rating,
            "thickness_in": thickness,
            "support_spacing_in": spacing,
            "edge_support": edge,
            "dead_psf": dead,
        }
        made.add(class_, inputs, span(panel, inputs), **other)

    for panel in ROWS:
        for thickness in panel.thicknesses:
            for edge in ("yes", "no"):
                for spacing, _ in panel.printed():
                    add("edge", panel, thickness, str(spacing), edge, kind="printed", source=TABLE, tolerance="0")
    for panel in ROWS:
        for spacing, _ in panel.printed():
            for by in (Fraction(-1, 1000), Fraction(1, 1000)):
                add("edge", panel, panel.thicknesses[0], spacing + by, "yes")
        for by in (Fraction(-1, 1000), Fraction(0), Fraction(1, 1000)):
            add("governing", panel, panel.thicknesses[-1], panel.bare + by, "no")
        add("end", panel, panel.thicknesses[0], "6", "yes")
        add("end", panel, panel.thicknesses[0], "96", "no")
        add("end", panel, panel.thicknesses[0], str(panel.supported), "yes", "0")
        add("end", panel, panel.thicknesses[0], "12", "yes", "100")
        for dead in (
            panel.live_at_most + 10 - Fraction(1, 1000),
            Fraction(panel.live_at_most + 10),
            panel.live_at_most + 10 + Fraction(1, 1000),
        ):
            add("governing", panel, panel.thicknesses[0], str(panel.supported), "yes", dead)
        for dead in ("9.999", "10", "10.001"):
            add("step", panel, panel.thicknesses[-1], "16", "yes", dead)
    for panel in ROWS:
        for _ in range(3):
            add(
                "ordinary",
                panel,
                source.choice(panel.thicknesses),
                Fraction(source.randint(12 * 8, 64 * 8), 8),
                source.choice(("yes", "no")),
                Fraction(source.randint(0, 200), 4),
            )
    return made.cases + list(old_stamps())


def old_stamps() -> Iterable[Case]:
    """Stamps that the code prints no more, or for other thicknesses only: lower in both of the stamp's numbers."""
    by_rating = {panel.rating: panel for panel in reversed(ROWS)}
    made = Builder(OLD_STAMPS)
    for rating, thickness, counted in (
        ("24/0", "7/16", "20/0"),
        ("32/16", "5/8", "24/16"),
        ("40/20", "3/4", "32/16"),
        ("none", "1/2", "16/0"),
        ("30/12", "5/8", "24/0"),
        ("36/16", "5/8", "32/16"),
        ("42/20", "3/4", "40/20"),
    ):
        for spacing, edge in (("16", "yes"), ("24", "no")):
            inputs = {
                "span_rating": rating,
                "thickness_in": thickness,
                "support_spacing_in": spacing,
                "edge_support": edge,
                "dead_psf": "10",
            }
            made.add("degenerate", inputs, span(by_rating[counted], inputs))
    return made.cases


FUNCTIONS = {"panel_span": panel_span}
