"""Rafters: spans and checks on the horizontal projection, thrust, and the spans that the codes print.

The method is that of the codes' tables: bending under dead and live load with C_D 1.25 or 1.15, C_F and C_r; sag under
the live load alone with the plain E; no slope term, no shear, no bearing.
"""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import cbrt, floor, mpf, nint, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import TESTS, grid, printed
from wood import DURATION, GRADES, PINE_2012, SIZES, SUPPLEMENT, TABLE_4A, TABLE_4B, Wood, repetitive

SPAN = f"L = min(sqrt(8 Fb' S/w), cbrt(384 E I/(5 n w live))), NDS 2018 ch. 3 and 4; {SUPPLEMENT}"
SETS = {"nds2018": "", "nds1997": "; values of 1997 from memory", "southern-pine-2012": "; southern pine to 2012"}


def line_load(spacing: Value, *pressures: Value) -> mpf:
    """psf over inches of spacing, as pounds for each inch of projection."""
    return sum(number(pressure) for pressure in pressures) * number(spacing) / 144


class Loaded:
    """A stick under its loads: adjusted values and what it reaches."""

    def __init__(self, row: Mapping[str, Value]) -> None:
        self.wood = wood = Wood(row["species"], row["grade"], row["size"], row["value_set"])
        self.duration = number(DURATION[row["load"]])
        self.bending = wood.fb * self.duration * wood.size_factor * repetitive(row["spacing_in"])
        self.shear = wood.fv * self.duration
        self.live = line_load(row["spacing_in"], row["live_psf"])
        self.total = line_load(row["spacing_in"], row["live_psf"], row["dead_psf"])
        self.limit = number(row["deflection_limit"])

    def by_bending(self) -> mpf:
        return sqrt(8 * self.bending * self.wood.modulus / self.total)

    def by_sag(self) -> mpf:
        return cbrt(384 * self.wood.e * self.wood.inertia / (5 * self.limit * self.live))

    def by_shear(self) -> mpf:
        return 4 * self.wood.area * self.shear / (3 * self.total)

    def by_bearing(self, seat: mpf) -> mpf:
        return 2 * self.wood.b * seat * self.wood.fc_perp / self.total


def feet_and_inches(inches: mpf) -> str:
    """To the nearest inch, half up, 13-5; a root that is a half exactly is one to 40 digits."""
    whole = int(floor(nint(inches * mpf(10) ** 40) / mpf(10) ** 40 + mpf(1) / 2))
    return f"{whole // 12}-{whole % 12}"


def span(row: Mapping[str, Value]) -> dict[str, Value]:
    """The answers of rafter_max_span."""
    loaded = Loaded(row)
    bending, sag = loaded.by_bending(), loaded.by_sag()
    least = min(bending, sag)
    return {
        "span_in": least,
        "span_ft_in": feet_and_inches(least),
        "governs": "bending" if bending < sag else "deflection",
    }


def woods() -> Iterable[Mapping[str, Value]]:
    """Every stick that the value sets hold."""
    for species, values in TABLE_4A.items():
        for at, grade in enumerate(GRADES):
            for size in SIZES:
                if values[0][at] and not (grade == "stud" and size not in ("2x4", "2x6")):
                    yield {"species": species, "grade": grade, "size": size, "value_set": "nds2018"}
    for value_set, table in (("nds2018", TABLE_4B), ("southern-pine-2012", PINE_2012)):
        for grade, size in ((g, s) for g in table for s in SIZES):
            if not (grade == "stud" and size not in ("2x4", "2x6")):
                yield {"species": "southern-pine", "grade": grade, "size": size, "value_set": value_set}
    for species, grade in (
        ("douglas-fir-larch", "select-structural"),
        ("douglas-fir-larch", "no-2"),
        ("hem-fir", "no-1"),
        ("hem-fir", "no-2"),
    ):
        yield {"species": species, "grade": grade, "size": "2x8", "value_set": "nds1997"}


