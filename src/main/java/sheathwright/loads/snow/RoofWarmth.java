package sheathwright.loads.snow;

import sheathwright.figure.Option;

/** How warm the roof is from below, which melts snow. */
public enum RoofWarmth implements Option<RoofWarmth> {
  /** Heated below, and none of the others. */
  HEATED,
  JUST_ABOVE_FREEZING,
  /** A vented attic over insulation of more than R 25: the common house. */
  COLD_VENTILATED,
  UNHEATED,
  OPEN_BELOW,
  KEPT_BELOW_FREEZING,
  /** Continuously heated, with a roof of less than R 2. */
  WARM_GREENHOUSE
}
