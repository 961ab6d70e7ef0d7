package sheathwright.leveling.target;

import sheathwright.figure.Option;

/** Which build-up a new surface is to make as small as can be; the other one comes second. */
public enum TargetObjective implements Option<TargetObjective> {
  /** The build-up of all readings together. */
  TOTAL("total"),
  /** The build-up at the reading that needs most. */
  LARGEST("largest");

  private final String word;

  TargetObjective(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