def rafter_max_span() -> Iterable[Case]:
    made = Builder(SPAN)

    def add(class_: str, row: Mapping[str, Value], **other: str) -> None:
        made.add(class_, row, span(row), **({"source": SPAN + SETS[row["value_set"]]} | other))

    loads = list(
        grid(
            spacing_in=("12", "16", "19.2", "24"),
            live_psf=("20", "30", "50", "70"),
            dead_psf=("10", "20"),
            load=("roof-live", "snow"),
            deflection_limit=("180", "240", "360"),
        )
    )
    random = draws("rafter_max_span")
    for stick in woods():
        add("ordinary", stick | random.choice(loads))
    stick = {
        "species": "douglas-fir-larch",
        "grade": "no-2",
        "size": "2x6",
        "value_set": "nds2018",
        "load": "snow",
        "deflection_limit": "180",
    }
    for row in grid(spacing_in=("4", "48"), live_psf=("1", "300"), dead_psf=("0", "100")):
        add("end", stick | row)
    for limit in ("180", "360"):
        add("end", stick | {"spacing_in": "24", "live_psf": "20", "dead_psf": "10", "deflection_limit": limit})
    for spacing in ("23.99", "24", "24.01"):
        add("step", stick | {"spacing_in": spacing, "live_psf": "30", "dead_psf": "10"})
    _governing(add, stick)
    _inch_steps(add)
    _printed_spans(made)
    return made.cases


def _governing(add, stick: Mapping[str, Value]) -> None:
    """Dead load at which bending takes over from sag, just less and just more."""
    for size, species in ((s, p) for s in SIZES for p in ("douglas-fir-larch", "spruce-pine-fir", "southern-pine")):
        row = stick | {
            "size": size,
            "species": species,
            "grade": "no-2",
            "spacing_in": "16",
            "live_psf": "20",
            "dead_psf": "0",
            "load": "roof-live",
        }
        loaded = Loaded(row)
        dead = (8 * loaded.bending * loaded.wood.modulus / loaded.by_sag() ** 2 - loaded.live) * 144 / 16
        for off in ("-0.001", "0.001"):
            at = round(float(dead + number(off)), 4)
            if 0 <= at <= 100:
                add("governing", row | {"dead_psf": str(at)})


def _inch_steps(add) -> None:
    """Live load at which the span lies half an inch over a whole one, just less and just more: the printed inch changes."""
    for size, inches in (("2x4", 90), ("2x6", 130), ("2x8", 170), ("2x10", 200), ("2x12", 240)):
        row = {
            "species": "hem-fir",
            "grade": "no-2",
            "size": size,
            "value_set": "nds2018",
            "spacing_in": "24",
            "live_psf": "40",
            "dead_psf": "0",
            "load": "snow",
            "deflection_limit": "240",
        }
        loaded = Loaded(row)
        half = inches + mpf(1) / 2
        live = (
            min(
                384 * loaded.wood.e * loaded.wood.inertia / (5 * loaded.limit * half**3),
                8 * loaded.bending * loaded.wood.modulus / half**2,
            )
            * 6
        )
        for off in ("-0.001", "0.001"):
            add("step", row | {"live_psf": str(round(float(live + number(off)), 5))})


def printed_cells() -> Iterable[tuple[dict[str, Value], str, str]]:
    """Every cell of the printed tables that the house holds: inputs, feet-inches or blank for over 26 feet, table."""
    folder = TESTS / "framing" / "rafter"
    for table in printed(folder / "rafter-tables.csv"):
        for line in printed(folder / table["file"]):
            for size in SIZES:
                row = {
                    "species": line["species"],
                    "grade": line["grade"],
                    "size": size,
                    "value_set": table["value_set"],
                    "spacing_in": line["spacing_in"],
                    "live_psf": table["live_psf"],
                    "dead_psf": line["dead_psf"],
                    "load": table["load"],
                    "deflection_limit": table["deflection_limit"],
                }
                yield row, line[size], table["table"]


def inches_of(said: str) -> int:
    feet, inches = said.split("-")
    return int(feet) * 12 + int(inches)


def _printed_spans(made: Builder) -> None:
    """Printed cells; one that the method does not give to the inch is held to the method, and says what print says."""
    for row, said, table in printed_cells():
        ours = span(row)
        if said and inches_of(said) == inches_of(ours["span_ft_in"]):
            made.add(
                "edge",
                row,
                {"span_in": str(inches_of(said)), "span_ft_in": ours["span_ft_in"]},
                kind="printed",
                tolerance="0",
                within="0.500000001",
                source=f"{table}, read on state code pages",
            )
            continue
        if not said:
            note = f"{table} says over 26 ft; held to the method"
        else:
            unsafe = inches_of(said) > ours["span_in"]
            note = f"known disagreement with {table}: {'this value' if unsafe else 'print'} is the safe side"
        made.add("edge", row, ours, source=note)


FUNCTIONS = {"rafter_max_span": rafter_max_span}
