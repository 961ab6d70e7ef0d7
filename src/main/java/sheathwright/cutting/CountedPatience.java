package sheathwright.cutting;

/**
 * Patience that runs out when it has been asked so often. What a search finds with it rests on the
 * order and on how often it may still ask, and on nothing else.
 */
public final class CountedPatience implements Patience {

  private int left;

  CountedPatience(int times) {
    left = times;
  }

  @Override
  public double secondsLeft() {
    return left-- / ASKED_A_SECOND;
  }

  /** How often it may still be asked. */
  public int left() {
    return left;
  }

  /** Goes on as after a search that left it so. */
  public void goOnAt(int leftBehind) {
    left = leftBehind;
  }
}
