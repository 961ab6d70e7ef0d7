package sheathwright.cutting;

import java.util.ArrayList;
import java.util.List;

/** Stand-in until the real search is merged: a sheet for each piece. */
public final class SheetCutting {
  private SheetCutting() {}

  public static SheetPlan plan(SheetOrder order, Patience patience) {
    List<CutSheet> sheets = new ArrayList<>();
    for (int i = 0; i < order.pieces().size(); i++) {
      SheetPiece piece = order.pieces().get(i);
      for (int k = 0; k < piece.count(); k++) {
        sheets.add(
            new CutSheet(
                CutSheet.NEW,
                List.of(new PlacedPiece(i, 0, 0, piece.width(), piece.height())),
                List.of(),
                SheetPart.NONE));
      }
    }
    return new SheetPlan(sheets, sheets.size(), 0);
  }
}
