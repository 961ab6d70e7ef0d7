package sheathwright.job.life;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Option;
import sheathwright.job.table.Field;

/** The columns of the table of what was inspected while the deck was open. */
public final class InspectionFields {

  /** How what was found is held against what is required. */
  public enum Sense implements Option<Sense> {
    AT_LEAST,
    AT_MOST,
    /** The same word or number. */
    IS
  }

  /** What an inspection came to. */
  public enum Result implements Option<Result> {
    PASS,
    FAIL,
    /** Nobody has said yet. */
    OPEN
  }

  public static final Field<Choice<String>> WHAT = Field.line("what", "What was looked at");

  public static final Field<Choice<String>> REQUIRED =
      Field.line("required", "What is required").ifKnown();

  public static final Field<Choice<String>> FOUND = Field.line("found", "What is there").ifKnown();

  public static final Field<Choice<String>> UNIT = Field.name("unit", "Both in").ifKnown();

  public static final Field<Choice<Sense>> SENSE =
      Field.word("sense", "At least, at most, or the same", Sense.class).ifKnown();

  public static final Field<Choice<String>> EVIDENCE =
      Field.text("evidence", "How it is known").ifKnown();

  public static final Field<Choice<String>> BY = Field.line("by", "Looked at by").ifKnown();

  public static final Field<Choice<String>> ON = Field.date("on", "Looked at on").ifKnown();

  public static final Field<Choice<Result>> RESULT =
      Field.word("result", "It came to", Result.class).ifKnown();

  public static final Field<Choice<String>> CODE =
      Field.line("code", "By which section of the code").ifKnown();

  /** One thing looked at each. */
  public static final List<Field<?>> INSPECTIONS =
      List.of(WHAT, REQUIRED, FOUND, UNIT, SENSE, EVIDENCE, BY, ON, RESULT, CODE);

  private InspectionFields() {}
}
