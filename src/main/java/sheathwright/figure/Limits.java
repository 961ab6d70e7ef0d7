package sheathwright.figure;

/**
 * What a value may be.
 *
 * @param least the least value allowed, in the unit of the figure it limits
 * @param most the greatest value allowed
 * @param kind which values between the two are allowed
 * @param rule whose rule it is, and something right to try
 */
public record Limits(double least, double most, Kind kind, String rule) {

  /** Which values between the least and the most are allowed. */
  public enum Kind {
    ANY,
    WHOLE_ONLY,
    ENDS_ONLY,
    /** Any of them, or that nobody measured. */
    IF_MEASURED
  }

  /** Anything that a cell can hold. */
  public static final Limits NONE =
      new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Kind.ANY, "");

  /** Anything from the one to the other, both allowed. */
  public static Limits between(double least, double most, String rule) {
    return new Limits(least, most, Kind.ANY, rule);
  }

  /** Whole numbers from the one to the other, both allowed. */
  public static Limits whole(double least, double most, String rule) {
    return new Limits(least, most, Kind.WHOLE_ONLY, rule);
  }

  /** One or the other and nothing else. */
  public static Limits either(double one, double other, String rule) {
    return new Limits(one, other, Kind.ENDS_ONLY, rule);
  }

  /** Whether anything at all is limited. */
  public boolean exist() {
    return least > Double.NEGATIVE_INFINITY || most < Double.POSITIVE_INFINITY;
  }

  boolean allow(double value) {
    boolean isWithin = value >= least && value <= most;
    return switch (kind) {
      case ANY, IF_MEASURED -> isWithin;
      case WHOLE_ONLY -> isWithin && value == Math.rint(value);
      case ENDS_ONLY -> value == least || value == most;
    };
  }

  /** Whether whatever these allow, the others allow too. */
  boolean lieWithin(Limits others) {
    boolean areBothAllowed = others.allow(least) && others.allow(most);
    return areBothAllowed && (others.kind == Kind.ANY || kind == others.kind);
  }

  /** What is allowed, in words: {@code from 0.31 to 0.73}. */
  public String inWords() {
    String ends =
        Shown.plain(least) + (kind == Kind.ENDS_ONLY ? " or " : " to ") + Shown.plain(most);
    return switch (kind) {
      case ANY, IF_MEASURED -> "from " + ends;
      case WHOLE_ONLY -> "a whole number from " + ends;
      case ENDS_ONLY -> ends;
    };
  }

  /** Both ends with their unit, as a page of help states a range: {@code 6 in to 96 in}. */
  public String ends(Unit<?> unit) {
    String after = unit.suffix().isEmpty() ? "" : " " + unit.symbol();
    String between = kind == Kind.ENDS_ONLY ? " or " : " to ";
    return Shown.plain(least) + after + between + Shown.plain(most) + after;
  }

  /** The narrower of two limits. */
  public Limits and(Limits other) {
    if (kind == Kind.ENDS_ONLY || !other.exist()) {
      return this;
    }
    if (other.kind == Kind.ENDS_ONLY || !exist()) {
      return other;
    }
    boolean isWhole = kind == Kind.WHOLE_ONLY || other.kind == Kind.WHOLE_ONLY;
    return new Limits(
        Math.max(least, other.least),
        Math.min(most, other.most),
        isWhole ? Kind.WHOLE_ONLY : Kind.ANY,
        rule);
  }

  Refusal missing(String name, Unit<?> unit) {
    String range = exist() ? inWords() : unit.spoken().isEmpty() ? "a number" : "a number of";
    String spoken = unit.spoken().isEmpty() ? "" : " " + unit.spoken();
    return Refusal.missing(name, range + spoken + (rule.isEmpty() ? "" : ", " + rule));
  }

  /** What is said of a number that these do not allow; inches as a tape shows them. */
  Refusal refusal(String name, double number, Unit<?> unit) {
    String given = unit.equals(Units.INCH) ? Lengths.onTape(number) : Shown.plain(number);
    return new Refusal(
        name + " is " + given + "; it must be " + inWords() + (rule.isEmpty() ? "" : ", " + rule));
  }
}
