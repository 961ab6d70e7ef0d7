package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/** Rafters that are held between plate and ridge. */
public final class StruttedRafters {

  private StruttedRafters() {}

  /**
   * The span that counts of a rafter with a strut below it: the longest between supports, and all
   * of it unless somebody has seen the strut stand on a bearing wall.
   *
   * <pre>
   * span = max(strut, L − strut)   if the strut stands on a bearing wall, else L
   * </pre>
   *
   * <p>Does not cover the strut itself, its slope of 45 degrees at least, its 8 ft unbraced at
   * most, the purlin, or the wall below. A strut that stands on a ceiling is a stop: see {@code
   * framing_stop}. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * struttedSpan(ft(14), Strut.at(ft(8)).onWall(ON_BEARING_WALL)) // 8' 0"
   * struttedSpan(ft(14), Strut.at(ft(5)).onWall(ON_BEARING_WALL)) // 9' 0"
   * struttedSpan(ft(14), Strut.at(ft(8))) // 14' 0"
   * }</pre>
   *
   * @param span L from plate to ridge on the horizontal projection, 1 ft to 40 ft
   * @param strut where it meets the rafter, 0 ft to 40 ft from the plate, and what it stands on;
   *     one at the ridge or beyond holds nothing
   * @return feet on the horizontal projection
   * @throws RefusedException if a length lies outside its range
   * @see "IRC 2021, R802.4.5, from memory: the span between purlins or walls"
   */
  @LibraryFunction(words = {"purlin", "strut", "brace", "kicker"})
  @Column("counted_span_ft")
  public static Figure<Length> struttedSpan(@Column("span_ft") Figure<Length> span, Strut strut) {
    var whole =
        span.within(
                "span_ft",
                Units.FOOT,
                Limits.between(ClearSpan.LEAST_FT, ClearSpan.MOST_FT, ClearSpan.RULE))
            .as("span_in", Units.INCH)
            .symbol("L");
    return strut.longest(whole).as("counted_span_ft", Units.FOOT);
  }
}
