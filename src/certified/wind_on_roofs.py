"""Pressures on the zones of a roof, on overhangs and at the joints, and the small figures that go with them."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import log10, mpf

from case_file import Builder, Case, Value, draws
from precise import TESTS, angle, grid, number, on_line, printed, short
from wind import CURVES, EDITIONS, Curve, coefficients, noise, roof_pressure

LEAST = mpf(10)
METHOD = ("0.6 x 0.00256 x 0.70059 x 0.85 V2 (GCp + 0.18) x height factor, 10 psf at least; GCp solved from {}, "
          "straight in log area")
PRINT = {"7-10": "IRC 2015 Table R301.2(2)", "7-16": "IRC 2021 Table R301.2.1(1)", "7-22": "FBC Residential 2023 Table R301.2(2)"}
CODE_TABLES = {"2015": PRINT["7-10"], "2018": "IRC 2018 Table R301.2(2)", "2021": PRINT["7-16"],
               "2024": "IRC 2024 Table R301.2.1(1)", "FBC-R 2023": PRINT["7-22"]}
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
                add("edge" if area != "32" else "ordinary", edition=curve.edition, roof=curve.roof, zone=zone,
                    rise_in_12=rise_in(curve), area_sf=area, wind_mph="145", exposure="b", height_ft="30")
    for row in grid(edition=EDITIONS, exposure="bcd", height_ft=("1", "15", "17", "30", "33", "60"), wind_mph=("120",),
                    roof=("gable",), zone=("3",), rise_in_12=("1",)):
        add("edge", **row)
    for row in grid(edition=EDITIONS, wind_mph=("50", "85", "250"), exposure="b", height_ft=("30",), roof=("gable",),
                    zone=("2",), rise_in_12=("1.25",), area_sf=("0.1", "1000")):
        add("end", **row)
    _slope_edges(add)
    _area_edges(add)
    for wind in ("99", "101", "103", "104"):
        add("governing", edition="7-10", wind_mph=wind, exposure="b", height_ft="30", roof="gable", zone="1", rise_in_12="4")
    _printed_pressures(made)
    random = draws("sheathing_uplift")
    for _ in range(40):
        curve = random.choice(CURVES)
        add("ordinary", edition=curve.edition, roof=curve.roof, zone=random.choice(curve.zones), rise_in_12=rise_in(curve),
            area_sf=str(random.randint(1, 2000) / 10), wind_mph=str(random.randint(90, 190)), exposure=random.choice("bcd"),
            height_ft=str(random.randint(80, 600) / 10))
    return made.cases


def _slope_edges(add) -> None:
    """Just below and above 7, 20 and 27 degrees (12 tan), and 12 in 12, which is 45."""
    site = {"wind_mph": "140", "exposure": "b", "height_ft": "30"}
    edges = {"7-10": ("1.4734", "1.4735", "6.1143", "6.1144"), "7-16": ("1.4734", "4.3676", "6.1143"),
             "7-22": ("1.4734", "1.4735", "4.3676", "4.3677", "6.1143", "6.1144")}
    for edition, rises in edges.items():
        for rise in (*rises, "0", "12"):
            add("edge", edition=edition, roof="gable", zone="1", rise_in_12=rise, **site)
    for rise in ("1.4735", "4.3676", "4.3677", "6.1143", "6.1144", "9", "12"):
        for edition in ("7-16", "7-22"):
            add("edge", edition=edition, roof="hip", zone="3", rise_in_12=rise, **site)


def _area_edges(add) -> None:
    """Where the coefficients begin and cease to fall: 10 and 100 sq ft, and the printed areas between."""
    for edition, area in ((e, a) for e in EDITIONS for a in ("9.99", "10.01", "19.99", "20", "20.01", "50", "99.99", "100.01", "300", "500")):
        add("edge", edition=edition, roof="gable", zone="3", rise_in_12="1", area_sf=area, wind_mph="140", exposure="c", height_ft="25")


def _printed_pressures(made: Builder) -> None:
    """Every pressure printed for 30 ft in Exposure B; coefficients carry 0.002, print 0.05 psf."""
    for line in printed(TESTS / "loads" / "wind" / "wind-pressures.csv"):
        roof = "hip" if line["roof"] == "hip" else "gable"
        rise = _rise_of(line["slope"])
        for zone in line["zones"].split(", "):
            row = {"wind_mph": line["wind_mph"], "exposure": "b", "height_ft": "30", "edition": line["asce7"],
                   "rise_in_12": rise, "roof": roof, "zone": zone, "area_sf": line["area_sf"]}
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
        made.add("edge", row, {name: said if near[name] else None for name, said in print_says.items()},
                 kind="printed", tolerance="0", within="0.1", source=f"{table}, secondary source")
    wrong = {name: said for name, said in print_says.items() if not near[name]}
    if wrong:
        made.add("edge", row, {name: ours[name] if name in wrong else None for name in print_says},
                 within=noise(row), source=f"{method(row['edition'])}; known disagreement: {table} prints {_said(wrong)}; {_safe(wrong, ours)}")


def _said(wrong: Mapping[str, str]) -> str:
    return " and ".join(f"{said} {'outward' if name == 'uplift_psf' else 'inward'}" for name, said in wrong.items())


def _safe(wrong: Mapping[str, str], ours: Mapping[str, mpf]) -> str:
    """Which side is safe; where print goes below the code's own least, that is said."""
    if all(number(said) < ours[name] for name, said in wrong.items()):
        return "this value is the safe side"
    return "print is the safe side" if all(number(said) > ours[name] for name, said in wrong.items()) else "the greater of each is the safe side"


