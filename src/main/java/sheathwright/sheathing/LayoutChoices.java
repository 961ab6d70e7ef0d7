package sheathwright.sheathing;

import static java.util.Comparator.comparingDouble;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.sheathing.layout.DeckLayout;

/**
 * Layouts of the same deck of which each takes more sheets than the one before and leaves fewer
 * short pieces to block. Sheets come first unless somebody chooses otherwise.
 *
 * @param layouts fewest sheets first
 * @param sheet what one more sheet costs
 * @param block what it costs to block one short piece
 */
public record LayoutChoices(
    List<DeckLayout> layouts, Figure<Per<Money, Sheets>> sheet, Figure<Per<Money, Pieces>> block) {

  /** Those of the layouts that no other beats in both. */
  static LayoutChoices of(
      List<DeckLayout> laid, Figure<Per<Money, Sheets>> sheet, Figure<Per<Money, Pieces>> block) {
    List<DeckLayout> kept = new ArrayList<>();
    laid.stream()
        .sorted(
            comparingDouble((DeckLayout each) -> each.sheets().value())
                .thenComparingDouble(each -> each.shortPieces().value()))
        .forEach(
            each -> {
              if (kept.isEmpty() || each.shortPieces().value() < leastShort(kept)) {
                kept.add(each);
              }
            });
    return new LayoutChoices(List.copyOf(kept), sheet, block);
  }

  private static double leastShort(List<DeckLayout> kept) {
    return kept.get(kept.size() - 1).shortPieces().value();
  }

  /** The layout with the fewest sheets. */
  public DeckLayout first() {
    return layouts.get(0);
  }

  /** What the sheets cost that a layout takes more than the first one. */
  public Figure<Money> sheetsMore(DeckLayout layout) {
    return layout.sheets().minus(first().sheets()).times(sheet).as("sheets_more_usd", Units.USD);
  }

  /** What it costs to block the short pieces that a layout saves beside the first one. */
  public Figure<Money> blockingLess(DeckLayout layout) {
    return first()
        .shortPieces()
        .minus(layout.shortPieces())
        .times(block)
        .as("blocking_less_usd", Units.USD);
  }

  @Override
  public String toString() {
    List<String> lines = new ArrayList<>(List.of(said(first())));
    for (DeckLayout each : layouts.subList(1, layouts.size())) {
      lines.add(
          "%s: %s for sheets against %s for blocking"
              .formatted(said(each), sheetsMore(each), blockingLess(each)));
    }
    if (layouts.size() == 1) {
      lines.add("no layout that was tried leaves fewer short pieces");
    }
    return String.join("\n", lines);
  }

  private static String said(DeckLayout layout) {
    double pieces = layout.shortPieces().value();
    return layout.sheets()
        + (pieces == 0
            ? ", no short pieces"
            : pieces == 1
                ? ", 1 short piece to block"
                : Shown.text(", %.0f short pieces to block", pieces));
  }
}
