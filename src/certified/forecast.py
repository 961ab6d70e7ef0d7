"""How many sheets are bad: the beta-binomial and hypergeometric distributions, to 50 digits.

The share of bad sheets of a house is Beta(alpha, beta); a look at some sheets turns it into
Beta(alpha + bad, beta + seen - bad); what is unseen is beta-binomial. Sums over the counts themselves, no series.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Iterable, Mapping

from mpmath import exp, loggamma, mpf, sqrt

from arithmetic import exacts, number, share, up
from case_file import Builder, Case, Value, draws, exact

BETA_BINOMIAL = "beta-binomial distribution, summed count by count"
POLYA = "uniform share: every count is as likely as any other"
ALPHA, BETA = "1.472231", "21.794786"
PERCENTILES = ("10", "50", "80", "90", "95")


@lru_cache(maxsize=None)
def beta_binomial(count: int, alpha: Fraction, beta: Fraction) -> tuple[mpf, ...]:
    """P(k) = C(n, k) B(k + alpha, n - k + beta) / B(alpha, beta), by the ratio of neighbors from P(0) on."""
    a, b = number(alpha), number(beta)
    chance = exp(loggamma(b + count) - loggamma(b) + loggamma(a + b) - loggamma(a + b + count))
    chances = [chance]
    for k in range(count):
        chance = chance * (count - k) * (a + k) / ((k + 1) * (b + count - k - 1))
        chances.append(chance)
    return tuple(chances)


@dataclass(frozen=True)
class Deck:
    """What was seen of a roof, and the chances of each number of bad sheets in all of it."""

    sheets: int
    seen: int
    bad: int
    chances: tuple[mpf, ...]

    @property
    def mean(self) -> mpf:
        """Average of the bad sheets of the whole roof."""
        return self.bad + sum((k * chance for k, chance in enumerate(self.chances)), mpf(0))

    @property
    def spread(self) -> mpf:
        """Standard deviation of the bad sheets of the whole roof."""
        middle = self.mean - self.bad
        return sqrt(sum(((k - middle) ** 2 * chance for k, chance in enumerate(self.chances)), mpf(0)))

    def at_most(self, bad: int) -> mpf:
        """Chance of no more than a number of bad sheets."""
        return sum(self.chances[: max(0, bad - self.bad + 1)], mpf(0))

    def more_than(self, bad: int) -> mpf:
        """Chance of more than a number of bad sheets."""
        return sum(self.chances[max(0, bad - self.bad + 1) :], mpf(0))

    def above(self, ceiling: int) -> mpf:
        """Average of the bad sheets above a ceiling, none counted below it."""
        return sum(
            ((self.bad + k - ceiling) * chance for k, chance in enumerate(self.chances) if self.bad + k > ceiling),
            mpf(0),
        )

    def enough(self, chance: mpf) -> int:
        """Smallest number of sheets that is enough with at least a chance; a tie to 1e-30 is a tie."""
        reached = mpf(0)
        for k, here in enumerate(self.chances):
            if chance <= 0 and k == 0:
                return 0
            reached += here
            if reached >= chance - mpf("1e-30"):
                return self.bad + k
        return self.bad + len(self.chances) - 1


def deck(inputs: Mapping[str, Value]) -> Deck:
    """The roof after the look."""
    sheets, seen, bad = (int(exact(inputs[name])) for name in ("sheets", "seen", "seen_bad"))
    alpha, beta = exacts(inputs, "alpha", "beta")
    return Deck(sheets, seen, bad, beta_binomial(sheets - seen, alpha + bad, beta + seen - bad))


def roof(sheets: Value, seen: Value, bad: Value, alpha: Value = ALPHA, beta: Value = BETA) -> dict[str, Value]:
    """The inputs that every forecast takes."""
    return {"sheets": sheets, "seen": seen, "seen_bad": bad, "alpha": alpha, "beta": beta}


ORDINARY = (
    roof(44, 0, 0),
    roof(44, 18, 1),
    roof(24, 0, 0),
    roof(62, 0, 0),
    roof(66, 0, 0),
    roof(66, 12, 2),
    roof(121, 0, 0),
    roof(121, 60, 21),
    roof(44, 20, 0),
    roof(52, 10, 1, "0.8", "12"),
    roof(88, 30, 6, "1.8347", "29.1854"),
    roof(180, 45, 3),
    roof(95, 40, 4, "2", "30"),
    roof(71, 71, 2),
    roof(33, 1, 1),
)
ENDS = (
    roof(1, 0, 0),
    roof(1, 1, 0),
    roof(1, 1, 1),
    roof(44, 18, 1, "0.001", "12"),
    roof(44, 18, 1, "1000000", "12"),
    roof(44, 18, 1, "0.8", "0.001"),
    roof(44, 18, 1, "0.8", "1000000"),
    roof(44, 0, 0, "0.001", "0.001"),
    roof(44, 0, 0, "1000000", "1000000"),
    roof(10000, 10000, 10000),
    roof(10000, 9950, 400),
    roof(10000, 0, 0, "1", "9"),
)
DEGENERATE = (
    roof(44, 44, 0),
    roof(44, 44, 44),
    roof(44, 43, 0),
    roof(44, 43, 43),
    roof(2, 1, 0),
    roof(44, 0, 0, "1", "1"),
)


def drawn_roofs(function: str, count: int) -> list[dict[str, Value]]:
    """Roofs of every size that is met with, drawn for one function."""
    source = draws(function)
    drawn = []
    for _ in range(count):
        sheets = source.randint(8, 260)
        seen = source.randint(0, sheets)
        bad = min(seen, source.choice((0, 0, 1, 1, 2, 3, 5, 9, 20)))
        drawn.append(
            roof(
                sheets,
                seen,
                bad,
                f"{source.randint(200, 6000) / 1000:.3f}",
                f"{source.randint(3000, 60000) / 1000:.3f}",
            )
        )
    return drawn


def forecast(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """Average, spread, chance of none, and the smallest counts that are enough in 1, 5, 8, 9, 9.5 houses of 10."""
    found = deck(inputs)
    answer: dict[str, Value] = {"mean": found.mean, "sd": found.spread, "p_none": found.at_most(0)}
    answer.update({f"p{percent}_sheets": found.enough(mpf(percent) / 100) for percent in PERCENTILES})
    return answer


def uniform(count: int) -> dict[str, Value]:
    """alpha = beta = 1 and nothing seen: each of 0 to n has chance 1 / (n + 1), in rational numbers."""
    answer: dict[str, Value] = {
        "mean": Fraction(count, 2),
        "sd": sqrt(mpf(count) * (count + 2) / 12),
        "p_none": Fraction(1, count + 1),
    }
    answer.update({f"p{percent}_sheets": up(share(percent) * (count + 1)) - 1 for percent in PERCENTILES})
    return answer


def bad_sheet_forecast() -> Iterable[Case]:
    """Average, spread and quantiles of the bad sheets of a whole roof."""
    made = Builder(BETA_BINOMIAL, tolerance="1e-9", within="1e-12")
    for class_, roofs in (
        ("ordinary", (*ORDINARY, *drawn_roofs("bad_sheet_forecast", 180))),
        ("end", ENDS),
        ("degenerate", DEGENERATE),
    ):
        for inputs in roofs:
            made.add(class_, inputs, forecast(inputs))
    for count in (9, 19, 39, 59, 99, 199, 8, 10, 18, 20, 38, 40, 999, 4999, 9999, 9998, 10000):
        made.add("step", roof(count, 0, 0, "1", "1"), uniform(count), kind="limit", source=POLYA)
    for bad in (0, 1, 2, 3):
        made.add(
            "degenerate",
            roof(30, 30, bad),
            {
                "mean": bad,
                "sd": 0,
                "p_none": 1 if bad == 0 else 0,
                "p10_sheets": bad,
                "p50_sheets": bad,
                "p80_sheets": bad,
                "p90_sheets": bad,
                "p95_sheets": bad,
            },
            kind="limit",
            source="all was seen: nothing is left to chance",
        )
    return made.cases


def hypergeometric_at_most(sheets: int, bad: int, seen: int, found: int) -> Fraction:
    """P(X <= found), X the bad ones among those seen: sum of C(B, x) C(N - B, n - x) / C(N, n), in whole numbers."""
    ways = sum(
        math.comb(bad, x) * math.comb(sheets - bad, seen - x) for x in range(max(0, seen - sheets + bad), found + 1)
    )
    return Fraction(ways, math.comb(sheets, seen))


def most_bad(inputs: Mapping[str, Value]) -> int:
    """Largest B with P(X <= seen_bad) > 1 - confidence, by halving: the chance falls as B grows."""
    sheets, seen, found = (int(exact(inputs[name])) for name in ("sheets", "seen", "seen_bad"))
    least = 1 - share(inputs["confidence_pct"])
    low, high = found, sheets - (seen - found)
    while low < high:
        middle = (low + high + 1) // 2
        if hypergeometric_at_most(sheets, middle, seen, found) > least:
            low = middle
        else:
            high = middle - 1
    return low


def ties() -> Iterable[tuple[int, int, int, Fraction]]:
    """Roofs where a count's chance is the doubt exactly: sheets, seen, bad, and the confidence of whole percents."""
    for sheets in (4, 5, 6, 8, 10, 16, 20, 25):
        for seen in range(1, sheets):
            for found in (0, 1):
                for bad in range(found, sheets - seen + found + 1):
                    chance = 100 * hypergeometric_at_most(sheets, bad, seen, found)
                    if found <= seen and 0 < chance <= 50 and chance.denominator == 1:
                        yield sheets, seen, found, 100 - chance


