package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/** Strips on top of a rafter, under the sheet. */
public final class Shims {

  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  private Shims() {}

  /**
   * How finely strips are ripped.
   *
   * @param step of thickness
   */
  public record Ripped(
      @Column(value = "step_in", preset = "1/16", least = 0.01, most = 1, rule = "1/16 is usual")
          Figure<Length> step) {

    public Ripped {
      step = Columns.of(Ripped.class).let("step", step);
    }

    /** To the next of these. */
    public static Ripped to(Figure<Length> step) {
      return new Ripped(step);
    }
  }

  /**
   * A strip under the sheet.
   *
   * @param thickness of the strip under the sheet
   */
  public record Strip(
      @Column(value = "shim_in", least = 0, most = 3, rule = "over about 1/2 use a sister")
          Figure<Length> thickness) {

    public Strip {
      thickness = Columns.of(Strip.class).let("thickness", thickness);
    }

    /** A strip of this thickness. */
    public static Strip of(Figure<Length> thickness) {
      return new Strip(thickness);
    }
  }

  /**
   * How thick a strip is at one station: the build-up there, up to the next step of thickness.
   *
   * <pre>
   * thickness = ⌈build-up ÷ step⌉ × step, nothing where the wood is at the target or higher
   * </pre>
   *
   * <p>Does not cover wood that stands too high, or build-ups that ask for a sister. Strips under
   * about 1/4 in are hard to rip: take felt, shingle or thin plywood.
   *
   * <pre>{@code
   * shimThickness(in("0.2"), Ripped.to(in("1/16"))) // 1/4 in
   * }</pre>
   *
   * @param buildUp from the wood up to the target, negative where the wood is higher, -24 in to 24
   *     in
   * @param strips as they are ripped
   * @return inches, zero where nothing is missing
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: strips to the next 1/16 in"
   */
  @LibraryFunction(words = {"furring", "strip", "cut list of shims", "rip"})
  @Column(value = "thickness_in", marked = Marked.UP)
  public static Figure<Length> shimThickness(
      @Column("build_up_in") Figure<Length> buildUp, Ripped strips) {
    var height =
        buildUp.within("build_up_in", Units.INCH, Limits.between(-24, 24, "low is positive"));
    return thickness(height, strips.step()).as("thickness_in", Units.INCH, Source.COMMON_PRACTICE);
  }

  /** The thickness from numbers that have been held to their limits. */
  static Figure<Length> thickness(Figure<Length> buildUp, Figure<Length> step) {
    return buildUp.max(NOTHING).roundedUpTo(step);
  }

  /**
   * How fast a strip grows thicker between two stations, held against the most that looks straight
   * from the ground.
   *
   * <pre>
   * taper = |last thickness − first thickness| ÷ length
   * </pre>
   *
   * <p>Does not cover whether the covering's maker allows it: a metal panel shows every change of
   * slope.
   *
   * <pre>{@code
   * shimTaper(TaperedShim.length(ft(2)).firstThickness(in(0)).lastThickness(in("3/8")), pitch(0.25)).gradual() // yes
   * shimTaper(TaperedShim.length(ft(1)).firstThickness(in(0)).lastThickness(in("3/8")), pitch(0.25)).taper() // 0.375 in 12
   * }</pre>
   *
   * @param strip between the two stations
   * @param most taper wanted, 0.01 in 12 to 3 in 12
   * @return taper in inches in a foot; taper over the most; yes or no
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: 1/4 in in a foot is our suggestion"
   */
  @LibraryFunction(words = {"furring", "strip", "straighten"})
  public static ShimTaper shimTaper(
      TaperedShim strip, @Column(value = "most_in_12", preset = "0.25") Figure<Ratio> most) {
    var wanted = most.within("most_in_12", Units.RISE_IN_12, ShimRules.TAPER);

    var first = strip.firstThickness();
    var last = strip.lastThickness();
    var change = last.max(first).minus(last.min(first)).as("change_in", Units.INCH);
    var taper =
        change
            .dividedBy(strip.length())
            .as("taper_in_12", Units.RISE_IN_12, Source.COMMON_PRACTICE);
    var check = Check.of("taper of the strip", "taper_ratio", taper, wanted);
    return new ShimTaper(taper, check, check.ok().as("gradual"));
  }

  /**
   * How long a nail must be where a strip lies under the sheet, so that as much of it stands in the
   * rafter as before.
   *
   * <pre>
   * nail = nail without a strip + strip
   * </pre>
   *
   * <p>Does not cover a strip that is itself counted as holding wood: it is not. Strips over about
   * 1/2 in want longer structural screws or a sister, an engineer's call.
   *
   * <pre>{@code
   * shimNail(in("2-1/2"), Strip.of(in("3/8"))) // 2-7/8 in
   * }</pre>
   *
   * @param nail length that the schedule asks for, 0.5 in to 8 in
   * @param strip that it goes through
   * @return inches at least; take the next longer nail that is sold
   * @throws RefusedException if a number lies outside its range
   * @see "derived: geometry"
   */
  @LibraryFunction(words = {"furring", "strip"})
  @Column(value = "nail_needed_in", marked = Marked.UP)
  public static Figure<Length> shimNail(@Column("nail_in") Figure<Length> nail, Strip strip) {
    var asked = nail.within("nail_in", Units.INCH, ShimRules.NAIL);
    return asked
        .plus(strip.thickness())
        .as("nail_needed_in", Units.INCH, Source.derived("geometry"));
  }

  /**
   * How fast a strip grows thicker.
   *
   * @param taper inches in 12 inches of length
   * @param steepness that against the most that is wanted
   * @param gradual whether it is within
   */
  public record ShimTaper(
      @Column("taper_in_12") Figure<Ratio> taper,
      @Column("taper_ratio") Check steepness,
      @Column("gradual") Choice<YesNo> gradual) {}
}
