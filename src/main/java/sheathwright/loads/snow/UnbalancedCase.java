package sheathwright.loads.snow;

import sheathwright.figure.Option;

/** Which unbalanced snow a hip or gable roof is given. */
public enum UnbalancedCase implements Option<UnbalancedCase> {
  /** The slope is too flat or too steep for one. */
  NOT_ASKED,
  /** Narrow, with simple rafters: ground snow on the leeward slope, nothing on the other. */
  LEEWARD_ALONE,
  /** A drift below the ridge on the leeward slope. */
  RIDGE_DRIFT
}
