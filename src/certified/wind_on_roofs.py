"""Pressures on the zones of a roof, on overhangs and at the joints, and the small figures that go with them."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import mpf

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import TESTS, grid, printed
from wind import CURVES, EDITIONS, Curve, coefficients, noise, roof_pressure

LEAST = mpf(10)
METHOD = "0.6 x 0.00256 x 0.70059 x 0.85 V2 (GCp + 0.18) x height factor, 10 psf at least; GCp solved from {}"
PRINT = {
    "7-10": "IRC 2015 Table R301.2(2)",
    "7-16": "IRC 2021 Table R301.2.1(1)",
    "7-22": "FBC Residential 2023 Table R301.2(2)",
}
CODE_TABLES = {
    "2015": PRINT["7-10"],
    "2018": "IRC 2018 Table R301.2(2)",
    "2021": PRINT["7-16"],
    "2024": "IRC 2024 Table R301.2.1(1)",
    "FBC-R 2023": PRINT["7-22"],
}
RISES = {("0", "7"): "1", ("7", "27"): "4", ("7", "20"): "3", ("20", "27"): "5", ("27", "45"): "8", ("45", "45"): "12"}


def method(edition: str) -> str:
    return METHOD.format(PRINT[edition])


def uplift(row: Mapping[str, Value]) -> dict[str, mpf]:
    """Both pressures at allowable level, not under the code's 10 psf."""
    outward, inward = coefficients(row)
    q, inside = number("0.6") * roof_pressure(row), number("0.18")
    return {"uplift_psf": max(LEAST, q * (outward + inside)), "inward_psf": max(LEAST, q * (inward + inside))}


def rise_in(curve: Curve) -> str:
    """A rise whose slope lies in the curve's range."""
    return RISES[str(int(curve.over)), str(int(curve.to))]


def sheathing_uplift() -> Iterable[Case]:
    made = Builder("")

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, uplift(row), source=method(row["edition"]), within=noise(row))

    for curve in CURVES:
        for zone in curve.zones:
            for area in ("10", "32", "100"):
                add(
                    "edge" if area != "32" else "ordinary",
                    edition=curve.edition,
                    roof=curve.roof,
                    zone=zone,
                    rise_in_12=rise_in(curve),
                    area_sf=area,
                    wind_mph="145",
                    exposure="b",
                    height_ft="30",
                )
    for row in grid(
        edition=EDITIONS,
        exposure="bcd",
        height_ft=("1", "15", "17", "30", "33", "60"),
        wind_mph=("120",),
        roof=("gable",),
        zone=("3",),
        rise_in_12=("1",),
    ):
        add("edge", **row)
    for row in grid(
        edition=EDITIONS,
        wind_mph=("50", "85", "250"),
        exposure="b",
        height_ft=("30",),
        roof=("gable",),
        zone=("2",),
        rise_in_12=("1.25",),
        area_sf=("0.1", "1000"),
    ):
        add("end", **row)
    _slope_edges(add)
    _area_edges(add)
    for wind in ("99", "101", "103", "104"):
        add(
            "governing",
            edition="7-10",
            wind_mph=wind,
            exposure="b",
            height_ft="30",
            roof="gable",
            zone="1",
            rise_in_12="4",
        )
    _printed_pressures(made)
    random = draws("sheathing_uplift")
    for _ in range(40):
        curve = random.choice(CURVES)
        add(
            "ordinary",
            edition=curve.edition,
            roof=curve.roof,
            zone=random.choice(curve.zones),
            rise_in_12=rise_in(curve),
            area_sf=str(random.randint(1, 2000) / 10),
            wind_mph=str(random.randint(90, 190)),
            exposure=random.choice("bcd"),
            height_ft=str(random.randint(80, 600) / 10),
        )
    return made.cases


