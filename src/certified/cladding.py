"""Pressures on cladding, on hills and open houses too, and on overhangs."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import log10, mpf

from arithmetic import number
from case_file import Builder, Case, Value
from precise import angle, grid, on_line, short
from wind import CURVES, EDITIONS, coefficients, noise, roof_pressure
from wind_on_roofs import LEAST, method, rise_in


def cladding_pressure() -> Iterable[Case]:
    made = Builder("")

    def add(class_: str, **row: Value) -> None:
        outward, inward = coefficients(row)
        inside = number("0.55" if row["enclosure"] == "partially-enclosed" else "0.18")
        strength = [roof_pressure(row) * (value + inside) for value in (outward, inward)]
        names = ("outward_strength_psf", "inward_strength_psf", "outward_psf", "inward_psf")
        values = (*strength, *(number("0.6") * value for value in strength))
        said = "; GCpi 0.55 from memory" if row["enclosure"] == "partially-enclosed" else ""
        made.add(
            class_,
            row,
            dict(zip(names, values)),
            within=noise(row),
            source=method(row["edition"]).replace(", 10 psf at least", "") + said,
        )

    for curve in CURVES:
        add(
            "ordinary",
            edition=curve.edition,
            roof=curve.roof,
            zone=curve.zones[-1],
            rise_in_12=rise_in(curve),
            area_sf="20",
            wind_mph="125",
            exposure="c",
            height_ft="22",
            enclosure="partially-enclosed",
            kzt="1.2",
        )
        add(
            "edge",
            edition=curve.edition,
            roof=curve.roof,
            zone=curve.zones[0],
            rise_in_12=rise_in(curve),
            area_sf="100",
            wind_mph="115",
            exposure="b",
            height_ft="30",
            enclosure="enclosed",
        )
    for row in grid(
        edition=EDITIONS,
        wind_mph=("50", "250"),
        kzt=("1", "3"),
        enclosure=("enclosed", "partially-enclosed"),
        exposure="d",
        height_ft=("1", "60"),
        roof=("gable",),
        zone=("1",),
        rise_in_12=("0",),
        area_sf=("0.1",),
    ):
        add("end", **row)
    return made.cases


OVERHANG_FIGURES = (
    "ASCE 7-10 Figures 30.4-2A to C, overhangs, from memory; held at 100 sq ft, where to 7 degrees the figure "
    "falls on to 1.1 at 500: the safe side"
)


OVERHANGS = {
    ("7-10", "1", "1"): ((10, "1.7"), (100, "1.6")),
    ("7-10", "1", "2"): ((10, "1.7"), (100, "1.6")),
    ("7-10", "1", "3"): ((10, "2.8"), (100, "0.8")),
    ("7-10", "4", "2"): ((10, "2.2"), (100, "2.2")),
    ("7-10", "4", "3"): ((10, "3.7"), (100, "2.5")),
    ("7-10", "9", "2"): ((10, "2.0"), (100, "1.8")),
    ("7-10", "9", "3"): ((10, "2.0"), (100, "1.8")),
}


def overhang_uplift() -> Iterable[Case]:
    made = Builder("")

    def add(class_: str, **row: Value) -> None:
        coefficient, source = _overhang_coefficient(row)
        pressure = number("0.6") * roof_pressure(row)
        made.add(
            class_,
            row,
            {"overhang_psf": max(LEAST, pressure * coefficient)},
            source=source,
            within=short(pressure / 1000) if row["edition"] == "7-10" else noise(row),
        )

    site = {"wind_mph": "130", "exposure": "c", "height_ft": "24"}
    for (edition, rise, zone) in OVERHANGS:
        for area in ("1", "10", "35", "100", "500", "1000"):
            add(
                "edge" if area != "35" else "ordinary",
                edition=edition,
                rise_in_12=rise,
                roof="gable",
                zone=zone,
                area_sf=area,
                **site,
            )
    for curve in CURVES:
        if curve.edition != "7-10":
            for area in ("10", "60"):
                add(
                    "ordinary",
                    edition=curve.edition,
                    rise_in_12=rise_in(curve),
                    roof=curve.roof,
                    zone=curve.zones[0],
                    area_sf=area,
                    **site,
                )
    for row in grid(
        edition=EDITIONS,
        wind_mph=("50", "250"),
        height_ft=("1", "60"),
        exposure="bd",
        roof=("gable",),
        zone=("3",),
        rise_in_12=("0", "1"),
    ):
        add("end", **row)
    return made.cases


def _overhang_coefficient(row: Mapping[str, Value]) -> tuple[mpf, str]:
    """G C_p of an overhang: its own figure in 7-10, later the roof's zone and 1.0 of the wall below."""
    if row["edition"] == "7-10":
        degrees = angle(row["rise_in_12"])
        rise = "1" if degrees <= 7 else "4" if degrees <= 27 else "9"
        points = [(log10(mpf(area)), number(value)) for area, value in OVERHANGS["7-10", rise, row["zone"]]]
        return on_line(log10(number(row.get("area_sf", "10"))), points), OVERHANG_FIGURES
    return (
        coefficients(row)[0] + 1,
        "roof zone's GCp and 1.0 of the wall: ASCE 7-22 eq. 30.7-1, secondary source; 1.0 from memory",
    )


FUNCTIONS = {"cladding_pressure": cladding_pressure, "overhang_uplift": overhang_uplift}
