package sheathwright.roof;

import java.util.Locale;

/** A side of a house; left and right as one looks at its front. */
public enum HouseSide {
  FRONT,
  BACK,
  LEFT,
  RIGHT;

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
