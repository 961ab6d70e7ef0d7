"""Which size of sister is the cheapest that passes, and the span that counts above a strut."""

from __future__ import annotations

from typing import Iterable

from arithmetic import number
from case_file import Builder, Case, Value
from precise import grid
from sisters import paired
from wood import DURATION, SIZES, SUPPLEMENT, Wood, repetitive


def sister_sizes() -> Iterable[Case]:
    made = Builder(f"shares by E I, each size as a pair; {SUPPLEMENT}")

    def add(class_: str, **row: Value) -> None:
        ratios, ranks, prices = {}, {}, {size: number(row.get(f"price_{size}_usd", "0")) for size in SIZES}
        for size in SIZES:
            wood = Wood(row["sister_species"], row["sister_grade"], size)
            bending = wood.fb * number(DURATION[row["load"]]) * wood.size_factor * repetitive(row["spacing_in"])
            found = paired(
                dict(row) | {"sister_size": size, "sister_bending_psi": bending, "sister_modulus_psi": wood.e}
            )
            ratios[size] = max(found["rafter_ratio"], found["sister_ratio"], found["sag_ratio"])
        passing = [size for size in SIZES if ratios[size] <= 1 and prices[size] > 0]
        for size in passing:
            ranks[size] = 1 + sum(prices[other] < prices[size] for other in passing)
        cheapest = next((size for size in passing if ranks[size] == 1), None)
        made.add(
            class_,
            row,
            {
                "alone_ratio": found["alone_ratio"],
                "cheapest": cheapest or "none passes",
                "cheapest_usd": prices[cheapest] if cheapest else None,
            }
            | {f"ratio_{size}": ratios[size] for size in SIZES}
            | {f"rank_{size}": ranks.get(size) for size in SIZES},
        )

    house = {
        "rafter_bending_psi": "1006",
        "spacing_in": "16",
        "dead_psf": "10",
        "existing_psf": "4",
        "price_2x4_usd": "6.5",
        "price_2x6_usd": "9.8",
        "price_2x8_usd": "13.25",
        "price_2x10_usd": "19",
        "price_2x12_usd": "26",
    }
    for row in grid(
        rafter_depth_in=("3.625", "5.5"),
        sister_species=("hem-fir", "southern-pine"),
        sister_grade=("no-1", "no-2"),
        load=("roof-live", "snow"),
        span_ft=("10", "13.5"),
        live_psf=("30",),
    ):
        add("ordinary", **house, **row)
    base = house | {
        "rafter_depth_in": "5.5",
        "sister_species": "spruce-pine-fir",
        "sister_grade": "no-2",
        "load": "snow",
        "span_ft": "13",
        "live_psf": "40",
    }
    for row in (
        {"price_2x8_usd": "9.8"},
        {"price_2x8_usd": "0"},
        {"price_2x10_usd": "5"},
        {"live_psf": "300"},
        {"live_psf": "1"},
        {"span_ft": "40"},
        {"span_ft": "1"},
        {"jacked": "yes"},
        {"deflection_limit": "480"},
        {"deflection_limit": "120"},
        {"spacing_in": "24.01"},
        {"spacing_in": "24"},
        {"existing_psf": "0"},
        {"existing_psf": "10"},
    ):
        add("governing", **(base | row))
    return made.cases


def strutted_span() -> Iterable[Case]:
    made = Builder("IRC 2021 R802.4.5, from memory: the span between supports, if the strut stands on a bearing wall")

    def add(class_: str, span: str, strut: str, stands: str) -> None:
        length, at = number(span), number(strut)
        made.add(
            class_,
            {"span_ft": span, "strut_ft": strut, "strut_on_bearing_wall": stands},
            {"counted_span_ft": max(at, length - at) if stands == "yes" and at else length},
        )

    for row in ((l, s, w) for l in ("12", "16.5") for s in ("5", "7.25", "9") for w in ("yes", "no", "unknown")):
        add("ordinary", *row)
    for row in (
        ("1", "0", "yes"),
        ("40", "0", "no"),
        ("40", "20", "yes"),
        ("40", "19.99", "yes"),
        ("40", "20.01", "yes"),
        ("16", "16", "yes"),
        ("16", "0", "unknown"),
        ("1", "0.5", "yes"),
        ("40", "40", "yes"),
        ("40", "0.01", "yes"),
    ):
        add("end", *row)
    return made.cases


FUNCTIONS = {"sister_sizes": sister_sizes, "strutted_span": strutted_span}
