package sheathwright.framing.rafter;

import sheathwright.figure.Option;

/** The load that governs a rafter beside its own weight; it sets how long the wood must bear it. */
public enum RafterLoad implements Option<RafterLoad> {
  ROOF_LIVE,
  SNOW
}
