package sheathwright.roof;

import sheathwright.figure.Option;

/** How the body of a roof ends at its short sides. */
public enum RoofEnds implements Option<RoofEnds> {
  /** The roof slopes down to all four sides. */
  HIPPED,
  /** The two short sides are gables. */
  GABLED
}
