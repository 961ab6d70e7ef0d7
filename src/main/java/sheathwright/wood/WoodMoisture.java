package sheathwright.wood;

import sheathwright.figure.Option;

/** How damp the wood is when a fastener is driven and afterwards; 19 % is the border. */
public enum WoodMoisture implements Option<WoodMoisture> {
  STAYS_DRY,
  DRIES_LATER,
  GETS_WET_LATER,
  STAYS_WET
}
