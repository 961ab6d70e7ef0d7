"""Sisters that end short of the supports, sizes of sisters by price, and the strut's span.

A centered sister is held by two groups of nails near each end. Virtual work: a pair of forces R, one up and one down at the
arm s, closes the slip between both pieces but for what the nails give; R (f_rafter + f_sister + 2 / (n k)) = u.
"""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import ceil, mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value
from precise import grid
from sisters import section, uniform

VIRTUAL_WORK = "virtual work on two beams joined by four groups of nails; 6000 lb/in a nail from memory"


class Beam:
    """An old rafter on two supports under an even load, in pounds and inches."""

    def __init__(self, row: Mapping[str, Value]) -> None:
        b, d = number(row.get("rafter_thickness_in", "1.5")), number(row["rafter_depth_in"])
        self.length, self.spacing = number(row["span_ft"]) * 12, row["spacing_in"]
        self.modulus, self.stiffness = b * d**2 / 6, b * d**3 / 12 * number(
            row.get("rafter_modulus_psi", "1400000")
        )
        self.takes = number(row.get("rafter_bending_psi", "0")) * self.modulus
        self.live = number(row["live_psf"])
        self.total = self.live + number(row.get("dead_psf", "0"))

    def moment(self, x: mpf, pressure: mpf) -> mpf:
        return uniform(self.spacing, pressure) * x * (self.length - x) / 2


def area_under(left: mpf, right: mpf, length: mpf, weights: tuple[mpf, mpf]) -> mpf:
    """Integral of x (length - x) / 2 times (p + q x) from left to right."""
    p, q = weights

    def at(x: mpf) -> mpf:
        return (p * length * x**2 / 2 + (q * length - p) * x**3 / 3 - q * x**4 / 4) / 2

    return at(right) - at(left)


def part(row: Mapping[str, Value]) -> dict[str, Value]:
    """Answers of part_sister."""
    beam = Beam(row)
    _, new_modulus, new_inertia = section(row["sister_size"])
    new = new_inertia * number(row.get("sister_modulus_psi", "1400000"))
    half, arm = beam.length / 2, number(row["arm_in"])
    end = half - number(row["sister_length_ft"]) * 6
    outer = end + number(row.get("end_distance_in", "3"))
    inner = outer + arm
    locked = mpf(0) if row.get("jacked") == "yes" else number(row["existing_psf"])
    added = beam.total - locked
    unit = area_under(outer, inner, beam.length, (-outer, mpf(1))) + area_under(inner, half, beam.length, (arm, mpf(0)))
    slack = arm**2 * (half - inner + arm / 3) * (1 / beam.stiffness + 1 / new)

    def rigid(pressure: mpf) -> mpf:
        return uniform(beam.spacing, pressure) * unit / beam.stiffness / slack

    share, each = new / (beam.stiffness + new), number(row["lateral_lb"])
    couple = share * beam.moment(end, beam.total) / arm
    nails = max(3, int(ceil(max(couple, rigid(added)) / each)))
    kept = 1 / (1 + 2 / (nails * number(row.get("nail_stiffness_lb_per_in", "6000")) * slack))
    force = rigid(added) * kept
    turning = min(max(half - force / uniform(beam.spacing, beam.total), outer), inner)
    old_moment = max(
        beam.moment(turning, beam.total) - force * (turning - outer), beam.moment(half, beam.total) - force * arm
    )
    new_moment = max(force * arm, share * beam.moment(half, added))
    taken = (
        rigid(beam.live)
        * kept
        * ((inner**3 / 3 - outer * inner**2 / 2 + outer**3 / 6) + arm * (half**2 - inner**2) / 2)
        / beam.stiffness
    )
    sag = 5 * uniform(beam.spacing, beam.live) * beam.length**4 / (384 * beam.stiffness) - taken
    ratios = {
        "end_ratio": beam.moment(end, beam.total) / (number("0.9") * beam.takes),
        "rafter_ratio": old_moment / beam.takes,
        "sister_ratio": new_moment / (number(row["sister_bending_psi"]) * new_modulus),
        "sag_ratio": sag / (beam.length / number(row.get("deflection_limit", "180"))),
    }
    return (
        {"alone_ratio": beam.moment(half, beam.total) / beam.takes}
        | ratios
        | {
            "sag_in": sag,
            "sister_part": force * arm / beam.moment(half, added),
            "couple_lb": couple,
            "rigid_lb": rigid(added),
            "group_lb": force,
            "group_nails": nails,
            "ok": max(ratios.values()) <= 1,
        }
    )


def part_sister() -> Iterable[Case]:
    made = Builder(VIRTUAL_WORK, tolerance="1e-10")

    def add(class_: str, **row: Value) -> None:
        made.add(class_, row, part(row))

    house = {
        "rafter_bending_psi": "1006",
        "sister_bending_psi": "1350",
        "spacing_in": "16",
        "existing_psf": "4",
        "lateral_lb": "135.7",
        "support_ratio": "0.4",
    }
    for row in grid(
        rafter_depth_in=("5.5", "7.25"),
        sister_size=("2x6", "2x8"),
        span_ft=("13", "15"),
        sister_length_ft=("10.5", "12"),
        arm_in=("18", "30"),
        live_psf=("20", "35"),
        dead_psf=("10",),
    ):
        add("ordinary", **house, **row)
    base = house | {
        "rafter_depth_in": "5.5",
        "sister_size": "2x6",
        "span_ft": "14",
        "sister_length_ft": "12",
        "arm_in": "24",
        "live_psf": "30",
        "dead_psf": "10",
    }
    for row in (
        {"jacked": "yes"},
        {"existing_psf": "0"},
        {"existing_psf": "10"},
        {"end_distance_in": "0"},
        {"end_distance_in": "12"},
        {"nail_stiffness_lb_per_in": "100"},
        {"nail_stiffness_lb_per_in": "1000000"},
        {"sister_length_ft": "14"},
        {"arm_in": "3"},
        {"arm_in": "60"},
        {"lateral_lb": "5000"},
        {"lateral_lb": "20"},
        {"deflection_limit": "480"},
        {"deflection_limit": "120"},
        {"spacing_in": "48"},
        {"spacing_in": "4"},
        {"live_psf": "1"},
        {"rafter_thickness_in": "3"},
        {"rafter_modulus_psi": "100000"},
        {"sister_modulus_psi": "5000000"},
    ):
        add("end", **(base | row))
    return made.cases


