package sheathwright.fastening.strength;

import sheathwright.figure.Option;

/** How a nail in single shear gives way, by the numbers of the yield equations. */
public enum YieldMode implements Option<YieldMode> {
  /** The rafter's wood crushes along the whole nail. */
  IM("Im"),
  /** The side member's wood crushes along the whole nail. */
  IS("Is"),
  /** Both crush and the nail turns, unbent. */
  II("II"),
  /** The nail bends at one place, in the side member. */
  IIIM("IIIm"),
  /** The nail bends at one place, in the main member. */
  IIIS("IIIs"),
  /** The nail bends at two places. */
  IV("IV");

  private final String word;

  YieldMode(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
