package sheathwright.life.record;

/** An agreement being made. */
final class Agreeing {

  static final String TOTAL = "total";

  private Agreeing() {}
}
