"""Exact rational steps that several rooms share."""

from __future__ import annotations

import math
from fractions import Fraction
from typing import Iterator, Mapping, Union

from mpmath import mpf

from case_file import Value, exact


def number(value: Union[Value, mpf]) -> mpf:
    """An exact value as a 50-digit number; one that is such a number already as it is."""
    if isinstance(value, mpf):
        return value
    fraction = exact(value)
    return mpf(fraction.numerator) / fraction.denominator


def up(value: Fraction) -> int:
    """The next whole number, or the value itself where it is whole."""
    return math.ceil(value)


def down(value: Fraction) -> int:
    """The whole number at or below a value."""
    return math.floor(value)


def share(percent: Value) -> Fraction:
    """A percentage as a share of one."""
    return exact(percent) / 100


def exacts(inputs: Mapping[str, Value], *names: str) -> list[Fraction]:
    """The named inputs as exact rational numbers, in that order."""
    return [exact(inputs[name]) for name in names]


def around(step: Value, by: Value = "0.001") -> Iterator[Fraction]:
    """A value just below a step, on it, and just above."""
    yield from (exact(step) - exact(by), exact(step), exact(step) + exact(by))
