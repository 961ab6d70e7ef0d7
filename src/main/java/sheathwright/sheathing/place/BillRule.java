package sheathwright.sheathing.place;

import sheathwright.figure.Option;

/** What one sheet is on a bill. */
public enum BillRule implements Option<BillRule> {
  /** Each place counts one, however small. */
  PLACE,
  /** A place of up to 16 sq ft counts one half, a larger one counts one. */
  HALF,
  /** Square feet by 32, the sum of a document up to the next quarter. */
  AREA
}
