package sheathwright.job.life;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;

/** What job.csv may say of how a job goes on: dates, crew, and what was agreed of changes. */
public final class LifeFields {

  public static final Field<Choice<Stage>> STAGE =
      Field.word("stage", "How far the job has come", Stage.class).ifKnown();

  public static final Field<Figure<Ratio>> BUILT_YEAR =
      Field.whole("built_year", "Built in", Units.RATIO, 1_600, 2_100).ifKnown();

  public static final Field<Figure<Ratio>> LAYERS_ON =
      Field.whole("layers_on", "Layers of covering on the deck", Units.RATIO, 0, 9).ifKnown();

  public static final Field<Choice<OldCovering>> OLD_COVERING =
      Field.word("old_covering", "The old covering", OldCovering.class).ifKnown();

  public static final Field<Choice<YesNo>> KNOWN_LEAK =
      Field.word("known_leak", "A leak is known", YesNo.class).ifKnown();

  public static final Field<Choice<YesNo>> FAN_INTO_ATTIC =
      Field.word("fan_into_attic", "A fan blows into the attic", YesNo.class).ifKnown();

  public static final Field<Choice<YesNo>> COVERING_OFF =
      Field.word("covering_off", "The old covering comes off", YesNo.class).ifKnown();

  public static final Field<Choice<String>> ASKED_ON = date("asked_on", "Asked on");

  public static final Field<Choice<String>> LOOKED_ON = date("looked_on", "Looked at on");

  public static final Field<Choice<String>> AGREED_ON = moment("agreed_on", "Agreed on");

  public static final Field<Choice<String>> OPENED_ON = moment("opened_on", "Opened on");

  public static final Field<Choice<String>> CLOSED_ON = moment("closed_on", "Closed on");

  /** The dates of a job in the order in which they come. */
  public static final List<Field<Choice<String>>> DATES =
      List.of(ASKED_ON, LOOKED_ON, AGREED_ON, OPENED_ON, CLOSED_ON);

  public static final Field<Figure<Ratio>> CREW =
      Field.whole("crew", "People on the roof", Units.RATIO, 1, 50).ifKnown();

  public static final Field<Figure<Time>> CREW_HOURS =
      Field.number("crew_hours", "Hours of a day, each", Units.HOUR, 0.5, 16).ifKnown();

  public static final Field<Figure<Ratio>> EFFICIENCY =
      Field.number("efficiency_pct", "Of which spent working", Units.PERCENT, 10, 100).ifKnown();

  public static final Field<Figure<Sheets>> TRUCK_SHEETS =
      Field.number("truck_sheets", "Sheets on the truck", Units.SHEET, 0, 5_000).ifKnown();

  public static final Field<Choice<String>> START_ON = date("start_on", "Starts on");

  public static final Field<Choice<String>> APPROVER =
      Field.line("approver", "Who may say yes to a change").ifKnown();

  public static final Field<Choice<String>> APPROVER_CONTACT =
      Field.line("approver_contact", "How to reach them").ifKnown();

  public static final Field<Figure<Time>> ANSWER_WITHIN =
      Field.number("answer_within_h", "A change is answered within", Units.HOUR, 0.25, 240)
          .ifKnown();

  public static final Field<Figure<Sheets>> PRE_AGREED_SHEETS =
      Field.number("pre_agreed_sheets", "Sheets that need no further yes", Units.SHEET, 0, 5_000)
          .ifKnown();

  public static final Field<Figure<Money>> PRE_AGREED_SUM =
      Field.number("pre_agreed_usd", "Sum that needs no further yes", Units.USD, 0, 1_000_000)
          .ifKnown();

  public static final Field<Figure<Sheets>> CEILING_SHEETS =
      Field.number("ceiling_sheets", "No more sheets than this are billed", Units.SHEET, 0, 5_000)
          .ifKnown();

  public static final Field<Figure<Sheets>> REOPEN_SHEETS =
      Field.number(
              "reopen_sheets", "Beyond so many sheets both sides talk again", Units.SHEET, 0, 5_000)
          .ifKnown();

  public static final Field<Choice<String>> DEPOSIT_RULE =
      Field.text("deposit_rule", "What holds of the deposit").ifKnown();

  public static final Field<Choice<String>> CANCEL_RULE =
      Field.text("cancel_rule", "What holds if the owner cancels").ifKnown();

  public static final Field<Choice<String>> PRICE_UNTIL = date("price_until", "Prices hold until");

  /**
   * What changes neither what the owner pays nor what he gets: how the work is planned, who is
   * asked, what is known of the house.
   */
  public static final List<Field<?>> BESIDE_THE_PRICE =
      List.of(
          BUILT_YEAR,
          LAYERS_ON,
          OLD_COVERING,
          KNOWN_LEAK,
          FAN_INTO_ATTIC,
          CREW,
          CREW_HOURS,
          EFFICIENCY,
          TRUCK_SHEETS,
          START_ON,
          APPROVER,
          APPROVER_CONTACT,
          ANSWER_WITHIN,
          PRICE_UNTIL);

  /** All of them. */
  public static final List<Field<?>> JOB =
      List.of(
          STAGE,
          BUILT_YEAR,
          LAYERS_ON,
          OLD_COVERING,
          KNOWN_LEAK,
          FAN_INTO_ATTIC,
          COVERING_OFF,
          ASKED_ON,
          LOOKED_ON,
          AGREED_ON,
          OPENED_ON,
          CLOSED_ON,
          CREW,
          CREW_HOURS,
          EFFICIENCY,
          TRUCK_SHEETS,
          START_ON,
          APPROVER,
          APPROVER_CONTACT,
          ANSWER_WITHIN,
          PRE_AGREED_SHEETS,
          PRE_AGREED_SUM,
          CEILING_SHEETS,
          REOPEN_SHEETS,
          DEPOSIT_RULE,
          CANCEL_RULE,
          PRICE_UNTIL);

  public static final Field<Choice<String>> QUESTION = Field.line("question", "Asked");

  public static final Field<Choice<String>> ANSWER = Field.text("answer", "Answer").ifKnown();

  /** What is asked before anybody goes there; it decides whether and how somebody does. */
  public static final List<Field<?>> FIRST_CALL = List.of(QUESTION, ANSWER);

  public static final Field<Figure<Length>> WHEN_DONE =
      Field.number("done_in", "Below the string when the work is done", Units.INCH, -6, 6)
          .ifKnown();

  public static final Field<Choice<String>> WHEN_DONE_ON =
      Field.date("done_on", "Read so on").ifKnown();

  /** How a rafter lies once it is repaired, beside how it lay. */
  public static final List<Field<?>> DONE = List.of(WHEN_DONE, WHEN_DONE_ON);

  private LifeFields() {}

  private static Field<Choice<String>> date(String name, String label) {
    return Field.date(name, label).ifKnown();
  }

  private static Field<Choice<String>> moment(String name, String label) {
    return Field.moment(name, label).ifKnown();
  }
}
