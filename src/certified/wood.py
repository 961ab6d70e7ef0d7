"""Sawn lumber: reference values of the NDS Supplement, dressed sizes, factors and adjusted values, beam stability.

Values of Table 4A and 4B as in secondary copies of the 2015, 2018 and 2024 Supplements; Table 4B, the values of
1997 and of southern pine to 2012, and the factors marked so, from memory.
"""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value
from precise import drawn

SIZES = {
    "2x4": ("1.5", "3.5"),
    "2x6": ("1.5", "5.5"),
    "2x8": ("1.5", "7.25"),
    "2x10": ("1.5", "9.25"),
    "2x12": ("1.5", "11.25"),
}
SUPPLEMENT = "NDS 2018 Supplement, secondary source"
GRADES = ("select-structural", "no-1-and-better", "no-1", "no-2", "no-3", "stud")
# species: F_b by grade in the order above, F_v, F_c-perp, E and E_min by grade in thousands of psi
TABLE_4A = {
    "douglas-fir-larch": (
        (1500, 1200, 1000, 900, 525, 700),
        180,
        625,
        (1900, 1800, 1700, 1600, 1400, 1400),
        (690, 660, 620, 580, 510, 510),
    ),
    "hem-fir": (
        (1400, 1100, 975, 850, 500, 675),
        150,
        405,
        (1600, 1500, 1500, 1300, 1200, 1200),
        (580, 550, 550, 470, 440, 440),
    ),
    "spruce-pine-fir": (
        (1250, None, 875, 875, 500, 675),
        135,
        425,
        (1500, None, 1400, 1400, 1200, 1200),
        (550, None, 510, 510, 440, 440),
    ),
    "spruce-pine-fir-south": (
        (1300, None, 875, 775, 450, 600),
        135,
        335,
        (1300, None, 1200, 1100, 1000, 1000),
        (470, None, 440, 400, 370, 370),
    ),
    "hem-fir-north": (
        (1300, 1200, 1000, 1000, 575, 775),
        145,
        405,
        (1700, 1700, 1600, 1600, 1400, 1400),
        (620, 620, 580, 580, 510, 510),
    ),
}
IN_1997 = {
    ("douglas-fir-larch", "select-structural"): 1450,
    ("douglas-fir-larch", "no-2"): 875,
    ("douglas-fir-larch", "no-3"): 500,
    ("hem-fir", "no-1"): 950,
}
# southern pine: F_b by width 4, 6, 8, 10, 12, E and E_min in thousands of psi
TABLE_4B = {
    "select-structural": ((2350, 2100, 1950, 1700, 1600), 1800, 660),
    "no-1": ((1500, 1350, 1250, 1050, 1000), 1600, 580),
    "no-2": ((1100, 1000, 925, 800, 750), 1400, 510),
    "no-3": ((650, 575, 525, 475, 450), 1300, 470),
    "stud": ((650, 575, 525, 475, 450), 1300, 470),
}
PINE_2012 = {
    "select-structural": ((2850, 2550, 2300, 2050, 1900), 1800, 660),
    "no-1": ((1850, 1650, 1500, 1300, 1250), 1700, 620),
    "no-2": ((1500, 1250, 1200, 1050, 975), 1600, 580),
    "no-3": ((850, 750, 700, 600, 575), 1400, 510),
}
SIZE_FACTOR = {"2x4": "1.5", "2x6": "1.3", "2x8": "1.2", "2x10": "1.1", "2x12": "1.0"}
STUD_FACTOR = {"2x4": "1.1", "2x6": "1.0"}
DURATION = {"permanent": "0.9", "ten-years": "1.0", "snow": "1.15", "roof-live": "1.25", "ten-minutes": "1.6"}
REPETITIVE = "1.15"


