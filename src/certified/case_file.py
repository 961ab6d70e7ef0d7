"""The form of a certified case, and the one writer of its files.

A module of a room yields ``Case`` objects; ``write`` puts those of one function into
``src/main/resources/sheathwright/certified/FUNCTION.csv``. Inputs are exact: whole numbers, fractions
whose decimals end, decimal text, or words. Results are whole numbers, fractions, mpmath numbers or words;
numbers are written with 15 significant digits, rounded from 50.
"""

from __future__ import annotations

import csv
import io
import random
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import Iterable, Mapping, Union

import mpmath

Value = Union[int, Fraction, Decimal, str, bool, mpmath.mpf, None]

FOLDER = Path(__file__).resolve().parents[1] / "main" / "resources" / "sheathwright" / "certified"
CLASSES = ("ordinary", "end", "step", "edge", "governing", "degenerate")
KINDS = ("printed", "worked", "independent", "limit")
LEADING = ("case", "class", "kind", "source", "tolerance", "within")
SEED = 20261128
DIGITS = 15
mpmath.mp.dps = 50


@dataclass(frozen=True)
class Case:
    """One row: what goes in, what must come out, who says so, and how near it has to be."""

    class_: str
    kind: str
    source: str
    inputs: Mapping[str, Value]
    results: Mapping[str, Value]
    tolerance: str = "1e-12"
    within: str = ""

    def __post_init__(self) -> None:
        if self.class_ not in CLASSES or self.kind not in KINDS:
            raise ValueError(f"no such class or kind: {self.class_}, {self.kind}")
        if not self.source:
            raise ValueError("a case needs a source")
        if not any(text(value) for value in self.results.values()):
            raise ValueError(f"a case needs a result: {self.inputs}")


@dataclass
class Builder:
    """Collects the cases of one function that share a source, a kind and a tolerance."""

    source: str
    kind: str = "independent"
    tolerance: str = "1e-12"
    within: str = ""
    cases: list[Case] = field(default_factory=list)

    def add(self, class_: str, inputs: Mapping[str, Value], results: Mapping[str, Value], **other: str) -> None:
        """Adds one row; ``kind``, ``source``, ``tolerance`` and ``within`` may differ for it."""
        said = {"kind": self.kind, "source": self.source, "tolerance": self.tolerance, "within": self.within}
        said.update(other)
        self.cases.append(Case(class_, inputs=dict(inputs), results=dict(results), **said))


def draws(function: str) -> random.Random:
    """The random numbers of one function: the same in every run, and not moved by another function's."""
    return random.Random(f"{SEED}/{function}")


def exact(value: Value) -> Fraction:
    """An input as the exact rational number that its text means."""
    return Fraction(value) if not isinstance(value, Decimal) else Fraction(str(value))


def text(value: Value) -> str:
    """A value as it stands in a cell."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, (int, str)):
        return str(value)
    if isinstance(value, Decimal):
        return format(value, "f")
    if isinstance(value, Fraction):
        return _fraction_text(value)
    return _digits(value)


def _fraction_text(value: Fraction) -> str:
    """A fraction as a decimal: in full where it ends within 15 significant digits."""
    if value.denominator == 1 and abs(value.numerator) < 10**DIGITS:
        return str(value.numerator)
    return _digits(mpmath.mpf(value.numerator) / value.denominator)


def _digits(value: mpmath.mpf) -> str:
    """An mpmath number with 15 significant digits and no trailing zeros."""
    if not mpmath.isfinite(value):
        raise ValueError(f"not a finite number: {value}")
    written = mpmath.nstr(value, DIGITS, strip_zeros=True, min_fixed=-6, max_fixed=16)
    return written[:-2] if written.endswith(".0") else written


def input_text(value: Value) -> str:
    """An input as it stands in a cell, exactly, or an error where the cell could not hold it."""
    written = text(value)
    if isinstance(value, Fraction) and Fraction(written) != value:
        raise ValueError(f"an input's decimals must end within {DIGITS} digits: {value}")
    if isinstance(value, mpmath.mpf):
        raise ValueError(f"an input must be exact: {value}")
    return written


def _columns(rows: Iterable[Mapping[str, Value]]) -> list[str]:
    """Every name that a row has, in the order in which they first stand."""
    return list(dict.fromkeys(name for row in rows for name in row))


def _sorted(cases: Iterable[Case]) -> list[Case]:
    """By class, then as given; a row that repeats another's inputs and kind of evidence is left out."""
    once = {
        (case.kind, tuple((name, input_text(value)) for name, value in case.inputs.items())): case
        for case in reversed(list(cases))
    }
    return sorted(reversed(list(once.values())), key=lambda case: CLASSES.index(case.class_))


def contents(cases: Iterable[Case]) -> str:
    """The whole file of one function; a result that is named like an input stands after it under the same name."""
    rows = _sorted(cases)
    inputs, results = _columns(row.inputs for row in rows), _columns(row.results for row in rows)
    page = io.StringIO()
    lines = csv.writer(page, lineterminator="\n")
    lines.writerow([*LEADING, *inputs, *results])
    for number, row in enumerate(rows, 1):
        lines.writerow(
            [
                number,
                row.class_,
                row.kind,
                row.source,
                row.tolerance,
                row.within,
                *(input_text(row.inputs.get(name)) for name in inputs),
                *(text(row.results.get(name)) for name in results),
            ]
        )
    return page.getvalue()


def write(function: str, cases: Iterable[Case], folder: Path = FOLDER) -> int:
    """Writes one function's file and tells how many cases it holds."""
    page = contents(cases)
    folder.mkdir(parents=True, exist_ok=True)
    (folder / f"{function}.csv").write_text(page, encoding="utf-8", newline="\n")
    return page.count("\n") - 1
