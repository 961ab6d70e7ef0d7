package sheathwright.framing;

import sheathwright.figure.Option;

/** A visual grade as it stands on a grade stamp. */
public enum Grade implements Option<Grade> {
  SELECT_STRUCTURAL,
  NO_1,
  NO_2,
  NO_3
}