def part_sister_reach() -> Iterable[Case]:
    made = Builder("w a (L - a)/2 = 0.9 Fb' S, solved for a; 12 in of nails beyond")

    def add(class_: str, **row: Value) -> None:
        beam = Beam(row)
        alone = beam.moment(beam.length / 2, beam.total) / beam.takes
        if alone <= 1:
            return
        reach = (
            beam.length - sqrt(beam.length**2 - 8 * number("0.9") * beam.takes / uniform(beam.spacing, beam.total))
        ) / 2
        made.add(
            class_,
            row,
            {
                "alone_ratio": alone,
                "reach_in": reach,
                "least_length_ft": (beam.length - 2 * (reach - number(row.get("development_in", "12")))) / 12,
            },
        )

    for row in grid(
        rafter_depth_in=("5.5", "7.25"),
        rafter_bending_psi=("650", "1006.25"),
        span_ft=("13.5", "16"),
        spacing_in=("16", "24"),
        live_psf=("30", "45"),
        dead_psf=("12",),
        support_ratio=("0.5",),
    ):
        add("ordinary", **row)
    base = {
        "rafter_depth_in": "5.5",
        "rafter_bending_psi": "900",
        "span_ft": "14",
        "spacing_in": "24",
        "live_psf": "30",
        "dead_psf": "10",
        "support_ratio": "0.5",
    }
    for row in (
        {"live_psf": "300"},
        {"dead_psf": "100"},
        {"span_ft": "40"},
        {"development_in": "0"},
        {"development_in": "48"},
        {"spacing_in": "48"},
        {"rafter_bending_psi": "50"},
        {"rafter_thickness_in": "0.5"},
        {"rafter_depth_in": "2"},
        {"support_ratio": "0"},
        {"support_ratio": "1"},
    ):
        add("end", **(base | row))
    made.add(
        "ordinary",
        base | {"rafter_depth_in": "7.25", "span_ft": "13", "rafter_bending_psi": "1028.832"},
        {"reach_in": "28.67"},
        kind="worked",
        tolerance="0",
        within="0.02",
        source="Mcap 0.6 of M0, 6.667 lb/in, 156 in: 28.67 in, worked by hand",
    )
    return made.cases


def part_sister_sag() -> Iterable[Case]:
    made = Builder(
        "virtual work on a beam that is stiffer in its middle: 5wL4/384EI + (1/EI1 - 1/EI) w (L a3/6 - a4/8)"
    )

    def add(class_: str, **row: Value) -> None:
        beam = Beam(row)
        both = beam.stiffness + section(row["sister_size"])[2] * number(row.get("sister_modulus_psi", "1400000"))
        w, a, length = (
            uniform(beam.spacing, beam.live),
            beam.length / 2 - number(row["sister_length_ft"]) * 6,
            beam.length,
        )
        least = 5 * w * length**4 / (384 * both) + (1 / beam.stiffness - 1 / both) * w * (
            length * a**3 / 6 - a**4 / 8
        )
        role = "stiffener" if number(row["sister_length_ft"]) >= number("0.6") * number(row["span_ft"]) else "splice"
        made.add(
            class_,
            row,
            {"most_sag_in": 5 * w * length**4 / (384 * beam.stiffness), "least_sag_in": least, "role": role},
        )

    for row in grid(
        rafter_depth_in=("5.5", "7.25"),
        sister_size=("2x6", "2x8"),
        span_ft=("12", "15"),
        spacing_in=("16",),
        live_psf=("20", "40"),
        sister_length_ft=("6.5", "10"),
    ):
        add("ordinary", **row)
    base = {
        "rafter_depth_in": "7.25",
        "sister_size": "2x8",
        "span_ft": "13",
        "spacing_in": "24",
        "live_psf": "40",
        "sister_length_ft": "9.75",
    }
    for row in (
        {"sister_length_ft": "13"},
        {"sister_length_ft": "1"},
        {"live_psf": "1"},
        {"live_psf": "300"},
        {"spacing_in": "4"},
        {"spacing_in": "48"},
        {"rafter_modulus_psi": "100000"},
        {"sister_modulus_psi": "5000000"},
        {"rafter_thickness_in": "6"},
        {"rafter_depth_in": "16"},
        {"rafter_depth_in": "2"},
    ):
        add("end", **(base | row))
    for length in ("7.799", "7.8001"):
        add("step", **(base | {"sister_length_ft": length}))
    for length, said in (("9.75", "0.3449"), ("6.5", "0.3921")):
        made.add(
            "ordinary",
            base | {"sister_length_ft": length, "rafter_modulus_psi": "1600000", "sister_modulus_psi": "1600000"},
            {"most_sag_in": "0.6745", "least_sag_in": said},
            kind="worked",
            tolerance="0",
            within="0.00006",
            source="2x8, 13 ft, 24 in, 40 psf, E 1.6 million, by virtual work, held against a two-beam model",
        )
    return made.cases


FUNCTIONS = {
    "part_sister": part_sister,
    "part_sister_reach": part_sister_reach,
    "part_sister_sag": part_sister_sag,
}
