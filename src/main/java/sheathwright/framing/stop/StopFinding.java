package sheathwright.framing.stop;

import sheathwright.figure.Option;

/**
 * What was seen or reckoned of a roof that nobody may repair without somebody else's word. Who that
 * is, by what source, and what may go on meanwhile stands in one table, {@link StopTable}.
 */
public enum StopFinding implements Option<StopFinding> {
  /** Nothing of the kind: looked at and found sound. */
  NOTHING,
  /** Rafters that cannot be shown to carry the roof. */
  OVERLOADED,
  /** A truss: its members act together, and none is cut, notched or sistered by the crew. */
  TRUSS,
  /** A rafter split along or across the grain. */
  SPLIT,
  /** A rafter cut or notched where it should not be. */
  CUT,
  /** Rot where a rafter bears, on the plate or at the ridge. */
  BEARING_ROT,
  /** A wall or ridge that the rafters push out of line. */
  SPREAD_WALL,
  /** Panels treated against fire, which heat makes brittle: nobody walks on them. */
  FIRE_RETARDANT_PANEL,
  /** Framing that a fire has charred or smoked. */
  CHARRED,
  /** Insects or fungus in the framing. */
  INSECTS_OR_FUNGUS,
  /** A ridge, hip or valley that sags. */
  SAGGING_RIDGE,
  /** A ridge board where the rafters need a ridge beam. */
  RIDGE_BOARD,
  /** A collar tie, rafter tie or ceiling joist across the span that is missing or cut. */
  MISSING_TIE,
  /** A purlin or strut that was taken out or stands on nothing. */
  LOST_STRUT,
  /** A rafter tail that is rotten, or notched deeper than the code allows. */
  RAFTER_TAIL,
  /** What a few rafters carry by themselves: solar racks, tanks, air handlers. */
  POINT_LOAD,
  /** Tile, slate, or any covering that is heavier than the old one by more than the code allows. */
  HEAVIER_COVERING,
  /** A deck of planks that is the ceiling below: new nails come through. */
  EXPOSED_PLANKS,
  /** A ceiling along the rafters: its bays are vented or sealed, and somebody has to say which. */
  CATHEDRAL_BAY,
  /** People or things below that an open deck puts in danger. */
  ROOM_BELOW,
  /** Wires or cables under the deck or above the roof. */
  LIVE_WIRES,
  /** What may hold asbestos: felt, siding, flues, vermiculite. */
  ASBESTOS_OR_VERMICULITE
}
