package sheathwright.fastening.strength;

import sheathwright.figure.Option;

/** A wood screw by its number. */
public enum ScrewSize implements Option<ScrewSize> {
  SCREW_6("no-6"),
  SCREW_8("no-8"),
  SCREW_9("no-9"),
  SCREW_10("no-10"),
  SCREW_12("no-12"),
  SCREW_14("no-14");

  private final String word;

  ScrewSize(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
