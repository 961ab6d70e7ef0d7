"""What nails and screws hold against being pulled out or through: NDS 2018 section 12.2, and its factors for one fastener."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping

from mpmath import mpf, pi

from arithmetic import number
from case_file import Builder, Case, Value
from precise import TESTS, grid, printed
from wood import DURATION

SMOOTH = "NDS 2018 eq. 12.2-3, W = 1380 G^2.5 D, secondary source"
SHANKS = {
    "smooth": SMOOTH,
    "ring": "NDS 2018 eq. 12.2-5, W = 1800 G^2 D, from memory",
    "stainless": "NDS 2018 eq. 12.2-4, W = 465 G^1.5 D, from memory",
}
SCREW = "NDS 2018 eq. 12.2-2, W = 2850 G^2 D, secondary source"
LAG = "NDS 2018 eq. 12.2-1, W = 1800 G^1.5 D^0.75, secondary source"
PULL = "NDS 2018 12.2.5, 690 pi DH G^2 t to t = 2.5 DH, 1725 pi DH^2 G^2 above, from memory"
GRAVITIES = ("0.36", "0.42", "0.43", "0.46", "0.49", "0.5", "0.55")
DIAMETERS = ("0.099", "0.113", "0.12", "0.128", "0.131", "0.148", "0.162")
SCREWS = {
    "no-6": ("0.138", "0.113", "0.262"),
    "no-8": ("0.164", "0.131", "0.312"),
    "no-9": ("0.177", "0.142", "0.337"),
    "no-10": ("0.190", "0.152", "0.363"),
    "no-12": ("0.216", "0.171", "0.414"),
    "no-14": ("0.242", "0.196", "0.480"),
}


def of_nail(gravity: Value, diameter: Value, shank: str) -> mpf:
    """W of one inch of a nail."""
    g, d = number(gravity), number(diameter)
    return {"smooth": 1380 * g ** number("2.5"), "ring": 1800 * g**2, "stainless": 465 * g ** number("1.5")}[
        shank
    ] * d


def of_screw(gravity: Value, diameter: Value) -> mpf:
    return 2850 * number(gravity) ** 2 * number(diameter)


def of_lag(gravity: Value, diameter: Value) -> mpf:
    return 1800 * number(gravity) ** number("1.5") * number(diameter) ** number("0.75")


def pulled_through(gravity: Value, head: Value, thickness: Value) -> mpf:
    g, h, t = number(gravity), number(head), number(thickness)
    return 690 * pi * h * g**2 * t if t <= number("2.5") * h else 1725 * pi * h**2 * g**2


def nail_withdrawal() -> Iterable[Case]:
    made = Builder("")

    def add(class_: str, gravity: str, diameter: str, shank: str) -> None:
        made.add(
            class_,
            {"specific_gravity": gravity, "diameter_in": diameter, "shank": shank},
            {"withdrawal_lb_per_in": of_nail(gravity, diameter, shank)},
            source=SHANKS[shank],
        )

    for row in ((g, d, s) for g in GRAVITIES for d in DIAMETERS for s in SHANKS):
        add("ordinary", *row)
    for row in ((g, d, s) for g in ("0.2", "0.8") for d in ("0.05", "0.24") for s in SHANKS):
        add("end", *row)
    for gravity, diameter, said, within, source in (
        ("0.42", "0.131", "20.667", "0.0005", "a wood association's example E2.1a, secondary source"),
        ("0.5", "0.131", "31.95", "0.02", "a published check of NDS eq. 12.2-3, secondary source"),
    ):
        made.add(
            "ordinary",
            {"specific_gravity": gravity, "diameter_in": diameter, "shank": "smooth"},
            {"withdrawal_lb_per_in": said},
            kind="worked",
            tolerance="0",
            within=within,
            source=source,
        )
    return made.cases


def nail_pull_through() -> Iterable[Case]:
    made = Builder(PULL)

    def add(class_: str, gravity: str, thickness: str, head: str) -> None:
        made.add(
            class_,
            {"specific_gravity": gravity, "thickness_in": thickness, "head_diameter_in": head},
            {"pull_through_lb": pulled_through(gravity, head, thickness)},
        )

    for row in (
        (g, t, h)
        for g in ("0.42", "0.5")
        for t in ("0.375", "0.4375", "0.46875", "0.5", "0.59375", "0.71875")
        for h in ("0.266", "0.281", "0.312", "0.344")
    ):
        add("ordinary", *row)
    for row in ((g, t, h) for g in ("0.2", "0.8") for t in ("0.05", "3") for h in ("0.1", "1")):
        add("end", *row)
    for head in ("0.1", "0.281", "0.4", "1"):
        at = Fraction(head) * Fraction(5, 2)
        for off in (Fraction(-1, 10000), 0, Fraction(1, 10000)):
            add("governing", "0.5", f"{float(at + off):.6g}", head)
    return made.cases


def screw_withdrawal() -> Iterable[Case]:
    made = Builder(SCREW)

    def add(class_: str, gravity: str, diameter: str) -> None:
        made.add(
            class_,
            {"specific_gravity": gravity, "diameter_in": diameter},
            {"withdrawal_lb_per_in": of_screw(gravity, diameter)},
        )

    for row in ((g, sizes[0]) for g in GRAVITIES for sizes in SCREWS.values()):
        add("ordinary", *row)
    for row in ((g, d) for g in ("0.2", "0.8") for d in ("0.05", "0.5")):
        add("end", *row)
    return made.cases


def lag_withdrawal() -> Iterable[Case]:
    made = Builder(LAG)
    for line in printed(TESTS / "fastening" / "strength" / "nds-table-12.2a.csv"):
        diameter = sum(Fraction(part) for part in line["diameter_in"].split("-"))
        made.add(
            "edge",
            {"specific_gravity": line["specific_gravity"], "diameter_in": diameter},
            {"withdrawal_lb_per_in": line["printed_lb_per_in"]},
            kind="printed",
            tolerance="0",
            within="0.500000001",
            source="NDS Table 12.2A, p. 77 (2015, 2018), scanned page, read",
        )
    for row in ((g, d) for g in ("0.2", "0.42", "0.5", "0.8") for d in ("0.1", "0.25", "0.3125", "0.5", "1.25")):
        made.add(
            "end" if row[0] in ("0.2", "0.8") else "ordinary",
            dict(zip(("specific_gravity", "diameter_in"), row)),
            {"withdrawal_lb_per_in": of_lag(*row)},
        )
    return made.cases


def hot(degrees: Value, wet: bool) -> mpf:
    """C_t of fasteners, NDS Table 11.3.4."""
    at = number(degrees)
    return mpf(1) if at <= 100 else number("0.7" if wet else "0.8") if at <= 125 else number("0.5" if wet else "0.7")


def nail_resistance() -> Iterable[Case]:
    made = Builder("")

    def add(class_: str, **row: Value) -> None:
        made.add(
            class_,
            row,
            held(row),
            source=f"{SHANKS[row['shank']]}; {PULL}; factors of Tables 2.3.2, 11.3.3, 11.3.4 from memory",
        )

    common = {"diameter_in": "0.131", "length_in": "2.5", "head_diameter_in": "0.281"}
    for row in grid(
        shank=tuple(SHANKS),
        specific_gravity=("0.42", "0.5", "0.55"),
        thickness_in=("0.4375", "0.46875", "0.59375"),
        panel_gravity=("0.42", "0.5"),
        moisture=("stays-dry", "dries-later"),
    ):
        add("ordinary", **common, **row)
    house = common | {
        "specific_gravity": "0.42",
        "thickness_in": "0.4375",
        "panel_gravity": "0.5",
        "moisture": "stays-dry",
    }
    for duration in DURATION:
        add("ordinary", **house, shank="smooth", load_duration=duration)
    for degrees in ("0", "100", "100.1", "125", "125.1", "150"):
        add("step", **house, shank="ring", temperature_f=degrees)
    for shim in ("0.125", "0.375", "0.5625", "0.56", "0.57", "1.5"):
        add("step", **house, shank="ring", shim_in=shim)
    for rings in ("0", "1", "2.06", "2.0625", "2.07", "8"):
        if rings != "0":
            add("governing", **house, shank="ring", rings_in=rings)
    for panel in ("0.35", "0.39", "0.4", "0.41", "0.45"):
        add("governing", **(house | {"panel_gravity": panel}), shank="smooth")
    for diameter, head in (("0.05", "0.1"), ("0.24", "1")):
        for length in ("4", "16"):
            add(
                "end",
                **(house | {"diameter_in": diameter, "head_diameter_in": head, "length_in": length}),
                shank="smooth",
            )
    _worked_resistance(made, house)
    return made.cases


def held(row: Mapping[str, Value]) -> dict[str, Value]:
    """The lesser of withdrawal and pull-through of one nail in dry service."""
    deep = number(row["length_in"]) - number(row["thickness_in"]) - number(row.get("shim_in", "0"))
    if row["shank"] == "ring":
        deep = min(deep, number(row.get("rings_in", "1.5")))
    lasting, warm = number(DURATION[row.get("load_duration", "ten-minutes")]), hot(
        row.get("temperature_f", "70"), False
    )
    dried = number("0.25") if row["moisture"] == "dries-later" and row["shank"] != "ring" else mpf(1)
    out = of_nail(row["specific_gravity"], row["diameter_in"], row["shank"]) * deep * lasting * warm * dried
    through = pulled_through(row["panel_gravity"], row["head_diameter_in"], row["thickness_in"]) * lasting * warm
    return {
        "penetration_in": deep,
        "withdrawal_lb": out,
        "pull_through_lb": through,
        "resistance_lb": min(out, through),
        "governs": "withdrawal" if out <= through else "pull-through",
    }


def _worked_resistance(made: Builder, house: Mapping[str, Value]) -> None:
    """Two published examples in which nothing but withdrawal is said."""
    row = house | {"thickness_in": "0.105", "shank": "smooth", "load_duration": "ten-years"}
    made.add(
        "ordinary",
        row,
        {"withdrawal_lb": "49.50"},
        kind="worked",
        tolerance="0",
        within="0.005",
        source="a wood association's example E2.1a: 0.131 x 2.5 nail, side member 0.105 in, G 0.42, secondary source",
    )
    made.add(
        "ordinary",
        house | {"thickness_in": "0.5", "shank": "smooth"},
        {"withdrawal_lb": "66"},
        kind="worked",
        tolerance="0",
        within="0.5",
        source="a federal coastal manual's example 9.1: 8d common, G 0.42, 66 lb; 2.0 in of penetration inferred",
    )


FUNCTIONS = {
    "nail_withdrawal": nail_withdrawal,
    "nail_pull_through": nail_pull_through,
    "screw_withdrawal": screw_withdrawal,
    "lag_withdrawal": lag_withdrawal,
    "nail_resistance": nail_resistance,
}
