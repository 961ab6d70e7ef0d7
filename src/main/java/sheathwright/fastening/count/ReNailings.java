package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/** Existing decks under a re-roof rule that the user states. */
public final class ReNailings {

  private static final Figure<Nails> NO_NAILS = Figure.of(0, Units.NAIL);
  private static final Figure<Per<Nails, Sheets>> NONE = Figure.of(0, Units.NAILS_PER_SHEET);

  private static final Figure<Length> SHEET_LENGTH = whole("sheet_length_in", 96);
  private static final Figure<Length> SHEET_WIDTH = whole("sheet_width_in", 48);

  private ReNailings() {}

  private static Figure<Length> whole(String name, double inches) {
    return Figure.constant(name, inches, Units.INCH, Source.derived("a 4 by 8 sheet"));
  }

  /**
   * How many nails to add where deck boards cross rafters, at two a board and rafter.
   *
   * <pre>
   * nails = crossings × nails each − sound nails, but not less than none
   * </pre>
   *
   * <p>Does not cover boards wider than 8 in, which can want a third nail, split boards, or nails
   * that sit in some crossings twice and are missing in others: count those by the crossing.
   *
   * <pre>{@code
   * boardNails(number(400), nails(690), number(2)) // 110 nails
   * }</pre>
   *
   * @param crossings places where a board lies on a rafter, 0 to 100000
   * @param soundNails nails of 8d or larger that hold there, 0 to 500000
   * @param nailsEach wanted at each crossing, 1 to 4
   * @return whole nails to drive
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: one state's guide to re-roofing holds two 8d nails a crossing
   *     enough"
   */
  @LibraryFunction
  @Column(value = "nails", unit = "nail")
  public static Figure<Nails> boardNails(
      @Column("crossings") Figure<Ratio> crossings,
      @Column(value = "sound_nails", unit = "nail") Figure<Nails> soundNails,
      @Column(value = "nails_each", preset = "2") Figure<Ratio> nailsEach) {
    var places =
        crossings.within(
            "crossings", Units.RATIO, Limits.whole(0, 100_000, "boards times rafters"));
    var sound =
        soundNails.within("sound_nails", Units.NAIL, Limits.whole(0, 500_000, "0 if none holds"));
    var each = nailsEach.within("nails_each", Units.RATIO, Limits.whole(1, 4, "2 is usual"));
    return places
        .times(each)
        .in(Units.RATIO)
        .counting(Units.NAIL)
        .as("nails_wanted", Units.NAIL)
        .minus(sound)
        .max(NO_NAILS)
        .as("nails", Units.NAIL, Source.COMMON_PRACTICE);
  }

  /**
   * How many nails a re-roof rule adds to each sheet of an existing deck, if it asks for any.
   *
   * <pre>
   * nothing                                  if the old nails count and stand within the enough spacing
   * the rule's nails per sheet − sound nails if the old nails count
   * the rule's nails per sheet               if they do not
   * </pre>
   *
   * <p>Does not cover what your building department's rule says: state it here. Such rules often
   * let staples and 6d nails count for nothing, smooth 8d nails only in lower wind, ring-shank 8d
   * nails always; they name nail and spacing, and are mostly triggered by a full tear-off. Boards
   * are counted otherwise: see {@code board_nails}.
   *
   * <pre>{@code
   * reNailing(YES, in(12), in(6), nailsPerSheet(33), in(24), in(6), in(6)).nails() // 12 nails/sheet
   * reNailing(NO, in(6), in(6), nailsPerSheet(45), in(24), in(6), in(6)).nails() // 45 nails/sheet
   * reNailing(YES, in(6), in(6), nailsPerSheet(45), in(24), in(6), in(6)).needed() // no
   * }</pre>
   *
   * @param oldNailsCount whether the rule lets this deck's nails count in this wind
   * @param oldSpacing greatest distance between sound old nails, 1 in to 48 in
   * @param enoughSpacing old nails no further apart than this are enough by the rule, 0 in to 24
   *     in; 0 if they never are
   * @param soundNails old nails in the sheet that hold, 0 to 500
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @param edgeSpacing that the rule wants along the sheet's edges on framing, 1 in to 24 in
   * @param fieldSpacing that the rule wants on the supports between, 1 in to 24 in
   * @return yes or no, and whole nails to drive into one 4 by 8 sheet
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: the form that re-roof rules take"
   */
  @LibraryFunction
  public static ReNailing reNailing(
      @Column("old_nails_count") OneOf<YesNo> oldNailsCount,
      @Column("old_spacing_in") Figure<Length> oldSpacing,
      @Column(value = "enough_spacing_in", preset = "6") Figure<Length> enoughSpacing,
      @Column(value = "sound_nails", unit = "nails/sheet") Figure<Per<Nails, Sheets>> soundNails,
      @Column("support_spacing_in") Figure<Length> supportSpacing,
      @Column(value = "edge_spacing_in", preset = "6") Figure<Length> edgeSpacing,
      @Column(value = "field_spacing_in", preset = "6") Figure<Length> fieldSpacing) {
    Choice<YesNo> count = oldNailsCount.choice().argument("old_nails_count");
    var old =
        oldSpacing.within(
            "old_spacing_in", Units.INCH, Limits.between(1, 48, "the widest on an opened sheet"));
    var enough =
        enoughSpacing.within(
            "enough_spacing_in", Units.INCH, Limits.between(0, 24, "0 if they never are enough"));

    Choice<YesNo> isEnough =
        Condition.all(count.is(YesNo.YES), old.isAtMost(enough)).as("old_nails_are_enough");
    var toAdd =
        NailCounts.nailsToAdd(
                soundNails,
                supportSpacing,
                edgeSpacing,
                fieldSpacing,
                count,
                YesNo.NO,
                SHEET_LENGTH,
                SHEET_WIDTH)
            .as("nails_by_the_rule", Units.NAILS_PER_SHEET);
    var nails =
        Figure.choose(isEnough.is(YesNo.YES), NONE, toAdd)
            .as("nails", Units.NAILS_PER_SHEET, Source.COMMON_PRACTICE);
    return new ReNailing(nails.isMoreThan(NONE).as("needed"), nails);
  }
}
