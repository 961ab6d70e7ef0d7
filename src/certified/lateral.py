"""What one nail carries across its length: the six yield modes of NDS 2018 Table 12.3.1A in single shear, and toe-nails."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import floor, mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import TESTS, grid, printed
from wood import DURATION

SOURCE = "NDS 2018 12.3.1, Tables 12.3.1A, 12.3.1B, 12.3.3, secondary source"
NAMES = ("diameter_in", "length_in", "side_thickness_in", "side_gravity", "main_gravity", "bending_yield_psi")


def bearing(gravity: Value) -> mpf:
    """F_e = 16600 G^1.84 to the nearest 50 psi, as Table 12.3.3 prints it, for nails under 1/4 in."""
    return floor(16600 * number(gravity) ** number("1.84") / 50 + mpf(1) / 2) * 50


def modes(row: Mapping[str, Value]) -> dict[str, mpf]:
    """All six, each over R_d; the tip of 2 D bears by half, so that l_m = p - D (12.3.5)."""
    d, length, ls = (number(row[name]) for name in NAMES[:3])
    fes, fem, fyb = bearing(row["side_gravity"]), bearing(row["main_gravity"]), number(row["bending_yield_psi"])
    lm = length - ls - d
    rd = number("2.2") if d <= number("0.17") else 10 * d + number("0.5")
    re, rt = fem / fes, lm / ls
    k1 = (sqrt(re + 2 * re**2 * (1 + rt + rt**2) + rt**2 * re**3) - re * (1 + rt)) / (1 + re)
    k2 = -1 + sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * d**2 / (3 * fem * lm**2))
    k3 = -1 + sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * d**2 / (3 * fem * ls**2))
    return {
        "Im": d * lm * fem / rd,
        "Is": d * ls * fes / rd,
        "II": k1 * d * ls * fes / rd,
        "IIIm": k2 * d * lm * fem / (1 + 2 * re) / rd,
        "IIIs": k3 * d * ls * fem / (2 + re) / rd,
        "IV": d**2 / rd * sqrt(2 * fem * fyb / (3 * (1 + re))),
    }


def least(row: Mapping[str, Value]) -> dict[str, Value]:
    found = modes(row)
    mode = min(found, key=found.__getitem__)
    return {"lateral_lb": found[mode], "mode": mode}


def holds(row: Mapping[str, Value]) -> bool:
    """Whether the point reaches 6 diameters, without which the code gives nothing."""
    return number(row["length_in"]) - number(row["side_thickness_in"]) >= 6 * number(row["diameter_in"])


def nail_lateral() -> Iterable[Case]:
    made = Builder(SOURCE)

    def add(class_: str, row: Mapping[str, Value]) -> None:
        if holds(row):
            made.add(class_, row, least(row))

    nails = (
        ("0.113", "2", "100000"),
        ("0.131", "2.5", "100000"),
        ("0.131", "3", "100000"),
        ("0.148", "3", "90000"),
        ("0.162", "3.5", "90000"),
        ("0.192", "4", "80000"),
    )
    for nail, side, main in (
        (n, s, m)
        for n in nails
        for s in (("0.4375", "0.5"), ("0.75", "0.42"), ("1.5", "0.5"))
        for m in ("0.36", "0.5", "0.55")
    ):
        add("ordinary", dict(zip(NAMES, (nail[0], nail[1], *side, main, nail[2]))))
    for row in grid(
        diameter_in=("0.05", "0.24"),
        length_in=("8",),
        side_thickness_in=("0.1", "4"),
        side_gravity=("0.2", "0.8"),
        main_gravity=("0.2", "0.8"),
        bending_yield_psi=("30000", "250000"),
    ):
        add("end", row)
    _every_mode(add)
    _printed_values(made)
    for diameter in ("0.1699", "0.17", "0.1701"):
        add("step", dict(zip(NAMES, (diameter, "3.5", "1.5", "0.5", "0.5", "90000"))))
    for gravity in ("0.4995", "0.5", "0.5005", "0.501", "0.502", "0.503", "0.505"):
        add("step", dict(zip(NAMES, ("0.148", "3", "1.5", gravity, "0.5", "90000"))))
    for length in ("2.388", "2.3881", "2.4"):
        add("end", dict(zip(NAMES, ("0.148", length, "1.5", "0.5", "0.5", "90000"))))
    return made.cases


def _every_mode(add) -> None:
    """Three drawn nails of each mode, and each change of mode over the side's thickness, on both sides of the change."""
    random, wanted = draws("nail_lateral"), {name: 0 for name in ("Im", "Is", "II", "IIIm", "IIIs", "IV")}
    for _ in range(20000):
        row = dict(
            zip(
                NAMES,
                (
                    str(random.randint(50, 240) / 1000),
                    str(random.randint(5, 60) / 10),
                    str(random.randint(10, 300) / 100),
                    str(random.randint(20, 80) / 100),
                    str(random.randint(20, 80) / 100),
                    str(random.randint(30, 250) * 1000),
                ),
            )
        )
        if holds(row):
            mode = least(row)["mode"]
            if wanted[mode] < 4:
                wanted[mode] += 1
                add("governing", row)
                _change(add, row, mode)
        if min(wanted.values()) == 4:
            return
    raise RuntimeError(f"a mode was not met: {wanted}")


def _change(add, row: Mapping[str, Value], mode: str) -> None:
    """Halves the way in side thickness to where the mode changes, and keeps the two neighbors."""
    low = int(round(float(row["side_thickness_in"]) * 1_000_000))
    high = low
    while high < 3_000_000:
        high += 50_000
        there = row | {"side_thickness_in": str(high / 1_000_000)}
        if not holds(there):
            return
        if least(there)["mode"] != mode:
            break
    else:
        return
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (
            (middle, high)
            if least(row | {"side_thickness_in": str(middle / 1_000_000)})["mode"] == mode
            else (low, middle)
        )
    for at in (low, high):
        add("governing", row | {"side_thickness_in": str(at / 1_000_000)})


