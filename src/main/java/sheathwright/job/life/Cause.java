package sheathwright.job.life;

import sheathwright.figure.Option;

/** Where the water or the fault came from. */
public enum Cause implements Option<Cause> {
  LEAK,
  FAN,
  EAVE_ICE,
  CONDENSATION,
  STORM,
  AGE,
  WORKMANSHIP,
  UNKNOWN
}
