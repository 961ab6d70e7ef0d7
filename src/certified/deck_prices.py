"""Prices for what nobody has seen: included sheets, ceilings, one fixed price, patch or new deck."""

from __future__ import annotations

from fractions import Fraction
from typing import Iterable, Mapping

from arithmetic import around, exacts, number, share, up
from case_file import Builder, Case, Value, draws, exact
from forecast import BETA_BINOMIAL, DEGENERATE, ENDS, ORDINARY, POLYA, deck, drawn_roofs, roof

FREE = (
    "newsvendor rule at a ratio of 1: every sheet that can be; known disagreement, ours stops where less than 1e-12 "
    "is left, which costs nobody a cent"
)


def included(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """ratio = (extra + nuisance - included) / (extra + nuisance - credit); smallest K with F(K) >= ratio."""
    price, extra, credit, nuisance = exacts(inputs, "included_usd", "extra_usd", "credit_usd", "nuisance_usd")
    ratio = (extra + nuisance - price) / (extra + nuisance - credit)
    return {"included": deck(inputs).enough(number(ratio)), "ratio": ratio}


def included_sheets() -> Iterable[Case]:
    """How many sheets to have in the price: the newsvendor's critical ratio."""
    made = Builder("newsvendor rule (critical ratio) on the beta-binomial distribution", tolerance="1e-9")

    def add(
        class_: str,
        house: Mapping[str, Value],
        price: Value,
        extra: Value,
        credit: Value,
        nuisance: Value,
        **other: str,
    ) -> None:
        inputs = {**house, "included_usd": price, "extra_usd": extra, "credit_usd": credit, "nuisance_usd": nuisance}
        made.add(class_, inputs, included(inputs), **other)

    prices = (("96", "117", "0", "25"), ("96", "117", "80", "25"), ("69", "90", "60", "40"), ("97", "118", "97", "0"))
    for house in ORDINARY:
        add("ordinary", house, *prices[0])
        add("ordinary", house, *prices[1])
    for index, house in enumerate(drawn_roofs("included_sheets", 45)):
        add("ordinary", house, *prices[index % 3])
    for house in ENDS[:9]:
        add("end", house, *prices[1])
    add("end", roof(44, 18, 1), "10000", "10000", "0", "10000")
    for extra, nuisance in (("10000", "10000"), ("10", "0")):
        add("end", roof(44, 18, 1), "0", extra, "0", nuisance, within="4", source=FREE)
    for extra in ("95.99", "96", "96.01"):
        add("governing", roof(44, 18, 1), "96", extra, "0", "0")
    for price in ("49.99", "50", "50.01", "9.99", "10", "10.01", "90"):
        add("step", roof(9, 0, 0, "1", "1"), price, "100", "0", "0", kind="limit", source=f"{POLYA}; newsvendor rule")
    for price in ("5", "20", "80"):
        add("step", roof(19, 0, 0, "1", "1"), price, "75", "0", "25", kind="limit", source=f"{POLYA}; newsvendor rule")
    for house in (roof(44, 44, 3), roof(44, 44, 0), roof(1, 0, 0)):
        add("degenerate", house, *prices[1])
    return made.cases


def ceiling(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """Stop-loss premium: cost x E(D - ceiling)+, with the chance of more and the sheets above."""
    found, most = deck(inputs), int(exact(inputs["ceiling_sheets"]))
    above = found.above(most)
    return {
        "chance_over": found.more_than(most),
        "sheets_over": above,
        "charge_usd": above * number(inputs["cost_usd"]),
    }


def ceiling_charge() -> Iterable[Case]:
    """What a promise of no more than so many sheets costs on average."""
    made = Builder(
        f"stop-loss premium (Klugman, Panjer, Willmot, Loss Models; from memory) of the {BETA_BINOMIAL}",
        tolerance="1e-8",
        within="1e-9",
    )

    def add(class_: str, house: Mapping[str, Value], most: int, cost: Value = "102.8057") -> None:
        inputs = {**house, "ceiling_sheets": most, "cost_usd": cost}
        made.add(class_, inputs, ceiling(inputs))

    for house in ORDINARY[:10]:
        for most in (3, 5, 6, 8):
            add("ordinary", house, most)
    for index, house in enumerate(drawn_roofs("ceiling_charge", 25)):
        add("ordinary", house, index % 11, f"{60 + index}.{index:02d}")
    for house in ENDS[:9]:
        add("end", house, 0)
        add("end", house, 10000, "10000")
        add("end", house, 2, "0")
    for most in (0, 1, 2, 25, 26, 27, 28, 44):
        add("step", roof(44, 18, 2), most)
    for house in DEGENERATE:
        add("degenerate", house, 0)
        add("degenerate", house, 44)
    for count in (9, 99):
        for most in (0, 4, count - 1, count):
            over = count - most
            made.add(
                "degenerate",
                {**roof(count, 0, 0, "1", "1"), "ceiling_sheets": most, "cost_usd": "100"},
                {
                    "chance_over": Fraction(over, count + 1),
                    "sheets_over": Fraction(over * (over + 1), 2 * (count + 1)),
                    "charge_usd": Fraction(50 * over * (over + 1), count + 1),
                },
                kind="limit",
                source=POLYA,
            )
    return made.cases


def fixed(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """fixed = cost x Pq; left = fixed - cost x mean; loss where more are bad than Pq."""
    found, cost = deck(inputs), number(inputs["cost_usd"])
    sheets = found.enough(number(share(inputs["confidence_pct"])))
    return {
        "sheets": sheets,
        "fixed_usd": cost * sheets,
        "mean_left_usd": cost * (sheets - found.mean),
        "chance_of_loss": found.more_than(sheets),
    }


def fixed_deck_price() -> Iterable[Case]:
    """One price for all bad sheets; sheets is the roof's, and a result of the same name."""
    made = Builder(BETA_BINOMIAL, tolerance="1e-8", within="1e-8")

    def add(class_: str, house: Mapping[str, Value], confidence: Value, cost: Value = "102.8057") -> None:
        inputs = {**house, "confidence_pct": confidence, "cost_usd": cost}
        made.add(class_, inputs, fixed(inputs))

    for house in ORDINARY[:12]:
        for confidence in ("50", "80", "90"):
            add("ordinary", house, confidence)
    for index, house in enumerate(drawn_roofs("fixed_deck_price", 25)):
        add("ordinary", house, str(50 + 2 * index), f"{70 + index}.{index:02d}")
    for house in ENDS[:9]:
        add("end", house, "1")
        add("end", house, "99.99", "10000")
    add("end", roof(44, 18, 1), "80", "0")
    for count, confidence in ((9, "50"), (9, "90"), (19, "95"), (19, "5"), (99, "1"), (99, "99"), (999, "99.9")):
        for chance in around(confidence):
            if 1 <= chance <= exact("99.99"):
                add("step", roof(count, 0, 0, "1", "1"), chance, "100")
    for house in DEGENERATE:
        add("degenerate", house, "80")
    return made.cases


def break_even(sheets: Value, patch: Fraction, redeck: Fraction, keep: Fraction) -> Fraction:
    """b x patch + (sheets - b) x keep = sheets x redeck; none where keeping costs as much as new."""
    return max(Fraction(0), exact(sheets) * (redeck - keep) / (patch - keep))


def redeck_break_even() -> Iterable[Case]:
    """Bad sheets from which a new deck costs no more."""
    made = Builder("derived: the two costs set equal", tolerance="1e-11")
    source = draws("redeck_break_even")

    def add(class_: str, sheets: Value, patch: Value, redeck: Value, keep: Value) -> None:
        made.add(
            class_,
            {"sheets": sheets, "patch_usd": patch, "redeck_usd": redeck, "keep_usd": keep},
            {"bad_sheets": break_even(sheets, exact(patch), exact(redeck), exact(keep))},
        )

    for keep in ("0", "5.7586", "10", "32.7586", "50.7586"):
        for sheets in ("24", "44", "121"):
            add("ordinary", sheets, "66.8811", "57.6005", keep)
            add("ordinary", sheets, "117", "101", keep)
    for _ in range(55):
        keep = source.randint(0, 5000)
        patch = keep + source.randint(100, 15000)
        add(
            "ordinary",
            str(source.randint(5, 400)),
            Fraction(patch, 100),
            Fraction(source.randint(2000, 15000), 100),
            Fraction(keep, 100),
        )
    for sheets in ("1", "10000"):
        for redeck in ("0", "10000"):
            for patch in ("10000", "0.01"):
                add("end", sheets, patch, redeck, "0")
    for redeck in around("20", "0.01"):
        add("governing", "44", "90", redeck, "20")
    for redeck in around("90", "0.01"):
        add("governing", "44", "90", redeck, "20")
    for patch in ("20.01", "20.0001", "21"):
        add("governing", "44", patch, "20.5", "20")
    for sheets, patch, redeck, keep in (
        ("44", "90", "90", "0"),
        ("44", "90", "20", "20"),
        ("44", "90", "0", "20"),
        ("44", "90", "45", "0"),
        ("1", "0.01", "0", "0"),
    ):
        add("degenerate", sheets, patch, redeck, keep)
    return made.cases


def patch(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """keeping = keep + fail x cost of a failure; break-even with it; chance = P(D >= next whole number of it)."""
    price, redeck, keep, failure = exacts(inputs, "patch_usd", "redeck_usd", "keep_usd", "fail_usd")
    keeping = keep + share(inputs["fail_pct"]) * failure
    even, found = break_even(inputs["sheets"], price, redeck, keeping), deck(inputs)
    mean = found.mean
    return {
        "break_even_sheets": even,
        "patch_mean_usd": mean * number(price) + (found.sheets - mean) * number(keeping),
        "redeck_all_usd": found.sheets * redeck,
        "chance_redeck_cheaper": found.more_than(up(even) - 1),
    }


def patch_or_redeck() -> Iterable[Case]:
    """Patch or new deck, with what may fail later."""
    made = Builder(f"{BETA_BINOMIAL}; the two costs set equal", tolerance="1e-7", within="1e-12")

    def add(
        class_: str, house: Mapping[str, Value], price: Value, redeck: Value, keep: Value, fail: Value, failure: Value
    ) -> None:
        inputs = {
            **house,
            "patch_usd": price,
            "redeck_usd": redeck,
            "keep_usd": keep,
            "fail_pct": fail,
            "fail_usd": failure,
        }
        made.add(class_, inputs, patch(inputs))

    demo = ("66.8811", "57.6005", "5.7586")
    for house in ORDINARY:
        for fail in ("0", "3", "5"):
            add("ordinary", house, *demo, fail, "900")
    for index, house in enumerate(drawn_roofs("patch_or_redeck", 25)):
        add("ordinary", house, str(80 + index), str(40 + 2 * index), "6.5", f"0.{index:02d}", "1200")
    for house in ENDS[:9]:
        add("end", house, *demo, "1", "900")
    for price, redeck, keep, fail, failure in (
        ("10000", "0", "0", "0", "0"),
        ("10000", "10000", "0", "0", "0"),
        ("10000", "10000", "0", "100", "9999"),
        ("0.01", "10000", "0", "0", "100000"),
    ):
        add("end", roof(44, 18, 1), price, redeck, keep, fail, failure)
    for redeck in ("5", "5.01", "4.99", "2.5", "50", "49.99"):
        add("step", roof(20, 8, 1), "100", redeck, "0", "0", "0")
    for fail in ("5.76", "5.761", "5.759", "6"):
        add("governing", roof(121, 60, 21), *demo, fail, "900")
    for redeck in ("66.88", "66.8811", "66.8812"):
        add("governing", roof(121, 60, 21), "66.8811", redeck, "5.7586", "0", "900")
    for house in DEGENERATE:
        add("degenerate", house, *demo, "5", "900")
    return made.cases


FUNCTIONS = {
    "included_sheets": included_sheets,
    "ceiling_charge": ceiling_charge,
    "fixed_deck_price": fixed_deck_price,
    "redeck_break_even": redeck_break_even,
    "patch_or_redeck": patch_or_redeck,
}
