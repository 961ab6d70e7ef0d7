package sheathwright.leveling.target;

import static java.util.stream.Collectors.joining;

import java.util.Comparator;
import java.util.List;
import sheathwright.figure.Rounding;
import sheathwright.figure.Shown;

/** No surface meets every bound on build-up. */
public final class NoTargetException extends RuntimeException {

  private static final long serialVersionUID = 1;

  /** Of an inch: the last of them is the library's noise (TargetProgram). */
  private static final int DECIMALS = 9;

  private final transient List<Clash> clashes;
  private final double lacking;

  /** What a reading brings to the clash. */
  public enum Side {
    /** Its wood, which no surface may cut. */
    WOOD,
    /** The least build-up that it asks. */
    LEAST,
    /** The most build-up that it allows. */
    MOST,
    /** The cap on every build-up. */
    CAP
  }

  /**
   * One of the bounds that cannot be met together; without it the others could.
   *
   * @param reading its place in the list, counted from 0
   * @param name of the reading
   * @param side which of its bounds
   * @param inches of the bound; for the wood, its height above the string
   */
  public record Clash(int reading, String name, Side side, double inches) {

    @Override
    public String toString() {
      String bound =
          switch (side) {
            case WOOD -> "wood at %s in";
            case LEAST -> "least build-up %s in";
            case MOST -> "most build-up %s in";
            case CAP -> "cap %s in";
          };
      return name + ", " + bound.formatted(Shown.plain(inches));
    }
  }

  private NoTargetException(List<Clash> clashes, double lacking) {
    super(
        "nothing straight fits: each of these limits but the wood would have to give %s in: %s"
            .formatted(
                Shown.plain(lacking),
                clashes.stream().map(Clash::toString).collect(joining("; "))));
    this.clashes = clashes;
    this.lacking = lacking;
  }

  static NoTargetException of(TargetFrame frame, List<TargetRow> deciding, double lacking) {
    return new NoTargetException(
        deciding.stream()
            .map(row -> clash(frame, row))
            .sorted(Comparator.comparingInt(Clash::reading).thenComparing(Clash::side))
            .toList(),
        Rounding.halfUp(lacking, DECIMALS));
  }

  private static Clash clash(TargetFrame frame, TargetRow row) {
    TargetReading reading = frame.reading(row.index());
    boolean isWood = row.kind() == TargetRow.Kind.WOOD;
    if (isWood || row.kind() == TargetRow.Kind.LEAST) {
      return new Clash(
          row.index(),
          reading.name(),
          isWood ? Side.WOOD : Side.LEAST,
          isWood ? reading.z() : reading.least());
    }
    return new Clash(
        row.index(),
        reading.name(),
        frame.isCapped(row.index()) ? Side.CAP : Side.MOST,
        frame.most(row.index()));
  }

  /** The same for readings that are part of a longer list, at these places in it. */
  NoTargetException among(List<Integer> places) {
    return new NoTargetException(
        clashes.stream()
            .map(
                clash ->
                    new Clash(
                        places.get(clash.reading()), clash.name(), clash.side(), clash.inches()))
            .toList(),
        lacking);
  }

  /** The bounds that clash, in the order of the readings. */
  public List<Clash> clashes() {
    return clashes;
  }

  /**
   * What every one of them, but for the wood, would have to give for a surface to serve, inches.
   */
  public double lacking() {
    return lacking;
  }
}
