"""Adjusted design values of sawn lumber: NDS 2018 Table 4.3.1 with the factors of chapters 2, 3 and 4."""

from __future__ import annotations

from typing import Iterable, Mapping

from mpmath import mpf, sqrt

from arithmetic import number
from case_file import Builder, Case, Value, draws
from precise import grid
from rafters import woods
from wood import DURATION, SUPPLEMENT, Wood, effective_length, repetitive, stability

SOURCE = f"NDS 2018 Table 4.3.1, 2.3, 3.3.3, 3.10.4, 4.3; {SUPPLEMENT}; temperature and incising from memory"
FLAT_USE = {"2x4": "1.1", "2x6": "1.15", "2x8": "1.15", "2x10": "1.2", "2x12": "1.2"}
WET_IN_SERVICE = ("gets-wet-later", "stays-wet")


def wet_factors(wood: Wood, moisture: str) -> dict[str, mpf]:
    """C_M of Tables 4A and 4B: 0.85 on bending unless F_b C_F is 1150 psi or less."""
    if moisture not in WET_IN_SERVICE:
        return {"bending": mpf(1), "shear": mpf(1), "bearing": mpf(1), "modulus": mpf(1)}
    bending = mpf(1) if wood.fb * wood.size_factor <= 1150 else number("0.85")
    return {"bending": bending, "shear": number("0.97"), "bearing": number("0.67"), "modulus": number("0.9")}


def temperature_factors(degrees: Value, moisture: str) -> tuple[mpf, mpf]:
    """C_t of Table 2.3.3 for stresses, and for E."""
    at = number(degrees)
    if at <= 100:
        return mpf(1), mpf(1)
    dry = moisture not in WET_IN_SERVICE
    stress = ("0.8" if dry else "0.7") if at <= 125 else ("0.7" if dry else "0.5")
    return number(stress), number("0.9")


def adjusted(row: Mapping[str, Value]) -> dict[str, Value]:
    """Five values and fourteen factors."""
    wood, moisture = Wood(row["species"], row["grade"], row["size"], row["value_set"]), row["moisture"]
    wet, (hot, hot_modulus) = wet_factors(wood, moisture), temperature_factors(row.get("temperature_f", "70"), moisture)
    incised = row.get("incised") == "yes"
    cut, cut_modulus = number("0.8" if incised else 1), number("0.95" if incised else 1)
    duration, repeated = number(DURATION[row["load_duration"]]), repetitive(row["spacing_in"])
    flat = number(FLAT_USE[row["size"]]) if row.get("flatwise") == "yes" else mpf(1)
    emin = wood.emin * wet["modulus"] * hot_modulus * cut_modulus
    star = wood.fb * duration * wet["bending"] * hot * wood.size_factor * cut * repeated
    stable = mpf(1)
    unbraced = number(row.get("unbraced_in", "0"))
    if unbraced:
        stable = stability(sqrt(effective_length(unbraced, wood.d) * wood.d) / wood.b, star, emin)[1]
    seat, end = number(row.get("bearing_in", "1.5")), number(row.get("end_distance_in", "0"))
    area = (seat + number("0.375")) / seat if seat < 6 and end >= 3 else mpf(1)
    return {
        "bending_psi": star * stable * flat,
        "shear_psi": wood.fv * duration * wet["shear"] * hot * cut,
        "bearing_psi": wood.fc_perp * wet["bearing"] * hot * area,
        "modulus_psi": wood.e * wet["modulus"] * hot_modulus * cut_modulus,
        "min_modulus_psi": emin,
        "load_duration_factor": duration,
        "wet_bending_factor": wet["bending"],
        "wet_shear_factor": wet["shear"],
        "wet_bearing_factor": wet["bearing"],
        "wet_modulus_factor": wet["modulus"],
        "temperature_stress_factor": hot,
        "temperature_modulus_factor": hot_modulus,
        "stability_factor": stable,
        "size_factor": wood.size_factor,
        "flat_use_factor": flat,
        "incising_stress_factor": cut,
        "incising_modulus_factor": cut_modulus,
        "repetitive_factor": repeated,
        "bearing_area_factor": area,
    }


def design_values() -> Iterable[Case]:
    made = Builder(SOURCE)

    def add(class_: str, row: Mapping[str, Value], **other: str) -> None:
        made.add(class_, row, adjusted(row), **other)

    random = draws("design_values")
    service = list(
        grid(
            moisture=("stays-dry", "dries-later", "gets-wet-later", "stays-wet"),
            load_duration=tuple(DURATION),
            spacing_in=("16", "24", "32"),
            temperature_f=("70", "110", "140"),
            incised=("yes", "no"),
            flatwise=("no",),
            unbraced_in=("0", "24", "48"),
            bearing_in=("1.5", "3.5"),
            end_distance_in=("0", "4"),
        )
    )
    for stick in woods():
        add("ordinary", stick | random.choice(service))
    stick = {
        "species": "douglas-fir-larch",
        "grade": "no-2",
        "size": "2x8",
        "value_set": "nds2018",
        "load_duration": "snow",
        "spacing_in": "16",
        "moisture": "stays-dry",
    }
    for row in grid(temperature_f=("0", "100", "100.01", "125", "125.01", "150"), moisture=("stays-dry", "stays-wet")):
        add("step", stick | row)
    for spacing, seat, end in (
        ("24", "5.99", "3"),
        ("24.01", "6", "3"),
        ("4", "6.01", "2.99"),
        ("48", "0.5", "240"),
        ("24", "12", "240"),
    ):
        add("step", stick | {"spacing_in": spacing, "bearing_in": seat, "end_distance_in": end})
    for size, grade in (
        ("2x10", "no-1"),
        ("2x6", "no-1"),
        ("2x8", "no-1"),
        ("2x12", "no-1"),
        ("2x8", "select-structural"),
        ("2x4", "no-3"),
    ):
        for species in ("douglas-fir-larch", "hem-fir", "southern-pine"):
            add("governing", stick | {"species": species, "size": size, "grade": grade, "moisture": "stays-wet"})
    for size in FLAT_USE:
        add("ordinary", stick | {"size": size, "flatwise": "yes"})
    for unbraced in ("1", "50.74", "50.75", "50.76", "200"):
        add("step", stick | {"unbraced_in": unbraced})
    _worked(made, stick)
    return made.cases


def _worked(made: Builder, stick: Mapping[str, Value]) -> None:
    """Adjusted values of published homework and lessons, rounded to the psi there."""
    examples = (
        ("no-2", "2x8", "roof-live", "1553", "225", "6.25"),
        ("no-2", "2x10", "roof-live", "1423", "225", "6.25"),
        ("no-1", "2x12", "snow", "1323", "207", "6.27"),
    )
    for grade, size, duration, bending, shear, problem in examples:
        made.add(
            "ordinary",
            stick | {"grade": grade, "size": size, "load_duration": duration, "spacing_in": "24"},
            {"bending_psi": bending, "shear_psi": shear},
            kind="worked",
            tolerance="0",
            within="0.75",
            source=f"a university's timber course, problem {problem}, secondary source",
        )


FUNCTIONS = {"design_values": design_values}
