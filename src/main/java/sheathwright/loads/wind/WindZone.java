package sheathwright.loads.wind;

import sheathwright.figure.Option;

/**
 * A part of a roof by how hard the wind pulls at it, as the standard's figures label it: 1 is the
 * field, 2 the edges, 3 the corners; ASCE 7-16 adds e for eave, r for ridge and n for the rake of a
 * gable.
 */
public enum WindZone implements Option<WindZone> {
  ZONE_1_PRIME("1'"),
  ZONE_1("1"),
  ZONE_2("2"),
  ZONE_2E("2e"),
  ZONE_2N("2n"),
  ZONE_2R("2r"),
  ZONE_3("3"),
  ZONE_3E("3e"),
  ZONE_3R("3r");

  private final String word;

  WindZone(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public String alsoWritten() {
    return word.replace("'", "-prime");
  }
}
