package sheathwright.job.life;

import sheathwright.figure.Option;

/** How the covering that lies on a roof is, as far as it bears another. */
public enum OldCovering implements Option<OldCovering> {
  /** Dry, flat and fast. */
  SOUND,
  /** Full of water. */
  WATER_SOAKED,
  /** So far gone that it is no base for another. */
  DETERIORATED,
  /** Slate, clay, cement or asbestos-cement tile. */
  TILE,
  /** Nobody looked. */
  NOT_SEEN
}
