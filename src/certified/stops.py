"""What makes a repair of the framing stop before the crew goes on: a heavier covering, a ridge that nobody has seen bear."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable

from case_file import Builder, Case
from precise import drawn


def covering_stop() -> Iterable[Case]:
    """Stop where new > 1.05 old; a twentieth more exactly is no stop."""
    made = Builder("IEBC 2021 706.2, from memory: the roofing's dead load may grow by 5 %", tolerance="0")

    def add(class_: str, old: str, new: str) -> None:
        stops = Fraction(new) > Fraction(old) * Fraction(21, 20)
        made.add(class_, {"old_psf": old, "new_psf": new}, {"seen": "heavier-covering" if stops else "nothing"})

    for row in drawn("covering_stop", 40, old=(1, 12, 2), new=(1, 12, 2)):
        add("ordinary", **row)
    for old in ("2", "4", "5", "10", "16", "20"):
        most = Fraction(old) * Fraction(21, 20)
        for off in (Fraction(-1, 1000), Fraction(0), Fraction(1, 1000)):
            add("step", old, str(float(most + off)))
    for old, new in (("0", "200"), ("200", "0"), ("200", "200"), ("0", "0.001")):
        add("end", old, new)
    add("degenerate", "0", "0")
    return made.cases


def ridge_stop() -> Iterable[Case]:
    """Stop under 3 in 12 where the ridge is no beam; what nobody knows is taken as a board."""
    made = Builder("IRC 2021 R802.4.4, secondary source: below 3 in 12 ridges are beams", tolerance="0")
    rises = (("end", "0"), ("end", "48"), ("ordinary", "1"), ("ordinary", "2.5"), ("ordinary", "4"), ("ordinary", "7.25"))
    for class_, rise in (*rises, ("step", "2.999"), ("step", "3"), ("step", "3.001")):
        for ridge in ("unknown", "board", "beam"):
            stops = Fraction(rise) < 3 and ridge != "beam"
            made.add(class_, {"rise_in_12": rise, "ridge": ridge}, {"seen": "ridge-board" if stops else "nothing"})
    return made.cases


FUNCTIONS = {"covering_stop": covering_stop, "ridge_stop": ridge_stop}
