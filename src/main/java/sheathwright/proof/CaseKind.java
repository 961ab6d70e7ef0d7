package sheathwright.proof;

import sheathwright.figure.Word;

/** What the expected numbers of a certified case were taken from. */
public enum CaseKind implements Word {
  PRINTED("a printed table's cell"),
  WORKED("a worked example, published or an engineer's own"),
  INDEPENDENT("a second program, in 50 digits or exact fractions"),
  LIMIT("an exact limit, or every possibility tried");

  private final String meaning;

  CaseKind(String meaning) {
    this.meaning = meaning;
  }

  /** What that is. */
  public String meaning() {
    return meaning;
  }
}
