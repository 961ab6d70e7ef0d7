package sheathwright.loads.wind;

import sheathwright.figure.Option;

/** How far the wind can get into the house and push from below. */
public enum Enclosure implements Option<Enclosure> {
  ENCLOSED,
  PARTIALLY_ENCLOSED
}
