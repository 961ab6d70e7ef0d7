package sheathwright.job.life;

import sheathwright.figure.Option;

/** What a photograph shows. */
public enum View implements Option<View> {
  WIDE,
  BEFORE,
  OPEN,
  AFTER,
  STAMP,
  NAILS,
  METER,
  STRING
}
