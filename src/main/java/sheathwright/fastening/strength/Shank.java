package sheathwright.fastening.strength;

import sheathwright.figure.Option;

/** What holds a nail in the wood. */
public enum Shank implements Option<Shank> {
  /** Bright or galvanized, no rings. */
  SMOOTH,
  /** Roof sheathing or post-frame ring shank. */
  RING,
  /** Stainless steel, no rings. */
  STAINLESS
}
