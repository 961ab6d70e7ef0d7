"""Snow on roofs: ASCE 7-16 chapter 7, alike in 7-10, and what 7-22 does otherwise; read in secondary texts."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import mpf

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import angle, grid

EDITIONS = ("7-10", "7-16", "7-22")
CURVES = "ASCE 7-16 eq. 7.3-1, 7.4-1 and Fig. 7.4-1, secondary source"
COLDER = "; under 7-22 copies of the curves disagree: that with more snow, the safe side"
IMPORTANCE = {"i": "0.8", "ii": "1", "iii": "1.1", "iv": "1.2"}
LEAST_7_22 = {"i": 25, "ii": 30, "iii": 35, "iv": 40}


def slope_factor(degrees: mpf, thermal: Value, slippery: str) -> mpf:
    """C_s: 1 to s0, straight to 0 at 70 degrees; s0 by the next colder curve."""
    warm = number(thermal)
    at = 0 if warm <= 1 else 1 if warm <= number("1.1") else 2
    start = ((5, 10, 15) if slippery == "yes" else (30, mpf("37.5"), 45))[at]
    if degrees <= start:
        return mpf(1)
    return max(mpf(0), (70 - degrees) / (70 - start))


def even(row: Mapping[str, Value]) -> dict[str, mpf]:
    """p_f = 0.7 C_e C_t I_s p_g and p_s = C_s p_f."""
    flat = (
        number("0.7")
        * number(row["exposure_factor"])
        * number(row["thermal_factor"])
        * number(row["importance"])
        * number(row["ground_snow_psf"])
    )
    return {
        "flat_psf": flat,
        "sloped_psf": flat * slope_factor(angle(row["rise_in_12"]), row["thermal_factor"], row["slippery"]),
    }


def roof_snow() -> Iterable[Case]:
    made = Builder(CURVES, within="1e-10")

    def add(class_: str, **row: Value) -> None:
        row = {"importance": "1", "exposure_factor": "1"} | row
        made.add(class_, row, even(row), source=CURVES + (COLDER if row["edition"] == "7-22" else ""))

    house = {"ground_snow_psf": "40", "edition": "7-16"}
    for row in grid(
        thermal_factor=("0.85", "1", "1.1", "1.2"),
        slippery=("yes", "no"),
        rise_in_12=("3", "6", "10"),
        edition=EDITIONS,
    ):
        add("ordinary", **(house | row))
    for row in grid(
        ground_snow_psf=("0", "300"),
        exposure_factor=("0.7", "1.2"),
        importance=("0.8", "1.2"),
        rise_in_12=("0", "48"),
        thermal_factor=("0.85", "1.3"),
        slippery=("no",),
        edition=("7-16",),
    ):
        add("end", **row)
    starts = (
        ("1.0498", "1", "yes"),
        ("2.1159", "1.1", "yes"),
        ("3.2153", "1.2", "yes"),
        ("6.9282", "1", "no"),
        ("9.2079", "1.1", "no"),
        ("12", "1.2", "no"),
    )
    for rise, thermal, slippery in starts:
        for off in ("-0.01", "0", "0.01"):
            add(
                "edge",
                **house,
                thermal_factor=thermal,
                slippery=slippery,
                rise_in_12=str(float(number(rise) + number(off))),
            )
    for rise in ("32.9", "32.96", "32.98", "33", "40"):
        add("edge", **house, thermal_factor="1.1", slippery="no", rise_in_12=rise)
    for thermal in ("0.99", "1.001", "1.05", "1.099", "1.101", "1.15", "1.25"):
        add("governing", **house, thermal_factor=thermal, slippery="no", rise_in_12="10")
    for edition, thermal, ground, rise, flat, source in (
        ("7-10", "1.2", "30", "0.5", "25.2", "guide to the snow loads of ASCE 7-10, example 4-3, secondary source"),
        ("7-16", "1", "43", "0", "30.1", "a county's permit calculations: pf 30.1, secondary source"),
    ):
        made.add(
            "ordinary",
            {
                "ground_snow_psf": ground,
                "edition": edition,
                "importance": "1",
                "exposure_factor": "1",
                "thermal_factor": thermal,
                "slippery": "no",
                "rise_in_12": rise,
            },
            {"flat_psf": flat, "sloped_psf": flat},
            kind="worked",
            source=source,
        )
    random = draws("roof_snow")
    for _ in range(30):
        edition = random.choice(EDITIONS)
        add(
            "ordinary",
            ground_snow_psf=str(random.randint(50, 1500) / 10),
            edition=edition,
            slippery=random.choice(("yes", "no")),
            importance="1" if edition == "7-22" else random.choice(("0.8", "1", "1.1", "1.2")),
            rise_in_12=str(random.randint(0, 240) / 10),
            exposure_factor=random.choice(("0.7", "0.9", "1", "1.2")),
            thermal_factor=random.choice(("0.85", "1", "1.1", "1.2", "1.3")),
        )
    return made.cases


def minimum_snow() -> Iterable[Case]:
    made = Builder("ASCE 7-16 7.3.4 and 7-22 7.3.3, secondary source; under 15 degrees")

    def add(class_: str, **row: Value) -> None:
        ground, least = number(row["ground_snow_psf"]), mpf(0)
        if angle(row["rise_in_12"]) < 15:
            if row["edition"] == "7-22":
                least = min(ground, mpf(LEAST_7_22[row["risk_category"]]))
            else:
                least = number(IMPORTANCE[row["risk_category"]]) * min(ground, mpf(20))
        made.add(class_, row, {"minimum_psf": least})

    for row in grid(
        edition=EDITIONS, risk_category=tuple(IMPORTANCE), ground_snow_psf=("12.5", "33"), rise_in_12=("2",)
    ):
        add("ordinary", **row)
    for row in grid(edition=EDITIONS, risk_category=("ii",), ground_snow_psf=("0", "300"), rise_in_12=("0", "48")):
        add("end", **row)
    for row in grid(
        edition=EDITIONS, risk_category=("ii",), ground_snow_psf=("30",), rise_in_12=("3.2", "3.215", "3.216", "3.3")
    ):
        add("step", **row)
    for ground in ("19.99", "20", "20.01", "24.99", "25.01", "29.99", "30.01", "39.99", "40", "40.01"):
        for edition, category in (("7-16", "iv"), ("7-22", "i"), ("7-22", "ii"), ("7-22", "iv")):
            add("governing", edition=edition, risk_category=category, ground_snow_psf=ground, rise_in_12="1")
    made.add(
        "ordinary",
        {"edition": "7-10", "risk_category": "ii", "ground_snow_psf": "30", "rise_in_12": "0.5"},
        {"minimum_psf": "20"},
        kind="worked",
        source="guide to the snow loads of ASCE 7-10, example 4-3, secondary source",
    )
    return made.cases


def rain_on_snow() -> Iterable[Case]:
    made = Builder(
        "ASCE 7-16 7.10, and 8 psf of 7-22, secondary source; the ground snow up to which 7-22 adds it from memory"
    )

    def add(class_: str, **row: Value) -> None:
        ground, width = number(row["ground_snow_psf"]), number(row["eave_to_ridge_ft"])
        late = row["edition"] == "7-22"
        most = LEAST_7_22[row["risk_category"]] if late else 20
        falls = 0 < ground <= most and angle(row["rise_in_12"]) < width / 50
        made.add(class_, row, {"rain_on_snow_psf": (8 if late else 5) if falls else 0})

    for row in grid(
        edition=EDITIONS,
        risk_category=tuple(IMPORTANCE),
        ground_snow_psf=("15", "28"),
        rise_in_12=("0.25",),
        eave_to_ridge_ft=("40", "80"),
    ):
        add("ordinary", **row)
    for row in grid(
        edition=EDITIONS,
        risk_category=("ii",),
        ground_snow_psf=("0", "300"),
        rise_in_12=("0", "48"),
        eave_to_ridge_ft=("1", "500"),
    ):
        add("end", **row)
    for ground in ("0.01", "19.99", "20", "20.01", "25", "25.01", "30", "30.01", "35.01", "40", "40.01"):
        for edition, category in (("7-16", "ii"), ("7-22", "i"), ("7-22", "ii"), ("7-22", "iv")):
            add(
                "step",
                edition=edition,
                risk_category=category,
                ground_snow_psf=ground,
                rise_in_12="0.25",
                eave_to_ridge_ft="100",
            )
    for width in ("59.68", "59.69", "119.2", "119.4"):
        for rise in ("0.25", "0.5"):
            add(
                "step",
                edition="7-16",
                risk_category="ii",
                ground_snow_psf="20",
                rise_in_12=rise,
                eave_to_ridge_ft=width,
            )
    return made.cases


EXPOSURE = {
    "b": ("0.9", "1.0", "1.2"),
    "c": ("0.9", "1.0", "1.1"),
    "d": ("0.8", "0.9", "1.0"),
    "above-treeline": ("0.7", "0.8", None),
    "alaska-without-trees": ("0.7", "0.8", None),
}


def snow_exposure_factor() -> Iterable[Case]:
    made = Builder("ASCE 7-16 Table 7.3-1, secondary source", kind="printed", tolerance="0")
    for terrain, factors in EXPOSURE.items():
        for shelter, factor in zip(("fully-exposed", "partially-exposed", "sheltered"), factors):
            if factor:
                made.add("ordinary", {"terrain": terrain, "shelter": shelter}, {"exposure_factor": factor})
    return made.cases


def snow_importance() -> Iterable[Case]:
    made = Builder("ASCE 7-16 Table 1.5-2, taken for 7-10 too, secondary source", kind="printed", tolerance="0")
    for edition in EDITIONS:
        for category, factor in IMPORTANCE.items():
            made.add(
                "ordinary",
                {"risk_category": category, "edition": edition},
                {"importance": "1" if edition == "7-22" else factor},
            )
    return made.cases


def snow_thermal_factor() -> Iterable[Case]:
    made = Builder("ASCE 7-16 Table 7.3-2, secondary source; 7-10 from memory", kind="printed", tolerance="0")
    for warmth, factor in (
        ("heated", "1.0"),
        ("just-above-freezing", "1.1"),
        ("cold-ventilated", "1.1"),
        ("unheated", "1.2"),
        ("open-below", "1.2"),
        ("kept-below-freezing", "1.3"),
        ("warm-greenhouse", "0.85"),
    ):
        made.add("ordinary", {"roof_warmth": warmth, "edition": "7-16"}, {"thermal_factor": factor})
    made.add(
        "ordinary",
        {"roof_warmth": "cold-ventilated", "edition": "7-22"},
        {"thermal_factor": "1.2"},
        source="ASCE 7-22 7.3.2, secondary source",
    )
    return made.cases


FUNCTIONS = {
    "roof_snow": roof_snow,
    "minimum_snow": minimum_snow,
    "rain_on_snow": rain_on_snow,
    "snow_exposure_factor": snow_exposure_factor,
    "snow_importance": snow_importance,
    "snow_thermal_factor": snow_thermal_factor,
}
