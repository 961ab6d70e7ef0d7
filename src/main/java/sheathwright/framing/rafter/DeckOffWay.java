package sheathwright.framing.rafter;

import sheathwright.figure.Option;

/** What a crew does, so that open rafters bear whoever works on them. */
public enum DeckOffWay implements Option<DeckOffWay> {
  /** Held as it is held, it bears one person. */
  AS_IT_STANDS,
  /** Open a few sheets at a time, or brace: no further apart than the brace distance. */
  FEW_SHEETS_OR_BRACES,
  /** Brace the upper edges: a course of sheets is more than may be open. */
  BRACES,
  /** Stand on planks over three rafters or more, with braces under them. */
  PLANKS_AND_BRACES,
  /** Nobody walks it: work from below, from a scaffold or a lift. */
  NOBODY_ON_IT
}