def cladding_pressure() -> Iterable[Case]:
    made = Builder("")

    def add(class_: str, **row: Value) -> None:
        outward, inward = coefficients(row)
        inside = number("0.55" if row["enclosure"] == "partially-enclosed" else "0.18")
        strength = [roof_pressure(row) * (value + inside) for value in (outward, inward)]
        names = ("outward_strength_psf", "inward_strength_psf", "outward_psf", "inward_psf")
        values = (*strength, *(number("0.6") * value for value in strength))
        said = "; GCpi 0.55 from memory" if row["enclosure"] == "partially-enclosed" else ""
        made.add(class_, row, dict(zip(names, values)), within=noise(row), source=method(row["edition"]).replace(", 10 psf at least", "") + said)

    for curve in CURVES:
        add("ordinary", edition=curve.edition, roof=curve.roof, zone=curve.zones[-1], rise_in_12=rise_in(curve), area_sf="20",
            wind_mph="125", exposure="c", height_ft="22", enclosure="partially-enclosed", kzt="1.2")
        add("edge", edition=curve.edition, roof=curve.roof, zone=curve.zones[0], rise_in_12=rise_in(curve), area_sf="100",
            wind_mph="115", exposure="b", height_ft="30", enclosure="enclosed")
    for row in grid(edition=EDITIONS, wind_mph=("50", "250"), kzt=("1", "3"), enclosure=("enclosed", "partially-enclosed"),
                    exposure="d", height_ft=("1", "60"), roof=("gable",), zone=("1",), rise_in_12=("0",), area_sf=("0.1",)):
        add("end", **row)
    return made.cases


OVERHANG_FIGURES = ("ASCE 7-10 Figures 30.4-2A to C, overhangs, from memory; held at 100 sq ft, where to 7 degrees the figure "
                    "falls on to 1.1 at 500: the safe side")
OVERHANGS = {
    ("7-10", "1", "1"): ((10, "1.7"), (100, "1.6")), ("7-10", "1", "2"): ((10, "1.7"), (100, "1.6")),
    ("7-10", "1", "3"): ((10, "2.8"), (100, "0.8")),
    ("7-10", "4", "2"): ((10, "2.2"), (100, "2.2")), ("7-10", "4", "3"): ((10, "3.7"), (100, "2.5")),
    ("7-10", "9", "2"): ((10, "2.0"), (100, "1.8")), ("7-10", "9", "3"): ((10, "2.0"), (100, "1.8")),
}


def overhang_uplift() -> Iterable[Case]:
    made = Builder("")

    def add(class_: str, **row: Value) -> None:
        coefficient, source = _overhang_coefficient(row)
        pressure = number("0.6") * roof_pressure(row)
        made.add(class_, row, {"overhang_psf": max(LEAST, pressure * coefficient)}, source=source,
                 within=short(pressure / 1000) if row["edition"] == "7-10" else noise(row))

    site = {"wind_mph": "130", "exposure": "c", "height_ft": "24"}
    for (edition, rise, zone) in OVERHANGS:
        for area in ("1", "10", "35", "100", "500", "1000"):
            add("edge" if area != "35" else "ordinary", edition=edition, rise_in_12=rise, roof="gable", zone=zone, area_sf=area, **site)
    for curve in CURVES:
        if curve.edition != "7-10":
            for area in ("10", "60"):
                add("ordinary", edition=curve.edition, rise_in_12=rise_in(curve), roof=curve.roof, zone=curve.zones[0], area_sf=area, **site)
    for row in grid(edition=EDITIONS, wind_mph=("50", "250"), height_ft=("1", "60"), exposure="bd", roof=("gable",), zone=("3",), rise_in_12=("0", "1")):
        add("end", **row)
    return made.cases


