"""Wind on roofs: velocity pressure of ASCE 7 chapter 26, pressures of roof zones and overhangs as the residential code prints them.

K_z is Table 26.10-1 (7-10: Table 30.3-1), from memory, straight between printed heights. The residential code's
pressures are 0.6 x 0.00256 x 0.70059 x 0.85 V^2 (G C_p + 0.18) at 30 ft in Exposure B, times its printed height factor.
"""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import log10, mpf

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import HERE, TESTS, angle, grid, on_line, printed, short

EDITIONS = ("7-10", "7-16", "7-22")
HEIGHTS = (15, 20, 25, 30, 40, 50, 60)
LATER_B = (".57", ".62", ".66", ".70", ".74", ".79", ".83")
K_Z = {
    "b": (".57", ".62", ".66", ".70", ".76", ".81", ".85"),
    "c": (".85", ".90", ".94", ".98", "1.04", "1.09", "1.13"),
    "d": ("1.03", "1.08", "1.12", "1.16", "1.22", "1.27", "1.31"),
}
CODE = {"7-10": "2015", "7-16": "2021", "7-22": "2024"}
CODE_NAMES = {
    "2015": "IRC 2015 Table R301.2(3)",
    "2021": "IRC 2021 Table R301.2.1(2)",
    "2024": "IRC 2024 Table R301.2.1(2)",
}
VELOCITY = "ASCE 7-16 eq. 26.10-1; Kz of Table 26.10-1 from memory"


def exposure_coefficient(edition: str, exposure: str, height: Value) -> mpf:
    """K_z of Table 26.10-1 (Table 30.3-1 in 7-10, where Exposure B is 0.70 up to 30 ft); 7-22 has its own Exposure B."""
    column = LATER_B if edition == "7-22" and exposure == "b" else K_Z[exposure]
    at = on_line(number(height), [(mpf(h), number(k)) for h, k in zip(HEIGHTS, column)])
    return max(at, number(".70")) if edition == "7-10" and exposure == "b" else at


def velocity(row: Mapping[str, Value]) -> mpf:
    """q = 0.00256 K_z K_zt K_d V^2, eq. 26.10-1 (7-22: K_d here, not later; ground elevation factor 1)."""
    factor = exposure_coefficient(row["edition"], row["exposure"], row["height_ft"])
    return (
        number("0.00256")
        * factor
        * number(row.get("kzt", 1))
        * number(row.get("kd", "0.85"))
        * number(row["wind_mph"]) ** 2
    )


def height_factors() -> dict[tuple[str, str], list[tuple[mpf, mpf]]]:
    """The residential code's height and exposure factors, by edition of ASCE 7 and exposure."""
    found = {}
    for edition, code in CODE.items():
        for line in printed(TESTS / "loads" / "wind" / f"height-exposure-{code}.csv"):
            points = [(mpf(h), number(line[f"at_{h}"])) for h in range(15, 61, 5)]
            found[edition, line["exposure"].lower()] = points
    return found


HEIGHT_FACTORS = height_factors()


def velocity_pressure() -> Iterable[Case]:
    made = Builder(VELOCITY)

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, {"velocity_pressure_psf": velocity(row)})

    for row in grid(edition=EDITIONS, exposure="bcd", wind_mph=("115", "150"), height_ft=("18", "33.5", "57")):
        add("ordinary", **row)
    for row in grid(edition=EDITIONS, exposure="bcd", height_ft=("1", "60"), wind_mph=("50", "250")):
        add("end", **row)
    for row in grid(
        edition=EDITIONS, exposure="b", height_ft=("30",), wind_mph=("130",), kzt=("1", "1.72", "3"), kd=("0.8", "1")
    ):
        add("end", **row)
    for row in grid(
        edition=EDITIONS,
        exposure="bcd",
        wind_mph=("140",),
        height_ft=("14.99", "15", "15.01", "20", "25", "29.99", "30", "30.01", "40", "50", "59.99"),
    ):
        add("edge", **row)
    _printed_height_factors(made)
    made.add(
        "ordinary",
        {"wind_mph": "105", "exposure": "b", "height_ft": "12.1", "edition": "7-16"},
        {"velocity_pressure_psf": "13.67"},
        kind="worked",
        within="0.005",
        source="ASCE guide to the wind provisions of 7-16 ch. 8: V 105 mph, Kh 0.57, Kd 0.85, secondary source",
    )
    random = draws("velocity_pressure")
    for _ in range(20):
        add(
            "ordinary",
            edition=random.choice(EDITIONS),
            exposure=random.choice("bcd"),
            wind_mph=str(random.randint(850, 2000) / 10),
            height_ft=str(random.randint(100, 600) / 10),
            kzt=str(random.randint(100, 200) / 100),
            kd="0.85",
        )
    return made.cases


