package sheathwright.wood;

import sheathwright.figure.Option;

/** The shortest load in a combination; it sets how long the wood must bear it. */
public enum LoadDuration implements Option<LoadDuration> {
  /** Dead load alone. */
  DURATION_PERMANENT("permanent"),
  /** People and goods on a floor. */
  DURATION_TEN_YEARS("ten-years"),
  /** Two months of snow. */
  DURATION_SNOW("snow"),
  /** Seven days of workers and materials. */
  DURATION_ROOF_LIVE("roof-live"),
  /** Wind and earthquake. */
  DURATION_TEN_MINUTES("ten-minutes");

  private final String word;

  LoadDuration(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
