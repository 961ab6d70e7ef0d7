package sheathwright.sheathing.triage;

import sheathwright.figure.Option;

/** An answer that may be left open: nobody looked. */
public enum Told implements Option<Told> {
  TOLD_YES("yes"),
  TOLD_NO("no"),
  NOT_TOLD("not-looked");

  private final String word;

  Told(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
