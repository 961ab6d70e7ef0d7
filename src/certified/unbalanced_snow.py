"""Snow that the wind has carried over the ridge: ASCE 7-16 section 7.6.1, and what 7-22 does otherwise."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import cbrt, mpf, root, sqrt

from arithmetic import number
from case_file import Builder, Case, Value
from precise import grid
from snow import EDITIONS


UNBALANCED = "ASCE 7-16 7.6.1, drift height as in 7-10, density eq. 7.7-1, secondary source"


def drift_height(row: Mapping[str, Value], density: mpf) -> mpf:
    """h_d of 7-10 Fig. 7-9, and of 7-22 eq. 7.6-1; the fetch is W, 20 ft at least."""
    ground, fetch = number(row["ground_snow_psf"]), max(number(row["eave_to_ridge_ft"]), mpf(20))
    if row["edition"] == "7-22":
        wind = number(row.get("winter_wind", "0.65"))
        return number("1.5") * sqrt(ground ** number("0.74") * fetch ** number("0.7") * wind ** number("1.7") / density)
    return number("0.43") * cbrt(fetch) * root(ground + 10, 4) - number("1.5")


def unbalanced(row: Mapping[str, Value]) -> dict[str, Value]:
    """Loads on both sides, the drift, and the case."""
    ground, even_load = number(row["ground_snow_psf"]), number(row["sloped_psf"])
    rise, width = number(row["rise_in_12"]), number(row["eave_to_ridge_ft"])
    density = min(number("0.13") * ground + 14, mpf(30))
    common = {"snow_density_pcf": density, "drift_height_ft": drift_height(row, density)}
    if not number("0.5") <= rise <= 7:
        return common | {
            "windward_psf": even_load,
            "leeward_psf": even_load,
            "drift_surcharge_psf": 0,
            "drift_width_ft": 0,
            "unbalanced_case": "not-asked",
        }
    if width <= 20 and row.get("simple_rafters", "yes") == "yes":
        return common | {
            "windward_psf": 0,
            "leeward_psf": number(row.get("importance", "1")) * ground,
            "drift_surcharge_psf": 0,
            "drift_width_ft": 0,
            "unbalanced_case": "leeward-alone",
        }
    run = sqrt(12 / rise)
    drift = common["drift_height_ft"]
    return common | {
        "windward_psf": number("0.3") * even_load,
        "leeward_psf": even_load,
        "drift_surcharge_psf": drift * density / run,
        "drift_width_ft": min(width, mpf(8) / 3 * drift * run),
        "unbalanced_case": "ridge-drift",
    }


def unbalanced_snow() -> Iterable[Case]:
    made = Builder(UNBALANCED)

    def add(class_: str, **row: Value) -> None:
        said = (
            "ASCE 7-22 7.6.1 and its drift height, secondary source; 0.65 from memory"
            if row["edition"] == "7-22"
            else UNBALANCED
        )
        made.add(class_, row, unbalanced(row), source=said)

    for row in grid(
        edition=EDITIONS,
        ground_snow_psf=("20", "45"),
        sloped_psf=("18",),
        rise_in_12=("3", "6"),
        eave_to_ridge_ft=("14", "33"),
        simple_rafters=("yes", "no"),
    ):
        add("ordinary", **row)
    for row in grid(
        edition=EDITIONS,
        ground_snow_psf=("1", "300"),
        sloped_psf=("0", "300"),
        rise_in_12=("5",),
        eave_to_ridge_ft=("1", "500"),
    ):
        add("end", **row)
    for rise in ("0", "0.499", "0.5", "0.501", "6.999", "7", "7.001", "48"):
        add("step", edition="7-16", ground_snow_psf="30", sloped_psf="25", rise_in_12=rise, eave_to_ridge_ft="30")
    for width in ("19.99", "20", "20.01"):
        for simple in ("yes", "no"):
            add(
                "step",
                edition="7-16",
                ground_snow_psf="30",
                sloped_psf="25",
                rise_in_12="4",
                eave_to_ridge_ft=width,
                simple_rafters=simple,
            )
    for ground in ("123.07", "123.08"):
        add("governing", edition="7-16", ground_snow_psf=ground, sloped_psf="80", rise_in_12="4", eave_to_ridge_ft="40")
    for wind in ("0.2", "0.45", "0.7"):
        add(
            "ordinary",
            edition="7-22",
            ground_snow_psf="50",
            sloped_psf="30",
            rise_in_12="4",
            eave_to_ridge_ft="40",
            winter_wind=wind,
        )
    for importance in ("0.8", "1.1", "1.2"):
        add(
            "ordinary",
            edition="7-16",
            ground_snow_psf="50",
            sloped_psf="30",
            rise_in_12="4",
            eave_to_ridge_ft="16",
            importance=importance,
        )
    made.add(
        "ordinary",
        {
            "edition": "7-10",
            "ground_snow_psf": "30",
            "sloped_psf": "25",
            "rise_in_12": "0.5",
            "eave_to_ridge_ft": "130",
        },
        {"windward_psf": "7.5", "drift_height_ft": "3.97", "snow_density_pcf": "17.9", "drift_surcharge_psf": "14.5"},
        kind="worked",
        tolerance="0.0035",
        source="guide to the snow loads of ASCE 7-10, example 6-2, secondary source",
    )
    return made.cases


FUNCTIONS = {"unbalanced_snow": unbalanced_snow}
