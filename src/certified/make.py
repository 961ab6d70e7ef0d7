"""Writes the certified cases: ``python3 src/certified/make.py [ROOM|FUNCTION]``.

A room is a module beside this one with a dict ``FUNCTIONS`` of function names and generators of cases.
Needs Python 3.10 or later and mpmath 1.3; reads no Java.
"""

from __future__ import annotations

import importlib
import sys
from pathlib import Path
from typing import Callable, Iterable

sys.dont_write_bytecode = True

from case_file import Case, write  # noqa: E402

HERE = Path(__file__).resolve().parent
Maker = Callable[[], Iterable[Case]]


def rooms() -> dict[str, dict[str, Maker]]:
    """Every module here that has functions, by its name."""
    names = sorted(path.stem for path in HERE.glob("*.py") if path.stem not in ("make", "case_file"))
    found = {name: getattr(importlib.import_module(name), "FUNCTIONS", None) for name in names}
    return {name: functions for name, functions in found.items() if functions}


def chosen(asked: list[str]) -> dict[str, Maker]:
    """The functions that the command line asks for: all of them if it asks for none."""
    functions: dict[str, Maker] = {}
    for room, makers in rooms().items():
        for name, maker in makers.items():
            if name in functions:
                raise SystemExit(f"{name} is made by two rooms")
            if not asked or room in asked or name in asked:
                functions[name] = maker
    known = functions.keys() | rooms().keys()
    missing = [name for name in asked if name not in known]
    if missing:
        raise SystemExit(f"no room or function is named {', '.join(missing)}; rooms are {', '.join(rooms())}")
    return functions


def main(asked: list[str]) -> None:
    """Writes the files and says how many cases each holds."""
    total = 0
    functions = chosen(asked)
    for name, maker in sorted(functions.items()):
        count = write(name, maker())
        total += count
        print(f"{name}: {count}")
    print(f"{len(functions)} functions, {total} cases")


if __name__ == "__main__":
    main(sys.argv[1:])
