"""What screws hold in rafters and in panels: NDS 2018 sections 12.2.1 and 12.2.2 with their factors."""

from __future__ import annotations

from typing import Callable, Iterable, Mapping

from mpmath import mpf

from arithmetic import number
from case_file import Builder, Case, Value
from precise import grid
from withdrawal import LAG, SCREW, SCREWS, hot, of_lag, of_screw
from wood import DURATION


def wet_screw(moisture: str) -> mpf:
    """C_M of screws pulled out, NDS Table 11.3.3: 0.7 in wet service."""
    return number("0.7") if moisture in ("gets-wet-later", "stays-wet") else mpf(1)


def screw_factors(row: Mapping[str, Value]) -> mpf:
    moisture = row["moisture"]
    wet = moisture in ("gets-wet-later", "stays-wet")
    return (
        number(DURATION[row.get("load_duration", "ten-minutes")])
        * wet_screw(moisture)
        * hot(row.get("temperature_f", "70"), wet)
    )


def screw_resistance() -> Iterable[Case]:
    made = Builder("")
    forms: Mapping[str, tuple[Callable[..., mpf], str]] = {"wood-screw": (of_screw, SCREW), "lag-screw": (of_lag, LAG)}

    def add(class_: str, **row: Value) -> None:
        of, source = forms[row["screw_kind"]]
        thread = min(
            number(row["length_in"]) - number(row["thickness_in"]) - number(row.get("shim_in", "0")),
            number(row["thread_in"]),
        )
        thread -= number(row.get("tip_in", "0"))
        made.add(
            class_,
            row,
            {
                "thread_held_in": thread,
                "resistance_lb": of(row["specific_gravity"], row["diameter_in"]) * thread * screw_factors(row),
            },
            source=f"{source}; factors of Tables 2.3.2, 11.3.3, 11.3.4 from memory",
        )

    for row in grid(
        screw_kind=tuple(forms),
        diameter_in=("0.19", "0.25"),
        length_in=("3",),
        thread_in=("2",),
        specific_gravity=("0.42", "0.5"),
        thickness_in=("0.4375", "0.75"),
        moisture=("stays-dry", "dries-later", "gets-wet-later", "stays-wet"),
        tip_in=("0", "0.1875"),
    ):
        add("ordinary", **row)
    lag = {
        "screw_kind": "lag-screw",
        "diameter_in": "0.5",
        "length_in": "4",
        "thread_in": "2.5",
        "specific_gravity": "0.55",
        "thickness_in": "1.5",
        "tip_in": "0.3125",
    }
    for degrees in ("0", "100", "100.1", "125", "125.1", "150"):
        for moisture in ("stays-dry", "stays-wet"):
            add("step", **lag, moisture=moisture, temperature_f=degrees)
    for thread in ("2.49", "2.5", "2.51"):
        add("governing", **(lag | {"thread_in": thread}), moisture="stays-dry")
    for length, shim in (("0.5", "0"), ("16", "3"), ("16", "0")):
        add(
            "end",
            screw_kind="wood-screw",
            diameter_in="0.1",
            length_in=length,
            thread_in="0.25",
            specific_gravity="0.2",
            thickness_in="0.05",
            shim_in=shim,
            moisture="stays-dry",
        )
    made.add(
        "ordinary",
        lag | {"moisture": "stays-dry", "load_duration": "ten-years"},
        {"resistance_lb": "955.0"},
        kind="worked",
        tolerance="0",
        within="0.5",
        source="a wood association's example E2.3: 1/2 x 4 lag, 955.0 lb, secondary source",
    )
    return made.cases


def panel_screw_withdrawal() -> Iterable[Case]:
    made = Builder(f"{SCREW}; used on a panel: common practice, no source")

    def add(class_: str, **row: Value) -> None:
        thread = number(row["thickness_in"]) - number(row.get("point_in", "0"))
        made.add(
            class_,
            row,
            {"resistance_lb": of_screw(row["specific_gravity"], row["diameter_in"]) * thread * screw_factors(row)},
        )

    for row in grid(
        specific_gravity=("0.42", "0.5"),
        thickness_in=("0.4375", "0.46875", "0.59375"),
        diameter_in=("0.164", "0.19", "0.216", "0.242"),
        moisture=("stays-dry",),
    ):
        add("ordinary", **row)
    deck = {"specific_gravity": "0.5", "thickness_in": "0.4375", "diameter_in": "0.19"}
    for degrees in ("0", "100", "100.1", "125", "125.1", "150"):
        add("step", **deck, moisture="dries-later", temperature_f=degrees)
    for duration in DURATION:
        add("ordinary", **deck, moisture="stays-dry", load_duration=duration)
    for gravity, thickness, diameter, point in (
        ("0.2", "0.05", "0.05", "0"),
        ("0.8", "3", "0.5", "1"),
        ("0.5", "0.4375", "0.19", "0.25"),
        ("0.5", "0.4375", "0.19", "0.125"),
    ):
        add(
            "end",
            specific_gravity=gravity,
            thickness_in=thickness,
            diameter_in=diameter,
            point_in=point,
            moisture="stays-dry",
        )
    return made.cases


def screw_dimensions() -> Iterable[Case]:
    made = Builder(
        "NDS 2018 Appendix L, from memory; diameters of #8, #10 and #12 secondary source", kind="printed", tolerance="0"
    )
    for screw, sizes in SCREWS.items():
        made.add(
            "ordinary", {"screw": screw}, dict(zip(("diameter_in", "root_diameter_in", "head_diameter_in"), sizes))
        )
    return made.cases


def panel_gravity() -> Iterable[Case]:
    made = Builder("NDS 2018 Table 12.3.3B, from memory", kind="printed", tolerance="0")
    for panel, gravity in (("structural-1-plywood", "0.50"), ("other-plywood", "0.42"), ("any-osb", "0.50")):
        made.add("ordinary", {"panel": panel}, {"specific_gravity": gravity})
    return made.cases


FUNCTIONS = {
    "screw_resistance": screw_resistance,
    "panel_screw_withdrawal": panel_screw_withdrawal,
    "screw_dimensions": screw_dimensions,
    "panel_gravity": panel_gravity,
}
