package sheathwright.fastening.schedule;

import sheathwright.figure.Option;

/** A staple or thin nail in place of the usual one. */
public enum AlternateFastener implements Option<AlternateFastener> {
  STAPLE_14_GA("staple-14-ga"),
  STAPLE_15_GA("staple-15-ga"),
  STAPLE_16_GA("staple-16-ga"),
  THIN_NAIL_0_097("nail-0.097"),
  THIN_NAIL_0_113("nail-0.113");

  private final String word;

  AlternateFastener(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
