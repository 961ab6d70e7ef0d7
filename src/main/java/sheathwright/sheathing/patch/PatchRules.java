package sheathwright.sheathing.patch;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How bad wood is cut out. Each rule can be changed by the method of its name.
 *
 * @param beyondMark that is cut away beyond a mark, to sound wood
 * @param minLength least length of a new piece, across the supports
 * @param minHeight least height of a new piece, and of what is left of the old sheet beside it
 * @param minSpans fewest spans that a new piece crosses
 * @param anotherPatch area of sheet that starting another patch is worth: two patches are made one
 *     where that covers less than this more
 */
public record PatchRules(
    Figure<Length> beyondMark,
    Figure<Length> minLength,
    Figure<Length> minHeight,
    Figure<Ratio> minSpans,
    Figure<Area> anotherPatch) {

  /** To the square foot. */
  private static final double SQUARE_INCHES = 144;

  private static final Source SHORTEST =
      Source.read("FEMA 499, fact sheet 18: no piece under 4 ft");
  private static final Source NARROWEST =
      Source.secondHand("IRC Table R503.2.1.1(1), footnote: panels 24 in or wider");
  private static final Source SPANS = Source.read("APA E30V, page 62: two or more spans");

  /**
   * The usual rules: 3 in beyond the mark and 8 sq ft for another patch (both our own choice, no
   * source), pieces of 48 by 24 in at least, over two spans.
   */
  public static final PatchRules USUAL =
      new PatchRules(
          Figure.constant("beyond_mark_in", 3, Units.INCH, Source.COMMON_PRACTICE),
          Figure.constant("min_length_in", 48, Units.INCH, SHORTEST),
          Figure.constant("min_height_in", 24, Units.INCH, NARROWEST),
          Figure.constant("min_spans", 2, Units.RATIO, SPANS),
          Figure.constant("another_patch_sf", 8, Units.SQUARE_FOOT, Source.COMMON_PRACTICE));

  public PatchRules beyondMark(Figure<Length> inches) {
    double beyond = Reading.aside().number("beyond a mark", inches, Units.INCH);
    if (beyond < 0 || beyond > 48) {
      throw new RefusedException(
          "the cut beyond a mark is %s; it must be from 0 to 48 in, 3 is usual".formatted(inches),
          List.of(inches));
    }
    return new PatchRules(inches, minLength, minHeight, minSpans, anotherPatch);
  }

  public PatchRules minLength(Figure<Length> inches) {
    return new PatchRules(beyondMark, inches, minHeight, minSpans, anotherPatch);
  }

  public PatchRules anotherPatch(Figure<Area> area) {
    return new PatchRules(beyondMark, minLength, minHeight, minSpans, area);
  }

  /** The rules as plain values, lengths in inches, the area in square inches. */
  record Plain(
      double beyondMark, double minLength, double minHeight, int minSpans, double anotherPatch) {}

  /** Every rule, read. */
  Plain plain(Reading reading) {
    return new Plain(
        reading.number("cut away beyond a mark", beyondMark, Units.INCH),
        reading.number("least length of a piece", minLength, Units.INCH),
        reading.number("least height of a piece", minHeight, Units.INCH),
        (int) reading.number("fewest spans", minSpans, Units.RATIO),
        SQUARE_INCHES * reading.number("worth of another patch", anotherPatch, Units.SQUARE_FOOT));
  }
}