def most_bad_sheets() -> Iterable[Case]:
    """Exact one-sided limit for a finite number of sheets."""
    made = Builder(
        "exact one-sided limit (Clopper and Pearson 1934) of the hypergeometric distribution, in whole numbers",
        tolerance="0",
    )
    source = draws("most_bad_sheets")

    def add(class_: str, sheets: int, seen: int, bad: int, confidence: Value = "95", **other: str) -> None:
        inputs = {"sheets": sheets, "seen": seen, "seen_bad": bad, "confidence_pct": confidence}
        made.add(class_, inputs, {"bad_sheets": most_bad(inputs)}, **other)

    for sheets, seen, bad in (
        (44, 20, 0),
        (44, 18, 1),
        (44, 18, 0),
        (121, 60, 21),
        (121, 40, 2),
        (66, 12, 2),
        (62, 30, 0),
        (24, 8, 0),
        (180, 45, 3),
        (88, 30, 6),
    ):
        for confidence in ("95", "90", "80"):
            add("ordinary", sheets, seen, bad, confidence)
    for _ in range(40):
        sheets = source.randint(8, 400)
        seen = source.randint(1, sheets)
        add(
            "ordinary",
            sheets,
            seen,
            min(seen, source.choice((0, 0, 1, 2, 3, 7))),
            str(source.choice((50, 75, 90, 95, 99))),
        )
    for confidence in ("50", "50.01", "99.98", "99.99"):
        add("end", 44, 18, 1, confidence)
    for sheets, seen, bad in ((1, 0, 0), (1, 1, 0), (1, 1, 1), (10000, 100, 0), (10000, 300, 5), (10000, 10000, 7)):
        add("end", sheets, seen, bad)
    for sheets, seen, confidence in (
        (20, 1, "95"),
        (20, 1, "90"),
        (10, 1, "50"),
        (40, 1, "95"),
        (4, 2, "50"),
        (100, 1, "99"),
        (10000, 1, "95"),
        (8000, 1, "75"),
        (36, 9, "75"),
        (25, 5, "80"),
    ):
        for by in ("-0.001", "0", "0.001"):
            if exact(confidence) + exact(by) >= 50:
                add("step", sheets, seen, 0, exact(confidence) + exact(by))
    for sheets, seen, bad, confidence in ties():
        add("step", sheets, seen, bad, confidence)
    for sheets, seen, bad, answer in (
        (44, 0, 0, 44),
        (44, 44, 3, 3),
        (44, 44, 0, 0),
        (44, 43, 43, 44),
        (44, 44, 44, 44),
    ):
        made.add(
            "degenerate",
            {"sheets": sheets, "seen": seen, "seen_bad": bad, "confidence_pct": "95"},
            {"bad_sheets": answer},
            kind="limit",
            source="nothing seen, or all of it",
        )
    return made.cases


