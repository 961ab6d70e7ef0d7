package sheathwright.framing.stop;

import sheathwright.figure.Option;

/** What was seen of the framing that nobody may repair without somebody else's word. */
public enum StopFinding implements Option<StopFinding> {
  /** Nothing of the kind: looked at and found sound. */
  NOTHING,
  /** A truss: its members act together, and none is cut, notched or sistered by the crew. */
  TRUSS,
  /** A rafter split along or across the grain. */
  SPLIT,
  /** A rafter cut or notched where it should not be. */
  CUT,
  /** Rot where a rafter bears, on the plate or at the ridge. */
  BEARING_ROT,
  /** A wall or ridge that the rafters push out of line. */
  SPREAD_WALL
}
