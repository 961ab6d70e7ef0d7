package sheathwright.sheathing.panel;

import sheathwright.figure.Option;

/** How a panel's strength axis, on a whole sheet its long side, lies on the supports. */
public enum StrengthAxis implements Option<StrengthAxis> {
  /** Across the supports, as the span table wants it. */
  ACROSS,
  /** Along the supports: the weak way. */
  ALONG
}
