package sheathwright.sheathing.panel;

import static java.util.stream.Collectors.joining;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.published.Published;

/**
 * What the span table prints for a stamped panel. Printed thicknesses are whole thirty-seconds of
 * an inch: one that is typed with two decimals is taken for the nearest of them.
 */
final class PrintedPanel {

  private static final Table TABLE =
      Published.table("irc/2021/panel-spans.csv", "panel_spans", "IRC panel spans", 1);

  /** The table that every value comes from. */
  static final Source SOURCE = TABLE.source();

  private static final String LEAST = "thickness_in";
  private static final String SECOND = "second_thickness_in";
  private static final String THIRD = "third_thickness_in";
  private static final int PARTS = 32;
  private static final Figure<Length> PART =
      Figure.constant(
              "thirty_second_in", 1.0 / PARTS, Units.INCH, Source.derived("printed thicknesses"))
          .symbol("1/32 in");
  private static final Figure<Length> NEAR =
      Figure.constant("near_enough_in", 0.25 / PARTS, Units.INCH, Source.COMMON_PRACTICE)
          .symbol("1/128 in");

  private final Choice<SpanRating> rating;
  private final String reason;
  private final Figure<Length> category;
  private final Figure<Length> least;
  private final Condition isPrinted;

  PrintedPanel(RatedPanel panel) {
    rating = panel.rating().choice();
    var given = panel.thickness();
    reason = reason(rating, given);
    category =
        given
            .dividedBy(PART)
            .in(Units.RATIO)
            .rounded()
            .times(PART)
            .as("nearest_category_in", Units.INCH);
    least = thickness(LEAST);
    isPrinted =
        Condition.all(
                given.isAtLeast(category.minus(NEAR)),
                given.isAtMost(category.plus(NEAR)),
                Condition.any(
                    category.isTheSameAs(least),
                    category.isTheSameAs(thickness(SECOND)),
                    category.isTheSameAs(thickness(THIRD))))
            .as("thickness_is_printed")
            .is(YesNo.YES);
  }

  /** The greatest span with the long edges supported. */
  Figure<Length> supportedSpan() {
    return printed("supported_in", Units.INCH);
  }

  /** The greatest span with nothing under the long edges. */
  Figure<Length> unsupportedSpan() {
    return Figure.choose(
        category.isMoreThan(least),
        printed("thick_unsupported_in", Units.INCH),
        printed("unsupported_in", Units.INCH));
  }

  /** The live load over supports 16 in apart. */
  Figure<Pressure> liveAt16() {
    return printed("live_16_psf", Units.PSF);
  }

  /** The live load over supports 24 in apart. */
  Figure<Pressure> liveAt24() {
    return printed("live_24_psf", Units.PSF);
  }

  /** The live load at the greatest span. */
  Figure<Pressure> liveAtMost() {
    return printed("live_at_max_psf", Units.PSF);
  }

  /** The same figure, refused if the table does not print the panel's thickness for its rating. */
  <Q extends Quantity> Figure<Q> onlyIfPrinted(Figure<Q> figure) {
    return figure.onlyIf(isPrinted, reason);
  }

  private Figure<Length> thickness(String column) {
    return printed(column, Units.INCH).as("printed_" + column, Units.INCH);
  }

  private <Q extends Quantity> Figure<Q> printed(String column, Unit<Q> unit) {
    return TABLE.number(unit, column, rating);
  }

  private static String reason(Choice<SpanRating> rating, Figure<Length> given) {
    String printed =
        TABLE.rows().stream()
            .filter(row -> row.get(0).equals(rating.toString()))
            .flatMap(row -> List.of(LEAST, SECOND, THIRD).stream().map(column -> cell(row, column)))
            .distinct()
            .map(PrintedPanel::inThirtySeconds)
            .collect(joining(" or "));
    return "no panel of %s is printed for the span rating %s, only of %s (%s); read the stamp"
        .formatted(said(given), rating, printed, SOURCE);
  }

  private static String said(Figure<Length> given) {
    boolean isInParts =
        given.refusal().isEmpty() && given.value() * PARTS == Math.rint(given.value() * PARTS);
    return isInParts ? inThirtySeconds(given.value()) : given.toString();
  }

  private static double cell(List<String> row, String column) {
    return Double.parseDouble(row.get(TABLE.keys().size() + TABLE.columns().indexOf(column)));
  }

  private static String inThirtySeconds(double inches) {
    long whole = (long) inches;
    long parts = Math.round((inches - whole) * PARTS);
    long common = Long.lowestOneBit(PARTS + parts);
    String fraction = parts == 0 ? "" : parts / common + "/" + PARTS / common;
    String between = whole > 0 && parts > 0 ? "-" : "";
    return (whole == 0 ? "" : whole) + between + fraction + " in";
  }
}
