package sheathwright.roof;

import sheathwright.figure.Option;

/** Where a plane looks: the way that water runs off it. */
public enum Facing implements Option<Facing> {
  N("north"),
  NE("northeast"),
  E("east"),
  SE("southeast"),
  S("south"),
  SW("southwest"),
  W("west"),
  NW("northwest");

  private final String spoken;

  Facing(String spoken) {
    this.spoken = spoken;
  }

  /** The word without its letter. */
  public String spoken() {
    return spoken;
  }

  /** As it is said: {@code the south side}. */
  public String side() {
    return spoken + " side";
  }

  /** Degrees from north, clockwise as on a compass. */
  public double degrees() {
    return ordinal() * 360.0 / values().length;
  }
}
