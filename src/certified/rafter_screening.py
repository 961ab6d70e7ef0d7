"""All that is asked of an old rafter: combinations, creep, seat and notch with the deck on, stability with the deck off.

Beams on the horizontal projection, NDS 2018 chapters 3 and 4; rafter ties above the plate shorten the span that is good by
the factors of IRC 2021 R802.4.1.
"""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import atan, mpf, sin, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws
from design_values import temperature_factors, wet_factors
from precise import grid
from rafters import line_load, woods
from wood import DURATION, SUPPLEMENT, Wood, effective_length, repetitive, stability

SOURCE = f"NDS 2018 ch. 3 and 4, {SUPPLEMENT}; notch, creep and framing of 35 pcf from memory or common practice"
COMBINATIONS = {
    "dead": ("permanent", ()),
    "roof_live": ("roof-live", ("roof_live_psf",)),
    "snow": ("snow", ("snow_psf",)),
}
TOTAL_LIMIT = {"180": "120", "240": "180", "360": "240"}


class Stick:
    """A stick as it serves: adjusted values without duration, in psi, and its loads in pounds for each inch."""

    def __init__(self, row: Mapping[str, Value]) -> None:
        self.wood = wood = Wood(row["species"], row["grade"], row["size"], row["value_set"])
        wet, (hot, hot_modulus) = wet_factors(wood, row["moisture"]), temperature_factors(
            row.get("temperature_f", "70"), row["moisture"]
        )
        cut, cut_modulus = (number("0.8"), number("0.95")) if row.get("incised") == "yes" else (mpf(1), mpf(1))
        self.single = wood.fb * wood.size_factor * wet["bending"] * hot * cut
        self.bending = self.single * repetitive(row["spacing_in"])
        self.shear = wood.fv * wet["shear"] * hot * cut
        self.modulus = wood.e * wet["modulus"] * hot_modulus * cut_modulus
        self.min_modulus = wood.emin * wet["modulus"] * hot_modulus * cut_modulus
        seat, end = number(row.get("bearing_in", "1.5")), number(row.get("end_distance_in", "0"))
        area = (seat + number("0.375")) / seat if seat < 6 and end >= 3 else mpf(1)
        self.bearing, self.seat = wood.fc_perp * wet["bearing"] * hot * area, seat
        self.length, self.slope = number(row["span_ft"]) * 12, number(row.get("rise_in_12", "3")) / 12
        self.loads = {
            name: line_load(row["spacing_in"], row["dead_psf"], *(row[column] for column in columns))
            for name, (_, columns) in COMBINATIONS.items()
        }


TIE_FACTORS = (("1/7.5", "1"), ("1/6", "0.9"), ("1/5", "0.83"), ("1/4", "0.76"), ("1/3", "0.67"))


def tie_factor(row: Mapping[str, Value]) -> mpf:
    """The part of a tabulated span that is good where the ties stand higher: IRC 2021 R802.4.1, the next printed height."""
    part = number(row.get("tie_height_in", "0")) / height(row)
    for printed_part, factor in TIE_FACTORS:
        over, under = printed_part.split("/")
        if part <= number(over) / number(under):
            return number(factor)
    raise ValueError("ties above the lower third are no case")


def height(row: Mapping[str, Value]) -> mpf:
    """H_R from plate to ridge, in inches."""
    return number(row["span_ft"]) * number(row.get("rise_in_12", "3"))


def notch_of(row: Mapping[str, Value], stick: Stick) -> mpf:
    """The notch as it is known, or the seat's own depth across the slope where that is more and nobody measured it."""
    told = number(row.get("notch_in", "0"))
    return told if row.get("notch_known") == "measured" else max(told, stick.seat * sin(atan(stick.slope)))


