package sheathwright.catalog;

import java.util.List;
import sheathwright.figure.Limits;
import sheathwright.figure.Option;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** Two made-up cards, short enough to be written out by hand wherever they are shown. */
final class MadeCards {

  private MadeCards() {}

  /** Two woods. */
  enum Wood implements Option<Wood> {
    SOFT,
    HARD_MAPLE
  }

  /** With notes, a preset, words and two examples; it stands among the nails. */
  static Card strip() {
    Text text =
        new Text(
            "Nails along one strip.",
            "nails = strip ÷ spacing\nspare = strip − nails × spacing",
            "Does not cover strips that bend.",
            "Count the first nail too.",
            List.of("nailsPerSheet(in(24)) // 4", "nailsPerSheet(in(96)) // 16"),
            "the nails, and what is left",
            "if the strip is longer than 96 in",
            "common practice, no source");
    return new Card(
        "strip_nails",
        Catalog.shipped().named("nails_per_sheet").method(),
        List.of(
            new Argument.Plain(number("strip_in", Units.INCH, "the strip | its length, to 96 in")),
            new Argument.Plain(wood())),
        List.of(result("nails", Units.NAIL), result("spare_in", Units.INCH)),
        text);
  }

  /** With nothing that can be left out of a card; it stands among the prices. */
  static Card price() {
    Text text =
        new Text(
            "What a nail costs.",
            "nail = box ÷ count",
            "Does not cover bent nails.",
            "",
            List.of("sheetUnitPrice(usd(9)) // 1"),
            "the price",
            "if the box is empty",
            "derived");
    return new Card(
        "price",
        Catalog.shipped().named("sheet_unit_price").method(),
        List.of(new Argument.Plain(number("box_usd", Units.USD, "one box"))),
        List.of(result("nail_usd", Units.USD)),
        text);
  }

  /** A number that has to be given. */
  private static Parameter number(String column, Unit<?> unit, String text) {
    return new Parameter("made", column, unit, null, "", Limits.NONE, text, List.of(), "");
  }

  private static Parameter wood() {
    return new Parameter(
        "made", "wood", null, Wood.class, "soft", Limits.NONE, "below it", List.of(), "");
  }

  private static Result result(String column, Unit<?> unit) {
    return new Result(column, unit, Marked.NOT, answer -> null);
  }
}
