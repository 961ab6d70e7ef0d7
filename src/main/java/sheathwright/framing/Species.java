package sheathwright.framing;

import sheathwright.figure.Option;

/** A species group as it stands on a grade stamp. */
public enum Species implements Option<Species> {
  DOUGLAS_FIR_LARCH,
  HEM_FIR,
  SOUTHERN_PINE,
  SPRUCE_PINE_FIR
}
