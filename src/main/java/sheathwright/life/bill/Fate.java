package sheathwright.life.bill;

import sheathwright.figure.Word;

/** What becomes of a mark on the bill; a mark that is split has several, and each part one. */
public enum Fate implements Word {
  /** It is in the agreed price. */
  INCLUDED,
  /** A change order bills it. */
  ORDERED,
  /** It is above the ceiling, dried, watched, seen before the covering was off, or not billed. */
  NO_CHARGE,
  /** The owner refused it. */
  DECLINED,
  /** It was taken back. */
  VOID,
  /** The framing under it waits for an engineer, and has an order of its own. */
  STOP,
  /** Its price has to be talked about: it is beyond what was agreed to count, or was not priced. */
  PRICE_OPEN
}
