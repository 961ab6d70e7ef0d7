package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
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
import sheathwright.roof.SupportSpacing;

/** How many nails a sheet takes, and how many an old one lacks. */
public final class NailCounts {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Per<Nails, Sheets>> NO_NAILS = Figure.of(0, Units.NAILS_PER_SHEET);
  private static final Figure<Length> EDGE_DISTANCE =
      Figure.constant(
              "edge_distance_in",
              0.375,
              Units.INCH,
              Source.secondHand("panel fastener edge distance"))
          .symbol("3/8 in");

  private NailCounts() {}

  /**
   * How many nails hold one whole sheet that lies with its long side across the rafters and both
   * ends on rafters.
   *
   * <pre>
   * nails = 2 × (⌈(width − 2 × 3/8 in) ÷ edge spacing⌉ + 1) on the two ends
   *       + (⌈length ÷ support spacing⌉ − 1) × (⌈(width − 2 × 3/8 in) ÷ field spacing⌉ + 1) on the supports between
   *       + 2 × (⌈bay ÷ edge spacing⌉ − 1) in each bay, if the long edges are blocked
   * </pre>
   *
   * <p>Does not cover which spacing the code asks for, pieces and patches, nails lost or missed, or
   * old nails that may count.
   *
   * <pre>{@code
   * nailsPerSheet(in(16), Nailing.edge(in(6)).field(in(12)), FOUR_BY_EIGHT) // 43 nails/sheet
   * nailsPerSheet(in(24), Nailing.edge(in(6)).field(in(6)), FOUR_BY_EIGHT) // 45 nails/sheet
   * }</pre>
   *
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @param nailing how far apart its nails stand
   * @param sheet how large it is
   * @return whole nails for one sheet
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: lines of nails at the stated spacing, 3/8 in from the sheet's
   *     edges"
   */
  @LibraryFunction(words = {"nailing pattern", "fasteners"})
  @Column(value = "nails", unit = "nails/sheet")
  public static Figure<Per<Nails, Sheets>> nailsPerSheet(
      @Column("support_spacing_in") Figure<Length> supportSpacing,
      Nailing nailing,
      SheetSize sheet) {
    var support = SupportSpacing.within(supportSpacing);
    var edge = nailing.edge();

    var line = line(sheet.width());
    var endLine = spaces(line, edge).plus(ONE).as("nails_on_an_end", Units.RATIO);
    var fieldLine = spaces(line, nailing.field()).plus(ONE).as("nails_on_a_support", Units.RATIO);
    var bays = spaces(sheet.length(), support).as("bays", Units.RATIO);
    var wholeBays = bays.minus(ONE).as("supports_between", Units.RATIO);
    var lastBay = sheet.length().minus(wholeBays.times(support)).as("last_bay_in", Units.INCH);
    var onBlocking =
        wholeBays
            .times(spaces(support, edge).minus(ONE))
            .in(Units.RATIO)
            .plus(spaces(lastBay, edge).minus(ONE))
            .as("nails_on_a_blocked_edge", Units.RATIO);
    var onLongEdges =
        Figure.choose(
                nailing.blockedEdges().choice().is(YesNo.YES),
                TWO.times(onBlocking).in(Units.RATIO),
                NONE)
            .as("nails_on_long_edges", Units.RATIO);

    var nails =
        TWO.times(endLine).in(Units.RATIO).plus(wholeBays.times(fieldLine)).plus(onLongEdges);
    return nails
        .counting(Units.NAILS_PER_SHEET)
        .as("nails", Units.NAILS_PER_SHEET, Source.COMMON_PRACTICE);
  }

  /**
   * How many nails to add to a whole sheet that already has some, with or without credit for the
   * old ones.
   *
   * <pre>
   * nails = nails per sheet − sound nails, but not less than none, if the old ones may count
   *       = nails per sheet, if they may not
   * </pre>
   *
   * <p>Does not cover where the old nails sit: with credit each is taken to stand where the
   * schedule wants one, so look at the spacing as well as at the number. Nails that miss the
   * rafter, have pulled through, are rusted or proud are not sound. Which rule holds is the
   * building department's to say.
   *
   * <pre>{@code
   * nailsToAdd(nailsPerSheet(24), in(16), Nailing.edge(in(6)).field(in(12)), YES, FOUR_BY_EIGHT) // 19 nails/sheet
   * nailsToAdd(nailsPerSheet(33), in(24), Nailing.edge(in(6)).field(in(6)), NO, FOUR_BY_EIGHT) // 45 nails/sheet
   * }</pre>
   *
   * @param soundNails old nails in the sheet that hold, 0 to 500
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @param nailing how far apart the schedule wants nails
   * @param credit whether the rule lets old nails count
   * @param sheet how large it is
   * @return whole nails to drive into one sheet
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: the schedule's count less the sound nails"
   */
  @LibraryFunction(words = {"renail", "supplemental nails", "extra nails"})
  @Column(value = "nails", unit = "nails/sheet")
  public static Figure<Per<Nails, Sheets>> nailsToAdd(
      @Column(value = "sound_nails", unit = "nails/sheet") Figure<Per<Nails, Sheets>> soundNails,
      @Column("support_spacing_in") Figure<Length> supportSpacing,
      Nailing nailing,
      @Column("credit") OneOf<YesNo> credit,
      SheetSize sheet) {
    var sound =
        soundNails.within(
            "sound_nails",
            Units.NAILS_PER_SHEET,
            Limits.whole(0, 500, "counted on an opened sheet; 0 if none holds"));
    var wanted =
        nailsPerSheet(supportSpacing, nailing, sheet).as("nails_wanted", Units.NAILS_PER_SHEET);
    var missing = wanted.minus(sound).max(NO_NAILS).as("nails_missing", Units.NAILS_PER_SHEET);
    return Figure.choose(credit.choice().argument("credit").is(YesNo.YES), missing, wanted)
        .as("nails", Units.NAILS_PER_SHEET, Source.COMMON_PRACTICE);
  }

  /** The line of nails across a piece of this width, 3/8 in short of both edges. */
  static Figure<Length> line(Figure<Length> width) {
    return width.minus(TWO.times(EDGE_DISTANCE)).as("nail_line_in", Units.INCH);
  }

  /** Spaces between nails along a length. */
  static Figure<Ratio> spaces(Figure<Length> along, Figure<Length> spacing) {
    return along.dividedBy(spacing).in(Units.RATIO).roundedUp();
  }
}
