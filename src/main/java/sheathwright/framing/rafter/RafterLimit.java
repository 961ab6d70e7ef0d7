package sheathwright.framing.rafter;

import sheathwright.figure.Option;

/** What uses up the most of what a rafter can give. */
public enum RafterLimit implements Option<RafterLimit> {
  BENDING,
  SHEAR,
  DEFLECTION,
  TOTAL_DEFLECTION,
  BEARING,
  NOTCH
}
