"""Numbers to 50 digits, printed tables as they stand in this house's files, and what several rooms ask of both."""

from __future__ import annotations

import csv
from itertools import product
from pathlib import Path
from typing import Iterator, Mapping, Sequence

import mpmath
from mpmath import mpf

from arithmetic import number
from case_file import Value

HERE = Path(__file__).resolve().parent
TESTS = HERE.parent / "test" / "resources" / "sheathwright"


def angle(rise_in_12: Value) -> mpf:
    """The slope's angle in degrees, arctan(rise / 12), to 40 digits, so that 12 in 12 is 45 exactly."""
    return mpmath.nint(mpmath.degrees(mpmath.atan(number(rise_in_12) / 12)) * mpf(10) ** 40) / mpf(10) ** 40


def on_line(x: mpf, points: Sequence[tuple[mpf, mpf]]) -> mpf:
    """Straight between neighboring points, level outside the first and the last."""
    if x <= points[0][0]:
        return points[0][1]
    for (left, low), (right, high) in zip(points, points[1:]):
        if x <= right:
            return low + (high - low) * (x - left) / (right - left)
    return points[-1][1]


def short(value: mpf) -> str:
    """A tolerance in six digits, not under the value."""
    return f"{float(value) * 1.00001:.6g}"


def printed(path: Path) -> list[dict[str, str]]:
    """The lines of a table of print; lines that begin with # say what it is."""
    lines = [line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    return list(csv.DictReader(lines))


def grid(**values: Sequence[Value]) -> Iterator[Mapping[str, Value]]:
    """Every combination of the values of some inputs."""
    for combination in product(*values.values()):
        yield dict(zip(values, combination))
