package sheathwright.job.triage;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Units;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Field;
import sheathwright.job.zone.ZoneFields;

/**
 * The columns of what is told a covering's maker besides his requirements: whom he answered when,
 * and what screws held that were pulled out of the deck.
 */
public final class PullFields {

  /** What gave way. */
  public enum Broke implements Option<Broke> {
    WOOD,
    SCREW,
    /** Nothing did, as far as it was pulled. */
    NONE
  }

  public static final Field<Choice<String>> SCREW = Field.line("screw", "Screw, by name and size");

  public static final Field<Figure<Force>> HELD =
      Field.number("lb", "It held", Units.POUND, 0, 5_000);

  public static final Field<Choice<Broke>> BROKE =
      Field.word("broke", "What gave way", Broke.class).ifKnown();

  public static final Field<Choice<String>> ON = Field.date("on", "Pulled on").ifKnown();

  public static final Field<Choice<String>> BY = Field.line("by", "Pulled by").ifKnown();

  /** One screw that was pulled each. */
  public static final List<Field<?>> PULL_TESTS =
      List.of(ZoneFields.ITS_PLANE, OrderFields.OF_SHEET, SCREW, HELD, BROKE, ON, BY);

  public static final Field<Choice<String>> REQUIREMENT = Field.line("requirement", "Requirement");

  public static final Field<Choice<String>> ASKED_OF =
      Field.line("asked_of", "Who was asked about it").ifKnown();

  public static final Field<Choice<String>> ASKED_ON = Field.date("asked_on", "Asked on").ifKnown();

  public static final Field<Choice<String>> ANSWERED_ON =
      Field.date("answered_on", "Answered on").ifKnown();

  public static final Field<Choice<String>> DOCUMENT =
      Field.line("document", "The answer's document").ifKnown();

  /** What a requirement says of who was asked, and what came back. */
  public static final List<Field<Choice<String>>> ASKED =
      List.of(ASKED_OF, ASKED_ON, ANSWERED_ON, DOCUMENT);

  private PullFields() {}
}