class Wood:
    """Reference values of one stick, in psi, and its dressed size in inches."""

    def __init__(self, species: str, grade: str, size: str, value_set: str = "nds2018") -> None:
        self.b, self.d = (number(side) for side in SIZES[size])
        self.area, self.modulus = self.b * self.d, self.b * self.d**2 / 6
        self.inertia = self.b * self.d**3 / 12
        if species == "southern-pine":
            values, e, emin = (PINE_2012 if value_set == "southern-pine-2012" else TABLE_4B)[grade]
            self.fb, self.fv, self.fc_perp = values[list(SIZES).index(size)], 175, 565
            self.size_factor = mpf(1)
        else:
            bending, self.fv, self.fc_perp, es, emins = TABLE_4A[species]
            at = GRADES.index(grade)
            e, emin = es[at], emins[at]
            self.fb = IN_1997.get((species, grade), bending[at]) if value_set == "nds1997" else bending[at]
            self.size_factor = number((STUD_FACTOR if grade == "stud" else SIZE_FACTOR)[size])
        self.e, self.emin = mpf(e) * 1000, mpf(emin) * 1000


def repetitive(spacing: Value) -> mpf:
    """C_r = 1.15 where sticks stand no more than 24 in apart, NDS 4.3.9."""
    return number(REPETITIVE) if number(spacing) <= 24 else mpf(1)


def effective_length(unbraced: mpf, depth: mpf) -> mpf:
    """l_e of an even load, NDS Table 3.3.3."""
    return number("2.06") * unbraced if unbraced / depth < 7 else number("1.63") * unbraced + 3 * depth


def stability(slenderness: mpf, fb_star: mpf, emin: mpf) -> tuple[mpf, mpf]:
    """F_bE = 1.20 E_min' / R_B^2 and C_L, NDS eq. 3.3-6."""
    buckling = number("1.2") * emin / slenderness**2
    f = buckling / fb_star
    half = (1 + f) / number("1.9")
    return buckling, half - sqrt(half**2 - f / number("0.95"))


def beam_stability() -> Iterable[Case]:
    made = Builder("NDS 2018 3.3.3 and Table 3.3.3, secondary source; eq. 3.3-6 from memory")

    def add(class_: str, unbraced: str, thickness: str, depth: str, bending: str, emin: str, **other: str) -> None:
        lu, b, d = number(unbraced), number(thickness), number(depth)
        le = effective_length(lu, d)
        slenderness = sqrt(le * d / b**2)
        if slenderness > 50:
            return
        buckling, factor = stability(slenderness, number(bending), number(emin))
        made.add(
            class_,
            dict(
                zip(
                    ("unbraced_in", "thickness_in", "depth_in", "bending_psi", "min_modulus_psi"),
                    (unbraced, thickness, depth, bending, emin),
                )
            ),
            {
                "effective_length_in": le,
                "slenderness": slenderness,
                "buckling_psi": buckling,
                "stability_factor": factor,
            },
            **other,
        )

    for unbraced, (b, d) in ((u, s) for u in ("16", "24", "48", "96") for s in SIZES.values()):
        add("ordinary", unbraced, b, d, "1428.3", "580000")
        add("ordinary", unbraced, b, d, "1006.25", "440000")
    for unbraced in ("50.749", "50.75", "50.751", "38.499", "38.5", "38.501"):
        for depth in ("7.25", "5.5"):
            add("step", unbraced, "1.5", depth, "1242", "580000")
    for unbraced, b, d, bending, emin in (
        ("1", "0.5", "1", "1", "1000"),
        ("600", "24", "60", "10000", "2000000"),
        ("1", "24", "1", "10000", "2000000"),
        ("600", "6", "11.25", "1", "1000"),
        ("1", "24", "60", "1", "2000000"),
    ):
        add(
            "end",
            unbraced,
            b,
            d,
            bending,
            emin,
            tolerance="1e-9",
            source=f"{made.source}; CL is a difference of near numbers here: doubles keep nine digits",
        )
    made.add(
        "ordinary",
        {
            "unbraced_in": "240",
            "thickness_in": "6.75",
            "depth_in": "30",
            "bending_psi": "2400",
            "min_modulus_psi": "690000",
        },
        {"effective_length_in": "481", "slenderness": "17.8"},
        kind="worked",
        tolerance="0.003",
        source="wood design examples, 6.6 (NDS 3.3.3): le 481 in, RB 17.8, secondary source",
    )
    made.add(
        "ordinary",
        {
            "unbraced_in": "48",
            "thickness_in": "1.5",
            "depth_in": "7.25",
            "bending_psi": "1428.3",
            "min_modulus_psi": "580000",
        },
        {"stability_factor": "0.928"},
        kind="worked",
        tolerance="0",
        within="0.001",
        source="2x8 battened at 48 in, worked by hand (NDS 3.3.3)",
    )
    for row in drawn(
        "beam_stability",
        60,
        unbraced=(12, 120, 2),
        thickness=("1.5", "1.625", "2.5", "3"),
        depth=(3.5, 14, 3),
        bending=(500, 3000, 1),
        emin=(400000, 700000, 0),
    ):
        add("ordinary", **row)
    return made.cases


