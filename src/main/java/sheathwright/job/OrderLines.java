package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.price.OfficeFields;

/** What to order: what is needed, something to spare, and whole packs of it. */
final class OrderLines {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private OrderLines() {}

  /**
   * One thing to order.
   *
   * @param item what it is
   * @param needed how many
   * @param unit of what
   * @param pack how many come in a pack
   */
  private record Line(String item, Figure<?> needed, String unit, Figure<?> pack) {

    Figure<Ratio> packs(Figure<Ratio> spare) {
      return needed.times(ONE.plus(spare)).dividedBy(pack).in(Units.RATIO).roundedUp();
    }
  }

  static Roll of(Job job, SheetWork work) {
    Figure<Ratio> spare = job.rate(OfficeFields.ORDER_SPARE);
    Figure<?> box = job.rate(OfficeFields.NAILS_PER_BOX);
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("Deck sheets, 4 by 8", work.planned(), "sheet", Figure.of(1, Units.SHEET)));
    lines.add(
        new Line(
            "Nails for them, as near roof edges, boxes",
            work.planned().times(work.nails()).as("sheet_nails", Units.NAIL),
            "nail",
            box));
    work.leveling()
        .ifPresent(
            leveling -> {
              lines.add(
                  new Line(
                      "Sister lumber", leveling.sisters(), "stick", Figure.of(1, Units.PIECE)));
              lines.add(new Line("Nails for the sisters, boxes", leveling.nails(), "nail", box));
            });
    return Roll.of(
        "order",
        "the order",
        lines,
        Roll.<Line>column("item", line -> Choice.literal(line.item())),
        Roll.column("needed", Line::needed),
        Roll.column("unit", line -> Choice.literal(line.unit())),
        Roll.column("pack", Line::pack),
        Roll.column("packs", line -> line.packs(spare)));
  }
}
