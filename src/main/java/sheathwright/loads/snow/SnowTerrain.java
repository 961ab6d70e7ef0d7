package sheathwright.loads.snow;

import sheathwright.figure.Option;

/** The ground round the house, as the wind that sweeps snow off a roof finds it. */
public enum SnowTerrain implements Option<SnowTerrain> {
  /** Towns, suburbs and woods. */
  TERRAIN_B("b"),
  /** Open country with few obstacles. */
  TERRAIN_C("c"),
  /** Flat ground or water for a long way. */
  TERRAIN_D("d"),
  /** Windswept mountains above the trees. */
  ABOVE_TREELINE("above-treeline"),
  /** Parts of Alaska with no trees within 2 miles. */
  ALASKA_WITHOUT_TREES("alaska-without-trees");

  private final String word;

  SnowTerrain(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
