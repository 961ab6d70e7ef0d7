package sheathwright.sheathing.panel;

import sheathwright.figure.Option;

/** What a panel is made of. */
public enum PanelKind implements Option<PanelKind> {
  /** Veneers glued crosswise. */
  PLYWOOD,
  /** Oriented strand board. */
  OSB
}
