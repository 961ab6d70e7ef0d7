package sheathwright.job;

import java.util.List;
import sheathwright.fastening.count.Nailing;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;
import sheathwright.sheathing.layout.StripRule;
import sheathwright.sheathing.place.BillRule;
import sheathwright.wood.LumberSize;

/** What job.csv may say of a job, its deck and its sisters. */
public final class JobFields {

  public static final Field<Choice<String>> JOB_NAME = Field.line("job_name", "Job");

  public static final Field<Choice<String>> CUSTOMER = Field.line("customer", "For");

  public static final Field<Choice<String>> SITE = Field.line("site", "Site");

  public static final Field<Choice<String>> PREPARED_BY = Field.line("prepared_by", "Prepared by");

  public static final Field<Choice<String>> QUOTE_NUMBER =
      Field.line("quote_number", "Quote number");

  public static final Field<Choice<String>> QUOTE_DATE = Field.date("quote_date", "Quote date");

  public static final Field<Figure<Ratio>> VALID_DAYS =
      Field.number("valid_days", "Price good for, days", Units.RATIO, 1, 365);

  public static final Field<Choice<String>> LOOKED_AT =
      Field.text("looked_at", "What was looked at").ifKnown();

  public static final Field<Choice<String>> NOT_LOOKED_AT =
      Field.text("not_looked_at", "What could not be seen").ifKnown();

  static final Field<Figure<Money>> BASE_ROOFING =
      Field.number(
              "base_roofing_usd",
              "Roof covering, by the roofing price book",
              Units.USD,
              0,
              1_000_000)
          .usuallyOrNone(500, 500_000);

  public static final Field<Figure<Money>> PERMIT =
      Field.number("permit_usd", "Permit", Units.USD, 0, 50_000).usuallyOrNone(5, 5_000);

  static final Field<Figure<Money>> ENGINEER =
      Field.number("engineer_usd", "Engineer's letter, at cost", Units.USD, 0, 50_000).ifKnown();

  public static final Field<Figure<Sheets>> PLANNED_SHEETS =
      Field.whole("planned_sheets", "Deck sheets in the price", Units.SHEET, 0, 5_000);

  static final Field<Figure<Per<Money, Sheets>>> CREDIT =
      Field.number("credit_usd", "Credit for a sheet not needed", Units.USD_PER_SHEET, 0, 1_000);

  static final Field<Figure<Length>> SUPPORT_SPACING =
      Field.number("support_spacing_in", "Rafter or truss spacing, on center", Units.INCH, 6, 96);

  static final Field<Choice<YesNo>> BLOCKED_EDGES =
      Field.of(Nailing.class, "blockedEdges", "Long panel edges blocked");

  static final List<Field<?>> JOB =
      List.of(
          JOB_NAME,
          CUSTOMER,
          SITE,
          PREPARED_BY,
          QUOTE_NUMBER,
          QUOTE_DATE,
          VALID_DAYS,
          LOOKED_AT,
          NOT_LOOKED_AT,
          BASE_ROOFING,
          PERMIT,
          ENGINEER,
          PLANNED_SHEETS,
          CREDIT,
          SUPPORT_SPACING,
          BLOCKED_EDGES);

  /** The same; what the firm says, a job need not. */
  static List<Field<?>> job(boolean isFirmNamed, boolean isNumberTaken) {
    return JOB.stream()
        .<Field<?>>map(
            field ->
                (field == PREPARED_BY && isFirmNamed) || (field == QUOTE_NUMBER && isNumberTaken)
                    ? field.ifKnown()
                    : field)
        .toList();
  }

  static final Field<Choice<LumberSize>> SISTER_SIZE =
      Field.word("sister_size", "Sister size", LumberSize.class);

  static final Field<Figure<Length>> SISTER_SPAN =
      Field.number("sister_span_ft", "Bearing to bearing along the rafter", Units.FOOT, 2, 40);

  static final Field<Figure<Length>> SISTER_TOLERANCE =
      Field.number("sister_tolerance_in", "Most drop to shim, not sister", Units.INCH, 0, 2);

  static final Field<Figure<Length>> SHIM_TOLERANCE =
      Field.number("shim_tolerance_in", "Drop left as is", Units.INCH, 0, 2);

  static final Field<Figure<Length>> SISTER_LAP =
      Field.number("sister_lap_in", "Sister runs past the drop by", Units.INCH, 0, 120);

  static final Field<Figure<Length>> SISTER_NAIL_SPACING =
      Field.number("sister_nail_spacing_in", "Sister nail spacing", Units.INCH, 2, 48);

  static final Field<Figure<Ratio>> SISTER_NAIL_ROWS =
      Field.whole("sister_nail_rows", "Nail rows per sister", Units.RATIO, 1, 4);

  static final List<Field<?>> SISTERS =
      List.of(
          SISTER_SIZE,
          SISTER_SPAN,
          SISTER_TOLERANCE,
          SHIM_TOLERANCE,
          SISTER_LAP,
          SISTER_NAIL_SPACING,
          SISTER_NAIL_ROWS);

  static final Field<Choice<StripRule>> STRIP_RULE =
      Field.word("strip_rule", "Strip at the ridge", StripRule.class).ifKnown();

  public static final Field<Figure<Length>> GAP =
      Field.number("gap_in", "Gap between sheets", Units.INCH, 0, 1).ifKnown();

  public static final Field<Choice<BillRule>> BILL_RULE =
      Field.word("bill_rule", "One sheet on the bill is counted by", BillRule.class).ifKnown();

  static final List<Field<?>> DECK = List.of(STRIP_RULE, GAP, BILL_RULE);

  static final Field<Figure<Length>> BEYOND_MARK =
      Field.number("beyond_mark_in", "Cut past the mark", Units.INCH, 0, 48).ifKnown();

  static final List<Field<?>> PATCHES = List.of(BEYOND_MARK);

  /** Sisters of a survey are as long as their rafters ask, not as a parabola does. */
  static List<Field<?>> sisters(boolean isSurveyed) {
    return SISTERS.stream().filter(field -> !isSurveyed || field != SISTER_SPAN).toList();
  }

  private JobFields() {}
}
