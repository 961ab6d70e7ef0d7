package sheathwright.wood;

import sheathwright.figure.Option;

/**
 * A species group as it stands on a grade stamp. Each has a specific gravity; those that house
 * framing is graded of most have design values too.
 */
public enum Species implements Option<Species> {
  DOUGLAS_FIR_LARCH,
  DOUGLAS_FIR_LARCH_NORTH,
  HEM_FIR,
  HEM_FIR_NORTH,
  SOUTHERN_PINE,
  SPRUCE_PINE_FIR,
  SPRUCE_PINE_FIR_SOUTH,
  PONDEROSA_PINE,
  EASTERN_HEMLOCK,
  REDWOOD,
  WESTERN_CEDARS,
  WESTERN_WOODS
}