def _overhang_coefficient(row: Mapping[str, Value]) -> tuple[mpf, str]:
    """G C_p of an overhang: its own figure in 7-10, later the roof's zone and 1.0 of the wall below."""
    if row["edition"] == "7-10":
        degrees = angle(row["rise_in_12"])
        rise = "1" if degrees <= 7 else "4" if degrees <= 27 else "9"
        points = [(log10(mpf(area)), number(value)) for area, value in OVERHANGS["7-10", rise, row["zone"]]]
        return on_line(log10(number(row.get("area_sf", "10"))), points), OVERHANG_FIGURES
    return coefficients(row)[0] + 1, "roof zone's GCp and 1.0 of the wall: ASCE 7-22 eq. 30.7-1, secondary source; 1.0 from memory"


def zone_width() -> Iterable[Case]:
    made = Builder("ASCE 7-10 notes of Figure 30.4-2A: 10 % of least width or 0.4 h, not under 4 % of it nor 3 ft")

    def add(class_: str, width: str, height: str, **other: str) -> None:
        wide, high = number(width), number(height)
        least = max(min(wide / 10, high * 2 / 5), wide / 25, mpf(3))
        made.add(class_, {"least_width_ft": width, "height_ft": height}, {"zone_width_ft": least}, **other)

    for width, height in (("28", "20"), ("50", "15"), ("120", "12"), ("36", "18"), ("44.5", "21.25"), ("62", "14")):
        add("ordinary", width, height)
    for width, height in (("8", "1"), ("8", "60"), ("300", "1"), ("300", "60")):
        add("end", width, height)
    for width in ("29.9", "30", "30.1", "59.9", "60", "60.1"):
        for height in ("7.4", "7.5", "7.6", "14.9", "15", "15.1"):
            add("governing", width, height)
    return made.cases


def mean_roof_height() -> Iterable[Case]:
    made = Builder("mean of eave and ridge height, ASCE 7-16 section 26.2")

    def add(class_: str, eave: str, run: str, rise: str) -> None:
        made.add(class_, {"eave_height_ft": eave, "run_ft": run, "rise_in_12": rise},
                 {"height_ft": number(eave) + number(run) * number(rise) / 24})

    for eave, run, rise in ((e, r, p) for e in ("9", "10.5", "18.75") for r in ("12", "14.25", "16") for p in ("3", "4.5", "8")):
        add("ordinary", eave, run, rise)
    for eave, run, rise in (("1", "0.5", "0"), ("60", "200", "24"), ("1", "200", "24"), ("60", "0.5", "24"), ("60", "200", "0")):
        add("end", eave, run, rise)
    made.add("ordinary", {"eave_height_ft": "10", "run_ft": "16", "rise_in_12": "3.2153903091734720"}, {"height_ft": "12.14"},
             kind="worked", tolerance="0", within="0.005", source="ASCE guide to 7-16 ch. 8: 10 + 16 tan 15 / 2, secondary source")
    return made.cases


def allowable_pressure() -> Iterable[Case]:
    made = Builder("0.6 W, ASCE 7-16 section 2.4.1")
    for class_, strength in [("end", "0"), ("end", "1000"), ("degenerate", "0.001")] + [
            ("ordinary", str(at)) for at in ("12.5", "13.67", "16", "20", "25.75", "31.4", "40", "48.125", "55", "62.3", "71", "80.3",
                                              "88", "95.2", "101", "110.5", "123", "150", "175", "200", "250", "400.4", "733")]:
        made.add(class_, {"strength_psf": strength}, {"allowable_psf": number(strength) * 3 / 5})
    return made.cases


FUNCTIONS = {
    "sheathing_uplift": sheathing_uplift, "cladding_pressure": cladding_pressure,
    "overhang_uplift": overhang_uplift, "zone_width": zone_width, "mean_roof_height": mean_roof_height,
    "allowable_pressure": allowable_pressure,
}