def _printed_values(made: Builder) -> None:
    """NDS Table 12N: both members alike, p = 10 D."""
    for line in printed(TESTS / "fastening" / "strength" / "nds-table-12n.csv"):
        length = number(line["side_thickness_in"]) + 10 * number(line["diameter_in"])
        row = dict(
            zip(
                NAMES,
                (
                    line["diameter_in"],
                    f"{float(length):.6g}",
                    line["side_thickness_in"],
                    line["specific_gravity"],
                    line["specific_gravity"],
                    line["bending_yield_psi"],
                ),
            )
        )
        off = abs(least(row)["lateral_lb"] - number(line["printed_lb"]))
        if off <= number("0.5"):
            made.add(
                "edge",
                row,
                {"lateral_lb": line["printed_lb"]},
                kind="printed",
                tolerance="0",
                within="0.500000001",
                source=f"NDS 2018 Table 12N (11N in 2005), {line['mark']}",
            )
        else:
            made.add("edge", row, least(row), source="known disagreement with NDS 2018 Table 12N")


def toe_nail() -> Iterable[Case]:
    made = Builder("NDS 2018 12.1.5.7, 12.5.4 and commentary: 30 degrees, L/3 from the end, secondary source")

    def add(class_: str, length: str, side: str) -> None:
        long, third = number(length), number(length) / 3
        slant = sqrt(mpf(3)) / 2
        made.add(
            class_,
            {"length_in": length, "side_thickness_in": side},
            {
                "side_bearing_in": min(number(side), third),
                "main_bearing_in": long * slant - third,
                "penetration_in": long - third / slant,
                "lateral_factor": number("0.83"),
                "withdrawal_factor": number("0.67"),
            },
        )

    for row in ((n, s) for n in ("2", "2.375", "2.5", "3", "3.25", "3.5", "4") for s in ("0.75", "1.5")):
        add("ordinary", *row)
    for row in ((n, s) for n in ("1", "8") for s in ("0.5", "4")):
        add("end", *row)
    for length in ("4.499", "4.5", "4.501", "2.249", "2.25", "2.251"):
        for side in ("1.5", "0.75"):
            add("governing", length, side)
    for length, main, deep in (("2.5", "1.332", "1.538"), ("3.5", "1.864", None)):
        made.add(
            "ordinary",
            {"length_in": length, "side_thickness_in": "1.5"},
            {"main_bearing_in": main, "penetration_in": deep},
            kind="worked",
            tolerance="0",
            within="0.0008",
            source="NDS 2018 commentary C12.5.4-1, in a published check, secondary source",
        )
    return made.cases


def adjusted_lateral() -> Iterable[Case]:
    made = Builder("NDS 2018 12.1.6, Tables 2.3.2, 11.3.1, 11.3.3, 12N, secondary source; temperature from memory")

    def add(class_: str, **row: Value) -> None:
        wet_in_service = row["moisture"] in ("gets-wet-later", "stays-wet")
        wet = mpf(1) if row["moisture"] == "stays-dry" else number("0.7")
        at = number(row.get("temperature_f", "70"))
        warm = (
            mpf(1)
            if at <= 100
            else number("0.7" if wet_in_service else "0.8")
            if at <= 125
            else number("0.5" if wet_in_service else "0.7")
        )
        deep = number(row["penetration_in"]) / (10 * number(row["diameter_in"]))
        part = mpf(1) if row.get("penetration_counted") == "yes" else min(mpf(1), deep)
        made.add(
            class_,
            row,
            {
                "adjusted_lb": number(row["lateral_lb"])
                * number(DURATION[row.get("load_duration", "snow")])
                * wet
                * warm
                * part
            },
        )

    for row in grid(
        lateral_lb=("97", "118"),
        penetration_in=("1.2", "1.5"),
        diameter_in=("0.131", "0.148"),
        moisture=("stays-dry", "dries-later", "gets-wet-later", "stays-wet"),
        penetration_counted=("yes", "no"),
    ):
        add("ordinary", **row)
    nail = {"lateral_lb": "118", "penetration_in": "1.5", "diameter_in": "0.148"}
    for duration in DURATION:
        add("ordinary", **nail, moisture="stays-dry", load_duration=duration)
    for degrees in ("0", "100", "100.1", "125", "125.1", "150"):
        for moisture in ("stays-dry", "stays-wet"):
            add("step", **nail, moisture=moisture, temperature_f=degrees)
    for deep in ("0.889", "1.4799", "1.48", "1.4801", "6"):
        add("step", **(nail | {"penetration_in": deep}), moisture="stays-dry")
    for load, diameter in (("1", "0.05"), ("5000", "0.24"), ("1", "0.24"), ("5000", "0.05")):
        add("end", lateral_lb=load, penetration_in="1.5", diameter_in=diameter, moisture="stays-dry")
    made.add(
        "ordinary",
        {
            "lateral_lb": "141",
            "penetration_in": "1.25",
            "diameter_in": "0.162",
            "moisture": "stays-dry",
            "load_duration": "ten-minutes",
        },
        {"adjusted_lb": "174"},
        kind="worked",
        tolerance="0",
        within="0.5",
        source="engineers' list, 2009: 16d, 1.25 of 1.62 in, CD 1.6, 174 lb, secondary source",
    )
    return made.cases


FUNCTIONS = {"nail_lateral": nail_lateral, "toe_nail": toe_nail, "adjusted_lateral": adjusted_lateral}
