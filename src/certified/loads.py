"""Roof live load, weights, and the combinations of loads that a rafter is checked for."""

from __future__ import annotations

from typing import Iterable

from mpmath import mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import grid

EDITIONS = ("7-10", "7-16", "7-22")
LIVE = "ASCE 7-16 4.8.2, eq. 4.8-1, secondary source"


def reduced(area: Value, rise: Value) -> mpf:
    """L_r = 20 R1 R2, 12 psf at least."""
    carried, slope = number(area), number(rise)
    by_area = mpf(1) if carried <= 200 else number("1.2") - carried / 1000 if carried < 600 else number("0.6")
    by_slope = mpf(1) if slope <= 4 else number("1.2") - slope / 20 if slope < 12 else number("0.6")
    return max(mpf(12), 20 * by_area * by_slope)


def roof_live_load() -> Iterable[Case]:
    made = Builder(LIVE)

    def add(class_: str, area: str, rise: str, edition: str = "7-16") -> None:
        made.add(
            class_, {"tributary_sf": area, "rise_in_12": rise, "edition": edition}, {"live_psf": reduced(area, rise)}
        )

    for row in grid(area=("28", "150", "240", "325", "410"), rise=("3", "5", "6.5", "8"), edition=EDITIONS):
        add("ordinary", **row)
    for row in grid(area=("0", "100000"), rise=("0", "48")):
        add("end", **row)
    for area in ("199.99", "200", "200.01", "599.99", "600", "600.01"):
        for rise in ("4", "6"):
            add("step", area, rise)
    for rise in ("3.99", "4", "4.01", "11.99", "12", "12.01"):
        for area in ("150", "260"):
            add("step", area, rise)
    for area, rise in (
        ("500", "7.9"),
        ("500", "4"),
        ("399.99", "8"),
        ("400", "8"),
        ("533.3", "6"),
        ("533.4", "5"),
        ("200", "12"),
        ("599", "4"),
        ("333", "7"),
        ("300", "9.333"),
    ):
        add("governing", area, rise)
    for area, rise, live, source in (
        ("260", "0", "18.8", "a university's timber course, problem 2.5: R1 0.94"),
        ("325", "2", "17.5", "a timber course's homework, problem 2.5"),
        ("28", "4", "20", "a university's timber course, problem 6.25"),
        ("150", "5", "19", "a city's permit document on ASCE 7-05 4.9: R2 0.95"),
    ):
        made.add(
            "ordinary",
            {"tributary_sf": area, "rise_in_12": rise, "edition": "7-16"},
            {"live_psf": live},
            kind="worked",
            source=f"{source}, secondary source",
        )
    random = draws("roof_live_load")
    for _ in range(20):
        add("ordinary", str(random.randint(0, 7000) / 10), str(random.randint(0, 140) / 10), random.choice(EDITIONS))
    return made.cases


def code_roof_live() -> Iterable[Case]:
    made = Builder(
        "IRC 2018 Table R301.6, from memory: one of its nine cells was not read", kind="printed", tolerance="0"
    )
    rows = ((("0", "3.99"), (20, 16, 12)), (("4", "11.99"), (16, 14, 12)), (("12", "48"), (12, 12, 12)))
    areas = (("0", "200"), ("200.01", "600"), ("600.01", "100000"))
    for rises, values in rows:
        for (low, high), live in zip(areas, values):
            for area in (low, high):
                for rise in rises:
                    class_ = "end" if area in ("0", "100000") else "edge"
                    made.add(class_, {"tributary_sf": area, "rise_in_12": rise}, {"live_psf": live})
    for area, rise, live in (("120", "3", 20), ("350", "8", 14), ("700", "12", 12)):
        made.add(
            "ordinary",
            {"tributary_sf": area, "rise_in_12": rise},
            {"live_psf": live},
            source="IRC 2018 R301.6 as a model text works it, secondary source",
        )
    return made.cases


COMBINATIONS = "ASCE 7-16 and 7-22 2.4.1, NDS 2018 Table 2.3.2, secondary source"
DURATIONS = {"dead-alone": "0.9", "dead-and-roof-live": "1.25", "dead-and-snow": "1.15", "dead-and-uplift": "1.6"}


def load_combinations() -> Iterable[Case]:
    made = Builder(COMBINATIONS)

    def add(class_: str, dead: str, live: str, snow: str, uplift: str, edition: str) -> None:
        d, s = number(dead), number(snow) * (number("0.7") if edition == "7-22" else 1)
        loads = dict(zip(DURATIONS, (d, d + number(live), d + s, number("0.6") * (d - number(uplift)))))
        lasting = {name: load / number(DURATIONS[name]) for name, load in loads.items()}
        columns = {f"{name.replace('-', '_')}_psf": load for name, load in loads.items()}
        columns |= {f"{name.replace('-', '_')}_by_duration_psf": load for name, load in lasting.items()}
        columns["governs_bending"] = max(lasting, key=lambda name: abs(lasting[name]))
        made.add(
            class_,
            dict(
                zip(
                    ("dead_psf", "roof_live_psf", "snow_psf", "uplift_psf", "edition"),
                    (dead, live, snow, uplift, edition),
                )
            ),
            columns,
        )

    for dead, live, snow, uplift, edition in (
        (d, l, s, w, e)
        for d in ("8", "15.5")
        for l in ("12", "20")
        for s in ("0", "30")
        for w in ("18", "62")
        for e in EDITIONS
    ):
        add("ordinary", dead, live, snow, uplift, edition)
    for dead, live, snow, uplift in (
        ("0", "300", "0", "0"),
        ("200", "0", "0", "0"),
        ("200", "300", "299", "500"),
        ("0", "0", "300", "0"),
        ("0", "0", "0", "500"),
    ):
        for edition in ("7-16", "7-22"):
            add("end", dead, live, snow, uplift, edition)
    for live in ("3.88", "3.89"):
        add("governing", "10", live, "0", "0", "7-16")
    for snow in ("17.59", "17.61"):
        add("governing", "10", "20", snow, "0", "7-16")
    for snow in ("25.14", "25.15"):
        add("governing", "10", "20", snow, "0", "7-22")
    for uplift in ("73.99", "74.01"):
        add("governing", "10", "20", "0", uplift, "7-10")
    for snow in ("2.77", "2.78"):
        add("governing", "10", "0", snow, "0", "7-16")
    add("degenerate", "0", "0", "0", "0", "7-16")
    return made.cases


