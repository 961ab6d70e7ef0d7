package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.roof.SheetSize;

/** Existing decks under a re-roof rule that the user states. */
public final class ReNailings {

  private static final Figure<Nails> NO_NAILS = Figure.of(0, Units.NAIL);
  private static final Figure<Per<Nails, Sheets>> NONE = Figure.of(0, Units.NAILS_PER_SHEET);

  private ReNailings() {}

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
  @LibraryFunction(words = {"plank", "skip sheathing", "spaced boards"})
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
   * reNailing(ReRoofRule.oldNailsCount(YES), in(12), nailsPerSheet(33), in(24)).nails() // 12 nails/sheet
   * reNailing(ReRoofRule.oldNailsCount(NO), in(6), nailsPerSheet(45), in(24)).nails() // 45 nails/sheet
   * reNailing(ReRoofRule.oldNailsCount(YES), in(6), nailsPerSheet(45), in(24)).needed() // no
   * }</pre>
   *
   * @param rule what the building department asks
   * @param oldSpacing greatest distance between sound old nails, 1 in to 48 in
   * @param soundNails old nails in the sheet that hold, 0 to 500
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @return yes or no, and whole nails to drive into one 4 by 8 sheet
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: the form that re-roof rules take"
   */
  @LibraryFunction(words = {"renail", "reroof", "existing deck"})
  public static ReNailing reNailing(
      ReRoofRule rule,
      @Column("old_spacing_in") Figure<Length> oldSpacing,
      @Column(value = "sound_nails", unit = "nails/sheet") Figure<Per<Nails, Sheets>> soundNails,
      @Column("support_spacing_in") Figure<Length> supportSpacing) {
    Choice<YesNo> count = rule.oldNailsCount().choice();
    var old =
        oldSpacing.within(
            "old_spacing_in", Units.INCH, Limits.between(1, 48, "the widest on an opened sheet"));

    Choice<YesNo> isEnough =
        Condition.all(count.is(YesNo.YES), old.isAtMost(rule.enough())).as("old_nails_are_enough");
    var toAdd =
        NailCounts.nailsToAdd(
                soundNails, supportSpacing, rule.nailing(), count, SheetSize.FOUR_BY_EIGHT)
            .as("nails_by_the_rule", Units.NAILS_PER_SHEET);
    var nails =
        Figure.choose(isEnough.is(YesNo.YES), NONE, toAdd)
            .as("nails", Units.NAILS_PER_SHEET, Source.COMMON_PRACTICE);
    return new ReNailing(nails.isMoreThan(NONE).as("needed"), nails);
  }
}