def chance_of_more() -> Iterable[Case]:
    """Tail of the bad sheets of a whole roof."""
    made = Builder(BETA_BINOMIAL, tolerance="1e-8", within="1e-12")

    def add(class_: str, house: Mapping[str, Value], more: int) -> None:
        inputs = {**house, "more_than": more}
        made.add(class_, inputs, {"chance": deck(inputs).more_than(more)})

    for house in ORDINARY[:10]:
        for more in (0, 1, 3, 5, 10):
            add("ordinary", house, more)
    for index, house in enumerate(drawn_roofs("chance_of_more", 25)):
        add("ordinary", house, index % 9)
    for house in ENDS:
        add("end", house, 0)
        add("end", house, 10000)
    add("end", roof(10000, 0, 0, "1", "9"), 9999)
    for more in (0, 1, 2, 17, 25, 26, 27, 43, 44, 45):
        add("step", roof(44, 18, 2), more)
    for house in DEGENERATE:
        add("degenerate", house, 0)
    for count in (9, 99, 999):
        for more in (0, count // 2, count - 1, count):
            made.add(
                "degenerate",
                {**roof(count, 0, 0, "1", "1"), "more_than": more},
                {"chance": Fraction(count - more, count + 1)},
                kind="limit",
                source=POLYA,
            )
    return made.cases


FUNCTIONS = {
    "bad_sheet_forecast": bad_sheet_forecast,
    "chance_of_more": chance_of_more,
    "most_bad_sheets": most_bad_sheets,
}
