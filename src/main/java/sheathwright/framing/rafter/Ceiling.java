package sheathwright.framing.rafter;

import sheathwright.figure.Option;

/** What hangs on the rafters: by it goes how far they may sag. */
public enum Ceiling implements Option<Ceiling> {
  NONE,
  /** Gypsum board, boards, anything but plaster. */
  GYPSUM,
  PLASTER
}