def deck_on(row: Mapping[str, Value]) -> dict[str, mpf]:
    """Ten ratios with the deck on, and the span at which the first that goes by it reaches 1."""
    stick = Stick(row)
    wood, length = stick.wood, stick.length
    tied = length / tie_factor(row)
    notch = notch_of(row, stick)
    left, ratios = wood.d - notch, {}
    for name, (duration, _) in COMBINATIONS.items():
        w, lasting = stick.loads[name], number(DURATION[duration])
        ratios[f"{name}_bending_ratio"] = w * tied**2 / 8 / wood.modulus / (stick.bending * lasting)
        ratios[f"{name}_shear_ratio"] = (
            3 * (w * length / 2) / (2 * wood.b * left) * (wood.d / left) ** 2 / (stick.shear * lasting)
        )
    live = max(line_load(row["spacing_in"], row["roof_live_psf"]), line_load(row["spacing_in"], row["snow_psf"]))
    asked = row["deflection_limit"] if stick.slope > mpf(1) / 4 or row["deflection_limit"] == "360" else "240"
    limit = number(asked)
    creep = number("1.5") if row.get("seasoned") == "yes" and row["moisture"] == "stays-dry" else mpf(2)

    def sag(w: mpf, divisor: mpf) -> mpf:
        return 5 * w * tied**4 / (384 * stick.modulus * wood.inertia) / (tied / divisor)

    total = row.get("total_deflection_limit", "0")
    total = number(TOTAL_LIMIT[asked] if total == "0" else total)
    most = max(stick.loads.values())
    ratios |= {
        "deflection_ratio": sag(live, limit),
        "total_deflection_ratio": sag(live + creep * stick.loads["dead"], total),
        "bearing_ratio": most * length / (2 * wood.b * stick.seat) / stick.bearing,
        "notch_ratio": notch / (wood.d / 4),
    }
    return ratios


def longest(row: Mapping[str, Value], ratios: Mapping[str, mpf]) -> mpf:
    """Bending grows with the square of the span, sag with its cube, shear and bearing with itself; in feet."""
    power = {"bending": 2, "deflection": 3, "shear": 1, "bearing_ratio": 1}
    reach = [
        number(row["span_ft"]) * ratio ** (-mpf(1) / next(n for word, n in power.items() if word in name))
        for name, ratio in ratios.items()
        if name != "notch_ratio" and ratio
    ]
    return min(reach) if ratios["notch_ratio"] <= 1 else mpf(0)


def deck_off(row: Mapping[str, Value]) -> dict[str, Value]:
    """Bending without C_r and with C_L under the rafter, what hangs from it, and an even load or one person in the middle."""
    stick = Stick(row)
    wood, tied, slant = stick.wood, stick.length / tie_factor(row), sqrt(1 + stick.slope**2)
    framing = wood.b * wood.d / 144 * 35 / (number(row["spacing_in"]) / 12) * slant
    dead = framing + min(number(row.get("hung_psf", "100")), number(row["dead_psf"]))
    star = stick.single * number(DURATION["roof-live"])

    def used(person: mpf) -> mpf:
        """The part of F_b* S that the worse of both loads takes."""
        even = line_load(row["spacing_in"], dead, row.get("deck_off_live_psf", "20")) * tied**2 / 8
        stacked = line_load(row["spacing_in"], dead, row.get("stack_psf", "0")) * tied**2 / 8 + person * tied / 4
        return max(even, stacked) / (star * wood.modulus)

    person = number(row.get("person_lb", "250"))
    whole = stick.length * slant
    unbraced = min(number(row.get("brace_spacing_in", "0")) or whole, whole)
    slenderness = sqrt(effective_length(unbraced, wood.d) * wood.d) / wood.b
    bending = used(person) / stability(slenderness, star, stick.min_modulus)[1]
    return {
        "deck_off_dead_psf": dead,
        "deck_off_bending_ratio": bending,
        "deck_off_slenderness_ratio": slenderness / 50,
        "deck_off_ok": bending <= 1 and slenderness <= 50,
        "deck_off_brace_in": bracing(stick, star, used(person)),
        "deck_off_plank_brace_in": bracing(stick, star, used(person / 2)),
    }


