package sheathwright.leveling.plan;

import sheathwright.figure.Option;

/** Who decides before a plane is leveled. */
public enum LevelDecision implements Option<LevelDecision> {
  SCREENED(
      "the old rafters pass the screening; screening only: local code and a licensed engineer decide"),
  ENGINEER_FIRST(
      "STOP: the old rafters fail the screening; a licensed engineer decides before any leveling; sisters alone do not make the roof strong enough"),
  REPORTED_FIRST(
      "STOP: something was reported of the framing; whoever is named for it decides before any leveling"),
  TRUSS_DESIGNER_FIRST(
      "STOP: these are trusses; nothing is cut, planed or sistered without the truss designer");

  private final String word;

  LevelDecision(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