def section_properties() -> Iterable[Case]:
    made = Builder("A = bd, S = bd2/6, I = bd3/12; dressed sizes of PS 20-20, secondary source")

    def add(class_: str, row: Mapping[str, Value], b: str, d: str, **other: str) -> None:
        width, depth = number(b), number(d)
        made.add(
            class_,
            row,
            {
                "actual_thickness_in": width,
                "actual_depth_in": depth,
                "section_sq_in": width * depth,
                "section_modulus_in3": width * depth**2 / 6,
                "second_moment_in4": width * depth**3 / 12,
            },
            **other,
        )

    for size, (b, d) in SIZES.items():
        add("ordinary", {"size": size}, b, d)
        add(
            "ordinary",
            {"size": size, "stock": "full-sawn"},
            size.split("x")[0],
            size.split("x")[1],
            source="full-sawn: the nominal size itself, from memory",
        )
        for thickness, depth in (("1.625", "5.625"), ("6", "24"), ("0.5", "2"), ("1.75", "7.375")):
            add(
                "ordinary" if thickness not in ("6", "0.5") else "end",
                {"size": size, "stock": "measured", "thickness_in": thickness, "depth_in": depth},
                thickness,
                depth,
            )
    table = {
        "2x4": (None, "3.063", "5.359"),
        "2x6": (None, "7.563", "20.80"),
        "2x8": ("10.88", "13.14", "47.63"),
        "2x10": ("13.88", "21.39", "98.93"),
        "2x12": ("16.88", "31.64", "178.0"),
    }
    for size, (area, modulus, inertia) in table.items():
        cells = {
            "section_sq_in": (area, "0.00500001"),
            "section_modulus_in3": (modulus, "0.000500001" if size in ("2x4", "2x6") else "0.00500001"),
            "second_moment_in4": (inertia, {"2x4": "0.0005", "2x12": "0.05"}.get(size, "0.005")),
        }
        for name, (said, half) in cells.items():
            if said:
                made.add(
                    "edge",
                    {"size": size},
                    {name: said},
                    kind="printed",
                    tolerance="0",
                    within=half,
                    source=f"NDS Supplement Table 1B, {name.replace('_', ' ')}, secondary source",
                )
    for row in drawn("section_properties", 70, thickness=(1.25, 4, 4), depth=(3, 14, 4)):
        add(
            "ordinary",
            {"size": "2x6", "stock": "measured", "thickness_in": row["thickness"], "depth_in": row["depth"]},
            row["thickness"],
            row["depth"],
        )
    return made.cases


GRAVITY = {
    "douglas-fir-larch": "0.50",
    "douglas-fir-larch-north": "0.49",
    "hem-fir": "0.43",
    "hem-fir-north": "0.46",
    "southern-pine": "0.55",
    "spruce-pine-fir": "0.42",
    "spruce-pine-fir-south": "0.36",
    "ponderosa-pine": "0.43",
    "eastern-hemlock": "0.41",
    "redwood": "0.37",
    "western-cedars": "0.36",
    "western-woods": "0.36",
}


def wood_gravity() -> Iterable[Case]:
    made = Builder("NDS 2018 Table 12.3.3A, secondary source", kind="printed", tolerance="0")
    for species, gravity in GRAVITY.items():
        made.add("ordinary", {"species": species}, {"specific_gravity": gravity})
    made.add(
        "degenerate",
        {"species": "unknown"},
        {"specific_gravity": min(GRAVITY.values())},
        kind="limit",
        source="wood that nobody knows: the least of the list",
    )
    return made.cases


FUNCTIONS = {"beam_stability": beam_stability, "section_properties": section_properties, "wood_gravity": wood_gravity}