def bracing(stick: Stick, star: mpf, factor: mpf) -> mpf:
    """The unbraced length at which C_L is a given factor, eq. 3.3-6 and Table 3.3.3 turned round; R_B 50 at most; 0 where even 1 is too little."""
    if factor >= 1:
        return mpf(0)
    f = (factor - number("0.95") * factor**2) / (1 - factor)
    slenderness_squared = min(number("1.2") * stick.min_modulus / (f * star), mpf(2500))
    effective = slenderness_squared * stick.wood.b**2 / stick.wood.d
    short = effective / number("2.06")
    return short if short < 7 * stick.wood.d else (effective - 3 * stick.wood.d) / number("1.63")


def rafter_screening() -> Iterable[Case]:
    made = Builder(SOURCE)

    def add(class_: str, **row: Value) -> None:
        stick, ratios = Stick(row), deck_on(row)
        raised = 1 - number(row.get("tie_height_in", "0")) / height(row)
        thrust = max(stick.loads.values()) * stick.length / (2 * stick.slope) / raised
        made.add(
            class_,
            row,
            ratios
            | {"ok": max(ratios.values()) <= 1, "longest_span_ft": longest(row, ratios)}
            | deck_off(row)
            | {"thrust_lb": thrust},
        )

    random = draws("rafter_screening")
    service = list(
        grid(
            spacing_in=("16", "24"),
            span_ft=("8.5", "12"),
            rise_in_12=("3", "6"),
            dead_psf=("8", "15"),
            roof_live_psf=("16", "20"),
            snow_psf=("0", "35"),
            bearing_in=("1.5", "3.5"),
            notch_in=("0", "1.25"),
            notch_known=("measured", "unknown"),
            seasoned=("yes", "no"),
            deflection_limit=("180", "240"),
            moisture=("stays-dry", "stays-wet"),
            temperature_f=("70", "120"),
            incised=("no", "yes"),
            brace_spacing_in=("48",),
            end_distance_in=("0", "4"),
        )
    )
    for stick in woods():
        add("ordinary", **stick, **random.choice(service))
    house = {
        "species": "douglas-fir-larch",
        "grade": "no-2",
        "size": "2x8",
        "value_set": "nds2018",
        "spacing_in": "16",
        "span_ft": "12",
        "rise_in_12": "8",
        "dead_psf": "10",
        "roof_live_psf": "20",
        "snow_psf": "30",
        "deflection_limit": "180",
        "moisture": "stays-dry",
        "brace_spacing_in": "48",
    }
    for tie in ("0", "12.79", "12.81", "15.99", "16.01", "19.19", "19.21", "23.99", "24.01", "31.99"):
        add("step", **house, tie_height_in=tie)
    for row in (
        {"hung_psf": "0"},
        {"hung_psf": "5"},
        {"deck_off_live_psf": "60"},
        {"deck_off_live_psf": "100"},
        {"person_lb": "1000"},
        {"stack_psf": "10"},
        {"stack_psf": "100"},
        {"brace_spacing_in": "0"},
        {"brace_spacing_in": "24"},
        {"brace_spacing_in": "96"},
        {"rise_in_12": "24"},
        {"rise_in_12": "1"},
        {"span_ft": "1"},
        {"span_ft": "40"},
    ):
        add("governing", **(house | row))
    for rise in ("2.99", "3", "3.01"):
        for limit in ("180", "240", "360"):
            add("step", **(house | {"rise_in_12": rise, "deflection_limit": limit}))
    for row in (
        {"notch_in": "1.8124"},
        {"notch_in": "1.8126"},
        {"notch_in": "1.9"},
        {"total_deflection_limit": "60"},
        {"total_deflection_limit": "360"},
        {"temperature_f": "150"},
        {"incised": "yes"},
        {"snow_psf": "300"},
        {"dead_psf": "0"},
        {"dead_psf": "100"},
    ):
        add("step", **({"notch_known": "measured"} | house | row))
    return made.cases


FUNCTIONS = {"rafter_screening": rafter_screening}
