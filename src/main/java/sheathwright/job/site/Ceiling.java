package sheathwright.job.site;

import sheathwright.figure.Option;

/** What hangs below the rafters: by it goes how far they may sag. */
public enum Ceiling implements Option<Ceiling> {
  NONE,
  GYPSUM,
  PLASTER
}
