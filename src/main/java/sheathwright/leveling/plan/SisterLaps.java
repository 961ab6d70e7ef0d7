package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.DressedSizes;
import sheathwright.wood.LumberSize;

/** Whether a sister set to the target still lies against the old rafter. */
public final class SisterLaps {

  private static final Source SIDE_BY_SIDE = Source.derived("geometry of two sticks side by side");
  private static final Figure<Length> NO_LAP = Figure.of(0, Units.INCH);

  /** What a lap that is not there counts as, so that its ratio is still a number. */
  static final Figure<Length> HAIR =
      Figure.constant("hair_in", 0.001, Units.INCH, Source.COMMON_PRACTICE).symbol("0.001 in");

  private SisterLaps() {}

  /**
   * How far a sister set to the target lies against the old rafter where it stands highest above
   * it, and the smallest size that lies against it far enough.
   *
   * <pre>
   * lap = the lesser of (sister's depth − build-up) and the rafter's depth, at least nothing
   * </pre>
   *
   * <p>Does not cover strength, or nails: a lap with room for them is not yet a rafter that
   * carries.
   *
   * <pre>{@code
   * sisterLap(in("1-5/8"), SideBySide.sister(SIZE_2X8).rafter(SIZE_2X4), in("2-1/2")).lap() // 3-1/2 in
   * sisterLap(in("1-5/8"), SideBySide.sister(SIZE_2X4).rafter(SIZE_2X4), in("2-1/2")).smallest() // 2x6
   * }</pre>
   *
   * @param buildUp the greatest along the sister, from the old rafter's top to the target, 0 in to
   *     12 in
   * @param sizes of sister and old rafter
   * @param leastLap the least height against each other, 1 in to 12 in
   * @return lap in inches; the least lap over the lap; the smallest size whose lap is enough, or
   *     none
   * @throws RefusedException if a number lies outside its range
   * @see "derived: geometry; 2-1/2 in for two rows of nails is common practice, no source"
   */
  @LibraryFunction
  public static SisterLap sisterLap(
      @Column("build_up_in") Figure<Length> buildUp,
      SideBySide sizes,
      @Column(value = "least_lap_in", preset = "2-1/2") Figure<Length> leastLap) {
    var height =
        buildUp.within(
            "build_up_in", Units.INCH, Limits.between(0, 12, "the most anywhere along the sister"));
    var least = leastLap.within("least_lap_in", Units.INCH, SisterRules.LEAST_LAP);
    var depths = sizes.depths();

    var lap = lap(depths.sister(), depths.rafter(), height).as("lap_in", Units.INCH, SIDE_BY_SIDE);
    var enough =
        Check.of(
            "lap of sister and rafter",
            "lap_ratio",
            least,
            lap.max(HAIR).as("lap_held_in", Units.INCH));
    return new SisterLap(lap, enough, smallest(depths.rafter(), height, least));
  }

  /** The lap of two depths, the one so much higher than the other. */
  static Figure<Length> lap(Figure<Length> sister, Figure<Length> rafter, Figure<Length> buildUp) {
    return sister.minus(buildUp).min(rafter).max(NO_LAP);
  }

  /** From the deepest size to the shallowest, each kept if it still laps enough. */
  private static Choice<String> smallest(
      Figure<Length> rafter, Figure<Length> buildUp, Figure<Length> least) {
    Choice<String> found = Choice.literal("none");
    LumberSize[] sizes = LumberSize.values();
    for (int i = sizes.length - 1; i >= 0; i--) {
      String size = sizes[i].word();
      var depth = DressedSizes.width(sizes[i]).as("depth_of_" + size + "_in", Units.INCH);
      var lap = lap(depth, rafter, buildUp).as("lap_of_" + size + "_in", Units.INCH);
      Condition laps = lap.isAtLeast(least);
      found = Choice.choose(laps, Choice.literal(size), found).as("from_" + size);
    }
    return found.as("smallest_size");
  }

  /**
   * How far a sister lies against the old rafter where it stands highest above it.
   *
   * @param lap height by which the two lie against each other
   * @param enough the least lap against that
   * @param smallest the smallest nominal size that laps enough, or the word none
   */
  public record SisterLap(
      @Column(value = "lap_in", marked = Marked.DOWN) Figure<Length> lap,
      @Column("lap_ratio") Check enough,
      @Column("smallest_size") Choice<String> smallest) {}
}