def _printed_height_factors(made: Builder) -> None:
    """The code's printed factor times the pressure at 30 ft in Exposure B; where K_z of the table differs, its own value."""
    for (edition, exposure), points in HEIGHT_FACTORS.items():
        base = velocity({"edition": edition, "exposure": "b", "height_ft": 30, "wind_mph": 100})
        for height, factor in points:
            row = {"edition": edition, "exposure": exposure, "height_ft": str(int(height)), "wind_mph": "100"}
            ours, half = velocity(row), base * number("0.005")
            code = CODE_NAMES[CODE[edition]]
            if abs(ours - base * factor) <= half:
                made.add(
                    "edge",
                    row,
                    {"velocity_pressure_psf": base * factor},
                    kind="printed",
                    tolerance="0",
                    within=short(half),
                    source=f"{code}, height factors, secondary source",
                )
            else:
                side = "print" if base * factor > ours else "Kz"
                made.add(
                    "edge",
                    row,
                    {"velocity_pressure_psf": ours},
                    source=f"known disagreement of Table 26.10-1 with {code}: {side} is the safe side",
                )


class Curve:
    """Pressure coefficients of one zone of a roof, straight in the logarithm of the area, level outside 10 and 100 sq ft."""

    AREAS = (10, 20, 50, 100)

    def __init__(self, line: Mapping[str, str]) -> None:
        self.edition, self.roof, self.zones = line["edition"], line["roof"], line["zones"].split()
        self.over, self.to = number(line["over_deg"]), number(line["to_deg"])
        self.inward = [number(line[f"in_{area}"]) for area in self.AREAS]
        self.outward = [number(line[f"out_{area}"]) for area in self.AREAS]
        self.noise = mpf(0)
        if self.edition == "7-16" and self.to == 7 and self.zones[0] in LINES_7_16:
            self.noise = number("0.001")
            self.outward = [max(ours, line_7_16(self.zones[0], area)) for area, ours in zip(self.AREAS, self.outward)]

    def holds(self, edition: str, roof: str, degrees: mpf, zone: str) -> bool:
        """Whether it is meant: over the first angle, to the second; flat roofs stand in the first range."""
        in_range = self.over < degrees <= self.to or (self.over == 0 and degrees == 0)
        return (self.edition, self.roof) == (edition, roof) and in_range and zone in self.zones

    def at(self, area: Value, values: list[mpf]) -> mpf:
        return on_line(log10(number(area)), [(log10(mpf(a)), v) for a, v in zip(self.AREAS, values)])


# The lines of ASCE 7-16 Figure 30.3-2A from 10 to 500 sq ft, from memory; a table of three decimals may hold them.
LINES_7_16 = {"1": ("1.7", "1.0"), "3": ("3.2", "1.4")}


def line_7_16(zone: str, area: int) -> mpf:
    """ASCE 7-16 Figure 30.3-2A, from memory: straight in log area from 10 to 500 sq ft; IRC 2021 prints up to 0.02 less."""
    first, last = (number(end) for end in LINES_7_16[zone])
    return first + (last - first) * log10(mpf(area) / 10) / log10(mpf(50))


CURVES = [Curve(line) for line in printed(HERE / "printed" / "wind_coefficients.csv")]


def curves_of(row: Mapping[str, Value]) -> list[Curve]:
    """The curve of a place on a roof; an ASCE 7-22 hip between 27 and 45 degrees has those of both ends."""
    degrees, place = angle(row["rise_in_12"]), (row["edition"], row["roof"])
    if place == ("7-22", "hip") and degrees > 27:
        ends = (27, 45) if degrees < 45 else (45,)
        found = [
            curve
            for curve in CURVES
            if (curve.edition, curve.roof) == place and curve.to in ends and row["zone"] in curve.zones
        ]
    else:
        found = [curve for curve in CURVES if curve.holds(*place, degrees, row["zone"])]
    if not found:
        raise LookupError(f"nothing is printed for {row}")
    return found


def coefficients(row: Mapping[str, Value]) -> tuple[mpf, mpf]:
    """G C_p outward and inward, both positive, the worse where two curves hold."""
    curves, area = curves_of(row), row.get("area_sf", "10")
    return (
        max(curve.at(area, curve.outward) for curve in curves),
        max(curve.at(area, curve.inward) for curve in curves),
    )


def roof_pressure(row: Mapping[str, Value]) -> mpf:
    """Strength level, without coefficients: 0.00256 x 0.70059 x 0.85 K_zt V^2 times the code's height factor."""
    height = on_line(number(row["height_ft"]), HEIGHT_FACTORS[row["edition"], row["exposure"]])
    return (
        number("0.00256")
        * number("0.70059")
        * number("0.85")
        * number(row.get("kzt", 1))
        * number(row["wind_mph"]) ** 2
        * height
    )


def noise(row: Mapping[str, Value]) -> str:
    """How far an allowable pressure may be off for a coefficient that a table holds in three decimals; nothing otherwise."""
    most = max(curve.noise for curve in curves_of(row))
    return short(most * roof_pressure(row)) if most else ""


FUNCTIONS = {"velocity_pressure": velocity_pressure}
