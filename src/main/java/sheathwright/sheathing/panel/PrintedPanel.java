package sheathwright.sheathing.panel;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
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
 * an inch: one that is typed with two decimals is taken for the nearest of them. A stamp that the
 * code prints for other thicknesses only, or no longer, counts as the next lower one that it
 * prints; an unknown one counts as the least.
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

  private static final Figure<Length> LEAST_OF_OLD =
      Figure.constant(
              "least_old_panel_in", 0.3125, Units.INCH, Source.fromMemory("IRC 2000 to 2009"))
          .symbol("5/16 in");

  private final Choice<SpanRating> counted;
  private final Figure<Length> category;
  private final Condition isPrinted;

  PrintedPanel(RatedPanel panel) {
    Choice<SpanRating> stamped = panel.rating().choice().argument("span_rating");
    var given = panel.thickness();
    Choice<SpanRating> lower = lower(stamped).as("next_lower_rating");
    Choice<SpanRating> own = Choice.choose(isOld(stamped), lower, stamped).as("row_of_the_stamp");
    category =
        given
            .dividedBy(PART)
            .in(Units.RATIO)
            .rounded()
            .times(PART)
            .as("nearest_category_in", Units.INCH);
    Choice<YesNo> isOfTheRow =
        Condition.any(
                category.isTheSameAs(thickness(LEAST, own)),
                category.isTheSameAs(thickness(SECOND, own)),
                category.isTheSameAs(thickness(THIRD, own)))
            .as("category_is_of_the_row");
    isPrinted =
        Condition.all(
                given.isAtLeast(category.minus(NEAR)),
                given.isAtMost(category.plus(NEAR)),
                isOfTheRow.is(YesNo.YES))
            .as("thickness_is_printed")
            .is(YesNo.YES);
    Condition wasPrintedThin =
        Condition.any(stamped.is(SpanRating.RATING_16_0), stamped.is(SpanRating.RATING_20_0));
    var least =
        Figure.choose(wasPrintedThin, LEAST_OF_OLD, thickness(LEAST, lower))
            .as("least_of_the_lower_in", Units.INCH);
    counted =
        Choice.choose(isPrinted, own, lower)
            .as("row_that_counts")
            .onlyIf(
                Condition.any(isPrinted, given.isAtLeast(least.minus(NEAR))),
                reason(stamped, given, lower, least))
            .as("rating_that_counts", SOURCE);
  }

  /**
   * The rating that counts: the stamp's own, or the next lower printed one where the code does not
   * print a panel so thick under that stamp.
   */
  Choice<SpanRating> counted() {
    return counted.as("counted_as");
  }

  /** The least thickness that the table prints for a rating. */
  static Figure<Length> least(SpanRating rating) {
    return TABLE.number(Units.INCH, LEAST, rating);
  }

  /** How far a panel of that thickness reaches with nothing under its long edges. */
  static Figure<Length> unsupported(SpanRating rating) {
    return TABLE.number(Units.INCH, "unsupported_in", rating);
  }

  /** The greatest span with the long edges supported. */
  Figure<Length> supportedSpan() {
    return printed("supported_in", Units.INCH);
  }

  /** The greatest span with nothing under the long edges. */
  Figure<Length> unsupportedSpan() {
    return Figure.choose(
        Condition.all(isPrinted, category.isMoreThan(thickness(LEAST, counted))),
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

  private <Q extends Quantity> Figure<Q> printed(String column, Unit<Q> unit) {
    return TABLE.number(unit, column, counted);
  }

  private static Figure<Length> thickness(String column, Choice<SpanRating> row) {
    return TABLE
        .number(Units.INCH, column, row)
        .as(row.name() + "_" + column, Units.INCH, TABLE.source());
  }

  private static Choice<SpanRating> lower(Choice<SpanRating> stamped) {
    Choice<SpanRating> lower = Choice.literal(SpanRating.RATING_16_0);
    for (SpanRating rating : SpanRating.values()) {
      if (rating.lower() != SpanRating.RATING_16_0) {
        lower =
            Choice.choose(stamped.is(rating), rating.lower(), lower)
                .as("lower_up_to_" + rating.name().toLowerCase(Locale.ROOT));
      }
    }
    return lower;
  }

  private static Condition isOld(Choice<SpanRating> stamped) {
    return Condition.any(
        Stream.of(SpanRating.values())
            .filter(rating -> !rating.isPrinted())
            .map(stamped::is)
            .toArray(Condition[]::new));
  }

  private static String reason(
      Choice<SpanRating> stamped,
      Figure<Length> given,
      Choice<SpanRating> lower,
      Figure<Length> least) {
    String printed =
        TABLE.rows().stream()
            .filter(row -> row.get(0).equals(stamped.toString()))
            .flatMap(row -> List.of(LEAST, SECOND, THIRD).stream().map(column -> cell(row, column)))
            .distinct()
            .map(PrintedPanel::inThirtySeconds)
            .collect(joining(" or "));
    return "no panel of %s is printed for the span rating %s%s (%s), and an old one counts as %s from %s on; read the stamp"
        .formatted(
            said(given),
            stamped,
            printed.isEmpty() ? "" : ", only of " + printed,
            SOURCE,
            lower,
            said(least));
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
