package sheathwright.repl.whatif;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import sheathwright.figure.Lengths;
import sheathwright.figure.Shown;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * The values that a person would type: whole counts, sixteenths of an inch, hundredths of anything
 * else; finer ones where those do not do.
 *
 * @param unit what they are in
 * @param perUnit how many there are to one of the unit
 */
record Notches(Unit<?> unit, long perUnit) {

  /** To the inch. */
  private static final long SIXTEENTHS = 16;

  /** Sixteenths to the foot. */
  private static final long FEET = 12 * SIXTEENTHS;

  /** Cents to the dollar, and as fine as anything else is typed. */
  private static final long HUNDREDTHS = 100;

  /** To the unit: a double of a hundred units holds three digits more. */
  private static final long FINEST = 10_000_000_000L;

  /** Longer lengths are not written in feet and inches. */
  private static final double MOST_FEET = 999;

  /** Of a sixteenth: in doubles the longest length of 999 ft is good to 2e-11 of one. */
  private static final double ON_A_MARK = 1e-7;

  /** Those of a unit; only whole ones if nothing between is allowed. */
  static Notches of(Unit<?> unit, boolean isWhole) {
    if (isWhole || unit.isCount()) {
      return new Notches(unit, 1);
    }
    long usual = unit.equals(Units.INCH) ? SIXTEENTHS : unit.equals(Units.FOOT) ? FEET : HUNDREDTHS;
    return new Notches(unit, usual);
  }

  boolean areWhole() {
    return perUnit == 1;
  }

  boolean canBeFiner() {
    return !areWhole() && perUnit * 10 <= FINEST;
  }

  Notches finer() {
    return new Notches(unit, perUnit * 10);
  }

  double value(long notch) {
    return notch / (double) perUnit;
  }

  long nearest(double value) {
    return Math.round(value * perUnit);
  }

  /** The roundest of these from one to another. */
  long roundest(long least, long most) {
    Stream<Long> coarse =
        isLength()
            ? Stream.concat(
                Stream.of(FEET, SIXTEENTHS, 8L, 4L, 2L).map(part -> part * tenths()),
                powersOfTen(tenths()))
            : powersOfTen(Long.MAX_VALUE);
    return coarse
        .map(size -> Math.floorDiv(most, size) * size)
        .filter(notch -> notch >= least)
        .findFirst()
        .orElse(most);
  }

  private boolean isLength() {
    return !areWhole() && (unit.equals(Units.INCH) || unit.equals(Units.FOOT));
  }

  /** How many of these there are to a sixteenth of an inch. */
  private long tenths() {
    return unit.equals(Units.FOOT) ? perUnit / FEET : perUnit / SIXTEENTHS;
  }

  private static Stream<Long> powersOfTen(long most) {
    List<Long> powers =
        LongStream.iterate(1_000_000_000_000L, power -> power > 0, power -> power / 10)
            .filter(power -> power <= most)
            .boxed()
            .toList();
    return powers.stream();
  }

  /** A value as it is typed. */
  String typed(double value) {
    double marks = value * SIXTEENTHS * (unit.equals(Units.FOOT) ? 12 : 1);
    boolean isOnTape = Math.abs(marks - Math.rint(marks)) < ON_A_MARK;
    if (unit.equals(Units.FOOT) && isOnTape && value >= 0 && value < MOST_FEET) {
      return Shown.with(unit, value);
    }
    if (unit.equals(Units.INCH) && isOnTape) {
      return Lengths.inInches(value) + " in";
    }
    String digits = Shown.plain(value);
    if (unit.symbol().startsWith("$")) {
      String cents = digits.matches("\\d+\\.\\d") ? digits + "0" : digits;
      return "$" + cents + unit.symbol().substring(1);
    }
    String plural = unit.isCount() && value != 1 ? "s" : "";
    return (digits + " " + unit.symbol() + plural).strip();
  }
}
