package sheathwright.cutting;

/** Patience by the clock, for tests and benchmarks that must end in time. */
public final class TestPatience {

  private TestPatience() {}

  public static Patience seconds(double seconds) {
    long end = System.nanoTime() + (long) (seconds * 1e9);
    return () -> (end - System.nanoTime()) / 1e9;
  }
}
