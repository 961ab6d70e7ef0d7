package sheathwright.job.site;

import sheathwright.figure.Option;

/** The parts of a roof that are nailed alike, by how hard the wind pulls there. */
public enum RoofArea implements Option<RoofArea> {
  /** Away from all edges. */
  FIELD,
  /** Along eave, ridge, rake and hip. */
  EDGES,
  /** Where two of those meet. */
  CORNERS
}
