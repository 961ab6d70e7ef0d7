package sheathwright.catalog;

import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;

/**
 * Whether a length is marked or cut by the crew, whose tape has sixteenths, and which way one that
 * falls between two of them goes: a piece to cut down, a gap or a least length up.
 */
public enum Marked {
  /** Nobody marks it: it is shown as it was worked out. */
  NOT(""),
  /** Never longer than worked out. */
  DOWN(", rounded down"),
  /** Never shorter than worked out. */
  UP(", rounded up"),
  /** Where neither harms. */
  NEAREST(", to the nearest 1/16");

  private static final int SIXTEENTHS = 16;
  private static final double DUST = 1e-6;

  private final String said;

  Marked(String said) {
    this.said = said;
  }

  /** Whether a value is a length that somebody could mark: worked out, and not refused. */
  public static boolean isLengthWorkedOut(Traced value) {
    return value instanceof Figure<?> figure
        && figure.unit().dimension().equals(Units.INCH.dimension())
        && !(value.step().isGiven() || value.step() instanceof Step.Guarded)
        && figure.refusal().isEmpty();
  }

  /** A length as the crew reads it; any other value, and one that was given, as it is. */
  public String shown(Traced value) {
    return this != NOT && isLengthWorkedOut(value)
        ? inSixteenths((Figure<?>) value)
        : value.toString();
  }

  private String inSixteenths(Figure<?> length) {
    double sixteenths = length.in(Units.INCH).value() * SIXTEENTHS;
    double nearest = Math.rint(sixteenths);
    boolean isExact = Math.abs(sixteenths - nearest) < DUST;
    double whole =
        isExact
            ? nearest
            : switch (this) {
              case DOWN -> Math.floor(sixteenths);
              case UP -> Math.ceil(sixteenths);
              case NEAREST, NOT -> nearest;
            };
    double inches = whole / SIXTEENTHS;
    String text =
        length.unit().equals(Units.FOOT)
            ? Lengths.inFeetAndInches(inches)
            : Lengths.inInches(inches) + " in";
    return text + (isExact ? "" : said);
  }
}
