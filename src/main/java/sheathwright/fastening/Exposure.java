package sheathwright.fastening;

import sheathwright.figure.Option;

/** How open the ground around the house lies to the wind. */
public enum Exposure implements Option<Exposure> {
  EXPOSURE_B("b"),
  EXPOSURE_C("c"),
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
