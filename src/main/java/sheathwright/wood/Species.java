package sheathwright.wood;

import sheathwright.figure.Option;

/** A species group as it stands on a grade stamp. */
public enum Species implements Option<Species> {
  DOUGLAS_FIR_LARCH,
  HEM_FIR,
  HEM_FIR_NORTH,
  SOUTHERN_PINE,
  SPRUCE_PINE_FIR,
  SPRUCE_PINE_FIR_SOUTH
}
