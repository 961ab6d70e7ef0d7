package sheathwright.loads.wind;

import sheathwright.figure.Option;

/** The shape of the roof that a plane belongs to. */
public enum RoofShape implements Option<RoofShape> {
  GABLE,
  HIP
}
