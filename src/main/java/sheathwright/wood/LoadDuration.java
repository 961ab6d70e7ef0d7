package sheathwright.wood;

import sheathwright.figure.Option;

/**
 * The shortest load in a combination; it sets how long the wood must bear it. The factor that is
 * printed for it may be written too.
 */
public enum LoadDuration implements Option<LoadDuration> {
  /** Dead load alone. */
  DURATION_PERMANENT("permanent", "0.9"),
  /** People and goods on a floor. */
  DURATION_TEN_YEARS("ten-years", "1"),
  /** Two months of snow. */
  DURATION_SNOW("snow", "1.15"),
  /** Seven days of workers and materials. */
  DURATION_ROOF_LIVE("roof-live", "1.25"),
  /** Wind and earthquake. */
  DURATION_TEN_MINUTES("ten-minutes", "1.6");

  private final String word;
  private final String alsoWritten;

  LoadDuration(String word, String alsoWritten) {
    this.word = word;
    this.alsoWritten = alsoWritten;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public String alsoWritten() {
    return alsoWritten;
  }
}
