package sheathwright.cutting.sheet;

import java.util.List;

/**
 * How every piece of an order is cut.
 *
 * @param sheets offcuts first, then new sheets from the fullest to the emptiest
 * @param newSheets how many must be bought
 * @param atLeast no guillotine plan of this order buys fewer than this
 */
public record SheetPlan(List<CutSheet> sheets, int newSheets, int atLeast) {

  public SheetPlan {
    sheets = List.copyOf(sheets);
  }

  /** Whether no guillotine plan buys fewer sheets. */
  public boolean isProven() {
    return newSheets == atLeast;
  }

  /** Saw cuts over all sheets. */
  public int cuts() {
    return sheets.stream().mapToInt(sheet -> sheet.cuts().size()).sum();
  }
}
