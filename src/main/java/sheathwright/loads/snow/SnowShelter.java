package sheathwright.loads.snow;

import sheathwright.figure.Option;

/** How freely the wind reaches the roof itself. */
public enum SnowShelter implements Option<SnowShelter> {
  /** No shelter on any side from terrain, higher buildings or trees. */
  FULLY_EXPOSED,
  PARTIALLY_EXPOSED,
  /** Close among conifers. */
  SHELTERED
}
