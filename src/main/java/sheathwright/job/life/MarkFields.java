package sheathwright.job.life;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;
import sheathwright.sheathing.triage.HoldEvidence;
import sheathwright.sheathing.triage.SheetEvidence;

/**
 * What marks.csv may say of a mark beyond where it lies: who saw it when, and what was measured.
 */
public final class MarkFields {

  /** When a mark was found. */
  public enum Seen implements sheathwright.figure.Option<Seen> {
    /** Before the old covering was off. */
    SURVEYED,
    /** After. */
    OPENED
  }

  /** What somebody decides about a mark; a blank leaves it to the rules. */
  public enum Decided implements sheathwright.figure.Option<Decided> {
    REPLACE,
    COVER,
    SUPPORT,
    RELIEVE,
    REFASTEN,
    DRY,
    LIFT,
    WATCH,
    STOP
  }

  public static final Field<Choice<Seen>> STAGE_FOUND =
      Field.word("stage_found", "Found when", Seen.class).ifKnown();

  public static final Field<Choice<String>> ON = Field.date("on", "Found on").ifKnown();

  public static final Field<Choice<String>> BY = Field.line("by", "Found by").ifKnown();

  public static final Field<Figure<Length>> PROBE =
      Field.<Figure<Length>>of(SheetEvidence.class, "probe", "An awl goes in").ifKnown();

  public static final Field<Figure<Ratio>> MOISTURE =
      Field.<Figure<Ratio>>of(SheetEvidence.class, "moisture", "Moisture by meter")
          .ifKnown()
          .usually(4, 100);

  public static final Field<Figure<Length>> THICKNESS =
      Field.<Figure<Length>>of(SheetEvidence.class, "thickness", "Panel thickness").ifKnown();

  public static final Field<Figure<Length>> HUMP =
      Field.<Figure<Length>>of(HoldEvidence.class, "hump", "Joint stands up").ifKnown();

  public static final Field<Figure<Length>> JOINT_GAP =
      Field.<Figure<Length>>of(HoldEvidence.class, "jointGap", "Gap of the joint").ifKnown();

  public static final Field<Figure<Length>> JOINT_LENGTH =
      Field.number("joint_ft", "Length of the joint", Units.FOOT, 0, 500).ifKnown();

  public static final Field<Figure<Length>> BEARING =
      Field.<Figure<Length>>of(HoldEvidence.class, "bearing", "End bears on its rafter").ifKnown();

  public static final Field<Choice<YesNo>> EDGE_SUPPORT =
      Field.word("edge_support", "Long edge held", YesNo.class).ifKnown();

  public static final Field<Figure<Per<Nails, Sheets>>> SOUND_NAILS =
      Field.<Figure<Per<Nails, Sheets>>>of(HoldEvidence.class, "soundNails", "Nails that hold")
          .ifKnown();

  public static final Field<Figure<Force>> HOLD =
      Field.<Figure<Force>>of(SheetEvidence.class, "hold", "A screw held").ifKnown();

  public static final Field<Choice<Cause>> CAUSE =
      Field.word("cause", "Where it comes from", Cause.class).ifKnown();

  public static final Field<Choice<Decided>> ACTION =
      Field.word("action", "What is done, if not by the rules", Decided.class).ifKnown();

  public static final Field<Choice<BilledTo>> BILL =
      Field.word("bill", "Who pays", BilledTo.class).ifKnown();

  public static final Field<Choice<YesNo>> VOID =
      Field.word("void", "Taken back", YesNo.class).ifKnown();

  private static final List<Field<?>> OWN =
      List.of(
          STAGE_FOUND,
          ON,
          BY,
          PROBE,
          MOISTURE,
          THICKNESS,
          HUMP,
          JOINT_GAP,
          JOINT_LENGTH,
          BEARING,
          EDGE_SUPPORT,
          SOUND_NAILS,
          HOLD,
          CAUSE,
          ACTION,
          BILL,
          VOID);

  private MarkFields() {}

  /**
   * The columns of a mark: where it lies, and these.
   *
   * @param ofBoards how much of it there is where the deck is boards
   */
  public static List<Field<?>> with(List<Field<?>> places, Field<?> ofBoards) {
    return Stream.of(places.stream(), OWN.stream(), Stream.<Field<?>>of(ofBoards))
        .flatMap(each -> each)
        .toList();
  }
}
