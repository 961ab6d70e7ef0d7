"""What a firm's own records tell: kept sheets that failed, hours that work took."""

from __future__ import annotations

import math
from fractions import Fraction
from typing import Iterable, Mapping

from mpmath import mp, mpf

from arithmetic import around, exacts, number, share
from case_file import Builder, Case, Value, draws


def clopper_pearson(kept: int, failed: int, confidence: Fraction) -> mpf:
    """The share p at which no more than so many failures have a chance of 1 - confidence: halved to 60 digits.

    P(X <= failed) = sum of C(n, x) p^x (1 - p)^(n - x), which falls as p grows.
    """
    if failed == kept:
        return mpf(1)
    doubt, low, high = number(1 - confidence), mpf(0), mpf(1)
    with mp.workdps(70):
        ways = [math.comb(kept, x) for x in range(failed + 1)]
        for _ in range(220):
            middle = (low + high) / 2
            odds = middle / (1 - middle)
            term, chance = (1 - middle) ** kept, mpf(0)
            for count in ways:
                chance += count * term
                term *= odds
            low, high = (middle, high) if chance > doubt else (low, middle)
    return (low + high) / 2


def fail_rate() -> Iterable[Case]:
    """Share of kept sheets that failed, and what it could be at most."""
    made = Builder("exact one-sided limit (Clopper and Pearson 1934), by the binomial sum", tolerance="1e-9")
    source = draws("fail_rate")

    def add(class_: str, kept: int, failed: int, confidence: Value = "95") -> None:
        made.add(
            class_,
            {"kept_sheets": kept, "failed": failed, "confidence_pct": confidence},
            {
                "rate_pct": Fraction(100 * failed, kept),
                "at_most_pct": 100 * clopper_pearson(kept, failed, share(confidence)),
            },
        )

    for kept, failed in ((400, 0), (400, 2), (60, 1), (121, 3), (850, 4), (1200, 9), (5000, 12), (33, 5), (18, 0)):
        for confidence in ("95", "90", "80"):
            add("ordinary", kept, failed, confidence)
    for _ in range(55):
        kept = source.randint(10, 3000)
        add(
            "ordinary",
            kept,
            min(kept, source.choice((0, 1, 2, 3, 5, 8, 20))),
            str(source.choice((75, 90, 95, 97.5, 99))),
        )
    for confidence in ("50", "50.01", "99.98", "99.99"):
        add("end", 400, 2, confidence)
    for kept, failed in ((1, 0), (1, 1), (2, 1), (10000000, 0), (10000000, 1), (10000000, 25), (1000000, 100)):
        add("end", kept, failed)
    for kept in (10, 50, 59, 300, 4000):
        made.add(
            "degenerate",
            {"kept_sheets": kept, "failed": 0, "confidence_pct": "95"},
            {"rate_pct": 0, "at_most_pct": 100 * (1 - (mpf(1) / 20) ** (mpf(1) / kept))},
            kind="limit",
            source="none failed: 1 - doubt^(1 / n)",
        )
    for kept in (1, 2, 3, 20):
        made.add(
            "degenerate",
            {"kept_sheets": kept, "failed": kept, "confidence_pct": "95"},
            {"rate_pct": 100, "at_most_pct": 100},
            kind="limit",
            source="all failed",
        )
        made.add(
            "degenerate",
            {"kept_sheets": kept, "failed": kept - 1, "confidence_pct": "90"},
            {"rate_pct": Fraction(100 * (kept - 1), kept), "at_most_pct": 100 * (mpf(9) / 10) ** (mpf(1) / kept)},
            kind="limit",
            source="all but one failed: confidence^(1 / n)",
        )
    made.add(
        "ordinary",
        {"kept_sheets": 93, "failed": 0, "confidence_pct": "99"},
        {"at_most_pct": "4.83"},
        kind="worked",
        source="Case Studies in Reliability and Maintenance 14.3: 0 of 93 at 99 % is 0.0483; secondary source",
        tolerance="0",
        within="0.005",
    )
    return made.cases


def weighted(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """weight = (1 / se^2) / (1 / se^2 + 1 / (spread x book)^2); hours = weight x fitted + (1 - weight) x book."""
    fitted, error, book = exacts(inputs, "fitted_h", "se_h", "book_h")
    own, theirs = 1 / error**2, 1 / (share(inputs["book_spread_pct"]) * book) ** 2
    weight = own / (own + theirs)
    return {"hours": weight * fitted + (1 - weight) * book, "weight": weight}


def hours_rate() -> Iterable[Case]:
    """Precision-weighted mean of the firm's fit and the book."""
    made = Builder("precision-weighted mean of a normal with known variances", tolerance="1e-10")
    source = draws("hours_rate")

    def add(class_: str, fitted: Value, error: Value, rows: Value, book: Value, spread: Value = "25") -> None:
        inputs = {"fitted_h": fitted, "se_h": error, "rows": rows, "book_h": book, "book_spread_pct": spread}
        made.add(class_, inputs, weighted(inputs))

    for fitted, error, rows, book in (
        ("0.964286", "0.074231", "3", "0.90"),
        ("0.842474", "0.02", "8", "0.9"),
        ("1.2", "0.3", "4", "0.9"),
        ("0.12", "0.01", "12", "0.15"),
        ("1.5", "0.4", "5", "1.5"),
    ):
        for spread in ("10", "25", "50"):
            add("ordinary", fitted, error, rows, book, spread)
    for _ in range(65):
        add(
            "ordinary",
            Fraction(source.randint(50, 4000), 1000),
            Fraction(source.randint(1, 500), 1000),
            str(source.randint(3, 60)),
            Fraction(source.randint(50, 4000), 1000),
            str(source.randint(5, 80)),
        )
    for fitted in ("0.0001", "100"):
        for error in ("0.000001", "100"):
            for book in ("0.0001", "100"):
                for spread in ("1", "200"):
                    add("end", fitted, error, "3", book, spread)
    add("end", "0.9", "0.1", "100000", "1")
    for error in around("0.25", "0.01"):
        add("governing", "1.4", error, "6", "1", "25")
    for fitted, error, book in (("1", "0.25", "1"), ("2", "0.5", "2"), ("1.5", "0.25", "1")):
        add("degenerate", fitted, error, "5", book)
    return made.cases


FUNCTIONS = {"fail_rate": fail_rate, "hours_rate": hours_rate}
