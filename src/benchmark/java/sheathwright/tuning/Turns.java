package sheathwright.tuning;

/** Turns of loops and calls of methods, counted by what {@link CountingClasses} adds to classes. */
public final class Turns {

  /** How many there were; the classes that are counted add to it. */
  public static long done;

  private Turns() {}
}
