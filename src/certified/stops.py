"""What stops a crew: slopes that ask for a ridge beam, heavier coverings, used-up rafters and what was seen."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable

from arithmetic import around
from case_file import Builder, Case, Value, draws, exact

FINDINGS = (
    "overloaded",
    "truss",
    "split",
    "cut",
    "bearing-rot",
    "spread-wall",
    "fire-retardant-panel",
    "charred",
    "insects-or-fungus",
    "sagging-ridge",
    "ridge-board",
    "missing-tie",
    "lost-strut",
    "rafter-tail",
    "point-load",
    "heavier-covering",
    "exposed-planks",
    "cathedral-bay",
    "room-below",
    "live-wires",
    "asbestos-or-vermiculite",
)


def ridge_stop() -> Iterable[Case]:
    """Below 3 in 12 a ridge is designed as a beam; one that nobody has seen counts as a board."""
    made = Builder("IRC 2021 R802.4.4, secondary source: ridges below 3 in 12 are beams", tolerance="0")
    source = draws("ridge_stop")

    def add(class_: str, rise: Value, ridge: str) -> None:
        stops = exact(rise) < 3 and ridge != "beam"
        made.add(class_, {"rise_in_12": rise, "ridge": ridge}, {"seen": "ridge-board" if stops else "nothing"})

    for ridge in ("unknown", "board", "beam"):
        for rise in ("1", "2", "2.5", "4", "6", "9", "12"):
            add("ordinary", rise, ridge)
        for _ in range(20):
            add("ordinary", Fraction(source.randint(4, 24 * 4), 4), ridge)
        for rise in ("0", "0.001", "47.999", "48"):
            add("end", rise, ridge)
        for rise in (*around("3"), *around("3", "0.0001")):
            add("governing", rise, ridge)
    return made.cases


def covering_stop() -> Iterable[Case]:
    """Stop where the new covering weighs more than 1.05 of the old one."""
    made = Builder("IEBC 2021 706.2, from memory: dead load of roofing may grow by 5 % at most", tolerance="0")
    source = draws("covering_stop")

    def add(class_: str, old: Value, new: Value) -> None:
        stops = exact(new) > exact(old) * Fraction(105, 100)
        made.add(class_, {"old_psf": old, "new_psf": new}, {"seen": "heavier-covering" if stops else "nothing"})

    for old in ("2", "2.4", "3", "4.8", "9"):
        for new in ("1.2", "2", "2.5", "4", "10", "16"):
            add("ordinary", old, new)
    for _ in range(40):
        old_weight = source.randint(100, 1500)
        add("ordinary", Fraction(old_weight, 100), Fraction(old_weight * source.randint(80, 130), 10000))
    for old in ("0", "200"):
        for new in ("0", "200", "0.001", "199.999"):
            add("end", old, new)
    for old in ("1", "2", "2.4", "3.6", "4", "5", "8", "10", "16", "20", "100"):
        for new in around(exact(old) * Fraction(105, 100)):
            add("governing", old, new)
    for old, new in (("2", "2"), ("0", "0"), ("5", "0")):
        add("degenerate", old, new)
    return made.cases


def framing_stop() -> Iterable[Case]:
    """The crew repairs on its own word only where nothing was seen and no rafter is used up beyond 1."""
    made = Builder(
        "common practice, no source: stop where the worst ratio is above 1 or anything of the list was seen",
        tolerance="0",
    )

    def add(class_: str, ratio: Value, seen: str) -> None:
        free = exact(ratio) <= 1 and seen == "nothing"
        results: dict[str, Value] = {"may_repair": free}
        if free:
            results["decision"] = "within the screening limits"
        made.add(class_, {"worst_ratio": ratio, "seen": seen}, results)

    for ratio in ("0.25", "0.5", "0.86", "0.99", "1.034", "1.5", "2.783"):
        add("ordinary", ratio, "nothing")
    for finding in FINDINGS:
        for ratio in ("0.4", "0.86", "1.2"):
            add("ordinary", ratio, finding)
        add("governing", "1", finding)
    for ratio in ("0", "1000"):
        for finding in ("nothing", "truss", "live-wires"):
            add("end", ratio, finding)
    for by in ("0.1", "0.01", "0.001", "0.0001"):
        for ratio in around("1", by):
            add("governing", ratio, "nothing")
    add("degenerate", "0", "room-below")
    return made.cases


FUNCTIONS = {"ridge_stop": ridge_stop, "covering_stop": covering_stop, "framing_stop": framing_stop}
