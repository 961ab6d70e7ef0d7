"""Unit prices and a day's or a dump's arithmetic, in rational numbers."""

from __future__ import annotations

from fractions import Fraction
from random import Random
from typing import Callable, Iterable, Mapping

from arithmetic import around, down, exacts, share, up
from case_file import Builder, Case, Value, draws, exact

PRACTICE = "common practice, no source"
PRICE = f"{PRACTICE}: direct x (1 + overhead) / (1 - margin), margin a share of the price"
RATES = {"tax_pct": "6.5", "labor_usd_per_h": "46", "overhead_pct": "18", "margin_pct": "12"}
PLAIN = {"tax_pct": "0", "labor_usd_per_h": "0", "overhead_pct": "0", "margin_pct": "0"}


def priced(direct: Fraction, inputs: Mapping[str, Value], step: Fraction = Fraction(1)) -> dict[str, Value]:
    """exact = direct x (1 + overhead) / (1 - margin); quoted: up to the next multiple of the step."""
    price = direct * (1 + share(inputs["overhead_pct"])) / (1 - share(inputs["margin_pct"]))
    return {"direct_usd": direct, "exact_usd": price, "quoted_usd": up(price / step) * step}


def sheet_price(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """direct = (sheet x (1 + waste) + nails x nail + extras) x (1 + tax) + hours x wage + lb / 2000 x ton."""
    sheet, nails, nail, extras, hours, wage, pounds, ton = exacts(
        inputs,
        "sheet_usd",
        "nails",
        "nail_usd",
        "extras_usd",
        "hours",
        "labor_usd_per_h",
        "disposal_lb",
        "disposal_usd_per_ton",
    )
    material = sheet * (1 + share(inputs["waste_pct"])) + nails * nail + extras
    return priced(material * (1 + share(inputs["tax_pct"])) + hours * wage + pounds / 2000 * ton, inputs)


def sheet_inputs(**given: Value) -> dict[str, Value]:
    """A scattered sheet of an invented price book, with what is given in its place."""
    usual: dict[str, Value] = {
        "sheet_usd": "38.50",
        "waste_pct": "5",
        "nails": "43",
        "nail_usd": "0.02",
        "extras_usd": "0",
        "hours": "0.9",
        "disposal_lb": "45",
        "disposal_usd_per_ton": "78",
        **RATES,
    }
    return {**usual, **given}


NOTHING = {
    "sheet_usd": "0",
    "waste_pct": "0",
    "nails": "0",
    "nail_usd": "0",
    "hours": "0",
    "disposal_lb": "0",
    "disposal_usd_per_ton": "0",
    **PLAIN,
}


def cents(source: Random, least: int, most: int, of: int = 100) -> Fraction:
    """A drawn amount in hundredths, or other parts, of a whole."""
    return Fraction(source.randint(least, most), of)


def sheet_unit_price() -> Iterable[Case]:
    """Direct cost, exact price and quoted price of one sheet."""
    made = Builder(PRICE, within="1e-9")
    source = draws("sheet_unit_price")

    def add(class_: str, **given: Value) -> None:
        inputs = sheet_inputs(**given)
        made.add(class_, inputs, sheet_price(inputs))

    for sheet, nails, nail, extras in (
        ("38.50", "43", "0.02", "0"),
        ("19.80", "33", "0.02", "0.96"),
        ("38.50", "45", "0.034", "0"),
        ("47.25", "53", "0.016", "0.48"),
    ):
        for hours in ("0.9", "0.55", "0.62", "1.25"):
            for waste in ("0", "5", "12.5"):
                add(
                    "ordinary",
                    sheet_usd=sheet,
                    nails=nails,
                    nail_usd=nail,
                    extras_usd=extras,
                    hours=hours,
                    waste_pct=waste,
                )
    for _ in range(190):
        add(
            "ordinary",
            sheet_usd=cents(source, 900, 12000),
            waste_pct=cents(source, 0, 150, 10),
            nails=source.randint(20, 130),
            nail_usd=cents(source, 5, 60, 1000),
            extras_usd=cents(source, 0, 800),
            hours=cents(source, 20, 250),
            disposal_lb=source.randint(0, 90),
            disposal_usd_per_ton=cents(source, 0, 16000),
            tax_pct=cents(source, 0, 120, 10),
            labor_usd_per_h=cents(source, 1800, 12000),
            overhead_pct=cents(source, 0, 600, 10),
            margin_pct=cents(source, 0, 400, 10),
        )
    for name, most in (
        ("sheet_usd", "1000"),
        ("waste_pct", "100"),
        ("nails", "500"),
        ("nail_usd", "5"),
        ("extras_usd", "1000"),
        ("hours", "40"),
        ("disposal_lb", "500"),
        ("disposal_usd_per_ton", "2000"),
        ("tax_pct", "30"),
        ("labor_usd_per_h", "500"),
        ("overhead_pct", "200"),
        ("margin_pct", "90"),
    ):
        add("end", **{name: "0"})
        add("end", **{name: most})
    for price in (1, 2, 87, 100, 117, 500, 999):
        for sheet in around(price, "0.01"):
            add("step", **{**NOTHING, "sheet_usd": sheet})
    for sheet in around("88", "0.01"):
        add("step", **{**NOTHING, "sheet_usd": sheet, "margin_pct": "12"})
    for sheet in around("75", "0.01"):
        add("step", **{**NOTHING, "sheet_usd": sheet, "overhead_pct": "20", "margin_pct": "10"})
    for hours in around("2", "0.001"):
        add("step", **{**NOTHING, "hours": hours, "labor_usd_per_h": "49.5", "margin_pct": "1"})
    for ton in around("100", "0.01"):
        add("step", **{**NOTHING, "disposal_lb": "500", "disposal_usd_per_ton": ton})
    for sheet in around("100", "0.01"):
        add("step", **{**NOTHING, "sheet_usd": sheet, "tax_pct": "7", "waste_pct": "0"})
    add("degenerate", **NOTHING)
    add("degenerate", **{**NOTHING, "sheet_usd": "0.01"})
    add("degenerate", **{**NOTHING, "nails": "500"})
    add("degenerate", **{**NOTHING, "hours": "0.01", "labor_usd_per_h": "0.01"})
    return made.cases


def work_price(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """direct = (material + nails x nail) x (1 + tax) + hours x wage."""
    material, nails, nail, hours, wage = exacts(inputs, "material_usd", "nails", "nail_usd", "hours", "labor_usd_per_h")
    direct = (material + nails * nail) * (1 + share(inputs["tax_pct"])) + hours * wage
    return priced(direct, inputs, exact(inputs.get("round_usd", "1")))


def work_cases(function: str, usual: Mapping[str, Value], jobs: Iterable[tuple[Value, ...]], scale: int) -> Builder:
    """What a piece and a foot of work have in common; scale is the drawn material's greatest cost in cents."""
    made = Builder(PRICE, within="1e-9")
    source = draws(function)

    def add(class_: str, **given: Value) -> None:
        inputs = {**usual, **RATES, **given}
        made.add(class_, inputs, work_price(inputs))

    for material, nails, nail, hours in jobs:
        for margin in ("0", "12", "25"):
            add("ordinary", material_usd=material, nails=nails, nail_usd=nail, hours=hours, margin_pct=margin)
    for _ in range(50):
        add(
            "ordinary",
            material_usd=cents(source, 0, scale),
            nails=source.randint(0, 40),
            nail_usd=cents(source, 5, 60, 1000),
            hours=cents(source, 1, 200),
            tax_pct=cents(source, 0, 120, 10),
            labor_usd_per_h=cents(source, 1800, 12000),
            overhead_pct=cents(source, 0, 600, 10),
            margin_pct=cents(source, 0, 400, 10),
        )
    for name, most in (
        ("material_usd", "1000"),
        ("nails", "500"),
        ("nail_usd", "5"),
        ("hours", "40"),
        ("tax_pct", "30"),
        ("labor_usd_per_h", "500"),
        ("overhead_pct", "200"),
        ("margin_pct", "90"),
    ):
        add("end", **{name: "0"})
        add("end", **{name: most})
    for price in ("1", "2", "15", "100", "117.5", "500"):
        for material in around(price, "0.01"):
            add("step", **{**PLAIN, "material_usd": material, "nails": "0", "hours": "0"})
    for material in around("88", "0.01"):
        add("step", **{**PLAIN, "material_usd": material, "nails": "0", "hours": "0", "margin_pct": "12"})
    add("degenerate", **{**PLAIN, "material_usd": "0", "nails": "0", "hours": "0"})
    add("degenerate", **{**PLAIN, "material_usd": "0.01", "nails": "0", "hours": "0"})
    add("degenerate", **{**PLAIN, "material_usd": "0", "nails": "100", "nail_usd": "0", "hours": "40"})
    return made


def piece_unit_price() -> Iterable[Case]:
    """One piece of lumber: sister, shim, scab."""
    usual = {"material_usd": "17.10", "nails": "26", "nail_usd": "0.026", "hours": "1.5"}
    jobs = (
        ("17.10", "26", "0.026", "1.5"),
        ("2.05", "10", "0.026", "0.3"),
        ("0.80", "6", "0.02", "0.25"),
        ("0", "19", "0.02", "0.12"),
    )
    return work_cases("piece_unit_price", usual, jobs, 6000).cases


def foot_unit_price() -> Iterable[Case]:
    """One foot of work, up to a step of cents."""
    usual = {"material_usd": "0.5125", "nails": "2", "nail_usd": "0.026", "hours": "0.05", "round_usd": "0.05"}
    jobs = (("0.5125", "2", "0.026", "0.05"), ("0", "0", "0", "0.01667"), ("1.25", "3", "0.02", "0.04"))
    made = work_cases("foot_unit_price", usual, jobs, 400)

    def add(class_: str, material: Value, step: Value, **rates: Value) -> None:
        inputs = {**usual, **PLAIN, "material_usd": material, "nails": "0", "hours": "0", "round_usd": step, **rates}
        made.add(class_, inputs, work_price(inputs))

    for step in ("0.01", "0.25", "0.5", "1", "10"):
        add("end" if step in ("0.01", "10") else "ordinary", "3.87", step)
    for step, price in (
        ("0.05", "3.9"),
        ("0.1", "2.3"),
        ("0.25", "4.75"),
        ("0.5", "1.5"),
        ("0.01", "0.07"),
        ("0.03", "0.99"),
    ):
        for material in around(price):
            add("step", material, step)
    return made.cases


def squares(inputs: Mapping[str, Value]) -> Fraction:
    """crew x hours x efficiency / hours of one square."""
    crew, hours, each = exacts(inputs, "crew", "hours", "hours_per_square")
    return crew * hours * share(inputs["efficiency_pct"]) / each


def open_area() -> Iterable[Case]:
    """Squares that a crew may open in a day."""
    made = Builder(f"{PRACTICE}: crew hours over hours of a square")
    source = draws("open_area")

    def add(class_: str, crew: Value, hours: Value, efficiency: Value, each: Value) -> None:
        inputs = {"crew": crew, "hours": hours, "efficiency_pct": efficiency, "hours_per_square": each}
        made.add(class_, inputs, {"squares_per_day": squares(inputs)})

    for crew, hours in (("4", "8"), ("6", "9"), ("3", "10"), ("2", "7.5"), ("5", "8")):
        for efficiency, each in (("75", "3"), ("85", "4.544"), ("70", "2.6"), ("90", "1.75")):
            add("ordinary", crew, hours, efficiency, each)
    for _ in range(65):
        add(
            "ordinary",
            str(source.randint(1, 12)),
            cents(source, 16, 48, 4),
            str(source.randint(40, 100)),
            cents(source, 50, 900),
        )
    for crew in ("1", "50"):
        for hours in ("0", "24"):
            for efficiency, each in (("1", "100"), ("100", "0.05"), ("1", "0.05"), ("100", "100")):
                add("end", crew, hours, efficiency, each)
    for crew, hours, efficiency, each in (
        ("1", "1", "100", "1"),
        ("50", "0", "50", "3"),
        ("3", "0.01", "1", "100"),
        ("1", "8", "100", "8"),
    ):
        add("degenerate", crew, hours, efficiency, each)
    return made.cases


def weight(inputs: Mapping[str, Value]) -> Fraction:
    """tons = (squares x 100 x layers x psf + sheets x lb) / 2000."""
    roof, layers, covering, sheets, each = exacts(
        inputs, "roof_squares", "layers", "covering_psf", "sheets", "sheet_lb"
    )
    return (roof * 100 * layers * covering + sheets * each) / 2000


def disposal_weight() -> Iterable[Case]:
    """Tons of old covering and old sheets."""
    made = Builder("derived: arithmetic; a square is 100 sq ft, a ton 2,000 lb")
    source = draws("disposal_weight")

    def add(class_: str, roof: Value, layers: Value, covering: Value, sheets: Value, each: Value) -> None:
        inputs = {"roof_squares": roof, "layers": layers, "covering_psf": covering, "sheets": sheets, "sheet_lb": each}
        made.add(class_, inputs, {"disposal_tons": weight(inputs)})

    for roof, layers, covering in (
        ("14.0872", "1", "2.35"),
        ("38.85", "2", "2.4"),
        ("21.1467", "1", "3"),
        ("7.6678", "2", "2.25"),
    ):
        for sheets, each in (("0", "45"), ("5", "45"), ("36", "45"), ("121", "45"), ("24", "62.5")):
            add("ordinary", roof, layers, covering, sheets, each)
    for _ in range(75):
        add(
            "ordinary",
            cents(source, 300, 9000),
            str(source.randint(1, 3)),
            cents(source, 150, 1200),
            str(source.randint(0, 300)),
            cents(source, 300, 900, 10),
        )
    for roof, layers, covering, sheets, each in (
        ("0", "0", "0", "0", "0"),
        ("5000", "5", "30", "20000", "500"),
        ("5000", "0", "30", "0", "45"),
        ("0", "5", "30", "20000", "500"),
        ("5000", "5", "0", "0", "500"),
        ("0.01", "1", "0.01", "0", "45"),
    ):
        add("end", roof, layers, covering, sheets, each)
    for roof, layers, covering, sheets, each in (
        ("10", "1", "2", "0", "45"),
        ("0", "2", "2", "1", "500"),
        ("20", "0", "2.4", "10", "45"),
        ("20", "1", "0", "10", "0"),
    ):
        add("degenerate", roof, layers, covering, sheets, each)
    return made.cases


def hauled(inputs: Mapping[str, Value]) -> dict[str, Value]:
    """Full ones, at least one, with the rest by the ton, or one more: the cheaper; equal, the fewer."""
    tons, held, price, over = exacts(inputs, "tons", "container_tons", "container_usd", "over_usd_per_ton")
    full = max(1, down(tons / held))
    rest = max(Fraction(0), tons - full * held)
    by_ton, one_more = full * price + rest * over, (full + 1) * price
    if rest > 0 and one_more < by_ton:
        return {"containers": full + 1, "cost_usd": one_more}
    return {"containers": full, "cost_usd": by_ton}


def containers() -> Iterable[Case]:
    """Containers, and what they cost."""
    made = Builder("derived: the cheaper of paying the rest by the ton and one container more", within="1e-9")
    source = draws("containers")

    def add(class_: str, tons: Value, held: Value = "4", price: Value = "465", over: Value = "82") -> None:
        inputs = {"tons": tons, "container_tons": held, "container_usd": price, "over_usd_per_ton": over}
        made.add(class_, inputs, hauled(inputs))

    for tons in ("1.77", "3.5", "4.6", "7.9", "10.134", "12.0465", "12.5", "15.99", "23", "40.4"):
        for held, price, over in (("4", "465", "82"), ("3", "380", "140"), ("2", "295", "120")):
            add("ordinary", tons, held, price, over)
    for _ in range(50):
        add(
            "ordinary",
            cents(source, 20, 6000),
            cents(source, 10, 100, 10),
            cents(source, 15000, 90000),
            cents(source, 4000, 25000),
        )
    for tons, held, price, over in (
        ("0", "4", "465", "82"),
        ("5000", "50", "10000", "2000"),
        ("5000", "0.1", "465", "82"),
        ("0", "0.1", "0", "0"),
        ("5000", "50", "0", "2000"),
        ("12", "4", "10000", "0"),
        ("0.1", "50", "465", "82"),
    ):
        add("end", tons, held, price, over)
    for full in ("4", "8", "12", "400"):
        for tons in around(full):
            add("step", tons)
    for tons in around("10.5"):
        add("governing", tons, "5", "250", "500")
    for over in around("250"):
        add("governing", "7", "5", "500", over)
    for tons, held, price, over in (
        ("9", "4", "0", "82"),
        ("9", "4", "465", "0"),
        ("4", "4", "0", "0"),
        ("0", "4", "465", "0"),
    ):
        add("degenerate", tons, held, price, over)
    return made.cases


def rain(inputs: Mapping[str, Value]) -> Fraction:
    """Both choices cost the same: lost day = chance x damage x share open; at most certain."""
    lost, damage, opened = exacts(inputs, "lost_day_usd", "damage_usd", "open_share")
    return min(Fraction(100), 100 * lost / (damage * opened))


def rain_threshold() -> Iterable[Case]:
    """Chance of rain from which nothing is opened."""
    made = Builder("derived: expected costs set equal (cost-loss rule)")
    source = draws("rain_threshold")

    def add(class_: str, lost: Value, damage: Value, opened: Value) -> None:
        inputs = {"lost_day_usd": lost, "damage_usd": damage, "open_share": opened}
        made.add(class_, inputs, {"chance_pct": rain(inputs)})

    for lost in ("420", "780", "1350"):
        for damage in ("4200", "18000"):
            for opened in ("0.25", "0.5", "1"):
                add("ordinary", lost, damage, opened)
    for _ in range(70):
        add("ordinary", str(source.randint(100, 4000)), str(source.randint(2000, 90000)), cents(source, 5, 100))
    for lost in ("0", "100000"):
        for damage in ("1", "10000000"):
            for opened in ("0.01", "1"):
                add("end", lost, damage, opened)
    for lost in around("2100"):
        add("governing", lost, "4200", "0.5")
    for opened in around("0.2"):
        add("governing", "1000", "5000", opened)
    for lost, damage, opened in (("0", "4200", "0.5"), ("1", "1", "1"), ("5000", "5000", "1"), ("50", "5000", "0.01")):
        add("degenerate", lost, damage, opened)
    return made.cases


FUNCTIONS: dict[str, Callable[[], Iterable[Case]]] = {
    "sheet_unit_price": sheet_unit_price,
    "piece_unit_price": piece_unit_price,
    "foot_unit_price": foot_unit_price,
    "open_area": open_area,
    "disposal_weight": disposal_weight,
    "containers": containers,
    "rain_threshold": rain_threshold,
}
