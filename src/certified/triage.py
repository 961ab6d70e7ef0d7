"""What is done with a sheet: a list of tests in order, the first that speaks gives the action.

The order and the presets are the firm's own practice as the project documents it; nothing here is a standard's.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping, Optional

from arithmetic import around
from case_file import Builder, Case, Value, draws, exact

ORDER = "common practice, no source: the documented order of the tests, each strictly beyond its limit"
FINDINGS = (
    "rot",
    "delaminated",
    "soft",
    "swollen",
    "hole",
    "broken",
    "loose",
    "tight",
    "unsupported",
    "stain",
    "thin",
    "gap-wide",
    "pulled",
)
LIMITS = {
    "probe_limit_in": "0.25",
    "hole_limit_in": "1",
    "bearing_limit_in": "0.5",
    "joint_limit_in": "0.0625",
    "hump_limit_in": "0.125",
    "moisture_limit_pct": "19",
}
TESTS = (
    ("probe_in",),
    ("hole_in",),
    ("thickness_in", "least_thickness_in"),
    ("moisture_pct",),
    ("hold_lb", "wanted_lb"),
    ("hump_in", "joint_gap_in"),
    ("bearing_in",),
    ("edge_support", "edge_needed"),
    ("sound_nails", "wanted_nails"),
)
OWN = {
    "rot": "probe_in",
    "soft": "probe_in",
    "swollen": "probe_in",
    "hole": "hole_in",
    "pulled": "hold_lb",
    "thin": "thickness_in",
    "unsupported": "bearing_in",
    "gap-wide": "bearing_in",
    "tight": "joint_gap_in",
}


def action(given: Mapping[str, Value]) -> str:
    """The first test that speaks; a blank was not measured, and what was not measured is never good.

    A hole is a finding: hole_in is the size of one, and says nothing of a sheet where something else was found.
    """
    limits = {name: exact(given.get(name, preset)) for name, preset in LIMITS.items()}
    seen = {
        name: exact(value)
        for name, value in given.items()
        if name not in LIMITS and name != "finding" and value not in ("yes", "no")
    }
    finding = given["finding"]
    unmeasured = OWN.get(finding) not in seen

    def beyond(name: str, limit: Fraction) -> bool:
        return name in seen and seen[name] > limit

    def short(name: str, limit: Optional[Fraction]) -> bool:
        return name in seen and limit is not None and seen[name] < limit

    tests = (
        ("stop", given.get("framing_stops") == "yes"),
        ("replace", beyond("probe_in", limits["probe_limit_in"])),
        ("replace", finding in ("delaminated", "broken")),
        ("replace", finding == "hole" and beyond("hole_in", limits["hole_limit_in"])),
        ("replace", short("hold_lb", seen.get("wanted_lb"))),
        ("replace", finding in ("rot", "soft", "swollen", "hole", "pulled") and unmeasured),
        ("stop", short("thickness_in", seen.get("least_thickness_in"))),
        ("stop", finding == "thin" and unmeasured),
        ("cover", finding == "hole" and not unmeasured),
        ("support", short("bearing_in", limits["bearing_limit_in"])),
        ("support", given.get("edge_support") == "no" and given.get("edge_needed") == "yes"),
        ("support", finding in ("unsupported", "gap-wide") and unmeasured),
        ("relieve", short("joint_gap_in", limits["joint_limit_in"]) and beyond("hump_in", limits["hump_limit_in"])),
        ("relieve", finding == "tight" and unmeasured),
        ("refasten", short("sound_nails", seen.get("wanted_nails"))),
        ("refasten", finding == "loose" or finding == "soft" and not unmeasured),
        ("dry", beyond("moisture_pct", limits["moisture_limit_pct"])),
        ("watch", finding == "stain"),
        ("lift", given.get("over_build_up") == "yes"),
    )
    return next((said for said, speaks in tests if speaks), "watch")


def measured(given: Mapping[str, Value]) -> int:
    """How many of nine tests had something to go by."""
    return sum(all(name in given for name in names) for names in TESTS)


def drawn(function: str, count: int) -> Iterable[dict[str, Value]]:
    """Sheets on which about every other test was made, good and bad in turn."""
    source = draws(function)
    for _ in range(count):
        given: dict[str, Value] = {"finding": source.choice(FINDINGS)}
        values: dict[str, Value] = {
            "probe_in": Fraction(source.randint(0, 8), 16),
            "hole_in": Fraction(source.randint(1, 32), 16),
            "thickness_in": source.choice(("0.375", "0.4375", "0.46875")),
            "least_thickness_in": source.choice(("0.375", "0.4375")),
            "moisture_pct": str(source.randint(8, 34)),
            "hold_lb": str(source.randint(40, 200)),
            "wanted_lb": str(source.randint(40, 150)),
            "hump_in": Fraction(source.randint(0, 6), 16),
            "joint_gap_in": Fraction(source.randint(0, 4), 32),
            "bearing_in": Fraction(source.randint(2, 14), 16),
            "edge_support": source.choice(("yes", "no")),
            "edge_needed": source.choice(("yes", "no")),
            "sound_nails": str(source.randint(10, 45)),
            "wanted_nails": source.choice(("33", "43")),
        }
        for names in TESTS:
            if source.random() < 0.4 and (names != ("hole_in",) or given["finding"] == "hole"):
                given.update({name: values[name] for name in names})
        for name in ("framing_stops", "over_build_up"):
            if source.random() < 0.12:
                given[name] = "yes"
        yield given


def sheet_action() -> Iterable[Case]:
    """The action, and how many tests there were."""
    made = Builder(ORDER, tolerance="0")

    def add(class_: str, **given: Value) -> None:
        made.add(class_, given, {"action": action(given), "measured": measured(given)})

    for given in drawn("sheet_action", 90):
        add("ordinary", **given)
    for finding in FINDINGS:
        add("degenerate", finding=finding)
        add("governing", finding=finding, framing_stops="yes")
        add("governing", finding=finding, over_build_up="yes")
    for probe in around("0.25"):
        for finding in ("rot", "soft", "swollen"):
            add("step", finding=finding, probe_in=probe)
    for hole in around("1"):
        add("step", finding="hole", hole_in=hole)
    for hold in around("90", "0.1"):
        add("step", finding="pulled", hold_lb=hold, wanted_lb="90")
    for thickness in around("0.4375"):
        add("step", finding="thin", thickness_in=thickness, least_thickness_in="0.4375")
    for bearing in around("0.5"):
        add("step", finding="unsupported", bearing_in=bearing)
    for gap in around("0.0625"):
        add("step", finding="tight", joint_gap_in=gap, hump_in="0.25")
    for hump in around("0.125"):
        add("step", finding="tight", joint_gap_in="0", hump_in=hump)
    for nails in ("42", "43", "44"):
        add("step", finding="stain", sound_nails=nails, wanted_nails="43")
    for moisture in around("19", "0.1"):
        add("step", finding="stain", moisture_pct=moisture)
    for name, finding in (("probe", "rot"), ("hole", "hole"), ("bearing", "unsupported")):
        for limit in around("0.75"):
            add("step", **{"finding": finding, f"{name}_in": "0.75", f"{name}_limit_in": limit})
    for edge, needed in (("no", "yes"), ("no", "no"), ("yes", "yes"), ("yes", "no")):
        add("governing", finding="stain", edge_support=edge, edge_needed=needed)
    for name, most in (("probe_in", "3"), ("hole_in", "96"), ("moisture_pct", "100"), ("bearing_in", "3")):
        finding = {"probe_in": "rot", "hole_in": "hole", "moisture_pct": "stain", "bearing_in": "unsupported"}[name]
        add("end", **{"finding": finding, name: most})
        if name != "hole_in":
            add("end", **{"finding": finding, name: "0"})
    add("end", finding="pulled", hold_lb="0", wanted_lb="5000")
    add("end", finding="pulled", hold_lb="5000", wanted_lb="0")
    add("end", finding="loose", sound_nails="0", wanted_nails="500")
    made.add(
        "ordinary",
        {"finding": "rot", "probe_in": "0.375"},
        {"action": "replace", "reason": "replace: an awl goes in 3/8 in; more than 1/4 in is cut out"},
    )
    made.add(
        "degenerate",
        {"finding": "rot", "probe_in": None, "moisture_pct": None},
        {"reason": "replace: rot, not measured"},
    )
    return made.cases


FUNCTIONS = {"sheet_action": sheet_action}
