package sheathwright.job.triage;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.job.table.Field;
import sheathwright.sheathing.triage.SheetTest;

/** The columns of the table of a firm's own rules for what is done about a mark. */
public final class RuleFields {

  /** Which way a measure bounds. */
  enum Sense implements sheathwright.figure.Option<Sense> {
    ABOVE,
    BELOW,
    IS
  }

  static final Field<Choice<SheetTest>> TEST = Field.word("test", "Test", SheetTest.class);

  static final Field<Choice<String>> MEASURE = Field.name("measure", "What it measures").ifKnown();

  static final Field<Choice<Sense>> SENSE =
      Field.word("sense", "It speaks where the measure is", Sense.class).ifKnown();

  static final Field<Choice<String>> LIMIT = Field.line("limit", "The firm's limit").ifKnown();

  static final Field<Choice<String>> UNIT = Field.name("unit", "Unit of the limit").ifKnown();

  static final Field<Choice<Decided>> ACTION =
      Field.word("action", "What is done where it speaks", Decided.class).ifKnown();

  static final Field<Choice<String>> WHY = Field.text("why", "Why").ifKnown();

  static final Field<Choice<String>> SOURCE = Field.line("source", "Whose rule").ifKnown();

  static final Field<Figure<Ratio>> ORDER =
      Field.whole("order", "Which test comes before which", Units.RATIO, 1, 99).ifKnown();

  /** All of them. */
  public static final List<Field<?>> RULES =
      List.of(TEST, MEASURE, SENSE, LIMIT, UNIT, ACTION, WHY, SOURCE, ORDER);

  private RuleFields() {}
}
