package sheathwright.fastening.strength;

import sheathwright.figure.Option;

/** What kind of screw it is. */
public enum ScrewKind implements Option<ScrewKind> {
  WOOD_SCREW,
  LAG_SCREW
}
