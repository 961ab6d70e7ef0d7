package sheathwright.loads.wind;

import sheathwright.figure.Option;

/** How open the ground round the house is to the wind. */
public enum Exposure implements Option<Exposure> {
  /** Towns, suburbs and woods. */
  EXPOSURE_B("b"),
  /** Open country with few obstacles. */
  EXPOSURE_C("c"),
  /** Flat ground or water for a long way. */
  EXPOSURE_D("d");

  private final String word;

  Exposure(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