LAYERS = {
    "asphalt-shingles": "2",
    "wood-shingles": "3",
    "asbestos-cement-shingles": "4",
    "slate-3/16-in": "7",
    "slate-1/4-in": "10",
    "cement-tile": "16",
    "book-tile-2-in": "12",
    "book-tile-3-in": "20",
    "roman-tile": "12",
    "spanish-tile": "19",
    "tile-mortar": "10",
    "three-ply-ready-roofing": "1",
    "four-ply-felt-and-gravel": "5.5",
    "five-ply-felt-and-gravel": "6",
    "single-ply-sheet": "0.7",
    "bituminous-smooth": "1.5",
    "bituminous-gravel": "5.5",
    "copper-or-tin": "1",
    "liquid-applied": "1",
    "corrugated-asbestos-cement": "4",
    "decking-2-in": "5",
    "decking-3-in": "8",
    "fiberboard-1/2-in": "0.75",
    "plaster-on-wood-lath": "8",
    "acoustical-fiberboard": "1",
    "rigid-insulation-1/2-in": "0.75",
    "suspended-steel-channel": "2",
}
BY_THE_INCH = {
    "plywood": "3.2",
    "wood-sheathing": "3",
    "gypsum-board": "4.4",
    "fibrous-glass-insulation": "1.1",
    "polystyrene-foam": "0.2",
}


def layer_load() -> Iterable[Case]:
    made = Builder("ASCE 7-10 Table C3-1, secondary source", kind="printed")
    for material, load in LAYERS.items():
        made.add("ordinary", {"material": material}, {"load_psf": load})
    made.add(
        "ordinary", {"material": "standing-seam"}, {"load_psf": "1.5"}, source="standing seam 1.5 psf, from memory"
    )
    for material, load in BY_THE_INCH.items():
        for thickness in ("0.125", "0.5", "1", "24"):
            made.add(
                "end" if thickness == "24" else "ordinary",
                {"material": material, "thickness_in": thickness},
                {"load_psf": number(load) * number(thickness)},
                kind="independent",
            )
    for material, layers in (("asphalt-shingles", "2"), ("asphalt-shingles", "10"), ("wood-shingles", "3")):
        made.add(
            "ordinary",
            {"material": material, "layers": layers},
            {"load_psf": number(LAYERS[material]) * int(layers)},
            kind="independent",
        )
    made.add(
        "ordinary",
        {"material": "gypsum-board", "thickness_in": "0.625", "layers": "2"},
        {"load_psf": "5.5"},
        kind="independent",
    )
    return made.cases


def framing_load() -> Iterable[Case]:
    made = Builder("b d / spacing x density; 34 pcf is common practice, no source")

    def add(class_: str, thickness: str, depth: str, spacing: str, density: str) -> None:
        made.add(
            class_,
            dict(zip(("thickness_in", "depth_in", "spacing_in", "density_pcf"), (thickness, depth, spacing, density))),
            {"load_psf": number(thickness) * number(depth) / number(spacing) * number(density) / 12},
        )

    for row in (
        (t, d, s, p)
        for t in ("1.5", "1.625")
        for d in ("5.5", "7.25", "9.5")
        for s in ("16", "19.2", "24")
        for p in ("34", "29.5")
    ):
        add("ordinary", *row)
    for row in (("0.5", "2", "4", "15"), ("8", "24", "4", "70"), ("0.5", "2", "120", "15"), ("8", "24", "120", "70")):
        add("end", *row)
    return made.cases


def dead_on_projection() -> Iterable[Case]:
    made = Builder("theorem of Pythagoras")

    def add(class_: str, load: str, rise: str) -> None:
        made.add(
            class_,
            {"slope_load_psf": load, "rise_in_12": rise},
            {"dead_psf": number(load) * sqrt(1 + (number(rise) / 12) ** 2)},
        )

    for load, rise in ((w, p) for w in ("8", "12.25", "20") for p in ("2", "4", "5", "6.5", "8", "9", "12")):
        add("ordinary", load, rise)
    for load, rise in (("0", "0"), ("0", "48"), ("200", "0"), ("200", "48"), ("10", "0.001")):
        add("end", load, rise)
    for load, said in (("12", "12.65"), ("15", "15.81")):
        made.add(
            "ordinary",
            {"slope_load_psf": load, "rise_in_12": "4"},
            {"dead_psf": said},
            kind="worked",
            tolerance="0",
            within="0.005",
            source="a university's timber course, problems 6.25 and 6.27, secondary source",
        )
    return made.cases


FUNCTIONS = {
    "roof_live_load": roof_live_load,
    "code_roof_live": code_roof_live,
    "load_combinations": load_combinations,
    "layer_load": layer_load,
    "framing_load": framing_load,
    "dead_on_projection": dead_on_projection,
}
