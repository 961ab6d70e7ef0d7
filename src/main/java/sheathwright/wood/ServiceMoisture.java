package sheathwright.wood;

import sheathwright.figure.Option;

/** How damp the wood is in service. */
public enum ServiceMoisture implements Option<ServiceMoisture> {
  /** 19 % at most. */
  DRY,
  /** Above 19 % for a long time. */
  WET
}
