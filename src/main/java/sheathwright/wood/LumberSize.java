package sheathwright.wood;

import sheathwright.figure.Option;

/** A nominal size of 2 in lumber. */
public enum LumberSize implements Option<LumberSize> {
  SIZE_2X4("2x4"),
  SIZE_2X6("2x6"),
  SIZE_2X8("2x8"),
  SIZE_2X10("2x10"),
  SIZE_2X12("2x12");

  private final String word;

  LumberSize(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