def _slope_edges(add) -> None:
    """Just below and above 7, 20 and 27 degrees (12 tan), and 12 in 12, which is 45."""
    site = {"wind_mph": "140", "exposure": "b", "height_ft": "30"}
    edges = {
        "7-10": ("1.4734", "1.4735", "6.1143", "6.1144"),
        "7-16": ("1.4734", "4.3676", "6.1143"),
        "7-22": ("1.4734", "1.4735", "4.3676", "4.3677", "6.1143", "6.1144"),
    }
    for edition, rises in edges.items():
        for rise in (*rises, "0", "12"):
            add("edge", edition=edition, roof="gable", zone="1", rise_in_12=rise, **site)
    for rise in ("1.4735", "4.3676", "4.3677", "6.1143", "6.1144", "9", "12"):
        for edition in ("7-16", "7-22"):
            add("edge", edition=edition, roof="hip", zone="3", rise_in_12=rise, **site)


def _area_edges(add) -> None:
    """Where the coefficients begin and cease to fall: 10 and 100 sq ft, and the printed areas between."""
    for edition, area in (
        (e, a)
        for e in EDITIONS
        for a in ("9.99", "10.01", "19.99", "20", "20.01", "50", "99.99", "100.01", "300", "500")
    ):
        add(
            "edge",
            edition=edition,
            roof="gable",
            zone="3",
            rise_in_12="1",
            area_sf=area,
            wind_mph="140",
            exposure="c",
            height_ft="25",
        )


def _printed_pressures(made: Builder) -> None:
    """Every pressure printed for 30 ft in Exposure B; coefficients carry 0.002, print 0.05 psf."""
    for line in printed(TESTS / "loads" / "wind" / "wind-pressures.csv"):
        roof = "hip" if line["roof"] == "hip" else "gable"
        rise = _rise_of(line["slope"])
        for zone in line["zones"].split(", "):
            row = {
                "wind_mph": line["wind_mph"],
                "exposure": "b",
                "height_ft": "30",
                "edition": line["asce7"],
                "rise_in_12": rise,
                "roof": roof,
                "zone": zone,
                "area_sf": line["area_sf"],
            }
            _printed_pressure(made, line, row)


def _rise_of(slope: str) -> str:
    return {"0-7": "1", "<7": "1", ">7-27": "4", ">27-45": "9", ">7-20": "3", ">20-27": "5", "45": "12"}[slope]


def _printed_pressure(made: Builder, line: Mapping[str, str], row: Mapping[str, Value]) -> None:
    """One printed row: what agrees is held to print, the rest to the method, and says which side is safe.

    The tables print less than 10 psf, and the text beside them says that never less than 10 is taken: such cells are no cases.
    """
    ours, table = uplift(row), CODE_TABLES[line["code"]]
    print_says = {"uplift_psf": line["outward_psf"].lstrip("-"), "inward_psf": line["inward_psf"]}
    print_says = {name: said for name, said in print_says.items() if number(said) >= LEAST}
    near = {name: abs(ours[name] - number(said)) <= number("0.1") for name, said in print_says.items()}
    if any(near.values()):
        made.add(
            "edge",
            row,
            {name: said if near[name] else None for name, said in print_says.items()},
            kind="printed",
            tolerance="0",
            within="0.1",
            source=f"{table}, secondary source",
        )
    wrong = {name: said for name, said in print_says.items() if not near[name]}
    if wrong:
        made.add(
            "edge",
            row,
            {name: ours[name] if name in wrong else None for name in print_says},
            within=noise(row),
            source=f"known disagreement with {table}: {_safe(wrong, ours)}",
        )


def _safe(wrong: Mapping[str, str], ours: Mapping[str, mpf]) -> str:
    """Which side is safe; where print goes below the code's own least, that is said."""
    if all(number(said) < ours[name] for name, said in wrong.items()):
        return "this value is the safe side"
    return (
        "print is the safe side"
        if all(number(said) > ours[name] for name, said in wrong.items())
        else "the greater of each is the safe side"
    )


FUNCTIONS = {
    "sheathing_uplift": sheathing_uplift,
}
