"""What screws hold in rafters and in panels: NDS 2018 sections 12.2.1 and 12.2.2 with their factors."""

from __future__ import annotations

from typing import Callable, Iterable, Mapping

from mpmath import mpf

from arithmetic import number
from case_file import Builder, Case, Value
from precise import drawn, grid
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
    for row in drawn(
        "panel_screw_withdrawal",
        65,
        specific_gravity=(0.35, 0.6, 2),
        thickness_in=(0.35, 1.2, 4),
        diameter_in=(0.1, 0.3, 3),
        moisture=("stays-dry", "stays-wet"),
        point_in=(0, 0.3, 3),
    ):
        add("ordinary", **row)
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


NAILS = {
    "6d-common": ("0.113", "2", "0.266"),
    "8d-common": ("0.131", "2.5", "0.281"),
    "10d-common": ("0.148", "3", "0.312"),
    "16d-common": ("0.162", "3.5", "0.344"),
    "6d-box": ("0.099", "2", "0.266"),
    "8d-box": ("0.113", "2.5", "0.297"),
    "10d-box": ("0.128", "3", "0.312"),
    "8d-sinker": ("0.113", "2.375", "0.266"),
    "rsrs-01": ("0.113", "2.375", "0.281"),
    "rsrs-02": ("0.120", "2.5", "0.281"),
    "rsrs-03": ("0.131", "2.5", "0.281"),
    "rsrs-04": ("0.120", "3", "0.281"),
    "rsrs-05": ("0.131", "3", "0.281"),
    "sheathing-2-3/8": ("0.113", "2.375", "0.266"),
}


def nail_dimensions() -> Iterable[Case]:
    """Bending yield by diameter as the footnote of IRC Table R602.3(1) prints it: 100 ksi to 0.142 in, 90 to 0.177."""
    made = Builder(
        "NDS 2018 Appendix L and ASTM F1667, from memory but for IRC Table R602.3(1), read",
        kind="printed",
        tolerance="0",
    )
    for nail, (diameter, length, head) in NAILS.items():
        made.add(
            "ordinary",
            {"nail": nail},
            {
                "diameter_in": diameter,
                "length_in": length,
                "head_diameter_in": head,
                "rings_in": "1.5" if nail.startswith("rsrs") else None,
                "bending_yield_psi": 100000 if number(diameter) <= number("0.142") else 90000,
            },
        )
    return made.cases


def panel_holding_gravity() -> Iterable[Case]:
    """Equivalent gravities of the panel makers' tests; 0.70 of a ring shank belongs to 1380 G^2.5 D, not to 1800 G^2 D."""
    made = Builder("panel makers' 1,900 tests: G 0.40 smooth, 0.70 ring, wet 0.75, read; common practice, no source")
    ring = (1380 * number("0.7") ** number("2.5") / 1800) ** number("0.5")
    for shank, gravity in (("smooth", number("0.4")), ("ring", ring)):
        for moisture in ("stays-dry", "dries-later", "gets-wet-later", "stays-wet"):
            wet = number("1" if moisture == "stays-dry" else "0.75")
            made.add(
                "ordinary",
                {"shank": shank, "moisture": moisture},
                {"specific_gravity": min(gravity, number("0.7")), "wet_use_factor": wet},
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
    "nail_dimensions": nail_dimensions,
    "panel_holding_gravity": panel_holding_gravity,
}
