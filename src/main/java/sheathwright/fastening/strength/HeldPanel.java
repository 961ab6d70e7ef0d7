package sheathwright.fastening.strength;

import sheathwright.figure.Option;

/** A panel as the sheet that is held down. */
public enum HeldPanel implements Option<HeldPanel> {
  STRUCTURAL_1_PLYWOOD,
  OTHER_PLYWOOD,
  ANY_OSB
}
