package sheathwright.life.unseen;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.Job;
import sheathwright.job.life.LifeFields;

/**
 * The numbers that an office sets for a deck: sheets in the price, the number at which both sides
 * talk again, the ceiling. Each as the job has it and as the forecast suggests it, with the chance
 * that more is found.
 */
public final class DeckNumbers {

  private static final Figure<Ratio> NO = Figure.of(0, Units.RATIO);

  private final List<CountLine> lines;
  private final List<Number> numbers;
  private final Roll passed;
  private final Roll roll;

  /**
   * One of them.
   *
   * @param words what it is
   * @param name of its columns
   * @param now in the job
   * @param suggested by the forecast
   */
  private record Number(String words, String name, Figure<Sheets> now, Figure<Sheets> suggested) {}

  private DeckNumbers(Job job, DeckPricing pricing) {
    this.lines = pricing.lines();
    this.numbers =
        List.of(
            new Number(
                "Sheets in the price", "included", pricing.terms().included(), pricing.included()),
            new Number(
                "Talk again beyond",
                "reopen",
                DeckPricing.inTheJob(job, LifeFields.REOPEN_SHEETS),
                pricing.reopen()),
            new Number(
                "Ceiling on the bill",
                "ceiling",
                DeckPricing.inTheJob(job, LifeFields.CEILING_SHEETS),
                pricing.ceiling()));
    this.passed = counted();
    this.roll =
        Roll.of(
            "deck_numbers",
            "what the office sets",
            numbers,
            Roll.<Number>column("what", number -> Choice.literal(number.words())),
            Roll.column("now", Number::now),
            Roll.column("passed_now_pct", number -> chance(number, number.now(), "now")),
            Roll.column("suggested", Number::suggested),
            Roll.column(
                "passed_suggested_pct", number -> chance(number, number.suggested(), "suggested")));
  }

  /** The numbers of a job. */
  public static DeckNumbers of(Job job, DeckPricing pricing) {
    return new DeckNumbers(job, pricing);
  }

  private Roll counted() {
    List<Roll.Column<CountLine>> columns = new ArrayList<>();
    columns.add(Roll.column("sheets", CountLine::sheets));
    for (Number number : numbers) {
      if (!number.now().isAbsent()) {
        columns.add(Roll.column(number.name() + "_now", line -> ifMore(line, number.now())));
      }
      columns.add(
          Roll.column(number.name() + "_suggested", line -> ifMore(line, number.suggested())));
    }
    return Roll.of("deck_passed", "the chances of more than a number", lines, columns);
  }

  private static Figure<Ratio> ifMore(CountLine line, Figure<Sheets> than) {
    return Figure.choose(line.sheets().isMoreThan(than), line.chance(), NO);
  }

  private Figure<Ratio> chance(Number number, Figure<Sheets> limit, String which) {
    String column = number.name() + "_" + which;
    return limit.isAbsent()
        ? Figure.none("not set", Units.PERCENT)
        : passed.sum(column, Units.RATIO).as("more_than_" + column + "_pct", Units.PERCENT);
  }

  /** How likely more is found than each number, line by line. */
  public Roll passed() {
    return passed;
  }

  /** The numbers, a line each. */
  public Roll roll() {
    return roll;
  }
}
